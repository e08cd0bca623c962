//! Entries of a calendar, in words.

use crate::locale::Locale;
use crate::say;
use crate::talk::line;
use sayso_advisor::calendar::{Entry, What};
use sayso_model::Story;

/// What an entry is called.
#[must_use]
pub fn title(locale: &Locale, story: &Story, entry: &Entry<'_>) -> String {
    let animal = entry.animal.map_or_else(String::new, |card| card.name.to_string());
    match &entry.what {
        What::Meeting { from, .. } => {
            let home = crate::events::home_name(locale, story);
            say!(locale, calendar::meeting, name = &from.name, home = home)
        }
        What::Plan { lines, .. } => {
            let lines: Vec<String> = lines.iter().map(|one| line(locale, story, one)).collect();
            say!(locale, calendar::plan, name = animal, lines = locale.apart(&lines))
        }
        What::GoOnWithCheck { done, of, .. } => {
            say!(locale, calendar::go_on, name = animal, done = *done, of = *of)
        }
        What::PlanCheck { word, .. } => say!(locale, calendar::plan_check, name = animal, word = &word.says),
    }
}

/// What is said under it, a paragraph each.
#[must_use]
pub fn told(locale: &Locale, entry: &Entry<'_>) -> Vec<String> {
    let gladly = || {
        let name = entry.animal.map_or_else(String::new, |card| card.name.to_string());
        [say!(locale, calendar::gladly, name = name), say!(locale, talk::not_a_vet)]
    };
    match &entry.what {
        What::Meeting { text, agreed, .. } => {
            let waits = (!agreed).then(|| say!(locale, calendar::waits));
            waits.into_iter().chain(text.map(ToString::to_string)).collect()
        }
        What::Plan { from, .. } => {
            let whose = match from {
                Some(from) => say!(locale, calendar::plan_from, name = &from.name),
                None => say!(locale, talk::own_of_home),
            };
            [whose].into_iter().chain(gladly()).collect()
        }
        What::GoOnWithCheck { .. } | What::PlanCheck { .. } => gladly().into_iter().collect(),
    }
}
