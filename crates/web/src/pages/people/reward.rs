//! Something an animal may want. A food the hazards list forbids for one of its animals is refused with the reason.

use super::pieces;
use crate::cautions::{food_note, for_each_animal};
use crate::error::Error;
use crate::fields::{line, number, select, summary, tick, ticks};
use crate::layout::{Tab, layout, layout_with};
use crate::page::Page;
use crate::pages::pictures;
use crate::state::AppState;
use crate::typed::{Typed, again, named};
use axum::Router;
use axum::extract::{Path, Query};
use axum::response::{IntoResponse, Redirect, Response};
use axum::routing::get;
use maud::{Markup, html};
use sayso_advisor::ration::{forbidden, ration};
use sayso_model::{AnimalCard, Kcal, PictureOf, RewardCard, RewardId, RewardKind, Seconds};
use serde::Deserialize;
use uuid::Uuid;

const FIELDS: [&str; 8] =
    ["name", "kind", "seconds_to_deliver", "most_per_day", "says", "already_said", "animals", "active"];

pub fn router() -> Router<AppState> {
    Router::new()
        .route("/people/reward/new", get(new).post(add))
        .route("/people/reward/{reward}", get(edit).post(change))
}

/// A kind in words, with examples.
pub const fn examples(kind: RewardKind) -> &'static str {
    match kind {
        RewardKind::Food => "anything eaten or licked",
        RewardKind::Play => "a toy, tug, chasing, a bell",
        RewardKind::Touch => "stroking, brushing, a lap",
        RewardKind::Training => "an exercise it enjoys",
        RewardKind::Exploring => "outside, sniffing, the window",
        RewardKind::Rest => "a bed, a quiet room, sleep",
    }
}

#[derive(Deserialize)]
struct Asked {
    #[serde(default)]
    kind: String,
    #[serde(default)]
    kept: String,
}

async fn new(page: Page, Query(asked): Query<Asked>) -> Markup {
    match RewardKind::ALL.into_iter().find(|k| k.name() == asked.kind) {
        Some(kind) => form(&page, None, &Typed::default().with("kind", kind.name()), false),
        None => kinds(&page),
    }
}

async fn add(page: Page, typed: Typed) -> Result<Response, Error> {
    save(page, None, typed).await
}

async fn edit(page: Page, Path(id): Path<String>, Query(asked): Query<Asked>) -> Result<Markup, Error> {
    let card = known(&page, &id)?;
    let mut typed = Typed::default()
        .with("kind", card.kind.name())
        .with("name", &card.name)
        .with_some("kcal_per_piece", card.kcal_per_piece)
        .with_some("grams_per_piece", card.grams_per_piece)
        .with_some("seconds_to_deliver", card.seconds_to_deliver)
        .with_some("most_per_day", card.most_per_day)
        .with_some("says", card.says.as_ref())
        .with_some("already_said", card.already_said.then_some("yes"))
        .with_some("active", card.active.then_some("yes"));
    for animal in &card.animals {
        typed = typed.with("animals", animal);
    }
    Ok(form(&page, Some(&card), &typed, !asked.kept.is_empty()))
}

async fn change(page: Page, Path(id): Path<String>, typed: Typed) -> Result<Response, Error> {
    let card = known(&page, &id)?;
    save(page, Some(card), typed).await
}

fn known(page: &Page, id: &str) -> Result<RewardCard, Error> {
    let id: RewardId = named(id, "reward")?;
    let card = page.story.rewards().get(&id).map(|c| (*c).clone());
    card.ok_or_else(|| Error::NotFound("This notebook knows no such reward.".into()))
}

async fn save(page: Page, before: Option<RewardCard>, typed: Typed) -> Result<Response, Error> {
    let fields: Vec<&str> = FIELDS.iter().chain(&pieces::FIELDS).copied().collect();
    let mut typed = typed.only(&fields)?;
    let card = read(&page, before.as_ref().map(|c| c.reward), &mut typed);
    if typed.right()
        && let Some(card) = card
        && typed.kept(page.keep(vec![page.event(card.clone())]).await)?
    {
        return Ok(Redirect::to(&format!("/people/reward/{}?kept=yes", card.reward)).into_response());
    }
    Ok(again(form(&page, before.as_ref(), &typed, false)))
}

fn read(page: &Page, id: Option<RewardId>, typed: &mut Typed) -> Option<RewardCard> {
    let kind = typed.one_of("kind", &RewardKind::ALL, RewardKind::name);
    if typed.text("kind").is_empty() {
        typed.wrong("kind", "is missing; choose one");
    }
    let name = typed.label("name");
    let (kcal_per_piece, grams_per_piece) = if kind == Some(RewardKind::Food) {
        pieces::read(typed)
    } else {
        for field in pieces::FIELDS {
            if !typed.text(field).is_empty() {
                typed.wrong(field, "is only for food; leave it empty, or choose the kind food");
            }
        }
        (None, None)
    };
    let seconds_to_deliver = typed.quantity("seconds_to_deliver", Seconds::new);
    let most_per_day = typed.whole("most_per_day", 1, 1000);
    let says = typed.label_or_none("says");
    let animals = typed.ids("animals", |l| page.story.animals().contains_key(l));
    let card = RewardCard {
        reward: id.unwrap_or_else(|| RewardId(Uuid::now_v7())),
        name: name?,
        kind: kind?,
        kcal_per_piece,
        grams_per_piece,
        seconds_to_deliver,
        most_per_day,
        says,
        already_said: typed.ticked("already_said"),
        animals,
        active: id.is_none() || typed.ticked("active"),
    };
    // One may always put a food away, whatever it is.
    if card.active {
        refuse_forbidden(&page.animals(), &card, typed);
    }
    Some(card)
}

