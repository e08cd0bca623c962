//! Short texts people type. Trimmed, bounded, without control characters; line breaks are `\n`, however they came.
//!
//! A text that stands in a log already is read as it was written. A new one must not hold characters that cannot be seen
//! or that turn the direction of what follows: two names that look alike must be alike.

use borsh::{BorshDeserialize, BorshSerialize, io};
use serde::{Deserialize, Serialize};
use std::borrow::Cow;
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
    /// A character that cannot be seen, or that turns the direction of the text after it.
    #[error("must not hold the character U+{:04X}, which cannot be seen or turns the text around it; type the text anew", *.0 as u32)]
    Hidden(char),
}

/// A text for comparing: lower case, accents folded, "ss" for "ß" and "oe" for "œ"; accents written apart from their letter
/// are dropped.
#[must_use]
pub fn unaccented(text: &str) -> String {
    let mut folded = String::with_capacity(text.len());
    for c in text.chars().flat_map(char::to_lowercase) {
        match c {
            'à' | 'á' | 'â' | 'ä' | 'ã' | 'å' => folded.push('a'),
            'ç' => folded.push('c'),
            'è' | 'é' | 'ê' | 'ë' => folded.push('e'),
            'ì' | 'í' | 'î' | 'ï' => folded.push('i'),
            'ñ' => folded.push('n'),
            'ò' | 'ó' | 'ô' | 'ö' | 'õ' | 'ø' => folded.push('o'),
            'ù' | 'ú' | 'û' | 'ü' => folded.push('u'),
            'ß' => folded.push_str("ss"),
            'œ' => folded.push_str("oe"),
            'æ' => folded.push_str("ae"),
            '\u{300}'..='\u{36f}' => {}
            other => folded.push(other),
        }
    }
    folded
}

/// Zero-width joiner and non-joiner: part of spelling in some scripts and of some emoji, between two of their signs.
const JOINERS: [char; 2] = ['\u{200C}', '\u{200D}'];

/// The first character of a line of text that cannot be seen or turns the direction of what follows (the controls of
/// UAX #9, zero-width and other characters without a shape). A joiner between two characters beyond ASCII is none.
#[must_use]
pub fn hidden_in_line(text: &str) -> Option<char> {
    let mut before = None;
    let mut rest = text.chars().peekable();
    while let Some(c) = rest.next() {
        let beyond = |c: Option<&char>| c.is_some_and(|c| !c.is_ascii() && !is_hidden(*c));
        if is_hidden(c) && !(JOINERS.contains(&c) && beyond(before.as_ref()) && beyond(rest.peek())) {
            return Some(c);
        }
        before = Some(c);
    }
    None
}

/// The first character of a longer text that turns the direction of all that follows (UAX #9: embeddings, overrides and
/// isolates). Marks that only belong to one place are left to whoever writes in both directions.
#[must_use]
pub fn turning_in_text(text: &str) -> Option<char> {
    text.chars().find(|c| matches!(c, '\u{202A}'..='\u{202E}' | '\u{2066}'..='\u{2069}'))
}

const fn is_hidden(c: char) -> bool {
    matches!(
        c,
        '\u{00AD}' | '\u{034F}' | '\u{061C}' | '\u{115F}' | '\u{1160}' | '\u{17B4}' | '\u{17B5}' | '\u{180B}'..='\u{180F}'
        | '\u{200B}'..='\u{200F}' | '\u{2028}'..='\u{202E}' | '\u{2060}'..='\u{206F}' | '\u{3164}' | '\u{FEFF}' | '\u{FFA0}'
        | '\u{FFF9}'..='\u{FFFB}' | '\u{E0000}'..='\u{E007F}'
    )
}

fn checked(text: &str, most: usize, lines: bool) -> Result<String, TextError> {
    let text = text.trim();
    // A form, a spreadsheet and some systems end lines with CR LF, old ones with CR.
    let text = if lines && text.contains('\r') {
        Cow::Owned(text.replace("\r\n", "\n").replace('\r', "\n"))
    } else {
        Cow::Borrowed(text)
    };
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
    Ok(text.into_owned())
}

