//! How long until it presses, once invited: censored at the end of the wait.

use crate::estimate::{Estimate, LEVEL, Unit};
use crate::observe::Usable;
use sayso_methods::learning::latency::{LatencyError, Wait, kaplan_meier};

/// Median seconds to press under the waits that were kept, or why there is none. Invitations without a press count up to the
/// end of their wait (Kaplan & Meier 1958). How many were pressed at all is another figure's ([`crate::standing::Standing`]).
pub type Waiting = Result<Estimate, LatencyError>;

/// The waits of invitations in which it joined and took the thing.
///
/// # Errors
/// [`LatencyError`] for a wait that is no time.
pub fn waiting<'a>(usable: impl IntoIterator<Item = &'a Usable<'a>>) -> Waiting {
    let wait = |u: &Usable<'_>| if u.pressed { Wait::ended(u.seconds) } else { Wait::open(u.seconds) };
    let waits: Vec<Wait> = usable.into_iter().map(wait).collect();
    let curve = kaplan_meier(&waits, LEVEL)?;
    let interval = curve.median_interval();
    Ok(Estimate { value: curve.median(), low: interval.low, high: interval.high, n: curve.n, unit: Unit::Seconds })
}
