//! Two-word sequences: is one word followed by another more than habit explains?
//!
//! Source of the null and its exact p-value: Besag & Clifford 1989, Biometrika 76:633 (parallel method: walk from the
//! data to a hub, then from the hub to every comparison, by a reversible chain, so data and comparisons are
//! exchangeable however slowly the chain mixes). Sequential stopping: Besag & Clifford 1991. Page:
//! `docs/methods/understanding.md`.
//!
//! The chain swaps presses within a session and accepts a swap only if it leaves unchanged how many neighbouring presses
//! repeat a word and how many lie at each distance on the board. Only presses in a like place are swapped: with or without
//! a press soon before, soon after, later in the session. So word frequencies (of each session), the habit of repeating, the
//! habit of pressing what is near, and which words are followed by a pause (an answer, a meal) are all kept exactly; what is
//! left is the order of words.

use super::association::Counter;
use super::draw::below;
use super::{MonteCarlo, MonteCarloP, UnderstandingError, sessions};
use crate::stats::benjamini_hochberg;
use rand_xoshiro::Xoshiro256PlusPlus;
use rand_xoshiro::rand_core::SeedableRng;

/// One press in a session's order.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TimedPress {
    /// Session (sitting) number; presses of a session stand together.
    pub session: usize,
    /// Word, from 0 up.
    pub word: usize,
    /// Seconds, not decreasing within a session.
    pub time: f64,
}

/// One ordered pair of words.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Sequence {
    /// Word pressed first.
    pub first: usize,
    /// Word pressed next.
    pub second: usize,
    /// Times seen.
    pub observed: u64,
    /// Times expected from habit alone (mean of the comparisons).
    pub expected: f64,
    /// One-sided p.
    pub p: MonteCarloP,
    /// Adjusted over all ordered pairs of different words in use, tested or not.
    pub adjusted_p: f64,
    /// Whether the two places lie next to each other (distance class 1): then a slip of the paw stays a rival.
    pub neighbours: bool,
}

/// Result for all pairs seen often enough.
#[derive(Debug, Clone, PartialEq)]
pub struct Sequences {
    /// Pairs seen at least `min_count` times, most surprising first.
    pub pairs: Vec<Sequence>,
    /// Neighbouring presses close enough in time to count.
    pub n: u64,
    /// Share of proposed swaps that kept all habits; near 0 the test has little power (it is still valid).
    pub accepted: f64,
}

/// What counts as a sequence.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SequenceRule {
    /// Longest seconds between the two presses.
    pub within: f64,
    /// Pairs seen less often are not tested.
    pub min_count: u64,
}

impl Default for SequenceRule {
    fn default() -> Self {
        Self { within: 10.0, min_count: 3 }
    }
}

