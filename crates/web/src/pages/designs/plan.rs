//! Planning a trial: the question proposes the design, the numbers give the possible orders, the machine draws the seed.

use super::{address, kindly};
use crate::error::Error;
use crate::fields::{day, line, number, radios, select, summary, ticks};
use crate::layout::{Tab, layout};
use crate::page::AnimalPage;
use crate::typed::{Typed, again};
use axum::response::{IntoResponse, Redirect, Response};
use maud::{Markup, html};
use sayso_advisor::designs::{design_of, design_words, measure_words, proposal, verdict_words};
use sayso_advisor::welfare::rest_today;
use sayso_methods::single_case::standards::standards;
use sayso_model::{
    AnimalId, CaseDesign, CaseExpected, CaseMeasure, CaseQuestion, CaseUnit, DesignId, DesignPlan, Seconds, WordId,
};
use uuid::Uuid;

const FIELDS: [&str; 15] = [
    "question", "label", "design", "measure", "expected", "words", "animals", "unit", "first", "points", "phases",
    "least", "apart", "criteria", "step",
];
/// Stands for the design proposed for the question.
const PROPOSED: &str = "proposed";

/// The form.
pub async fn ask(page: AnimalPage, typed: Typed) -> Result<Markup, Error> {
    let typed = typed
        .only(&["words"])?
        .with("question", CaseQuestion::QuieterButton.name())
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
        _ => return Err(Error::refused("step", "must be count or plan")),
    }
    let to = address(&page, plan.trial);
    if typed.kept(page.keep(vec![page.event(plan)]).await)? {
        return Ok(Redirect::to(&to).into_response());
    }
    Ok(again(form(&page, &typed, None)))
}

fn read(page: &AnimalPage, typed: &mut Typed) -> Option<DesignPlan> {
    let question = needed(typed, "question", CaseQuestion::ALL, CaseQuestion::name);
    let design = if typed.text("design") == PROPOSED {
        question.map(|q| proposal(q).0)
    } else {
        needed(typed, "design", CaseDesign::ALL, CaseDesign::name)
    };
    let measure = needed(typed, "measure", CaseMeasure::ALL, CaseMeasure::name);
    let expected = needed(typed, "expected", CaseExpected::ALL, CaseExpected::name);
    let unit = needed(typed, "unit", CaseUnit::ALL, CaseUnit::name);
    let label = typed.label_or_none("label");
    let words = typed.ids("words", |w: &WordId| page.story.words_of(page.id).iter().any(|c| c.word == *w));
    let animals = typed.ids("animals", |l: &AnimalId| page.animals().iter().any(|c| c.animal == *l));
    let first = typed.text("first").to_owned();
    let first = typed.checked("first", first.parse::<sayso_model::Day>());
    let today = page.now.day(&page.zone);
    // A day that has begun cannot be drawn for any more.
    let soonest = if unit == Some(CaseUnit::Session) { today } else { today.plus(1) };
    if first.is_some_and(|f| f < soonest || f > today.plus(366)) {
        typed.wrong("first", format!("must be {soonest} to {}: the order is drawn before it begins", today.plus(366)));
    }
    let mut whole = |name: &str, used: bool, high: u16| {
        if !used {
            return Some(0);
        }
        let read = typed.whole(name, 1, high);
        if read.is_none() && typed.problem(name).is_none() {
            typed.wrong(name, "is missing");
        }
        read
    };
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
            typed.wrong("step", format!("cannot be done: this machine gives no random numbers ({why})"));
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
    })
}

fn needed<T: Copy>(typed: &mut Typed, name: &str, all: &[T], named: impl Fn(T) -> &'static str) -> Option<T> {
    if typed.text(name).is_empty() {
        typed.wrong(name, "is missing; choose one");
    }
    typed.one_of(name, all, named)
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
        typed.wrong("criteria", "must be numbers of seconds such as 6; 4; 2.5");
    }
    read
}

fn counted(plan: &DesignPlan) -> Markup {
    let design = design_of(plan);
    let orders = design.count();
    let order = design.draw(u64::from(plan.seed));
    // Only whether the numbers would do; the drawn order itself stays unseen.
    let verdict = order.ok().and_then(|order| {
        let all: Vec<Vec<bool>> = order.iter().map(|s| vec![true; s.len()]).collect();
        standards(design, &order, &all).ok()
    });
    html! {
        section.card #counted {
            @let (proposed, because) = proposal(plan.question);
            @if plan.design == proposed {
                h2 { "Proposed: " (design_words(plan.design)) }
                p { "Because " (because) "." }
            } @else {
                h2 { "Your choice: " (design_words(plan.design)) }
                p { "For this question " (design_words(proposed)) " is usual, because " (because) "." }
            }
            @match orders {
                Err(why) => p { "This cannot be drawn: " (why) "." },
                Ok(orders) => {
                    ul {
                        li { strong { (orders) } " possible orders; one is drawn by chance when you plan it. You see only the condition of the day." }
                        li { "The smallest p it can reach is " (format!("{:.4}", 1.0 / orders.max(1) as f64)) "."
                            @if orders < 20 { " Fewer than 20 orders can never come below 0.05: take more points or fewer in each phase." } }
                        @if let Some(s) = verdict { li { "With every point there it " strong { (verdict_words(s.verdict)) } " (" (s.demonstrations) " chances to show an effect, at least " (s.fewest) " points each; Kratochwill et al. 2010)." } }
                    }
                    button.primary.wide name="step" value="plan" { "Plan it and draw the order" }
                }
            }
        }
    }
}

