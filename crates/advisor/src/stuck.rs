//! Stuck? A word that does not get on, and what may be behind it: each cause with its evidence for or against.
//! Thresholds are our own (common practice, no source) and stand beside every figure. It never says the animal cannot learn.

use crate::advice::{Advice, Reason, Sure, Topic};
use crate::case::Case;
pub use crate::cause::{Bearing, Cause, Weighed};
use crate::causes::{
    alike, avoided, hard_to_make_out, health, not_wanted, people_differ, time_or_place, too_late, too_little,
};
use crate::estimate::Estimate;
use crate::stages::{Standing, standings};
use sayso_model::{Stage, WordId};

/// A word is not called stuck before this many days since it was first shown.
const ENOUGH_DAYS: f64 = 21.0;
/// Own presses in four weeks that say nothing: once a week comes by stumbling over it.
const HARDLY: usize = 4;

/// Advice for every word that is stuck.
#[must_use]
pub fn stuck(case: &Case<'_>) -> Vec<Advice> {
    standings(case).iter().filter(|s| is_stuck(case, s)).map(|s| advice(case, s)).collect()
}

/// Whether a word does not get on: shown long enough, still not conversed with, and beyond chance the invitations say so;
/// or, with few of them, it hardly presses it, or does not take what the word delivers. Few showings in all this time
/// are no reason to keep silent: they may be why.
#[must_use]
pub fn is_stuck(case: &Case<'_>, standing: &Standing) -> bool {
    let conversing = standing.stage == Stage::Converse || standing.figures_say == Stage::Converse;
    if conversing {
        return false;
    }
    let first = case.totals().of(standing.word).shown.first().map(|s| s.at);
    if first.is_none_or(|at| case.now().seconds_since(at) < ENOUGH_DAYS * 86_400.0) {
        return false;
    }
    let right = right_of_wanted(case, standing.word);
    if right.surely_below(0.5) || right.n >= 12 {
        return right.surely_below(0.5);
    }
    standing.own_presses <= HARDLY || not_wanted(case, standing.word).bearing == Bearing::For
}

/// How often the invited word itself was pressed when its thing was wanted.
fn right_of_wanted(case: &Case<'_>, word: WordId) -> Estimate {
    let asked = case.invitations(word);
    Estimate::share(asked.usable.iter().filter(|u| u.right).count(), asked.usable.len())
}

fn advice(case: &Case<'_>, standing: &Standing) -> Advice {
    let weighed = differential(case, standing.word);
    let likely: Vec<&Weighed> =
        weighed.iter().filter(|w| matches!(w.bearing, Bearing::For | Bearing::Perhaps)).collect();
    let mut because = vec![Reason::figure(
        format!("Pressed this word when it was invited and wanted, after {} showings.", standing.showings),
        right_of_wanted(case, standing.word),
    )];
    because.extend(
        likely.iter().map(|w| Reason {
            text: format!("{}: {}", capital(w.cause.words()), w.evidence.text),
            ..w.evidence.clone()
        }),
    );
    // Whatever else the records point to: a word nobody can make out is soon found out, and nothing helps before it is.
    let begin = format!("\u{201c}{}\u{201d} is not getting on. First {}.", standing.says, Cause::HardToMakeOut.act());
    if !likely.iter().any(|w| w.cause == Cause::HardToMakeOut)
        && let Some(w) = weighed.iter().find(|w| w.cause == Cause::HardToMakeOut)
    {
        because
            .push(Reason { text: format!("{}: {}", capital(w.cause.words()), w.evidence.text), ..w.evidence.clone() });
    }
    let (act, sure) = match likely.iter().find(|w| w.cause != Cause::HardToMakeOut) {
        Some(first) => (
            format!("{begin} Then {}.", first.cause.act()),
            if first.bearing == Bearing::For { Sure::Fairly } else { Sure::Little },
        ),
        None => (
            format!(
                "{begin} The records do not show another cause: if it can be made out, rest it for a week and show another word."
            ),
            Sure::Little,
        ),
    };
    Advice::new(Topic::Stuck, act, because, sure, "Two weeks after the change with clearly more presses when invited.")
            .caution("Not pressing says nothing about what it understands. If anything about the animal changed suddenly, see a veterinarian first.")
            .about(standing.word)
}

fn capital(text: &str) -> String {
    let mut chars = text.chars();
    chars.next().map_or_else(String::new, |c| c.to_uppercase().chain(chars).collect())
}

/// Every cause with its evidence, those the records speak for first.
#[must_use]
pub fn differential(case: &Case<'_>, word: WordId) -> Vec<Weighed> {
    let mut weighed = vec![
        hard_to_make_out(case.story(), word),
        not_wanted(case, word),
        too_little(case, word),
        too_late(case, word),
        avoided(case, word),
        time_or_place(case),
        health(case),
        alike(case, word),
        people_differ(case, word),
    ];
    weighed.sort_by_key(|w| w.bearing);
    weighed
}
