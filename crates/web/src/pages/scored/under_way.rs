//! Tests and checks under way, for who scores and sees no figures: where one notes, and the sheet without words.

use super::address;
use crate::page::AnimalPage;
use crate::pages::{checks, likes};
use maud::{Markup, html};
use sayso_advisor::checks::report;
use sayso_advisor::likes::{Setup, next_setup};
use sayso_model::{LikesTest, ProbeDesign, ProbePlan};
use sayso_people::Capability;
use sayso_wording::say;

/// The list, with the way to what one scored oneself; nothing where one may not see that.
#[must_use]
pub fn under_way(page: &AnimalPage) -> Markup {
    let (l, case) = (&page.locale, page.case());
    let going = |plan: &ProbePlan| report(&case, plan.probe).and_then(Result::ok).is_some_and(|r| !r.finished());
    let plans: Vec<_> = page.story.of::<ProbePlan>(page.id).rev().filter(|p| going(p.part)).collect();
    let open =
        |test: &LikesTest| matches!(next_setup(&page.story, page.id, test.assessment), Some(Setup::Offer { .. }));
    let tests: Vec<_> = page.story.of::<LikesTest>(page.id).rev().filter(|t| open(t.part)).collect();
    html! {
        @if page.leave.is_some() && page.may(Capability::SeeOwnScores) {
            section data-test="to-score" {
                h2 { (say!(l, scored::to_score)) }
                ul.plain {
                    @for t in &tests {
                        li.line { span { strong { (l.date(t.at().day(&page.zone))) } " " (say!(l, likes::format, format = t.part.format.name())) }
                            a.button href=(likes::address(page, t.part.assessment)) { (say!(l, likes::go_on)) } }
                    }
                    @for p in &plans {
                        @let to = checks::address(page, p.part.probe);
                        li.line { span { strong { (l.date(p.at().day(&page.zone))) } " " (sayso_wording::checks::design(l, p.part.design)) }
                            span.row {
                                @if p.part.design != ProbeDesign::WrongDelivery { a.button href={ (to) "/presenter" } { (say!(l, checks::i_am_with, name = &page.card.name)) } }
                                a.button href={ (to) "/scorer" } { (say!(l, checks::scorers_sheet)) }
                            } }
                    }
                }
                p { a.link href=(address(page)) data-test="own-scores" { (say!(l, scored::title)) } }
            }
        }
    }
}
