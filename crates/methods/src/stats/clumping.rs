//! Rates of events that come in bursts or on good and bad days: how much more their counts vary than single events would,
//! and the interval of a rate that admits it.
//!
//! Sources: variance inflated by an estimated factor (quasi-likelihood: Wedderburn 1974, Biometrika 61:439, from memory);
//! variance from successive differences (von Neumann 1941, Ann Math Stat 12:367, from memory). Their combination, the
//! weights and the allowance for few bouts are ours, set in the laboratory. Page: `docs/methods/demand.md`.

use super::special::falling_root;
use super::{Count, Interval, Level, StatsError, Tail, compare_rates, student_t_quantile};
use statrs::function::{beta::checked_beta_reg, gamma::checked_gamma_ur};

/// Parts of the day told apart, so that a daily rhythm is no burst: two hours each.
const PARTS: usize = 12;
/// Parts of the day where there is too little time to know a rhythm: ten minutes each.
const FINE_PARTS: usize = 144;
/// With nothing counted the bursts cannot be seen: they are taken to hold this many events.
const UNSEEN: f64 = 3.0;
/// Days that the day-to-day figure must outweigh.
const PRIOR_DAYS: f64 = 4.0;
/// Fewest whole days for a day-to-day figure.
const FEWEST_DAYS: usize = 4;

/// How much more counts vary than those of events that come singly.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Clumping {
    factor: f64,
    widened: f64,
    within: f64,
}

impl Clumping {
    /// Events that come singly and at a steady rate.
    pub const NONE: Self = Self { factor: 1.0, widened: 1.0, within: 1.0 };

    /// From the times of the events, in days since watching began (best at the start of a day), and the days watched.
    ///
    /// Two figures are combined. Within the day: the variance over days of the counts in each two hours of the day, summed,
    /// over the sum of their means; a burst shows in it and a daily rhythm does not. From day to day: the mean squared
    /// difference of successive days' totals; good and bad days show in it and a slow change of the rate does not.
    ///
    /// # Errors
    /// [`StatsError::OutOfRange`] unless `days` is positive and finite and every time lies within it.
    ///
    /// ```
    /// use sayso_methods::stats::Clumping;
    /// let minute = 1.0 / 1440.0;
    /// let single: Vec<f64> = (0..40).map(|k| 0.37 * f64::from(k)).collect();
    /// let bursts: Vec<f64> = (0..40).map(|k| 1.83 * f64::from(k / 5) + minute * f64::from(k % 5)).collect();
    /// assert!(Clumping::of_times(&single, 15.0)?.factor() < 1.3);
    /// assert!(Clumping::of_times(&bursts, 15.0)?.factor() > 4.0);
    /// # Ok::<(), sayso_methods::stats::StatsError>(())
    /// ```
    pub fn of_times(times: &[f64], days: f64) -> Result<Self, StatsError> {
        if !(days > 0.0 && days.is_finite()) {
            return Err(StatsError::OutOfRange { what: "days watched", value: days });
        }
        if let Some(&value) = times.iter().find(|t| !(0.0..=days).contains(*t)) {
            return Err(StatsError::OutOfRange { what: "time of an event", value });
        }
        if times.is_empty() {
            return Ok(Self { factor: UNSEEN, widened: UNSEEN, within: UNSEEN });
        }
        let seen = times.len() as f64;
        let within = if days < 2.0 { in_little_time(times, days) } else { within_days(times, days) }.max(1.0);
        // The factor is itself estimated, from about as many bouts as it leaves; single events need no allowance.
        let t = student_t_quantile(Level::P95.tail(), (seen / within).max(1.0))? / Level::P95.z();
        let allowance = 1.0 + (t * t - 1.0) * (within - 1.0) / within;
        let (between, weight) = between_days(times, days).unwrap_or((0.0, 0.0));
        let combine = |within: f64| within.max((between * weight + within * PRIOR_DAYS) / (weight + PRIOR_DAYS));
        let within_widened = within * allowance;
        Ok(Self { factor: combine(within), widened: combine(within_widened), within: within_widened })
    }

    /// For counts in one part of the day summed over days: good and bad days weigh less there than on whole days.
    #[must_use]
    pub const fn of_a_part(self) -> Self {
        Self { factor: self.within, widened: self.within, within: self.within }
    }

    /// Variance of a count over that of single events, at least 1.
    #[must_use]
    pub const fn factor(self) -> f64 {
        self.factor
    }
}

/// Counts by part of the day and by day.
fn cells(times: &[f64], days: usize, parts: usize) -> Vec<Vec<f64>> {
    let mut counts = vec![vec![0.0; days]; parts];
    for time in times {
        let day = (time.floor() as usize).min(days - 1);
        let part = (((time - day as f64) * parts as f64) as usize).min(parts - 1);
        counts[part][day] += 1.0;
    }
    counts
}

