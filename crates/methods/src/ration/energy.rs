//! Energy a dog or cat needs a day: resting energy, life-stage factors, and how far individuals differ.
//!
//! Sources: resting energy 70 x kg^0.75 kcal a day, Small Animal Clinical Nutrition, 5th ed., table 5-2, and Merck
//! Veterinary Manual, nutritional requirements of small animals; linear form 30 x kg + 70 above 2 and below 45 kg,
//! Merck. Factors: in wide clinical use (Merck table; AAHA nutrition and weight management guidelines 2021), here
//! from memory. Spread: individuals of one weight vary up to threefold (Merck).

use sayso_model::{Kcal, Kilograms, LifeStage, Species};

/// Highest over lowest need among individuals of one weight ("up to threefold", Merck Veterinary Manual).
pub const INDIVIDUAL_SPREAD: f64 = 3.0;

/// Why nothing is computed. Every one is a reason to ask a veterinarian; an allowance they give can be typed in.
#[derive(Debug, Clone, Copy, PartialEq, thiserror::Error)]
#[non_exhaustive]
pub enum Refusal {
    /// The 0.75-power rule is for dogs and cats.
    #[error(
        "there is no formula here for this animal ({}): ask a veterinarian for the day's allowance and type it in",
        .0.name()
    )]
    NoFormula(Species),
    /// The weight is not one an animal of this species has.
    #[error(
        "{kg} kg is no weight for a {} ({low} to {high} kg): check it, or ask a veterinarian for the day's allowance and type it in",
        species.name()
    )]
    Weight {
        /// Whose weight.
        species: Species,
        /// Weight given.
        kg: f64,
        /// Lightest accepted.
        low: f64,
        /// Heaviest accepted.
        high: f64,
    },
    /// The linear form holds only above 2 kg and below 45 kg.
    #[error(
        "the linear form holds above 2 kg and below 45 kg, not at {0} kg: use the 0.75-power form or ask a veterinarian"
    )]
    LinearWeight(f64),
    /// This life stage is not one of this species.
    #[error("{} is no life stage of a {}: choose another, or ask a veterinarian for the day's allowance and type it in", stage.name(), species.name())]
    Stage {
        /// Whose.
        species: Species,
        /// Stage given.
        stage: LifeStage,
    },
    /// No weight was given and no allowance typed in.
    #[error("no weight is known: weigh the animal, or ask a veterinarian for the day's allowance and type it in")]
    NoWeight,
    /// No life stage was given and no allowance typed in.
    #[error("no life stage is known: choose one, or ask a veterinarian for the day's allowance and type it in")]
    NoStage,
}

/// Resting energy a day: `70 kg^0.75` kcal, for dogs and cats.
///
/// # Errors
/// [`Refusal::NoFormula`] for other species, [`Refusal::Weight`] for a weight such an animal does not have.
///
/// ```
/// use sayso_methods::ration::{Refusal, resting_energy};
/// use sayso_model::{Kilograms, Species};
/// let ten = Kilograms::new(10.0)?;
/// assert!((resting_energy(Species::Dog, ten)?.get() - 393.639).abs() < 0.001);
/// assert_eq!(resting_energy(Species::Parrot, ten), Err(Refusal::NoFormula(Species::Parrot)));
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
pub fn resting_energy(species: Species, weight: Kilograms) -> Result<Kcal, Refusal> {
    let kg = weight.get();
    let (low, high) = plausible_kg(species)?;
    if (low..=high).contains(&kg) {
        Ok(Kcal::clamped(70.0 * kg.powf(0.75)))
    } else {
        Err(Refusal::Weight { species, kg, low, high })
    }
}

/// The linear form of resting energy, `30 kg + 70` kcal a day, for checking by hand.
///
/// # Errors
/// [`Refusal::LinearWeight`] unless the weight is above 2 kg and below 45 kg.
///
/// ```
/// use sayso_methods::ration::resting_energy_linear;
/// use sayso_model::Kilograms;
/// assert_eq!(resting_energy_linear(Kilograms::new(10.0)?)?.get(), 370.0);
/// assert!(resting_energy_linear(Kilograms::new(45.0)?).is_err());
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
pub fn resting_energy_linear(weight: Kilograms) -> Result<Kcal, Refusal> {
    let kg = weight.get();
    if kg > 2.0 && kg < 45.0 { Ok(Kcal::clamped(30.0 * kg + 70.0)) } else { Err(Refusal::LinearWeight(kg)) }
}

/// A multiplier of resting energy.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Factor {
    /// Whose.
    pub species: Species,
    /// At which stage of life.
    pub stage: LifeStage,
    /// Day's energy over resting energy.
    pub times: f64,
    /// How well sourced the figure is.
    pub status: &'static str,
}

const MEMORY: &str = "from memory; starting point only, check with a veterinarian";
const NOTES: &str = "confirmed in teaching notes; starting point only";

const fn factor(species: Species, stage: LifeStage, times: f64, status: &'static str) -> Factor {
    Factor { species, stage, times, status }
}

/// Every factor, by species and life stage. For weight loss it applies to the target weight.
pub const FACTORS: [Factor; 11] = [
    factor(Species::Dog, LifeStage::NeuteredAdult, 1.6, NOTES),
    factor(Species::Dog, LifeStage::IntactAdult, 1.8, MEMORY),
    factor(Species::Dog, LifeStage::ObeseProne, 1.4, MEMORY),
    factor(Species::Dog, LifeStage::WeightLoss, 1.0, MEMORY),
    factor(Species::Dog, LifeStage::PuppyUnder4Months, 3.0, MEMORY),
    factor(Species::Dog, LifeStage::PuppyOver4Months, 2.0, MEMORY),
    factor(Species::Cat, LifeStage::NeuteredAdult, 1.2, NOTES),
    factor(Species::Cat, LifeStage::IntactAdult, 1.4, MEMORY),
    factor(Species::Cat, LifeStage::ObeseProne, 1.0, MEMORY),
    factor(Species::Cat, LifeStage::WeightLoss, 0.8, MEMORY),
    factor(Species::Cat, LifeStage::Kitten, 2.5, NOTES),
];

/// The factor of one species at one life stage.
///
/// # Errors
/// [`Refusal::NoFormula`] for other species than dog and cat, [`Refusal::Stage`] where the stage is not one of the species.
pub fn life_stage_factor(species: Species, stage: LifeStage) -> Result<Factor, Refusal> {
    plausible_kg(species)?;
    FACTORS.iter().find(|f| f.species == species && f.stage == stage).copied().ok_or(Refusal::Stage { species, stage })
}

/// Lowest and highest need among individuals for which the formula gives one figure.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct KcalRange {
    /// Lowest, kcal a day.
    pub low: f64,
    /// Highest, kcal a day.
    pub high: f64,
}

/// The range around a computed need: highest is [`INDIVIDUAL_SPREAD`] times lowest and the figure is their geometric
/// middle (our reading of "up to threefold"; the source gives no centre).
pub fn individual_range(kcal: Kcal) -> KcalRange {
    let half = INDIVIDUAL_SPREAD.sqrt();
    KcalRange { low: kcal.get() / half, high: kcal.get() * half }
}

// Bounds against slips of the finger (grams or pounds for kilograms); our choice, generous.
const fn plausible_kg(species: Species) -> Result<(f64, f64), Refusal> {
    match species {
        Species::Dog => Ok((0.2, 150.0)),
        Species::Cat => Ok((0.1, 25.0)),
        other => Err(Refusal::NoFormula(other)),
    }
}
