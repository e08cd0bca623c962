//! Do words go with situations (or with what follows) more than chance allows, session by session?
//!
//! Sources: permutation test within strata (Fisher 1935; Good 2005, Permutation, Parametric and Bootstrap Tests of
//! Hypotheses, ch. 7, from memory); sequential stopping with a valid p-value: Besag & Clifford 1991, Biometrika 78:301;
//! false discovery over words: Benjamini & Hochberg 1995. Page: `docs/methods/understanding.md`.
//!
//! A situation lasts, and presses come in runs of the same button. Were every press rearranged on its own, a learner that
//! leans on one button through breakfast would seem to mean "kitchen". So by default what is rearranged is the situation
//! of whole episodes (runs of presses in one situation), which keeps the presses exactly as they were.

use super::draw::MOST_KINDS;
use super::null::{Coded, Excess, Rearranger};
use super::{MonteCarlo, MonteCarloP, UnderstandingError, sessions};
use crate::stats::{Level, Proportion, benjamini_hochberg};
use rand_xoshiro::Xoshiro256PlusPlus;
use rand_xoshiro::rand_core::SeedableRng;
use std::collections::BTreeMap;

/// A press and what it is held against: the situation it was made in, or what the learner did next.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct PressIn {
    /// Session (sitting) number; presses of a session stand together, in order of time.
    pub session: usize,
    /// Word pressed.
    pub word: usize,
    /// Situation or outcome, as a number.
    pub outcome: usize,
}

/// What changes places in a rearrangement.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Unit {
    /// The outcome of each press. Right only where outcomes are dealt anew for each press, as in a randomised probe.
    Press,
    /// The situation of each episode: a run of presses in one situation, in one session. For everyday records.
    Episode,
}

/// How strongly one word goes with the outcomes.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct WordAssociation {
    /// Word.
    pub word: usize,
    /// Presses of it.
    pub n: u64,
    /// Its p-value.
    pub p: MonteCarloP,
    /// Adjusted over words (false discovery rate).
    pub adjusted_p: f64,
    /// The outcome most above chance for this word.
    pub leading_outcome: usize,
    /// Presses with that outcome, in sessions that can say something.
    pub observed: u64,
    /// Presses expected with it there by chance.
    pub expected: f64,
}

/// Result of the test.
#[derive(Debug, Clone, PartialEq)]
pub struct Association {
    /// All words together.
    pub overall: MonteCarloP,
    /// Word by word, in order of their numbers.
    pub by_word: Vec<WordAssociation>,
    /// Presses.
    pub n: u64,
    /// Sessions in which both word and outcome varied; the others say nothing.
    pub informative_sessions: usize,
}

/// Tests presses against chance within sessions. Without a session in which both vary every p is 1.
///
/// By press, the statistic sums, over outcomes, the squared distance of the count from its expectation in units of its
/// standard deviation, both given the margins of every session. By episode it sums the squared excess of presses over what
/// the episodes' lengths alone would bring, in units of its own spread in that outcome: a studentised statistic, so that
/// situations with longer, or more varied, episodes are not taken for a preference (Janssen 1997, Stat Probab Lett 36:9,
/// from memory).
///
/// # Errors
/// [`UnderstandingError::NoObservations`], [`UnderstandingError::SessionsMixed`], or a cap of 0 rearrangements.
///
/// ```
/// use sayso_methods::understanding::{MonteCarlo, association::{PressIn, Unit, association}};
/// let presses: Vec<PressIn> = (0..200)
///     .map(|k| PressIn { session: k / 10, word: k * 7 % 5 % 2, outcome: k * 7 % 5 % 2 })
///     .collect();
/// let found = association(&presses, Unit::Episode, MonteCarlo::seeded(1))?;
/// assert!(found.overall.p < 0.001);
/// # Ok::<(), sayso_methods::understanding::UnderstandingError>(())
/// ```
pub fn association(presses: &[PressIn], unit: Unit, draws: MonteCarlo) -> Result<Association, UnderstandingError> {
    let draws = draws.check()?;
    if presses.is_empty() {
        return Err(UnderstandingError::NoObservations);
    }
    let ranges = sessions(presses.iter().map(|press| press.session))?;
    let words = numbered(presses.iter().map(|press| press.word));
    let outcomes = numbered(presses.iter().map(|press| press.outcome));
    let columns = outcomes.len();
    for (what, kinds) in [("words told apart", words.len()), ("outcomes told apart", columns)] {
        if kinds > MOST_KINDS {
            return Err(UnderstandingError::OutOfRange { what, value: kinds as f64 });
        }
    }
    let coded: Vec<(u8, u8)> =
        presses.iter().map(|press| (words[&press.word] as u8, outcomes[&press.outcome] as u8)).collect();

    let mut chance = Chance::new(words.len(), columns);
    let mut excess = Excess { sum: vec![0.0; chance.seen.len()], squares: vec![0.0; chance.seen.len()] };
    let mut rearranger = Rearranger::new(words.len(), columns);
    let mut informative_sessions = 0;
    for range in &ranges {
        let session = &coded[range.clone()];
        let varies = |pick: fn(&(u8, u8)) -> u8| session.iter().any(|press| pick(press) != pick(&session[0]));
        if !(varies(|press| press.0) && varies(|press| press.1)) {
            continue;
        }
        chance.add(session);
        informative_sessions += 1;
        match unit {
            Unit::Press => rearranger.add_presses(session),
            Unit::Episode => {
                let episodes: Vec<&Coded> = session.chunk_by(|a, b| a.1 == b.1).collect();
                rearranger.add_episodes(&episodes, &mut excess);
            }
        }
    }
    let statistic = match unit {
        Unit::Press => Statistic::Press(chance.weights()),
        Unit::Episode => Statistic::Episode,
    };
    let distance: Vec<f64> = match unit {
        Unit::Press => (0..chance.seen.len()).map(|cell| chance.z(cell)).collect(),
        Unit::Episode => excess.sum.iter().zip(&excess.squares).map(|(d, q)| studentised(*d, *q)).collect(),
    };
    let (overall, by_word) = run(&chance, &excess, &rearranger, &statistic, draws)?;

    let raw: Vec<f64> = by_word.iter().map(|p| p.p).collect();
    let adjusted = benjamini_hochberg(&raw, 0.05)?.adjusted;
    let names: Vec<usize> = outcomes.keys().copied().collect();
    let by_word = words
        .iter()
        .map(|(&word, &row)| {
            let leading = (row * columns..(row + 1) * columns)
                .max_by(|a, b| distance[*a].total_cmp(&distance[*b]))
                .unwrap_or(row * columns);
            WordAssociation {
                word,
                n: coded.iter().filter(|press| usize::from(press.0) == row).count() as u64,
                p: by_word[row],
                adjusted_p: adjusted[row],
                leading_outcome: names[leading % columns],
                observed: chance.seen[leading] as u64,
                expected: chance.mean[leading],
            }
        })
        .collect();
    Ok(Association { overall, by_word, n: presses.len() as u64, informative_sessions })
}

