//! One step a word: the order in which rules are asked, and what each of them says. See
//! `docs/decisions/one-step-a-word.md`.

use crate::advice::{Act, Advice, Because, Caution, Change, Lack, Reason, Sure, Topic};
use crate::case::Case;
use crate::cause::{Bearing, Cause, Weighed};
use crate::causes::too_like;
use crate::stages::Standing;
use crate::stuck::{differential_with, is_stuck, when_wanted};
use sayso_model::facts::WAIT;
use sayso_model::{Stage, WordCard};
use serde::Serialize;
use std::cell::OnceCell;

/// What a word's step is about, first in the order of precedence to last.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Step {
    /// Nothing is taught: its wellbeing first.
    Rest,
    /// It keeps away from the button: that is put right before anything is done with it.
    Avoided,
    /// Something to set up first.
    SetUp,
    /// What holds it up.
    Mend,
    /// Back a stage.
    StepBack,
    /// Asked for more than can be given.
    Signal,
    /// Inviting.
    Invite,
    /// Showing.
    Show,
    /// Answering.
    Answer,
}

impl Step {
    /// Whether it is one of teaching, of which a word has one that holds at any time.
    #[must_use]
    pub const fn teaches(self) -> bool {
        matches!(self, Self::Invite | Self::Show | Self::Answer)
    }
}

/// A rule: what it advises for a word, nothing where it does not hold, the best supported first.
pub(crate) type Rule = fn(&Asked<'_, '_>) -> Vec<Advice>;

/// The order of precedence. The first rule that holds gives the word's step; what the others say is told under why. The last
/// one always holds.
pub(crate) const PRECEDENCE: [(Step, Rule); 9] = [
    (Step::Rest, rest),
    (Step::Avoided, avoided),
    (Step::SetUp, set_up),
    (Step::Mend, mend),
    (Step::StepBack, step_back),
    (Step::Signal, signal),
    (Step::Invite, invite),
    (Step::Show, show),
    (Step::Answer, answer),
];

/// What holds for all words.
pub(crate) struct Board<'c, 'a> {
    pub(crate) case: &'c Case<'a>,
    /// Why sessions rest today and what would change it; none where they do not.
    pub(crate) rest: Option<(Vec<Reason>, Change)>,
    /// Causes that hold for the whole board.
    pub(crate) shared: [Weighed; 2],
    /// Advice on buttons, word by word.
    pub(crate) buttons: Vec<Advice>,
    /// Advice on words asked for more than can be given.
    pub(crate) demanded: Vec<Advice>,
    /// How often it joins.
    pub(crate) joining: Because,
}

/// A word, as a rule is asked about it.
pub(crate) struct Asked<'c, 'a> {
    pub(crate) board: &'c Board<'c, 'a>,
    pub(crate) standing: &'c Standing,
    pub(crate) card: &'c WordCard,
    causes: OnceCell<Vec<Weighed>>,
    stuck: OnceCell<bool>,
}

impl<'c, 'a> Asked<'c, 'a> {
    pub(crate) const fn new(board: &'c Board<'c, 'a>, standing: &'c Standing, card: &'c WordCard) -> Self {
        Self { board, standing, card, causes: OnceCell::new(), stuck: OnceCell::new() }
    }

    fn causes(&self) -> &[Weighed] {
        self.causes.get_or_init(|| differential_with(self.board.case, self.standing.word, &self.board.shared))
    }

    pub(crate) fn stuck(&self) -> bool {
        *self.stuck.get_or_init(|| is_stuck(self.board.case, self.standing))
    }

    /// Whether it is being shown or invited as a wish, where a cause can hold it up.
    fn being_taught(&self) -> bool {
        let s = self.standing;
        !s.closing && s.stage != Stage::Converse && s.figures_say != Stage::Converse
    }

    fn advice(&self, topic: Topic, act: Act, because: Vec<Reason>, sure: Sure, change: Change) -> Advice {
        Advice::new(topic, act, because, sure, change).about(self.standing.word)
    }

