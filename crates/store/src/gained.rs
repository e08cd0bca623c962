//! What a home's log has gained since a place in it.

use crate::error::StoreError;
use sayso_model::Event;
use std::sync::Arc;
use tokio::task::JoinHandle;

/// What a home's log has gained.
#[derive(Default)]
pub(crate) struct Gained {
    pub events: Vec<Arc<Event>>,
    /// Events that this version does not understand: place in the log and kind.
    pub later: Vec<(i64, String)>,
}

impl Gained {
    /// Adds what came after it.
    pub fn extend(&mut self, more: Self) {
        self.events.extend(more.events);
        self.later.extend(more.later);
    }
}

/// Events of a page, and the places of those that cannot be read as such.
pub(crate) type Understood = (Vec<Arc<Event>>, Vec<i64>);

/// Reads the contents of a page.
pub(crate) fn understood(page: Vec<(i64, String)>) -> Understood {
    let (mut events, mut unread) = (Vec::with_capacity(page.len()), Vec::new());
    for (seq, content) in page {
        match serde_json::from_str(&content) {
            Ok(event) => events.push(Arc::new(event)),
            Err(_) => unread.push(seq),
        }
    }
    (events, unread)
}

/// What a thread of its own has read of a page, if one was asked to.
pub(crate) async fn joined(reading: Option<JoinHandle<Understood>>) -> Result<Option<Understood>, StoreError> {
    match reading {
        Some(reading) => reading.await.map(Some).map_err(|_| StoreError::Closed),
        None => Ok(None),
    }
}
