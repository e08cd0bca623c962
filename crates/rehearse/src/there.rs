//! How long the animal was at the board, and whether that grew long for it.

use crate::counted::asks;
use sayso_sim::rehearsal::{BED, Exercise, Run, Told, What};

/// Of the time for which it stays at ease, this much is no short session when it leaves.
const HALF: f64 = 0.5;

/// Of that time, this much is told as long: nobody sees a tenth by eye. Ours.
const GROWN: f64 = 1.1;

/// Whether it is at the board from this on; none where this changes nothing.
pub(crate) const fn is_there_after(what: What) -> Option<bool> {
    match what {
        What::Joined | What::Barred => Some(true),
        What::Leaves | What::Wanders | What::Startled(_) => Some(false),
        _ => None,
    }
}

/// Whether it was at the board at the end, or on its way there.
pub(crate) fn is_there_at_last(run: &Run) -> bool {
    let after = |there: bool, what| is_there_after(what).unwrap_or(there || what == What::Comes);
    run.told.iter().fold(run.begins_at != BED, |there, told| after(there, told.what))
}

/// Whether it had left at each place of what was told, and had not set out to come back.
pub(crate) fn had_left(run: &Run) -> Vec<bool> {
    let after = |left: &mut bool, told: &Told| {
        *left = match told.what {
            What::Leaves | What::Gone => true,
            What::Comes | What::Joined | What::Barred => false,
            _ => *left,
        };
        Some(*left)
    };
    run.told.iter().scan(false, after).collect()
}

/// Seconds at the board until a moment.
pub(crate) fn at_board_s(run: &Run, until_ms: u32) -> f64 {
    let mut since = (run.begins_at != BED).then_some(0);
    let mut all = 0;
    for Told { at_ms, what } in run.told.iter().copied().take_while(|t| t.at_ms <= until_ms) {
        match is_there_after(what) {
            Some(true) => since = since.or(Some(at_ms)),
            Some(false) => all += since.take().map_or(0, |since: u32| at_ms.saturating_sub(since)),
            None => {}
        }
    }
    f64::from(all + since.map_or(0, |since| until_ms.saturating_sub(since))) / 1000.0
}

/// How many more of something there was room for, at so many a minute, while it was at the board and had shown no sign yet.
pub(crate) fn left_over(run: &Run, a_minute: f64, done: usize) -> f64 {
    let sign = run.told.iter().find(|t| matches!(t.what, What::Sign(_)));
    let until_ms = sign.map_or(run.over.0, |t| t.at_ms);
    (a_minute * at_board_s(run, until_ms) / 60.0 - done as f64).max(0.0)
}

/// A session that grew long.
#[derive(Clone, Copy, PartialEq, Debug)]
pub(crate) struct TooLong {
    /// Seconds at the board until it left, else until something was asked for the last time.
    pub after_s: f64,
    /// Whether it left, and was asked again once it was back.
    pub left: bool,
}

/// Whether it grew long for the animal, where its length is the person's to choose: that of the other exercises is set.
pub(crate) fn too_long(run: &Run) -> Option<TooLong> {
    if run.setup.exercise != Exercise::Free {
        return None;
    }
    let last_ms = run.told.iter().rev().find(|t| asks(t))?.at_ms;
    let stays_s = run.traits.stays_s;
    // Once it was back at the board: who shows on its way back goes on with nothing yet.
    let back = |left: &Told| run.told.iter().find(|t| t.at_ms > left.at_ms && t.what == What::Joined);
    let left = run.told.iter().filter(|t| t.what == What::Leaves && back(t).is_some_and(|back| back.at_ms <= last_ms));
    let left = left.map(|t| at_board_s(run, t.at_ms)).find(|after_s| *after_s >= HALF * stays_s);
    let after_s = at_board_s(run, last_ms);
    left.map(|after_s| TooLong { after_s, left: true })
        .or((after_s > GROWN * stays_s).then_some(TooLong { after_s, left: false }))
}

/// Whether it was at the board for as long as it stays at ease.
pub(crate) fn had_enough(run: &Run) -> bool {
    at_board_s(run, run.over.0) >= run.traits.stays_s
}
