//! A report of one animal's progress over a period, for the family, a veterinarian or a behaviour professional.

use super::{report, sheet};
use crate::page::AnimalPage;
use crate::pages::people::age;
use crate::rich;
use axum::extract::Query;
use maud::{Markup, html};
use sayso_advisor::days::days;
use sayso_advisor::ration::ration;
use sayso_advisor::stages::standings;
use sayso_model::LikesTest;
use sayso_wording::say;
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
    let (l, name) = (&page.locale, card.name.as_str());
    let lead = html! { strong { (say!(l, sheets::no_diagnosis_lead)) } };
    sheet(
        &page,
        &say!(l, sheets::progress, name = name),
        html! {
            div.row.noprint role="group" aria-label=(say!(l, sheets::period)) {
                @for days in LENGTHS { a.button href=(format!("?days={days}")) aria-current=[(days == length).then_some("true")] { (say!(l, sheets::days, days = days)) } }
            }
            p.box { (rich!(l, sheets::no_diagnosis, lead = lead)) }
            dl.facts {
                dt { (say!(l, sheets::animal)) } dd { (name) ", " (say!(l, start::species_name, species = card.species.name()))
                    @if let Some(born) = card.born {
                        @let age = age(l, born, page.now.day(&page.zone));
                        ", " @if card.born_estimated { (say!(l, sheets::about, age = age)) } @else { (age) } }
                    @if let Some(kg) = card.weight_kg { ", " (l.weight(kg.get())) } }
                dt { (say!(l, sheets::period)) } dd { @if let (Some(first), Some(last)) = (all.days.first(), all.days.last()) {
                    (say!(l, sheets::dates, from = l.date(first.day), to = l.date(last.day), zone = page.zone.name())) } }
                @if let Some(t) = page.person_card() { dt { (say!(l, sheets::printed_by)) } dd { (t.name.as_str()) } }
                @if let Some(text) = &card.limits { dt { (say!(l, sheets::limits)) } dd { (text.as_str()) } }
                @if let Some(text) = &card.cautions { dt { (say!(l, sheets::cautions)) } dd { (text.as_str()) } }
            }
            (report::in_short(&page, &all))
            (report::words(&page, words))
            (report::pictures(l, &all, words))
            (report::answered(&page, &all))
            @if let Some(from) = from { (report::signs(&page, from)) }
            (report::food(l, &today))
            (report::likes_in_short(&page))
            (report::not_known(&page, &all, words, page.story.of::<LikesTest>(page.id).count(), report::checks(&page)))
        },
    )
}
