//! All sets scored, the best and its rivals, and how sure that is.

use super::given::{Candidate, FirstWordRules};
use super::reasons::{LeftOut, Reason, TOLD_APART, cautioned, outscored, unfit};
use super::score::{Scored, deliveries, score};
use crate::stats::normal_quantile;
use crate::words::alike::{Likeness, compare};
use crate::words::sounds::{Sounds, sounds_of};
use rand::{RngExt, SeedableRng};
use rand_chacha::ChaCha8Rng;

/// The choice of first words.
#[derive(Debug, Clone, PartialEq)]
pub struct FirstWords {
    /// The set with the highest score; of those told as equal, the one with the least to be given only a little.
    pub best: Scored,
    /// The next best sets, in order.
    pub alternatives: Vec<Scored>,
    /// Every candidate not in the best set, with what kept it out.
    pub left_out: Vec<LeftOut>,
    /// Share of draws in which each candidate is in the best set.
    pub in_best: Vec<f64>,
    /// Sets that satisfied the constraints.
    pub sets: usize,
    /// Sets compared in each draw (fewer than `sets` only where there are very many; then those of the highest scores).
    pub sets_drawn: usize,
    /// Draws made.
    pub draws: u32,
}

/// Why no first words were chosen.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[non_exhaustive]
pub enum FirstWordsError {
    /// A setting makes no sense.
    #[error("the setting {0} makes no sense")]
    Rules(&'static str),
    /// No set satisfies the constraints.
    #[error("no {needed} words go together: {usable} of {} candidates could be used at all", left_out.len())]
    NoSet {
        /// Fewest words a set needs.
        needed: usize,
        /// Candidates that passed the checks of their own.
        usable: usize,
        /// What is against each candidate.
        left_out: Vec<LeftOut>,
    },
    /// Too many sets to try all.
    #[error("more than {MOST_SETS} sets of words to try: leave some candidates out or choose fewer words")]
    TooMany,
}

/// Most sets that are tried, so that the answer comes at once.
pub const MOST_SETS: usize = 100_000;
const MOST_COMPARISONS: usize = 20_000_000;
const ALTERNATIVES: usize = 5;

/// Chooses the first words: tries every set of the sizes asked for.
///
/// # Errors
/// [`FirstWordsError::NoSet`] with the reasons where nothing fits, [`FirstWordsError::TooMany`] beyond [`MOST_SETS`],
/// [`FirstWordsError::Rules`] for settings without sense.
///
/// ```
/// use sayso_methods::words::{Candidate, FirstWordRules, Liking, first_words};
/// use sayso_model::RewardKind;
/// let candidate = |says: &str, kind, mean| Candidate {
///     says: says.to_owned(), kind, liking: Liking { mean, sd: 0.05 }, at_board: true, seconds: Some(10.0),
///     most_per_day: None, ration_pieces: None, barred: false, cautioned: false, already_said: false,
/// };
/// let found = first_words(
///     &[candidate("ball", RewardKind::Play, 0.8), candidate("scratch", RewardKind::Touch, 0.7), candidate("mat", RewardKind::Rest, 0.1)],
///     &FirstWordRules { sizes: 2..=2, ..FirstWordRules::default() },
/// )?;
/// assert_eq!(found.best.words, [0, 1]);
/// assert_eq!(found.left_out[0].says, "mat");
/// # Ok::<(), sayso_methods::words::FirstWordsError>(())
/// ```
pub fn first_words(candidates: &[Candidate], rules: &FirstWordRules) -> Result<FirstWords, FirstWordsError> {
    if let Some(fault) = rules.fault() {
        return Err(FirstWordsError::Rules(fault));
    }
    let bars: Vec<Option<Reason>> = candidates.iter().map(|c| unfit(c, rules)).collect();
    let usable: Vec<usize> = (0..candidates.len()).filter(|i| bars[*i].is_none()).collect();
    let likeness = Pairs::of(candidates, rules);
    let needed = *rules.sizes.start();
    let mut sets = Sets { tried: 0, fitting: Vec::new(), too_alike: Vec::new() };
    for size in needed..=(*rules.sizes.end()).min(usable.len()) {
        let mut picked = Vec::new();
        sets.fill(&usable, size, &mut picked, &mut |words| evaluate(words, candidates, &likeness, rules))?;
    }
    let Sets { mut fitting, too_alike, .. } = sets;
    // Ties go to the set that was listed first, so that the answer never depends on sorting.
    fitting.sort_by(|a, b| b.score.total.total_cmp(&a.score.total));
    if fitting.is_empty() {
        let reason = |i: usize| bars[i].clone().unwrap_or_else(|| alone(i, &usable, candidates, &likeness, rules));
        let left_out = (0..candidates.len()).map(|i| LeftOut::new(i, candidates, reason(i), 0.0)).collect();
        return Err(FirstWordsError::NoSet { needed, usable: usable.len(), left_out });
    }
    // Of sets that are told as equally good, one with less to be careful with.
    let most = fitting[0].score.total;
    let as_good = fitting.iter().take_while(|s| most - s.score.total < TOLD_APART);
    let first = as_good.enumerate().min_by_key(|(_, s)| cautioned(&s.words, candidates)).map_or(0, |(at, _)| at);
    fitting[..=first].rotate_right(1);
    let drawn = fitting.len().min(MOST_COMPARISONS / rules.draws as usize).max(1);
    let in_best = simulate(candidates, &mut fitting, drawn, rules);
    let sets = fitting.len();
    let best = fitting[0].clone();
    let left_out = (0..candidates.len()).filter(|i| !best.words.contains(i)).map(|i| {
        let reason = bars[i].clone().unwrap_or_else(|| {
            let with = |s: &&Scored| s.words.contains(&i);
            let blocked = too_alike.iter().filter(with).max_by(|a, b| a.score.total.total_cmp(&b.score.total));
            let blocker =
                blocked.filter(|s| s.score.total > best.score.total).and_then(|s| likeness.clash(i, &s.words));
            match (blocker, fitting.iter().find(with)) {
                (Some(other), _) => likeness.too_much(i, other),
                (None, Some(rival)) => outscored(&best, rival, candidates),
                (None, None) => alone(i, &usable, candidates, &likeness, rules),
            }
        });
        LeftOut::new(i, candidates, reason, in_best[i])
    });
    let left_out = left_out.collect();
    let alternatives = fitting.into_iter().skip(1).take(ALTERNATIVES).collect();
    Ok(FirstWords { best, alternatives, left_out, in_best, sets, sets_drawn: drawn, draws: rules.draws })
}

// How alike each pair of candidates sounds.
struct Pairs(Vec<Vec<Likeness>>);

impl Pairs {
    fn of(candidates: &[Candidate], rules: &FirstWordRules) -> Self {
        let sounds: Vec<Sounds> = candidates.iter().map(|c| sounds_of(&c.says, rules.language)).collect();
        let pair =
            |i: usize, j: usize| compare(&candidates[i].says, &sounds[i], &candidates[j].says, &sounds[j], rules.alike);
        Self((0..candidates.len()).map(|i| (0..candidates.len()).map(|j| pair(i, j)).collect()).collect())
    }

