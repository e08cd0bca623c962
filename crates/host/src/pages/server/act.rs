//! What a keeper of the server does.
//!
//! A home is opened in this order: room for its log, then its row among the people's, then its first keeper's invitation. What
//! ends between the first two leaves an empty log under an id that nobody has; what ends between the last two leaves a home
//! that the page lists as waiting, with a button for a new link. So whoever has a link has a whole home behind it.

use super::page;
use crate::asker::Asker;
use crate::fault::{told, told_of_role};
use crate::pages::invited;
use crate::sweep;
use axum::response::{IntoResponse, Redirect, Response};
use maud::{Markup, html};
use sayso_model::{AccountId, ClubId, HomeId, Zone};
use sayso_people::db::Invited;
use sayso_people::{Allowed, Capability, MembershipId, OsSecrets, Part, Role, Scope, Secret};
use sayso_web::Error;
use sayso_web::typed::{Typed, again, named};
use sayso_wording::{Words, say, words};
use uuid::Uuid;

/// Homes opened at once at most.
const MOST: u16 = 50;

type Made = (Invited, Secret);

pub async fn open_homes(asker: Asker, typed: Typed) -> Result<Response, Error> {
    let by = asker.server(Capability::Host).await?;
    let l = asker.locale();
    let mut typed = typed.only(&["count"])?.read_by(l);
    let count = typed.whole("count", 1, MOST);
    let Some(count) = count else {
        return wrong(&asker, typed, "count", words!(server::how_many_wrong, most = MOST.to_string())).await;
    };
    let (mut made, mut stopped) = (Vec::new(), None);
    for _ in 0..count {
        match open_one(&asker, &by).await {
            Ok(one) => made.push(one),
            Err(why) if made.is_empty() => return Err(why),
            // Those before it are whole, and their links are shown only now.
            Err(why) => {
                stopped = Some(why.words().say(&l));
                break;
            }
        }
    }
    tracing::info!("Opened {} homes.", made.len());
    Ok(asker
        .framed_with(
            &[invited::HANDS_ON],
            &say!(&l, server::links, count = made.len()),
            links(&asker, &made, stopped.as_deref())?,
        )
        .into_response())
}

async fn open_one(asker: &Asker, by: &Allowed) -> Result<Made, Error> {
    let home = HomeId(Uuid::now_v7());
    asker.host.server.found(home).await?;
    asker.host.people.open_home(by, home, asker.now).await.map_err(told)?;
    first_keeper(asker, by, home).await
}

async fn first_keeper(asker: &Asker, by: &Allowed, home: HomeId) -> Result<Made, Error> {
    let part = Part::new(Scope::Home(home), Role::Keeper, None, None).map_err(Error::internal)?;
    asker.host.people.invite(by, &part, asker.now, &mut OsSecrets).await.map_err(told)
}

/// The page again with what was typed, and beside it what is wrong with it.
///
/// # Errors
/// Where the database fails.
pub async fn wrong(asker: &Asker, mut typed: Typed, field: &str, what: Words) -> Result<Response, Error> {
    if typed.problem(field).is_none() {
        typed.wrong(field, what);
    }
    let typed = typed.read_by(asker.locale());
    Ok(again(page(asker, &typed).await?))
}

/// Links to print: a table, and each with its code.
fn links(asker: &Asker, made: &[Made], stopped: Option<&str>) -> Result<Markup, Error> {
    let l = &asker.locale();
    if let ([one], None) = (made, stopped) {
        return Ok(html! { (invited::shown(&asker.host, l, &Zone::utc(), one)?) (back(asker)) });
    }
    let mut rows = Vec::new();
    for (number, (invited, secret)) in made.iter().enumerate() {
        let link = invited::link(&asker.host, secret);
        rows.push((
            number + 1,
            crate::qr::drawn(&link, &say!(l, sharing::qr))?,
            link,
            l.date(invited.expires_at.day(&Zone::utc())),
        ));
    }
    Ok(html! {
        @if let Some(why) = stopped { p.caution role="alert" { (say!(l, server::stopped, made = made.len(), why = why)) } }
        p.caution { (say!(l, sharing::shown_once, count = made.len())) }
        div.scroll { table {
            thead { tr { th scope="col" { (say!(l, server::number)) } th scope="col" { (say!(l, server::link)) } th scope="col" { (say!(l, server::until)) } } }
            tbody { @for (number, code, link, until) in rows {
                tr data-test="link-row" { th scope="row" .num { (number) } td.prose { (code) (invited::handed_on(l, &link, "link")) } td { (until) } }
            } }
        } }
        (back(asker))
    })
}

