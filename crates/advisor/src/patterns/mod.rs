//! Patterns in an animal's own presses and choices that a person would look for: whether presses grow or fade, what else
//! changed, whether one word follows another, which presses look like slips, whether likes depend on the hour.
//!
//! Each figure comes with its interval and its count; what it does not show stands beside its words.

mod board;
mod hours;
mod lines;
mod order;
mod pace;
mod slips;

pub use hours::{AtHour, DAYS as HOURS_LOOK_BACK_DAYS, Hours};
pub use lines::{Change, PhaseLine};
pub use order::{Follows, Order};
pub use pace::{LEAST_DAYS, LEAST_PRESSES, Pace};
pub use slips::{AtPlace, Slips, WITHIN_S};

use crate::advice::NamedWord;
use crate::case::Case;
use crate::observe::{Answered, own_presses};
use board::Board;
use sayso_model::{Moment, Story, WordId};

/// A pause so long, in seconds, begins a new sitting (common practice, no source).
const NEW_SITTING_S: f64 = 600.0;

/// Everything the Patterns page shows.
#[derive(Clone, PartialEq, Debug)]
pub struct Patterns {
    /// The animal's name.
    pub name: String,
    /// Whether own presses grow or fade, all together first, then by word.
    pub pace: Vec<Pace>,
    /// Own presses before and after each change that was noted, newest first.
    pub lines: Vec<PhaseLine>,
    /// Words pressed one after another.
    pub order: Order,
    /// Presses that look like slips.
    pub slips: Slips,
    /// Likes by the hour.
    pub hours: Hours,
}

/// Days looked back, today included: what an animal does now, at a cost that does not grow with the log.
pub const LOOKS_BACK_DAYS: i32 = 26 * 7;

/// What shows in the records of this animal of the last [`LOOKS_BACK_DAYS`]; none where there is no such animal.
#[must_use]
pub fn patterns(case: &Case<'_>) -> Option<Patterns> {
    let (story, animal, now) = (case.story(), case.animal(), case.now());
    let name = story.animals().get(&animal)?.name.to_string();
    let all: Vec<Answered<'_>> = case.answered_since(case.since(LOOKS_BACK_DAYS));
    let own = own_presses(&all, None);
    let board = Board::of(story, now);
    Some(Patterns {
        pace: pace::pace(story, &all, &own, now),
        lines: lines::lines(story, animal, all.first(), &own, now),
        order: order::order(story, &own, board.as_ref()),
        slips: slips::slips(story, animal, &own, board.as_ref(), now),
        hours: hours::hours(story, animal, now),
        name,
    })
}

/// What a word says.
fn says(story: &Story, word: WordId) -> String {
    NamedWord::of(story, word).says
}

/// Numbers the sittings of moments in order of time.
fn sittings(at: &[Moment]) -> Vec<usize> {
    let mut sitting = 0;
    let mut last: Option<Moment> = None;
    at.iter()
        .map(|at| {
            sitting += usize::from(last.replace(*at).is_some_and(|last| at.seconds_since(last) > NEW_SITTING_S));
            sitting
        })
        .collect()
}
