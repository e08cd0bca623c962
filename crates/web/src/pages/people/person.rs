//! A person who shows or answers.

use crate::error::Error;
use crate::fields::{line, radios, summary, tick};
use crate::layout::{Tab, layout};
use crate::page::Page;
use crate::state::AppState;
use crate::typed::{Typed, again, named};
use axum::Router;
use axum::extract::Path;
use axum::response::{IntoResponse, Redirect, Response};
use axum::routing::get;
use maud::{Markup, html};
use sayso_model::{PersonCard, PersonId, Role};
use uuid::Uuid;

const ROLES: [Role; 3] = [Role::Home, Role::Coach, Role::Visitor];

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

pub const fn role_words(role: Role) -> &'static str {
    match role {
        Role::Home => "lives here: shows and answers",
        Role::Coach => "coaches from outside",
        Role::Visitor => "comes now and then: a sitter, a walker, a friend",
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
    card.ok_or_else(|| Error::NotFound("This notebook knows no such person.".into()))
}

async fn save(page: Page, id: Option<PersonId>, typed: Typed) -> Result<Response, Error> {
    let mut typed = typed.only(&["name", "role", "active"])?;
    let name = typed.label("name");
    let role = typed.one_of("role", &ROLES, role_name);
    if role.is_none() && typed.problem("role").is_none() {
        typed.wrong("role", "is missing; choose one");
    }
    if let (Some(name), Some(role)) = (name, role) {
        let active = id.is_none() || typed.ticked("active");
        let card = PersonCard { person: id.unwrap_or_else(|| PersonId(Uuid::now_v7())), name, role, active };
        if typed.kept(page.keep(vec![page.event(card)]).await)? {
            return Ok(Redirect::to("/people").into_response());
        }
    }
    Ok(again(form(&page, id, &typed)))
}

fn form(page: &Page, id: Option<PersonId>, typed: &Typed) -> Markup {
    let to = id.map_or_else(|| "/people/person/new".to_owned(), |t| format!("/people/person/{t}"));
    let roles: Vec<_> = ROLES.iter().map(|r| (role_name(*r).to_owned(), html! { (role_words(*r)) })).collect();
    layout(
        page,
        Tab::People,
        if id.is_some() { "A person" } else { "A new person" },
        html! {
            (summary(typed))
            form method="post" action=(to) .stack {
                (line(typed, "name", "Name", "as used at home", true))
                (radios(typed, "role", "What they are to the household", "", &roles))
                @if id.is_some() { (tick(typed, "active", "still takes part")) }
                button.primary.wide { "Keep" }
            }
            p { a href="/people" { "Back to People" } }
        },
    )
}
