//! Trials of a change in words. They never say more than the design allows.

use crate::locale::Locale;
use crate::say;
use sayso_advisor::Unit;
use sayso_advisor::designs::{
    Beside, Compared, Departure, Judgement, NoTest, PhaseName, Report, Standing, Tested, Try, unit_of,
};
use sayso_methods::single_case::CaseError;
use sayso_methods::single_case::standards::Verdict;
use sayso_model::{CaseCondition, CaseDesign, CaseMeasure, CaseQuestion, CaseUnit, DesignPlan, Story, WordId};

/// A design in plain words.
#[must_use]
pub fn design(l: &Locale, design: CaseDesign) -> String {
    say!(l, designs::design, design = design.name())
}

/// The design of a plan: of one that changes once, on a drawn day, its own name.
#[must_use]
pub fn design_of(l: &Locale, plan: &DesignPlan) -> String {
    if plan.design == CaseDesign::Reversal && plan.phases == 2 {
        return say!(l, designs::from_a_day);
    }
    design(l, plan.design)
}

/// What a small trial of a change would be.
#[must_use]
pub fn small(l: &Locale, question: CaseQuestion) -> String {
    let (design, [points, phases, _]) = Try::numbers(question);
    let way = match design {
        CaseDesign::AlternatingTreatments => "turn",
        _ if phases == 2 => "once",
        _ => "back",
    };
    say!(l, designs::small, way = way, days = points)
}

/// What is measured in a trial of a change, of which words, and what is expected.
#[must_use]
pub fn measured_by(l: &Locale, story: &Story, tries: &Try) -> String {
    let words = measured_words(l, story, &tries.words);
    say!(l, designs::measured_by, measure = measure(l, tries.measure), words = words, expected = tries.expected.name())
}

/// Words that are measured, by what they say; all of them where none is named.
#[must_use]
pub fn measured_words(l: &Locale, story: &Story, of: &[WordId]) -> String {
    let words = story.words();
    let named: Vec<String> = of.iter().filter_map(|w| words.get(w).map(|c| c.says.to_string())).collect();
    if named.is_empty() { say!(l, designs::all_words) } else { l.names(&named) }
}

/// The question of a plan.
#[must_use]
pub fn question(l: &Locale, plan: &DesignPlan) -> String {
    match &plan.label {
        Some(label) if plan.question == CaseQuestion::Other => say!(l, designs::question_own, label = label),
        Some(label) if plan.question == CaseQuestion::AnotherWord => say!(l, designs::question_word, label = label),
        _ => say!(l, designs::question, question = plan.question.name()),
    }
}

/// Another trial on the same days, with its own.
#[must_use]
pub fn beside_line(l: &Locale, beside: &Beside<'_>) -> String {
    let (question, first) = (question(l, beside.plan.part), l.date(beside.plan.part.first));
    match beside.last {
        Some(last) => say!(l, designs::beside_days, question = question, first = first, last = l.date(last)),
        None => say!(l, designs::beside_sessions, question = question, first = first),
    }
}

