//! A sitter's days are those of the home's zone, also when clocks change.

use crate::made::*;
use sayso_model::*;
use sayso_people::Role;
use sayso_people::may::may;
use sayso_people::*;

fn sits(days: Days, zone: &str, moment: &str) -> bool {
    let part = Part::new(Scope::Home(home(1)), Role::Sitter, Some(PersonId(id(3))), Some(days)).unwrap();
    let card = HomeCard { name: Label::new("Orchard Lane").unwrap(), zone: Zone::new(zone).unwrap() };
    let now: Moment = moment.parse().unwrap();
    let known = home_now(home(1), vec![event(1, home(1), 0, card)], now);
    match may(&who(account(1), &[part]), Capability::Record, home(1), Some(&known), now) {
        Ok(leave) => leave.role == Role::Sitter,
        Err(why) => {
            assert_eq!(why, Denied::NotToday, "the sitter has to do with the home");
            false
        }
    }
}

fn day(text: &str) -> Day {
    text.parse().unwrap()
}

#[test]
fn days_of_23_and_25_hours_are_whole() {
    // Berlin: 2026-03-29 has 23 hours, from 23:00 UTC to 22:00 UTC.
    let spring = Days::every(day("2026-03-29"), day("2026-03-29"));
    for (moment, holds) in [
        ("2026-03-28T22:59:59.999Z", false),
        ("2026-03-28T23:00:00Z", true),
        ("2026-03-29T21:59:59.999Z", true),
        ("2026-03-29T22:00:00Z", false),
    ] {
        assert_eq!(sits(spring, "Europe/Berlin", moment), holds, "{moment}");
    }
    // 2026-10-25 has 25 hours, from 22:00 UTC to 23:00 UTC; the hour from 2 to 3 comes twice, and both count.
    let autumn = Days::every(day("2026-10-25"), day("2026-10-25"));
    for (moment, holds) in [
        ("2026-10-24T21:59:59.999Z", false),
        ("2026-10-24T22:00:00Z", true),
        ("2026-10-25T00:30:00Z", true),
        ("2026-10-25T01:30:00Z", true),
        ("2026-10-25T22:59:59.999Z", true),
        ("2026-10-25T23:00:00Z", false),
    ] {
        assert_eq!(sits(autumn, "Europe/Berlin", moment), holds, "{moment}");
    }
}

#[test]
fn the_zone_of_the_home_counts_not_that_of_the_server() {
    let days = Days::every(day("2026-06-01"), day("2026-06-02"));
    assert!(sits(days, "Pacific/Auckland", "2026-05-31T12:30:00Z"));
    assert!(!sits(days, "America/Lima", "2026-05-31T12:30:00Z"));
    assert!(!sits(days, "Pacific/Auckland", "2026-06-02T12:30:00Z"));
}

#[test]
fn days_of_the_week_can_be_chosen() {
    // Mondays and Thursdays of June 2026; the first is a Monday.
    let days = Days { first: day("2026-06-01"), last: day("2026-06-30"), weekdays: 0b000_1001 };
    let on = |d: u8| sits(days, "UTC", &format!("2026-06-{d:02}T12:00:00Z"));
    let held: Vec<u8> = (1..=30).filter(|d| on(*d)).collect();
    assert_eq!(held, [1, 4, 8, 11, 15, 18, 22, 25, 29]);
}
