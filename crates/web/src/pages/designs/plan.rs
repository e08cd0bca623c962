//! Planning a trial: the question proposes the design, the numbers give the possible orders, the machine draws the seed.

use super::{address, beside, kindly};
use crate::error::Error;
use crate::fields::{day, line, number, radios, select, summary, ticks};
use crate::layout::{Tab, layout};
use crate::page::AnimalPage;
use crate::pages::talk::seen;
use crate::rich;
use crate::typed::{Typed, again};
use axum::response::{IntoResponse, Redirect, Response};
use maud::{Markup, html};
use sayso_advisor::designs::{Try, design_of, proposal};
use sayso_advisor::welfare::rest_today;
use sayso_methods::single_case::standards::standards;
use sayso_model::talks::Standing as Agreed;
use sayso_model::{
    AnimalId, CaseDesign, CaseExpected, CaseMeasure, CaseQuestion, CaseUnit, DesignId, DesignPlan, EventId, Seconds,
    WordId,
};
use sayso_wording::designs::{design, design_of as design_name, measure, orders, refused, verdict};
use sayso_wording::{Locale, say, words};
use uuid::Uuid;

const FIELDS: [&str; 16] = [
    "proposal", "question", "label", "design", "measure", "expected", "words", "animals", "unit", "first", "points",
    "phases", "least", "apart", "criteria", "step",
];
/// Stands for the design proposed for the question.
const PROPOSED: &str = "proposed";

/// The form.
pub async fn ask(page: AnimalPage, typed: Typed) -> Result<Markup, Error> {
    let typed = typed.only(&["words", "proposal"])?;
    let typed = match proposed(&page, typed.text("proposal")) {
        Some((_, tries)) => filled(typed, &tries.plan(DesignId(Uuid::nil()), None, page.now.day(&page.zone), 0)),
        None => typed,
    };
    let typed = typed
        .with("design", PROPOSED)
        .with("measure", CaseMeasure::OwnPresses.name())
        .with("expected", CaseExpected::More.name())
        .with("unit", CaseUnit::Day.name())
        .with("first", page.now.day(&page.zone).plus(1))
        .with("points", 28)
        .with("phases", 4)
        .with("least", 5)
        .with("apart", 3);
    Ok(form(&page, &typed, None))
}

/// What of the home's agreements with a coach may be tried with this animal, by the id of the proposal.
fn proposed(page: &AnimalPage, id: &str) -> Option<(EventId, Try)> {
    let all = seen(page);
    let talk = all.iter().find(|t| t.id().to_string() == id && t.standing == Agreed::Accepted)?;
    Try::of(&talk.part.proposes).filter(|_| talk.concerns(page.id)).map(|tries| (talk.id(), tries))
}

/// With the numbers of a plan.
fn filled(typed: Typed, plan: &DesignPlan) -> Typed {
    let typed = plan.words.iter().fold(typed, |typed, word| typed.with("words", word));
    let typed = typed.with("question", plan.question.name()).with("design", plan.design.name());
    let typed = typed.with_some("label", plan.label.as_ref()).with("measure", plan.measure.name());
    let typed = typed.with("expected", plan.expected.name()).with("points", plan.points);
    if plan.phases == 0 { typed } else { typed.with("phases", plan.phases).with("least", plan.least) }
}

/// Counts what the plan can show, or keeps it.
pub async fn begin(page: AnimalPage, typed: Typed) -> Result<Response, Error> {
    let mut typed = typed.only(&FIELDS)?;
    let plan = read(&page, &mut typed);
    if let Some(plan) = &plan
        && let Err(problems) = page.event(plan.clone()).check()
    {
        typed.take(problems);
    }
    let Some(plan) = plan.filter(|_| typed.right()) else {
        return Ok(again(form(&page, &typed, None)));
    };
    match typed.text("step") {
        "count" => return Ok(form(&page, &typed, Some(&plan)).into_response()),
        "plan" => {}
        _ => return Err(Error::refused("step", words!(faults::one_of, names = "count, plan"))),
    }
    let to = address(&page, plan.trial);
    if typed.kept(page.keep(vec![page.event(plan)]).await)? {
        return Ok(Redirect::to(&to).into_response());
    }
    Ok(again(form(&page, &typed, None)))
}

