//! The list of checks, and one check.

use super::{address, design_words, kindly, known, roles, says, thing};
use crate::cautions::for_animal;
use crate::error::Error;
use crate::layout::{Tab, layout};
use crate::page::AnimalPage;
use axum::extract::Path;
use maud::{Markup, html};
use sayso_advisor::checks::{Report, report};
use sayso_advisor::welfare::rest_today;
use sayso_model::{ProbeDesign, ProbePlan, RewardCard};

pub async fn list(page: AnimalPage) -> Markup {
    let plans: Vec<_> = page.story.of::<ProbePlan>(page.id).rev().collect();
    let case = page.case();
    let name = page.card.name.as_str();
    layout(
        &page,
        Tab::Evidence,
        "Checks",
        html! {
            p { "A check (a probe, in the trade) asks whether " (name) " goes by the word itself: planned before, in random order, with a person beside it who cannot give the answer away." }
            @if rest_today(&case) { p.stop { "No check today: strong signs of stress were noted. Give space; a calm day will come." } }
            @else { p { a.button.primary href=(format!("/l/{}/checks/new", page.id)) { "Plan a check" } } }
            section {
                h2 { "Checks so far " span.quiet { "n = " (plans.len()) } }
                @if plans.is_empty() { p.quiet { "None yet." } }
                ul.plain { @for p in &plans {
                    @let words: Vec<String> = p.part.words.iter().map(|w| says(&page, *w)).collect();
                    li.line {
                        span { strong { (p.at().day(&page.zone)) } " " (words.join(", "))
                            span.hint { (design_words(p.part.design)) " · " @if p.part.blind { "blind" } @else { "not blind" }
                                @if let Some(Ok(r)) = report(&case, p.part.probe) { " · " (state(&r)) } } }
                        a.button href=(address(&page, p.part.probe)) { "Open" }
                    }
                } }
            }
            p { a.link href=(format!("/l/{}/designs", page.id)) { "Does a change help? Trials of a change" } }
            p.quiet { "A check can show what an animal goes by; it cannot show that an animal does not understand. No choice and going away are kept apart and are never wrong." }
        },
    )
}

/// How far a check has got.
fn state(r: &Report) -> String {
    let (done, of) = (r.carried_out, r.planned);
    match (r.finished(), r.departures.is_empty()) {
        (true, true) => format!("finished as planned, {of} trials"),
        (true, false) => format!("finished, {of} trials, but not as planned"),
        (false, _) => format!("{done} of {of} trials"),
    }
}

pub async fn one(page: AnimalPage, Path((_, id)): Path<(String, String)>) -> Result<Markup, Error> {
    let fact = known(&page, &id)?;
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
        Some(Err(why)) => (html! { p { "Nothing can be worked out from this check: " (why) "." } }, false),
        Some(Ok(r)) => (
            html! {
                p.lead data-test="state" { strong { (state(r)) } "." }
                @if let Some(finds) = r.finds { p.quiet { "This length finds an animal that is right in " (format!("{:.0} %", 100.0 * finds)) " or more in four checks of five, word by word." } }
                @else { p.quiet { "This is too short to find even an animal that is right in 99 %, word by word; only a longer check can." } }
                @if !r.departures.is_empty() { div.caution { strong { "Not as planned: " } ul { @for d in &r.departures { li { (d) "." } } } } }
                (super::result::result(&page, plan, r))
            },
            r.finished(),
        ),
    };
    Ok(layout(
        &page,
        Tab::Evidence,
        "A check",
        html! {
            p { strong { (fact.at().day(&page.zone)) } " · " (design_words(plan.design)) " · "
                @if plan.design == ProbeDesign::PickForWord { (plan.choices) " things a trial · " }
                @if plan.design == ProbeDesign::PressUnderCovers { (plan.choices) " buttons a trial · " }
                @if plan.blind { "blind" } @else { "not blind" } }
            p { @for (i, w) in plan.words.iter().enumerate() { @if i > 0 { ", " } strong { (says(&page, *w)) } @if thing(&page, *w) != says(&page, *w) { span.quiet { " (" (thing(&page, *w)) ")" } } } }
            @if !finished && here {
                @if rest_today(&page.case()) { p.stop { "Not today: strong signs of stress were noted. Give space." } }
                (kindly())
                @if let Some(text) = &page.card.cautions { p.caution { strong { "Health: " } (text.as_str()) } }
                @for r in &things { (for_animal(&page.card, r)) }
                div.row.even {
                    a.button.primary href={ (to) "/setter" } { "I set up" }
                    a.button.primary href={ (to) "/presenter" } { "I am with " (page.card.name.as_str()) }
                }
                p.quiet { "Two phones are best. With one, print the setter\u{2019}s sheet and give the phone to the presenter." }
            }
            @if here {
                div.row.even {
                    a.button href={ (to) "/sheet" } { "Setter\u{2019}s sheet" }
                    a.button href={ (to) "/scorer" } { "Scorer\u{2019}s sheet" }
                }
                details { summary { "Who does what, and who may know what" } (roles(plan)) }
            }
            @if plan.design == ProbeDesign::PressForThing { p.quiet { (super::plan::SUGGESTS) } }
            (body)
            p { a href=(format!("/l/{}/checks", page.id)) { "All checks" } }
        },
    ))
}
