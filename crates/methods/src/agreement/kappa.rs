//! Two people, one set of categories: Cohen's kappa.
//!
//! Sources: J. Cohen (1960), Educ Psychol Meas 20:37; weights: J. Cohen (1968), Psychol Bull 70:213; standard error:
//! J. L. Fleiss, J. Cohen & B. S. Everitt (1969), Psychol Bull 72:323.

use super::AgreementError;
use crate::stats::{Interval, Level, StatsError};

/// How far apart two categories count.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Weighting {
    /// Any difference is a full disagreement (categories without order).
    Unweighted,
    /// Disagreement grows with the number of steps.
    Linear,
    /// Disagreement grows with the square of the number of steps.
    Quadratic,
}

/// Counts of pairs of scores: row = first person, column = second.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct RatingTable {
    categories: usize,
    counts: Vec<u64>,
    n: u64,
}

/// Cohen's kappa with its uncertainty.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Kappa {
    /// 1 for full agreement, 0 for what chance gives, below 0 for less.
    pub kappa: f64,
    /// Large-sample standard error; too small below about 30 pairs.
    pub standard_error: f64,
    /// Normal interval, kept within -1 and 1. `None` where the standard error is 0 (full agreement), since a point is no interval.
    pub interval: Option<Interval>,
    /// Agreement seen (weighted).
    pub observed: f64,
    /// Agreement expected from the two people's habits (weighted).
    pub expected: f64,
    /// Pairs of scores.
    pub n: u64,
}

impl RatingTable {
    /// Tables two series of category indices (0 to `categories` - 1, in their order for weighted kappa).
    ///
    /// # Errors
    /// [`StatsError::Unpaired`], [`AgreementError::UnknownCategory`], or [`StatsError::TooFew`] without scores.
    pub fn from_ratings(first: &[usize], second: &[usize], categories: usize) -> Result<Self, AgreementError> {
        if first.len() != second.len() {
            return Err(StatsError::Unpaired { left: first.len(), right: second.len() }.into());
        }
        if first.is_empty() {
            return Err(StatsError::TooFew { what: "pairs of scores", needed: 1, got: 0 }.into());
        }
        if let Some(category) = first.iter().chain(second).find(|c| **c >= categories) {
            return Err(AgreementError::UnknownCategory { category: *category, categories });
        }
        let mut counts = vec![0; categories * categories];
        for (a, b) in first.iter().zip(second) {
            counts[a * categories + b] += 1;
        }
        Ok(Self { categories, counts, n: first.len() as u64 })
    }

    /// Cohen's kappa. Both people score every case, independently of each other.
    ///
    /// # Errors
    /// [`AgreementError::OneCategory`] if both used one and the same category throughout.
    ///
    /// ```
    /// use sayso_methods::agreement::{RatingTable, Weighting};
    /// use sayso_methods::stats::Level;
    /// let kappa = RatingTable::from_ratings(&[0, 0, 1, 1], &[0, 0, 1, 0], 2)?.kappa(Weighting::Unweighted, Level::P95)?;
    /// assert!((kappa.kappa - 0.5).abs() < 1e-12);
    /// # Ok::<(), sayso_methods::agreement::AgreementError>(())
    /// ```
    pub fn kappa(&self, weighting: Weighting, level: Level) -> Result<Kappa, AgreementError> {
        let (k, n) = (self.categories, self.n as f64);
        let share = |a: usize, b: usize| self.counts[a * k + b] as f64 / n;
        let rows: Vec<f64> = (0..k).map(|a| (0..k).map(|b| share(a, b)).sum()).collect();
        let columns: Vec<f64> = (0..k).map(|b| (0..k).map(|a| share(a, b)).sum()).collect();
        let steps = (k.max(2) - 1) as f64;
        let weight = |a: usize, b: usize| {
            let apart = a.abs_diff(b) as f64 / steps;
            match weighting {
                Weighting::Unweighted => f64::from(u8::from(a == b)),
                Weighting::Linear => 1.0 - apart,
                Weighting::Quadratic => 1.0 - apart * apart,
            }
        };
        // Every cell of the table, with the weight of its two categories.
        let cells: Vec<(usize, usize, f64)> =
            (0..k).flat_map(|a| (0..k).map(move |b| (a, b))).map(|(a, b)| (a, b, weight(a, b))).collect();
        let observed: f64 = cells.iter().map(|(a, b, w)| w * share(*a, *b)).sum();
        let expected: f64 = cells.iter().map(|(a, b, w)| w * rows[*a] * columns[*b]).sum();
        if 1.0 - expected < 1e-12 {
            return Err(AgreementError::OneCategory { n: self.n as usize });
        }
        let kappa = (observed - expected) / (1.0 - expected);
        let row_weight: Vec<f64> = (0..k).map(|a| (0..k).map(|b| columns[b] * weight(a, b)).sum()).collect();
        let column_weight: Vec<f64> = (0..k).map(|b| (0..k).map(|a| rows[a] * weight(a, b)).sum()).collect();
        let pulled = |a: usize, b: usize| (row_weight[a] + column_weight[b]) * (1.0 - kappa);
        let mut spread: f64 = cells.iter().map(|(a, b, w)| share(*a, *b) * (w - pulled(*a, *b)).powi(2)).sum();
        spread -= (kappa - expected * (1.0 - kappa)).powi(2);
        let variance = (spread / n).max(0.0) / (1.0 - expected).powi(2);
        let standard_error = if variance < 1e-24 { 0.0 } else { variance.sqrt() };
        let half = level.z() * standard_error;
        let interval = (standard_error > 0.0).then(|| Interval {
            low: (kappa - half).max(-1.0),
            high: (kappa + half).min(1.0),
            level,
        });
        Ok(Kappa { kappa, standard_error, interval, observed, expected, n: self.n })
    }
}
