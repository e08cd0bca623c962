//! Entries as iCalendar (RFC 5545): text in, text out.
//!
//! Meetings are moments, written in UTC, which every program shows in its reader's zone; days of plans are days of the home,
//! without a zone. A plan that says three times a day stands there once a day: hours nobody agreed on are not made up.

use crate::links;
use icalendar::{Calendar, Component, Event, Property};
use sayso_advisor::calendar::{Entry, What};
use sayso_model::{Day, HomeId, Moment, Story};
use sayso_wording::calendar::{title, told};
use sayso_wording::events::home_name;
use sayso_wording::{Locale, say};
use url::Url;

/// Written as the standard asks for names of programs.
const PROGRAM: &str = "-//Sayso//Calendar//EN";
/// How often it is worth reading anew.
const READ_EVERY: &str = "PT4H";

/// An entry of a home.
pub struct Told<'a> {
    /// The home's story.
    pub story: &'a Story,
    /// The entry.
    pub entry: Entry<'a>,
    /// The home, where the calendar is one of several homes.
    pub home: Option<HomeId>,
}

/// Entries as a file of that name.
#[must_use]
pub fn file(l: &Locale, name: &str, entries: &[Told<'_>], url: &Url) -> String {
    let name = plain(name);
    let text = |key: &str, value: &str| Property::new(key, value).add_parameter("VALUE", "TEXT").done();
    let mut all = Calendar::empty();
    all.append_property(("VERSION", "2.0"))
        .append_property(("PRODID", PROGRAM))
        .append_property(("CALSCALE", "GREGORIAN"))
        .append_property(("METHOD", "PUBLISH"))
        .append_property(text("NAME", &name))
        .append_property(("X-WR-CALNAME", name.as_str()))
        .append_property(Property::new("REFRESH-INTERVAL", READ_EVERY).add_parameter("VALUE", "DURATION").done())
        .append_property(("X-PUBLISHED-TTL", READ_EVERY));
    for told in entries {
        all.push(event(l, told, url));
    }
    all.to_string()
}

fn event(l: &Locale, Told { story, entry, home }: &Told<'_>, url: &Url) -> Event {
    let mut event = Event::new();
    let host = url.host_str().unwrap_or("localhost");
    event
        .append_property(("UID", format!("{}@{host}", entry.id).as_str()))
        .append_property(("DTSTAMP", utc(entry.since).as_str()))
        .append_property(("CLASS", "PRIVATE"))
        .append_property(("SUMMARY", plain(&title(l, story, entry)).as_str()));
    let of = home.map(|_| say!(l, calendar::of_home, home = home_name(l, story)));
    let lines: Vec<String> = of.into_iter().chain(told(l, entry)).collect();
    if !lines.is_empty() {
        event.append_property(("DESCRIPTION", plain(&lines.join("\n")).as_str()));
    }
    // Nothing but an id stands in the address; who opens it signs in.
    let page = entry.animal.map_or_else(|| "talk".to_owned(), |card| format!("a/{}/today", card.animal));
    let page = home.map_or_else(|| page.clone(), |home| format!("{page}?home={home}"));
    event.append_property(("URL", links::page(url, &page).as_str()));
    match &entry.what {
        What::Meeting { starts_at, minutes, agreed, .. } => {
            let ends_at = starts_at.plus_seconds(60.0 * f64::from(*minutes));
            event
                .append_property(("DTSTART", utc(*starts_at).as_str()))
                .append_property(("DTEND", utc(ends_at).as_str()))
                .append_property(("STATUS", if *agreed { "CONFIRMED" } else { "TENTATIVE" }));
        }
        What::Plan { first, last, .. } => {
            whole_day(&mut event, *first);
            event.append_property(("RRULE", format!("FREQ=DAILY;UNTIL={}", date(*last)).as_str()));
        }
        What::GoOnWithCheck { today, .. } | What::PlanCheck { today, .. } => whole_day(&mut event, *today),
    }
    event
}

/// A whole day, which leaves the reader free.
fn whole_day(event: &mut Event, day: Day) {
    let of = |key: &str, day: Day| Property::new(key, date(day)).add_parameter("VALUE", "DATE").done();
    event
        .append_property(of("DTSTART", day))
        .append_property(of("DTEND", day.plus(1)))
        .append_property(("TRANSP", "TRANSPARENT"));
}

fn date(day: Day) -> String {
    let (year, month, day) = day.parts();
    format!("{year:04}{month:02}{day:02}")
}

fn utc(at: Moment) -> String {
    let zone = sayso_model::Zone::utc();
    let [hour, minute, second] = at.clock(&zone);
    format!("{}T{hour:02}{minute:02}{second:02}Z", date(at.day(&zone)))
}

/// Without what the standard allows in no text; lines end in LF, which is escaped.
fn plain(text: &str) -> String {
    text.replace("\r\n", "\n").chars().map(|c| if c.is_control() && c != '\n' { ' ' } else { c }).collect()
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;
    use sayso_model::{
        AccountId, AnimalId, Author, EventId, HomeCard, HomeId, Label, PlanLine, ShortNote, Source, WordCard,
    };
    use sayso_model::{AnimalCard, Language, PlanWay, Species, WordId, Zone};
    use uuid::Uuid;

    const BALL: WordId = WordId(Uuid::from_u128(40));

    fn at(text: &str) -> Moment {
        text.parse().unwrap()
    }

    fn label(text: &str) -> Label {
        Label::new(text).unwrap()
    }

    fn home(name: &str, zone: &str) -> Story {
        let zone = Zone::new(zone).unwrap();
        let event = |n: u128, body: sayso_model::Body| sayso_model::Event {
            id: EventId(Uuid::from_u128(n)),
            home: HomeId(Uuid::from_u128(1)),
            animal: Some(AnimalId(Uuid::from_u128(30))),
            person: None,
            happened_at: at("2026-01-01T00:00:00Z"),
            zone: zone.clone(),
            recorded_at: at("2026-01-01T00:00:00Z"),
            source: Source::Tap,
            body,
        };
        Story::from_events([
            event(1, HomeCard { name: label(name), zone: zone.clone() }.into()),
            event(2, AnimalCard::new(AnimalId(Uuid::from_u128(30)), label("Tarn"), Species::Dog).into()),
            event(3, WordCard::new(BALL, label("ball")).into()),
        ])
    }

    fn written(story: &Story, what: What<'_>) -> String {
        let (since, animal) = (at("2026-10-01T09:30:00Z"), story.animals().into_values().next());
        let entry = Entry { id: EventId(Uuid::from_u128(9)), since, animal, what };
        let (l, url) = (&Locale::of(Language::En), "https://sayso.example.org/".parse().unwrap());
        file(l, &say!(l, calendar::name, home = home_name(l, story)), &[Told { story, entry, home: None }], &url)
    }

    fn meeting(story: &Story, starts_at: Moment, text: &str) -> String {
        let from = Author { account: AccountId(Uuid::nil()), name: label("Brook") };
        let text = ShortNote::new(text).unwrap();
        let what = What::Meeting { from: &from, text: Some(&text), starts_at, minutes: 90, agreed: true };
        written(story, what)
    }

    #[test]
    fn a_meeting_is_at_the_moment_the_homes_clocks_show_before_and_after_they_change() {
        let story = home("Birch House", "Europe/Lisbon");
        let (zone, day) = (story.zone(), |text: &str| text.parse::<Day>().unwrap());
        let start = |of: &str| {
            let told = meeting(&story, day(of).at((18, 30), &zone).unwrap(), "x");
            let line = told.lines().find(|l| l.starts_with("DTSTART")).unwrap().to_owned();
            assert!(told.contains("DTEND:") && !told.contains("TZID"), "{told}");
            line
        };
        // Clocks went back in the night to 25 October 2026.
        assert_eq!(start("2026-10-24"), "DTSTART:20261024T173000Z");
        assert_eq!(start("2026-10-25"), "DTSTART:20261025T183000Z");
        // An hour and a half from half past midnight, over the change, is an hour and a half.
        let told = meeting(&story, day("2026-10-25").at((0, 30), &zone).unwrap(), "x");
        assert!(told.contains("DTSTART:20261024T233000Z\r\n") && told.contains("DTEND:20261025T010000Z\r\n"), "{told}");
    }

    #[test]
    fn days_of_a_plan_are_days_of_the_home_in_every_zone() {
        for zone in ["Pacific/Auckland", "America/Sao_Paulo", "UTC"] {
            let lines = vec![PlanLine { word: BALL, way: Some(PlanWay::Show), minutes: 3, times: 3 }];
            let (first, last) = ("2026-09-25".parse().unwrap(), "2026-10-01".parse().unwrap());
            let told = written(&home("Birch House", zone), What::Plan { from: None, lines, first, last });
            for line in [
                "DTSTART;VALUE=DATE:20260925",
                "DTEND;VALUE=DATE:20260926",
                "RRULE:FREQ=DAILY;UNTIL=20261001",
                "TRANSP:TRANSPARENT",
                "DTSTAMP:20261001T093000Z",
            ] {
                assert!(told.contains(&format!("\r\n{line}\r\n")), "{line} is not in {told}");
            }
        }
    }

    #[test]
    fn lines_are_folded_between_letters_and_text_is_escaped() {
        let story = home("Haus; an der Mühle, Süd\\Ost", "Europe/Berlin");
        let said = "Größe, Öl; Käse\\Brot\nBEGIN:VEVENT\nüüüüüüüüüüüüüüüüüüüüüüüüüüüüüüüüüüüüüüüüüüüüüüüüüüüüüüüüüüü 🐾🐾🐾🐾🐾🐾🐾🐾";
        let told = meeting(&story, at("2026-10-24T17:30:00Z"), said);
        assert!(told.ends_with("END:VCALENDAR\r\n"), "{told}");
        assert_eq!(told.matches('\n').count(), told.matches("\r\n").count(), "every line ends in CR LF");
        for line in told.split("\r\n") {
            assert!(line.len() <= 75, "{} octets: {line}", line.len());
        }
        let whole = told.replace("\r\n ", "");
        assert!(whole.contains("\r\nNAME;VALUE=TEXT:Sayso: Haus\\; an der Mühle\\, Süd\\\\Ost\r\n"), "{whole}");
        assert!(whole.contains("\r\nX-WR-CALNAME:Sayso: Haus\\; an der Mühle\\, Süd\\\\Ost\r\n"), "{whole}");
        let text = said.replace('\\', "\\\\").replace(',', "\\,").replace(';', "\\;").replace('\n', "\\n");
        assert!(whole.contains(&format!("\r\nDESCRIPTION:{text}\r\n")), "{whole}");
        assert_eq!(whole.matches("\r\nBEGIN:VEVENT\r\n").count(), 1, "no words make an entry");
        assert_eq!(plain("a\r\nb\u{7}c\rd"), "a\nb c d");
        // Equal entries are equal bytes: what reads it often sees that nothing changed.
        assert_eq!(told, meeting(&story, at("2026-10-24T17:30:00Z"), said));
    }
}
