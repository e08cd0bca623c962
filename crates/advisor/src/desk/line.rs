//! What a desk keeps of one animal: a few hundred numbers worked out from its story at a moment, by which it is placed among
//! others without the story.
//!
//! Dates stand in it, never ages, so that what depends on the day of reading (silence, what lasts four weeks) is right on the
//! day it is read. No name, note or free text of a home is in it.

use super::tried::{AgreedLine, ChangeLine, PracticeLine, ProgrammeLine, TrialLine};
use crate::advice::Sure;
use crate::cause::Cause;
use crate::estimate::Estimate;
use crate::others::Wait;
use crate::stuck::StuckFor;
use sayso_model::{AnimalId, Day, Moment, Stage, WordId, Zone};
use serde::{Deserialize, Serialize};
use std::fmt;

/// Weeks of the small charts.
pub const WEEKS: usize = 8;

/// The form of a line. One of another form is worked out anew, never guessed at.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Default, Serialize, Deserialize)]
#[serde(try_from = "u16", into = "u16")]
pub struct Version;

impl Version {
    /// The number of this form.
    pub const NUMBER: u16 = 8;
}

/// A line of another form.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub struct OtherVersion(u16);

impl fmt::Display for OtherVersion {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "a line of form {}; this reads form {}: work it out anew from the story", self.0, Version::NUMBER)
    }
}

impl std::error::Error for OtherVersion {}

impl TryFrom<u16> for Version {
    type Error = OtherVersion;
    fn try_from(number: u16) -> Result<Self, OtherVersion> {
        if number == Self::NUMBER { Ok(Self) } else { Err(OtherVersion(number)) }
    }
}

impl From<Version> for u16 {
    fn from(_: Version) -> Self {
        Version::NUMBER
    }
}

/// What a sign tells.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum SignKind {
    /// Swallowing something that is no food.
    Swallowing,
    /// A growl, snap or bite; a hiss, swat or lunge.
    Threat,
    /// Guarding food, a thing or the button.
    Guarding,
    /// Another strong sign of stress.
    Other,
}

/// Signs of one kind on one day.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct SignDay {
    /// The day.
    pub day: Day,
    /// What they tell.
    pub kind: SignKind,
    /// Whether they were noted as strong signs of stress.
    pub strong: bool,
    /// Whether the record was taken back, or put right to something milder, since.
    pub taken_back: bool,
    /// How many.
    pub count: usize,
}

/// How much is written down.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Logging {
    /// Day of the first record about the animal.
    pub first: Option<Day>,
    /// The last record that somebody made.
    pub last: Option<Moment>,
    /// Days with a record that somebody made...
    pub days: usize,
    /// ... of the last so many, up to the last of them.
    pub of: usize,
    /// Share of what has two halves (a press and its answer, a session and its joining or end) of which both are there.
    pub closed: Estimate,
    /// Days from one day with a record to the next: the middle.
    pub usual_gap: Estimate,
    /// The longest of them.
    pub longest_gap: u32,
    /// Whole days without a record from which this home is silent by its own habit.
    pub silent_after: u32,
}

/// What is held against what was before.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Measure {
    /// Share of sessions joined.
    Joining,
    /// Own presses a day on days with other records.
    Presses,
    /// Seconds to press when invited.
    Latency,
}

/// A look at whether something changed lately. Every look taken is kept, whatever it found, because what was found counts
/// only against all that was looked at.
#[derive(Clone, Copy, PartialEq, Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Look {
    /// At what.
    pub measure: Measure,
    /// The first day of the stretch that stands out most.
    pub since: Day,
    /// In that stretch.
    pub lately: Estimate,
    /// In the weeks before.
    pub before: Estimate,
    /// One-sided p-value of a change for the worse, allowing for every stretch tried.
    pub p: f64,
}

/// What holds a word up, as far as the records carry it.
#[derive(Clone, Copy, PartialEq, Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Held {
    /// The best supported cause.
    pub cause: Cause,
    /// How sure.
    pub sure: Sure,
    /// The figure it rests on.
    pub figure: Estimate,
    /// What that is held against: a bar, or the other of two people or times.
    pub beside: Estimate,
    /// p-value of that figure where it has one.
    pub p: Option<f64>,
}

/// One word in use.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct WordLine {
    /// The word.
    pub word: WordId,
    /// Day it was first shown.
    pub first_shown: Option<Day>,
    /// Day of its first own press that looked meant.
    pub first_press: Option<Day>,
    /// The stage people work at.
    pub stage: Stage,
    /// What the figures point to.
    pub figures_say: Stage,
    /// Whether right presses are more than chance, at whatever moment that is asked.
    pub above_chance: bool,
    /// Showings so far.
    pub showings: usize,
    /// Because of what it does not get on, by records that can carry that; none where it does, or they cannot.
    pub stuck: Option<StuckFor>,
    /// Day of the line on which it was first worked out that it is stuck, or held up, as it is now.
    pub held_seen: Option<Day>,
    /// Right, of invitations in which it wanted the thing.
    pub right: Estimate,
    /// The cause the records support best; none where they support none, or are too few for it.
    pub held: Option<Held>,
    /// Causes that were looked at.
    pub looked: usize,
    /// Day from which it was shown enough to be invited, where it is not invited yet and the figures point to it.
    pub ready_since: Option<Day>,
    /// Own presses in each of the line's weeks, oldest first.
    pub weeks: [usize; WEEKS],
    /// How long it has waited for its first press, to be laid beside other homes; none where it was never shown.
    pub wait: Option<Wait>,
}

