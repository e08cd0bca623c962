//! Words about trials of a change. They never say more than the design allows.

use super::report::{Report, unit_of};
use super::standing::Standing;
use super::trial::Trial;
use crate::estimate::Unit;
use sayso_methods::single_case::standards::Verdict;
use sayso_model::{AnimalId, CaseDesign, CaseMeasure, CaseQuestion, CaseStop, CaseUnit, DesignPlan, Story};

/// From here on a result would be rare if the change did nothing.
const RARE: f64 = 0.05;

/// A design in plain words.
#[must_use]
pub const fn design_words(design: CaseDesign) -> &'static str {
    match design {
        CaseDesign::Reversal => "back and forth, some days each (reversal, ABAB)",
        CaseDesign::MultipleBaseline => "one after the other (multiple baseline)",
        CaseDesign::AlternatingTreatments => "in quick turn (alternating treatments)",
        CaseDesign::ChangingCriterion => "step by step (changing criterion)",
    }
}

/// The question of a plan.
#[must_use]
pub fn question_words(plan: &DesignPlan) -> String {
    match plan.question {
        CaseQuestion::QuieterButton => "Does a quieter button help?".to_owned(),
        CaseQuestion::NewPlace => "Does a new place help?".to_owned(),
        CaseQuestion::FasterDelivery => "Does a faster delivery help?".to_owned(),
        CaseQuestion::Other => {
            format!("Does this help: {}?", plan.label.as_ref().map_or("a change", |l| l.as_str()))
        }
    }
}

/// What to do while the change is in force.
#[must_use]
pub fn changed_words(plan: &DesignPlan) -> String {
    match plan.question {
        CaseQuestion::QuieterButton => "the quieter button".to_owned(),
        CaseQuestion::NewPlace => "the new place".to_owned(),
        CaseQuestion::FasterDelivery => "the faster delivery".to_owned(),
        CaseQuestion::Other => plan.label.as_ref().map_or_else(|| "the change".to_owned(), ToString::to_string),
    }
}

/// What is measured at each point.
#[must_use]
pub const fn measure_words(measure: CaseMeasure) -> &'static str {
    match measure {
        CaseMeasure::OwnPresses => "own presses",
        CaseMeasure::JoinedShare => "share of sessions joined",
        CaseMeasure::TimeToPress => "seconds to press when invited and wanted",
        CaseMeasure::PressedShare => "share pressed when invited and wanted",
        CaseMeasure::StressSigns => "signs of stress",
        CaseMeasure::DeliveryDelay => "seconds from press to delivery",
    }
}

/// A verdict on a design.
#[must_use]
pub const fn verdict_words(verdict: Verdict) -> &'static str {
    match verdict {
        Verdict::Meets => "meets the standards",
        Verdict::WithReservations => "meets the standards with reservations",
        Verdict::DoesNot => "does not meet the standards",
    }
}

/// Which design fits a question, and why.
#[must_use]
pub const fn proposal(question: CaseQuestion) -> (CaseDesign, &'static str) {
    match question {
        CaseQuestion::QuieterButton => (
            CaseDesign::Reversal,
            "the sound can be turned down and up again, and an animal needs some days to get used to either",
        ),
        CaseQuestion::NewPlace => (
            CaseDesign::MultipleBaseline,
            "moving a button back and forth would confuse: each word moves once, one after the other",
        ),
        CaseQuestion::FasterDelivery => (
            CaseDesign::AlternatingTreatments,
            "people can deliver at once on one day and as always on the next, and its effect comes and goes quickly",
        ),
        CaseQuestion::Other => (
            CaseDesign::Reversal,
            "it is right where the change can be taken back; where it cannot, take one after the other",
        ),
    }
}

pub(super) fn phase_name(plan: &DesignPlan, phase: u8) -> String {
    let turn = |name: &str| {
        if plan.phases > 2 { format!("{name} {}", phase / 2 + 1) } else { name.to_owned() }
    };
    match (plan.design, phase) {
        (CaseDesign::ChangingCriterion, 0) => "usual".to_owned(),
        (CaseDesign::ChangingCriterion, _) => {
            let goal = plan.criteria.get(usize::from(phase) - 1).map_or(0.0, |c| c.get());
            format!("goal {goal} s")
        }
        (CaseDesign::Reversal, _) => turn(if phase.is_multiple_of(2) { "usual" } else { "changed" }),
        (_, 0) => "usual".to_owned(),
        _ => "changed".to_owned(),
    }
}

