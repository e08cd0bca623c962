//! What an animal might like: ideas by kind and species, added with a tap each.

use super::same_thing::same_thing;
use super::steps::{StepName, along, on_the_way, onward};
use crate::error::Error;
use crate::fields::summary;
use crate::layout::{Tab, layout};
use crate::page::{AnimalPage, Page};
use crate::state::AppState;
use crate::typed::{Typed, again};
use axum::Router;
use axum::extract::Query;
use axum::response::{IntoResponse, Redirect, Response};
use axum::routing::get;
use maud::{Markup, html};
use sayso_advisor::ration::{cautions_of, forbidden};
use sayso_model::facts::{Care, Idea, ideas};
use sayso_model::{AnimalCard, AnimalId, Grams, Kcal, Label, Language, RewardCard, RewardId, RewardKind};
use sayso_people::Capability;
use sayso_store::labelled;
use sayso_wording::hazards::{briefly, foods};
use sayso_wording::{Locale, say};
use serde::Deserialize;

pub fn router() -> Router<AppState> {
    Router::new().route("/a/{animal}/ideas", get(show).post(add))
}

#[derive(Deserialize)]
struct Asked {
    #[serde(default)]
    instead: String,
}

async fn show(page: AnimalPage, axum::extract::Query(asked): Query<Asked>) -> Markup {
    let reward = asked.instead.parse::<RewardId>().ok();
    let instead = reward.and_then(|r| page.story.rewards().get(&r).map(|c| (*c).clone()));
    view(&page, &Typed::default(), instead.as_ref())
}

/// The name of an idea in a language.
fn name(locale: &Locale, idea: &Idea) -> String {
    say!(locale, ideas::name, key = &idea.key)
}

/// Ideas that are not on the animal's list yet: neither as the card that was made from them, nor as a thing of the same kind
/// under another label.
pub fn open(page: &Page, animal: &AnimalCard) -> Vec<&'static Idea> {
    let listed = page.story.rewards_of(animal.animal);
    let known = |idea: &Idea| {
        let own = id(page, animal.animal, idea);
        let mut names: Vec<String> = Language::ALL.map(|of| name(&Locale::of(of), idea)).into();
        names.push(idea.key.replace('_', " "));
        listed.iter().any(|r| {
            r.reward == own || r.kind == idea.kind && same_thing(r.name.as_str(), &names, idea.kind == RewardKind::Food)
        })
    };
    ideas(animal.species).filter(|i| !known(i)).collect()
}

/// The card that is made from an idea for an animal: always the same, so that a tap sent twice makes one card.
fn id(page: &Page, animal: AnimalId, idea: &Idea) -> RewardId {
    RewardId(labelled(page.home, "RewardId", &format!("idea:{}:{animal}", idea.key)))
}

async fn add(page: AnimalPage, typed: Typed) -> Result<Response, Error> {
    let mut typed = typed.only(&["ideas"])?;
    let open = open(&page, &page.card);
    let keys: Vec<String> = typed.all("ideas").map(str::to_owned).collect();
    let mut events = Vec::new();
    for key in &keys {
        // One listed already, as after a page gone back to, is there: nothing is to be done.
        let Some(idea) = open.iter().find(|i| i.key == *key) else {
            if !ideas(page.card.species).any(|i| i.key == *key) {
                typed.wrong("ideas", say!(&page.locale, ideas::unknown));
            }
            continue;
        };
        let card = card(&page, idea)?;
        if let Some(why) = forbidden(page.card.species, &card) {
            typed.wrong("ideas", foods(&page.locale, &why));
            continue;
        }
        events.push(page.about_home(card));
    }
    if keys.is_empty() {
        typed.wrong("ideas", say!(&page.locale, ideas::none_ticked));
    }
    if !typed.right() {
        return Ok(again(view(&page, &typed, None)));
    }
    page.keep(events).await?;
    let to = if on_the_way(&page, &page.card) {
        onward(&page, &page.card, StepName::Wants)
    } else {
        "/people#rewards".to_owned()
    };
    Ok(Redirect::to(&to).into_response())
}

fn card(page: &AnimalPage, idea: &Idea) -> Result<RewardCard, Error> {
    let name = Label::new(&name(&page.locale, idea)).map_err(Error::internal)?;
    // What a home says for it is known of each idea; only names typed by hand are taken apart for a label.
    let says = say!(&Locale::of(page.label_language()), ideas::label, key = &idea.key);
    Ok(RewardCard {
        kcal_per_piece: idea.kcal_per_piece().map(Kcal::clamped),
        grams_per_piece: idea.grams.map(Grams::clamped),
        says: Some(Label::new(&says).map_err(Error::internal)?),
        at_board: idea.at_board,
        animals: if page.animals().len() > 1 { vec![page.id] } else { Vec::new() },
        ..RewardCard::new(id(page, page.id, idea), name, idea.kind)
    })
}

