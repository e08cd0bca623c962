//! Events of homes that a notebook does not hold: found when they would be written.

use crate::sqlite::log;
use crate::written::Written;
use sayso_model::HomeId;
use sqlx::SqliteConnection;
use std::collections::BTreeSet;

/// Which of `events` are of a home that is not here and were not asked in, by their places. `here` is what the writer
/// knows to be here; it gains what stands in the log already, never what only may come in: that may be kept out yet. In an
/// empty notebook the first event's home is the notebook's own.
pub(crate) async fn among(
    db: &mut SqliteConnection,
    here: &mut BTreeSet<HomeId>,
    events: &[&Written],
) -> Result<BTreeSet<usize>, sqlx::Error> {
    let mut strangers = BTreeSet::new();
    if events.iter().all(|w| here.contains(&w.home)) {
        return Ok(strangers);
    }
    let mut empty: bool = sqlx::query_scalar("SELECT NOT EXISTS (SELECT 1 FROM event)").fetch_one(&mut *db).await?;
    let (mut coming, mut away) = (BTreeSet::new(), BTreeSet::new());
    for (place, written) in events.iter().enumerate() {
        let home = written.home;
        if here.contains(&home) || coming.contains(&home) {
            continue;
        }
        if !away.contains(&home) && log::holds(db, home).await? {
            here.insert(home);
        } else if empty {
            // Nothing is here that it could be in the way of: it is stored.
            coming.insert(home);
            empty = false;
        } else {
            away.insert(home);
            if !written.asked_in {
                strangers.insert(place);
            }
        }
    }
    Ok(strangers)
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;
    use sayso_model::EventId;
    use sqlx::Connection;
    use uuid::Uuid;

    fn written(n: u128, home: u128, asked_in: bool) -> Written {
        let (id, home, kind) = (EventId(Uuid::from_u128(n)), HomeId(Uuid::from_u128(home)), "remark".to_owned());
        Written { id, home, kind, amends: None, json: "{}".to_owned(), asked_in }
    }

    #[tokio::test]
    async fn each_event_is_decided_on_by_itself_and_only_what_stands_in_the_log_is_here() {
        let mut db = SqliteConnection::connect("sqlite::memory:").await.unwrap();
        sqlx::raw_sql(include_str!("../../migrations/sqlite/0001_log.sql")).execute(&mut db).await.unwrap();
        let mut here = BTreeSet::new();
        let first = [written(1, 7, false), written(2, 8, false), written(3, 7, false)];
        let found = among(&mut db, &mut here, &first.iter().collect::<Vec<_>>()).await.unwrap();
        assert_eq!((found, here.len()), (BTreeSet::from([1]), 0), "the first is at home, and not stored yet");
        log::insert(&mut db, &[&first[0]]).await.unwrap();
        let mixed = [written(4, 8, false), written(5, 8, true), written(6, 8, false), written(7, 7, false)];
        let found = among(&mut db, &mut here, &mixed.iter().collect::<Vec<_>>()).await.unwrap();
        assert_eq!(found, BTreeSet::from([0, 2]));
        assert_eq!(here, BTreeSet::from([first[0].home]));
    }
}
