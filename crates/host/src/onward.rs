//! The own page on which one goes on.

use crate::host::Host;
use crate::pages::desk;
use sayso_people::Session;
use sayso_web::Error;
use sayso_web::pages::who::own_path;
use serde::{Deserialize, Serialize};

/// As a form or an address asks for it.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Onward {
    to: Option<String>,
}

impl Onward {
    /// Its path; the start where another site's is asked for, or none.
    pub fn path(self) -> String {
        own_path(self.to)
    }
}

/// Where someone goes on who has just signed in: as asked for; the desk, where nothing is asked for and there is one.
///
/// # Errors
/// Where the database fails.
pub async fn signed_in(host: &Host, session: &Session, to: &str) -> Result<String, Error> {
    let desk = to == "/" && desk::has_one(host, session.account).await?;
    Ok(if desk { desk::PATH.to_owned() } else { to.to_owned() })
}

/// As a script is told it.
#[derive(Serialize)]
pub struct Led {
    to: String,
}

impl Led {
    /// To what was asked for, where it is an own page.
    pub fn to(asked: Option<String>) -> Self {
        Self { to: own_path(asked) }
    }

    /// The same for someone who has just signed in.
    ///
    /// # Errors
    /// Where the database fails.
    pub async fn signed_in(host: &Host, session: &Session, asked: Option<String>) -> Result<Self, Error> {
        Ok(Self { to: signed_in(host, session, &own_path(asked)).await? })
    }
}
