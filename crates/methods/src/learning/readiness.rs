//! Readiness from session to session: a hidden state behind joining, approach latency and sign balance.
//!
//! Sources: Rabiner 1989, Proc IEEE 77:257 (forward-backward, Baum-Welch); weak priors as pseudo-observations
//! (maximum a posteriori, from memory: Gauvain & Lee 1994); order restriction by pooling adjacent violators
//! (Ayer et al. 1955). Page: `docs/methods/readiness.md`.
//!
//! Three states, away, warming and ready, differ in how often the learner joins, how fast it comes and how its signs
//! balance, and are kept in that order, so a state cannot change its meaning while the model is fitted. What was not
//! observed in a session says nothing about the state. The starting values and priors are ours: common practice, no source.

use super::LearningError;
use crate::stats::{Interval, Level};

/// Number of hidden states.
pub const STATES: usize = 3;

/// A hidden state, in order of readiness.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Readiness {
    /// Rarely joins, comes slowly, tense signs outweigh relaxed ones.
    Away,
    /// Joins about as often as not.
    Warming,
    /// Joins nearly always, comes fast, relaxed.
    Ready,
}

impl Readiness {
    /// All states, from away to ready; the order of every `[f64; STATES]` here.
    pub const ALL: [Self; STATES] = [Self::Away, Self::Warming, Self::Ready];
}

/// What was seen in one session. Anything not observed is 0 or `None` and weighs nothing.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct SessionSigns {
    /// Times the session or a showing was offered.
    pub offers: u32,
    /// Of those, how often the learner joined (at most `offers`).
    pub joined: u32,
    /// Seconds from offer to approach (median of the session), positive; `None` if it did not come or was not timed.
    pub approach_seconds: Option<f64>,
    /// Relaxed or joining signs noted.
    pub relaxed_signs: u32,
    /// Stress signs noted.
    pub stress_signs: u32,
}

impl SessionSigns {
    fn observed(&self) -> bool {
        self.offers > 0 || self.approach_seconds.is_some() || self.relaxed_signs + self.stress_signs > 0
    }
}

/// What sessions in one state look like, fitted.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct StateProfile {
    /// Share of offers joined.
    pub joining_rate: f64,
    /// Typical (median) seconds to approach.
    pub approach_seconds: f64,
    /// Relaxed share of all signs.
    pub relaxed_share: f64,
}

/// Readiness over the sessions.
#[derive(Debug, Clone, PartialEq)]
pub struct ReadinessEstimate {
    /// Probability of each state in each session, given all sessions (smoothed), in order.
    pub by_session: Vec<[f64; STATES]>,
    /// Probability of each state in the last session.
    pub now: [f64; STATES],
    /// The likeliest state in the last session.
    pub likeliest: Readiness,
    /// Probability of ready now, with the doubt about the fitted figures: delete-a-block jackknife on the logit.
    /// Rough with few sessions, 0 to 1 with fewer than 4.
    pub ready_interval: Interval,
    /// What each state looks like here.
    pub profiles: [StateProfile; STATES],
    /// Probability of going from state (row) to state (column) by the next session.
    pub transitions: [[f64; STATES]; STATES],
    /// Sessions with any observation.
    pub n: usize,
    /// Offers in all.
    pub offers: u64,
    /// Whether the fit settled within its cap.
    pub converged: bool,
}

