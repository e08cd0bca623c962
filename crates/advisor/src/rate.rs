//! Rates a day of events that may come in bursts. Every rate shown goes through here.

use crate::estimate::{Estimate, LEVEL, Unit};
use sayso_methods::stats::{Clumping, Count};
use sayso_model::{Moment, Zone};

const DAY_S: f64 = 86_400.0;

/// How much events come in bursts, from their times in `from..=to`; those outside are passed over. Singly where no time was watched.
pub(crate) fn clumping(at: impl IntoIterator<Item = Moment>, from: Moment, to: Moment, zone: &Zone) -> Clumping {
    let start = from.day(zone).start(zone);
    let days = |at: Moment| at.seconds_since(start) / DAY_S;
    let times: Vec<f64> = at.into_iter().filter(|at| *at >= from && *at <= to).map(days).collect();
    Clumping::of_times(&times, days(to)).unwrap_or(Clumping::NONE)
}

/// `count` with the interval that admits those bursts.
pub(crate) fn rate(count: Count, clumping: Clumping, unit: Unit) -> Estimate {
    let n = usize::try_from(count.events()).unwrap_or(usize::MAX);
    Estimate::with(count.rate(), count.clumped_interval(clumping, LEVEL), n, unit)
}

/// Events a day in `from..=to`.
pub(crate) fn per_day(at: impl IntoIterator<Item = Moment>, from: Moment, to: Moment, zone: &Zone) -> Estimate {
    let at: Vec<Moment> = at.into_iter().filter(|at| *at >= from && *at <= to).collect();
    let clumping = clumping(at.iter().copied(), from, to, zone);
    Count::new(at.len() as u64, to.seconds_since(from) / DAY_S)
        .map_or(Estimate::unknown(Unit::PerDay), |count| rate(count, clumping, Unit::PerDay))
}