/// Small consecutive numbers for the names in use, in order.
fn numbered(names: impl Iterator<Item = usize>) -> BTreeMap<usize, usize> {
    let mut map: BTreeMap<usize, usize> = names.map(|name| (name, 0)).collect();
    for (number, slot) in map.values_mut().enumerate() {
        *slot = number;
    }
    map
}

/// The table seen, and each cell's mean and variance over rearrangements.
struct Chance {
    columns: usize,
    seen: Vec<i64>,
    mean: Vec<f64>,
    variance: Vec<f64>,
}

impl Chance {
    fn new(words: usize, columns: usize) -> Self {
        let cells = words * columns;
        Self { columns, seen: vec![0; cells], mean: vec![0.0; cells], variance: vec![0.0; cells] }
    }

    fn add(&mut self, session: &Coded) {
        let n = session.len() as f64;
        let mut by_word: BTreeMap<u8, f64> = BTreeMap::new();
        let mut by_outcome: BTreeMap<u8, f64> = BTreeMap::new();
        for (word, outcome) in session {
            self.seen[usize::from(*word) * self.columns + usize::from(*outcome)] += 1;
            *by_word.entry(*word).or_default() += 1.0;
            *by_outcome.entry(*outcome).or_default() += 1.0;
        }
        for (word, r) in &by_word {
            for (outcome, c) in &by_outcome {
                let cell = usize::from(*word) * self.columns + usize::from(*outcome);
                self.mean[cell] += r * c / n;
                if n > 1.0 {
                    self.variance[cell] += r * (n - r) * c * (n - c) / (n * n * (n - 1.0));
                }
            }
        }
    }

    fn weights(&self) -> Vec<f64> {
        self.variance.iter().map(|v| if *v > 1e-9 { 1.0 / v } else { 0.0 }).collect()
    }

    /// Distance of the count seen from chance in standard deviations.
    fn z(&self, cell: usize) -> f64 {
        if self.variance[cell] > 1e-9 {
            (self.seen[cell] as f64 - self.mean[cell]) / self.variance[cell].sqrt()
        } else {
            0.0
        }
    }
}

/// Rearrangements are drawn in blocks with a seed each, so that several may be drawn at once with the same result.
const BLOCK: u64 = 64;
/// Work of a block (presses placed) from which a second thread pays.
const WORTH_A_THREAD: usize = 200_000;