/// A planned check.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct CheckLine {
    /// Trials carried out and planned of a check that was begun.
    pub open: Option<(usize, usize)>,
    /// Words in use that were never checked.
    pub never: usize,
}

/// A day on which more was given than the day's rewards.
#[derive(Clone, Copy, PartialEq, Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Over {
    /// The day.
    pub day: Day,
    /// Energy given, kcal.
    pub given_kcal: f64,
}

/// One week: seven household days, the last one ending with the line.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Default, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct WeekLine {
    /// Own presses.
    pub presses: usize,
    /// Sessions of which it is known whether it joined.
    pub sessions: usize,
    /// Sessions joined.
    pub joined: usize,
    /// Showings.
    pub showings: usize,
    /// Days with a record that somebody made.
    pub days: usize,
}

/// Counts from the first record on, from which two lines tell what happened between them.
#[derive(Clone, Copy, PartialEq, Debug, Default, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct SoFar {
    /// Days with other records than own presses, the day of the line left out.
    pub watched: usize,
    /// Own presses on those days that were not likely accidents.
    pub presses: usize,
    /// Sessions of which it is known whether it joined.
    pub sessions: usize,
    /// Sessions joined.
    pub joined: usize,
    /// Times as much as single presses would that counts of presses vary, at least 1.
    pub presses_vary: f64,
    /// The same of joining.
    pub joining_varies: f64,
}

/// One animal, as a desk keeps it.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Line {
    /// The form of the line.
    pub version: Version,
    /// The animal.
    pub animal: AnimalId,
    /// The home's zone: days are the household's.
    pub zone: Zone,
    /// The moment it was worked out for.
    pub at: Moment,
    /// How much is written down.
    pub logging: Logging,
    /// Signs of six weeks that a coach is told of, by day.
    pub signs: Vec<SignDay>,
    /// Sessions left, of the last so many it had joined.
    pub left: (usize, usize),
    /// Day of the first of them that it left.
    pub left_since: Option<Day>,
    /// Day of the last session in which it took part.
    pub last_joined: Option<Day>,
    /// Looks at whether something changed.
    pub looks: Vec<Look>,
    /// Words in use, by id.
    pub words: Vec<WordLine>,
    /// Checks.
    pub check: CheckLine,
    /// The day's energy for rewards, kcal, where it can be worked out.
    pub budget_kcal: Option<f64>,
    /// Days of the last two weeks on which clearly more than that was given.
    pub over: Vec<Over>,
    /// The last weeks, oldest first.
    pub weeks: [WeekLine; WEEKS],
    /// Counts so far.
    pub so_far: SoFar,
    /// Changes agreed with coaches, oldest first.
    pub changes: Vec<ChangeLine>,
    /// Trials of a change, oldest first.
    pub trials: Vec<TrialLine>,
    /// Programmes joined, oldest first.
    pub programmes: Vec<ProgrammeLine>,
    /// Plans for some days that hold, oldest first.
    pub agreed: Vec<AgreedLine>,
    /// What was handed to the home to practise, oldest first.
    pub practices: Vec<PracticeLine>,
}

impl Line {
    /// Keeps of an earlier line since when each word was seen stuck, or held up, as it still is: the records do not tell when that began.
    #[must_use]
    pub fn remembering(mut self, earlier: &Self) -> Self {
        for word in &mut self.words {
            let before = earlier.words.iter().find(|w| w.word == word.word).filter(|w| w.is_held_as(word));
            word.held_seen = before.and_then(|w| w.held_seen).or(word.held_seen);
        }
        self
    }
}

impl WordLine {
    /// Whether another line has the same of a word: stuck or not, and the same cause.
    fn is_held_as(&self, other: &Self) -> bool {
        let of = |w: &Self| (w.stuck.is_some(), w.held.map(|held| held.cause));
        of(self) == of(other)
    }
}

/// Six digits: more than a figure is worth, and the same whatever writes and reads it.
pub(crate) fn tidy(x: f64) -> f64 {
    if x.is_finite() { format!("{x:.5e}").parse().unwrap_or(x) } else { x }
}

/// An estimate in six digits, with no end that is not a number.
pub(crate) fn tidied(e: Estimate) -> Estimate {
    let finite = |x: Option<f64>| x.filter(|x| x.is_finite()).map(tidy);
    Estimate { value: finite(e.value), low: finite(e.low), high: finite(e.high), ..e }
}
