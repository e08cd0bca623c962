//! Moments of a rehearsal, and shares of them.

use sayso_advisor::{Estimate, Unit};
use sayso_sim::rehearsal::{Does, Run, Told, What};

/// Milliseconds in which what was pressed can be given, at the least: what cut it short before that is no fault of giving.
pub(crate) const GIVES_MS: u32 = 5_000;

/// Each moment at which that happened, and what was told after it.
pub(crate) fn each(run: &Run, is: impl Fn(What) -> bool) -> impl Iterator<Item = (&Told, &[Told])> {
    run.told.iter().enumerate().filter(move |(_, t)| is(t.what)).map(|(i, told)| (told, &run.told[i + 1..]))
}

/// Milliseconds in which nobody can act on what was just told: a tap then was under way before. About two of a person's choice reaction
/// times (0.3 s; Luce 1986, from memory), as a caption may come a tenth of a second late.
pub(crate) const REACTS_MS: u32 = 600;

/// Whether the person asks something of it there.
pub(crate) fn asks(told: &Told) -> bool {
    matches!(told.what, What::Person(does) if does.asks())
}

/// Whether the person asks something of it there, and had the time to see what was told before. Nobody calls or bars the way by chance.
pub(crate) fn asks_after(seen: &Told) -> impl Fn(&Told) -> bool {
    let from_ms = seen.at_ms + REACTS_MS;
    move |told| asks(told) && (told.at_ms >= from_ms || matches!(told.what, What::Person(Does::Call | Does::Block)))
}

/// A share with its interval; where there was nothing to count, nothing is known.
pub(crate) fn k_of(k: usize, n: usize) -> Estimate {
    if n == 0 { Estimate::unknown(Unit::Share) } else { Estimate::share(k, n) }
}

pub(crate) fn share(of: impl Iterator<Item = bool>) -> Estimate {
    let all: Vec<bool> = of.collect();
    k_of(all.iter().filter(|k| **k).count(), all.len())
}

/// Whether what was done at a place was done well, as far as that tells something: of what was under way when it pressed or showed a
/// sign, only what was done well counts; of what was under way when it left, nothing.
pub(crate) fn told_of(run: &Run, at: usize, well: bool) -> Option<bool> {
    let told = if well { !under_way(run, at, |what| what == What::Leaves) } else { !under_way(run, at, is_news) };
    told.then_some(well)
}

/// Whether it pressed, left or showed a sign.
const fn is_news(what: What) -> bool {
    matches!(what, What::Pressed(_) | What::Leaves | What::Sign(_))
}

/// Whether what the person did at a place was under way before that could be seen.
fn under_way(run: &Run, at: usize, is: impl Fn(What) -> bool) -> bool {
    let (before, rest) = run.told.split_at(at);
    let just = |t: &Told, done: &Told| done.at_ms < t.at_ms + REACTS_MS;
    rest.first().is_some_and(|done| before.iter().rev().take_while(|t| just(t, done)).any(|t| is(t.what)))
}
