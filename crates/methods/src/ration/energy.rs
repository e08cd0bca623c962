//! Energy a dog or cat needs a day: resting energy, life-stage factors, and how far individuals differ.
//!
//! Sources: resting energy 70 x kg^0.75 kcal a day, Small Animal Clinical Nutrition, 5th ed., table 5-2, and Merck
//! Veterinary Manual, nutritional requirements of small animals. Factors of grown animals and kittens: in wide clinical use, seen in published veterinary charts (secondary).
//! Weight loss: 80 % of resting energy at the ideal weight, AAHA weight management guidelines 2014, J Am Anim Hosp Assoc
//! 50:1. Puppies: 210, 175, 140 kcal x kg^0.75 by share of the grown weight, FEDIAF nutritional guidelines 2021 (table as
//! reprinted in Vet Nurs J 37(4), 2022), here over resting energy. Spread: individuals of one weight vary up to threefold
//! (Merck).

use FactorSource::{Charts, GrowthBelowFourFifths, GrowthBelowHalf, GrowthToTheEnd, HomeDogs, Slimming};
use sayso_model::{Kcal, Kilograms, LifeStage, Species};

/// Highest over lowest need among individuals of one weight ("up to threefold", Merck Veterinary Manual).
pub const INDIVIDUAL_SPREAD: f64 = 3.0;

/// Why nothing is computed. Every one is a reason to ask a veterinarian; an allowance they give can be typed in.
#[derive(Debug, Clone, Copy, PartialEq, thiserror::Error)]
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
    /// A puppy's need goes by its share of a weight that is not known.
    #[error(
        "a puppy's need goes by its share of the weight it will have grown, and that is not known: ask the breeder or a veterinarian and type it in, or type in the day's allowance a veterinarian gives"
    )]
    NoGrownWeight,
    /// A puppy heavier than it is expected to become.
    #[error(
        "{kg} kg is more than the {grown} kg expected of this puppy once grown: correct one of them, choose a grown stage of life, or ask a veterinarian for the day's allowance and type it in"
    )]
    Outgrown {
        /// Weight given.
        kg: f64,
        /// Expected once grown.
        grown: f64,
    },
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
    Ok(Kcal::clamped(70.0 * plausible(species, weight)?.powf(0.75)))
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
    /// Where the figure is from.
    pub source: FactorSource,
}

/// Where a factor is from. Each is a starting point only.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum FactorSource {
    /// Published veterinary charts; secondary.
    Charts,
    /// The same; home dogs of ideal weight used 1.83 (Divol & Priymenko 2017).
    HomeDogs,
    /// 80 % of resting energy at the ideal weight, AAHA guidelines 2014.
    Slimming,
    /// FEDIAF 2021, below half of the grown weight.
    GrowthBelowHalf,
    /// FEDIAF 2021, from half to four fifths of the grown weight.
    GrowthBelowFourFifths,
    /// FEDIAF 2021, from four fifths of the grown weight.
    GrowthToTheEnd,
}

const fn factor(species: Species, stage: LifeStage, times: f64, source: FactorSource) -> Factor {
    Factor { species, stage, times, source }
}

/// Every factor that goes by life stage alone. For weight loss it applies to the target weight.
pub const FACTORS: [Factor; 9] = [
    factor(Species::Dog, LifeStage::NeuteredAdult, 1.6, Charts),
    factor(Species::Dog, LifeStage::IntactAdult, 1.8, HomeDogs),
    factor(Species::Dog, LifeStage::ObeseProne, 1.4, Charts),
    factor(Species::Dog, LifeStage::WeightLoss, 0.8, Slimming),
    factor(Species::Cat, LifeStage::NeuteredAdult, 1.2, Charts),
    factor(Species::Cat, LifeStage::IntactAdult, 1.4, Charts),
    factor(Species::Cat, LifeStage::ObeseProne, 1.0, Charts),
    factor(Species::Cat, LifeStage::WeightLoss, 0.8, Slimming),
    factor(Species::Cat, LifeStage::Kitten, 2.5, Charts),
];

/// A puppy's factors by its share of the weight it will have grown: up to which share, which factor, from where.
pub const GROWTH: [(f64, f64, FactorSource); 3] =
    [(0.5, 3.0, GrowthBelowHalf), (0.8, 2.5, GrowthBelowFourFifths), (1.0, 2.0, GrowthToTheEnd)];

/// The factor of one species at one life stage; a puppy's needs its weight and the weight it is expected to have grown.
///
/// # Errors
/// [`Refusal::NoFormula`] for other species than dog and cat, [`Refusal::Stage`] where the stage is not one of the species;
/// for a puppy [`Refusal::NoGrownWeight`], [`Refusal::Outgrown`] and [`Refusal::Weight`] for a grown weight no dog has.
///
/// ```
/// use sayso_methods::ration::{Refusal, life_stage_factor};
/// use sayso_model::{Kilograms, LifeStage, Species};
/// let (now, grown) = (Kilograms::new(12.0)?, Kilograms::new(30.0)?);
/// assert_eq!(life_stage_factor(Species::Dog, LifeStage::Puppy, now, Some(grown))?.times, 3.0);
/// assert_eq!(life_stage_factor(Species::Dog, LifeStage::Puppy, now, None), Err(Refusal::NoGrownWeight));
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
pub fn life_stage_factor(
    species: Species,
    stage: LifeStage,
    weight: Kilograms,
    grown: Option<Kilograms>,
) -> Result<Factor, Refusal> {
    plausible_kg(species)?;
    let stage = stage.today();
    if !stage.fits(species) {
        return Err(Refusal::Stage { species, stage });
    }
    if stage == LifeStage::Puppy {
        let (kg, grown) = (weight.get(), plausible(species, grown.ok_or(Refusal::NoGrownWeight)?)?);
        let step = GROWTH.iter().find(|(below, ..)| kg < below * grown || (*below >= 1.0 && kg <= grown));
        let (_, times, source) = step.ok_or(Refusal::Outgrown { kg, grown })?;
        return Ok(factor(species, stage, *times, *source));
    }
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

// The weight in kilograms, where such an animal can have it.
fn plausible(species: Species, weight: Kilograms) -> Result<f64, Refusal> {
    let (kg, (low, high)) = (weight.get(), plausible_kg(species)?);
    if (low..=high).contains(&kg) { Ok(kg) } else { Err(Refusal::Weight { species, kg, low, high }) }
}

// Bounds against slips of the finger (grams or pounds for kilograms); our choice, generous.
const fn plausible_kg(species: Species) -> Result<(f64, f64), Refusal> {
    match species {
        Species::Dog => Ok((0.2, 150.0)),
        Species::Cat => Ok((0.1, 25.0)),
        other => Err(Refusal::NoFormula(other)),
    }
}
