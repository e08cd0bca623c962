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
use sayso_wording::{say, words};
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
    rule.ok_or_else(|| Error::NotFound(words!(card::no_such_rule)))
}

async fn save(page: Page, id: Option<RuleId>, typed: Typed) -> Result<Response, Error> {
    let mut typed = typed.only(&["text", "word", "active"])?;
    let text = typed.note_or_none("text");
    if text.is_none() && typed.problem("text").is_none() {
        typed.wrong("text", say!(&page.locale, card::rule_missing));
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
    let l = &page.locale;
    let mut words = vec![(String::new(), say!(l, card::every_word))];
    let mut known: Vec<_> = page.story.words().into_values().filter(|w| w.active).collect();
    known.sort_by(|a, b| a.says.cmp(&b.says).then(a.word.cmp(&b.word)));
    words.extend(known.iter().map(|w| (w.word.to_string(), w.says.to_string())));
    layout(
        page,
        Tab::People,
        &if id.is_some() { say!(l, card::rule) } else { say!(l, card::new_rule) },
        html! {
            (summary(typed))
            p.quiet { (say!(l, card::rules_how)) }
            form method="post" action=(page.of_home(&to)) .stack {
                (area(typed, "text", &say!(l, card::the_rule), ""))
                (select(typed, "word", &say!(l, card::rule_for), "", &words))
                @if id.is_some() { (tick(typed, "active", &say!(l, card::still_holds))) }
                button.primary.wide { (say!(l, setup::keep)) }
            }
            p { a href="/people#rules" { (say!(l, card::back)) } }
        },
    )
}
