//! The list of trials, and one trial: what to do today, and how far it has got.

use super::{address, beside, kindly, known};
use crate::error::Error;
use crate::fields::{area, number, radios, select, summary};
use crate::layout::{Tab, layout};
use crate::page::AnimalPage;
use crate::rich;
use crate::typed::Typed;
use axum::extract::Path;
use maud::{Markup, html};
use sayso_advisor::designs::{Report, Standing, Today, Trial, plans, report, trial_among};
use sayso_advisor::welfare::rest_today;
use sayso_model::CaseStop;
use sayso_people::Capability;
use sayso_wording::designs::{condition, departure, design_of, measure, measured_words, orders, question, sentence};
use sayso_wording::{Locale, say};

pub async fn list(page: AnimalPage) -> Markup {
    let (l, all) = (&page.locale, plans(&page.story, page.id));
    let checks = html! { a href=(format!("/a/{}/checks", page.id)) { (say!(l, designs::checks_link)) } };
    layout(
        &page,
        Tab::Evidence,
        &say!(l, designs::title),
        html! {
            p { (rich!(l, designs::intro, name = html! { strong { (page.card.name.as_str()) } })) }
            @if rest_today(&page.case()) { p.stop { (say!(l, designs::none_today)) } }
            @else if page.may(Capability::Plan) { p { a.button.primary href=(format!("/a/{}/designs/new", page.id)) { (say!(l, designs::plan)) } } }
            section {
                h2 { (say!(l, designs::so_far)) " " span.quiet { (all.len()) } }
                @if all.is_empty() { p.quiet { (say!(l, designs::none)) } }
                ul.plain { @for p in all.iter().rev() {
                    li.line {
                        span { strong { (question(l, p.part)) } span.hint { (l.date(p.part.first)) " · " (design_of(l, p.part)) " · "
                            @match trial_among(&page.story, &all, page.id, p.part.trial) {
                                Some(Ok(t)) => (state(l, &t.standing(&page.story, page.now))),
                                _ => (say!(l, designs::undrawable)),
                            } } }
                        a.button href=(address(&page, p.part.trial)) { (say!(l, designs::open)) }
                    }
                } }
            }
            p.quiet { (rich!(l, designs::checks, link = checks)) }
            p { a.link href="/methods/single-case" { (say!(l, designs::how)) } }
        },
    )
}

fn state(l: &Locale, standing: &Standing) -> String {
    match standing {
        Standing::NotYet(day) => say!(l, designs::begins, day = l.date(*day)),
        Standing::Running => say!(l, designs::going_on),
        Standing::Finished => say!(l, designs::finished),
        Standing::Stopped(day, _) => say!(l, designs::stopped_on, day = l.date(*day)),
        Standing::StrongSign(day) => say!(l, designs::ended_by_sign, day = l.date(*day)),
    }
}

pub async fn one(page: AnimalPage, Path((_, id)): Path<(String, String)>) -> Result<Markup, Error> {
    let trial = known(&page, &id)?;
    Ok(page_of(&page, &trial, &Typed::default()))
}

/// The page of a trial, with what was typed if something was wrong with it.
pub fn page_of(page: &AnimalPage, trial: &Trial<'_>, typed: &Typed) -> Markup {
    let (l, plan) = (&page.locale, trial.plan.part);
    let r = report(&page.story, trial, page.now);
    let going = matches!(r.standing, Standing::NotYet(_) | Standing::Running);
    // A trial over several animals is about the one it was planned on.
    let animals = page.story.animals();
    let name = animals.get(&trial.animal).map_or(page.card.name.as_str(), |c| c.name.as_str());
    layout(
        page,
        Tab::Evidence,
        &question(l, plan),
        html! {
            (summary(typed))
            @if going { (today(page, trial)) }
            p.lead data-test="sentence" { (sentence(l, name, plan, &r)) }
            (beside::kept(page, trial.animal, plan))
            @if !r.departures.is_empty() { div.caution { strong { (say!(l, designs::not_as_planned)) } ul { @for d in &r.departures { li { (departure(l, *d)) } } } } }
            div data-part="figures" { (super::result::result(page, trial, &r)) }
            h2 { (say!(l, designs::the_plan)) }
            (the_plan(page, trial, &r))
            @if going {
                (kindly(page))
                @if let Some(text) = &page.card.cautions { p.caution { strong { (say!(l, checks::health)) } " " (text.as_str()) } }
                @if r.standing == Standing::Running { (noting(page, trial, typed)) }
                (stopping(page, trial, typed))
            }
            p { a href=(format!("/a/{}/designs", page.id)) { (say!(l, designs::all)) } }
        },
    )
}

