//! How many of the admissible orders would have shown as large a difference as the one that was drawn?
//!
//! Sources: Edgington 1975, J Psychol 90:57; Edgington & Onghena 2007, Randomization Tests, 4th ed.; drawn rearrangements
//! counted as (b + 1)/(m + 1): Phipson & Smyth 2010, Stat Appl Genet Mol Biol 9:39. Valid whatever trend or dependence the
//! series has, as long as the order was drawn before and kept, and the values would have come the same under another order.
//! Page: `docs/methods/single-case.md`.

use super::CaseError;
use super::schedule::{Assignment, Design, Drawer};
use crate::stats::Level;
use rand_xoshiro::Xoshiro256PlusPlus;
use rand_xoshiro::rand_core::SeedableRng;

/// Up to so many orders are all counted; beyond that some are drawn.
pub const MOST_COUNTED: u128 = 50_000;

/// Which differences count as at least as large.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Expected {
    /// The change brings more.
    More,
    /// The change brings less.
    Less,
    /// Either.
    Either,
}

/// What is compared.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Statistic<'a> {
    /// Mean with the change less mean without, averaged over the series (equal weight).
    MeanDifference(Expected),
    /// Mean distance of the points from the criterion of their phase, `criteria[phase - 1]`; small is a good fit
    /// (cf. Ferron, Rohrer & Levin 2019, from memory). The first phase has no criterion and does not count.
    CriterionFit(&'a [f64]),
}

/// Outcome of a randomisation test.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct RandomisationTest {
    /// The statistic as it was seen.
    pub observed: f64,
    /// Orders at least as extreme: the drawn one among them.
    pub as_extreme: u64,
    /// Orders compared: the drawn one among them.
    pub orders: u64,
    /// The p-value, `as_extreme / orders`.
    pub p: f64,
    /// True where every admissible order was counted, false where some were drawn.
    pub exact: bool,
    /// Orders left out because a condition would have had no observation in them.
    pub undefined: u64,
}

/// Tests the observed series against every admissible order of the design, or `most` drawn ones where there are more
/// than [`MOST_COUNTED`].
///
/// `series`: the observations, series by series, none where a point is missing; `drawn`: the order that was in force.
/// Missing points stay where they are under every order; orders that would leave a condition empty are left out, which
/// depends on where points are missing and not on the order drawn.
///
/// # Errors
/// [`CaseError::NotTheDesign`] (series or criteria of the wrong number or length), [`CaseError::NotAdmissible`],
/// [`CaseError::NotANumber`], [`CaseError::EmptyCondition`], and those of [`Design::check`].
///
/// ```
/// use sayso_methods::single_case::randomisation::{Expected, Statistic, randomisation_test};
/// use sayso_methods::single_case::schedule::Design;
/// let design = Design::Reversal { points: 8, phases: 2, least: 2 };
/// let drawn = vec![vec![0, 0, 0, 0, 1, 1, 1, 1]];
/// let seen = vec![[1.0, 2.0, 1.0, 2.0, 6.0, 7.0, 6.0, 7.0].map(Some).to_vec()];
/// let test = randomisation_test(design, &seen, &drawn, Statistic::MeanDifference(Expected::More), 9_999, 1)?;
/// assert_eq!((test.as_extreme, test.orders, test.p), (1, 5, 0.2));
/// # Ok::<(), sayso_methods::single_case::CaseError>(())
/// ```
pub fn randomisation_test(
    design: Design,
    series: &[Vec<Option<f64>>],
    drawn: &Assignment,
    statistic: Statistic<'_>,
    most: u64,
    seed: u64,
) -> Result<RandomisationTest, CaseError> {
    checked(design, series, drawn)?;
    if let Statistic::CriterionFit(criteria) = statistic {
        let Design::ChangingCriterion { phases, .. } = design else { return Err(CaseError::NotAdmissible) };
        if criteria.len() + 1 != phases {
            return Err(CaseError::NotTheDesign { series: 1, points: design.points() });
        }
        if criteria.iter().any(|c| !c.is_finite()) {
            return Err(CaseError::NotANumber);
        }
    }
    let observed = value(design, series, drawn, statistic).ok_or(CaseError::EmptyCondition)?;
    // Sums in another order differ in the last digits; such differences are ties.
    let scale = series.iter().flatten().flatten().fold(0.0_f64, |most, v| most.max(v.abs()));
    let slack = 1e-10 * scale.max(f64::MIN_POSITIVE);
    let mut tally = Tally { as_extreme: 0, orders: 0, undefined: 0 };
    let mut judge = |order: &Assignment| match value(design, series, order, statistic) {
        None => tally.undefined += 1,
        Some(other) => {
            tally.orders += 1;
            tally.as_extreme += u64::from(extreme(statistic, other, observed, slack));
        }
    };
    let exact = each_order(design, most, seed, &mut judge)?;
    if !exact {
        // The drawn order is one of those compared.
        tally.orders += 1;
        tally.as_extreme += 1;
    }
    let Tally { as_extreme, orders, undefined } = tally;
    Ok(RandomisationTest { observed, as_extreme, orders, p: as_extreme as f64 / orders as f64, exact, undefined })
}

