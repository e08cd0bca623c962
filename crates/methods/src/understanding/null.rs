//! Random rearrangement within sessions: which outcome goes with which press, margins of every session kept.
//!
//! Only the sum over sessions of the words-by-outcomes table is wanted, so presses are not shuffled one by one. A session
//! is drawn in the cheaper of two exact ways: placing only its rarer outcomes (partial Fisher-Yates shuffle), or, when it
//! is large, drawing its whole table cell by cell from the multivariate hypergeometric distribution (by inversion from
//! the mode; cf. Patefield 1981, Appl Stat 30:91). Sessions of multi-press episodes move whole episodes.

use super::draw::{MOST_KINDS, below, draw_table};
use rand_xoshiro::Xoshiro256PlusPlus;
use rand_xoshiro::rand_core::Rng;
use std::collections::BTreeMap;

/// Presses of one session as (word, outcome), both below [`MOST_KINDS`].
pub(super) type Coded = [(u8, u8)];

/// A session whose rarer outcomes are placed on random presses; the rest get the commonest one.
#[derive(Clone)]
struct Scatter {
    words: Vec<u8>,
    /// (outcome, how many), without the commonest.
    rarer: Vec<(u8, u32)>,
}

/// A session whose whole episodes trade outcomes. What an episode brings to an outcome is not its presses but how far they
/// lie from what its length alone would bring: situations differ in how long their episodes are, and a long episode holds
/// more presses of every word.
#[derive(Clone)]
struct Episodes {
    /// Episodes in any order.
    order: Vec<u32>,
    common: u8,
    rarer: Vec<(u8, u32)>,
    /// Words of the session.
    words: Vec<u8>,
    /// Presses less the share of the episode's length, episode by episode, word by word.
    excess: Vec<f64>,
    /// Sum over all episodes of the squared excess, by word.
    squares: Vec<f64>,
}

/// Sums over sessions by word and outcome: excess of presses, and of its squares.
#[derive(Clone, Default)]
pub(super) struct Excess {
    pub(super) sum: Vec<f64>,
    pub(super) squares: Vec<f64>,
}

/// A session drawn as a whole table from its margins.
#[derive(Clone)]
struct Table {
    words: Vec<(u8, u64)>,
    outcomes: Vec<(u8, u64)>,
}

/// Sessions that share their commonest outcome, so that it can be filled in once for all of them.
#[derive(Clone, Default)]
struct Group {
    scatters: Vec<Scatter>,
    /// Presses by word over these sessions.
    presses: Vec<i64>,
}

/// Draws the summed table again and again. A clone starts afresh from the same state.
#[derive(Clone)]
pub(super) struct Rearranger {
    words: usize,
    outcomes: usize,
    groups: BTreeMap<u8, Group>,
    tables: Vec<Table>,
    episodes: Vec<Episodes>,
    log_factorial: Vec<f64>,
    /// Scratch: counts by outcome and word of one group.
    placed: Vec<[u32; MOST_KINDS]>,
    sessions: usize,
}

/// Rough nanoseconds: one placed outcome; one cell of a table, and a step of its search.
const PLACE: f64 = 1.7;
const CELL: f64 = 45.0;
const SEARCH: f64 = 7.0;

impl Rearranger {
    pub(super) fn new(words: usize, outcomes: usize) -> Self {
        Self {
            words,
            outcomes,
            groups: BTreeMap::new(),
            tables: Vec::new(),
            episodes: Vec::new(),
            log_factorial: vec![0.0],
            placed: vec![[0; MOST_KINDS]; outcomes],
            sessions: 0,
        }
    }

    /// Whether there is nothing to rearrange.
    pub(super) fn is_empty(&self) -> bool {
        self.sessions == 0
    }

    /// Rough work of one draw, in presses placed.
    pub(super) fn work(&self) -> usize {
        let placed = |rarer: &[(u8, u32)]| rarer.iter().map(|run| run.1 as usize).sum::<usize>();
        let groups = self.groups.values().map(|group| group.scatters.iter().map(|s| placed(&s.rarer)).sum::<usize>());
        let episodes = self.episodes.iter().map(|s| 2 * placed(&s.rarer) * s.words.len());
        let tables = self.tables.iter().map(|t| t.words.len() * t.outcomes.len()).sum::<usize>();
        groups.sum::<usize>() + episodes.sum::<usize>() + 40 * tables
    }

