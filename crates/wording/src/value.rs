//! What stands in the places of a message.

use fluent_bundle::FluentValue;
use std::borrow::Cow;

/// An argument of a message: a text as it stands, or a whole number, which also decides plurals.
#[derive(Clone, Debug, PartialEq)]
pub enum Value<'a> {
    /// A text.
    Text(Cow<'a, str>),
    /// A number. One with decimals is better written by [`crate::Locale::number`] and given as a text.
    Number(f64),
}

impl Value<'_> {
    pub(crate) fn to_fluent(&self) -> FluentValue<'_> {
        match self {
            Self::Text(text) => FluentValue::String(Cow::Borrowed(text)),
            Self::Number(number) => FluentValue::from(*number),
        }
    }
}

impl<'a> From<&'a str> for Value<'a> {
    fn from(text: &'a str) -> Self {
        Self::Text(Cow::Borrowed(text))
    }
}

impl From<String> for Value<'_> {
    fn from(text: String) -> Self {
        Self::Text(Cow::Owned(text))
    }
}

impl<'a> From<&'a String> for Value<'a> {
    fn from(text: &'a String) -> Self {
        Self::Text(Cow::Borrowed(text))
    }
}

macro_rules! whole {
    ($($of:ty),*) => { $(
        impl From<$of> for Value<'_> {
            // Counts of a notebook lie far below 2^53.
            #[allow(clippy::cast_precision_loss, clippy::cast_lossless)]
            fn from(number: $of) -> Self {
                Self::Number(number as f64)
            }
        }
    )* };
}
whole!(u8, u16, u32, u64, usize, i32, i64, f64);

impl<'a> From<&'a sayso_model::Label> for Value<'a> {
    fn from(label: &'a sayso_model::Label) -> Self {
        Self::from(label.as_str())
    }
}

impl<'a> From<&'a sayso_model::Note> for Value<'a> {
    fn from(note: &'a sayso_model::Note) -> Self {
        Self::from(note.as_str())
    }
}
