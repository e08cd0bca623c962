//! How long until it presses, once invited: censored at the end of the wait.

use crate::estimate::{Estimate, LEVEL, Unit};
use crate::observe::Usable;
use sayso_methods::learning::latency::{LatencyError, SurvivalCurve, Wait, kaplan_meier};

/// Time to press under the waits that were kept.
#[derive(Clone, PartialEq, Debug)]
pub struct Waiting {
    /// Those without a press count up to the end of their wait (Kaplan & Meier 1958); or why there is no curve.
    pub curve: Result<SurvivalCurve, LatencyError>,
    /// Median seconds to press.
    pub median: Estimate,
}

/// The waits of invitations in which it joined and took the thing.
pub fn waiting<'a>(usable: impl IntoIterator<Item = &'a Usable<'a>>) -> Waiting {
    let wait = |u: &Usable<'_>| if u.pressed { Wait::ended(u.seconds) } else { Wait::open(u.seconds) };
    let waits: Vec<Wait> = usable.into_iter().map(wait).collect();
    let curve = kaplan_meier(&waits, LEVEL);
    let median = curve.as_ref().map_or(Estimate::unknown(Unit::Seconds), |c| {
        let interval = c.median_interval();
        Estimate { value: c.median(), low: interval.low, high: interval.high, n: c.n, unit: Unit::Seconds }
    });
    Waiting { curve, median }
}
