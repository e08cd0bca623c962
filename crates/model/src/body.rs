//! What happens at and around the board.

use crate::cards::Place;
use crate::event::Body;
use crate::id::*;
use crate::text::{Label, Note};
use crate::time::Moment;
use crate::units::{Grams, Kcal, Probability, Ratio, Seconds};
use serde::{Deserialize, Serialize};

const fn certain() -> Probability {
    Probability::clamped(1.0)
}

macro_rules! plain_enum {
    ($($(#[$doc:meta])* $name:ident { $($(#[$vdoc:meta])* $variant:ident => $wire:literal),+ $(,)? })+) => {$(
        $(#[$doc])*
        #[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug, Serialize, Deserialize)]
        #[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
        #[serde(rename_all = "snake_case")]
        pub enum $name { $($(#[$vdoc])* $variant),+ }

        impl $name {
            /// Every value.
            pub const ALL: &'static [Self] = &[$(Self::$variant),+];

            /// The name on the wire.
            #[must_use]
            pub const fn name(self) -> &'static str {
                match self { $(Self::$variant => $wire),+ }
            }
        }
    )+};
}

plain_enum! {
    /// What a session is for.
    Purpose {
        /// Showing words.
        Showing => "showing",
        /// Invitations.
        Inviting => "inviting",
        /// A likes test.
        Likes => "likes",
        /// A planned check of understanding.
        Probe => "probe",
    }
    /// Why a session ended.
    EndReason {
        /// The plan was done.
        Done => "done",
        /// The learner left and was let go.
        LearnerLeft => "learner_left",
        /// Body language said stop.
        StrongSign => "strong_sign",
        /// A closing word was used.
        ClosingWord => "closing_word",
        /// Something else came up.
        Interrupted => "interrupted",
    }
    /// Who pressed.
    PressedBy {
        /// The learner.
        Learner => "learner",
        /// A teacher, to show.
        Teacher => "teacher",
        /// Nobody saw.
        Unknown => "unknown",
    }
    /// Whether a press looked meant.
    Accident {
        /// It looked meant.
        No => "no",
        /// It looked like a stumble. It is answered all the same.
        Likely => "likely",
        /// Cannot tell.
        Unsure => "unsure",
    }
    /// How a press was answered.
    Answer {
        /// The thing was given.
        Given => "given",
        /// Some of it was given.
        Partly => "partly",
        /// "Not now".
        Declined => "declined",
        /// "Not now, but this".
        Alternative => "alternative",
        /// Nobody answered in time.
        Missed => "missed",
    }
    /// What the learner did after the answer.
    Then {
        /// Took what was given.
        Took => "took",
        /// Did not care for it.
        Ignored => "ignored",
        /// Went away.
        Left => "left",
        /// Pressed again.
        PressedAgain => "pressed_again",
    }
    /// How an opportunity was offered.
    InvitationKind {
        /// The thing is in view.
        OfferInView => "offer_in_view",
        /// "What would you like?", and a point to the board.
        AskAndPoint => "ask_and_point",
        /// "This or that?"
        AskBetweenTwo => "ask_between_two",
    }
    /// How strong a sign is.
    SignLevel {
        /// The learner takes part.
        Joining => "joining",
        /// A mild sign of stress.
        Mild => "mild",
        /// A strong sign of stress: end the session.
        Strong => "strong",
    }
    /// When a sign was seen.
    When {
        /// Before the session.
        Before => "before",
        /// During it.
        During => "during",
        /// After it.
        After => "after",
    }
    /// Formats of a likes test (preference assessment).
    LikesFormat {
        /// One item at a time (Pace et al. 1985).
        Single => "single",
        /// Two at a time (Fisher et al. 1992).
        Paired => "paired",
        /// All at once, without replacement (DeLeon & Iwata 1996).
        Multiple => "multiple",
        /// All at once, time with each measured (Roane et al. 1998).
        FreeAccess => "free_access",
    }
    /// Designs of a check of understanding.
    ProbeDesign {
        /// The learner is asked for the one of several things a hidden or absent thing calls for; pressed word scored.
        PressForThing => "press_for_thing",
        /// A word is played and the learner picks among things.
        PickForWord => "pick_for_word",
        /// What was pressed is delivered, or another thing; corrections scored.
        WrongDelivery => "wrong_delivery",
    }
}

/// A stretch at the board begins.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct SessionStart {
    /// Which session.
    pub session: SessionId,
    /// What it is for.
    pub purpose: Purpose,
    /// Words planned for it.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub words: Vec<WordId>,
}

/// The learner opts in.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Joining {
    /// Which session.
    pub session: SessionId,
    /// Time from the start (or the offer) to joining, where measured.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub after_s: Option<Seconds>,
}

/// The learner opts out; it is let go.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Leaving {
    /// Which session.
    pub session: SessionId,
}

/// A stretch at the board ends.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct SessionEnd {
    /// Which session.
    pub session: SessionId,
    /// Why it ended.
    pub reason: EndReason,
}

