//! Moments, zones and local days. A day is the household's own: it has 23 or 25 hours when clocks change.

mod error;
mod zone;

pub use error::TimeError;
pub use zone::Zone;

use borsh::{BorshDeserialize, BorshSerialize, io};
use jiff::civil::{Date, Time};
use jiff::tz::AmbiguousOffset;
use jiff::{SignedDuration, Timestamp};
use serde::{Deserialize, Serialize};
use std::fmt;
use std::str::FromStr;

/// An instant in UTC, to the millisecond, from 2000 to 2199. On the wire: RFC 3339.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[cfg_attr(feature = "schema", schemars(with = "String", extend("format" = "date-time")))]
#[serde(try_from = "String", into = "String")]
pub struct Moment(
    /// Milliseconds since 1970-01-01 UTC: a story holds two a event, so they are kept small.
    i64,
);

const FIRST_MILLI: i64 = 946_684_800_000; // 2000-01-01
const LAST_MILLI: i64 = 7_258_118_399_999; // 2199-12-31

impl Moment {
    /// From milliseconds since 1970-01-01 UTC.
    ///
    /// # Errors
    /// [`TimeError::OutOfRange`] outside the years 2000 to 2199.
    pub fn from_millis(millis: i64) -> Result<Self, TimeError> {
        if !(FIRST_MILLI..=LAST_MILLI).contains(&millis) {
            return Err(TimeError::OutOfRange(format!("{millis} ms")));
        }
        Ok(Self(millis))
    }

    /// The nearest moment in range to `millis` since 1970-01-01 UTC.
    #[must_use]
    pub fn clamped(millis: i64) -> Self {
        Self(millis.clamp(FIRST_MILLI, LAST_MILLI))
    }

    /// Milliseconds since 1970-01-01 UTC.
    #[must_use]
    pub const fn millis(self) -> i64 {
        self.0
    }

    fn timestamp(self) -> Timestamp {
        // Every moment is in the range of time stamps.
        Timestamp::from_millisecond(self.0).unwrap_or(Timestamp::UNIX_EPOCH)
    }

    /// Seconds from `earlier` to this moment; negative if this moment comes first.
    #[must_use]
    #[allow(clippy::cast_precision_loss)]
    pub fn seconds_since(self, earlier: Self) -> f64 {
        (self.millis() - earlier.millis()) as f64 / 1000.0
    }

    /// This moment and `seconds` more (or less), kept in range.
    #[must_use]
    #[allow(clippy::cast_possible_truncation)]
    pub fn plus_seconds(self, seconds: f64) -> Self {
        Self::clamped(self.millis().saturating_add((seconds * 1000.0).round() as i64))
    }

    /// The local clock of `zone` at this moment.
    #[must_use]
    pub fn local(self, zone: &Zone) -> jiff::ZonedDateTime {
        self.timestamp().to_zoned_datetime(zone.rules().clone())
    }

    /// The household day this moment belongs to.
    #[must_use]
    pub fn day(self, zone: &Zone) -> Day {
        Day(self.local(zone).date())
    }

    /// Local hour of the day, 0 to 23.
    #[must_use]
    pub fn hour(self, zone: &Zone) -> u8 {
        u8::try_from(self.local(zone).hour()).unwrap_or(0)
    }

    /// Local hour, minute and second.
    #[must_use]
    pub fn clock(self, zone: &Zone) -> [u8; 3] {
        let local = self.local(zone);
        [local.hour(), local.minute(), local.second()].map(|part| u8::try_from(part).unwrap_or(0))
    }
}

impl FromStr for Moment {
    type Err = TimeError;
    fn from_str(s: &str) -> Result<Self, TimeError> {
        let at: Timestamp = s.parse().map_err(|_| TimeError::NotATime(s.to_owned()))?;
        Self::from_millis(at.as_millisecond()).map_err(|_| TimeError::OutOfRange(s.to_owned()))
    }
}

