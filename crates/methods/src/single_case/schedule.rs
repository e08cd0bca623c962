//! Which orders of conditions a design allows, and a fair draw among them.
//!
//! Sources: phase changes drawn among all that leave enough points a phase: Edgington 1975, J Psychol 90:57; Onghena 1992,
//! Behav Assess 14:153 (ABAB). Multiple baseline with a drawn start in a window of its own and drawn order of the series:
//! Koehler & Levin 1998, Psychol Methods 3:206. Alternating treatments with at most two of a kind in a row: Onghena &
//! Edgington 1994, Behav Res Ther 32:783 (from memory). Changing criterion with drawn changes: Onghena 1992; Ferron,
//! Rohrer & Levin 2019, Behav Modif (from memory). Page: `docs/methods/single-case.md`.

use super::CaseError;
use super::alternate::{LONGEST_RUN, Runs, quotas};
use rand_xoshiro::Xoshiro256PlusPlus;
use rand_xoshiro::rand_core::{Rng, SeedableRng};

/// Most points of one series; keeps every count within 128 bits.
pub const MOST_POINTS: usize = 120;
/// Most phases, and most series.
pub const MOST_PARTS: usize = 8;

/// A design with its size. Points are days or sessions, counted from 0.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Design {
    /// Usual, changed, usual, changed ...: `phases` in turn, the first usual, each of at least `least` points.
    Reversal {
        /// Points in all.
        points: usize,
        /// Phases, 2 to 8.
        phases: usize,
        /// Least points a phase.
        least: usize,
    },
    /// Several series, each changed once, no two at the same time.
    MultipleBaseline {
        /// Points of each series.
        points: usize,
        /// Series, 2 to 8.
        series: usize,
        /// Least points before and after the change.
        least: usize,
        /// Least points between the changes of two series, at least 1.
        apart: usize,
    },
    /// Two conditions in quick turn, equally often (one more of either where the number is odd).
    Alternating {
        /// Points in all.
        points: usize,
    },
    /// As a reversal, but each phase has a criterion of its own; the first is the usual.
    ChangingCriterion {
        /// Points in all.
        points: usize,
        /// Phases, the first without criterion.
        phases: usize,
        /// Least points a phase.
        least: usize,
    },
}

/// The phase of every point, series by series; phases count from 0.
pub type Assignment = Vec<Vec<u8>>;

impl Design {
    /// Points of each series.
    #[must_use]
    pub const fn points(self) -> usize {
        match self {
            Self::Reversal { points, .. }
            | Self::MultipleBaseline { points, .. }
            | Self::Alternating { points }
            | Self::ChangingCriterion { points, .. } => points,
        }
    }

    /// Number of series.
    #[must_use]
    pub const fn series(self) -> usize {
        if let Self::MultipleBaseline { series, .. } = self { series } else { 1 }
    }

    /// Whether the change is in force in a phase.
    #[must_use]
    pub const fn changed(self, phase: u8) -> bool {
        if let Self::ChangingCriterion { .. } = self { phase > 0 } else { phase % 2 == 1 }
    }

    /// Fewest points with which the design can be drawn.
    #[must_use]
    pub const fn needed(self) -> usize {
        match self {
            Self::Reversal { phases, least, .. } | Self::ChangingCriterion { phases, least, .. } => phases * least,
            Self::MultipleBaseline { series, least, apart, .. } => 2 * least + series.saturating_sub(1) * apart,
            Self::Alternating { .. } => 4,
        }
    }

    /// The design, if its numbers fit together.
    ///
    /// # Errors
    /// [`CaseError::OutOfRange`], [`CaseError::TooShort`].
    pub fn check(self) -> Result<Self, CaseError> {
        let within = |what, found: usize, low, high| {
            if (low..=high).contains(&found) { Ok(()) } else { Err(CaseError::OutOfRange { what, low, high, found }) }
        };
        match self {
            Self::Reversal { phases, least, .. } | Self::ChangingCriterion { phases, least, .. } => {
                within("phases", phases, 2, MOST_PARTS)?;
                within("points a phase", least, 1, MOST_POINTS)?;
            }
            Self::MultipleBaseline { series, least, apart, .. } => {
                within("series", series, 2, MOST_PARTS)?;
                within("points a phase", least, 1, MOST_POINTS)?;
                within("points between changes", apart, 1, MOST_POINTS)?;
            }
            Self::Alternating { .. } => {}
        }
        within("points", self.points(), 1, MOST_POINTS)?;
        let (points, needed) = (self.points(), self.needed());
        if points < needed { Err(CaseError::TooShort { points, needed }) } else { Ok(self) }
    }

