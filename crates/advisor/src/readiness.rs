//! Readiness of the animal, session by session: away, warming or ready, from joining, approach and signs together.

use crate::case::Case;
use crate::estimate::{Estimate, Unit};
use sayso_methods::learning::readiness::{Readiness, ReadinessEstimate, SessionSigns, readiness as fit};
use sayso_model::{Moment, SessionId, Sign, SignLevel};
use serde::Serialize;
use std::collections::BTreeMap;

/// Sessions looked back on.
const SESSIONS: usize = 60;

/// A state of readiness.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum State {
    /// It stays away.
    Away,
    /// It comes, slowly or not always.
    Warming,
    /// It is ready.
    Ready,
}

/// Readiness now and over the last sessions.
#[derive(Clone, PartialEq, Debug)]
pub struct Ready {
    /// Probability of being ready in the last session.
    pub now: Estimate,
    /// The likeliest state, where the interval of the probability leaves no doubt whether it is ready; none else.
    pub likeliest: Option<State>,
    /// Probability of ready in each session, oldest first, with the time of the session.
    pub by_session: Vec<(Moment, f64)>,
    /// Share of offers joined when ready, as fitted.
    pub joins_when_ready: f64,
}

/// Readiness up to `now`; none without a session.
#[must_use]
pub fn readiness(case: &Case<'_>) -> Option<Ready> {
    let sessions = case.sessions();
    let sessions = &sessions[sessions.len().saturating_sub(SESSIONS)..];
    let mut signs: BTreeMap<SessionId, (u32, u32)> = BTreeMap::new();
    for s in case.story().of::<Sign>(case.animal()).take_while(|s| s.at() <= case.now()) {
        if let Some(session) = s.part.session {
            let cell = signs.entry(session).or_insert((0, 0));
            if s.part.level == SignLevel::Joining { cell.0 += 1 } else { cell.1 += 1 }
        }
    }
    let recent: Vec<(Moment, SessionSigns)> = sessions
        .iter()
        .map(|s| {
            let (relaxed_signs, stress_signs) = signs.get(&s.id()).copied().unwrap_or((0, 0));
            let approach = s
                .joinings
                .first()
                .map(|j| j.part.after_s.map_or_else(|| j.at().seconds_since(s.start.at()), |a| a.get()));
            let offered = SessionSigns {
                offers: 1,
                joined: u32::from(s.joined()),
                approach_seconds: approach.filter(|a| *a > 0.0),
                relaxed_signs,
                stress_signs,
            };
            (s.start.at(), offered)
        })
        .collect();
    let input: Vec<SessionSigns> = recent.iter().map(|(_, s)| *s).collect();
    let ReadinessEstimate { by_session, now: p, likeliest, ready_interval, profiles, n, .. } = fit(&input).ok()?;
    let now = Estimate::with(p[2], ready_interval, n, Unit::Share);
    let state = match likeliest {
        Readiness::Away => State::Away,
        Readiness::Warming => State::Warming,
        Readiness::Ready => State::Ready,
    };
    Some(Ready {
        now,
        likeliest: supported(now, state),
        by_session: recent.iter().zip(&by_session).map(|((at, _), p)| (*at, p[2])).collect(),
        joins_when_ready: profiles[2].joining_rate,
    })
}

/// A state is only named where the whole interval of "ready" lies on its side of one half.
fn supported(ready: Estimate, state: State) -> Option<State> {
    let sure = match state {
        State::Ready => ready.surely_above(0.5),
        State::Away | State::Warming => ready.surely_below(0.5),
    };
    (sure && !ready.too_early()).then_some(state)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_state_is_named_only_where_the_interval_bears_it() {
        let ready = |value, low, high, n| Estimate {
            value: Some(value),
            low: Some(low),
            high: Some(high),
            n,
            unit: Unit::Share,
        };
        assert_eq!(supported(ready(0.97, 0.03, 1.0, 40), State::Ready), None, "97 %, and 3 % as well");
        assert_eq!(supported(ready(0.97, 0.8, 1.0, 40), State::Ready), Some(State::Ready));
        assert_eq!(supported(ready(0.1, 0.0, 0.4, 40), State::Away), Some(State::Away));
        assert_eq!(supported(ready(0.97, 0.8, 1.0, 4), State::Ready), None, "four sessions say nothing yet");
    }
}
