//! Cards as they are now: of each the newest version.

use crate::cards::{AnimalCard, BoardLayout, ClipCard, HomeCard, HouseRule, PersonCard, RewardCard, WordCard};
use crate::id::{AnimalId, ClipId, PersonId, RewardId, RuleId, WordId};
use crate::reading::Language;
use crate::story::Story;
use crate::time::Zone;
use std::collections::BTreeMap;

impl Story {
    /// The household's card, if it has one.
    #[must_use]
    pub fn home(&self) -> Option<&HomeCard> {
        self.newest_card(|_| true)
    }

    /// The household's zone; UTC until it has a card.
    #[must_use]
    pub fn zone(&self) -> Zone {
        self.home().map_or_else(Zone::utc, |card| card.zone.clone())
    }

    /// People, inactive ones included.
    #[must_use]
    pub fn people(&self) -> BTreeMap<PersonId, &PersonCard> {
        self.cards(|c: &PersonCard| c.person)
    }

    /// Animals, inactive ones included.
    #[must_use]
    pub fn animals(&self) -> BTreeMap<AnimalId, &AnimalCard> {
        self.cards(|c: &AnimalCard| c.animal)
    }

    /// Rewards, inactive ones included.
    #[must_use]
    pub fn rewards(&self) -> BTreeMap<RewardId, &RewardCard> {
        self.cards(|c: &RewardCard| c.reward)
    }

    /// Words, inactive ones included.
    #[must_use]
    pub fn words(&self) -> BTreeMap<WordId, &WordCard> {
        self.cards(|c: &WordCard| c.word)
    }

    /// Active words taught to one animal.
    #[must_use]
    pub fn words_of(&self, animal: AnimalId) -> Vec<&WordCard> {
        let mut words: Vec<_> = self.words().into_values().filter(|w| w.active && w.is_for(animal)).collect();
        words.sort_by(|a, b| a.says.cmp(&b.says).then(a.word.cmp(&b.word)));
        words
    }

    /// Active rewards for one animal.
    #[must_use]
    pub fn rewards_of(&self, animal: AnimalId) -> Vec<&RewardCard> {
        let mut rewards: Vec<_> = self.rewards().into_values().filter(|r| r.active && r.is_for(animal)).collect();
        rewards.sort_by(|a, b| a.name.cmp(&b.name).then(a.reward.cmp(&b.reward)));
        rewards
    }

    /// Recordings, inactive ones included.
    #[must_use]
    pub fn clips(&self) -> BTreeMap<ClipId, &ClipCard> {
        self.cards(|c: &ClipCard| c.clip)
    }

    /// Rules of the house, inactive ones included.
    #[must_use]
    pub fn rules(&self) -> BTreeMap<RuleId, &HouseRule> {
        self.cards(|c: &HouseRule| c.rule)
    }

    /// The board as it is now.
    #[must_use]
    pub fn board(&self) -> Option<&BoardLayout> {
        self.cards(|_: &BoardLayout| ()).into_values().next()
    }

    /// The language that words are compared in: the board's, or English where none was chosen.
    #[must_use]
    pub fn language_of_words(&self) -> Language {
        self.board().and_then(|board| board.language).unwrap_or(Language::En)
    }
}