    /// Number of admissible assignments; each is equally likely in [`Self::draw`].
    ///
    /// # Errors
    /// As [`Self::check`].
    ///
    /// ```
    /// use sayso_methods::single_case::schedule::Design;
    /// // Onghena 1992: with k phases of at least m in n points there are C(n - km + k - 1, k - 1) orders.
    /// assert_eq!(Design::Reversal { points: 24, phases: 4, least: 4 }.count()?, 165);
    /// # Ok::<(), sayso_methods::single_case::CaseError>(())
    /// ```
    pub fn count(self) -> Result<u128, CaseError> {
        Ok(match self.check()? {
            Self::Reversal { points, phases, least } | Self::ChangingCriterion { points, phases, least } => {
                choose(points - phases * least + phases - 1, phases - 1)
            }
            Self::MultipleBaseline { series, .. } => {
                let window = self.window() as u128;
                (1..=series as u128).product::<u128>() * window.pow(series as u32)
            }
            Self::Alternating { points } => {
                let runs = Runs::new(points);
                quotas(points).into_iter().map(|q| runs.ways(q, 0, 0)).sum()
            }
        })
    }

    /// Starts open to each series of a multiple baseline.
    const fn window(self) -> usize {
        match self {
            Self::MultipleBaseline { points, series, least, apart } => {
                (points - 2 * least - (series - 1) * apart) / series + 1
            }
            _ => 1,
        }
    }

    /// Draws one admissible assignment, each equally likely; the same seed gives the same one on any machine.
    ///
    /// # Errors
    /// As [`Self::check`].
    pub fn draw(self, seed: u64) -> Result<Assignment, CaseError> {
        Ok(Drawer::new(self.check()?).draw(&mut Xoshiro256PlusPlus::seed_from_u64(seed)))
    }

    /// Visits every admissible assignment once.
    ///
    /// # Errors
    /// As [`Self::check`].
    pub fn each(self, visit: &mut impl FnMut(&Assignment)) -> Result<(), CaseError> {
        match self.check()? {
            Self::Reversal { points, phases, least } | Self::ChangingCriterion { points, phases, least } => {
                let places = points - phases * least + phases - 1;
                let mut bars: Vec<usize> = (0..phases - 1).collect();
                loop {
                    visit(&vec![from_bars(&bars, points, least)]);
                    if !next_choice(&mut bars, places) {
                        break;
                    }
                }
            }
            Self::MultipleBaseline { series, .. } => {
                for order in orders(series) {
                    let mut offsets = vec![0; series];
                    loop {
                        visit(&self.staggered(&order, &offsets));
                        let Some(at) = offsets.iter().position(|o| o + 1 < self.window()) else { break };
                        offsets[..at].fill(0);
                        offsets[at] += 1;
                    }
                }
            }
            Self::Alternating { points } => {
                let runs = Runs::new(points);
                for quota in quotas(points) {
                    for pick in 0..runs.ways(quota, 0, 0) {
                        visit(&vec![runs.nth(quota, pick)]);
                    }
                }
            }
        }
        Ok(())
    }

    /// Whether an assignment is one of the admissible ones.
    #[must_use]
    pub fn admits(self, assignment: &Assignment) -> bool {
        if self.check().is_err()
            || assignment.len() != self.series()
            || assignment.iter().any(|s| s.len() != self.points())
        {
            return false;
        }
        match self {
            Self::Reversal { phases, least, .. } | Self::ChangingCriterion { phases, least, .. } => {
                let runs: Vec<&[u8]> = assignment[0].chunk_by(|a, b| a == b).collect();
                runs.len() == phases
                    && runs.iter().enumerate().all(|(i, run)| usize::from(run[0]) == i && run.len() >= least)
            }
            Self::MultipleBaseline { least, apart, series, .. } => {
                let starts: Option<Vec<usize>> = assignment
                    .iter()
                    .map(|s| {
                        let start = s.iter().position(|p| *p == 1)?;
                        let steps = s.iter().enumerate().all(|(at, phase)| *phase == u8::from(at >= start));
                        steps.then_some(start)
                    })
                    .collect();
                let Some(mut starts) = starts else { return false };
                starts.sort_unstable();
                starts.iter().enumerate().all(|(j, start)| {
                    let first = least + j * (self.window() - 1 + apart);
                    (first..first + self.window()).contains(start)
                }) && starts.len() == series
            }
            Self::Alternating { points } => {
                let quota = assignment[0].iter().filter(|p| **p == 1).count();
                quotas(points).contains(&quota)
                    && assignment[0].iter().all(|p| *p <= 1)
                    && assignment[0].chunk_by(|a, b| a == b).all(|run| run.len() <= LONGEST_RUN)
            }
        }
    }

