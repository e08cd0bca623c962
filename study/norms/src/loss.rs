//! Privacy loss (the epsilon of differential privacy), and how a release's is shared among what it counts.

use std::str::FromStr;

/// A privacy loss in thousandths, so that sums are exact.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Debug, Default)]
pub struct Loss(u32);

/// A text that is no loss.
#[derive(Clone, PartialEq, Eq, Debug, thiserror::Error)]
#[error("\"{0}\" is no epsilon: it must be above 0 and no more than 10, with up to three digits after the point")]
pub struct NoLoss(String);

impl Loss {
    /// What a year may cost a household: with it, whoever sees a release learns of one household at most what moves their odds about it
    /// by a factor of e.
    pub const YEARLY: Self = Self(1_000);
    const MOST: u32 = 10_000;

    /// In units of epsilon.
    #[must_use]
    pub fn get(self) -> f64 {
        f64::from(self.0) / 1_000.0
    }

    /// Both, one after the other on the same households.
    #[must_use]
    pub const fn and(self, other: Self) -> Self {
        Self(self.0.saturating_add(other.0))
    }

    fn read(text: &str) -> Option<Self> {
        let (whole, part) = text.split_once('.').unwrap_or((text, ""));
        let digits = |text: &str| text.bytes().all(|b| b.is_ascii_digit());
        if whole.is_empty() || part.len() > 3 || !digits(whole) || !digits(part) || text.ends_with('.') {
            return None;
        }
        let thousandths = format!("{part:0<3}").parse::<u32>().ok()?;
        let all = whole.parse::<u32>().ok()?.checked_mul(1_000)?.checked_add(thousandths)?;
        (1..=Self::MOST).contains(&all).then_some(Self(all))
    }
}

impl FromStr for Loss {
    type Err = NoLoss;
    fn from_str(text: &str) -> Result<Self, NoLoss> {
        Self::read(text).ok_or_else(|| NoLoss(text.to_owned()))
    }
}

impl std::fmt::Display for Loss {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        let (whole, part) = (self.0 / 1_000, self.0 % 1_000);
        if part == 0 {
            return write!(f, "{whole}");
        }
        write!(f, "{whole}.{}", format!("{part:03}").trim_end_matches('0'))
    }
}

/// What is counted with noise. Each has its share of the loss: they are counted of the same households, so their losses add up.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Debug)]
pub enum Counted {
    /// Households by species.
    Species,
    /// Households by species and kind of word.
    Kinds,
    /// Households by species, kind of word and age.
    Leaves,
    /// Households by species and age.
    Ages,
    /// Showings to the first press.
    Showings,
    /// Days to the first press.
    Days,
    /// Share joined of invitations.
    Joined,
    /// What the first words brought.
    Words,
    /// Hours of one press.
    Hours,
    /// Days in one stage.
    Stages,
    /// Households that tell of one week, by stretch of weeks.
    Stretches,
    /// Presses in one week.
    Weeks,
}

impl Counted {
    /// All.
    pub const ALL: [Self; 12] = [
        Self::Species,
        Self::Kinds,
        Self::Leaves,
        Self::Ages,
        Self::Showings,
        Self::Days,
        Self::Joined,
        Self::Words,
        Self::Hours,
        Self::Stages,
        Self::Stretches,
        Self::Weeks,
    ];

    /// Its share of a release's loss, in hundredths. They add up to a hundred (a test holds it).
    #[must_use]
    pub const fn share(self) -> u32 {
        match self {
            Self::Species => 4,
            Self::Kinds | Self::Leaves => 6,
            Self::Ages => 4,
            Self::Showings => 31,
            Self::Days => 14,
            Self::Joined => 6,
            Self::Words => 9,
            Self::Hours | Self::Weeks => 5,
            Self::Stages => 8,
            Self::Stretches => 2,
        }
    }

    /// By how much all its counts together change, at most, where one household comes or goes: groups are apart, so a household is in one
    /// of them, with one word; of the first words with each of three; of weeks with one week of that word, or none.
    #[must_use]
    pub const fn sensitivity(self) -> u32 {
        match self {
            Self::Words => crate::draw::FIRST_WORDS as u32,
            _ => 1,
        }
    }

    /// The scale of its noise: of discrete Laplace noise `P(x) ∝ exp(−|x|/scale)` on each count.
    #[must_use]
    pub fn scale(self, of: Loss) -> f64 {
        let exact = f64::from(self.sensitivity()) * 100.0 / (of.get() * f64::from(self.share()));
        // Rounded up, so that the losses never add up to more than was allowed.
        exact * (1.0 + 1e-12)
    }
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;

    #[test]
    fn a_loss_is_read_exactly_or_not_at_all() {
        for (text, shown) in [("1", "1"), ("0.5", "0.5"), ("0.050", "0.05"), ("10", "10"), ("1.001", "1.001")] {
            assert_eq!(text.parse::<Loss>().unwrap().to_string(), shown);
        }
        for text in ["", "0", "-1", "1.", ".5", "1e3", "inf", "NaN", "10.001", "0.0001", "+1", " 1", "99999999999"] {
            assert!(text.parse::<Loss>().is_err(), "{text}");
        }
    }

    #[test]
    fn the_shares_add_up_to_the_whole() {
        assert_eq!(Counted::ALL.map(Counted::share).iter().sum::<u32>(), 100);
        let spent: f64 = Counted::ALL.iter().map(|c| f64::from(c.sensitivity()) / c.scale(Loss::YEARLY)).sum();
        assert!(spent <= 1.0 && spent > 0.999_999, "{spent}");
    }
}
