//! When, by whom and how an event was noted, in words.

use crate::page::AnimalPage;
use sayso_model::{Event, Moment, Source, Zone};
use sayso_wording::say;

/// The address of an event in an animal's log.
#[must_use]
pub fn address(animal: sayso_model::AnimalId, event: sayso_model::EventId) -> String {
    format!("/a/{animal}/log?event={event}#e{event}")
}

pub fn when(page: &AnimalPage, at: Moment) -> String {
    let day = page.locale.day_near(at.day(&page.zone), page.now.day(&page.zone));
    say!(&page.locale, log::when, day = day, time = page.locale.time_seconds(at, &page.zone))
}

/// The clock at a moment, to the second, as a form's field holds it.
pub fn clock(at: Moment, zone: &Zone) -> String {
    let local = at.local(zone);
    format!("{:02}:{:02}:{:02}", local.hour(), local.minute(), local.second())
}

/// Who noted it, or `none`, which a message leaves out.
pub fn who(page: &AnimalPage, event: &Event) -> String {
    let card = event.person.and_then(|t| page.story.people().get(&t).copied());
    card.map_or_else(|| "none".to_owned(), |c| c.name.to_string())
}

/// How it was noted, as a message chooses by.
pub const fn how(source: Source) -> &'static str {
    match source {
        Source::Tap => "tap",
        Source::Heard => "heard",
        Source::Device => "device",
        Source::Import => "import",
    }
}
