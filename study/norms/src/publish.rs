//! Which groups are published, by their counts alone: noisy ones where there is noise, so that the choice tells no more than they do.
//!
//! Groups lie within one another (species, kinds of word within it, ages within these; and for what concerns no word, ages within
//! species). So everything published of waits is put together from **parts** that do not overlap: published groups without the
//! published ones within them. None of the parts is smaller than the rule allows, so no difference of published groups is either.

use crate::draw::Drawn;
use crate::group::{Group, Level};
use sayso_model::Species;
use sayso_norms::{AgeBand, WordKind};
use std::collections::BTreeMap;

/// Counts of a level, and from which on a group of it may be published.
#[derive(Clone, PartialEq, Debug)]
pub struct Sizes {
    counts: BTreeMap<Group, f64>,
    /// With noise, so much above the rule's least that a smaller group gets by once in twenty at most.
    bar: f64,
}

impl Sizes {
    /// Counts in the order of the level's groups.
    #[must_use]
    pub fn new(level: Level, counts: &[i64], bar: f64) -> Self {
        let counts = level.groups().into_iter().zip(counts.iter().map(|count| *count as f64));
        Self { counts: counts.collect(), bar }
    }

    /// Households of a group, by these counts.
    #[must_use]
    pub fn of(&self, group: &Group) -> f64 {
        self.counts.get(group).copied().unwrap_or(0.0)
    }
}

/// Counts of all levels.
#[derive(Clone, PartialEq, Debug)]
pub struct AllSizes {
    /// By species.
    pub species: Sizes,
    /// By kind.
    pub kinds: Sizes,
    /// By kind and age.
    pub leaves: Sizes,
    /// By age.
    pub ages: Sizes,
    /// Fewest households of a group, and of what is left of a group without the published ones within it.
    pub least: f64,
}

/// A part: those of a group that are in no published group within it.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Part {
    /// The group.
    pub group: Group,
    /// The published groups within.
    pub without: Vec<Group>,
}

impl Part {
    /// Whether a household is in it.
    #[must_use]
    pub fn holds(&self, one: &Drawn) -> bool {
        self.group.holds(one) && !self.without.iter().any(|inner| inner.holds(one))
    }
}

/// What is published of one way of dividing.
#[derive(Clone, PartialEq, Eq, Debug, Default)]
pub struct Division {
    /// Each part; no household is in two.
    pub parts: Vec<Part>,
    /// Each group, and the numbers of the parts that make it up.
    pub groups: Vec<(Group, Vec<usize>)>,
}

impl Division {
    /// The number of the part that a household is in.
    #[must_use]
    pub fn part_of(&self, one: &Drawn) -> Option<usize> {
        // Parts are apart: the first that holds it is the only one.
        self.parts.iter().position(|part| part.holds(one))
    }

    /// Takes in a published group, made of what is left of it and of the groups within, which are taken in already.
    fn take_in(&mut self, group: Group, within: &[Group], left: bool) {
        let mut parts: Vec<usize> = Vec::new();
        for (inner, its) in &self.groups {
            if within.contains(inner) {
                parts.extend(its);
            }
        }
        if left {
            parts.push(self.parts.len());
            self.parts.push(Part { group, without: within.to_vec() });
        }
        self.groups.push((group, parts));
    }
}

/// Of groups that divide a larger one, those to publish: large enough, and what is left of the larger one large enough too. `all` are all
/// that there can be; `open` those that may be published.
fn divide(all: &[Group], open: impl Fn(&Group) -> bool, sizes: &Sizes, least: f64) -> Vec<Group> {
    let large = |group: &&Group| open(group) && sizes.of(group) >= sizes.bar;
    let mut published: Vec<Group> = all.iter().filter(large).copied().collect();
    // The smallest last, to go first.
    published.sort_by(|a, b| sizes.of(b).total_cmp(&sizes.of(a)));
    while published.len() < all.len() {
        let left: f64 = all.iter().filter(|group| !published.contains(group)).map(|group| sizes.of(group)).sum();
        // Where nobody is left there is nobody to be told of.
        if left >= least || left == 0.0 || published.pop().is_none() {
            break;
        }
    }
    published.sort_unstable();
    published
}

impl AllSizes {
    /// Groups by species, kind of word and age, for what concerns words.
    #[must_use]
    pub fn by_word(&self) -> Division {
        let mut division = Division::default();
        for top in self.tops() {
            let all = WordKind::ALL.map(|kind| top.kind(kind));
            let kinds = divide(&all, |_| true, &self.kinds, self.least);
            for kind in &kinds {
                let all = AgeBand::ALL.map(|age| kind.age(age));
                let ages = divide(&all, known_age, &self.leaves, self.least);
                ages.iter().for_each(|age| division.take_in(*age, &[], true));
                division.take_in(*kind, &ages, ages.len() < all.len());
            }
            division.take_in(top, &kinds, kinds.len() < all.len());
        }
        division
    }

    /// Groups by species and age, for what concerns the learner.
    #[must_use]
    pub fn by_learner(&self) -> Division {
        let mut division = Division::default();
        for top in self.tops() {
            let all = AgeBand::ALL.map(|age| top.age(age));
            let ages = divide(&all, known_age, &self.ages, self.least);
            ages.iter().for_each(|age| division.take_in(*age, &[], true));
            division.take_in(top, &ages, ages.len() < all.len());
        }
        division
    }

    /// Groups by species alone.
    #[must_use]
    pub fn by_species(&self) -> Division {
        let mut division = Division::default();
        self.tops().for_each(|top| division.take_in(top, &[], true));
        division
    }

    fn tops(&self) -> impl Iterator<Item = Group> {
        let all = Species::ALL.map(Group::species);
        all.into_iter().filter(|group| self.species.of(group) >= self.species.bar)
    }
}

/// An unknown age is no group of its own.
fn known_age(group: &Group) -> bool {
    group.age_band != Some(AgeBand::Unknown)
}

/// Whether two divisions together tell of fewer households than `least`: of those in the same part of both, and on the same side of what
/// cuts through the other's parts. Where there is no noise, counts of groups that cross could be subtracted from each other.
#[must_use]
pub fn cross(one: &Division, other: &Division, side: impl Fn(&Drawn) -> bool, drawn: &[Drawn], least: usize) -> bool {
    let mut together: BTreeMap<_, usize> = BTreeMap::new();
    for of in drawn {
        let cut = other.part_of(of).map(|part| (part, side(of)));
        *together.entry((one.part_of(of), cut)).or_default() += 1;
    }
    // Those in no part of either are not told of.
    together.into_iter().any(|(places, many)| places != (None, None) && many < least)
}
