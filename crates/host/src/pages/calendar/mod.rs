//! A calendar of what has a day in a home, by a secret address: made, changed and ended by whom it is for, and read without signing in.
//! Whether the account may see it is asked at each reading; else the answer is that of an address nobody ever had.

mod caseload;
mod ics;
mod view;

use crate::asked::AnyOf;
use crate::asker::{Asker, HOME, Inside};
use crate::fault::told;
use crate::host::Host;
use crate::links;
use crate::stories::{Stories, story};
use axum::Router;
use axum::extract::{Path, State};
use axum::http::header::{CACHE_CONTROL, CONTENT_DISPOSITION, CONTENT_TYPE, REFERRER_POLICY};
use axum::http::{HeaderName, HeaderValue};
use axum::middleware::map_response;
use axum::response::{IntoResponse, Redirect, Response};
use axum::routing::{get, post};
use maud::Markup;
use sayso_advisor::calendar::entries;
use sayso_model::talks::{Passed, Talk, reaches, talks};
use sayso_model::{AccountId, Coach, HomeId, Moment, Story};
use sayso_people::may::may;
use sayso_people::{Capability, HomeNow, OsSecrets, Secret, Who};
use sayso_web::Error;
use sayso_web::told::no_such_page;
use sayso_web::typed::Typed;
use sayso_wording::events::home_name;
use sayso_wording::{Locale, say};
use std::sync::Arc;

/// Where it is made.
const HERE: &str = "/calendar";
/// Where that of a caseload is made.
const OF_CASELOAD: &str = "/desk/calendar";
/// What it holds is theirs who see the page of what was agreed.
const SEES: AnyOf = &[Capability::Agree, Capability::Advise];
const ROBOTS: HeaderName = HeaderName::from_static("x-robots-tag");

/// Routes of the page and of the calendars.
pub fn router() -> Router<Arc<Host>> {
    let read = Router::new().route("/calendar/{address}", get(read)).layer(map_response(for_nobody_else));
    Router::new()
        .route(HERE, get(show))
        .route("/calendar/new", get(ask).post(make))
        .route("/calendar/end", post(end))
        .route(OF_CASELOAD, get(caseload::show))
        .route("/desk/calendar/new", get(caseload::ask).post(caseload::make))
        .route("/desk/calendar/end", post(caseload::end))
        .merge(read)
}

/// What an address answers is kept by nobody, found by no search, and told to no other site.
async fn for_nobody_else(mut response: Response) -> Response {
    let headers = response.headers_mut();
    headers.insert(ROBOTS, HeaderValue::from_static("noindex, nofollow, noarchive"));
    headers.insert(REFERRER_POLICY, HeaderValue::from_static("no-referrer"));
    headers.insert(CACHE_CONTROL, HeaderValue::from_static("private, no-store"));
    response
}

async fn show(asker: Asker) -> Result<Markup, Error> {
    let inside = asker.home(SEES).await?;
    let feed = asker.host.people.feed(asker.signed.account.id, inside.page.home).await.map_err(told)?;
    Ok(view::view(&inside, feed))
}

/// What is said before an address is made. Whoever makes one lets it be read without signing in: not from a browser that somebody
/// left open.
async fn ask(asker: Asker) -> Result<Markup, Error> {
    let inside = fresh(&asker).await?;
    let feed = asker.host.people.feed(asker.signed.account.id, inside.page.home).await.map_err(told)?;
    Ok(view::ask(&inside, feed))
}

async fn fresh(asker: &Asker) -> Result<Inside, Error> {
    let inside = asker.home(SEES).await?;
    if asker.is_fresh() { Ok(inside) } else { Err(Error::NotFresh) }
}

async fn make(asker: Asker, typed: Typed) -> Result<Markup, Error> {
    let typed = typed.only(&[HOME])?;
    let inside = fresh(&asker).await?;
    inside.is_of(&typed)?;
    let secret = asker.host.people.make_feed(&inside.leave, asker.now, &mut OsSecrets).await.map_err(told)?;
    Ok(view::made(&inside, &links::calendar(&asker.host.public_url, &secret)))
}

