//! Short texts people type. Trimmed, bounded, without control characters.

use serde::{Deserialize, Serialize};
use std::fmt;

/// A text that is empty, too long, or holds control characters.
#[derive(Clone, PartialEq, Eq, Debug, thiserror::Error)]
#[non_exhaustive]
pub enum TextError {
    /// Nothing but blanks.
    #[error("must not be empty")]
    Empty,
    /// Longer than allowed.
    #[error("must have at most {most} characters, not {found}")]
    TooLong {
        /// Most characters allowed.
        most: usize,
        /// Characters found.
        found: usize,
    },
    /// A tab, newline or other control character where none may be.
    #[error("must not hold control characters such as tabs or line breaks")]
    Control,
}

fn checked(text: &str, most: usize, lines: bool) -> Result<String, TextError> {
    let text = text.trim();
    if text.is_empty() {
        return Err(TextError::Empty);
    }
    let found = text.chars().count();
    if found > most {
        return Err(TextError::TooLong { most, found });
    }
    if text.chars().any(|c| c.is_control() && !(lines && c == '\n')) {
        return Err(TextError::Control);
    }
    Ok(text.to_owned())
}

macro_rules! text {
    ($($(#[$doc:meta])* $name:ident, $most:literal, $lines:literal);+ $(;)?) => {$(
        $(#[$doc])*
        #[derive(Clone, PartialEq, Eq, PartialOrd, Ord, Hash, Debug, Serialize, Deserialize)]
        #[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
        #[cfg_attr(feature = "schema", schemars(with = "String"))]
        #[serde(try_from = "String", into = "String")]
        pub struct $name(String);

        impl $name {
            /// The most characters it may have.
            pub const MOST: usize = $most;

            /// The text, trimmed and checked.
            ///
            /// # Errors
            /// [`TextError`] where it is empty, too long or holds control characters.
            pub fn new(text: &str) -> Result<Self, TextError> {
                checked(text, $most, $lines).map(Self)
            }

            /// The text.
            #[must_use]
            pub fn as_str(&self) -> &str {
                &self.0
            }
        }

        impl TryFrom<String> for $name {
            type Error = TextError;
            fn try_from(text: String) -> Result<Self, TextError> {
                Self::new(&text)
            }
        }

        impl From<$name> for String {
            fn from(text: $name) -> String {
                text.0
            }
        }

        impl fmt::Display for $name {
            fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
                f.write_str(&self.0)
            }
        }
    )+};
}

text! {
    /// A name or label: one line, at most 60 characters.
    Label, 60, false;
    /// A remark: several lines, at most 2 000 characters.
    Note, 2_000, true;
}