fn within_days(times: &[f64], days: f64) -> f64 {
    let days = days.ceil() as usize;
    let variance = |row: &Vec<f64>| {
        let mean = row.iter().sum::<f64>() / days as f64;
        row.iter().map(|count| (count - mean).powi(2)).sum::<f64>() / (days as f64 - 1.0)
    };
    cells(times, days, PARTS).iter().map(variance).sum::<f64>() / (times.len() as f64 / days as f64)
}

/// Without a second day a daily rhythm cannot be told from bursts, so it counts as one.
fn in_little_time(times: &[f64], days: f64) -> f64 {
    let parts = ((days * FINE_PARTS as f64).ceil() as usize).max(2);
    let mut counts = vec![0.0; parts];
    for time in times {
        counts[((time * FINE_PARTS as f64) as usize).min(parts - 1)] += 1.0;
    }
    let mean = times.len() as f64 / parts as f64;
    counts.iter().map(|count: &f64| (count - mean).powi(2)).sum::<f64>() / (parts as f64 - 1.0) / mean
}

/// The day-to-day figure over whole days, with the days it is worth.
fn between_days(times: &[f64], days: f64) -> Option<(f64, f64)> {
    let days = days.floor() as usize;
    let mut totals = vec![0.0; days];
    times.iter().filter_map(|t| totals.get_mut(t.floor() as usize).map(|total| *total += 1.0)).for_each(drop);
    let mean = totals.iter().sum::<f64>() / days as f64;
    if days < FEWEST_DAYS || mean == 0.0 {
        return None;
    }
    let pairs = days as f64 - 1.0;
    let squares: f64 = totals.windows(2).map(|pair| (pair[1] - pair[0]).powi(2)).sum();
    // Differences of neighbours hold about two thirds of what there is to know of a variance.
    Some((squares / (2.0 * pairs) / mean, pairs * 2.0 / 3.0))
}

impl Count {
    /// The interval of the rate that admits bursts: Garwood's on the events as if each stood for `clumping` of them. The
    /// exact one where they come singly.
    #[must_use]
    pub fn clumped_interval(self, clumping: Clumping, level: Level) -> Interval {
        let factor = clumping.widened;
        if factor <= 1.0 {
            return self.interval(level);
        }
        let (seen, tail) = (self.events() as f64 / factor, level.tail());
        let above = |shape: f64, x: f64| if x > 0.0 { checked_gamma_ur(shape, x).unwrap_or(0.0) } else { 1.0 };
        let low = if seen == 0.0 { 0.0 } else { falling_root(0.0, seen + 1.0, |x| above(seen, x) - (1.0 - tail)) };
        let mut top = seen + 10.0 + 10.0 * seen.sqrt();
        while above(seen + 1.0, top) > tail {
            top *= 2.0;
        }
        let high = falling_root(seen, top, |x| above(seen + 1.0, x) - tail);
        Interval::new(low * factor / self.exposure(), high * factor / self.exposure(), level)
    }
}

/// Two-sided p-value that two rates are the same, of events that come in bursts: given the total, the share of the first
/// as if every `clumping` events were one. The exact test where they come singly.
///
/// # Errors
/// As [`compare_rates`].
///
/// ```
/// use sayso_methods::stats::{Clumping, Count, clumped_p};
/// let (more, fewer) = (Count::new(30, 10.0)?, Count::new(15, 10.0)?);
/// assert!((clumped_p(more, fewer, Clumping::NONE)? - 0.035_697_8).abs() < 1e-6);
/// let bursts = Clumping::of_times(&[0.1, 0.101, 0.102, 4.5, 4.501, 4.502, 9.2, 9.201, 9.202], 20.0)?;
/// assert!(clumped_p(more, fewer, bursts)? > 0.1);
/// # Ok::<(), sayso_methods::stats::StatsError>(())
/// ```
pub fn clumped_p(first: Count, second: Count, clumping: Clumping) -> Result<f64, StatsError> {
    let exact = compare_rates(first, second, Tail::TwoSided, Level::P95)?;
    if clumping.widened <= 1.0 || exact.n == 0 {
        return Ok(exact.p);
    }
    let chance = first.exposure() / (first.exposure() + second.exposure());
    let [a, b] = [first, second].map(|count| count.events() as f64 / clumping.widened);
    // P(at least a of a + b) and P(at most a), which for whole numbers are the binomial's own.
    let upper = if a == 0.0 { 1.0 } else { checked_beta_reg(a, b + 1.0, chance).unwrap_or(1.0) };
    let lower = if b == 0.0 { 1.0 } else { checked_beta_reg(b, a + 1.0, 1.0 - chance).unwrap_or(1.0) };
    Ok((2.0 * upper.min(lower)).clamp(exact.p.min(1.0), 1.0))
}