/// Tests all ordered pairs of different words. `distance[a][b]` is a small whole number for how far apart the places of
/// words `a` and `b` lie (1 for neighbours), symmetric, one row a word.
///
/// # Errors
/// [`UnderstandingError::NoObservations`], [`UnderstandingError::SessionsMixed`], [`UnderstandingError::TimeGoesBack`],
/// [`UnderstandingError::OutOfRange`] for a word without a row in `distance`, an asymmetric one, or a time that is not
/// finite.
///
/// ```
/// use sayso_methods::understanding::MonteCarlo;
/// use sayso_methods::understanding::sequences::{SequenceRule, TimedPress, sequences};
/// // Ten sittings of four presses 3 s apart, in which word 2 follows word 0 each time.
/// let words = [[1, 0, 2, 1], [0, 2, 1, 1]];
/// let presses: Vec<TimedPress> = (0..10)
///     .flat_map(|session| {
///         let sitting = words[session % 2];
///         (0..4).map(move |k| TimedPress { session, word: sitting[k], time: 3.0 * k as f64 })
///     })
///     .collect();
/// let apart = vec![vec![0, 2, 2], vec![2, 0, 2], vec![2, 2, 0]];
/// let found = sequences(&presses, &apart, &SequenceRule::default(), MonteCarlo::seeded(1))?;
/// assert_eq!((found.pairs[0].first, found.pairs[0].second, found.pairs[0].observed), (0, 2, 10));
/// # Ok::<(), sayso_methods::understanding::UnderstandingError>(())
/// ```
pub fn sequences(
    presses: &[TimedPress],
    distance: &[Vec<u8>],
    rule: &SequenceRule,
    draws: MonteCarlo,
) -> Result<Sequences, UnderstandingError> {
    let draws = draws.check()?;
    if presses.is_empty() {
        return Err(UnderstandingError::NoObservations);
    }
    let size = distance.len();
    for (a, row) in distance.iter().enumerate() {
        if row.len() != size || (0..size).any(|b| row[b] != distance[b].get(a).copied().unwrap_or(0)) {
            return Err(UnderstandingError::OutOfRange { what: "distances between places, row", value: a as f64 });
        }
    }
    if let Some(press) = presses.iter().find(|press| press.word >= size) {
        return Err(UnderstandingError::OutOfRange { what: "word without a place", value: press.word as f64 });
    }
    if let Some(press) = presses.iter().find(|press| !press.time.is_finite()) {
        return Err(UnderstandingError::OutOfRange { what: "time of a press", value: press.time });
    }
    let ranges = sessions(presses.iter().map(|press| press.session))?;
    let mut linked = vec![false; presses.len()]; // to the press before
    for range in &ranges {
        for at in range.start + 1..range.end {
            let gap = presses[at].time - presses[at - 1].time;
            if gap < 0.0 {
                return Err(UnderstandingError::TimeGoesBack { at });
            }
            linked[at] = gap <= rule.within;
        }
    }
    let mut chain = Chain {
        words: presses.iter().map(|press| press.word).collect(),
        // Presses of one word lie at distance class 255: repeating is a habit of its own.
        class: (0..size).flat_map(|a| (0..size).map(move |b| if a == b { 255 } else { distance[a][b] })).collect(),
        size,
        alike: alike(&ranges, &linked),
        linked,
        proposed: 0,
        accepted: 0,
    };
    let seen = chain.pairs();
    let n = seen.iter().sum();
    let mut present = vec![false; size];
    presses.iter().for_each(|press| present[press.word] = true);
    let kinds = present.iter().filter(|p| **p).count();
    let tested: Vec<usize> =
        (0..size * size).filter(|cell| cell / size != cell % size && seen[*cell] >= rule.min_count.max(1)).collect();

    let mut counters = vec![Counter::default(); tested.len()];
    let mut sums = vec![0.0; tested.len()];
    let mut drawn = 0u64;
    let mut rng = Xoshiro256PlusPlus::seed_from_u64(draws.seed);
    let swaps = 4 * presses.len() as u64;
    chain.walk(swaps, &mut rng);
    let hub = chain.words.clone();
    while drawn < draws.most && counters.iter().any(|counter| counter.exceeded < draws.enough) {
        chain.words.copy_from_slice(&hub);
        chain.walk(swaps, &mut rng);
        let here = chain.pairs();
        drawn += 1;
        for ((counter, sum), cell) in counters.iter_mut().zip(&mut sums).zip(&tested) {
            counter.count(here[*cell] >= seen[*cell], draws.enough);
            *sum += here[*cell] as f64;
        }
    }
    // Pairs not tested take part in the correction with p = 1: leaving out pairs because they are rare would be a choice made
    // after looking.
    let mut raw = vec![1.0; kinds * kinds.saturating_sub(1)];
    let p = counters.iter().map(|counter| counter.p(draws.enough)).collect::<Result<Vec<_>, _>>()?;
    raw.iter_mut().zip(&p).for_each(|(slot, p)| *slot = p.p);
    let adjusted = benjamini_hochberg(&raw, 0.05)?.adjusted;
    let mut pairs: Vec<Sequence> = tested
        .iter()
        .enumerate()
        .map(|(k, &cell)| Sequence {
            first: cell / size,
            second: cell % size,
            observed: seen[cell],
            expected: if drawn > 0 { sums[k] / drawn as f64 } else { seen[cell] as f64 },
            p: p[k],
            adjusted_p: adjusted[k],
            neighbours: chain.class[cell] == 1,
        })
        .collect();
    pairs.sort_by(|a, b| a.p.p.total_cmp(&b.p.p).then(b.observed.cmp(&a.observed)));
    let accepted = if chain.proposed > 0 { chain.accepted as f64 / chain.proposed as f64 } else { 0.0 };
    Ok(Sequences { pairs, n, accepted })
}

