//! What is left of the day's food rewards, in a line; how it is computed behind the tap.

use super::advice::caution;
use crate::page::AnimalPage;
use maud::{Markup, html};
use sayso_advisor::ration::Ration;
use sayso_wording::hazards::food;
use sayso_wording::ration::{basis, caution as to_bear_in_mind, refusal};
use sayso_wording::say;

/// The day's food rewards.
#[must_use]
pub fn ration(page: &AnimalPage, ration: &Ration) -> Markup {
    let l = &page.locale;
    let kcal = |x: f64| say!(l, unit::kcal, value = l.number(x, 0));
    let pieces: Vec<String> = ration
        .rewards
        .iter()
        .filter_map(|r| r.pieces.map(|n| say!(l, today::pieces, count = n, name = &r.name)))
        .collect();
    html! {
        section data-test="ration" {
            @match (ration.left_kcal, ration.budget_kcal) {
                (Some(left), Some(budget)) => {
                    details {
                        summary {
                            span {
                                @if ration.over_kcal > 0.0 { (say!(l, today::food_over, over = kcal(ration.over_kcal), of = kcal(budget))) }
                                @else if pieces.is_empty() { (say!(l, today::food_left, left = kcal(left), of = kcal(budget))) }
                                @else { (say!(l, today::food_left_pieces, pieces = l.or(&pieces))) }
                            }
                        }
                        meter.wide min="0" max=(budget) value=(left) aria-label=(say!(l, today::food_left, left = kcal(left), of = kcal(budget))) {}
                        p { (say!(l, today::food_left, left = kcal(left), of = kcal(budget))) " " (say!(l, today::feeds, count = ration.feeds)) }
                        @for r in &ration.rewards {
                            @if r.pieces.is_none() { p { (say!(l, today::energy_unknown, name = &r.name)) } }
                            @for c in &r.cautions { (caution(page, &l.colon(&r.name, &food(l, c)))) }
                        }
                        (computed(page, ration))
                    }
                }
                _ => {
                    @if let Some(why) = &ration.refusal { p.caution { (refusal(l, page.card.name.as_str(), why)) } }
                    @if ration.feeds > 0 { p { (say!(l, today::given, kcal = kcal(ration.given_kcal))) " " (say!(l, today::feeds, count = ration.feeds)) } }
                    details { summary { (say!(l, today::how_computed)) } (computed(page, ration)) }
                }
            }
        }
    }
}

fn computed(page: &AnimalPage, ration: &Ration) -> Markup {
    let l = &page.locale;
    let kcal = |x: f64| say!(l, unit::kcal, value = l.number(x, 0));
    html! {
        @if let (Some(day), Some(from)) = (ration.day_kcal, &ration.basis) {
            p { (say!(l, today::whole_day, kcal = kcal(day), basis = basis(l, from))) }
        }
        @if let Some((low, high)) = ration.range_kcal { p { (say!(l, today::individuals, low = kcal(low), high = kcal(high))) } }
        @for c in &ration.cautions { p { (to_bear_in_mind(l, c)) } }
    }
}
