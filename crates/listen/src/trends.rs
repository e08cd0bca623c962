//! What many presses tell about the buttons: a battery that tires, a word that has fallen silent.

use crate::ear::Heard;
use std::collections::BTreeMap;

/// Spread of a healthy button's speed from press to press, as a share (common practice, no source: cheap ceramic
/// resonators and speech chips hold their clock to a few parts in a thousand).
const HEALTHY_SPREAD: f64 = 0.002;
/// Slowing under this share is not worth a warning.
const LEAST_SLOWING: f64 = 0.006;
/// How many standard errors a slowing must measure.
const SURE: f64 = 3.5;

/// One press's speed at its time, from any source.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SpeedAt {
    /// Seconds since any fixed moment.
    pub time_s: f64,
    /// Playback speed against the enrolled clip.
    pub speed: f64,
}

/// A button that has been slowing.
#[derive(Debug, Clone, PartialEq, serde::Serialize, serde::Deserialize)]
pub struct TiredBattery {
    /// What the button says.
    pub word: String,
    /// Presses it is judged by.
    pub n: usize,
    /// Speed lost from the first of these presses to the last, as a share, on the fitted line.
    pub slowed_by: f64,
    /// Standard error of that.
    pub standard_error: f64,
    /// Speed at the last press, on the fitted line.
    pub speed_now: f64,
}

/// Buttons whose clips slow down over time: a sign of a tired battery.
///
/// A straight line is fitted to each word's speeds (least squares); a word is named when it slowed by at least 0.6 %
/// and by 3.5 standard errors, taking the larger of the healthy spread and the scatter about the line. Presses are
/// weighed by their confidence. With fewer than two presses, or all at one time, nothing is said of a word.
///
/// ```
/// use sayso_listen::{SpeedAt, tired_battery};
/// let slowing: Vec<_> = (0..6).map(|i| SpeedAt { time_s: f64::from(i) * 86_400.0, speed: 1.0 - 0.004 * f64::from(i) }).collect();
/// assert!(tired_battery("walk", &slowing).is_some_and(|t| t.n == 6 && (t.slowed_by - 0.02).abs() < 1e-9));
/// let steady: Vec<_> = (0..6).map(|i| SpeedAt { time_s: f64::from(i), speed: 1.0 + 0.001 * f64::from(i % 2) }).collect();
/// assert!(tired_battery("walk", &steady).is_none());
/// ```
pub fn tired_battery(word: &str, presses: &[SpeedAt]) -> Option<TiredBattery> {
    let ok: Vec<&SpeedAt> = presses.iter().filter(|p| p.time_s.is_finite() && p.speed.is_finite()).collect();
    let n = ok.len();
    if n < 2 {
        return None;
    }
    let mean_t = ok.iter().map(|p| p.time_s).sum::<f64>() / n as f64;
    let mean_v = ok.iter().map(|p| p.speed).sum::<f64>() / n as f64;
    let sxx: f64 = ok.iter().map(|p| (p.time_s - mean_t).powi(2)).sum();
    let span =
        ok.iter().map(|p| p.time_s).fold(f64::MIN, f64::max) - ok.iter().map(|p| p.time_s).fold(f64::MAX, f64::min);
    if !(sxx > 1e-9 && span > 0.0) {
        return None;
    }
    let slope = ok.iter().map(|p| (p.time_s - mean_t) * (p.speed - mean_v)).sum::<f64>() / sxx;
    let residual: f64 = ok.iter().map(|p| (p.speed - mean_v - slope * (p.time_s - mean_t)).powi(2)).sum();
    let scatter = if n > 2 { (residual / (n - 2) as f64).sqrt() } else { 0.0 };
    let standard_error = scatter.max(HEALTHY_SPREAD) / sxx.sqrt() * span;
    let slowed_by = -slope * span;
    let last = ok.iter().map(|p| p.time_s).fold(f64::MIN, f64::max);
    (slowed_by >= LEAST_SLOWING && slowed_by >= SURE * standard_error).then(|| TiredBattery {
        word: word.to_owned(),
        n,
        slowed_by,
        standard_error,
        speed_now: mean_v + slope * (last - mean_t),
    })
}

