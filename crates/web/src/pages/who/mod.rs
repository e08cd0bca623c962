//! Who holds this device.

mod view;

use crate::error::Error;
use crate::form::Form;
use crate::page::{PERSON_COOKIE, Page};
use crate::state::AppState;
use axum::Router;
use axum::http::header::SET_COOKIE;
use axum::response::{IntoResponse, Redirect, Response};
use axum::routing::get;
use maud::Markup;
use sayso_model::{Label, PersonCard, PersonId, Role};
use sayso_people::Capability;
use sayso_wording::words;
use serde::Deserialize;
use uuid::Uuid;

/// Routes of the page.
pub fn router() -> Router<AppState> {
    Router::new().route("/who", get(show).post(choose))
}

/// The page one came from.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct From {
    back: Option<String>,
}

async fn show(page: Page, Form(from): Form<From>) -> Markup {
    view::view(&page, &own_path(from.back))
}

/// A page of ours to go back to, with what it asks for, such as an exercise with its animal; anything that could lead elsewhere
/// becomes the start.
#[must_use]
pub fn own_path(back: Option<String>) -> String {
    let all = |text: &str, besides: &[u8]| text.bytes().all(|c| c.is_ascii_alphanumeric() || besides.contains(&c));
    back.filter(|b| {
        let (path, query) = b.split_once('?').unwrap_or((b, ""));
        path.starts_with('/') && !path.starts_with("//") && all(path, b"/-_.") && all(query, b"-_.=&")
    })
    .unwrap_or_else(|| "/".into())
}

/// Such a page as the value of a field of another address.
#[must_use]
pub fn as_field(own_path: &str) -> String {
    own_path.replace('?', "%3F").replace('=', "%3D").replace('&', "%26")
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Chosen {
    person: String,
    back: Option<String>,
}

/// The value of the field for somebody of whom there is no card yet, called as the account is.
const NEW: &str = "new";

/// What a card of the account's own would be called: where there is an account, it may make one, and nobody at home is called so.
fn new_name(page: &Page) -> Option<&Label> {
    let leave = page.leave.as_ref().filter(|_| page.may(Capability::ChangeCards))?;
    let taken = page.story.people().values().any(|card| card.name == leave.name);
    (!taken).then_some(&leave.name)
}

async fn choose(page: Page, Form(chosen): Form<Chosen>) -> Result<Response, Error> {
    let none = || Error::refused("person", words!(faults::not_a_person));
    let person = if chosen.person == NEW {
        let card = PersonCard::new(PersonId(Uuid::now_v7()), new_name(&page).ok_or_else(none)?.clone(), Role::Home);
        let person = card.person;
        page.keep(vec![page.about_home(card)]).await?;
        person
    } else {
        let person = chosen.person.parse().map_err(|_| none())?;
        page.people().iter().find(|t| t.person == person).ok_or_else(none)?.person
    };
    Ok(([(SET_COOKIE, remembering(person))], Redirect::to(&own_path(chosen.back))).into_response())
}

/// The cookie that keeps who holds this device, for a year.
#[must_use]
pub fn remembering(person: PersonId) -> String {
    format!("{PERSON_COOKIE}={person}; Path=/; Max-Age=31536000; HttpOnly; SameSite=Strict")
}

#[cfg(test)]
mod tests {
    use super::{as_field, own_path};

    #[test]
    fn one_is_led_back_to_own_pages_only() {
        let to = |b: &str| own_path(Some(b.to_owned()));
        assert_eq!(to("/a/3cf1/board"), "/a/3cf1/board");
        let exercise = "/rehearse/showing?character=eager&seed=7&acts=s0.9000_g0.12500";
        assert_eq!(to(exercise), exercise);
        assert_eq!(as_field("/a?b=1&c=2"), "/a%3Fb%3D1%26c%3D2");
        for bad in
            ["//evil.example", "http://evil.example", "/\\evil.example", "", "/a?b=//c", "/a?b=%0d", "?a=b", "//a?b"]
        {
            assert_eq!(to(bad), "/", "{bad}");
        }
        assert_eq!(own_path(None), "/");
    }
}
