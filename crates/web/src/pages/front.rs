//! Where one is led who opens the notebook.

use crate::layout::Tab;
use crate::leave::Leave;
use crate::page::Page;
use axum::response::Redirect;
use sayso_people::Capability;

/// Today's page of the first animal, or where one is added; of several homes one is chosen first. Whoever may only score begins on
/// the Board.
pub async fn front(page: Page) -> Redirect {
    if page.homes.len() > 1 {
        return Redirect::to("/homes");
    }
    let may = |leave: &Leave| leave.may(Capability::SeeToday, page.now) || leave.may(Capability::SeeFigures, page.now);
    let first = if page.leave.as_ref().is_none_or(may) { Tab::Today } else { Tab::Board };
    Redirect::to(&first.href(page.animals().first().map(|l| l.animal)))
}
