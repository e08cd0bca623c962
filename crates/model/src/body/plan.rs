//! Plans for some days: their lines, and one that a home makes of its own.

use super::enums::PlanWay;
use crate::event::{About, Content, Does};
use crate::fault::Fault;
use crate::findings::Findings;
use crate::id::WordId;
use crate::time::Day;
use borsh::{BorshDeserialize, BorshSerialize};
use serde::{Deserialize, Serialize};
use std::collections::BTreeSet;

/// One word of a plan.
#[derive(
    Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Debug, Serialize, Deserialize, BorshSerialize, BorshDeserialize,
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct PlanLine {
    /// The word.
    pub word: WordId,
    /// How, where it is to be one way alone.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub way: Option<PlanWay>,
    /// Minutes each time.
    pub minutes: u8,
    /// Times a day.
    pub times: u8,
}

impl PlanLine {
    /// Whether somebody is to wait for a press.
    #[must_use]
    pub fn invites(&self) -> bool {
        self.way.is_some_and(|way| way != PlanWay::Show)
    }

    /// Most minutes at once: short stretches, which end before the animal has had enough.
    pub const MOST_MINUTES: u8 = 15;
    /// Most times a day.
    pub const MOST_TIMES: u8 = 8;
    /// Most lines of a plan.
    pub const MOST_LINES: usize = 6;
}

/// A plan for some days that a home makes of its own: after a meeting with somebody who has no account here, or with nobody.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, BorshSerialize, BorshDeserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct OwnPlan {
    /// Word by word.
    pub lines: Vec<PlanLine>,
    /// Its last day.
    pub last_day: Day,
}

/// The home's own words: it may be put right and taken back as any of its records.
impl Content for OwnPlan {
    fn about(&self) -> About<'_> {
        About { session: None, word: None, needs_animal: true, as_recorded: false, does: Does::Tells }
    }
    fn check(&self, found: &mut Findings) {
        check_lines(&self.lines, found);
    }
}

pub(super) fn check_lines(lines: &[PlanLine], found: &mut Findings) {
    let distinct: BTreeSet<_> = lines.iter().map(|line| (line.word, line.way)).collect();
    if distinct.len() != lines.len() {
        found.wrong("lines", Fault::Twice);
    }
    if !(1..=PlanLine::MOST_LINES).contains(&lines.len()) {
        found.wrong("lines", Fault::HowMany { low: 1, high: PlanLine::MOST_LINES, found: lines.len() });
    }
    for (line, place) in lines.iter().zip(1..) {
        found.within(&format!("lines.{place}"), |found| {
            if !(1..=PlanLine::MOST_MINUTES).contains(&line.minutes) {
                found.wrong("minutes", Fault::range(1_u8, PlanLine::MOST_MINUTES, line.minutes));
            }
            if !(1..=PlanLine::MOST_TIMES).contains(&line.times) {
                found.wrong("times", Fault::range(1_u8, PlanLine::MOST_TIMES, line.times));
            }
        });
    }
}
