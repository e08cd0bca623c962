//! E-values of closed blocks: how far a bet against chance has grown, valid whenever it is read.
//!
//! Sources: conditional likelihood ratio of a two-by-two table with its margins kept (Fisher's noncentral hypergeometric;
//! Gart 1970, Biometrika 57:471); the same for two odds ratios (Zelen 1971, Biometrika 58:129); that the largest value a
//! bet ever reaches can be read at any time: Ville 1939. A block must be closed by a rule blind to what came in it.

use statrs::function::factorial::ln_binomial as ln_choose;

/// Odds ratios bet on, each with a quarter of the stake.
pub const ODDS_RATIOS: [f64; 4] = [1.5, 3.0, 6.0, 12.0];

/// Natural logarithms of e-values, one for each of [`ODDS_RATIOS`]. Blocks multiply, so their logarithms add up.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Bets(pub [f64; 4]);

impl Bets {
    /// The stake is whole: nothing was learned.
    pub const NONE: Self = Self([0.0; 4]);

    /// Another block comes to these.
    #[must_use]
    pub fn and(self, other: Self) -> Self {
        Self(std::array::from_fn(|i| self.0[i] + other.0[i]))
    }

    /// The lower of the two, bet by bet: never more than either.
    #[must_use]
    pub fn least(self, other: Self) -> Self {
        Self(std::array::from_fn(|i| self.0[i].min(other.0[i])))
    }

    /// Natural logarithm of the e-value: the mean over the bets, taken outside of the product over blocks.
    #[must_use]
    pub fn ln(self) -> f64 {
        ln_mean(&self.0)
    }
}

/// Natural logarithm of the mean of numbers given as logarithms.
#[must_use]
pub fn ln_mean(ln: &[f64]) -> f64 {
    let most = ln.iter().copied().fold(f64::NEG_INFINITY, f64::max);
    if !most.is_finite() {
        return most;
    }
    most + (ln.iter().map(|x| (x - most).exp()).sum::<f64>() / ln.len() as f64).ln()
}

/// A table of counts: rows are this or another, columns are this or another.
pub type Table = [[u32; 2]; 2];

/// The bets of one closed block on a positive association, its margins kept. A block that cannot vary gives nothing.
///
/// ```
/// use sayso_methods::stats::evalue::table_bets;
/// // A lady tasting tea, three of four right.
/// assert!((table_bets([[3, 1], [1, 3]]).ln().exp() - 2.0687385115297325).abs() < 1e-9);
/// ```
#[must_use]
pub fn table_bets([[a, b], [c, d]]: Table) -> Bets {
    let [a, b, c, d] = [a, b, c, d].map(u64::from);
    let (m, n, t) = (a + b, c + d, a + c);
    let (low, high) = (t.saturating_sub(n), m.min(t));
    if low == high {
        return Bets::NONE;
    }
    let weights: Vec<f64> = (low..=high).map(|k| ln_choose(m, k) + ln_choose(n, t - k)).collect();
    tilted(low, &weights, a)
}

/// What one pair of partners did in a block, by word pressed and thing given: `[good outcomes, deliveries]`.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct SwapCells {
    /// The first word's thing after the first word.
    pub first_after_first: [u32; 2],
    /// The first word's thing after the second word.
    pub first_after_second: [u32; 2],
    /// The second word's thing after the second word.
    pub second_after_second: [u32; 2],
    /// The second word's thing after the first word.
    pub second_after_first: [u32; 2],
}

/// The bets of one closed block on an interaction: outcomes are better where word and thing belong together, beyond what
/// word and thing do by themselves. All two-way margins are kept, so that a better liked thing or a livelier word says
/// nothing. Cells with more good outcomes than deliveries count as all good.
#[must_use]
pub fn swap_bets(cells: SwapCells) -> Bets {
    let cell = |[good, n]: [u32; 2]| (u64::from(good.min(n)), u64::from(n));
    let (a, n_a) = cell(cells.first_after_first);
    let (b, n_b) = cell(cells.first_after_second);
    let (c, n_c) = cell(cells.second_after_second);
    let (d, n_d) = cell(cells.second_after_first);
    // One shift moves all four cells: a and c up, b and d down.
    let up = (n_a - a).min(n_c - c).min(b).min(d);
    let down = a.min(c).min(n_b - b).min(n_d - d);
    if up + down == 0 {
        return Bets::NONE;
    }
    let weights: Vec<f64> = (0..=up + down)
        .map(|k| {
            let (plus, minus) = (|x: u64| x + k - down, |x: u64| x + down - k);
            ln_choose(n_a, plus(a)) + ln_choose(n_b, minus(b)) + ln_choose(n_c, plus(c)) + ln_choose(n_d, minus(d))
        })
        .collect();
    tilted(0, &weights, down)
}

/// Likelihood ratio of `seen` under the distribution with those log weights on `low..`, tilted by each odds ratio.
fn tilted(low: u64, weights: &[f64], seen: u64) -> Bets {
    let most = weights.iter().copied().fold(f64::NEG_INFINITY, f64::max);
    let all: f64 = weights.iter().map(|w| (w - most).exp()).sum();
    Bets(ODDS_RATIOS.map(|ratio| {
        let ln = ratio.ln();
        let powers = (0u32..).map(|i| f64::from(i) * ln);
        // The largest power is taken out, so that nothing overflows.
        let top = (weights.len() - 1) as f64 * ln;
        let tilted: f64 = weights.iter().zip(powers).map(|(w, power)| (w - most + power - top).exp()).sum();
        (seen - low) as f64 * ln - top - (tilted / all).ln()
    }))
}

/// Which hypotheses stand by Holm's procedure on the largest e-values each ever reached (given as logarithms): 1 over that
/// is a p-value valid at any time, so a claim does not lapse when the present value falls. Source: Holm 1979, Scand J Stat
/// 6:65; Ville 1939. Gives the adjusted p-values, in the order given.
#[must_use]
pub fn holm_on_maxima(ln_max: &[f64]) -> Vec<f64> {
    let mut order: Vec<usize> = (0..ln_max.len()).collect();
    order.sort_by(|a, b| ln_max[*b].total_cmp(&ln_max[*a]));
    let mut adjusted = vec![1.0; ln_max.len()];
    let mut least = 0.0f64;
    for (rank, at) in order.into_iter().enumerate() {
        let open = (ln_max.len() - rank) as f64;
        least = least.max((open.ln() - ln_max[at]).exp().min(1.0));
        adjusted[at] = least;
    }
    adjusted
}