macro_rules! text {
    ($($(#[$doc:meta])* $name:ident, $most:literal, $lines:literal, $hidden:ident);+ $(;)?) => {$(
        $(#[$doc])*
        #[derive(Clone, PartialEq, Eq, PartialOrd, Ord, Hash, Debug, Serialize, Deserialize)]
        #[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
        #[cfg_attr(feature = "schema", schemars(with = "String"))]
        #[serde(try_from = "String", into = "String")]
        pub struct $name(String);

        impl $name {
            /// The most characters it may have.
            pub const MOST: usize = $most;

            /// A new text, trimmed and checked.
            ///
            /// # Errors
            /// [`TextError`] where it is empty, too long or holds control or hidden characters.
            pub fn new(text: &str) -> Result<Self, TextError> {
                let text = checked(text, $most, $lines)?;
                match $hidden(&text) {
                    None => Ok(Self(text)),
                    Some(c) => Err(TextError::Hidden(c)),
                }
            }

            /// The text.
            #[must_use]
            pub fn as_str(&self) -> &str {
                &self.0
            }
        }

        impl TryFrom<String> for $name {
            type Error = TextError;
            // As it may stand in a log since before hidden characters were refused.
            fn try_from(text: String) -> Result<Self, TextError> {
                checked(&text, $most, $lines).map(Self)
            }
        }

        impl From<$name> for String {
            fn from(text: $name) -> String {
                text.0
            }
        }

        impl BorshSerialize for $name {
            fn serialize<W: io::Write>(&self, to: &mut W) -> io::Result<()> {
                BorshSerialize::serialize(&self.0, to)
            }
        }

        impl BorshDeserialize for $name {
            fn deserialize_reader<R: io::Read>(from: &mut R) -> io::Result<Self> {
                let text = String::deserialize_reader(from)?;
                Self::try_from(text).map_err(|e| io::Error::new(io::ErrorKind::InvalidData, e))
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
    Label, 60, false, hidden_in_line;
    /// A remark: several lines, at most 2 000 characters.
    Note, 2_000, true, turning_in_text;
    /// What two people write to each other: several lines, at most 500 characters.
    ShortNote, 500, true, turning_in_text;
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;

    #[test]
    fn line_breaks_of_any_system_are_one() {
        assert_eq!(Note::new("a\r\nb\rc\nd").unwrap().as_str(), "a\nb\nc\nd");
        assert_eq!(serde_json::from_str::<Note>("\"a\\r\\nb\"").unwrap().as_str(), "a\nb");
        assert_eq!(Label::new("a\r\nb"), Err(TextError::Control));
    }

    #[test]
    fn a_new_name_holds_nothing_that_cannot_be_seen() {
        for bad in [
            "Ta\u{200B}rn",
            "Tarn\u{202E}x",
            "a\u{2066}b",
            "\u{FEFF}Tarn",
            "Ta\u{AD}rn",
            "a\u{200D}b",
            "\u{200D}",
            "x\u{E0041}",
        ] {
            assert!(matches!(Label::new(bad), Err(TextError::Hidden(_) | TextError::Empty)), "{bad:?}");
            // One that is stored already is still read.
            let json = serde_json::to_string(bad).unwrap();
            assert_eq!(serde_json::from_str::<Label>(&json).unwrap().as_str(), bad.trim());
        }
        // Spelling and emoji: Persian with a non-joiner, a family, a heart in colour, an accent written apart.
        for good in ["می\u{200C}خواهم", "👩\u{200D}👧", "❤\u{FE0F}", "e\u{301}", "日本"] {
            assert_eq!(Label::new(good).unwrap().as_str(), good);
        }
        let told = Label::new("Ta\u{200B}rn").unwrap_err().to_string();
        assert!(told.contains("U+200B"), "{told}");
    }

    #[test]
    fn a_remark_may_mark_directions_but_not_turn_what_follows() {
        assert!(Note::new("שלום\u{200F} ok").is_ok());
        assert_eq!(Note::new("a\u{202E}b"), Err(TextError::Hidden('\u{202E}')));
    }
}