/// Estimates readiness; sessions in order of time.
///
/// # Errors
/// [`LearningError::NoObservations`] if nothing was observed; [`LearningError::BadNumber`] if more was joined than
/// offered or a latency is not positive and finite.
///
/// ```
/// use sayso_methods::learning::readiness::{Readiness, SessionSigns, readiness};
/// let shy = SessionSigns { offers: 4, joined: 0, stress_signs: 2, ..Default::default() };
/// let keen = SessionSigns { offers: 4, joined: 4, approach_seconds: Some(3.0), relaxed_signs: 3, stress_signs: 0 };
/// let estimate = readiness(&[shy, shy, shy, keen, keen, keen])?;
/// assert_eq!(estimate.likeliest, Readiness::Ready);
/// # Ok::<(), sayso_methods::learning::LearningError>(())
/// ```
pub fn readiness(sessions: &[SessionSigns]) -> Result<ReadinessEstimate, LearningError> {
    let mut offers = 0u64;
    let mut log_latencies = Vec::new();
    for session in sessions {
        if session.joined > session.offers {
            return Err(LearningError::BadNumber {
                what: "sessions joined of those offered",
                value: session.joined.into(),
            });
        }
        if let Some(seconds) = session.approach_seconds {
            if !(seconds.is_finite() && seconds > 0.0) {
                return Err(LearningError::BadNumber { what: "seconds to approach", value: seconds });
            }
            log_latencies.push(seconds.ln());
        }
        offers += u64::from(session.offers);
    }
    let observed: Vec<usize> = (0..sessions.len()).filter(|&i| sessions[i].observed()).collect();
    if observed.is_empty() {
        return Err(LearningError::NoObservations);
    }
    let prior = Prior::around(&log_latencies);
    let all = vec![true; sessions.len()];
    let (model, by_session, converged) = fit(sessions, &all, prior.start(), &prior, MAX_ITERATIONS);
    let now = by_session[sessions.len() - 1];
    let likeliest = Readiness::ALL
        .into_iter()
        .zip(now)
        .fold((Readiness::Away, -1.0), |best, (state, p)| if p > best.1 { (state, p) } else { best })
        .0;
    Ok(ReadinessEstimate {
        ready_interval: jackknife(sessions, &observed, &model, &prior, now[2]),
        now,
        likeliest,
        profiles: std::array::from_fn(|s| StateProfile {
            joining_rate: model.join[s],
            approach_seconds: model.log_latency[s].exp(),
            relaxed_share: model.relaxed[s],
        }),
        transitions: model.transition,
        by_session,
        n: observed.len(),
        offers,
        converged,
    })
}

const MAX_ITERATIONS: usize = 300;
const BLOCKS: usize = 20;

#[derive(Clone)]
struct Model {
    initial: [f64; STATES],
    transition: [[f64; STATES]; STATES],
    join: [f64; STATES],
    relaxed: [f64; STATES],
    log_latency: [f64; STATES],
    latency_variance: f64,
}

/// Pseudo-observations: what is taken as known before the first session. Ours, weak (a handful of sessions' worth).
struct Prior {
    log_latency: [f64; STATES],
}

impl Prior {
    const INITIAL: [f64; STATES] = [1.0, 0.7, 0.3];
    const TRANSITION: [[f64; STATES]; STATES] = [[3.2, 0.6, 0.2], [0.4, 3.2, 0.4], [0.2, 0.6, 3.2]];
    const JOIN: [f64; STATES] = [0.15, 0.5, 0.9];
    const JOIN_WEIGHT: f64 = 6.0;
    const RELAXED: [f64; STATES] = [0.25, 0.6, 0.9];
    const RELAXED_WEIGHT: f64 = 4.0;
    const LATENCY_WEIGHT: f64 = 2.0;
    const LATENCY_VARIANCE: f64 = 0.36;
    const VARIANCE_WEIGHT: f64 = 4.0;

    /// Latencies differ between learners by more than between states, so theirs are placed around this learner's own.
    fn around(log_latencies: &[f64]) -> Self {
        let mut sorted = log_latencies.to_vec();
        sorted.sort_by(f64::total_cmp);
        let middle = sorted.get(sorted.len() / 2).copied().unwrap_or(10f64.ln());
        Self { log_latency: [middle + 0.8, middle + 0.2, middle - 0.4] }
    }

    fn start(&self) -> Model {
        Model {
            initial: normalised(Self::INITIAL),
            transition: Self::TRANSITION.map(normalised),
            join: Self::JOIN,
            relaxed: Self::RELAXED,
            log_latency: self.log_latency,
            latency_variance: Self::LATENCY_VARIANCE,
        }
    }
}

fn normalised(row: [f64; STATES]) -> [f64; STATES] {
    let total: f64 = row.iter().sum();
    row.map(|value| value / total)
}

