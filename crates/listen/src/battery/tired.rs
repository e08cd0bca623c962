//! A battery that tires: a button that slows more than the others' scatter allows.

use crate::battery::drift::{Button, Evidence, Moments, SpeedAt};
use crate::detection::Detection;
use std::collections::BTreeMap;

/// Spread of a healthy button's speed from press to press, as a share, before any press is heard (common practice, no
/// source: cheap ceramic resonators and speech chips hold their clock to a few parts in a thousand).
const HEALTHY_SPREAD: f64 = 0.002;
/// Degrees of freedom that this prior counts for against the presses' own scatter.
const SPREAD_WORTH: f64 = 4.0;
/// Probability from which a battery is named.
const SURE: f64 = 0.85;
/// Slowing under this share is not worth a warning.
const LEAST_SLOWING: f64 = 0.006;

/// A button that has been slowing.
#[derive(Debug, Clone, PartialEq, serde::Serialize, serde::Deserialize)]
pub struct TiredBattery {
    /// What the button says.
    pub word: String,
    /// Presses it is judged by.
    pub n: usize,
    /// Probability that it slows more than healthy buttons do.
    pub probability: f64,
    /// Speed lost from the first of these presses to the last, as a share: posterior mean, if it is slowing.
    pub slowed_by: f64,
    /// Posterior standard deviation of that.
    pub standard_error: f64,
    /// Speed at the last press, on the fitted line.
    pub speed_now: f64,
}

/// [`tired_among`] for one word alone, against what is known of healthy buttons beforehand.
///
/// ```
/// use sayso_listen::{SpeedAt, tired_battery};
/// let at = |day: u32, speed| SpeedAt { time_s: f64::from(day) * 86_400.0, speed, confidence: 0.99 };
/// let slowing: Vec<_> = (0..6).map(|i| at(i, 1.0 - 0.004 * f64::from(i))).collect();
/// assert!(tired_battery("walk", &slowing).is_some_and(|t| t.n == 6 && (t.slowed_by - 0.02).abs() < 0.001));
/// let steady: Vec<_> = (0..6).map(|i| at(i, 1.0 + 0.001 * f64::from(i % 2))).collect();
/// assert!(tired_battery("walk", &steady).is_none());
/// ```
pub fn tired_battery(word: &str, presses: &[SpeedAt]) -> Option<TiredBattery> {
    tired_among(&[(word.to_owned(), presses.to_vec())]).pop()
}

/// [`tired_among`] the words heard in one stretch of sound.
pub fn tired_batteries(heard: &[Detection]) -> Vec<TiredBattery> {
    let mut by_word: BTreeMap<&str, Vec<SpeedAt>> = BTreeMap::new();
    for h in heard {
        let press = SpeedAt { time_s: h.onset_s, speed: h.speed, confidence: h.confidence };
        by_word.entry(&h.word).or_default().push(press);
    }
    let words: Vec<_> = by_word.into_iter().map(|(word, presses)| (word.to_owned(), presses)).collect();
    tired_among(&words)
}

