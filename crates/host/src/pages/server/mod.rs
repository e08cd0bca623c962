//! The server, for its keepers: counts, homes and clubs opened, keepers invited, sessions ended. No content of any home.

mod act;
mod rescue;
mod view;

use crate::asker::Asker;
use crate::fault::told;
use crate::host::Host;
use crate::sweep;
use axum::Router;
use axum::response::Redirect;
use axum::routing::{get, post};
use maud::Markup;
use sayso_people::{Capability, Scope};
use sayso_web::Error;
use sayso_web::typed::Typed;
use std::sync::Arc;

/// Homes without a keeper that are listed.
const MOST_WAITING: u32 = 200;

/// Routes of the page.
pub fn router() -> Router<Arc<Host>> {
    Router::new()
        .route("/server", get(show))
        .route("/server/homes", post(act::open_homes).get(to_page))
        .route("/server/homes/link", post(act::link_again).get(to_page))
        .route("/server/homes/anew", post(rescue::invite_anew).get(to_page))
        .route("/server/clubs", post(act::open_club).get(to_page))
        .route("/server/clubs/link", post(act::club_link_again).get(to_page))
        .route("/server/keepers", post(act::invite_keeper).get(to_page))
        .route("/server/keepers/end", post(act::end_keeper).get(to_page))
        .route("/server/sessions", post(act::end_sessions).get(to_page))
        .route("/server/finish", post(act::finish).get(to_page))
}

/// Who is led back to what they sent comes to the page with the form.
async fn to_page() -> Redirect {
    Redirect::to("/server")
}

async fn show(asker: Asker) -> Result<Markup, Error> {
    asker.server(Capability::SeeServer).await?;
    page(&asker, &Typed::default().with("count", 1)).await
}

/// The page with what was typed, and what is wrong with it.
async fn page(asker: &Asker, typed: &Typed) -> Result<Markup, Error> {
    let people = &asker.host.people;
    let mut clubs = Vec::new();
    for (club, name) in people.clubs().await.map_err(told)? {
        let members = people.members(Scope::Club(club)).await.map_err(told)?.len();
        clubs.push(view::ClubLine { club, name, members });
    }
    let seen = view::Seen {
        counts: people.counts().await.map_err(told)?,
        story_bytes: asker.host.server.story_bytes(),
        waiting: people.waiting_homes(MOST_WAITING).await.map_err(told)?,
        unfinished: sweep::unfinished(&asker.host).await?.len(),
        clubs,
        keepers: people.members(Scope::Server).await.map_err(told)?,
    };
    Ok(view::view(asker, &seen, typed))
}
