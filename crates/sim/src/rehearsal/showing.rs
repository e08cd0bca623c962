//! A showing and how it reaches the animal: whether it saw it, how it felt, and how soon it came after the last.

use super::pairing::Came;

/// The last showing.
#[derive(Clone, Copy, PartialEq, Debug)]
pub(super) struct Showing {
    pub at_ms: u32,
    /// Seconds since the one before; infinite of the first.
    pub gap_s: f64,
    pub reaches: Reaches,
}

/// How it finds the animal.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub(super) enum Reaches {
    /// Free to look.
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
