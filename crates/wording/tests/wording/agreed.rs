//! The step of a word as it was agreed: in which way, and where it is something else than what would be done without.

use sayso_advisor::advice::{Act, Because};
use sayso_advisor::stuck::Cause;
use sayso_advisor::{Advice, Change, NamedWord, Reason, Sure, Topic};
use sayso_model::{PlanLine, PlanWay, Stage, WordId};
use sayso_wording::Locale;
use sayso_wording::advice::as_agreed;
use uuid::Uuid;

fn advice(act: Act, because: Vec<Because>) -> Advice {
    let because = because.into_iter().map(|fact| Reason { fact, events: Vec::new() }).collect();
    Advice::new(Topic::Show, act, because, Sure::Fairly, Change::WordMade)
}

#[test]
fn what_was_agreed_is_the_step_of_a_word_that_is_taught_and_how_it_differs_is_known() {
    let id = WordId(Uuid::nil());
    let word = || NamedWord { word: id, says: "ball".to_owned() };
    let plan = |way| PlanLine { word: id, way, minutes: 3, times: 3 };
    let l = &Locale::ENGLISH;
    let of = |act: Act, way| as_agreed(l, &advice(act, Vec::new()), &plan(Some(way)));
    let told = |step: &str, differs| Some((step.to_owned(), differs));
    let begin = || Act::BeginInviting { word: word(), wait_s: 10.0 };
    let back = |to| Act::StepBack { word: word(), to };
    let point = "Invite, ask and point";
    assert_eq!(of(Act::Show { word: word() }, PlanWay::Show), told("Show it", false));
    assert_eq!(of(Act::Show { word: word() }, PlanWay::AskAndPoint), told(point, true));
    assert_eq!(of(begin(), PlanWay::Show), told("Show it", true));
    assert_eq!(of(Act::Invite { word: word() }, PlanWay::AskAndPoint), told(point, false), "how, too");
    assert_eq!(of(back(Stage::Show), PlanWay::AskAndPoint), told(point, true));
    assert_eq!(of(back(Stage::Invite), PlanWay::Show), told("Show it", true));
    assert_eq!(of(back(Stage::Show), PlanWay::Show), None, "both show: that it goes back is still told");
    assert_eq!(of(Act::LeaveToAnimal { word: word() }, PlanWay::Show), told("Show it", true));
    // What comes first stays, and so does a step back for stress.
    assert_eq!(of(Act::Mend { word: word(), cause: Cause::Avoided }, PlanWay::Show), None);
    assert_eq!(of(Act::Rest { word: word() }, PlanWay::Show), None);
    let strained = advice(back(Stage::Show), vec![Because::Strain]);
    assert_eq!(as_agreed(l, &strained, &plan(Some(PlanWay::AskAndPoint))), None);
    assert_eq!(as_agreed(l, &advice(begin(), Vec::new()), &plan(None)), None, "as it fits");
}