fn form(page: &AnimalPage, typed: &Typed, plan: Option<&DesignPlan>) -> Markup {
    let option = |name: &str, text: &str, hint: &str| {
        (name.to_owned(), html! { (text) @if !hint.is_empty() { span.hint { (hint) } } })
    };
    let questions = CaseQuestion::ALL.iter().map(|q| {
        let text = match q {
            CaseQuestion::QuieterButton => "A quieter button",
            CaseQuestion::NewPlace => "A new place",
            CaseQuestion::FasterDelivery => "A faster delivery",
            CaseQuestion::Other => "Something else",
        };
        option(q.name(), text, &format!("proposed: {}", design_words(proposal(*q).0)))
    });
    let questions: Vec<_> = questions.collect();
    let mut designs = vec![(PROPOSED.to_owned(), "the proposed one".to_owned())];
    designs.extend(CaseDesign::ALL.iter().map(|d| (d.name().to_owned(), design_words(*d).to_owned())));
    let measures: Vec<_> =
        CaseMeasure::ALL.iter().map(|m| (m.name().to_owned(), measure_words(*m).to_owned())).collect();
    let expected = [
        option("more", "more of it", ""),
        option("less", "less of it", ""),
        option("either", "either way", "asks for more points"),
    ];
    let units = [option("day", "a day", ""), option("session", "a session", "showing or inviting")];
    let words: Vec<_> =
        page.story.words_of(page.id).iter().map(|w| option(&w.word.to_string(), w.says.as_str(), "")).collect();
    let animals: Vec<_> = page.animals().iter().map(|l| option(&l.animal.to_string(), l.name.as_str(), "")).collect();
    layout(
        page,
        Tab::Evidence,
        "Plan a trial of a change",
        html! {
            (summary(typed))
            @if rest_today(&page.case()) {
                p.stop { "Not today: strong signs of stress were noted. Give " (page.card.name.as_str()) " space, and plan on a calm day." }
                p { a href=(format!("/l/{}/designs", page.id)) { "Back to the trials" } }
            } @else {
                p { "A change and a better week often meet by accident. When chance decides the days on which the change is in force, the difference can be held against all orders that might have been drawn." }
                (kindly(page))
                form method="post" action=(format!("/l/{}/designs/new", page.id)) .stack {
                    (radios(typed, "question", "What is changed", "one thing only; all else stays as it is", &questions))
                    (line(typed, "label", "Something else: what", "only for \u{201c}something else\u{201d}", false))
                    (select(typed, "measure", "What is measured", "choose before it begins; it is read from what you log anyway", &measures))
                    (radios(typed, "expected", "What you expect of it", "said now, so that the result cannot choose", &expected))
                    @if !words.is_empty() { (ticks(typed, "words", "Words", "none ticked: all. One after the other: each word ticked is a series; 3 meet the standards", &words)) }
                    (radios(typed, "unit", "One point is", "", &units))
                    (day(typed, "first", "First day", "tomorrow or later, for days"))
                    (number(typed, "points", "Points in all", "days or sessions; at most 120"))
                    details open[!typed.right() || typed.text("design") != PROPOSED] {
                        summary { "Design and its numbers" }
                        (select(typed, "design", "Design", "", &designs))
                        (number(typed, "least", "Least points a phase", "5 meet the standards, 3 with reservations"))
                        (number(typed, "phases", "Phases", "back and forth, and step by step: 4 or more"))
                        (number(typed, "apart", "Points between two changes", "one after the other: at least so many"))
                        @if animals.len() > 1 { (ticks(typed, "animals", "Animals", "one after the other over animals instead of words", &animals)) }
                        (line(typed, "criteria", "Goals for people, in seconds", "step by step: one a phase after the first, such as 6; 4; 2.5. Goals are never set for an animal", false))
                    }
                    button.wide .primary[plan.is_none()] name="step" value="count" formaction=(format!("/l/{}/designs/new#counted", page.id)) { "See what it can show" }
                    @if let Some(plan) = plan { (counted(plan)) }
                }
            }
        },
    )
}
