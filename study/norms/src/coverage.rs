//! How often intervals hold a known truth, and how far off a median is: the same measurement small in a test and large in the laboratory.

use crate::draw::{Drawn, draw};
use crate::estimate::{Between, Counts, quantiles, steps};
use crate::grid::{DAYS, Grid, SHOWINGS, STAGE_DAYS};
use crate::known::Laws;
use crate::loss::{Counted, Loss};
use crate::measure::{Kind, measure as counted};
use crate::noise::{NoNoise, Noise, variance};
use crate::release::cells;
use sayso_methods::stats::Level;
use sayso_norms::{Answer, Often, Point, Quantile, Quantiles, Question, TimedStage};

/// The shares of which it is measured where they lie.
const SHARES: [f64; 5] = [0.05, 0.25, 0.5, 0.75, 0.95];

/// Of what the waits are.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Wait {
    /// Showings.
    Showings,
    /// Days.
    Days,
}

impl Wait {
    const fn grid(self) -> Grid {
        match self {
            Self::Showings => SHOWINGS,
            Self::Days => DAYS,
        }
    }

    const fn counted(self) -> Counted {
        match self {
            Self::Showings => Counted::Showings,
            Self::Days => Counted::Days,
        }
    }

    fn of(self, one: &Drawn) -> u32 {
        match self {
            Self::Showings => one.exposures,
            Self::Days => one.days,
        }
    }

    fn truth(self, laws: &Laws, by: f64) -> f64 {
        match self {
            Self::Showings => laws.pressed_by_showing(by),
            Self::Days => laws.pressed_by_day(by),
        }
    }
}

/// A cell to be measured again and again.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Setting {
    /// Households in it.
    pub households: u32,
    /// Groups that it is put together of; each has its own noise.
    pub parts: u32,
    /// Of what.
    pub wait: Wait,
    /// The loss of the release; none without noise.
    pub loss: Option<Loss>,
}

/// What was found over many data sets.
#[derive(Clone, PartialEq, Debug, Default)]
pub struct Found {
    /// Data sets.
    pub sets: u32,
    /// For each place of the grid: points told, and intervals that held the truth.
    pub points: Vec<(u32, u32)>,
    /// For .05, .25, .5, .75, .95: quantiles told with a value, and intervals that held the truth, open ends counted as held.
    pub quantiles: [(u32, u32); 5],
    /// How far off each median was, as a share of the truth; those that were told.
    pub off: Vec<f64>,
}

impl Found {
    /// Of all points told, the share whose interval held the truth.
    #[must_use]
    pub fn held(&self) -> f64 {
        let (told, held) = self.points.iter().fold((0, 0), |sum, one| (sum.0 + one.0, sum.1 + one.1));
        f64::from(held) / f64::from(told.max(1))
    }

    /// Counts one data set, by the truth at each place of the grid and the places of [`SHARES`].
    fn count(&mut self, points: &[Point], quantiles: &Quantiles, truths: &[f64], places: &[f64; SHARES.len()]) {
        self.points.resize(truths.len(), (0, 0));
        for ((point, truth), so_far) in points.iter().zip(truths).zip(&mut self.points) {
            so_far.0 += 1;
            so_far.1 += u32::from((point.low..=point.high).contains(truth));
        }
        for ((_, one), (place, so_far)) in quantiles.each().into_iter().zip(places.iter().zip(&mut self.quantiles)) {
            if one.value.is_some() {
                so_far.0 += 1;
                so_far.1 += u32::from(holds(&one, *place));
            }
        }
        self.off.extend(quantiles.p50.value.map(|value| (value / places[2] - 1.0).abs()));
    }

    /// By how much a median is off in so many of a hundred data sets, or less.
    #[must_use]
    pub fn off_in(&self, hundredths: usize) -> Option<f64> {
        hundredths_of(&self.off, hundredths)
    }
}

/// The value below which so many of a hundred lie, or at which; none of nothing.
#[must_use]
pub fn hundredths_of(values: &[f64], hundredths: usize) -> Option<f64> {
    let mut sorted = values.to_vec();
    sorted.sort_by(f64::total_cmp);
    let at = (sorted.len() * hundredths).div_ceil(100).checked_sub(1)?;
    sorted.get(at).copied()
}

/// Measures a setting over data sets of different seeds.
///
/// # Errors
/// [`NoNoise`].
pub fn measure(laws: &Laws, setting: Setting, sets: u32, seed: u64, noise: &mut dyn Noise) -> Result<Found, NoNoise> {
    let (grid, z) = (setting.wait.grid(), Level::P95.z());
    let truths: Vec<f64> = grid.places().iter().map(|at| setting.wait.truth(laws, f64::from(*at))).collect();
    let places = SHARES.map(|share| laws.quantile(|laws, by| setting.wait.truth(laws, by), share));
    let mut found = Found { sets, ..Found::default() };
    for set in 0..sets {
        let counts = counts(&drawn(laws, setting.households, seed, set), setting, noise)?;
        let steps = steps(&counts, grid, z);
        found.count(&steps, &quantiles(&steps, Between::Waits), &truths, &places);
    }
    Ok(found)
}

/// The households of one of the data sets, as a release draws them.
fn drawn(laws: &Laws, households: u32, seed: u64, set: u32) -> Vec<Drawn> {
    draw(&laws.rows(households, seed_of(seed, set)), "coverage")
}

