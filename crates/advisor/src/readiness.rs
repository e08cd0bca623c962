//! Readiness of the animal, session by session: away, warming or ready, from joining, approach and signs together.

use crate::case::Case;
use crate::estimate::{Estimate, Unit};
use sayso_methods::learning::readiness::{Readiness, ReadinessEstimate, SessionSigns, readiness as fit};
use sayso_model::{Moment, SessionId, Sign, SignLevel};
use std::collections::BTreeMap;

/// Fewest sessions that say anything (common practice, no source).
const LEAST: usize = 5;
/// Sessions looked back on.
const SESSIONS: usize = 60;

/// Readiness now and over the last sessions.
#[derive(Clone, PartialEq, Debug)]
pub struct Ready {
    /// Probability of being ready in the last session.
    pub now: Estimate,
    /// The likeliest state.
    pub likeliest: Readiness,
    /// Probability of ready in each session, oldest first, with the time of the session.
    pub by_session: Vec<(Moment, f64)>,
    /// Share of offers joined when ready, as fitted.
    pub joins_when_ready: f64,
}

impl Ready {
    /// Whether the figures carry what is likeliest: with enough sessions, and the interval on the same side of one half.
    #[must_use]
    pub fn sure(&self) -> bool {
        let (low, high) = (self.now.low.unwrap_or(0.0), self.now.high.unwrap_or(1.0));
        self.now.n >= LEAST && if self.likeliest == Readiness::Ready { low > 0.5 } else { high < 0.5 }
    }
}

/// Readiness up to `now`; none without a session.
#[must_use]
pub fn readiness(case: &Case<'_>) -> Option<Ready> {
    let mut sessions: Vec<_> = case.sessions_over_since(Moment::clamped(0)).rev().take(SESSIONS).collect();
    sessions.reverse();
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
    Some(Ready {
        now: Estimate::with(p[2], ready_interval, n, Unit::Share),
        likeliest,
        by_session: recent.iter().zip(&by_session).map(|((at, _), p)| (*at, p[2])).collect(),
        joins_when_ready: profiles[2].joining_rate,
    })
}
