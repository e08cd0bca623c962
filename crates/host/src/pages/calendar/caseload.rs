//! One calendar of all homes that are open to a coach at the moment of reading: meetings, and checks that are due. Days of plans are
//! the homes' own, and would fill it.

use super::ics::{self, Told};
use super::{OF_CASELOAD, of_coach, view};
use crate::asker::Asker;
use crate::desk::all_lines;
use crate::fault::told;
use crate::host::Host;
use crate::links;
use crate::stories::{opening, story};
use axum::response::Redirect;
use maud::Markup;
use sayso_advisor::calendar::{What, entries};
use sayso_model::{AccountId, HomeId, Moment, Story};
use sayso_people::needs::clubs_coached;
use sayso_people::{Allowed, Capability, HomeNow, OsSecrets};
use sayso_web::Error;
use sayso_web::told::no_such_page;
use sayso_web::typed::Typed;
use sayso_wording::{Locale, say};
use std::collections::BTreeMap;
use std::sync::Arc;

/// Leave to a desk.
async fn desk(asker: &Asker) -> Result<Allowed, Error> {
    let who = asker.coach().await?;
    let Some(club) = clubs_coached(&who).next() else { return Err(no_such_page().await) };
    asker.club(Capability::SeeDesk, club).await
}

async fn fresh(asker: &Asker) -> Result<Allowed, Error> {
    let leave = desk(asker).await?;
    if asker.is_fresh() { Ok(leave) } else { Err(Error::NotFresh) }
}

pub async fn show(asker: Asker) -> Result<Markup, Error> {
    let leave = desk(&asker).await?;
    let feed = asker.host.people.caseload_feed(leave.account).await.map_err(told)?;
    Ok(view::caseload(&asker, feed))
}

pub async fn ask(asker: Asker) -> Result<Markup, Error> {
    let leave = fresh(&asker).await?;
    let feed = asker.host.people.caseload_feed(leave.account).await.map_err(told)?;
    Ok(view::ask_caseload(&asker, feed))
}

pub async fn make(asker: Asker, typed: Typed) -> Result<Markup, Error> {
    typed.only(&[])?;
    let leave = fresh(&asker).await?;
    let secret = asker.host.people.make_caseload_feed(&leave, asker.now, &mut OsSecrets).await.map_err(told)?;
    Ok(view::made_caseload(&asker, &links::calendar(&asker.host.public_url, &secret)))
}

pub async fn end(asker: Asker, typed: Typed) -> Result<Redirect, Error> {
    typed.only(&[])?;
    let leave = desk(&asker).await?;
    asker.host.people.end_caseload_feed(leave.account).await.map_err(told)?;
    Ok(Redirect::to(OF_CASELOAD))
}

/// The calendar of an account's caseload; none where it coaches nowhere any more.
///
/// # Errors
/// Where a database fails.
pub async fn file(host: &Host, account: AccountId, now: Moment) -> Result<Option<String>, Error> {
    let people = &host.people;
    let who = people.who(account).await.map_err(told)?;
    let Some(owner) = people.account(account).await.map_err(told)?.filter(|_| clubs_coached(&who).next().is_some())
    else {
        return Ok(None);
    };
    let homes = people.may_share_with(&who).await.map_err(told)?;
    let opens = opening(&host.server, &homes).await?;
    let leaves = people.may_in_each(&who, Capability::Advise, &opens, now).await.map_err(told)?;
    let open: Vec<HomeId> = leaves.keys().copied().collect();
    // Only stories in which something has a day are read.
    let dated = all_lines(host, &open).await?.into_iter().filter(|(_, kept)| kept.dated).map(|(home, _)| home);
    let mut stories: BTreeMap<HomeId, (Arc<Story>, HomeNow)> = BTreeMap::new();
    for home in dated {
        let known = HomeNow::of(
            home,
            opens.get(&home).unwrap_or(&Story::default()),
            &people.witnessed(home).await.map_err(told)?,
            now,
        );
        if let Some(story) = story(host, home).await? {
            stories.insert(home, (story, known));
        }
    }
    let l = &Locale::of(owner.language);
    let talks: Vec<_> =
        stories.iter().map(|(home, (story, known))| (*home, story, of_coach(story, account, known, now))).collect();
    let mut all = Vec::new();
    for (home, story, (talks, passed)) in &talks {
        let mut found = entries(story, talks, passed, now);
        found.retain(|entry| !matches!(entry.what, What::Plan { .. }));
        all.extend(found.into_iter().map(|entry| Told { story, entry, home: Some(*home) }));
    }
    people.caseload_read(account, now).await.map_err(told)?;
    // What a home is told of: that it was read, where something of it was.
    let read = leaves.iter().filter(|(home, _)| all.iter().any(|told| told.home == Some(**home)));
    people.looked_at_each(read.map(|(_, leave)| leave), "calendar", now).await.map_err(told)?;
    Ok(Some(ics::file(l, &say!(l, calendar::caseload_name), &all, &host.public_url)))
}
