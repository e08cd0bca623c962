//! A check that one person carries out, who knows the answer: one page, one next thing at a time. What is laid out stands on it, so
//! nothing that comes of it is blind.

use super::run::{enough, last, lay, stops, taps};
use super::{address, known};
use crate::error::Error;
use crate::fields::summary;
use crate::layout::{Tab, layout};
use crate::page::AnimalPage;
use crate::typed::Typed;
use axum::extract::{Path, Query};
use maud::{Markup, html};
use sayso_advisor::checks::{Next, next_trial};
use sayso_model::{ProbeDesign, ProbePlan};
use sayso_people::Capability;
use sayso_wording::{Message, say};
use serde::Deserialize;

#[derive(Deserialize)]
pub struct Asked {
    #[serde(default)]
    twice: String,
    /// The trial that was laid out; what came of it is asked next.
    #[serde(default)]
    laid: String,
}

pub async fn show(
    page: AnimalPage,
    Path((_, id)): Path<(String, String)>,
    Query(asked): Query<Asked>,
) -> Result<Markup, Error> {
    let plan = known(&page, &id)?.part;
    Ok(view(&page, plan, &Typed::default(), &asked.laid, !asked.twice.is_empty()))
}

/// The page where the trial of this number was laid out, or has to be.
pub fn view(page: &AnimalPage, plan: &ProbePlan, typed: &Typed, laid: &str, twice: bool) -> Markup {
    let next = next_trial(&page.story, page.id, plan.probe).unwrap_or(Ok(Next::Done));
    let (l, name) = (&page.locale, page.card.name.as_str());
    layout(
        page,
        Tab::Evidence,
        &say!(l, checks::alone),
        html! {
            (summary(typed))
            @if twice { p.caution role="status" { (say!(l, checks::noted_already)) } }
            p.quiet { (say!(l, checks::who_one_hint)) }
            (stops(page))
            (enough(page, plan))
            @match next {
                Err(why) => p { (say!(l, checks::cannot_run, why = why.say(l))) },
                Ok(Next::Done) => {
                    p { strong { (say!(l, checks::all_done, trials = plan.trials)) } " " (say!(l, checks::thanks, name = name)) }
                    @if page.may(Capability::SeeFigures) { a.button.primary.wide href=(address(page, plan.probe)) { (say!(l, checks::see)) } }
                }
                Ok(Next::Trial(_)) if plan.design == ProbeDesign::WrongDelivery => p { (say!(l, checks::at_board)) },
                Ok(Next::Trial(trial)) if laid == trial.number.to_string() => (taps(page, plan, trial.number, trial.laid_out.len(), typed)),
                Ok(Next::Trial(trial)) => (lay(page, plan, &trial, true)),
            }
            (last(page, plan))
            @let away = if page.may(Capability::SeeFigures) { address(page, plan.probe) } else { Tab::Board.href(Some(page.id)) };
            p { a href=(away) { (say!(l, checks::stop_for_now)) } " " span.quiet { (say!(l, checks::stop_for_now_kept)) } }
        },
    )
}
