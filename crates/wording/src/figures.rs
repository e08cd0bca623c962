//! Figures as they are told: each with its interval and its count, in words where nobody asked for figures.

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
        Unit::Seconds => locale.seconds(x),
        Unit::PerDay => say!(locale, unit::a_day, value = locale.number(x, 1)),
        Unit::PerMinute => say!(locale, unit::a_minute, value = locale.number(x, 1)),
        Unit::Number => locale.number(x, 1),
    }
}

/// What stands in a figure's place where nothing was counted yet: neither a share nor an interval of it.
#[must_use]
pub fn none(locale: &Locale) -> String {
    say!(locale, figures::none)
}

/// An estimate for who asked for figures, as in `62% (48% to 75%, n = 37)`.
#[must_use]
pub fn estimate(locale: &Locale, e: &Estimate) -> String {
    let decimals = decimals(locale, e);
    let written = |x| number_to(locale, x, e.unit, decimals);
    match (e.value, e.low, e.high) {
        (Some(value), Some(low), Some(high)) => {
            let (value, low, high) = (written(value), written(low), written(high));
            say!(locale, figures::with_interval, value = value, low = low, high = high, n = e.n)
        }
        (Some(value), ..) => say!(locale, figures::without_interval, value = written(value), n = e.n),
        (None, ..) if e.n == 0 => none(locale),
        (None, ..) => say!(locale, figures::nothing, n = e.n),
    }
}

/// Whole per cents may swallow the interval; "0 % (0 % to 0 %)" would claim to be certain.
fn decimals(locale: &Locale, e: &Estimate) -> usize {
    let written = |x| number_to(locale, x, e.unit, 0);
    usize::from(e.low.zip(e.high).is_some_and(|(low, high)| low < high && written(low) == written(high)))
}

/// An estimate in the open, as in `62% (48% to 75%, from 37 records)`.
#[must_use]
pub fn told(locale: &Locale, e: &Estimate) -> String {
    told_to(locale, e, decimals(locale, e))
}

/// The same, shares with so many decimals.
#[must_use]
pub fn told_to(locale: &Locale, e: &Estimate, decimals: usize) -> String {
    let written = |x| number_to(locale, x, e.unit, decimals);
    match (e.value, e.low, e.high) {
        (Some(value), Some(low), Some(high)) => {
            let (value, low, high) = (written(value), written(low), written(high));
            say!(locale, figures::told_interval, value = value, low = low, high = high, n = e.n)
        }
        (Some(value), ..) => say!(locale, figures::told_without, value = written(value), n = e.n),
        (None, ..) if e.n == 0 => none(locale),
        (None, ..) => say!(locale, figures::told_nothing, n = e.n),
    }
}

/// The same in a cell of a table, whose caption says what is counted: `62% (48% to 75%, from 37)`.
#[must_use]
pub fn in_cell(locale: &Locale, e: &Estimate) -> String {
    let decimals = decimals(locale, e);
    let written = |x| number_to(locale, x, e.unit, decimals);
    match (e.value, e.low, e.high) {
        _ if e.n == 0 => none(locale),
        _ if e.too_early() => say!(locale, figures::cell_early, n = e.n),
        (Some(value), Some(low), Some(high)) => {
            let (value, low, high) = (written(value), written(low), written(high));
            say!(locale, figures::cell_interval, value = value, low = low, high = high, n = e.n)
        }
        (Some(value), ..) => say!(locale, figures::cell_without, value = written(value), n = e.n),
        (None, ..) => say!(locale, figures::cell_nothing, n = e.n),
    }
}

/// The same; with too few observations only that it is too early to say, and their count. It stands after a colon or in a
/// cell of its own: in the middle of a sentence no words can take the place of a figure.
#[must_use]
pub fn finding(locale: &Locale, e: &Estimate) -> String {
    match e.n {
        0 => none(locale),
        n if e.too_early() => say!(locale, figures::told_early, n = n),
        _ => told(locale, e),
    }
}

impl Locale {
    /// A figure's best value with its unit; a dash where there is none.
    #[must_use]
    pub fn value(&self, value: Option<f64>, unit: Unit) -> String {
        number(self, value.unwrap_or(f64::NAN), unit)
    }

    /// For who asked for figures: `62% (48% to 75%, n = 37)`; with too few observations that it is too early to say.
    #[must_use]
    pub fn estimate(&self, figure: &Estimate) -> String {
        match figure.n {
            0 => none(self),
            n if figure.too_early() => say!(self, figures::too_early, n = n),
            _ => estimate(self, figure),
        }
    }
}

/// `0.2 to 0.8`, both written already.
#[must_use]
pub fn interval(locale: &Locale, low: &str, high: &str) -> String {
    say!(locale, figures::interval, low = low, high = high)
}

/// A share of few as a count; with more, its interval too.
#[must_use]
pub fn counted(locale: &Locale, share: &Estimate) -> String {
    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss, clippy::cast_precision_loss)]
    let k = (share.value.unwrap_or(0.0) * share.n as f64).round() as usize;
    let few = say!(locale, rehearse::k_of_n, k = k, n = share.n);
    if share.too_early() { few } else { locale.colon(&few, &finding(locale, share)) }
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
        assert_eq!(finding(&Locale::ENGLISH, &Estimate::share(0, 0)), "nothing counted yet");
        assert_eq!(Locale::of(Language::De).estimate(&Estimate::share(0, 0)), "noch nichts gezählt");
        assert_eq!(finding(&Locale::ENGLISH, &Estimate::share(0, 1)), "too early to say (one record)");
        assert_eq!(finding(&Locale::ENGLISH, &Estimate::share(3, 4)), "too early to say (4 records)");
        assert_eq!(Locale::ENGLISH.estimate(&Estimate::share(3, 4)), "too early to say (n = 4)");
        assert_eq!(finding(&Locale::ENGLISH, &Estimate::share(3, 5)), "60% (15% to 95%, from 5 records)");
        assert_eq!(in_cell(&Locale::ENGLISH, &Estimate::share(3, 5)), "60% (15% to 95%, from 5)");
        assert_eq!(in_cell(&Locale::ENGLISH, &Estimate::share(3, 4)), "too early to say (from 4)");
        assert_eq!(in_cell(&Locale::ENGLISH, &Estimate::share(0, 0)), "nothing counted yet");
    }
}