/// Likelihood of a session in each state, relative to the likeliest state.
fn emission(model: &Model, session: &SessionSigns) -> [f64; STATES] {
    let logs: [f64; STATES] = std::array::from_fn(|s| {
        let binomial = |k: u32, n: u32, p: f64| f64::from(k) * p.ln() + f64::from(n - k) * (1.0 - p).ln();
        let signs = session.relaxed_signs.saturating_add(session.stress_signs);
        let mut log = binomial(session.joined, session.offers, model.join[s])
            + binomial(session.relaxed_signs.min(signs), signs, model.relaxed[s]);
        if let Some(seconds) = session.approach_seconds {
            log -= 0.5 * (seconds.ln() - model.log_latency[s]).powi(2) / model.latency_variance;
        }
        log
    });
    let best = logs.iter().copied().fold(f64::NEG_INFINITY, f64::max);
    logs.map(|log| (log - best).exp())
}

/// Baum-Welch with priors; sessions where `used` is false count as unobserved but keep their place in time.
fn fit(
    sessions: &[SessionSigns],
    used: &[bool],
    start: Model,
    prior: &Prior,
    max_iterations: usize,
) -> (Model, Vec<[f64; STATES]>, bool) {
    let mut model = start;
    let mut posterior = Vec::new();
    let mut converged = false;
    for _ in 0..max_iterations {
        let moves = forward_backward(&model, sessions, used, &mut posterior);
        let next = maximise(sessions, used, &posterior, moves, prior);
        let change = (0..STATES)
            .map(|s| (next.join[s] - model.join[s]).abs() + (next.transition[s][s] - model.transition[s][s]).abs())
            .fold(0.0, f64::max);
        model = next;
        if change < 1e-7 {
            converged = true;
            break;
        }
    }
    forward_backward(&model, sessions, used, &mut posterior);
    (model, posterior, converged)
}

/// Fills the smoothed probabilities and returns the expected number of moves between states.
fn forward_backward(
    model: &Model,
    sessions: &[SessionSigns],
    used: &[bool],
    posterior: &mut Vec<[f64; STATES]>,
) -> [[f64; STATES]; STATES] {
    let likelihood: Vec<[f64; STATES]> = sessions
        .iter()
        .zip(used)
        .map(|(session, used)| if *used { emission(model, session) } else { [1.0; STATES] })
        .collect();
    // Forward, each step scaled to sum to one.
    posterior.clear();
    let mut before = model.initial;
    for like in &likelihood {
        let here = normalised(std::array::from_fn(|s| (before[s] * like[s]).max(f64::MIN_POSITIVE)));
        posterior.push(here);
        before = std::array::from_fn(|to| (0..STATES).map(|from| here[from] * model.transition[from][to]).sum());
    }
    // Backward, turning the filtered probabilities into smoothed ones in place.
    let mut moves = [[0.0; STATES]; STATES];
    for k in (0..likelihood.len().saturating_sub(1)).rev() {
        let filtered = posterior[k];
        let later = posterior[k + 1];
        let predicted: [f64; STATES] =
            std::array::from_fn(|to| (0..STATES).map(|from| filtered[from] * model.transition[from][to]).sum());
        let mut here = [0.0; STATES];
        for from in 0..STATES {
            for to in 0..STATES {
                let joint =
                    filtered[from] * model.transition[from][to] * later[to] / predicted[to].max(f64::MIN_POSITIVE);
                moves[from][to] += joint;
                here[from] += joint;
            }
        }
        posterior[k] = normalised(here.map(|p| p.max(f64::MIN_POSITIVE)));
    }
    moves
}