/// What to do about other trials on the same days.
#[must_use]
pub fn beside_wait(l: &Locale, all: &[Beside<'_>]) -> String {
    let last: Option<Vec<_>> = all.iter().map(|one| one.last).collect();
    match last.and_then(|days| days.into_iter().max()) {
        Some(last) => say!(l, designs::beside_wait, day = l.date(last.plus(1))),
        None => say!(l, designs::beside_wait_sessions),
    }
}

/// The change in force, as in "with the quieter button".
#[must_use]
pub fn with_change(l: &Locale, plan: &DesignPlan) -> String {
    match &plan.label {
        Some(label) if plan.question == CaseQuestion::Other => say!(l, designs::with_own, label = label),
        _ => say!(l, designs::with, question = plan.question.name()),
    }
}

/// What is drawn for a point: the change, or not; where goals are set, which of them, counted from 0.
#[must_use]
pub fn condition(l: &Locale, plan: &DesignPlan, drawn: CaseCondition, goal: Option<usize>) -> String {
    match (drawn, goal.and_then(|goal| plan.criteria.get(goal))) {
        (_, Some(goal)) => say!(l, designs::deliver_within, seconds = exact(l, goal.get())),
        (CaseCondition::Changed, None) => with_change(l, plan),
        (CaseCondition::Usual, None) => say!(l, designs::as_usual),
    }
}

/// What is measured at each point.
#[must_use]
pub fn measure(l: &Locale, measure: CaseMeasure) -> String {
    say!(l, designs::measure, measure = measure.name())
}

/// A verdict on a design, as in "it meets the standards".
#[must_use]
pub fn verdict(l: &Locale, verdict: Verdict) -> String {
    match verdict {
        Verdict::Meets => say!(l, designs::meets),
        Verdict::WithReservations => say!(l, designs::meets_with_reservations),
        Verdict::DoesNot => say!(l, designs::does_not_meet),
    }
}

/// What a phase is called.
#[must_use]
pub fn phase(l: &Locale, phase: PhaseName) -> String {
    match phase {
        PhaseName::Usual(None) => say!(l, designs::phase_usual),
        PhaseName::Usual(Some(turn)) => say!(l, designs::phase_usual_turn, turn = turn),
        PhaseName::Changed(None) => say!(l, designs::phase_changed),
        PhaseName::Changed(Some(turn)) => say!(l, designs::phase_changed_turn, turn = turn),
        PhaseName::Goal(seconds) => say!(l, designs::phase_goal, seconds = exact(l, seconds)),
    }
}

/// What is compared.
#[must_use]
pub fn compared(l: &Locale, compared: Compared) -> String {
    match compared {
        Compared::ChangedAgainstUsual => say!(l, designs::changed_against_usual),
        Compared::After(b, a) => say!(l, designs::one_after_other, after = phase(l, b), before = phase(l, a)),
    }
}

/// Why nothing is tested.
#[must_use]
pub fn no_test(l: &Locale, why: NoTest) -> String {
    match why {
        NoTest::NotDrawnBefore => say!(l, designs::not_drawn_before),
        NoTest::Stopped => say!(l, designs::was_stopped),
        NoTest::NotFinished => say!(l, designs::not_finished),
        NoTest::Refused(why) => refused(l, why),
    }
}

/// Why a design cannot be drawn or tested.
#[must_use]
pub fn refused(l: &Locale, why: CaseError) -> String {
    match why {
        CaseError::TooShort { points, needed } => say!(l, designs::too_short, points = points, needed = needed),
        CaseError::EmptyCondition => say!(l, designs::empty_condition),
        CaseError::NoFigure => say!(l, designs::no_figure),
        // Numbers that the form and the log refuse before they come here.
        other => other.to_string(),
    }
}

/// Where the conduct was not as planned.
#[must_use]
pub fn departure(l: &Locale, departure: Departure) -> String {
    match departure {
        Departure::OtherCondition(points) => say!(l, designs::other_condition, points = points),
        Departure::NotDrawnBefore => say!(l, designs::drawn_late),
    }
}

/// Possible orders, which may be more than any count that is read as a number.
#[must_use]
pub fn orders(l: &Locale, orders: u128) -> String {
    match u32::try_from(orders) {
        Ok(orders) => l.number(f64::from(orders), 0),
        Err(_) => say!(l, designs::more_than, number = u32::MAX),
    }
}

/// A number of seconds as it was set, without needless zeros.
#[must_use]
pub fn exact(l: &Locale, seconds: f64) -> String {
    let text = seconds.to_string();
    l.number(seconds, text.split_once('.').map_or(0, |(_, decimals)| decimals.len()))
}

/// What may be said of a trial of the animal called `name`, in a sentence or two.
#[must_use]
pub fn sentence(l: &Locale, name: &str, plan: &DesignPlan, report: &Report) -> String {
    match &report.standing {
        Standing::NotYet(day) => say!(l, designs::not_yet, day = l.date(*day)),
        Standing::Running => say!(l, designs::running, done = report.done.0, points = report.done.1),
        Standing::StrongSign(day) => say!(l, designs::strong_sign, day = l.date(*day)),
        Standing::Stopped(day, reason) => say!(l, designs::stopped, day = l.date(*day), reason = reason.name()),
        Standing::Finished => match &report.tested {
            Err(why) => say!(l, designs::untested, why = no_test(l, *why)),
            Ok(tested) => {
                let mut said = vec![seen(l, plan, report, tested), judged(l, name, plan, tested)];
                if report.standards.is_some_and(|s| s.verdict == Verdict::DoesNot) {
                    said.push(say!(l, designs::weak));
                }
                said.join(" ")
            }
        },
    }
}

fn seen(l: &Locale, plan: &DesignPlan, report: &Report, tested: &Tested) -> String {
    let test = tested.test;
    let (usual, changed) = report.counts();
    let exact = if test.exact { "yes" } else { "no" };
    let (extreme, orders, p) = (test.as_extreme, test.orders, l.p(test.p));
    if plan.design == CaseDesign::ChangingCriterion {
        return say!(
            l,
            designs::seen_goal,
            seconds = l.number(test.observed, 1),
            points = changed,
            extreme = extreme,
            orders = orders,
            exact = exact,
            p = p
        );
    }
    say!(
        l,
        designs::seen,
        measure = measure(l, plan.measure),
        way = if test.observed >= 0.0 { "higher" } else { "lower" },
        amount = amount(l, test.observed.abs(), plan),
        with = with_change(l, plan),
        usual = usual,
        changed = changed,
        extreme = extreme,
        orders = orders,
        exact = exact,
        p = p
    )
}

fn judged(l: &Locale, name: &str, plan: &DesignPlan, tested: &Tested) -> String {
    match Judgement::of(&tested.test) {
        Judgement::TooFewOrders => say!(l, designs::too_few_orders, orders = tested.test.orders),
        Judgement::Rare if plan.design == CaseDesign::ChangingCriterion => say!(l, designs::rare_goals, name = name),
        Judgement::Rare => say!(l, designs::rare, name = name),
        Judgement::MayBeChance => say!(l, designs::may_be_chance),
    }
}

fn amount(l: &Locale, x: f64, plan: &DesignPlan) -> String {
    match (unit_of(plan.measure), plan.unit) {
        (Unit::Share, _) => say!(l, designs::percentage_points, value = l.number(100.0 * x, 0)),
        (Unit::Seconds, _) => l.seconds(x),
        (_, CaseUnit::Day) => say!(l, unit::a_day, value = l.number(x, 1)),
        (_, CaseUnit::Session) => say!(l, designs::a_session, value = l.number(x, 1)),
    }
}

/// What would change what is said.
#[must_use]
pub fn would_change(l: &Locale, plan: &DesignPlan, report: &Report) -> String {
    let mut what = match report.standing {
        Standing::Finished => say!(l, designs::change_again),
        Standing::Stopped(..) | Standing::StrongSign(_) => say!(l, designs::change_gentler),
        Standing::NotYet(_) | Standing::Running => say!(l, designs::change_points),
    };
    if plan.question == CaseQuestion::QuieterButton && plan.measure == CaseMeasure::OwnPresses {
        what.push(' ');
        what.push_str(&say!(l, designs::change_by_hand));
    }
    what
}
