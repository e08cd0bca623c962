//! Species the facts know, and the life stages the energy table knows.

use serde::{Deserialize, Serialize};

/// A species. `Other` is any animal without an entry in the facts: nothing is computed for it that needs one.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug, Serialize, Deserialize)]
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
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug, Serialize, Deserialize)]
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
    /// Puppy under four months.
    #[serde(rename = "puppy_under_4_months")]
    PuppyUnder4Months,
    /// Puppy of four months or more.
    #[serde(rename = "puppy_over_4_months")]
    PuppyOver4Months,
    /// Kitten.
    Kitten,
}

impl LifeStage {
    /// Every life stage.
    pub const ALL: [Self; 7] = [
        Self::NeuteredAdult,
        Self::IntactAdult,
        Self::ObeseProne,
        Self::WeightLoss,
        Self::PuppyUnder4Months,
        Self::PuppyOver4Months,
        Self::Kitten,
    ];

    /// Whether this life stage is one of `species`.
    #[must_use]
    pub const fn fits(self, species: Species) -> bool {
        match self {
            Self::PuppyUnder4Months | Self::PuppyOver4Months => matches!(species, Species::Dog),
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
            Self::PuppyUnder4Months => "puppy_under_4_months",
            Self::PuppyOver4Months => "puppy_over_4_months",
            Self::Kitten => "kitten",
        }
    }
}
