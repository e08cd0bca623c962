//! How the talk of a coach and a home stands: what is open, agreed, answered, over. Written so that whatever is unclear is not
//! agreed:
//!
//! - a proposal is what it was when it was first recorded; one that was corrected or withdrawn since, by whomever, is taken back,
//!   and nothing brings it back (a new proposal is a new event);
//! - an acceptance that was amended accepts nothing; a "no" stays one, whatever was done to it;
//! - of an acceptance and a "no" the later by (`happened_at`, id) counts.
//!
//! Whether the account named in a proposal wrote it, an event does not prove: a server of many homes remembers that beside the log.

use crate::body::{Author, OwnPlan, PlanLine, Practice, Proposal, ProposalAnswer, Proposed, Reply};
use crate::cards::WordCard;
use crate::event::{Body, Event, Kind, Part};
use crate::id::{AccountId, AnimalId, EventId, WordId};
use crate::stage::Stage;
use crate::story::{Fact, Story};
use crate::time::{Day, Moment, Zone};
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;

/// How a proposal stands.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Standing {
    /// Nobody has answered.
    Open,
    /// The home agreed.
    Accepted,
    /// The home said no.
    Declined,
    /// A note or question that was answered.
    Answered,
    /// Its last day, or the meeting, has passed.
    Ended {
        /// Whether it was agreed to.
        accepted: bool,
    },
    /// Taken back.
    Withdrawn,
}

impl Standing {
    /// Whether the home agreed, also where its time has passed.
    #[must_use]
    pub const fn is_agreed(self) -> bool {
        matches!(self, Self::Accepted | Self::Ended { accepted: true })
    }
}

/// One answer.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Answered<'a> {
    /// The event.
    pub event: &'a Event,
    /// What it says.
    pub part: &'a ProposalAnswer,
}

/// A proposal with its answers.
#[derive(Clone, PartialEq, Debug)]
pub struct Talk<'a> {
    /// The event, as first recorded.
    pub event: &'a Event,
    /// What it says.
    pub part: &'a Proposal,
    /// Answers that nobody amended, by time.
    pub answers: Vec<Answered<'a>>,
    /// Since when the home agrees; none where it does not.
    pub agreed_at: Option<Moment>,
    /// How it stands.
    pub standing: Standing,
}

impl Talk<'_> {
    /// The proposal's id.
    #[must_use]
    pub const fn id(&self) -> EventId {
        self.event.id
    }

    /// Whether it is about an animal: this one, or none alone.
    #[must_use]
    pub fn concerns(&self, animal: AnimalId) -> bool {
        self.event.animal.is_none_or(|of| of == animal)
    }

    /// Whether it still waits for, or holds, the home: neither settled nor over.
    #[must_use]
    pub const fn is_live(&self) -> bool {
        matches!(self.standing, Standing::Open | Standing::Accepted)
    }

    /// What was handed over to practise and still may be: sharing something of it neither settles nor ends it.
    #[must_use]
    pub fn practice(&self) -> Option<&Practice> {
        match &self.part.proposes {
            Proposed::Practice { practice } if self.is_live() => Some(practice),
            _ => None,
        }
    }

    /// Whether the home may still say yes or no: a plan whose last day has passed, and what was taken back, is over.
    #[must_use]
    pub const fn may_be_settled(&self) -> bool {
        !matches!(self.standing, Standing::Ended { .. } | Standing::Withdrawn)
    }
}

/// Every proposal of a home with its answers, newest first, as it stands at a moment.
#[must_use]
pub fn talks(story: &Story, at: Moment) -> Vec<Talk<'_>> {
    let mut answers: BTreeMap<EventId, Vec<Answered<'_>>> = BTreeMap::new();
    for event in story.as_recorded(Kind::ProposalAnswer) {
        if let Some(part) = ProposalAnswer::of(&event.body) {
            answers.entry(part.to).or_default().push(Answered { event, part });
        }
    }
    let mut all: Vec<Talk<'_>> = story
        .as_recorded(Kind::Proposal)
        .filter_map(|event| Proposal::of(&event.body).map(|part| (event, part)))
        .map(|(event, part)| talk(story, at, event, part, answers.remove(&event.id).unwrap_or_default()))
        .collect();
    all.sort_by_key(|t| std::cmp::Reverse((t.event.happened_at, t.event.id)));
    all
}

