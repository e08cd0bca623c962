//! Programmes: courses of weeks that coaches of a club lay out. A home joins by accepting; here stands where each is, against its own aims
//! and in the order of names: animals are never ranked.

mod done;
mod form;
mod view;

use crate::asker::Asker;
use crate::desk::{Found, handed_on};
use crate::fault::told;
use crate::host::Host;
use crate::pages::colleagues::propose::{near_day, propose};
use crate::pages::desk::open;
use crate::stories::story;
use axum::Router;
use axum::extract::{Path, Query};
use axum::response::{IntoResponse, Redirect, Response};
use axum::routing::{get, post};
use done::{Around, Done};
use maud::Markup;
use sayso_advisor::Case;
use sayso_advisor::rest::rests_until;
use sayso_model::{AnimalId, ClubId, Day, HomeId, ProgrammeId, Proposed};
use sayso_people::db::ClubProgramme;
use sayso_people::needs::clubs_coached;
use sayso_people::{Capability, Who};
use sayso_web::Error;
use sayso_web::told::no_such_page;
use sayso_web::typed::{Typed, again, named};
use sayso_wording::words;
use serde::Deserialize;
use std::sync::Arc;

/// Where they are.
pub const PATH: &str = "/desk/programmes";
/// Farthest first day of a course, in days.
const MOST_DAYS: i32 = 56;

/// Routes of the pages.
pub fn router() -> Router<Arc<Host>> {
    Router::new()
        .route(PATH, get(show))
        .route("/desk/programmes/new", get(ask).post(lay_out))
        .route("/desk/programmes/{programme}", get(one))
        .route("/desk/programmes/{programme}/propose", post(offer))
        .route("/desk/programmes/{programme}/close", post(close))
}

fn clubs(who: &Who) -> Vec<ClubId> {
    let mut all: Vec<ClubId> = clubs_coached(who).collect();
    all.sort();
    all.dedup();
    all
}

async fn show(asker: Asker) -> Result<Markup, Error> {
    let who = asker.coach().await?;
    let all = asker.host.people.programmes(&clubs(&who)).await.map_err(told)?;
    let found = open::found(&asker, &who).await?;
    let around = Around::of(&asker.host, who.account, &found, asker.now).await?;
    let closed = handed_on(&asker.host, who.account, &found, asker.now).await?;
    Ok(view::list(&asker, &all, &found, (&around, &closed)))
}

#[derive(Deserialize)]
#[serde(default)]
struct Weeks {
    weeks: usize,
}

impl Default for Weeks {
    fn default() -> Self {
        Self { weeks: form::USUAL }
    }
}

async fn ask(asker: Asker, Query(asked): Query<Weeks>) -> Result<Markup, Error> {
    let who = asker.coach().await?;
    let typed = Typed::default().read_by(asker.locale()).with("weeks", form::within(asked.weeks));
    Ok(form::page(&asker, &named_clubs(&asker, &who).await?, &typed))
}

/// Clubs in which somebody coaches, with their names.
async fn named_clubs(asker: &Asker, who: &Who) -> Result<Vec<(ClubId, String)>, Error> {
    let mut all = Vec::new();
    for club in clubs(who) {
        let name = asker.host.people.club(club).await.map_err(told)?;
        all.push((club, name.map(|name| name.to_string()).unwrap_or_default()));
    }
    Ok(all)
}

async fn lay_out(asker: Asker, typed: Typed) -> Result<Response, Error> {
    let who = asker.coach().await?;
    let clubs = named_clubs(&asker, &who).await?;
    let mut typed = typed.only(&form::fields())?.read_by(asker.locale());
    if typed.text("step") == form::SHOW {
        return Ok(form::page(&asker, &clubs, &typed).into_response());
    }
    let read = form::read(&clubs, &mut typed);
    let Some((club, course)) = read.filter(|_| typed.right()) else {
        return Ok(again(form::page(&asker, &clubs, &typed)));
    };
    let by = asker.club(Capability::SeeDesk, club).await?;
    asker.host.people.lay_out(&by, &course, asker.now).await.map_err(told)?;
    Ok(Redirect::to(&format!("{PATH}/{}", course.programme)).into_response())
}

/// A course of a club that whoever asks coaches in.
async fn known(asker: &Asker, who: &Who, id: &str) -> Result<ClubProgramme, Error> {
    let id: ProgrammeId = named(id, "programme")?;
    match asker.host.people.programme(&clubs(who), id).await.map_err(told)? {
        Some(found) => Ok(found),
        None => Err(no_such_page().await),
    }
}

