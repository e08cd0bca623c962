//! The day's food allowance and what is dangerous to eat.
//!
//! A starting point for healthy dogs and cats, never a diet: where the formula does not apply the answer is a
//! [`Refusal`] that sends the person to a veterinarian, and an allowance they give can be typed in instead.

mod aliases;
mod allowance;
mod energy;
mod foods;
mod hazards;
mod left;
mod pieces;
mod wording;

pub use allowance::{Allowance, Animal, Basis, Caution, day_allowance};
pub use energy::{
    FACTORS, Factor, FactorSource, GROWTH, INDIVIDUAL_SPREAD, KcalRange, Refusal, individual_range, life_stage_factor,
    resting_energy,
};
pub use foods::{FOODS, FoodEnergy, food_energy};
pub use hazards::{Finding, FoodLevel, Match, Verdict, look_up, look_up_as};
pub use left::{Feed, Left, PersonShare, left_today};
pub use pieces::{PieceRefusal, RewardShare, kcal_per_piece};
