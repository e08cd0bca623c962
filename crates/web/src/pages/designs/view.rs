//! The list of trials, and one trial: what to do today, and how far it has got.

use super::{address, kindly, known};
use crate::error::Error;
use crate::fields::{area, number, radios, select, summary};
use crate::layout::{Tab, layout};
use crate::page::AnimalPage;
use crate::typed::Typed;
use axum::extract::Path;
use maud::{Markup, html};
use sayso_advisor::designs::{
    Report, Standing, Today, Trial, changed_words, design_words, measure_words, plans, question_words, report, trial,
};
use sayso_advisor::welfare::rest_today;
use sayso_model::{CaseCondition, CaseStop, CaseUnit};

pub async fn list(page: AnimalPage) -> Markup {
    let all = plans(&page.story, page.id);
    layout(
        &page,
        Tab::Evidence,
        "Does a change help?",
        html! {
            p { "A quieter button, a new place, a faster delivery: does it help " strong { (page.card.name.as_str()) } "? A trial (a single-case design, in the trade) lets chance decide when the change is in force, and compares." }
            @if rest_today(&page.case()) { p.stop { "No new trial today: strong signs of stress were noted. Give space; everything as usual." } }
            @else { p { a.button.primary href=(format!("/l/{}/designs/new", page.id)) { "Plan a trial" } } }
            section {
                h2 { "Trials so far " span.quiet { "n = " (all.len()) } }
                @if all.is_empty() { p.quiet { "None yet." } }
                ul.plain { @for p in all.iter().rev() {
                    li.line {
                        span { strong { (question_words(p.part)) } span.hint { (p.part.first) " · " (design_words(p.part.design)) " · "
                            @match trial(&page.story, page.id, p.part.trial) {
                                Some(Ok(t)) => (state(&t.standing(&page.story, page.now))),
                                _ => "cannot be drawn",
                            } } }
                        a.button href=(address(&page, p.part.trial)) { "Open" }
                    }
                } }
            }
            p.quiet { "Planned checks of understanding ask another question: " a href=(format!("/l/{}/checks", page.id)) { "Checks" } "." }
            p { a.link href="/methods/single-case" { "How trials are drawn and tested" } }
        },
    )
}

fn state(standing: &Standing) -> String {
    match standing {
        Standing::NotYet(day) => format!("begins on {day}"),
        Standing::Running => "going on".to_owned(),
        Standing::Finished => "finished".to_owned(),
        Standing::Stopped(day, _) => format!("stopped on {day}"),
        Standing::StrongSign(day) => format!("ended by a strong sign of stress on {day}"),
    }
}

pub async fn one(page: AnimalPage, Path((_, id)): Path<(String, String)>) -> Result<Markup, Error> {
    let trial = known(&page, &id)?;
    Ok(page_of(&page, &trial, &Typed::default()))
}

/// The page of a trial, with what was typed if something was wrong with it.
pub fn page_of(page: &AnimalPage, trial: &Trial<'_>, typed: &Typed) -> Markup {
    let plan = trial.plan.part;
    let r = report(&page.story, trial, page.now);
    let going = matches!(r.standing, Standing::NotYet(_) | Standing::Running);
    layout(
        page,
        Tab::Evidence,
        &question_words(plan),
        html! {
            (summary(typed))
            @if going { (today(page, trial)) }
            p.lead data-test="sentence" { (r.sentence) }
            @if !r.departures.is_empty() { div.caution { strong { "Not as planned: " } ul { @for d in &r.departures { li { (d) "." } } } } }
            (super::result::result(page, trial, &r))
            h2 { "The plan" }
            (the_plan(page, trial, &r))
            @if going {
                (kindly(page))
                @if let Some(text) = &page.card.cautions { p.caution { strong { "Health: " } (text.as_str()) } }
                @if r.standing == Standing::Running { (noting(page, trial, typed)) }
                (stopping(page, trial, typed))
            }
            p { a href=(format!("/l/{}/designs", page.id)) { "All trials" } }
        },
    )
}

