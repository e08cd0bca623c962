//! A change that a coach proposed, as a small trial with a drawn start: what is measured, how long, which design. All numbers are
//! proposals (ours); `docs/methods/single-case.md` says what such designs can show.

use super::trial::proposal as usual_design;
use sayso_model::{
    CaseDesign, CaseExpected, CaseMeasure, CaseQuestion, CaseUnit, Day, DesignId, DesignPlan, EventId, Label, Proposed,
    WordId,
};

/// Days of a trial that goes back and forth, in four phases of at least five: 165 orders.
const BACK_AND_FORTH: [u16; 3] = [28, 4, 5];
/// Days of one that changes once, on a drawn day, with at least four on either side: 21 days to draw from.
const ONCE: [u16; 3] = [28, 2, 4];
/// Days of one in quick turn.
const QUICK_TURN: u16 = 14;

/// A change as it may be tried.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Try {
    /// What is changed.
    pub question: CaseQuestion,
    /// The same in words.
    pub label: Option<Label>,
    /// Words measured; all where empty.
    pub words: Vec<WordId>,
    /// What is measured.
    pub measure: CaseMeasure,
    /// Which way it is expected to go.
    pub expected: CaseExpected,
}

impl Try {
    /// What of a proposal may be tried; none where it changes nothing that could be.
    #[must_use]
    pub fn of(proposes: &Proposed) -> Option<Self> {
        match proposes {
            Proposed::Change { question, label, words, measure, expected } => Some(Self {
                question: *question,
                label: label.clone(),
                words: words.clone(),
                measure: *measure,
                expected: *expected,
            }),
            // A word to add is a word: whoever wants to try another one by lot proposes that change.
            Proposed::Word { .. }
            | Proposed::Plan { .. }
            | Proposed::Stage { .. }
            | Proposed::Likes
            | Proposed::Check { .. }
            | Proposed::Note { .. }
            | Proposed::Question { .. }
            | Proposed::Meeting { .. }
            | Proposed::Programme { .. }
            | Proposed::HandOver { .. }
            | Proposed::Cover { .. }
            | Proposed::Practice { .. } => None,
        }
    }

    /// The design of a small trial of a change, with its points, phases and least points a phase. Where taking the change back
    /// would confuse (a place, a word), it comes once, on a drawn day; a multiple baseline would show more and needs several words.
    #[must_use]
    pub const fn numbers(question: CaseQuestion) -> (CaseDesign, [u16; 3]) {
        match question {
            CaseQuestion::NewPlace | CaseQuestion::AnotherWord => (CaseDesign::Reversal, ONCE),
            CaseQuestion::FasterDelivery => (usual_design(question), [QUICK_TURN, 0, 0]),
            CaseQuestion::QuieterButton | CaseQuestion::Other => (usual_design(question), BACK_AND_FORTH),
        }
    }

    /// The trial, from a day on, its order following from a seed.
    #[must_use]
    pub fn plan(&self, trial: DesignId, proposal: Option<EventId>, first: Day, seed: u32) -> DesignPlan {
        let (design, [points, phases, least]) = Self::numbers(self.question);
        DesignPlan {
            trial,
            design,
            question: self.question,
            label: self.label.clone(),
            measure: self.measure,
            expected: self.expected,
            words: self.words.clone(),
            animals: Vec::new(),
            unit: CaseUnit::Day,
            first,
            points,
            phases,
            least,
            apart: 0,
            criteria: Vec::new(),
            seed,
            proposal,
        }
    }
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;
    use crate::designs::design_of;
    use sayso_model::{Event, HomeId, Moment, Source, Zone};
    use uuid::Uuid;

    #[test]
    fn every_change_makes_a_plan_that_can_be_drawn_and_could_tell_an_effect_from_chance() {
        for question in CaseQuestion::ALL {
            let (may, _) = question.label();
            let label = may.then(|| Label::new("the mat").unwrap());
            let (measure, expected) = (CaseMeasure::OwnPresses, CaseExpected::More);
            let tries = Try { question: *question, label, words: Vec::new(), measure, expected };
            let now = Moment::clamped(1_800_000_000_000);
            let plan = tries.plan(DesignId(Uuid::nil()), None, now.day(&Zone::utc()).plus(1), 7);
            let orders = design_of(&plan).count().unwrap();
            assert!(orders > 20, "{question:?}: one in {orders} is no less than 0.05");
            assert!(design_of(&plan).draw(7).is_ok(), "{question:?}");
            let event = Event {
                id: EventId(Uuid::from_u128(0x0189_0000_0000_7000_8000_0000_0000_0001)),
                home: HomeId(Uuid::from_u128(1)),
                animal: Some(sayso_model::AnimalId(Uuid::from_u128(2))),
                person: None,
                happened_at: now,
                zone: Zone::utc(),
                recorded_at: now,
                source: Source::Tap,
                body: plan.into(),
            };
            assert!(event.check().is_ok(), "{question:?}: {:?}", event.check());
        }
    }
}
