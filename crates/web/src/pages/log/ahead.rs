//! What is said of events dated after now.

use super::address;
use super::line::{how, when, who};
use crate::page::AnimalPage;
use maud::{Markup, html};

/// A note where events about this animal or the household are dated after now; nothing otherwise.
#[must_use]
pub fn ahead(page: &AnimalPage) -> Markup {
    let mut all = page.story.ahead(page.now);
    all.retain(|e| e.animal.is_none_or(|l| l == page.id));
    let Some(first) = all.first() else { return html! {} };
    let n = all.len();
    html! {
        p.caution role="note" data-test="ahead" {
            strong { @if n == 1 { "1 event is dated after now. " } @else { (n) " events are dated after now. " } }
            @if n == 1 { "It is of " } @else { "The first is of " }
            a href=(address(page.id, first.id)) { (when(page, first.happened_at)) }
            (who(page, first)) (how(first.source))
            ". The clock of the device that noted this was ahead. Cards and recordings count already; "
            "everything else counts from its time on. Set that clock right, and put the times right in the log."
        }
    }
}
