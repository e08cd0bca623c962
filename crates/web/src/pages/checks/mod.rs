//! Planned checks of understanding: planned by exact power, run by people who must not give the answer away, and read as
//! planned.

mod alone;
mod plan;
mod result;
mod run;
mod sheet;
mod trial;
mod view;

pub use run::answered;

use crate::error::Error;
use crate::page::AnimalPage;
use crate::rich;
use crate::state::AppState;
use crate::typed::named;
use axum::Router;
use axum::routing::{get, post};
use maud::{Markup, html};
use sayso_advisor::advice::NamedWord;
use sayso_advisor::checks;
use sayso_model::{Fact, ProbeDesign, ProbeId, ProbePlan, WordId};
use sayso_wording::signs::stress;
use sayso_wording::{Locale, say, words};

/// Routes of the page.
pub fn router() -> Router<AppState> {
    Router::new()
        .route("/a/{animal}/checks", get(view::list))
        .route("/a/{animal}/checks/new", get(plan::ask).post(plan::begin))
        .route("/a/{animal}/checks/{probe}", get(view::one))
        .route("/a/{animal}/checks/{probe}/setter", get(run::setter))
        .route("/a/{animal}/checks/{probe}/presenter", get(run::presenter))
        .route("/a/{animal}/checks/{probe}/alone", get(alone::show))
        .route("/a/{animal}/checks/{probe}/trial", post(trial::note))
        .route("/a/{animal}/checks/{probe}/undo", post(trial::undo))
        .route("/a/{animal}/checks/{probe}/sheet", get(sheet::setter))
        .route("/a/{animal}/checks/{probe}/sheet.pdf", get(sheet::setter_file))
        .route("/a/{animal}/checks/{probe}/scorer", get(sheet::scorer))
        .route("/a/{animal}/checks/{probe}/scorer.pdf", get(sheet::scorer_file))
}

/// A check of this animal by the id in its address.
fn known<'a>(page: &'a AnimalPage, id: &str) -> Result<Fact<'a, ProbePlan>, Error> {
    let id: ProbeId = named(id, "check")?;
    let plan = page.story.of::<ProbePlan>(page.id).find(|p| p.part.probe == id);
    plan.ok_or_else(|| Error::NotFound(words!(checks::no_such)))
}

/// The address of a check.
#[must_use]
pub fn address(page: &AnimalPage, probe: ProbeId) -> String {
    format!("/a/{}/checks/{probe}", page.id)
}

fn says(page: &AnimalPage, word: WordId) -> String {
    NamedWord::of(&page.story, word).says
}

/// The word's thing by name, or the word itself.
fn thing(page: &AnimalPage, word: WordId) -> String {
    checks::thing(&page.story, word)
}

/// Everything is laid out and drawn as the animal sees it; who faces it sees it the other way round.
#[must_use]
pub fn whose_left(l: &Locale, name: &str) -> String {
    say!(l, checks::whose_left, name = name)
}

/// Who does what, and who may know what.
fn roles(l: &Locale, name: &str, plan: &ProbePlan) -> Markup {
    html! {
        dl.facts.roles {
            @for role in sayso_wording::checks::roles(l, name, plan) {
                dt { (role.who) span.hint { (role.knows) } }
                dd { (role.does) }
            }
        }
        @if plan.design == ProbeDesign::PressUnderCovers { p.quiet { (say!(l, checks::goes_by_place)) } }
    }
}

/// The rules that keep the animal well.
fn kindly(page: &AnimalPage) -> Markup {
    let (l, stop) = (&page.locale, html! { strong { (say!(&page.locale, checks::kindly_stop)) } });
    let signs = stress(l, page.card.species);
    html! {
        p.caution { (rich!(l, checks::kindly, name = page.card.name.as_str(), stop = stop, signs = signs)) }
    }
}

/// What a veterinarian said, where the card holds it.
fn health(page: &AnimalPage) -> Markup {
    html! {
        @if let Some(text) = &page.card.cautions {
            p.caution { strong { (say!(&page.locale, checks::health)) } " " (text.as_str()) }
        }
    }
}
