//! What is wrong with a field of a form or an event.

use crate::locale::Locale;
use crate::message::{Message, Words};
use crate::say;
use sayso_model::text::TextError;
use sayso_model::time::TimeError;
use sayso_model::units::OutOfRange;
use sayso_model::{Fault, TooLate};

/// A number as a field takes it: no thousands marked, the language's own sign before decimals.
fn plain(locale: &Locale, x: f64) -> String {
    let sign = locale.number(0.5, 1).chars().nth(1).unwrap_or('.');
    x.to_string().replace('.', &sign.to_string())
}

/// The name of a field, by what programs call it, such as `body.weight_kg` or `says-3`.
#[must_use]
pub fn field(locale: &Locale, name: &str) -> String {
    let name = name.strip_prefix("body.").unwrap_or(name);
    // What follows tells apart the fields of a list, often by an id that nobody reads.
    let name = name.split('-').next().unwrap_or(name);
    let mut words = name.replace('_', " ");
    if let Some(first) = words.get_mut(0..1) {
        first.make_ascii_uppercase();
    }
    say!(locale, faults::field, field = name, plain = words)
}

/// What is wrong, with the name of its field: a whole sentence.
#[must_use]
pub fn at(locale: &Locale, name: &str, what: &Words) -> String {
    say!(locale, faults::at, field = field(locale, name), what = what.say(locale))
}

impl Message for TextError {
    fn say(&self, locale: &Locale) -> String {
        match self {
            Self::Empty => say!(locale, faults::empty),
            Self::TooLong { most, found } => {
                say!(locale, faults::too_long, most = most.to_string(), found = found.to_string())
            }
            Self::Control => say!(locale, faults::control),
            Self::Hidden(c) => say!(locale, faults::hidden, code = format!("U+{:04X}", u32::from(*c))),
            // One of a later version of the model, in English.
            other => other.to_string(),
        }
    }
}

impl Message for OutOfRange {
    fn say(&self, locale: &Locale) -> String {
        let number = |x| plain(locale, x);
        say!(
            locale,
            faults::quantity,
            unit = self.unit,
            low = number(self.low),
            high = number(self.high),
            found = number(self.found)
        )
    }
}

impl Message for TimeError {
    fn say(&self, locale: &Locale) -> String {
        match self {
            Self::NotATime(text) => say!(locale, faults::not_a_time, text = text),
            Self::OutOfRange(text) => say!(locale, faults::time_out_of_range, text = text),
            Self::NotAZone(text) => say!(locale, faults::not_a_zone, text = text),
            Self::NotADay(text) => say!(locale, faults::not_a_day, text = text),
            // One of a later version of the model, in English.
            other => other.to_string(),
        }
    }
}

impl Message for TooLate {
    fn say(&self, locale: &Locale) -> String {
        match self {
            Self::Card(at) => say!(locale, faults::late_card, moment = at.to_string()),
            Self::Amendment(at) => say!(locale, faults::late_amendment, moment = at.to_string()),
        }
    }
}

impl Message for Fault {
    fn say(&self, l: &Locale) -> String {
        let number = |x: f64| plain(l, x);
        match self {
            Self::NoAnimal => say!(l, faults::no_animal),
            Self::Range { low, high, found } => {
                say!(l, faults::range, low = low.to_string(), high = high.to_string(), found = found.to_string())
            }
            Self::TooFew { least, found } => {
                say!(l, faults::too_few, least = least.to_string(), found = found.to_string())
            }
            Self::HowMany { low, high, found } => {
                say!(l, faults::name, low = low.to_string(), high = high.to_string(), found = found.to_string())
            }
            Self::Seconds { low, high, found } => {
                say!(l, faults::seconds, low = number(*low), high = number(*high), found = number(*found))
            }
            Self::Twice => say!(l, faults::twice),
            Self::AmendsAmendment => say!(l, faults::amends_amendment),
            Self::NotAlternative => say!(l, faults::not_alternative),
            Self::NotPressedAgain => say!(l, faults::not_pressed_again),
            Self::NotBetweenTwo => say!(l, faults::not_between_two),
            Self::SameWord => say!(l, faults::same_word),
            Self::AfterTheWait { wait_s } => say!(l, faults::after_the_wait, seconds = number(*wait_s)),
            Self::NoFood => say!(l, faults::no_food),
            Self::LabelOfOther => say!(l, faults::label_of_other),
            Self::NotByWord(measure) => say!(l, faults::not_by_word, measure = measure.name()),
            Self::OnlyOverAnimals => say!(l, faults::only_over_animals),
            Self::CriterionForPeople => say!(l, faults::criterion_for_people),
            Self::CriterionAPhase { found } => say!(l, faults::criterion_a_phase, found = found.to_string()),
            Self::OnlyWithCriterion => say!(l, faults::only_with_criterion),
            Self::NotOffered => say!(l, faults::not_offered),
            Self::FreeByTime => say!(l, faults::free_by_time),
            Self::OnlyFree => say!(l, faults::only_free),
            Self::OfferedOnce => say!(l, faults::offered_once),
            Self::LongerThanObserved { observed_s } => {
                say!(l, faults::longer_than_observed, seconds = number(*observed_s))
            }
            Self::SwapsOneIn { low, high, found } => {
                say!(l, faults::swaps_one_in, low = low.to_string(), high = high.to_string(), found = found.to_string())
            }
            Self::RewardShare { most } => say!(l, faults::reward_share, most = number(*most)),
            Self::StageOfOther { stage, species } => {
                say!(l, faults::stage_of_other, stage = stage.name(), species = species.name())
            }
            Self::GrownLessThanNow { grown, now } => {
                say!(l, faults::grown_less_than_now, grown = number(*grown), now = number(*now))
            }
            Self::NoEnergy => say!(l, faults::no_energy),
            Self::OnlyFood => say!(l, faults::only_food),
            Self::NotAHash => say!(l, faults::not_a_hash),
            Self::OffBoard { row, column } => {
                say!(l, faults::off_board, row = row.to_string(), column = column.to_string())
            }
            Self::PlaceTwice { row, column } => {
                say!(l, faults::place_twice, row = row.to_string(), column = column.to_string())
            }
            Self::TwoPlaces => say!(l, faults::two_places),
            Self::IdTaken => say!(l, faults::id_taken),
            Self::Text(why) => Message::say(why, l),
            Self::Quantity(why) => Message::say(why, l),
            Self::Time(why) => Message::say(why, l),
            Self::Late(why) => Message::say(why, l),
            Self::Said(what) => what.clone(),
        }
    }
}
