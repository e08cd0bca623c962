//! A club: who belongs to it, and which homes share what with it at this moment.

mod view;

use crate::asker::Asker;
use crate::fault::{told, told_of_role};
use crate::host::Host;
use crate::news;
use crate::pages::invited;
use crate::stories::{Stories, name_of};
use axum::Router;
use axum::extract::Path;
use axum::response::{IntoResponse, Redirect, Response};
use axum::routing::{get, post};
use maud::{Markup, html};
use sayso_model::{ClubId, Coach, Zone};
use sayso_people::{Capability, InvitationId, MembershipId, OsSecrets, Part, Role, Scope};
use sayso_web::Error;
use sayso_web::told::no_such_page;
use sayso_web::typed::{Typed, named};
use sayso_wording::{say, words};
use std::sync::Arc;
use uuid::Uuid;
use view::{Seen, Shares};

/// Roles in a club.
const ROLES: [Role; 2] = [Role::Coach, Role::ClubKeeper];

/// Routes of the page.
pub fn router() -> Router<Arc<Host>> {
    Router::new()
        .route("/club/{club}", get(show))
        .route("/club/{club}/invite", post(invite).get(to_page))
        .route("/club/{club}/end", post(end).get(to_page))
        .route("/club/{club}/invitations/end", post(end_invitation).get(to_page))
}

/// A club that cannot be read is one that is not there.
async fn club_of(id: &str) -> Result<ClubId, Error> {
    match id.parse() {
        Ok(club) => Ok(club),
        Err(_) => Err(no_such_page().await),
    }
}

/// Who is led back to what they sent comes to the page with the form.
async fn to_page(Path(id): Path<String>) -> Result<Redirect, Error> {
    Ok(Redirect::to(&format!("/club/{}", club_of(&id).await?)))
}

async fn show(asker: Asker, Path(id): Path<String>) -> Result<Markup, Error> {
    let club = club_of(&id).await?;
    asker.club(Capability::SeeClub, club).await?;
    let people = &asker.host.people;
    let Some(name) = people.club(club).await.map_err(told)? else { return Err(no_such_page().await) };
    let who = people.who(asker.signed.account.id).await.map_err(told)?;
    let has = |role: Role| who.memberships.iter().any(|m| m.part.scope() == Scope::Club(club) && m.part.role() == role);
    let seen = Seen {
        club,
        name,
        coaches: has(Role::Coach),
        keeps: has(Role::ClubKeeper),
        members: people.members(Scope::Club(club)).await.map_err(told)?,
        invitations: people.invitations(Scope::Club(club), asker.now).await.map_err(told)?,
        restored: news::lately_restored(&asker.host, asker.now).await?,
        homes: sharing(&asker, club, has(Role::Coach)).await?,
    };
    Ok(view::view(&asker, &seen))
}

/// Homes whose consent to the club, or to this coach alone, is open at this moment. No other is told of by its name.
async fn sharing(asker: &Asker, club: ClubId, coaches: bool) -> Result<Vec<Shares>, Error> {
    let (people, l, account) = (&asker.host.people, asker.locale(), asker.signed.account.id);
    let stories = Stories(&asker.host.server);
    let mut homes = people.may_share_with_club(club).await.map_err(told)?;
    if coaches {
        let who = people.who(account).await.map_err(told)?;
        homes.extend(people.may_share_with(&who).await.map_err(told)?);
        homes.sort();
        homes.dedup();
    }
    let mut all = Vec::new();
    for home in homes {
        let Some(known) = people.home_now(home, &stories, asker.now).await.map_err(told)? else { continue };
        let to = |coach: Option<Coach>| {
            coach == Some(Coach::Club { club }) || (coaches && coach == Some(Coach::Account { account }))
        };
        let mut what: Vec<&'static str> =
            known.consents.open().filter(|(c, _)| to(c.coach())).map(|(c, _)| c.purpose().name()).collect();
        what.dedup();
        if what.is_empty() {
            continue;
        }
        all.push(Shares { home, name: name_of(&asker.host, &l, home).await?, what });
    }
    all.sort_by(|a, b| a.name.cmp(&b.name).then(a.home.cmp(&b.home)));
    Ok(all)
}

async fn invite(asker: Asker, Path(id): Path<String>, typed: Typed) -> Result<Response, Error> {
    let club = club_of(&id).await?;
    let by = asker.club(Capability::ManageClub, club).await?;
    let mut typed = typed.only(&["role"])?;
    let role = typed.one_of("role", &ROLES, Role::name);
    let Some(role) = role else { return Err(Error::refused("role", words!(sharing::role_missing))) };
    let part = Part::new(Scope::Club(club), role, None, None).map_err(Error::internal)?;
    let made = asker.host.people.invite(&by, &part, asker.now, &mut OsSecrets).await.map_err(told)?;
    let l = asker.locale();
    let body = html! {
        p { (crate::pages::said::role(&l, role)) }
        (invited::shown(&asker.host, &l, &Zone::utc(), &made)?)
        p { a.button href=(format!("/club/{club}")) { (say!(&l, club::back)) } }
    };
    Ok(asker.framed_with(&[invited::HANDS_ON], &say!(&l, sharing::invitation), body).into_response())
}

async fn end(asker: Asker, Path(id): Path<String>, typed: Typed) -> Result<Redirect, Error> {
    let club = club_of(&id).await?;
    let by = asker.club(Capability::ManageClub, club).await?;
    let member: Uuid = named(typed.only(&["membership"])?.text("membership"), "role")?;
    asker.host.people.end_membership(&by, MembershipId(member), asker.now).await.map_err(told_of_role)?;
    Ok(Redirect::to(&format!("/club/{club}")))
}

async fn end_invitation(asker: Asker, Path(id): Path<String>, typed: Typed) -> Result<Redirect, Error> {
    let club = club_of(&id).await?;
    let by = asker.club(Capability::ManageClub, club).await?;
    let invitation: Uuid = named(typed.only(&["invitation"])?.text("invitation"), "invitation")?;
    asker.host.people.end_invitation(&by, InvitationId(invitation), asker.now).await.map_err(told)?;
    Ok(Redirect::to(&format!("/club/{club}")))
}
