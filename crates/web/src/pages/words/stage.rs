//! The stage of a word with one animal: set by a person, with the figures beside it.

use super::known;
use crate::error::Error;
use crate::fields::{area, radios, summary};
use crate::page::AnimalPage;
use crate::rich;
use crate::typed::Typed;
use axum::extract::Path;
use axum::response::{IntoResponse, Redirect, Response};
use maud::{Markup, html};
use sayso_advisor::stages::{Standing, standings};
use sayso_model::{Stage, StageChoice, WordCard};
use sayso_wording::advice::{because, change};
use sayso_wording::evidence::left_out;
use sayso_wording::figures::finding;
use sayso_wording::{Locale, say};

fn named(l: &Locale, stage: Stage) -> String {
    say!(l, words::stage, stage = stage.name())
}

/// What a stage is, with the animal of this name.
fn means(l: &Locale, name: &str, stage: Stage) -> String {
    say!(l, words::stage_means, stage = stage.name(), name = name)
}

pub async fn choose(page: AnimalPage, Path((_, id)): Path<(String, String)>, typed: Typed) -> Result<Response, Error> {
    let word = known(&page, &id)?.word;
    let mut typed = typed.only(&["stage", "because"])?;
    let stage = typed.one_needed("stage", &Stage::ALL, Stage::name);
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
    let title = say!(&page.locale, words::quoted, says = card.says.as_str());
    let body = form(&page, &card, &typed);
    Ok(crate::typed::again(crate::layout(&page, crate::Tab::Words, &title, body)))
}

/// Where the word stands, why, and a form to set it.
pub fn section(page: &AnimalPage, card: &WordCard) -> Markup {
    let case = page.case();
    let all = standings(&case);
    html! {
        section #stage {
            h2 { (say!(&page.locale, words::stage_with, name = page.card.name.as_str())) }
            @if let Some(s) = all.iter().find(|s| s.word == card.word) {
                (reasons(page, s))
                (form(page, card, &Typed::default().with("stage", s.stage.name())))
            }
        }
    }
}

fn reasons(page: &AnimalPage, s: &Standing) -> Markup {
    let (l, name) = (&page.locale, page.card.name.as_str());
    let strong = |stage| html! { strong { (named(l, stage)) } };
    html! {
        p { (rich!(l, words::stage_now, stage = strong(s.stage), means = means(l, name, s.stage))) }
        @if s.stage == s.figures_say { p { (say!(l, words::figures_agree)) } }
        @else { p.caution { (rich!(l, words::figures_differ, stage = strong(s.figures_say), means = means(l, name, s.figures_say))) } }
        details {
            summary { (say!(l, words::figures_behind)) }
            @if !s.because.is_empty() { p.quiet { (say!(l, words::because)) } ul { @for b in &s.because { li { (because(l, name, b)) } } } }
            @if !s.would_change.is_empty() { p.quiet { (say!(l, words::would_change)) } ul { @for c in &s.would_change { li { (change(l, name, c)) } } } }
            dl.facts {
                dt { (say!(l, words::fact_shown)) } dd { (say!(l, words::fact_shown_times, times = s.showings, week = s.showings_week)) }
                dt { (say!(l, words::fact_delay)) } dd { (finding(l, &s.delay)) }
                dt { (say!(l, words::fact_response)) } dd { (finding(l, &s.response)) }
                dt { (say!(l, words::fact_own)) } dd { (s.own_presses) @if let Some(out) = left_out(l, s.stumbles) { " · " (out) } }
            }
        }
        p.quiet { (say!(l, words::never_counted)) }
    }
}

fn form(page: &AnimalPage, card: &WordCard, typed: &Typed) -> Markup {
    let (l, name) = (&page.locale, page.card.name.as_str());
    let option = |s: &Stage| (s.name().to_owned(), html! { (named(l, *s)) span.hint { (means(l, name, *s)) } });
    let stages: Vec<_> = Stage::ALL.iter().map(option).collect();
    html! {
        (summary(typed))
        form method="post" action=(format!("/a/{}/words/card/{}/stage", page.id, card.word)) .stack {
            (radios(typed, "stage", &say!(l, words::work_at), &say!(l, words::back_no_loss), &stages))
            (area(typed, "because", &say!(l, words::stage_why), &say!(l, words::stage_why_hint)))
            button.wide { (say!(l, words::stage_set)) }
        }
    }
}
