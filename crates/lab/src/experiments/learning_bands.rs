//! How often the bands and intervals about learning hold the truth, on simulated learners. The tables of
//! `docs/lab/learning.md` (seeds from 1).
// Arguments are our own and valid; a refusal is a mistake here.
#![allow(clippy::unwrap_used)]

use super::Section;
use crate::error::LabError;
use crate::work::Work;
use rand_xoshiro::Xoshiro256PlusPlus;
use rand_xoshiro::rand_core::{Rng, SeedableRng};
use sayso_methods::demand::answers::{Answer, AnsweredPress, PIECES, after_answers};
use sayso_methods::learning::celeration::{ZeroRates, celeration, celeration_from_counts};
use sayso_methods::learning::curve::{CurveSettings, LearningCurve, learning_curve};
use sayso_methods::learning::phases::{Better, compare_phases};
use sayso_methods::learning::readiness::{SessionSigns, readiness};
use sayso_methods::learning::shown::curve_by_day;
use sayso_methods::stats::Level;
use sayso_sim::logistic;

struct Dice(Xoshiro256PlusPlus);

impl Dice {
    fn seeded(seed: u64) -> Self {
        Self(Xoshiro256PlusPlus::seed_from_u64(seed))
    }
    fn unit(&mut self) -> f64 {
        ((self.0.next_u64() >> 11) as f64 + 0.5) / (1u64 << 53) as f64
    }
    fn yes(&mut self, p: f64) -> bool {
        self.unit() < p
    }
    fn normal(&mut self) -> f64 {
        (-2.0 * self.unit().ln()).sqrt() * (std::f64::consts::TAU * self.unit()).cos()
    }
    fn exponential(&mut self, rate: f64) -> f64 {
        -self.unit().ln() / rate
    }
    fn poisson(&mut self, mean: f64) -> u32 {
        let (mut k, mut time) = (0, self.exponential(1.0));
        while time < mean {
            k += 1;
            time += self.exponential(1.0);
        }
        k
    }
}

#[derive(Clone, Copy)]
enum Truth {
    /// The model's own truth: random walk of this step variance.
    Walk(f64),
    /// A smooth rise from chance to 0.9 around the middle.
    Rise,
    /// A jump from chance to 0.9 at the middle.
    Jump,
    /// Chance throughout.
    Never,
}

const CHANCE: f64 = 0.25;

fn probabilities(truth: Truth, trials: usize, dice: &mut Dice) -> Vec<f64> {
    let mu = (CHANCE / (1.0 - CHANCE)).ln();
    let mut x = 0.0;
    (0..trials)
        .map(|k| {
            let t = (k as f64 + 1.0) / trials as f64;
            match truth {
                Truth::Walk(variance) => {
                    x += variance.sqrt() * dice.normal();
                    logistic(mu + x)
                }
                Truth::Rise => CHANCE + (0.9 - CHANCE) * logistic(12.0 * (t - 0.5)),
                Truth::Jump => {
                    if t <= 0.5 {
                        CHANCE
                    } else {
                        0.9
                    }
                }
                Truth::Never => CHANCE,
            }
        })
        .collect()
}

#[derive(Default)]
struct Tally {
    held: u64,
    of: u64,
    last_held: u64,
    animals: u64,
    learnt: u64,
}

impl Tally {
    fn add(&mut self, curve: &LearningCurve, truth: &[f64]) {
        for (point, p) in curve.points.iter().zip(truth).filter(|(point, _)| point.observed) {
            self.held += u64::from(point.lower <= *p && *p <= point.upper);
            self.of += 1;
        }
        let (point, p) = (curve.points.last().unwrap(), truth.last().unwrap());
        self.last_held += u64::from(point.lower <= *p && *p <= point.upper);
        self.animals += 1;
        self.learnt += u64::from(curve.learning_trial.is_some());
    }
    fn print(&self, out: &mut String, name: &str, trials: usize) {
        line!(
            out,
            "{name:34} {trials:4}  {:5.1} %   {:5.1} %   {:5.1} %",
            100.0 * self.held as f64 / self.of as f64,
            100.0 * self.last_held as f64 / self.animals as f64,
            100.0 * self.learnt as f64 / self.animals as f64
        );
    }
}

