//! What was true of the animal, which nobody knows in life: what it learned, and what it would have learned.

use sayso_sim::rehearsal::Run;

/// What it learned, by the place of the word: probabilities of a meant press, given that it wants the thing.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Truth {
    /// At the beginning.
    pub before: [f64; 4],
    /// At the end.
    pub after: [f64; 4],
    /// At the end, had every thing come a second sooner, though never before a fifth of a second after its press, and all else
    /// as it did.
    pub sooner: [f64; 4],
}

/// Seconds that things come sooner.
const SOONER_S: f64 = 1.0;

/// What was true of a rehearsal.
#[must_use]
pub fn truth(run: &Run) -> Truth {
    let (before, after) = run.understood();
    let sooner = run.presses(run.had(run.pairings.iter().map(|pairing| pairing.sooner(SOONER_S))));
    Truth { before, after, sooner }
}
