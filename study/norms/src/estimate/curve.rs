//! Kaplan and Meier's (1958) estimate on a grid, from counts that may have noise.

use super::counts::Counts;
use super::interval::{interval, mean_of, wider};
use super::step::Step;
use super::telling::{Telling, ends};
use crate::grid::Grid;
use sayso_norms::{Point, Quantile, Quantiles};

/// The curve ends where fewer than so many are left to look at.
const LEAST_LEFT: f64 = 10.0;
/// It ends, too, where how many are left is less than so many standard deviations of its noise above 0.
const LEAST_SURE: f64 = 4.0;
/// And where of more than this part of them the watching ends within the step: until when in it they were watched is not known.
const MOST_ENDED: f64 = 0.5;
/// Of so many and more a whole number varies as good as a normal one.
const FEW: f64 = 100.0;
/// Nearest to 0 and 1 that a share may be where its logarithm is taken.
const NEAR: f64 = 1e-6;

/// What is counted by each place of a grid.
struct Bins<'a> {
    came: &'a [f64],
    ended: &'a [f64],
}

impl Bins<'_> {
    /// Whose watching ended between the place before and this one. Nobody's ends before the first.
    fn ended(&self, place: usize) -> f64 {
        place.checked_sub(1).and_then(|at| self.ended.get(at)).copied().unwrap_or(0.0)
    }
}

/// The share that has come by each place, from counts whose bins are those of `grid`, until too few are left. Intervals are pointwise.
///
/// Who was watched for a part of a step counts as that part. The variance is that of the logarithm of what is left, by its derivatives
/// with respect to the counts: of the households (Greenwood's, without noise) and of the noise. The upper end allows for a place being told
/// only where enough seem left.
#[must_use]
pub fn steps(counts: &Counts, grid: Grid, z: f64) -> Vec<Point> {
    let many = grid.places().len();
    let (came, rest) = counts.bins.split_at(many.min(counts.bins.len()));
    let bins = Bins { came, ended: &rest[..(many - 1).min(rest.len())] };
    let mut left = counts.whole();
    let whole = left.max(1.0);
    let mut open = counts.bins.len() as f64;
    let mut made: Vec<Point> = Vec::with_capacity(many);
    // Of the logarithm of what is left, the derivative by what came at each place so far, by what ended there, and by all the rest.
    let (mut by_came, mut by_ended, mut by_rest) = (Vec::new(), Vec::new(), 0.0_f64);
    let mut survived = 1.0_f64;
    for (place, (at, came)) in grid.places().iter().zip(bins.came).enumerate() {
        let (ended, watched) = (bins.ended(place), grid.watched_part(place));
        let risk = left - (1.0 - watched) * ended;
        let bar = LEAST_LEFT.max(LEAST_SURE * counts.noise_of(open, open).sqrt());
        if risk < bar || ended > MOST_ENDED * left {
            break;
        }
        // Those who were not watched in it at all leave before it.
        let unwatched = 1.0 - 2.0 * watched;
        let step = Step::new(left - unwatched * ended, *came, (1.0 - unwatched) * ended);
        survived *= step.survived;
        by_came.push(by_rest + step.by_left + step.by_came);
        by_ended.push(by_rest + (1.0 - unwatched) * (step.by_left + step.by_ended));
        by_rest += step.by_left;
        left -= came + ended;
        open -= if place == 0 { 1.0 } else { 2.0 };
        let at_risk = AtRisk { many: risk, bar, came: *came, ended, watched };
        let slopes = Slopes { by_came: &by_came, by_ended: &by_ended, by_rest, left: left.max(0.0), open, bins: &bins };
        made.push(step_of(f64::from(*at), survived, (&slopes, &at_risk), counts, (whole, z)));
    }
    rising(&mut made);
    made
}

