//! A programme: a course of some weeks that a coach lays out, with aims for each. A home joins by accepting it; aims are for people,
//! never for the animal.

use crate::event::{About, Content, Does};
use crate::fault::Fault;
use crate::findings::Findings;
use crate::id::{EventId, ProgrammeId};
use crate::text::{Label, ShortNote};
use crate::time::Day;
use borsh::{BorshDeserialize, BorshSerialize};
use serde::{Deserialize, Serialize};

/// What people aim at in a week. What the log can tell is counted from it; the rest a home ticks.
#[derive(Clone, PartialEq, Eq, Debug, Serialize, Deserialize, BorshSerialize, BorshDeserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(tag = "aim", rename_all = "snake_case", deny_unknown_fields)]
pub enum Aim {
    /// Showings in the week.
    Showings {
        /// How many.
        times: u16,
    },
    /// Invitations in the week.
    Invitations {
        /// How many.
        times: u16,
    },
    /// Days with so many sessions.
    Sessions {
        /// Sessions on such a day.
        a_day: u8,
        /// On how many days.
        days: u8,
    },
    /// A lesson that somebody of the home reads.
    Lesson {
        /// Its short name.
        lesson: Label,
    },
    /// Something else, in words.
    Own {
        /// What.
        text: Label,
    },
}

impl Aim {
    /// Most showings, and most invitations, of a week: fifteen a day.
    pub const MOST_TIMES: u16 = 105;
    /// Most sessions of a day.
    pub const MOST_A_DAY: u8 = 8;

    /// Whether a home says itself that it is done.
    #[must_use]
    pub const fn is_ticked(&self) -> bool {
        matches!(self, Self::Own { .. })
    }
}

/// One week of a programme.
#[derive(Clone, PartialEq, Eq, Debug, Default, Serialize, Deserialize, BorshSerialize, BorshDeserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct ProgrammeWeek {
    /// What people aim at.
    pub aims: Vec<Aim>,
    /// An exercise, in words.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub exercise: Option<ShortNote>,
}

/// A course of weeks.
#[derive(Clone, PartialEq, Eq, Debug, Serialize, Deserialize, BorshSerialize, BorshDeserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Programme {
    /// Which: the same for each home that it was proposed to.
    pub programme: ProgrammeId,
    /// What it is called.
    pub name: Label,
    /// Week by week.
    pub weeks: Vec<ProgrammeWeek>,
}

impl Programme {
    /// Most weeks.
    pub const MOST_WEEKS: usize = 12;
    /// Most aims of a week.
    pub const MOST_AIMS: usize = 8;

    /// Its last day, where it begins on a day.
    #[must_use]
    pub fn last(&self, first: Day) -> Day {
        first.plus(7 * i32::try_from(self.weeks.len()).unwrap_or(0) - 1)
    }

    /// The days of a week of it, the end left out; counted from 0.
    #[must_use]
    pub fn days(first: Day, week: usize) -> (Day, Day) {
        let from = first.plus(7 * i32::try_from(week).unwrap_or(i32::MAX / 14));
        (from, from.plus(7))
    }

    pub(super) fn check(&self, found: &mut Findings) {
        if !(1..=Self::MOST_WEEKS).contains(&self.weeks.len()) {
            found.wrong("weeks", Fault::HowMany { low: 1, high: Self::MOST_WEEKS, found: self.weeks.len() });
        }
        for (week, number) in self.weeks.iter().zip(1..) {
            found.within(&format!("weeks.{number}"), |found| week.check(found));
        }
    }
}

impl ProgrammeWeek {
    fn check(&self, found: &mut Findings) {
        if self.aims.len() > Programme::MOST_AIMS {
            found.wrong("aims", Fault::HowMany { low: 0, high: Programme::MOST_AIMS, found: self.aims.len() });
        }
        for (place, aim) in self.aims.iter().enumerate() {
            if self.aims.iter().take(place).any(|other| other == aim) {
                found.wrong("aims", Fault::Twice);
            }
            match aim {
                Aim::Showings { times } | Aim::Invitations { times } if !(1..=Aim::MOST_TIMES).contains(times) => {
                    found.wrong("times", Fault::range(1_u16, Aim::MOST_TIMES, *times));
                }
                Aim::Sessions { a_day, .. } if !(1..=Aim::MOST_A_DAY).contains(a_day) => {
                    found.wrong("a_day", Fault::range(1_u8, Aim::MOST_A_DAY, *a_day));
                }
                Aim::Sessions { days, .. } if !(1..=7).contains(days) => {
                    found.wrong("days", Fault::range(1_u8, 7_u8, *days));
                }
                Aim::Showings { .. }
                | Aim::Invitations { .. }
                | Aim::Sessions { .. }
                | Aim::Lesson { .. }
                | Aim::Own { .. } => {}
            }
        }
    }
}

/// A home says that an aim of a programme was done, which the log cannot tell.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, BorshSerialize, BorshDeserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct AimDone {
    /// The proposal by which the home joined.
    pub of: EventId,
    /// Week, from 1.
    pub week: u8,
    /// Its aim, from 1.
    pub aim: u8,
}

/// The home's own word: it may be taken back as any of its records.
impl Content for AimDone {
    fn about(&self) -> About<'_> {
        About { session: None, word: None, needs_animal: true, as_recorded: false, does: Does::Tells }
    }
    fn check(&self, found: &mut Findings) {
        for (field, number, most) in
            [("week", self.week, Programme::MOST_WEEKS), ("aim", self.aim, Programme::MOST_AIMS)]
        {
            let most = u8::try_from(most).unwrap_or(u8::MAX);
            if !(1..=most).contains(&number) {
                found.wrong(field, Fault::range(1_u8, most, number));
            }
        }
    }
}
