//! When a word is asked for more often than it can be given: a first small step towards waiting, with a signal, and the
//! sign to go back. Never for water, toilet, pain, fear or rest.

use crate::advice::{Act, Advice, Because, Caution, Change, Sure, Topic};
use crate::case::Case;
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
            let act = Act::SignalTimes { word: s.named(), available_s: available, unavailable_s: unavailable };
            let because = vec![
                Because::ManyPresses { rate, bar: MANY_A_DAY, days: DAYS }.into(),
                Because::GivenShare { share: given }.into(),
                Because::SignalledTimes.into(),
            ];
            let advice = Advice::new(Topic::Converse, act, because, Sure::Little, Change::LongerOrBack);
            Some(advice.caution(Caution::BurstMayCome).caution(Caution::NeverForNeeds).about(s.word))
        })
        .collect()
}
