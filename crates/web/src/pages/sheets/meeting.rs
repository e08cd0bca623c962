//! One page before a meeting, and from it in one tap to the next plan.

use super::{Asked, Framed, printed, view};
use crate::error::Error;
use crate::fields::day;
use crate::page::{AnimalPage, Page};
use crate::pages::talk::{seen, writer};
use crate::typed::Typed;
use axum::extract::Query;
use axum::response::Response;
use maud::{Markup, html};
use sayso_advisor::meeting::first_day;
use sayso_model::Day;
use sayso_paper::Sheet;
use sayso_people::Capability;
use sayso_wording::{say, words};

/// Name of the file, as the command's kind of sheet.
const NAME: &str = "meeting";

impl Asked {
    fn since(&self) -> Option<Day> {
        self.since.parse().ok()
    }
}

/// The page for each animal, where its figures may be seen.
pub fn link(page: &Page) -> Markup {
    let l = &page.locale;
    html! {
        @if page.may(Capability::SeeFigures) { @for animal in page.animals() {
            p { a.button href=(format!("/sheets/{}/meeting", animal.animal)) data-test="meeting" {
                (say!(l, meeting::title, name = animal.name.as_str()))
            } }
        } }
    }
}

fn sheet(page: &AnimalPage, asked: &Asked) -> Result<Sheet, Error> {
    let all = seen(page);
    // Who neither agrees nor advises is told nothing of what was said between those two.
    let talks = (page.may(Capability::Agree) || page.may(Capability::Advise)).then_some(all.as_slice());
    let sheet = sayso_paper::meeting(&page.case(), page.locale, asked.since(), talks);
    sheet.ok_or_else(|| Error::NotFound(words!(errors::no_such_animal)))
}

pub async fn show(page: AnimalPage, Query(asked): Query<Asked>) -> Result<Markup, Error> {
    let l = &page.locale;
    let first = first_day(&page.case(), &seen(&page), asked.since());
    let typed = Typed::default().with("since", first);
    let animal = [("animal", page.id.to_string())];
    let next = [("animal", page.id.to_string()), ("begin", "next".to_owned())];
    let choice = html! {
        form.row.low.noprint method="get" action=(page.path) {
            (day(&typed, "since", &say!(l, meeting::told_since), ""))
            button data-test="since" { (say!(l, meeting::show)) }
        }
        div.row.noprint {
            @if writer(&page).is_some() {
                a.button href=(page.of_home_with("/talk/write", &next)) data-test="next-plan" { (say!(l, meeting::write_plan)) }
            } @else if page.may(Capability::Plan) {
                a.button href=(page.of_home_with("/talk/own", &animal)) data-test="own-plan" { (say!(l, meeting::own_plan)) }
            }
        }
    };
    Ok(view(&page, &sheet(&page, &asked)?, Framed::among_all(&format!("since={first}"), choice)))
}

pub async fn file(page: AnimalPage, Query(asked): Query<Asked>) -> Result<Response, Error> {
    printed(&page, &sheet(&page, &asked)?, &asked, NAME).await
}
