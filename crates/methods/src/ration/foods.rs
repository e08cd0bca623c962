//! Energy of common reward foods by weight.
//!
//! Source: USDA National Nutrient Database, release 26 (release number from memory), each figure confirmed against a
//! public copy of its table by its number (NDB): a package's own figure is better, and wins wherever it is known.

/// A food's energy by weight.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct FoodEnergy {
    /// Key, in snake case.
    pub name: &'static str,
    /// Energy, kcal a gram.
    pub kcal_per_gram: f64,
    /// Number of the food in the USDA table.
    pub ndb: &'static str,
    /// How well sourced the figure is.
    pub status: &'static str,
}

const fn food(name: &'static str, kcal_per_gram: f64, ndb: &'static str) -> FoodEnergy {
    FoodEnergy {
        name,
        kcal_per_gram,
        ndb,
        status: "confirmed against a public copy of the USDA table; the package's figure is better",
    }
}

/// Every food with a figure. Plain: without salt, fat, seasoning, bones, seeds or stones.
pub const FOODS: [FoodEnergy; 10] = [
    food("chicken_breast_cooked", 1.65, "05064"),
    food("cheddar", 4.03, "01009"),
    food("carrot_raw", 0.41, "11124"),
    food("apple_raw", 0.52, "09003"),
    food("egg_cooked", 1.55, "01129"),
    // Wild Atlantic salmon has 1.82, pink salmon 1.53.
    food("salmon_farmed_cooked", 2.06, "15237"),
    food("banana", 0.89, "09040"),
    food("green_beans", 0.31, "11052"),
    food("turkey_breast_cooked", 1.47, "05220"),
    // Lean roasted round has 2.18; other lean cuts run from 2.0 to 2.6.
    food("beef_lean_cooked", 2.2, "13870"),
];

/// The figure for a food by its key, or none.
///
/// ```
/// use sayso_methods::ration::food_energy;
/// assert_eq!(food_energy("cheddar").map(|f| f.kcal_per_gram), Some(4.03));
/// assert_eq!(food_energy("moon dust"), None);
/// ```
pub fn food_energy(name: &str) -> Option<FoodEnergy> {
    FOODS.iter().find(|f| f.name == name).copied()
}
