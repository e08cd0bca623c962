//! What of homes' lines is new to somebody, by ids alone. Only what this server saw being written counts.

use crate::desk::kept::Kept;
use crate::desk::lines::lines;
use crate::desk::passed::{Witnessed, goes_on_with, is_theirs};
use crate::fault::told;
use crate::host::Host;
use sayso_model::{AccountId, EventId, HomeId, Moment};
use sayso_people::db::Tiding;
use sayso_web::Error;
use std::collections::{BTreeMap, BTreeSet};
use std::sync::Arc;

type Lines = BTreeMap<HomeId, Arc<Kept>>;

/// What homes answered and shared, as far as it came since a moment, to what a coach goes on with. Whether each is open to the coach is asked before.
pub fn for_coach(
    witnessed: &Witnessed,
    me: AccountId,
    lines: &Lines,
    (since, now): (Moment, Moment),
) -> BTreeSet<Tiding> {
    let goes_on = goes_on_with(witnessed, me, lines, now);
    let mut found = BTreeSet::new();
    for (home, kept) in lines {
        let new = kept.answers.iter().filter(|a| a.known > since && is_theirs(&goes_on, me, a));
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

/// Answers of a home that came since an account last looked at what was agreed there, or spoke with the home. Its lines are brought up to
/// date for that, so that what comes after a look noted from then on is known later than the look.
///
/// # Errors
/// Where a database fails.
pub async fn unread(host: &Host, account: AccountId, home: HomeId) -> Result<BTreeSet<EventId>, Error> {
    let found = lines(host, &[home]).await?;
    let heard = host.people.heard(account, &[home]).await.map_err(told)?.remove(&home);
    let answers = found.kept.get(&home).into_iter().flat_map(|kept| &kept.answers);
    Ok(answers.filter(|a| heard.is_none_or(|heard| a.known > heard)).map(|a| a.answer).collect())
}
