//! A turn at work: what its steps share.

use crate::fault::LinkError;
use crate::kept::{self, Link, Progress, Sends};
use crate::there::There;
use sayso_model::Moment;
use sayso_store::Store;

/// What every step of a turn shares.
pub(crate) struct Work<'a> {
    pub store: &'a Store,
    pub there: There,
    pub link: Link,
    pub sends: Sends,
    pub progress: Progress,
    pub now: Moment,
}

impl Work<'_> {
    /// That the link still stands as it was when the turn began: asked before anything is sent and before anything is kept, so that who
    /// unlinks, or takes back what may go, is obeyed at once.
    pub fn still(&self) -> Result<(), LinkError> {
        match kept::link(self.store.dir())? {
            Some(link) if link == self.link => Ok(()),
            _ => Err(LinkError::NotLinked),
        }
    }

    /// Keeps how far it got, where the link still stands.
    pub fn keep(&self) -> Result<(), LinkError> {
        self.still()?;
        kept::keep_progress(self.store.dir(), &self.progress)
    }
}
