//! Local clock times of a household, on days of 23, 24 and 25 hours.

use sayso_model::{Day, Moment, Zone};

/// Hours of the local day at a moment, 0 to below 24.
pub(crate) fn local_hour(at: Moment, zone: &Zone) -> f64 {
    let local = at.local(zone);
    f64::from(local.hour()) + f64::from(local.minute()) / 60.0 + f64::from(local.second()) / 3600.0
}

/// The moment of a local clock time on a day.
///
/// A time the clocks skip becomes the same time after the day's start; one they repeat becomes one of the two.
pub(crate) fn at_hour(day: Day, hour: f64, zone: &Zone) -> Moment {
    let start = day.start(zone);
    let guess = start.plus_seconds(hour * 3600.0);
    // The clock may have been moved between the day's start and the guess.
    let off = hour - local_hour(guess, zone);
    if off.abs() > 3.0 { guess } else { guess.plus_seconds((off * 3600.0).round()) }
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;

    #[test]
    fn clock_times_hold_on_days_when_clocks_change() {
        let zone = Zone::new("Europe/Lisbon").unwrap();
        for day in ["2026-10-24", "2026-10-25", "2026-03-29"] {
            let day: Day = day.parse().unwrap();
            let at = at_hour(day, 18.5, &zone);
            assert_eq!((at.day(&zone), at.hour(&zone)), (day, 18), "{day}");
            assert!((local_hour(at, &zone) - 18.5).abs() < 0.01);
        }
    }
}