/// The seed of one of the data sets.
fn seed_of(seed: u64, set: u32) -> u64 {
    seed.wrapping_mul(1 << 32).wrapping_add(u64::from(set))
}

/// Waits are whole numbers, so a quantile is known to within one.
fn holds(one: &Quantile, truth: f64) -> bool {
    one.low.is_none_or(|low| low <= truth + 0.5) && one.high.is_none_or(|high| truth - 0.5 <= high)
}

fn counts(drawn: &[Drawn], setting: Setting, noise: &mut dyn Noise) -> Result<Counts, NoNoise> {
    let grid = setting.wait.grid();
    let mut bins = vec![0; grid.bins()];
    drawn.iter().for_each(|one| bins[grid.bin(setting.wait.of(one), one.pressed)] += 1);
    let whole = vec![drawn.len() as i64];
    let plain = |bins: &[i64]| bins.iter().map(|bin| *bin as f64).collect::<Vec<_>>();
    let Some(loss) = setting.loss else { return Ok(Counts::new(plain(&bins), 0.0)) };
    let (asked, size) = (setting.wait.counted(), Counted::Leaves);
    for part in 0..setting.parts {
        // All households lie in the first part; the others are empty, and noisy.
        let its = if part == 0 { std::mem::take(&mut bins) } else { vec![0; grid.bins()] };
        let its = noise.add(its, asked.sensitivity(), asked.scale(loss))?.counts;
        bins.resize(its.len(), 0);
        bins.iter_mut().zip(its).for_each(|(bin, more)| *bin += more);
    }
    let whole = noise.add(whole, size.sensitivity(), size.scale(loss))?.counts;
    let of_bins = f64::from(setting.parts) * variance(asked.scale(loss));
    let whole = whole.first().copied().unwrap_or(0) as f64;
    let counts = Counts { draws: f64::from(setting.parts), ..Counts::new(plain(&bins), of_bins) };
    Ok(counts.told(whole, variance(size.scale(loss))))
}

/// Whole releases, as far as they tell of stages: for each stage how often intervals hold, and in how many of the sets it is told at all.
///
/// # Errors
/// [`NoNoise`].
pub fn stages(
    laws: &Laws,
    households: u32,
    (loss, noise): (Loss, &mut dyn Noise),
    (sets, seed): (u32, u64),
) -> Result<[(u32, Found); 2], NoNoise> {
    let mut all = TimedStage::ALL.map(|_| (0, Found { sets, ..Found::default() }));
    let truths = TimedStage::ALL.map(|stage| {
        let by: Vec<f64> = STAGE_DAYS.places().iter().map(|at| laws.moved_on_by(stage, f64::from(*at))).collect();
        (by, SHARES.map(|share| laws.quantile(|laws, days| laws.moved_on_by(stage, days), share)))
    });
    for set in 0..sets {
        let measured = counted(&drawn(laws, households, seed, set), Kind::Noisy(loss, noise))?;
        for cell in cells(&measured) {
            let Some(stage) = TimedStage::ALL.into_iter().find(|s| Question::in_stage(*s) == cell.question) else {
                continue;
            };
            let (Answer::Curve(curve), (told, found)) = (cell.answer, &mut all[stage as usize]) else { continue };
            *told += 1;
            let (truths, places) = &truths[stage as usize];
            found.count(&curve.points, &curve.quantiles, truths, places);
        }
    }
    Ok(all)
}

/// What was found of one stretch of weeks over many releases.
#[derive(Clone, PartialEq, Debug, Default)]
pub struct WeeksFound {
    /// Releases that tell of it.
    pub told: u32,
    /// Intervals that held the truth: of the share pressed at all, and of that pressed seven times or more.
    pub held: [u32; 2],
    /// How far off each share pressed at all was.
    pub off: Vec<f64>,
    /// How far the ends of its interval lie apart.
    pub wide: Vec<f64>,
}

/// Whole releases, as far as they tell of weeks.
///
/// # Errors
/// [`NoNoise`].
pub fn weeks(
    laws: &Laws,
    households: u32,
    (loss, noise): (Loss, &mut dyn Noise),
    (sets, seed): (u32, u64),
) -> Result<[WeeksFound; 4], NoNoise> {
    let mut all: [WeeksFound; 4] = Default::default();
    for set in 0..sets {
        let mut drawn = drawn(laws, households, seed, set);
        let weeks = laws.weeks(drawn.len(), seed_of(seed, set));
        drawn.iter_mut().zip(weeks).for_each(|(one, week)| one.week = week);
        for cell in cells(&counted(&drawn, Kind::Noisy(loss, noise))?) {
            let Answer::Weeks(weeks) = cell.answer else { continue };
            for one in weeks.weeks {
                let found = &mut all[one.from.number()];
                let truths = [Often::Some, Often::Daily].map(|least| laws.pressed_in_a_week(one.from, least));
                found.told += 1;
                for ((told, truth), held) in [one.some, one.daily].iter().zip(truths).zip(&mut found.held) {
                    *held += u32::from((told.low..=told.high).contains(&truth));
                }
                found.off.push((one.some.share - truths[0]).abs());
                found.wide.push(one.some.high - one.some.low);
            }
        }
    }
    Ok(all)
}
