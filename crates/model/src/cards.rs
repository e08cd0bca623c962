//! Cards: versions of what things are and mean. The latest version of a card counts (by when it happened, then by id).

mod board;
mod content;
mod picture;

pub use board::*;
pub use picture::*;

use crate::id::*;
use crate::reading::{Clock, Language, WeightUnit};
use crate::species::{LifeStage, Species};
use crate::stage::Stage;
use crate::text::{Label, Note};
use crate::time::{Day, Zone};
use crate::units::{Grams, Kcal, Kilograms, Probability, Seconds};
use borsh::{BorshDeserialize, BorshSerialize};
use serde::{Deserialize, Serialize};

const fn yes() -> bool {
    true
}

/// The household's name and zone; days and hours follow this zone.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, BorshSerialize, BorshDeserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct HomeCard {
    /// What the household calls itself.
    pub name: Label,
    /// The zone it lives in.
    pub zone: Zone,
}

/// What a person is to the household.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Serialize, Deserialize, BorshSerialize, BorshDeserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum Role {
    /// Lives here, shows and answers.
    #[serde(alias = "household")]
    Home,
    /// Coaches from outside.
    Coach,
    /// Comes now and then: a sitter, a walker, a friend.
    Visitor,
}

/// A person who shows or answers.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, BorshSerialize, BorshDeserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct PersonCard {
    /// Who.
    #[serde(alias = "teacher")]
    pub person: PersonId,
    /// The name used at home.
    pub name: Label,
    /// What they are to the household.
    pub role: Role,
    /// The language they read; the browser's where left out.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub language: Option<Language>,
    /// How they read the time of day; as usual in their language where left out.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub clock: Option<Clock>,
    /// The unit they weigh in; kilograms where left out.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub weight_unit: Option<WeightUnit>,
    /// False once they no longer take part.
    #[serde(default = "yes")]
    pub active: bool,
}

impl PersonCard {
    /// An active person who reads as usual in their browser.
    #[must_use]
    pub const fn new(person: PersonId, name: Label, role: Role) -> Self {
        Self { person, name, role, language: None, clock: None, weight_unit: None, active: true }
    }
}

/// An animal that learns.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, BorshSerialize, BorshDeserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct AnimalCard {
    /// Who.
    #[serde(alias = "learner")]
    pub animal: AnimalId,
    /// The name used at home.
    pub name: Label,
    /// Species.
    pub species: Species,
    /// Birth date, known or estimated from an age.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub born: Option<Day>,
    /// True where the birth date is an estimate.
    #[serde(default)]
    pub born_estimated: bool,
    /// Body weight (the target weight on a weight-loss plan).
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub weight_kg: Option<Kilograms>,
    /// Weight it is expected to have once grown; a puppy's energy need goes by its share of it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub adult_weight_kg: Option<Kilograms>,
    /// What the energy factor depends on.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub life_stage: Option<LifeStage>,
    /// The day's whole energy as a veterinarian set it; replaces any formula.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub day_kcal: Option<Kcal>,
    /// Share of the day's energy that rewards may take; at most one tenth where left out.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub reward_share: Option<Probability>,
    /// Hearing, sight, movement and the like that the board must allow for.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub limits: Option<Note>,
    /// Health cautions: allergies, pain, medicines, guarding.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub cautions: Option<Note>,
    /// False once the animal no longer takes part.
    #[serde(default = "yes")]
    pub active: bool,
}

impl AnimalCard {
    /// A card that says no more than who it is.
    #[must_use]
    pub const fn new(animal: AnimalId, name: Label, species: Species) -> Self {
        Self {
            animal,
            name,
            species,
            born: None,
            born_estimated: false,
            weight_kg: None,
            adult_weight_kg: None,
            life_stage: None,
            day_kcal: None,
            reward_share: None,
            limits: None,
            cautions: None,
            active: true,
        }
    }
}

/// Kinds of reward.
#[derive(
    Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug, Serialize, Deserialize, BorshSerialize, BorshDeserialize,
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum RewardKind {
    /// Anything eaten or licked.
    Food,
    /// Play with a person or a toy.
    Play,
    /// Being stroked, brushed, held.
    Touch,
    /// A known exercise the animal enjoys.
    Training,
    /// Going somewhere, sniffing, looking.
    Exploring,
    /// A place or time to rest.
    Rest,
}

impl RewardKind {
    /// Every kind.
    pub const ALL: [Self; 6] = [Self::Food, Self::Play, Self::Touch, Self::Training, Self::Exploring, Self::Rest];

    /// The name on the wire.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::Food => "food",
            Self::Play => "play",
            Self::Touch => "touch",
            Self::Training => "training",
            Self::Exploring => "exploring",
            Self::Rest => "rest",
        }
    }
}

