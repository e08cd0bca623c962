//! A report of one animal's progress over a period, for the family, a veterinarian or a behaviour professional.

use super::{report, sheet};
use crate::page::AnimalPage;
use crate::pages::people::age;
use axum::extract::Query;
use maud::{Markup, html};
use sayso_advisor::days::days;
use sayso_advisor::ration::ration;
use sayso_advisor::stages::standings;
use sayso_model::LikesTest;
use serde::Deserialize;

const LENGTHS: [u16; 3] = [14, 28, 84];

#[derive(Deserialize)]
pub struct Asked {
    #[serde(default)]
    days: String,
}

pub async fn show(page: AnimalPage, Query(asked): Query<Asked>) -> Markup {
    let length = asked.days.parse().ok().filter(|d| LENGTHS.contains(d)).unwrap_or(28);
    let case = page.case();
    let all = days(&case, length);
    let words = standings(&case);
    let today = ration(&page.story, &page.card, page.now);
    let card = &page.card;
    let from = all.days.first().map(|d| d.day.start(&page.zone));
    sheet(
        &page,
        &format!("Progress of {}", card.name),
        html! {
            div.row.noprint role="group" aria-label="Period" {
                @for l in LENGTHS { a.button href=(format!("?days={l}")) aria-current=[(l == length).then_some("true")] { (l) " days" } }
            }
            p.box { strong { "Not a diagnosis." } " A household\u{2019}s own records, counted by a program. Nobody checked them. They cannot tell what an animal understands, feels or suffers from; for that ask a veterinarian or a qualified behaviour professional." }
            dl.facts {
                dt { "Animal" } dd { (card.name.as_str()) ", " (card.species.name())
                    @if let Some(born) = card.born { ", " @if card.born_estimated { "about " } (age(&page.locale, born, page.now.day(&page.zone))) }
                    @if let Some(kg) = card.weight_kg { ", " (kg) " kg" } }
                dt { "Period" } dd { @if let (Some(first), Some(last)) = (all.days.first(), all.days.last()) { (first.day) " to " (last.day) " (" (page.zone.name()) ")" } }
                @if let Some(t) = page.person_card() { dt { "Printed by" } dd { (t.name.as_str()) } }
                @if let Some(text) = &card.limits { dt { "Limits" } dd { (text.as_str()) } }
                @if let Some(text) = &card.cautions { dt { "Health cautions" } dd { (text.as_str()) } }
            }
            (report::in_short(&page, &all))
            (report::words(words))
            (report::pictures(&page.locale, &all, words))
            (report::answered(&all))
            @if let Some(from) = from { (report::signs(&page, from)) }
            (report::food(&today))
            (report::likes_in_short(&page))
            (report::not_known(&all, words, page.story.of::<LikesTest>(page.id).count(), report::checks(&page)))
        },
    )
}
