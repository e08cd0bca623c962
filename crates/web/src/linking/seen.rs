//! What the server saw being written by whom it names, as the link was told: so that at home, too, a coach's words stand as a coach's.

use crate::fresh::Fresh;
use sayso_linked::WITNESSED_FILE;
use sayso_model::EventId;
use std::collections::BTreeSet;
use std::path::Path;
use std::sync::Arc;

/// As the file said when it was last changed.
#[derive(Default, Debug)]
pub struct Seen(Fresh<Arc<BTreeSet<EventId>>>);

impl Seen {
    /// Whether a server that the notebook in a folder is or was linked to saw an event being written by whom it names.
    #[must_use]
    pub fn has(&self, dir: &Path, id: EventId) -> bool {
        let read = || {
            Arc::new(sayso_linked::witnessed(dir).unwrap_or_else(|why| {
                tracing::warn!("What a server saw being written is not known: {why}");
                BTreeSet::new()
            }))
        };
        self.0.of(&dir.join(WITNESSED_FILE), read).is_some_and(|all| all.contains(&id))
    }
}