    /// Advice on the stage, with the figures it rests on.
    fn of_stage(&self, topic: Topic, act: Act) -> Vec<Advice> {
        let s = self.standing;
        let mut because: Vec<Reason> = s.because.iter().cloned().map(Reason::from).collect();
        if s.closing {
            return vec![self.advice(topic, act, because, Sure::Very, Change::EndsNoSession)];
        }
        if !s.because.iter().any(|b| matches!(b, Because::Joining { .. })) {
            because.push(self.board.joining.clone().into());
        }
        let sure = if s.response.n >= 10 { Sure::Fairly } else { Sure::Little };
        let mut advice = self.advice(topic, act, because, sure, Change::CalmStart);
        advice.would_change.clone_from(&s.would_change);
        vec![advice]
    }
}

fn rest(asked: &Asked<'_, '_>) -> Vec<Advice> {
    let Some((because, change)) = asked.board.rest.clone() else {
        return Vec::new();
    };
    let act = Act::Rest { word: asked.standing.named() };
    vec![asked.advice(Topic::Welfare, act, because, Sure::Very, change)]
}

/// A cause as advice, with what came of its invitations.
fn mending(asked: &Asked<'_, '_>, weighed: &Weighed) -> Advice {
    let act = Act::Mend { word: asked.standing.named(), cause: weighed.cause };
    let mut because: Vec<Reason> = weighed.evidence.iter().cloned().map(Reason::from).collect();
    if asked.stuck() {
        because.push(when_wanted(asked.board.case, asked.standing.word).into());
    }
    let sure = if weighed.bearing == Bearing::For { Sure::Fairly } else { Sure::Little };
    asked.advice(Topic::Stuck, act, because, sure, Change::MorePresses { days: 14 }).caution(Caution::NotPressing)
}

/// A word that was never shown and sounds like another: until it is shown, a different one costs nothing.
fn another_word(asked: &Asked<'_, '_>) -> Option<Advice> {
    let s = asked.standing;
    if s.showings > 0 || s.stage > Stage::Show {
        return None;
    }
    let because = vec![too_like(asked.board.case, asked.card)?.into()];
    let act = Act::Mend { word: s.named(), cause: Cause::SoundsAlike };
    Some(asked.advice(Topic::SetUp, act, because, Sure::Little, Change::SoundsApart))
}

/// A button that is kept away from, where nothing else explains that it is not pressed: a thing that comes late, is not wanted
/// or is answered otherwise by everyone leaves a button alone as well.
fn avoided(asked: &Asked<'_, '_>) -> Vec<Advice> {
    if !asked.being_taught() || !asked.stuck() {
        return Vec::new();
    }
    let shown = |cause| asked.causes().iter().find(|w| w.cause == cause && w.bearing == Bearing::For);
    let explained = [Cause::TooLate, Cause::NotWanted, Cause::PeopleDiffer].into_iter().any(|c| shown(c).is_some());
    shown(Cause::Avoided).filter(|_| !explained).map(|w| mending(asked, w)).into_iter().collect()
}

fn set_up(asked: &Asked<'_, '_>) -> Vec<Advice> {
    let card = asked.card;
    let mut lacks = Vec::new();
    if card.reward.is_none() && !card.closing {
        lacks.push(Lack::Reward);
    }
    if card.answer.is_none() {
        lacks.push(Lack::Answer);
    }
    // "Not now" is needed once it asks by itself.
    if card.not_now.is_none() && asked.standing.stage == Stage::Converse && !card.closing {
        lacks.push(Lack::NotNow);
    }
    let mut found = Vec::new();
    if !lacks.is_empty() {
        let because = vec![Because::CardLacks { lacks: lacks.clone() }.into()];
        let act = Act::FillCard { word: asked.standing.named(), lacks };
        found.push(asked.advice(Topic::SetUp, act, because, Sure::Very, Change::CardFilled));
    }
    found.extend(asked.board.buttons.iter().filter(|a| a.word == Some(card.word)).cloned());
    found
}

