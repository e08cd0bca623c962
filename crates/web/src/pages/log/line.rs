//! When, by whom and how an event was noted, in words.

use crate::page::AnimalPage;
use sayso_model::{Event, Moment, Source, Zone};

pub fn when(page: &AnimalPage, at: Moment) -> String {
    format!("{} {}", at.day(&page.zone), clock(at, &page.zone))
}

/// The clock at a moment, to the second.
pub fn clock(at: Moment, zone: &Zone) -> String {
    let local = at.local(zone);
    format!("{:02}:{:02}:{:02}", local.hour(), local.minute(), local.second())
}

pub fn who(page: &AnimalPage, event: &Event) -> String {
    event.person.and_then(|t| page.story.people().get(&t).map(|c| format!(" \u{b7} {}", c.name))).unwrap_or_default()
}

pub const fn how(source: Source) -> &'static str {
    match source {
        Source::Tap => "",
        Source::Heard => " \u{b7} heard",
        Source::Device => " \u{b7} from a device",
        Source::Import => " \u{b7} imported",
    }
}
