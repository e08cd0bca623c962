//! Markup of Today, and of an advice wherever it stands.

use crate::page::AnimalPage;
use crate::pages::log;
use maud::{Markup, html};
use sayso_advisor::plan::Plan;
use sayso_advisor::ration::Ration;
use sayso_advisor::steps::WordStep;
use sayso_advisor::today::{Next, Today};
use sayso_advisor::{Advice, Reason, Topic};
use sayso_model::AnimalId;
use sayso_wording::advice as words_of;

/// The page below its heading.
pub fn page(page: &AnimalPage, today: &Today) -> Markup {
    let (l, name) = (&page.locale, page.card.name.as_str());
    html! {
        (log::ahead(page))
        @for advice in &today.welfare { (self::advice(page, advice, true)) }
        section.card data-test="next" {
            p.act { (words_of::next(l, name, &today.next)) }
            @if let Next::Session { plan } = &today.next { (session(page, plan)) }
        }
        (ration(&today.ration))
        (steps(page, &today.steps))
        @if !today.went_well.is_empty() {
            h2 { "This week" }
            ul { @for good in &today.went_well { li { (words_of::good(l, name, good)) } } }
        }
        @if !today.later.is_empty() {
            h2 { "Later" }
            @for advice in &today.later { (self::advice(page, advice, false)) }
        }
        p.quiet { "Share of sessions joined in four weeks: " (l.estimate(&today.joining)) "." }
    }
}

/// One advice with its reasons. Welfare stands out by its frame and its word, not by colour alone.
pub fn advice(page: &AnimalPage, advice: &Advice, open: bool) -> Markup {
    let (l, name) = (&page.locale, page.card.name.as_str());
    let class = if advice.topic == Topic::Welfare { "stop advice" } else { "card advice" };
    html! {
        section class=(class) data-test="advice" data-topic=(format!("{:?}", advice.topic)) {
            p.topic { (words_of::topic(l, advice.topic)) }
            p.act { (words_of::act(l, name, &advice.act)) }
            @for caution in &advice.cautions { p.note { strong { "Take care: " } (words_of::caution(l, name, *caution)) } }
            (why(page, advice, &[], open && advice.topic == Topic::Welfare))
        }
    }
}

fn why(page: &AnimalPage, advice: &Advice, also: &[Advice], open: bool) -> Markup {
    let (l, name) = (&page.locale, page.card.name.as_str());
    html! {
        details open[open] {
            summary { "Why? (" (words_of::sure(l, advice.sure)) ")" }
            ul {
                @for reason in &advice.because { li { (self::reason(page, reason)) } }
                @for other in also {
                    li { (words_of::topic(l, other.topic)) ": " (words_of::act(l, name, &other.act))
                        ul { @for reason in &other.because { li { (self::reason(page, reason)) } } }
                        @for caution in &other.cautions { p.note { strong { "Take care: " } (words_of::caution(l, name, *caution)) } } }
                }
            }
            @if !advice.would_change.is_empty() {
                p { "We\u{2019}d change our mind if:" }
                ul { @for change in &advice.would_change { li { (words_of::change(l, name, change)) } } }
            }
        }
    }
}

fn reason(page: &AnimalPage, reason: &Reason) -> Markup {
    html! {
        (words_of::because(&page.locale, page.card.name.as_str(), &reason.fact))
        @if let Some(first) = reason.events.first() {
            " " a href=(log::address(page.id, *first)) { "the records" }
        }
    }
}

fn session(page: &AnimalPage, plan: &Plan) -> Markup {
    let (l, name) = (&page.locale, page.card.name.as_str());
    html! {
        ul.plain {
            @for w in &plan.words {
                li {
                    a href=(format!("/l/{}/evidence/{}", page.id, w.word.word)) { (words_of::planned(l, w)) }
                    @if let Some(hint) = &w.hint { p.quiet { (words_of::hint(l, name, hint)) } }
                }
            }
        }
        p.quiet { (words_of::length(l, &plan.minutes_from)) }
        @if let Some(best) = plan.times.first() {
            p.quiet { "Best time so far: " (l.hour(best.from)) " to " (l.hour(best.to)) ", joined " (l.estimate(&best.joining)) "." }
        }
        p { a.button.primary.wide href=(format!("/l/{}/board", page.id)) { "Go to the board" } }
        @for caution in &plan.cautions { p.note { strong { "Take care: " } (words_of::caution(l, name, *caution)) } }
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

/// Each word with its one step.
fn steps(page: &AnimalPage, steps: &[WordStep]) -> Markup {
    let (l, name, animal): (_, _, AnimalId) = (&page.locale, page.card.name.as_str(), page.id);
    html! {
        @if !steps.is_empty() {
            h2 { "Words" }
            div.grid {
                @for w in steps {
                    section.card data-test="word" {
                        h3.first { a href=(format!("/l/{animal}/evidence/{}", w.word.word)) { (w.word.says) } }
                        p { strong { (w.stage.name()) } }
                        p { (words_of::act(l, name, &w.advice.act)) }
                        @if let Some(hint) = &w.hint { p.quiet { (words_of::hint(l, name, hint)) } }
                        @for caution in &w.advice.cautions { p.note { strong { "Take care: " } (words_of::caution(l, name, *caution)) } }
                        (why(page, &w.advice, &w.also, false))
                    }
                }
            }
        }
    }
}
