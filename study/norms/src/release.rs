//! A release, from rows to what is published.

use crate::draw::{FIRST_WORDS, draw};
use crate::estimate::{Between, Counts, Share, from_each_on, quantiles, shares, steps, steps_of_shares};
use crate::grid::{DAYS, Grid, SHARE_STEPS, SHOWINGS, STAGE_DAYS};
use crate::group::Group;
use crate::loss::Loss;
use crate::measure::{Kind, Measured, STAGE_BINS, STRETCH_BINS, Table, measure};
use crate::noise::{NoNoise, Noise};
use sayso_methods::stats::Level;
use sayso_model::Day;
use sayso_norms::{
    Answer, Cell, Curve, DayPart, HourShare, Hours, MadeBy, Part, Parts, People, Point, Quantile, Quantiles, Question,
    Release, ReleaseFault, Rule, Spread, Stretch, StudyName, SummaryRow, TimedStage, Told, WeekShare, Weeks, WordKind,
};
use std::collections::BTreeSet;

/// What a release is to be.
#[derive(Clone, Debug)]
pub struct Order {
    /// What it is called; the draw of words follows from it.
    pub name: String,
    /// The day.
    pub made: Day,
    /// Who they are.
    pub people: People,
    /// The club, where it is one's.
    pub club: Option<String>,
    /// How it is made.
    pub made_by: MadeBy,
}

/// A release, and what only whoever makes it may know.
#[derive(Clone, PartialEq, Debug)]
pub struct Made {
    /// What is published.
    pub release: Release,
    /// Households whose rows were used. Exact, so not to be published.
    pub used: usize,
    /// Households left out, as they do not agree any more. Exact, too.
    pub left_out: usize,
}

