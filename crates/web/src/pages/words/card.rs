//! A word's card: what it says and means here, and how everyone answers it.

use super::{known, recording, sounds, stage};
use crate::cautions::for_animal;
use crate::error::Error;
use crate::fields::{area, line, select, summary, tick, ticks};
use crate::layout::{Tab, layout_with};
use crate::page::AnimalPage;
use crate::pages::pictures;
use crate::typed::{Typed, again};
use axum::extract::{Path, Query};
use axum::response::{IntoResponse, Redirect, Response};
use maud::{Markup, html};
use sayso_advisor::ration::forbidden;
use sayso_model::{PictureOf, RewardCard, RewardId, WordCard, WordId};
use serde::Deserialize;
use uuid::Uuid;

const FIELDS: [&str; 8] = ["says", "means", "answer", "not_now", "reward", "closing", "animals", "active"];

#[derive(Deserialize)]
pub struct Asked {
    #[serde(default)]
    reward: String,
    #[serde(default)]
    kept: String,
}

/// What a card says before anybody has written on it.
pub fn proposed(reward: &RewardCard) -> (String, String, String, &'static str) {
    let says = reward.says.as_ref().map_or_else(|| reward.name.to_string(), ToString::to_string);
    let name = reward.name.as_str();
    (says, format!("asks for: {name}"), format!("Give it at once: {name}."), NOT_NOW)
}

const NOT_NOW: &str = "Say \u{201c}not now\u{201d} calmly, once, and offer something else.";

pub async fn new(page: AnimalPage, Query(asked): Query<Asked>) -> Result<Markup, Error> {
    let reward = asked.reward.parse::<RewardId>().ok().and_then(|r| page.story.rewards().get(&r).copied().cloned());
    let mut typed = Typed::default().with("not_now", NOT_NOW).with("active", "yes");
    if page.animals().len() > 1 {
        typed = typed.with("animals", page.id);
    }
    if let Some(reward) = reward {
        let (says, means, answer, _) = proposed(&reward);
        typed = typed.with("reward", reward.reward).with("says", says).with("means", means).with("answer", answer);
    }
    form(&page, None, &typed, false).await
}

pub async fn add(page: AnimalPage, typed: Typed) -> Result<Response, Error> {
    save(page, None, typed).await
}

pub async fn edit(
    page: AnimalPage,
    Path((_, id)): Path<(String, String)>,
    Query(asked): Query<Asked>,
) -> Result<Markup, Error> {
    let card = known(&page, &id)?;
    let mut typed = Typed::default()
        .with("says", &card.says)
        .with_some("means", card.means.as_ref())
        .with_some("answer", card.answer.as_ref())
        .with_some("not_now", card.not_now.as_ref())
        .with_some("reward", card.reward)
        .with_some("closing", card.closing.then_some("yes"))
        .with_some("active", card.active.then_some("yes"));
    for animal in &card.animals {
        typed = typed.with("animals", animal);
    }
    form(&page, Some(&card), &typed, !asked.kept.is_empty()).await
}

pub async fn change(page: AnimalPage, Path((_, id)): Path<(String, String)>, typed: Typed) -> Result<Response, Error> {
    let card = known(&page, &id)?;
    save(page, Some(card), typed).await
}

async fn save(page: AnimalPage, before: Option<WordCard>, typed: Typed) -> Result<Response, Error> {
    let mut typed = typed.only(&FIELDS)?;
    let card = read(&page, before.as_ref().map(|c| c.word), &mut typed);
    if typed.right()
        && let Some(card) = card
        && typed.kept(page.keep(vec![page.about_home(card.clone())]).await)?
    {
        return Ok(Redirect::to(&format!("/l/{}/words/card/{}?kept=yes", page.id, card.word)).into_response());
    }
    Ok(again(form(&page, before.as_ref(), &typed, false).await?))
}

