//! What the sound of one candidate cannot tell: whether buttons are being pressed at all just now, and whether its speed
//! is the one this button has had.

use crate::speeds::Speeds;
use serde::{Deserialize, Serialize};
use std::collections::VecDeque;

/// Speeds remembered per button.
const REMEMBERED: usize = 6;
/// Spread of one button's speed from press to press.
const SPEED_SPREAD: f64 = 0.0022;
/// Width of the range of speeds over which false candidates lay where the weights were learned: so many of them a unit of
/// speed, also where more or fewer speeds are listened for.
const SPEED_RANGE: f64 = 0.1;
/// Seconds over which pressing counts as going on.
const BUSY_S: f64 = 300.0;
/// Presses within [`BUSY_S`] at which a board is busy. One alone, which may have been none, counts a quarter; only with the
/// second do all that follow have the odds of a board in use.
const BUSY: f64 = 2.0;
/// Seconds within which what begins is one press for this, whatever words it is told as: one sound that is none can be like two.
const ONE_PRESS_S: f64 = 1.0;

/// Whether what begins at these seconds counts as one press.
pub(crate) fn one_press(a_s: f64, b_s: f64) -> bool {
    (a_s - b_s).abs() < ONE_PRESS_S
}

/// How busy the board has been: presses of late, fading.
#[derive(Debug, Clone, Copy, Default, PartialEq, Serialize, Deserialize)]
pub(crate) struct Activity {
    presses: f64,
    at_s: f64,
    /// When the latest one counted began, and for how much it counted; none before the first.
    #[serde(default)]
    latest: Option<(f64, f64)>,
}

impl Activity {
    /// Presses of late, as of the latest.
    pub(crate) const fn presses(&self) -> f64 {
        self.presses
    }

    /// Presses of late, as of a time; of one before the latest press, as of that press.
    fn presses_at(&self, now_s: f64) -> f64 {
        self.presses * (-(now_s - self.at_s).max(0.0) / BUSY_S).exp()
    }

    /// Change of the log odds of a candidate at this time; `idle_prior` are the odds where nothing was pressed.
    pub(crate) fn log_odds(&self, now_s: f64, idle_prior: f64) -> f64 {
        (idle_prior + (self.presses_at(now_s) / BUSY).powi(2)).min(1.0).ln()
    }

    /// Takes in a candidate of this time that is a press with this probability.
    pub(crate) fn add(&mut self, time_s: f64, probability: f64) {
        let counts = (2.0 * probability - 1.0).max(0.0);
        if counts == 0.0 {
            return;
        }
        // The surer of two at one moment counts.
        let (since_s, counted) = match self.latest {
            Some((at_s, counted)) if one_press(time_s, at_s) => (at_s, counted),
            _ => (time_s, 0.0),
        };
        self.presses = self.presses_at(time_s) + (counts - counted).max(0.0);
        self.at_s = self.at_s.max(time_s);
        self.latest = Some((since_s, counts.max(counted)));
    }

    /// Takes in a press of before that is one with this probability, and no other press of its moment.
    pub(crate) fn add_late(&mut self, probability: f64) {
        self.presses += (2.0 * probability - 1.0).max(0.0);
    }
}

/// What was believed of one candidate.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
struct Believed {
    time_s: f64,
    speed: f64,
    probability: f64,
}

impl Believed {
    /// Whether it is of the candidate that begins at these seconds: none speaks for itself.
    fn is_of(&self, time_s: f64) -> bool {
        (self.time_s - time_s).abs() < 1e-6
    }
}

/// The speeds one button has had of late.
#[derive(Debug, Clone, Default, PartialEq, Serialize, Deserialize)]
pub(crate) struct SpeedHistory(VecDeque<Believed>);