/// [`tired_battery`] for every word heard in one stretch of sound.
pub fn tired_batteries(heard: &[Heard]) -> Vec<TiredBattery> {
    let mut by_word: BTreeMap<&str, Vec<SpeedAt>> = BTreeMap::new();
    for h in heard.iter().filter(|h| h.confidence >= 0.8) {
        by_word.entry(&h.word).or_default().push(SpeedAt { time_s: h.onset_s, speed: h.speed });
    }
    by_word.into_iter().filter_map(|(word, presses)| tired_battery(word, &presses)).collect()
}

/// A word that should have been heard by now.
#[derive(Debug, Clone, PartialEq, serde::Serialize, serde::Deserialize)]
pub struct SilentWord {
    /// What the button says.
    pub word: String,
    /// Days since it was last heard, or since listening began if never.
    pub days_silent: f64,
    /// Whether it was ever heard.
    pub ever: bool,
    /// Presses of other words in that time.
    pub others_heard: usize,
    /// Chance of such a silence at the word's own rate before it, if it was heard before.
    pub chance: Option<f64>,
}

/// Words not heard for days while others were: a flat battery, a broken button, or a word nobody has use for.
///
/// `times_day` gives per enrolled word the days (any fixed origin) at which it was heard; listening ran from
/// `from_day` to `now_day`. A word is named after `least_days` of silence in which others were heard at least ten
/// times; if it was heard before, only when its silence has a chance under 1 % at its earlier rate (Poisson).
pub fn silent_words(times_day: &[(String, Vec<f64>)], from_day: f64, now_day: f64, least_days: f64) -> Vec<SilentWord> {
    let mut out = Vec::new();
    for (word, times) in times_day {
        let past = times.iter().copied().filter(|t| t.is_finite() && *t <= now_day);
        let last = past.clone().fold(f64::NEG_INFINITY, f64::max);
        let ever = last.is_finite();
        let since = if ever { last } else { from_day };
        let days_silent = now_day - since;
        let others_heard = times_day
            .iter()
            .filter(|(w, _)| w != word)
            .map(|(_, t)| t.iter().filter(|t| **t > since && **t <= now_day).count())
            .sum();
        let listened = last - from_day;
        let chance = (ever && listened > 0.0).then(|| (-(past.count() as f64 / listened) * days_silent).exp());
        if days_silent >= least_days && others_heard >= 10 && chance.is_none_or(|c| c < 0.01) {
            out.push(SilentWord { word: word.clone(), days_silent, ever, others_heard, chance });
        }
    }
    out
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;

    #[test]
    fn silence_is_named_only_against_a_rate_that_makes_it_strange() {
        let often: Vec<f64> = (0..40).map(|i| f64::from(i) * 0.25).collect();
        let until_day_3: Vec<f64> = often.iter().copied().filter(|t| *t < 3.0).collect();
        let words = vec![
            ("ball".to_owned(), often),
            ("walk".to_owned(), until_day_3),
            ("bed".to_owned(), vec![]),
            ("music".to_owned(), vec![4.0]),
        ];
        let named = silent_words(&words, 0.0, 10.0, 3.0);
        let names: Vec<&str> = named.iter().map(|s| s.word.as_str()).collect();
        assert_eq!(names, ["walk", "bed"]);
        assert!(!named[1].ever && named[1].days_silent == 10.0 && named[1].chance.is_none());
        assert!(named[0].chance.unwrap() < 1e-6);
    }

    #[test]
    fn nothing_is_said_without_other_presses_or_of_odd_input() {
        assert!(silent_words(&[("a".into(), vec![])], 0.0, 30.0, 3.0).is_empty());
        assert!(tired_battery("a", &[]).is_none());
        let same = SpeedAt { time_s: 1.0, speed: 0.9 };
        assert!(tired_battery("a", &[same, same]).is_none());
        let odd = SpeedAt { time_s: f64::NAN, speed: 1.0 };
        assert!(tired_battery("a", &[odd, same, SpeedAt { time_s: 2.0, speed: 0.9 }]).is_none());
    }

    #[test]
    fn a_faster_clip_is_no_tired_battery() {
        let faster: Vec<SpeedAt> =
            (0..5).map(|i| SpeedAt { time_s: f64::from(i), speed: 0.97 + 0.01 * f64::from(i) }).collect();
        assert!(tired_battery("a", &faster).is_none());
    }
}
