//! Settings in which a word is compared, in words.

use crate::locale::Locale;
use crate::say;
use sayso_advisor::generalise::{Compares, Which};

/// What is compared.
#[must_use]
pub fn compares(l: &Locale, what: Compares) -> String {
    let what = match what {
        Compares::Person => "person",
        Compares::Room => "room",
        Compares::Time => "time",
        Compares::Place => "place",
        Compares::Recording => "recording",
        Compares::Chooser => "chooser",
        Compares::Checks => "checks",
    };
    say!(l, generalise::compares, what = what)
}

/// Which of it.
#[must_use]
pub fn which(l: &Locale, which: &Which) -> String {
    match which {
        Which::Named(name) => name.clone(),
        Which::FirstWeeks => say!(l, generalise::first_weeks),
        Which::NextWeeks => say!(l, generalise::next_weeks),
        Which::Later => say!(l, generalise::later),
        Which::AfterMove => say!(l, generalise::after_move),
        Which::AfterRecording => say!(l, generalise::after_recording),
        Which::Otherwise => say!(l, generalise::otherwise),
        Which::Drawn => say!(l, generalise::drawn),
        Which::Chosen => say!(l, generalise::chosen),
        Which::Blind => say!(l, generalise::blind),
        Which::Open => say!(l, generalise::open),
    }
}