fn read(page: &AnimalPage, typed: &mut Typed) -> Option<DesignPlan> {
    let question = typed.one_needed("question", CaseQuestion::ALL, CaseQuestion::name);
    let design = if typed.text("design") == PROPOSED {
        question.map(proposal)
    } else {
        typed.one_needed("design", CaseDesign::ALL, CaseDesign::name)
    };
    let measure = typed.one_needed("measure", CaseMeasure::ALL, CaseMeasure::name);
    let expected = typed.one_needed("expected", CaseExpected::ALL, CaseExpected::name);
    let unit = typed.one_needed("unit", CaseUnit::ALL, CaseUnit::name);
    let label = typed.label_or_none("label");
    let words = typed.ids("words", |w: &WordId| page.story.words_of(page.id).iter().any(|c| c.word == *w));
    let animals = typed.ids("animals", |l: &AnimalId| page.animals().iter().any(|c| c.animal == *l));
    let first = typed.text("first").to_owned();
    let first = typed.checked("first", first.parse::<sayso_model::Day>());
    let today = page.now.day(&page.zone);
    // A day that has begun cannot be drawn for any more.
    let soonest = if unit == Some(CaseUnit::Session) { today } else { today.plus(1) };
    if first.is_some_and(|f| f < soonest || f > today.plus(366)) {
        typed.wrong("first", words!(faults::first_day, from = soonest.to_string(), to = today.plus(366).to_string()));
    }
    let mut whole = |name: &str, used: bool, high: u16| if used { typed.whole_needed(name, 1, high) } else { Some(0) };
    let (phased, staggered) = (
        matches!(design, Some(CaseDesign::Reversal | CaseDesign::ChangingCriterion)),
        design == Some(CaseDesign::MultipleBaseline),
    );
    let points = whole("points", true, 120);
    let phases = whole("phases", phased, 8);
    let least = whole("least", design != Some(CaseDesign::AlternatingTreatments), 120);
    let apart = whole("apart", staggered, 120);
    let criteria = criteria(typed, design == Some(CaseDesign::ChangingCriterion));
    let seed = match getrandom::u32() {
        Ok(seed) => seed,
        Err(why) => {
            typed.wrong("step", words!(faults::no_random, why = why.to_string()));
            return None;
        }
    };
    Some(DesignPlan {
        trial: DesignId(Uuid::now_v7()),
        design: design?,
        question: question?,
        label,
        measure: measure?,
        expected: expected?,
        words,
        animals: if staggered { animals } else { Vec::new() },
        unit: unit?,
        first: first?,
        points: points?,
        phases: phases?,
        least: least?,
        apart: apart?,
        criteria: criteria?,
        seed,
        proposal: proposed(page, typed.text("proposal")).map(|(id, _)| id),
    })
}

/// Goals in seconds, set apart by semicolons or blanks.
fn criteria(typed: &mut Typed, used: bool) -> Option<Vec<Seconds>> {
    if !used {
        return Some(Vec::new());
    }
    let text = typed.text("criteria").replace(',', ".");
    let parts = text.split(|c: char| c == ';' || c.is_whitespace()).filter(|p| !p.is_empty());
    let read: Option<Vec<Seconds>> = parts.map(|p| Seconds::new(p.parse().ok()?).ok()).collect();
    if read.is_none() {
        typed.wrong("criteria", words!(faults::seconds_list));
    }
    read
}

fn counted(page: &AnimalPage, plan: &DesignPlan) -> Markup {
    let l = &page.locale;
    let numbers = design_of(plan);
    let order = numbers.draw(u64::from(plan.seed));
    // Only whether the numbers would do; the drawn order itself stays unseen.
    let judged = order.ok().and_then(|order| {
        let all: Vec<Vec<bool>> = order.iter().map(|s| vec![true; s.len()]).collect();
        standards(numbers, &order, &all).ok()
    });
    let proposed = proposal(plan.question);
    let strong = |text: String| html! { strong { (text) } };
    html! {
        section.card #counted tabindex="-1" {
            @if plan.design == proposed { h2 { (say!(l, designs::proposed, design = design_name(l, plan))) } }
            @else {
                h2 { (say!(l, designs::your_choice, design = design_name(l, plan))) }
                p { (say!(l, designs::usual_here, design = design(l, proposed))) }
            }
            p { (say!(l, designs::because, question = plan.question.name())) }
            @match numbers.count() {
                Err(why) => p { (say!(l, designs::undrawn, why = refused(l, why))) },
                Ok(possible) => {
                    ul {
                        li { (rich!(l, designs::orders, orders = strong(orders(l, possible)))) }
                        li { (say!(l, designs::smallest_p, p = smallest(l, possible)))
                            @if possible < 20 { " " (say!(l, designs::fewer_than_20, level = l.number(0.05, 2))) } }
                        @if let Some(s) = judged { li { (rich!(l, designs::verdict_ahead, verdict = strong(verdict(l, s.verdict)), chances = s.demonstrations, fewest = s.fewest)) } }
                    }
                    (beside::planned(page, page.id, plan))
                    button.primary.wide name="step" value="plan" { (say!(l, designs::plan_and_draw)) }
                }
            }
        }
    }
}

