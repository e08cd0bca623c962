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
/// Presses within [`BUSY_S`] at which a board is busy.
const BUSY: f64 = 1.0;

/// How busy the board has been: presses of late, fading.
#[derive(Debug, Clone, Copy, Default, PartialEq, Serialize, Deserialize)]
pub(crate) struct Activity {
    presses: f64,
    at_s: f64,
}

impl Activity {
    /// Change of the log odds of a candidate at this time; `idle_prior` are the odds where nothing was pressed.
    pub(crate) fn log_odds(&mut self, now_s: f64, idle_prior: f64) -> f64 {
        let fade = (-(now_s - self.at_s).max(0.0) / BUSY_S).exp();
        *self = Self { presses: self.presses * fade, at_s: now_s.max(self.at_s) };
        (idle_prior + self.presses / BUSY).min(1.0).ln()
    }

    /// Takes in a candidate that is a press with this probability.
    pub(crate) fn add(&mut self, probability: f64) {
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
        for b in &self.0 {
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
        self.0.push_back(Believed { time_s, speed, probability });
        if self.0.len() > REMEMBERED {
            self.0.pop_front();
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

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
