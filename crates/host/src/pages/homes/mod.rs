//! The homes of an account: one is chosen on this device, and a role is given up.

mod choice;
mod view;

pub use view::restored_told;

use crate::asker::Asker;
use crate::empty;
use crate::fault::{told, told_of_role};
use crate::host::Host;
use crate::news;
use crate::place;
use crate::way;
use axum::Router;
use axum::extract::Query;
use axum::http::header::SET_COOKIE;
use axum::response::{IntoResponse, Redirect, Response};
use axum::routing::{get, post};
use choice::choices;
use maud::Markup;
use sayso_people::{MembershipId, Role, Scope};
use sayso_web::Error;
use sayso_web::news::SEEN_TO;
use sayso_web::pages::homes::remembering;
use sayso_web::typed::Typed;
use sayso_wording::words;
use serde::Deserialize;
use std::sync::Arc;
use uuid::Uuid;

/// Routes of the page.
pub fn router() -> Router<Arc<Host>> {
    Router::new().route("/homes", get(show).post(choose)).route("/homes/end", post(end))
}

/// What is looked for among many.
#[derive(Deserialize)]
struct Looked {
    #[serde(default)]
    find: String,
}

async fn show(asker: Asker, Query(looked): Query<Looked>) -> Result<Markup, Error> {
    let who = asker.host.people.who(asker.signed.account.id).await.map_err(told)?;
    let all = choices(&asker, &who).await?;
    let mut clubs = Vec::new();
    for club in who.memberships.iter().filter_map(|m| m.part.scope().club()) {
        if let Some(name) = asker.host.people.club(club).await.map_err(told)?
            && !clubs.contains(&(club, name.clone()))
        {
            clubs.push((club, name));
        }
    }
    let keeps_server = who.memberships.iter().any(|m| m.part.scope() == Scope::Server);
    let coaches = who.memberships.iter().any(|m| m.part.role() == Role::Coach);
    let parted = asker.host.people.parted(who.account).await.map_err(told)?;
    let zone = place::zone_of(&asker.host, &who).await?;
    let parted: Vec<_> = parted.into_iter().map(|at| at.day(&zone)).collect();
    let chosen = way::chosen(&asker.host, &asker.signed, asker.headers()).await?.map(|to| to.home);
    let restored = match coaches {
        true => news::lately_restored(&asker.host, asker.now).await?,
        false => None,
    };
    let seen = view::Seen { all: &all, chosen, parted: &parted, clubs: &clubs, keeps_server, coaches, restored };
    Ok(view::view(&asker, &seen, looked.find.trim()))
}

async fn choose(asker: Asker, typed: Typed) -> Result<Response, Error> {
    let typed = typed.only(&["home", "to"])?;
    let who = asker.host.people.who(asker.signed.account.id).await.map_err(told)?;
    let all = choices(&asker, &who).await?;
    let chosen = all.iter().find(|c| c.home.to_string() == typed.text("home"));
    let Some(chosen) = chosen else { return Err(Error::refused("home", words!(faults::not_our_home))) };
    let to = match typed.text("to") {
        SEEN_TO => SEEN_TO.to_owned(),
        _ => chosen.to().unwrap_or_else(|| way::CHOOSE.to_owned()),
    };
    Ok(([(SET_COOKIE, remembering(chosen.home))], Redirect::to(&to)).into_response())
}

/// Everyone may go.
async fn end(asker: Asker, typed: Typed) -> Result<Redirect, Error> {
    let typed = typed.only(&["membership"])?;
    let id: Uuid = sayso_web::typed::named(typed.text("membership"), "role")?;
    let (account, role) = (asker.signed.account.id, MembershipId(id));
    match asker.host.people.end_own_membership(account, role, asker.now).await {
        Err(sayso_people::Error::LastKeeper) if empty::go_along(&asker.host, account, Some(role)).await? => {}
        ended => ended.map_err(told_of_role)?,
    }
    Ok(Redirect::to(way::CHOOSE))
}
