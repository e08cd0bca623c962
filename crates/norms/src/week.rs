//! How often a word was pressed in one week since its first showing: one value a word, and the curve that many of them make.

use crate::fault::{At, ReleaseFault};
use serde::{Deserialize, Serialize};

/// Weeks since a word's first showing that are told together: the first; the rest of about a month; of a quarter; of half a year.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug, Serialize, Deserialize)]
#[serde(try_from = "u16", into = "u16")]
pub struct Stretch(u8);

/// A week in which no stretch begins.
#[derive(Clone, Copy, PartialEq, Eq, Debug, thiserror::Error)]
#[error("no stretch of weeks begins with week {0}: they begin with 1, 2, 5 and 13")]
pub struct NoStretch(u16);

impl Stretch {
    /// All, in order.
    pub const ALL: [Self; 4] = [Self(0), Self(1), Self(2), Self(3)];
    /// First and last week of each, from 1.
    const WEEKS: [(u16, u16); 4] = [(1, 1), (2, 4), (5, 12), (13, 26)];

    /// Its place among all, from 0.
    #[must_use]
    pub const fn number(self) -> usize {
        self.0 as usize
    }

    /// Its first week, from 1.
    #[must_use]
    pub const fn from(self) -> u16 {
        Self::WEEKS[self.0 as usize].0
    }

    /// Its last week.
    #[must_use]
    pub const fn to(self) -> u16 {
        Self::WEEKS[self.0 as usize].1
    }
}

impl TryFrom<u16> for Stretch {
    type Error = NoStretch;
    fn try_from(week: u16) -> Result<Self, NoStretch> {
        Self::ALL.into_iter().find(|stretch| stretch.from() == week).ok_or(NoStretch(week))
    }
}

impl From<Stretch> for u16 {
    fn from(stretch: Stretch) -> Self {
        stretch.from()
    }
}

/// How often a word was pressed in a week, as far as a home tells it.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Often {
    /// Not at all: of what was noted.
    Not,
    /// Once to six times.
    Some,
    /// Seven times or more: as often as there are days.
    Daily,
}

impl Often {
    /// All, by how often.
    pub const ALL: [Self; 3] = [Self::Not, Self::Some, Self::Daily];

    /// So many presses of a week.
    #[must_use]
    pub const fn of(presses: usize) -> Self {
        match presses {
            0 => Self::Not,
            1..7 => Self::Some,
            _ => Self::Daily,
        }
    }

    /// How it is written.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::Not => "not",
            Self::Some => "some",
            Self::Daily => "daily",
        }
    }
}

/// How often a word was pressed, of the learner's own accord, in one week. Which week is drawn by lot beforehand.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct WeekPresses {
    /// The stretch of weeks in which the week lies, by its first.
    pub from: Stretch,
    /// How often.
    pub pressed: Often,
}

/// A share with its interval.
#[derive(Clone, Copy, PartialEq, Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Told {
    /// The share, from 0 to 1.
    pub share: f64,
    /// Lower end of its interval.
    pub low: f64,
    /// Upper end.
    pub high: f64,
}

/// One stretch of a learning curve.
#[derive(Clone, Copy, PartialEq, Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct WeekShare {
    /// The stretch, by its first week.
    pub from: Stretch,
    /// Its last week.
    pub to: u16,
    /// Households that tell of it; where noise was added, by the noisy count.
    pub households: u32,
    /// The share of words that were pressed at all in one week of it.
    pub some: Told,
    /// The share of those that were pressed seven times or more.
    pub daily: Told,
}

/// How often words are pressed in a week, by weeks since their first showing. Of words that end a session nothing is told.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Weeks {
    /// By stretch; those of which enough households tell.
    pub weeks: Vec<WeekShare>,
}

impl Weeks {
    pub(crate) fn check(&self, at: &At<'_>, least: u32) -> Result<(), ReleaseFault> {
        let (all, many) = (at.field("weeks"), self.weeks.len());
        let most = Stretch::ALL.len();
        all.must((1..=most).contains(&many), format!("{many} stretches long"), format!("1 to {most}"))?;
        let mut last: Option<Stretch> = None;
        for (number, one) in self.weeks.iter().enumerate() {
            let at = all.item(number);
            let rises = last.is_none_or(|last| last < one.from);
            at.field("from").must(rises, one.from.from(), "a stretch after the one before")?;
            at.field("to").must(one.to == one.from.to(), one.to, one.from.to())?;
            let wanted = format!("{least} or more by its rule");
            at.field("households").must(one.households >= least, one.households, wanted)?;
            at.field("some").interval(one.some.share, one.some.low, one.some.high)?;
            let daily = at.field("daily");
            daily.interval(one.daily.share, one.daily.low, one.daily.high)?;
            let part = one.daily.share <= one.some.share;
            daily.field("share").must(part, one.daily.share, "no more than were pressed at all")?;
            last = Some(one.from);
        }
        Ok(())
    }
}