    /// Adds a session in which every press is rearranged, the cheaper way.
    pub(super) fn add_presses(&mut self, presses: &Coded) {
        let words = counted(presses.iter().map(|press| press.0));
        let outcomes = counted(presses.iter().map(|press| press.1));
        let common = commonest(&outcomes);
        let n = presses.len() as f64;
        let placed = n - common.1 as f64;
        let cells = (words.len() as f64 - 1.0) * (outcomes.len() as f64 - 1.0);
        let search = (n / (words.len() * outcomes.len()).max(1) as f64).sqrt();
        self.sessions += 1;
        // The 32-bit draw of the scatter is fine-grained enough for sessions up to this size.
        if cells * (CELL + SEARCH * search) < PLACE * placed || presses.len() > 1 << 16 {
            while self.log_factorial.len() <= presses.len() {
                let k = self.log_factorial.len();
                self.log_factorial.push(self.log_factorial[k - 1] + (k as f64).ln());
            }
            self.tables.push(Table { words, outcomes });
        } else {
            let scatter =
                Scatter { words: presses.iter().map(|press| press.0).collect(), rarer: without(&outcomes, common.0) };
            let word_kinds = self.words;
            self.group(common.0, &words, word_kinds).scatters.push(scatter);
        }
    }

    /// Adds a session in which whole episodes (same outcome throughout) trade outcomes. Gives what was seen of it.
    pub(super) fn add_episodes(&mut self, episodes: &[&Coded], seen: &mut Excess) {
        let outcomes = counted(episodes.iter().map(|episode| episode[0].1));
        let (common, _) = commonest(&outcomes);
        let totals = counted(episodes.iter().flat_map(|episode| episode.iter().map(|press| press.0)));
        let n = totals.iter().map(|(_, count)| *count as f64).sum::<f64>();
        let words: Vec<u8> = totals.iter().map(|(word, _)| *word).collect();
        let mut excess = Vec::with_capacity(episodes.len() * words.len());
        let mut squares = vec![0.0; words.len()];
        seen.sum.resize(self.words * self.outcomes, 0.0);
        seen.squares.resize(self.words * self.outcomes, 0.0);
        for episode in episodes {
            for ((word, total), square) in totals.iter().zip(&mut squares) {
                let presses = episode.iter().filter(|press| press.0 == *word).count() as f64;
                let here = presses - *total as f64 * episode.len() as f64 / n;
                excess.push(here);
                *square += here * here;
                let cell = usize::from(*word) * self.outcomes + usize::from(episode[0].1);
                seen.sum[cell] += here;
                seen.squares[cell] += here * here;
            }
        }
        let order = (0..episodes.len() as u32).collect();
        self.sessions += 1;
        self.episodes.push(Episodes { order, common, rarer: without(&outcomes, common), words, excess, squares });
    }

    /// Draws one rearrangement of every session of episodes and writes the summed excess, word by word.
    pub(super) fn draw_episodes(&mut self, rng: &mut Xoshiro256PlusPlus, drawn: &mut Excess) {
        for sums in [&mut drawn.sum, &mut drawn.squares] {
            sums.clear();
            sums.resize(self.words * self.outcomes, 0.0);
        }
        for session in &mut self.episodes {
            session.place(rng, self.outcomes, drawn);
        }
    }

    fn group(&mut self, common: u8, words: &[(u8, u64)], kinds: usize) -> &mut Group {
        let group = self.groups.entry(common).or_default();
        group.presses.resize(kinds, 0);
        for (word, count) in words {
            group.presses[usize::from(*word)] += *count as i64;
        }
        group
    }

    /// Draws one rearrangement of every session and writes the summed table, word by word.
    pub(super) fn draw(&mut self, rng: &mut Xoshiro256PlusPlus, table: &mut [i64]) {
        let columns = self.outcomes;
        table.fill(0);
        for (common, group) in &mut self.groups {
            self.placed.iter_mut().for_each(|counts| counts.fill(0));
            for session in &mut group.scatters {
                session.place(rng, &mut self.placed);
            }
            for word in 0..self.words {
                let row = &mut table[word * columns..(word + 1) * columns];
                let mut rest = group.presses[word];
                for (slot, counts) in row.iter_mut().zip(&self.placed) {
                    let count = i64::from(counts[word]);
                    *slot += count;
                    rest -= count;
                }
                row[usize::from(*common)] += rest;
            }
        }
        for session in &self.tables {
            draw_table(&session.words, &session.outcomes, columns, &self.log_factorial, rng, table);
        }
    }
}

impl Scatter {
    #[inline]
    fn place(&mut self, rng: &mut Xoshiro256PlusPlus, placed: &mut [[u32; MOST_KINDS]]) {
        let mut words = &mut self.words[..];
        for (outcome, count) in &self.rarer {
            let counts = &mut placed[usize::from(*outcome)];
            let mut left = *count;
            // Two placements a random number. Each takes a random press to the front, counts it and leaves it behind.
            while left >= 2 {
                let random = rng.next_u64();
                for half in [random as u32, (random >> 32) as u32] {
                    let at = scaled(half, words.len());
                    words.swap(0, at);
                    let Some((word, rest)) = words.split_first_mut() else { return };
                    counts[usize::from(*word)] += 1;
                    words = rest;
                }
                left -= 2;
            }
            if left == 1 {
                let at = scaled(rng.next_u64() as u32, words.len());
                words.swap(0, at);
                let Some((word, rest)) = words.split_first_mut() else { return };
                counts[usize::from(*word)] += 1;
                words = rest;
            }
        }
    }
}

