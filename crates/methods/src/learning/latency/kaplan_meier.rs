//! Survival curve of a waiting time and its median.
//!
//! Sources: E. L. Kaplan & P. Meier (1958), J Am Stat Assoc 53:457; interval on the log(-log) scale with Greenwood's variance
//! (J. D. Kalbfleisch & R. L. Prentice 1980, 1.3), as in `lifelines`; median interval by R. Brookmeyer & J. Crowley (1982),
//! Biometrics 38:29, on the same scale.

use super::{LatencyError, Wait, in_order};
use crate::stats::{Interval, Level};

/// The curve just after one time.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SurvivalPoint {
    /// Time.
    pub time: f64,
    /// Share for which the event has not come by then.
    pub survival: f64,
    /// Pointwise interval. At a survival of exactly 1 or 0 the method gives a single point, which is no claim to certainty.
    pub interval: Interval,
    /// Still waiting just before `time`.
    pub at_risk: usize,
    /// Events at `time`.
    pub events: usize,
    /// Watching ended at `time` without an event.
    pub censored: usize,
}

/// A Kaplan-Meier curve.
#[derive(Debug, Clone, PartialEq)]
pub struct SurvivalCurve {
    /// One point at 0, then one at each distinct time.
    pub points: Vec<SurvivalPoint>,
    /// Waits.
    pub n: usize,
    /// Waits that ended in the event.
    pub events: usize,
    /// Level of the intervals.
    pub level: Level,
}

/// Interval of the median; an end is `None` where the curve's bound does not get down to a half.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct MedianInterval {
    /// Lower end.
    pub low: Option<f64>,
    /// Upper end; `None` means it cannot be bounded from these data.
    pub high: Option<f64>,
    /// Level.
    pub level: Level,
}

/// Guards comparisons with a share against rounding in the product.
const ROUNDING: f64 = 1e-12;

fn log_log_interval(survival: f64, greenwood: f64, z: f64, level: Level) -> Interval {
    if survival >= 1.0 {
        return Interval { low: 1.0, high: 1.0, level };
    }
    if survival <= 0.0 {
        return Interval { low: 0.0, high: 0.0, level };
    }
    // exp(-exp(ln(-log) + half)) with fewer steps.
    let log = survival.ln();
    let factor = (z * greenwood.sqrt() / -log).exp();
    Interval { low: (log * factor).exp(), high: (log / factor).exp(), level }
}

/// Kaplan-Meier curve of right-censored waits. An event and an end of watching at the same time: the event counts first.
///
/// # Errors
/// [`LatencyError::Stats`] for no data, or for a time that is negative or no number.
///
/// ```
/// use sayso_methods::learning::latency::{Wait, kaplan_meier};
/// use sayso_methods::stats::Level;
/// let waits = [Wait::ended(1.0), Wait::ended(2.0), Wait::open(5.0), Wait::open(5.0)];
/// let curve = kaplan_meier(&waits, Level::P95)?;
/// assert_eq!(curve.points.iter().find(|p| p.time == 2.0).map(|p| p.survival), Some(0.5));
/// assert_eq!(curve.median(), Some(2.0));
/// assert_eq!((curve.quantile(0.25), curve.quantile(0.75)), (Some(1.0), None));
/// # Ok::<(), sayso_methods::learning::latency::LatencyError>(())
/// ```
pub fn kaplan_meier(waits: &[Wait], level: Level) -> Result<SurvivalCurve, LatencyError> {
    let sorted = in_order(waits)?;
    let n = sorted.len();
    let first = sorted.first().map_or(0.0, |w| w.time);
    let mut points = Vec::with_capacity(1 + sorted.chunk_by(|a, b| a.time == b.time).count());
    if first > 0.0 {
        let interval = Interval { low: 1.0, high: 1.0, level };
        points.push(SurvivalPoint { time: 0.0, survival: 1.0, interval, at_risk: n, events: 0, censored: 0 });
    }
    let (mut survival, mut greenwood, mut at_risk, mut all_events) = (1.0, 0.0, n, 0);
    let z = level.z();
    let mut interval = log_log_interval(survival, greenwood, z, level);
    for group in sorted.chunk_by(|a, b| a.time == b.time) {
        let events = group.iter().filter(|w| w.event).count();
        if events > 0 {
            let (d, r) = (events as f64, at_risk as f64);
            survival = if events == at_risk { 0.0 } else { survival * (1.0 - d / r) };
            greenwood += d / (r * (r - d));
            interval = log_log_interval(survival, greenwood, z, level);
        }
        let censored = group.len() - events;
        let time = group.first().map_or(0.0, |w| w.time);
        points.push(SurvivalPoint { time, survival, interval, at_risk, events, censored });
        at_risk -= group.len();
        all_events += events;
    }
    Ok(SurvivalCurve { points, n, events: all_events, level })
}

impl SurvivalCurve {
    /// First time by which the event has come for this share, 0 to 1; `None` if it never gets there.
    pub fn quantile(&self, share: f64) -> Option<f64> {
        self.first_at_or_below(1.0 - share, |p| p.survival)
    }

    /// First time by which the event has come for half; `None` if it never gets there.
    pub fn median(&self) -> Option<f64> {
        self.quantile(0.5)
    }

    /// Interval of the median.
    pub fn median_interval(&self) -> MedianInterval {
        MedianInterval {
            low: self.first_at_or_below(0.5, |p| p.interval.low),
            high: self.first_at_or_below(0.5, |p| p.interval.high),
            level: self.level,
        }
    }

    fn first_at_or_below(&self, left: f64, value: impl Fn(&SurvivalPoint) -> f64) -> Option<f64> {
        self.points.iter().find(|p| value(p) <= left + ROUNDING).map(|p| p.time)
    }
}