fn amount(x: f64, plan: &DesignPlan) -> String {
    let a = match plan.unit {
        CaseUnit::Day => "a day",
        CaseUnit::Session => "a session",
    };
    match unit_of(plan.measure) {
        Unit::Share => format!("{:.0} percentage points", 100.0 * x),
        Unit::Seconds => format!("{x:.1} s"),
        _ => format!("{x:.1} {a}"),
    }
}

fn name(story: &Story, animal: AnimalId) -> String {
    story.animals().get(&animal).map_or_else(|| "the animal".to_owned(), |c| c.name.to_string())
}

pub(super) fn sentence(story: &Story, trial: &Trial<'_>, report: &Report) -> String {
    let who = name(story, trial.animal);
    match &report.standing {
        Standing::NotYet(day) => return format!("It begins on {day}; until then everything is as usual."),
        Standing::Running => {
            let (done, of) = report.done;
            return format!("{done} of {of} points are over. Nothing is claimed before the end.");
        }
        Standing::StrongSign(day) => {
            return format!(
                "Stopped: a strong sign of stress was seen on {day} while the change was in force. Everything goes back to the usual; nothing is claimed for the change."
            );
        }
        Standing::Stopped(day, reason) => {
            let why = match reason {
                CaseStop::StrongSign => "a strong sign of stress",
                CaseStop::NotGood => "the change did not do good",
                CaseStop::NotKept => "it could not be kept up",
                CaseStop::Other => "another reason",
            };
            return format!(
                "Stopped on {day}: {why}. Nothing is tested, for a trial that may end at any time can end while ahead."
            );
        }
        Standing::Finished => {}
    }
    let tested = match &report.tested {
        Ok(tested) => tested,
        Err(why) => {
            return format!("Finished, but nothing can be tested: {why}. The figures only describe these points.");
        }
    };
    let (test, plan) = (tested.test, trial.plan.part);
    let orders = if test.exact {
        format!("{} of {} possible orders", test.as_extreme, test.orders)
    } else {
        format!("{} of {} orders drawn anew", test.as_extreme, test.orders)
    };
    let p = format!("p = {:.3}", test.p);
    let (usual, changed) = report.counts();
    let seen = if trial.plan.part.design == CaseDesign::ChangingCriterion {
        format!(
            "People came within {:.1} s of the goal on average (n = {changed} points). With the steps drawn by chance, a fit this close comes up in {orders} ({p}).",
            test.observed
        )
    } else {
        let way = if test.observed >= 0.0 { "higher" } else { "lower" };
        format!(
            "{} came out {way} by {} with {} (n = {usual} usual and {changed} changed points). With the order drawn by chance, a difference this large comes up in {orders} ({p}).",
            sentence_case(measure_words(plan.measure)),
            amount(test.observed.abs(), plan),
            changed_words(plan),
        )
    };
    #[allow(clippy::cast_precision_loss)]
    let least = 1.0 / test.orders.max(1) as f64;
    let judged = if least > RARE {
        format!("With only {} possible orders this trial could not tell any effect from chance.", test.orders)
    } else if test.p <= RARE {
        let of = if plan.design == CaseDesign::ChangingCriterion { "the goals" } else { "the change" };
        format!("That would be rare if {of} made no difference: it speaks for one, with {who}, in these weeks.")
    } else {
        "So it may well be chance. That does not show that the change does nothing.".to_owned()
    };
    let weak = match report.standards.map(|s| s.verdict) {
        Some(Verdict::DoesNot) => " The design itself is too small by the standards of the field; take it as a hint.",
        _ => "",
    };
    format!("{seen} {judged}{weak}")
}

fn sentence_case(text: &str) -> String {
    let mut text = text.to_owned();
    if let Some(first) = text.get_mut(0..1) {
        first.make_ascii_uppercase();
    }
    text
}

pub(super) fn would_change(trial: &Trial<'_>, report: &Report) -> String {
    let plan = trial.plan.part;
    let heard = plan.question == CaseQuestion::QuieterButton && plan.measure == CaseMeasure::OwnPresses;
    let mut what = match report.standing {
        Standing::Finished => "The same trial again, planned anew, by other people or in other weeks.".to_owned(),
        Standing::Stopped(..) | Standing::StrongSign(_) => {
            "Nothing from this trial; a gentler change, planned anew.".to_owned()
        }
        _ => "The points still to come.".to_owned(),
    };
    if heard {
        what.push_str(
            " Presses heard by a microphone are harder to hear from a quieter button: log them by hand in this trial.",
        );
    }
    what
}
