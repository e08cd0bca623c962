//! Gaps: what is asked for without a button, week by week, so that the next word can be one that is missed.
//!
//! Source of the interval: [`Clumping`]. That a wish asked for often makes a good next word: common
//! practice, no source. Page: `docs/methods/demand.md`.

use super::DemandError;
use crate::stats::{Clumping, Count, Interval, Level};

/// A wish asked for without a button.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Gap {
    /// The wish's number, as given.
    pub wish: usize,
    /// Catches and weeks observed; its rate is catches a week.
    pub count: Count,
    /// 95 % interval of the rate.
    pub interval: Interval,
    /// Catches in the last week observed.
    pub last_week: u64,
    /// Weeks with at least one catch.
    pub weeks_with: usize,
}

/// Catches by wish, most asked first (by the lower end of the interval, so that one good day does not lead).
///
/// `catches[wish][week]`, every row as long as `days_observed`, which gives the days (0 to 7) of each week in which
/// somebody kept the notebook; a week of 3 days counts as 3/7 of a week. `clumping[wish]`: how much its catches come in bursts.
///
/// # Errors
/// [`DemandError::NoObservations`] if no day was observed, [`DemandError::Unpaired`], [`DemandError::OutOfRange`],
/// [`DemandError::PressesWithoutExposure`] for a catch in a week without an observed day.
///
/// ```
/// use sayso_methods::demand::gaps::gaps;
/// use sayso_methods::stats::Clumping;
/// let found = gaps(&[vec![1, 0, 2], vec![6, 4, 4]], &[7.0, 7.0, 7.0], &[Clumping::NONE; 2])?;
/// assert_eq!(found[0].wish, 1);
/// assert_eq!(found[0].last_week, 4);
/// # Ok::<(), sayso_methods::demand::DemandError>(())
/// ```
pub fn gaps(catches: &[Vec<u64>], days_observed: &[f64], clumping: &[Clumping]) -> Result<Vec<Gap>, DemandError> {
    if clumping.len() != catches.len() {
        return Err(DemandError::Unpaired { left: catches.len(), right: clumping.len() });
    }
    if let Some(&value) = days_observed.iter().find(|days| !(0.0..=7.0).contains(*days)) {
        return Err(DemandError::OutOfRange { what: "days observed in a week", value });
    }
    let weeks = days_observed.iter().sum::<f64>() / 7.0;
    if weeks <= 0.0 {
        return Err(DemandError::NoObservations);
    }
    let last = days_observed.iter().rposition(|days| *days > 0.0).unwrap_or_default();
    let mut found = Vec::with_capacity(catches.len());
    for (wish, (by_week, clumping)) in catches.iter().zip(clumping).enumerate() {
        super::check_exposure(by_week, days_observed)?;
        let total = by_week.iter().fold(0u64, |sum, count| sum.saturating_add(*count));
        let count = Count::new(total, weeks)?;
        found.push(Gap {
            wish,
            count,
            interval: count.clumped_interval(*clumping, Level::P95),
            last_week: by_week[last],
            weeks_with: by_week.iter().filter(|count| **count > 0).count(),
        });
    }
    found.sort_by(|a, b| b.interval.low.total_cmp(&a.interval.low).then(a.wish.cmp(&b.wish)));
    Ok(found)
}
