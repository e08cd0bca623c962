//! How a home is called where several are: two of one name are told apart.

use sayso_model::{Day, HomeCard, HomeId, Moment, Story};
use sayso_wording::events::home_name;
use sayso_wording::{Locale, say};
use std::collections::BTreeMap;
use std::sync::Arc;

/// Characters of an id's end: enough to tell the few of a notebook apart, and short enough to compare by eye.
const TAIL: usize = 8;

/// The end of an id.
#[must_use]
pub fn tail(id: HomeId) -> String {
    let whole = id.to_string();
    whole.get(whole.len().saturating_sub(TAIL)..).unwrap_or(&whole).to_owned()
}

/// What each of several homes is called where they stand together: its name, and where another has the same,
/// also the end of its id and its first day.
#[must_use]
pub fn labels(l: &Locale, all: &[(HomeId, Arc<Story>)]) -> BTreeMap<HomeId, String> {
    let name_of = |story: &Story| home_name(l, story);
    let label = |(id, story): &(HomeId, Arc<Story>)| {
        let name = name_of(story);
        if !all.iter().any(|(other, s)| other != id && name_of(s) == name) {
            return name;
        }
        match first_day(story) {
            Some(day) => say!(l, homes::tail_since, name = name, tail = tail(*id), day = l.date(day)),
            None => format!("{name} (\u{2026}{})", tail(*id)),
        }
    };
    all.iter().map(|one| (one.0, label(one))).collect()
}

/// The day of the first that is told of the home or of one of its animals.
fn first_day(story: &Story) -> Option<Day> {
    let (from, to) = (Moment::clamped(i64::MIN), Moment::clamped(i64::MAX));
    let animals = story.animals().into_keys().filter_map(|animal| story.all_between(animal, from, to).next());
    let own = story.everyones_between::<HomeCard>(from, to).map(|fact| fact.event);
    animals.chain(own).map(|event| event.happened_at).min().map(|at| at.day(&story.zone()))
}
