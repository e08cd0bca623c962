//! Do two or more people see the same? Percent agreement, kappa and alpha of what they scored on their own.

mod records;
mod scale;
mod scores;

pub use records::{Both, Mark, Noted, WITHIN_S, both, pairs, scores};
pub use scale::{NoScale, ScoreScale};
pub use scores::{Scores, ScoresError, read};

use crate::estimate::{Estimate, LEVEL, Unit};
use sayso_methods::agreement::{AgreementError, RatingTable, Scale, Weighting, alpha_interval, krippendorff_alpha};

/// Draws for the interval of alpha, and the seed they begin from.
const RESAMPLES: usize = 2_000;
const SEED: u64 = 1;
/// Below this many scores by two people, the error of kappa is not to be relied on (see `docs/methods/agreement.md`).
pub const FEW: usize = 30;

/// Two people who took one thing for different things.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Differing {
    /// What the first took it for.
    pub first: String,
    /// What the second took it for.
    pub second: String,
    /// How often.
    pub n: usize,
}

/// A figure, or why there is none.
#[derive(Clone, PartialEq, Debug)]
pub struct Figure {
    /// The estimate; without value where there is none.
    pub estimate: Estimate,
    /// What it lacks.
    pub lacking: Option<Lacking>,
}

/// What a figure lacks.
#[derive(Clone, PartialEq, Debug)]
pub enum Lacking {
    /// Below [`FEW`] scores its interval is too short.
    Few,
    /// There is no estimate or no interval, for this reason.
    Why(AgreementError),
}

/// How far two people agree beyond chance.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Beyond {
    /// Well.
    Well,
    /// Too little to build on.
    TooLittle,
    /// Beyond chance, but not known closely enough.
    Some,
    /// It could be chance alone.
    Chance,
    /// It cannot be judged.
    NotJudged,
}

/// How far people agree.
#[derive(Clone, PartialEq, Debug)]
pub struct Agreement {
    /// Whose scores.
    pub people: Vec<String>,
    /// Things scored by at least two of them.
    pub shared: usize,
    /// Share scored alike, for two people.
    pub alike: Option<Estimate>,
    /// Cohen's kappa, for two people; weighted by steps where the scores are ordered.
    pub kappa: Option<Figure>,
    /// Krippendorff's alpha.
    pub alpha: Figure,
    /// What two people most often took for different things.
    pub differing: Vec<Differing>,
    /// What alpha comes to.
    pub beyond: Beyond,
}

/// Compares what people scored.
#[must_use]
pub fn agreement(scores: &Scores, scale: ScoreScale) -> Agreement {
    let values: Vec<Vec<Option<f64>>> =
        scores.by_person.iter().map(|row| row.iter().map(|c| c.map(|c| scores.values[c])).collect()).collect();
    let things = scores.by_person.first().map_or(0, Vec::len);
    let shared = (0..things).filter(|t| scores.by_person.iter().filter(|row| row[*t].is_some()).count() >= 2).count();
    let alpha = alpha(&values, scale, shared);
    let (mut alike, mut kappa, mut differing) = (None, None, Vec::new());
    if let [first, second] = scores.by_person.as_slice() {
        let both: Vec<(usize, usize)> = first.iter().zip(second).filter_map(|(a, b)| Some(((*a)?, (*b)?))).collect();
        alike = Some(Estimate::share(both.iter().filter(|(a, b)| a == b).count(), both.len()));
        kappa = Some(kappa_of(&both, scores.categories.len(), scale));
        differing = most_differing(&both, &scores.categories);
    }
    let beyond = beyond(&alpha);
    Agreement { people: scores.people.clone(), shared, alike, kappa, alpha, differing, beyond }
}

fn alpha(values: &[Vec<Option<f64>>], scale: ScoreScale, shared: usize) -> Figure {
    let scale = match scale {
        ScoreScale::Names => Scale::Nominal,
        ScoreScale::Steps => Scale::Ordinal,
        ScoreScale::Numbers => Scale::Interval,
    };
    let bare = |value| Estimate { value, low: None, high: None, n: shared, unit: Unit::Number };
    match alpha_interval(values, scale, LEVEL, RESAMPLES, SEED) {
        Ok(a) => Figure {
            estimate: Estimate::with(a.estimate.alpha, a.interval, a.estimate.units, Unit::Number),
            lacking: None,
        },
        Err(why) => Figure {
            estimate: bare(krippendorff_alpha(values, scale).ok().map(|a| a.alpha)),
            lacking: Some(Lacking::Why(why)),
        },
    }
}

fn kappa_of(both: &[(usize, usize)], categories: usize, scale: ScoreScale) -> Figure {
    let n = both.len();
    let (first, second): (Vec<usize>, Vec<usize>) = both.iter().copied().unzip();
    // Unequal steps of numbers are alpha's matter; kappa weighs by the number of categories between.
    let weighting = if scale == ScoreScale::Names { Weighting::Unweighted } else { Weighting::Linear };
    match RatingTable::from_ratings(&first, &second, categories).and_then(|t| t.kappa(weighting, LEVEL)) {
        Ok(k) => Figure {
            estimate: Estimate {
                value: Some(k.kappa),
                low: k.interval.map(|i| i.low),
                high: k.interval.map(|i| i.high),
                n,
                unit: Unit::Number,
            },
            lacking: (n < FEW).then_some(Lacking::Few),
        },
        Err(why) => Figure {
            estimate: Estimate { value: None, low: None, high: None, n, unit: Unit::Number },
            lacking: Some(Lacking::Why(why)),
        },
    }
}

fn most_differing(both: &[(usize, usize)], categories: &[String]) -> Vec<Differing> {
    let mut counts = std::collections::BTreeMap::new();
    for pair in both.iter().filter(|(a, b)| a != b) {
        *counts.entry(*pair).or_insert(0_usize) += 1;
    }
    let mut all: Vec<Differing> = counts
        .into_iter()
        .map(|((a, b), n)| Differing { first: categories[a].clone(), second: categories[b].clone(), n })
        .collect();
    all.sort_by_key(|d| std::cmp::Reverse(d.n));
    all.truncate(5);
    all
}

fn beyond(alpha: &Figure) -> Beyond {
    let e = &alpha.estimate;
    match (e.value, e.low, e.high) {
        (Some(_), Some(low), _) if low >= 0.8 => Beyond::Well,
        (Some(_), _, Some(high)) if high < 0.667 => Beyond::TooLittle,
        (Some(_), Some(low), Some(_)) if low > 0.0 => Beyond::Some,
        (Some(_), Some(_), Some(_)) => Beyond::Chance,
        _ => Beyond::NotJudged,
    }
}
