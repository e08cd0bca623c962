//! How alike two labels sound, in words.

use crate::locale::Locale;
use crate::say;
use sayso_methods::words::{Heard, Likeness};

/// One sentence part without a full stop: both labels, how many of their sounds differ, and whether that was guessed.
///
/// ```
/// use sayso_methods::words::{AlikeRule, alike};
/// use sayso_model::Language;
/// use sayso_wording::{Locale, sounds::likeness};
/// let found = alike("walk", "talk", Language::En, AlikeRule::default());
/// assert_eq!(likeness(&Locale::of(Language::En), &found), "walk / talk: 1 of 3 sounds differs");
/// ```
#[must_use]
pub fn likeness(locale: &Locale, found: &Likeness) -> String {
    let (a, b) = (found.a.as_str(), found.b.as_str());
    let read = if found.guessed { "guessed" } else { "known" };
    match found.heard {
        Heard::Nothing => say!(locale, sounds::nothing, a = a, b = b),
        Heard::Same => say!(locale, sounds::same, a = a, b = b, read = read),
        Heard::Differ { edits, of } if found.made_alike => {
            let apart = locale.number(found.apart, 2);
            say!(locale, sounds::made_alike, a = a, b = b, edits = edits, of = of, apart = apart, read = read)
        }
        Heard::Differ { edits, of } => say!(locale, sounds::differ, a = a, b = b, edits = edits, of = of, read = read),
    }
}
