//! Sheets of a check to print: the order for the setter, places without words for the scorer. Both follow from the plan,
//! so that they can be printed again at any time.

use super::{health, kindly, known, place, roles, says, thing};
use crate::cautions::for_animal;
use crate::error::Error;
use crate::layout::{Tab, layout_with};
use crate::page::AnimalPage;
use crate::rich;
use axum::extract::Path;
use maud::{Markup, html};
use sayso_advisor::checks::{PER_SITTING, PlannedTrial, order};
use sayso_model::{ProbeDesign, ProbePlan};
use sayso_people::Capability;
use sayso_wording::Message;
use sayso_wording::checks::design;
use sayso_wording::say;

pub async fn setter(page: AnimalPage, Path((_, id)): Path<(String, String)>) -> Result<Markup, Error> {
    let plan = known(&page, &id)?.part;
    let picks = plan.design == ProbeDesign::PickForWord;
    let covered = plan.design == ProbeDesign::PressUnderCovers;
    let (l, name) = (&page.locale, page.card.name.as_str());
    let words = page.story.words();
    let rewards = page.story.rewards();
    Ok(sheet(
        &page,
        plan,
        &say!(l, checks::setters_sheet),
        html! {
            p { (rich!(l, checks::for_setter, only = html! { strong { (say!(l, checks::for_setter_only)) } })) }
            (roles(l, name, plan))
            (kindly(l, name))
            (health(&page))
            @for w in &plan.words {
                @if let Some(r) = words.get(w).and_then(|c| c.reward).and_then(|r| rewards.get(&r)) { (for_animal(&page.locale, &page.card, r)) }
            }
        },
        |trials| {
            let places = || {
                html! { @for at in 1..=usize::from(plan.choices) {
                    th scope="col" { (place(l, plan.design, at)) @if at == 1 { " (" (say!(l, checks::left, name = name)) ")" } }
                } }
            };
            html! {
                thead { tr { th scope="col" { (say!(l, checks::column_number)) }
                    @if picks { th scope="col" { (say!(l, checks::column_play)) } (places()) }
                    @else if covered { th scope="col" { (say!(l, checks::column_hide)) } (places()) }
                    @else { th scope="col" { (say!(l, checks::column_hide)) } th scope="col" { (say!(l, checks::column_button)) } } } }
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
    let (l, name) = (&page.locale, page.card.name.as_str());
    let strong = |text: String| html! { strong { (text) } };
    Ok(sheet(
        &page,
        plan,
        &say!(l, checks::scorers_sheet),
        html! {
            p { (rich!(l, checks::cross, name = name, nothing = strong(say!(l, checks::nothing)), away = strong(say!(l, checks::away)))) }
            p { (say!(l, checks::do_not_look)) }
            (kindly(l, name))
        },
        |trials| {
            let places = trials.first().map_or(0, |t| t.laid_out.len());
            html! {
                thead { tr { th scope="col" { (say!(l, checks::column_number)) } @for at in 1..=places { th scope="col" { (place(l, plan.design, at)) } } th scope="col" { (say!(l, checks::nothing)) } th scope="col" { (say!(l, checks::away)) } th scope="col" { (say!(l, checks::column_seconds)) } } }
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
    let l = &page.locale;
    let seed = plan.seed.to_string();
    layout_with(
        page,
        Tab::Evidence,
        title,
        &["client/print.js"],
        html! {
            div.row.noprint {
                button type="button" .primary data-print hidden { (say!(l, sheets::print)) }
                span.quiet { (say!(l, sheets::print_menu)) }
                @if page.may(Capability::SeeFigures) { a.button href=(super::address(page, plan.probe)) { (say!(l, checks::back_to_one)) } }
            }
            article.print-sheet {
                p { strong { (page.card.name.as_str()) } " · " (design(l, plan.design)) " · " (say!(l, checks::trials, trials = plan.trials))
                    " · " (rich!(l, checks::seed, seed = html! { span.num { (seed) } })) }
                (head)
                @match &drawn {
                    Err(why) => p { (say!(l, checks::cannot_draw, why = why.say(l))) },
                    Ok(trials) => {
                        @for (at, sitting) in trials.chunks(PER_SITTING).enumerate() {
                            h2 { (say!(l, checks::sitting, number = at + 1)) }
                            p.quiet { (say!(l, checks::date_and_who)) " " span.write {} }
                            div.scroll tabindex="0" role="region" aria-label=(say!(l, checks::sitting, number = at + 1)) { table { (table(sitting)) } }
                        }
                    }
                }
                footer.quiet { "Sayso · " (page.story.home().map_or("", |h| h.name.as_str())) " · " (say!(l, checks::prints_again, seed = &seed)) }
            }
        },
    )
}
