//! Thinning: when a word is asked for more often than it can be given, in small steps and with a signal.
//!
//! Source: multiple schedule with signals, available and unavailable parts alternating, the unavailable part growing while
//! requests in it stay few: Hanley, Iwata & Thompson 2001, J Appl Behav Anal 34:17. Its last step (60 s available, 240 s
//! not) is confirmed by the abstract, its first (45 s, 15 s) is from memory, the steps between are ours. A burst of requests
//! may come when an answer stops coming: 24 % of cases, 12 % where something else was offered (Lerman & Iwata 1995, J Appl
//! Behav Anal 28:93, people). Thresholds: common practice, no source.
//! Page: `docs/methods/demand.md`.
//!
//! Not for water, toilet, pain, fear or rest: such requests are answered. The plan is for what can wait.

use super::DemandError;
use crate::stats::{Interval, Level, Proportion};

/// One step: how long the word can be had and how long not, alternating, with a signal that shows which.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ThinningStep {
    /// Seconds in which every press is answered with the thing.
    pub available: f64,
    /// Seconds in which the signal says "not now" (the press is still acknowledged, an alternative is offered).
    pub unavailable: f64,
}

/// The steps in order.
pub const STEPS: [ThinningStep; 6] = [
    ThinningStep { available: 45.0, unavailable: 15.0 },
    ThinningStep { available: 45.0, unavailable: 30.0 },
    ThinningStep { available: 60.0, unavailable: 60.0 },
    ThinningStep { available: 60.0, unavailable: 120.0 },
    ThinningStep { available: 60.0, unavailable: 180.0 },
    ThinningStep { available: 60.0, unavailable: 240.0 },
];

/// A session under the plan.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct ThinningSession {
    /// Requests while the word could be had.
    pub while_available: u32,
    /// Requests while it could not.
    pub while_unavailable: u32,
    /// A strong stress sign, or stress signs that grew.
    pub strain: bool,
    /// The learner left.
    pub left: bool,
}

/// What to do next.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Move {
    /// Begin with the first step.
    Begin,
    /// Stay at this step.
    Stay,
    /// Go on to the next step.
    Forward,
    /// Go back one step (at the first: stop the plan and answer every press for now).
    Back,
    /// The last step holds: keep it.
    Hold,
}

/// Why.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub enum ThinningReason {
    /// No session at this step yet.
    NoSession,
    /// Strain or leaving in the latest session: the sign to go back.
    Strain,
    /// Requests while unavailable have not fallen over three sessions, and are most of them: the sign to go back.
    RequestsStayHigh,
    /// Two sessions in a row with few requests while unavailable.
    SignalFollowed,
    /// Not two such sessions yet. A burst of requests may come at first and is no reason to go back.
    NotYet,
    /// No request in the latest sessions: nothing to thin; check that the learner still wants to come.
    NoRequests,
}

/// The plan from here.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ThinningPlan {
    /// What to do.
    pub next: Move,
    /// The step to use in the next session; `None` when the plan is to stop.
    pub step: Option<ThinningStep>,
    /// Its place in [`STEPS`].
    pub step_index: Option<usize>,
    /// Why.
    pub reason: ThinningReason,
    /// Share of requests made while unavailable, over the sessions at this step.
    pub share_unavailable: Proportion,
    /// 90 % interval of that share.
    pub interval: Interval,
}

/// A session counts as "signal followed" up to this share of requests while unavailable.
pub const FEW: f64 = 0.2;
const IN_A_ROW: usize = 2;
const HIGH: f64 = 0.5;
const PATIENCE: usize = 3;

/// Plans the next session. `current` is the step in use (its place in [`STEPS`]), `None` before the plan begins;
/// `sessions` are those at that step, oldest first.
///
/// # Errors
/// [`DemandError::OutOfRange`] if there is no such step.
///
/// ```
/// use sayso_methods::demand::thinning::{Move, ThinningSession, next_step};
/// let calm = ThinningSession { while_available: 9, while_unavailable: 1, ..Default::default() };
/// let plan = next_step(Some(0), &[calm, calm])?;
/// assert_eq!((plan.next, plan.step_index), (Move::Forward, Some(1)));
/// # Ok::<(), sayso_methods::demand::DemandError>(())
/// ```
pub fn next_step(current: Option<usize>, sessions: &[ThinningSession]) -> Result<ThinningPlan, DemandError> {
    if let Some(at) = current.filter(|at| *at >= STEPS.len()) {
        return Err(DemandError::OutOfRange { what: "thinning step", value: at as f64 });
    }
    let unavailable: u64 = sessions.iter().map(|s| u64::from(s.while_unavailable)).sum();
    let requests: u64 = sessions.iter().map(|s| u64::from(s.while_available) + u64::from(s.while_unavailable)).sum();
    let share_unavailable = Proportion::new(unavailable, requests)?;
    let plan = |next, step_index: Option<usize>, reason| ThinningPlan {
        next,
        step: step_index.map(|at| STEPS[at]),
        step_index,
        reason,
        share_unavailable,
        interval: share_unavailable.clopper_pearson(Level::P90),
    };
    let Some(at) = current else { return Ok(plan(Move::Begin, Some(0), ThinningReason::NoSession)) };
    let Some(latest) = sessions.last() else { return Ok(plan(Move::Stay, Some(at), ThinningReason::NoSession)) };

    let tail = |k: usize| (sessions.len() >= k).then(|| &sessions[sessions.len() - k..]);
    let share = |s: &ThinningSession| {
        let all = f64::from(s.while_available) + f64::from(s.while_unavailable);
        if all > 0.0 { f64::from(s.while_unavailable) / all } else { 0.0 }
    };
    if latest.strain || latest.left {
        return Ok(plan(Move::Back, at.checked_sub(1), ThinningReason::Strain));
    }
    let stays_high = tail(PATIENCE)
        .is_some_and(|last| last.iter().all(|s| share(s) > HIGH) && share(&last[last.len() - 1]) >= share(&last[0]));
    if stays_high {
        return Ok(plan(Move::Back, at.checked_sub(1), ThinningReason::RequestsStayHigh));
    }
    Ok(match tail(IN_A_ROW) {
        Some(last) if last.iter().all(|s| s.while_available == 0 && s.while_unavailable == 0) => {
            plan(Move::Stay, Some(at), ThinningReason::NoRequests)
        }
        Some(last) if last.iter().all(|s| share(s) <= FEW) => {
            if at + 1 < STEPS.len() {
                plan(Move::Forward, Some(at + 1), ThinningReason::SignalFollowed)
            } else {
                plan(Move::Hold, Some(at), ThinningReason::SignalFollowed)
            }
        }
        _ => plan(Move::Stay, Some(at), ThinningReason::NotYet),
    })
}