impl SpeedHistory {
    /// Change of the log odds for a speed like, or unlike, those this button has had.
    ///
    /// A button keeps its speed, or slows as its battery tires; a chance match has any speed. Before any press was heard
    /// the button may have any of the speeds it is listened for.
    pub(crate) fn log_odds(&self, speed: f64, now_s: f64, listened: Speeds) -> f64 {
        let (mut sum, mut weight) = (0.5 * SPEED_RANGE * listened.density(speed), 0.5);
        for b in self.0.iter().filter(|b| !b.is_of(now_s)) {
            let since = (now_s - b.time_s).max(0.0);
            let z = (speed - b.speed) / SPEED_SPREAD;
            let mut density = 0.9 * (-0.5 * z * z).exp() / (SPEED_SPREAD * (2.0 * std::f64::consts::PI).sqrt());
            let slowing = (0.0004 * since + 0.004).min(0.06);
            if speed > b.speed - slowing && speed < b.speed + 0.002 {
                density += 0.1 / (slowing + 0.002);
            }
            sum += b.probability * density * SPEED_RANGE;
            weight += b.probability;
        }
        (sum / weight).ln()
    }

    /// Takes in a candidate that is a press with this probability.
    pub(crate) fn add(&mut self, time_s: f64, speed: f64, probability: f64) {
        // What is told late was believed less before.
        self.0.retain(|b| !b.is_of(time_s));
        self.0.push_back(Believed { time_s, speed, probability });
        if self.0.len() > REMEMBERED {
            self.0.pop_front();
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const IDLE: f64 = 0.0005;

    /// Odds after sure presses begun at these times, as the candidates that come see them.
    fn odds_after(times_s: &[f64], now_s: f64) -> f64 {
        let mut activity = Activity::default();
        times_s.iter().for_each(|t| activity.add(*t, 1.0));
        activity.log_odds(now_s, IDLE)
    }

    #[test]
    fn one_press_raises_the_odds_a_little_and_the_second_all_the_way() {
        assert!((odds_after(&[], 100.0) - IDLE.ln()).abs() < 1e-12);
        let one = odds_after(&[0.0], 5.0);
        assert!((-1.5..-1.3).contains(&one), "{one}");
        assert!(odds_after(&[0.0, 4.0], 5.0) > -0.05);
        // They fade.
        assert!(odds_after(&[0.0, 4.0], 605.0) < -3.5 && odds_after(&[0.0, 4.0], 7_200.0) < IDLE.ln() + 1e-3);
    }

    #[test]
    fn one_sound_told_as_two_words_counts_once() {
        assert_eq!(odds_after(&[0.0, 0.1, 0.4], 5.0), odds_after(&[0.0], 5.0));
        // The surer of the two, whichever comes first.
        let of = |probabilities: [f64; 2]| {
            let mut activity = Activity::default();
            probabilities.iter().for_each(|p| activity.add(0.0, *p));
            activity.log_odds(5.0, IDLE)
        };
        assert!((of([0.7, 0.9]) - of([0.9, 0.7])).abs() < 1e-12);
        // What is likelier none than a press counts for nothing, also as the latest.
        let mut activity = Activity::default();
        [(0.0, 1.0), (3.0, 0.4), (3.5, 1.0)].iter().for_each(|(t, p)| activity.add(*t, *p));
        assert!(activity.log_odds(4.0, IDLE) > -0.05);
    }

    #[test]
    fn a_buttons_own_speed_speaks_for_a_press_and_another_against() {
        let mut history = SpeedHistory::default();
        assert!(history.log_odds(1.0, 0.0, Speeds::USUAL).abs() < 1e-9);
        let narrow = history.log_odds(1.0, 0.0, Speeds::around(1.0, 0.01));
        assert!((narrow - 5f64.ln()).abs() < 1e-9, "{narrow}");
        assert!(history.log_odds(1.07, 0.0, Speeds::WIDE) < -1.5);
        for t in [0.0, 5.0, 9.0] {
            history.add(t, 1.01, 0.99);
        }
        assert!(history.log_odds(1.011, 12.0, Speeds::USUAL) > 2.0);
        assert!(history.log_odds(0.96, 12.0, Speeds::USUAL) < -1.0);
    }
}
