//! What the server saw being written by whom it names, as the link was told: so that at home, too, a coach's words stand as a coach's.

use sayso_linked::PROGRESS_FILE;
use sayso_model::EventId;
use std::collections::BTreeSet;
use std::path::Path;
use std::sync::{Arc, Mutex, PoisonError};
use std::time::SystemTime;

/// As the file said when it was last changed.
#[derive(Default, Debug)]
pub struct Seen(Mutex<Option<(SystemTime, Arc<BTreeSet<EventId>>)>>);

impl Seen {
    /// Whether the server that the notebook in a folder is linked to saw an event being written by whom it names.
    #[must_use]
    pub fn has(&self, dir: &Path, id: EventId) -> bool {
        let changed = std::fs::metadata(dir.join(PROGRESS_FILE)).and_then(|meta| meta.modified());
        let mut kept = self.0.lock().unwrap_or_else(PoisonError::into_inner);
        let Ok(changed) = changed else {
            *kept = None;
            return false;
        };
        if kept.as_ref().is_none_or(|(at, _)| *at != changed) {
            // One that cannot be read is told on the page of the link.
            let link = sayso_linked::link(dir).ok().flatten();
            let progress = link.and_then(|link| sayso_linked::progress(dir, &link).ok());
            let all = progress.map(|progress| progress.about.witnessed.into_iter().collect()).unwrap_or_default();
            *kept = Some((changed, Arc::new(all)));
        }
        kept.as_ref().is_some_and(|(_, all)| all.contains(&id))
    }
}
