//! A change that was agreed, tried by lot: what the trial would be, one tap that draws it, and what came of it, beside the agreement.

use super::{animal_of, no_such, rests, seen};
use crate::error::Error;
use crate::page::Page;
use crate::pages::designs::beside;
use crate::typed::{Typed, named};
use axum::response::Redirect;
use maud::{Markup, html};
use sayso_advisor::designs::{Standing as Progress, Try, report, trial, trying};
use sayso_model::talks::{Standing, Talk};
use sayso_model::{AnimalId, DesignId, Event, EventId};
use sayso_people::Capability;
use sayso_wording::designs::{measured_by, sentence, small};
use sayso_wording::{say, words};
use uuid::Uuid;

/// What stands on a card about a trial of it.
pub fn tried(page: &Page, talk: &Talk<'_>) -> Markup {
    if let Some((animal, id)) = trying(&page.story, talk.id()) {
        return came(page, animal, id);
    }
    let Some(tries) = Try::of(&talk.part.proposes) else { return html! {} };
    let Some(animal) = animal_of(page, talk) else { return html! {} };
    let l = &page.locale;
    let agreed = talk.standing == Standing::Accepted;
    html! {
        @if talk.is_live() {
            p.quiet data-test="as-trial" {
                (say!(l, talk::as_trial, what = small(l, tries.question), measure = measured_by(l, &page.story, &tries)))
            }
            (beside::of_plans(page, animal))
            (beside::planned(page, animal, &tries.plan(DesignId(Uuid::nil()), None, beside::soonest(page), 0)))
        }
        @if agreed && page.may(Capability::Plan) && !rests(page, animal) {
            form.row method="post" action=(page.of_home("/talk/try")) {
                button.primary name="of" value=(talk.id()) data-test="draw" { (say!(l, talk::draw)) }
                a.link href=(format!("/a/{animal}/designs/new?proposal={}", talk.id())) { (say!(l, talk::other_numbers)) }
            }
            p.hint { (say!(l, talk::draw_hint)) }
        }
    }
}

/// What may be said of the trial, as its own page says it.
fn came(page: &Page, animal: AnimalId, id: DesignId) -> Markup {
    let l = &page.locale;
    let to = format!("/a/{animal}/designs/{id}");
    let Some(Ok(of)) = trial(&page.story, animal, id) else {
        return html! { p data-test="trial" { a.link href=(to) { (say!(l, talk::to_the_trial)) } } };
    };
    let report = report(&page.story, &of, page.now);
    let name = name_of(page, animal);
    let ended = !matches!(report.standing, Progress::NotYet(_) | Progress::Running);
    html! {
        div data-test="trial" data-ended=(ended) {
            p { strong { (say!(l, talk::trial_lead)) } " " (sentence(l, &name, of.plan.part, &report)) }
            (beside::kept(page, of.animal, of.plan.part))
            p { a.link href=(to) { (say!(l, talk::to_the_trial)) } }
        }
    }
}

/// Draws the days of a trial of what was agreed.
pub async fn draw(page: Page, typed: Typed) -> Result<Redirect, Error> {
    let typed = typed.only(&["of"])?;
    let of: EventId = named(typed.text("of"), "proposal")?;
    let all = seen(&page);
    let talk = all.iter().find(|t| t.id() == of).ok_or_else(no_such)?;
    if let Some((animal, id)) = trying(&page.story, of) {
        return Ok(Redirect::to(&format!("/a/{animal}/designs/{id}")));
    }
    let (Some(tries), Some(animal)) = (Try::of(&talk.part.proposes), animal_of(&page, talk)) else {
        return Err(no_such());
    };
    if talk.standing != Standing::Accepted {
        return Err(Error::refused("of", words!(talk::not_agreed)));
    }
    if rests(&page, animal) {
        return Err(Error::refused("of", words!(talk::rests_still, name = name_of(&page, animal))));
    }
    let seed =
        getrandom::u32().map_err(|why| Error::refused("of", words!(faults::no_random, why = why.to_string())))?;
    let id = DesignId(Uuid::now_v7());
    let plan = tries.plan(id, Some(of), beside::soonest(&page), seed);
    page.keep(vec![Event { animal: Some(animal), ..page.event(plan) }]).await?;
    Ok(Redirect::to(&format!("/a/{animal}/designs/{id}")))
}

fn name_of(page: &Page, animal: AnimalId) -> String {
    page.story.animals().get(&animal).map_or_else(String::new, |card| card.name.to_string())
}
