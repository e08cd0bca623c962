//! What one trial offered and what came of it.

use super::{LikesError, check_item};

/// What the learner did when shown two items.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum PairOutcome {
    /// Took the item on its left.
    Left,
    /// Took the item on its right.
    Right,
    /// Took neither within the time given: both were offered, neither was wanted more than nothing.
    Neither,
    /// Took both at once.
    Both,
}

/// Two items offered side by side, as the learner sees them.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct PairTrial {
    /// Item on the left.
    pub left: usize,
    /// Item on the right.
    pub right: usize,
    /// What came of it.
    pub outcome: PairOutcome,
}

impl PairTrial {
    /// The item taken, if just one was.
    pub fn chosen(&self) -> Option<usize> {
        match self.outcome {
            PairOutcome::Left => Some(self.left),
            PairOutcome::Right => Some(self.right),
            PairOutcome::Neither | PairOutcome::Both => None,
        }
    }

    pub(crate) fn check(&self, items: usize) -> Result<(), LikesError> {
        check_item(self.left, items)?;
        check_item(self.right, items)?;
        if self.left == self.right { Err(LikesError::Repeated { item: self.left }) } else { Ok(()) }
    }
}

/// Items taken one after another from an array, without putting any back.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Ranking {
    /// Items taken, first choice first.
    pub chosen: Vec<usize>,
    /// Items that stayed in the array when it ended (in any order): liked less than every item taken.
    pub left_over: Vec<usize>,
    /// Whether the learner was still offered the left-over items and turned away (`true`), or the session was simply stopped
    /// after the last choice (`false`).
    pub turned_away: bool,
}

impl Ranking {
    /// Every item of the array taken, first choice first.
    pub fn complete(chosen: &[usize]) -> Self {
        Self { chosen: chosen.to_vec(), left_over: Vec::new(), turned_away: false }
    }

    /// Some items taken, then the learner turned away from the rest.
    pub fn turned_away(chosen: &[usize], left_over: &[usize]) -> Self {
        Self { chosen: chosen.to_vec(), left_over: left_over.to_vec(), turned_away: true }
    }

    /// Some items taken, then a person ended the session.
    pub fn stopped(chosen: &[usize], left_over: &[usize]) -> Self {
        Self { chosen: chosen.to_vec(), left_over: left_over.to_vec(), turned_away: false }
    }

    pub(crate) fn check(&self, items: usize) -> Result<(), LikesError> {
        let mut seen = vec![false; items];
        for item in self.chosen.iter().chain(&self.left_over) {
            check_item(*item, items)?;
            if std::mem::replace(&mut seen[*item], true) {
                return Err(LikesError::Repeated { item: *item });
            }
        }
        Ok(())
    }
}
