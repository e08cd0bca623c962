//! What each card says of itself, and what must hold across its fields.

use super::*;
use crate::event::{About, Content, Does};
use crate::facts;
use crate::fault::Fault;
use crate::findings::Findings;
use crate::units::OutOfRange;
use std::collections::BTreeSet;

impl Content for HomeCard {
    fn about(&self) -> About<'_> {
        About { session: None, word: None, needs_animal: false, as_recorded: false, does: Does::Sets(None) }
    }
    fn check(&self, _: &mut Findings) {}
}

impl Content for PersonCard {
    fn about(&self) -> About<'_> {
        About {
            session: None,
            word: None,
            needs_animal: false,
            as_recorded: false,
            does: Does::Sets(Some(self.person.0)),
        }
    }
    fn check(&self, _: &mut Findings) {}
}

impl Content for AnimalCard {
    fn about(&self) -> About<'_> {
        About {
            session: None,
            word: None,
            needs_animal: false,
            as_recorded: false,
            does: Does::Sets(Some(self.animal.0)),
        }
    }
    fn check(&self, found: &mut Findings) {
        if let Some(share) = self.reward_share
            && share.get() > facts::MOST_REWARD_SHARE
        {
            found.wrong("reward_share", Fault::RewardShare { most: facts::MOST_REWARD_SHARE });
        }
        if let (Some(stage), species) = (self.life_stage, self.species)
            && !stage.fits(species)
        {
            found.wrong("life_stage", Fault::StageOfOther { stage, species });
        }
        if let (Some(kg), Some(grown)) = (self.weight_kg, self.adult_weight_kg)
            && self.life_stage.is_some_and(|s| s.today() == LifeStage::Puppy)
            && kg > grown
        {
            found.wrong("adult_weight_kg", Fault::GrownLessThanNow { grown: grown.get(), now: kg.get() });
        }
    }
}

impl Content for RewardCard {
    fn about(&self) -> About<'_> {
        About {
            session: None,
            word: None,
            needs_animal: false,
            as_recorded: false,
            does: Does::Sets(Some(self.reward.0)),
        }
    }
    fn check(&self, found: &mut Findings) {
        if self.kind == RewardKind::Food && self.kcal_per_piece.is_none() {
            found.wrong("kcal_per_piece", Fault::NoEnergy);
        }
        if self.kind != RewardKind::Food && self.kcal_per_piece.is_some() {
            found.wrong("kcal_per_piece", Fault::OnlyFood);
        }
    }
}

impl Content for WordCard {
    fn about(&self) -> About<'_> {
        About {
            session: None,
            word: Some(self.word),
            needs_animal: false,
            as_recorded: false,
            does: Does::Sets(Some(self.word.0)),
        }
    }
    fn check(&self, _: &mut Findings) {}
}

impl Content for ClipCard {
    fn about(&self) -> About<'_> {
        About {
            session: None,
            word: Some(self.word),
            needs_animal: false,
            as_recorded: true,
            does: Does::Sets(Some(self.clip.0)),
        }
    }
    fn check(&self, found: &mut Findings) {
        if self.sha256.len() != 64 || !self.sha256.bytes().all(|b| b.is_ascii_hexdigit()) {
            found.wrong("sha256", Fault::NotAHash);
        }
        if let Some(lufs) = self.lufs.filter(|l| !(-100.0..=20.0).contains(l)) {
            found.wrong("lufs", OutOfRange { unit: "LUFS", low: -100.0, high: 20.0, found: lufs }.into());
        }
    }
}

impl Content for BoardLayout {
    fn about(&self) -> About<'_> {
        About { session: None, word: None, needs_animal: false, as_recorded: false, does: Does::Sets(None) }
    }
    fn check(&self, found: &mut Findings) {
        for (field, n) in [("rows", self.rows), ("columns", self.columns)] {
            if !(1..=20).contains(&n) {
                found.wrong(field, Fault::range(1_u8, 20_u8, n));
            }
        }
        let (mut places, mut words) = (BTreeSet::new(), BTreeSet::new());
        for (i, placed) in self.words.iter().enumerate() {
            if placed.row >= self.rows || placed.column >= self.columns {
                found.wrong(&format!("words[{i}]"), Fault::OffBoard { row: placed.row, column: placed.column });
            }
            if !places.insert((placed.row, placed.column)) {
                found.wrong(&format!("words[{i}]"), Fault::PlaceTwice { row: placed.row, column: placed.column });
            }
            if !words.insert(placed.word) {
                found.wrong(&format!("words[{i}].word"), Fault::TwoPlaces);
            }
        }
    }
}

impl Content for HouseRule {
    fn about(&self) -> About<'_> {
        About {
            session: None,
            word: self.word,
            needs_animal: false,
            as_recorded: false,
            does: Does::Sets(Some(self.rule.0)),
        }
    }
    fn check(&self, _: &mut Findings) {}
}

/// Told, not set: the last choice up to a moment counts, and one dated later counts from then on.
impl Content for StageChoice {
    fn about(&self) -> About<'_> {
        About { session: None, word: Some(self.word), needs_animal: true, as_recorded: false, does: Does::Tells }
    }
    fn check(&self, _: &mut Findings) {}
}
