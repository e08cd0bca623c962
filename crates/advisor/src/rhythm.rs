//! When own presses come: by hour of the day and by day of the week, with exact intervals, and what stands out.

use crate::estimate::{Estimate, Unit};
use crate::observe::{Answered, by_day, by_hour, hours_of_exposure};
use sayso_methods::demand::rates::rates_by_bin;
use sayso_methods::stats::index_of_dispersion;
use sayso_model::{Moment, Zone};
use serde::Serialize;

/// Share of findings that may be false among hours, or among days of the week.
const FALSE_SHARE: f64 = 0.05;
/// Below this p, days differ more than presses that come singly would.
const BURSTS: f64 = 0.01;
const WEEKDAYS: [&str; 7] = ["Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday"];

/// One local hour of the day, or one day of the week.
#[derive(Clone, PartialEq, Debug, Serialize)]
pub struct Bin {
    /// Its name.
    pub name: String,
    /// Own presses in it.
    pub presses: usize,
    /// Own presses a day in it, with the exact interval (Garwood 1936); nothing where no time was watched.
    pub per_day: Estimate,
    /// Times as many as in the other hours or days, where both were watched.
    pub ratio: Option<f64>,
    /// p against all others, adjusted over the bins (Benjamini & Hochberg 1995).
    pub adjusted_p: Option<f64>,
}

/// The rhythm of own presses.
#[derive(Clone, PartialEq, Debug, Serialize)]
pub struct Rhythm {
    /// The 24 local hours.
    pub hours: Vec<Bin>,
    /// Monday to Sunday.
    pub weekdays: Vec<Bin>,
    /// Variance of whole days' counts over their mean; 1 for presses that come singly.
    pub dispersion: Option<f64>,
    /// Whether whole days differ more than single presses would, so that the intervals are too short.
    pub bursts: bool,
}

impl Rhythm {
    /// Bins that stand out from the others. None where presses come in bursts, since the tests then claim too much.
    pub fn outstanding<'a>(&self, bins: &'a [Bin]) -> Vec<&'a Bin> {
        let sure = |b: &&Bin| !self.bursts && b.adjusted_p.is_some_and(|p| p <= FALSE_SHARE);
        bins.iter().filter(sure).collect()
    }

    /// How far the intervals are to be trusted, in a sentence.
    #[must_use]
    pub fn trust(&self) -> String {
        match self.dispersion {
            Some(d) if self.bursts => format!(
                "Its days differ more than single presses would (variance {d:.1} times the mean): presses come in bursts or \
                 change over time, so read these intervals as too short; nothing is said to stand out."
            ),
            Some(d) => format!("Whole days differ no more than single presses would (variance {d:.1} times the mean)."),
            None => "Too few days to see whether presses come in bursts.".into(),
        }
    }
}

/// The rhythm of own presses while they were watched, `from` the start of a day up to `now`.
#[must_use]
pub fn rhythm(own: &[Answered<'_>], from: Moment, now: Moment, zone: &Zone) -> Rhythm {
    let at = || own.iter().map(|a| a.press.at());
    let hours = by_hour(at(), zone).map(|n| n as u64);
    let exposure = hours_of_exposure(from, now, zone);
    let per_day = by_day(at(), zone);
    let (first, today) = (from.day(zone), now.day(zone));
    let (mut counts, mut days, mut whole) = ([0_u64; 7], [0.0; 7], Vec::new());
    let mut day = first;
    while day <= today {
        let (n, end) = (per_day.get(&day).copied().unwrap_or(0) as u64, day.plus(1).start(zone));
        let weekday = usize::from(day.weekday()).min(6);
        counts[weekday] += n;
        days[weekday] += end.min(now).seconds_since(day.start(zone)).max(0.0) / 86_400.0;
        // Today is not over; its count would look small.
        if end <= now {
            whole.push(n);
        }
        day = day.plus(1);
    }
    let spread = index_of_dispersion(&whole).ok();
    Rhythm {
        hours: bins(&hours, &exposure, |h| format!("{h}:00")),
        weekdays: bins(&counts, &days, |d| WEEKDAYS[d].to_owned()),
        dispersion: spread.map(|s| s.index),
        bursts: spread.is_some_and(|s| s.p_upper < BURSTS),
    }
}

fn bins(counts: &[u64], exposure: &[f64], name: impl Fn(usize) -> String) -> Vec<Bin> {
    let unknown = |(i, n): (usize, &u64)| Bin {
        name: name(i),
        presses: usize::try_from(*n).unwrap_or(usize::MAX),
        per_day: Estimate::unknown(Unit::PerDay),
        ratio: None,
        adjusted_p: None,
    };
    let mut bins: Vec<Bin> = counts.iter().enumerate().map(unknown).collect();
    // No time watched at all, or a press in an hour that never was: then there are no rates.
    let Ok(rates) = rates_by_bin(counts, exposure) else { return bins };
    for (bin, rate) in bins.iter_mut().zip(rates) {
        if let (Some(count), Some(interval)) = (rate.count, rate.interval) {
            bin.per_day = Estimate::with(count.rate(), interval, bin.presses, Unit::PerDay);
        }
        (bin.ratio, bin.adjusted_p) = (rate.ratio_to_rest, rate.adjusted_p);
    }
    bins
}

#[cfg(test)]
mod tests {
    use super::*;

    fn weekdays(counts: [u64; 7], bursts: bool) -> Rhythm {
        let weekdays = bins(&counts, &[10.0, 10.0, 10.0, 10.0, 10.0, 9.5, 0.0], |d| WEEKDAYS[d].to_owned());
        Rhythm { hours: Vec::new(), weekdays, dispersion: Some(1.0), bursts }
    }

    #[test]
    fn a_day_of_the_week_stands_out_only_beyond_chance_and_bursts() {
        let names = |r: &Rhythm| r.outstanding(&r.weekdays).iter().map(|b| b.name.clone()).collect::<Vec<_>>();
        assert!(names(&weekdays([20, 22, 18, 21, 19, 23, 0], false)).is_empty());
        let busy = weekdays([20, 22, 18, 21, 19, 60, 0], false);
        assert_eq!(names(&busy), ["Saturday"]);
        assert!(names(&weekdays([20, 22, 18, 21, 19, 60, 0], true)).is_empty());
        let (saturday, sunday) = (&busy.weekdays[5], &busy.weekdays[6]);
        assert!((saturday.per_day.value.unwrap_or_default() - 60.0 / 9.5).abs() < 1e-12 && saturday.per_day.n == 60);
        assert_eq!(sunday.per_day.value, None, "a day never watched is no day without presses");
    }

    #[test]
    fn nothing_watched_gives_no_rate() {
        assert!(bins(&[0; 7], &[0.0; 7], |d| d.to_string()).iter().all(|b| b.per_day.value.is_none()));
    }
}
