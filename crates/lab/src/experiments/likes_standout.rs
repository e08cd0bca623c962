//! Do the intervals of likes hold the truth where one item stands out, and where the learner tires of what it just had?
//! Tables of `docs/lab/likes-coverage.md` (first seed 20 270 101 + line).
// Arguments are our own and valid; a refusal is a mistake here.
#![allow(clippy::unwrap_used)]

use super::Section;
use crate::error::LabError;
use crate::work::Work;
use rand::{RngExt, SeedableRng};
use rand_chacha::ChaCha8Rng;
use sayso_methods::likes::{
    ChoiceFit, PairModel, PairOutcome, PairTrial, RankModel, Ranking, fit_pairs, fit_rankings, schedule,
};
use sayso_methods::stats::normal_quantile;

const SEED: u64 = 20_270_101;
/// How strongly "nothing" rivals an item of average strength.
const NOTHING: f64 = -1.5;

fn normal(rng: &mut ChaCha8Rng) -> f64 {
    normal_quantile(rng.random::<f64>().clamp(1e-12, 1.0 - 1e-12)).unwrap()
}

/// How the true strengths come about.
#[derive(Clone, Copy)]
enum Truth {
    /// Normal with this spread.
    Normal(f64),
    /// The first item this far above the others' mean, which spread by the second number.
    StandsOut(f64, f64),
    /// Student's t with 2 degrees of freedom, scaled.
    Heavy(f64),
}

impl Truth {
    fn draw(self, items: usize, rng: &mut ChaCha8Rng) -> Vec<f64> {
        let mut raw: Vec<f64> = (0..items).map(|_| normal(rng)).collect();
        match self {
            Self::Normal(spread) => raw.iter_mut().for_each(|v| *v *= spread),
            Self::StandsOut(gap, spread) => {
                let mean = raw[1..].iter().sum::<f64>() / (items - 1) as f64;
                raw[1..].iter_mut().for_each(|v| *v = spread * (*v - mean));
                raw[0] = gap;
            }
            Self::Heavy(scale) => raw.iter_mut().for_each(|v| {
                let chi = normal(rng).powi(2) + normal(rng).powi(2);
                *v *= scale / (chi / 2.0).sqrt();
            }),
        }
        let mean = raw.iter().sum::<f64>() / items as f64;
        raw.iter().map(|v| v - mean).collect()
    }
}

/// A learner that tires of what it just had: each taste lowers the item by `tires`; after each trial `stays` of that is left.
struct Animal {
    strengths: Vec<f64>,
    tires: f64,
    stays: f64,
    sated: Vec<f64>,
}

impl Animal {
    fn new(strengths: &[f64], tires: f64, stays: f64) -> Self {
        Self { strengths: strengths.to_vec(), tires, stays, sated: vec![0.0; strengths.len()] }
    }

    /// Place of the item taken in the offer; `None` for nothing.
    fn choose(&mut self, offer: &[usize], nothing: bool, rng: &mut ChaCha8Rng) -> Option<usize> {
        let mut weights: Vec<f64> = offer.iter().map(|i| (self.strengths[*i] - self.sated[*i]).exp()).collect();
        if nothing {
            weights.push(NOTHING.exp());
        }
        let mut left = rng.random::<f64>() * weights.iter().sum::<f64>();
        let mut at = 0;
        while at + 1 < weights.len() && left >= weights[at] {
            left -= weights[at];
            at += 1;
        }
        self.sated.iter_mut().for_each(|s| *s *= self.stays);
        let item = offer.get(at)?;
        self.sated[*item] += self.tires;
        Some(at)
    }

    fn pairs(&mut self, rounds: u16, seed: u64, rng: &mut ChaCha8Rng) -> Vec<PairTrial> {
        schedule::paired(self.strengths.len(), rounds, seed)
            .iter()
            .map(|p| {
                let outcome = match self.choose(&[p.left, p.right], true, rng) {
                    Some(0) => PairOutcome::Left,
                    Some(_) => PairOutcome::Right,
                    None => PairOutcome::Neither,
                };
                PairTrial { left: p.left, right: p.right, outcome }
            })
            .collect()
    }

    fn arrays(&mut self, sessions: u16, rng: &mut ChaCha8Rng) -> Vec<Ranking> {
        (0..sessions)
            .map(|_| {
                let mut left: Vec<usize> = (0..self.strengths.len()).collect();
                let mut chosen = Vec::new();
                while !left.is_empty() {
                    let at = self.choose(&left, false, rng).unwrap();
                    chosen.push(left.remove(at));
                }
                Ranking::complete(&chosen)
            })
            .collect()
    }
}

