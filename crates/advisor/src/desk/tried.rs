//! What was agreed to change in a home, and what followed; and its trials of a change, drawn by lot, with how they came out.
//!
//! What followed is own presses on days on which somebody watched, in four weeks after a change against four weeks before. That
//! is no design: nobody drew lots, a change is proposed when things go badly, and what goes badly often gets better by itself.

use crate::agreed::PlanDays;
use crate::designs::Outcome;
use sayso_model::{AccountId, CaseQuestion, Day, DesignId, EventId, Moment, PlanWay, ProgrammeId, Stage};
use serde::{Deserialize, Serialize};

/// Days before a change and after it that are held against each other.
pub const DAYS: i32 = 28;

/// A kind of change.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Debug, Serialize, Deserialize)]
#[serde(tag = "kind", rename_all = "snake_case", deny_unknown_fields)]
pub enum ChangeKind {
    /// Of the surroundings, or of what people do.
    Change {
        /// Which.
        question: CaseQuestion,
    },
    /// A plan for some days.
    Plan {
        /// How its words were to be worked on; none where as it fits.
        way: Option<PlanWay>,
    },
    /// A word at another stage.
    Stage {
        /// Which.
        stage: Stage,
    },
}

/// Own presses on days on which somebody watched.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Default, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Pressed {
    /// Presses that were no likely accidents.
    pub presses: usize,
    /// Days.
    pub days: usize,
}

/// A change that was agreed with a coach.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct ChangeLine {
    /// The proposal.
    pub proposal: EventId,
    /// The account that wrote it.
    pub by: AccountId,
    /// What kind of change.
    pub kind: ChangeKind,
    /// The day it was agreed.
    pub agreed: Day,
    /// Before that day, of the words it is about, from the day on which any of them was first pressed by anyone.
    pub before: Pressed,
    /// After it, up to the day of the line, which is left out.
    pub after: Pressed,
    /// Whether a trial was drawn of it.
    pub drawn: bool,
}

/// A trial of a change.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct TrialLine {
    /// Which.
    pub trial: DesignId,
    /// What is changed.
    pub question: CaseQuestion,
    /// Its first day.
    pub first: Day,
    /// How it came out.
    pub outcome: Outcome,
    /// Whether another trial measures the same on some of its days, so that neither can be told apart.
    pub beside: bool,
}

/// Something handed to the home to practise.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct PracticeLine {
    /// The proposal that handed it over.
    pub proposal: EventId,
    /// The account that wrote it.
    pub by: AccountId,
    /// When.
    pub written: Moment,
    /// Lessons that anybody of the home has read, of how many.
    pub read: (usize, usize),
    /// Rehearsals that the home shared.
    pub shared: usize,
}

/// A plan for some days that the home agreed to and that holds.
#[derive(Clone, PartialEq, Eq, Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct AgreedLine {
    /// The proposal.
    pub proposal: EventId,
    /// The account that wrote it.
    pub by: AccountId,
    /// When.
    pub written: Moment,
    /// Words in it, each once for each way.
    pub lines: usize,
    /// Its days.
    pub days: PlanDays,
}

/// A programme that was joined.
#[derive(Clone, PartialEq, Eq, Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct ProgrammeLine {
    /// The proposal by which it was joined.
    pub proposal: EventId,
    /// The account that wrote it.
    pub by: AccountId,
    /// When.
    pub written: Moment,
    /// Which course.
    pub programme: ProgrammeId,
    /// The first day of its first week.
    pub first: Day,
    /// Week by week, of each aim: what was done, of how much.
    pub weeks: Vec<Vec<(usize, usize)>>,
}
