//! The stage of a word with one animal: set by a person, with the figures beside it.

use super::known;
use crate::error::Error;
use crate::fields::{area, radios, summary};
use crate::page::AnimalPage;
use crate::typed::Typed;
use axum::extract::Path;
use axum::response::{IntoResponse, Redirect, Response};
use maud::{Markup, html};
use sayso_advisor::stages::{Standing, standings};
use sayso_model::{Stage, StageChoice, WordCard};
use sayso_wording::advice::because;
use sayso_wording::words;

/// A stage in words.
pub const fn words(stage: Stage) -> &'static str {
    match stage {
        Stage::Prepare => "card, recording and place are being settled; no showing yet",
        Stage::Show => "people press, say and give; nothing is asked",
        Stage::Invite => "an offer, a wait, then show it and give it all the same",
        Stage::Converse => "it presses of its own accord; everyone answers",
    }
}

pub async fn choose(page: AnimalPage, Path((_, id)): Path<(String, String)>, typed: Typed) -> Result<Response, Error> {
    let word = known(&page, &id)?.word;
    let mut typed = typed.only(&["stage", "because"])?;
    let stage = typed.one_of("stage", &Stage::ALL, Stage::name);
    if typed.text("stage").is_empty() {
        typed.wrong("stage", words!(faults::missing_choose));
    }
    let because = typed.note_or_none("because");
    if typed.right()
        && let Some(stage) = stage
    {
        let choice = page.event(StageChoice { word, stage, because });
        if typed.kept(page.keep(vec![choice]).await)? {
            return Ok(Redirect::to(&format!("/a/{}/words/card/{word}?kept=yes#stage", page.id)).into_response());
        }
    }
    let card = known(&page, &id)?;
    let title = format!("\u{201c}{}\u{201d}", card.says);
    let body = form(&page, &card, &typed);
    Ok(crate::typed::again(crate::layout(&page, crate::Tab::Words, &title, body)))
}

/// Where the word stands, why, and a form to set it.
pub fn section(page: &AnimalPage, card: &WordCard) -> Markup {
    let case = page.case();
    let all = standings(&case);
    html! {
        section #stage {
            h2 { "Stage with " (page.card.name.as_str()) }
            @if let Some(s) = all.iter().find(|s| s.word == card.word) {
                (reasons(page, s))
                (form(page, card, &Typed::default().with("stage", s.stage.name())))
            }
        }
    }
}

fn reasons(page: &AnimalPage, s: &Standing) -> Markup {
    let (l, name) = (&page.locale, page.card.name.as_str());
    html! {
        p { "Now: " strong { (s.stage.name()) } ", " (words(s.stage)) "." }
        @if s.stage == s.figures_say { p { "The figures point to the same." } }
        @else { p.caution { "The figures point to " strong { (s.figures_say.name()) } ": " (words(s.figures_say)) "." } }
        @if !s.because.is_empty() { p.quiet { "Because:" } ul { @for b in &s.because { li { (because(l, name, b)) } } } }
        @if !s.would_change.is_empty() { p.quiet { "What would change it:" } ul { @for w in &s.would_change { li { (because(l, name, w)) } } } }
        dl.facts {
            dt { "Shown" } dd { "n = " (s.showings) ", in the last seven days " (s.showings_week) }
            dt { "From press to giving" } dd { (s.delay) }
            dt { "Pressed when invited and wanting it" } dd { (s.response) }
            dt { "Own presses in 28 days" } dd { "n = " (s.own_presses) }
        }
        p.quiet { "Not pressing is never counted as not understanding." }
    }
}

fn form(page: &AnimalPage, card: &WordCard, typed: &Typed) -> Markup {
    let stages: Vec<_> =
        Stage::ALL.iter().map(|s| (s.name().to_owned(), html! { (s.name()) span.hint { (words(*s)) } })).collect();
    html! {
        (summary(typed))
        form method="post" action=(format!("/a/{}/words/card/{}/stage", page.id, card.word)) .stack {
            (radios(typed, "stage", "Work at it as", "Going back a stage is no loss.", &stages))
            (area(typed, "because", "Why", "if you like"))
            button.wide { "Set the stage" }
        }
    }
}
