//! Figures a person is shown: each with its interval and its count.

use sayso_methods::stats::confidence_sequence::{TUNED_TO, confidence_sequence};
use sayso_methods::stats::{Interval, Level, Proportion};
use serde::{Deserialize, Serialize};

/// The level of every interval shown to a person.
pub const LEVEL: Level = Level::P95;

/// With fewer observations nothing is said yet: an interval so wide misleads whoever reads only the value.
pub const TOO_EARLY: usize = 5;

/// What a figure counts in.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Unit {
    /// A share, shown in per cent.
    Share,
    /// Seconds.
    Seconds,
    /// A number a day.
    PerDay,
    /// A number a minute.
    PerMinute,
    /// A bare number.
    Number,
}

/// An estimate with its 95 % interval and the number of observations behind it.
#[derive(Clone, Copy, PartialEq, Debug, Serialize, Deserialize)]
pub struct Estimate {
    /// Best value; none where there is no observation.
    pub value: Option<f64>,
    /// Lower end of the interval.
    pub low: Option<f64>,
    /// Upper end of the interval.
    pub high: Option<f64>,
    /// Observations.
    pub n: usize,
    /// What it counts in.
    pub unit: Unit,
}

impl Estimate {
    /// Nothing known.
    #[must_use]
    pub const fn unknown(unit: Unit) -> Self {
        Self { value: None, low: None, high: None, n: 0, unit }
    }

    /// A value with the interval a method gave.
    #[must_use]
    pub const fn with(value: f64, interval: Interval, n: usize, unit: Unit) -> Self {
        Self { value: Some(value), low: Some(interval.low), high: Some(interval.high), n, unit }
    }

    /// A share `k` of `n` with its exact interval (Clopper & Pearson 1934).
    #[must_use]
    pub fn share(k: usize, n: usize) -> Self {
        match Proportion::new(k as u64, n as u64) {
            Ok(p) => {
                let i = p.clopper_pearson(LEVEL);
                Self { value: p.share(), low: Some(i.low), high: Some(i.high), n, unit: Unit::Share }
            }
            Err(_) => Self::unknown(Unit::Share),
        }
    }

    /// A share `k` of `n` with an interval that holds however often it is read (Howard et al. 2021): for figures that are
    /// looked at day by day until they please.
    #[must_use]
    pub fn share_any_time(k: usize, n: usize) -> Self {
        let seen = Proportion::new(k as u64, n as u64);
        match seen.and_then(|p| confidence_sequence(p, TUNED_TO).map(|i| (p, i))) {
            Ok((p, i)) if n > 0 => {
                Self { value: p.share(), low: Some(i.low), high: Some(i.high), n, unit: Unit::Share }
            }
            _ => Self::unknown(Unit::Share),
        }
    }

    /// Whether it is too early to say anything: too few observations, or none that give a value.
    #[must_use]
    pub const fn too_early(&self) -> bool {
        self.n < TOO_EARLY || self.value.is_none()
    }

    /// Whether the whole interval lies above `bar`.
    #[must_use]
    pub fn surely_above(&self, bar: f64) -> bool {
        self.n > 0 && self.low.is_some_and(|low| low > bar)
    }

    /// Whether the whole interval lies below `bar`.
    #[must_use]
    pub fn surely_below(&self, bar: f64) -> bool {
        self.n > 0 && self.high.is_some_and(|high| high < bar)
    }
}

/// The mean of `values` with its 95 % interval (Student's t; approximate for skewed values).
/// With fewer than two values there is no interval. Where no value lies below nothing, as with counts and times, neither
/// does the interval.
#[must_use]
pub fn mean(values: &[f64], unit: Unit) -> Estimate {
    let n = values.len();
    if n == 0 {
        return Estimate::unknown(unit);
    }
    #[allow(clippy::cast_precision_loss)]
    let count = n as f64;
    let mean = values.iter().sum::<f64>() / count;
    let mut estimate = Estimate { value: Some(mean), low: None, high: None, n, unit };
    if n > 1 {
        let variance = values.iter().map(|v| (v - mean).powi(2)).sum::<f64>() / (count - 1.0);
        if let Ok(t) = sayso_methods::stats::student_t_quantile(1.0 - LEVEL.tail(), count - 1.0) {
            let half = t * (variance / count).sqrt();
            let floor = if values.iter().all(|v| *v >= 0.0) { 0.0 } else { f64::NEG_INFINITY };
            estimate.low = Some((mean - half).max(floor));
            estimate.high = Some(mean + half);
        }
    }
    estimate
}

/// The middle value with its distribution-free 95 % interval from order statistics
/// (exact binomial coverage; David & Nagaraja, Order Statistics, 3rd ed., section 7.1). No interval below six values.
#[must_use]
pub fn median(values: &[f64], unit: Unit) -> Estimate {
    let mut v: Vec<f64> = values.iter().copied().filter(|x| x.is_finite()).collect();
    v.sort_by(f64::total_cmp);
    let n = v.len();
    if n == 0 {
        return Estimate::unknown(unit);
    }
    let middle = if n % 2 == 1 { v[n / 2] } else { f64::midpoint(v[n / 2 - 1], v[n / 2]) };
    // Largest r with P(fewer than r of n fall below the median) at most 2.5 % on each side.
    let r = (0..n / 2)
        .take_while(|&r| {
            sayso_methods::stats::binomial_at_most(r as u64, n as u64, 0.5).is_ok_and(|p| p <= LEVEL.tail())
        })
        .count();
    if r == 0 {
        return Estimate { value: Some(middle), low: None, high: None, n, unit };
    }
    Estimate { value: Some(middle), low: Some(v[r - 1]), high: Some(v[n - r]), n, unit }
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;

    #[test]
    fn under_five_observations_nothing_is_said() {
        assert!(Estimate::share(0, 0).too_early() && Estimate::share(4, 4).too_early());
        assert!(!Estimate::share(5, 5).too_early());
    }

    #[test]
    fn a_mean_of_counts_is_never_said_to_be_below_nothing() {
        let few = mean(&[0.0, 0.0, 0.0, 2.0], Unit::PerDay);
        assert_eq!(few.low, Some(0.0));
        assert!(few.high.unwrap() > 1.0);
        assert!(mean(&[-1.0, 0.0, 0.0, 2.0], Unit::Number).low.unwrap() < 0.0, "a difference may be");
    }

    #[test]
    fn the_median_interval_has_its_textbook_ranks() {
        // n = 10: the 2nd and 9th order statistics cover with 97.9 %; the 3rd and 8th with only 89.1 %.
        let v: Vec<f64> = (1..=10).map(f64::from).collect();
        let m = median(&v, Unit::Number);
        assert_eq!((m.value, m.low, m.high), (Some(5.5), Some(2.0), Some(9.0)));
        assert_eq!(median(&v[..5], Unit::Number).low, None);
    }
}