fn refuse_forbidden(animals: &[AnimalCard], card: &RewardCard, typed: &mut Typed) {
    for animal in animals.iter().filter(|l| card.is_for(l.animal)) {
        if let Some(why) = forbidden(animal.species, card) {
            let others = if animals.len() > 1 { ", or tick only the animals it is for" } else { "" };
            typed.wrong("name", format!("cannot be a reward for {}: {why}. Choose another food{others}", animal.name));
            return;
        }
    }
}

fn kinds(page: &Page) -> Markup {
    layout(
        page,
        Tab::People,
        "Something it may want",
        html! {
            p { "Which kind? A mix of kinds makes a better board than food alone." }
            ul.plain {
                @for kind in RewardKind::ALL {
                    li { a.button.wide href=(format!("/people/reward/new?kind={}", kind.name())) {
                        strong { (crate::fields::label_of(kind.name())) } span.quiet { (examples(kind)) }
                    } }
                }
            }
            p { a href="/people" { "Back to People" } }
        },
    )
}

fn form(page: &Page, before: Option<&RewardCard>, typed: &Typed, kept: bool) -> Markup {
    let to = before.map_or_else(|| "/people/reward/new".to_owned(), |c| format!("/people/reward/{}", c.reward));
    let food = typed.text("kind") == RewardKind::Food.name();
    let kinds: Vec<_> =
        RewardKind::ALL.iter().map(|k| (k.name().to_owned(), format!("{}: {}", k.name(), examples(*k)))).collect();
    let animals: Vec<_> = page.animals().iter().map(|l| (l.animal.to_string(), html! { (l.name.as_str()) })).collect();
    let title = before.map_or_else(|| format!("New: {}", typed.text("kind")), |c| c.name.to_string());
    layout_with(
        page,
        Tab::People,
        &title,
        &["client/picture.js"],
        html! {
            @if kept && let Some(card) = before { (standing(page, card)) }
            (summary(typed))
            @if food { (food_note()) }
            form method="post" action=(to) .stack {
                @if before.is_some() { (select(typed, "kind", "Kind", "", &kinds)) }
                @else { input type="hidden" name="kind" value=(typed.text("kind")); }
                (line(typed, "name", "Name", if food { "as exact as you can, such as: cooked chicken, plain" } else { "as used at home" }, true))
                @if food { (energy(typed)) }
                (number(typed, "seconds_to_deliver", "Seconds from press to done", "how long one delivery at the board takes; short ones can be shown more often"))
                (number(typed, "most_per_day", "Most times a day", "before people or the animal have had enough"))
                (line(typed, "says", "The word you would say", "one short word", false))
                (tick(typed, "already_said", "we say this word many times a day already"))
                @if animals.len() > 1 { (ticks(typed, "animals", "For", "none ticked means all", &animals)) }
                @else { @for l in typed.all("animals") { input type="hidden" name="animals" value=(l); } }
                @if before.is_some() { (tick(typed, "active", "still used")) }
                button.primary.wide { "Keep" }
            }
            @if let Some(c) = before { (pictures::section(page, PictureOf::Reward { reward: c.reward }, c.name.as_str(), &to)) }
            p { a href="/people#rewards" { "Back to People" } " · " a href="/people/reward/new" { "Add another" } }
        },
    )
}

fn energy(typed: &Typed) -> Markup {
    html! {
        fieldset {
            legend { "Energy of one piece" }
            (number(typed, "kcal_per_piece", "kcal a piece", "from the package, if it says so"))
            p.quiet { "Not known? Leave it empty and give the weight of a piece, with the package\u{2019}s figure or a food of the table." }
            (number(typed, "grams_per_piece", "Grams a piece", "weigh ten and divide by ten"))
            (number(typed, "kcal_per_100g", "kcal per 100 g", "from the package; this is the better figure"))
            (select(typed, "food", "or a plain food", "from the USDA table, without salt, fat or seasoning", &pieces::foods()))
        }
    }
}

/// What was kept, what the hazards list says of it, and how many pieces that makes today.
fn standing(page: &Page, card: &RewardCard) -> Markup {
    html! {
        section.card role="status" {
            p { strong { "Kept." } " " (card.name.as_str()) @if let Some(k) = card.kcal_per_piece { ": " (format!("{:.2}", k.get())) " kcal a piece" } "." }
            (for_each_animal(page, card))
            @if card.kind == RewardKind::Food {
                @for animal in page.animals().iter().filter(|l| card.is_for(l.animal)) {
                    @let today = ration(&page.story, animal, page.now);
                    p { (animal.name.as_str()) ": "
                        @match (today.budget_kcal, card.kcal_per_piece.map(Kcal::get).filter(|k| *k > 0.0)) {
                            (Some(budget), Some(kcal)) => { "rewards of a day are " (format!("{budget:.0}")) " kcal, at most " (format!("{:.0}", (budget / kcal).floor())) " of these and nothing else." }
                            _ => { "how many a day cannot be said. " (today.refusal.unwrap_or_default()) }
                        }
                    }
                }
            }
        }
    }
}
