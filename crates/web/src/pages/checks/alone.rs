//! A check that one person carries out, who knows the answer: one page, one next thing at a time. What is laid out stands on it, so
//! nothing that comes of it is blind.

use super::known;
use super::run::{comes, enough, last, lay, stop_for_now, stops, taps};
use crate::error::Error;
use crate::fields::summary;
use crate::layout::{Tab, layout};
use crate::page::AnimalPage;
use crate::typed::Typed;
use axum::extract::{Path, Query};
use maud::{Markup, html};
use sayso_model::ProbePlan;
use sayso_wording::say;
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
    let l = &page.locale;
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
            (comes(page, plan, |trial| {
                if laid == trial.number.to_string() {
                    taps(page, plan, trial.number, trial.laid_out.len(), Some(&trial.laid_out), typed)
                } else {
                    lay(page, plan, trial, true)
                }
            }))
            (last(page, plan))
            (stop_for_now(page, plan))
        },
    )
}
