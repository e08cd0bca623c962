//! Sheets of a check to print: the order for the setter, places without words for the scorer.

use super::{address, known};
use crate::error::Error;
use crate::layout::Tab;
use crate::page::AnimalPage;
use crate::pages::sheets::{Asked, Framed, printed, view};
use axum::extract::{Path, Query};
use axum::response::Response;
use maud::{Markup, html};
use sayso_advisor::Case;
use sayso_model::ProbeId;
use sayso_paper::{Sheet, check_scorer, check_setter};
use sayso_people::Capability;
use sayso_wording::{Locale, say, words};

/// Names of the files, as the command's kinds of sheet.
const SETTER: &str = "setter";
const SCORER: &str = "scorer";

pub async fn setter(page: AnimalPage, Path((_, id)): Path<(String, String)>) -> Result<Markup, Error> {
    shown(&page, &id, check_setter)
}

pub async fn setter_file(
    page: AnimalPage,
    Path((_, id)): Path<(String, String)>,
    Query(asked): Query<Asked>,
) -> Result<Response, Error> {
    let (_, sheet) = made(&page, &id, check_setter)?;
    printed(&page, &sheet, &asked, SETTER).await
}

pub async fn scorer(page: AnimalPage, Path((_, id)): Path<(String, String)>) -> Result<Markup, Error> {
    shown(&page, &id, check_scorer)
}

pub async fn scorer_file(
    page: AnimalPage,
    Path((_, id)): Path<(String, String)>,
    Query(asked): Query<Asked>,
) -> Result<Response, Error> {
    let (_, sheet) = made(&page, &id, check_scorer)?;
    printed(&page, &sheet, &asked, SCORER).await
}

/// Makes one of the two.
type Make = fn(&Case<'_>, Option<ProbeId>, Locale) -> Option<Sheet>;

fn made(page: &AnimalPage, id: &str, make: Make) -> Result<(ProbeId, Sheet), Error> {
    let probe = known(page, id)?.part.probe;
    let sheet = make(&page.case(), Some(probe), page.locale);
    Ok((probe, sheet.ok_or_else(|| Error::NotFound(words!(checks::no_such)))?))
}

fn shown(page: &AnimalPage, id: &str, make: Make) -> Result<Markup, Error> {
    let (probe, sheet) = made(page, id, make)?;
    let l = &page.locale;
    let back = html! { @if page.may(Capability::SeeFigures) { a.button href=(address(page, probe)) { (say!(l, checks::back_to_one)) } } };
    let framed = Framed { tab: Tab::Evidence, asked: String::new(), choice: html! {}, back: Some(back) };
    Ok(view(page, &sheet, framed))
}
