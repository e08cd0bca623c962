//! What to do.

use super::NamedWord;
use crate::cause::Cause;
use sayso_model::Stage;
use serde::Serialize;

/// What a word's card lacks.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Lack {
    /// What the word brings.
    Reward,
    /// How everyone answers it.
    Answer,
    /// What is said for "not now".
    NotNow,
}

/// What to do.
#[derive(Clone, PartialEq, Debug, Serialize)]
#[serde(tag = "act", rename_all = "snake_case")]
pub enum Act {
    /// After a growl, snap or bite today, or on two days of the week: no session, distance.
    GiveSpace,
    /// Strong signs on two days of the week: neither show nor invite for a few days; presses are answered.
    PauseSessions,
    /// A strong sign today: no more sessions today; presses are answered.
    NoMoreToday,
    /// A growl, snap or bite in the last four weeks: ask those who know.
    AskAboutThreats,
    /// It guards something: take nothing from it, ask those who know.
    AskAboutGuarding,
    /// It swallowed something that is no food.
    AskAboutSwallowing {
        /// Whether that was today: then it cannot wait.
        today: bool,
    },
    /// It leaves sessions: shorter ones, ended before it wants to go.
    ShortenSessions,
    /// Mild signs in many sessions: change something before the next.
    EaseSessions,
    /// A sudden change in pressing: look at the animal first.
    LookAtHealth,
    /// The day's food for rewards is used up.
    StopFood,
    /// List what it may want.
    ListRewards,
    /// Hold a first likes test.
    TestLikes,
    /// Choose two or three first words.
    ChooseFirstWords,
    /// Settle the day's food.
    SetAllowance,
    /// Fill in what a word's card lacks.
    FillCard {
        /// The word.
        word: NamedWord,
        /// What its card lacks.
        lacks: Vec<Lack>,
    },
    /// Check batteries: a replay that slows down often means a tired one.
    CheckBatteries {
        /// Of these.
        words: Vec<NamedWord>,
    },
    /// Check buttons that fell silent.
    CheckSilent {
        /// These.
        words: Vec<NamedWord>,
    },
    /// Hold a short likes test again.
    RetestLikes,
    /// See to what holds a word up.
    Mend {
        /// The word.
        word: NamedWord,
        /// What may hold it up.
        cause: Cause,
    },
    /// Go back a stage.
    StepBack {
        /// The word.
        word: NamedWord,
        /// To this stage.
        to: Stage,
    },
    /// Begin inviting: offer, wait, show it, give it.
    BeginInviting {
        /// The word.
        word: NamedWord,
        /// How long to wait, in seconds.
        wait_s: f64,
    },
    /// Invite among the showings.
    Invite {
        /// The word.
        word: NamedWord,
    },
    /// Press, say, give.
    Show {
        /// The word.
        word: NamedWord,
    },
    /// Show a closing word at the end of each session.
    ShowAtEnd {
        /// The word.
        word: NamedWord,
    },
    /// It is ready for conversation: leave the word to the animal.
    LeaveToAnimal {
        /// The word.
        word: NamedWord,
    },
    /// Answer every press.
    Answer {
        /// The word.
        word: NamedWord,
    },
    /// Asked for more than can be given: a sign all can see, times of yes and of not now.
    SignalTimes {
        /// The word.
        word: NamedWord,
        /// Seconds in which every press is answered with the thing.
        available_s: f64,
        /// Seconds of "not now", with something else offered.
        unavailable_s: f64,
    },
    /// Nothing is taught today.
    Rest {
        /// The word.
        word: NamedWord,
    },
    /// Plan a check of words that are in use and were never checked.
    PlanCheck {
        /// These.
        words: Vec<NamedWord>,
    },
    /// Go on with a check that was begun.
    GoOnWithCheck {
        /// Trials carried out.
        done: usize,
        /// Trials planned.
        of: usize,
    },
}

impl Act {
    /// Whether it tells to wait for a press of a word.
    #[must_use]
    pub const fn invites(&self) -> bool {
        matches!(self, Self::Invite { .. } | Self::BeginInviting { .. } | Self::StepBack { to: Stage::Invite, .. })
    }
}
