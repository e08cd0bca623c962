//! Ideas to try: what an animal of a species may like, by kind.

use super::parsed;
use crate::cards::RewardKind;
use crate::species::Species;
use serde::Deserialize;
use std::sync::OnceLock;

/// What to take care of where an idea is tried; the hazards name each.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Care {
    /// Not where food or toys are guarded.
    Guarding,
    /// On a floor that does not slide.
    Slipping,
    /// Nothing that can be bitten off and swallowed.
    SmallParts,
    /// Too large to be swallowed or to lodge in the throat.
    Size,
    /// On the floor, on its own terms, never held.
    HandsOff,
}

/// Something an animal may like.
#[derive(Clone, PartialEq, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Idea {
    /// Its short name, the same in every language.
    pub key: String,
    /// What it is, in English; the hazards are looked up by it.
    pub name: String,
    /// Its kind.
    pub kind: RewardKind,
    /// Whom it is for.
    pub species: Vec<Species>,
    /// Weight of one piece; only for food.
    #[serde(default)]
    pub grams: Option<f64>,
    /// Energy of 100 g; only for food.
    #[serde(default)]
    pub kcal_per_100g: Option<f64>,
    /// What to take care of.
    #[serde(default)]
    pub care: Vec<Care>,
    /// Whether it can be given at the board, where it is other than its kind.
    #[serde(default)]
    pub at_board: Option<bool>,
    /// Where the idea, and its energy, come from.
    pub source: String,
}

impl Idea {
    /// Energy of one piece, kcal, to one decimal and at least 0.1; none for what is not eaten.
    #[must_use]
    pub fn kcal_per_piece(&self) -> Option<f64> {
        let kcal = self.grams? * self.kcal_per_100g? / 100.0;
        Some(((kcal * 10.0).round() / 10.0).max(0.1))
    }
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct IdeaFile {
    ideas: Vec<Idea>,
}

fn file() -> &'static IdeaFile {
    static FILE: OnceLock<IdeaFile> = OnceLock::new();
    FILE.get_or_init(|| parsed("ideas.json", include_str!("../../facts/ideas.json")))
}

/// Ideas for a species, in the order of the file; none where nothing is known of it.
pub fn ideas(species: Species) -> impl Iterator<Item = &'static Idea> {
    file().ideas.iter().filter(move |i| i.species.contains(&species))
}

/// An idea by its short name.
#[must_use]
pub fn idea(key: &str) -> Option<&'static Idea> {
    file().ideas.iter().find(|i| i.key == key)
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::collections::BTreeSet;

    #[test]
    fn every_species_has_ideas_of_every_kind_and_each_has_a_source() {
        for species in [Species::Dog, Species::Cat, Species::Parrot, Species::Rabbit] {
            for kind in RewardKind::ALL {
                assert!(ideas(species).any(|i| i.kind == kind), "{species:?} {kind:?}");
            }
        }
        assert_eq!(ideas(Species::Other).count(), 0, "nothing is known of an animal without a species");
        let keys: BTreeSet<_> = file().ideas.iter().map(|i| &i.key).collect();
        assert_eq!(keys.len(), file().ideas.len(), "a key names one idea");
        assert!(file().ideas.iter().all(|i| !i.source.is_empty() && idea(&i.key) == Some(i)));
    }

    #[test]
    fn food_has_its_energy_and_nothing_else_has() {
        for i in &file().ideas {
            assert_eq!(i.kcal_per_piece().is_some(), i.kind == RewardKind::Food, "{}", i.key);
            assert!(i.kcal_per_piece().is_none_or(|k| k < 10.0), "{}: a piece is small", i.key);
        }
    }
}
