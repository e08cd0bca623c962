//! Agreement of rankings: Kendall's tau-b of two, Kendall's W of several.
//!
//! Sources: M. G. Kendall (1945), Biometrika 33:239 (tau-b). W. R. Knight (1966), J Am Stat Assoc 61:436 (counting in n log n).
//! M. G. Kendall & B. Babington Smith (1939), Ann Math Stat 10:275 (W); S. Siegel & N. J. Castellan (1988), ch. 9 (ties).

use super::{StatsError, chi_square_upper, special::normal_two_sided};

/// How a p-value was made.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum PMethod {
    /// Counted over all orderings.
    Exact,
    /// Large-sample approximation; rough for a handful of items.
    Approximate,
}

/// Agreement of two rankings.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TauB {
    /// -1 (reversed) to 1 (same order), ties allowed for.
    pub tau: f64,
    /// Two-sided p-value that unrelated rankings agree or disagree so much.
    pub p: f64,
    /// How `p` was made.
    pub p_method: PMethod,
    /// Items ranked.
    pub n: usize,
}

fn finite(values: &[f64]) -> Result<(), StatsError> {
    match values.iter().find(|v| !v.is_finite()) {
        Some(value) => Err(StatsError::OutOfRange { what: "score", value: *value }),
        None => Ok(()),
    }
}

/// Sizes of the runs of equal neighbours under `same`.
fn runs(n: usize, same: impl Fn(usize, usize) -> bool) -> Vec<u64> {
    let mut sizes = Vec::new();
    let mut run = 1;
    for i in 1..=n {
        if i < n && same(i - 1, i) {
            run += 1;
        } else {
            sizes.push(run);
            run = 1;
        }
    }
    sizes
}

fn pairs(sizes: &[u64]) -> u64 {
    sizes.iter().map(|t| t * (t - 1) / 2).sum()
}

/// Merge sort that counts the exchanges.
fn sort_counting(values: &mut [f64], spare: &mut [f64]) -> u64 {
    let n = values.len();
    if n < 2 {
        return 0;
    }
    let half = n / 2;
    let mut swaps =
        sort_counting(&mut values[..half], &mut spare[..half]) + sort_counting(&mut values[half..], &mut spare[half..]);
    let (mut left, mut right) = (0, half);
    for slot in spare.iter_mut().take(n) {
        if right >= n || (left < half && values[left] <= values[right]) {
            *slot = values[left];
            left += 1;
        } else {
            *slot = values[right];
            swaps += (half - left) as u64;
            right += 1;
        }
    }
    values.copy_from_slice(&spare[..n]);
    swaps
}

/// Kendall's tau-b between two series of scores over the same items.
///
/// The p-value is exact up to 60 items without ties, else normal with the tie-corrected variance.
///
/// # Errors
/// [`StatsError::Unpaired`], [`StatsError::TooFew`] below two items, [`StatsError::OutOfRange`] for a score that is no number,
/// [`StatsError::NoVariation`] if one series is all ties.
///
/// ```
/// use sayso_methods::stats::kendall_tau_b;
/// let found = kendall_tau_b(&[1.0, 2.0, 3.0, 4.0], &[1.0, 2.0, 4.0, 3.0])?;
/// assert!((found.tau - 2.0 / 3.0).abs() < 1e-12);
/// # Ok::<(), sayso_methods::stats::StatsError>(())
/// ```
pub fn kendall_tau_b(x: &[f64], y: &[f64]) -> Result<TauB, StatsError> {
    let n = x.len();
    if n != y.len() {
        return Err(StatsError::Unpaired { left: n, right: y.len() });
    }
    if n < 2 {
        return Err(StatsError::TooFew { what: "items", needed: 2, got: n });
    }
    finite(x)?;
    finite(y)?;
    // Adding zero turns -0 into 0, so that the two compare as the tie they are.
    let mut points: Vec<(f64, f64)> = x.iter().zip(y).map(|(a, b)| (a + 0.0, b + 0.0)).collect();
    points.sort_by(|a, b| a.0.total_cmp(&b.0).then(a.1.total_cmp(&b.1)));
    let ties_x = runs(n, |i, j| points[i].0 == points[j].0);
    let both = pairs(&runs(n, |i, j| points[i] == points[j]));
    let mut ys: Vec<f64> = points.iter().map(|p| p.1).collect();
    let mut spare = vec![0.0; n];
    let discordant = sort_counting(&mut ys, &mut spare);
    let ties_y = runs(n, |i, j| ys[i] == ys[j]);
    let all = (n as u64) * (n as u64 - 1) / 2;
    let (tied_x, tied_y) = (pairs(&ties_x), pairs(&ties_y));
    if tied_x == all || tied_y == all {
        return Err(StatsError::NoVariation("one of the rankings"));
    }
    let difference = all as f64 - tied_x as f64 - tied_y as f64 + both as f64 - 2.0 * discordant as f64;
    let tau = difference / (all - tied_x) as f64 * ((all - tied_x) as f64 / (all - tied_y) as f64).sqrt();
    let exact = tied_x == 0 && tied_y == 0 && n <= 60;
    let p =
        if exact { exact_p(n, discordant.min(all - discordant)) } else { normal_p(n, difference, &ties_x, &ties_y) };
    let p_method = if exact { PMethod::Exact } else { PMethod::Approximate };
    Ok(TauB { tau: tau.clamp(-1.0, 1.0), p, p_method, n })
}

