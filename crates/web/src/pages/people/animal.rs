//! An animal: what it is, what the board and the food must allow for.

use super::weight;
use crate::error::Error;
use crate::fields::{area, day, line, number, select, summary, tick};
use crate::layout::{Tab, layout_with};
use crate::page::{AnimalPage, Page};
use crate::pages::pictures;
use crate::state::AppState;
use crate::typed::{Typed, again};
use axum::Router;
use axum::response::{IntoResponse, Redirect, Response};
use axum::routing::get;
use maud::{Markup, html};
use sayso_model::facts::MOST_REWARD_SHARE;
use sayso_model::{AnimalCard, AnimalId, Day, Kcal, LifeStage, PictureOf, Probability, Species};
use sayso_wording::{Locale, say};
use uuid::Uuid;

const FIELDS: [&str; 14] = [
    "name",
    "species",
    "born",
    "born_estimated",
    "age_years",
    "age_months",
    "weight_kg",
    "adult_weight_kg",
    "life_stage",
    "day_kcal",
    "reward_percent",
    "limits",
    "cautions",
    "active",
];
const DAYS_A_YEAR: f64 = 365.25;

pub fn router() -> Router<AppState> {
    Router::new()
        .route("/people/animal/new", get(new).post(add))
        .route("/people/animal/{animal}", get(edit).post(change))
}

/// A stage in words.
pub fn stage_words(l: &Locale, stage: LifeStage) -> String {
    let key = match stage.today() {
        // Whatever earlier records call it.
        LifeStage::PuppyUnder4Months | LifeStage::PuppyOver4Months => LifeStage::Puppy.name(),
        other => other.name(),
    };
    say!(l, card::stage, stage = key)
}

/// Age in words at a day.
pub fn age(l: &Locale, born: Day, today: Day) -> String {
    let days = today.days_since(born).max(0);
    match days {
        0..=55 => say!(l, card::weeks_old, weeks = days / 7),
        56..=729 => say!(l, card::months_old, months = l.number(f64::from(days) / DAYS_A_YEAR * 12.0, 0)),
        _ => say!(l, card::years_old, years = (f64::from(days) / DAYS_A_YEAR).floor()),
    }
}

async fn new(page: Page) -> Markup {
    form(&page, None, &Typed::default().with("species", "dog").with("active", "yes"))
}

async fn add(page: Page, typed: Typed) -> Result<Response, Error> {
    save(page, None, typed).await
}

async fn edit(page: AnimalPage) -> Markup {
    let c = &page.card;
    let typed = Typed::default()
        .with("name", &c.name)
        .with("species", c.species.name())
        .with_some("born", c.born)
        .with_some("born_estimated", c.born_estimated.then_some("yes"))
        .with_some("weight_kg", c.weight_kg.map(|kg| weight::shown(&page.locale, kg)))
        .with_some("adult_weight_kg", c.adult_weight_kg.map(|kg| weight::shown(&page.locale, kg)))
        .with_some("life_stage", c.life_stage.map(|s| s.today().name()))
        .with_some("day_kcal", c.day_kcal)
        .with_some("reward_percent", c.reward_share.map(|s| (s.get() * 1000.0).round() / 10.0))
        .with_some("limits", c.limits.as_ref())
        .with_some("cautions", c.cautions.as_ref())
        .with_some("active", c.active.then_some("yes"));
    form(&page, Some(c.animal), &typed)
}

async fn change(page: AnimalPage, typed: Typed) -> Result<Response, Error> {
    save(page.page, Some(page.id), typed).await
}

async fn save(page: Page, id: Option<AnimalId>, typed: Typed) -> Result<Response, Error> {
    let mut typed = typed.only(&FIELDS)?;
    let card = read(&page, id, &mut typed);
    if typed.right()
        && let Some(card) = card
    {
        let mut event = page.event(card.clone());
        event.animal = Some(card.animal);
        if typed.kept(page.keep(vec![event]).await)? {
            return Ok(Redirect::to(&format!("/people#animal-{}", card.animal)).into_response());
        }
    }
    Ok(again(form(&page, id, &typed)))
}