async fn one(asker: Asker, Path(id): Path<String>, Query(done): Query<Done>) -> Result<Markup, Error> {
    let who = asker.coach().await?;
    let programme = known(&asker, &who, &id).await?;
    let found = open::found(&asker, &who).await?;
    let today = asker.now.day(&sayso_model::Zone::utc());
    let typed = Typed::default().read_by(asker.locale()).with("first", today.plus(1));
    page(&asker, &who, &programme, &found, &done, &typed).await
}

async fn page(
    asker: &Asker,
    who: &Who,
    programme: &ClubProgramme,
    found: &Found,
    done: &Done,
    typed: &Typed,
) -> Result<Markup, Error> {
    let around = Around::of(&asker.host, who.account, found, asker.now).await?;
    let closed = handed_on(&asker.host, who.account, found, asker.now).await?;
    let closed = closed.get(&programme.course.programme).map_or(&[][..], Vec::as_slice);
    Ok(view::one(asker, programme, found, (&around, closed, done), typed))
}

/// The course is proposed to homes, each with one of its animals, from a day on: to each by a proposal of its own. Who rests, whom somebody
/// else goes on with, and who is in it already is left out, and told.
async fn offer(asker: Asker, Path(id): Path<String>, typed: Typed) -> Result<Response, Error> {
    let who = asker.coach().await?;
    let programme = known(&asker, &who, &id).await?;
    let found = open::found(&asker, &who).await?;
    let mut typed = typed.only(&["animal", "all", "first"])?.read_by(asker.locale());
    let chosen = chosen(&found, &typed);
    if chosen.is_empty() || programme.closed {
        typed.wrong("animal", words!(faults::missing_choose));
    }
    let today = asker.now.day(&sayso_model::Zone::utc());
    let first = near_day(&mut typed, "first", (today, MOST_DAYS));
    let Some(first) = first.filter(|_| typed.right()) else {
        return Ok(again(page(&asker, &who, &programme, &found, &Done::default(), &typed).await?));
    };
    let around = Around::of(&asker.host, who.account, &found, asker.now).await?;
    let (mut done, mut until) = (Done::default(), None);
    for (home, animal) in chosen {
        if around.given_away.contains_key(&home) {
            done.handed.push(animal);
        } else if around.is_in(&found, (home, animal), programme.course.programme, today) {
            done.joined.push(animal);
        } else if let Some(rests) = rests_beyond(&asker, (home, animal), first).await? {
            until = Some(rests);
            done.rests.push(animal);
        } else {
            let proposes = Proposed::Programme { course: programme.course.clone(), first };
            // A home that took its consent back meanwhile is gone at the next look.
            if propose(&asker, &who, (home, Some(animal)), proposes, None).await? {
                done.sent.push(animal);
            }
        }
    }
    if done.sent.is_empty() {
        match until {
            Some(until) => typed.wrong("first", words!(programme::rests, until = until)),
            None => typed.wrong("animal", words!(faults::missing_choose)),
        }
        return Ok(again(page(&asker, &who, &programme, &found, &done, &typed).await?));
    }
    Ok(Redirect::to(&done.address(&format!("{PATH}/{}", programme.course.programme))).into_response())
}

/// Animals that were ticked, or all, of homes that are open.
fn chosen(found: &Found, typed: &Typed) -> Vec<(HomeId, AnimalId)> {
    let ticked: Vec<&str> = typed.all("animal").collect();
    let open = found.kept.iter().flat_map(|(home, kept)| kept.animals.keys().map(|animal| (*home, *animal)));
    open.filter(|(_, animal)| typed.ticked("all") || ticked.contains(&animal.to_string().as_str())).collect()
}

/// Until when a strong sign rests an animal's sessions, as read by who asks, where a course would begin before.
async fn rests_beyond(asker: &Asker, (home, animal): (HomeId, AnimalId), first: Day) -> Result<Option<String>, Error> {
    let Some(story) = story(&asker.host, home).await? else { return Ok(None) };
    let case = Case::new(&story, animal, asker.now);
    let until = rests_until(&case).filter(|until| first.start(case.zone()) < *until);
    Ok(until.map(|until| asker.locale().weekday_date_time(until, case.zone())))
}

async fn close(asker: Asker, Path(id): Path<String>, typed: Typed) -> Result<Redirect, Error> {
    let who = asker.coach().await?;
    let programme = known(&asker, &who, &id).await?;
    let closes = typed.only(&["closed"])?.text("closed") == "yes";
    let (id, at) = (programme.course.programme, closes.then_some(asker.now));
    asker.host.people.close_programme(&clubs(&who), id, at).await.map_err(told)?;
    Ok(Redirect::to(&format!("{PATH}/{id}")))
}