pub fn back(asker: &Asker) -> Markup {
    html! { p { a.button href="/server" { (say!(&asker.locale(), server::back)) } } }
}

fn one(asker: &Asker, made: &Made) -> Result<Response, Error> {
    let l = asker.locale();
    let body = html! { (invited::shown(&asker.host, &l, &Zone::utc(), made)?) (back(asker)) };
    Ok(asker.framed_with(&[invited::HANDS_ON], &say!(&l, sharing::invitation), body).into_response())
}

/// A new link for a home whose first keeper has not come.
pub async fn link_again(asker: Asker, typed: Typed) -> Result<Response, Error> {
    let by = asker.server(Capability::Host).await?;
    let home: HomeId = named(typed.only(&["home"])?.text("home"), "home")?;
    one(&asker, &first_keeper(&asker, &by, home).await?)
}

pub async fn open_club(asker: Asker, typed: Typed) -> Result<Response, Error> {
    let by = asker.server(Capability::Host).await?;
    let mut typed = typed.only(&["name"])?.read_by(asker.locale());
    if typed.text("name").is_empty() {
        return wrong(&asker, typed, "name", words!(server::club_name_missing)).await;
    }
    let Some(name) = typed.label("name") else {
        // What is wrong with it, as a form would say beside it.
        return Ok(again(page(&asker, &typed).await?));
    };
    let club = match asker.host.people.open_club(&by, &name, asker.now, &mut OsSecrets).await {
        Err(sayso_people::Error::Taken) => return wrong(&asker, typed, "name", words!(server::club_taken)).await,
        made => made.map_err(told)?,
    };
    one(&asker, &club_keeper(&asker, &by, club).await?)
}

/// A new link for a club whose first keeper has not come.
pub async fn club_link_again(asker: Asker, typed: Typed) -> Result<Response, Error> {
    let by = asker.server(Capability::Host).await?;
    let club: ClubId = named(typed.only(&["club"])?.text("club"), "club")?;
    one(&asker, &club_keeper(&asker, &by, club).await?)
}

async fn club_keeper(asker: &Asker, by: &Allowed, club: ClubId) -> Result<Made, Error> {
    let part = Part::new(Scope::Club(club), Role::ClubKeeper, None, None).map_err(Error::internal)?;
    asker.host.people.invite(by, &part, asker.now, &mut OsSecrets).await.map_err(told)
}

pub async fn invite_keeper(asker: Asker, typed: Typed) -> Result<Response, Error> {
    let by = asker.server(Capability::ManageServer).await?;
    typed.only(&[])?;
    let part = Part::new(Scope::Server, Role::ServerKeeper, None, None).map_err(Error::internal)?;
    let made = asker.host.people.invite(&by, &part, asker.now, &mut OsSecrets).await.map_err(told)?;
    one(&asker, &made)
}

pub async fn end_keeper(asker: Asker, typed: Typed) -> Result<Redirect, Error> {
    let by = asker.server(Capability::ManageServer).await?;
    let id: Uuid = named(typed.only(&["membership"])?.text("membership"), "role")?;
    asker.host.people.end_membership(&by, MembershipId(id), asker.now).await.map_err(told_of_role)?;
    Ok(Redirect::to("/server"))
}

/// Where an account is in wrong hands.
pub async fn end_sessions(asker: Asker, typed: Typed) -> Result<Response, Error> {
    let by = asker.server(Capability::ManageServer).await?;
    let typed = typed.only(&["account"])?;
    let account = typed.text("account").parse::<AccountId>();
    let Ok(account) = account else {
        return wrong(&asker, typed, "account", words!(server::account_missing)).await;
    };
    if asker.host.people.account(account).await.map_err(told)?.is_none() {
        return wrong(&asker, typed, "account", words!(server::account_unknown)).await;
    }
    let ended = asker.host.people.end_all_sessions(&by, account, asker.now).await.map_err(told)?;
    let l = asker.locale();
    let body = html! { p data-test="ended" { (say!(&l, server::sessions_ended, count = i64::try_from(ended).unwrap_or(i64::MAX))) } (back(&asker)) };
    Ok(asker.framed(&say!(&l, server::sessions), body).into_response())
}

/// Finishes what leaving homes left undone.
pub async fn finish(asker: Asker, typed: Typed) -> Result<Redirect, Error> {
    asker.server(Capability::ManageServer).await?;
    typed.only(&[])?;
    let finished = sweep::finish(&asker.host).await?;
    tracing::info!("Erased the logs of {finished} homes that had left.");
    Ok(Redirect::to("/server"))
}
