//! A word that has fallen silent.

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

/// The days at which a word was heard, counted from any one origin for all words.
#[derive(Debug, Clone, PartialEq, serde::Serialize, serde::Deserialize)]
pub struct HeardDays {
    /// What the button says.
    pub word: String,
    /// When it began to be listened for.
    pub from_day: f64,
    /// When it was heard.
    pub days: Vec<f64>,
}

/// Words not heard for days while others were: a flat battery, a broken button, or a word nobody has use for.
///
/// A word is named after `least_days` of silence before `now_day` in which others were heard at least ten times; if it was
/// heard before, only when its silence has a chance under 1 % at its earlier rate (Poisson; presses come in runs, so the
/// true chance is larger).
pub fn silent_words(words: &[HeardDays], now_day: f64, least_days: f64) -> Vec<SilentWord> {
    let within = |days: &[f64], from: f64| days.iter().filter(|d| **d > from && **d <= now_day).count();
    let named = |HeardDays { word, from_day, days }: &HeardDays| {
        let last = days.iter().copied().filter(|d| d.is_finite() && *d <= now_day).fold(f64::NEG_INFINITY, f64::max);
        let ever = last.is_finite();
        let since = if ever { last } else { *from_day };
        let days_silent = now_day - since;
        let others_heard = words.iter().filter(|w| w.word != *word).map(|w| within(&w.days, since)).sum();
        let (listened, heard) = (last - from_day, within(days, f64::NEG_INFINITY));
        let chance = (ever && listened > 0.0).then(|| (-(heard as f64 / listened) * days_silent).exp());
        (days_silent >= least_days && others_heard >= 10 && chance.is_none_or(|c| c < 0.01)).then(|| SilentWord {
            word: word.clone(),
            days_silent,
            ever,
            others_heard,
            chance,
        })
    };
    words.iter().filter_map(named).collect()
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;

    #[test]
    fn silence_is_named_only_against_a_rate_that_makes_it_strange() {
        let often: Vec<f64> = (0..40).map(|i| f64::from(i) * 0.25).collect();
        let until_day_3: Vec<f64> = often.iter().copied().filter(|t| *t < 3.0).collect();
        let of = |word: &str, days| HeardDays { word: word.into(), from_day: 0.0, days };
        let mut words = vec![of("ball", often), of("walk", until_day_3), of("bed", vec![]), of("music", vec![4.0])];
        words.push(HeardDays { word: "new".into(), from_day: 9.0, days: vec![] });
        let named = silent_words(&words, 10.0, 3.0);
        let names: Vec<&str> = named.iter().map(|s| s.word.as_str()).collect();
        assert_eq!(names, ["walk", "bed"]);
        assert!(!named[1].ever && named[1].days_silent == 10.0 && named[1].chance.is_none());
        assert!(named[0].chance.unwrap() < 1e-6);
        assert!(silent_words(&[of("a", vec![])], 30.0, 3.0).is_empty(), "no other presses");
    }
}
