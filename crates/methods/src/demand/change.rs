//! When did the rate of presses change? Exact segmentation of counts under a Poisson cost.
//!
//! Sources: cost `2 (S - S ln(S/E))` a segment and a penalty a change, minimised exactly by optimal partitioning
//! (Jackson et al. 2005, IEEE Signal Process Lett 12:105) with pruning (PELT: Killick, Fearnhead & Eckley 2012, J Am
//! Stat Assoc 107:1590) in its functional form, which also stays fast when nothing changes for years (FPOP: Maidstone,
//! Hocking, Rigaill & Fearnhead 2017, Stat Comput 27:519). Bounds that start the root finding: Chatzigeorgiou 2013,
//! IEEE Commun Lett 17:1505. Page: `docs/methods/demand.md`.

use super::{DemandError, check_exposure};
use crate::stats::{Clumping, Count, Interval, Level};

/// A stretch with one rate.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Segment {
    /// Index of the first step.
    pub start: usize,
    /// One past the last step.
    pub end: usize,
    /// Presses and exposure; `None` if the stretch was never observed.
    pub count: Option<Count>,
    /// Exact 95 % interval of the rate for presses that come singly, as if the stretch had been chosen beforehand (it was not, so take it as a guide).
    pub interval: Option<Interval>,
}

/// Segmentation with the least cost.
#[derive(Debug, Clone, PartialEq)]
pub struct ChangePoints {
    /// Segments in order; always at least one.
    pub segments: Vec<Segment>,
    /// Number of steps before each change: the step at that index (from 0) is the first with the new rate.
    pub change_after: Vec<usize>,
    /// Sum of the segments' costs plus the penalty for each change.
    pub objective: f64,
    /// Penalty a change.
    pub penalty: f64,
    /// Steps looked at.
    pub n: usize,
}

/// The default penalty, `2 ln n`.
#[must_use]
pub fn default_penalty(n: usize) -> f64 {
    2.0 * (n.max(1) as f64).ln()
}

/// The penalty for presses that come in bursts: their counts cost that much more by chance alone (quasi-likelihood).
#[must_use]
pub fn clumped_penalty(n: usize, clumping: Clumping) -> f64 {
    clumping.factor() * default_penalty(n)
}

/// Finds the changes in the rate `counts[t] / exposure[t]`. Steps with no exposure belong to either neighbour.
///
/// The result is the exact minimum (up to rounding). Ties go to the earlier change.
///
/// # Errors
/// [`DemandError::NoObservations`] for an empty list, [`DemandError::OutOfRange`] for a negative or non-finite
/// penalty or exposure, [`DemandError::Unpaired`], [`DemandError::PressesWithoutExposure`].
pub fn change_points_with_exposure(
    counts: &[u64],
    exposure: &[f64],
    penalty: f64,
) -> Result<ChangePoints, DemandError> {
    check_exposure(counts, exposure)?;
    if !(penalty.is_finite() && penalty >= 0.0) {
        return Err(DemandError::OutOfRange { what: "penalty", value: penalty });
    }
    if counts.is_empty() {
        return Err(DemandError::NoObservations);
    }
    let (objective, previous) = partition(counts, exposure, penalty);
    let mut cuts = Vec::new();
    let mut end = counts.len();
    while end > 0 {
        end = previous[end];
        if end > 0 {
            cuts.push(end);
        }
    }
    cuts.reverse();
    let starts = std::iter::once(0).chain(cuts.iter().copied());
    let ends = cuts.iter().copied().chain([counts.len()]);
    let segments = starts
        .zip(ends)
        .map(|(start, end)| {
            let time: f64 = exposure[start..end].iter().sum();
            let events = counts[start..end].iter().fold(0u64, |sum, count| sum.saturating_add(*count));
            let count = Count::new(events, time).ok();
            Segment { start, end, count, interval: count.map(|count| count.interval(Level::P95)) }
        })
        .collect();
    Ok(ChangePoints { segments, change_after: cuts, objective, penalty, n: counts.len() })
}