/// The smallest p that so many orders allow: a number without "p =", never written as nothing.
#[allow(clippy::cast_precision_loss)]
fn smallest(l: &Locale, orders: u128) -> String {
    let p = 1.0 / orders.max(1) as f64;
    if p < 0.0001 { format!("< {}", l.number(0.0001, 4)) } else { l.number(p, 4) }
}

fn form(page: &AnimalPage, typed: &Typed, plan: Option<&DesignPlan>) -> Markup {
    let option = |name: &str, text: &str, hint: &str| {
        (name.to_owned(), html! { (text) @if !hint.is_empty() { span.hint { (hint) } } })
    };
    let l = &page.locale;
    let questions: Vec<_> = CaseQuestion::ALL
        .iter()
        .map(|q| {
            let hint = say!(l, designs::proposed_for, design = design(l, proposal(*q)));
            option(q.name(), &say!(l, designs::change, question = q.name()), &hint)
        })
        .collect();
    let mut designs = vec![(PROPOSED.to_owned(), say!(l, designs::the_proposed))];
    designs.extend(CaseDesign::ALL.iter().map(|d| (d.name().to_owned(), design(l, *d))));
    let measures: Vec<_> = CaseMeasure::ALL.iter().map(|m| (m.name().to_owned(), measure(l, *m))).collect();
    let expected: Vec<_> = CaseExpected::ALL
        .iter()
        .map(|e| {
            let hint = if *e == CaseExpected::Either { say!(l, designs::expect_either_hint) } else { String::new() };
            option(e.name(), &say!(l, designs::expect, expected = e.name()), &hint)
        })
        .collect();
    let units: Vec<_> = CaseUnit::ALL
        .iter()
        .map(|u| {
            let hint = if *u == CaseUnit::Session { say!(l, designs::point_session_hint) } else { String::new() };
            option(u.name(), &say!(l, designs::point_unit, unit = u.name()), &hint)
        })
        .collect();
    let words: Vec<_> =
        page.story.words_of(page.id).iter().map(|w| option(&w.word.to_string(), w.says.as_str(), "")).collect();
    let animals: Vec<_> = page.animals().iter().map(|a| option(&a.animal.to_string(), a.name.as_str(), "")).collect();
    layout(
        page,
        Tab::Evidence,
        &say!(l, designs::plan_title),
        html! {
            (summary(typed))
            @if rest_today(&page.case()) {
                p.stop { (say!(l, designs::not_today, name = &page.card.name)) }
                p { a href=(format!("/a/{}/designs", page.id)) { (say!(l, designs::back)) } }
            } @else {
                p { (say!(l, designs::why)) }
                (kindly(page))
                form method="post" action=(format!("/a/{}/designs/new", page.id)) .stack {
                    @if !typed.text("proposal").is_empty() { input type="hidden" name="proposal" value=(typed.text("proposal")); }
                    (radios(typed, "question", &say!(l, designs::field_question), &say!(l, designs::field_question_hint), &questions))
                    (line(typed, "label", &say!(l, designs::field_label), &say!(l, designs::field_label_hint), false))
                    (select(typed, "measure", &say!(l, designs::field_measure), &say!(l, designs::field_measure_hint), &measures))
                    (radios(typed, "expected", &say!(l, designs::field_expected), &say!(l, designs::field_expected_hint), &expected))
                    @if !words.is_empty() { (ticks(typed, "words", &say!(l, designs::field_words), &say!(l, designs::field_words_hint), &words)) }
                    (radios(typed, "unit", &say!(l, designs::field_unit), "", &units))
                    (day(typed, "first", &say!(l, designs::field_first), &say!(l, designs::field_first_hint)))
                    (number(typed, "points", &say!(l, designs::field_points), &say!(l, designs::field_points_hint)))
                    details open[!typed.right() || typed.text("design") != PROPOSED] {
                        summary { (say!(l, designs::numbers)) }
                        (select(typed, "design", &say!(l, designs::field_design), "", &designs))
                        (number(typed, "least", &say!(l, designs::field_least), &say!(l, designs::field_least_hint)))
                        (number(typed, "phases", &say!(l, designs::field_phases), &say!(l, designs::field_phases_hint)))
                        (number(typed, "apart", &say!(l, designs::field_apart), &say!(l, designs::field_apart_hint)))
                        @if animals.len() > 1 { (ticks(typed, "animals", &say!(l, designs::field_animals), &say!(l, designs::field_animals_hint), &animals)) }
                        (line(typed, "criteria", &say!(l, designs::field_criteria), &say!(l, designs::field_criteria_hint), false))
                    }
                    button.wide .primary[plan.is_none()] name="step" value="count" formaction=(format!("/a/{}/designs/new#counted", page.id)) { (say!(l, designs::see)) }
                    @if let Some(plan) = plan { (counted(page, plan)) }
                }
            }
        },
    )
}
