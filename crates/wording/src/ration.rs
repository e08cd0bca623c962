//! The day's rewards in words: where a figure is from, why there is none, what to bear in mind.

use crate::hazards::whom;
use crate::{Locale, say};
use sayso_advisor::ration::DayCaution;
use sayso_methods::ration::{Basis, Caution, FactorSource, Refusal};

/// Where the day's energy comes from.
#[must_use]
pub fn basis(l: &Locale, basis: &Basis) -> String {
    match basis {
        Basis::TypedIn => say!(l, ration::basis_typed_in),
        Basis::Formula { resting, factor, source } => say!(
            l,
            ration::basis_formula,
            resting = l.number(resting.get(), 0),
            factor = l.number(*factor, 2),
            source = say!(l, ration::factor_source, source = factor_source(*source))
        ),
    }
}

const fn factor_source(source: FactorSource) -> &'static str {
    match source {
        FactorSource::Charts => "charts",
        FactorSource::HomeDogs => "home_dogs",
        FactorSource::Slimming => "slimming",
        FactorSource::GrowthBelowHalf => "growth_half",
        FactorSource::GrowthBelowFourFifths => "growth_most",
        FactorSource::GrowthToTheEnd => "growth_end",
    }
}

/// Why no allowance is computed for the animal called `name`, and whom to ask.
#[must_use]
pub fn refusal(l: &Locale, name: &str, why: &Refusal) -> String {
    match *why {
        Refusal::NoFormula(species) => say!(l, ration::no_formula, name = name, whom = whom(l, species)),
        Refusal::Weight { species, kg, low, high } => say!(
            l,
            ration::weight,
            name = name,
            weight = l.weight(kg),
            whom = whom(l, species),
            low = l.weight(low),
            high = l.weight(high)
        ),
        Refusal::Stage { species, stage } => {
            let stage = say!(l, card::stage, stage = stage.name());
            say!(l, ration::stage, name = name, stage = stage, whom = whom(l, species))
        }
        Refusal::NoWeight => say!(l, ration::no_weight, name = name),
        Refusal::NoGrownWeight => say!(l, ration::no_grown_weight, name = name),
        Refusal::Outgrown { kg, grown } => {
            say!(l, ration::outgrown, name = name, weight = l.weight(kg), grown = l.weight(grown))
        }
        Refusal::NoStage => say!(l, ration::no_stage, name = name),
    }
}

/// What to bear in mind about the day's rewards.
#[must_use]
pub fn caution(l: &Locale, caution: &DayCaution) -> String {
    match caution {
        DayCaution::UsedUp => say!(l, ration::used_up),
        DayCaution::Card(text) => text.clone(),
        DayCaution::Energy(Caution::StartingPoint) => say!(l, ration::starting_point),
        DayCaution::Energy(Caution::Growing) => say!(l, ration::growing),
        DayCaution::Energy(Caution::WeightLoss) => say!(l, ration::weight_loss),
        DayCaution::Energy(Caution::TypedIn) => say!(l, ration::typed_in),
    }
}
