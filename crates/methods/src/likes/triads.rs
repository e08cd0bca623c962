//! Consistency of paired choices: circular triads (a over b, b over c, c over a).
//!
//! Source: M. G. Kendall & B. Babington Smith (1940), Biometrika 31:324. Coefficient 1 - 24 d / (n^3 - n) for odd n and
//! 1 - 24 d / (n^3 - 4 n) for even n, with d circular triads.

use super::{LikesError, check_items};
use crate::stats::{PMethod, StatsError, chi_square_upper};

/// One winner for every pair.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Tournament {
    scores: Vec<usize>,
}

impl Tournament {
    /// `wins[i][j]`: times item `i` was taken when offered with `j`; the majority decides each pair.
    ///
    /// # Errors
    /// [`LikesError::Undecided`] for a pair that is even or was never offered; [`LikesError::Stats`] for fewer than three items or a
    /// table that is not square.
    pub fn from_wins<R: AsRef<[u64]>>(wins: &[R]) -> Result<Self, LikesError> {
        Self::decide(wins.len(), |i, j| wins[i].as_ref().get(j).copied())
    }

    fn decide(items: usize, wins: impl Fn(usize, usize) -> Option<u64>) -> Result<Self, LikesError> {
        if items < 3 {
            return Err(StatsError::TooFew { what: "items", needed: 3, got: items }.into());
        }
        check_items(items)?;
        let mut scores = vec![0; items];
        for i in 0..items {
            for j in i + 1..items {
                let unpaired = StatsError::Unpaired { left: items, right: j };
                let (Some(a), Some(b)) = (wins(i, j), wins(j, i)) else { return Err(unpaired.into()) };
                match a.cmp(&b) {
                    std::cmp::Ordering::Greater => scores[i] += 1,
                    std::cmp::Ordering::Less => scores[j] += 1,
                    std::cmp::Ordering::Equal => return Err(LikesError::Undecided { first: i, second: j }),
                }
            }
        }
        Ok(Self { scores })
    }
}

/// How consistent the choices were.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Consistency {
    /// Circular triads.
    pub circular_triads: u64,
    /// Most circular triads that many items can have.
    pub most: u64,
    /// Coefficient of consistence: 1 without a circular triad, 0 with the most.
    pub zeta: f64,
    /// Probability that choices at random would be as consistent.
    pub p: f64,
    /// How `p` was made: exact up to six items.
    pub p_method: PMethod,
    /// Items.
    pub items: usize,
}

fn triads(scores: impl Iterator<Item = u64>, items: u64) -> u64 {
    items * (items - 1) * (items - 2) / 6 - scores.map(|s| s * s.saturating_sub(1) / 2).sum::<u64>()
}

/// Counts the circular triads of a tournament.
///
/// # Errors
/// [`LikesError::Stats`] only where the approximate p-value cannot be made, which no tournament has been seen to do.
///
/// ```
/// use sayso_methods::likes::{Tournament, consistency};
/// let circle = Tournament::from_wins(&[[0, 2, 0], [1, 0, 3], [3, 0, 0]])?;
/// let found = consistency(&circle)?;
/// assert_eq!((found.circular_triads, found.zeta), (1, 0.0));
/// # Ok::<(), sayso_methods::likes::LikesError>(())
/// ```
pub fn consistency(tournament: &Tournament) -> Result<Consistency, LikesError> {
    let items = tournament.scores.len();
    let n = items as u64;
    let circular_triads = triads(tournament.scores.iter().map(|s| *s as u64), n);
    let most = if n % 2 == 1 { (n * n * n - n) / 24 } else { (n * n * n - 4 * n) / 24 };
    let zeta = 1.0 - circular_triads as f64 / most as f64;
    let (p, p_method) = if items <= 6 {
        (exact_p(items, circular_triads), PMethod::Exact)
    } else {
        (approximate_p(n as f64, circular_triads as f64)?, PMethod::Approximate)
    };
    Ok(Consistency { circular_triads, most, zeta, p, p_method, items })
}

/// Share of all tournaments with at most so many circular triads.
fn exact_p(items: usize, at_most: u64) -> f64 {
    let pairs: Vec<(usize, usize)> = (0..items).flat_map(|i| (i + 1..items).map(move |j| (i, j))).collect();
    let all = 1_u32 << pairs.len();
    let few = (0..all)
        .filter(|outcome| {
            let mut scores = [0_u64; 6];
            for (at, (i, j)) in pairs.iter().enumerate() {
                scores[if outcome >> at & 1 == 1 { *i } else { *j }] += 1;
            }
            triads(scores[..items].iter().copied(), items as u64) <= at_most
        })
        .count();
    few as f64 / f64::from(all)
}

/// Kendall and Babington Smith's chi-square approximation.
fn approximate_p(n: f64, triads: f64) -> Result<f64, LikesError> {
    let freedom = n * (n - 1.0) * (n - 2.0) / (n - 4.0).powi(2);
    let all = n * (n - 1.0) * (n - 2.0) / 6.0;
    let chi2 = 8.0 / (n - 4.0) * (all / 4.0 - triads + 0.5) + freedom;
    Ok(chi_square_upper(chi2.max(0.0), freedom.round() as u64)?)
}
