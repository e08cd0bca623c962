//! Moments of a rehearsal, and shares of them.

use sayso_advisor::{Estimate, Unit};
use sayso_sim::rehearsal::{Run, Told, What};

/// Milliseconds in which what was pressed can be given, at the least: what cut it short before that is no fault of giving.
pub(crate) const GIVES_MS: u32 = 5_000;

/// Each moment at which that happened, and what was told after it.
pub(crate) fn each(run: &Run, is: impl Fn(What) -> bool) -> impl Iterator<Item = (&Told, &[Told])> {
    run.told.iter().enumerate().filter(move |(_, t)| is(t.what)).map(|(i, told)| (told, &run.told[i + 1..]))
}

/// Whether the person asks something of it there.
pub(crate) fn asks(told: &Told) -> bool {
    matches!(told.what, What::Person(does) if does.asks())
}

/// A share with its interval; where there was nothing to count, nothing is known.
pub(crate) fn k_of(k: usize, n: usize) -> Estimate {
    if n == 0 { Estimate::unknown(Unit::Share) } else { Estimate::share(k, n) }
}

pub(crate) fn share(of: impl Iterator<Item = bool>) -> Estimate {
    let all: Vec<bool> = of.collect();
    k_of(all.iter().filter(|k| **k).count(), all.len())
}
