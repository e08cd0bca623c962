//! Where one is led who opens the notebook.

use crate::layout::Tab;
use crate::page::Page;
use axum::response::Redirect;

/// Today's page of the first animal, or where one is added; of several homes one is chosen first.
pub async fn front(page: Page) -> Redirect {
    if page.homes.len() > 1 {
        return Redirect::to("/homes");
    }
    Redirect::to(&Tab::Today.href(page.animals().first().map(|l| l.animal)))
}
