//! Sheets of a check to print: the order for the setter, places without words for the scorer.

use super::{address, known};
use crate::error::Error;
use crate::layout::Tab;
use crate::page::AnimalPage;
use crate::pages::sheets::{Asked, Framed, printed, view};
use axum::extract::{Path, Query};
use axum::response::Response;
use maud::{Markup, html};
use sayso_model::ProbeId;
use sayso_paper::{Sheet, check_scorer, check_setter};
use sayso_people::Capability;
use sayso_wording::{say, words};

/// Names of the files, as the command's kinds of sheet.
const SETTER: &str = "setter";
const SCORER: &str = "scorer";

pub async fn setter(page: AnimalPage, Path((_, id)): Path<(String, String)>) -> Result<Markup, Error> {
    let probe = known(&page, &id)?.part.probe;
    Ok(shown(&page, probe, &setters(&page, probe)?))
}

pub async fn setter_file(
    page: AnimalPage,
    Path((_, id)): Path<(String, String)>,
    Query(asked): Query<Asked>,
) -> Result<Response, Error> {
    let probe = known(&page, &id)?.part.probe;
    printed(&page, &setters(&page, probe)?, &asked, SETTER).await
}

pub async fn scorer(page: AnimalPage, Path((_, id)): Path<(String, String)>) -> Result<Markup, Error> {
    let probe = known(&page, &id)?.part.probe;
    Ok(shown(&page, probe, &scorers(&page, probe)?))
}

pub async fn scorer_file(
    page: AnimalPage,
    Path((_, id)): Path<(String, String)>,
    Query(asked): Query<Asked>,
) -> Result<Response, Error> {
    let probe = known(&page, &id)?.part.probe;
    printed(&page, &scorers(&page, probe)?, &asked, SCORER).await
}

fn setters(page: &AnimalPage, probe: ProbeId) -> Result<Sheet, Error> {
    let sheet = check_setter(&page.case(), Some(probe), page.locale);
    sheet.ok_or_else(|| Error::NotFound(words!(checks::no_such)))
}

fn scorers(page: &AnimalPage, probe: ProbeId) -> Result<Sheet, Error> {
    let sheet = check_scorer(&page.case(), Some(probe), page.locale);
    sheet.ok_or_else(|| Error::NotFound(words!(checks::no_such)))
}

fn shown(page: &AnimalPage, probe: ProbeId, sheet: &Sheet) -> Markup {
    let l = &page.locale;
    let back = html! { @if page.may(Capability::SeeFigures) { a.button href=(address(page, probe)) { (say!(l, checks::back_to_one)) } } };
    view(page, sheet, Framed { tab: Tab::Evidence, asked: String::new(), choice: html! {}, back: Some(back) })
}
