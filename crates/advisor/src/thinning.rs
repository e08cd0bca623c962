//! When a word is asked for more often than it can be given: a first small step towards waiting, with a signal, and the
//! sign to go back. Never for water, toilet, pain, fear or rest.

use crate::advice::{Advice, Reason, Sure, Topic};
use crate::case::Case;
use crate::demand::BURST_MAY_COME;
use crate::estimate::Estimate;
use crate::observe::own_presses;
use crate::rate::per_day;
use crate::stages::standings;
use sayso_methods::demand::thinning::{ThinningStep, next_step};
use sayso_model::{RewardKind, Stage};

/// Days looked back on.
const DAYS: i32 = 7;
/// Own presses a day above which demand counts as high (common practice put in a number, no source).
const MANY_A_DAY: f64 = 20.0;
/// Share answered with the thing below which the household cannot keep up.
const KEEPING_UP: f64 = 0.5;

/// One advice a word whose demand is beyond what is given, both beyond chance.
#[must_use]
pub fn thinning(case: &Case<'_>) -> Vec<Advice> {
    let from = case.since(DAYS);
    let (words, rewards) = (case.story().words(), case.story().rewards());
    standings(case)
        .iter()
        .filter(|s| s.stage == Stage::Converse)
        .filter(|s| {
            // Rest is never made to wait, nor a word that ends a session.
            let card = words.get(&s.word);
            let kind = card.and_then(|c| c.reward).and_then(|r| rewards.get(&r)).map(|r| r.kind);
            kind != Some(RewardKind::Rest) && card.is_some_and(|c| !c.closing)
        })
        .filter_map(|s| {
            let own = own_presses(case.recent(from), Some(s.word));
            let rate = per_day(own.iter().map(|a| a.press.at()), from, case.now(), case.zone());
            let given = Estimate::share(own.iter().filter(|a| a.given()).count(), own.len());
            if !(rate.surely_above(MANY_A_DAY) && given.surely_below(KEEPING_UP)) {
                return None;
            }
            let ThinningStep { available, unavailable } = next_step(None, &[]).ok()?.step?;
            let act = format!(
                "\u{201c}{}\u{201d} is asked for more than it can be given. Put up a sign all can see and use it: {available:.0} seconds in which every press is answered with the thing, then {unavailable:.0} seconds of \u{201c}not now\u{201d} with something else offered, and again.",
                s.says
            );
            let because = vec![
                Reason::figure(format!("Own presses, last {DAYS} days (bar {MANY_A_DAY:.0} a day)."), rate),
                Reason::figure("Share answered with the thing.", given),
                Reason::said("Multiple schedule with signals: Hanley, Iwata & Thompson 2001, whose last step was 60 s and 240 s; the first step is from memory, those between are ours."),
            ];
            Some(
                Advice::new(
                    Topic::Converse,
                    act,
                    because,
                    Sure::Little,
                    "On to longer waits once two sessions running hold few presses during \u{201c}not now\u{201d}; back to answering every press at a strong sign, leaving, or presses that do not fall over three sessions.",
                )
                .caution(format!("{BURST_MAY_COME} Never for water, toilet, pain or fear: those are answered. If it guards, growls or bites, stop and ask a qualified behaviour professional."))
                .about(s.word),
            )
        })
        .collect()
}
