//! Celeration: by what factor a rate multiplies or divides each week.
//!
//! Sources: standard celeration convention, `10^(7 * slope of log10 rate per day)` by least squares (Pennypacker,
//! Gutierrez & Lindsley 2003). For counts, where zeros are real observations: Poisson regression on day with the
//! observing time as exposure (McCullagh & Nelder 1989), with Firth's 1993 (Biometrika 80:27) bias reduction so that
//! the estimate stays finite, and over-dispersion in the interval. Page: `docs/methods/learning.md`.

use super::LearningError;
use crate::stats::{Interval, Level, student_t_quantile};

/// What to do with a rate of zero, which has no logarithm.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum ZeroRates {
    /// Leave zero days out and report how many there were. Biased upwards when zeros are common.
    LeaveOut,
    /// Put them at this rate per minute, below the record floor (one press in the minutes observed), as on paper charts.
    At(f64),
}

/// A weekly factor.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Celeration {
    /// Factor by which the rate multiplies a week: 2 doubles, 0.5 halves.
    pub times_per_week: f64,
    /// 90 % interval of the factor; `None` when fewer than 3 observations leave nothing to judge spread by.
    pub interval: Option<Interval>,
    /// Observations used.
    pub n: usize,
    /// Observations with a rate of zero.
    pub zeros: usize,
    /// Observations left out (zeros under [`ZeroRates::LeaveOut`], days without observing time).
    pub left_out: usize,
}

/// The factor in the words of the trade.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Turn {
    /// Times this much a week (1 is no change).
    Times(f64),
    /// Divided by this much a week.
    DividedBy(f64),
}

impl Celeration {
    /// "x 1.9 a week" or "/ 1.4 a week".
    #[must_use]
    pub fn turn(&self) -> Turn {
        if self.times_per_week >= 1.0 {
            Turn::Times(self.times_per_week)
        } else {
            Turn::DividedBy(1.0 / self.times_per_week)
        }
    }
}

/// Least squares of log10 rate on day, as the trade draws it.
///
/// `day` in days from any start (repeats and gaps allowed), `per_minute` in presses a minute, same length.
///
/// # Errors
/// [`LearningError::LengthMismatch`], [`LearningError::BadNumber`] (not finite, or a negative rate),
/// [`LearningError::NoObservations`], [`LearningError::NoSpan`] when all used observations share one day.
///
/// ```
/// use sayso_methods::learning::celeration::{ZeroRates, celeration};
/// let doubling = celeration(&[0.0, 7.0, 14.0], &[1.0, 2.0, 4.0], ZeroRates::LeaveOut)?;
/// assert!((doubling.times_per_week - 2.0).abs() < 1e-12);
/// # Ok::<(), sayso_methods::learning::LearningError>(())
/// ```
pub fn celeration(day: &[f64], per_minute: &[f64], zero_rates: ZeroRates) -> Result<Celeration, LearningError> {
    same_length("day", day.len(), "per_minute", per_minute.len())?;
    if let ZeroRates::At(floor) = zero_rates
        && !(floor.is_finite() && floor > 0.0)
    {
        return Err(LearningError::BadSetting("the rate that stands for zero"));
    }
    let mut points = Vec::with_capacity(day.len());
    let mut zeros = 0;
    for (&day, &rate) in day.iter().zip(per_minute) {
        finite("day", day)?;
        not_negative("rate per minute", rate)?;
        if rate > 0.0 {
            points.push((day, rate.log10()));
        } else {
            zeros += 1;
            if let ZeroRates::At(floor) = zero_rates {
                points.push((day, floor.log10()));
            }
        }
    }
    let n = points.len();
    if n == 0 {
        return Err(LearningError::NoObservations);
    }
    let mean_day = points.iter().map(|point| point.0).sum::<f64>() / n as f64;
    let mean_log = points.iter().map(|point| point.1).sum::<f64>() / n as f64;
    let spread: f64 = points.iter().map(|point| (point.0 - mean_day).powi(2)).sum();
    if !(spread.is_finite() && spread > 0.0) {
        return Err(LearningError::NoSpan { n });
    }
    let slope = points.iter().map(|point| (point.0 - mean_day) * (point.1 - mean_log)).sum::<f64>() / spread;
    let residual: f64 = points.iter().map(|point| (point.1 - mean_log - slope * (point.0 - mean_day)).powi(2)).sum();
    let standard_error = (residual / n.saturating_sub(2).max(1) as f64 / spread).sqrt();
    let interval = weekly_interval(slope, standard_error, n);
    Ok(Celeration { times_per_week: weekly(slope), interval, n, zeros, left_out: day.len() - n })
}

