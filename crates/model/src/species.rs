//! Species the facts know, and the life stages the energy table knows.

use borsh::{BorshDeserialize, BorshSerialize};
use serde::{Deserialize, Serialize};

/// A species. `Other` is any animal without an entry in the facts: nothing is computed for it that needs one.
#[derive(
    Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug, Serialize, Deserialize, BorshSerialize, BorshDeserialize,
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum Species {
    /// Domestic dog.
    Dog,
    /// Domestic cat.
    Cat,
    /// Any parrot.
    Parrot,
    /// Domestic rabbit.
    Rabbit,
    /// Anything else.
    Other,
}

impl Species {
    /// Every species, in the order pages list them.
    pub const ALL: [Self; 5] = [Self::Dog, Self::Cat, Self::Parrot, Self::Rabbit, Self::Other];

    /// The name in facts files and on pages.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::Dog => "dog",
            Self::Cat => "cat",
            Self::Parrot => "parrot",
            Self::Rabbit => "rabbit",
            Self::Other => "other",
        }
    }
}

/// What the energy factor depends on besides weight. Which ones apply depends on the species.
#[derive(
    Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug, Serialize, Deserialize, BorshSerialize, BorshDeserialize,
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum LifeStage {
    /// Grown, neutered.
    NeuteredAdult,
    /// Grown, intact.
    IntactAdult,
    /// Grown, gains easily.
    ObeseProne,
    /// On a weight-loss plan; the weight entered is then the target weight.
    WeightLoss,
    /// Growing dog; its need goes by its share of the weight it will have grown.
    Puppy,
    /// Kitten.
    Kitten,
    /// What earlier records call a puppy under four months: see [`Self::today`].
    #[serde(rename = "puppy_under_4_months")]
    PuppyUnder4Months,
    /// What earlier records call a puppy of four months or more: see [`Self::today`].
    #[serde(rename = "puppy_over_4_months")]
    PuppyOver4Months,
}

impl LifeStage {
    /// Every life stage a person chooses from.
    pub const ALL: [Self; 6] =
        [Self::NeuteredAdult, Self::IntactAdult, Self::ObeseProne, Self::WeightLoss, Self::Puppy, Self::Kitten];

    /// The life stage as it is called today: puppies were once told apart by age.
    #[must_use]
    pub const fn today(self) -> Self {
        match self {
            Self::PuppyUnder4Months | Self::PuppyOver4Months => Self::Puppy,
            other => other,
        }
    }

    /// Whether this life stage is one of `species`.
    #[must_use]
    pub const fn fits(self, species: Species) -> bool {
        match self.today() {
            Self::Puppy => matches!(species, Species::Dog),
            Self::Kitten => matches!(species, Species::Cat),
            _ => true,
        }
    }

    /// The key in tables and on the wire.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::NeuteredAdult => "neutered_adult",
            Self::IntactAdult => "intact_adult",
            Self::ObeseProne => "obese_prone",
            Self::WeightLoss => "weight_loss",
            Self::Puppy => "puppy",
            Self::PuppyUnder4Months => "puppy_under_4_months",
            Self::PuppyOver4Months => "puppy_over_4_months",
            Self::Kitten => "kitten",
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::cards::AnimalCard;

    const EARLIER: &str = r#"{"animal":"0195a0a0-0000-7000-8000-000000000001","name":"Tarn","species":"dog","born_estimated":false,"weight_kg":8.0,"life_stage":"puppy_over_4_months","active":true}"#;

    #[test]
    fn cards_written_before_the_grown_weight_are_read_and_written_as_they_stand() {
        let card: Result<AnimalCard, _> = serde_json::from_str(EARLIER);
        assert!(card.as_ref().is_ok_and(|c| c.adult_weight_kg.is_none()), "{card:?}");
        let stage = card.as_ref().ok().and_then(|c| c.life_stage);
        assert_eq!(stage.map(LifeStage::today), Some(LifeStage::Puppy));
        assert_eq!(card.ok().and_then(|c| serde_json::to_string(&c).ok()).as_deref(), Some(EARLIER));
    }

    #[test]
    fn a_puppy_is_a_dog_under_any_name() {
        for stage in [LifeStage::Puppy, LifeStage::PuppyUnder4Months, LifeStage::PuppyOver4Months] {
            assert!(stage.fits(Species::Dog) && !stage.fits(Species::Cat));
        }
        assert!(LifeStage::ALL.iter().all(|s| s.today() == *s), "earlier names are not offered");
    }
}