impl TryFrom<String> for Moment {
    type Error = TimeError;
    fn try_from(s: String) -> Result<Self, TimeError> {
        s.parse()
    }
}

impl From<Moment> for String {
    fn from(m: Moment) -> Self {
        m.to_string()
    }
}

impl fmt::Display for Moment {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{:.3}", self.timestamp())
    }
}

/// Bytes of a value by way of a simpler one, checked as it is read.
macro_rules! bytes {
    ($name:ident as $plain:ty, $to:expr, $from:expr) => {
        impl BorshSerialize for $name {
            fn serialize<W: io::Write>(&self, to: &mut W) -> io::Result<()> {
                let plain: $plain = $to(self);
                BorshSerialize::serialize(&plain, to)
            }
        }

        impl BorshDeserialize for $name {
            fn deserialize_reader<R: io::Read>(from: &mut R) -> io::Result<Self> {
                let plain = <$plain>::deserialize_reader(from)?;
                $from(plain).map_err(|e| io::Error::new(io::ErrorKind::InvalidData, e))
            }
        }
    };
}

bytes!(Moment as i64, |m: &Moment| m.0, Moment::from_millis);
bytes!(Zone as String, |z: &Zone| z.name().to_owned(), |name: String| Zone::new(&name));
bytes!(Day as (i16, i8, i8), |d: &Day| (d.0.year(), d.0.month(), d.0.day()), |(year, month, day): (i16, i8, i8)| {
    Date::new(year, month, day).map(Day)
});

/// A calendar day of the household. On the wire: ISO 8601 (2026-03-01).
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[cfg_attr(feature = "schema", schemars(with = "String", extend("format" = "date")))]
#[serde(try_from = "String", into = "String")]
pub struct Day(Date);

impl Day {
    /// 1 January 1970.
    pub const EPOCH: Self = Self(Date::constant(1970, 1, 1));

    /// Year, month from 1, day of the month from 1.
    #[must_use]
    pub fn parts(self) -> (i16, u8, u8) {
        let part = |of: i8| u8::try_from(of).unwrap_or(1);
        (self.0.year(), part(self.0.month()), part(self.0.day()))
    }

    /// The first moment of the day in `zone`.
    #[must_use]
    pub fn start(self, zone: &Zone) -> Moment {
        let start = zone.rules().to_timestamp(self.0.at(0, 0, 0, 0));
        start.map_or(Moment::clamped(0), |at| Moment::clamped(at.as_millisecond()))
    }

    /// The moment at a time of the day, hour and minute, in `zone`: where clocks go back, the first of the two; none where they skip it,
    /// or where there is no such time.
    #[must_use]
    pub fn at(self, (hour, minute): (u8, u8), zone: &Zone) -> Option<Moment> {
        let time = Time::new(i8::try_from(hour).ok()?, i8::try_from(minute).ok()?, 0, 0).ok()?;
        let found = zone.rules().to_ambiguous_timestamp(self.0.to_datetime(time));
        if matches!(found.offset(), AmbiguousOffset::Gap { .. }) {
            return None;
        }
        found.earlier().ok().map(|at| Moment::clamped(at.as_millisecond()))
    }

    /// Hours the day has in `zone`: 24, or 23 or 25 (or another number) when clocks change.
    #[must_use]
    pub fn hours(self, zone: &Zone) -> f64 {
        self.plus(1).start(zone).seconds_since(self.start(zone)) / 3600.0
    }

    /// The day `days` later (or earlier), kept in range.
    #[must_use]
    pub fn plus(self, days: i32) -> Self {
        Self(self.0.saturating_add(SignedDuration::from_hours(24 * i64::from(days))))
    }

    /// Days from `earlier` to this day.
    #[must_use]
    pub fn days_since(self, earlier: Self) -> i32 {
        (self.0 - earlier.0).get_days()
    }

    /// Day of the week, 0 = Monday to 6 = Sunday.
    #[must_use]
    pub fn weekday(self) -> u8 {
        u8::try_from(self.0.weekday().to_monday_zero_offset()).unwrap_or(0)
    }
}