fn curves(out: &mut String, animals: u64, first: u64) {
    line!(out, "Learning curve, 90 % band, chance {CHANCE}, a fifth of the trials missing, {animals} animals a row");
    line!(out, "{:34} {:>4}  {:>7}   {:>7}   learning trial claimed", "truth, fit", "n", "trials", "last");
    for (name, truth) in [
        ("walk 0.02", Truth::Walk(0.02)),
        ("walk 0.2", Truth::Walk(0.2)),
        ("smooth rise", Truth::Rise),
        ("jump", Truth::Jump),
        ("never above chance", Truth::Never),
    ] {
        for trials in [20, 60] {
            let (mut single, mut shown) = (Tally::default(), Tally::default());
            for animal in 0..animals {
                let mut dice = Dice::seeded(first + animal);
                let truth = probabilities(truth, trials, &mut dice);
                let seen: Vec<Option<bool>> = truth.iter().map(|p| (!dice.yes(0.2)).then(|| dice.yes(*p))).collect();
                let days: Vec<i32> = (0..trials as i32).map(|k| k / 4).collect();
                single.add(&learning_curve(&seen, CHANCE, &CurveSettings::default()).unwrap(), &truth);
                shown.add(&curve_by_day(&seen, &days, CHANCE, Level::P90).unwrap(), &truth);
            }
            single.print(out, &format!("{name}, published (EM)"), trials);
            shown.print(out, &format!("{name}, as shown"), trials);
        }
    }
}

fn weekly_factors(out: &mut String, animals: u64, first: u64) {
    line!(out, "\nCeleration, 90 % interval, truth x 1.3 a week, {animals} animals a row");
    for (name, days, base, noise) in [
        ("log-normal rates", 14, 2.0, 0.25),
        ("Poisson counts, mean from 6", 14, 6.0, 0.0),
        ("Poisson counts, mean from 0.5", 28, 0.5, 0.0),
        ("over-dispersed counts, mean from 4", 28, 4.0, 0.6),
    ] {
        let truth = 1.3f64;
        let (mut squares, mut counts, mut made, mut made_counts) = (0u64, 0u64, 0u64, 0u64);
        for animal in 0..animals {
            let mut dice = Dice::seeded(first + animal);
            let day: Vec<f64> = (0..days).map(f64::from).collect();
            let mean: Vec<f64> = day
                .iter()
                .map(|d| base * truth.powf(d / 7.0) * (noise * dice.normal() - 0.5 * noise * noise).exp())
                .collect();
            let seen: Vec<u32> = mean.iter().map(|m| dice.poisson(*m)).collect();
            let rates: Vec<f64> =
                if name.starts_with("log") { mean } else { seen.iter().map(|k| f64::from(*k)).collect() };
            if let Ok(found) = celeration(&day, &rates, ZeroRates::LeaveOut)
                && let Some(interval) = found.interval
            {
                made += 1;
                squares += u64::from(interval.contains(truth));
            }
            if !name.starts_with("log")
                && let Some(interval) = celeration_from_counts(&day, &seen, &vec![1.0; day.len()]).unwrap().interval
            {
                made_counts += 1;
                counts += u64::from(interval.contains(truth));
            }
        }
        let share = |held: u64, of: u64| if of == 0 { f64::NAN } else { 100.0 * held as f64 / of as f64 };
        line!(
            out,
            "{name:36} {days} days   least squares {:5.1} %   Poisson regression {}",
            share(squares, made),
            if made_counts == 0 { "-".into() } else { format!("{:5.1} %", share(counts, made_counts)) }
        );
    }
}

fn hazards(out: &mut String, animals: u64, first: u64) {
    line!(out, "\nHazard after an answer, exact 95 % interval, pieces {PIECES:?} s, {animals} animals a row");
    for (name, hazard) in [("0.02 a second", 0.02), ("0.002 a second", 0.002)] {
        for answers in [10, 60] {
            let mut held = [0u64; 4];
            let mut made = [0u64; 4];
            let (mut ratio_held, mut ratios) = (0u64, 0u64);
            for animal in 0..animals {
                let mut dice = Dice::seeded(first + animal);
                let presses: Vec<AnsweredPress> = (0..2 * answers)
                    .map(|k| {
                        let answer = if k % 2 == 0 { Answer::Yes } else { Answer::No };
                        let again = dice.exponential(if answer == Answer::Yes { hazard } else { 2.0 * hazard });
                        let watched = 60.0 + 900.0 * dice.unit();
                        AnsweredPress { answer, seconds: again.min(watched), pressed_again: again <= watched }
                    })
                    .collect();
                let found = after_answers(&presses, &PIECES).unwrap();
                for (piece, (held, made)) in found[0].pieces.iter().zip(held.iter_mut().zip(&mut made)) {
                    if let Some(interval) = piece.interval {
                        *made += 1;
                        *held += u64::from(interval.contains(hazard));
                    }
                }
                if let Some(ratio) = found[1].ratio_to_yes {
                    ratios += 1;
                    ratio_held += u64::from(ratio.interval.contains(2.0));
                }
            }
            let shares: Vec<String> =
                held.iter().zip(made).map(|(h, m)| format!("{:5.1} %", 100.0 * *h as f64 / m as f64)).collect();
            line!(
                out,
                "{name:16} {answers:3} answers   by piece {}   ratio to yes {:5.1} % of {ratios}",
                shares.join(" "),
                100.0 * ratio_held as f64 / ratios.max(1) as f64
            );
        }
    }
}

