//! How much of the day's energy rewards may take, and how many pieces that is.
//!
//! Source: rewards at most one tenth of the day's energy (WSAVA and AAHA recommendation, as stated in Vet Sci
//! 2025;12:282); pieces are rounded down.

use sayso_model::facts::MOST_REWARD_SHARE;
use sayso_model::{Grams, Kcal};

/// Why pieces cannot be counted.
#[derive(Debug, Clone, Copy, PartialEq, thiserror::Error)]
#[non_exhaustive]
pub enum PieceRefusal {
    /// The share is not above 0 and at most one tenth.
    #[error("rewards may take more than none and at most {MOST_REWARD_SHARE} of the day's energy, not {0}")]
    Share(f64),
    /// A piece without energy cannot be counted against the day.
    #[error("the energy of a piece is not known: give its kcal, or its grams and its kcal a gram")]
    NoEnergy,
    /// Energy a gram outside what any food has.
    #[error("{0} kcal a gram is not the energy of a food (0 to 9)")]
    PerGram(f64),
}

/// The share of the day's energy that rewards may take: above 0, at most one tenth.
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
pub struct RewardShare(f64);

impl RewardShare {
    /// The most that is recommended: one tenth.
    pub const MOST: Self = Self(MOST_REWARD_SHARE);

    /// A share, checked.
    ///
    /// # Errors
    /// [`PieceRefusal::Share`] unless it is above 0 and at most one tenth.
    pub fn new(share: f64) -> Result<Self, PieceRefusal> {
        if share > 0.0 && share <= MOST_REWARD_SHARE { Ok(Self(share)) } else { Err(PieceRefusal::Share(share)) }
    }

    /// The bare share.
    pub const fn get(self) -> f64 {
        self.0
    }
}

/// Energy of a piece from its weight and its energy a gram.
///
/// # Errors
/// [`PieceRefusal::PerGram`] above 9 kcal a gram (pure fat) or not a number, [`PieceRefusal::NoEnergy`] if it comes to 0.
pub fn kcal_per_piece(grams: Grams, kcal_per_gram: f64) -> Result<Kcal, PieceRefusal> {
    if !(0.0..=9.0).contains(&kcal_per_gram) {
        return Err(PieceRefusal::PerGram(kcal_per_gram));
    }
    let kcal = Kcal::clamped(grams.get() * kcal_per_gram);
    if kcal.get() > 0.0 { Ok(kcal) } else { Err(PieceRefusal::NoEnergy) }
}

/// Whole pieces in an energy; a hair's breadth of rounding error does not cost a piece.
pub(super) fn whole_pieces(energy: f64, piece: Kcal) -> Result<u32, PieceRefusal> {
    let kcal = piece.get();
    if kcal <= 0.0 {
        return Err(PieceRefusal::NoEnergy);
    }
    // `as` saturates, so a crumb of almost no energy gives the largest count, not a wrong one.
    Ok((energy.max(0.0) / kcal * (1.0 + 1e-12)).floor() as u32)
}
