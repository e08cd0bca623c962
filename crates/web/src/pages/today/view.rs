//! Markup of Today, and of an advice wherever it stands.

use crate::page::AnimalPage;
use crate::pages::log;
use maud::{Markup, html};
use sayso_advisor::plan::Plan;
use sayso_advisor::ration::Ration;
use sayso_advisor::stages::Standing;
use sayso_advisor::today::Today;
use sayso_advisor::{Advice, Reason, Topic};
use sayso_model::AnimalId;

/// The page below its heading.
pub fn page(page: &AnimalPage, today: &Today) -> Markup {
    // What to show stands in the next session's own card.
    let (shows, others): (Vec<_>, Vec<_>) = today.advice.iter().partition(|a| a.topic == Topic::Show);
    let (first, rest) = others.split_at(others.len().min(3));
    html! {
        (log::ahead(page))
        @if today.advice.is_empty() {
            p { "Nothing needs doing now. Answer whatever it presses." }
        }
        @for advice in first { (self::advice(page.id, advice, true)) }
        @if let Some(plan) = &today.plan { (next_session(page.id, plan, shows.first().copied())) }
        (ration(&today.ration))
        (words(page.id, &today.words))
        @if !rest.is_empty() {
            h2 { "Further advice" }
            @for advice in rest { (self::advice(page.id, advice, false)) }
        }
        p.quiet { "Share of sessions joined in four weeks: " (today.joining) "." }
    }
}

/// One advice with its reasons. Welfare stands out by its frame and its word, not by colour alone.
pub fn advice(animal: AnimalId, advice: &Advice, open: bool) -> Markup {
    let class = if advice.topic == Topic::Welfare { "stop advice" } else { "card advice" };
    html! {
        section class=(class) data-test="advice" data-topic=(format!("{:?}", advice.topic)) {
            p.topic { (topic(advice.topic)) }
            p.act {
                (advice.act)
                @if let Some(minutes) = advice.minutes { " At most " (minutes) " minutes." }
            }
            @if let Some(caution) = &advice.caution { p.note { strong { "Take care: " } (caution) } }
            (why(animal, advice, open && advice.topic == Topic::Welfare))
        }
    }
}

fn why(animal: AnimalId, advice: &Advice, open: bool) -> Markup {
    html! {
        details open[open] {
            summary { "Why (" (advice.sure.words()) ")" }
            ul { @for reason in &advice.because { li { (self::reason(animal, reason)) } } }
            @if !advice.would_change.is_empty() {
                p { "What would change it: " (advice.would_change) }
            }
        }
    }
}

fn reason(animal: AnimalId, reason: &Reason) -> Markup {
    html! {
        (reason.text)
        @if let Some(figure) = &reason.figure { " " strong.num { (figure) } }
        @if let Some(first) = reason.events.first() {
            " " a href=(log::address(animal, *first)) { "the records" }
        }
    }
}

const fn topic(topic: Topic) -> &'static str {
    match topic {
        Topic::Welfare => "Its wellbeing first",
        Topic::Ration => "Food",
        Topic::SetUp => "Set up",
        Topic::Likes => "What it likes",
        Topic::Stuck => "Not getting on",
        Topic::Show => "Show",
        Topic::Invite => "Invite",
        Topic::Converse => "Answer",
        Topic::Probe => "Check",
    }
}

fn next_session(animal: AnimalId, plan: &Plan, advice: Option<&Advice>) -> Markup {
    html! {
        section.card {
            h2.first { "Next session" }
            table {
                thead { tr { th scope="col" { "Word" } th scope="col" { "Stage" } th.num scope="col" { "Aim" } th.num scope="col" { "Today" } } }
                tbody {
                    @for w in &plan.words {
                        tr {
                            td { a href=(format!("/l/{animal}/evidence/{}", w.word)) { (w.says) } }
                            td { (w.stage.name()) }
                            td.num { (w.showings) }
                            td.num { (w.today) }
                        }
                    }
                }
            }
            p { "At most " strong { (plan.minutes) " minutes" } ": " (plan.minutes_because) "." }
            @if let Some(best) = plan.times.first() {
                p { "Best time so far: " (best.from) " to " (best.to) " o'clock, joined " (best.joining) "." }
            }
            p { a.button.primary.wide href=(format!("/l/{animal}/board")) { "Go to the board" } }
            @if let Some(advice) = advice {
                p { (advice.act) }
                @if let Some(caution) = &advice.caution { p.note { strong { "Take care: " } (caution) } }
                (why(animal, advice, false))
            }
        }
    }
}

/// The day's food rewards.
pub fn ration(ration: &Ration) -> Markup {
    html! {
        section.card data-test="ration" {
            h2.first { "Food rewards left today" }
            @if let Some(why) = &ration.refusal {
                p.caution { (why) }
                @if ration.feeds > 0 { p { "Given so far: " (format!("{:.0}", ration.given_kcal)) " kcal in " (ration.feeds) " feeds." } }
            }
            @if let (Some(left), Some(budget)) = (ration.left_kcal, ration.budget_kcal) {
                p {
                    span.figure { (format!("{left:.0}")) } " of " (format!("{budget:.0}")) " kcal left"
                    @if ration.over_kcal > 0.0 { " (over by " (format!("{:.0}", ration.over_kcal)) " kcal)" }
                    ", " (ration.feeds) " feeds so far."
                }
                meter.wide min="0" max=(budget) value=(left) aria-label="Food rewards left, in kcal" {}
                @if !ration.rewards.is_empty() {
                    ul.plain {
                        @for r in &ration.rewards {
                            li {
                                @match r.pieces { Some(n) => { strong.num { (n) } " pieces of " } None => "Energy of a piece unknown: " }
                                (r.name)
                                @for c in &r.cautions { p.note { strong { "Take care: " } (c) } }
                            }
                        }
                    }
                }
            }
            details {
                summary { "How this is computed" }
                @if let (Some(day), false) = (ration.day_kcal, ration.basis.is_empty()) {
                    p { "The whole day: " (format!("{day:.0}")) " kcal, " (ration.basis) "." }
                }
                @if let Some((low, high)) = ration.range_kcal {
                    p { "Individuals of this weight: about " (format!("{low:.0}")) " to " (format!("{high:.0}")) " kcal." }
                }
                @for c in &ration.cautions { p { (c) } }
            }
        }
    }
}

/// Where each word stands.
pub fn words(animal: AnimalId, words: &[Standing]) -> Markup {
    html! {
        @if !words.is_empty() {
            h2 { "Words" }
            div.grid {
                @for w in words {
                    section.card data-test="word" {
                        h3.first { a href=(format!("/l/{animal}/evidence/{}", w.word)) { (w.says) } }
                        p { strong { (w.stage.name()) }
                            @if w.figures_say != w.stage { span.quiet { " (the figures point to " (w.figures_say.name()) ")" } } }
                        p.quiet { "Shown " (w.showings) " times, " (w.showings_week) " this week." }
                        @if w.response.n > 0 { p.quiet { "Pressed when invited and wanted: " (w.response) "." } }
                        @if w.own_presses > 0 { p.quiet { "Pressed by itself " (w.own_presses) " times in four weeks." } }
                    }
                }
            }
        }
    }
}
