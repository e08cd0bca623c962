//! Markup of the swaps page.

use super::running::{AgreedTime, Progress, agreed, progress};
use super::{address, candidates};
use crate::cautions::for_animal;
use crate::fields::{number, summary, ticks};
use crate::layout::{Tab, layout};
use crate::page::AnimalPage;
use crate::typed::Typed;
use maud::{Markup, html};
use sayso_advisor::welfare::rest_today;
use sayso_model::{RewardKind, SwapEnd, WordId};

pub fn view(page: &AnimalPage, typed: &Typed) -> Markup {
    let all = agreed(&page.story, page.id);
    let running = all.iter().find(|t| t.running(page.now));
    let over: Vec<_> = all.iter().rev().filter(|t| t.ends <= page.now).collect();
    layout(
        page,
        Tab::Evidence,
        "Agreed swaps",
        html! {
            (summary(typed))
            @match running {
                Some(time) => (going_on(page, time)),
                None => (form(page, typed)),
            }
            @if !over.is_empty() {
                section {
                    h2 { "Earlier times " span.quiet { "n = " (over.len()) } }
                    ul.plain { @for time in over { (past(page, time)) } }
                }
            }
        },
    )
}

fn says(page: &AnimalPage, words: &[WordId]) -> String {
    let cards = page.story.words();
    let named: Vec<&str> = words.iter().filter_map(|w| cards.get(w).map(|c| c.says.as_str())).collect();
    named.join(", ")
}

/// When to leave it or stop it; stands wherever swaps are agreed or run.
fn welfare(page: &AnimalPage) -> Markup {
    let name = page.card.name.as_str();
    html! {
        p.caution {
            strong { "Your choice, for " (name) "\u{2019}s sake. " }
            "Giving another thing on purpose may disappoint. Leave it be for an animal that is new, ill, anxious or guards things. "
            "Stop at signs of stress (turning away, lip licking, whining, pawing, walking off); a strong sign stops it at once."
        }
        @if let Some(text) = &page.card.cautions { p.caution { strong { "Health: " } (text.as_str()) } }
    }
}

fn form(page: &AnimalPage, typed: &Typed) -> Markup {
    let name = page.card.name.as_str();
    let cards = candidates(page);
    let options: Vec<(String, Markup)> = cards
        .iter()
        .map(|(w, r)| {
            let food = r.kind == RewardKind::Food;
            let text = html! {
                (w.says.as_str()) " " span.quiet { (r.name.as_str()) @if food { " \u{2013} food" } }
                (for_animal(&page.card, r))
            };
            (w.word.to_string(), text)
        })
        .collect();
    html! {
        p { "Does " (name) " press for the thing, or is any good thing right? Only one way tells: now and then something else comes, by chance, and we see whether " (name) " presses on." }
        p { "You answer as ever: when you are going to give something, the board says what. One time in eight it is the thing of another word. What " (name) " does next is what counts, not what you think of it." }
        (welfare(page))
        @if rest_today(&page.case()) {
            p.stop { "Not now: strong signs of stress were noted. Give " (name) " space; agree on a calm day." }
        } @else if cards.len() < 2 {
            p { "Swaps need two words or more, each with a thing of its own; " (name) " has " (cards.len()) "." }
            p { a.button.primary href=(Tab::Words.href(Some(page.id))) { "To the words" } }
        } @else {
            form.stack method="post" action=(address(page)) {
                (ticks(typed, "words", "Words taking part", "Food is not ticked: never for food it waits for with signs of stress. Words that end a session take no part.", &options))
                (number(typed, "days", "Days", "28 are usual; you can stop at any time"))
                (number(typed, "one_in", "One answer in so many", "8 is usual, 4 the most often"))
                fieldset #home {
                    legend { "Agreed" }
                    @if let Some(what) = typed.problem("home") { span.wrong { "Everyone " (what) "." } }
                    label { input type="checkbox" name="home" value="yes" checked[typed.ticked("home")]; span { "Everyone who answers " (name) " has agreed" } }
                }
                button.primary.wide data-test="swaps-begin" { "Begin the swaps" }
            }
        }
    }
}

fn going_on(page: &AnimalPage, time: &AgreedTime) -> Markup {
    let days = (time.ends.seconds_since(page.now) / 86_400.0).ceil();
    let stop = |reason: &str, text: &str, class: &str| {
        html! {
            form method="post" action={ (address(page)) "/stop" } {
                input type="hidden" name="swap" value=(time.plan.swap);
                button.wide class=(class) name="reason" value=(reason) { (text) }
            }
        }
    };
    html! {
        p.lead data-test="swaps-running" { strong { "Swaps are running" } ": " (says(page, &time.plan.words)) "." }
        (figures(progress(&page.story, page.id, time)))
        p { "One answer in " (time.plan.one_in) ", since " (time.begins.day(&page.zone)) ". Days left: " (days) "." }
        (welfare(page))
        div.row.even {
            (stop("signs", "Stop: signs of stress", "primary"))
            (stop("home", "Stop: we do not want it any more", ""))
        }
        p.quiet { "Answer on the board under \u{201c}Answer\u{201d}. Not giving anything is always fine and draws nothing. Stopping is fine too; what was drawn stays." }
        p { a.button href=(Tab::Board.href(Some(page.id))) { "To the board" } }
    }
}

fn figures(p: Progress) -> Markup {
    html! {
        dl.facts {
            dt { "Answers drawn" } dd.num { (p.drawn) }
            dt { "Of those, another thing" } dd.num { (p.swapped) }
            dt { "Given as drawn" } dd.num { (p.as_drawn) " of " (p.drawn) }
        }
        @if p.as_drawn < p.drawn { p.quiet { "A stretch of four days with an answer not given as drawn can count against, never for." } }
    }
}

fn past(page: &AnimalPage, time: &AgreedTime) -> Markup {
    let p = progress(&page.story, page.id, time);
    html! {
        li { strong { (time.begins.day(&page.zone)) " to " (time.ends.day(&page.zone)) } ": " (says(page, &time.plan.words)) ". "
            (p.drawn) " drawn, " (p.swapped) " another thing, " (p.as_drawn) " given as drawn."
            @if let Some(stop) = &time.stopped { " Stopped" @if stop.reason == SwapEnd::Signs { " because of signs of stress" } "." } }
    }
}
