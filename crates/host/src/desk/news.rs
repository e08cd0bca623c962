//! What of homes' lines is new to somebody, by ids alone. Only what this server saw being written counts.

use crate::desk::kept::Kept;
use crate::desk::passed::{Witnessed, goes_on_with, is_theirs};
use sayso_model::{AccountId, HomeId, Moment};
use sayso_people::db::Tiding;
use std::collections::{BTreeMap, BTreeSet};
use std::sync::Arc;

type Lines = BTreeMap<HomeId, Arc<Kept>>;

/// What homes answered and shared since a moment, to what a coach goes on with. Whether each is open to the coach is asked before.
pub fn for_coach(
    witnessed: &Witnessed,
    me: AccountId,
    lines: &Lines,
    (since, now): (Moment, Moment),
) -> BTreeSet<Tiding> {
    let goes_on = goes_on_with(witnessed, me, lines, now);
    let mut found = BTreeSet::new();
    for (home, kept) in lines {
        let new = kept.answers.iter().filter(|a| a.at > since && is_theirs(&goes_on, me, a));
        found.extend(new.map(|a| Tiding { home: *home, what: a.answer.0 }));
    }
    found
}

/// What coaches sent to homes since a moment and nobody there has answered. Whether it is theirs to answer is asked before.
pub fn for_home(
    witnessed: &Witnessed,
    me: AccountId,
    lines: &Lines,
    (since, now): (Moment, Moment),
) -> BTreeSet<Tiding> {
    let mut found = BTreeSet::new();
    for (home, kept) in lines {
        let waits = kept.waiting.iter().filter(|w| w.at > since && w.until.is_none_or(|until| until > now));
        let from_others = waits.filter(|w| w.by != me && witnessed.has(*home, w.id));
        found.extend(from_others.map(|w| Tiding { home: *home, what: w.id.0 }));
    }
    found
}
