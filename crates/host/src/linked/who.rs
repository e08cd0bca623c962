//! Which notebook asks.

use crate::fault::told;
use crate::host::Host;
use axum::Json;
use axum::extract::FromRequestParts;
use axum::http::StatusCode;
use axum::http::header::AUTHORIZATION;
use axum::http::request::Parts;
use axum::response::{IntoResponse, Response};
use sayso_linked::letters::{Stop, Stopped};
use sayso_model::HomeId;
use sayso_people::Secret;
use sayso_people::db::{Keyed, Notebook};
use sayso_store::{Store, StoreError};
use sayso_web::Error;
use std::sync::Arc;

/// A notebook whose key holds.
pub struct Who(pub Notebook);

impl Who {
    /// The one home it is linked to.
    pub const fn home(&self) -> HomeId {
        self.0.home
    }

    /// That home's log.
    pub fn log(&self, host: &Host) -> Store {
        host.server.home(self.home())
    }
}

/// Why a notebook is not answered.
pub enum Refused {
    /// Nothing is taken from it any more.
    Stopped(Stop),
    /// It is told as everyone is.
    Told(Error),
}

impl From<Error> for Refused {
    fn from(why: Error) -> Self {
        Self::Told(why)
    }
}

impl From<StoreError> for Refused {
    fn from(why: StoreError) -> Self {
        match why {
            // Erased just now.
            StoreError::HomeLeft(_) | StoreError::NoSuchHome(_) => Self::Stopped(Stop::Left),
            other => Self::Told(other.into()),
        }
    }
}

impl IntoResponse for Refused {
    fn into_response(self) -> Response {
        match self {
            Self::Told(why) => why.into_response(),
            Self::Stopped(stopped) => {
                let status = match stopped {
                    Stop::Ended => StatusCode::UNAUTHORIZED,
                    Stop::Left => StatusCode::GONE,
                };
                (status, Json(Stopped { stopped })).into_response()
            }
        }
    }
}

impl FromRequestParts<Arc<Host>> for Who {
    type Rejection = Refused;

    async fn from_request_parts(parts: &mut Parts, host: &Arc<Host>) -> Result<Self, Refused> {
        let key = parts.headers.get(AUTHORIZATION).and_then(|bearer| bearer.to_str().ok()?.strip_prefix("Bearer "));
        let Some(key) = key else { return Err(Refused::Stopped(Stop::Ended)) };
        match host.people.notebook(&Secret::typed(key), host.now()).await.map_err(told)? {
            Keyed::Holds(notebook) => Ok(Self(notebook)),
            Keyed::Ended => Err(Refused::Stopped(Stop::Ended)),
            Keyed::Left => Err(Refused::Stopped(Stop::Left)),
        }
    }
}
