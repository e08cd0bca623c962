//! Rhythm, readiness, demand, likes and plans in words.

use super::said::sounds_like;
use crate::{Locale, say};
use sayso_advisor::demand::{Hold, Kind, NextWord, WhyNext};
use sayso_advisor::likes::{Known, Lean, Settled};
use sayso_advisor::plan::LengthFrom;
use sayso_advisor::readiness::{Ready, State};
use sayso_advisor::rhythm::Trust;
use sayso_advisor::standing::Chance;

/// Where a session's length comes from.
#[must_use]
pub fn length(l: &Locale, from: &LengthFrom) -> String {
    match from {
        LengthFrom::FewSessions { timed } => say!(l, advice::length_few_sessions, timed = *timed),
        LengthFrom::FewLeft { timed } => say!(l, advice::length_few_left, timed = *timed),
        LengthFrom::QuarterLeft { timed, minutes } => {
            say!(l, advice::length_quarter_left, timed = *timed, minutes = l.number(*minutes, 1))
        }
    }
}

/// How far the intervals of a rhythm are to be trusted.
#[must_use]
pub fn trust(l: &Locale, trust: Trust) -> String {
    match trust {
        Trust::Bursts { times } => say!(l, advice::trust_bursts, times = l.number(times, 1)),
        Trust::Singly { times } => say!(l, advice::trust_singly, times = l.number(times, 1)),
        Trust::NoPress => say!(l, advice::trust_no_press),
    }
}

/// Readiness in the last session.
#[must_use]
pub fn readiness(l: &Locale, name: &str, ready: &Ready) -> String {
    let now = l.estimate(&ready.now);
    let Some(state) = ready.likeliest else {
        return say!(l, advice::ready_unclear, name = name, now = now);
    };
    let state = match state {
        State::Away => "away",
        State::Warming => "warming",
        State::Ready => "ready",
    };
    say!(l, advice::ready_state, name = name, state = state, now = now)
}

/// A kind of answer.
#[must_use]
pub fn answer(l: &Locale, kind: Kind) -> String {
    match kind {
        Kind::Given => say!(l, advice::answer_given),
        Kind::NotNow => say!(l, advice::answer_not_now),
        Kind::Another => say!(l, advice::answer_another),
        Kind::Missed => say!(l, advice::answer_missed),
    }
}

/// A word worth adding, and what it sounds like.
#[must_use]
pub fn next_word(l: &Locale, next: &NextWord) -> Vec<String> {
    let word = &next.says;
    let why = match &next.why {
        WhyNext::AskedWithout { per_week } => {
            say!(l, advice::word_asked_without, word = word, figure = l.estimate(per_week))
        }
        WhyNext::HighDemand { per_hour } => {
            say!(l, advice::word_high_demand, word = word, figure = l.estimate(per_hour))
        }
        WhyNext::HighArousal { share } => {
            say!(l, advice::word_high_arousal, word = word, figure = l.estimate(share))
        }
    };
    [Some(why), sounds_like(l, &next.sounds_like)].into_iter().flatten().collect()
}

/// Why no words should be added yet.
#[must_use]
pub fn hold(l: &Locale, hold: &Hold) -> String {
    match hold {
        Hold::FewInUse { used, of } => say!(l, advice::hold_few_in_use, used = *used, of = *of),
        Hold::Contradiction { why } => say!(l, because::contradiction, why = why),
    }
}

/// Whether choices lean to one side.
#[must_use]
pub fn lean(l: &Locale, name: &str, lean: Lean) -> String {
    match lean {
        Lean::Left => say!(l, advice::lean_left, name = name),
        Lean::Right => say!(l, advice::lean_right, name = name),
        Lean::TooFew => say!(l, advice::lean_too_few),
        Lean::None => say!(l, advice::lean_none),
    }
}

/// How settled the best few are.
#[must_use]
pub fn known(l: &Locale, known: &Known) -> String {
    let (best, sure, n) = (l.and(&known.names), l.percent(known.probability), known.n);
    match known.verdict {
        Settled::WellEnough => say!(l, advice::known_well_enough, best = best, sure = sure, n = n),
        Settled::EnoughForNow => say!(l, advice::known_enough_for_now, best = best, sure = sure, n = n),
        Settled::NotYet => say!(l, advice::known_not_yet, best = best, sure = sure, n = n),
    }
}

/// What share of presses would be right by chance.
#[must_use]
pub fn chance(l: &Locale, chance: &Chance) -> String {
    let (words, even) = (chance.words.max(2), l.percent(chance.even()));
    if chance.elsewhere.n == 0 {
        return say!(l, advice::chance_even, words = words, even = even);
    }
    say!(l, advice::chance_habit, words = words, even = even, habit = l.estimate(&chance.elsewhere))
}