/// Something an animal may want.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, BorshSerialize, BorshDeserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct RewardCard {
    /// Which.
    pub reward: RewardId,
    /// Its name at home.
    pub name: Label,
    /// Its kind. On the wire `reward_kind`: `kind` there names the kind of event.
    #[serde(rename = "reward_kind")]
    pub kind: RewardKind,
    /// Energy of one piece; needed for food.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub kcal_per_piece: Option<Kcal>,
    /// Weight of one piece.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub grams_per_piece: Option<Grams>,
    /// How long one delivery at the board takes, from press to done.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub seconds_to_deliver: Option<Seconds>,
    /// How often a day it can be given before people or the animal have had enough.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub most_per_day: Option<u16>,
    /// The word one would use for it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub says: Option<Label>,
    /// True where the household already says this word many times a day.
    #[serde(default)]
    pub already_said: bool,
    /// Whether it can be given at the board, many times a day; where nobody has said, its kind decides.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub at_board: Option<bool>,
    /// What stands for it where it cannot be held up beside another thing: the lead for going out.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub stand_in: Option<Label>,
    /// Animals it is for; empty means all.
    #[serde(default, skip_serializing_if = "Vec::is_empty", alias = "learners")]
    pub animals: Vec<AnimalId>,
    /// False once it is no longer used.
    #[serde(default = "yes")]
    pub active: bool,
}

impl RewardCard {
    /// A card that says no more than what it is.
    #[must_use]
    pub const fn new(reward: RewardId, name: Label, kind: RewardKind) -> Self {
        Self {
            reward,
            name,
            kind,
            kcal_per_piece: None,
            grams_per_piece: None,
            seconds_to_deliver: None,
            most_per_day: None,
            says: None,
            already_said: false,
            at_board: None,
            stand_in: None,
            animals: Vec::new(),
            active: true,
        }
    }

    /// Whether the reward is for this animal.
    #[must_use]
    pub fn is_for(&self, animal: AnimalId) -> bool {
        self.animals.is_empty() || self.animals.contains(&animal)
    }
}

/// What a button says and means here, and how everyone answers it.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, BorshSerialize, BorshDeserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct WordCard {
    /// Which word.
    pub word: WordId,
    /// What the button says.
    pub says: Label,
    /// What it means here.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub means: Option<Note>,
    /// How everyone answers it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub answer: Option<Note>,
    /// What everyone says when the answer is "not now".
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub not_now: Option<Note>,
    /// What is delivered.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub reward: Option<RewardId>,
    /// True for a word that ends a session and lowers arousal.
    #[serde(default)]
    pub closing: bool,
    /// Animals it is taught to; empty means all.
    #[serde(default, skip_serializing_if = "Vec::is_empty", alias = "learners")]
    pub animals: Vec<AnimalId>,
    /// False once it is off the board.
    #[serde(default = "yes")]
    pub active: bool,
}

impl WordCard {
    /// An active word of everyone's that says only what its button says.
    #[must_use]
    pub const fn new(word: WordId, says: Label) -> Self {
        Self {
            word,
            says,
            means: None,
            answer: None,
            not_now: None,
            reward: None,
            closing: false,
            animals: Vec::new(),
            active: true,
        }
    }

    /// Whether the word is taught to this animal.
    #[must_use]
    pub fn is_for(&self, animal: AnimalId) -> bool {
        self.animals.is_empty() || self.animals.contains(&animal)
    }
}

/// A recording on a button.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, BorshSerialize, BorshDeserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct ClipCard {
    /// Which recording.
    pub clip: ClipId,
    /// The word it says.
    pub word: WordId,
    /// Its length.
    pub seconds: Seconds,
    /// SHA-256 of the stored file, in hexadecimal.
    pub sha256: String,
    /// Integrated loudness in LUFS (ITU-R BS.1770), where it could be measured.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub lufs: Option<f64>,
    /// False once the recording was replaced or removed.
    #[serde(default = "yes")]
    pub active: bool,
}

/// A rule of the house, for one word or for all.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, BorshSerialize, BorshDeserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct HouseRule {
    /// Which rule.
    pub rule: RuleId,
    /// The word it is about; none for all.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub word: Option<WordId>,
    /// The rule.
    pub text: Note,
    /// False once it no longer holds.
    #[serde(default = "yes")]
    pub active: bool,
}

/// A person sets the stage of a word for an animal, for example on the tool's advice or against it.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, BorshSerialize, BorshDeserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct StageChoice {
    /// The word.
    pub word: WordId,
    /// The stage from now on.
    pub stage: Stage,
    /// Why.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub because: Option<Note>,
}
