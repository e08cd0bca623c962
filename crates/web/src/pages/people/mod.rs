//! Who belongs to the notebook: the household, its people, its animals, what they may want, the rules of the house.
//! Every change is a new version of a card; the versions before stay in the log.

mod animal;
mod home;
mod person;
mod pieces;
mod reward;
mod rule;
pub mod steps;
mod view;

pub use animal::age;
pub use steps::steps;

use crate::page::Page;
use crate::state::AppState;
use axum::Router;
use axum::routing::get;
use maud::Markup;

/// Routes of the pages.
pub fn router() -> Router<AppState> {
    Router::new()
        .route("/people", get(show))
        .merge(home::router())
        .merge(person::router())
        .merge(animal::router())
        .merge(reward::router())
        .merge(rule::router())
}

async fn show(page: Page) -> Markup {
    view::view(&page)
}