impl Episodes {
    #[inline]
    fn place(&mut self, rng: &mut Xoshiro256PlusPlus, outcomes: usize, drawn: &mut Excess) {
        let kinds = self.words.len();
        let mut order = &mut self.order[..];
        // The commonest outcome gets what the others leave: all excesses of a session add up to nothing.
        for (word, square) in self.words.iter().zip(&self.squares) {
            drawn.squares[usize::from(*word) * outcomes + usize::from(self.common)] += square;
        }
        for (outcome, count) in &self.rarer {
            for _ in 0..*count {
                let at = below(rng, order.len() as u64) as usize;
                order.swap(0, at);
                let Some((episode, rest)) = order.split_first_mut() else { return };
                let from = *episode as usize * kinds;
                for (word, here) in self.words.iter().zip(&self.excess[from..from + kinds]) {
                    let row = usize::from(*word) * outcomes;
                    let (cell, common) = (row + usize::from(*outcome), row + usize::from(self.common));
                    drawn.sum[cell] += here;
                    drawn.sum[common] -= here;
                    drawn.squares[cell] += here * here;
                    drawn.squares[common] -= here * here;
                }
                order = rest;
            }
        }
    }
}

/// A number from 0 to `n - 1` for `n` up to 2^16, from 32 random bits; its bias is below n / 2^32.
#[inline]
fn scaled(random: u32, n: usize) -> usize {
    ((u64::from(random) * n as u64) >> 32) as usize
}

fn counted(values: impl Iterator<Item = u8>) -> Vec<(u8, u64)> {
    let mut counts = BTreeMap::new();
    for value in values {
        *counts.entry(value).or_insert(0u64) += 1;
    }
    counts.into_iter().collect()
}

fn commonest(outcomes: &[(u8, u64)]) -> (u8, u64) {
    outcomes.iter().fold((0, 0), |best, &outcome| if outcome.1 > best.1 { outcome } else { best })
}

fn without(outcomes: &[(u8, u64)], common: u8) -> Vec<(u8, u32)> {
    outcomes.iter().filter(|outcome| outcome.0 != common).map(|(outcome, count)| (*outcome, *count as u32)).collect()
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used)]
    use super::*;
    use rand_xoshiro::rand_core::SeedableRng;

    /// Every way of drawing has the margins' exact means and variances, and keeps the margins.
    #[test]
    fn ways_of_drawing_agree() {
        let presses: Vec<(u8, u8)> = (0..90u8).map(|k| (k % 7 % 3, k % 11 % 4)).collect();
        let words = counted(presses.iter().map(|p| p.0));
        let outcomes = counted(presses.iter().map(|p| p.1));
        let n = presses.len() as f64;
        let mut scatter = Rearranger::new(3, 4);
        let common = commonest(&outcomes).0;
        scatter
            .group(common, &words, 3)
            .scatters
            .push(Scatter { words: presses.iter().map(|p| p.0).collect(), rarer: without(&outcomes, common) });
        let mut whole = Rearranger::new(3, 4);
        whole.log_factorial = (0..=90).map(|k| (1..=k).map(|i| f64::from(i).ln()).sum()).collect();
        whole.tables.push(Table { words: words.clone(), outcomes: outcomes.clone() });
        for mut rearranger in [scatter, whole] {
            let mut rng = Xoshiro256PlusPlus::seed_from_u64(5);
            let mut table = vec![0i64; 12];
            let (mut sum, mut squares) = (vec![0.0; 12], vec![0.0; 12]);
            let draws = 40_000;
            for _ in 0..draws {
                rearranger.draw(&mut rng, &mut table);
                for (word, count) in &words {
                    let row: i64 = table[usize::from(*word) * 4..][..4].iter().sum();
                    assert_eq!(row as u64, *count);
                }
                for (cell, value) in table.iter().enumerate() {
                    sum[cell] += *value as f64;
                    squares[cell] += (*value as f64).powi(2);
                }
            }
            for (word, r) in &words {
                for (outcome, c) in &outcomes {
                    let cell = usize::from(*word) * 4 + usize::from(*outcome);
                    let (r, c) = (*r as f64, *c as f64);
                    let (mean, variance) = (r * c / n, r * c * (n - r) * (n - c) / (n * n * (n - 1.0)));
                    let got = sum[cell] / f64::from(draws);
                    assert!((got - mean).abs() < 4.5 * (variance / f64::from(draws)).sqrt(), "{cell}: {got} {mean}");
                    let spread = squares[cell] / f64::from(draws) - got * got;
                    assert!((spread / variance - 1.0).abs() < 0.05, "{cell}: {spread} {variance}");
                }
            }
        }
    }
}
