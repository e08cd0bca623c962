use super::{history, ranking};
use crate::layout::{Tab, layout};
use crate::page::AnimalPage;
use crate::pages::people::instead;
use maud::{Markup, html};
use sayso_advisor::likes::{LikesReport, likes};
use sayso_advisor::welfare::rest_today;
use sayso_model::RewardId;

pub fn view(page: &AnimalPage) -> Markup {
    let report = likes(&page.case());
    let rest = rest_today(&page.case());
    let name = page.card.name.as_str();
    layout(
        page,
        Tab::Likes,
        &format!("What {name} likes"),
        html! {
            @if rest { p.stop { "No test today: strong signs of stress were noted. Give space; a calm day will come." } }
            @if report.trials == 0 {
                p { "Nothing has been tested yet (n = 0). A test shows what " (name) " picks when it may choose; the first words should be things it picks most." }
            } @else {
                p { "From n = " (report.trials) @if report.trials == 1 { " trial" } @else { " trials" } ", of these without a choice: " (report.no_choice) ". Not choosing is an answer too and is kept." }
            }
            (known(&report))
            @if let Some(why) = report.retest.as_ref().filter(|why| report.known.as_ref().is_none_or(|k| k.words != **why)) { p.caution { strong { "Test again: " } (why) } }
            @if !rest {
                div.row.even { a.button.primary href=(format!("/l/{}/likes/new", page.id)) { "New test" } }
                (next(page, &report))
            }
            @if report.trials > 0 {
                section { h2 { "Ranking" } (ranking(&report)) (hardly_picked(page, &report)) }
                p { a.link href=(format!("/sheets/{}/likes", page.id)) { "A sheet of this to print" } }
            }
            (history::history(page))
            p.quiet { "Ways of testing can disagree: dogs ranked foods differently two at a time and in a row; only the lowest agreed (Cameron, Siddall & Bizo 2021). Likes also change with the hour and the day, so older trials count for less." }
        },
    )
}

/// Ideas in place of what it picks less often than an average thing, beyond chance.
fn hardly_picked(page: &AnimalPage, report: &LikesReport) -> Markup {
    let cards = page.story.rewards();
    let low = report.ranking.iter().filter(|r| r.over_average.high.is_some_and(|high| high < 0.5));
    html! { @for r in low { @if let Some(card) = cards.get(&r.reward).filter(|c| c.active) { (instead(page, card)) } } }
}

fn known(report: &LikesReport) -> Markup {
    html! {
        @if let Some(k) = &report.known {
            section.card {
                p { strong { (k.words) } }
                p.quiet { "Probability that no other thing is clearly better: " (format!("{:.0} %", 100.0 * k.probability)) ", n = " (k.n) " choices. Enough is 90 %; stop in any case at 60 choices, for the animal\u{2019}s sake." }
            }
        }
    }
}

fn next(page: &AnimalPage, report: &LikesReport) -> Markup {
    let cards = page.story.rewards();
    let active = |r: RewardId| cards.get(&r).filter(|c| c.active).map(|c| c.name.as_str());
    html! {
        @if let Some(next) = &report.next
            && report.known.as_ref().is_none_or(|k| !k.well_enough)
            && let (Some(left), Some(right)) = (active(next.left), active(next.right))
        {
            section.card {
                h2 { "What to offer next" }
                p { strong { (left) } " on its left, " strong { (right) } " on its right: " (next.because) "." }
                form method="post" action=(format!("/l/{}/likes/pair", page.id)) {
                    input type="hidden" name="left" value=(next.left);
                    input type="hidden" name="right" value=(next.right);
                    button { "Offer this pair now" }
                }
            }
        }
    }
}
