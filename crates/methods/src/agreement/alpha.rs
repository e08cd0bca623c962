//! Krippendorff's alpha: any number of observers, any scale, gaps allowed.
//!
//! Sources: K. Krippendorff (2011), Computing Krippendorff's Alpha-Reliability; interval by resampling the units (percentiles).
//! The published bootstrap (A. F. Hayes & K. Krippendorff 2007, Commun Methods Meas 1:77) resamples deviations; ours resamples
//! whole units, which keeps what observers of one unit share.

use super::AgreementError;
use crate::stats::{Interval, Level, StatsError};
use rand::RngExt;
use rand::SeedableRng;
use rand_chacha::ChaCha8Rng;

/// What the scores mean, and so how far apart two of them are.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Scale {
    /// Names: the same or not.
    Nominal,
    /// Order only.
    Ordinal,
    /// Differences mean something.
    Interval,
    /// Differences relative to size mean something; scores of 0 or more.
    Ratio,
}

/// Alpha and what it rests on.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Alpha {
    /// 1 for full agreement, 0 for what chance gives, below 0 for systematic disagreement.
    pub alpha: f64,
    /// Units scored by at least two observers.
    pub units: usize,
    /// Scores in those units.
    pub scores: usize,
}

/// Alpha with its bootstrap interval.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct AlphaInterval {
    /// The estimate.
    pub estimate: Alpha,
    /// Percentile interval over resampled units.
    pub interval: Interval,
    /// Resamples in which alpha was defined.
    pub resamples: usize,
    /// Resamples left out because all their scores were the same.
    pub undefined: usize,
}

/// Most different scores for which distances of order or ratio are worked out pair by pair.
const MOST_VALUES: usize = 5000;

/// Units as indices into the sorted distinct values, pairable units only.
struct Pairable {
    values: Vec<f64>,
    /// Per unit, the values that occur and how often.
    units: Vec<Vec<(usize, f64)>>,
    scores: usize,
}

impl Pairable {
    fn of<R: AsRef<[Option<f64>]>>(by_observer: &[R], scale: Scale) -> Result<Self, AgreementError> {
        let length = by_observer.iter().map(|r| r.as_ref().len()).max().unwrap_or(0);
        let mut raw: Vec<Vec<f64>> = vec![Vec::new(); length];
        for row in by_observer {
            let row = row.as_ref();
            if row.len() != length {
                return Err(StatsError::Unpaired { left: length, right: row.len() }.into());
            }
            for (unit, score) in raw.iter_mut().zip(row) {
                if let Some(score) = score {
                    if !score.is_finite() || (scale == Scale::Ratio && *score < 0.0) {
                        return Err(StatsError::OutOfRange { what: "score", value: *score }.into());
                    }
                    unit.push(score + 0.0);
                }
            }
        }
        raw.retain(|unit| unit.len() >= 2);
        if raw.is_empty() {
            return Err(AgreementError::NothingShared);
        }
        let mut values: Vec<f64> = raw.iter().flatten().copied().collect();
        values.sort_by(f64::total_cmp);
        values.dedup();
        if values.len() > MOST_VALUES && matches!(scale, Scale::Ordinal | Scale::Ratio) {
            return Err(
                StatsError::OutOfRange { what: "number of different scores", value: values.len() as f64 }.into()
            );
        }
        let scores = raw.iter().map(Vec::len).sum();
        let units = raw
            .iter_mut()
            .map(|unit| {
                unit.sort_by(f64::total_cmp);
                unit.chunk_by(|a, b| a == b)
                    .map(|run| (values.partition_point(|v| *v < run[0]), run.len() as f64))
                    .collect()
            })
            .collect();
        Ok(Self { values, units, scores })
    }

