//! What an animal likes, on one sheet.

use super::sheet;
use crate::cautions::for_animal;
use crate::page::AnimalPage;
use crate::pages::likes::ranking;
use maud::{Markup, html};
use sayso_advisor::Because;
use sayso_advisor::likes::likes;
use sayso_wording::advice::{because, known};
use sayso_wording::say;

pub async fn show(page: AnimalPage) -> Markup {
    let report = likes(&page.case());
    let (l, name) = (&page.locale, page.card.name.as_str());
    let rewards = page.story.rewards_of(page.id);
    sheet(
        &page,
        &say!(l, sheets::likes, name = name),
        html! {
            @if report.trials == 0 { p { (say!(l, sheets::nothing_tested)) } }
            @else {
                @if let Some(last) = report.last { p { (say!(l, sheets::tested, trials = report.trials, day = l.date(last.day(&page.zone)), none = report.no_choice)) } }
                @if let Some(k) = &report.known { p { strong { (known(l, k)) } } }
                (ranking(&page, &report))
                @if let Some(why @ Because::TestOld { .. }) = &report.retest { p { strong { (say!(l, sheets::test_again)) } " " (because(l, name, why)) } }
            }
            @for r in &rewards { (for_animal(&page.card, r)) }
            p.quiet { (say!(l, sheets::likes_note, name = name)) }
        },
    )
}
