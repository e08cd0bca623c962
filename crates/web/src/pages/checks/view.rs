//! The list of checks, and one check.

use super::{address, health, kindly, known, roles, says, thing};
use crate::cautions::for_animal;
use crate::error::Error;
use crate::layout::{Tab, layout};
use crate::page::AnimalPage;
use axum::extract::Path;
use maud::{Markup, html};
use sayso_advisor::checks::{Report, report};
use sayso_advisor::welfare::rest_today;
use sayso_model::{ProbeDesign, ProbePlan, RewardCard};
use sayso_people::Capability;
use sayso_wording::checks::{departure, design};
use sayso_wording::{Locale, Message, say};

pub async fn list(page: AnimalPage) -> Markup {
    let plans: Vec<_> = page.story.of::<ProbePlan>(page.id).rev().collect();
    let case = page.case();
    let (l, name) = (&page.locale, page.card.name.as_str());
    layout(
        &page,
        Tab::Evidence,
        &say!(l, checks::title),
        html! {
            p { (say!(l, checks::intro, name = name)) }
            @if rest_today(&case) { p.stop { (say!(l, checks::none_today)) } }
            @else if page.may(Capability::Plan) { p { a.button.primary href=(format!("/a/{}/checks/new", page.id)) { (say!(l, checks::plan)) } } }
            section {
                h2 { (say!(l, checks::so_far)) " " span.quiet { (plans.len()) } }
                @if plans.is_empty() { p.quiet { (say!(l, checks::none)) } }
                ul.plain { @for p in &plans {
                    @let words: Vec<String> = p.part.words.iter().map(|w| says(&page, *w)).collect();
                    li.line {
                        span { strong { (l.date(p.at().day(&page.zone))) } " " (l.names(&words))
                            span.hint { (design(l, p.part.design)) " · " (blind(l, p.part))
                                @if let Some(Ok(r)) = report(&case, p.part.probe) { " · " (state(l, &r)) } } }
                        a.button href=(address(&page, p.part.probe)) { (say!(l, checks::open)) }
                    }
                } }
            }
            p { a.link href=(format!("/a/{}/designs", page.id)) { (say!(l, checks::to_designs)) } }
            p.quiet { (say!(l, checks::cannot_show)) }
        },
    )
}

fn blind(l: &Locale, plan: &ProbePlan) -> String {
    if plan.blind { say!(l, checks::blind) } else { say!(l, checks::not_blind) }
}

/// How far a check has got.
fn state(l: &Locale, r: &Report) -> String {
    let (done, of) = (r.carried_out, r.planned);
    match (r.finished(), r.departures.is_empty()) {
        (true, true) => say!(l, checks::finished, trials = of),
        (true, false) => say!(l, checks::finished_otherwise, trials = of),
        (false, _) => say!(l, checks::going, done = done, trials = of),
    }
}

pub async fn one(page: AnimalPage, Path((_, id)): Path<(String, String)>) -> Result<Markup, Error> {
    let fact = known(&page, &id)?;
    let (l, name) = (&page.locale, page.card.name.as_str());
    let plan = fact.part;
    let to = address(&page, plan.probe);
    let found = report(&page.case(), plan.probe);
    let here = plan.design != ProbeDesign::WrongDelivery;
    let words = page.story.words();
    let rewards = page.story.rewards();
    let things: Vec<&RewardCard> =
        plan.words.iter().filter_map(|w| rewards.get(&words.get(w)?.reward?).copied()).collect();
    let (body, finished) = match &found {
        None => (html! {}, false),
        Some(Err(why)) => (html! { p { (say!(l, checks::nothing_worked_out, why = why.say(l))) } }, false),
        Some(Ok(r)) => (
            html! {
                p.lead data-test="state" { strong { (state(l, r)) } "." }
                @if let Some(finds) = r.finds { p.quiet { (say!(l, checks::finds, share = l.percent(finds))) } }
                @else { p.quiet { (say!(l, checks::finds_none, share = l.percent(0.99))) } }
                @if !r.departures.is_empty() { div.caution { strong { (say!(l, checks::not_as_planned)) } ul { @for d in &r.departures { li { (departure(l, *d)) } } } } }
                (super::result::result(&page, plan, r))
            },
            r.finished(),
        ),
    };
    Ok(layout(
        &page,
        Tab::Evidence,
        &say!(l, checks::one),
        html! {
            p { strong { (l.date(fact.at().day(&page.zone))) } " · " (design(l, plan.design)) " · "
                @if plan.design == ProbeDesign::PickForWord { (say!(l, checks::things_a_trial, choices = plan.choices)) " · " }
                @if plan.design == ProbeDesign::PressUnderCovers { (say!(l, checks::buttons_a_trial, choices = plan.choices)) " · " }
                (blind(l, plan)) }
            p { @for (i, w) in plan.words.iter().enumerate() { @if i > 0 { ", " } strong { (says(&page, *w)) } @if thing(&page, *w) != says(&page, *w) { span.quiet { " (" (thing(&page, *w)) ")" } } } }
            @if !finished && here && page.may(Capability::Plan) {
                @if rest_today(&page.case()) { p.stop { (say!(l, checks::not_today_space)) } }
                (kindly(&page))
                (health(&page))
                @for r in &things { (for_animal(&page.locale, &page.card, r)) }
                @if plan.blind {
                    div.row.even {
                        a.button.primary href={ (to) "/setter" } { (say!(l, checks::i_set_up)) }
                        a.button.primary href={ (to) "/presenter" } { (say!(l, checks::i_am_with, name = name)) }
                    }
                    p.quiet { (say!(l, checks::two_phones)) }
                } @else {
                    p { (say!(l, checks::who_one_hint)) }
                    a.button.primary.wide href={ (to) "/alone" } { (say!(l, checks::go_on_alone)) }
                }
            }
            // Who is alone has nobody to share the work, or the sheets, with.
            @if here && plan.blind && page.may(Capability::Plan) {
                div.row.even {
                    a.button href={ (to) "/sheet" } { (say!(l, checks::setters_sheet)) }
                    a.button href={ (to) "/scorer" } { (say!(l, checks::scorers_sheet)) }
                }
                details { summary { (say!(l, checks::who_does_what)) } (roles(l, name, plan)) }
            }
            @if plan.design == ProbeDesign::PressForThing { p.quiet { (say!(l, checks::suggests)) } }
            (body)
            p { a href=(format!("/a/{}/checks", page.id)) { (say!(l, checks::all)) } }
        },
    ))
}
