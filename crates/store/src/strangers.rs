//! Events of households that a notebook does not hold: found when they would be written.

use crate::log::Written;
use sayso_model::{HomeId, Problem, Problems};
use sqlx::SqliteConnection;
use std::collections::BTreeSet;

/// The households of `events` that are not here and were not asked in. `here` is what the writer knows to be here; what
/// is found out is added. In an empty notebook the first event's household is at home.
pub(crate) async fn among(
    db: &mut SqliteConnection,
    here: &mut BTreeSet<HomeId>,
    events: &[&Written],
) -> Result<BTreeSet<HomeId>, sqlx::Error> {
    let mut strangers = BTreeSet::new();
    if events.iter().all(|w| here.contains(&w.home)) {
        return Ok(strangers);
    }
    let mut empty: bool = sqlx::query_scalar("SELECT NOT EXISTS (SELECT 1 FROM event)").fetch_one(&mut *db).await?;
    for written in events {
        let home = written.home;
        if here.contains(&home) || strangers.contains(&home) {
            continue;
        }
        let known: bool = sqlx::query_scalar("SELECT EXISTS (SELECT 1 FROM event WHERE household = $1)")
            .bind(home.0)
            .fetch_one(&mut *db)
            .await?;
        if known || empty || written.asked_in {
            here.insert(home);
            empty = false;
        } else {
            strangers.insert(home);
        }
    }
    Ok(strangers)
}

/// Why an event of another household is refused.
pub(crate) fn refusal(home: HomeId) -> Problems {
    let what = format!(
        "is {home}, another household than this notebook's; to keep several in one notebook, import a file of its \
         events and say so"
    );
    Problems(vec![Problem { field: "home".to_owned(), what }])
}
