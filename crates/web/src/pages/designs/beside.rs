//! A caution about another trial on the same days that measures the same: where the second is planned, and on the results of both.

use crate::page::Page;
use maud::{Markup, html};
use sayso_advisor::designs::{Beside, beside, during};
use sayso_model::talks::{agreed, talks};
use sayso_model::{AnimalId, CaseMeasure, Day, DesignPlan};
use sayso_wording::designs::{beside_line, beside_wait, measure};
use sayso_wording::say;
use sayso_wording::talk::line;

/// Of a trial that may be planned.
pub fn planned(page: &Page, animal: AnimalId, plan: &DesignPlan) -> Markup {
    let l = &page.locale;
    let all = beside(&page.story, animal, plan, page.now);
    caution(page, &say!(l, designs::beside_planned, measure = measure(l, plan.measure)), &all, &beside_wait(l, &all))
}

/// Of one whose measure is still to be chosen: every measure that another trial takes on the days to come.
pub fn going(page: &Page, animal: AnimalId, like: &DesignPlan) -> Markup {
    let l = &page.locale;
    html! {
        @for one in CaseMeasure::ALL {
            @let plan = DesignPlan { measure: *one, words: Vec::new(), ..like.clone() };
            @let all = beside(&page.story, animal, &plan, page.now);
            (caution(page, &say!(l, designs::beside_going, measure = measure(l, *one)), &all, &beside_wait(l, &all)))
        }
    }
}

/// Of a trial that was planned, beside what came of it.
pub fn kept(page: &Page, animal: AnimalId, plan: &DesignPlan) -> Markup {
    let l = &page.locale;
    let all = beside(&page.story, animal, plan, page.now);
    caution(
        page,
        &say!(l, designs::beside_kept, measure = measure(l, plan.measure)),
        &all,
        &say!(l, designs::beside_read),
    )
}

/// Of a plan of what to do up to a day, or to a day still to be chosen: trials that go on meanwhile.
pub fn of_a_plan(page: &Page, animal: AnimalId, last: Option<Day>) -> Markup {
    let l = &page.locale;
    let all = during(&page.story, animal, (page.now.day(&page.zone), last), page.now);
    caution(page, &say!(l, designs::beside_plan), &all, &beside_wait(l, &all))
}

/// Of a trial that may be planned: what is agreed to be done on the same days, the home's own plans included.
pub fn of_plans(page: &Page, animal: AnimalId) -> Markup {
    let l = &page.locale;
    let all = agreed(&page.story, &talks(&page.story, page.now), animal, page.now);
    html! {
        @if !all.is_empty() {
            div.caution data-test="beside-plan" {
                strong { (say!(l, designs::beside_agreed)) }
                ul { @for one in all.values() { li { (line(l, &page.story, one)) } } }
                (say!(l, designs::beside_agreed_wait))
            }
        }
    }
}

/// What is said of the others, and what to do; nothing where there is none.
fn caution(page: &Page, says: &str, all: &[Beside<'_>], then: &str) -> Markup {
    html! {
        @if !all.is_empty() {
            div.caution data-test="beside" {
                strong { (says) }
                ul {
                    @for one in all {
                        li { a.link href=(format!("/a/{}/designs/{}", one.animal, one.plan.part.trial)) { (beside_line(&page.locale, one)) } }
                    }
                }
                (then)
            }
        }
    }
}

/// The day from which a small trial would be drawn now.
pub fn soonest(page: &Page) -> Day {
    page.now.day(&page.zone).plus(1)
}