fn phases(out: &mut String, animals: u64, first: u64) {
    line!(out, "\nNAP, 90 % interval, normal values, {animals} animals a row");
    for (shift, nap) in [(0.0, 0.5), (1.0, 0.760_249_938_906_522_3)] {
        for (n_a, n_b) in [(5, 5), (10, 20)] {
            let mut held = 0u64;
            for animal in 0..animals {
                let mut dice = Dice::seeded(first + animal);
                let a: Vec<f64> = (0..n_a).map(|_| dice.normal()).collect();
                let b: Vec<f64> = (0..n_b).map(|_| shift + dice.normal()).collect();
                held += u64::from(compare_phases(&a, &b, Better::Larger).unwrap().nap_interval.contains(nap));
            }
            line!(out, "NAP {nap:.2}, {n_a} and {n_b} observations   {:5.1} %", 100.0 * held as f64 / animals as f64);
        }
    }
}

fn ready(out: &mut String, animals: u64, first: u64) {
    line!(
        out,
        "\nReadiness, 40 sessions, {animals} animals: said probability of ready in the last session, and how often it was"
    );
    let rate = [0.2, 0.55, 0.92];
    let seconds = [40.0, 18.0, 7.0];
    let relaxed = [0.3, 0.6, 0.9];
    let mut bins = [(0u64, 0u64, 0.0f64); 5];
    let (mut right, mut brier, mut settled) = (0u64, 0.0, 0u64);
    for animal in 0..animals {
        let mut dice = Dice::seeded(first + animal);
        let scale = (0.5 * dice.normal()).exp();
        let mut state = 0usize;
        let sessions: Vec<SessionSigns> = (0..40)
            .map(|_| {
                let u = dice.unit();
                state = if u < 0.12 {
                    (state + 1).min(2)
                } else if u < 0.17 {
                    state.saturating_sub(1)
                } else {
                    state
                };
                let offers = 2 + dice.poisson(2.0);
                let joined = (0..offers).map(|_| u32::from(dice.yes(rate[state]))).sum();
                let signs = dice.poisson(2.0);
                let relaxed_signs = (0..signs).map(|_| u32::from(dice.yes(relaxed[state]))).sum();
                let approach_seconds =
                    (joined > 0 && dice.yes(0.7)).then(|| scale * seconds[state] * (0.5 * dice.normal()).exp());
                SessionSigns { offers, joined, approach_seconds, relaxed_signs, stress_signs: signs - relaxed_signs }
            })
            .collect();
        let found = readiness(&sessions).unwrap();
        let (p, is) = (found.now[2], u64::from(state == 2));
        let bin = &mut bins[((p * 5.0) as usize).min(4)];
        *bin = (bin.0 + 1, bin.1 + is, bin.2 + p);
        right += u64::from(found.likeliest as usize == state);
        brier += (p - is as f64).powi(2) / animals as f64;
        settled += u64::from(found.converged);
    }
    for (k, (n, were, sum)) in bins.iter().enumerate().filter(|(_, bin)| bin.0 > 0) {
        line!(
            out,
            "said {:.1} to {:.1}: n {n:5}, mean {:.2}, was ready {:.2}",
            k as f64 / 5.0,
            (k + 1) as f64 / 5.0,
            sum / *n as f64,
            *were as f64 / *n as f64
        );
    }
    line!(
        out,
        "likeliest state right {:.1} %, Brier score {brier:.3}, fit settled {:.1} %",
        100.0 * right as f64 / animals as f64,
        100.0 * settled as f64 / animals as f64
    );
}

/// Runs the experiment.
pub fn run(work: &Work) -> Result<Section, LabError> {
    let mut section = Section::new("Bands and intervals about learning");
    let (animals, first) = (work.size(600, 12) as u64, work.first(1));
    let mut text = String::new();
    let out = &mut text;
    line!(out, "```text\nseeds from {first}");
    curves(out, animals, first);
    weekly_factors(out, animals, first);
    hazards(out, animals, first);
    phases(out, animals, first);
    ready(out, animals, first);
    line!(out, "```");
    section.tables.push(text);
    Ok(section)
}
