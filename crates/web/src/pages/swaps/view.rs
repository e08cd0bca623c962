//! Markup of the swaps page.

use super::running::{AgreedTime, Progress, agreed, progress};
use super::{address, candidates};
use crate::cautions::for_animal;
use crate::fields::{number, summary, ticks};
use crate::layout::{Tab, layout};
use crate::page::AnimalPage;
use crate::rich;
use crate::typed::Typed;
use maud::{Markup, html};
use sayso_advisor::welfare::rest_today;
use sayso_model::{Moment, RewardKind, SwapEnd, WordId};
use sayso_wording::signs::stress;
use sayso_wording::{Locale, say};

pub fn view(page: &AnimalPage, typed: &Typed) -> Markup {
    let all = agreed(&page.story, page.id);
    let running = all.iter().find(|t| t.running(page.now));
    let over: Vec<_> = all.iter().rev().filter(|t| t.ends <= page.now).collect();
    let l = &page.locale;
    layout(
        page,
        Tab::Evidence,
        &say!(l, swaps::title),
        html! {
            (summary(typed))
            @match running {
                Some(time) => (going_on(page, time)),
                None => (form(page, typed)),
            }
            @if !over.is_empty() {
                section {
                    h2 { (say!(l, swaps::earlier)) " " span.quiet { (over.len()) } }
                    ul.plain { @for time in over { (past(page, time)) } }
                }
            }
        },
    )
}

fn says(page: &AnimalPage, words: &[WordId]) -> String {
    let cards = page.story.words();
    let named: Vec<&str> = words.iter().filter_map(|w| cards.get(w).map(|c| c.says.as_str())).collect();
    page.locale.names(&named)
}

/// When to leave it or stop it; stands wherever swaps are agreed or run.
fn welfare(page: &AnimalPage) -> Markup {
    let l = &page.locale;
    let lead = html! { strong { (say!(l, swaps::choice_lead, name = &page.card.name)) } };
    html! {
        p.caution { (rich!(l, swaps::choice, lead = lead, signs = stress(l, page.card.species))) }
        @if let Some(text) = &page.card.cautions { p.caution { strong { (say!(l, checks::health)) } " " (text.as_str()) } }
    }
}

fn form(page: &AnimalPage, typed: &Typed) -> Markup {
    let (l, name) = (&page.locale, page.card.name.as_str());
    let cards = candidates(page);
    let options: Vec<(String, Markup)> = cards
        .iter()
        .map(|(w, r)| {
            let thing = match r.kind {
                RewardKind::Food => say!(l, swaps::thing_food, thing = &r.name),
                _ => r.name.to_string(),
            };
            let text = html! { (w.says.as_str()) " " span.quiet { (thing) } (for_animal(&page.locale, &page.card, r)) };
            (w.word.to_string(), text)
        })
        .collect();
    html! {
        p { (say!(l, swaps::why, name = name)) }
        p { (say!(l, swaps::how, name = name)) }
        (welfare(page))
        @if rest_today(&page.case()) {
            p.stop { (say!(l, swaps::not_now, name = name)) }
        } @else if cards.len() < 2 {
            p { (say!(l, swaps::too_few_words, name = name, words = cards.len())) }
            p { a.button.primary href=(Tab::Words.href(Some(page.id))) { (say!(l, swaps::to_words)) } }
        } @else {
            form.stack method="post" action=(address(page)) {
                (ticks(typed, "words", &say!(l, swaps::field_words), &say!(l, swaps::field_words_hint, name = name), &options))
                (number(typed, "days", &say!(l, swaps::field_days), &say!(l, swaps::field_days_hint)))
                (number(typed, "one_in", &say!(l, swaps::field_one_in), &say!(l, swaps::field_one_in_hint)))
                fieldset #home {
                    legend { (say!(l, swaps::agreed)) }
                    @if typed.problem("home").is_some() { span.wrong { (say!(l, swaps::agreed_wrong)) } }
                    label { input type="checkbox" name="home" value="yes" checked[typed.ticked("home")]; span { (say!(l, swaps::agreed_everyone, name = name)) } }
                }
                button.primary.wide data-test="swaps-begin" { (say!(l, swaps::begin)) }
            }
        }
    }
}

fn going_on(page: &AnimalPage, time: &AgreedTime) -> Markup {
    let days = (time.ends.seconds_since(page.now) / 86_400.0).ceil();
    let l = &page.locale;
    let running = html! { strong { (say!(l, swaps::running_lead)) } };
    let stop = |reason: &str, text: &str, class: &str| {
        html! {
            form method="post" action={ (address(page)) "/stop" } {
                input type="hidden" name="swap" value=(time.plan.swap);
                button.wide class=(class) name="reason" value=(reason) { (text) }
            }
        }
    };
    html! {
        p.lead data-test="swaps-running" { (rich!(l, swaps::running, lead = running, words = says(page, &time.plan.words))) }
        (figures(l, progress(&page.story, page.id, time)))
        p { (say!(l, swaps::rate, number = time.plan.one_in, day = l.date(time.begins.day(&page.zone)), days = days)) }
        (welfare(page))
        div.row.even {
            (stop("signs", &say!(l, swaps::stop_signs), "primary"))
            (stop("home", &say!(l, swaps::stop_home), ""))
        }
        p.quiet { (say!(l, swaps::answer_how)) }
        p { a.button href=(Tab::Board.href(Some(page.id))) { (say!(l, swaps::to_board)) } }
    }
}

fn figures(l: &Locale, p: Progress) -> Markup {
    html! {
        dl.facts {
            dt { (say!(l, swaps::drawn)) } dd.num { (p.drawn) }
            dt { (say!(l, swaps::swapped)) } dd.num { (p.swapped) }
            dt { (say!(l, swaps::as_drawn)) } dd.num { (say!(l, swaps::of, some = p.as_drawn, all = p.drawn)) }
        }
        @if p.as_drawn < p.drawn { p.quiet { (say!(l, swaps::against)) } }
    }
}

fn past(page: &AnimalPage, time: &AgreedTime) -> Markup {
    let (l, p) = (&page.locale, progress(&page.story, page.id, time));
    let day = |at: Moment| l.date(at.day(&page.zone));
    let dates = html! { strong { (say!(l, swaps::dates, from = day(time.begins), to = day(time.ends))) } };
    let words = says(page, &time.plan.words);
    html! {
        li { (rich!(l, swaps::past, dates = dates, words = words, drawn = p.drawn, swapped = p.swapped, given = p.as_drawn))
            @if let Some(stop) = &time.stopped { " " @match stop.reason {
                SwapEnd::Signs => (say!(l, swaps::stopped_signs)),
                SwapEnd::Home => (say!(l, swaps::stopped)),
            } } }
    }
}
