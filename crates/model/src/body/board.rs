//! At the board: presses and their answers, invitations, signs, food.

use super::drawn::Call;
use super::enums::*;
use crate::cards::Place;
use crate::event::{About, Content, Does};
use crate::fault::Fault;
use crate::findings::Findings;
use crate::id::*;
use crate::text::{Label, Note};
use crate::units::{Grams, Kcal, Probability, Ratio, Seconds};
use borsh::{BorshDeserialize, BorshSerialize};
use serde::{Deserialize, Serialize};

const fn certain() -> Probability {
    Probability::clamped(1.0)
}

/// A button sounded.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, BorshSerialize, BorshDeserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Press {
    /// What it said.
    pub word: WordId,
    /// Who pressed.
    pub by: PressedBy,
    /// How sure it is that this word sounded: 1 for a tap, less for a sound.
    #[serde(default = "certain")]
    pub certainty: Probability,
    /// Whether it looked meant.
    #[serde(default = "Accident::unsure")]
    pub accident: Accident,
    /// Where on the board, if known.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub place: Option<Place>,
    /// Playback speed, where heard.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub speed: Option<Ratio>,
    /// What it was heard in, so that a press heard by two devices counts once.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub stream: Option<StreamId>,
    /// The session, if in one.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub session: Option<SessionId>,
}

impl Content for Press {
    fn about(&self) -> About<'_> {
        About {
            session: self.session,
            word: Some(self.word),
            needs_animal: false,
            as_recorded: false,
            does: Does::Tells,
        }
    }
    fn check(&self, _: &mut Findings) {}
}

/// How a press was answered. A person's own press followed by its delivery is one showing.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, BorshSerialize, BorshDeserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Delivery {
    /// The press it answers, if that was recorded.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub answers: Option<EventId>,
    /// The word that was answered.
    pub word: WordId,
    /// How.
    pub answer: Answer,
    /// What was offered instead; only with `alternative`.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub alternative: Option<RewardId>,
    /// Time from press to delivery, where measured.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub delay_s: Option<Seconds>,
    /// What the animal did then, if seen.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub then: Option<Then>,
    /// The word pressed again; only with `pressed_again`.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub then_word: Option<WordId>,
    /// The session, if in one.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub session: Option<SessionId>,
}

impl Content for Delivery {
    fn about(&self) -> About<'_> {
        About {
            session: self.session,
            word: Some(self.word),
            needs_animal: false,
            as_recorded: false,
            does: Does::Tells,
        }
    }
    fn check(&self, found: &mut Findings) {
        if self.alternative.is_some() && self.answer != Answer::Alternative {
            found.wrong("alternative", Fault::NotAlternative);
        }
        if self.then_word.is_some() && self.then != Some(Then::PressedAgain) {
            found.wrong("then_word", Fault::NotPressedAgain);
        }
    }
}

/// The animal looked at the board, or at one button.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, BorshSerialize, BorshDeserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Look {
    /// The button, if one.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub word: Option<WordId>,
    /// The session, if in one.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub session: Option<SessionId>,
}

impl Content for Look {
    fn about(&self) -> About<'_> {
        About { session: self.session, word: self.word, needs_animal: false, as_recorded: false, does: Does::Tells }
    }
    fn check(&self, _: &mut Findings) {}
}

/// Contact that did not sound the button.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, BorshSerialize, BorshDeserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Brush {
    /// The button.
    pub word: WordId,
    /// The session, if in one.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub session: Option<SessionId>,
}

impl Content for Brush {
    fn about(&self) -> About<'_> {
        About {
            session: self.session,
            word: Some(self.word),
            needs_animal: false,
            as_recorded: false,
            does: Does::Tells,
        }
    }
    fn check(&self, _: &mut Findings) {}
}

/// What came of an invitation.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, BorshSerialize, BorshDeserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(tag = "outcome", rename_all = "snake_case", deny_unknown_fields)]
pub enum InvitationResult {
    /// A button was pressed.
    Pressed {
        /// Which.
        word: WordId,
        /// Seconds from the offer.
        after_s: Seconds,
    },
    /// The animal answered in its own way.
    WithoutButton {
        /// Seconds from the offer, where measured.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        after_s: Option<Seconds>,
    },
    /// Nothing came by the end of the wait. Never a failure to understand.
    NothingByWait,
    /// The animal left. Its "no" is data.
    Left {
        /// Seconds from the offer, where measured.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        after_s: Option<Seconds>,
    },
}