/// Twice the share of orderings with at most `fewest` exchanges.
fn exact_p(n: usize, fewest: u64) -> f64 {
    let keep = fewest as usize + 1;
    let mut share = vec![0.0; keep];
    share[0] = 1.0;
    for size in 2..=n {
        let mut next = vec![0.0; keep];
        let mut window = 0.0;
        for at in 0..keep {
            window += share[at];
            if at >= size {
                window -= share[at - size];
            }
            next[at] = window / size as f64;
        }
        share = next;
    }
    (2.0 * share.iter().sum::<f64>()).min(1.0)
}

fn normal_p(n: usize, difference: f64, ties_x: &[u64], ties_y: &[u64]) -> f64 {
    let moments = |sizes: &[u64]| {
        sizes.iter().fold((0.0, 0.0, 0.0), |(two, three, long), t| {
            let t = *t as f64;
            (two + t * (t - 1.0) / 2.0, three + t * (t - 1.0) * (t - 2.0), long + t * (t - 1.0) * (2.0 * t + 5.0))
        })
    };
    let (x2, x3, x5) = moments(ties_x);
    let (y2, y3, y5) = moments(ties_y);
    let n = n as f64;
    let m = n * (n - 1.0);
    let third = if n > 2.0 { x3 * y3 / (9.0 * m * (n - 2.0)) } else { 0.0 };
    let variance = (m * (2.0 * n + 5.0) - x5 - y5) / 18.0 + 2.0 * x2 * y2 / m + third;
    if variance > 0.0 { normal_two_sided(difference / variance.sqrt()) } else { 1.0 }
}

/// Ranks from 1 for the smallest; ties share the average of their places.
///
/// # Errors
/// [`StatsError::OutOfRange`] for a score that is no number.
pub fn average_ranks(scores: &[f64]) -> Result<Vec<f64>, StatsError> {
    finite(scores)?;
    let mut order: Vec<usize> = (0..scores.len()).collect();
    order.sort_by(|a, b| (scores[*a] + 0.0).total_cmp(&(scores[*b] + 0.0)));
    let mut ranks = vec![0.0; scores.len()];
    let mut at = 0;
    for size in runs(order.len(), |i, j| scores[order[i]] == scores[order[j]]) {
        let size = size as usize;
        for item in order.iter().skip(at).take(size) {
            ranks[*item] = at as f64 + (size as f64 + 1.0) / 2.0;
        }
        at += size;
    }
    Ok(ranks)
}

/// Agreement of several rankings of the same items.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Concordance {
    /// 0 (no agreement) to 1 (the same ranking each time), ties allowed for.
    pub w: f64,
    /// Chi-square p-value with items - 1 degrees of freedom; rough below about 8 items.
    pub p: f64,
    /// Rankings.
    pub judges: usize,
    /// Items.
    pub items: usize,
}

/// Kendall's W over the scores each judge (or session) gave to the same items.
///
/// # Errors
/// [`StatsError::TooFew`] below two judges or two items, [`StatsError::Unpaired`] for rows of unequal length,
/// [`StatsError::OutOfRange`] for a score that is no number, [`StatsError::NoVariation`] if every judge ties all items.
///
/// ```
/// use sayso_methods::stats::kendall_w;
/// let same = kendall_w(&[vec![1.0, 2.0, 3.0], vec![10.0, 20.0, 30.0]])?;
/// assert!((same.w - 1.0).abs() < 1e-12);
/// # Ok::<(), sayso_methods::stats::StatsError>(())
/// ```
pub fn kendall_w<R: AsRef<[f64]>>(scores_by_judge: &[R]) -> Result<Concordance, StatsError> {
    let judges = scores_by_judge.len();
    if judges < 2 {
        return Err(StatsError::TooFew { what: "rankings", needed: 2, got: judges });
    }
    let items = scores_by_judge[0].as_ref().len();
    if items < 2 {
        return Err(StatsError::TooFew { what: "items", needed: 2, got: items });
    }
    let mut sums = vec![0.0; items];
    let mut ties = 0.0;
    for row in scores_by_judge {
        let row = row.as_ref();
        if row.len() != items {
            return Err(StatsError::Unpaired { left: items, right: row.len() });
        }
        let ranks = average_ranks(row)?;
        sums.iter_mut().zip(&ranks).for_each(|(sum, rank)| *sum += rank);
        let mut sorted = ranks;
        sorted.sort_by(f64::total_cmp);
        ties += runs(items, |i, j| sorted[i] == sorted[j]).iter().map(|t| (*t as f64).powi(3) - *t as f64).sum::<f64>();
    }
    let (m, n) = (judges as f64, items as f64);
    let squares: f64 = sums.iter().map(|s| (s - m * (n + 1.0) / 2.0).powi(2)).sum();
    let most = m * m * (n * n * n - n) - m * ties;
    if most <= 1e-9 {
        return Err(StatsError::NoVariation("every ranking"));
    }
    let w = (12.0 * squares / most).clamp(0.0, 1.0);
    Ok(Concordance { w, p: chi_square_upper(m * (n - 1.0) * w, (items - 1) as u64)?, judges, items })
}
