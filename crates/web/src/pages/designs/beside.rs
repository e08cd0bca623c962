//! A caution about another trial on the same days that measures the same: where the second is planned, and on the results of both.

use crate::page::Page;
use maud::{Markup, html};
use sayso_advisor::designs::{Beside, beside};
use sayso_model::{AnimalId, CaseMeasure, Day, DesignPlan};
use sayso_wording::designs::{beside_line, beside_wait, measure};
use sayso_wording::say;

/// Of a trial that may be planned.
pub fn planned(page: &Page, animal: AnimalId, plan: &DesignPlan) -> Markup {
    let l = &page.locale;
    let all = beside(&page.story, animal, plan, page.now);
    html! {
        @if !all.is_empty() {
            div.caution data-test="beside" {
                strong { (say!(l, designs::beside_planned, measure = measure(l, plan.measure))) }
                (list(page, &all))
                (beside_wait(l, &all))
            }
        }
    }
}

/// Of one whose measure is still to be chosen: every measure that another trial takes on the days to come.
pub fn going(page: &Page, animal: AnimalId, like: &DesignPlan) -> Markup {
    let l = &page.locale;
    let found = CaseMeasure::ALL.iter().filter_map(|one| {
        let all =
            beside(&page.story, animal, &DesignPlan { measure: *one, words: Vec::new(), ..like.clone() }, page.now);
        (!all.is_empty()).then_some((*one, all))
    });
    html! {
        @for (one, all) in found {
            div.caution data-test="beside" {
                strong { (say!(l, designs::beside_going, measure = measure(l, one))) }
                (list(page, &all))
                (beside_wait(l, &all))
            }
        }
    }
}

/// Of a trial that was planned, beside what came of it.
pub fn kept(page: &Page, animal: AnimalId, plan: &DesignPlan) -> Markup {
    let l = &page.locale;
    let all = beside(&page.story, animal, plan, page.now);
    html! {
        @if !all.is_empty() {
            div.caution data-test="beside" {
                strong { (say!(l, designs::beside_kept, measure = measure(l, plan.measure))) }
                (list(page, &all))
                (say!(l, designs::beside_read))
            }
        }
    }
}

fn list(page: &Page, all: &[Beside<'_>]) -> Markup {
    html! {
        ul {
            @for one in all {
                li { a.link href=(format!("/a/{}/designs/{}", one.animal, one.plan.part.trial)) { (beside_line(&page.locale, one)) } }
            }
        }
    }
}

/// The day from which a small trial would be drawn now.
pub fn soonest(page: &Page) -> Day {
    page.now.day(&page.zone).plus(1)
}