/// An offered opportunity, then a wait, then the person shows it and gives it.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, BorshSerialize, BorshDeserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Invitation {
    /// The word invited.
    pub word: WordId,
    /// The other word; only with `ask_between_two`.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub other: Option<WordId>,
    /// How it was offered.
    pub way: InvitationKind,
    /// The wait that was used.
    pub wait_s: Seconds,
    /// What came of it.
    pub result: InvitationResult,
    /// Whether the person then showed the word and gave the thing.
    #[serde(default)]
    pub shown: bool,
    /// Whether the animal took the thing when it was given: did it want it just then?
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub took: Option<bool>,
    /// The session, if in one.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub session: Option<SessionId>,
    /// Which call of a round it was, where the word was drawn.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub call: Option<Call>,
}

impl Content for Invitation {
    fn about(&self) -> About<'_> {
        About {
            session: self.session,
            word: Some(self.word),
            needs_animal: true,
            as_recorded: self.call.is_some(),
            does: Does::Tells,
        }
    }
    fn check(&self, found: &mut Findings) {
        if self.other.is_some() != (self.way == InvitationKind::AskBetweenTwo) {
            found.wrong("other", Fault::NotBetweenTwo);
        }
        if self.other == Some(self.word) {
            found.wrong("other", Fault::SameWord);
        }
        if !(0.5..=120.0).contains(&self.wait_s.get()) {
            found.wrong("wait_s", Fault::Seconds { low: 0.5, high: 120.0, found: self.wait_s.get() });
        }
        if let InvitationResult::Pressed { after_s, .. } = self.result
            && after_s.get() > self.wait_s.get()
        {
            found.wrong("result.after_s", Fault::AfterTheWait { wait_s: self.wait_s.get() });
        }
    }
}

/// A request made without a button, answered by showing its word.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, BorshSerialize, BorshDeserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Catch {
    /// The word it asked for.
    pub word: WordId,
    /// How it asked.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub how: Option<Label>,
    /// Whether the word was then shown.
    #[serde(default)]
    pub shown: bool,
    /// The session, if in one.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub session: Option<SessionId>,
}

impl Content for Catch {
    fn about(&self) -> About<'_> {
        About {
            session: self.session,
            word: Some(self.word),
            needs_animal: false,
            as_recorded: false,
            does: Does::Tells,
        }
    }
    fn check(&self, _: &mut Findings) {}
}

/// Observed body language. One sign means little; read the whole body and the situation.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, BorshSerialize, BorshDeserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Sign {
    /// What was seen, in the words of the facts or one's own.
    pub sign: Note,
    /// How strong.
    pub level: SignLevel,
    /// When.
    pub when: When,
    /// The session, if in one.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub session: Option<SessionId>,
}

impl Content for Sign {
    fn about(&self) -> About<'_> {
        About { session: self.session, word: None, needs_animal: false, as_recorded: false, does: Does::Tells }
    }
    fn check(&self, _: &mut Findings) {}
}

/// Food given, as a reward or otherwise.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, BorshSerialize, BorshDeserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Feed {
    /// Which reward, if it was one.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub reward: Option<RewardId>,
    /// What it was, if it was no reward on a card.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub food: Option<Label>,
    /// Pieces.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub pieces: Option<u16>,
    /// Grams.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub grams: Option<Grams>,
    /// Its energy.
    pub kcal: Kcal,
    /// The session, if in one.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub session: Option<SessionId>,
}

impl Content for Feed {
    fn about(&self) -> About<'_> {
        About { session: self.session, word: None, needs_animal: true, as_recorded: false, does: Does::Tells }
    }
    fn check(&self, found: &mut Findings) {
        if self.reward.is_none() && self.food.is_none() {
            found.wrong("food", Fault::NoFood);
        }
    }
}
