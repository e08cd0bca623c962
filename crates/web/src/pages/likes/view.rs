use super::{history, ranking};
use crate::layout::{Tab, layout};
use crate::page::AnimalPage;
use crate::pages::people::instead;
use crate::rich;
use maud::{Markup, html};
use sayso_advisor::Because;
use sayso_advisor::later::tests_rest;
use sayso_advisor::likes::{LikesReport, Settled, likes};
use sayso_model::RewardId;
use sayso_people::Capability;
use sayso_wording::advice::{self, because};
use sayso_wording::say;

pub fn view(page: &AnimalPage) -> Markup {
    let report = likes(&page.case());
    let rest = tests_rest(&page.case());
    let (l, name) = (&page.locale, page.card.name.as_str());
    let choosing = if report.choosing == report.trials { "all".to_owned() } else { report.choosing.to_string() };
    let settled = report.known.as_ref().is_some_and(|k| k.verdict != Settled::NotYet);
    layout(
        page,
        Tab::Likes,
        &say!(l, likes::page_title, name = name),
        html! {
            @if rest { p.stop { (say!(l, likes::no_test_today)) } }
            @if report.trials == 0 {
                p { (say!(l, likes::nothing_tested, name = name)) }
            } @else {
                p { (say!(l, likes::from_trials, trials = report.trials, choosing = choosing, none = report.no_choice)) }
            }
            (known(page, &report))
            @if let Some(why @ Because::TestOld { .. }) = &report.retest { p.caution { strong { (say!(l, likes::test_again)) } " " (because(l, name, why)) } }
            @if !rest && page.may(Capability::Plan) {
                div.row.even { a.button.primary[!settled] href=(format!("/a/{}/likes/new", page.id)) { (say!(l, likes::new_test)) } }
                (next(page, &report))
            }
            @if report.trials > 0 {
                section { h2 { (say!(l, likes::ranking)) } (ranking(page, &report)) (hardly_picked(page, &report)) }
                p { a.link href=(format!("/sheets/{}/likes", page.id)) { (say!(l, likes::sheet)) } }
            }
            (history::history(page))
            p.quiet { (say!(l, likes::disagree)) }
        },
    )
}

/// Ideas in place of what it picks less often than an average thing, beyond chance.
fn hardly_picked(page: &AnimalPage, report: &LikesReport) -> Markup {
    let cards = page.story.rewards();
    let low = report.ranking.iter().filter(|r| r.over_average.high.is_some_and(|high| high < 0.5));
    html! { @for r in low { @if let Some(card) = cards.get(&r.reward).filter(|c| c.active) { (instead(page, card)) } } }
}

fn known(page: &AnimalPage, report: &LikesReport) -> Markup {
    let l = &page.locale;
    html! {
        @if let Some(k) = &report.known {
            section.card {
                p { strong { (advice::known(l, k)) } }
                p.quiet { (say!(l, likes::known_how, name = &page.card.name)) }
            }
        }
    }
}

fn next(page: &AnimalPage, report: &LikesReport) -> Markup {
    let (cards, l) = (page.story.rewards(), &page.locale);
    let active = |r: RewardId| cards.get(&r).filter(|c| c.active).map(|c| c.name.as_str());
    html! {
        @if let Some(next) = &report.next
            && report.known.as_ref().is_none_or(|k| k.verdict == Settled::NotYet)
            && let (Some(left), Some(right)) = (active(next.left), active(next.right))
        {
            section.card {
                h2 { (say!(l, likes::next)) }
                p { (rich!(l, likes::next_pair, left = html! { strong { (left) } }, right = html! { strong { (right) } }, name = page.card.name.as_str())) " " (say!(l, advice::next_pair)) }
                form method="post" action=(format!("/a/{}/likes/pair", page.id)) {
                    input type="hidden" name="left" value=(next.left);
                    input type="hidden" name="right" value=(next.right);
                    button { (say!(l, likes::offer_pair)) }
                }
            }
        }
    }
}
