//! In which hours of the day animals press: three hours at a time, which is as much as a home gives.

use crate::fault::{At, ReleaseFault};
use serde::{Deserialize, Serialize};

/// Three hours of the day where the learner lives, from 0 (midnight to three) to 7 (nine in the evening to midnight).
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug, Serialize, Deserialize)]
#[serde(try_from = "u8", into = "u8")]
pub struct DayPart(u8);

/// A number that is no part of a day.
#[derive(Clone, Copy, PartialEq, Eq, Debug, thiserror::Error)]
#[error("{0} is no part of a day: from 0 (midnight to three) to 7 (nine in the evening to midnight)")]
pub struct NoDayPart(u8);

impl DayPart {
    /// How many there are.
    pub const MANY: usize = 8;
    /// Hours of each.
    pub const HOURS: u8 = 3;
    /// All, from midnight on.
    pub const ALL: [Self; Self::MANY] = [Self(0), Self(1), Self(2), Self(3), Self(4), Self(5), Self(6), Self(7)];

    /// The part in which an hour lies, from 0 to 23; what is beyond lies in the last.
    #[must_use]
    pub const fn of_hour(hour: u8) -> Self {
        let part = hour / Self::HOURS;
        Self(if part < 8 { part } else { 7 })
    }

    /// Its number, from 0.
    #[must_use]
    pub const fn number(self) -> u8 {
        self.0
    }

    /// The hour at which it begins.
    #[must_use]
    pub const fn begins(self) -> u8 {
        self.0 * Self::HOURS
    }
}

impl TryFrom<u8> for DayPart {
    type Error = NoDayPart;
    fn try_from(number: u8) -> Result<Self, NoDayPart> {
        if usize::from(number) < Self::MANY { Ok(Self(number)) } else { Err(NoDayPart(number)) }
    }
}

impl From<DayPart> for u8 {
    fn from(part: DayPart) -> Self {
        part.0
    }
}

/// The share of households whose one press, drawn by lot, lay in these hours: as large as the mean of the households' own shares.
#[derive(Clone, Copy, PartialEq, Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct HourShare {
    /// Which hours.
    pub part: DayPart,
    /// The share, from 0 to 1.
    pub share: f64,
    /// Lower end of its interval.
    pub low: f64,
    /// Upper end.
    pub high: f64,
}

/// When animals press.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Hours {
    /// Every part of the day, from midnight on.
    pub hours: Vec<HourShare>,
}

impl Hours {
    pub(crate) fn check(&self, at: &At<'_>) -> Result<(), ReleaseFault> {
        let all = at.field("hours");
        let many = self.hours.len();
        all.must(many == DayPart::MANY, format!("{many} parts long"), DayPart::MANY)?;
        let mut whole = 0.0;
        for (number, (one, part)) in self.hours.iter().zip(DayPart::ALL).enumerate() {
            let at = all.item(number);
            at.field("part").must(one.part == part, one.part.0, part.0)?;
            at.interval(one.share, one.low, one.high)?;
            whole += one.share;
            at.field("share").must(whole <= 1.0 + 1e-6, whole, "1 or less with the parts before")?;
        }
        Ok(())
    }
}
