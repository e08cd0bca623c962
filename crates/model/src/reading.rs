//! How a person reads: the language, the clock and the unit of weight.

use borsh::{BorshDeserialize, BorshSerialize};
use serde::{Deserialize, Serialize};

/// A language that the catalogues know.
#[derive(
    Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug, Serialize, Deserialize, BorshSerialize, BorshDeserialize,
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum Language {
    /// English.
    En,
    /// Spanish.
    Es,
    /// German.
    De,
    /// French.
    Fr,
    /// Portuguese.
    Pt,
}

impl Language {
    /// Every language, in the order pages list them.
    pub const ALL: [Self; 5] = [Self::En, Self::Es, Self::De, Self::Fr, Self::Pt];

    /// The BCP 47 tag, as in `lang="de"`.
    #[must_use]
    pub const fn tag(self) -> &'static str {
        match self {
            Self::En => "en",
            Self::Es => "es",
            Self::De => "de",
            Self::Fr => "fr",
            Self::Pt => "pt",
        }
    }

    /// What its own speakers call it.
    #[must_use]
    pub const fn own_name(self) -> &'static str {
        match self {
            Self::En => "English",
            Self::Es => "Español",
            Self::De => "Deutsch",
            Self::Fr => "Français",
            Self::Pt => "Português",
        }
    }

    /// The language of a BCP 47 tag such as `pt-BR`; none where the catalogues do not know it.
    #[must_use]
    pub fn of_tag(tag: &str) -> Option<Self> {
        let first = tag.split(['-', '_', '.']).next().unwrap_or_default();
        Self::ALL.into_iter().find(|l| first.eq_ignore_ascii_case(l.tag()))
    }
}

/// How the time of day is written.
#[derive(
    Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug, Serialize, Deserialize, BorshSerialize, BorshDeserialize,
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum Clock {
    /// 00:00 to 23:59.
    Hours24,
    /// 12:00 am to 11:59 pm.
    Hours12,
}

/// The unit in which an animal's weight is written and typed.
#[derive(
    Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug, Serialize, Deserialize, BorshSerialize, BorshDeserialize,
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum WeightUnit {
    /// Kilograms.
    Kg,
    /// Pounds avoirdupois.
    Lb,
}

impl WeightUnit {
    /// Kilograms in one of it; the pound is exactly 0.45359237 kg (international agreement of 1959).
    #[must_use]
    pub const fn in_kg(self) -> f64 {
        match self {
            Self::Kg => 1.0,
            Self::Lb => 0.453_592_37,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_tag_is_known_by_its_language() {
        assert_eq!(Language::of_tag("pt-BR"), Some(Language::Pt));
        assert_eq!(Language::of_tag("DE"), Some(Language::De));
        assert_eq!(Language::of_tag("es_MX.UTF-8"), Some(Language::Es));
        assert_eq!(Language::of_tag("nl"), None);
        assert_eq!(Language::of_tag(""), None);
    }
}
