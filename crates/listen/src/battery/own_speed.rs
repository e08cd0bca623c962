//! The speeds at which a button is to be listened for, from those it was heard at.

use crate::battery::drift::SpeedAt;
use crate::detection::SURE;
use crate::median::median;
use crate::speeds::Speeds;

/// Presses looked back on.
const LOOKED_AT: usize = 8;
/// Presses from which a button is known; before that it may have most speeds.
const KNOWN_FROM: usize = 3;
/// Width on either side until then.
const UNKNOWN_WIDTH: f64 = 0.06;
/// Spread of a healthy button's speed from press to press (as `tired`; common practice, no source).
const SPREAD: f64 = 0.002;
/// Spreads kept on either side.
const SPREADS: f64 = 4.0;
/// What a speed may change by in a day (our own choice).
const A_DAY: f64 = 0.002;
/// Days without a press after which all is possible again, as the battery may have been changed (our own choice).
pub const FORGOTTEN_DAYS: f64 = 14.0;
const DAY_S: f64 = 86_400.0;

/// The speeds at which to listen for a button, from its presses and the time it is, in the same count of seconds.
///
/// The centre is the median of the speeds of its last eight sure presses ([`SURE`] and more); the width on either side four
/// times their spread (median deviation, at least 0.2 %), no less than [`Speeds::LEAST_WIDTH`], and 0.2 % more for each day since
/// the last. One or two presses leave 6 % on either side; none, or none for a fortnight, [`Speeds::WIDE`]. So one wrong press
/// moves little, a battery that tires is followed, and a button that fell silent, as after a change of battery, is looked for at
/// ever more speeds. The constants are our own choice.
///
/// ```
/// use sayso_listen::{SpeedAt, Speeds, speeds_to_listen};
/// let at = |day: f64, speed| SpeedAt { time_s: day * 86_400.0, speed, confidence: 0.99 };
/// let heard: Vec<_> = (0..6).map(|i| at(f64::from(i), 0.97 + 0.001 * f64::from(i % 2))).collect();
/// let soon = speeds_to_listen(&heard, 5.0 * 86_400.0);
/// assert!(soon.low() > 0.955 && soon.high() < 0.985);
/// assert_eq!(speeds_to_listen(&heard, 60.0 * 86_400.0), Speeds::WIDE);
/// ```
pub fn speeds_to_listen(presses: &[SpeedAt], now_s: f64) -> Speeds {
    let told = |p: &&SpeedAt| {
        p.confidence >= SURE && p.speed.is_finite() && p.time_s <= now_s && Speeds::WIDE.plausible(p.speed)
    };
    let mut last: Vec<&SpeedAt> = presses.iter().filter(told).collect();
    last.sort_by(|a, b| b.time_s.total_cmp(&a.time_s));
    last.truncate(LOOKED_AT);
    let Some(newest) = last.first() else { return Speeds::WIDE };
    let centre = median(last.iter().map(|p| p.speed).collect());
    // Of a normal spread the median deviation is 1 / 1.4826.
    let spread = 1.4826 * median(last.iter().map(|p| (p.speed - centre).abs()).collect());
    let least = if last.len() < KNOWN_FROM { UNKNOWN_WIDTH } else { Speeds::LEAST_WIDTH };
    let since_days = (now_s - newest.time_s) / DAY_S;
    if since_days > FORGOTTEN_DAYS {
        return Speeds::WIDE;
    }
    Speeds::around(centre, (SPREADS * spread.max(SPREAD)).max(least) + A_DAY * since_days)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn at(day: f64, speed: f64) -> SpeedAt {
        SpeedAt { time_s: day * DAY_S, speed, confidence: 0.99 }
    }

    fn holds(s: Speeds, speed: f64) -> bool {
        (s.low()..=s.high()).contains(&speed)
    }

    #[test]
    fn a_button_is_followed_as_it_tires() {
        // 0.1 % a day, pressed twice a day: each next press lies within what is listened for, and that is narrow.
        let mut heard: Vec<SpeedAt> = Vec::new();
        for i in 0..80 {
            let (day, speed) = (0.5 * f64::from(i), 1.04 - 0.0005 * f64::from(i) + 0.001 * f64::from(i % 3 - 1));
            let listened = speeds_to_listen(&heard, day * DAY_S);
            assert!(holds(listened, speed), "press {i} at {speed}: {listened:?}");
            assert!(i < 3 || listened.span() < 0.04, "press {i}: {listened:?}");
            heard.push(at(day, speed));
        }
    }

    #[test]
    fn a_new_or_silent_button_may_have_any_speed() {
        assert_eq!(speeds_to_listen(&[], 0.0), Speeds::WIDE);
        let heard: Vec<SpeedAt> = (0..5).map(|i| at(f64::from(i), 0.93)).collect();
        let spans: Vec<f64> = [4.0, 8.0, 14.0, 18.1].map(|day| speeds_to_listen(&heard, day * DAY_S).span()).to_vec();
        assert!(spans.windows(2).all(|w| w[0] < w[1]), "{spans:?}");
        assert_eq!(speeds_to_listen(&heard, 18.1 * DAY_S), Speeds::WIDE);
        let few = speeds_to_listen(&heard[..2], DAY_S);
        assert!(holds(few, 0.985) && few.low() == 0.90, "{few:?}");
    }

    #[test]
    fn wrong_unsure_and_later_presses_hardly_count() {
        let mut heard: Vec<SpeedAt> = (0..6).map(|i| at(f64::from(i), 1.01)).collect();
        let alone = speeds_to_listen(&heard, 5.0 * DAY_S);
        heard.push(at(4.5, 0.92));
        assert_eq!(speeds_to_listen(&heard, 5.0 * DAY_S), alone);
        heard.push(SpeedAt { confidence: 0.6, ..at(5.0, 0.95) });
        heard.push(at(9.0, 0.95));
        heard.extend([at(f64::NAN, 1.0), at(5.0, f64::NAN), at(5.0, 3.0)]);
        assert_eq!(speeds_to_listen(&heard, 5.0 * DAY_S), alone);
        assert_eq!(speeds_to_listen(&heard, f64::NAN), Speeds::WIDE);
    }
}
