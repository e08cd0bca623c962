//! Sheets of a check to print: the order for the setter, places without words for the scorer. Both follow from the plan,
//! so that they can be printed again at any time.

use super::{design_words, kindly, known, place_word, roles, says, thing};
use crate::cautions::for_animal;
use crate::error::Error;
use crate::layout::{Tab, layout_with};
use crate::page::AnimalPage;
use axum::extract::Path;
use maud::{Markup, html};
use sayso_advisor::checks::{PER_SITTING, PlannedTrial, order};
use sayso_model::{ProbeDesign, ProbePlan};

pub async fn setter(page: AnimalPage, Path((_, id)): Path<(String, String)>) -> Result<Markup, Error> {
    let plan = known(&page, &id)?.part;
    let picks = plan.design == ProbeDesign::PickForWord;
    let covered = plan.design == ProbeDesign::PressUnderCovers;
    let words = page.story.words();
    let rewards = page.story.rewards();
    Ok(sheet(
        &page,
        plan,
        "Setter\u{2019}s sheet",
        html! {
            p { strong { "For the setter only." } " Fold it away from the presenter and the scorer." }
            (roles(plan))
            (kindly())
            @if let Some(text) = &page.card.cautions { p.caution { strong { "Health: " } (text.as_str()) } }
            @for w in &plan.words {
                @if let Some(r) = words.get(w).and_then(|c| c.reward).and_then(|r| rewards.get(&r)) { (for_animal(&page.card, r)) }
            }
        },
        |trials| {
            html! {
                thead { tr { th scope="col" { "No." }
                    @if picks { th scope="col" { "Play" } @for at in 1..=usize::from(plan.choices) { th scope="col" { "Place " (at) @if at == 1 { " (" (page.card.name.as_str()) "\u{2019}s left)" } } } }
                    @else if covered { th scope="col" { "Hide" } @for at in 1..=usize::from(plan.choices) { th scope="col" { "Place " (at) @if at == 1 { " (" (page.card.name.as_str()) "\u{2019}s left)" } } } }
                    @else { th scope="col" { "Hide" } th scope="col" { "Button" } } } }
                tbody { @for t in trials {
                    tr { th scope="row" .num { (t.number) }
                        @if picks {
                            td { strong { (says(&page, t.word)) } }
                            @for (at, w) in t.laid_out.iter().enumerate() { td { @if at == t.right_place { strong { (thing(&page, *w)) " \u{25cf}" } } @else { (thing(&page, *w)) } } }
                        } @else if covered {
                            td { strong { (thing(&page, t.word)) } }
                            @for (at, w) in t.laid_out.iter().enumerate() { td { @if at == t.right_place { strong { (says(&page, *w)) " \u{25cf}" } } @else { (says(&page, *w)) } } }
                        } @else { td { strong { (thing(&page, t.word)) } } td { (t.right_place + 1) " (" (says(&page, t.word)) ")" } } }
                } }
            }
        },
    ))
}

pub async fn scorer(page: AnimalPage, Path((_, id)): Path<(String, String)>) -> Result<Markup, Error> {
    let plan = known(&page, &id)?.part;
    let place = place_word(plan.design);
    Ok(sheet(
        &page,
        plan,
        "Scorer\u{2019}s sheet",
        html! {
            p { "Cross what it chose first. No choice within about half a minute is " strong { "nothing" } ", going away is " strong { "went away" } "; neither is wrong. Seconds only if timed." }
            p { "Do not look at the setter\u{2019}s sheet, and do not guess what was asked." }
            (kindly())
        },
        |trials| {
            let places = trials.first().map_or(0, |t| t.laid_out.len());
            html! {
                thead { tr { th scope="col" { "No." } @for at in 1..=places { th scope="col" { (place) " " (at) } } th scope="col" { "Nothing" } th scope="col" { "Went away" } th scope="col" { "Seconds" } } }
                tbody { @for t in trials { tr { th scope="row" .num { (t.number) } @for _ in 0..places + 2 { td { "\u{2610}" } } td { span.write {} } } } }
            }
        },
    ))
}

fn sheet(
    page: &AnimalPage,
    plan: &ProbePlan,
    title: &str,
    head: Markup,
    table: impl Fn(&[PlannedTrial]) -> Markup,
) -> Markup {
    let drawn = order(plan);
    layout_with(
        page,
        Tab::Evidence,
        title,
        &["client/print.js"],
        html! {
            div.row.noprint {
                button type="button" .primary data-print hidden { "Print" }
                span.quiet { "or print from the browser\u{2019}s menu" }
                a.button href=(super::address(page, plan.probe)) { "Back to the check" }
            }
            article.print-sheet {
                p { strong { (page.card.name.as_str()) } " · " (design_words(plan.design)) " · " (plan.trials) " trials · seed " span.num { (plan.seed) } }
                (head)
                @match &drawn {
                    Err(why) => p { "The order cannot be drawn from this plan: " (why) "." },
                    Ok(trials) => {
                        @for (at, sitting) in trials.chunks(PER_SITTING).enumerate() {
                            h2 { "Sitting " (at + 1) }
                            p.quiet { "Date and hour, who was there: " span.write {} }
                            div.scroll tabindex="0" role="region" aria-label=(format!("Sitting {}", at + 1)) { table { (table(sitting)) } }
                        }
                    }
                }
                footer.quiet { "Sayso · " (page.story.home().map_or("", |h| h.name.as_str())) " · seed " (plan.seed) ": the same plan prints this order again." }
            }
        },
    )
}
