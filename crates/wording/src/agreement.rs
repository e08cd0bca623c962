//! Agreement of two people in words.

use crate::figures::told;
use crate::locale::Locale;
use crate::message::Message;
use crate::say;
use sayso_advisor::agreement::{Agreement, Beyond, FEW, Figure, Lacking, NoScale, ScoresError};

/// How far people agree, in one plain sentence.
#[must_use]
pub fn sentence(locale: &Locale, a: &Agreement) -> String {
    if a.shared == 0 {
        return say!(locale, agreement::sentence_nothing);
    }
    let beyond = match a.beyond {
        Beyond::Well => "well",
        Beyond::TooLittle => "little",
        Beyond::Some => "some",
        Beyond::Chance => "chance",
        Beyond::NotJudged => "not",
    };
    let alike = a.alike.map_or_else(|| "none".to_owned(), |e| told(locale, &e));
    say!(locale, agreement::sentence, alike = alike, beyond = beyond)
}

/// Kappa or alpha with its interval and count, and what it lacks.
#[must_use]
pub fn figure(locale: &Locale, f: &Figure) -> String {
    let (e, two) = (&f.estimate, |x: f64| locale.number(x, 2));
    let told = match (e.value, e.low, e.high) {
        (Some(v), Some(low), Some(high)) => {
            say!(locale, figures::with_interval, value = two(v), low = two(low), high = two(high), n = e.n)
        }
        (Some(v), ..) => say!(locale, agreement::no_interval, value = two(v), n = e.n),
        (None, ..) => say!(locale, agreement::none, n = e.n),
    };
    let why = match &f.lacking {
        None => return told,
        Some(Lacking::Few) => say!(locale, agreement::few, least = FEW),
        Some(Lacking::Why(why)) => why.say(locale),
    };
    say!(locale, agreement::lacking, figure = told, why = why)
}

impl Message for NoScale {
    fn say(&self, l: &Locale) -> String {
        say!(l, faults::one_of, names = "names, steps, numbers")
    }
}

/// What the person in a column is called where nobody named them: by their number, from 1.
#[must_use]
pub fn person(l: &Locale, number: usize) -> String {
    say!(l, agreement::person, number = number)
}

/// Why scores cannot be read.
#[must_use]
pub fn wrong(locale: &Locale, error: &ScoresError) -> String {
    match error {
        ScoresError::Empty => say!(locale, agreement::wrong_empty),
        ScoresError::Ragged { line, got, first, wanted } => {
            say!(locale, agreement::wrong_ragged, line = *line, got = *got, first = *first, wanted = *wanted)
        }
        ScoresError::People(n) => say!(locale, agreement::wrong_people, n = *n),
        ScoresError::TooLong => say!(locale, agreement::wrong_long),
        ScoresError::NoNumber { line, person, got } => {
            say!(locale, agreement::wrong_number, line = *line, person = person, got = got)
        }
        ScoresError::TooManyNames => say!(locale, agreement::wrong_names),
        other => other.to_string(),
    }
}
