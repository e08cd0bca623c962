//! Several coaches in a club: another one for a home, or while one is away. Nothing here opens a home: each is asked, and decides.

pub mod propose;
mod view;

use crate::asker::Asker;
use crate::fault::told;
use crate::host::Host;
use crate::pages::desk::open;
use crate::stories::name_of;
use axum::Router;
use axum::extract::Query;
use axum::response::{IntoResponse, Redirect, Response};
use axum::routing::{get, post};
use maud::Markup;
use propose::{near_day, propose};
use sayso_model::{AccountId, Author, ClubId, HomeId, Label, Proposed};
use sayso_people::needs::clubs_coached;
use sayso_people::{Capability, OsSecrets, Role, Scope, Who};
use sayso_web::Error;
use sayso_web::told::no_such_page;
use sayso_web::typed::{Typed, again, named};
use sayso_wording::words;
use serde::Deserialize;
use std::sync::Arc;
use uuid::Uuid;

/// Where it is.
pub const PATH: &str = "/desk/colleagues";
/// Longest cover, and farthest first day, in days.
const MOST_DAYS: i32 = 92;

/// Routes of the pages.
pub fn router() -> Router<Arc<Host>> {
    Router::new()
        .route(PATH, get(show))
        .route("/desk/cover", post(cover))
        .route("/desk/cover/end", post(end))
        .route("/desk/hand-over", get(ask).post(hand_over))
}

/// Another coach of a club that whoever asks coaches in.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Colleague {
    /// Who.
    pub account: AccountId,
    /// What they are called.
    pub name: Label,
    /// In which club; the first, where there are several.
    pub club: ClubId,
    /// What that is called.
    pub of: String,
}

impl Colleague {
    fn author(&self) -> Author {
        Author { account: self.account, name: self.name.clone() }
    }
}

/// Colleagues of a coach, by name. Of no other club than the coach's own.
async fn colleagues(asker: &Asker, who: &Who) -> Result<Vec<Colleague>, Error> {
    let people = &asker.host.people;
    let mut all: Vec<Colleague> = Vec::new();
    for club in clubs_coached(who) {
        let of = people.club(club).await.map_err(told)?.map(|name| name.to_string()).unwrap_or_default();
        for member in people.members(Scope::Club(club)).await.map_err(told)? {
            let (account, role) = (member.membership.account, member.membership.part.role());
            if role == Role::Coach && account != who.account && all.iter().all(|c| c.account != account) {
                all.push(Colleague { account, name: member.name, club, of: of.clone() });
            }
        }
    }
    all.sort_by(|a, b| a.name.cmp(&b.name).then(a.account.cmp(&b.account)));
    Ok(all)
}

/// The colleague that a form names.
fn chosen<'a>(all: &'a [Colleague], typed: &mut Typed) -> Option<&'a Colleague> {
    let found = all.iter().find(|c| c.account.to_string() == typed.text("colleague"));
    if found.is_none() {
        typed.wrong("colleague", words!(faults::missing_choose));
    }
    found
}

/// What was done just now.
#[derive(Deserialize, Default)]
#[serde(default)]
pub struct Done {
    /// Homes that were asked.
    pub asked: Option<usize>,
    /// Homes that the colleague sees already.
    pub open: Option<usize>,
}

async fn show(asker: Asker, Query(done): Query<Done>) -> Result<Markup, Error> {
    let who = asker.coach().await?;
    let all = colleagues(&asker, &who).await?;
    let covers = asker.host.people.covers(who.account).await.map_err(told)?;
    Ok(view::page(&asker, &all, &covers, &begun(&asker), &done))
}

fn begun(asker: &Asker) -> Typed {
    let today = asker.now.day(&sayso_model::Zone::utc());
    Typed::default().read_by(asker.locale()).with("first", today.plus(1)).with("last", today.plus(7))
}

/// A colleague stands in on some days: homes that the colleague does not see already are asked.
async fn cover(asker: Asker, typed: Typed) -> Result<Response, Error> {
    let who = asker.coach().await?;
    let mut typed = typed.only(&["colleague", "first", "last"])?.read_by(asker.locale());
    let all = colleagues(&asker, &who).await?;
    let today = asker.now.day(&sayso_model::Zone::utc());
    let colleague = chosen(&all, &mut typed).cloned();
    let first = near_day(&mut typed, "first", (today.plus(-1), MOST_DAYS));
    let last = first.and_then(|first| near_day(&mut typed, "last", (first, MOST_DAYS)));
    let (Some(colleague), Some(first), Some(last)) = (colleague, first, last) else {
        let covers = asker.host.people.covers(who.account).await.map_err(told)?;
        return Ok(again(view::page(&asker, &all, &covers, &typed, &Done::default())));
    };
    let by = asker.club(Capability::SeeDesk, colleague.club).await?;
    let (people, days) = (&asker.host.people, (first, last));
    people.be_covered(&by, colleague.account, days, asker.now, &mut OsSecrets).await.map_err(told)?;
    let theirs = people.who(colleague.account).await.map_err(told)?;
    let (mut asked, mut sees) = (0, 0);
    for (home, open) in open::homes(&asker, &who, &theirs).await? {
        if open {
            sees += 1;
        } else if propose(&asker, &who, (home, None), Proposed::Cover { by: colleague.author(), first, last }, None)
            .await?
        {
            asked += 1;
        }
    }
    Ok(Redirect::to(&format!("{PATH}?asked={asked}&open={sees}")).into_response())
}

async fn end(asker: Asker, typed: Typed) -> Result<Redirect, Error> {
    let who = asker.coach().await?;
    let id: Uuid = named(typed.only(&["cover"])?.text("cover"), "cover")?;
    asker.host.people.end_cover(who.account, id).await.map_err(told)?;
    Ok(Redirect::to(PATH))
}

#[derive(Deserialize)]
struct Of {
    home: String,
}

async fn ask(asker: Asker, Query(of): Query<Of>) -> Result<Markup, Error> {
    let who = asker.coach().await?;
    let home = mine(&asker, &who, &of.home).await?;
    let all = colleagues(&asker, &who).await?;
    let (l, typed) = (asker.locale(), Typed::default().read_by(asker.locale()));
    Ok(view::hand_over(&asker, home, &name_of(&asker.host, &l, home).await?, &all, &typed))
}

/// A home whose figures are open to the coach now; any other is told as one that is not there.
async fn mine(asker: &Asker, who: &Who, id: &str) -> Result<HomeId, Error> {
    let home: HomeId = named(id, "home")?;
    match open::leave(asker, who, home).await? {
        Some(_) => Ok(home),
        None => Err(no_such_page().await),
    }
}

async fn hand_over(asker: Asker, typed: Typed) -> Result<Response, Error> {
    let who = asker.coach().await?;
    let mut typed = typed.only(&["home", "colleague", "text"])?.read_by(asker.locale());
    let home = mine(&asker, &who, typed.text("home")).await?;
    let all = colleagues(&asker, &who).await?;
    let colleague = chosen(&all, &mut typed);
    let text = typed.short_or_none("text");
    let Some(colleague) = colleague.filter(|_| typed.right()) else {
        let name = name_of(&asker.host, &asker.locale(), home).await?;
        return Ok(again(view::hand_over(&asker, home, &name, &all, &typed)));
    };
    let proposes = Proposed::HandOver { to: colleague.author() };
    if !propose(&asker, &who, (home, None), proposes, text).await? {
        return Err(no_such_page().await);
    }
    Ok(Redirect::to(&format!("/talk?home={home}")).into_response())
}
