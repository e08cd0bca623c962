//! How many trials does adaptive testing save against offering all pairs? The table and the curve of
//! `docs/lab/adaptive-likes.md` (first seed 20 261 125 + number of items).
// Arguments are our own and valid; a refusal is a mistake here.
#![allow(clippy::unwrap_used)]

use super::Section;
use crate::error::LabError;
use crate::report::chart::{Chart, Line};
use crate::work::Work;
use sayso_sim::logistic;

use rand::{RngExt, SeedableRng};
use rand_chacha::ChaCha8Rng;
use sayso_methods::likes::{
    Goal, Intervals, PairModel, PairOutcome, PairTrial, Prior, StopRule, Verdict, fit_pairs, next_pair, schedule,
    should_stop,
};
use sayso_methods::stats::normal_quantile;

const SEED: u64 = 20_261_125;
const ROUNDS: u16 = 3;
const TOP: usize = 3;
/// Spread of the true strengths, log odds, and the pull to the left of every learner.
const SPREAD: f64 = 1.2;
const SIDE: f64 = 0.5;
const DRAWS: usize = 400;

struct Home {
    strengths: Vec<f64>,
    rng: ChaCha8Rng,
}

impl Home {
    fn new(items: usize, seed: u64) -> Self {
        let mut rng = ChaCha8Rng::seed_from_u64(seed);
        let strengths = (0..items)
            .map(|_| SPREAD * normal_quantile(rng.random::<f64>().clamp(1e-12, 1.0 - 1e-12)).unwrap())
            .collect();
        Self { strengths, rng }
    }

    fn offer(&mut self, left: usize, right: usize) -> PairTrial {
        let lean = self.strengths[left] - self.strengths[right] + SIDE;
        let outcome = if self.rng.random::<f64>() < logistic(lean) { PairOutcome::Left } else { PairOutcome::Right };
        PairTrial { left, right, outcome }
    }
}

fn top(strengths: &[f64]) -> Vec<usize> {
    let mut order: Vec<usize> = (0..strengths.len()).collect();
    order.sort_by(|a, b| strengths[*b].total_cmp(&strengths[*a]));
    let mut top: Vec<usize> = order.into_iter().take(TOP).collect();
    top.sort_unstable();
    top
}

/// The same model for both ways of testing, so that only the choice of pairs differs.
fn model() -> PairModel {
    PairModel { prior: Prior::Weak { alpha: 0.3 }, tires: false, intervals: Intervals::Quick, ..PairModel::default() }
}

/// For each number of trials, in how many homes the estimated top set was the true one; and the stop rule's record.
struct Record {
    right: Vec<f64>,
    stopped_at: Vec<f64>,
    stopped_right: Vec<f64>,
    /// Where the rule said "known well enough": whether truly no item left out was stronger than one taken in by more than
    /// the margin.
    claims_true: Vec<f64>,
}

fn record(items: usize, homes: u64, first: u64, adaptive: bool) -> Record {
    let most = items * (items - 1) / 2 * usize::from(ROUNDS);
    let rule = StopRule { most: most as u64, ..StopRule::default() };
    let mut record = Record {
        right: vec![0.0; most + 1],
        stopped_at: Vec::new(),
        stopped_right: Vec::new(),
        claims_true: Vec::new(),
    };
    for number in 0..homes {
        // Both ways meet the same homes.
        let seed = (first + items as u64) ^ (number << 20);
        let mut home = Home::new(items, seed);
        let wanted = top(&home.strengths);
        let plan = schedule::paired(items, ROUNDS, seed);
        let mut trials: Vec<PairTrial> = Vec::with_capacity(most);
        let mut stopped = false;
        for at in 0..=most {
            let fit = fit_pairs(items, &trials, &model()).unwrap();
            let found: Vec<f64> = fit.strengths.iter().map(|s| s.value).collect();
            let right = f64::from(u8::from(top(&found) == wanted));
            record.right[at] += right / homes as f64;
            if !stopped && at > 0 {
                let verdict = should_stop(&fit, &rule, DRAWS, seed ^ at as u64).unwrap();
                stopped = !matches!(verdict, Verdict::GoOn(_));
                if stopped {
                    record.stopped_at.push(at as f64);
                    record.stopped_right.push(right);
                }
                if let Verdict::KnownWellEnough(set) = verdict {
                    let (inside, outside): (Vec<usize>, Vec<usize>) = (0..items).partition(|i| set.members.contains(i));
                    let strength = |i: &usize| home.strengths[*i];
                    let weakest = inside.iter().map(strength).fold(f64::INFINITY, f64::min);
                    let strongest = outside.iter().map(strength).fold(f64::NEG_INFINITY, f64::max);
                    record.claims_true.push(f64::from(u8::from(strongest <= weakest + rule.margin)));
                }
            }
            if at == most {
                break;
            }
            let (left, right) = if adaptive {
                let next = next_pair(&fit, &trials, Goal::TopSet(TOP), DRAWS, seed ^ (at as u64) << 8).unwrap();
                (next.left, next.right)
            } else {
                plan.get(at).map(|p| (p.left, p.right)).unwrap()
            };
            trials.push(home.offer(left, right));
        }
    }
    record
}

