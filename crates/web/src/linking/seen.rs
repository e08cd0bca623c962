//! What the server saw being written by whom it names, as the link was told: so that at home, too, a coach's words stand as a coach's.

use crate::fresh::Fresh;
use sayso_linked::PROGRESS_FILE;
use sayso_model::EventId;
use std::collections::BTreeSet;
use std::path::Path;
use std::sync::Arc;

/// As the file said when it was last changed.
#[derive(Default, Debug)]
pub struct Seen(Fresh<Arc<BTreeSet<EventId>>>);

impl Seen {
    /// Whether the server that the notebook in a folder is linked to saw an event being written by whom it names.
    #[must_use]
    pub fn has(&self, dir: &Path, id: EventId) -> bool {
        let read = || {
            // One that cannot be read is told on the page of the link.
            let link = sayso_linked::link(dir).ok().flatten();
            let progress = link.and_then(|link| sayso_linked::progress(dir, &link).ok());
            Arc::new(progress.map(|progress| progress.about.witnessed.into_iter().collect()).unwrap_or_default())
        };
        self.0.of(&dir.join(PROGRESS_FILE), read).is_some_and(|all| all.contains(&id))
    }
}
