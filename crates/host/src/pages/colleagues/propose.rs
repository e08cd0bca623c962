//! A coach proposes something to a home from the desk: as from its own pages, under the own name, asked for anew.

use crate::asker::Asker;
use crate::fault::{came_new, told};
use crate::stories::Stories;
use sayso_model::{AnimalId, Author, Day, Event, EventId, HomeId, Proposal, Proposed, ShortNote, Source};
use sayso_people::may::may;
use sayso_people::needs::may_append;
use sayso_people::{Capability, Who};
use sayso_store::StoreError;
use sayso_web::Error;
use sayso_web::typed::Typed;
use sayso_wording::words;
use uuid::Uuid;

/// Whether it was put into the home's log; not where the home is not open to the coach any more.
///
/// # Errors
/// Where a database fails; where the log refuses it.
pub async fn propose(
    asker: &Asker,
    who: &Who,
    (home, animal): (HomeId, Option<AnimalId>),
    proposes: Proposed,
    text: Option<ShortNote>,
) -> Result<bool, Error> {
    let (host, now) = (&asker.host, asker.now);
    let known = host.people.known_to(who, home, &Stories(&host.server), now).await.map_err(told)?;
    let Some(known) = known else { return Ok(false) };
    let Ok(by) = may(who, Capability::Advise, home, Some(&known), now) else { return Ok(false) };
    let from = Author { account: who.account, name: asker.signed.account.name.clone() };
    let event = Event {
        id: EventId(Uuid::now_v7()),
        home,
        animal,
        person: None,
        happened_at: now,
        zone: known.zone.clone(),
        recorded_at: now,
        source: Source::Tap,
        body: Proposal { from, proposes, text, takes_up: None, club: None }.into(),
    };
    // What a proposal takes goes by no other event.
    may_append(who, &event, Some(&known), |_| None, now, asker.is_fresh())?;
    let outcomes = match host.server.home(home).append(vec![event.clone()]).await {
        // It left meanwhile.
        Err(StoreError::NoSuchHome(_) | StoreError::HomeLeft(_)) => return Ok(false),
        outcomes => outcomes?,
    };
    came_new(outcomes.into_iter().next())?;
    host.people.witness_proposal(&by, &event, now).await.map_err(told)?;
    Ok(true)
}

/// A day from the first that may be to so many later.
pub fn near_day(typed: &mut Typed, name: &str, (first, days): (Day, i32)) -> Option<Day> {
    let last = first.plus(days);
    let otherwise = words!(colleagues::day_wrong, first = typed.reader().date(first), last = typed.reader().date(last));
    typed.day_within(name, (first, last), otherwise)
}
