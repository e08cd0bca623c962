//! Times as people write them. A time without an offset is read on the wall clock of a zone; one that the clock
//! shows twice or never, because clocks change, is not guessed.

use super::wanted::Wanted;
use jiff::civil::DateTime;
use jiff::tz::{AmbiguousOffset, Offset, TimeZoneDatabase};
use sayso_model::{Moment, Zone};
use std::sync::OnceLock;

/// The moment a text names, or what should stand there instead.
pub(super) fn read(text: &str, zone: Option<&Zone>) -> Result<Moment, Wanted> {
    let text = text.trim();
    if let Ok(moment) = text.parse::<Moment>() {
        return Ok(moment);
    }
    let local: DateTime = match plain(text) {
        Some(local) => local,
        None => return Err(Wanted::Time),
    };
    let Some(zone) = zone else {
        return Err(Wanted::Offset(local.to_string()));
    };
    static BUNDLED: OnceLock<TimeZoneDatabase> = OnceLock::new();
    // The same database the model takes its zones from, so this name is in it.
    let rules = BUNDLED.get_or_init(TimeZoneDatabase::bundled).get(zone.name()).map_err(|_| Wanted::Time)?;
    let ambiguous = rules.to_ambiguous_timestamp(local);
    let write = |offset: Offset| format!("{local}{}", signed(offset));
    match ambiguous.offset() {
        AmbiguousOffset::Unambiguous { offset } => offset
            .to_timestamp(local)
            .map_err(|_| Wanted::Time)
            .and_then(|at| Moment::from_millis(at.as_millisecond()).map_err(Wanted::from)),
        AmbiguousOffset::Fold { before, after } => {
            Err(Wanted::Twice { first: write(before), second: write(after), zone: zone.name().to_owned() })
        }
        AmbiguousOffset::Gap { before, after } => {
            Err(Wanted::Skipped { first: write(before), second: write(after), zone: zone.name().to_owned() })
        }
    }
}

/// A date and time of day, with a blank or a T between, seconds optional; nothing more.
fn plain(text: &str) -> Option<DateTime> {
    let (date, time) = text.split_once(['T', 't', ' '])?;
    let time = time.trim_start();
    let digits = |s: &str, shape: &str| {
        s.len() == shape.len()
            && s.bytes().zip(shape.bytes()).all(|(c, f)| if f == b'0' { c.is_ascii_digit() } else { c == f })
    };
    let (whole, fraction) = time.split_once('.').unwrap_or((time, "0"));
    let sound = digits(date, "0000-00-00")
        && (digits(whole, "00:00") && !time.contains('.') || digits(whole, "00:00:00"))
        && !fraction.is_empty()
        && fraction.bytes().all(|b| b.is_ascii_digit());
    if !sound {
        return None;
    }
    let seconds = if whole.len() == 5 { ":00" } else { "" };
    format!("{date}T{time}{seconds}").parse().ok()
}

/// An offset as `+01:00`.
fn signed(offset: Offset) -> String {
    let seconds = offset.seconds();
    let (sign, minutes) = (if seconds < 0 { '-' } else { '+' }, seconds.unsigned_abs() / 60);
    format!("{sign}{:02}:{:02}", minutes / 60, minutes % 60)
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;

    #[test]
    fn local_times_follow_the_zone_and_offsets_win() {
        let berlin = Zone::new("Europe/Berlin").unwrap();
        let z = Some(&berlin);
        assert_eq!(read("2026-03-01 18:30", z).unwrap().to_string(), "2026-03-01T17:30:00.000Z");
        assert_eq!(read("2026-07-01T18:30:15.250", z).unwrap().to_string(), "2026-07-01T16:30:15.250Z");
        assert_eq!(read("2026-07-01T18:30:15-03:00", z).unwrap().to_string(), "2026-07-01T21:30:15.000Z");
        assert!(read("2026-07-01T18:30:15", None).unwrap_err().to_string().contains("offset"));
        for wrong in [
            "",
            "yesterday",
            "01.03.2026 18:30",
            "2026-03-01",
            "2026-13-01 10:00",
            "2026-03-01 25:00",
            "3/1/2026 6:30 PM",
        ] {
            assert!(read(wrong, z).is_err(), "{wrong}");
        }
    }

    #[test]
    fn a_time_that_comes_twice_or_never_is_told_with_both_readings() {
        let berlin = Zone::new("Europe/Berlin").unwrap();
        let twice = read("2026-10-25 02:30", Some(&berlin)).unwrap_err().to_string();
        assert!(twice.contains("2026-10-25T02:30:00+02:00") && twice.contains("2026-10-25T02:30:00+01:00"), "{twice}");
        let never = read("2026-03-29 02:30", Some(&berlin)).unwrap_err().to_string();
        assert!(never.contains("skipped") && never.contains("+01:00"), "{never}");
        // What it says to write can be read.
        assert!(read("2026-10-25T02:30:00+02:00", Some(&berlin)).is_ok());
    }
}