fn read(page: &Page, id: Option<AnimalId>, typed: &mut Typed) -> Option<AnimalCard> {
    let l = &page.locale;
    let name = typed.label("name");
    let species = typed.one_of("species", &Species::ALL, Species::name);
    if typed.text("species").is_empty() {
        typed.wrong("species", say!(l, card::choose_one));
    }
    let (born, born_estimated) = born(page, typed);
    let before = id.and_then(|id| page.story.animals().get(&id).copied());
    let (now, grown) = (before.and_then(|b| b.weight_kg), before.and_then(|b| b.adult_weight_kg));
    let weight_kg = weight::read(typed, "weight_kg", &page.locale, now);
    let adult_weight_kg = weight::read(typed, "adult_weight_kg", &page.locale, grown);
    let life_stage = typed.one_of("life_stage", &LifeStage::ALL, LifeStage::name);
    if let (Some(stage), Some(species)) = (life_stage, species)
        && !stage.fits(species)
    {
        typed.wrong(
            "life_stage",
            say!(
                l,
                card::stage_no_fit,
                stage = stage_words(l, stage),
                species = say!(l, start::species_name, species = species.name())
            ),
        );
    }
    if life_stage == Some(LifeStage::Puppy)
        && let (Some(kg), Some(grown)) = (weight_kg, adult_weight_kg)
        && kg > grown
    {
        typed.wrong("adult_weight_kg", say!(l, card::less_than_now, weight = l.weight(kg.get())));
    }
    let day_kcal = typed.quantity("day_kcal", Kcal::new);
    if day_kcal.is_some_and(|k| k.get() <= 0.0) {
        typed.wrong("day_kcal", say!(l, setup::day_kcal_more));
    }
    let reward_share = typed.number("reward_percent").and_then(|percent| {
        if percent > 0.0 && percent <= 100.0 * MOST_REWARD_SHARE {
            Some(Probability::clamped(percent / 100.0))
        } else {
            typed.wrong("reward_percent", say!(l, card::share_wrong));
            None
        }
    });
    Some(AnimalCard {
        animal: id.unwrap_or_else(|| AnimalId(Uuid::now_v7())),
        name: name?,
        species: species?,
        born,
        born_estimated,
        weight_kg,
        adult_weight_kg,
        life_stage,
        day_kcal,
        reward_share,
        limits: typed.note_or_none("limits"),
        cautions: typed.note_or_none("cautions"),
        active: id.is_none() || typed.ticked("active"),
    })
}

/// The birth date as typed, or worked back from an age; and whether it is an estimate.
fn born(page: &Page, typed: &mut Typed) -> (Option<Day>, bool) {
    let today = page.now.day(&page.zone);
    let (years, months) = (typed.whole("age_years", 0, 120), typed.whole("age_months", 0, 11));
    let text = typed.text("born").to_owned();
    if text.is_empty() {
        if years.is_none() && months.is_none() {
            return (None, false);
        }
        let age = f64::from(years.unwrap_or(0)) + f64::from(months.unwrap_or(0)) / 12.0;
        #[allow(clippy::cast_possible_truncation)]
        return (Some(today.plus(-(age * DAYS_A_YEAR).round() as i32)), true);
    }
    if years.is_some() || months.is_some() {
        typed.wrong("born", say!(&page.locale, card::born_twice));
        return (None, false);
    }
    let read = text.parse::<Day>();
    let born = typed.checked("born", read);
    if born.is_some_and(|b| b.days_since(today) > 0) {
        typed.wrong("born", say!(&page.locale, card::born_later));
    }
    if born.is_some_and(|b| today.days_since(b) > 366 * 120) {
        typed.wrong("born", say!(&page.locale, card::born_long_ago));
    }
    (born, typed.ticked("born_estimated"))
}

