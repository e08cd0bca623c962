//! Agreed swaps, as the methods read them: what was drawn, whether it was carried out, and which button came next.

use crate::called::Numbered;
use crate::case::Case;
use crate::observe::{Answered, answered_between};
use crate::originals::{Fate, Original, Originals};
use sayso_methods::understanding::swap::DrawnAnswer;
use sayso_model::{Answer, EventId, Moment, PressedBy, RewardId, SwapDraw, SwapPlan, Then, WordId, draw};
use std::collections::{BTreeMap, BTreeSet};

/// A press within this many seconds after the thing came says that it was not what was wanted (common practice, no source).
pub const CORRECTION_S: f64 = 30.0;
/// More blocks than any agreed time has.
const MOST_BLOCKS: usize = 1000;

/// Drawn answers of closed blocks, and when each block was closed.
#[derive(Clone, PartialEq, Debug, Default)]
pub struct Swaps {
    /// Answers.
    pub answers: Vec<DrawnAnswer>,
    /// When blocks were closed.
    pub closed: BTreeMap<usize, Moment>,
    /// The last moment of the time of swaps that is running, if one is.
    pub running_until: Option<Moment>,
}

/// When a time of swaps is over: after its days, or when it was first stopped.
fn ends(all: &Originals<'_>, plan: &Original<'_, SwapPlan>) -> (Moment, bool) {
    let planned = plan.at().plus_seconds(f64::from(plan.part.days) * 86_400.0);
    let stopped = all.stops.iter().filter(|s| s.part.swap == plan.part.swap).map(Original::at).min();
    match stopped {
        Some(stopped) if stopped < planned => (stopped, true),
        _ => (planned, false),
    }
}

/// Everything drawn for answers so far.
#[must_use]
pub fn swaps(case: &Case<'_>, numbered: &mut Numbered) -> Swaps {
    let (all, now) = (case.log(), case.now());
    let mut found = Swaps::default();
    if all.swaps.is_empty() {
        return found;
    }
    let rewards: BTreeMap<WordId, Option<RewardId>> =
        case.story().words().into_iter().map(|(w, c)| (w, c.reward)).collect();
    let mut over: Option<Moment> = None;
    for (number, plan) in all.swaps.iter().enumerate() {
        // Of two times that overlap the first counts.
        if over.is_some_and(|over| plan.at() < over) {
            continue;
        }
        let (end, stopped) = ends(all, plan);
        over = Some(end);
        if end > now {
            found.running_until = Some(end);
        }
        // Answered once for the whole time; a press dated outside of it is looked up by itself.
        let answered = answered_between(case.story(), case.animal(), (plan.at(), end.min(now)), now);
        let answered: BTreeMap<EventId, Answered<'_>> = answered.into_iter().map(|a| (a.press.id(), a)).collect();
        let mut drawn = BTreeSet::new();
        for d in all.draws.iter().filter(|d| d.part.swap == plan.part.swap && d.at() >= plan.at() && d.at() <= end) {
            if !drawn.insert(d.part.press) {
                continue;
            }
            let Some(block) = draw::block(plan.at(), d.at()) else { continue };
            let closed =
                plan.at().plus_seconds(((block + 1) as f64) * f64::from(draw::PARTNER_DAYS) * 86_400.0).min(end);
            let Some(partner) = draw::partner(&plan.part.words, block, d.part.word).filter(|_| closed <= now) else {
                continue;
            };
            let swapped = draw::swapped(plan.part.swap, d.part.press, plan.part.one_in);
            let give = if swapped { partner } else { d.part.word };
            let press = answered.get(&d.part.press).copied().or_else(|| case.answered(d.part.press));
            let as_drawn = press.is_some_and(|a| carried_out(&a, d, give, &rewards));
            let came = press.and_then(|a| a.delivery).map(|delivery| delivery.at());
            let next = came.and_then(|came| {
                let mut soon = case.presses_between(came.plus_seconds(0.001), came.plus_seconds(CORRECTION_S));
                let own = soon.find(|p| p.part.by == PressedBy::Animal && p.id() != d.part.press)?;
                Some(own.part.word)
            });
            // A press told only with the answer is one that came, too.
            let told = press.and_then(|a| a.delivery).filter(|d| d.part.then == Some(Then::PressedAgain));
            let next = next.or_else(|| told.map(|d| d.part.then_word.unwrap_or(d.part.word)));
            let block = number * MOST_BLOCKS + block;
            found.closed.insert(block, closed);
            found.answers.push(DrawnAnswer {
                block,
                word: numbered.number(d.part.word),
                partner: numbered.number(partner),
                swapped,
                next: next.map(|w| numbered.number(w)),
                // A block cut short by stopping can only speak against, as one that was not carried out.
                departed: !as_drawn || (stopped && closed == end),
            });
        }
    }
    found
}

fn carried_out(
    a: &Answered<'_>,
    d: &Original<'_, SwapDraw>,
    give: WordId,
    rewards: &BTreeMap<WordId, Option<RewardId>>,
) -> bool {
    let Some(delivery) = a.delivery.map(|delivery| delivery.part) else { return false };
    let given = match delivery.answer {
        Answer::Given | Answer::Partly => d.part.word == give,
        Answer::Alternative => {
            delivery.alternative.is_some()
                && rewards.get(&give).copied().flatten() == delivery.alternative
                && d.part.word != give
        }
        Answer::Declined | Answer::Missed => false,
    };
    // Where nobody wrote down what it did then, presses may have gone unwritten as well.
    given
        && delivery.then.is_some()
        && d.part.give == give
        && d.fate == Fate::Stands
        && a.press.part.word == d.part.word
}
