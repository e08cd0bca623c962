//! How large is the change from one phase to the next: nonoverlap, level, trend, celeration.
//!
//! Sources: nonoverlap (NAP, Tau, Tau-U) from [`crate::learning::phases`], celeration from [`crate::learning::celeration`].
//! Change of level and of trend: a least-squares line through each phase, compared at the first point of the later one, with
//! one residual variance for both (Huitema & McKean 2000, Educ Psychol Meas 60:38, from memory). The interval takes points
//! as independent; days of one learner are not quite, so it is rather too short. Page: `docs/methods/single-case.md`.

use super::CaseError;
use crate::learning::LearningError;
use crate::learning::celeration::{Celeration, ZeroRates, celeration, celeration_from_counts};
use crate::learning::phases::{Better, PhaseComparison, compare_phases};
use crate::stats::{Interval, Level, student_t_quantile};

/// One observed point.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Point {
    /// When, in days from any start.
    pub day: f64,
    /// The value.
    pub value: f64,
}

/// A change with its interval.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Change {
    /// The change.
    pub value: f64,
    /// 95 % interval; none where no point is left to judge the spread by.
    pub interval: Option<Interval>,
}

/// How the later phase differs from the earlier.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Contrast {
    /// NAP, Tau, Tau-U with their intervals and counts.
    pub nonoverlap: PhaseComparison,
    /// Step of the level at the first point of the later phase; none below two points (or days) in a phase.
    pub level: Option<Change>,
    /// Change of slope, a day.
    pub trend: Option<Change>,
}

/// What a series counts, for celeration.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Scale {
    /// Whole counts in equal lengths of time; zeros are observations.
    Counts,
    /// Positive amounts such as seconds.
    Amounts,
}

/// Compares an earlier phase with a later one, points in order of time.
///
/// # Errors
/// [`CaseError::EmptyCondition`] where a phase is empty, [`CaseError::NotANumber`].
pub fn contrast(a: &[Point], b: &[Point], better: Better) -> Result<Contrast, CaseError> {
    if a.iter().chain(b).any(|p| !p.day.is_finite()) {
        return Err(CaseError::NotANumber);
    }
    let values = |points: &[Point]| points.iter().map(|p| p.value).collect::<Vec<_>>();
    let nonoverlap = compare_phases(&values(a), &values(b), better).map_err(|why| match why {
        LearningError::NoObservations => CaseError::EmptyCondition,
        _ => CaseError::NotANumber,
    })?;
    let (mut level, mut trend) = (None, None);
    if let (Some(before), Some(after), Some(start)) = (Line::through(a), Line::through(b), b.first()) {
        let freedom = (a.len() + b.len()).saturating_sub(4);
        let variance = (before.residual + after.residual) / freedom.max(1) as f64;
        let change = |value: f64, spread: f64| Change { value, interval: around(value, variance * spread, freedom) };
        level =
            Some(change(after.at(start.day) - before.at(start.day), before.lever(start.day) + after.lever(start.day)));
        trend = Some(change(after.slope - before.slope, 1.0 / before.squares + 1.0 / after.squares));
    }
    Ok(Contrast { nonoverlap, level, trend })
}

/// By what factor the values of one phase multiply a week.
///
/// # Errors
/// [`CaseError::NoFigure`] where there are too few points, all at one time, or none above zero.
pub fn phase_celeration(points: &[Point], scale: Scale) -> Result<Celeration, CaseError> {
    let days: Vec<f64> = points.iter().map(|p| p.day).collect();
    let found = match scale {
        Scale::Amounts => {
            let values: Vec<f64> = points.iter().map(|p| p.value).collect();
            celeration(&days, &values, ZeroRates::LeaveOut)
        }
        Scale::Counts => {
            let counts: Vec<u32> = points.iter().map(|p| p.value.clamp(0.0, 1e9).round() as u32).collect();
            // Points are equally long, and a common length does not change the factor.
            celeration_from_counts(&days, &counts, &vec![1.0; points.len()])
        }
    };
    found.map_err(|_| CaseError::NoFigure)
}

/// A least-squares line.
struct Line {
    day: f64,
    mean: f64,
    slope: f64,
    squares: f64,
    residual: f64,
    n: f64,
}

impl Line {
    /// None where the points do not span any time.
    fn through(points: &[Point]) -> Option<Self> {
        let n = points.len() as f64;
        if points.len() < 2 {
            return None;
        }
        let day = points.iter().map(|p| p.day).sum::<f64>() / n;
        let mean = points.iter().map(|p| p.value).sum::<f64>() / n;
        let squares: f64 = points.iter().map(|p| (p.day - day).powi(2)).sum();
        if !(squares > 0.0) {
            return None;
        }
        let slope = points.iter().map(|p| (p.day - day) * (p.value - mean)).sum::<f64>() / squares;
        let residual = points.iter().map(|p| (p.value - mean - slope * (p.day - day)).powi(2)).sum();
        Some(Self { day, mean, slope, squares, residual, n })
    }

    fn at(&self, day: f64) -> f64 {
        self.mean + self.slope * (day - self.day)
    }

    fn lever(&self, day: f64) -> f64 {
        1.0 / self.n + (day - self.day).powi(2) / self.squares
    }
}

fn around(value: f64, variance: f64, freedom: usize) -> Option<Interval> {
    let level = Level::P95;
    let t = (freedom > 0).then(|| student_t_quantile(1.0 - level.tail(), freedom as f64).ok())??;
    let half = t * variance.sqrt();
    half.is_finite().then(|| Interval::new(value - half, value + half, level))
}
