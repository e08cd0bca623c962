//! Energy of common reward foods by weight.
//!
//! Source: USDA FoodData Central, rounded, from memory: a package's own figure is better, and wins wherever it is known.

/// A food's energy by weight.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct FoodEnergy {
    /// Key, in snake case.
    pub name: &'static str,
    /// Energy, kcal a gram.
    pub kcal_per_gram: f64,
    /// How well sourced the figure is.
    pub status: &'static str,
}

const fn food(name: &'static str, kcal_per_gram: f64) -> FoodEnergy {
    FoodEnergy {
        name,
        kcal_per_gram,
        status: "from memory (USDA FoodData Central, rounded); the package's figure is better",
    }
}

/// Every food with a figure. Plain: without salt, fat, seasoning, bones, seeds or stones.
pub const FOODS: [FoodEnergy; 10] = [
    food("chicken_breast_cooked", 1.65),
    food("cheddar", 4.03),
    food("carrot_raw", 0.41),
    food("apple_raw", 0.52),
    food("egg_cooked", 1.55),
    food("salmon_cooked", 2.06),
    food("banana", 0.89),
    food("green_beans", 0.31),
    food("turkey_breast_cooked", 1.47),
    food("beef_lean_cooked", 2.2),
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
