//! Bayes factor of a rate against a point chance.
//!
//! Source: H. Jeffreys (1961), Theory of Probability, ch. 5 (binomial with a beta prior). The directed form cuts the prior at
//! chance (encompassing prior: I. Klugkist, B. Kato & H. Hoijtink 2005, Stat Neerl 59:57).

use super::{Proportion, StatsError};
use statrs::function::beta::{checked_beta_reg, checked_ln_beta};

/// Beta(a, b) prior of the rate if it is not chance; `a = b = 1` holds every rate equally likely.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct BetaPrior {
    /// First shape, positive.
    pub a: f64,
    /// Second shape, positive.
    pub b: f64,
}

impl BetaPrior {
    /// Every rate equally likely.
    pub const EVEN: Self = Self { a: 1.0, b: 1.0 };
}

/// Which rates the rival of chance allows.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Direction {
    /// Any rate.
    Any,
    /// Only rates above chance.
    Above,
    /// Only rates below chance.
    Below,
}

/// How much likelier the data are under the rival than under chance.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct BayesFactor {
    /// Natural logarithm of the factor; above 0 favours the rival.
    pub ln: f64,
    /// Trials behind it.
    pub n: u64,
}

impl BayesFactor {
    /// The factor itself (infinite where it overflows).
    pub fn factor(self) -> f64 {
        self.ln.exp()
    }
}

/// Bayes factor of `seen` for a rate drawn from `prior` against exactly `chance`.
///
/// # Errors
/// [`StatsError::OutOfRange`] unless `0 < chance < 1` and the prior's shapes are positive.
///
/// ```
/// use sayso_methods::stats::{BetaPrior, Direction, Proportion, binomial_bayes_factor};
/// // 1 / (11 * C(10, 5) / 2^10): five of ten speaks for chance.
/// let found = binomial_bayes_factor(Proportion::new(5, 10)?, 0.5, BetaPrior::EVEN, Direction::Any)?;
/// assert!((found.factor() - 1024.0 / (11.0 * 252.0)).abs() < 1e-12);
/// # Ok::<(), sayso_methods::stats::StatsError>(())
/// ```
pub fn binomial_bayes_factor(
    seen: Proportion,
    chance: f64,
    prior: BetaPrior,
    direction: Direction,
) -> Result<BayesFactor, StatsError> {
    if !(chance > 0.0 && chance < 1.0) {
        return Err(StatsError::OutOfRange { what: "chance", value: chance });
    }
    for shape in [prior.a, prior.b] {
        if !(shape > 0.0 && shape.is_finite()) {
            return Err(StatsError::OutOfRange { what: "prior shape", value: shape });
        }
    }
    let (k, m) = (seen.k() as f64, (seen.n() - seen.k()) as f64);
    let (a, b) = (k + prior.a, m + prior.b);
    let bad = |_| StatsError::OutOfRange { what: "beta function argument", value: a + b };
    let mut ln = checked_ln_beta(a, b).map_err(bad)?
        - checked_ln_beta(prior.a, prior.b).map_err(bad)?
        - k * chance.ln()
        - m * (-chance).ln_1p();
    // Share of prior and of posterior on the allowed side; the upper side by symmetry, so small shares keep their digits.
    let side = |a: f64, b: f64| match direction {
        Direction::Any => Ok(1.0),
        Direction::Above => checked_beta_reg(b, a, 1.0 - chance).map_err(bad),
        Direction::Below => checked_beta_reg(a, b, chance).map_err(bad),
    };
    let (before, after) = (side(prior.a, prior.b)?, side(a, b)?);
    if before <= 0.0 {
        return Err(StatsError::OutOfRange { what: "prior share on the allowed side", value: before });
    }
    ln += after.max(f64::MIN_POSITIVE).ln() - before.ln();
    Ok(BayesFactor { ln, n: seen.n() })
}
