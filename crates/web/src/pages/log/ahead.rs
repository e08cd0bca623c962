//! What is said of events dated after now.

use super::line::{address, when, who};
use crate::page::AnimalPage;
use crate::rich;
use maud::{Markup, html};
use sayso_wording::say;

/// A note where events about this animal or the household are dated after now; nothing otherwise.
#[must_use]
pub fn ahead(page: &AnimalPage) -> Markup {
    let mut all = page.story.ahead(page.now);
    all.retain(|e| e.animal.is_none_or(|l| l == page.id));
    let Some(first) = all.first() else { return html! {} };
    let (locale, n) = (&page.locale, all.len());
    let link = html! { a href=(address(page.id, first.id)) { (when(page, first.happened_at)) } };
    html! {
        p.caution role="note" data-test="ahead" {
            strong { (say!(locale, log::ahead, n = n)) } " "
            (rich!(locale, log::ahead_why, n = n, when = link, who = who(page, first)))
        }
    }
}
