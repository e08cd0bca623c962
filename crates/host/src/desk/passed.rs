//! What of some homes' lines is a coach's to go on with, and what they passed on: own proposals, and those that came with a hand-over or
//! a cover to which the home agreed. Only what this server saw being written counts.

use crate::desk::answers::HomeAnswer;
use crate::desk::kept::Kept;
use crate::desk::lines::{Found, lines};
use crate::fault::told;
use crate::host::Host;
use sayso_advisor::desk::Line;
use sayso_model::talks::{Passed, hands, reaches};
use sayso_model::{AccountId, Day, EventId, HomeId, Label, Moment, ProgrammeId};
use sayso_web::Error;
use std::collections::{BTreeMap, BTreeSet};

/// A proposal on a line.
struct Proposal {
    id: EventId,
    by: AccountId,
    written: Moment,
    programme: Option<ProgrammeId>,
}

fn proposals(line: &Line) -> impl Iterator<Item = Proposal> {
    let programmes = line.programmes.iter();
    let programmes =
        programmes.map(|p| Proposal { id: p.proposal, by: p.by, written: p.written, programme: Some(p.programme) });
    let practices = line.practices.iter();
    programmes.chain(practices.map(|p| Proposal { id: p.proposal, by: p.by, written: p.written, programme: None }))
}

/// The proposals of all animals of a home, and those that it answered lately.
fn all_proposals(kept: &Kept) -> impl Iterator<Item = Proposal> {
    let answered = |a: &HomeAnswer| Proposal { id: a.proposal, by: a.by, written: a.written, programme: None };
    kept.animals.values().flat_map(|animal| proposals(&animal.line)).chain(kept.answers.iter().map(answered))
}

/// Which proposals and agreements of homes were seen being written, each with by whom.
pub(super) async fn seen(host: &Host, kept: &[&Kept]) -> Result<BTreeMap<EventId, AccountId>, Error> {
    let mut ids: Vec<EventId> = Vec::new();
    for kept in kept {
        ids.extend(kept.passed.iter().map(|p| p.agreement));
        ids.extend(all_proposals(kept).map(|p| p.id));
        ids.extend(kept.written.iter().map(|written| written.id));
    }
    host.people.proposals_seen(&ids).await.map_err(told)
}

/// Agreements of a home that count.
pub(super) fn agreed(kept: &Kept, seen: &BTreeMap<EventId, AccountId>) -> Vec<Passed> {
    let counts = |p: &&Passed| seen.get(&p.agreement) == Some(&p.from.account);
    kept.passed.iter().filter(counts).cloned().collect()
}

/// Proposals of homes that a coach goes on with at a moment: their own, and those that passed on to them.
///
/// # Errors
/// Where the database fails.
pub async fn goes_on_with(host: &Host, me: AccountId, found: &Found, now: Moment) -> Result<BTreeSet<EventId>, Error> {
    let all: Vec<&Kept> = found.kept.values().map(|kept| &**kept).collect();
    let seen = seen(host, &all).await?;
    let mut mine = BTreeSet::new();
    for kept in all {
        let passed = agreed(kept, &seen);
        let Some(zone) = kept.animals.values().map(|animal| &animal.line.zone).next() else { continue };
        let today = now.day(zone);
        let own = |p: &Proposal| p.by == me || reaches(&passed, (p.by, p.written), me, today);
        let witnessed = all_proposals(kept).filter(|p| seen.get(&p.id) == Some(&p.by));
        mine.extend(witnessed.filter(own).map(|p| p.id));
    }
    Ok(mine)
}

/// That somebody who had joined a course goes on with another coach: to whom, and since when. Nothing else of the home.
#[derive(Clone, PartialEq, Eq, PartialOrd, Ord, Debug)]
pub struct HandedOn {
    /// Since when.
    pub since: Day,
    /// To whom.
    pub to: Label,
}

/// By course, who had joined it with a coach and was handed over since, of homes that are not open to the coach any more.
///
/// # Errors
/// Where the database fails.
pub async fn handed_on(
    host: &Host,
    me: AccountId,
    open: &Found,
    now: Moment,
) -> Result<BTreeMap<ProgrammeId, Vec<HandedOn>>, Error> {
    let homes = host.people.proposed_in(me).await.map_err(told)?;
    let closed: Vec<HomeId> = homes.into_iter().filter(|home| !open.kept.contains_key(home)).collect();
    if closed.is_empty() {
        return Ok(BTreeMap::new());
    }
    let found = lines(host, &closed).await?;
    let all: Vec<&Kept> = found.kept.values().map(|kept| &**kept).filter(|kept| !kept.passed.is_empty()).collect();
    let seen = seen(host, &all).await?;
    let mut told: BTreeMap<ProgrammeId, Vec<HandedOn>> = BTreeMap::new();
    for kept in all {
        let passed = agreed(kept, &seen);
        for line in kept.animals.values().map(|animal| &animal.line) {
            for of in proposals(line).filter(|p| seen.get(&p.id) == Some(&p.by)) {
                let Some(programme) = of.programme else { continue };
                let all = hands(&passed, (of.by, of.written), now.day(&line.zone));
                let mine = all.into_iter().filter(|p| p.days.is_none() && p.from.account == me);
                let last = mine.max_by_key(|p| p.since);
                let last = last.map(|p| HandedOn { since: p.since.day(&line.zone), to: p.to.name.clone() });
                told.entry(programme).or_default().extend(last);
            }
        }
    }
    told.values_mut().for_each(|of| of.sort());
    Ok(told)
}

/// Homes that a coach handed over and still sees, as by what they share with a club: to whom, and since when.
///
/// # Errors
/// Where the database fails.
pub async fn given_away(
    host: &Host,
    me: AccountId,
    open: &Found,
    now: Moment,
) -> Result<BTreeMap<HomeId, HandedOn>, Error> {
    let passed_on = open.kept.iter().filter(|(_, kept)| !kept.passed.is_empty());
    let all: Vec<(HomeId, &Kept)> = passed_on.map(|(home, kept)| (*home, &**kept)).collect();
    let seen = seen(host, &all.iter().map(|(_, kept)| *kept).collect::<Vec<_>>()).await?;
    let one = |(home, kept): (HomeId, &Kept)| {
        let passed = agreed(kept, &seen);
        let mine = passed.iter().filter(|p| p.days.is_none() && [p.from.account, p.to.account].contains(&me));
        // Whoever got it back goes on with it.
        let last = mine.max_by_key(|p| (p.since, p.agreement)).filter(|p| p.from.account == me && p.since <= now)?;
        let zone = kept.animals.values().map(|animal| &animal.line.zone).next()?;
        Some((home, HandedOn { since: last.since.day(zone), to: last.to.name.clone() }))
    };
    Ok(all.into_iter().filter_map(one).collect())
}
