//! The event: one fact, seen by one device, never edited.

use crate::body::*;
use crate::cards::*;
use crate::findings::Findings;
use crate::id::{AnimalId, EventId, HomeId, PersonId, SessionId, WordId};
use crate::time::{Moment, Zone};
use borsh::{BorshDeserialize, BorshSerialize};
use serde::{Deserialize, Serialize};
use uuid::Uuid;

/// How a fact came into the log.
#[derive(
    Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug, Serialize, Deserialize, BorshSerialize, BorshDeserialize,
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum Source {
    /// A person tapped or typed it.
    Tap,
    /// Recognised by sound.
    Heard,
    /// Sent by a device.
    Device,
    /// Read from a file.
    Import,
}

/// One fact in the append-only log.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Event {
    /// Made by the device that saw the fact (UUID version 7).
    pub id: EventId,
    /// Whose notebook.
    #[serde(alias = "household")]
    pub home: HomeId,
    /// Which animal, where the fact is about one and it is known.
    #[serde(default, skip_serializing_if = "Option::is_none", alias = "learner")]
    pub animal: Option<AnimalId>,
    /// Which person, where there was one and it is known.
    #[serde(default, skip_serializing_if = "Option::is_none", alias = "teacher")]
    pub person: Option<PersonId>,
    /// When it happened.
    pub happened_at: Moment,
    /// The zone of the device then.
    pub zone: Zone,
    /// When it was written down.
    pub recorded_at: Moment,
    /// How it came in.
    pub source: Source,
    /// What happened.
    pub body: Body,
}

/// How a body holds its content: what is large and rare stands aside, so that events are small.
macro_rules! held {
    ($name:ident) => { $name };
    ($name:ident boxed) => { Box<$name> };
}