fn mean_and_error(values: &[f64]) -> (f64, f64) {
    let n = values.len() as f64;
    let mean = values.iter().sum::<f64>() / n;
    let variance = values.iter().map(|v| (v - mean).powi(2)).sum::<f64>() / (n - 1.0);
    (mean, (variance / n).sqrt())
}

/// Mean of three neighbours, so that one lucky count does not decide.
fn smooth(curve: &[f64]) -> Vec<f64> {
    (0..curve.len())
        .map(|i| {
            let window = &curve[i.saturating_sub(1)..(i + 2).min(curve.len())];
            window.iter().sum::<f64>() / window.len() as f64
        })
        .collect()
}

/// Runs the experiment.
pub fn run(work: &Work) -> Result<Section, LabError> {
    let mut section = Section::new("Adaptive likes testing");
    let homes = work.size(800, 2) as u64;
    let first = work.first(SEED);
    let mut text = String::new();
    let out = &mut text;
    line!(out, "{homes} simulated homes per number of items.\n");
    line!(out, "| items | rounds of all pairs | trials | top three right | adaptive trials for the same | saved |");
    line!(out, "| --: | --: | --: | --: | --: | --: |");
    let mut stops = String::new();
    for items in 4..=8 {
        let (all, adaptive) = (record(items, homes, first, false), record(items, homes, first, true));
        let (all_curve, adaptive_curve) = (smooth(&all.right), smooth(&adaptive.right));
        let pairs = items * (items - 1) / 2;
        for round in 1..=usize::from(ROUNDS) {
            let trials = pairs * round;
            let reached = all_curve[trials];
            let error = (reached * (1.0 - reached) / homes as f64).sqrt();
            // First number of trials at which the adaptive curve is as high, and stays so for the next two.
            let level =
                |at: usize| adaptive_curve[at..(at + 3).min(adaptive_curve.len())].iter().all(|v| *v >= reached);
            let same = (0..adaptive_curve.len()).find(|at| level(*at));
            let (same, saved) = match same {
                Some(at) => (at.to_string(), format!("{:.0} %", 100.0 * (1.0 - at as f64 / trials as f64))),
                None => ("not within three rounds".into(), "-".into()),
            };
            let (percent, error) = (100.0 * reached, 100.0 * error);
            line!(out, "| {items} | {round} | {trials} | {percent:.1} % (se {error:.1}) | {same} | {saved} |");
        }
        for (name, record) in [("all pairs", &all), ("adaptive", &adaptive)] {
            let ((trials, trials_error), (right, right_error)) =
                (mean_and_error(&record.stopped_at), mean_and_error(&record.stopped_right));
            let (kept, kept_error) = mean_and_error(&record.claims_true);
            line!(
                stops,
                "| {items} | {name} | {trials:.1} (se {trials_error:.1}) | {:.1} % (se {:.1}) | {} | {:.1} % (se {:.1}) |",
                100.0 * right,
                100.0 * right_error,
                record.claims_true.len(),
                100.0 * kept,
                100.0 * kept_error
            );
        }
        if items == 8 {
            let points = |curve: &[f64]| curve.iter().enumerate().map(|(at, v)| (at as f64, *v)).collect();
            section.charts.push(Chart {
                file: "adaptive-likes.svg".into(),
                title: format!("8 items, {homes} simulated homes: top three found, by trials run"),
                x: "trials".into(),
                y: "share of homes".into(),
                range: (0.0, 1.0),
                lines: vec![
                    Line { name: "next pair by information".into(), points: points(&adaptive_curve) },
                    Line { name: "all pairs in rounds".into(), points: points(&all_curve) },
                ],
                wanted: None,
            });
        }
    }
    line!(
        out,
        "\nStopping by the default rule (90 % sure of the best three up to a difference of 0.25, at most three rounds):\n"
    );
    line!(
        out,
        "| items | pairs chosen | trials until the stop | top three right at the stop | called known well enough | of those, true |"
    );
    line!(out, "| --: | :-- | --: | --: | --: | --: |");
    text += &stops;
    section.tables.push(text);
    Ok(section)
}