/// Poisson regression of counts on day, with observing minutes as exposure: days without a press count as what they
/// are. Days with no observing time are left out.
///
/// # Errors
/// As [`celeration`]; [`LearningError::BadNumber`] also when presses were counted in no observing time.
///
/// ```
/// use sayso_methods::learning::celeration::celeration_from_counts;
/// let day: Vec<f64> = (0..28).map(f64::from).collect();
/// let counts: Vec<u32> = (0..28).map(|d| u32::from(d > 9) * (d / 5)).collect();
/// let fit = celeration_from_counts(&day, &counts, &[10.0; 28])?;
/// assert!(fit.times_per_week > 1.0 && fit.zeros == 10);
/// # Ok::<(), sayso_methods::learning::LearningError>(())
/// ```
pub fn celeration_from_counts(day: &[f64], counts: &[u32], minutes: &[f64]) -> Result<Celeration, LearningError> {
    same_length("day", day.len(), "counts", counts.len())?;
    same_length("day", day.len(), "minutes", minutes.len())?;
    let mut rows = Vec::with_capacity(day.len());
    for ((&day, &count), &minutes) in day.iter().zip(counts).zip(minutes) {
        finite("day", day)?;
        not_negative("minutes observed", minutes)?;
        if minutes > 0.0 {
            rows.push((day, f64::from(count), minutes));
        } else if count > 0 {
            return Err(LearningError::BadNumber { what: "minutes observed on a day with presses", value: minutes });
        }
    }
    let n = rows.len();
    let total: f64 = rows.iter().map(|row| row.1).sum();
    if n == 0 {
        return Err(LearningError::NoObservations);
    }
    let mean_day = rows.iter().map(|row| row.0).sum::<f64>() / n as f64;
    // Scaled to about -1..1 so that the iteration is steady whatever the span.
    let scale = rows.iter().map(|row| (row.0 - mean_day).abs()).fold(0.0, f64::max);
    if !(scale.is_finite() && scale > 0.0) {
        return Err(LearningError::NoSpan { n });
    }
    let x: Vec<f64> = rows.iter().map(|row| (row.0 - mean_day) / scale).collect();
    let exposure: f64 = rows.iter().map(|row| row.2).sum();
    let (mut level, mut slope) = (((total + 0.5) / exposure).ln(), 0.0f64);
    let mut information = Information::default();
    for _ in 0..200 {
        information = Information::at(level, slope, &x, &rows);
        let (mut score_level, mut score_slope) = (0.0, 0.0);
        for (&x, row) in x.iter().zip(&rows) {
            let mu = (level + slope * x).exp() * row.2;
            // Firth for a log link: half the leverage is added to each count.
            let gap = row.1 + 0.5 * mu * information.leverage(x) - mu;
            score_level += gap;
            score_slope += gap * x;
        }
        let (mut step_level, mut step_slope) = information.solve(score_level, score_slope);
        let size = step_level.abs().max(step_slope.abs());
        if size > 1.0 {
            step_level /= size;
            step_slope /= size;
        }
        level += step_level;
        slope += step_slope;
        if size < 1e-11 {
            break;
        }
    }
    let pearson: f64 = x
        .iter()
        .zip(&rows)
        .map(|(&x, row)| {
            let mu = (level + slope * x).exp() * row.2;
            (row.1 - mu).powi(2) / mu.max(f64::MIN_POSITIVE)
        })
        .sum();
    let per_day = slope / scale / std::f64::consts::LN_10;
    let dispersion = (pearson / n.saturating_sub(2).max(1) as f64).max(1.0);
    let standard_error = (dispersion * information.slope_variance()).sqrt() / scale / std::f64::consts::LN_10;
    let interval = weekly_interval(per_day, standard_error, n);
    let zeros = rows.iter().filter(|row| row.1 == 0.0).count();
    Ok(Celeration { times_per_week: weekly(per_day), interval, n, zeros, left_out: day.len() - n })
}

/// Fisher information of (level, slope).
#[derive(Default)]
struct Information {
    s0: f64,
    s1: f64,
    s2: f64,
}

impl Information {
    fn at(level: f64, slope: f64, x: &[f64], rows: &[(f64, f64, f64)]) -> Self {
        let mut sum = Self::default();
        for (&x, row) in x.iter().zip(rows) {
            let mu = (level + slope * x).exp() * row.2;
            sum.s0 += mu;
            sum.s1 += mu * x;
            sum.s2 += mu * x * x;
        }
        sum
    }
    fn determinant(&self) -> f64 {
        (self.s0 * self.s2 - self.s1 * self.s1).max(f64::MIN_POSITIVE)
    }
    fn leverage(&self, x: f64) -> f64 {
        (self.s2 - 2.0 * self.s1 * x + self.s0 * x * x) / self.determinant()
    }
    fn solve(&self, level: f64, slope: f64) -> (f64, f64) {
        let d = self.determinant();
        ((self.s2 * level - self.s1 * slope) / d, (self.s0 * slope - self.s1 * level) / d)
    }
    fn slope_variance(&self) -> f64 {
        self.s0 / self.determinant()
    }
}

/// From log10 a day to a factor a week, kept finite and positive.
fn weekly(log10_per_day: f64) -> f64 {
    10f64.powf((7.0 * log10_per_day).clamp(-300.0, 300.0))
}

/// 90 % interval of the weekly factor around a slope in log10 a day; `None` without spare observations.
fn weekly_interval(slope: f64, standard_error: f64, n: usize) -> Option<Interval> {
    let freedom = n.checked_sub(2).filter(|freedom| *freedom > 0)?;
    let level = Level::P90;
    let half = student_t_quantile(1.0 - level.tail(), freedom as f64).ok()? * standard_error;
    Some(Interval { low: weekly(slope - half), high: weekly(slope + half), level })
}

fn finite(what: &'static str, value: f64) -> Result<(), LearningError> {
    if value.is_finite() { Ok(()) } else { Err(LearningError::BadNumber { what, value }) }
}

fn not_negative(what: &'static str, value: f64) -> Result<(), LearningError> {
    if value.is_finite() && value >= 0.0 { Ok(()) } else { Err(LearningError::BadNumber { what, value }) }
}

fn same_length(
    left: &'static str,
    left_len: usize,
    right: &'static str,
    right_len: usize,
) -> Result<(), LearningError> {
    if left_len == right_len { Ok(()) } else { Err(LearningError::LengthMismatch { left, right, left_len, right_len }) }
}
