//! Learn: short lessons that make a good teacher of whoever reads them. Nothing is locked, nothing is counted; whoever has
//! read one may say so.

mod address;
mod booklet;
mod drawings;
mod firsts;
mod marks;
mod offered;
mod view;

pub use firsts::{FirstLesson, firsts};
pub use offered::{at_board, for_next, for_word};

use crate::error::Error;
use crate::form::Form;
use crate::page::Page;
use crate::pages::sheets::{Asked, printed};
use crate::state::AppState;
use axum::Router;
use axum::extract::{Path, Query};
use axum::response::{Redirect, Response};
use axum::routing::get;
use marks::Mark;
use maud::Markup;
use sayso_model::facts::{Lesson, lesson};
use sayso_model::{Event, Label, LessonRead, Withdrawal};
use sayso_wording::words;
use serde::Deserialize;
use view::About;

/// Routes of the pages.
pub fn router() -> Router<AppState> {
    Router::new()
        .route("/learn", get(list))
        .route("/learn/booklet", get(booklet))
        .route("/learn/booklet.pdf", get(booklet_file))
        .route("/learn/{lesson}", get(show).post(mark))
}

/// Whom the lessons are to be about; what is not understood counts as not asked.
#[derive(Deserialize)]
struct Of {
    #[serde(default)]
    animal: String,
}

async fn list(page: Page, Query(of): Query<Of>) -> Markup {
    view::list(&page, &About::asked(&page, &of.animal))
}

async fn booklet(page: Page, Query(of): Query<Of>) -> Markup {
    booklet::view(&page, &About::asked(&page, &of.animal))
}

/// All lessons as PDF, without their drawings.
async fn booklet_file(page: Page, Query(asked): Query<Asked>) -> Result<Response, Error> {
    let sheet = sayso_paper::lessons(&page.story, page.now, page.locale);
    printed(&page, &sheet, &asked, "lessons").await
}

/// The lesson of an address.
fn found(id: &str) -> Result<&'static Lesson, Error> {
    lesson(id).ok_or_else(|| Error::NotFound(words!(errors::no_such_lesson)))
}

async fn show(page: Page, Path(id): Path<String>, Query(of): Query<Of>) -> Result<Markup, Error> {
    Ok(view::lesson(&page, &About::asked(&page, &of.animal), found(&id)?))
}

/// Whether it was read, and whether coaches who handed it over may see that.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Marked {
    read: Option<Answer>,
    show: Option<Answer>,
}

#[derive(Clone, Copy, Deserialize, PartialEq, Eq)]
#[serde(rename_all = "lowercase")]
enum Answer {
    Yes,
    No,
}

/// Marks a lesson as read by whoever holds this device, takes their mark back, or shows it to coaches or no longer.
async fn mark(
    page: Page,
    Path(id): Path<String>,
    Query(of): Query<Of>,
    Form(marked): Form<Marked>,
) -> Result<Redirect, Error> {
    let lesson = found(&id)?;
    let me = page.person.ok_or_else(|| Error::refused("person", words!(faults::not_a_person)))?;
    let before = marks::of(&page.story, &lesson.id).remove(&me);
    let shown = marked.show == Some(Answer::Yes);
    let read = LessonRead { lesson: Label::new(&lesson.id).map_err(Error::internal)?, shown };
    let taken_back = |mark: &Mark| -> Vec<Event> {
        mark.events.iter().map(|of| page.about_home(Withdrawal { of: *of, because: None })).collect()
    };
    let events = match (marked.read, before) {
        (Some(Answer::Yes), None) => vec![page.about_home(read)],
        (Some(Answer::No), Some(mark)) => taken_back(&mark),
        (None, Some(mark)) if marked.show.is_some() && mark.shown != shown => {
            let mut events = taken_back(&mark);
            events.push(Event { happened_at: mark.at, ..page.about_home(read) });
            events
        }
        _ => Vec::new(),
    };
    if !events.is_empty() {
        page.keep(events).await?;
    }
    let animal = About::asked(&page, &of.animal).animal;
    Ok(Redirect::to(&address::about(&page, &address::lesson(&lesson.id), animal)))
}
