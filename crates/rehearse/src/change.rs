//! The one thing to change next time: what the animal feels first, then what teaches it.

use crate::conduct::Conduct;
use sayso_advisor::Estimate;
use sayso_sim::rehearsal::{Exercise, Thing};

/// Seconds from press to thing that are soon enough. Children's studies keep to two (see `docs/methods/rehearsal.md`).
const SOON_S: f64 = 2.0;
/// Showings a minute that leave time to take and to breathe.
const MOST_A_MINUTE: f64 = 12.0;
/// Showings of a full rehearsal of press, say, give, at the least.
const FEWEST: usize = 6;
/// Times each thing is held out before anything is said of what it likes, at the least.
const FEWEST_HELD: usize = 5;
/// Of what is given, this much is to be taken: else it was not there, or did not want it.
const TAKEN: f64 = 0.6;

/// What to change.
#[derive(Clone, PartialEq, Debug)]
pub enum Change {
    /// Step away at a strong sign.
    StepAway,
    /// Let it go when it goes.
    LetGo,
    /// Let it eat in peace.
    LetEat,
    /// Pause at a mild sign.
    Pause,
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
    /// Show when it is there and wants the thing.
    WhenThere,
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
    /// Show oftener.
    Oftener,
    /// Hold out more pairs.
    MorePairs,
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
            Self::LetChoose => "let-choose",
            Self::DoNotPush { .. } => "do-not-push",
            Self::Wait => "wait",
            Self::Answer => "answer",
            Self::Sooner { .. } => "sooner",
            Self::WhenThere => "when-there",
            Self::Slower => "slower",
            Self::Instead { .. } => "instead",
            Self::Even { .. } => "even",
            Self::Oftener => "oftener",
            Self::MorePairs => "more-pairs",
            Self::CarryOn => "carry-on",
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
            Self::WhenThere => Some(&conduct.taken),
            Self::Slower => Some(&conduct.pace),
            Self::DoNotPush { .. }
            | Self::Instead { .. }
            | Self::Even { .. }
            | Self::Oftener
            | Self::MorePairs
            | Self::CarryOn => None,
        }
    }
}

/// What the animal feels, the gravest first.
const FELT: [Change; 6] =
    [Change::StepAway, Change::LetGo, Change::LetEat, Change::Pause, Change::Wait, Change::LetChoose];

/// The delay that counts: that of showings, where there are two at the least, else that of answers.
const fn felt_delay(conduct: &Conduct) -> &Estimate {
    if conduct.delay.n >= 2 { &conduct.delay } else { &conduct.answer_delay }
}

/// Whether a share is less than the whole of what was counted.
fn wants_more(share: &Estimate) -> bool {
    share.value.is_some_and(|value| value < 1.0)
}

/// The one thing to change.
#[must_use]
pub fn change(conduct: &Conduct, exercise: Exercise) -> Change {
    let c = conduct;
    if let Some(change) = FELT.into_iter().find(|change| change.rests_on(c).is_some_and(wants_more)) {
        return change;
    }
    if c.pushes > 0 {
        return Change::DoNotPush { times: c.pushes };
    }
    if wants_more(&c.answered) {
        return Change::Answer;
    }
    if let Some(delay_s) = felt_delay(c).value.filter(|d| *d > SOON_S) {
        return Change::Sooner { delay_s };
    }
    if c.taken.n >= 4 && c.taken.value.is_some_and(|taken| taken < TAKEN) {
        return Change::WhenThere;
    }
    if c.pace.n >= FEWEST && c.pace.value.is_some_and(|pace| pace > MOST_A_MINUTE) {
        return Change::Slower;
    }
    if let Some(word) = always_declined(c) {
        return Change::Instead { word };
    }
    if exercise == Exercise::Likes && c.chosen.iter().any(|(_, held)| *held < FEWEST_HELD) {
        return Change::MorePairs;
    }
    if exercise == Exercise::Showing && c.showings() < FEWEST {
        return Change::Oftener;
    }
    uneven(c).unwrap_or(Change::CarryOn)
}

/// A word whose presses were all declined, three at the least, where nothing else was given.
fn always_declined(c: &Conduct) -> Option<Thing> {
    let any_other = c.alternatives.value.is_some_and(|share| share > 0.0);
    Thing::ALL.into_iter().filter(|_| !any_other).find(|word| {
        let (no, all) = c.declined[word.place()];
        no >= 3 && no == all
    })
}

/// Two shown words of which one was shown more than twice as often, and twice more.
fn uneven(c: &Conduct) -> Option<Change> {
    let shown = || Thing::ALL.into_iter().filter(|word| c.balance[word.place()] > 0);
    let most = shown().max_by_key(|word| c.balance[word.place()])?;
    let least = shown().min_by_key(|word| c.balance[word.place()])?;
    let (more, less) = (c.balance[most.place()], c.balance[least.place()]);
    (more > 2 * less && more >= less + 3).then_some(Change::Even { most, least })
}
