//! Stories kept in memory, each brought up to date by what the log has gained since.

use crate::error::StoreError;
use crate::log::{self, Revision};
use sayso_model::{HomeId, Story};
use sqlx::{Acquire, SqlitePool};
use std::collections::{BTreeMap, HashMap};
use std::path::Path;
use std::sync::Arc;
use tokio::sync::Mutex;

/// More new events than this, and a story is put together anew rather than event by event.
const ANEW: usize = 2_000;

#[derive(Default)]
struct Kept {
    at: Revision,
    story: Arc<Story>,
    later: BTreeMap<String, usize>,
}

/// The stories of the households asked for.
#[derive(Default)]
pub(crate) struct Stories {
    // One lock a household: loading one does not hold up the others, and is done once for all who wait.
    kept: std::sync::Mutex<HashMap<HomeId, Arc<Mutex<Kept>>>>,
}

impl Stories {
    /// The story of a household as of the log's present state, whoever wrote it, and by kind how many of its events
    /// are not understood.
    pub(crate) async fn get(
        &self,
        readers: &SqlitePool,
        path: &Path,
        home: HomeId,
    ) -> Result<(Arc<Story>, BTreeMap<String, usize>), StoreError> {
        let slot = {
            let mut kept = self.kept.lock().unwrap_or_else(std::sync::PoisonError::into_inner);
            Arc::clone(kept.entry(home).or_default())
        };
        let mut kept = slot.lock().await;
        let sql = StoreError::sql(path);
        let mut db = readers.acquire().await.map_err(&sql)?;
        let now = log::revision(&mut db).await.map_err(&sql)?;
        if now > kept.at {
            // One view of the log for both questions, or an event stored between them would be skipped for ever.
            let mut view = db.begin().await.map_err(&sql)?;
            let now = log::revision(&mut view).await.map_err(&sql)?;
            let log::Gained { events: gained, later } = log::gained(&mut view, path, home, kept.at).await?;
            view.commit().await.map_err(&sql)?;
            for (kind, n) in later {
                *kept.later.entry(kind).or_default() += n;
            }
            if gained.len() > ANEW {
                let known = kept.story.ledger().all().cloned();
                let story = Story::from_events(known.chain(gained.into_iter().map(|l| l.event)));
                kept.story = Arc::new(story);
            } else if !gained.is_empty() {
                // Copies only where somebody still reads the story as it was.
                let story = Arc::make_mut(&mut kept.story);
                for logged in gained {
                    story.add(logged.event);
                }
            }
            kept.at = now;
        }
        Ok((Arc::clone(&kept.story), kept.later.clone()))
    }
}
