//! Homes erased by any program: their stories are let go from the memory of this one too.

use crate::error::StoreError;
use crate::postgres::faults::told;
use crate::postgres::home::HomeLog;
use crate::stories::Stories;
use sayso_model::HomeId;
use sqlx::PgPool;
use sqlx::postgres::{PgConnectOptions, PgListener, PgPoolOptions};
use std::sync::{Arc, Weak};
use std::time::Duration;
use tokio::task::JoinHandle;

/// What the database says the home's id on, as its function `erase` names it.
const CHANNEL: &str = "sayso_erased";
/// Before a lost connection is sought again.
const PAUSE: Duration = Duration::from_secs(1);

/// A task that listens as long as this is held.
#[derive(Debug)]
pub(crate) struct Ears(JoinHandle<()>);

impl Drop for Ears {
    fn drop(&mut self) {
        self.0.abort();
    }
}

impl Ears {
    /// Listens on a connection of its own, and asks by `pool` about what it may have missed.
    pub fn open(serving: PgConnectOptions, pool: PgPool, stories: &Arc<Stories>) -> Self {
        let own = PgPoolOptions::new().max_connections(1).connect_lazy_with(serving);
        let stories = Arc::downgrade(stories);
        Self(tokio::spawn(async move {
            loop {
                match listen(&own, &pool, &stories).await {
                    Ok(()) | Err(StoreError::Closed) => return,
                    Err(error) => tracing::debug!("Erased homes are not told of just now: {error}"),
                }
                tokio::time::sleep(PAUSE).await;
            }
        }))
    }
}

async fn listen(own: &PgPool, pool: &PgPool, stories: &Weak<Stories>) -> Result<(), StoreError> {
    let mut ears = PgListener::connect_with(own).await.map_err(told)?;
    ears.listen(CHANNEL).await.map_err(told)?;
    let Some(known) = stories.upgrade() else { return Ok(()) };
    for home in known.homes() {
        if let Err(StoreError::HomeLeft(_)) = (HomeLog { home, pool: pool.clone() }).revision().await {
            known.forget(home);
        }
    }
    drop(known);
    loop {
        let said = ears.try_recv().await.map_err(told)?;
        // Where the connection was lost: begun anew, with what was missed.
        let said = said.ok_or_else(|| StoreError::Unreachable { what: "the connection was lost".to_owned() })?;
        let Some(known) = stories.upgrade() else { return Ok(()) };
        if let Ok(home) = said.payload().parse() {
            known.forget(HomeId(home));
        }
    }
}