    fn get(&self, i: usize, j: usize) -> &Likeness {
        &self.0[i][j]
    }

    fn too_much(&self, i: usize, other: usize) -> Reason {
        Reason::SoundsLike { other, how: self.get(i, other).clone() }
    }

    fn clash(&self, i: usize, words: &[usize]) -> Option<usize> {
        words.iter().copied().find(|j| *j != i && self.get(i, *j).too_alike)
    }
}

struct Sets {
    tried: usize,
    fitting: Vec<Scored>,
    too_alike: Vec<Scored>,
}

enum Fit {
    Fits(Scored),
    TooAlike(Scored),
    TooSeldom,
}

impl Sets {
    fn fill(
        &mut self,
        from: &[usize],
        more: usize,
        picked: &mut Vec<usize>,
        judge: &mut impl FnMut(&[usize]) -> Fit,
    ) -> Result<(), FirstWordsError> {
        if more == 0 {
            self.tried += 1;
            if self.tried > MOST_SETS {
                return Err(FirstWordsError::TooMany);
            }
            match judge(picked) {
                Fit::Fits(set) => self.fitting.push(set),
                Fit::TooAlike(set) => self.too_alike.push(set),
                Fit::TooSeldom => {}
            }
            return Ok(());
        }
        for (at, word) in from.iter().enumerate().take((from.len() + 1).saturating_sub(more)) {
            picked.push(*word);
            self.fill(&from[at + 1..], more - 1, picked, judge)?;
            picked.pop();
        }
        Ok(())
    }
}

fn evaluate(words: &[usize], candidates: &[Candidate], likeness: &Pairs, rules: &FirstWordRules) -> Fit {
    let chosen: Vec<&Candidate> = words.iter().map(|i| &candidates[*i]).collect();
    let deliveries = deliveries(&chosen, rules);
    if deliveries.iter().any(|d| d.per_day < rules.fewest_per_day) {
        return Fit::TooSeldom;
    }
    let pairs: Vec<&Likeness> = words
        .iter()
        .enumerate()
        .flat_map(|(at, i)| words[at + 1..].iter().map(move |j| (*i, *j)))
        .map(|(i, j)| likeness.get(i, j))
        .collect();
    let score = score(&chosen, &deliveries, &pairs, rules);
    let set = Scored { words: words.to_vec(), score, deliveries, best_in: 0.0 };
    if pairs.iter().any(|p| p.too_alike) { Fit::TooAlike(set) } else { Fit::Fits(set) }
}

// Why a candidate fit for use by itself is in no set at all.
fn alone(i: usize, usable: &[usize], candidates: &[Candidate], likeness: &Pairs, rules: &FirstWordRules) -> Reason {
    let needed = *rules.sizes.start();
    let others: Vec<usize> = usable.iter().copied().filter(|j| *j != i).collect();
    if let Some(other) = likeness.clash(i, &others) {
        return likeness.too_much(i, other);
    }
    let company = others.iter().take(needed - 1).map(|j| &candidates[*j]);
    let set: Vec<&Candidate> = std::iter::once(&candidates[i]).chain(company).collect();
    match deliveries(&set, rules).first() {
        Some(own) if set.len() == needed && own.per_day < rules.fewest_per_day => {
            Reason::TooSeldom { per_day: own.per_day, fewest: rules.fewest_per_day }
        }
        _ => Reason::NoCompany { needed, usable: usable.len() },
    }
}

// Likings drawn from their normal distributions; counts how often each set and each candidate comes out best.
fn simulate(candidates: &[Candidate], sets: &mut [Scored], drawn: usize, rules: &FirstWordRules) -> Vec<f64> {
    let mut rng = ChaCha8Rng::seed_from_u64(rules.seed);
    let mut wins = vec![0_u32; drawn];
    let fixed: Vec<f64> = sets[..drawn].iter().map(|s| s.score.spread + s.score.apart + s.score.said).collect();
    for _ in 0..rules.draws {
        let likings: Vec<f64> = candidates
            .iter()
            .map(|c| {
                // A draw of exactly 0 has no quantile; its chance is nil and the mean stands in.
                let z = normal_quantile(rng.random::<f64>()).unwrap_or(0.0);
                if c.liking.is_usable() { c.liking.mean + c.liking.sd * z } else { 0.0 }
            })
            .collect();
        let value = |at: usize| {
            let set = &sets[at];
            let liked = set.words.iter().zip(&set.deliveries).map(|(i, d)| likings[*i] * d.opportunity).sum::<f64>();
            fixed[at] + liked / set.words.len() as f64
        };
        let mut best = (f64::NEG_INFINITY, 0);
        for at in 0..drawn {
            let v = value(at);
            if v > best.0 {
                best = (v, at);
            }
        }
        wins[best.1] += 1;
    }
    let mut in_best = vec![0.0; candidates.len()];
    for (set, wins) in sets.iter_mut().zip(wins) {
        set.best_in = f64::from(wins) / f64::from(rules.draws);
        for i in &set.words {
            in_best[*i] += set.best_in;
        }
    }
    in_best
}
