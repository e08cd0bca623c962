//! Who belongs to the notebook: the household, its people, its animals, what they may want, the rules of the house.
//! Every change is a new version of a card; the versions before stay in the log.

mod animal;
mod food;
mod home;
mod ideas;
mod person;
mod pieces;
mod reward;
mod rule;
mod same_thing;
pub mod steps;
mod view;
mod weight;

pub use animal::age;
pub use ideas::instead;
pub use steps::{StepName, along, next, onward, steps};

use crate::page::Page;
use crate::state::AppState;
use axum::Router;
use axum::routing::get;
use maud::Markup;
use sayso_model::AnimalId;

/// Routes of the pages.
pub fn router() -> Router<AppState> {
    Router::new()
        .route("/people", get(show))
        .merge(home::router())
        .merge(person::router())
        .merge(animal::router())
        .merge(food::router())
        .merge(ideas::router())
        .merge(reward::router())
        .merge(rule::router())
}

/// The page on an animal's food.
#[must_use]
pub fn food_of(animal: AnimalId) -> String {
    format!("/people/animal/{animal}/food")
}

async fn show(page: Page) -> Markup {
    view::view(&page)
}
