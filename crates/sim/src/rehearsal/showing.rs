//! A showing and how it reaches the animal: whether it saw it, how it felt, and how soon it came after the last.

use super::animal::{Animal, MILD, Place};
use super::pairing::Came;

/// The last showing.
#[derive(Clone, Copy, PartialEq, Debug)]
pub(super) struct Showing {
    at_ms: u32,
    /// Seconds since the one before; infinite of the first.
    pub gap_s: f64,
    reaches: Reaches,
}

/// How it finds the animal.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
enum Reaches {
    Free,
    /// Elsewhere, on its way out, or with something to do still.
    Unseen,
    /// At a strain at which it shows a sign.
    Strained,
}

impl Showing {
    /// What came of it, given what would have come had it been free to look.
    pub fn came(self, free: Came) -> Came {
        match self.reaches {
            Reaches::Free => free,
            Reaches::Unseen => Came::Unseen,
            Reaches::Strained => Came::Strained,
        }
    }
}

impl Animal {
    /// A button is pressed for it to see.
    pub fn is_shown(&mut self, at_ms: u32) {
        let has_enough = at_ms < self.busy_until || self.given.is_some();
        let reaches = if self.place != Place::Board || self.leaving || has_enough {
            Reaches::Unseen
        } else if self.strain >= MILD {
            Reaches::Strained
        } else {
            Reaches::Free
        };
        let gap_s = self.showing.map_or(f64::INFINITY, |last| f64::from(at_ms.saturating_sub(last.at_ms)) / 1000.0);
        self.showing = Some(Showing { at_ms, gap_s, reaches });
    }
}
