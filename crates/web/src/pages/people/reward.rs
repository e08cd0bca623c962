//! Something an animal may want. A food the hazards list forbids for one of its animals is refused with the reason.

use super::ideas::open;
use super::pieces;
use crate::cautions::{food_note, for_each_animal};
use crate::error::Error;
use crate::fields::{first_line, line, number, select, summary, tick, ticks};
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
use sayso_advisor::ration::{called_like_forbidden, forbidden, ration};
use sayso_model::facts::giving;
use sayso_model::{AnimalCard, Kcal, Label, PictureOf, RewardCard, RewardId, RewardKind, Seconds};
use sayso_wording::hazards::foods;
use sayso_wording::ration::refusal;
use sayso_wording::{Locale, say, words};
use serde::Deserialize;
use uuid::Uuid;

const FIELDS: [&str; 10] = [
    "name",
    "kind",
    "seconds_to_deliver",
    "most_per_day",
    "says",
    "already_said",
    "at_board",
    "stand_in",
    "animals",
    "active",
];

pub fn router() -> Router<AppState> {
    Router::new()
        .route("/people/reward/new", get(new).post(add))
        .route("/people/reward/{reward}", get(edit).post(change))
}

#[derive(Deserialize)]
struct Asked {
    #[serde(default)]
    kind: String,
    #[serde(default)]
    kept: String,
}

async fn new(page: Page, Query(asked): Query<Asked>) -> Markup {
    let Some(kind) = RewardKind::ALL.into_iter().find(|k| k.name() == asked.kind) else { return kinds(&page) };
    // After "add another": what was kept before it, with its cautions.
    let before = named(&asked.kept, "reward").ok().and_then(|id: RewardId| page.story.rewards().get(&id).copied());
    form(&page, None, &Typed::default().with("kind", kind.name()), before)
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
        .with_some("at_board", card.at_board.map(|yes| if yes { "yes" } else { "no" }))
        .with_some("stand_in", card.stand_in.as_ref())
        .with_some("active", card.active.then_some("yes"));
    for animal in &card.animals {
        typed = typed.with("animals", animal);
    }
    Ok(form(&page, Some(&card), &typed, Some(&card).filter(|_| !asked.kept.is_empty())))
}

async fn change(page: Page, Path(id): Path<String>, typed: Typed) -> Result<Response, Error> {
    let card = known(&page, &id)?;
    save(page, Some(card), typed).await
}

fn known(page: &Page, id: &str) -> Result<RewardCard, Error> {
    let id: RewardId = named(id, "reward")?;
    let card = page.story.rewards().get(&id).map(|c| (*c).clone());
    card.ok_or_else(|| Error::NotFound(words!(reward::no_such)))
}

async fn save(page: Page, before: Option<RewardCard>, typed: Typed) -> Result<Response, Error> {
    let fields: Vec<&str> = FIELDS.iter().chain(&pieces::FIELDS).chain(&["then"]).copied().collect();
    let mut typed = typed.only(&fields)?;
    let card = read(&page, before.as_ref().map(|c| c.reward), &mut typed);
    if typed.right()
        && let Some(card) = card
        && typed.kept(page.keep(vec![page.event(card.clone())]).await)?
    {
        // What was typed is kept before another is asked for.
        let next = match typed.text("then") {
            "another" => format!("/people/reward/new?kind={}&kept={}", card.kind.name(), card.reward),
            _ => format!("/people/reward/{}?kept=yes", card.reward),
        };
        return Ok(Redirect::to(&next).into_response());
    }
    Ok(again(form(&page, before.as_ref(), &typed, None)))
}

fn read(page: &Page, id: Option<RewardId>, typed: &mut Typed) -> Option<RewardCard> {
    let kind = typed.one_of("kind", &RewardKind::ALL, RewardKind::name);
    if typed.text("kind").is_empty() {
        typed.wrong("kind", say!(&page.locale, reward::kind_missing));
    }
    let name = typed.label("name");
    let (kcal_per_piece, grams_per_piece) = if kind == Some(RewardKind::Food) {
        pieces::read(&page.locale, typed)
    } else {
        for field in pieces::FIELDS {
            if !typed.text(field).is_empty() {
                typed.wrong(field, say!(&page.locale, reward::only_food));
            }
        }
        (None, None)
    };
    let seconds_to_deliver = typed.quantity("seconds_to_deliver", Seconds::new);
    let most_per_day = typed.whole("most_per_day", 1, 1000);
    let says = typed.label_or_none("says");
    let animals = typed.ids("animals", |l| page.story.animals().contains_key(l));
    let at_board = typed.one_of("at_board", &[true, false], |yes| if yes { "yes" } else { "no" });
    let stand_in = typed.label_or_none("stand_in");
    let card = RewardCard {
        kcal_per_piece,
        grams_per_piece,
        seconds_to_deliver,
        most_per_day,
        says,
        already_said: typed.ticked("already_said"),
        at_board,
        stand_in,
        animals,
        active: id.is_none() || typed.ticked("active"),
        ..RewardCard::new(id.unwrap_or_else(|| RewardId(Uuid::now_v7())), name?, kind?)
    };
    // One may always put a food away, whatever it is.
    if card.active {
        refuse_forbidden(&page.locale, &page.animals(), &card, typed);
    }
    Some(card)
}

