//! What an animal likes, on one sheet.

use super::sheet;
use crate::cautions::for_animal;
use crate::page::AnimalPage;
use crate::pages::likes::ranking;
use maud::{Markup, html};
use sayso_advisor::Because;
use sayso_advisor::likes::likes;
use sayso_wording::advice::{because, known};

pub async fn show(page: AnimalPage) -> Markup {
    let report = likes(&page.case());
    let name = page.card.name.as_str();
    let rewards = page.story.rewards_of(page.id);
    sheet(
        &page,
        &format!("What {name} likes"),
        html! {
            @if report.trials == 0 { p { "Nothing has been tested yet (n = 0)." } }
            @else {
                p { "From n = " (report.trials) " trials" @if let Some(last) = report.last { ", the last on " (last.day(&page.zone)) } ", of these without a choice: " (report.no_choice) "." }
                @if let Some(k) = &report.known { p { strong { (known(&page.locale, k)) } } }
                (ranking(&page, &report))
                @if let Some(why @ Because::TestOld { .. }) = &report.retest { p { strong { "Test again: " } (because(&page.locale, page.card.name.as_str(), why)) } }
            }
            @for r in &rewards { (for_animal(&page.card, r)) }
            p.quiet { "Likes change with hunger, hour and day; this is what it chose when it was asked. A line is the 95 % interval; n counts the offers." }
        },
    )
}
