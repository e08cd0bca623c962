//! What every handler shares.

use crate::access::Access;
use crate::brought::Waiting;
use crate::kept::Kept;
use crate::linking::seen::Seen;
use crate::listening::Seats;
use crate::norms::Norms;
use crate::secure::Authority;
use crate::store::Store;
use sayso_model::Moment;
use sayso_norms::Release;
use std::sync::Arc;
use std::time::{SystemTime, UNIX_EPOCH};
use tokio::sync::watch;

/// Shared by all handlers; cheap to clone.
#[derive(Clone)]
pub struct AppState {
    /// The log and its story.
    pub store: Arc<Store>,
    /// Who may come in.
    pub access: Arc<Access>,
    /// What signs this home's certificates, where devices must come over HTTPS.
    pub authority: Option<Arc<Authority>>,
    /// Who listens to which board.
    pub seats: Arc<Seats>,
    /// Whether sound is taken from pages that cannot listen by themselves.
    pub takes_sound: bool,
    /// Files that wait to be taken in.
    pub brought: Arc<Waiting>,
    /// What was worked out and still holds.
    pub kept: Arc<Kept>,
    /// What other homes did.
    pub norms: Norms,
    /// What the server that this notebook is linked to saw being written.
    pub linked: Arc<Seen>,
    clock: fn() -> Moment,
    stopping: watch::Sender<bool>,
}

impl AppState {
    /// The state on the machine's clock.
    #[must_use]
    pub fn new(store: Arc<Store>, access: Access) -> Self {
        let norms = Norms::kept_in(store.dir());
        Self {
            store,
            access: Arc::new(access),
            authority: None,
            seats: Arc::default(),
            takes_sound: true,
            brought: Arc::default(),
            kept: Arc::default(),
            norms,
            linked: Arc::default(),
            clock: machine_clock,
            stopping: watch::Sender::new(false),
        }
    }

    /// The same where devices must come over HTTPS.
    #[must_use]
    pub fn with_authority(self, authority: Option<Arc<Authority>>) -> Self {
        Self { authority, ..self }
    }

    /// The same that takes sound from pages, or none.
    #[must_use]
    pub fn taking_sound(self, takes_sound: bool) -> Self {
        Self { takes_sound, ..self }
    }

    /// The same beside a release that the server was given, or none.
    #[must_use]
    pub fn with_norms(self, norms: Option<Arc<Release>>) -> Self {
        Self { norms: Norms::Given(norms), ..self }
    }

    /// The same on another clock, for tests.
    #[must_use]
    pub fn with_clock(self, clock: fn() -> Moment) -> Self {
        Self { clock, ..self }
    }

    /// Tells what runs on by itself, such as web sockets, that serving ends.
    pub fn stop(&self) {
        self.stopping.send_replace(true);
    }

    /// Resolves when serving ends.
    pub async fn stopping(&self) {
        // The sender lives as long as this.
        let _ = self.stopping.subscribe().wait_for(|s| *s).await;
    }

    /// The time now.
    #[must_use]
    pub fn now(&self) -> Moment {
        (self.clock)()
    }
}

/// The machine's clock.
pub fn machine_clock() -> Moment {
    let millis = SystemTime::now().duration_since(UNIX_EPOCH).map_or(0, |d| d.as_millis());
    Moment::clamped(i64::try_from(millis).unwrap_or(i64::MAX))
}
