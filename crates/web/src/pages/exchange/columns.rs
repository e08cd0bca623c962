//! What files may hold and by which columns: the page of the documentation, carried in the binary.

use crate::pages::methods::in_english;
use crate::visitor::Visitor;
use maud::Markup;
use sayso_wording::say;

/// Its address.
pub const COLUMNS: &str = "/exchange/columns";
const TEXT: &str = include_str!("../../../../../docs/import-export.md");

/// The page, also for an empty notebook: a file may be what begins it.
pub async fn show(visitor: Visitor) -> Markup {
    let l = &visitor.locale;
    visitor.framed(&say!(l, exchange::columns_title), in_english(l, TEXT, "methods/"))
}
