//! What is told before a meeting, in words.

use crate::locale::Locale;
use crate::say;
use sayso_advisor::meeting::{Measure, New};

/// Something new, in a line.
#[must_use]
pub fn new(locale: &Locale, new: &New) -> String {
    match new {
        New::Word { word } => say!(locale, meeting::new_word, word = &word.says),
        New::Stage { word, to } => {
            let stage = crate::advice::stage_name(locale, *to);
            say!(locale, meeting::new_stage, word = &word.says, stage = stage)
        }
        New::FirstPress { word, day } => {
            say!(locale, meeting::first_press, word = &word.says, day = locale.date(*day))
        }
        New::Likes { day } => say!(locale, meeting::likes_test, day = locale.date(*day)),
        New::Check { words, day } => {
            let words: Vec<&str> = words.iter().map(|word| word.says.as_str()).collect();
            say!(locale, meeting::check, words = locale.and(&words), day = locale.date(*day))
        }
    }
}

/// What a figure is of.
#[must_use]
pub fn measure(locale: &Locale, measure: Measure) -> String {
    say!(locale, meeting::measure, measure = measure.name())
}