/// The share of values at or below each of `places`, from one bin a place. The last is whole.
#[must_use]
pub fn steps_of_shares(counts: &Counts, places: &[f64], z: f64) -> Vec<Point> {
    let (whole, many) = (counts.whole().max(1.0), counts.bins.len() as f64);
    let mut below = 0.0;
    let mut made: Vec<Point> = Vec::with_capacity(places.len());
    for ((at, bin), so_far) in places.iter().zip(&counts.bins).zip(1_u32..) {
        below += bin;
        let (share, so_far) = (below / whole, f64::from(so_far));
        let (own, other) = ((1.0 - share) / whole, -share / whole);
        let sum = so_far * own + (many - so_far) * other;
        let squares = so_far * own * own + (many - so_far) * other * other;
        let (low, high) = interval(share, whole, counts.noise_of(sum, squares), z);
        made.push(Point { at: *at, share: share.clamp(low, high), low, high });
    }
    if let Some(last) = made.last_mut() {
        *last = Point { at: last.at, share: 1.0, low: 1.0, high: 1.0 };
    }
    rising(&mut made);
    made
}

/// Derivatives of the logarithm of what is left, by the counts.
struct Slopes<'a> {
    by_came: &'a [f64],
    by_ended: &'a [f64],
    by_rest: f64,
    left: f64,
    open: f64,
    bins: &'a Bins<'a>,
}

/// Those at risk in one step.
struct AtRisk {
    many: f64,
    /// The fewest of whom a place is told.
    bar: f64,
    came: f64,
    /// Whose watching ended in it, each of whom counts as the part that was watched.
    ended: f64,
    watched: f64,
}

impl AtRisk {
    /// How they vary, and how they move with the share that is left: of its logarithm these are the slopes, their `sum` over all counts and its
    /// `variance`. In their own number who came in this step and who is still open count as one.
    fn telling(&self, slopes: &Slopes<'_>, counts: &Counts, left: (f64, f64), (sum, variance): (f64, f64)) -> Telling {
        let ((survived, whole), part) = (left, self.watched);
        let last = |slopes: &[f64]| slopes.last().copied().unwrap_or(0.0);
        let (by_came, by_ended) = (last(slopes.by_came), part * last(slopes.by_ended));
        let (weights, squares) = (1.0 + part + slopes.open, 1.0 + part * part + slopes.open);
        let noise = counts.noise * (by_came + by_ended + slopes.by_rest * slopes.open - counts.shared * weights * sum);
        let chosen = by_came * self.came + by_ended * self.ended + slopes.by_rest * slopes.left;
        let moves = (noise + chosen) / (survived * variance);
        let spread = self.came + part * part * self.ended + slopes.left - self.many * self.many / whole;
        Telling {
            left: self.many,
            above: self.many - self.bar,
            moves: if moves.is_finite() { moves.max(0.0) } else { 0.0 },
            spread: (spread.max(0.0) + counts.noise_of(weights, squares)).sqrt(),
        }
    }
}

