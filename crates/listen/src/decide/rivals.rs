//! Other words for the same stretch of sound.

use crate::decide::hypothesis::Hypothesis;
use crate::detection::Candidate;

/// Share of a candidate that another word's must cover to be its rival.
const OVERLAP: f64 = 0.4;
/// Lead beyond which its further weight counts.
pub const BEYOND: f64 = 0.3;

/// How far a rival's log coherence is ahead; none where it is not for the same stretch.
fn lead(of: (f64, f64, f64), rival: (f64, f64, f64)) -> Option<f64> {
    let (onset, end, ratio) = of;
    let overlap = (end.min(rival.1) - onset.max(rival.0)) / (end - onset).max(1e-9);
    (overlap > OVERLAP).then_some(rival.2 - ratio)
}

/// The greatest lead of other words' hypotheses over this one; 0 where none is ahead.
pub(crate) fn greatest_lead<'a>(of: &Hypothesis, others: impl Iterator<Item = &'a Hypothesis>) -> f64 {
    let place = |h: &Hypothesis| (h.onset, h.end, h.ratio);
    others.filter(|r| r.word != of.word).filter_map(|r| lead(place(of), place(r))).fold(0.0, f64::max)
}

/// The lead of the strongest rival over each candidate, as the decider sees it: among candidates the cascade let pass.
pub fn rival_leads(candidates: &[Candidate]) -> Vec<f64> {
    let place = |c: &Candidate| (c.onset_s, c.end_s, c.figures[0]);
    let rivals: Vec<&Candidate> = candidates.iter().filter(|c| c.passed).collect();
    candidates
        .iter()
        .map(|c| {
            let others = rivals.iter().filter(|r| r.word != c.word);
            others.filter_map(|r| lead(place(c), place(r))).fold(0.0, f64::max)
        })
        .collect()
}