/// The 95 % interval of a lasting shift of the level: all shifts that the two-sided test would not reject once they are
/// taken off the changed points (Michiels, Heyvaert, Meulders & Onghena 2017, Behav Res Methods 49:363, from memory).
/// An end is none where no shift, however large, would be rejected: the design has too few orders for that.
///
/// Arguments and errors as of [`randomisation_test`].
pub fn shift_interval(
    design: Design,
    series: &[Vec<Option<f64>>],
    drawn: &Assignment,
    most: u64,
    seed: u64,
) -> Result<[Option<f64>; 2], CaseError> {
    checked(design, series, drawn)?;
    let statistic = Statistic::MeanDifference(Expected::Either);
    // A shift of 1 in the changed points, as every other order would see it.
    let unit: Vec<Vec<Option<f64>>> = series
        .iter()
        .zip(drawn)
        .map(|(values, phases)| {
            let shift = |(v, phase): (&Option<f64>, &u8)| v.map(|_| f64::from(u8::from(design.changed(*phase))));
            values.iter().zip(phases).map(shift).collect()
        })
        .collect();
    let observed = value(design, series, drawn, statistic).ok_or(CaseError::EmptyCondition)?;
    let mut others = Vec::new();
    let mut keep = |order: &Assignment| {
        others.extend(value(design, series, order, statistic).zip(value(design, &unit, order, statistic)));
    };
    if !each_order(design, most, seed, &mut keep)? {
        others.push((observed, 1.0));
    }
    let scale = series.iter().flatten().flatten().fold(f64::MIN_POSITIVE, |most, v| most.max(v.abs()));
    let alpha = 1.0 - Level::P95.get();
    let rejected = |shift: f64| {
        let distance = (observed - shift).abs() - 1e-10 * scale;
        let as_extreme = others.iter().filter(|(s, c)| (s - shift * c).abs() >= distance).count();
        as_extreme as f64 <= alpha * others.len() as f64
    };
    // Every order sees at most the whole shift, so moving outwards only ever rejects more: bisection finds the end.
    let end = |sign: f64| {
        let mut outside = (0..40).map(|k| observed + sign * scale * 2_f64.powi(k)).find(|s| rejected(*s))?;
        let mut inside = observed;
        for _ in 0..80 {
            let middle = f64::midpoint(inside, outside);
            if rejected(middle) { outside = middle } else { inside = middle }
        }
        Some(outside)
    };
    Ok([end(-1.0), end(1.0)])
}

/// Whether series and order are those of the design.
fn checked(design: Design, series: &[Vec<Option<f64>>], drawn: &Assignment) -> Result<(), CaseError> {
    design.check()?;
    let (wanted, points) = (design.series(), design.points());
    if series.len() != wanted || series.iter().any(|s| s.len() != points) {
        return Err(CaseError::NotTheDesign { series: wanted, points });
    }
    if !design.admits(drawn) {
        return Err(CaseError::NotAdmissible);
    }
    if series.iter().flatten().flatten().any(|value| !value.is_finite()) {
        return Err(CaseError::NotANumber);
    }
    Ok(())
}

/// Visits every order and answers true, or visits `most` drawn ones and answers false.
fn each_order(design: Design, most: u64, seed: u64, visit: &mut impl FnMut(&Assignment)) -> Result<bool, CaseError> {
    if design.count()? <= MOST_COUNTED {
        design.each(visit)?;
        return Ok(true);
    }
    let mut rng = Xoshiro256PlusPlus::seed_from_u64(seed);
    let drawer = Drawer::new(design);
    (0..most).for_each(|_| visit(&drawer.draw(&mut rng)));
    Ok(false)
}

struct Tally {
    as_extreme: u64,
    orders: u64,
    undefined: u64,
}

fn extreme(statistic: Statistic<'_>, other: f64, observed: f64, slack: f64) -> bool {
    match statistic {
        Statistic::MeanDifference(Expected::More) => other >= observed - slack,
        Statistic::MeanDifference(Expected::Less) | Statistic::CriterionFit(_) => other <= observed + slack,
        Statistic::MeanDifference(Expected::Either) => other.abs() >= observed.abs() - slack,
    }
}

/// The statistic under an order; none where a condition has no observation.
fn value(design: Design, series: &[Vec<Option<f64>>], order: &Assignment, statistic: Statistic<'_>) -> Option<f64> {
    match statistic {
        Statistic::MeanDifference(_) => {
            let mut sum = 0.0;
            for (values, phases) in series.iter().zip(order) {
                let (mut totals, mut n) = ([0.0; 2], [0_u32; 2]);
                for (value, phase) in values.iter().zip(phases) {
                    if let Some(value) = value {
                        let with = usize::from(design.changed(*phase));
                        totals[with] += value;
                        n[with] += 1;
                    }
                }
                if n[0] == 0 || n[1] == 0 {
                    return None;
                }
                sum += totals[1] / f64::from(n[1]) - totals[0] / f64::from(n[0]);
            }
            Some(sum / series.len() as f64)
        }
        Statistic::CriterionFit(criteria) => {
            let (mut total, mut n) = (0.0, 0_u32);
            for (value, phase) in series.iter().flatten().zip(order.iter().flatten()) {
                let criterion = usize::from(*phase).checked_sub(1).and_then(|at| criteria.get(at));
                if let (Some(value), Some(criterion)) = (value, criterion) {
                    total += (value - criterion).abs();
                    n += 1;
                }
            }
            (n > 0).then(|| total / f64::from(n))
        }
    }
}
