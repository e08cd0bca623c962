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
use sayso_advisor::first_words::label_of;
use sayso_advisor::ration::forbidden;
use sayso_model::{PictureOf, RewardCard, RewardId, WordCard, WordId};
use sayso_people::Capability;
use sayso_wording::hazards::foods;
use sayso_wording::on_card;
use sayso_wording::say;
use sayso_wording::sounds::likeness as likeness_said;
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

/// The label proposed for a reward, the same wherever one is proposed.
pub fn label(page: &AnimalPage, reward: &RewardCard) -> String {
    label_of(&page.case(), reward, page.label_language())
}

pub async fn new(page: AnimalPage, Query(asked): Query<Asked>) -> Result<Markup, Error> {
    let reward = asked.reward.parse::<RewardId>().ok().and_then(|r| page.story.rewards().get(&r).copied().cloned());
    let blank = on_card::proposed(&page.locale, None, "");
    let mut typed = Typed::default().with_some("not_now", blank.not_now).with("active", "yes");
    if page.animals().len() > 1 {
        typed = typed.with("animals", page.id);
    }
    if let Some(reward) = reward {
        let says = label(&page, &reward);
        let on_card = on_card::proposed(&page.locale, Some(&reward), &says);
        typed = typed.with("reward", reward.reward).with("says", says);
        typed = typed.with_some("means", on_card.means).with_some("answer", on_card.answer);
    }
    form(&page, None, &typed, "").await
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
    let texts = on_card::read(&page.locale, &page.story, &card);
    let mut typed = Typed::default()
        .with("says", &card.says)
        .with_some("means", texts.means)
        .with_some("answer", texts.answer)
        .with_some("not_now", texts.not_now)
        .with_some("reward", card.reward)
        .with_some("closing", card.closing.then_some("yes"))
        .with_some("active", card.active.then_some("yes"));
    for animal in &card.animals {
        typed = typed.with("animals", animal);
    }
    form(&page, Some(&card), &typed, &asked.kept).await
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
        return Ok(Redirect::to(&format!("/a/{}/words/card/{}?kept=yes", page.id, card.word)).into_response());
    }
    Ok(again(form(&page, before.as_ref(), &typed, "").await?))
}

fn read(page: &AnimalPage, id: Option<WordId>, typed: &mut Typed) -> Option<WordCard> {
    let says = typed.label("says");
    let same = page.story.words().into_values().find(|w| {
        w.active
            && Some(w.word) != id
            && says.as_ref().is_some_and(|s| s.as_str().eq_ignore_ascii_case(w.says.as_str()))
    });
    if same.is_some() {
        typed.wrong("says", say!(&page.locale, words::on_another));
    }
    let rewards = page.story.rewards();
    let reward = typed.id("reward", |r: &RewardId| rewards.contains_key(r));
    let animals = typed.ids("animals", |l| page.story.animals().contains_key(l));
    let active = id.is_none() || typed.ticked("active");
    if active && let Some(card) = reward.and_then(|r| rewards.get(&r)) {
        for l in page.animals().iter().filter(|l| animals.is_empty() || animals.contains(&l.animal)) {
            if let Some(why) = forbidden(l.species, card) {
                typed.wrong(
                    "reward",
                    say!(&page.locale, words::cannot_give, name = &l.name, why = foods(&page.locale, &why)),
                );
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

async fn form(page: &AnimalPage, before: Option<&WordCard>, typed: &Typed, kept: &str) -> Result<Markup, Error> {
    let recording = match before {
        Some(card) => recording::section(page, card, kept == "recording").await?,
        None => html! {},
    };
    let to =
        before.map_or_else(|| format!("/a/{}/words/new", page.id), |c| format!("/a/{}/words/card/{}", page.id, c.word));
    let (rewards, l) = (page.story.rewards(), &page.locale);
    let mut all: Vec<&RewardCard> =
        rewards.values().copied().filter(|r| r.active || typed.text("reward") == r.reward.to_string()).collect();
    all.sort_by(|a, b| a.name.cmp(&b.name).then(a.reward.cmp(&b.reward)));
    let mut options = vec![(String::new(), say!(l, words::gives_nothing))];
    options.extend(
        all.iter()
            .map(|r| (r.reward.to_string(), format!("{} ({})", r.name, say!(l, ideas::kind, kind = r.kind.name())))),
    );
    let animals: Vec<_> = page.animals().iter().map(|l| (l.animal.to_string(), html! { (l.name.as_str()) })).collect();
    let chosen = all.iter().find(|r| r.reward.to_string() == typed.text("reward"));
    let says = typed.text("says");
    let alike = if says.is_empty() { Vec::new() } else { sounds::too_alike(&page.story, says, before.map(|c| c.word)) };
    let title = before.map_or_else(|| say!(l, words::new_title), |c| say!(l, words::quoted, says = &c.says));
    Ok(layout_with(
        page,
        Tab::Words,
        &title,
        &["client/recorder.js", "client/proof.js", "client/picture.js", "client/draft.js"],
        html! {
            @if !kept.is_empty() { p role="status" { strong { (say!(l, words::kept)) } } }
            (summary(typed))
            @for (_, likeness) in &alike {
                p.caution { (say!(l, words::alike_here, how = likeness_said(l, likeness))) }
            }
            @if let Some(reward) = chosen { (for_animal(&page.locale, &page.card, reward)) }
            form method="post" action=(to) .stack {
                (line(typed, "says", &say!(l, words::button_says), &say!(l, words::says_hint), true))
                (area(typed, "means", &say!(l, words::means_here), &say!(l, words::means_hint)))
                (area(typed, "answer", &say!(l, words::answer_by), &say!(l, words::answer_hint)))
                (area(typed, "not_now", &say!(l, words::when_not_now), &say!(l, words::not_now_hint)))
                (select(typed, "reward", &say!(l, words::what_given), "", &options))
                (tick(typed, "closing", &say!(l, words::is_closing)))
                @if animals.len() > 1 { (ticks(typed, "animals", &say!(l, words::taught_to), &say!(l, reward::none_means_all), &animals)) }
                @else { @for l in typed.all("animals") { input type="hidden" name="animals" value=(l); } }
                @if before.is_some() { (tick(typed, "active", &say!(l, words::on_board))) }
                button.primary.wide { (say!(l, setup::keep)) }
            }
            @if let Some(card) = before {
                @if card.active && card.is_for(page.id) { (stage::section(page, card)) }
                (pictures::section(page, PictureOf::Word { word: card.word }, card.says.as_str(), &to))
                (recording)
                (rules(page, card))
            }
            p { a href=(Tab::Words.href(Some(page.id))) { (say!(l, words::back)) } }
        },
    ))
}

fn rules(page: &AnimalPage, card: &WordCard) -> Markup {
    let (rules, l) = (page.story.rules(), &page.locale);
    let rules: Vec<_> = rules.into_values().filter(|r| r.active && r.word == Some(card.word)).collect();
    let changes = page.may(Capability::ChangeCards);
    html! {
        section {
            h2 { (say!(l, words::rules_for)) }
            @if rules.is_empty() { p.quiet { (say!(l, words::rules_none)) } }
            ul { @for r in rules { li { (r.text.as_str()) @if changes { " " a href=(format!("/people/rule/{}", r.rule)) { (say!(l, card::edit)) } } } } }
            @if changes { p { a href="/people/rule/new" { (say!(l, card::add_rule)) } } }
        }
    }
}
