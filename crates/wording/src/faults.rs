//! What is wrong with a field of a form or an event.

use crate::locale::Locale;
use crate::message::{Worded, Words};
use crate::{say, words};
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

impl Worded for TextError {
    fn words(&self, _: &Locale) -> Words {
        match self {
            Self::Empty => words!(faults::empty),
            Self::TooLong { most, found } => {
                words!(faults::too_long, most = most.to_string(), found = found.to_string())
            }
            Self::Control => words!(faults::control),
            Self::Hidden(c) => words!(faults::hidden, code = format!("U+{:04X}", u32::from(*c))),
            // One of a later version of the model, in English.
            other => other.to_string().into(),
        }
    }
}

impl Worded for OutOfRange {
    fn words(&self, locale: &Locale) -> Words {
        let number = |x| plain(locale, x);
        words!(
            faults::quantity,
            unit = self.unit,
            low = number(self.low),
            high = number(self.high),
            found = number(self.found)
        )
    }
}

impl Worded for TimeError {
    fn words(&self, _: &Locale) -> Words {
        match self {
            Self::NotATime(text) => words!(faults::not_a_time, text = text.clone()),
            Self::OutOfRange(text) => words!(faults::time_out_of_range, text = text.clone()),
            Self::NotAZone(text) => words!(faults::not_a_zone, text = text.clone()),
            Self::NotADay(text) => words!(faults::not_a_day, text = text.clone()),
            // One of a later version of the model, in English.
            other => other.to_string().into(),
        }
    }
}

impl Worded for TooLate {
    fn words(&self, _: &Locale) -> Words {
        match self {
            Self::Card(at) => words!(faults::late_card, moment = at.to_string()),
            Self::Amendment(at) => words!(faults::late_amendment, moment = at.to_string()),
        }
    }
}

impl Worded for Fault {
    fn words(&self, l: &Locale) -> Words {
        let number = |x: f64| plain(l, x);
        match self {
            Self::NotYourHome => words!(faults::not_your_home),
            Self::NotYourRole => words!(faults::not_your_role),
            Self::OnItsPage => words!(faults::on_its_page),
            Self::InvitesClosing => words!(faults::invites_closing),
            Self::NotYourAccount => words!(faults::not_your_account),
            Self::NotYourDay => words!(faults::not_your_day),
            Self::NoAnimal => words!(faults::no_animal),
            Self::Range { low, high, found } => {
                words!(faults::range, low = low.to_string(), high = high.to_string(), found = found.to_string())
            }
            Self::TooFew { least, found } => {
                words!(faults::too_few, least = least.to_string(), found = found.to_string())
            }
            Self::HowMany { low, high, found } => {
                words!(faults::name, low = low.to_string(), high = high.to_string(), found = found.to_string())
            }
            Self::Seconds { low, high, found } => {
                words!(faults::seconds, low = number(*low), high = number(*high), found = number(*found))
            }
            Self::Twice => words!(faults::twice),
            Self::AmendsAmendment => words!(faults::amends_amendment),
            Self::NotAlternative => words!(faults::not_alternative),
            Self::NotPressedAgain => words!(faults::not_pressed_again),
            Self::NotBetweenTwo => words!(faults::not_between_two),
            Self::SameWord => words!(faults::same_word),
            Self::AfterTheWait { wait_s } => words!(faults::after_the_wait, seconds = number(*wait_s)),
            Self::NoFood => words!(faults::no_food),
            Self::EndsFirst => words!(faults::ends_first),
            Self::OwnSuccessor => words!(faults::own_successor),
            Self::LabelOfOther => words!(faults::label_of_other),
            Self::NotByWord(measure) => words!(faults::not_by_word, measure = measure.name()),
            Self::OnlyOverAnimals => words!(faults::only_over_animals),
            Self::CriterionForPeople => words!(faults::criterion_for_people),
            Self::CriterionAPhase { found } => words!(faults::criterion_a_phase, found = found.to_string()),
            Self::OnlyWithCriterion => words!(faults::only_with_criterion),
            Self::NotOffered => words!(faults::not_offered),
            Self::FreeByTime => words!(faults::free_by_time),
            Self::OnlyFree => words!(faults::only_free),
            Self::OfferedOnce => words!(faults::offered_once),
            Self::LongerThanObserved { observed_s } => {
                words!(faults::longer_than_observed, seconds = number(*observed_s))
            }
            Self::SwapsOneIn { low, high, found } => {
                words!(faults::swaps_one_in, low = low.to_string(), high = high.to_string(), found = found.to_string())
            }
            Self::RewardShare { most } => words!(faults::reward_share, most = number(*most)),
            Self::StageOfOther { stage, species } => {
                words!(faults::stage_of_other, stage = stage.name(), species = species.name())
            }
            Self::GrownLessThanNow { grown, now } => {
                words!(faults::grown_less_than_now, grown = number(*grown), now = number(*now))
            }
            Self::NoEnergy => words!(faults::no_energy),
            Self::OnlyFood => words!(faults::only_food),
            Self::NotAHash => words!(faults::not_a_hash),
            Self::OffBoard { row, column } => {
                words!(faults::off_board, row = row.to_string(), column = column.to_string())
            }
            Self::PlaceTwice { row, column } => {
                words!(faults::place_twice, row = row.to_string(), column = column.to_string())
            }
            Self::TwoPlaces => words!(faults::two_places),
            Self::IdTaken => words!(faults::id_taken),
            Self::Text(why) => why.words(l),
            Self::Quantity(why) => why.words(l),
            Self::Time(why) => why.words(l),
            Self::Late(why) => why.words(l),
            Self::OtherHome(home) => words!(faults::away_home, home = home.to_string()),
            Self::TooLong { bytes, most } => {
                words!(faults::too_many_bytes, bytes = bytes.to_string(), most = most.to_string())
            }
            Self::NotWritten => words!(faults::not_written),
        }
    }
}
