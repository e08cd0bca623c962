//! The page: answers of likes tests and checks that the person noted, newest first. No right answer stands here, nor anyone else's.

use crate::layout::{Tab, layout};
use crate::page::AnimalPage;
use crate::pages::{checks, likes};
use maud::{Markup, html};
use sayso_model::{Fact, LikeTrial, ProbePlan, ProbeTrial};
use sayso_wording::say;

/// Answers shown; the rest is counted.
const MOST: usize = 200;

pub async fn view(page: AnimalPage) -> Markup {
    let (l, cards) = (&page.locale, page.story.rewards());
    let own = |by| page.person.is_some() && by == page.person;
    let name = |reward| cards.get(&reward).map_or_else(|| "?".to_owned(), |c| c.name.to_string());
    let tests: Vec<Fact<'_, LikeTrial>> = page.story.of(page.id).rev().filter(|t: &Fact<_>| own(t.person())).collect();
    let checks: Vec<Fact<'_, ProbeTrial>> =
        page.story.of(page.id).rev().filter(|t: &Fact<_>| own(t.person())).collect();
    let when = |at| l.weekday_date_time(at, &page.zone);
    let plan = |trial: &ProbeTrial| page.story.of::<ProbePlan>(page.id).find(|p| p.part.probe == trial.probe);
    layout(
        &page,
        Tab::None,
        &say!(l, scored::title),
        html! {
            p { (say!(l, scored::intro)) }
            @if tests.is_empty() && checks.is_empty() { p data-test="scored-none" { (say!(l, scored::none)) } }
            @if !tests.is_empty() { h2 { (say!(l, scored::likes)) " " span.quiet { (tests.len()) } } }
            ul.plain { @for t in tests.iter().take(MOST) {
                li.line data-test="scored" { span { (likes::answered(l, t.part, name)) } span.quiet { (when(t.at())) } }
            } }
            @if !checks.is_empty() { h2 { (say!(l, checks::title)) " " span.quiet { (checks.len()) } } }
            ul.plain { @for t in checks.iter().take(MOST) {
                li.line data-test="scored" {
                    span { (say!(l, checks::last_trial, number = t.part.trial)) " "
                        (plan(t.part).map_or_else(|| say!(l, checks::a_choice), |p| checks::answered(l, p.part, t.part))) }
                    span.quiet { (when(t.at())) }
                }
            } }
            p { a href=(Tab::Board.href(Some(page.id))) { (say!(l, scored::back)) } }
        },
    )
}
