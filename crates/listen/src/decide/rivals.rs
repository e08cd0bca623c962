//! Other words for the same stretch of sound.

use crate::decide::hypothesis::Hypothesis;
use crate::detection::Candidate;
use crate::dsp::resampler::RATE;

/// Share of a candidate that another word's must cover to be its rival.
const OVERLAP: f64 = 0.4;
/// Lead beyond which its further weight counts.
pub const BEYOND: f64 = 0.3;

/// Engine-rate samples within which two words too alike begin together: 50 ms.
const TOGETHER: f64 = 0.05 * RATE as f64;

/// Whether a stretch, from and to, is one with another of which it is covered by so much.
pub(crate) fn overlap(of: (f64, f64), other: (f64, f64)) -> bool {
    (of.1.min(other.1) - of.0.max(other.0)) / (of.1 - of.0).max(1e-9) > OVERLAP
}

/// Whether two stretches begin so close together that only one of two words can have been pressed, were they too alike
/// to be told apart.
pub(crate) fn together(of: (f64, f64), other: (f64, f64)) -> bool {
    (of.0 - other.0).abs() <= TOGETHER
}

/// How far a rival's log coherence is ahead; none where it is not for the same stretch.
fn lead(of: (f64, f64, f64), rival: (f64, f64, f64)) -> Option<f64> {
    overlap((of.0, of.1), (rival.0, rival.1)).then_some(rival.2 - of.2)
}

/// The greatest lead of other words' hypotheses over this one; 0 where none is ahead. Clips that say the same are no
/// rivals.
pub(crate) fn greatest_lead<'a>(
    of: &Hypothesis,
    others: impl Iterator<Item = &'a Hypothesis>,
    words: &[String],
) -> f64 {
    let place = |h: &Hypothesis| (h.onset, h.end, h.ratio);
    let rivals = others.filter(|r| words[r.clip] != words[of.clip]);
    rivals.filter_map(|r| lead(place(of), place(r))).fold(0.0, f64::max)
}

/// The lead of the strongest rival over each candidate, as the decider sees it: among candidates the cascade let pass.
/// `words` are what the clips say.
pub fn rival_leads(candidates: &[Candidate], words: &[String]) -> Vec<f64> {
    let place = |c: &Candidate| (c.onset_s, c.end_s, c.figures[0]);
    let rivals: Vec<&Candidate> = candidates.iter().filter(|c| c.passed).collect();
    candidates
        .iter()
        .map(|c| {
            let others = rivals.iter().filter(|r| words[r.clip] != words[c.clip]);
            others.filter_map(|r| lead(place(c), place(r))).fold(0.0, f64::max)
        })
        .collect()
}