/// Today's condition, and no later one.
fn today(page: &AnimalPage, trial: &Trial<'_>) -> Markup {
    let (l, plan) = (&page.locale, trial.plan.part);
    let lane = |name: &str| html! { @if !name.is_empty() { strong { (say!(l, designs::of_lane, lane = name)) } " " } };
    html! {
        section.card aria-label=(say!(l, designs::today)) {
            @for (of, now) in trial.lanes.iter().zip(trial.today(&page.story, page.now)) {
                @match now {
                    Today::Rest => p.stop role="alert" { (lane(&of.name)) (say!(l, designs::rest)) },
                    Today::Nothing => p { (lane(&of.name)) (say!(l, designs::everything_usual)) },
                    Today::Condition { point, condition: drawn, criterion } => p.num data-test="today" {
                        (lane(&of.name))
                        (rich!(l, designs::now, unit = plan.unit.name(), point = point, points = plan.points, what = html! { strong { (condition(l, plan, drawn, criterion)) } }))
                    },
                }
            }
            p.quiet { (say!(l, designs::later_hidden)) }
        }
    }
}

fn the_plan(page: &AnimalPage, trial: &Trial<'_>, r: &Report) -> Markup {
    let (l, plan) = (&page.locale, trial.plan.part);
    let (measured, words) = (measure(l, plan.measure), measured_words(l, &page.story, &plan.words));
    html! {
        dl.facts {
            dt { (say!(l, designs::fact_design)) } dd { (design_of(l, plan)) }
            dt { (say!(l, designs::fact_measured)) } dd { (say!(l, designs::measured, unit = plan.unit.name(), measure = measured, words = words)) }
            dt { (say!(l, designs::fact_expected)) } dd { (say!(l, designs::expected, expected = plan.expected.name())) }
            dt { (say!(l, designs::fact_first)) } dd { (say!(l, designs::first, day = l.date(plan.first), points = plan.points)) }
            dt { (say!(l, designs::fact_orders)) } dd { (orders(l, r.orders)) }
        }
        p.quiet { (say!(l, designs::planned_on, day = l.date(trial.plan.at().day(&page.zone)))) }
    }
}

fn noting(page: &AnimalPage, trial: &Trial<'_>, typed: &Typed) -> Markup {
    if !page.may(Capability::Record) {
        return html! {};
    }
    let l = &page.locale;
    let conditions = [
        ("usual".to_owned(), html! { (say!(l, designs::as_usual)) }),
        ("changed".to_owned(), html! { (say!(l, designs::with_the_change)) }),
    ];
    let lanes: Vec<(String, String)> = trial
        .lanes
        .iter()
        .enumerate()
        .map(|(i, of)| (i.to_string(), if of.name.is_empty() { say!(l, designs::this_trial) } else { of.name.clone() }))
        .collect();
    let wrong = ["point", "in_force", "because"].iter().any(|f| typed.problem(f).is_some());
    html! {
        details open[wrong] {
            summary { (say!(l, designs::other_in_force)) }
            form method="post" action={ (address(page, trial.plan.part.trial)) "/note" } .stack {
                @if lanes.len() > 1 { (select(typed, "lane", &say!(l, designs::field_lane), "", &lanes)) }
                @else { input type="hidden" name="lane" value="0"; }
                (number(typed, "point", &say!(l, designs::field_point), &say!(l, designs::field_point_hint)))
                (radios(typed, "in_force", &say!(l, designs::field_in_force), "", &conditions))
                (area(typed, "because", &say!(l, designs::field_because), &say!(l, designs::may_be_left_out)))
                button { (say!(l, designs::note_it)) }
            }
            p.quiet { (say!(l, designs::honest_note)) }
        }
    }
}

fn stopping(page: &AnimalPage, trial: &Trial<'_>, typed: &Typed) -> Markup {
    if !page.may(Capability::Record) {
        return html! {};
    }
    let l = &page.locale;
    let reasons: Vec<(String, String)> =
        CaseStop::ALL.iter().map(|r| (r.name().to_owned(), say!(l, designs::reason, reason = r.name()))).collect();
    html! {
        section {
            h2 { (say!(l, designs::stop)) }
            form method="post" action={ (address(page, trial.plan.part.trial)) "/stop" } .stack {
                (select(typed, "reason", &say!(l, designs::field_because), "", &reasons))
                (area(typed, "why", &say!(l, designs::field_in_words), &say!(l, designs::may_be_left_out)))
                button { (say!(l, designs::stop_now)) }
            }
            p.quiet { (say!(l, designs::stop_right)) }
        }
    }
}
