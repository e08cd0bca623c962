//! The whole day's energy of one learner: typed in by a person who asked, or computed as resting energy x factor.
//!
//! Source: see `energy`. A typed-in allowance always wins over the formula.

use super::energy::{FactorSource, KcalRange, Refusal, individual_range, life_stage_factor, resting_energy};
use sayso_model::{Kcal, Kilograms, LifeStage, Species};

/// What is known about a learner that the allowance depends on.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Animal {
    /// Species.
    pub species: Species,
    /// Body weight; the target weight on a weight-loss plan.
    pub weight: Option<Kilograms>,
    /// Weight expected once grown; needed for puppies.
    pub grown_weight: Option<Kilograms>,
    /// Stage of life.
    pub stage: Option<LifeStage>,
    /// Allowance a veterinarian gave, if any; needed for species without a formula.
    pub typed_in: Option<Kcal>,
}

/// Where an allowance comes from.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Basis {
    /// Typed in; not checked.
    TypedIn,
    /// Resting energy times a factor.
    Formula {
        /// Resting energy, kcal a day.
        resting: Kcal,
        /// Factor of the life stage.
        factor: f64,
        /// Where the factor is from.
        source: FactorSource,
    },
}

/// The day's whole energy.
#[derive(Debug, Clone, PartialEq)]
pub struct Allowance {
    /// Energy a day.
    pub day: Kcal,
    /// What individuals of this weight may need; none for a typed-in allowance.
    pub range: Option<KcalRange>,
    /// Where the figure comes from.
    pub basis: Basis,
    /// What to say beside the figure.
    pub cautions: Vec<Caution>,
}

/// Something to say beside a figure.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Caution {
    /// Always, for a computed figure: individuals of one weight need up to three times as much as others.
    StartingPoint,
    /// Puppy or kitten: the need changes from week to week.
    Growing,
    /// On a weight-loss plan, computed on the target weight; in cats eating too little is itself dangerous.
    WeightLoss,
    /// The person typed the figure in; not checked.
    TypedIn,
}

/// The day's energy of a learner.
///
/// # Errors
/// A [`Refusal`] where nothing is typed in and the formula does not apply or lacks a weight or the life stage.
///
/// ```
/// use sayso_methods::ration::{Animal, day_allowance};
/// use sayso_model::{Kilograms, LifeStage, Species};
/// let dog = Animal {
///     species: Species::Dog,
///     weight: Some(Kilograms::new(22.0)?),
///     grown_weight: None,
///     stage: Some(LifeStage::NeuteredAdult),
///     typed_in: None,
/// };
/// assert!((day_allowance(&dog)?.day.get() - 1137.72).abs() < 0.01);
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
pub fn day_allowance(animal: &Animal) -> Result<Allowance, Refusal> {
    let cautions = stage_caution(animal.stage);
    if let Some(day) = animal.typed_in {
        return Ok(Allowance {
            day,
            range: None,
            basis: Basis::TypedIn,
            cautions: cautions.into_iter().chain([Caution::TypedIn]).collect(),
        });
    }
    // The species first: asking for a weight that would then be refused helps nobody.
    if !matches!(animal.species, Species::Dog | Species::Cat) {
        return Err(Refusal::NoFormula(animal.species));
    }
    let weight = animal.weight.ok_or(Refusal::NoWeight)?;
    let resting = resting_energy(animal.species, weight)?;
    let stage = animal.stage.ok_or(Refusal::NoStage)?;
    let factor = life_stage_factor(animal.species, stage, weight, animal.grown_weight)?;
    let day = Kcal::clamped(resting.get() * factor.times);
    Ok(Allowance {
        day,
        range: Some(individual_range(day)),
        basis: Basis::Formula { resting, factor: factor.times, source: factor.source },
        cautions: cautions.into_iter().chain([Caution::StartingPoint]).collect(),
    })
}

const fn stage_caution(stage: Option<LifeStage>) -> Option<Caution> {
    match stage {
        Some(stage) => match stage.today() {
            LifeStage::Puppy | LifeStage::Kitten => Some(Caution::Growing),
            LifeStage::WeightLoss => Some(Caution::WeightLoss),
            _ => None,
        },
        None => None,
    }
}
