//! When own presses come: by hour of the day and by day of the week, with intervals that admit bursts, and what stands out.

use crate::estimate::{Estimate, Unit};
use crate::observe::{Answered, by_day, by_hour, hours_of_exposure};
use crate::rate::clumping;
use sayso_methods::demand::rates::rates_by_bin;
use sayso_methods::stats::Clumping;
use sayso_model::{Moment, Zone};
use serde::Serialize;

/// Share of findings that may be false among hours, or among days of the week.
const FALSE_SHARE: f64 = 0.05;
/// From this factor on counts vary more than those of presses that come singly.
const BURSTS: f64 = 1.3;
/// Below so many presses an hour or a day of the week is no finding (common practice, no source).
const LEAST: usize = 5;

/// One local hour of the day, or one day of the week.
#[derive(Clone, PartialEq, Debug, Serialize)]
pub struct Bin {
    /// Which: the hour of the day, or the day of the week from Monday on.
    pub at: u8,
    /// Own presses in it.
    pub presses: usize,
    /// Own presses a day in it, with an interval that admits bursts; nothing where no time was watched.
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
    /// How many times as much counts vary as those of presses that come singly; nothing without a press.
    pub dispersion: Option<f64>,
}

impl Rhythm {
    /// Bins with more than the others, or fewer, bursts allowed for.
    pub fn outstanding<'a>(&self, bins: &'a [Bin]) -> Vec<&'a Bin> {
        let sure = |b: &&Bin| b.presses >= LEAST && b.adjusted_p.is_some_and(|p| p <= FALSE_SHARE);
        bins.iter().filter(sure).collect()
    }

    /// Whether presses come in bursts, or on good and bad days; nothing without a press.
    #[must_use]
    pub fn bursts(&self) -> Option<bool> {
        self.dispersion.map(|d| d >= BURSTS)
    }
}

/// The rhythm of own presses while they were watched, `from` the start of a day up to `now`. Hours of the day at which nothing
/// at all is ever `recorded` are taken for sleep or absence: they are no finding, and the others are not compared with them.
#[must_use]
pub fn rhythm(
    own: &[Answered<'_>],
    recorded: impl IntoIterator<Item = Moment>,
    (from, now): (Moment, Moment),
    zone: &Zone,
) -> Rhythm {
    let at = || own.iter().map(|a| a.press.at());
    let hours = by_hour(at(), zone).map(|n| n as u64);
    let awake = by_hour(recorded.into_iter().chain(at()), zone);
    let mut exposure = hours_of_exposure(from, now, zone);
    for (hours, noted) in exposure.iter_mut().zip(awake) {
        if noted == 0 {
            *hours = 0.0;
        }
    }
    let per_day = by_day(at(), zone);
    let (first, today) = (from.day(zone), now.day(zone));
    let (mut counts, mut days) = ([0_u64; 7], [0.0; 7]);
    let mut day = first;
    while day <= today {
        let (n, end) = (per_day.get(&day).copied().unwrap_or(0) as u64, day.plus(1).start(zone));
        let weekday = usize::from(day.weekday()).min(6);
        counts[weekday] += n;
        days[weekday] += end.min(now).seconds_since(day.start(zone)).max(0.0) / 86_400.0;
        day = day.plus(1);
    }
    let clumping = clumping(at(), from, now, zone);
    Rhythm {
        hours: bins(&hours, &exposure, clumping.of_a_part()),
        weekdays: bins(&counts, &days, clumping),
        dispersion: (!own.is_empty()).then(|| clumping.factor()),
    }
}

fn bins(counts: &[u64], exposure: &[f64], clumping: Clumping) -> Vec<Bin> {
    let unknown = |(i, n): (usize, &u64)| Bin {
        at: u8::try_from(i).unwrap_or(u8::MAX),
        presses: usize::try_from(*n).unwrap_or(usize::MAX),
        per_day: Estimate::unknown(Unit::PerDay),
        ratio: None,
        adjusted_p: None,
    };
    let mut bins: Vec<Bin> = counts.iter().enumerate().map(unknown).collect();
    // No time watched at all, or a press in an hour that never was: then there are no rates.
    let Ok(rates) = rates_by_bin(counts, exposure, clumping) else { return bins };
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

    fn weekdays(counts: [u64; 7], clumping: Clumping) -> Rhythm {
        let days = [10.0, 10.0, 10.0, 10.0, 10.0, 9.5, 0.0];
        let weekdays = bins(&counts, &days, clumping);
        Rhythm { hours: Vec::new(), weekdays, dispersion: Some(clumping.factor()) }
    }

    #[test]
    fn a_day_of_the_week_stands_out_only_beyond_chance_and_bursts() {
        let names = |r: &Rhythm| r.outstanding(&r.weekdays).iter().map(|b| b.at).collect::<Vec<_>>();
        let singly = Clumping::NONE;
        assert!(names(&weekdays([20, 22, 18, 21, 19, 23, 0], singly)).is_empty());
        let busy = weekdays([20, 22, 18, 21, 19, 60, 0], singly);
        assert_eq!(names(&busy), [5]);
        // The same counts in bursts of twelve are five bursts against two a day: chance.
        let minutes = |k: u32| f64::from(k / 12) * 4.3 + f64::from(k % 12) / 1440.0;
        let bursts = Clumping::of_times(&(0..156).map(minutes).collect::<Vec<_>>(), 60.0).unwrap_or(singly);
        assert!(names(&weekdays([20, 22, 18, 21, 19, 60, 0], bursts)).is_empty());
        let (saturday, sunday) = (&busy.weekdays[5], &busy.weekdays[6]);
        assert!((saturday.per_day.value.unwrap_or_default() - 60.0 / 9.5).abs() < 1e-12 && saturday.per_day.n == 60);
        assert_eq!(sunday.per_day.value, None, "a day never watched is no day without presses");
    }

    #[test]
    fn few_presses_are_no_finding() {
        let quiet = weekdays([30, 30, 30, 30, 30, 0, 0], Clumping::NONE);
        assert!(quiet.weekdays[5].adjusted_p.is_some_and(|p| p < 0.001));
        assert!(quiet.outstanding(&quiet.weekdays).iter().all(|b| b.at != 5), "no press on a Saturday is no finding");
    }

    #[test]
    fn nothing_watched_gives_no_rate() {
        assert!(bins(&[0; 7], &[0.0; 7], Clumping::NONE).iter().all(|b| b.per_day.value.is_none()));
    }
}
