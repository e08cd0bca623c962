//! Agreed swaps: a time in which now and then the thing of another word is drawn to be given, to tell meaning from habit.

pub mod running;
mod view;

use crate::error::Error;
use crate::page::AnimalPage;
use crate::state::AppState;
use crate::typed::{Typed, again};
use axum::Router;
use axum::response::{IntoResponse, Redirect, Response};
use axum::routing::{get, post};
use maud::Markup;
use running::running;
use sayso_advisor::ration::forbidden;
use sayso_advisor::welfare::rest_today;
use sayso_model::{RewardCard, RewardKind, SwapEnd, SwapId, SwapPlan, SwapStop, WordCard, WordId, draw};
use sayso_wording::words;
use std::collections::BTreeSet;
use uuid::Uuid;

/// Days proposed: seven blocks of partners.
const DAYS: u16 = 28;

/// Routes of the page.
pub fn router() -> Router<AppState> {
    Router::new().route("/a/{animal}/swaps", get(show).post(agree)).route("/a/{animal}/swaps/stop", post(stop))
}

/// Where the page of an animal is.
#[must_use]
pub fn address(page: &AnimalPage) -> String {
    format!("/a/{}/swaps", page.id)
}

/// Words that can take part, each with its thing: none that ends sessions, none without a thing, none that must not be given.
fn candidates(page: &AnimalPage) -> Vec<(&WordCard, &RewardCard)> {
    let rewards = page.story.rewards();
    page.story
        .words_of(page.id)
        .into_iter()
        .filter(|w| !w.closing)
        .filter_map(|w| Some((w, *rewards.get(&w.reward?)?)))
        .filter(|(_, r)| forbidden(page.card.species, r).is_none())
        .collect()
}

async fn show(page: AnimalPage) -> Markup {
    let mut typed = Typed::default().with("days", DAYS).with("one_in", draw::ONE_IN);
    let mut things = BTreeSet::new();
    for (word, thing) in candidates(&page) {
        // Food is left for people to tick: some animals wait for it with signs of stress.
        if thing.kind != RewardKind::Food && things.insert(thing.reward) {
            typed = typed.with("words", word.word);
        }
    }
    view::view(&page, &typed)
}

async fn agree(page: AnimalPage, typed: Typed) -> Result<Response, Error> {
    let mut typed = typed.only(&["words", "days", "one_in", "home"])?;
    if running(&page.story, page.id, page.now).is_some() {
        typed.wrong("words", words!(faults::in_swaps));
    }
    if rest_today(&page.case()) {
        typed.wrong("days", words!(faults::signs_today));
    }
    let plan = read(&page, &mut typed);
    if let Some(plan) = plan.filter(|_| typed.right())
        && typed.kept(page.keep(vec![page.event(plan)]).await)?
    {
        return Ok(Redirect::to(&address(&page)).into_response());
    }
    Ok(again(view::view(&page, &typed)))
}

fn read(page: &AnimalPage, typed: &mut Typed) -> Option<SwapPlan> {
    let cards = candidates(page);
    let ticked = typed.ids("words", |w: &WordId| cards.iter().any(|(c, _)| c.word == *w));
    // In the order of the cards, each once.
    let taking_part: Vec<_> = cards.iter().filter(|(c, _)| ticked.contains(&c.word)).collect();
    if taking_part.len() < 2 && typed.problem("words").is_none() {
        typed.wrong("words", words!(faults::another_thing, found = taking_part.len()));
    }
    for (at, (word, thing)) in taking_part.iter().enumerate() {
        if let Some((twin, _)) = taking_part[..at].iter().find(|(_, other)| other.reward == thing.reward) {
            typed.wrong(
                "words",
                words!(faults::same_thing, first = twin.says.to_string(), second = word.says.to_string()),
            );
        }
    }
    let days = typed.whole("days", 4, 366);
    if days.is_none() && typed.problem("days").is_none() {
        typed.wrong("days", words!(faults::missing_several, usual = DAYS));
    }
    let one_in = typed.whole("one_in", 4, 50);
    if one_in.is_none() && typed.problem("one_in").is_none() {
        typed.wrong("one_in", words!(faults::one_in_usual, usual = draw::ONE_IN));
    }
    if !typed.ticked("home") {
        typed.wrong("home", words!(faults::agree));
    }
    let words = taking_part.iter().map(|(c, _)| c.word).collect();
    Some(SwapPlan { swap: SwapId(Uuid::now_v7()), words, one_in: one_in?, days: days? })
}

async fn stop(page: AnimalPage, typed: Typed) -> Result<Redirect, Error> {
    let typed = typed.only(&["swap", "reason"])?;
    let reason = match typed.text("reason") {
        "home" => SwapEnd::Home,
        "signs" => SwapEnd::Signs,
        _ => return Err(Error::refused("reason", words!(faults::one_of, names = "home, signs"))),
    };
    // Stopped by somebody else meanwhile: nothing is left to do.
    if let Some(time) =
        running(&page.story, page.id, page.now).filter(|t| t.plan.swap.to_string() == typed.text("swap"))
    {
        page.keep(vec![page.event(SwapStop { swap: time.plan.swap, reason })]).await?;
    }
    Ok(Redirect::to(&address(&page)))
}