fn refuse_forbidden(l: &Locale, animals: &[AnimalCard], card: &RewardCard, typed: &mut Typed) {
    if animals.iter().any(|l| card.is_for(l.animal) && called_like_forbidden(l.species, card)) {
        typed.wrong("name", say!(l, reward::called_like_food));
        return;
    }
    if animals.iter().any(|l| card.is_for(l.animal) && forbidden(l.species, card).is_some()) {
        let several = animals.len() > 1;
        typed.wrong("name", if several { say!(l, reward::not_added_tick) } else { say!(l, reward::not_added) });
    }
}

/// Why a food was not added, for each animal it would harm.
fn refused(page: &Page, typed: &Typed) -> Markup {
    let food = Label::new(typed.text("name")).ok().filter(|_| typed.text("kind") == RewardKind::Food.name());
    let card = food.map(|name| RewardCard::new(RewardId(Uuid::nil()), name, RewardKind::Food));
    html! {
        @if let Some(card) = card.filter(|_| typed.problem("name").is_some()) {
            @for l in page.animals().iter().filter(|l| typed.text("animals").is_empty() || typed.all("animals").any(|a| a == l.animal.to_string())) {
                @if let Some(why) = forbidden(l.species, &card) {
                    p.stop role="alert" { strong { (say!(&page.locale, reward::poison, food = capital(&card.name), species = l.species.name())) } " " (foods(&page.locale, &why)) }
                }
            }
        }
    }
}

/// A name at the start of a sentence.
fn capital(name: &Label) -> String {
    let mut letters = name.as_str().chars();
    letters.next().map_or_else(String::new, |first| first.to_uppercase().chain(letters).collect())
}

fn kinds(page: &Page) -> Markup {
    let l = &page.locale;
    layout(
        page,
        Tab::People,
        &say!(l, reward::title),
        html! {
            p { (say!(l, reward::which_kind)) }
            ul.plain {
                @for kind in RewardKind::ALL {
                    li { a.button.wide href=(format!("/people/reward/new?kind={}", kind.name())) {
                        strong { (say!(l, ideas::kind, kind = kind.name())) } span.quiet { (say!(l, card::examples, kind = kind.name())) }
                    } }
                }
            }
            p { a href="/people" { (say!(l, card::back)) } }
        },
    )
}

/// The card as a form; `kept` is what was kept just now.
fn form(page: &Page, before: Option<&RewardCard>, typed: &Typed, kept: Option<&RewardCard>) -> Markup {
    let to = before.map_or_else(|| "/people/reward/new".to_owned(), |c| format!("/people/reward/{}", c.reward));
    let l = &page.locale;
    let food = typed.text("kind") == RewardKind::Food.name();
    let called = if food { say!(l, reward::exact) } else { say!(l, card::name_at_home) };
    let kinds: Vec<_> =
        RewardKind::ALL.iter().map(|k| (k.name().to_owned(), say!(l, ideas::kind, kind = k.name()))).collect();
    let animals: Vec<_> = page.animals().iter().map(|l| (l.animal.to_string(), html! { (l.name.as_str()) })).collect();
    let title = before.map_or_else(
        || say!(l, reward::new, kind = say!(l, ideas::kind, kind = typed.text("kind"))),
        |c| c.name.to_string(),
    );
    layout_with(
        page,
        Tab::People,
        &title,
        &["client/picture.js", "client/draft.js"],
        html! {
            @if let Some(card) = kept { (standing(page, card)) }
            (refused(page, typed))
            (summary(typed))
            @if food { (food_note(&page.locale)) }
            @if before.is_none() { (tries(page, typed.text("kind"))) }
            form method="post" action=(page.of_home(&to)) .stack {
                @if before.is_some() { (select(typed, "kind", &say!(l, reward::kind), "", &kinds)) }
                @else { input type="hidden" name="kind" value=(typed.text("kind")); }
                @if before.is_none() && kept.is_some() { (first_line(typed, "name", &say!(l, card::name), &called)) }
                @else { (line(typed, "name", &say!(l, card::name), &called, true)) }
                // What must not be given needs no figures.
                @if food && typed.problem("name").is_none() { (energy(l, typed)) }
                (given(page, typed))
                @if animals.len() > 1 { (ticks(typed, "animals", &say!(l, card::rule_for), &say!(l, reward::none_means_all), &animals)) }
                @else { @for l in typed.all("animals") { input type="hidden" name="animals" value=(l); } }
                @if before.is_some() { (tick(typed, "active", &say!(l, reward::still_used))) }
                button.primary.wide { (say!(l, setup::keep)) }
                button.wide name="then" value="another" { (say!(l, reward::keep_another)) }
            }
            @if let Some(c) = before { (pictures::section(page, PictureOf::Reward { reward: c.reward }, c.name.as_str(), &to)) }
            p { a href="/people#rewards" { (say!(l, card::back)) } }
        },
    )
}