/// Positions of a session that are alike in what comes before and after: a press soon before or not; soon after, later in the
/// session, or none. A word that is answered at once, or with a long pause, ends runs; swapped into their middle it would
/// make every run that it ends look like a habit of words.
fn alike(ranges: &[std::ops::Range<usize>], linked: &[bool]) -> Vec<Vec<usize>> {
    let mut groups = Vec::new();
    for range in ranges {
        let mut kinds: [Vec<usize>; 6] = Default::default();
        for at in range.clone() {
            let after = match at + 1 < range.end {
                true if linked[at + 1] => 0,
                true => 1,
                false => 2,
            };
            kinds[3 * usize::from(linked[at]) + after].push(at);
        }
        groups.extend(kinds.into_iter().filter(|group| group.len() > 1));
    }
    groups
}

struct Chain {
    words: Vec<usize>,
    linked: Vec<bool>,
    class: Vec<u8>,
    size: usize,
    /// Positions whose presses may be swapped with each other, two or more of a session.
    alike: Vec<Vec<usize>>,
    proposed: u64,
    accepted: u64,
}

impl Chain {
    /// Counts of each ordered pair over linked neighbours.
    fn pairs(&self) -> Vec<u64> {
        let mut counts = vec![0; self.size * self.size];
        for at in (1..self.words.len()).filter(|at| self.linked[*at]) {
            counts[self.words[at - 1] * self.size + self.words[at]] += 1;
        }
        counts
    }

    /// Proposes symmetric swaps; a refused swap leaves the chain where it is, which keeps it reversible.
    fn walk(&mut self, swaps: u64, rng: &mut Xoshiro256PlusPlus) {
        let positions: usize = self.alike.iter().map(Vec::len).sum();
        if positions == 0 {
            return;
        }
        // Groups are chosen by their length, by way of a random position.
        let ends: Vec<usize> = self
            .alike
            .iter()
            .scan(0, |sum, group| {
                *sum += group.len();
                Some(*sum)
            })
            .collect();
        for _ in 0..swaps {
            let pick = below(rng, positions as u64) as usize;
            let group = &self.alike[ends.partition_point(|end| *end <= pick)];
            let i = group[below(rng, group.len() as u64) as usize];
            let j = group[below(rng, group.len() as u64) as usize];
            self.proposed += 1;
            if self.words[i] == self.words[j] {
                self.accepted += 1;
                continue;
            }
            let before = self.around(i, j);
            self.words.swap(i, j);
            if before == self.around(i, j) {
                self.accepted += 1;
            } else {
                self.words.swap(i, j);
            }
        }
    }

    /// Sorted distance classes of the up to four links that touch positions `i` and `j`.
    fn around(&self, i: usize, j: usize) -> [u16; 4] {
        let mut links = [i, i + 1, j, j + 1];
        links.sort_unstable();
        let mut classes = [u16::MAX; 4];
        let mut last = usize::MAX;
        for (slot, at) in classes.iter_mut().zip(links) {
            if at != last && at > 0 && at < self.words.len() && self.linked[at] {
                *slot = u16::from(self.class[self.words[at - 1] * self.size + self.words[at]]);
            }
            last = at;
        }
        classes.sort_unstable();
        classes
    }
}