fn maximise(
    sessions: &[SessionSigns],
    used: &[bool],
    posterior: &[[f64; STATES]],
    moves: [[f64; STATES]; STATES],
    prior: &Prior,
) -> Model {
    let mut joined = Prior::JOIN.map(|p| p * Prior::JOIN_WEIGHT);
    let mut offered = [Prior::JOIN_WEIGHT; STATES];
    let mut relaxed = Prior::RELAXED.map(|p| p * Prior::RELAXED_WEIGHT);
    let mut signs = [Prior::RELAXED_WEIGHT; STATES];
    let mut log_sum = prior.log_latency.map(|m| m * Prior::LATENCY_WEIGHT);
    let mut timed = [Prior::LATENCY_WEIGHT; STATES];
    let seen = || sessions.iter().zip(used).zip(posterior).filter(|((_, used), _)| **used).map(|((s, _), p)| (s, p));
    for (session, weight) in seen() {
        for s in 0..STATES {
            joined[s] += weight[s] * f64::from(session.joined);
            offered[s] += weight[s] * f64::from(session.offers);
            relaxed[s] += weight[s] * f64::from(session.relaxed_signs);
            signs[s] += weight[s] * (f64::from(session.relaxed_signs) + f64::from(session.stress_signs));
            if let Some(seconds) = session.approach_seconds {
                log_sum[s] += weight[s] * seconds.ln();
                timed[s] += weight[s];
            }
        }
    }
    let ratio =
        |top: [f64; STATES], bottom: [f64; STATES]| std::array::from_fn::<f64, STATES, _>(|s| top[s] / bottom[s]);
    let join = rising(ratio(joined, offered), offered);
    let share = rising(ratio(relaxed, signs), signs);
    // Latency falls with readiness: the same restriction on its negative.
    let log_latency = rising(ratio(log_sum, timed).map(|m| -m), timed).map(|m| -m);
    let mut squares = Prior::LATENCY_VARIANCE * Prior::VARIANCE_WEIGHT;
    let mut weights = Prior::VARIANCE_WEIGHT;
    for (session, weight) in seen() {
        if let Some(seconds) = session.approach_seconds {
            for s in 0..STATES {
                squares += weight[s] * (seconds.ln() - log_latency[s]).powi(2);
                weights += weight[s];
            }
        }
    }
    let first = posterior.first().copied().unwrap_or_default();
    Model {
        initial: normalised(std::array::from_fn(|s| Prior::INITIAL[s] + first[s])),
        transition: std::array::from_fn(|s| normalised(std::array::from_fn(|t| Prior::TRANSITION[s][t] + moves[s][t]))),
        join,
        relaxed: share,
        log_latency,
        latency_variance: squares / weights,
    }
}

/// Weighted fit under `x0 <= x1 <= x2` (pooling adjacent violators).
fn rising(values: [f64; STATES], weights: [f64; STATES]) -> [f64; STATES] {
    let mut blocks: Vec<(f64, f64, usize)> = Vec::with_capacity(STATES);
    for (value, weight) in values.into_iter().zip(weights) {
        let mut block = (value, weight, 1);
        while let Some(last) = blocks.pop_if(|last| last.0 > block.0) {
            let weight = last.1 + block.1;
            block = ((last.0 * last.1 + block.0 * block.1) / weight, weight, last.2 + block.2);
        }
        blocks.push(block);
    }
    let mut flat = blocks.into_iter().flat_map(|(value, _, size)| std::iter::repeat_n(value, size));
    std::array::from_fn(|_| flat.next().unwrap_or_default())
}

/// Leaves out one block of observed sessions at a time and refits.
fn jackknife(sessions: &[SessionSigns], observed: &[usize], model: &Model, prior: &Prior, ready: f64) -> Interval {
    let level = Level::P90;
    let blocks = BLOCKS.min(observed.len());
    if blocks < 4 {
        return Interval { low: 0.0, high: 1.0, level };
    }
    let logit = |p: f64| (p.max(1e-9) / (1.0 - p).max(1e-9)).ln();
    let without: Vec<f64> = (0..blocks)
        .map(|block| {
            let mut used = vec![true; sessions.len()];
            for &at in &observed[block * observed.len() / blocks..(block + 1) * observed.len() / blocks] {
                used[at] = false;
            }
            let (_, posterior, _) = fit(sessions, &used, model.clone(), prior, 50);
            logit(posterior.last().map_or(ready, |p| p[2]))
        })
        .collect();
    let mean = without.iter().sum::<f64>() / blocks as f64;
    let variance = without.iter().map(|x| (x - mean).powi(2)).sum::<f64>() * (blocks - 1) as f64 / blocks as f64;
    let half = level.z() * variance.sqrt();
    let back = |x: f64| 1.0 / (1.0 + (-x).exp());
    Interval { low: back(logit(ready) - half), high: back(logit(ready) + half), level }
}
