//! The range of playback speeds in which one button is listened for.

use serde::{Deserialize, Serialize};

/// Playback speeds against the enrolled clip within which presses of a clip are heard; 0.97 is 3 % slow.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[serde(try_from = "(f64, f64)", into = "(f64, f64)")]
pub struct Speeds {
    low: f64,
    high: f64,
}

/// How likely an unusual speed is against a usual one (our own choice).
const UNUSUAL: f64 = 0.2;

impl Speeds {
    /// Every speed that can be listened for: for a press just after recording, or a word not heard for long.
    pub const WIDE: Self = Self { low: 0.90, high: 1.08 };
    /// The speeds of most buttons (common practice, no source), where nothing else is said: those the weights were learned on.
    pub const USUAL: Self = Self { low: 0.94, high: 1.04 };
    /// Least distance from the middle to either end. A button's speed differs by some parts in a thousand from press to press.
    pub const LEAST_WIDTH: f64 = 0.01;

    /// From `centre - width` to `centre + width`, as far as [`Speeds::WIDE`] goes; a width under
    /// [`Speeds::LEAST_WIDTH`] counts as that, a centre outside as the nearest inside. Numbers that are not finite give
    /// [`Speeds::WIDE`].
    #[must_use]
    pub fn around(centre: f64, width: f64) -> Self {
        if !centre.is_finite() || !width.is_finite() {
            return Self::WIDE;
        }
        let width = width.max(Self::LEAST_WIDTH);
        let centre = centre.clamp(Self::WIDE.low + Self::LEAST_WIDTH, Self::WIDE.high - Self::LEAST_WIDTH);
        Self { low: (centre - width).max(Self::WIDE.low), high: (centre + width).min(Self::WIDE.high) }
    }

    /// The slowest.
    pub const fn low(self) -> f64 {
        self.low
    }

    /// The fastest.
    pub const fn high(self) -> f64 {
        self.high
    }

    /// The middle.
    pub const fn centre(self) -> f64 {
        0.5 * (self.low + self.high)
    }

    /// How likely a press is at a speed before its button was heard: density over these speeds, of which unusual ones are
    /// less likely.
    pub(crate) fn density(self, speed: f64) -> f64 {
        let usual = (self.high.min(Self::USUAL.high) - self.low.max(Self::USUAL.low)).max(0.0);
        let sum = usual + UNUSUAL * (self.span() - usual);
        if Self::USUAL.plausible(speed) && usual > 0.0 { 1.0 / sum } else { UNUSUAL / sum }
    }

    /// Whether a measured speed is one of these; measuring is right to a part in a thousand.
    pub(crate) fn plausible(self, speed: f64) -> bool {
        (self.low - 0.0015..=self.high + 0.0015).contains(&speed)
    }

    /// From the slowest to the fastest.
    pub const fn span(self) -> f64 {
        self.high - self.low
    }
}

impl Default for Speeds {
    fn default() -> Self {
        Self::USUAL
    }
}

impl From<Speeds> for (f64, f64) {
    fn from(speeds: Speeds) -> Self {
        (speeds.low, speeds.high)
    }
}

impl TryFrom<(f64, f64)> for Speeds {
    type Error = String;

    /// Takes the slowest and the fastest.
    fn try_from((low, high): (f64, f64)) -> Result<Self, String> {
        let Self { low: least, high: most } = Self::WIDE;
        // Numbers written and read may differ in their last digit.
        let (room, width) = (1e-9, 2.0 * Self::LEAST_WIDTH);
        let within = low >= least - room && high <= most + room && high - low >= width - room;
        let wrong =
            || format!("speeds from {low} to {high}: between {least} and {most}, and {width} apart, can be heard");
        within.then_some(Self { low, high }).ok_or_else(wrong)
    }
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;

    #[test]
    fn speeds_stay_within_what_can_be_heard() {
        let near = |a: f64, b: f64| (a - b).abs() < 1e-12;
        let s = Speeds::around(1.02, 0.02);
        assert!(near(s.low(), 1.0) && near(s.high(), 1.04) && near(s.centre(), 1.02) && near(s.span(), 0.04));
        assert!(near(Speeds::around(1.0, 0.0).span(), 0.02) && near(Speeds::around(1.0, -3.0).span(), 0.02));
        assert_eq!(Speeds::around(1.0, 0.5), Speeds::WIDE);
        assert_eq!(Speeds::around(f64::NAN, 0.02), Speeds::WIDE);
        assert_eq!(Speeds::around(1.0, f64::INFINITY), Speeds::WIDE);
        let edge = Speeds::around(0.5, 0.01);
        assert!(near(edge.low(), 0.90) && near(edge.high(), 0.92));
    }

    #[test]
    fn unusual_speeds_are_less_likely_where_usual_ones_are_possible() {
        for s in [Speeds::WIDE, Speeds::USUAL, Speeds::around(1.0, 0.01), Speeds::around(1.07, 0.01)] {
            let steps = 10_000;
            let at = |i: u32| s.low() + s.span() * (f64::from(i) + 0.5) / f64::from(steps);
            let sum: f64 = (0..steps).map(|i| s.density(at(i))).sum::<f64>() * s.span() / f64::from(steps);
            assert!((sum - 1.0).abs() < 0.03, "{s:?}: {sum}");
        }
        assert!((Speeds::WIDE.density(1.07) / Speeds::WIDE.density(1.0) - 0.2).abs() < 1e-12);
        assert!((Speeds::USUAL.density(1.0) - 10.0).abs() < 1e-9);
    }

    #[test]
    fn speeds_are_written_and_read_and_wrong_ones_refused() {
        for s in [Speeds::WIDE, Speeds::USUAL, Speeds::around(0.97, 0.01)] {
            assert_eq!(serde_json::from_str::<Speeds>(&serde_json::to_string(&s).unwrap()).unwrap(), s);
        }
        for wrong in ["[0.8,1.0]", "[1.0,1.2]", "[1.0,1.01]", "[1.05,0.95]"] {
            let why = serde_json::from_str::<Speeds>(wrong).unwrap_err().to_string();
            assert!(why.contains("between 0.9 and 1.08"), "{why}");
        }
    }
}
