//! Body language in words. The log holds the English text of a sign of the list, whatever the language of who noted it.

use crate::Locale;
use crate::hazards::of_fact;
use sayso_model::facts::{SignFact, known_sign};

/// A sign of the list, as it is seen.
#[must_use]
pub fn seen(l: &Locale, sign: &SignFact) -> String {
    of_fact(l, "signs-see", &sign.id, &sign.sign)
}

/// A sign as it was noted: one of the list in the reader's language, one in a person's own words as it stands.
#[must_use]
pub fn noted(l: &Locale, text: &str) -> String {
    known_sign(text).map_or_else(|| text.to_owned(), |sign| seen(l, sign))
}

/// What to do at a sign.
#[must_use]
pub fn act(l: &Locale, sign: &SignFact) -> String {
    of_fact(l, "signs-act", &sign.act_id, &sign.act)
}