/// Why there is no release.
#[derive(Debug, thiserror::Error)]
pub enum NormsFault {
    /// No noise.
    #[error(transparent)]
    NoNoise(#[from] NoNoise),
    /// It would not be one that anybody takes.
    #[error("the release would not be one: {0}")]
    Release(#[from] ReleaseFault),
    /// The noise cost more than was allowed.
    #[error("the noise would cost epsilon = {spent}, but {allowed} is allowed: nothing was published")]
    Dear {
        /// What it cost.
        spent: f64,
        /// What was allowed.
        allowed: Loss,
    },
}

/// Makes a release of the rows of households that agree at this moment.
///
/// # Errors
/// [`NormsFault`].
pub fn release(
    rows: &[SummaryRow],
    agreed: Option<&BTreeSet<StudyName>>,
    order: Order,
    noise: Option<(Loss, &mut dyn Noise)>,
) -> Result<Made, NormsFault> {
    let all: BTreeSet<&StudyName> = rows.iter().map(|row| &row.household).collect();
    let agrees = |household: &StudyName| agreed.is_none_or(|agreed| agreed.contains(household));
    let left_out = all.iter().filter(|household| !agrees(household)).count();
    let drawn = draw(rows.iter().filter(|row| agrees(&row.household)), &order.name);
    let loss = noise.as_ref().map(|(loss, _)| *loss);
    let kind = match noise {
        Some((loss, noise)) => Kind::Noisy(loss, noise),
        None => Kind::Plain,
    };
    let measured = measure(&drawn, kind)?;
    if let Some(allowed) = loss.filter(|allowed| measured.spent > allowed.get()) {
        return Err(NormsFault::Dear { spent: measured.spent, allowed });
    }
    let release = Release {
        form: Release::FORM,
        name: order.name,
        made: order.made,
        people: order.people,
        club: order.club,
        rule: Rule {
            least_with_noise: Release::LEAST_WITH_NOISE,
            least_without_noise: Release::LEAST_WITHOUT_NOISE,
            words_per_household: 1,
        },
        noise: loss.map(|loss| sayso_norms::Noise { epsilon: loss.get() }),
        level: Level::P95.get(),
        made_by: order.made_by,
        cells: cells(&measured),
    };
    release.check()?;
    Ok(Made { release, used: drawn.len(), left_out })
}

/// The cells that follow from what was counted.
#[must_use]
pub fn cells(measured: &Measured) -> Vec<Cell> {
    let z = Level::P95.z();
    let mut cells = Vec::new();
    let curves = [
        (Question::ShowingsToFirstPress, &measured.showings, SHOWINGS),
        (Question::DaysToFirstPress, &measured.days, DAYS),
    ];
    for (question, table, grid) in curves {
        cells.extend(each(table, |group, counts| {
            let (size, noise) = measured.size(group);
            let curve = curve(&counts.told(size, noise), grid, z)?;
            Some(cell(question, group, size, Answer::Curve(curve)))
        }));
    }
    cells.extend(each(&measured.joined, |group, counts| joined(measured, group, counts, z)));
    cells.extend(each(&measured.words, |group, counts| {
        let (size, _) = measured.size(group);
        Some(cell(Question::Words, group, size, Answer::Parts(parts(&counts, (size, measured.sizes.least), z)?)))
    }));
    cells.extend(each(&measured.hours, |group, counts| hours(measured, group, counts, z)));
    for stage in TimedStage::ALL {
        cells.extend(each(&measured.stages, |group, counts| in_stage(measured, group, (stage, counts), z)));
    }
    cells.extend(each(&measured.weeks, |group, counts| by_week(measured, group, &counts, z)));
    cells
}

fn each(table: &Table, cell: impl Fn(&Group, Counts) -> Option<Cell>) -> Vec<Cell> {
    let groups = table.division.groups.iter();
    groups.filter_map(|(group, parts)| cell(group, table.counts(parts))).collect()
}

fn cell(question: Question, group: &Group, households: f64, answer: Answer) -> Cell {
    let households = people(households);
    let Group { species, word_kind, age_band } = *group;
    Cell { question, species, age_band, word_kind, households, words: households, answer }
}

/// Counts of what is published are positive and below those of people.
fn people(count: f64) -> u32 {
    count.round().clamp(0.0, f64::from(u32::MAX)) as u32
}

impl Measured {
    /// Households of a group and the variance of that count's noise.
    fn size(&self, group: &Group) -> (f64, f64) {
        let (sizes, noise) = match (group.word_kind, group.age_band) {
            (None, None) => (&self.sizes.species, self.sizes_noise[0]),
            (Some(_), None) => (&self.sizes.kinds, self.sizes_noise[1]),
            (Some(_), Some(_)) => (&self.sizes.leaves, self.sizes_noise[2]),
            (None, Some(_)) => (&self.sizes.ages, self.sizes_noise[3]),
        };
        (sizes.of(group), noise)
    }
}

fn curve(counts: &Counts, grid: Grid, z: f64) -> Option<Curve> {
    let steps = steps(counts, grid, z);
    let point = |step: &Point| Point {
        share: rounded(step.share, SHARES),
        low: rounded(step.low, SHARES),
        high: rounded(step.high, SHARES),
        ..*step
    };
    let points: Vec<Point> = steps.iter().map(point).collect();
    let quantiles = told(quantiles(&steps, Between::Waits), WAITS);
    (!points.is_empty()).then_some(Curve { points, quantiles })
}

/// Counts of a group without the last bin, of those of whom there is nothing to tell; none where too few are left.
fn telling(measured: &Measured, group: &Group, counts: Counts, z: f64) -> Option<Counts> {
    let (size, noise) = measured.size(group);
    let mut counts = counts.told(size, noise);
    counts.bins.pop()?;
    enough(measured, counts, z)
}

/// Counts of some bins, where it is sure enough that they are as many as a cell asks.
fn enough(measured: &Measured, counts: Counts, z: f64) -> Option<Counts> {
    let many = counts.bins.len() as f64;
    let least = measured.sizes.least + z * counts.noise_of(many, many).sqrt();
    (counts.whole() >= least).then_some(counts)
}

fn in_stage(measured: &Measured, group: &Group, (stage, counts): (TimedStage, Counts), z: f64) -> Option<Cell> {
    let mut counts = telling(measured, group, counts, z)?;
    // What the noise of all bins has in common holds for any of them.
    counts.bins = counts.bins.chunks(STAGE_BINS).nth(stage as usize)?.to_vec();
    let counts = enough(measured, counts, z)?;
    let curve = curve(&counts, STAGE_DAYS, z)?;
    Some(cell(Question::in_stage(stage), group, counts.whole(), Answer::Curve(curve)))
}

fn by_week(measured: &Measured, group: &Group, counts: &Counts, z: f64) -> Option<Cell> {
    let homes = measured.stretches.of(group)?.bins;
    let one = |((from, bins), homes): ((Stretch, &[f64]), &f64)| {
        if *homes < measured.stretch_bar {
            return None;
        }
        let told = |one: &Share| {
            let Share { share, low, high } = one.outward(SHARES);
            Told { share, low, high }
        };
        let shares = from_each_on(bins, counts.noise, *homes, z);
        let (some, daily) = (told(shares.first()?), told(shares.get(1)?));
        Some(WeekShare { from, to: from.to(), households: people(*homes), some, daily })
    };
    let each = Stretch::ALL.into_iter().zip(counts.bins.chunks(STRETCH_BINS)).zip(&homes);
    let weeks: Vec<WeekShare> = each.filter_map(one).collect();
    let whole = weeks.iter().map(|one| f64::from(one.households)).sum();
    (!weeks.is_empty()).then(|| cell(Question::PressesByWeek, group, whole, Answer::Weeks(Weeks { weeks })))
}

fn hours(measured: &Measured, group: &Group, counts: Counts, z: f64) -> Option<Cell> {
    let counts = telling(measured, group, counts, z)?;
    let shares = shares(&counts, z)?;
    let one = |(part, one): (DayPart, Share)| {
        let Share { share, low, high } = one.outward(SHARES);
        HourShare { part, share, low, high }
    };
    let hours = DayPart::ALL.into_iter().zip(shares).map(one).collect();
    Some(cell(Question::Hours, group, counts.whole(), Answer::Hours(Hours { hours })))
}

fn joined(measured: &Measured, group: &Group, counts: Counts, z: f64) -> Option<Cell> {
    let counts = telling(measured, group, counts, z)?;
    let places: Vec<f64> = (1..=SHARE_STEPS).map(|step| step as f64 / SHARE_STEPS as f64).collect();
    let steps = steps_of_shares(&counts, &places, z);
    let spread = Spread { quantiles: told(quantiles(&steps, Between::Shares), SHARES) };
    Some(cell(Question::Joined, group, counts.whole(), Answer::Spread(spread)))
}

/// Kinds of the first words of a group of a size. Without noise a later word tells how many had none, by its interval: they are a group
/// as well, and where it is too small, that word is not told.
fn parts(counts: &Counts, (size, least): (f64, f64), z: f64) -> Option<Parts> {
    let kinds = WordKind::ALL.len();
    let (mut parts, mut told) = (Vec::new(), size);
    for (word, bins) in (1..).zip(counts.bins.chunks(kinds).take(FIRST_WORDS)) {
        let of_word = Counts::new(bins.to_vec(), counts.noise);
        let (whole, without) = (of_word.whole(), told - of_word.whole());
        if whole < least || counts.noise == 0.0 && without > 0.0 && without < least {
            continue;
        }
        told = whole;
        let shares = shares(&of_word, z).unwrap_or_default();
        parts.extend(WordKind::ALL.into_iter().zip(shares).map(|(kind, one)| {
            let Share { share, low, high } = one.outward(SHARES);
            Part { word, kind, share, low, high }
        }));
    }
    (!parts.is_empty()).then_some(Parts { parts })
}

/// Digits after the point of a share, as a power of ten.
const SHARES: f64 = 10_000.0;
/// Of a wait.
const WAITS: f64 = 10.0;

fn rounded(value: f64, digits: f64) -> f64 {
    (value * digits).round() / digits
}

fn told(quantiles: Quantiles, digits: f64) -> Quantiles {
    let one = |q: Quantile| {
        let number = |value: Option<f64>| value.map(|value| rounded(value, digits));
        Quantile { value: number(q.value), low: number(q.low), high: number(q.high) }
    };
    let Quantiles { p05, p25, p50, p75, p95 } = quantiles;
    Quantiles { p05: one(p05), p25: one(p25), p50: one(p50), p75: one(p75), p95: one(p95) }
}
