//! A person who shows or answers.

use crate::error::Error;
use crate::fields::{line, radios, select, summary, tick};
use crate::layout::{Tab, layout};
use crate::page::Page;
use crate::state::AppState;
use crate::typed::{Typed, again, named};
use axum::Router;
use axum::extract::Path;
use axum::response::{IntoResponse, Redirect, Response};
use axum::routing::get;
use maud::{Markup, html};
use sayso_model::{Clock, Language, PersonCard, PersonId, Role, WeightUnit};
use sayso_wording::{say, words};
use uuid::Uuid;

const ROLES: [Role; 3] = [Role::Home, Role::Coach, Role::Visitor];

const CLOCKS: [Clock; 2] = [Clock::Hours24, Clock::Hours12];
const UNITS: [WeightUnit; 2] = [WeightUnit::Kg, WeightUnit::Lb];

const fn clock_name(clock: Clock) -> &'static str {
    match clock {
        Clock::Hours24 => "24",
        Clock::Hours12 => "12",
    }
}

const fn unit_name(unit: WeightUnit) -> &'static str {
    match unit {
        WeightUnit::Kg => "kg",
        WeightUnit::Lb => "lb",
    }
}

pub fn router() -> Router<AppState> {
    Router::new()
        .route("/people/person/new", get(new).post(add))
        .route("/people/person/{person}", get(edit).post(change))
}

pub const fn role_name(role: Role) -> &'static str {
    match role {
        Role::Home => "home",
        Role::Coach => "coach",
        Role::Visitor => "visitor",
    }
}

async fn new(page: Page) -> Markup {
    form(&page, None, &Typed::default().with("role", "home").with("active", "yes"))
}

async fn add(page: Page, typed: Typed) -> Result<Response, Error> {
    save(page, None, typed).await
}

async fn edit(page: Page, Path(id): Path<String>) -> Result<Markup, Error> {
    let card = known(&page, &id)?;
    let typed = Typed::default()
        .with("name", &card.name)
        .with("role", role_name(card.role))
        .with_some("language", card.language.map(Language::tag))
        .with_some("clock", card.clock.map(clock_name))
        .with_some("weight_unit", card.weight_unit.map(unit_name))
        .with_some("active", card.active.then_some("yes"));
    Ok(form(&page, Some(card.person), &typed))
}

async fn change(page: Page, Path(id): Path<String>, typed: Typed) -> Result<Response, Error> {
    let card = known(&page, &id)?;
    save(page, Some(card.person), typed).await
}

fn known(page: &Page, id: &str) -> Result<PersonCard, Error> {
    let id: PersonId = named(id, "person")?;
    let card = page.story.people().get(&id).map(|c| (*c).clone());
    card.ok_or_else(|| Error::NotFound(words!(card::no_such_person)))
}

async fn save(page: Page, id: Option<PersonId>, typed: Typed) -> Result<Response, Error> {
    let mut typed = typed.only(&["name", "role", "language", "clock", "weight_unit", "active"])?;
    let name = typed.label("name");
    let role = typed.one_of("role", &ROLES, role_name);
    if role.is_none() && typed.problem("role").is_none() {
        typed.wrong("role", say!(&page.locale, card::choose_one));
    }
    if let (Some(name), Some(role)) = (name, role) {
        let active = id.is_none() || typed.ticked("active");
        let card = PersonCard {
            language: typed.one_of("language", &Language::ALL, Language::tag),
            clock: typed.one_of("clock", &CLOCKS, clock_name),
            weight_unit: typed.one_of("weight_unit", &UNITS, unit_name),
            active,
            ..PersonCard::new(id.unwrap_or_else(|| PersonId(Uuid::now_v7())), name, role)
        };
        if typed.right() && typed.kept(page.keep(vec![page.event(card)]).await)? {
            return Ok(Redirect::to("/people").into_response());
        }
    }
    Ok(again(form(&page, id, &typed)))
}

fn form(page: &Page, id: Option<PersonId>, typed: &Typed) -> Markup {
    let to = id.map_or_else(|| "/people/person/new".to_owned(), |t| format!("/people/person/{t}"));
    let l = &page.locale;
    let as_browser = (String::new(), say!(l, people::language_of_the_browser));
    let languages: Vec<_> = std::iter::once(as_browser)
        .chain(Language::ALL.map(|language| (language.tag().to_owned(), language.own_name().to_owned())))
        .collect();
    let usual = || (String::new(), say!(l, people::usual));
    let clocks = [usual(), ("24".to_owned(), say!(l, people::clock_24)), ("12".to_owned(), say!(l, people::clock_12))];
    let units = [usual(), ("kg".to_owned(), say!(l, people::kilograms)), ("lb".to_owned(), say!(l, people::pounds))];
    let roles: Vec<_> = ROLES
        .iter()
        .map(|r| (role_name(*r).to_owned(), html! { (say!(l, card::role, role = role_name(*r))) }))
        .collect();
    layout(
        page,
        Tab::People,
        &if id.is_some() { say!(l, card::person) } else { say!(l, card::new_person) },
        html! {
            (summary(typed))
            form method="post" action=(page.of_home(&to)) .stack {
                (line(typed, "name", &say!(l, card::name), &say!(l, card::name_at_home), true))
                (radios(typed, "role", &say!(l, card::role_title), "", &roles))
                (select(typed, "language", &say!(l, people::language), &say!(l, people::language_hint), &languages))
                (select(typed, "clock", &say!(l, people::clock), "", &clocks))
                (select(typed, "weight_unit", &say!(l, people::weight_unit), "", &units))
                @if id.is_some() { (tick(typed, "active", &say!(l, card::takes_part))) }
                button.primary.wide { (say!(l, setup::keep)) }
            }
            p { a href="/people" { (say!(l, card::back)) } }
        },
    )
}
