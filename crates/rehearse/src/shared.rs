//! The figures of a rehearsal that a home may share: how it was taught, and nothing else of it.

use crate::conduct::Conduct;
use sayso_advisor::Estimate;
use sayso_model::{RehearsalMeasure as Of, RehearsedFigure, Seconds, SecondsBetween};

/// The figures, without those of which nothing was counted.
#[must_use]
pub fn figures(conduct: &Conduct) -> Vec<RehearsedFigure> {
    let c = conduct;
    let seconds = [(Of::Delay, &c.delay), (Of::AnswerDelay, &c.answer_delay)];
    let shares = [
        (Of::Taken, &c.taken),
        (Of::Waits, &c.waits),
        (Of::Held, &c.held),
        (Of::Answered, &c.answered),
        (Of::Alternatives, &c.alternatives),
        (Of::Leaving, &c.leaving),
        (Of::Mild, &c.mild),
        (Of::Strong, &c.strong),
        (Of::Eaten, &c.eaten),
    ];
    let middles = seconds.into_iter().filter_map(|(of, figure)| middle(of, figure));
    middles.chain(shares.into_iter().filter_map(|(of, figure)| times(of, figure))).collect()
}

/// Whether there is anything in it to share: something was done, and not only a press left without an answer.
#[must_use]
pub fn is_worth_sharing(conduct: &Conduct) -> bool {
    let left = |figure: &RehearsedFigure| matches!(figure, RehearsedFigure::Times { of: Of::Answered, times: 0, .. });
    !conduct.is_empty() && !figures(conduct).iter().all(left)
}

fn counted(n: usize) -> Option<u16> {
    u16::try_from(n).ok().filter(|n| *n > 0)
}

fn middle(of: Of, figure: &Estimate) -> Option<RehearsedFigure> {
    let (seconds, among) = (Seconds::clamped(figure.value?), counted(figure.n)?);
    let between = figure
        .low
        .zip(figure.high)
        .map(|(low, high)| SecondsBetween { low: Seconds::clamped(low), high: Seconds::clamped(high) });
    Some(RehearsedFigure::Middle { of, seconds, between, among })
}

#[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
fn times(of: Of, figure: &Estimate) -> Option<RehearsedFigure> {
    let among = counted(figure.n)?;
    let times = (figure.value? * f64::from(among)).round() as u16;
    Some(RehearsedFigure::Times { of, times, among })
}
