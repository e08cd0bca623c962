//! Presses by hour, weekday or any other bin: rates with intervals that admit bursts, and the bins that stand out.
//!
//! Sources: Garwood 1936, Biometrika 28:437 (interval); Przyborowski & Wilenski 1940 (a bin against the rest);
//! Benjamini & Hochberg 1995 (over bins). Page: `docs/methods/demand.md`.

use super::{DemandError, check_exposure};
use crate::stats::{Clumping, Count, Interval, Level, benjamini_hochberg, clumped_p};

/// The rate in one bin.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct BinRate {
    /// Presses and exposure; `None` where no time was observed, which is not a rate of zero.
    pub count: Option<Count>,
    /// 95 % interval of the rate.
    pub interval: Option<Interval>,
    /// Rate in this bin over the rate in all others; `None` where one side was not observed or all counts are 0.
    pub ratio_to_rest: Option<f64>,
    /// Two-sided p of the bin against the rest, adjusted over bins (false discovery rate).
    pub adjusted_p: Option<f64>,
}

/// Rates by bin: 24 hours, 7 weekdays, 168 hours of the week.
///
/// `counts[b]` presses and `exposure[b]` time observed in bin `b`, in any unit (hours give presses an hour). On the
/// days the clocks change a bin simply has an hour more or less of exposure. `clumping` says how much presses come in
/// bursts; [`Clumping::NONE`] takes them as independent.
///
/// # Errors
/// [`DemandError::Unpaired`], [`DemandError::OutOfRange`], [`DemandError::PressesWithoutExposure`],
/// [`DemandError::NoObservations`] when no bin was observed.
///
/// ```
/// use sayso_methods::demand::rates::rates_by_bin;
/// use sayso_methods::stats::Clumping;
/// let bins = rates_by_bin(&[12, 0, 3], &[6.0, 6.0, 0.5], Clumping::NONE)?;
/// assert_eq!(bins[0].count.map(|c| c.rate()), Some(2.0));
/// # Ok::<(), sayso_methods::demand::DemandError>(())
/// ```
pub fn rates_by_bin(counts: &[u64], exposure: &[f64], clumping: Clumping) -> Result<Vec<BinRate>, DemandError> {
    check_exposure(counts, exposure)?;
    let all_time: f64 = exposure.iter().sum();
    if all_time <= 0.0 {
        return Err(DemandError::NoObservations);
    }
    if !all_time.is_finite() {
        return Err(DemandError::OutOfRange { what: "exposure in all", value: all_time });
    }
    let mut all = 0u64;
    for &count in counts {
        all = all.checked_add(count).ok_or(DemandError::OutOfRange { what: "presses in all", value: count as f64 })?;
    }
    let mut bins = Vec::with_capacity(counts.len());
    let mut tested = Vec::new();
    for (at, (&count, &time)) in counts.iter().zip(exposure).enumerate() {
        if time == 0.0 {
            bins.push(BinRate { count: None, interval: None, ratio_to_rest: None, adjusted_p: None });
            continue;
        }
        let here = Count::new(count, time)?;
        // Summed afresh rather than by subtraction, which would leave rounding where the rest is tiny.
        let rest: f64 = exposure.iter().enumerate().filter(|(b, _)| *b != at).map(|(_, time)| time).sum();
        let against = if rest > 0.0 { Some(Count::new(all - count, rest)?) } else { None };
        if let Some(against) = against {
            tested.push((at, clumped_p(here, against, clumping)?));
        }
        bins.push(BinRate {
            count: Some(here),
            interval: Some(here.clumped_interval(clumping, Level::P95)),
            ratio_to_rest: against.filter(|_| all > 0).map(|rest| here.rate() / rest.rate()),
            adjusted_p: None,
        });
    }
    let p: Vec<f64> = tested.iter().map(|test| test.1).collect();
    for ((at, _), adjusted) in tested.iter().zip(benjamini_hochberg(&p, 0.05)?.adjusted) {
        bins[*at].adjusted_p = Some(adjusted);
    }
    Ok(bins)
}
