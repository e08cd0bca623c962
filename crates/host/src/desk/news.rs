//! What of homes' lines is new to somebody, by ids alone. Only what this server saw being written counts.

use crate::desk::kept::Kept;
use crate::desk::passed::{agreed, seen};
use crate::host::Host;
use sayso_model::talks::reaches;
use sayso_model::{AccountId, HomeId, Moment, Zone};
use sayso_people::db::Tiding;
use sayso_web::Error;
use std::collections::{BTreeMap, BTreeSet};
use std::sync::Arc;

type Lines = BTreeMap<HomeId, Arc<Kept>>;

/// What homes answered and shared since a moment, to what a coach goes on with. Whether each is open to the coach is asked before.
///
/// # Errors
/// Where the database fails.
pub async fn for_coach(
    host: &Host,
    me: AccountId,
    lines: &Lines,
    (since, now): (Moment, Moment),
) -> Result<BTreeSet<Tiding>, Error> {
    let all: Vec<&Kept> = lines.values().map(|kept| &**kept).collect();
    let seen = seen(host, &all).await?;
    let mut found = BTreeSet::new();
    for (home, kept) in lines {
        let passed = agreed(kept, &seen);
        let today = now.day(&kept.zone());
        let mine = kept.written.iter().filter(|w| seen.get(&w.id) == Some(&w.by));
        let mine = mine.filter(|w| w.by == me || reaches(&passed, (w.by, w.at), me, today));
        let answers = mine.flat_map(|w| &w.answers).filter(|a| a.at > since && a.by != Some(me));
        found.extend(answers.map(|a| Tiding { home: *home, what: a.id.0 }));
    }
    Ok(found)
}

/// What coaches sent to homes since a moment and nobody there has answered. Whether it is theirs to answer is asked before.
///
/// # Errors
/// Where the database fails.
pub async fn for_home(
    host: &Host,
    me: AccountId,
    lines: &Lines,
    (since, now): (Moment, Moment),
) -> Result<BTreeSet<Tiding>, Error> {
    let all: Vec<&Kept> = lines.values().map(|kept| &**kept).collect();
    let seen = seen(host, &all).await?;
    let mut found = BTreeSet::new();
    for (home, kept) in lines {
        let waits = kept.written.iter().filter(|w| w.waits && w.at > since && w.until.is_none_or(|until| until > now));
        let from_others = waits.filter(|w| w.by != me && seen.get(&w.id) == Some(&w.by));
        found.extend(from_others.map(|w| Tiding { home: *home, what: w.id.0 }));
    }
    Ok(found)
}

impl Kept {
    /// The home's zone, by which its lines go; UTC without any.
    fn zone(&self) -> Zone {
        self.animals.values().next().map_or_else(Zone::utc, |animal| animal.line.zone.clone())
    }
}
