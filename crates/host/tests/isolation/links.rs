//! A page shows no link that its reader may not open.

use crate::addresses::filled;
use crate::house::{Asker, House};
use axum::http::StatusCode;
use sayso_host::asked::TABLE;
use sayso_model::{Coach, Consent};
use sayso_people::Role;
use std::collections::{BTreeMap, BTreeSet};

/// Pages of the server itself that everyone may ask for.
const OWN: [&str; 3] = ["/sharing", "/homes", "/account"];
/// Roles that do not see everything.
const NARROW: [Role; 4] = [Role::Member, Role::Sitter, Role::Observer, Role::Coach];

/// Own addresses that a page links to, without what only a browser fetches.
fn links(page: &str) -> impl Iterator<Item = String> {
    let all = page.split(" href=\"").skip(1).map(|rest| rest.split('"').next().unwrap());
    let own = all.filter(|to| to.starts_with('/') && !to.starts_with("/assets/") && !to.starts_with("/manifest"));
    own.map(|to| to.split('#').next().unwrap().replace("&amp;", "&"))
}

/// An address without what differs between many of a kind.
fn kind(to: &str) -> String {
    let path = to.split('?').next().unwrap();
    let plain = |part: &str| if uuid::Uuid::parse_str(part).is_ok() { "{}".to_owned() } else { part.to_owned() };
    path.split('/').map(plain).collect::<Vec<_>>().join("/")
}

async fn dead(house: &House, asker: &Asker) -> BTreeSet<String> {
    let mut from: BTreeMap<String, (String, String)> = BTreeMap::new();
    let pages = TABLE.iter().filter(|line| !line.1.is_empty() && !line.0.starts_with("/api"));
    let pages = pages.map(|line| filled(line.0, &house.story)).chain(OWN.map(str::to_owned));
    let mut read = 0;
    for path in pages {
        let (status, page) = house.get(asker, &path).await;
        if status != StatusCode::OK || !page.starts_with("<!DOCTYPE html>") {
            continue;
        }
        read += 1;
        for to in links(&page) {
            from.entry(kind(&to)).or_insert((to, kind(&path)));
        }
    }
    assert!(read >= 5, "{}: {read} pages read", asker.name);
    let mut dead = BTreeSet::new();
    for (kind, (to, page)) in from {
        let (status, _) = house.get(asker, &to).await;
        if status == StatusCode::FORBIDDEN || status == StatusCode::NOT_FOUND {
            dead.insert(format!("{}: {page} leads to {kind}, which answers {status}", asker.name));
        }
    }
    dead
}

#[tokio::test]
async fn no_page_leads_its_reader_to_a_closed_door() {
    let mut house = House::new().await;
    let people = house.people().await;
    let keeper = people.iter().find(|p| p.role == Some(Role::Keeper)).unwrap().clone();
    house.consent(&keeper, Consent::CoachFigures { to: Coach::Club { club: house.club } }).await;
    let mut all = BTreeSet::new();
    for asker in people.iter().filter(|p| p.role.is_some_and(|role| NARROW.contains(&role))) {
        all.extend(dead(&house, asker).await);
    }
    assert!(all.is_empty(), "{all:#?}");
}
