//! Planned checks of understanding: planned by exact power, run by people who must not give the answer away, and read as
//! planned.

mod plan;
mod result;
mod run;
mod sheet;
mod trial;
mod view;

use crate::error::Error;
use crate::page::AnimalPage;
use crate::state::AppState;
use crate::typed::named;
use axum::Router;
use axum::routing::{get, post};
use maud::{Markup, html};
use sayso_model::{Fact, ProbeDesign, ProbeId, ProbePlan, WordId};

/// Routes of the page.
pub fn router() -> Router<AppState> {
    Router::new()
        .route("/l/{animal}/checks", get(view::list))
        .route("/l/{animal}/checks/new", get(plan::ask).post(plan::begin))
        .route("/l/{animal}/checks/{probe}", get(view::one))
        .route("/l/{animal}/checks/{probe}/setter", get(run::setter))
        .route("/l/{animal}/checks/{probe}/presenter", get(run::presenter))
        .route("/l/{animal}/checks/{probe}/trial", post(trial::note))
        .route("/l/{animal}/checks/{probe}/undo", post(trial::undo))
        .route("/l/{animal}/checks/{probe}/sheet", get(sheet::setter))
        .route("/l/{animal}/checks/{probe}/scorer", get(sheet::scorer))
}

/// A check of this animal by the id in its address.
fn known<'a>(page: &'a AnimalPage, id: &str) -> Result<Fact<'a, ProbePlan>, Error> {
    let id: ProbeId = named(id, "check")?;
    let plan = page.story.of::<ProbePlan>(page.id).find(|p| p.part.probe == id);
    plan.ok_or_else(|| Error::NotFound("This notebook knows no such check of this animal.".into()))
}

fn address(page: &AnimalPage, probe: ProbeId) -> String {
    format!("/l/{}/checks/{probe}", page.id)
}

fn says(page: &AnimalPage, word: WordId) -> String {
    page.story.words().get(&word).map_or_else(|| "?".to_owned(), |c| c.says.to_string())
}

/// The word's thing by name, or the word itself.
fn thing(page: &AnimalPage, word: WordId) -> String {
    let reward = page.story.words().get(&word).and_then(|c| c.reward);
    let name = reward.and_then(|r| page.story.rewards().get(&r).map(|c| c.name.to_string()));
    name.unwrap_or_else(|| says(page, word))
}

const fn design_words(design: ProbeDesign) -> &'static str {
    match design {
        ProbeDesign::PickForWord => "hear a word, pick the thing",
        ProbeDesign::PressForThing => "see a thing go, press its button",
        ProbeDesign::PressUnderCovers => "see a thing go, press its button; buttons swapped under covers",
        ProbeDesign::WrongDelivery => "another thing than asked for",
    }
}

/// What a place is called.
const fn place_word(design: ProbeDesign) -> &'static str {
    match design {
        ProbeDesign::PickForWord | ProbeDesign::PressUnderCovers => "Place",
        ProbeDesign::PressForThing | ProbeDesign::WrongDelivery => "Button",
    }
}

/// Everything is laid out and drawn as the animal sees it; who faces it sees it the other way round.
#[must_use]
pub fn whose_left(name: &str) -> String {
    format!("Drawn as {name} sees it. If you face {name}, {name}\u{2019}s left is on your right.")
}

/// What it means for the animal that buttons change places.
const GOES_BY_PLACE: &str = "Only for an animal that tells its buttons by look, picture or smell. One that goes by place will be at chance here, and that is no failure.";

/// Who does what, and who may know what.
fn roles(plan: &ProbePlan) -> Markup {
    let picks = plan.design == ProbeDesign::PickForWord;
    let covered = plan.design == ProbeDesign::PressUnderCovers;
    html! {
        dl.facts.roles {
            dt { "Setter" span.hint { "knows the answer" } }
            @if picks { dd { "Lays the things out by the list, equally near, then goes where the animal cannot see anyone. Plays the word from there, once. Says nothing else." } }
            @else if covered { dd { "Covers the board and puts the buttons under the covers by the list. Lets the animal see the thing, shuts it away out of sight, and goes where the animal cannot see anyone." } }
            @else { dd { "Lets the animal see the thing, shuts it away, and goes where the animal cannot see anyone. Leaves every button where it always is." } }
            dt { "Presenter" span.hint { @if plan.blind { "must not know" } @else { "here: knows; so it is not blind" } } }
            @if picks { dd { "Is with the animal; turned away, or in dark glasses, while things are laid out and until the choice is made. Does not point, nod, speak or hurry." } }
            @else if covered { dd { "Comes in once the thing is gone; takes the covers off from behind, without looking at the buttons. Does not know which button lies where. Does not point, nod, speak or hurry." } }
            @else { dd { "Comes in once the thing is gone. Stands behind the middle of the board, looks straight ahead. Does not point, nod, speak or hurry." } }
            dt { "Scorer" span.hint { "must not know" } }
            dd { "Notes the number of what was chosen first, without knowing which was right: the presenter on the phone, or a third person from a recording without sound." }
        }
        @if covered { p.quiet { (GOES_BY_PLACE) } }
    }
}

/// The rules that keep the animal well.
fn kindly() -> Markup {
    html! {
        p.caution { strong { "Stop at any sign of stress" } " (turning away, lip licking, panting, a tucked tail, flattened ears, hiding), at a growl at once, and after ten trials at most. It may leave at any time; never call it back. Whatever it chooses, it gets: a check is no lesson and nothing is ever wrong for the animal." }
    }
}
