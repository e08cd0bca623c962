//! How much food an animal may have: the few figures a day's rewards follow from, on a page of their own.

use super::animal::stage_words;
use super::steps::{StepName, along, on_the_way, onward};
use super::weight;
use crate::error::Error;
use crate::fields::{number, select, summary};
use crate::layout::{Tab, layout};
use crate::page::AnimalPage;
use crate::state::AppState;
use crate::typed::{Typed, again};
use axum::Router;
use axum::response::{IntoResponse, Redirect, Response};
use axum::routing::get;
use maud::{Markup, html};
use sayso_model::{AnimalCard, Kcal, LifeStage, Species};
use sayso_wording::say;

pub fn router() -> Router<AppState> {
    Router::new().route("/people/animal/{animal}/food", get(ask).post(save))
}

async fn ask(page: AnimalPage) -> Markup {
    let (c, l) = (&page.card, &page.locale);
    let typed = Typed::default()
        .with_some("weight_kg", c.weight_kg.map(|kg| weight::shown(l, kg)))
        .with_some("adult_weight_kg", c.adult_weight_kg.map(|kg| weight::shown(l, kg)))
        .with_some("life_stage", c.life_stage.map(|s| s.today().name()))
        .with_some("day_kcal", c.day_kcal);
    form(&page, &typed)
}

async fn save(page: AnimalPage, typed: Typed) -> Result<Response, Error> {
    let mut typed = typed.only(&["weight_kg", "adult_weight_kg", "life_stage", "day_kcal", "asked"])?;
    let day_kcal = typed.quantity("day_kcal", Kcal::new);
    if day_kcal.is_some_and(|k| k.get() <= 0.0) {
        typed.wrong("day_kcal", say!(&page.locale, setup::day_kcal_more));
    }
    // Without it nothing is computed; asked once, for it may not be known.
    let asks = page.card.species == Species::Dog && typed.text("life_stage") == LifeStage::Puppy.name();
    let given = !typed.text("adult_weight_kg").is_empty() || day_kcal.is_some();
    if asks && !given && typed.text("asked").is_empty() {
        typed.wrong("adult_weight_kg", say!(&page.locale, setup::grown_weight_asked));
    }
    let card = AnimalCard {
        weight_kg: weight::read(&mut typed, "weight_kg", &page.locale, page.card.weight_kg),
        adult_weight_kg: weight::read(&mut typed, "adult_weight_kg", &page.locale, page.card.adult_weight_kg),
        life_stage: typed.one_of("life_stage", &LifeStage::ALL, LifeStage::name),
        day_kcal,
        ..page.card.clone()
    };
    if typed.right() && typed.kept(page.keep(vec![page.event(card)]).await)? {
        let to = if on_the_way(&page, &page.card) {
            onward(&page, &page.card, StepName::Food)
        } else {
            format!("/people#animal-{}", page.id)
        };
        return Ok(Redirect::to(&to).into_response());
    }
    Ok(again(form(&page, &typed)))
}

fn form(page: &AnimalPage, typed: &Typed) -> Markup {
    let (l, card) = (&page.locale, &page.card);
    let mut stages = vec![(String::new(), say!(l, setup::stage_unknown))];
    let fits = LifeStage::ALL.iter().filter(|s| s.fits(card.species));
    stages.extend(fits.map(|s| (s.name().to_owned(), stage_words(l, *s))));
    let computed = matches!(card.species, Species::Dog | Species::Cat);
    let vet = number(typed, "day_kcal", &say!(l, setup::day_kcal), &say!(l, setup::day_kcal_hint));
    let on = on_the_way(page, card);
    layout(
        page,
        Tab::People,
        &say!(l, setup::what, step = "food", name = &card.name),
        html! {
            (along(page, card, StepName::Food))
            (summary(typed))
            p { (say!(l, setup::food_why, name = &card.name)) }
            form method="post" action=(format!("/people/animal/{}/food", page.id)) .stack {
                @if computed {
                    (number(typed, "weight_kg", &say!(l, setup::weight, unit = weight::unit(l)), ""))
                    (select(typed, "life_stage", &say!(l, setup::stage), &say!(l, setup::stage_hint), &stages))
                    details open[typed.text("life_stage") == LifeStage::Puppy.name() || !typed.text("adult_weight_kg").is_empty() || !typed.text("day_kcal").is_empty() || !typed.right()] {
                        summary { (say!(l, setup::food_more, species = card.species.name())) }
                        @if card.species == Species::Dog {
                            (number(typed, "adult_weight_kg", &say!(l, setup::grown_weight, unit = weight::unit(l)), &say!(l, setup::grown_weight_hint)))
                        }
                        (vet)
                    }
                } @else { (vet) }
                @if typed.problem("adult_weight_kg").is_some() { input type="hidden" name="asked" value="yes"; }
                button.primary.wide { @if on { (say!(l, setup::next)) } @else { (say!(l, setup::keep)) } }
            }
            @if on { p { a.link href=(onward(page, card, StepName::Food)) { (say!(l, setup::later)) } " " span.quiet { (say!(l, setup::food_later)) } } }
            p.quiet { (say!(l, setup::no_vet)) }
        },
    )
}