/// Draws until every p-value is clear or the cap is reached.
fn run(
    chance: &Chance,
    excess: &Excess,
    rearranger: &Rearranger,
    statistic: &Statistic,
    draws: MonteCarlo,
) -> Result<(MonteCarloP, Vec<MonteCarloP>), UnderstandingError> {
    let words = chance.seen.len() / chance.columns;
    let mut seen = vec![0.0; words + 1];
    statistic.of(chance, &chance.seen, excess, &mut seen);
    // Rounding must not turn a tie into "less extreme".
    let limits: Vec<f64> = seen.iter().map(|value| value - 1e-9 * (1.0 + value)).collect();

    let mut counters = vec![Counter::default(); words + 1];
    let blocks = if rearranger.is_empty() { 0 } else { draws.most.div_ceil(BLOCK) };
    let at_once = if rearranger.work() * BLOCK as usize >= WORTH_A_THREAD {
        std::thread::available_parallelism().map_or(1, std::num::NonZero::get) as u64
    } else {
        1
    };
    let one_block = |block: u64| {
        let size = BLOCK.min(draws.most - block * BLOCK) as usize;
        let mut rearranger = rearranger.clone();
        // Golden-ratio steps keep the seeds of the blocks apart.
        let mut rng = Xoshiro256PlusPlus::seed_from_u64(draws.seed ^ block.wrapping_mul(0x9E37_79B9_7F4A_7C15));
        let (mut table, mut drawn) = (vec![0i64; chance.seen.len()], excess.clone());
        let mut found = vec![0.0; size * (words + 1)];
        for here in found.chunks_mut(words + 1) {
            match statistic {
                Statistic::Press(_) => rearranger.draw(&mut rng, &mut table),
                Statistic::Episode => rearranger.draw_episodes(&mut rng, &mut drawn),
            }
            statistic.of(chance, &table, &drawn, here);
        }
        found
    };
    let mut block = 0;
    while block < blocks && counters.iter().any(|counter| counter.exceeded < draws.enough) {
        // The first block alone: most questions are clear by then.
        let wave = if block == 0 { 1 } else { at_once.min(blocks - block) };
        let found: Vec<Vec<f64>> = std::thread::scope(|scope| {
            let others: Vec<_> = (block + 1..block + wave)
                .map(|other| {
                    let task = move || one_block(other);
                    (other, std::thread::Builder::new().spawn_scoped(scope, task))
                })
                .collect();
            let mut found = vec![one_block(block)];
            for (other, thread) in others {
                // Where no thread can be had, or it was lost, the block is drawn here: the same numbers either way.
                let drawn = thread.ok().and_then(|thread| thread.join().ok());
                found.push(drawn.unwrap_or_else(|| one_block(other)));
            }
            found
        });
        for here in found.iter().flat_map(|block| block.chunks(words + 1)) {
            for ((counter, here), limit) in counters.iter_mut().zip(here).zip(&limits) {
                counter.count(here >= limit, draws.enough);
            }
        }
        block += wave;
    }
    let mut p = counters.iter().map(|counter| counter.p(draws.enough)).collect::<Result<Vec<_>, _>>()?;
    let overall = p.pop().ok_or(UnderstandingError::NoObservations)?;
    Ok((overall, p))
}

/// How a table's distance from chance is measured.
enum Statistic {
    /// Squared distance from the expectation, by these weights (one over the variance).
    Press(Vec<f64>),
    /// Squared excess over its own squares.
    Episode,
}

impl Statistic {
    /// Each word's statistic and, last, their sum.
    fn of(&self, chance: &Chance, table: &[i64], excess: &Excess, out: &mut [f64]) {
        let columns = chance.columns;
        let words = out.len() - 1;
        let mut sum = 0.0;
        for (word, slot) in out.iter_mut().take(words).enumerate() {
            let cells = word * columns..(word + 1) * columns;
            *slot = match self {
                Self::Press(weight) => cells.map(|c| (table[c] as f64 - chance.mean[c]).powi(2) * weight[c]).sum(),
                Self::Episode => cells.map(|c| studentised(excess.sum[c], excess.squares[c]).powi(2)).sum(),
            };
            sum += *slot;
        }
        if let Some(last) = out.last_mut() {
            *last = sum;
        }
    }
}

/// An excess in units of its own spread; nothing where nothing varied (rounding leaves a little behind).
fn studentised(sum: f64, squares: f64) -> f64 {
    if squares > 1e-9 { sum / squares.sqrt() } else { 0.0 }
}

/// Counts rearrangements for one p-value, stopping by itself once it is clear.
#[derive(Debug, Clone, Copy, Default)]
pub(super) struct Counter {
    pub exceeded: u64,
    pub drawn: u64,
}

impl Counter {
    pub(super) fn count(&mut self, as_extreme: bool, enough: u64) {
        if self.exceeded < enough {
            self.drawn += 1;
            self.exceeded += u64::from(as_extreme);
        }
    }

    /// Besag and Clifford's p: h/l if stopped at the h-th, else (g + 1)/(n + 1).
    pub(super) fn p(self, enough: u64) -> Result<MonteCarloP, UnderstandingError> {
        let Self { exceeded, drawn } = self;
        let p = if drawn == 0 {
            1.0
        } else if exceeded >= enough {
            exceeded as f64 / drawn as f64
        } else {
            (exceeded + 1) as f64 / (drawn + 1) as f64
        };
        let error = if drawn == 0 { Proportion::new(1, 1)? } else { Proportion::new(exceeded, drawn)? };
        Ok(MonteCarloP { p, exceeded, drawn, error: error.clopper_pearson(Level::P95) })
    }
}
