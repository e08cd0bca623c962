//! Do the intervals of likes hold the truth as often as they say? The tables of `docs/lab/likes-coverage.md` (first seed
//! 20 261 125 + line).
// Arguments are our own and valid; a refusal is a mistake here.
#![allow(clippy::unwrap_used)]

use super::Section;
use crate::error::LabError;
use crate::work::Work;
use rand::{RngExt, SeedableRng};
use rand_chacha::ChaCha8Rng;
use sayso_methods::likes::{
    ChoiceFit, PairModel, PairOutcome, PairTrial, Prior, RankModel, Ranking, fit_pairs, fit_rankings, schedule,
};
use sayso_methods::stats::{Level, normal_quantile};

const SEED: u64 = 20_261_125;
/// How strongly "nothing" rivals an item of average strength where the learner may take neither.
const NOTHING: f64 = -1.5;

/// Strengths about their mean, drawn normal with the given spread.
fn truth(items: usize, spread: f64, rng: &mut ChaCha8Rng) -> Vec<f64> {
    let raw: Vec<f64> =
        (0..items).map(|_| spread * normal_quantile(rng.random::<f64>().clamp(1e-12, 1.0 - 1e-12)).unwrap()).collect();
    let mean = raw.iter().sum::<f64>() / items as f64;
    raw.iter().map(|v| v - mean).collect()
}

/// Index drawn with probability proportional to the exponential of the strengths.
fn choose(strengths: &[f64], rng: &mut ChaCha8Rng) -> usize {
    let weights: Vec<f64> = strengths.iter().map(|s| s.exp()).collect();
    let mut left = rng.random::<f64>() * weights.iter().sum::<f64>();
    for (at, weight) in weights.iter().enumerate() {
        if left < *weight {
            return at;
        }
        left -= weight;
    }
    weights.len() - 1
}

#[derive(Default)]
struct Hits {
    inside: u32,
    of: u32,
}

impl Hits {
    fn count(&mut self, inside: bool) {
        self.of += 1;
        self.inside += u32::from(inside);
    }

    fn percent(&self) -> String {
        if self.of == 0 { "-".into() } else { format!("{:.1}", 100.0 * f64::from(self.inside) / f64::from(self.of)) }
    }
}

#[derive(Default)]
struct Coverage {
    strength: Hits,
    best: Hits,
    side: Hits,
    nothing: Hits,
    width: f64,
}

impl Coverage {
    fn add(&mut self, fit: &ChoiceFit, truth: &[f64], side: f64) {
        let best = (0..truth.len()).max_by(|a, b| truth[*a].total_cmp(&truth[*b])).unwrap();
        for s in &fit.strengths {
            let inside = s.interval.contains(truth[s.item]);
            self.strength.count(inside);
            self.width += s.interval.high - s.interval.low;
            if s.item == best {
                self.best.count(inside);
            }
        }
        if let Some(term) = fit.side {
            self.side.count(term.interval.contains(side));
        }
        if let Some(term) = fit.nothing {
            self.nothing.count(term.interval.contains(NOTHING));
        }
    }
}

fn pairs(out: &mut String, homes: u64, first: u64) {
    line!(out, "| items | rounds | spread | side | strength | best item | side term | nothing | width | fixed prior |");
    line!(out, "| --: | --: | --: | --: | --: | --: | --: | --: | --: | --: |");
    let mut line = 0;
    for items in [6, 8] {
        for rounds in [1_u16, 2, 3] {
            for (spread, side) in [(0.0, 0.0), (0.5, 0.0), (1.0, 0.0), (1.0, 1.5), (2.0, 0.0)] {
                line += 1;
                let mut rng = ChaCha8Rng::seed_from_u64(first + line);
                let (mut learned, mut fixed) = (Coverage::default(), Coverage::default());
                for home in 0..homes {
                    let strengths = truth(items, spread, &mut rng);
                    let trials: Vec<PairTrial> = schedule::paired(items, rounds, first ^ home)
                        .iter()
                        .map(|p| {
                            let offer = [strengths[p.left] + side / 2.0, strengths[p.right] - side / 2.0, NOTHING];
                            let outcome =
                                [PairOutcome::Left, PairOutcome::Right, PairOutcome::Neither][choose(&offer, &mut rng)];
                            PairTrial { left: p.left, right: p.right, outcome }
                        })
                        .collect();
                    learned.add(&fit_pairs(items, &trials, &PairModel::default()).unwrap(), &strengths, side);
                    let model = PairModel { prior: Prior::Weak { alpha: 0.1 }, ..PairModel::default() };
                    let fit = fit_pairs(items, &trials, &model).unwrap();
                    for s in &fit.strengths {
                        fixed.strength.count(s.interval.contains(strengths[s.item]));
                    }
                }
                line!(
                    out,
                    "| {items} | {rounds} | {spread} | {side} | {} | {} | {} | {} | {:.2} | {} |",
                    learned.strength.percent(),
                    learned.best.percent(),
                    learned.side.percent(),
                    learned.nothing.percent(),
                    learned.width / f64::from(learned.strength.of),
                    fixed.strength.percent(),
                );
            }
        }
    }
}

fn arrays(out: &mut String, homes: u64, first: u64) {
    line!(out, "| items | sessions | spread | strength | best item | width | fixed prior |");
    line!(out, "| --: | --: | --: | --: | --: | --: | --: |");
    let mut line = 1000;
    for items in [6, 8] {
        for sessions in [1, 2, 3, 5] {
            for spread in [0.0, 0.5, 1.0, 2.0] {
                line += 1;
                let mut rng = ChaCha8Rng::seed_from_u64(first + line);
                let (mut learned, mut fixed) = (Coverage::default(), Coverage::default());
                for _ in 0..homes {
                    let strengths = truth(items, spread, &mut rng);
                    let rankings: Vec<Ranking> = (0..sessions)
                        .map(|_| {
                            let mut left: Vec<usize> = (0..items).collect();
                            let mut chosen = Vec::new();
                            while !left.is_empty() {
                                let offer: Vec<f64> = left.iter().map(|i| strengths[*i]).collect();
                                chosen.push(left.remove(choose(&offer, &mut rng)));
                            }
                            Ranking::complete(&chosen)
                        })
                        .collect();
                    let fit =
                        |prior| fit_rankings(items, &rankings, &RankModel { prior, ..RankModel::default() }).unwrap();
                    learned.add(&fit(Prior::HOME), &strengths, 0.0);
                    for s in &fit(Prior::Weak { alpha: 0.1 }).strengths {
                        fixed.strength.count(s.interval.contains(strengths[s.item]));
                    }
                }
                line!(
                    out,
                    "| {items} | {sessions} | {spread} | {} | {} | {:.2} | {} |",
                    learned.strength.percent(),
                    learned.best.percent(),
                    learned.width / f64::from(learned.strength.of),
                    fixed.strength.percent(),
                );
            }
        }
    }
}

/// Runs the experiment.
pub fn run(work: &Work) -> Result<Section, LabError> {
    let mut section = Section::new("Intervals of likes");
    let (homes, first) = (work.size(120, 2) as u64, work.first(SEED));
    let mut text = String::new();
    let level = Level::P95.get() * 100.0;
    line!(text, "{homes} simulated homes a line; share of {level} % intervals that hold the truth, percent.\n");
    line!(text, "Paired trials:\n");
    pairs(&mut text, homes, first);
    line!(text, "\nArrays without replacement:\n");
    arrays(&mut text, homes, first);
    section.tables.push(text);
    Ok(section)
}
