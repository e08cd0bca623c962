//! Notebooks at home that are linked to a home here: which are, a code for another, and the end of one. And the page that a code's
//! link opens in a browser, which says where it belongs.

mod view;

use crate::asker::{Asker, HOME, Inside};
use crate::fault::told;
use crate::host::Host;
use crate::links;
use crate::reader::Reads;
use axum::Router;
use axum::extract::Path;
use axum::response::Redirect;
use axum::routing::{get, post};
use maud::Markup;
use sayso_linked::SHOWN_AT;
use sayso_people::{Capability, NotebookId, OsSecrets};
use sayso_web::Error;
use sayso_web::typed::{Typed, named};
use std::sync::Arc;
use uuid::Uuid;

/// Where they are listed.
const HERE: &str = "/sharing/notebooks";

/// Routes of the pages.
pub fn router() -> Router<Arc<Host>> {
    Router::new()
        .route(HERE, get(show))
        .route("/sharing/notebooks/new", get(ask).post(make))
        .route("/sharing/notebooks/{id}/end", post(end))
        .route(SHOWN_AT, get(shown))
}

async fn show(asker: Asker) -> Result<Markup, Error> {
    let inside = asker.home(&[Capability::LinkNotebook]).await?;
    let notebooks = asker.host.people.notebooks(inside.page.home, asker.now).await.map_err(told)?;
    Ok(view::list(&inside, &notebooks))
}

/// What is said before a code is made. Whoever has it reads all of the home: not from a browser that somebody left open.
async fn ask(asker: Asker) -> Result<Markup, Error> {
    Ok(view::ask(&fresh(&asker).await?))
}

async fn fresh(asker: &Asker) -> Result<Inside, Error> {
    let inside = asker.home(&[Capability::LinkNotebook]).await?;
    if asker.is_fresh() { Ok(inside) } else { Err(Error::NotFresh) }
}

async fn make(asker: Asker, typed: Typed) -> Result<Markup, Error> {
    let typed = typed.only(&[HOME])?;
    let inside = fresh(&asker).await?;
    inside.is_of(&typed)?;
    let made = asker.host.people.make_notebook_code(&inside.leave, asker.now, &mut OsSecrets).await;
    let (until, code) = made.map_err(told)?;
    view::made(&inside, &links::notebook(&asker.host.public_url, &code), until)
}

/// To close is never the danger: it waits for no fresh sign-in.
async fn end(asker: Asker, Path(id): Path<String>, typed: Typed) -> Result<Redirect, Error> {
    let typed = typed.only(&[HOME])?;
    let inside = asker.home(&[Capability::LinkNotebook]).await?;
    inside.is_of(&typed)?;
    let id: Uuid = named(&id, "notebook")?;
    asker.host.people.end_notebook(&inside.leave, NotebookId(id), asker.now).await.map_err(told)?;
    Ok(Redirect::to(HERE))
}

async fn shown(reads: Reads) -> Markup {
    view::shown(&reads.locale)
}
