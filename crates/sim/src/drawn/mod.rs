//! Bare lives of what the notebook draws: rounds, agreed swaps, checks; nothing else of a household. Hundreds of days in a
//! moment, so that false claims that ought to be rare can be counted.
//!
//! Which button is pressed follows from a [`Habit`] whose meaning, or lack of it, is known; what a person does to the
//! records from a list of [`Trick`]s.

mod answers;
mod book;
mod checking;
mod checks;
mod habit;
mod life;
mod mind;
mod rounds;

pub use habit::Habit;

use sayso_model::{AnimalId, Event, Moment, ProbeDesign, WordId};

/// What a person does that honest keeping of the notebook does not.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
pub enum Trick {
    /// Checks: a wrong answer is followed by more trials under the same number until one is right; then only right ones
    /// are written.
    ExtraTrials,
    /// Checks: wrong answers are taken back and the trial repeated under its number.
    TakesBack,
    /// Checks: wrong answers are corrected to right ones.
    CorrectsToRight,
    /// Checks: one that goes badly is dropped, its last wrong answer not written, and another begun.
    DropsBadChecks,
    /// Checks: at the first wrong answer, which is not written, the check is dropped and another begun.
    DropsAtWrong,
    /// Rounds: over at the first wrong press, which is not written.
    StopsAtWrong,
    /// Rounds: over at the first right press.
    StopsAtRight,
    /// Rounds: calls with a wrong press are not written.
    LeavesOutWrong,
    /// Rounds: calls with a wrong press are taken back, or corrected to right ones.
    MendsCalls,
    /// Rounds: one whose words do not suit what the animal presses most is called off and another begun.
    ChoosesRounds,
    /// Swaps: at mealtimes its own thing is given, whatever was drawn.
    NoSwapsAtMeals,
    /// Swaps: one thing is given whenever its button is pressed, whatever was drawn.
    NoSwapsOfOne,
    /// Swaps: the time is stopped when it goes badly and another begun on the next day.
    StopsSwaps,
    /// Swaps: the answer is not given, or not written, where the partner's thing was drawn and the animal did not press again.
    HidesAnswers,
    /// Swaps: a press again after its own thing is not written.
    HidesCorrections,
    /// Wrong calls and wrong answers are dated years ahead; so are rounds that went badly, afterwards.
    DatesAhead,
    /// Says yes at mealtimes, offers other things at other hours. Not meant to deceive.
    AnswersAtMeals,
    /// Offers other things once the animal has had a lot. Not meant to deceive.
    AnswersByAppetite,
    /// Writes "took" hopefully. Not meant to deceive.
    Wishful,
}

impl Trick {
    /// Everything done on purpose, except not writing presses again: what nobody writes and nothing hears cannot be known.
    pub const ON_PURPOSE: [Self; 15] = [
        Self::ExtraTrials,
        Self::TakesBack,
        Self::CorrectsToRight,
        Self::DropsBadChecks,
        Self::DropsAtWrong,
        Self::StopsAtWrong,
        Self::StopsAtRight,
        Self::LeavesOutWrong,
        Self::MendsCalls,
        Self::ChoosesRounds,
        Self::NoSwapsAtMeals,
        Self::NoSwapsOfOne,
        Self::StopsSwaps,
        Self::HidesAnswers,
        Self::DatesAhead,
    ];
}

/// A check to be begun on or after a day.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct DrawnCheck {
    /// Earliest day, from 0.
    pub day: u32,
    /// Design.
    pub design: ProbeDesign,
    /// Trials for each word, about.
    pub trials_a_word: u16,
    /// Whether the person with the learner does not know the answer.
    pub blind: bool,
}

/// A household of which only what is drawn is told.
#[derive(Clone, PartialEq, Debug)]
pub struct DrawnHome {
    /// Words on the board, 2 to 12.
    pub words: usize,
    /// Days, 1 or more.
    pub days: u32,
    /// What decides which button is pressed.
    pub habit: Habit,
    /// Whether it presses more when it sees what it likes.
    pub sees_likes: bool,
    /// Presses a day in ordinary life, about; none draws 10 to 40 from the seed.
    pub presses_a_day: Option<f64>,
    /// Sittings of two rounds a day, about, up to two.
    pub sittings_a_day: f64,
    /// Whether swaps are agreed to, for four weeks at a time without a break.
    pub swaps: bool,
    /// Checks, in order of day.
    pub checks: Vec<DrawnCheck>,
    /// What the person does.
    pub tricks: Vec<Trick>,
}

impl DrawnHome {
    /// Four words, 10 to 40 presses a day, one and a half sittings a day, swaps all the time, no checks, no tricks.
    #[must_use]
    pub const fn of(habit: Habit, days: u32) -> Self {
        Self {
            words: 4,
            days,
            habit,
            sees_likes: true,
            presses_a_day: None,
            sittings_a_day: 1.5,
            swaps: true,
            checks: Vec::new(),
            tricks: Vec::new(),
        }
    }

    /// The same with checks of every design, blind and open, spread over its days.
    #[must_use]
    pub fn checked(mut self, trials_a_word: u16) -> Self {
        use ProbeDesign::{PickForWord, PressForThing, PressUnderCovers};
        let plans = [
            (PickForWord, true),
            (PressUnderCovers, true),
            (PressForThing, false),
            (PickForWord, false),
            (PressUnderCovers, false),
            (PickForWord, true),
        ];
        let days = |i: usize| self.days * u32::try_from(i + 1).unwrap_or(1) / 8;
        let check = |(i, (design, blind))| DrawnCheck { day: days(i), design, trials_a_word, blind };
        self.checks = plans.into_iter().enumerate().map(check).collect();
        self
    }

    pub(crate) fn does(&self, trick: Trick) -> bool {
        self.tricks.contains(&trick)
    }
}

/// The record of a drawn life.
#[derive(Clone, PartialEq, Debug)]
pub struct DrawnLife {
    /// Events in the order in which they were recorded.
    pub events: Vec<Event>,
    /// The animal.
    pub animal: AnimalId,
    /// Its words.
    pub words: Vec<WordId>,
    /// When its first day began.
    pub begun: Moment,
}

/// Lives `home` up to `end`, which ends its last day.
///
/// # Example
/// ```
/// use sayso_sim::{DrawnHome, Habit, drawn_life};
/// let end = "2026-06-01T22:00:00Z".parse()?;
/// let life = drawn_life(&DrawnHome::of(Habit::Random, 20), 3, end);
/// assert!(life.events.iter().all(|e| e.check().is_ok()));
/// # Ok::<(), sayso_model::time::TimeError>(())
/// ```
#[must_use]
pub fn drawn_life(home: &DrawnHome, seed: u64, end: Moment) -> DrawnLife {
    life::live(home, seed, end)
}
