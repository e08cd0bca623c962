//! Where one is led who opens the notebook.

use crate::layout::Tab;
use crate::page::Page;
use axum::response::Redirect;

/// Today's page of the animal with most words, of equals the first, or where one is added; of several homes one is chosen first. On a
/// server the first page that is open to whoever asks, and where none is, the choice of homes, which says so.
pub async fn front(page: Page) -> Redirect {
    match Tab::first(&page) {
        Some(tab) if page.homes.len() < 2 => {
            let words = |animal| page.story.words_of(animal).len();
            // The last of equals is the greatest: from the end, that is the first.
            let most = page.animals().into_iter().map(|l| l.animal).rev().max_by_key(|animal| words(*animal));
            Redirect::to(&tab.href(most))
        }
        _ => Redirect::to("/homes"),
    }
}
