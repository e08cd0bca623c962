//! Files in and out: a file is brought, looked at, and only then taken in; everything can be taken out as a file.

mod columns;
mod out;
mod report;
mod upload;
mod view;

use crate::brought::{Report, Shown, Waits};
use crate::computing::file_turn;
use crate::error::Error;
use crate::form::Form;
use crate::leave::{Leave, admits};
use crate::state::AppState;
use crate::visitor::Visitor;
use axum::Router;
use axum::extract::{DefaultBodyLimit, FromRequestParts, Path, Request};
use axum::http::request::Parts;
use axum::response::Redirect;
use axum::routing::{get, post};
use maud::Markup;
use sayso_model::Body;
use sayso_store::{Look, Others};
use sayso_wording::errors::homes;
use sayso_wording::{Locale, say, words};
use serde::Deserialize;
use std::convert::Infallible;
use upload::{MOST_UPLOAD, received};
use uuid::Uuid;

/// What a form puts around its file.
const FRAME: usize = 64 << 10;

/// Routes of the pages.
pub fn router() -> Router<AppState> {
    Router::new()
        .route("/exchange", get(show).post(bring))
        .route(columns::COLUMNS, get(columns::show))
        .route("/exchange/archive.tar", get(out::archive))
        .route("/exchange/backup.sayso", get(out::backup))
        .route("/exchange/diary.csv", get(out::diary))
        .route("/exchange/{id}", get(look).post(take_in))
        .route("/exchange/{id}/away", post(away))
        .layer(DefaultBodyLimit::max(MOST_UPLOAD + FRAME))
}

/// Which records of a file whoever asks may take in.
struct Admits(fn(&Body) -> bool);

impl<S: Sync> FromRequestParts<S> for Admits {
    type Rejection = Infallible;

    async fn from_request_parts(parts: &mut Parts, _: &S) -> Result<Self, Infallible> {
        Ok(Self(admits(parts.extensions.get::<Leave>())))
    }
}

impl Visitor {
    /// What was brought under this id and is still here.
    fn waits(&self, id: Uuid) -> Result<Waits, Error> {
        let gone = || Error::NotFound(words!(exchange::gone));
        self.state.brought.get(id, self.state.now()).ok_or_else(gone)
    }

    /// An address of these pages that names the home they are about, where there is a choice.
    fn at(&self, path: &str) -> String {
        self.page.as_ref().map_or_else(|| path.to_owned(), |page| page.of_home(path))
    }
}

async fn show(visitor: Visitor) -> Markup {
    visitor.framed(&say!(&visitor.locale, exchange::title), view::begin(&visitor.locale, visitor.page.as_deref()))
}

async fn bring(visitor: Visitor, request: Request) -> Result<Redirect, Error> {
    let upload = received(&visitor.state.store, &visitor.locale, request).await?;
    let id = visitor.state.brought.put(upload, visitor.state.now());
    Ok(Redirect::to(&visitor.at(&address(id))))
}

fn address(id: Uuid) -> String {
    format!("/exchange/{id}")
}

/// What the file would bring, or, once it was taken in, what it brought.
async fn look(visitor: Visitor, Admits(admits): Admits, Path(id): Path<Uuid>) -> Result<Markup, Error> {
    let upload = match visitor.waits(id)? {
        Waits::Done(report) => {
            return Ok(visitor.framed(
                &say!(&visitor.locale, exchange::title_taken),
                report::view(&visitor.locale, &report, &visitor.at("/exchange")),
            ));
        }
        Waits::Upload(upload) => upload,
    };
    let zone = visitor.zone();
    // Before the look: what comes in meanwhile is told by the next.
    let at = visitor.state.store.revision().await?;
    let framed = |preview| Ok(visitor.framed(&say!(&visitor.locale, exchange::title_look), preview));
    if let Some(preview) = upload.shown(at, &zone, &visitor.locale) {
        return framed(preview);
    }
    let _turn = file_turn().await;
    // Who waited may find what the other saw.
    if let Some(preview) = upload.shown(at, &zone, &visitor.locale) {
        return framed(preview);
    }
    let look = upload.look(&visitor.state.store, &visitor.locale, admits).await;
    let look = look.inspect_err(|_| visitor.state.brought.remove(id))?;
    let away = format!("{}/away", address(id));
    let to = [&address(id), &away, "/exchange/diary.csv", columns::COLUMNS].map(|to| visitor.at(to));
    let preview = view::look(&visitor.locale, &upload.name, &to, &look, &zone, visitor.page.is_none());
    upload.show(Shown { at, zone, locale: visitor.locale, page: preview.clone() });
    framed(preview)
}

/// What a person decided, having seen the preview.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Decided {
    take_in_other_home: Option<Yes>,
    leave_out_faulty_rows: Option<Yes>,
}

/// A ticked box.
#[derive(Clone, Copy, Deserialize)]
#[serde(rename_all = "snake_case")]
enum Yes {
    Yes,
}

async fn take_in(
    visitor: Visitor,
    Admits(admits): Admits,
    Path(id): Path<Uuid>,
    Form(decided): Form<Decided>,
) -> Result<Redirect, Error> {
    // Sent twice, also at once, it is done once.
    let Waits::Upload(upload) = visitor.waits(id)? else { return Ok(Redirect::to(&visitor.at(&address(id)))) };
    let _turn = file_turn().await;
    // Who waited finds what the first did.
    let Waits::Upload(_) = visitor.waits(id)? else { return Ok(Redirect::to(&visitor.at(&address(id)))) };
    let store = &visitor.state.store;
    let look = upload.look(store, &visitor.locale, admits).await?;
    let look = decided_on(&visitor.locale, look, &decided, visitor.page.is_none())?;
    let others = if decided.take_in_other_home.is_some() { Others::TakeIn } else { Others::Refuse };
    let done = store.take_in(upload.file.path(), look, others).await.map_err(|e| upload.unfit(&visitor.locale, e))?;
    let report = Report { name: upload.name.clone(), done };
    tracing::info!("Took in a file: {}.", report.counts(&Locale::ENGLISH));
    visitor.state.brought.done(id, report);
    Ok(Redirect::to(&visitor.at(&address(id))))
}

/// The same as it was decided on; refused where something is left to decide.
fn decided_on(l: &Locale, look: Look, decided: &Decided, empty: bool) -> Result<Look, Error> {
    let others = look.others();
    if !others.is_empty() && decided.take_in_other_home.is_none() {
        let what = words!(faults::other_home, homes = homes(l, &others), tick = view::take_in_box(l, empty));
        return Err(Error::refused("home", what));
    }
    Ok(match look {
        Look::Events { preview, recordings } if preview.bad_rows > 0 => {
            if decided.leave_out_faulty_rows.is_none() {
                let what = words!(faults::rows_faulty, tick = say!(l, exchange::leave_out_box));
                return Err(Error::refused("file", what));
            }
            Look::Events { preview: Box::new(preview.without_bad_rows()), recordings }
        }
        look => look,
    })
}

async fn away(visitor: Visitor, Path(id): Path<Uuid>) -> Redirect {
    visitor.state.brought.remove(id);
    Redirect::to(&visitor.at("/exchange"))
}
