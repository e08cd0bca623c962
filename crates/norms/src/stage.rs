//! How long a word stood in a stage: one censored wait a word.

use sayso_model::Stage;
use serde::{Deserialize, Serialize};

/// The stages that a stay is told of. A word that was shown is past its preparing, and talking goes on.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum TimedStage {
    /// The person shows the word; nothing is asked of the animal.
    Show,
    /// Invitations are offered.
    Invite,
}

impl TimedStage {
    /// Both, in order.
    pub const ALL: [Self; 2] = [Self::Show, Self::Invite];

    /// How it is written.
    #[must_use]
    pub fn name(self) -> &'static str {
        Stage::from(self).name()
    }
}

impl From<TimedStage> for Stage {
    fn from(stage: TimedStage) -> Self {
        match stage {
            TimedStage::Show => Self::Show,
            TimedStage::Invite => Self::Invite,
        }
    }
}

/// Whole days of a word in a stage, until people first chose a later one, or so far.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct StageWait {
    /// Which stage.
    pub stage: TimedStage,
    /// Whole days from its beginning, and not before the word's first showing, until a later stage was first chosen, or to the end of
    /// the record.
    pub days: u32,
    /// Whether a later one was chosen. If not, it was not yet: the stay is censored.
    pub moved_on: bool,
}