/// `min over rate of 2 (E rate - S ln rate)`.
fn cost(events: f64, time: f64) -> f64 {
    if events > 0.0 { 2.0 * (events - events * (events / time).ln()) } else { 0.0 }
}

/// A possible start of the last segment, with the rates for which no later start can beat it.
struct Candidate {
    start: usize,
    /// Best objective before `start`, plus the penalty for changing there.
    base: f64,
    events: f64,
    time: f64,
    rates: Vec<(f64, f64)>,
}

/// Returns the least objective and, for each end, the start of its last segment.
fn partition(counts: &[u64], exposure: &[f64], penalty: f64) -> (f64, Vec<usize>) {
    let everything = (0.0, f64::INFINITY);
    let mut previous = vec![0; counts.len() + 1];
    // The first segment pays no penalty.
    let mut candidates = vec![Candidate { start: 0, base: 0.0, events: 0.0, time: 0.0, rates: vec![everything] }];
    let mut best = 0.0;
    for (t, (&count, &time)) in counts.iter().zip(exposure).enumerate() {
        best = f64::INFINITY;
        for candidate in &mut candidates {
            candidate.events += count as f64;
            candidate.time += time;
            let total = candidate.base + cost(candidate.events, candidate.time);
            if total < best {
                best = total;
                previous[t + 1] = candidate.start;
            }
        }
        let limit = best + penalty;
        // Rates at which an old start is still as good as changing here; elsewhere the new start takes over for good.
        let mut fresh = vec![everything];
        for candidate in &mut candidates {
            let kept = not_above(candidate, limit);
            candidate.rates.retain_mut(|(low, high)| {
                *low = low.max(kept.0);
                *high = high.min(kept.1);
                low < high
            });
            fresh = without(&fresh, kept);
        }
        candidates.retain(|candidate| !candidate.rates.is_empty());
        if !fresh.is_empty() {
            candidates.push(Candidate { start: t + 1, base: limit, events: 0.0, time: 0.0, rates: fresh });
        }
    }
    (best, previous)
}

/// The rates `r` with `base + 2 (E r - S ln r) <= limit`: an interval because the function is convex.
fn not_above(candidate: &Candidate, limit: f64) -> (f64, f64) {
    const NONE: (f64, f64) = (f64::INFINITY, f64::NEG_INFINITY);
    let Candidate { base, events, time, .. } = *candidate;
    let room = 0.5 * (limit - base);
    if events == 0.0 {
        return match (room >= 0.0, time > 0.0) {
            (false, _) => NONE,
            (true, true) => (0.0, room / time),
            (true, false) => (0.0, f64::INFINITY),
        };
    }
    // With r = (S/E) u the condition is u - ln u <= 1 + depth.
    let rate = events / time;
    let depth = room / events + rate.ln() - 1.0;
    if depth < 0.0 {
        return NONE;
    }
    let reach = (2.0 * depth).sqrt();
    // Both Newton runs start beyond their root on a convex function, so they come down to it and never cross.
    let mut above = 1.0 + reach + depth;
    for _ in 0..60 {
        let step = (above - above.ln() - 1.0 - depth) / (1.0 - 1.0 / above);
        if step.is_nan() || step <= 1e-14 * above {
            break;
        }
        above -= step;
    }
    let mut below = (reach + depth).min(1.0 + depth); // of the form u = exp(-below)
    for _ in 0..60 {
        let shrunk = (-below).exp();
        let step = (shrunk + below - 1.0 - depth) / (1.0 - shrunk);
        if step.is_nan() || step <= 1e-14 * below {
            break;
        }
        below -= step;
    }
    (rate * (-below).exp(), rate * above)
}

/// A union of intervals less one interval.
fn without(rates: &[(f64, f64)], taken: (f64, f64)) -> Vec<(f64, f64)> {
    if taken.0 >= taken.1 {
        return rates.to_vec();
    }
    let pieces = rates.iter().flat_map(|&(low, high)| [(low, high.min(taken.0)), (low.max(taken.1), high)]);
    pieces.filter(|(low, high)| low < high).collect()
}