/// Where, how long and how often it is given, and what one says for it.
fn given(page: &Page, typed: &Typed) -> Markup {
    let l = &page.locale;
    let kind = RewardKind::ALL.into_iter().find(|k| k.name() == typed.text("kind"));
    let usual = kind.map(giving);
    let at_board = [
        (
            String::new(),
            say!(l, reward::as_usual, at_board = if usual.is_some_and(|u| u.at_board) { "yes" } else { "no" }),
        ),
        ("yes".to_owned(), say!(l, reward::at_board_yes)),
        ("no".to_owned(), say!(l, reward::at_board_no)),
    ];
    let seconds =
        usual.map_or_else(String::new, |u| say!(l, reward::usual_seconds, seconds = u.given_in_s + u.lasts_s));
    let times = usual.map_or_else(String::new, |u| say!(l, reward::usual_times, times = u.most_per_day));
    html! {
        (line(typed, "says", &say!(l, reward::says), &say!(l, reward::says_hint), false))
        (tick(typed, "already_said", &say!(l, reward::already_said)))
        (select(typed, "at_board", &say!(l, reward::at_board), &say!(l, reward::at_board_hint), &at_board))
        (number(typed, "seconds_to_deliver", &say!(l, reward::seconds), &seconds))
        (number(typed, "most_per_day", &say!(l, reward::most), &times))
        @if typed.text("at_board") == "no" || !typed.text("stand_in").is_empty() || usual.is_some_and(|u| !(u.at_board && u.held_up)) {
            (line(typed, "stand_in", &say!(l, reward::stand_in), &say!(l, reward::stand_in_hint), false))
        }
    }
}

/// Ideas of the kind, for each animal at home.
fn tries(page: &Page, kind: &str) -> Markup {
    let l = &page.locale;
    html! {
        @for animal in page.animals() {
            @let names: Vec<String> = open(page, &animal)
                .into_iter()
                .filter(|i| i.kind.name() == kind)
                .take(4)
                .map(|i| say!(l, ideas::name, key = &i.key))
                .collect();
            @if !names.is_empty() {
                p { (say!(l, ideas::for_animal, name = &animal.name, ideas = names.join(" · "))) " "
                    a href=(format!("/a/{}/ideas", animal.animal)) { (say!(l, ideas::see)) } }
            }
        }
    }
}

fn energy(l: &Locale, typed: &Typed) -> Markup {
    html! {
        fieldset {
            legend { (say!(l, reward::energy)) }
            (number(typed, "kcal_per_piece", &say!(l, reward::kcal), &say!(l, reward::kcal_hint)))
            p.quiet { (say!(l, reward::not_known)) }
            (number(typed, "grams_per_piece", &say!(l, reward::grams), &say!(l, reward::grams_hint)))
            (number(typed, "kcal_per_100g", &say!(l, reward::per_100), &say!(l, reward::per_100_hint)))
            (select(typed, "food", &say!(l, reward::table), &say!(l, reward::table_hint), &pieces::foods(l)))
        }
    }
}

/// What was kept, what the hazards list says of it, and how many pieces that makes today.
fn standing(page: &Page, card: &RewardCard) -> Markup {
    let l = &page.locale;
    html! {
        section.card role="status" {
            p { strong { (say!(l, reward::kept)) } @if let Some(k) = card.kcal_per_piece { " " (say!(l, reward::kept_kcal, name = &card.name, kcal = l.number(k.get(), 2))) } }
            (for_each_animal(page, card))
            @if card.kind == RewardKind::Food {
                @for animal in page.animals().iter().filter(|l| card.is_for(l.animal)) {
                    @let today = ration(&page.story, animal, page.now);
                    p { (match (today.budget_kcal, card.kcal_per_piece.map(Kcal::get).filter(|k| *k > 0.0)) {
                        (Some(budget), Some(kcal)) => {
                            let fits = (budget / kcal).floor();
                            let most = card.most_per_day.map(f64::from).filter(|most| *most < fits);
                            let by = if most.is_some() { "card" } else { "food" };
                            say!(l, reward::fits, name = &animal.name, budget = l.number(budget, 0), pieces = l.number(most.unwrap_or(fits), 0), by = by)
                        }
                        _ => say!(l, reward::fits_unknown, name = &animal.name, why = today.refusal.map(|why| refusal(l, animal.name.as_str(), &why)).unwrap_or_default()),
                    }) }
                }
            }
        }
    }
}
