//! What of some homes' lines is a coach's to go on with, and what they passed on: own proposals, and those that came with a hand-over or
//! a cover to which the home agreed. Only what this server saw being written counts.

use crate::desk::answers::HomeAnswer;
use crate::desk::kept::{Kept, Waiting};
use crate::desk::lines::{Found, lines};
use crate::fault::told;
use crate::host::Host;
use sayso_advisor::desk::Line;
use sayso_model::talks::{Passed, hands, in_place, reached};
use sayso_model::{AccountId, AnimalId, Day, EventId, HomeId, Label, Moment, ProgrammeId, WordId};
use sayso_web::Error;
use std::collections::{BTreeMap, BTreeSet};
use std::sync::Arc;

/// Proposals that a coach has in hand, each with since when.
pub type InHand = BTreeMap<EventId, Moment>;

/// A proposal on a line.
struct Proposal {
    id: EventId,
    by: AccountId,
    written: Moment,
    programme: Option<ProgrammeId>,
}

impl Proposal {
    /// One that belongs to no course.
    const fn alone(id: EventId, by: AccountId, written: Moment) -> Self {
        Self { id, by, written, programme: None }
    }
}

fn proposals(line: &Line) -> impl Iterator<Item = Proposal> {
    let programmes = line.programmes.iter();
    let programmes =
        programmes.map(|p| Proposal { programme: Some(p.programme), ..Proposal::alone(p.proposal, p.by, p.written) });
    let agreed = line.agreed.iter().map(|a| Proposal::alone(a.proposal, a.by, a.written));
    let practices = line.practices.iter().map(|p| Proposal::alone(p.proposal, p.by, p.written));
    programmes.chain(agreed).chain(practices)
}

/// The proposals of all animals of a home, and those that it answered lately.
fn all_proposals(kept: &Kept) -> impl Iterator<Item = Proposal> {
    let answered = |a: &HomeAnswer| Proposal::alone(a.proposal, a.by, a.written);
    let waits = |w: &Waiting| Proposal::alone(w.id, w.by, w.at);
    let lines = kept.animals.values().flat_map(|animal| proposals(&animal.line));
    lines.chain(kept.answers.iter().map(answered)).chain(kept.waiting.iter().map(waits))
}

/// Which proposals and agreements of some homes this server saw being written by whom they name.
pub struct Witnessed(BTreeSet<(HomeId, EventId)>);

impl Witnessed {
    /// Asked once for all of them.
    ///
    /// # Errors
    /// Where the database fails.
    pub async fn of(host: &Host, homes: &BTreeMap<HomeId, Arc<Kept>>) -> Result<Self, Error> {
        let mut ids: Vec<(HomeId, EventId)> = Vec::new();
        for (home, kept) in homes {
            let agreements = kept.passed.iter().map(|p| p.agreement);
            let all = agreements.chain(all_proposals(kept).map(|p| p.id));
            ids.extend(all.map(|id| (*home, id)));
        }
        Ok(Self(host.people.proposals_seen(&ids).await.map_err(told)?))
    }

    /// Whether one is among them.
    pub fn has(&self, home: HomeId, id: EventId) -> bool {
        self.0.contains(&(home, id))
    }

    /// By what counts what one coach wrote passed on to another.
    fn agreed(&self, home: HomeId, kept: &Kept) -> Vec<Passed> {
        kept.passed.iter().filter(|p| self.has(home, p.agreement)).cloned().collect()
    }
}

/// Proposals of homes that a coach goes on with at a moment, each with since when: their own, and those that passed on to them or were
/// written in their place.
pub fn goes_on_with(witnessed: &Witnessed, me: AccountId, homes: &BTreeMap<HomeId, Arc<Kept>>, now: Moment) -> InHand {
    let mut mine = InHand::new();
    for (home, kept) in homes {
        let zone = kept.zone();
        let (passed, today) = (witnessed.agreed(*home, kept), now.day(&zone));
        let since = |p: &Proposal| match p.by == me {
            true => Some(p.written),
            false => reached(&passed, (p.by, p.written), me, (today, &zone)),
        };
        let seen = all_proposals(kept).filter(|p| witnessed.has(*home, p.id));
        mine.extend(seen.filter_map(|p| Some((p.id, since(&p)?))));
    }
    mine
}

