//! What may be changed next time, and on which figure each rests.

use crate::conduct::Conduct;
use sayso_advisor::Estimate;
use sayso_sim::rehearsal::Thing;

/// What to change.
#[derive(Clone, PartialEq, Debug)]
pub enum Change {
    /// Step away at a strong sign.
    StepAway,
    /// Let it go when it goes.
    LetGo,
    /// Let it have in peace what it took.
    LetEat,
    /// Pause at a mild sign.
    Pause,
    /// Leave a button from which it started back, until it is softer.
    Soften {
        /// The word.
        word: Thing,
        /// How often it was pressed all the same.
        times: usize,
    },
    /// Hold still until it has chosen.
    LetChoose,
    /// Do not call, bar the way or say it again.
    DoNotPush {
        /// How often it was done.
        times: usize,
    },
    /// Wait the five seconds out.
    Wait,
    /// Answer every press.
    Answer,
    /// Give sooner.
    Sooner {
        /// Middle delay, seconds.
        delay_s: f64,
    },
    /// Show when it is there and wants the thing; invite when it is there.
    WhenThere {
        /// Whether that is about invitations.
        invited: bool,
    },
    /// Show, or invite with, what it wants just then: it was there.
    Wanted {
        /// Whether that is about invitations.
        invited: bool,
    },
    /// Show and give after the wait, whatever came.
    AfterWait,
    /// Stop, and ask a veterinarian: it is not well.
    Vet,
    /// Leave more time between showings.
    Slower,
    /// Something else for a word that was always "not now".
    Instead {
        /// The word.
        word: Thing,
    },
    /// Show the words equally often.
    Even {
        /// The word shown most.
        most: Thing,
        /// The word shown least.
        least: Thing,
    },
    /// Give a word's thing oftener: it was mostly answered otherwise.
    GiveOftener {
        /// The word.
        word: Thing,
        /// Whether it fell; else no press of any word was given what it says.
        fell: bool,
    },
    /// Nothing but going on to answer: a word fell whose things were used up.
    UsedUp {
        /// The word.
        word: Thing,
    },
    /// End sooner.
    Shorter {
        /// Seconds at the board until it left, else until something was asked for the last time.
        after_s: f64,
        /// Seconds after which it grows long for this animal.
        stays_s: f64,
        /// Whether it left, and was asked again once it was back.
        left: bool,
    },
    /// Show oftener.
    Oftener,
    /// Stay for the whole time.
    Longer {
        /// Seconds after which it was ended.
        after_s: f64,
        /// Whether it was an evening; else two minutes.
        evening: bool,
    },
    /// Invite oftener.
    MoreInvitations,
    /// Hold out more pairs.
    MorePairs,
    /// Give what a button says after each press.
    Give,
    /// Try one thing after the other before naming what holds a word up.
    Try,
    /// It never went, so letting it go was not practised.
    Stay,
    /// Nothing was done that anything could be said of.
    TooSoon,
    /// Nothing: carry on like this.
    CarryOn,
}

impl Change {
    /// Its name, for messages.
    #[must_use]
    pub const fn name(&self) -> &'static str {
        match self {
            Self::StepAway => "step-away",
            Self::LetGo => "let-go",
            Self::LetEat => "let-eat",
            Self::Pause => "pause",
            Self::Soften { .. } => "soften",
            Self::LetChoose => "let-choose",
            Self::DoNotPush { .. } => "do-not-push",
            Self::Wait => "wait",
            Self::Answer => "answer",
            Self::Sooner { .. } => "sooner",
            Self::WhenThere { .. } => "when-there",
            Self::Wanted { .. } => "wanted",
            Self::AfterWait => "after-wait",
            Self::Vet => "vet",
            Self::Slower => "slower",
            Self::Instead { .. } => "instead",
            Self::Even { .. } => "even",
            Self::GiveOftener { .. } => "give-oftener",
            Self::UsedUp { .. } => "used-up",
            Self::Shorter { .. } => "shorter",
            Self::Oftener => "oftener",
            Self::Longer { .. } => "longer",
            Self::MoreInvitations => "more-invitations",
            Self::MorePairs => "more-pairs",
            Self::Give => "give",
            Self::Try => "try",
            Self::Stay => "stay",
            Self::TooSoon => "too-soon",
            Self::CarryOn => "carry-on",
        }
    }

    /// The name of why it is named, for messages.
    #[must_use]
    pub const fn because(&self) -> &'static str {
        match self {
            Self::WhenThere { invited: true } => "when-there-invited",
            Self::Wanted { invited: false } => "wanted-shown",
            Self::Shorter { left: true, .. } => "shorter-left",
            Self::GiveOftener { fell: false, .. } => "give-never",
            Self::Longer { evening: true, .. } => "longer-evening",
            _ => self.name(),
        }
    }

    /// The estimate it rests on; none where it rests on plain counts.
    #[must_use]
    pub const fn rests_on<'a>(&self, conduct: &'a Conduct) -> Option<&'a Estimate> {
        match self {
            Self::StepAway => Some(&conduct.strong),
            Self::LetGo => Some(&conduct.leaving),
            Self::LetEat => Some(&conduct.eaten),
            Self::Pause => Some(&conduct.mild),
            Self::Wait => Some(&conduct.waits),
            Self::LetChoose => Some(&conduct.held),
            Self::Answer => Some(&conduct.answered),
            Self::Sooner { .. } => Some(felt_delay(conduct)),
            Self::WhenThere { invited: true } => Some(&conduct.invited_there),
            Self::WhenThere { invited: false } | Self::Wanted { .. } => Some(&conduct.taken),
            Self::AfterWait => Some(&conduct.after_wait),
            Self::Slower => Some(&conduct.pace),
            Self::Give => Some(&conduct.paid),
            Self::Soften { .. }
            | Self::Longer { .. }
            | Self::DoNotPush { .. }
            | Self::Instead { .. }
            | Self::Even { .. }
            | Self::GiveOftener { .. }
            | Self::UsedUp { .. }
            | Self::Shorter { .. }
            | Self::Vet
            | Self::Oftener
            | Self::MoreInvitations
            | Self::MorePairs
            | Self::Try
            | Self::Stay
            | Self::TooSoon
            | Self::CarryOn => None,
        }
    }
}

/// The delay that counts: that of showings, where there are two at the least, else that of answers.
pub(crate) const fn felt_delay(conduct: &Conduct) -> &Estimate {
    if conduct.delay.n >= 2 { &conduct.delay } else { &conduct.answer_delay }
}
