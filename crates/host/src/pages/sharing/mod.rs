//! Who can see a home, who looked, who belongs to it, what it consents to, and leaving.

mod anew;
mod around;
mod consent;
mod ending;
mod handed;
mod invite;
mod leaving;
mod mine;
mod past;
mod person;
mod view;

use crate::asker::Asker;
use crate::fault::told;
use crate::host::Host;
use crate::news;
use crate::to_home::ToHome;
use crate::way;
use around::Names;
use axum::Router;
use axum::routing::{get, post};
use maud::Markup;
use past::Past;
use sayso_people::table::{Grant, grant};
use sayso_people::{Capability, Scope};
use sayso_web::Error;
use std::sync::Arc;

/// Hours of looks told, newest first.
const MOST_LOOKS: u32 = 300;

/// Routes of the pages.
pub fn router() -> Router<Arc<Host>> {
    Router::new()
        .route("/sharing", get(show))
        .route("/sharing/invite", get(invite::ask).post(invite::make))
        .route("/sharing/invitations/{id}/end", post(invite::end))
        .route("/sharing/anew/{id}/refuse", post(anew::refuse))
        .route("/sharing/people/{membership}", get(person::ask).post(person::change))
        .route("/sharing/people/{membership}/end", post(person::end))
        .route("/sharing/consent", get(consent::ask).post(consent::give))
        .route("/sharing/consent/back", post(consent::take_back))
        .route("/sharing/end", get(ending::ask).post(ending::end))
        .route("/sharing/handed/{proposal}", get(handed::ask).post(handed::agree))
        .route("/sharing/with", get(consent::find))
        .route("/sharing/with/{club}", get(consent::with_club))
        .route("/sharing/with/{club}/{coach}", get(consent::with_coach))
        .route("/sharing/leave", get(leaving::ask).post(leaving::leave))
}

/// Who belongs to a home sees everyone near it; everybody else what is theirs to know.
async fn show(asker: Asker) -> Result<Markup, Error> {
    let belongs = |to: &ToHome| {
        let here = to.who.memberships.iter().filter(|m| m.part.scope() == Scope::Home(to.home));
        here.into_iter().any(|m| grant(m.part.role(), Capability::SeePeople) == Grant::Yes)
    };
    if !way::chosen(&asker.host, &asker.signed, asker.headers()).await?.as_ref().is_some_and(belongs) {
        return mine::view(&asker).await;
    }
    let inside = asker.home(&[Capability::SeePeople]).await?;
    let (people, home) = (&asker.host.people, inside.page.home);
    let ended = people.ended_by_restore(home).await.map_err(told)?;
    let past = Past::of(&inside, &ended);
    let coaches = past.all.iter().filter_map(|one| one.consent.coach());
    let told = view::Told {
        near: around::all(&asker, &inside).await?,
        looks: people.looks(home, MOST_LOOKS).await.map_err(told)?,
        invitations: people.invitations(Scope::Home(home), asker.now).await.map_err(told)?,
        notebooks: people.notebooks(home, asker.now).await.map_err(told)?,
        rescues: people.rescues(home).await.map_err(told)?,
        restored_at: people.restored_at().await.map_err(told)?,
        waits: news::waits(&inside.page.story, &inside.known, &ended),
        names: Names::of(&asker, coaches).await?,
        past,
    };
    Ok(view::view(&asker, &inside, &told))
}
