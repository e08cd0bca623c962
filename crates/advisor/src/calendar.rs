//! What has a day: meetings, days of agreed plans, checks that are due. For a calendar, which is read by programs some hours later:
//! what is in force now, Today says.

use crate::advice::NamedWord;
use crate::agreed::stands;
use crate::case::Case;
use crate::later::{open_check, tests_rest};
use crate::rest::rests_until;
use crate::steps::steps_after_rest;
use sayso_model::talks::{Passed, Standing, Talk, holder, holds, in_force, own_plans};
use sayso_model::{AnimalCard, Author, Day, EventId, Moment, PlanLine, ProbePlan, Proposed, ShortNote, Story};

/// Days for which a meeting stays after it was held.
pub const KEPT_DAYS: i32 = 28;

/// An entry of a calendar.
#[derive(Clone, PartialEq, Debug)]
pub struct Entry<'a> {
    /// The event it comes from: the same entry at each reading has the same.
    pub id: EventId,
    /// Since when it is as it is.
    pub since: Moment,
    /// With which animal, where it is about one.
    pub animal: Option<&'a AnimalCard>,
    /// What.
    pub what: What<'a>,
}

/// What an entry is.
#[derive(Clone, PartialEq, Debug)]
pub enum What<'a> {
    /// A meeting.
    Meeting {
        /// With whom: who proposed it, or has it in hand then.
        from: &'a Author,
        /// In whose words.
        text: Option<&'a ShortNote>,
        /// When it begins.
        starts_at: Moment,
        /// How long it is.
        minutes: u16,
        /// Whether the home agreed; else it waits for an answer.
        agreed: bool,
    },
    /// Days of a plan.
    Plan {
        /// From whom; none where it is the home's own.
        from: Option<&'a Author>,
        /// Its lines that are in force, and that no step of their words comes before.
        lines: Vec<PlanLine>,
        /// The first day still to come on which sessions do not rest, or the day it was agreed.
        first: Day,
        /// Its last.
        last: Day,
    },
    /// A check that was begun.
    GoOnWithCheck {
        /// Trials done.
        done: usize,
        /// Of so many.
        of: usize,
        /// The day of reading.
        today: Day,
    },
    /// A check that was agreed and not planned yet.
    PlanCheck {
        /// Of which word.
        word: NamedWord,
        /// The day of reading.
        today: Day,
    },
}

/// The entries of a home at a moment, of the talk given: as far as the reader may see it, and somebody saw it being written. `passed` is
/// by what one coach's writing passed on to another, as far as that counts.
#[must_use]
pub fn entries<'a>(story: &'a Story, talks: &'a [Talk<'a>], passed: &'a [Passed], now: Moment) -> Vec<Entry<'a>> {
    let mut all: Vec<Entry<'a>> = talks.iter().filter_map(|talk| meeting(story, talk, passed, now)).collect();
    for card in story.animals().into_values().filter(|card| card.active) {
        all.extend(of_animal(&Case::new(story, card.animal, now), card, talks, passed));
    }
    all
}

/// Whether a home has, or may come to have, a meeting or a check that is due, however its sessions rest.
#[must_use]
pub fn has_meeting_or_check(story: &Story, talks: &[Talk<'_>], now: Moment) -> bool {
    let dated = |talk: &Talk<'_>| match talk.part.proposes {
        Proposed::Meeting { .. } => meeting(story, talk, &[], now).is_some(),
        Proposed::Check { .. } => talk.standing == Standing::Accepted,
        _ => false,
    };
    let mut active = story.animals().into_values().filter(|card| card.active);
    talks.iter().any(dated) || active.any(|card| open_check(&Case::new(story, card.animal, now)).is_some())
}

