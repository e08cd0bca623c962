//! Figures with their 95 % interval and count, as each language writes them.

use crate::{Locale, say};
use sayso_advisor::{Estimate, Unit};

impl Locale {
    /// A figure's best value with its unit; a dash where there is none.
    #[must_use]
    pub fn value(&self, value: Option<f64>, unit: Unit) -> String {
        self.value_to(value, unit, 0)
    }

    fn value_to(&self, value: Option<f64>, unit: Unit, decimals: usize) -> String {
        let x = value.unwrap_or(f64::NAN);
        match unit {
            Unit::Share => say!(self, unit::percent, value = self.number(100.0 * x, decimals)),
            Unit::Seconds => say!(self, unit::seconds, value = self.number(x, 1)),
            Unit::PerDay => say!(self, unit::a_day, value = self.number(x, 1)),
            Unit::PerMinute => say!(self, unit::a_minute, value = self.number(x, 1)),
            Unit::Number => self.number(x, 1),
        }
    }

    /// `62% (48% to 75%, n = 37)`; with too few observations that it is too early to say.
    #[must_use]
    pub fn estimate(&self, figure: &Estimate) -> String {
        self.estimate_to(figure, 0)
    }

    /// The same, shares with so many decimals.
    #[must_use]
    pub fn estimate_to(&self, figure: &Estimate, decimals: usize) -> String {
        if figure.too_early() {
            return say!(self, estimate::too_early, n = figure.n);
        }
        let written = |x| self.value_to(x, figure.unit, decimals);
        let value = written(figure.value);
        if figure.low.is_none() || figure.high.is_none() {
            return say!(self, estimate::no_interval, value = value, n = figure.n);
        }
        say!(
            self,
            estimate::figure,
            value = value,
            low = written(figure.low),
            high = written(figure.high),
            n = figure.n
        )
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use sayso_model::Language;

    #[test]
    fn a_figure_tells_its_interval_and_count_or_that_it_is_too_early() {
        let of = |language, k, n| Locale::of(language).estimate(&Estimate::share(k, n));
        assert_eq!(of(Language::En, 9, 12), "75% (43% to 95%, n = 12)");
        assert_eq!(of(Language::De, 9, 12), "75\u{a0}% (43\u{a0}% bis 95\u{a0}%, n = 12)");
        assert_eq!(of(Language::En, 0, 1), "too early to say (n = 1)");
    }
}
