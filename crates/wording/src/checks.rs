//! Planned checks of understanding in words.

use crate::locale::Locale;
use crate::say;
use sayso_advisor::checks::Departure;
use sayso_model::ProbeDesign;

/// What the animal does in a check.
#[must_use]
pub fn design(l: &Locale, design: ProbeDesign) -> String {
    say!(l, checks::design, design = design.name())
}

/// Where a check was not carried out as planned, and what becomes of it.
#[must_use]
pub fn departure(l: &Locale, departure: Departure) -> String {
    match departure {
        Departure::TakenBack(n) => say!(l, checks::taken_back, trials = n),
        Departure::Changed(n) => say!(l, checks::changed, trials = n),
        Departure::Again(n) => say!(l, checks::again, trials = n),
        Departure::LeftOut(n) => say!(l, checks::left_out, trials = n),
        Departure::NotAsDrawn(n) => say!(l, checks::not_as_drawn, trials = n),
        Departure::Beyond(n) => say!(l, checks::beyond, trials = n),
        Departure::KnewAnswer(n) => say!(l, checks::knew_answer, trials = n),
        Departure::EarlierRule => say!(l, checks::earlier_rule),
        Departure::GivenUp => say!(l, checks::given_up),
    }
}