fn talk<'a>(
    story: &Story,
    at: Moment,
    event: &'a Event,
    part: &'a Proposal,
    mut answers: Vec<Answered<'a>>,
) -> Talk<'a> {
    let ledger = story.ledger();
    answers.sort_by_key(|a| (a.event.happened_at, a.event.id));
    // What closes counts whatever happened to it since; what opens, only as long as nobody touched it.
    answers.retain(|a| a.part.reply == Reply::Declined || !ledger.is_amended(a.event.id));
    let settled = answers.iter().rev().find(|a| a.part.reply != Reply::Said);
    let accepted = settled.filter(|a| a.part.reply == Reply::Accepted);
    let (accepted, declined) = (accepted.map(|a| a.event.happened_at), settled.is_some() && accepted.is_none());
    let over = until(part, &story.zone()).is_some_and(|until| until <= at);
    let standing = if ledger.is_amended(event.id) {
        Standing::Withdrawn
    } else if declined {
        Standing::Declined
    } else if part.proposes.is_words() && !answers.is_empty() {
        Standing::Answered
    } else if over {
        Standing::Ended { accepted: accepted.is_some() }
    } else if accepted.is_some() {
        Standing::Accepted
    } else {
        Standing::Open
    };
    let agreed_at = accepted.filter(|_| matches!(standing, Standing::Accepted | Standing::Ended { .. }));
    Talk { event, part, answers, agreed_at, standing }
}

/// From when on its time has passed, where it has one.
#[must_use]
pub fn until(part: &Proposal, zone: &Zone) -> Option<Moment> {
    let last = match part.proposes {
        Proposed::Plan { last_day, .. } => last_day,
        Proposed::Programme { ref course, first } => course.last(first),
        Proposed::Cover { last, .. } => last,
        // Its last moment still belongs to it.
        Proposed::Meeting { starts_at, minutes } => {
            return Some(starts_at.plus_seconds(60.0 * f64::from(minutes) + 0.001));
        }
        _ => return None,
    };
    Some(last.plus(1).start(zone))
}

/// Plans that a home made of its own for an animal, oldest first.
pub fn own_plans(story: &Story, animal: AnimalId, at: Moment) -> impl Iterator<Item = Fact<'_, OwnPlan>> {
    story.of::<OwnPlan>(animal).filter(move |plan| plan.at() <= at)
}

/// Whether such a plan still holds.
#[must_use]
pub fn holds(plan: &OwnPlan, story: &Story, at: Moment) -> bool {
    plan.last_day >= at.day(&story.zone())
}

/// The plan that is in force for each word of an animal, with its line: that agreed, or made by the home, last.
#[must_use]
pub fn in_force(
    story: &Story,
    all: &[Talk<'_>],
    animal: AnimalId,
    at: Moment,
) -> BTreeMap<WordId, (EventId, PlanLine)> {
    let mut plans: Vec<(Moment, EventId, &[PlanLine])> = all
        .iter()
        .filter(|t| t.standing == Standing::Accepted && t.event.animal == Some(animal))
        .filter_map(|t| match &t.part.proposes {
            Proposed::Plan { lines, .. } => Some((t.agreed_at?, t.id(), lines.as_slice())),
            _ => None,
        })
        .collect();
    let own = own_plans(story, animal, at).filter(|plan| holds(plan.part, story, at));
    plans.extend(own.map(|plan| (plan.at(), plan.id(), plan.part.lines.as_slice())));
    plans.sort_by_key(|(at, id, _)| (*at, *id));
    let lines = plans.into_iter().flat_map(|(_, id, lines)| lines.iter().map(move |line| (line.word, (id, *line))));
    lines.collect()
}

/// The line of a plan that is in force for each word of an animal.
#[must_use]
pub fn agreed(story: &Story, all: &[Talk<'_>], animal: AnimalId, at: Moment) -> BTreeMap<WordId, PlanLine> {
    in_force(story, all, animal, at).into_iter().map(|(word, (_, line))| (word, line)).collect()
}

/// The lines of a plan that a body is, or corrects into; none of anything else.
#[must_use]
pub fn plan_lines(body: &Body) -> &[PlanLine] {
    let stands = body.stands_as();
    match (Proposal::of(stands), OwnPlan::of(stands)) {
        (Some(Proposal { proposes: Proposed::Plan { lines, .. }, .. }), _) | (_, Some(OwnPlan { lines, .. })) => lines,
        _ => &[],
    }
}

/// Whether a body is, or corrects into, a plan by which somebody waits for a press.
#[must_use]
pub fn plans_inviting(body: &Body) -> bool {
    plan_lines(body).iter().any(PlanLine::invites)
}

/// The first line of a plan, counted from one, that would invite a word which ends sessions: nobody waits for a press of that one.
#[must_use]
pub fn invites_closing(story: &Story, lines: &[PlanLine]) -> Option<usize> {
    if !lines.iter().any(PlanLine::invites) {
        return None;
    }
    let words = story.words();
    let closing = |word: &WordId| words.get(word).is_some_and(|card| card.closing);
    lines.iter().position(|line| line.invites() && closing(&line.word)).map(|place| place + 1)
}

/// The card of a word that ends sessions, where it is proposed to invite it all the same. No form lets that be written: such a word came
/// to end them later.
#[must_use]
pub fn stage_of_closing<'a>(story: &'a Story, what: &Proposed) -> Option<&'a WordCard> {
    let Proposed::Stage { word, stage: Stage::Invite } = what else { return None };
    story.words().get(word).copied().filter(|card| card.closing)
}

