//! What a good layout is: the words of a board, its grid, and what each wish weighs.
//!
//! Source: common practice, no source: words already known stay where they are; words that belong together are near;
//! words that sound alike, and words a paw brushes by accident, are apart; words used often are within easy reach.

use crate::words::{AlikeRule, Likeness, Sounds, compare, sounds_of};
use sayso_model::{Language, Place};

/// A grid of rectangular places. The learner stands below the last row.
#[derive(Debug, Clone, PartialEq)]
pub struct Grid {
    /// Rows, 1 to 20.
    pub rows: u8,
    /// Columns, 1 to 20.
    pub columns: u8,
    /// Places that cannot be used.
    pub closed: Vec<Place>,
}

impl Grid {
    /// Places that can be used, row by row.
    pub fn places(&self) -> Vec<Place> {
        let all = (0..self.rows).flat_map(|row| (0..self.columns).map(move |column| Place { row, column }));
        all.filter(|p| !self.closed.contains(p)).collect()
    }
}

/// A word to be placed.
#[derive(Debug, Clone, PartialEq)]
pub struct BoardWord {
    /// What it says.
    pub says: String,
    /// Own presses a day, or how many are expected.
    pub presses: f64,
    /// How well the learner knows it, 0 (new) to 1 (used every day without help): what moving it would cost.
    pub known: f64,
    /// Where it is now, if it is on the board.
    pub at: Option<Place>,
    /// Whether it must stay there.
    pub stays: bool,
}

/// Two words and a degree, 0 to 1: that they belong together, or that presses of one brush the other.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Pair {
    /// One word.
    pub a: usize,
    /// The other.
    pub b: usize,
    /// The degree.
    pub degree: f64,
}

/// Weights of the wishes. Ours, without a source.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct WishWeights {
    /// Related words near each other.
    pub related: f64,
    /// Words that sound alike apart.
    pub alike: f64,
    /// Words a paw may brush by accident apart.
    pub accident: f64,
    /// Words used often within reach.
    pub reach: f64,
    /// Known words where they are.
    pub moving: f64,
}

impl Default for WishWeights {
    fn default() -> Self {
        Self { related: 0.5, alike: 1.0, accident: 0.5, reach: 0.3, moving: 3.0 }
    }
}

/// What is known beyond the words themselves.
#[derive(Debug, Clone, PartialEq)]
pub struct Wishes {
    /// Words that belong together.
    pub related: Vec<Pair>,
    /// Pairs seen to be brushed by accident: share of presses of one that sounded the other.
    pub brushed: Vec<Pair>,
    /// Pairs of recordings that sound alike, whatever their words: 1 for the same sound. The worse of label and recording counts.
    pub heard_alike: Vec<Pair>,
    /// Weights.
    pub weights: WishWeights,
    /// When two words sound too much alike.
    pub alike: AlikeRule,
    /// Language of the labels.
    pub language: Language,
}

impl Default for Wishes {
    fn default() -> Self {
        Self {
            related: Vec::new(),
            brushed: Vec::new(),
            heard_alike: Vec::new(),
            weights: WishWeights::default(),
            alike: AlikeRule::default(),
            language: Language::En,
        }
    }
}

/// Steps between two places, as the crow flies.
pub(super) fn steps(a: Place, b: Place) -> f64 {
    f64::from(a.row.abs_diff(b.row)).hypot(f64::from(a.column.abs_diff(b.column)))
}

// Words that sound alike hardly trouble each other from here on, in steps.
const FAR_ENOUGH: f64 = 4.0;

/// How much words at these places are mixed up by ear: 1 side by side, falling to 0 at four steps.
pub(super) fn mixed_up(a: Place, b: Place) -> f64 {
    if a == b { 0.0 } else { ((FAR_ENOUGH - steps(a, b)) / (FAR_ENOUGH - 1.0)).clamp(0.0, 1.0) }
}

/// How easily a press at one place brushes the other: 1 side by side, a third across a corner (ours, no source).
pub(super) fn brushed(a: Place, b: Place) -> f64 {
    match (a.row.abs_diff(b.row), a.column.abs_diff(b.column)) {
        (0, 1) | (1, 0) => 1.0,
        (1, 1) => 1.0 / 3.0,
        _ => 0.0,
    }
}

/// Rows between a place and the learner, as a share of the board's depth.
pub(super) fn reach(grid: &Grid, at: Place) -> f64 {
    let last = grid.rows.saturating_sub(1);
    if last == 0 { 0.0 } else { f64::from(last.saturating_sub(at.row)) / f64::from(last) }
}

// Labels up to so many times as far apart as too alike ones are kept apart too, where places are free (ours, no source).
const NEARLY_ALIKE: f64 = 3.0;

/// How much two labels can be confused by ear: what they share where they are too alike; where they nearly are, at most a half,
/// falling to 0.
fn confused(heard: &Likeness, rule: AlikeRule) -> f64 {
    let beyond = (NEARLY_ALIKE - 1.0) * rule.apart;
    match heard {
        Likeness { too_alike: true, apart, .. } => 1.0 - apart,
        Likeness { apart, .. } if beyond > 0.0 => ((NEARLY_ALIKE * rule.apart - apart) / beyond).clamp(0.0, 1.0) / 2.0,
        _ => 0.0,
    }
}

/// Degrees between each pair of words (symmetric, 0 to 1, diagonal 0).
pub(super) struct Degrees {
    pub(super) related: Vec<Vec<f64>>,
    pub(super) alike: Vec<Vec<f64>>,
    pub(super) accident: Vec<Vec<f64>>,
    /// Share of all presses.
    pub(super) use_share: Vec<f64>,
}

impl Degrees {
    pub(super) fn of(words: &[BoardWord], wishes: &Wishes) -> Self {
        let n = words.len();
        let total: f64 = words.iter().map(|w| w.presses).sum();
        let use_share: Vec<f64> = words.iter().map(|w| if total > 0.0 { w.presses / total } else { 0.0 }).collect();
        let sounds: Vec<Sounds> = words.iter().map(|w| sounds_of(&w.says, wishes.language)).collect();
        let zero = || vec![vec![0.0; n]; n];
        let mut degrees = Self { related: zero(), alike: zero(), accident: zero(), use_share };
        for i in 0..n {
            for j in (0..n).filter(|j| *j != i) {
                let heard = compare(&words[i].says, &sounds[i], &words[j].says, &sounds[j], wishes.alike);
                degrees.alike[i][j] = confused(&heard, wishes.alike);
                // Either of the two may be the one that is meant.
                degrees.accident[i][j] = (degrees.use_share[i] + degrees.use_share[j]) / 2.0;
            }
        }
        for pair in &wishes.related {
            degrees.related[pair.a][pair.b] = pair.degree;
            degrees.related[pair.b][pair.a] = pair.degree;
        }
        for (pair, (a, b)) in wishes.heard_alike.iter().flat_map(|p| [(p, (p.a, p.b)), (p, (p.b, p.a))]) {
            degrees.alike[a][b] = degrees.alike[a][b].max(pair.degree);
        }
        for pair in &wishes.brushed {
            degrees.accident[pair.a][pair.b] += pair.degree;
            degrees.accident[pair.b][pair.a] += pair.degree;
        }
        degrees
    }
}