#[derive(Default)]
struct Coverage {
    homes: u32,
    items: u32,
    strength: u32,
    best: u32,
    named: u32,
    width: f64,
}

impl Coverage {
    fn add(&mut self, fit: &ChoiceFit, truth: &[f64]) {
        let holds = |i: usize| fit.strengths[i].interval.contains(truth[i]);
        let best = (0..truth.len()).max_by(|a, b| truth[*a].total_cmp(&truth[*b])).unwrap();
        let ranking = fit.ranking();
        self.homes += 1;
        self.items += truth.len() as u32;
        self.strength += (0..truth.len()).filter(|i| holds(*i)).count() as u32;
        self.best += u32::from(holds(best));
        self.named += u32::from(holds(ranking[0]));
        let interval = fit.strengths[ranking[0]].interval;
        self.width += interval.high - interval.low;
    }

    fn row(&self) -> String {
        let of = |k: u32, n: u32| 100.0 * f64::from(k) / f64::from(n);
        let n = self.homes;
        format!(
            "{:.1} | {:.1} | {:.1} | {:.2}",
            of(self.strength, self.items),
            of(self.best, n),
            of(self.named, n),
            self.width / f64::from(n),
        )
    }
}

enum Format {
    Pairs(u16),
    Arrays(u16),
}

fn row(name: &str, truth: Truth, items: usize, format: &Format, tires: (f64, f64), homes: u64, seed: u64) -> String {
    let mut rng = ChaCha8Rng::seed_from_u64(seed);
    let mut coverage = Coverage::default();
    for home in 0..homes {
        let strengths = truth.draw(items, &mut rng);
        let mut animal = Animal::new(&strengths, tires.0, tires.1);
        let fit = match format {
            Format::Pairs(rounds) => {
                let trials = animal.pairs(*rounds, seed ^ home, &mut rng);
                fit_pairs(items, &trials, &PairModel::default()).unwrap()
            }
            Format::Arrays(sessions) => {
                fit_rankings(items, &animal.arrays(*sessions, &mut rng), &RankModel::default()).unwrap()
            }
        };
        coverage.add(&fit, &strengths);
    }
    let format = match format {
        Format::Pairs(rounds) => format!("{} pairs", usize::from(*rounds) * items * (items - 1) / 2),
        Format::Arrays(sessions) => format!("{sessions} arrays"),
    };
    format!("| {name} | {items} | {format} | {} |", coverage.row())
}

/// Runs the experiment.
pub fn run(work: &Work) -> Result<Section, LabError> {
    let mut section = Section::new("Intervals of likes where one stands out");
    let (homes, mut seed) = (work.size(200, 2) as u64, work.first(SEED));
    let mut text = String::new();
    line!(text, "{homes} simulated homes a line, first seed {seed}.\n");
    line!(text, "| truth | items | trials | strengths | truly best | named best | width |");
    line!(text, "| --- | --: | --- | --: | --: | --: | --: |");
    let formats = [
        (4, Format::Pairs(2)),
        (4, Format::Pairs(5)),
        (5, Format::Pairs(1)),
        (5, Format::Pairs(4)),
        (8, Format::Pairs(1)),
        (5, Format::Arrays(3)),
        (8, Format::Arrays(3)),
        (8, Format::Pairs(2)),
    ];
    let mut table = |truths: &[(&str, Truth, (f64, f64))]| {
        for (label, truth, tires) in truths {
            for (items, format) in &formats {
                seed += 1;
                line!(text, "{}", row(label, *truth, *items, format, *tires, homes, seed));
            }
        }
    };
    let fresh = (0.0, 0.0);
    table(&[
        ("one stands out by 2", Truth::StandsOut(2.0, 0.5), fresh),
        ("one stands out by 3", Truth::StandsOut(3.0, 0.5), fresh),
        ("one stands out by 4", Truth::StandsOut(4.0, 0.5), fresh),
    ]);
    table(&[("heavy tails", Truth::Heavy(0.7), fresh)]);
    table(&[
        ("spread 0.5", Truth::Normal(0.5), fresh),
        ("spread 1", Truth::Normal(1.0), fresh),
        ("spread 2", Truth::Normal(2.0), fresh),
    ]);
    table(&[
        ("tires 0.1, 0.98 stays", Truth::Normal(1.0), (0.1, 0.98)),
        ("tires 0.3, 0.9 stays", Truth::Normal(1.0), (0.3, 0.9)),
        ("tires 0.8, 0.7 stays", Truth::Normal(1.0), (0.8, 0.7)),
        ("tires 0.3, one stands out by 3", Truth::StandsOut(3.0, 0.5), (0.3, 0.9)),
    ]);
    section.tables.push(text);
    Ok(section)
}