async fn end(asker: Asker, typed: Typed) -> Result<Redirect, Error> {
    let typed = typed.only(&[HOME])?;
    let inside = asker.home(SEES).await?;
    inside.is_of(&typed)?;
    asker.host.people.end_feed(asker.signed.account.id, inside.page.home).await.map_err(told)?;
    Ok(Redirect::to(HERE))
}

/// The calendar behind an address.
async fn read(State(host): State<Arc<Host>>, Path(address): Path<String>) -> Result<Response, Error> {
    let secret = Secret::typed(address.strip_suffix(links::CALENDAR).unwrap_or(&address));
    let (people, now) = (&host.people, host.now());
    let Some((account, home)) = people.feed_at(&secret).await.map_err(told)? else {
        let Some(account) = people.caseload_at(&secret).await.map_err(told)? else { return Err(no_such_page().await) };
        let Some(file) = caseload::file(&host, account, now).await? else { return Err(no_such_page().await) };
        return Ok(given(file));
    };
    let who = people.who(account).await.map_err(told)?;
    let known = people.known_to(&who, home, &Stories(&host.server), now).await.map_err(told)?;
    let known = known.filter(|known| sees(&who, home, known, now));
    let (Some(known), Some(owner)) = (known, people.account(account).await.map_err(told)?) else {
        return Err(no_such_page().await);
    };
    let Some(story) = story(&host, home).await?.filter(|story| !story.ledger().is_empty()) else {
        return Err(no_such_page().await);
    };
    people.feed_read(account, home, now).await.map_err(told)?;
    // Read by whichever program has the address: to the home it is a look of whom it belongs to, told once a day, however often it reads.
    let leave = SEES.iter().find_map(|capability| may(&who, *capability, home, Some(&known), now).ok());
    people.looked_at_each(leave.as_ref(), "calendar", now).await.map_err(told)?;
    let agrees = may(&who, Capability::Agree, home, Some(&known), now).is_ok();
    let (talks, passed) = if agrees { seen(&story, &known, now) } else { of_coach(&story, account, &known, now) };
    let l = &Locale::of(owner.language);
    let entries = entries(&story, &talks, &passed, now).into_iter();
    let entries: Vec<_> = entries.map(|entry| ics::Told { story: &story, entry, home: None }).collect();
    let name = say!(l, calendar::name, home = home_name(l, &story));
    Ok(given(ics::file(l, &name, &entries, &host.public_url)))
}

fn given(file: String) -> Response {
    let kind = (CONTENT_TYPE, "text/calendar; charset=utf-8");
    ([kind, (CONTENT_DISPOSITION, "inline; filename=\"sayso.ics\"")], file).into_response()
}

fn sees(who: &Who, home: HomeId, known: &HomeNow, now: Moment) -> bool {
    SEES.iter().any(|capability| may(who, *capability, home, Some(known), now).is_ok())
}

/// The talk that this server saw being written by whom it names, and by what it passed on to coaches to whom the home is open.
fn seen<'a>(story: &'a Story, known: &HomeNow, now: Moment) -> (Vec<Talk<'a>>, Vec<Passed>) {
    let mut all = talks(story, now);
    all.retain(|talk| known.witnessed.contains(&talk.id()));
    let mut passed = known.passed_among(&all);
    let today = now.day(&known.zone);
    let open_to = |account| known.consents.any_to(Coach::Account { account });
    // What was written in a coach's place stays theirs when the cover is over, with what it opened.
    let over = |passed: &Passed| passed.days.is_some_and(|(_, last)| last < today);
    passed.retain(|passed| open_to(passed.to.account) || (over(passed) && open_to(passed.from.account)));
    (all, passed)
}

/// The same, as far as it is a coach's: what they wrote, and what they have in hand.
fn of_coach<'a>(story: &'a Story, me: AccountId, known: &HomeNow, now: Moment) -> (Vec<Talk<'a>>, Vec<Passed>) {
    let (mut all, passed) = seen(story, known, now);
    let today = now.day(&known.zone);
    all.retain(|talk| {
        let from = talk.part.from.account;
        from == me || reaches(&passed, (from, talk.event.happened_at), me, (today, &known.zone))
    });
    (all, passed)
}