fn read(page: &AnimalPage, id: Option<WordId>, typed: &mut Typed) -> Option<WordCard> {
    let says = typed.label("says");
    let same = page.story.words().into_values().find(|w| {
        w.active
            && Some(w.word) != id
            && says.as_ref().is_some_and(|s| s.as_str().eq_ignore_ascii_case(w.says.as_str()))
    });
    if same.is_some() {
        typed.wrong("says", "is on another button already; choose another word, or open that card");
    }
    let rewards = page.story.rewards();
    let reward = typed.id("reward", |r: &RewardId| rewards.contains_key(r));
    let animals = typed.ids("animals", |l| page.story.animals().contains_key(l));
    let active = id.is_none() || typed.ticked("active");
    if active && let Some(card) = reward.and_then(|r| rewards.get(&r)) {
        for l in page.animals().iter().filter(|l| animals.is_empty() || animals.contains(&l.animal)) {
            if let Some(why) = forbidden(l.species, card) {
                typed.wrong("reward", format!("cannot be given to {}: {why}. Choose another", l.name));
            }
        }
    }
    Some(WordCard {
        word: id.unwrap_or_else(|| WordId(Uuid::now_v7())),
        says: says?,
        means: typed.note_or_none("means"),
        answer: typed.note_or_none("answer"),
        not_now: typed.note_or_none("not_now"),
        reward,
        closing: typed.ticked("closing"),
        animals,
        active,
    })
}

async fn form(page: &AnimalPage, before: Option<&WordCard>, typed: &Typed, kept: bool) -> Result<Markup, Error> {
    let recording = match before {
        Some(card) => recording::section(page, card).await?,
        None => html! {},
    };
    let to =
        before.map_or_else(|| format!("/l/{}/words/new", page.id), |c| format!("/l/{}/words/card/{}", page.id, c.word));
    let rewards = page.story.rewards();
    let mut all: Vec<&RewardCard> =
        rewards.values().copied().filter(|r| r.active || typed.text("reward") == r.reward.to_string()).collect();
    all.sort_by(|a, b| a.name.cmp(&b.name).then(a.reward.cmp(&b.reward)));
    let mut options = vec![(String::new(), "nothing: it only says something".to_owned())];
    options.extend(all.iter().map(|r| (r.reward.to_string(), format!("{} ({})", r.name, r.kind.name()))));
    let animals: Vec<_> = page.animals().iter().map(|l| (l.animal.to_string(), html! { (l.name.as_str()) })).collect();
    let chosen = all.iter().find(|r| r.reward.to_string() == typed.text("reward"));
    let says = typed.text("says");
    let alike = if says.is_empty() { Vec::new() } else { sounds::too_alike(&page.story, says, before.map(|c| c.word)) };
    let title = before.map_or_else(|| "A new word".to_owned(), |c| format!("\u{201c}{}\u{201d}", c.says));
    Ok(layout_with(
        page,
        Tab::Words,
        &title,
        &["client/recorder.js", "client/picture.js"],
        html! {
            @if kept { p role="status" { strong { "Kept." } } }
            (summary(typed))
            @for (_, likeness) in &alike {
                p.caution { "Sounds much like another word here and may be hard to tell apart: " (likeness.reason) ". A different word for one of them is safer." }
            }
            @if let Some(reward) = chosen { (for_animal(&page.card, reward)) }
            form method="post" action=(to) .stack {
                (line(typed, "says", "The button says", "short, and unlike the other words", true))
                (area(typed, "means", "It means here", "what it asks for or tells"))
                (area(typed, "answer", "Everyone answers by", "the same each time, such as: give one piece within three seconds"))
                (area(typed, "not_now", "When the answer is \u{201c}not now\u{201d}, everyone", "says and does this"))
                (select(typed, "reward", "What is given", "", &options))
                (tick(typed, "closing", "a closing word: it ends a session and calms"))
                @if animals.len() > 1 { (ticks(typed, "animals", "Taught to", "none ticked means all", &animals)) }
                @else { @for l in typed.all("animals") { input type="hidden" name="animals" value=(l); } }
                @if before.is_some() { (tick(typed, "active", "on the board (untick to take it off; what was noted stays)")) }
                button.primary.wide { "Keep" }
            }
            @if let Some(card) = before {
                @if card.active && card.is_for(page.id) { (stage::section(page, card)) }
                (pictures::section(page, PictureOf::Word { word: card.word }, card.says.as_str(), &to))
                (recording)
                (rules(page, card))
            }
            p { a href=(Tab::Words.href(Some(page.id))) { "Back to Words" } }
        },
    ))
}

fn rules(page: &AnimalPage, card: &WordCard) -> Markup {
    let rules = page.story.rules();
    let rules: Vec<_> = rules.into_values().filter(|r| r.active && r.word == Some(card.word)).collect();
    html! {
        section {
            h2 { "Rules of the house for it" }
            @if rules.is_empty() { p.quiet { "None of its own." } }
            ul { @for r in rules { li { (r.text.as_str()) " " a href=(format!("/people/rule/{}", r.rule)) { "Change" } } } }
            p { a href="/people/rule/new" { "Add a rule" } }
        }
    }
}
