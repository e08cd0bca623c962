//! Exactly one step for each word, by the order of precedence, with what also holds, its hint and its trend.

use crate::advice::{Act, Advice, Because, Change, NamedWord, Reason};
use crate::buttons;
use crate::case::Case;
use crate::cause::Cause;
use crate::estimate::Estimate;
use crate::hint::Hint;
pub use crate::precedence::Step;
use crate::precedence::{Asked, Board, PRECEDENCE};
use crate::stages::{Standing, joining_recent, standings};
use crate::stuck::shared_causes;
use crate::thinning::thinning;
use crate::weeks::{TREND_WEEKS, own_by_week};
use crate::welfare::resting;
use sayso_methods::learning::stage::StageRule;
use sayso_model::Stage;
use sayso_model::facts::WAIT;
use serde::Serialize;

/// A delivery should come within so many seconds of the press (common practice, no source).
pub const GIVE_WITHIN_S: f64 = 2.0;

/// A word and its one step.
#[derive(Clone, PartialEq, Debug, Serialize)]
pub struct WordStep {
    /// The word.
    pub word: NamedWord,
    /// The stage people work at.
    pub stage: Stage,
    /// What the figures point to.
    pub figures_say: Stage,
    /// What the step is about.
    pub step: Step,
    /// The step.
    pub advice: Advice,
    /// What also holds, in the order of precedence: told under why, never a second thing to do.
    pub also: Vec<Advice>,
    /// The one hint that matters now; none where the step says it all.
    pub hint: Option<Hint>,
    /// Own presses in each of the last weeks of seven days, oldest first, the last one ending today.
    pub trend: [usize; TREND_WEEKS],
    /// Whether it does not get on.
    pub stuck: bool,
    /// Whether it ends a session.
    pub closing: bool,
}

/// One step for every active word of the animal, by what it says.
#[must_use]
pub fn steps(case: &Case<'_>) -> Vec<WordStep> {
    steps_with(case, resting(case))
}

/// The steps that hold once sessions rest no longer; where they do not rest, those of [`steps`].
#[must_use]
pub fn steps_after_rest(case: &Case<'_>) -> Vec<WordStep> {
    steps_with(case, None)
}

fn steps_with(case: &Case<'_>, rest: Option<(Vec<Reason>, Change)>) -> Vec<WordStep> {
    let (joined, begun) = joining_recent(case);
    let board = Board {
        case,
        rest,
        shared: shared_causes(case),
        buttons: buttons::advice_by_word(case.story(), case.now(), case.sums()),
        demanded: thinning(case),
        joining: Because::Joining {
            share: Estimate::share(joined, begun),
            joined,
            floor: StageRule::default().joining_floor,
        },
    };
    let cards = case.words().iter().zip(standings(case));
    cards.filter_map(|(card, standing)| one(case, &Asked::new(&board, standing, card))).collect()
}

/// The first rule that holds gives the step. The last one always holds, so there is always one.
fn one(case: &Case<'_>, asked: &Asked<'_, '_>) -> Option<WordStep> {
    let mut said = PRECEDENCE.iter().flat_map(|(step, rule)| rule(asked).into_iter().map(|advice| (*step, advice)));
    let (step, advice) = said.next()?;
    // Rules of teaching say what else one would do, not what else is so.
    let also = said.filter(|(step, _)| !step.teaches()).map(|(_, advice)| advice).collect();
    let s = asked.standing;
    Some(WordStep {
        word: s.named(),
        stage: s.stage,
        figures_say: s.figures_say,
        hint: hint(s, &advice.act),
        step,
        advice,
        also,
        trend: own_by_week(case, s.word).map(Option::unwrap_or_default),
        stuck: asked.stuck(),
        closing: s.closing,
    })
}

fn hint(standing: &Standing, act: &Act) -> Option<Hint> {
    let faster = Hint::GiveFaster { seconds: standing.delay, aim_s: GIVE_WITHIN_S };
    let late = !standing.delay.too_early() && standing.delay.surely_above(GIVE_WITHIN_S);
    match act {
        Act::Mend { cause, .. } => match cause {
            Cause::TooLate => Some(faster),
            Cause::TooLittle => Some(Hint::LittleEveryDay),
            Cause::NotWanted => Some(Hint::WhenWanted),
            Cause::PeopleDiffer => Some(Hint::AnswerAlike),
            Cause::TimeOrPlace => Some(Hint::GoodHours),
            Cause::Avoided => Some(Hint::LetItCome),
            Cause::HardToMakeOut | Cause::Health | Cause::SoundsAlike => None,
        },
        Act::ShowAtEnd { .. } => Some(Hint::AtTheEnd),
        Act::Show { .. } | Act::StepBack { .. } | Act::Invite { .. } | Act::BeginInviting { .. } if late => {
            Some(faster)
        }
        inviting if inviting.invites() => Some(Hint::WaitThenShow { wait_s: WAIT.get() }),
        Act::Show { .. } | Act::StepBack { .. } => Some(Hint::ShowOnly),
        Act::Answer { .. } | Act::LeaveToAnimal { .. } => Some(Hint::AnswerEvery),
        _ => None,
    }
}

impl WordStep {
    /// Whether something is to be put right before it is taught on: told before the others, and never folded away.
    #[must_use]
    pub const fn needs_something(&self) -> bool {
        matches!(self.step, Step::Avoided | Step::SetUp | Step::Mend | Step::StepBack)
    }

    /// Whether it is shown in the next session: it is being taught, and nothing speaks against pressing its button.
    #[must_use]
    pub const fn shown(&self) -> bool {
        match &self.advice.act {
            Act::Show { .. } | Act::Invite { .. } | Act::BeginInviting { .. } | Act::StepBack { .. } => !self.closing,
            // These are mended by showing it otherwise; the others before it is shown again.
            Act::Mend { cause, .. } => {
                matches!(cause, Cause::TooLate | Cause::TooLittle | Cause::TimeOrPlace | Cause::PeopleDiffer)
                    && !self.closing
            }
            _ => false,
        }
    }
}
