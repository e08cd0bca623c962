//! The board as it stands, and since when its words have kept their places.

use sayso_model::{BoardLayout, Fact, Moment, Story, WordId};
use std::collections::BTreeMap;

/// Words at places.
#[derive(Clone, PartialEq, Debug)]
pub(super) struct Board {
    places: BTreeMap<WordId, (u8, u8)>,
    /// From this moment on no word that is on it now lay elsewhere.
    pub(super) since: Moment,
}

/// How far apart two words count of which one is not on the board.
const FAR: u8 = 250;

/// Every layout up to `now`, in the order they came into force.
pub(super) fn layouts(story: &Story, now: Moment) -> Vec<Fact<'_, BoardLayout>> {
    let mut layouts: Vec<Fact<'_, BoardLayout>> = story.everyones().filter(|l| l.at() <= now).collect();
    layouts.sort_by_key(|l| (l.at(), l.id()));
    layouts
}

impl Board {
    /// The layout in force at `now`, if there is one.
    pub(super) fn of(story: &Story, now: Moment) -> Option<Self> {
        let mut layouts = layouts(story, now);
        let latest = layouts.pop()?;
        let places = latest.part.places();
        let kept = layouts.iter().rev().take_while(|l| {
            let earlier = l.part.places();
            places.iter().all(|(word, place)| earlier.get(word).is_none_or(|before| before == place))
        });
        let since = kept.last().map_or(latest.at(), Fact::at);
        Some(Self { places, since })
    }

    /// Steps between two words, slanting ones too; 1 for neighbours.
    pub(super) fn steps(&self, a: WordId, b: WordId) -> u8 {
        match (self.places.get(&a), self.places.get(&b)) {
            _ if a == b => 0,
            (Some(a), Some(b)) => a.0.abs_diff(b.0).max(a.1.abs_diff(b.1)).min(FAR),
            _ => FAR,
        }
    }

    /// Whether the word is on it.
    pub(super) fn holds(&self, word: WordId) -> bool {
        self.places.contains_key(&word)
    }
}
