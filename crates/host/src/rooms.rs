//! The rooms of each home: the pages of `web` with that home's log behind them, made when someone comes and kept for a while.

use crate::gate;
use crate::host::Host;
use axum::Router;
use axum::middleware::from_fn_with_state;
use sayso_model::HomeId;
use sayso_web::AppState;
use sayso_web::access::Access;
use std::collections::BTreeMap;
use std::fmt;
use std::sync::{Arc, Mutex, PoisonError};

/// Homes whose rooms are kept. What they worked out is kept with them, so it is memory as well as time.
const MOST: usize = 128;

#[derive(Default)]
struct Kept {
    rooms: BTreeMap<HomeId, (u64, Router)>,
    visits: u64,
}

/// Rooms by home.
#[derive(Default)]
pub struct Rooms(Mutex<Kept>);

impl fmt::Debug for Rooms {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.debug_struct("Rooms").finish_non_exhaustive()
    }
}

impl Rooms {
    fn kept(&self, home: HomeId, make: impl FnOnce() -> Router) -> Router {
        // Whoever panicked with it in hand left whole entries behind.
        let mut kept = self.0.lock().unwrap_or_else(PoisonError::into_inner);
        kept.visits += 1;
        let now = kept.visits;
        if let Some((seen, router)) = kept.rooms.get_mut(&home) {
            *seen = now;
            return router.clone();
        }
        if kept.rooms.len() >= MOST
            && let Some(longest_ago) = kept.rooms.iter().min_by_key(|(_, (seen, _))| *seen).map(|(id, _)| *id)
        {
            kept.rooms.remove(&longest_ago);
        }
        let router = make();
        kept.rooms.insert(home, (now, router.clone()));
        router
    }

    /// Forgets a home's rooms with what they worked out.
    pub fn forget(&self, home: HomeId) {
        self.0.lock().unwrap_or_else(PoisonError::into_inner).rooms.remove(&home);
    }
}

/// The rooms of a home.
pub fn of(host: &Arc<Host>, home: HomeId) -> Router {
    host.rooms.kept(home, || {
        let store = Arc::new(host.server.home(home));
        // Sound never leaves the phone: a server takes none.
        let state = AppState::new(store, Access::this_machine()).with_clock(host.clock()).taking_sound(false);
        let gate = from_fn_with_state(Arc::clone(host), gate::guard);
        sayso_web::rooms().route_layer(gate).fallback(sayso_web::told::no_such_page).with_state(state)
    })
}