/// A button sounded.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize)]
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
    /// The session, if in one.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub session: Option<SessionId>,
}

impl Accident {
    const fn unsure() -> Self {
        Self::Unsure
    }
}

/// How a press was answered. A teacher's own press followed by its delivery is one showing.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize)]
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
    /// What the learner did then, if seen.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub then: Option<Then>,
    /// The word pressed again; only with `pressed_again`.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub then_word: Option<WordId>,
    /// The session, if in one.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub session: Option<SessionId>,
}

/// The learner looked at the board, or at one button.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize)]
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

/// Contact that did not sound the button.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Brush {
    /// The button.
    pub word: WordId,
    /// The session, if in one.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub session: Option<SessionId>,
}

/// What came of an invitation.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize)]
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
    /// The learner answered in its own way.
    WithoutButton {
        /// Seconds from the offer, where measured.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        after_s: Option<Seconds>,
    },
    /// Nothing came by the end of the wait. Never a failure to understand.
    NothingByWait,
    /// The learner left. Its "no" is data.
    Left {
        /// Seconds from the offer, where measured.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        after_s: Option<Seconds>,
    },
}

/// An offered opportunity, then a wait, then the teacher shows it and gives it.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize)]
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
    /// Whether the teacher then showed the word and gave the thing.
    #[serde(default)]
    pub shown: bool,
    /// Whether the learner took the thing when it was given: did it want it just then?
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub took: Option<bool>,
    /// The session, if in one.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub session: Option<SessionId>,
}

/// A request made without a button, answered by showing its word.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize)]
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

/// Observed body language. One sign means little; read the whole body and the situation.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize)]
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

/// Food given, as a reward or otherwise.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize)]
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

/// A likes test is set up; orders and sides follow from the seed.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct LikesTest {
    /// Which test.
    pub assessment: AssessmentId,
    /// Its format.
    pub format: LikesFormat,
    /// What is compared.
    pub rewards: Vec<RewardId>,
    /// Rounds planned.
    pub rounds: u16,
    /// Seed for orders and sides.
    pub seed: u32,
}

/// Seconds spent with one item.
#[derive(Clone, Copy, PartialEq, Debug, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Engaged {
    /// The item.
    pub reward: RewardId,
    /// Seconds with it.
    pub seconds: Seconds,
}

/// What the learner did in a trial of a likes test.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(tag = "outcome", rename_all = "snake_case", deny_unknown_fields)]
pub enum LikeOutcome {
    /// Chose (or, shown one item, approached) this.
    Chose {
        /// What.
        reward: RewardId,
    },
    /// Stayed and chose none.
    ChoseNone,
    /// Walked away.
    WalkedAway,
    /// Free access: how long with each.
    Observed {
        /// How long the items were there.
        observed_s: Seconds,
        /// Time with each.
        engaged: Vec<Engaged>,
    },
}

/// One trial of a likes test.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct LikeTrial {
    /// Which test.
    pub assessment: AssessmentId,
    /// Its format.
    pub format: LikesFormat,
    /// Round, from 1.
    pub round: u16,
    /// What was offered, from the learner's left to its right.
    pub offered: Vec<RewardId>,
    /// What it did.
    pub result: LikeOutcome,
}

/// A planned check of understanding.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct ProbePlan {
    /// Which check.
    pub probe: ProbeId,
    /// Its design.
    pub design: ProbeDesign,
    /// The words checked.
    pub words: Vec<WordId>,
    /// Choices open in each trial; chance is one over this.
    pub choices: u16,
    /// Trials planned.
    pub trials: u16,
    /// Seed of the order.
    pub seed: u32,
    /// True where the person with the learner does not know the answer.
    pub blind: bool,
}

/// What came in a trial of a check.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(tag = "outcome", rename_all = "snake_case", deny_unknown_fields)]
pub enum ProbeResponse {
    /// Chose this word (or the thing for it).
    Chose {
        /// Which.
        word: WordId,
        /// Seconds, where measured.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        after_s: Option<Seconds>,
    },
    /// Chose nothing. Kept apart, never scored as wrong.
    Nothing,
    /// Left.
    Left,
}

/// One trial of a check.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct ProbeTrial {
    /// Which check.
    pub probe: ProbeId,
    /// Trial, from 1.
    pub trial: u16,
    /// The word the trial was about.
    pub target: WordId,
    /// Whether it was in fact run blind.
    pub blind: bool,
    /// What came.
    pub response: ProbeResponse,
}

/// A remark.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Remark {
    /// The remark.
    pub text: Note,
}

/// Puts another event's content right. The first record stays in the log.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Correction {
    /// Which event.
    pub of: EventId,
    /// When it really happened, if that was wrong.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub happened_at: Option<Moment>,
    /// Which animal it really was, if that was wrong.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub learner: Option<LearnerId>,
    /// The content as it should have been.
    pub body: Box<Body>,
}

/// Takes another event back. The first record stays in the log.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Withdrawal {
    /// Which event.
    pub of: EventId,
    /// Why.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub because: Option<Note>,
}
