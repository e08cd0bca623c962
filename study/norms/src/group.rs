//! Groups of households whose learners are alike, and how they are counted.

use crate::draw::Drawn;
use sayso_model::Species;
use sayso_norms::{AgeBand, WordKind};

/// Households of a species, of one age or all, with words of one kind or all.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Debug)]
pub struct Group {
    /// The species.
    pub species: Species,
    /// What the word brings; none: whatever it is.
    pub word_kind: Option<WordKind>,
    /// The age; none: whatever it is.
    pub age_band: Option<AgeBand>,
}

impl Group {
    /// All of a species.
    #[must_use]
    pub const fn species(species: Species) -> Self {
        Self { species, word_kind: None, age_band: None }
    }

    /// Those of this group with words of a kind.
    #[must_use]
    pub const fn kind(self, kind: WordKind) -> Self {
        Self { word_kind: Some(kind), ..self }
    }

    /// Those of this group of an age.
    #[must_use]
    pub const fn age(self, age: AgeBand) -> Self {
        Self { age_band: Some(age), ..self }
    }

    /// Whether a household is in it.
    #[must_use]
    pub fn holds(&self, one: &Drawn) -> bool {
        one.species == self.species
            && self.word_kind.is_none_or(|kind| kind == one.word_kind)
            && self.age_band.is_none_or(|age| age == one.age_band)
    }
}

/// A level: how finely households are told apart. Every group of it is counted, whether or not there is anybody: which there are says
/// nothing then.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Level {
    /// By species.
    Species,
    /// By species and kind of word.
    Kinds,
    /// By species, kind of word and age.
    Leaves,
    /// By species and age.
    Ages,
}

impl Level {
    /// Its groups, in order.
    #[must_use]
    pub fn groups(self) -> Vec<Group> {
        let species = Species::ALL.map(Group::species);
        let kinds = |group: Group| WordKind::ALL.map(|kind| group.kind(kind));
        let ages = |group: Group| AgeBand::ALL.map(|age| group.age(age));
        match self {
            Self::Species => species.to_vec(),
            Self::Kinds => species.into_iter().flat_map(kinds).collect(),
            Self::Leaves => species.into_iter().flat_map(kinds).flat_map(ages).collect(),
            Self::Ages => species.into_iter().flat_map(ages).collect(),
        }
    }

    /// Households in each.
    #[must_use]
    pub fn count(self, drawn: &[Drawn]) -> Vec<i64> {
        let groups = self.groups();
        let mut counts = vec![0; groups.len()];
        for one in drawn {
            if let Some(at) = groups.iter().position(|group| group.holds(one)) {
                counts[at] += 1;
            }
        }
        counts
    }
}
