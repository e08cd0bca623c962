//! What was true of the animal, which nobody knows in life: what it learned, and what it would have learned.

use sayso_sim::rehearsal::{Act, Run, play, sooner};

/// What it learned, by the place of the word: probabilities of a meant press, given that it wants the thing.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Truth {
    /// At the beginning.
    pub before: [f64; 4],
    /// At the end.
    pub after: [f64; 4],
    /// At the end, had every thing come a second sooner, though never before a fifth of a second after its press.
    pub sooner: [f64; 4],
}

/// Milliseconds that things come sooner in the rehearsal beside.
const SOONER_MS: u32 = 1_000;

/// What was true of a rehearsal made of these acts.
#[must_use]
pub fn truth(run: &Run, acts: &[Act]) -> Truth {
    let (before, after) = run.understood();
    let (_, sooner) = play(run.setup, &sooner(acts, SOONER_MS)).understood();
    Truth { before, after, sooner }
}
