//! Figures as they are told: each with its interval and its count.

use crate::locale::Locale;
use crate::say;
use sayso_advisor::Estimate;
use sayso_advisor::estimate::Unit;

/// A number in its unit.
#[must_use]
pub fn number(locale: &Locale, x: f64, unit: Unit) -> String {
    number_to(locale, x, unit, 0)
}

/// The same, shares with so many decimals.
fn number_to(locale: &Locale, x: f64, unit: Unit, decimals: usize) -> String {
    match unit {
        Unit::Share => say!(locale, unit::percent, value = locale.number(100.0 * x, decimals)),
        Unit::Seconds => say!(locale, unit::seconds, value = locale.number(x, 1)),
        Unit::PerDay => say!(locale, unit::a_day, value = locale.number(x, 1)),
        Unit::PerMinute => say!(locale, unit::a_minute, value = locale.number(x, 1)),
        Unit::Number => locale.number(x, 1),
    }
}

/// An estimate, as in `62% (48% to 75%, n = 37)`.
#[must_use]
pub fn estimate(locale: &Locale, e: &Estimate) -> String {
    // Whole per cents may swallow the interval; "0 % (0 % to 0 %)" would claim to be certain.
    let written = |x| number_to(locale, x, e.unit, 0);
    let swallowed = e.low.zip(e.high).is_some_and(|(low, high)| low < high && written(low) == written(high));
    estimate_to(locale, e, usize::from(swallowed))
}

/// The same, shares with so many decimals.
#[must_use]
pub fn estimate_to(locale: &Locale, e: &Estimate, decimals: usize) -> String {
    let written = |x| number_to(locale, x, e.unit, decimals);
    match (e.value, e.low, e.high) {
        (Some(value), Some(low), Some(high)) => say!(
            locale,
            figures::with_interval,
            value = written(value),
            low = written(low),
            high = written(high),
            n = e.n
        ),
        (Some(value), ..) => say!(locale, figures::without_interval, value = written(value), n = e.n),
        (None, ..) => say!(locale, figures::nothing, n = e.n),
    }
}

/// The same; with too few observations only that it is too early to say, and their count.
#[must_use]
pub fn finding(locale: &Locale, e: &Estimate) -> String {
    locale.estimate(e)
}

impl Locale {
    /// A figure's best value with its unit; a dash where there is none.
    #[must_use]
    pub fn value(&self, value: Option<f64>, unit: Unit) -> String {
        number(self, value.unwrap_or(f64::NAN), unit)
    }

    /// `62% (48% to 75%, n = 37)`; with too few observations that it is too early to say.
    #[must_use]
    pub fn estimate(&self, figure: &Estimate) -> String {
        if figure.too_early() { say!(self, figures::too_early, n = figure.n) } else { estimate(self, figure) }
    }
}

/// `0.2 to 0.8`, both written already.
#[must_use]
pub fn interval(locale: &Locale, low: &str, high: &str) -> String {
    say!(locale, figures::interval, low = low, high = high)
}

#[cfg(test)]
mod tests {
    use super::*;
    use sayso_model::Language;

    #[test]
    fn an_interval_keeps_its_width_when_it_is_written() {
        let e = Estimate { value: Some(0.002), low: Some(0.0), high: Some(0.004), ..Estimate::share(1, 500) };
        assert_eq!(estimate(&Locale::ENGLISH, &e), "0.2% (0.0% to 0.4%, n = 500)");
    }

    #[test]
    fn an_estimate_tells_its_interval_and_count_as_the_language_writes_numbers() {
        let e = Estimate::share(9, 12);
        assert_eq!(estimate(&Locale::ENGLISH, &e), "75% (43% to 95%, n = 12)");
        assert_eq!(estimate(&Locale::of(Language::De), &e), "75\u{a0}% (43\u{a0}% bis 95\u{a0}%, n = 12)");
    }

    #[test]
    fn few_observations_are_no_finding() {
        assert_eq!(finding(&Locale::ENGLISH, &Estimate::share(0, 1)), "too early to say (n = 1)");
        assert_eq!(finding(&Locale::ENGLISH, &Estimate::share(3, 4)), "too early to say (n = 4)");
        assert!(finding(&Locale::ENGLISH, &Estimate::share(3, 5)).starts_with("60%"));
    }
}
