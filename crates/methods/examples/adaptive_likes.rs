//! How many trials does adaptive testing save against offering all pairs? Writes the table and the curve of
//! `docs/lab/adaptive-likes.md`.
//!
//! `cargo run --release -p sayso-methods --example adaptive_likes -- 400 curve.svg`
//! (households per number of items, and where to write the curve; seed 20 261 125 + number of items).
#![allow(clippy::unwrap_used, clippy::print_stdout)]

use rand::{RngExt, SeedableRng};
use rand_chacha::ChaCha8Rng;
use sayso_methods::likes::{
    Goal, Intervals, PairModel, PairOutcome, PairTrial, Prior, StopRule, Verdict, fit_pairs, next_pair, schedule,
    should_stop,
};
use sayso_methods::stats::normal_quantile;
use std::fmt::Write as _;

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
        let outcome =
            if self.rng.random::<f64>() < 1.0 / (1.0 + (-lean).exp()) { PairOutcome::Left } else { PairOutcome::Right };
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

/// For each number of trials, in how many households the estimated top set was the true one; and the stop rule's record.
struct Record {
    right: Vec<f64>,
    stopped_at: Vec<f64>,
    stopped_right: Vec<f64>,
    /// Where the rule said "known well enough": whether truly no item left out was stronger than one taken in by more than
    /// the margin.
    claims_true: Vec<f64>,
}

fn run(items: usize, homes: u64, adaptive: bool) -> Record {
    let most = items * (items - 1) / 2 * usize::from(ROUNDS);
    let rule = StopRule { most: most as u64, ..StopRule::default() };
    let mut record = Record {
        right: vec![0.0; most + 1],
        stopped_at: Vec::new(),
        stopped_right: Vec::new(),
        claims_true: Vec::new(),
    };
    for number in 0..homes {
        // Both ways meet the same households.
        let seed = (SEED + items as u64) ^ (number << 20);
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

fn svg(items: usize, all: &[f64], adaptive: &[f64], homes: u64) -> String {
    let (width, height, left, bottom) = (640.0, 360.0, 60.0, 50.0);
    let x = |at: usize| left + (width - left - 20.0) * at as f64 / (all.len() - 1) as f64;
    let y = |share: f64| height - bottom - (height - bottom - 50.0) * share;
    let line = |curve: &[f64]| {
        curve.iter().enumerate().map(|(i, v)| format!("{:.1},{:.1}", x(i), y(*v))).collect::<Vec<_>>().join(" ")
    };
    let mut out = String::new();
    writeln!(
        out,
        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {width} {height}\" role=\"img\" \
         font-family=\"sans-serif\" font-size=\"13\">\n\
         <title>Share of households whose three best-liked of {items} items were found, by number of trials</title>\n\
         <rect width=\"{width}\" height=\"{height}\" fill=\"#fff\"/>\n\
         <text x=\"{left}\" y=\"22\">{items} items, {homes} simulated households: top three found, by trials run</text>"
    )
    .unwrap();
    for tick in 0..=4 {
        let share = f64::from(tick) / 4.0;
        writeln!(
            out,
            "<line x1=\"{left}\" x2=\"{}\" y1=\"{:.1}\" y2=\"{:.1}\" stroke=\"#ccc\"/>\
             <text x=\"{}\" y=\"{:.1}\" text-anchor=\"end\">{:.0} %</text>",
            width - 20.0,
            y(share),
            y(share),
            left - 8.0,
            y(share) + 4.0,
            share * 100.0
        )
        .unwrap();
    }
    for at in (0..all.len()).step_by(14) {
        writeln!(out, "<text x=\"{:.1}\" y=\"{}\" text-anchor=\"middle\">{at}</text>", x(at), height - 28.0).unwrap();
    }
    writeln!(
        out,
        "<text x=\"{}\" y=\"{}\" text-anchor=\"middle\">trials</text>\n\
         <polyline points=\"{}\" fill=\"none\" stroke=\"#555\" stroke-width=\"2\" stroke-dasharray=\"6 4\"/>\n\
         <polyline points=\"{}\" fill=\"none\" stroke=\"#06c\" stroke-width=\"2.5\"/>\n\
         <text x=\"{}\" y=\"{}\" fill=\"#06c\">solid: next pair by expected information</text>\n\
         <text x=\"{}\" y=\"{}\" fill=\"#555\">dashed: all pairs in rounds</text>\n</svg>",
        (left + width) / 2.0,
        height - 8.0,
        line(all),
        line(adaptive),
        width - 320.0,
        y(0.0) - 34.0,
        width - 320.0,
        y(0.0) - 14.0
    )
    .unwrap();
    out
}

fn main() {
    let homes: u64 = std::env::args().nth(1).and_then(|n| n.parse().ok()).unwrap_or(400);
    let file = std::env::args().nth(2);
    println!("{homes} simulated households per number of items.\n");
    println!("| items | rounds of all pairs | trials | top three right | adaptive trials for the same | saved |");
    println!("| --: | --: | --: | --: | --: | --: |");
    let mut stops = String::new();
    for items in 4..=8 {
        let (all, adaptive) = (run(items, homes, false), run(items, homes, true));
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
            println!("| {items} | {round} | {trials} | {percent:.1} % (se {error:.1}) | {same} | {saved} |");
        }
        for (name, record) in [("all pairs", &all), ("adaptive", &adaptive)] {
            let ((trials, trials_error), (right, right_error)) =
                (mean_and_error(&record.stopped_at), mean_and_error(&record.stopped_right));
            let (kept, kept_error) = mean_and_error(&record.claims_true);
            writeln!(
                stops,
                "| {items} | {name} | {trials:.1} (se {trials_error:.1}) | {:.1} % (se {:.1}) | {} | {:.1} % (se {:.1}) |",
                100.0 * right,
                100.0 * right_error,
                record.claims_true.len(),
                100.0 * kept,
                100.0 * kept_error
            )
            .unwrap();
        }
        if items == 8
            && let Some(file) = &file
        {
            std::fs::write(file, svg(items, &all_curve, &adaptive_curve, homes)).unwrap();
        }
    }
    println!(
        "\nStopping by the default rule (90 % sure of the best three up to a difference of 0.25, at most three rounds):\n"
    );
    println!(
        "| items | pairs chosen | trials until the stop | top three right at the stop | called known well enough | of those, true |"
    );
    println!("| --: | :-- | --: | --: | --: | --: |");
    print!("{stops}");
}
