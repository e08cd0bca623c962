//! An animal: what it is, what the board and the food must allow for.

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
use sayso_model::{AnimalCard, AnimalId, Day, Kcal, Kilograms, LifeStage, PictureOf, Probability, Species};
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

pub const fn stage_words(stage: LifeStage) -> &'static str {
    match stage.today() {
        LifeStage::NeuteredAdult => "grown, neutered",
        LifeStage::IntactAdult => "grown, not neutered",
        LifeStage::ObeseProne => "grown, gains easily",
        LifeStage::WeightLoss => "on a weight-loss plan (enter the target weight)",
        LifeStage::Kitten => "kitten",
        // Whatever earlier records call it.
        LifeStage::Puppy | LifeStage::PuppyUnder4Months | LifeStage::PuppyOver4Months => "puppy",
    }
}

/// Age in words at a day.
pub fn age(born: Day, today: Day) -> String {
    let days = today.days_since(born).max(0);
    match days {
        0..=55 => format!("{} weeks old", days / 7),
        56..=729 => format!("{:.0} months old", f64::from(days) / DAYS_A_YEAR * 12.0),
        _ => format!("{:.0} years old", (f64::from(days) / DAYS_A_YEAR).floor()),
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
        .with_some("weight_kg", c.weight_kg)
        .with_some("adult_weight_kg", c.adult_weight_kg)
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
    let name = typed.label("name");
    let species = typed.one_of("species", &Species::ALL, Species::name);
    if typed.text("species").is_empty() {
        typed.wrong("species", "is missing; choose one");
    }
    let (born, born_estimated) = born(page, typed);
    let weight_kg = typed.quantity("weight_kg", Kilograms::new);
    let adult_weight_kg = typed.quantity("adult_weight_kg", Kilograms::new);
    let life_stage = typed.one_of("life_stage", &LifeStage::ALL, LifeStage::name);
    if let (Some(stage), Some(species)) = (life_stage, species)
        && !stage.fits(species)
    {
        typed.wrong("life_stage", format!("\u{201c}{}\u{201d} does not fit a {}", stage_words(stage), species.name()));
    }
    if life_stage == Some(LifeStage::Puppy)
        && let (Some(kg), Some(grown)) = (weight_kg, adult_weight_kg)
        && kg > grown
    {
        typed.wrong(
            "adult_weight_kg",
            format!("is less than the {kg} kg it weighs; correct one, or choose a grown stage"),
        );
    }
    let day_kcal = typed.quantity("day_kcal", Kcal::new);
    if day_kcal.is_some_and(|k| k.get() <= 0.0) {
        typed.wrong("day_kcal", "must be more than 0; leave it empty to have it computed");
    }
    let reward_share = typed.number("reward_percent").and_then(|percent| {
        if percent > 0.0 && percent <= 100.0 * MOST_REWARD_SHARE {
            Some(Probability::clamped(percent / 100.0))
        } else {
            typed.wrong("reward_percent", "must be more than 0 and at most 10; ask a veterinarian for more");
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
        typed.wrong("born", "and an age were both given; give one of them");
        return (None, false);
    }
    let read = text.parse::<Day>();
    let born = typed.checked("born", read);
    if born.is_some_and(|b| b.days_since(today) > 0) {
        typed.wrong("born", "lies in the future");
    }
    if born.is_some_and(|b| today.days_since(b) > 366 * 120) {
        typed.wrong("born", "lies more than 120 years back");
    }
    (born, typed.ticked("born_estimated"))
}

fn form(page: &Page, id: Option<AnimalId>, typed: &Typed) -> Markup {
    let to = id.map_or_else(|| "/people/animal/new".to_owned(), |l| format!("/people/animal/{l}"));
    let species: Vec<_> = Species::ALL.iter().map(|s| (s.name().to_owned(), s.name().to_owned())).collect();
    let mut stages = vec![(String::new(), "not known".to_owned())];
    stages.extend(LifeStage::ALL.iter().map(|s| {
        let whose = match s {
            LifeStage::Puppy => " (dogs)",
            LifeStage::Kitten => " (cats)",
            _ => "",
        };
        (s.name().to_owned(), format!("{}{whose}", stage_words(*s)))
    }));
    layout_with(
        page,
        Tab::People,
        if id.is_some() { "An animal" } else { "A new animal" },
        &["client/picture.js"],
        html! {
            (summary(typed))
            form method="post" action=(to) .stack {
                (line(typed, "name", "Name", "", true))
                (select(typed, "species", "Species", "Body language, dangerous foods and the energy formula depend on it.", &species))
                h2 { "Age" }
                (day(typed, "born", "Birth date", "if known"))
                (tick(typed, "born_estimated", "this date is an estimate"))
                p.quiet { "Not known? Give its age instead; a birth date is worked out and marked as an estimate." }
                div.row.even {
                    (number(typed, "age_years", "Age, years", ""))
                    (number(typed, "age_months", "and months", "0 to 11"))
                }
                h2 { "Food" }
                (number(typed, "weight_kg", "Weight, kg", "such as 4.5 (a pound is 0.454 kg)"))
                (select(typed, "life_stage", "Stage of life", "sets how much energy a day is reckoned with", &stages))
                (number(typed, "adult_weight_kg", "For a puppy: weight expected once grown, kg", "A puppy\u{2019}s need goes by how much of it there is already. Ask the breeder or a veterinarian; without it nothing is computed."))
                (number(typed, "day_kcal", "Whole day\u{2019}s food, kcal, as a veterinarian set it", "Leave empty for dogs and cats to have a starting point computed. Where nothing can be computed, ask a veterinarian and type it in here; it then replaces any formula."))
                (number(typed, "reward_percent", "Share of it for rewards, per cent", "at most 10; empty means 10"))
                h2 { "To allow for" }
                (area(typed, "limits", "Limits", "hearing, sight, movement and the like: poor hearing or sight, stiff legs, a cleft paw"))
                (area(typed, "cautions", "Health cautions", "allergies, pain, medicines, guarding of food or places; shown wherever food is offered"))
                @if id.is_some() { (tick(typed, "active", "still takes part")) }
                button.primary.wide { "Keep" }
            }
            @if let Some(animal) = id {
                @let name = page.story.animals().get(&animal).map_or_else(String::new, |c| c.name.to_string());
                (pictures::section(page, PictureOf::Animal { animal }, &name, &to))
            }
            p.quiet { "Nothing here replaces a veterinarian. Each change is kept as a new version; earlier ones stay in the log." }
            p { a href="/people" { "Back to People" } }
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
        assert_eq!(age(day("2026-11-01"), day("2026-11-25")), "3 weeks old");
        assert_eq!(age(day("2025-11-25"), day("2026-11-25")), "12 months old");
        assert_eq!(age(day("2020-01-01"), day("2026-11-25")), "6 years old");
        assert_eq!(age(day("2027-01-01"), day("2026-11-25")), "0 weeks old");
    }
}
