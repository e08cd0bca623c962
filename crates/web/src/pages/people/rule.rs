//! A rule of the house, for one word or for all.

use crate::error::Error;
use crate::fields::{area, select, summary, tick};
use crate::layout::{Tab, layout};
use crate::page::Page;
use crate::state::AppState;
use crate::typed::{Typed, again, named};
use axum::Router;
use axum::extract::Path;
use axum::response::{IntoResponse, Redirect, Response};
use axum::routing::get;
use maud::{Markup, html};
use sayso_model::{HouseRule, RuleId};
use uuid::Uuid;

pub fn router() -> Router<AppState> {
    Router::new().route("/people/rule/new", get(new).post(add)).route("/people/rule/{rule}", get(edit).post(change))
}

async fn new(page: Page) -> Markup {
    form(&page, None, &Typed::default())
}

async fn add(page: Page, typed: Typed) -> Result<Response, Error> {
    save(page, None, typed).await
}

async fn edit(page: Page, Path(id): Path<String>) -> Result<Markup, Error> {
    let rule = known(&page, &id)?;
    let typed = Typed::default()
        .with("text", &rule.text)
        .with_some("word", rule.word)
        .with_some("active", rule.active.then_some("yes"));
    Ok(form(&page, Some(rule.rule), &typed))
}

async fn change(page: Page, Path(id): Path<String>, typed: Typed) -> Result<Response, Error> {
    let rule = known(&page, &id)?;
    save(page, Some(rule.rule), typed).await
}

fn known(page: &Page, id: &str) -> Result<HouseRule, Error> {
    let id: RuleId = named(id, "rule")?;
    let rule = page.story.rules().get(&id).map(|r| (*r).clone());
    rule.ok_or_else(|| Error::NotFound("This notebook knows no such rule.".into()))
}

async fn save(page: Page, id: Option<RuleId>, typed: Typed) -> Result<Response, Error> {
    let mut typed = typed.only(&["text", "word", "active"])?;
    let text = typed.note_or_none("text");
    if text.is_none() && typed.problem("text").is_none() {
        typed.wrong("text", "is missing; write the rule");
    }
    let word = typed.id("word", |w| page.story.words().contains_key(w));
    if typed.right()
        && let Some(text) = text
    {
        let active = id.is_none() || typed.ticked("active");
        let rule = HouseRule { rule: id.unwrap_or_else(|| RuleId(Uuid::now_v7())), word, text, active };
        if typed.kept(page.keep(vec![page.event(rule)]).await)? {
            return Ok(Redirect::to("/people#rules").into_response());
        }
    }
    Ok(again(form(&page, id, &typed)))
}

fn form(page: &Page, id: Option<RuleId>, typed: &Typed) -> Markup {
    let to = id.map_or_else(|| "/people/rule/new".to_owned(), |r| format!("/people/rule/{r}"));
    let mut words = vec![(String::new(), "every word".to_owned())];
    let mut known: Vec<_> = page.story.words().into_values().filter(|w| w.active).collect();
    known.sort_by(|a, b| a.says.cmp(&b.says).then(a.word.cmp(&b.word)));
    words.extend(known.iter().map(|w| (w.word.to_string(), w.says.to_string())));
    layout(
        page,
        Tab::People,
        if id.is_some() { "A rule of the house" } else { "A new rule of the house" },
        html! {
            (summary(typed))
            p.quiet { "Rules stand on the sheet for the fridge. Short ones are kept best, such as: answer every press, also with \u{201c}not now\u{201d}." }
            form method="post" action=(to) .stack {
                (area(typed, "text", "The rule", ""))
                (select(typed, "word", "For", "", &words))
                @if id.is_some() { (tick(typed, "active", "still holds")) }
                button.primary.wide { "Keep" }
            }
            p { a href="/people#rules" { "Back to People" } }
        },
    )
}
