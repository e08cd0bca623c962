//! How what was agreed for a word stands to its step: a plan may teach otherwise; what comes before teaching it does not move.

use sayso_advisor::advice::{Act, Because};
use sayso_advisor::agreed::{Stands, stands};
use sayso_advisor::steps::{Step, WordStep};
use sayso_advisor::stuck::Cause;
use sayso_advisor::{Advice, Change, NamedWord, Reason, Sure, Topic};
use sayso_model::{PlanLine, PlanWay, Stage, WordId};
use uuid::Uuid;

const BALL: WordId = WordId(Uuid::nil());

fn word() -> NamedWord {
    NamedWord { word: BALL, says: "ball".to_owned() }
}

fn of(step: Step, act: Act) -> WordStep {
    WordStep {
        word: word(),
        stage: Stage::Show,
        figures_say: Stage::Show,
        step,
        advice: Advice::new(Topic::Show, act, Vec::new(), Sure::Fairly, Change::WordMade),
        also: Vec::new(),
        hint: None,
        trend: Default::default(),
        stuck: false,
        closing: false,
    }
}

fn plan(way: Option<PlanWay>) -> PlanLine {
    PlanLine { word: BALL, way, minutes: 3, times: 3 }
}

const SHOW: Option<PlanWay> = Some(PlanWay::Show);
const POINT: Option<PlanWay> = Some(PlanWay::AskAndPoint);
const SAME: Stands = Stands::Instead { differs: false };
const OTHER: Stands = Stands::Instead { differs: true };

#[test]
fn a_word_that_is_taught_is_taught_as_agreed() {
    let told = |step, act, way| stands(&of(step, act), &plan(way));
    let begin = || Act::BeginInviting { word: word(), wait_s: 10.0 };
    assert_eq!(told(Step::Show, Act::Show { word: word() }, SHOW), SAME);
    assert_eq!(told(Step::Show, Act::Show { word: word() }, POINT), OTHER);
    assert_eq!(told(Step::Invite, begin(), SHOW), OTHER);
    assert_eq!(told(Step::Invite, Act::Invite { word: word() }, POINT), SAME, "how, too");
    assert_eq!(told(Step::Answer, Act::LeaveToAnimal { word: word() }, SHOW), OTHER);
    assert_eq!(told(Step::Invite, begin(), None), Stands::Beside, "as it fits");
}

#[test]
fn a_step_back_stays_and_an_invitation_waits_for_it() {
    let back = |to| of(Step::StepBack, Act::StepBack { word: word(), to });
    assert_eq!(stands(&back(Stage::Show), &plan(POINT)), Stands::Waits);
    assert_eq!(stands(&back(Stage::Show), &plan(SHOW)), Stands::Beside, "both show: that it goes back is still told");
    assert_eq!(stands(&back(Stage::Invite), &plan(POINT)), Stands::Beside);
    assert_eq!(stands(&back(Stage::Invite), &plan(SHOW)), OTHER, "further back than the step goes");
    let mut strained = back(Stage::Invite);
    strained.advice.because = vec![Reason { fact: Because::Strain, events: Vec::new() }];
    assert_eq!(stands(&strained, &plan(SHOW)), Stands::Beside);
}

#[test]
fn what_comes_before_teaching_comes_before_a_plan() {
    let mend = |step, cause| of(step, Act::Mend { word: word(), cause });
    for way in [None, SHOW, POINT] {
        assert_eq!(stands(&of(Step::Rest, Act::Rest { word: word() }), &plan(way)), Stands::Waits);
        assert_eq!(
            stands(&mend(Step::Avoided, Cause::Avoided), &plan(way)),
            Stands::Waits,
            "showing it more makes it worse"
        );
        let fill = Act::FillCard { word: word(), lacks: Vec::new() };
        assert_eq!(stands(&of(Step::SetUp, fill), &plan(way)), Stands::Waits);
    }
    // What is mended by showing it otherwise is shown, and not invited.
    assert_eq!(stands(&mend(Step::Mend, Cause::TooLate), &plan(SHOW)), Stands::Beside);
    assert_eq!(stands(&mend(Step::Mend, Cause::TooLate), &plan(POINT)), Stands::Waits);
}

#[test]
fn nobody_ever_waits_for_a_word_that_ends_sessions() {
    let mut ends = of(Step::Show, Act::ShowAtEnd { word: word() });
    ends.closing = true;
    for way in [PlanWay::OfferInView, PlanWay::AskAndPoint, PlanWay::AskBetweenTwo] {
        assert_eq!(stands(&ends, &plan(Some(way))), Stands::Never);
    }
    for way in [SHOW, None] {
        assert_eq!(stands(&ends, &plan(way)), Stands::Beside, "shown at the end, as the step says");
    }
    // A rest ends; that nobody waits for it does not.
    let mut rests = of(Step::Rest, Act::Rest { word: word() });
    rests.closing = true;
    assert_eq!(stands(&rests, &plan(POINT)), Stands::Never);
    assert_eq!(stands(&rests, &plan(SHOW)), Stands::Waits);
}
