use super::{history, ranking};
use crate::layout::{Tab, layout};
use crate::page::AnimalPage;
use maud::{Markup, html};
use sayso_advisor::Because;
use sayso_advisor::likes::{LikesReport, likes};
use sayso_advisor::welfare::rest_today;
use sayso_model::RewardId;
use sayso_wording::advice::{self, because};
use sayso_wording::say;

pub fn view(page: &AnimalPage) -> Markup {
    let report = likes(&page.case());
    let rest = rest_today(&page.case());
    let (l, name) = (&page.locale, page.card.name.as_str());
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
            (known(page, &report))
            @if let Some(why @ Because::TestOld { .. }) = &report.retest { p.caution { strong { "Test again: " } (because(l, name, why)) } }
            @if !rest {
                div.row.even { a.button.primary href=(format!("/l/{}/likes/new", page.id)) { "New test" } }
                (next(page, &report))
            }
            @if report.trials > 0 {
                section { h2 { "Ranking" } (ranking(page, &report)) }
                p { a.link href=(format!("/sheets/{}/likes", page.id)) { "A sheet of this to print" } }
            }
            (history::history(page))
            p.quiet { "Ways of testing can disagree: dogs ranked foods differently two at a time and in a row; only the lowest agreed (Cameron, Siddall & Bizo 2021). Likes also change with the hour and the day, so older trials count for less." }
        },
    )
}

fn known(page: &AnimalPage, report: &LikesReport) -> Markup {
    html! {
        @if let Some(k) = &report.known {
            section.card {
                p { strong { (advice::known(&page.locale, k)) } }
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
            && report.known.as_ref().is_none_or(|k| !k.well_enough())
            && let (Some(left), Some(right)) = (active(next.left), active(next.right))
        {
            section.card {
                h2 { "What to offer next" }
                p { strong { (left) } " on " (page.card.name.as_str()) "\u{2019}s left, " strong { (right) } " on the right. " (say!(&page.locale, advice::next_pair)) }
                form method="post" action=(format!("/l/{}/likes/pair", page.id)) {
                    input type="hidden" name="left" value=(next.left);
                    input type="hidden" name="right" value=(next.right);
                    button { "Offer this pair now" }
                }
            }
        }
    }
}
