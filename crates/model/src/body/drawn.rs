//! What the notebook draws by chance, so that no person's choice decides what is asked for or given: rounds of invitations,
//! and now and then another thing than the one pressed for. How each draw follows from ids: [`crate::draw`].

use crate::event::{About, Content, Does};
use crate::fault::Fault;
use crate::findings::Findings;
use crate::id::*;
use borsh::{BorshDeserialize, BorshSerialize};
use serde::{Deserialize, Serialize};
use std::collections::BTreeSet;

/// A round of invitations whose words the notebook draws. Once begun it counts, whatever is recorded of it.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, BorshSerialize, BorshDeserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Round {
    /// Which round.
    pub round: RoundId,
    /// Words whose things are to hand, settled before anything is drawn; 2 to 60.
    pub words: Vec<WordId>,
    /// Words called for in it, 2 to 12; the usual number is [`crate::draw::CALLS`].
    pub calls: u16,
    /// The session, if in one.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub session: Option<SessionId>,
}

impl Content for Round {
    fn about(&self) -> About<'_> {
        About { session: self.session, word: None, needs_animal: true, as_recorded: true, does: Does::Tells }
    }
    fn check(&self, found: &mut Findings) {
        taking_part(&self.words, found);
        if !(2..=12).contains(&self.calls) {
            found.wrong("calls", Fault::range(2_u16, 12_u16, self.calls));
        }
    }
}

/// Which call of a round an invitation was.
#[derive(
    Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug, Serialize, Deserialize, BorshSerialize, BorshDeserialize,
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Call {
    /// Which round.
    pub round: RoundId,
    /// Which call of it, from 1.
    pub number: u16,
}

/// A time, agreed by the household, in which now and then the thing of another word is drawn to be given. It begins when
/// it happened and ends after its days, or when it is stopped.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, BorshSerialize, BorshDeserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct SwapPlan {
    /// Which time.
    pub swap: SwapId,
    /// Words taking part; 2 to 60.
    pub words: Vec<WordId>,
    /// One answer in this many brings the partner's thing; 4 to 50.
    pub one_in: u16,
    /// Days it lasts, 4 to 366.
    pub days: u16,
}

impl Content for SwapPlan {
    fn about(&self) -> About<'_> {
        About { session: None, word: None, needs_animal: true, as_recorded: true, does: Does::Tells }
    }
    fn check(&self, found: &mut Findings) {
        taking_part(&self.words, found);
        if !(4..=50).contains(&self.one_in) {
            found.wrong("one_in", Fault::SwapsOneIn { low: 4, high: 50, found: self.one_in });
        }
        if !(4..=366).contains(&self.days) {
            found.wrong("days", Fault::range(4_u16, 366_u16, self.days));
        }
    }
}

/// What was drawn for one press: written down before it is shown to anybody, once a person is going to give something.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, BorshSerialize, BorshDeserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct SwapDraw {
    /// Which time.
    pub swap: SwapId,
    /// The press to be answered.
    pub press: EventId,
    /// The word that was pressed.
    pub word: WordId,
    /// The word whose thing is to be given.
    pub give: WordId,
}

impl Content for SwapDraw {
    fn about(&self) -> About<'_> {
        About { session: None, word: Some(self.word), needs_animal: true, as_recorded: true, does: Does::Tells }
    }
    fn check(&self, _: &mut Findings) {}
}

/// Why a time of swaps was stopped.
#[derive(
    Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug, Serialize, Deserialize, BorshSerialize, BorshDeserialize,
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum SwapEnd {
    /// The household does not want it any more.
    #[serde(alias = "household")]
    Home,
    /// Signs of stress.
    Signs,
}

/// A time of swaps ends before its days are over.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, BorshSerialize, BorshDeserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct SwapStop {
    /// Which time.
    pub swap: SwapId,
    /// Why.
    pub reason: SwapEnd,
}

impl Content for SwapStop {
    fn about(&self) -> About<'_> {
        About { session: None, word: None, needs_animal: true, as_recorded: true, does: Does::Tells }
    }
    fn check(&self, _: &mut Findings) {}
}

fn taking_part(words: &[WordId], found: &mut Findings) {
    if !(2..=60).contains(&words.len()) {
        found.wrong("words", Fault::HowMany { low: 2, high: 60, found: words.len() });
    }
    if words.iter().collect::<BTreeSet<_>>().len() != words.len() {
        found.wrong("words", Fault::Twice);
    }
}
