//! Recording real buttons into one file that stays with whoever records, so that the hearing can be measured on them.

mod view;

use crate::page::Page;
use crate::state::AppState;
use axum::Router;
use axum::routing::get;
use maud::Markup;

/// Where the page is.
pub const HREF: &str = "/record-kit";

/// Routes of the page.
pub fn router() -> Router<AppState> {
    Router::new().route(HREF, get(show))
}

async fn show(page: Page) -> Markup {
    view::view(&page)
}
