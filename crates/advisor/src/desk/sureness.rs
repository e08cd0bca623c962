//! How sure a desk calls what it tells: by how many of the homes that were told so truly had it, in the laboratory.
//!
//! Source: `docs/lab/results-desk.md`, "of homes told so, so" (four clubs of 500 simulated homes); a test compares. Simulated homes are no
//! evidence about animals: the words say how far the desk may be trusted at its best.

use super::need::About;
use crate::advice::Sure;
use crate::cause::Cause;
use crate::estimate::Estimate;
use std::sync::LazyLock;

/// What a desk tells that was measured.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Claim {
    /// A need of a kind.
    Of(About),
    /// A word held up by a cause.
    HeldBy(Cause),
}

/// A claim, homes told so that had it, and homes told so.
pub const MEASURED: [(Claim, usize, usize); 10] = [
    (Claim::Of(About::Change), 34, 35),
    (Claim::Of(About::Silent), 87, 89),
    (Claim::Of(About::Ration), 103, 103),
    (Claim::Of(About::Ready), 93, 97),
    (Claim::HeldBy(Cause::Avoided), 80, 94),
    (Claim::HeldBy(Cause::TooLate), 68, 68),
    (Claim::HeldBy(Cause::NotWanted), 87, 93),
    (Claim::HeldBy(Cause::TooLittle), 27, 34),
    (Claim::HeldBy(Cause::PeopleDiffer), 102, 107),
    (Claim::HeldBy(Cause::SoundsAlike), 37, 37),
];

/// "Sure" where the whole interval lies above this share, "fairly sure" where the share itself does not lie below the other; else a guess.
/// Ours (common practice, no source).
const SURE: f64 = 0.9;
const FAIRLY: f64 = 0.85;

/// By claim: worked out once, for a desk asks at every reading of every home.
static WORDS: LazyLock<[(Claim, Sure); MEASURED.len()]> =
    LazyLock::new(|| MEASURED.map(|(claim, right, told)| (claim, word(right, told))));

fn word(right: usize, told: usize) -> Sure {
    let share = Estimate::share(right, told);
    if share.surely_above(SURE) {
        Sure::Very
    } else if share.value.is_some_and(|value| value >= FAIRLY) {
        Sure::Fairly
    } else {
        Sure::Little
    }
}

/// How sure a claim is called; none where it was not measured.
#[must_use]
pub fn sure(claim: Claim) -> Option<Sure> {
    WORDS.iter().find(|(of, _)| *of == claim).map(|(_, sure)| *sure)
}