fn form(page: &Page, id: Option<AnimalId>, typed: &Typed) -> Markup {
    let to = id.map_or_else(|| "/people/animal/new".to_owned(), |l| format!("/people/animal/{l}"));
    let l = &page.locale;
    let species: Vec<_> =
        Species::ALL.iter().map(|s| (s.name().to_owned(), say!(l, start::species_name, species = s.name()))).collect();
    let mut stages = vec![(String::new(), say!(l, setup::stage_unknown))];
    stages.extend(LifeStage::ALL.iter().map(|s| {
        let stage = stage_words(l, *s);
        let said = match s {
            LifeStage::Puppy => say!(l, card::whose, species = "dog", stage = stage),
            LifeStage::Kitten => say!(l, card::whose, species = "cat", stage = stage),
            _ => stage,
        };
        (s.name().to_owned(), said)
    }));
    layout_with(
        page,
        Tab::People,
        &if id.is_some() { say!(l, card::animal) } else { say!(l, card::new_animal) },
        &["client/picture.js", "client/draft.js"],
        html! {
            (summary(typed))
            form method="post" action=(page.of_home(&to)) .stack {
                (line(typed, "name", &say!(l, card::name), "", true))
                (select(typed, "species", &say!(l, card::species), &say!(l, card::species_hint), &species))
                h2 { (say!(l, card::age)) }
                (day(typed, "born", &say!(l, card::born), &say!(l, card::if_known)))
                (tick(typed, "born_estimated", &say!(l, card::estimated)))
                p.quiet { (say!(l, card::or_age)) }
                div.row.even {
                    (number(typed, "age_years", &say!(l, card::years), ""))
                    (number(typed, "age_months", &say!(l, card::months), &say!(l, card::months_hint)))
                }
                h2 { (say!(l, card::food)) }
                (number(typed, "weight_kg", &say!(l, setup::weight, unit = weight::unit(l)), &say!(l, card::weight_hint)))
                (select(typed, "life_stage", &say!(l, setup::stage), &say!(l, setup::stage_hint), &stages))
                (number(typed, "adult_weight_kg", &say!(l, setup::grown_weight, unit = weight::unit(l)), &say!(l, card::grown_hint)))
                (number(typed, "day_kcal", &say!(l, setup::day_kcal), &say!(l, card::day_hint)))
                (number(typed, "reward_percent", &say!(l, card::share), &say!(l, card::share_hint)))
                h2 { (say!(l, card::allow)) }
                (area(typed, "limits", &say!(l, card::limits), &say!(l, card::limits_hint)))
                (area(typed, "cautions", &say!(l, card::cautions), &say!(l, card::cautions_hint)))
                @if id.is_some() { (tick(typed, "active", &say!(l, card::takes_part))) }
                button.primary.wide { (say!(l, setup::keep)) }
            }
            @if let Some(animal) = id {
                @let name = page.story.animals().get(&animal).map_or_else(String::new, |c| c.name.to_string());
                (pictures::section(page, PictureOf::Animal { animal }, &name, &to))
            }
            p.quiet { (say!(l, card::versions)) }
            p { a href="/people" { (say!(l, card::back)) } }
        },
    )
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;

    #[test]
    fn ages_are_told_in_fitting_units() {
        let day = |s: &str| s.parse::<Day>().unwrap();
        assert_eq!(age(&Locale::ENGLISH, day("2026-11-01"), day("2026-11-25")), "3 weeks old");
        assert_eq!(age(&Locale::ENGLISH, day("2025-11-25"), day("2026-11-25")), "12 months old");
        assert_eq!(age(&Locale::ENGLISH, day("2020-01-01"), day("2026-11-25")), "6 years old");
        assert_eq!(age(&Locale::ENGLISH, day("2027-01-01"), day("2026-11-25")), "0 weeks old");
    }
}