impl FromStr for Day {
    type Err = TimeError;
    fn from_str(s: &str) -> Result<Self, TimeError> {
        s.parse().map(Self).map_err(|_| TimeError::NotADay(s.to_owned()))
    }
}

impl TryFrom<String> for Day {
    type Error = TimeError;
    fn try_from(s: String) -> Result<Self, TimeError> {
        s.parse()
    }
}

impl From<Day> for String {
    fn from(day: Day) -> Self {
        day.to_string()
    }
}

impl fmt::Display for Day {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.0.fmt(f)
    }
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;

    #[test]
    fn days_when_clocks_change_have_23_and_25_hours() {
        let zone = Zone::new("Europe/Berlin").unwrap();
        let day = |s: &str| s.parse::<Day>().unwrap();
        assert_eq!(day("2026-03-29").hours(&zone), 23.0);
        assert_eq!(day("2026-10-25").hours(&zone), 25.0);
        assert_eq!(day("2026-06-01").hours(&zone), 24.0);
        // The repeated hour belongs to one day, twice.
        let first: Moment = "2026-10-25T00:30:00Z".parse().unwrap();
        let second: Moment = "2026-10-25T01:30:00Z".parse().unwrap();
        assert_eq!((first.hour(&zone), second.hour(&zone)), (2, 2));
        assert_eq!(first.day(&zone), second.day(&zone));
    }

    #[test]
    fn a_day_starts_at_its_first_existing_moment() {
        // Midnight does not exist on this day in this zone.
        let zone = Zone::new("America/Asuncion").unwrap();
        let day: Day = "2023-10-01".parse().unwrap();
        assert_eq!(day.start(&zone).hour(&zone), 1);
        assert_eq!(day.start(&zone).day(&zone), day);
    }

    #[test]
    fn a_time_that_clocks_skip_is_none_and_one_that_comes_twice_is_the_first() {
        let zone = Zone::new("Europe/Lisbon").unwrap();
        let at = |day: &str, clock| day.parse::<Day>().unwrap().at(clock, &zone).map(|at| at.to_string());
        assert_eq!(at("2026-10-24", (18, 30)).as_deref(), Some("2026-10-24T17:30:00.000Z"));
        assert_eq!(at("2026-10-25", (18, 30)).as_deref(), Some("2026-10-25T18:30:00.000Z"));
        assert_eq!(
            at("2026-10-25", (1, 30)).as_deref(),
            Some("2026-10-25T00:30:00.000Z"),
            "it comes again an hour later"
        );
        assert_eq!(at("2026-03-29", (1, 30)), None, "from one it was two at once");
        assert_eq!((at("2026-03-01", (24, 0)), at("2026-03-01", (9, 60))), (None, None));
    }

    #[test]
    fn wrong_times_are_told_with_what_would_be_right() {
        assert!("yesterday".parse::<Moment>().unwrap_err().to_string().contains("2026-03-01T18:30:00Z"));
        assert!("1899-01-01T00:00:00Z".parse::<Moment>().is_err());
        assert!(Zone::new("Berlin").unwrap_err().to_string().contains("Europe/Berlin"));
        assert_eq!(Zone::new("europe/berlin").unwrap().name(), "Europe/Berlin");
    }

    #[test]
    fn a_moment_survives_the_wire() {
        let m: Moment = "2026-03-01T18:30:00.123Z".parse().unwrap();
        assert_eq!(m.to_string(), "2026-03-01T18:30:00.123Z");
        assert_eq!(m.to_string().parse::<Moment>().unwrap(), m);
        assert_eq!(m.plus_seconds(-60.0).seconds_since(m), -60.0);
    }

    #[test]
    fn weekdays_count_from_monday() {
        assert_eq!("2026-11-23".parse::<Day>().unwrap().weekday(), 0);
        assert_eq!("2026-11-29".parse::<Day>().unwrap().weekday(), 6);
    }
}
