//! Where one is led who opens the notebook.

use crate::layout::Tab;
use crate::page::Page;
use axum::response::Redirect;

/// Today's page of the first animal, or where one is added; of several homes one is chosen first. On a server the first page
/// that is open to whoever asks, and where none is, the choice of homes, which says so.
pub async fn front(page: Page) -> Redirect {
    match Tab::first(&page) {
        Some(tab) if page.homes.len() < 2 => Redirect::to(&tab.href(page.animals().first().map(|l| l.animal))),
        _ => Redirect::to("/homes"),
    }
}
