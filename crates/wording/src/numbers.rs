//! Numbers and lists as each language writes them, by CLDR data.

use crate::locale::Locale;
use crate::say;
use fluent_bundle::FluentValue;
use fluent_bundle::types::FluentNumber;
use icu_decimal::DecimalFormatter;
use icu_decimal::input::Decimal;
use icu_list::ListFormatter;
use icu_list::options::ListFormatterOptions;
use icu_locale_core::Locale as Tag;
use intl_memoizer::{Memoizable, concurrent::IntlLangMemoizer};
use sayso_model::Language;
use std::collections::BTreeMap;
use std::sync::LazyLock;
use unic_langid::LanguageIdentifier;

static DECIMALS: LazyLock<BTreeMap<Language, DecimalFormatter>> = LazyLock::new(|| {
    Language::ALL.into_iter().filter_map(|l| decimals(l.tag()).map(|formatter| (l, formatter))).collect()
});

fn decimals(tag: &str) -> Option<DecimalFormatter> {
    let tag: Tag = tag.parse().ok()?;
    DecimalFormatter::try_new(tag.into(), icu_decimal::options::DecimalFormatterOptions::default()).ok()
}

/// As the language writes it, with a true minus: the hyphen of some languages' data breaks at the end of a line.
fn written(formatter: &DecimalFormatter, decimal: &Decimal) -> String {
    formatter.format(decimal).to_string().replace('-', "\u{2212}")
}

impl Locale {
    /// A number with so many decimals, as in `1.234,5`. What is no number is written as a dash.
    #[must_use]
    pub fn number(&self, value: f64, decimals: usize) -> String {
        if !value.is_finite() {
            return "\u{2013}".to_owned();
        }
        let plain = format!("{value:.decimals$}");
        // A rounded nothing has no sign.
        let plain = if plain.trim_start_matches('-').chars().all(|c| matches!(c, '0' | '.')) {
            plain.trim_start_matches('-').to_owned()
        } else {
            plain
        };
        match (plain.parse::<Decimal>(), DECIMALS.get(&self.language)) {
            (Ok(decimal), Some(formatter)) => written(formatter, &decimal),
            _ => plain,
        }
    }

    /// A share as whole per cent: 0.617 as `62%`, or as the language writes it.
    #[must_use]
    pub fn percent(&self, share: f64) -> String {
        say!(self, unit::percent, value = self.number(100.0 * share, 0))
    }

    /// A p value: three decimals, `p < 0.001` below that, never 0.000.
    #[must_use]
    pub fn p(&self, p: f64) -> String {
        if p < 0.001 { format!("p < {}", self.number(0.001, 3)) } else { format!("p = {}", self.number(p, 3)) }
    }

    /// Seconds that were measured: to one decimal under ten, else whole, so that those one below the other compare.
    #[must_use]
    pub fn seconds(&self, s: f64) -> String {
        say!(self, unit::seconds, value = self.in_seconds(s))
    }

    /// The same without the unit, where that stands in a heading.
    #[must_use]
    pub fn in_seconds(&self, s: f64) -> String {
        self.number(s, usize::from(s < 9.95))
    }

    /// Seconds that a person or a rule set, as they were set.
    #[must_use]
    pub fn set_seconds(&self, s: f64) -> String {
        say!(self, unit::seconds, value = self.number(s, usize::from(s.fract() != 0.0)))
    }

    /// `“a”, “b” and “c”`: words and things by their names, marked off, so that one with a comma or a blank in it is not read as two.
    #[must_use]
    pub fn names<T: AsRef<str>>(&self, names: &[T]) -> String {
        let quoted: Vec<String> = names.iter().map(|name| say!(self, act::quoted, word = name.as_ref())).collect();
        self.and(&quoted)
    }

    /// `a, b and c`.
    #[must_use]
    pub fn and<T: AsRef<str>>(&self, items: &[T]) -> String {
        self.list(items, ListFormatter::try_new_and)
    }

    /// `what: said`, with the space before the colon that a language puts there.
    #[must_use]
    pub fn colon(&self, what: &str, said: &str) -> String {
        say!(self, unit::colon, what = what, said = said)
    }