    /// Alpha over the units picked, or `None` if their scores do not vary.
    fn alpha(&self, scale: Scale, picked: impl Iterator<Item = usize>) -> Option<f64> {
        let k = self.values.len();
        let mut counts = vec![0.0; k];
        // Pairs of different values within a unit, each unit's pairs weighing as much as it has scores.
        let mut within: Vec<(usize, usize, f64)> = Vec::new();
        let mut total = 0.0;
        for unit in picked.filter_map(|u| self.units.get(u)) {
            let m: f64 = unit.iter().map(|(_, n)| n).sum();
            for (at, (a, n)) in unit.iter().enumerate() {
                counts[*a] += n;
                within.extend(unit[at + 1..].iter().map(|(b, other)| (*a, *b, n * other / (m - 1.0))));
            }
            total += m;
        }
        // For the ordinal distance: scores up to and including each value.
        let mut upto = counts.clone();
        for at in 1..k {
            upto[at] += upto[at - 1];
        }
        let spread = (self.values[k - 1] - self.values[0]).max(f64::MIN_POSITIVE);
        let distance = |a: usize, b: usize| match scale {
            _ if a == b => 0.0,
            Scale::Nominal => 1.0,
            Scale::Ordinal => {
                let (low, high) = (a.min(b), a.max(b));
                let below = if low == 0 { 0.0 } else { upto[low - 1] };
                let between = upto[high] - below - (counts[a] + counts[b]) / 2.0;
                (between / total).powi(2)
            }
            Scale::Interval => ((self.values[a] - self.values[b]) / spread).powi(2),
            Scale::Ratio => ((self.values[a] - self.values[b]) / (self.values[a] + self.values[b])).powi(2),
        };
        let observed: f64 = within.iter().map(|(a, b, pairs)| pairs * distance(*a, *b)).sum();
        let present: Vec<usize> = (0..k).filter(|a| counts[*a] > 0.0).collect();
        if present.len() < 2 {
            return None;
        }
        let expected: f64 = match scale {
            // Names and differences need no loop over pairs of values.
            Scale::Nominal => (total * total - counts.iter().map(|c| c * c).sum::<f64>()) / 2.0,
            Scale::Interval => {
                let middle: f64 = counts.iter().zip(&self.values).map(|(c, v)| c * (v / spread)).sum::<f64>() / total;
                total * counts.iter().zip(&self.values).map(|(c, v)| c * (v / spread - middle).powi(2)).sum::<f64>()
            }
            Scale::Ordinal | Scale::Ratio => present
                .iter()
                .enumerate()
                .flat_map(|(at, a)| present[at + 1..].iter().map(move |b| (*a, *b)))
                .map(|(a, b)| counts[a] * counts[b] * distance(a, b))
                .sum(),
        };
        (expected > 0.0).then(|| 1.0 - (total - 1.0) * observed / expected)
    }
}

/// Alpha of scores given as one row per observer, one column per unit; `None` where an observer did not score.
///
/// # Errors
/// [`AgreementError::NothingShared`], [`AgreementError::OneCategory`], or [`AgreementError::Stats`] for rows of unequal length
/// or a score that is no number (or negative on a ratio scale).
///
/// ```
/// use sayso_methods::agreement::{Scale, krippendorff_alpha};
/// let first = [Some(1.0), Some(2.0), Some(3.0), None];
/// let second = [Some(1.0), Some(2.0), Some(3.0), Some(1.0)];
/// let found = krippendorff_alpha(&[first, second], Scale::Nominal)?;
/// assert_eq!((found.alpha, found.units), (1.0, 3));
/// # Ok::<(), sayso_methods::agreement::AgreementError>(())
/// ```
pub fn krippendorff_alpha<R: AsRef<[Option<f64>]>>(by_observer: &[R], scale: Scale) -> Result<Alpha, AgreementError> {
    let data = Pairable::of(by_observer, scale)?;
    estimate(&data, scale)
}

fn estimate(data: &Pairable, scale: Scale) -> Result<Alpha, AgreementError> {
    let (units, scores) = (data.units.len(), data.scores);
    let alpha = data.alpha(scale, 0..units).ok_or(AgreementError::OneCategory { n: scores })?;
    Ok(Alpha { alpha, units, scores })
}

/// Alpha with a percentile interval over `resamples` draws of whole units. The same seed gives the same interval.
///
/// # Errors
/// As [`krippendorff_alpha`], and [`StatsError::TooFew`] below five units or 100 resamples, or if fewer than half of the
/// resamples have scores that vary.
pub fn alpha_interval<R: AsRef<[Option<f64>]>>(
    by_observer: &[R],
    scale: Scale,
    level: Level,
    resamples: usize,
    seed: u64,
) -> Result<AlphaInterval, AgreementError> {
    let data = Pairable::of(by_observer, scale)?;
    let estimate = estimate(&data, scale)?;
    let units = data.units.len();
    if units < 5 {
        return Err(StatsError::TooFew { what: "units scored by two people", needed: 5, got: units }.into());
    }
    if resamples < 100 {
        return Err(StatsError::TooFew { what: "resamples", needed: 100, got: resamples }.into());
    }
    let mut rng = ChaCha8Rng::seed_from_u64(seed);
    let mut draws: Vec<f64> = (0..resamples)
        .filter_map(|_| {
            let picked: Vec<usize> = (0..units).map(|_| rng.random_range(0..units)).collect();
            data.alpha(scale, picked.into_iter())
        })
        .collect();
    if draws.len() * 2 < resamples {
        let needed = resamples.div_ceil(2);
        return Err(StatsError::TooFew { what: "resamples with scores that vary", needed, got: draws.len() }.into());
    }
    draws.sort_by(f64::total_cmp);
    let at = |share: f64| {
        let place = share * (draws.len() - 1) as f64;
        let (low, high) = (draws[place.floor() as usize], draws[place.ceil() as usize]);
        low + (high - low) * place.fract()
    };
    let interval = Interval { low: at(level.tail()), high: at(1.0 - level.tail()), level };
    Ok(AlphaInterval { estimate, interval, resamples: draws.len(), undefined: resamples - draws.len() })
}
