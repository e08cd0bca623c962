//! Stuck? A word that does not get on, and what may be behind it: each cause with its evidence for or against.
//! Thresholds are our own (common practice, no source) and stand beside every figure. It never says the animal cannot learn.

use crate::advice::{Advice, Reason, Sure, Topic};
use crate::causes::{
    alike, avoided, hard_to_make_out, health, not_wanted, people_differ, time_or_place, too_late, too_little,
};
use crate::estimate::Estimate;
use crate::observe::{Answered, answered, invitations, showings, since};
use crate::stages::Standing;
use sayso_model::{AnimalId, Moment, Stage, Story, WordId};

/// Days looked back on.
pub(crate) const RECENT_DAYS: i32 = 21;
/// A word is not called stuck before this many days since it was first shown.
const ENOUGH_DAYS: f64 = 21.0;
/// Own presses in four weeks that say nothing: once a week comes by stumbling over it.
const HARDLY: usize = 4;

/// What may be behind it.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
pub enum Cause {
    /// The recorded word may be hard to make out: what to check first.
    HardToMakeOut,
    /// The reward is not wanted just now.
    NotWanted,
    /// There was too little showing.
    TooLittle,
    /// The delivery comes too late.
    TooLate,
    /// The button itself is avoided.
    Avoided,
    /// The time, place or noise is wrong.
    TimeOrPlace,
    /// It may not be well.
    Health,
    /// The word sounds like another.
    SoundsAlike,
    /// People answer it differently.
    PeopleDiffer,
}

impl Cause {
    /// In words.
    #[must_use]
    pub const fn words(self) -> &'static str {
        match self {
            Self::HardToMakeOut => "the recorded word may be hard to make out",
            Self::NotWanted => "the reward is not wanted just now",
            Self::TooLittle => "too little showing",
            Self::TooLate => "the delivery comes too late",
            Self::Avoided => "the button itself is avoided",
            Self::TimeOrPlace => "the time, place or noise",
            Self::Health => "it may not be well",
            Self::SoundsAlike => "the word sounds like another",
            Self::PeopleDiffer => "people answer it differently",
        }
    }

    /// What to try.
    #[must_use]
    pub const fn act(self) -> &'static str {
        match self {
            Self::HardToMakeOut => {
                "play its button from another room, and record it again, clear and soft, unless you know the word at once"
            }
            Self::NotWanted => {
                "test likes again and change what the word delivers, or show it when the thing is wanted"
            }
            Self::TooLittle => "show it more often, a little every day",
            Self::TooLate => "keep the thing at the board so that it comes within two seconds",
            Self::Avoided => "go back a stage; move the button or try a quieter, softer one; let the animal come to it",
            Self::TimeOrPlace => "hold sessions at the times it joins, in a quieter place",
            Self::Health => "see a veterinarian before training on",
            Self::SoundsAlike => "record a word that sounds different",
            Self::PeopleDiffer => "agree on one answer and one delay, and put the house rules where all see them",
        }
    }
}

/// How the records bear on a cause.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
pub enum Bearing {
    /// They speak for it.
    For,
    /// They point to it, with room for chance.
    Perhaps,
    /// Too few to say.
    Unknown,
    /// They speak against it.
    Against,
}

impl Bearing {
    /// In words.
    #[must_use]
    pub const fn words(self) -> &'static str {
        match self {
            Self::For => "the records speak for it",
            Self::Perhaps => "possible",
            Self::Unknown => "too few records to say",
            Self::Against => "the records speak against it",
        }
    }
}

/// One cause and its evidence.
#[derive(Clone, PartialEq, Debug)]
pub struct Weighed {
    /// The cause.
    pub cause: Cause,
    /// How the records bear on it.
    pub bearing: Bearing,
    /// The evidence.
    pub evidence: Reason,
}

/// Advice for every word that is stuck.
#[must_use]
pub fn stuck(story: &Story, animal: AnimalId, now: Moment, standings: &[Standing]) -> Vec<Advice> {
    standings.iter().filter(|s| is_stuck(story, animal, now, s)).filter_map(|s| advice(story, animal, now, s)).collect()
}

/// Whether a word does not get on: shown long enough, still not conversed with, and beyond chance the invitations say so;
/// or, with few of them, it hardly presses it, or does not take what the word delivers. Few showings in all this time
/// are no reason to keep silent: they may be why.
#[must_use]
pub fn is_stuck(story: &Story, animal: AnimalId, now: Moment, standing: &Standing) -> bool {
    let conversing = standing.stage == Stage::Converse || standing.figures_say == Stage::Converse;
    if conversing {
        return false;
    }
    let first = showings(&answered(story, animal), Some(standing.word)).first().map(|a| a.press.at());
    if first.is_none_or(|at| now.seconds_since(at) < ENOUGH_DAYS * 86_400.0) {
        return false;
    }
    let right = right_of_wanted(story, animal, standing.word, now);
    if right.surely_below(0.5) || right.n >= 12 {
        return right.surely_below(0.5);
    }
    let from = since(now, RECENT_DAYS, &story.zone());
    let recent: Vec<Answered<'_>> =
        answered(story, animal).into_iter().filter(|a| a.press.at() >= from && a.press.at() <= now).collect();
    standing.own_presses <= HARDLY
        || not_wanted(story, animal, standing.word, from, now, &recent).bearing == Bearing::For
}

/// How often the invited word itself was pressed when its thing was wanted.
fn right_of_wanted(story: &Story, animal: AnimalId, word: WordId, now: Moment) -> Estimate {
    let asked = invitations(story, animal, word, now);
    Estimate::share(asked.usable.iter().filter(|u| u.right).count(), asked.usable.len())
}

fn advice(story: &Story, animal: AnimalId, now: Moment, standing: &Standing) -> Option<Advice> {
    let weighed = differential(story, animal, now, standing.word);
    let likely: Vec<&Weighed> =
        weighed.iter().filter(|w| matches!(w.bearing, Bearing::For | Bearing::Perhaps)).collect();
    let mut because = vec![Reason::figure(
        format!("Pressed this word when it was invited and wanted, after {} showings.", standing.showings),
        right_of_wanted(story, animal, standing.word, now),
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
    Some(
        Advice::new(Topic::Stuck, act, because, sure, "Two weeks after the change with clearly more presses when invited.")
            .caution("Not pressing says nothing about what it understands. If anything about the animal changed suddenly, see a veterinarian first.")
            .about(standing.word),
    )
}

fn capital(text: &str) -> String {
    let mut chars = text.chars();
    chars.next().map_or_else(String::new, |c| c.to_uppercase().chain(chars).collect())
}

/// Every cause with its evidence, those the records speak for first.
#[must_use]
pub fn differential(story: &Story, animal: AnimalId, now: Moment, word: WordId) -> Vec<Weighed> {
    let from = since(now, RECENT_DAYS, &story.zone());
    let all: Vec<Answered<'_>> = answered(story, animal).into_iter().filter(|a| a.press.at() <= now).collect();
    let recent: Vec<Answered<'_>> = all.iter().filter(|a| a.press.at() >= from).copied().collect();
    let mut weighed = vec![
        hard_to_make_out(story, word),
        not_wanted(story, animal, word, from, now, &recent),
        too_little(word, now, from, &all, &story.zone()),
        too_late(word, &recent),
        avoided(story, animal, word, from, &recent),
        time_or_place(story, animal, now),
        health(story, animal, now, &all),
        alike(story, animal, word, now),
        people_differ(word, &recent),
    ];
    weighed.sort_by_key(|w| w.bearing);
    weighed
}