    /// Series `order[j]` changes in the `j`-th window, `offsets[j]` points into it.
    fn staggered(self, order: &[usize], offsets: &[usize]) -> Assignment {
        let Self::MultipleBaseline { points, series, least, apart } = self else { return Vec::new() };
        let mut all = vec![vec![0; points]; series];
        for (j, (&which, offset)) in order.iter().zip(offsets).enumerate() {
            let start = least + j * (self.window() - 1 + apart) + offset;
            all[which][start..].fill(1);
        }
        all
    }
}

/// Draws from one design again and again; what it needs to count is counted once.
pub(super) struct Drawer {
    design: Design,
    runs: Option<Runs>,
}

impl Drawer {
    /// For a design that has passed [`Design::check`].
    pub(super) fn new(design: Design) -> Self {
        let runs = if let Design::Alternating { points } = design { Some(Runs::new(points)) } else { None };
        Self { design, runs }
    }

    pub(super) fn draw(&self, rng: &mut Xoshiro256PlusPlus) -> Assignment {
        match self.design {
            Design::Reversal { points, phases, least } | Design::ChangingCriterion { points, phases, least } => {
                // Bars among the spare points: every placing is one split into phases.
                let spare = points - phases * least;
                let mut bars: Vec<usize> = Vec::new();
                while bars.len() < phases - 1 {
                    let at = below(rng, (spare + phases - 1) as u128) as usize;
                    if !bars.contains(&at) {
                        bars.push(at);
                    }
                }
                bars.sort_unstable();
                vec![from_bars(&bars, points, least)]
            }
            Design::MultipleBaseline { series, .. } => {
                let mut order: Vec<usize> = (0..series).collect();
                for i in (1..series).rev() {
                    order.swap(i, below(rng, i as u128 + 1) as usize);
                }
                let window = self.design.window() as u128;
                let offsets: Vec<usize> = (0..series).map(|_| below(rng, window) as usize).collect();
                self.design.staggered(&order, &offsets)
            }
            Design::Alternating { points } => {
                let Some(runs) = &self.runs else { return Vec::new() };
                let mut pick = below(rng, quotas(points).into_iter().map(|q| runs.ways(q, 0, 0)).sum());
                for quota in quotas(points) {
                    let ways = runs.ways(quota, 0, 0);
                    if pick < ways {
                        return vec![runs.nth(quota, pick)];
                    }
                    pick -= ways;
                }
                Vec::new()
            }
        }
    }
}

/// Phases from bars placed among spare points; `bars` ascending.
fn from_bars(bars: &[usize], points: usize, least: usize) -> Vec<u8> {
    let mut phases = vec![0; points];
    for (i, bar) in bars.iter().enumerate() {
        // Bar i has `bar - i` spare points and i + 1 whole phases before it.
        let start = bar - i + (i + 1) * least;
        phases[start..].fill(i as u8 + 1);
    }
    phases
}

/// The next ascending choice out of `0..places`; false after the last.
fn next_choice(chosen: &mut [usize], places: usize) -> bool {
    let k = chosen.len();
    for i in (0..k).rev() {
        if chosen[i] < places - k + i {
            chosen[i] += 1;
            for j in i + 1..k {
                chosen[j] = chosen[j - 1] + 1;
            }
            return true;
        }
    }
    false
}

/// Every order of `n` things.
fn orders(n: usize) -> Vec<Vec<usize>> {
    let mut all = vec![Vec::new()];
    for thing in 0..n {
        all = all
            .into_iter()
            .flat_map(|order: Vec<usize>| {
                (0..=order.len()).map(move |at| {
                    let mut longer = order.clone();
                    longer.insert(at, thing);
                    longer
                })
            })
            .collect();
    }
    all
}

fn choose(n: usize, k: usize) -> u128 {
    (0..k as u128).fold(1, |ways, i| ways * (n as u128 - i) / (i + 1))
}

/// A number below `n` from 128 random bits; its bias is at most n / 2^128.
fn below(rng: &mut Xoshiro256PlusPlus, n: u128) -> u128 {
    ((u128::from(rng.next_u64()) << 64) | u128::from(rng.next_u64())) % n.max(1)
}
