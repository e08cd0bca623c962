//! The household's name and zone.

use crate::error::Error;
use crate::fields::{line, summary};
use crate::layout::{Tab, layout};
use crate::page::Page;
use crate::state::AppState;
use crate::typed::{Typed, again};
use axum::Router;
use axum::response::{IntoResponse, Redirect, Response};
use axum::routing::get;
use maud::{Markup, html};
use sayso_model::{HomeCard, Zone};
use sayso_wording::say;

pub fn router() -> Router<AppState> {
    Router::new().route("/people/home", get(edit).post(save))
}

async fn edit(page: Page) -> Markup {
    let typed =
        Typed::default().with_some("name", page.story.home().map(|h| h.name.clone())).with("zone", page.zone.name());
    form(&page, &typed)
}

async fn save(page: Page, typed: Typed) -> Result<Response, Error> {
    let mut typed = typed.only(&["name", "zone"])?;
    let zone = Zone::new(typed.text("zone"));
    let (name, zone) = (typed.label("name"), typed.checked("zone", zone));
    if let (Some(name), Some(zone)) = (name, zone)
        && typed.kept(page.keep(vec![page.event(HomeCard { name, zone })]).await)?
    {
        return Ok(Redirect::to("/people").into_response());
    }
    Ok(again(form(&page, &typed)))
}

fn form(page: &Page, typed: &Typed) -> Markup {
    let l = &page.locale;
    layout(
        page,
        Tab::People,
        &say!(l, card::home),
        html! {
            (summary(typed))
            form method="post" action=(page.of_home("/people/home")) .stack {
                (line(typed, "name", &say!(l, card::name), &say!(l, card::home_name_hint), true))
                div.field {
                    label for="zone" { (say!(l, start::zone)) }
                    span.hint { (say!(l, card::zone_hint)) }
                    input #zone name="zone" list="zones" required value=(typed.text("zone")) autocomplete="off";
                    @if let Some(what) = typed.problem("zone") { span.wrong { (what) "." } }
                    datalist #zones { @for z in Zone::all() { option value=(z) {} } }
                }
                p.quiet { (say!(l, card::zone_moves)) }
                button.primary.wide { (say!(l, setup::keep)) }
            }
            p { a href="/people" { (say!(l, card::back)) } }
        },
    )
}