/// What one coach of a home wrote passes on to another: by a hand-over, or by a cover on its days, to which the home agreed. Whether
/// those whom it names wrote it, the log does not prove.
#[derive(Clone, PartialEq, Eq, Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Passed {
    /// The proposal to which the home agreed.
    pub agreement: EventId,
    /// Whose place it is.
    pub from: Author,
    /// Who takes it.
    pub to: Author,
    /// Since when the home agrees.
    pub since: Moment,
    /// On which days alone, both included; for good where there are none.
    pub days: Option<(Day, Day)>,
}

/// Every hand-over and cover to which a home agreed, also covers whose days are over.
#[must_use]
pub fn passed(all: &[Talk<'_>]) -> Vec<Passed> {
    let one = |talk: &Talk<'_>| {
        let (to, days) = match &talk.part.proposes {
            Proposed::HandOver { to } => (to, None),
            Proposed::Cover { by, first, last } => (by, Some((*first, *last))),
            _ => return None,
        };
        let (agreement, from, to) = (talk.id(), talk.part.from.clone(), to.clone());
        Some(Passed { agreement, from, to, since: talk.agreed_at?, days })
    };
    all.iter().filter_map(one).collect()
}

/// By what something that an account wrote at a moment has passed on to others by a day: from hand to hand, and to whoever covers for
/// one of them that day. What was written after a hand-over does not go with it.
#[must_use]
pub fn hands(all: &[Passed], (from, written): (AccountId, Moment), today: Day) -> Vec<&Passed> {
    let (mut found, mut open): (Vec<&Passed>, _) = (Vec::new(), vec![(from, written)]);
    while let Some((account, since)) = open.pop() {
        for passed in all.iter().filter(|p| p.from.account == account) {
            let goes = match passed.days {
                None => since <= passed.since,
                Some((first, last)) => (first..=last).contains(&today),
            };
            if goes && found.iter().all(|known| known.agreement != passed.agreement) {
                found.push(passed);
                // Who covers passes nothing on.
                open.extend(passed.days.is_none().then_some((passed.to.account, passed.since)));
            }
        }
    }
    found
}

/// By which covers an account wrote something in the place of others: on a day of the cover, once the home had agreed to it.
pub fn in_place<'a>(
    all: &'a [Passed],
    (author, written): (AccountId, Moment),
    zone: &Zone,
) -> impl Iterator<Item = &'a Passed> {
    let day = written.day(zone);
    all.iter().filter(move |passed| {
        let on_its_days = passed.days.is_some_and(|(first, last)| (first..=last).contains(&day));
        passed.to.account == author && passed.since <= written && on_its_days
    })
}

/// Since when another account has in hand by a day what an account wrote at a moment: it passed on to them, or was written in their
/// place while they were away. None where it is not theirs.
#[must_use]
pub fn reached(
    all: &[Passed],
    (author, written): (AccountId, Moment),
    other: AccountId,
    (today, zone): (Day, &Zone),
) -> Option<Moment> {
    let to_other = |wrote: (AccountId, Moment)| {
        let taken = hands(all, wrote, today).into_iter().filter(|passed| passed.to.account == other);
        taken.map(|passed| passed.days.map_or(passed.since, |(first, _)| passed.since.max(first.start(zone)))).min()
    };
    let in_place = in_place(all, (author, written), zone).map(|passed| passed.from.account);
    let back = in_place.filter_map(|of| if of == other { Some(written) } else { to_other((of, written)) });
    to_other((author, written)).into_iter().chain(back).min()
}

/// Whether something that an account wrote at a moment has passed on to another by a day, or was written in their place.
#[must_use]
pub fn reaches(all: &[Passed], wrote: (AccountId, Moment), other: AccountId, on: (Day, &Zone)) -> bool {
    reached(all, wrote, other, on).is_some()
}

/// Who has in hand at a moment what a coach wrote, and since when, where that is another one: whoever took it over last by then, or
/// covers for them that day.
#[must_use]
pub fn holder<'a>(all: &'a [Passed], talk: &Talk<'a>, (at, zone): (Moment, &Zone)) -> (&'a Author, Option<Moment>) {
    let (today, written) = (at.day(zone), talk.event.happened_at);
    // What was written in the place of somebody is theirs again after the last day.
    let ended = in_place(all, (talk.part.from.account, written), zone).filter_map(|p| Some((p, p.days?.1)));
    let back = ended.filter(|(_, last)| *last < today).max_by_key(|(_, last)| *last);
    let (writer, came_back) =
        back.map_or((&talk.part.from, None), |(p, last)| (&p.from, Some(last.plus(1).start(zone))));
    let mut hands = hands(all, (writer.account, written), today);
    hands.retain(|passed| passed.since <= at);
    let last = hands.iter().filter(|passed| passed.days.is_none()).max_by_key(|passed| passed.since);
    let (author, since) = last.map_or((writer, came_back), |passed| (&passed.to, Some(passed.since)));
    let covers = hands.iter().filter(|passed| passed.days.is_some() && passed.from.account == author.account);
    covers.max_by_key(|passed| passed.since).map_or((author, since), |passed| (&passed.to, Some(passed.since)))
}