/// Buttons whose clips slow down over a stretch of time, a sign of a tired battery, judged against the others'.
///
/// Every button has a speed of its own. A healthy one drifts a little either way over the stretch (normal, 0.15 %); a
/// tired one slows at a steady rate (half-normal, 3 %); one in fifty is tired, each independently. Presses scatter about
/// their button's line with one spread for all buttons, 0.2 % before any is heard (scaled inverse chi-squared, 4 degrees
/// of freedom), so that the scatter of all of them tells how much of a difference counts. A press is genuine with its
/// confidence, and its speed right all but once in a thousand; else its speed says nothing (uniform). At most two
/// presses, or spans, of a word are taken for such.
/// The integrals over lines are exact, that over the spread a sum over a grid. A word is named when it is tired with a
/// probability of 0.85 and slowed by at least 0.6 % between its first press and its last. Two presses far apart may be
/// enough; of one, or of several at one time, nothing is said. More than 24 presses of a word speak through the medians
/// of 24 spans.
pub fn tired_among(words: &[(String, Vec<SpeedAt>)]) -> Vec<TiredBattery> {
    let ok = |p: &&SpeedAt| [p.time_s, p.speed, p.confidence].iter().all(|x| x.is_finite());
    let times = || words.iter().flat_map(|(_, p)| p).filter(ok).map(|p| p.time_s);
    let (from, to) = (times().fold(f64::INFINITY, f64::min), times().fold(f64::NEG_INFINITY, f64::max));
    if !(to > from) {
        return Vec::new();
    }
    let buttons: Vec<Button> = words
        .iter()
        .filter_map(|(word, presses)| Button::new(word, presses.iter().filter(ok).copied().collect(), from, to - from))
        .collect();
    // Evidence for each spread, and each button's for each spread.
    let spreads: Vec<f64> = (-8..=8).map(|k| HEALTHY_SPREAD * 2f64.powf(f64::from(k) / 4.0)).collect();
    let each: Vec<Vec<Evidence>> = buttons.iter().map(|b| spreads.iter().map(|s| b.evidence(*s)).collect()).collect();
    let logs: Vec<f64> = spreads
        .iter()
        .enumerate()
        .map(|(k, s)| {
            let prior = -SPREAD_WORTH * (s.ln() + 0.5 * (HEALTHY_SPREAD / s).powi(2));
            prior + each.iter().map(|e| e[k].either()).sum::<f64>()
        })
        .collect();
    let top = logs.iter().copied().fold(f64::NEG_INFINITY, f64::max);
    let weights: Vec<f64> = logs.iter().map(|l| (l - top).exp()).collect();
    let total: f64 = weights.iter().sum();
    buttons
        .iter()
        .zip(&each)
        .filter_map(|(button, evidence)| {
            let mut sum = Moments::default();
            for (e, w) in evidence.iter().zip(&weights) {
                sum.add(e.tired_share() * w / total, e.line);
            }
            let line = sum.mean();
            let found = TiredBattery {
                word: button.word.to_owned(),
                n: button.n,
                probability: sum.weight.min(1.0),
                slowed_by: line.slowing * button.span(),
                standard_error: line.variance.max(0.0).sqrt() * button.span(),
                speed_now: line.speed_now,
            };
            (found.probability >= SURE && found.slowed_by >= LEAST_SLOWING).then_some(found)
        })
        .collect()
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;

    fn at(time_s: f64, speed: f64) -> SpeedAt {
        SpeedAt { time_s, speed, confidence: 0.999 }
    }

    /// Three presses of each of ten healthy buttons over three minutes.
    fn healthy() -> Vec<(String, Vec<SpeedAt>)> {
        let press = |w: i32, k: i32| {
            let wobble = f64::from((7 * w + 11 * k) % 5 - 2) * 0.001;
            at(f64::from(5 * w + 60 * k), 0.98 + 0.004 * f64::from(w) + wobble)
        };
        (0..10).map(|w| (format!("word {w}"), (0..3).map(|k| press(w, k)).collect())).collect()
    }

    fn named(words: &[(String, Vec<SpeedAt>)]) -> Vec<String> {
        tired_among(words).into_iter().map(|t| t.word).collect()
    }

    fn with(presses: &[SpeedAt]) -> Vec<(String, Vec<SpeedAt>)> {
        let mut words = healthy();
        words.push(("walk".into(), presses.to_vec()));
        words
    }

    #[test]
    fn two_presses_far_apart_are_enough_and_close_ones_are_not() {
        assert!(named(&healthy()).is_empty());
        let far = tired_among(&with(&[at(20.0, 1.01), at(150.0, 0.985)]));
        assert_eq!((far.len(), far[0].word.as_str(), far[0].n), (1, "walk", 2));
        assert!((far[0].slowed_by - 0.025).abs() < 0.001 && (far[0].speed_now - 0.985).abs() < 0.001, "{far:?}");
        assert!((0.001..0.004).contains(&far[0].standard_error), "{far:?}");
        assert!(named(&with(&[at(20.0, 1.01), at(50.0, 1.005)])).is_empty());
    }

    #[test]
    fn a_difference_counts_by_how_much_the_other_buttons_scatter() {
        let slowing = [at(10.0, 1.0), at(90.0, 0.994), at(170.0, 0.988)];
        assert_eq!(named(&with(&slowing)), ["walk"]);
        let mut loose = with(&slowing);
        for (_, presses) in &mut loose[..10] {
            for (k, p) in presses.iter_mut().enumerate() {
                p.speed += [0.008, -0.009, 0.007][k];
            }
        }
        assert!(named(&loose).is_empty());
    }

    #[test]
    fn one_wrong_speed_neither_makes_nor_hides_a_tired_battery() {
        let steady = |wrong: f64| [at(10.0, 1.0), at(60.0, 1.001), at(110.0, 0.999), at(170.0, wrong)];
        assert!(named(&with(&steady(0.96))).is_empty());
        let slowing = [at(10.0, 1.01), at(60.0, 1.001), at(110.0, 0.992), at(140.0, 1.03), at(170.0, 0.981)];
        assert_eq!(named(&with(&slowing)), ["walk"]);
    }

    #[test]
    fn unsure_presses_weigh_less() {
        let mut two = [at(20.0, 1.01), at(150.0, 0.985)];
        assert_eq!(named(&with(&two)), ["walk"]);
        two[1].confidence = 0.7;
        assert!(named(&with(&two)).is_empty());
    }

    #[test]
    fn two_tired_batteries_are_both_named() {
        let mut words = with(&[at(20.0, 1.01), at(150.0, 0.985)]);
        words.push(("bed".into(), vec![at(30.0, 1.0), at(100.0, 0.99), at(160.0, 0.981)]));
        assert_eq!(named(&words), ["walk", "bed"]);
    }

    #[test]
    fn a_long_history_is_heard_through_its_spans() {
        let slowly: Vec<SpeedAt> =
            (0..3000).map(|i| at(600.0 * f64::from(i), 1.0 - 4e-6 * f64::from(i) + 0.001 * f64::from(i % 3))).collect();
        let t = tired_battery("walk", &slowly).unwrap();
        assert!(t.n == 3000 && (t.slowed_by - 0.0115).abs() < 0.001, "{t:?}");
        // Every fiftieth speed is wrong, on a steady button.
        let odd: Vec<SpeedAt> =
            (0..3000).map(|i| at(600.0 * f64::from(i), if i % 50 == 0 && i > 1500 { 0.95 } else { 1.0 })).collect();
        assert!(tired_battery("walk", &odd).is_none());
    }

    #[test]
    fn degenerate_presses_have_an_answer() {
        assert!(tired_battery("a", &[]).is_none() && tired_among(&[]).is_empty());
        assert!(tired_battery("a", &[at(1.0, 0.9), at(1.0, 0.9)]).is_none());
        assert!(tired_battery("a", &[at(f64::NAN, 1.0), at(1.0, 0.9), at(2.0, f64::INFINITY)]).is_none());
        let doubtful = SpeedAt { confidence: 0.0, ..at(2.0, 0.95) };
        assert!(tired_battery("a", &[at(1.0, 1.0), doubtful]).is_none());
        let faster: Vec<SpeedAt> = (0..5).map(|i| at(f64::from(i), 0.97 + 0.01 * f64::from(i))).collect();
        assert!(tired_battery("a", &faster).is_none());
        let far = [at(-1e300, 1.0), at(1e300, 0.9), at(0.0, 1e300)];
        assert!(tired_battery("a", &far).is_none_or(|t| t.slowed_by.is_finite() && t.standard_error.is_finite()));
    }
}
