//! One answer of a check: one tap, by place, so that the one who notes it need not know the word.

use super::{address, known};
use crate::error::Error;
use crate::page::AnimalPage;
use crate::typed::{Typed, again};
use axum::extract::Path;
use axum::response::{IntoResponse, Redirect, Response};
use sayso_advisor::checks::{Next, PlannedTrial, next_trial, trials};
use sayso_model::{
    Body, Event, Feed, Grams, Kcal, ProbeDesign, ProbePlan, ProbeResponse, ProbeTrial, RewardKind, Seconds, Withdrawal,
    WordId,
};
use sayso_people::Capability;
use sayso_wording::{Message, words};

/// Notes an answer. An answer to a trial that was answered already (a double tap, a page gone back to) changes nothing.
pub async fn note(page: AnimalPage, Path((_, id)): Path<(String, String)>, typed: Typed) -> Result<Response, Error> {
    let plan = known(&page, &id)?.part.clone();
    let mut typed = typed.only(&["number", "answer", "after_s", "knew"])?;
    let to = back(&page, &plan);
    if plan.design == ProbeDesign::WrongDelivery {
        return Err(Error::refused("answer", words!(faults::noted_at_board)));
    }
    let trial = match next_trial(&page.story, page.id, plan.probe) {
        Some(Ok(Next::Trial(trial))) => trial,
        Some(Err(why)) => return Err(Error::refused("plan", words!(faults::cannot_run, why = why.say(&page.locale)))),
        Some(Ok(Next::Done)) | None => return Ok(Redirect::to(&to).into_response()),
    };
    if typed.text("number") != trial.number.to_string() {
        return Ok(Redirect::to(&format!("{to}?twice=yes")).into_response());
    }
    let after_s = typed.quantity("after_s", Seconds::new);
    if !typed.right() {
        let view = match alone(&page, &plan) {
            true => super::alone::view(&page, &plan, &typed, &trial.number.to_string(), false),
            false => super::run::presenter_view(&page, &plan, &typed, false),
        };
        return Ok(again(view));
    }
    let response = answer(typed.text("answer"), &trial, after_s)?;
    let fed = match response {
        ProbeResponse::Chose { word, .. } => fed(&page, word),
        ProbeResponse::Nothing | ProbeResponse::Left => None,
    };
    let blind = plan.blind && !typed.ticked("knew");
    let done = ProbeTrial { probe: plan.probe, trial: trial.number, target: trial.word, blind, response };
    page.keep(std::iter::once(page.event(done)).chain(fed).collect()).await?;
    Ok(Redirect::to(&to).into_response())
}

/// Whether one person does all of it; who may not see what is drawn notes on the presenter's page.
fn alone(page: &AnimalPage, plan: &ProbePlan) -> bool {
    !plan.blind && page.may(Capability::Plan)
}

/// Where an answer leads back to.
fn back(page: &AnimalPage, plan: &ProbePlan) -> String {
    format!("{}/{}", address(page, plan.probe), if alone(page, plan) { "alone" } else { "presenter" })
}

fn answer(text: &str, trial: &PlannedTrial, after_s: Option<Seconds>) -> Result<ProbeResponse, Error> {
    match text {
        "nothing" => Ok(ProbeResponse::Nothing),
        "left" => Ok(ProbeResponse::Left),
        place => {
            let place = place.parse::<usize>().ok().and_then(|p| p.checked_sub(1));
            match place.and_then(|p| trial.laid_out.get(p)) {
                Some(word) => Ok(ProbeResponse::Chose { word: *word, after_s }),
                None => {
                    let most = trial.laid_out.len();
                    Err(Error::refused("answer", words!(faults::place, most = most)))
                }
            }
        }
    }
}

/// The piece of food it gets for what it chose; nothing for other things.
fn fed(page: &AnimalPage, word: WordId) -> Option<Event> {
    let reward = page.story.words().get(&word)?.reward?;
    let rewards = page.story.rewards();
    let card = rewards.get(&reward).filter(|r| r.kind == RewardKind::Food)?;
    let kcal = Kcal::clamped(card.kcal_per_piece?.get());
    let grams = card.grams_per_piece.map(|g| Grams::clamped(g.get()));
    Some(page.event(Feed { reward: Some(reward), food: None, pieces: Some(1), grams, kcal, session: None }))
}

/// Takes back the last answer, and the food that was counted with it. Both stay in the log.
pub async fn undo(page: AnimalPage, Path((_, id)): Path<(String, String)>, typed: Typed) -> Result<Redirect, Error> {
    let plan: ProbePlan = known(&page, &id)?.part.clone();
    let typed = typed.only(&["trial"])?;
    let to = back(&page, &plan);
    let run = trials(&page.story, page.id, plan.probe);
    // The page names the trial, so that undoing twice by accident takes back one answer.
    let Some(last) = run.last().filter(|t| t.id().to_string() == typed.text("trial")) else {
        return Ok(Redirect::to(&format!("{to}?twice=yes")));
    };
    let chosen = match last.part.response {
        ProbeResponse::Chose { word, .. } => page.story.words().get(&word).and_then(|c| c.reward),
        _ => None,
    };
    let feeds = page
        .story
        .between::<Feed>(page.id, last.at(), last.at())
        .filter(|f| chosen.is_some() && f.part.reward == chosen && f.event.recorded_at == last.event.recorded_at);
    let withdrawn = std::iter::once(last.id()).chain(feeds.map(|f| f.id()));
    let events = withdrawn.map(|of| page.event(Body::from(Withdrawal { of, because: None }))).collect();
    page.keep(events).await?;
    Ok(Redirect::to(&to))
}