fn meeting<'a>(story: &'a Story, talk: &Talk<'a>, passed: &'a [Passed], now: Moment) -> Option<Entry<'a>> {
    let Proposed::Meeting { starts_at, minutes } = talk.part.proposes else { return None };
    let agreed = match talk.standing {
        Standing::Open => false,
        Standing::Accepted | Standing::Ended { accepted: true } => true,
        Standing::Declined | Standing::Answered | Standing::Ended { accepted: false } | Standing::Withdrawn => {
            return None;
        }
    };
    let zone = story.zone();
    if now.day(&zone).days_since(starts_at.day(&zone)) > KEPT_DAYS {
        return None;
    }
    let (from, took) = holder(passed, talk, (starts_at, &zone));
    let what = What::Meeting { from, text: talk.part.text.as_ref(), starts_at, minutes, agreed };
    let animal = talk.event.animal.and_then(|id| story.animals().get(&id).copied());
    let since = took.into_iter().chain([talk.agreed_at.unwrap_or(talk.event.happened_at)]).max();
    Some(Entry { id: talk.id(), since: since?, animal, what })
}

fn of_animal<'a>(case: &Case<'a>, card: &'a AnimalCard, talks: &'a [Talk<'a>], passed: &'a [Passed]) -> Vec<Entry<'a>> {
    let (story, now, zone) = (case.story(), case.now(), case.zone());
    let today = now.day(zone);
    // On a day of which a part rests nothing is to be done, as far as can be said before that part is over.
    let from = rests_until(case).map(|until| {
        let day = until.day(zone);
        if day.start(zone) < until { day.plus(1) } else { day }
    });
    let mut in_force = in_force(story, talks, case.animal(), now);
    if !in_force.is_empty() {
        // What a word's step comes before is not told as what is done on a day. A rest is told by its days, and hides no other step.
        for step in steps_after_rest(case) {
            if in_force.get(&step.word.word).is_some_and(|(_, line)| !stands(&step, line).is_done()) {
                in_force.remove(&step.word.word);
            }
        }
    }
    let plan = |id: EventId, since: Moment, author: Option<&'a Author>, lines: &[PlanLine], last: Day| {
        // By its plan: another one may hold the very same line.
        let holds = |line: &&PlanLine| in_force.get(&line.word) == Some(&(id, **line));
        let lines: Vec<PlanLine> = lines.iter().filter(holds).copied().collect();
        let first = from.map_or(since.day(zone), |day| day.max(since.day(zone)));
        let what = What::Plan { from: author, lines, first, last };
        Entry { id, since, animal: Some(card), what }
    };
    let mut all = Vec::new();
    let held = talks.iter().filter(|t| t.standing == Standing::Accepted && t.event.animal == Some(case.animal()));
    for talk in held.clone() {
        if let (Proposed::Plan { lines, last_day }, Some(at)) = (&talk.part.proposes, talk.agreed_at) {
            all.push(plan(talk.id(), at, Some(holder(passed, talk, (now, zone)).0), lines, *last_day));
        }
    }
    let own = own_plans(story, case.animal(), now).filter(|own| holds(own.part, story, now));
    all.extend(own.map(|own| plan(own.id(), own.at(), None, &own.part.lines, own.part.last_day)));
    all.retain(
        |entry| matches!(&entry.what, What::Plan { lines, first, last, .. } if !lines.is_empty() && first <= last),
    );
    if tests_rest(case) {
        return all;
    }
    all.extend(open_check(case).map(|(probe, done, of)| Entry {
        id: EventId(probe.0),
        since: today.start(zone),
        animal: Some(card),
        what: What::GoOnWithCheck { done, of, today },
    }));
    for talk in held {
        let (Proposed::Check { word }, Some(at)) = (&talk.part.proposes, talk.agreed_at) else { continue };
        let planned = story.between::<ProbePlan>(case.animal(), at, now).any(|plan| plan.part.words.contains(word));
        if !planned {
            let what = What::PlanCheck { word: NamedWord::of(story, *word), today };
            all.push(Entry { id: talk.id(), since: today.start(zone), animal: Some(card), what });
        }
    }
    all
}
