//! Who holds this device.

mod view;

use crate::error::Error;
use crate::form::Form;
use crate::page::{Page, TEACHER_COOKIE};
use crate::state::AppState;
use axum::Router;
use axum::http::header::SET_COOKIE;
use axum::response::{IntoResponse, Redirect, Response};
use axum::routing::get;
use maud::Markup;
use sayso_model::TeacherId;
use serde::Deserialize;

/// Routes of the page.
pub fn router() -> Router<AppState> {
    Router::new().route("/who", get(show).post(choose))
}

async fn show(page: Page) -> Markup {
    view::view(&page)
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Chosen {
    teacher: TeacherId,
}

async fn choose(page: Page, Form(chosen): Form<Chosen>) -> Result<Response, Error> {
    if !page.teachers().iter().any(|t| t.teacher == chosen.teacher) {
        return Err(Error::refused("teacher", "is not one of this household's people"));
    }
    Ok(([(SET_COOKIE, remembering(chosen.teacher))], Redirect::to("/")).into_response())
}

/// The cookie that keeps who holds this device, for a year.
#[must_use]
pub fn remembering(teacher: TeacherId) -> String {
    format!("{TEACHER_COOKIE}={teacher}; Path=/; Max-Age=31536000; HttpOnly; SameSite=Strict")
}