    /// `a; b; c`.
    #[must_use]
    pub fn apart<T: AsRef<str>>(&self, parts: &[T]) -> String {
        let parts: Vec<&str> = parts.iter().map(AsRef::as_ref).collect();
        parts.join(&say!(self, unit::apart))
    }

    /// `a, b or c`.
    #[must_use]
    pub fn or<T: AsRef<str>>(&self, items: &[T]) -> String {
        self.list(items, ListFormatter::try_new_or)
    }

    fn list<T: AsRef<str>, E>(
        &self,
        items: &[T],
        make: fn(icu_list::ListFormatterPreferences, ListFormatterOptions) -> Result<ListFormatter, E>,
    ) -> String {
        let texts = items.iter().map(AsRef::as_ref);
        // British, without a comma before "and", as the catalogue is written.
        let tag = if self.language == Language::En { "en-GB" } else { self.tag() };
        let formatter = tag.parse::<Tag>().ok().and_then(|tag| make(tag.into(), ListFormatterOptions::default()).ok());
        match formatter {
            Some(formatter) => formatter.format(texts).to_string(),
            None => texts.collect::<Vec<_>>().join(", "),
        }
    }
}

/// How a number inside a message is written.
struct Written(DecimalFormatter);

impl Memoizable for Written {
    type Args = ();
    type Error = ();
    fn construct(lang: LanguageIdentifier, (): ()) -> Result<Self, ()> {
        decimals(&lang.to_string()).map(Self).ok_or(())
    }
}

/// Writes the numbers among the arguments of a message.
pub(crate) fn in_message(value: &FluentValue<'_>, kept: &IntlLangMemoizer) -> Option<String> {
    let FluentValue::Number(FluentNumber { value, .. }) = value else { return None };
    let decimal: Decimal = value.to_string().parse().ok()?;
    kept.with_try_get::<Written, _, _>((), |written| self::written(&written.0, &decimal)).ok()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn seconds_have_one_decimal_under_ten_and_none_from_there_on() {
        let l = Locale::of(Language::De);
        let written = |s| l.seconds(s).replace('\u{a0}', " ");
        assert_eq!(
            [0.0, 1.0, 1.34, 9.94, 9.96, 15.2].map(written),
            ["0,0 s", "1,0 s", "1,3 s", "9,9 s", "10 s", "15 s"]
        );
        assert_eq!([10.0, 2.5].map(|s| l.set_seconds(s).replace('\u{a0}', " ")), ["10 s", "2,5 s"]);
    }

    #[test]
    fn names_are_marked_off_and_listed_as_the_language_lists() {
        let names = ["cheese, cube", "ball", "belly rub"];
        assert_eq!(Locale::ENGLISH.names(&names), "“cheese, cube”, “ball” and “belly rub”");
        assert_eq!(Locale::of(Language::De).names(&names), "„cheese, cube“, „ball“ und „belly rub“");
        assert_eq!(Locale::of(Language::Es).names(&["a", "b"]), "«a» y «b»");
        let (english, french) = (Locale::ENGLISH, Locale::of(Language::Fr));
        assert_eq!((english.colon("a", "b"), english.apart(&["a", "b"])), ("a: b".to_owned(), "a; b".to_owned()));
        assert_eq!(french.colon("a", "b"), "a\u{a0}: b");
        assert_eq!(french.apart(&["a", "b"]), "a\u{202f}; b");
    }

    #[test]
    fn less_than_nothing_has_a_true_minus_and_a_rounded_nothing_no_sign() {
        for l in Language::ALL.map(Locale::of) {
            assert_eq!(
                (l.number(-3.0, 0), l.number(-0.4, 0), l.number(0.0, 0)),
                ("\u{2212}3".into(), "0".into(), "0".into())
            );
            let said = say!(&l, today::food_left, left = l.number(-5.0, 0), of = 3);
            assert!(said.contains("\u{2212}5") && !said.contains('-'), "{said}");
        }
    }
}