macro_rules! bodies {
    ($($(#[$doc:meta])* $name:ident $($boxed:ident)? => $kind:literal $(: $earlier:literal)?),+ $(,)?) => {
        /// What happened. On the wire an object whose `kind` names the variant.
        #[derive(Clone, PartialEq, Debug, Serialize, Deserialize, BorshSerialize, BorshDeserialize)]
        #[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
        #[serde(tag = "kind", rename_all = "snake_case")]
        pub enum Body {
            $($(#[$doc])* $(#[serde(alias = $earlier)])? $name(held!($name $($boxed)?)),)+
        }

        /// The kinds of body.
        #[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
        pub enum Kind {
            $($(#[$doc])* $name,)+
        }

        impl Kind {
            /// Every kind.
            pub const ALL: &'static [Self] = &[$(Self::$name,)+];

            /// The name on the wire.
            #[must_use]
            pub const fn name(self) -> &'static str {
                match self { $(Self::$name => $kind,)+ }
            }

            /// The kind of that name, or of the name that earlier versions gave it.
            #[must_use]
            pub fn named(name: &str) -> Option<Self> {
                match name { $($kind $(| $earlier)? => Some(Self::$name),)+ _ => None }
            }

            /// The name that earlier versions gave it, where that was another.
            #[must_use]
            pub const fn earlier_name(self) -> Option<&'static str> {
                match self { $($(Self::$name => Some($earlier),)?)+ _ => None }
            }
        }

        impl Body {
            /// Which kind this is.
            #[must_use]
            pub const fn kind(&self) -> Kind {
                match self { $(Self::$name(_) => Kind::$name,)+ }
            }

            /// What the house must know of it.
            #[must_use]
            pub fn about(&self) -> About<'_> {
                match self { $(Self::$name(part) => part.about(),)+ }
            }

            pub(crate) fn check(&self, found: &mut Findings) {
                match self { $(Self::$name(part) => part.check(found),)+ }
            }
        }

        $(impl Part for $name {
            const KIND: Kind = Kind::$name;
            fn of(body: &Body) -> Option<&Self> {
                match body { Body::$name(part) => Some(part), _ => None }
            }
        }
        impl From<$name> for Body {
            fn from(part: $name) -> Self { Self::$name(part.into()) }
        })+
    };
}

/// What the house must know of an event of any kind.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct About<'a> {
    /// The session it belongs to, if it names one.
    pub session: Option<SessionId>,
    /// The word it is about, if it names one.
    pub word: Option<WordId>,
    /// Whether it must name its animal. Presses, signs and the like may be seen without knowing which animal it was.
    pub needs_animal: bool,
    /// Whether it is also read as it was first recorded, when it was put right or taken back since: what was drawn, and
    /// what was answered to it, counts once and for all.
    pub as_recorded: bool,
    /// What it does to what was known before.
    pub does: Does<'a>,
}

/// What an event does to what was known before.
#[derive(Clone, Copy, PartialEq, Debug)]
pub enum Does<'a> {
    /// Tells a fact, which stands beside all others.
    Tells,
    /// Sets what this thing is, or what the only one of its kind is: a card. The newest counts.
    Sets(Option<Uuid>),
    /// Puts another event right.
    Corrects(&'a Correction),
    /// Takes another event back.
    Withdraws(EventId),
}

/// What each kind says of itself. Nothing here has a default, so that a kind that leaves something out does not compile.
pub trait Content {
    /// What the house must know of it.
    fn about(&self) -> About<'_>;
    /// Notes what is wrong across its fields. Ranges of single fields are held by their types.
    fn check(&self, found: &mut Findings);
}

/// A body of one kind.
pub trait Part: Content + Sized {
    /// Its kind.
    const KIND: Kind;
    /// This kind's content, if `body` is of this kind.
    fn of(body: &Body) -> Option<&Self>;
}

bodies! {
    /// The household's name and zone.
    HomeCard => "home_card": "household_card",
    /// A person.
    PersonCard => "person_card": "teacher_card",
    /// An animal.
    AnimalCard boxed => "animal_card": "learner_card",
    /// Something an animal may want.
    RewardCard boxed => "reward_card",
    /// What a button says and means, and how it is answered.
    WordCard boxed => "word_card",
    /// A recording.
    ClipCard => "clip_card",
    /// A picture of an animal, a reward or a word.
    PictureCard => "picture_card",
    /// Where the buttons are.
    BoardLayout => "board_layout",
    /// A rule of the house.
    HouseRule => "house_rule",
    /// A person sets the stage of a word for an animal.
    StageChoice => "stage_choice",
    /// A stretch at the board begins.
    SessionStart => "session_start",
    /// The animal opts in.
    Joining => "joining",
    /// The animal opts out.
    Leaving => "leaving",
    /// A stretch at the board ends.
    SessionEnd => "session_end",
    /// A button sounded.
    Press => "press",
    /// How a press was answered.
    Delivery => "delivery",
    /// The animal looked at the board or a button.
    Look => "look",
    /// Contact that did not sound the button.
    Brush => "brush",
    /// An offered opportunity, then a wait.
    Invitation => "invitation",
    /// A request made without a button, answered by showing its word.
    Catch => "catch",
    /// Observed body language.
    Sign => "sign",
    /// Food given.
    Feed => "feed",
    /// A likes test is set up.
    LikesTest => "likes_test",
    /// One trial of a likes test.
    LikeTrial => "like_trial",
    /// A planned check of understanding is set up.
    ProbePlan => "probe_plan",
    /// One trial of a check.
    ProbeTrial => "probe_trial",
    /// A round of invitations whose words are drawn.
    Round => "round",
    /// A time in which now and then another thing is drawn to be given.
    SwapPlan => "swap_plan",
    /// What was drawn for one press.
    SwapDraw => "swap_draw",
    /// Such a time ends early.
    SwapStop => "swap_stop",
    /// A trial of a change is planned.
    DesignPlan boxed => "design_plan",
    /// Which condition was in fact in force.
    DesignNote => "design_note",
    /// A trial of a change is stopped.
    DesignStop => "design_stop",
    /// A remark.
    Remark => "remark",
    /// A person has read a lesson.
    LessonRead => "lesson_read",
    /// A home gives consent.
    ConsentGiven => "consent_given",
    /// A home takes consent back.
    ConsentTakenBack => "consent_taken_back",
    /// A coach proposes something, or asks.
    Proposal boxed => "proposal",
    /// A home answers a coach.
    ProposalAnswer => "proposal_answer",
    /// A home plans some days of its own.
    OwnPlan => "own_plan",
    /// A home has done an aim of a programme.
    AimDone => "aim_done",
    /// Puts another event's content right.
    Correction => "correction",
    /// Takes another event back.
    Withdrawal => "withdrawal",
}

impl Body {
    /// The session this belongs to, if it names one.
    #[must_use]
    pub fn session(&self) -> Option<SessionId> {
        self.about().session
    }

    /// The word this is about, if it names one.
    #[must_use]
    pub fn word(&self) -> Option<WordId> {
        self.about().word
    }

    /// What will stand of it: what a correction makes of an event, else itself.
    #[must_use]
    pub fn stands_as(&self) -> &Self {
        if let Self::Correction(correction) = self { &correction.body } else { self }
    }

    /// The event this amends, if it is a correction or withdrawal.
    #[must_use]
    pub fn amends(&self) -> Option<EventId> {
        match self.about().does {
            Does::Tells | Does::Sets(_) => None,
            Does::Corrects(correction) => Some(correction.of),
            Does::Withdraws(of) => Some(of),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn an_event_is_small_for_a_story_holds_a_million() {
        assert!(size_of::<Event>() <= 232, "{} bytes", size_of::<Event>());
    }
}
