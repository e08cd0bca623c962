//! Planned checks of understanding in words.

use crate::locale::Locale;
use crate::say;
use sayso_advisor::checks::Departure;
use sayso_model::{ProbeDesign, ProbePlan};

/// What the animal does in a check.
#[must_use]
pub fn design(l: &Locale, design: ProbeDesign) -> String {
    say!(l, checks::design, design = design.name())
}

/// What a place is called: a place on the floor or under the covers, or a button that stays where it is.
#[must_use]
pub fn place(l: &Locale, design: ProbeDesign, number: usize) -> String {
    let kind = match design {
        ProbeDesign::PickForWord | ProbeDesign::PressUnderCovers => "place",
        ProbeDesign::PressForThing | ProbeDesign::WrongDelivery => "button",
    };
    say!(l, checks::place, kind = kind, number = number)
}

/// Somebody at a check.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Role {
    /// Who.
    pub who: String,
    /// What they may know.
    pub knows: String,
    /// What they do.
    pub does: String,
}

/// Who does what in a check, and who may know what: setter, presenter, scorer.
#[must_use]
pub fn roles(l: &Locale, name: &str, plan: &ProbePlan) -> [Role; 3] {
    let (setter, presenter) = match plan.design {
        ProbeDesign::PickForWord => {
            (say!(l, checks::setter_picks, name = name), say!(l, checks::presenter_picks, name = name))
        }
        ProbeDesign::PressUnderCovers => {
            (say!(l, checks::setter_covers, name = name), say!(l, checks::presenter_covers))
        }
        ProbeDesign::PressForThing | ProbeDesign::WrongDelivery => {
            (say!(l, checks::setter_shows, name = name), say!(l, checks::presenter_stands))
        }
    };
    let not = || say!(l, checks::must_not_know);
    let beside = if plan.blind { not() } else { say!(l, checks::presenter_knows) };
    [
        Role { who: say!(l, checks::setter), knows: say!(l, checks::setter_knows), does: setter },
        Role { who: say!(l, checks::presenter), knows: beside, does: presenter },
        Role { who: say!(l, checks::scorer), knows: not(), does: say!(l, checks::scorer_notes) },
    ]
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