/// Whether an answer is news to a coach: somebody else gave it, to what they have in hand, and it came since they have it; not the one
/// by which they have it. Whoever has it since it was written has every answer to it, whatever the clock of a phone says.
pub fn is_theirs(goes_on: &InHand, me: AccountId, answer: &HomeAnswer) -> bool {
    let since = |taken: &Moment| *taken <= answer.written || (answer.known > *taken && answer.at != *taken);
    answer.from != Some(me) && goes_on.get(&answer.proposal).is_some_and(since)
}

/// Something that another coach wrote to a home in the place of one who was away.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct StoodIn {
    /// Who wrote.
    pub by: Label,
    /// The proposal.
    pub proposal: EventId,
    /// About which animal; none for the home.
    pub animal: Option<AnimalId>,
    /// What, by its name on the wire.
    pub kind: String,
    /// Words that it is about.
    pub words: Vec<WordId>,
    /// When.
    pub at: Moment,
}

/// What was written to a home lately in the place of a coach, the latest first.
pub fn stood_in(witnessed: &Witnessed, me: AccountId, (home, kept): (HomeId, &Kept)) -> Vec<StoodIn> {
    let mut covers = witnessed.agreed(home, kept);
    covers.retain(|p| p.from.account == me && p.to.account != me);
    if covers.is_empty() {
        return Vec::new();
    }
    let zone = kept.zone();
    let one = |proposal, (by, at): (AccountId, Moment), animal, kind: &str, words: &[WordId]| {
        let by = in_place(&covers, (by, at), &zone).next()?.to.name.clone();
        Some(StoodIn { by, proposal, animal, kind: kind.to_owned(), words: words.to_vec(), at })
    };
    let waits = kept.waiting.iter().filter_map(|w| one(w.id, (w.by, w.at), w.animal, &w.kind, &w.words));
    let answered = kept.answers.iter().filter(|a| a.live);
    let answered = answered.filter_map(|a| one(a.proposal, (a.by, a.written), a.animal, &a.kind, &a.words));
    let mut all: Vec<StoodIn> = waits.chain(answered).filter(|s| witnessed.has(home, s.proposal)).collect();
    all.sort_by_key(|s| (std::cmp::Reverse(s.at), s.proposal));
    all.dedup_by_key(|s| s.proposal);
    all
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
    let mut handed = found.kept;
    handed.retain(|_, kept| !kept.passed.is_empty());
    let witnessed = Witnessed::of(host, &handed).await?;
    let mut told: BTreeMap<ProgrammeId, Vec<HandedOn>> = BTreeMap::new();
    for (home, kept) in &handed {
        let passed = witnessed.agreed(*home, kept);
        for line in kept.animals.values().map(|animal| &animal.line) {
            for of in proposals(line).filter(|p| witnessed.has(*home, p.id)) {
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
pub fn given_away(
    witnessed: &Witnessed,
    me: AccountId,
    homes: &BTreeMap<HomeId, Arc<Kept>>,
    now: Moment,
) -> BTreeMap<HomeId, HandedOn> {
    let one = |(home, kept): (&HomeId, &Arc<Kept>)| {
        let passed = witnessed.agreed(*home, kept);
        let mine = passed.iter().filter(|p| p.days.is_none() && [p.from.account, p.to.account].contains(&me));
        // Whoever got it back goes on with it.
        let last = mine.max_by_key(|p| (p.since, p.agreement)).filter(|p| p.from.account == me && p.since <= now)?;
        Some((*home, HandedOn { since: last.since.day(&kept.zone()), to: last.to.name.clone() }))
    };
    homes.iter().filter_map(one).collect()
}