fn step_of(
    at: f64,
    survived: f64,
    (slopes, at_risk): (&Slopes<'_>, &AtRisk),
    counts: &Counts,
    (whole, z): (f64, f64),
) -> Point {
    let (bins, rest) = (slopes.bins, slopes.by_rest);
    let mut sampled = rest * rest * slopes.left;
    let (mut sum, mut squares) = (rest * slopes.open, rest * rest * slopes.open);
    let mut fourths = rest.powi(4) * slopes.open;
    let mut weigh =
        |slope: f64| (sum, squares, fourths) = (sum + slope, squares + slope * slope, fourths + slope.powi(4));
    for (place, slope) in slopes.by_came.iter().enumerate() {
        sampled += slope * slope * bins.came[place];
        weigh(*slope);
    }
    for (place, slope) in slopes.by_ended.iter().enumerate().skip(1) {
        sampled += slope * slope * bins.ended(place);
        weigh(*slope);
    }
    let scale = survived * survived;
    let share = 1.0 - survived;
    // As many households as would make this variance: no fewer than are left, no more than there were.
    let same = share * survived / (scale * sampled.max(0.0));
    let n = if same.is_finite() { same.clamp(slopes.left.max(1.0).min(whole), whole) } else { whole };
    let noise = counts.noise_of(sum, squares);
    let telling = at_risk.telling(slopes, counts, (survived, whole), (sum, sampled.max(0.0) + noise));
    let noise = scale * noise;
    let variance = noise + share.clamp(0.0, 1.0) * survived.clamp(0.0, 1.0) / n;
    let wide = |z: f64| wider(z, (counts.noise, counts.draws), scale * scale * fourths, variance);
    let usual = |z: f64, more: f64| interval(share, n, more * more * noise, wide(z));
    // Without noise a few that are left are a whole number, whose upper tail is longer than a normal one.
    let few = counts.noise <= 0.0 && survived * n < FEW;
    let rare = |missed: f64| if few { 1.0 - mean_of(survived * n, missed) / n } else { 0.0 };
    let (low, high) = ends(share, z, &telling, (usual, rare));
    Point { at, share: share.clamp(low, high), low, high }
}

/// Makes shares and both ends rise, by pooling neighbours that do not.
fn rising(steps: &mut [Point]) {
    let pooled = |of: fn(&Point) -> f64, steps: &[Point]| {
        let mut pools: Vec<(f64, usize)> = Vec::with_capacity(steps.len());
        for value in steps.iter().map(of) {
            let mut pool = (value, 1);
            while let Some(last) = pools.pop_if(|last| last.0 > pool.0) {
                let many = last.1 + pool.1;
                pool = ((last.0 * last.1 as f64 + pool.0 * pool.1 as f64) / many as f64, many);
            }
            pools.push(pool);
        }
        pools.into_iter().flat_map(|(value, many)| std::iter::repeat_n(value, many)).collect::<Vec<_>>()
    };
    let (shares, lows, highs) = (pooled(|s| s.share, steps), pooled(|s| s.low, steps), pooled(|s| s.high, steps));
    for (step, ((share, low), high)) in steps.iter_mut().zip(shares.into_iter().zip(lows).zip(highs)) {
        // Pooled apart they may cross by a rounding error.
        *step = Point { low: low.min(share), share, high: high.max(share), ..*step };
    }
}

/// How one reads between two places.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Between {
    /// The hazard is even along the logarithm of place + 1.
    Waits,
    /// Even.
    Shares,
}

/// Where a twentieth, a quarter, half, three quarters, nineteen twentieths have come, with the places at which the band allows it.
#[must_use]
pub fn quantiles(steps: &[Point], between: Between) -> Quantiles {
    let one = |share: f64| {
        let place = |of: fn(&Point) -> f64| reached(steps, of, share, between);
        // Early where the upper end of the band reaches it.
        let (value, low, high) = (place(|s| s.share), place(|s| s.high), place(|s| s.low));
        Quantile { value, low, high }
    };
    Quantiles { p05: one(0.05), p25: one(0.25), p50: one(0.5), p75: one(0.75), p95: one(0.95) }
}

fn reached(steps: &[Point], of: fn(&Point) -> f64, share: f64, between: Between) -> Option<f64> {
    let at = steps.iter().position(|step| of(step) >= share)?;
    let (end, after) = (steps[at].at, of(&steps[at]));
    // Shares begin at 0 with nobody below; waits begin at the first place.
    let (begin, before) = match (at.checked_sub(1), between) {
        (Some(last), _) => (steps[last].at, of(&steps[last])),
        (None, Between::Shares) => (0.0, 0.0),
        (None, Between::Waits) => return Some(end),
    };
    let hazard = |share: f64| match between {
        Between::Waits => -(1.0 - share.clamp(0.0, 1.0 - NEAR)).ln(),
        Between::Shares => share,
    };
    let rise = hazard(after) - hazard(before);
    let part = if rise > 0.0 { ((hazard(share) - hazard(before)) / rise).clamp(0.0, 1.0) } else { 1.0 };
    let place = match between {
        Between::Waits => (begin.ln_1p() + part * (end.ln_1p() - begin.ln_1p())).exp_m1(),
        Between::Shares => begin + part * (end - begin),
    };
    Some(place.clamp(begin, end))
}
