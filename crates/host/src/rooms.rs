//! The rooms of each home, made when someone comes and kept for a while.

use axum::Router;
use sayso_model::HomeId;
use std::collections::BTreeMap;
use std::fmt;
use std::sync::{Mutex, PoisonError};

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
    /// Those of a home, made where they are not here.
    pub fn kept(&self, home: HomeId, make: impl FnOnce() -> Router) -> Router {
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