/// Ideas of other things than one it does not want: of its kind, and an exercise in place of touch.
fn kinds_instead(kind: RewardKind) -> Vec<RewardKind> {
    match kind {
        RewardKind::Touch => vec![RewardKind::Touch, RewardKind::Training],
        other => vec![other],
    }
}

/// A line with three ideas in place of something that is not wanted, and the way to all of them; nothing without ideas.
#[must_use]
pub fn instead(page: &AnimalPage, reward: &RewardCard) -> Markup {
    let kinds = kinds_instead(reward.kind);
    let found: Vec<&Idea> = open(page, &page.card).into_iter().filter(|i| kinds.contains(&i.kind)).take(3).collect();
    let l = &page.locale;
    let names: Vec<String> = found.iter().map(|i| name(l, i)).collect();
    html! {
        @if !names.is_empty() {
            p { (say!(l, ideas::instead, name = &page.card.name, thing = &reward.name, ideas = names.join(" · "))) " "
                @if page.may(Capability::ChangeCards) { a href=(format!("/a/{}/ideas?instead={}", page.id, reward.reward)) { (say!(l, ideas::see)) } } }
        }
    }
}

fn view(page: &AnimalPage, typed: &Typed, instead: Option<&RewardCard>) -> Markup {
    let (l, card) = (&page.locale, &page.card);
    let open = open(page, card);
    let first = instead.map_or_else(|| RewardKind::ALL.to_vec(), |r| kinds_instead(r.kind));
    let rest: Vec<RewardKind> = RewardKind::ALL.into_iter().filter(|k| !first.contains(k)).collect();
    let on = on_the_way(page, card);
    layout(
        page,
        Tab::People,
        &say!(l, ideas::title, name = &card.name),
        html! {
            (along(page, card, StepName::Wants))
            (summary(typed))
            @if let Some(r) = instead { p { (say!(l, ideas::instead_of, name = &card.name, thing = &r.name)) } }
            @else { p { (say!(l, ideas::four, name = &card.name)) } }
            @if let Some(text) = &card.cautions { p.caution { strong { (say!(l, ideas::health)) } " " (text.as_str()) } }
            form #ideas method="post" action=(format!("/a/{}/ideas", page.id)) {
                @for kind in &first { (of_kind(page, *kind, &open, typed)) }
                @if !rest.is_empty() {
                    details { summary { (say!(l, ideas::other_kinds)) } @for kind in &rest { (of_kind(page, *kind, &open, typed)) } }
                }
                p.quiet { (say!(l, ideas::figures)) }
                button.primary.wide { @if on { (say!(l, setup::next)) } @else { (say!(l, ideas::add)) } }
            }
            section {
                h2 { (say!(l, ideas::own)) }
                div.row { @for kind in RewardKind::ALL {
                    a.button href=(format!("/people/reward/new?kind={}", kind.name())) { (say!(l, ideas::kind, kind = kind.name())) }
                } }
            }
            @if on { p { a.link href=(onward(page, card, StepName::Wants)) { (say!(l, setup::later)) } } }
            p.quiet { (say!(l, hazards::note)) }
        },
    )
}

fn of_kind(page: &AnimalPage, kind: RewardKind, open: &[&Idea], typed: &Typed) -> Markup {
    let l = &page.locale;
    let of: Vec<&&Idea> = open.iter().filter(|i| i.kind == kind).collect();
    let mut cares: Vec<Care> = of.iter().flat_map(|i| i.care.iter().copied()).collect();
    cares.sort_by_key(|c| care_key(*c));
    cares.dedup();
    html! {
        @if !of.is_empty() {
            fieldset.chips {
                legend { (say!(l, ideas::kind, kind = kind.name())) }
                @for i in &of {
                    label.chip { input type="checkbox" name="ideas" value=(i.key) checked[typed.all("ideas").any(|k| k == i.key)];
                        span { (name(l, i)) @if let Some(kcal) = i.kcal_per_piece() { " " span.quiet { (say!(l, unit::kcal, value = l.number(kcal, 1))) } } } }
                }
                @for care in cares {
                    @let about: Vec<String> = of.iter().filter(|i| i.care.contains(&care)).map(|i| name(l, i)).collect();
                    @let said = say!(l, ideas::care, care = care_key(care), name = &page.card.name);
                    p.hint { (l.colon(&l.and(&about), &said)) }
                }
                @for i in &of {
                    @let found = cautions_of(page.card.species, i.kind, &i.name);
                    @if !found.is_empty() { p.hint { (briefly(l, &name(l, i), &found)) "." } }
                }
            }
        }
    }
}

const fn care_key(care: Care) -> &'static str {
    match care {
        Care::Guarding => "guarding",
        Care::Slipping => "slipping",
        Care::SmallParts => "small_parts",
        Care::Size => "size",
        Care::HandsOff => "hands_off",
    }
}