/// Today's condition, and no later one.
fn today(page: &AnimalPage, trial: &Trial<'_>) -> Markup {
    let plan = trial.plan.part;
    let what = match plan.unit {
        CaseUnit::Day => "today",
        CaseUnit::Session => "this or the next session",
    };
    html! {
        section.card aria-label="Today" {
            @for (lane, now) in trial.lanes.iter().zip(trial.today(&page.story, page.now)) {
                @match now {
                    Today::Rest => p.stop role="alert" { @if !lane.name.is_empty() { (lane.name) ": " } "Rest today, everything as usual: strong signs of stress were noted. Give space and do not lure back." },
                    Today::Nothing => p { @if !lane.name.is_empty() { strong { (lane.name) } ": " } "Everything as usual." },
                    Today::Condition { point, condition, criterion } => p.num data-test="today" {
                        @if !lane.name.is_empty() { strong { (lane.name) } ": " }
                        (what) " (point " (point) " of " (plan.points) "): "
                        strong { @match (condition, criterion.and_then(|c| plan.criteria.get(c))) {
                            (_, Some(goal)) => { "deliver within " (goal) " s" },
                            (CaseCondition::Changed, None) => { "with " (changed_words(plan)) },
                            (CaseCondition::Usual, None) => "as usual",
                        } }
                    },
                }
            }
            p.quiet { "Later days are not shown on purpose: knowing them changes what people do. Answer every press as always." }
        }
    }
}

fn the_plan(page: &AnimalPage, trial: &Trial<'_>, r: &Report) -> Markup {
    let plan = trial.plan.part;
    let words = page.story.words();
    let named: Vec<String> = plan.words.iter().filter_map(|w| words.get(w).map(|c| c.says.to_string())).collect();
    html! {
        dl.facts {
            dt { "Design" } dd { (design_words(plan.design)) }
            dt { "Measured" } dd { (measure_words(plan.measure)) ", each " (plan.unit.name()) ": " @if named.is_empty() { "all words" } @else { (named.join(", ")) } }
            dt { "Expected" } dd { (plan.expected.name()) }
            dt { "First day, points" } dd { (plan.first) ", " (plan.points) }
            dt { "Possible orders" } dd { (r.orders) }
        }
        p.quiet { "Planned on " (trial.plan.at().day(&page.zone)) "; the order follows from a seed drawn then." }
    }
}

fn noting(page: &AnimalPage, trial: &Trial<'_>, typed: &Typed) -> Markup {
    let conditions = [("usual".to_owned(), html! { "as usual" }), ("changed".to_owned(), html! { "with the change" })];
    let lanes: Vec<(String, String)> = trial
        .lanes
        .iter()
        .enumerate()
        .map(|(i, l)| (i.to_string(), if l.name.is_empty() { "this trial".to_owned() } else { l.name.clone() }))
        .collect();
    let wrong = ["point", "in_force", "because"].iter().any(|f| typed.problem(f).is_some());
    html! {
        details open[wrong] {
            summary { "Something else was in force than drawn?" }
            form method="post" action={ (address(page, trial.plan.part.trial)) "/note" } .stack {
                @if lanes.len() > 1 { (select(typed, "lane", "Where", "", &lanes)) }
                @else { input type="hidden" name="lane" value="0"; }
                (number(typed, "point", "Point", "counted from 1"))
                (radios(typed, "in_force", "In force was", "", &conditions))
                (area(typed, "because", "Why", "may be left out"))
                button { "Note it" }
            }
            p.quiet { "The test goes by the order drawn, so an honest note never spoils it; the page says how many points differed." }
        }
    }
}

fn stopping(page: &AnimalPage, trial: &Trial<'_>, typed: &Typed) -> Markup {
    let reasons = CaseStop::ALL.iter().map(|r| {
        let text = match r {
            CaseStop::StrongSign => "a strong sign of stress",
            CaseStop::NotGood => "the change does no good",
            CaseStop::NotKept => "it cannot be kept up",
            CaseStop::Other => "another reason",
        };
        (r.name().to_owned(), text.to_owned())
    });
    let reasons: Vec<_> = reasons.collect();
    html! {
        section {
            h2 { "Stop" }
            form method="post" action={ (address(page, trial.plan.part.trial)) "/stop" } .stack {
                (select(typed, "reason", "Why", "", &reasons))
                (area(typed, "why", "In words", "may be left out"))
                button { "Stop this trial now" }
            }
            p.quiet { "Stopping is always right when in doubt. Put everything back as it was; what was logged is kept." }
        }
    }
}