/// What holds a word up: causes the records speak for; where it is stuck, also the best supported of those they point to.
/// What holds for the whole board, or is a matter of more of the same, is only the step of a word that is stuck.
fn mend(asked: &Asked<'_, '_>) -> Vec<Advice> {
    if !asked.being_taught() {
        return Vec::new();
    }
    let only_stuck = |cause| matches!(cause, Cause::TimeOrPlace | Cause::Health | Cause::TooLittle | Cause::Avoided);
    let (stuck, is_avoided) = (asked.stuck(), !avoided(asked).is_empty());
    let mut found: Vec<Advice> = asked
        .causes()
        .iter()
        .filter(|w| w.cause != Cause::Avoided || !is_avoided)
        .filter(|w| if stuck { w.suspected() } else { w.bearing == Bearing::For && !only_stuck(w.cause) })
        .map(|w| mending(asked, w))
        .collect();
    found.splice(0..0, another_word(asked));
    // Whatever else the records point to: a word nobody can make out is soon found out.
    let listened = |a: &Advice| matches!(a.act, Act::Mend { cause: Cause::HardToMakeOut, .. });
    if stuck && !found.iter().any(listened) {
        let listen = asked.causes().iter().find(|w| w.cause == Cause::HardToMakeOut);
        // Right after the step, whichever rule gives that.
        let at = if is_avoided { 0 } else { found.len().min(1) };
        listen.into_iter().for_each(|w| found.insert(at, mending(asked, w)));
    }
    found
}

fn step_back(asked: &Asked<'_, '_>) -> Vec<Advice> {
    let s = asked.standing;
    // Below showing there is nothing to go back to but what is to be set up.
    let to = s.figures_say.max(Stage::Show);
    // A word that ends sessions is shown at their end, whatever stage people set.
    if to >= s.stage || s.closing {
        return Vec::new();
    }
    asked.of_stage(Topic::Stuck, Act::StepBack { word: s.named(), to })
}

fn signal(asked: &Asked<'_, '_>) -> Vec<Advice> {
    asked.board.demanded.iter().filter(|a| a.word == Some(asked.standing.word)).cloned().collect()
}

fn invite(asked: &Asked<'_, '_>) -> Vec<Advice> {
    let (s, word) = (asked.standing, asked.standing.named());
    match (s.figures_say, s.stage) {
        (Stage::Invite, Stage::Invite) => asked.of_stage(Topic::Invite, Act::Invite { word }),
        (Stage::Invite, Stage::Prepare | Stage::Show) => {
            asked.of_stage(Topic::Invite, Act::BeginInviting { word, wait_s: WAIT.get() })
        }
        _ => Vec::new(),
    }
}

fn show(asked: &Asked<'_, '_>) -> Vec<Advice> {
    let (s, word) = (asked.standing, asked.standing.named());
    if s.stage == Stage::Converse || s.figures_say == Stage::Converse {
        return Vec::new();
    }
    let act = if s.closing { Act::ShowAtEnd { word } } else { Act::Show { word } };
    asked.of_stage(Topic::Show, act)
}

fn answer(asked: &Asked<'_, '_>) -> Vec<Advice> {
    let (s, word) = (asked.standing, asked.standing.named());
    let act = if s.stage == Stage::Converse { Act::Answer { word } } else { Act::LeaveToAnimal { word } };
    asked.of_stage(Topic::Converse, act)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_table_is_in_the_order_of_the_steps_and_holds_each_once() {
        assert!(PRECEDENCE.windows(2).all(|pair| pair[0].0 < pair[1].0));
        assert_eq!(PRECEDENCE.first().map(|p| p.0), Some(Step::Rest), "welfare outranks everything");
        assert_eq!(PRECEDENCE.last().map(|p| p.0), Some(Step::Answer), "there is always a step");
    }
}
