//! Homes, people and events made for the rules.

use sayso_model::*;
use sayso_people::Role;
use sayso_people::*;
use std::collections::BTreeSet;
use uuid::Uuid;

pub const fn id(n: u128) -> Uuid {
    Uuid::from_u128(n)
}

pub const fn home(n: u128) -> HomeId {
    HomeId(id(n))
}

pub const fn account(n: u128) -> AccountId {
    AccountId(id(n))
}

pub const fn club(n: u128) -> ClubId {
    ClubId(id(n))
}

pub fn at(second: i64) -> Moment {
    Moment::clamped(1_800_000_000_000).plus_seconds(second as f64)
}

pub fn event(n: u128, of: HomeId, second: i64, body: impl Into<Body>) -> Event {
    Event {
        id: EventId(id(n)),
        home: of,
        animal: None,
        person: None,
        happened_at: at(second),
        zone: Zone::utc(),
        recorded_at: at(second),
        source: Source::Tap,
        body: body.into(),
    }
}

/// The part of a role in its place, with what it needs: home 1, club 1.
pub fn part(role: Role) -> Part {
    let (scope, person) = match role {
        Role::Keeper | Role::Member | Role::Sitter | Role::Observer => (Scope::Home(home(1)), Some(PersonId(id(50)))),
        Role::Coach | Role::ClubKeeper => (Scope::Club(club(1)), None),
        Role::ServerKeeper => (Scope::Server, None),
    };
    let today = at(0).day(&Zone::utc());
    Part::new(scope, role, person, role.has_days().then(|| Days::every(today, today))).unwrap()
}

pub fn who(of: AccountId, parts: &[Part]) -> Who {
    let has = |(n, part): (usize, &Part)| Membership {
        id: MembershipId(id(n as u128 + 900)),
        account: of,
        part: *part,
        since: at(-1_000),
    };
    Who { account: of, memberships: parts.iter().enumerate().map(has).collect() }
}

/// A home whose log holds these events, all givings witnessed.
pub fn home_now(of: HomeId, events: Vec<Event>, now: Moment) -> HomeNow {
    let all: BTreeSet<EventId> = events.iter().map(|e| e.id).collect();
    HomeNow::of(of, &Story::from_events(events), &all, now)
}

pub fn given(consent: Consent) -> ConsentGiven {
    ConsentGiven { consent, words_version: Consent::WORDS, holds: None }
}
