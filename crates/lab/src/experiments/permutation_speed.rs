//! How long 10 000 rearrangements of 100 000 presses take, by the length of the sessions. The only experiment that looks
//! at a clock: it is not among `all`.
// Arguments are our own and valid; a refusal is a mistake here.
#![allow(clippy::unwrap_used, clippy::expect_used)]

use super::Section;
use crate::error::LabError;
use crate::work::Work;
use rand_xoshiro::Xoshiro256PlusPlus;
use rand_xoshiro::rand_core::{Rng, SeedableRng};
use sayso_methods::understanding::MonteCarlo;
use sayso_methods::understanding::association::{PressIn, Unit, association};
use std::time::Instant;

/// Processor seconds of this process over all threads so far, where the system tells (100 ticks a second is assumed).
fn processor_seconds() -> f64 {
    let ticks = std::fs::read_to_string("/proc/self/stat").ok().and_then(|line| {
        let after_name = line.rsplit_once(')')?.1.to_owned();
        after_name.split_whitespace().nth(11)?.parse::<f64>().ok()
    });
    ticks.map_or(f64::NAN, |ticks| ticks / 100.0)
}

/// Runs the experiment.
pub fn run(work: &Work) -> Result<Section, LabError> {
    let mut section = Section::new("Speed of rearrangements");
    let presses = work.size(100_000, 1_000);
    let mut text = String::from("```text\n");
    let out = &mut text;
    line!(out, "{presses} presses, 10 words, 4 outcomes (half of them the commonest), seed {}", work.seed);
    line!(out, "session  unit     drawn  seconds  processor seconds  p overall");
    for length in [20, 100, 1_000, 10_000, 100_000] {
        for (name, unit) in [("press", Unit::Press), ("episode", Unit::Episode)] {
            let mut rng = Xoshiro256PlusPlus::seed_from_u64(work.seed);
            let data: Vec<PressIn> = (0..presses)
                .map(|k| {
                    let word = (rng.next_u64() % 10) as usize;
                    // A faint real association of word 0 keeps the test from stopping early.
                    let outcome = [0, 0, 0, 0, 1, 1, 2, 3][(rng.next_u64() % 8) as usize];
                    let outcome = if word == 0 && rng.next_u64() % 8 == 0 { 3 } else { outcome };
                    PressIn { session: k / length, word, outcome }
                })
                .collect();
            let (start, before) = (Instant::now(), processor_seconds());
            let draws = MonteCarlo { seed: 1, most: 10_000, enough: 10_000 };
            let found = association(&data, unit, draws).expect("data are valid");
            let seconds = start.elapsed().as_secs_f64();
            let processor = processor_seconds() - before;
            let (drawn, p) = (found.overall.drawn, found.overall.p);
            line!(out, "{length:7}  {name:7} {drawn:6}  {seconds:7.2}  {processor:17.2}  {p:.4}");
        }
    }
    line!(out, "with early stopping, no association at all, sessions of 100:");
    let mut rng = Xoshiro256PlusPlus::seed_from_u64(work.seed + 1);
    let data: Vec<PressIn> = (0..presses)
        .map(|k| PressIn {
            session: k / 100,
            word: (rng.next_u64() % 10) as usize,
            outcome: (rng.next_u64() % 4) as usize,
        })
        .collect();
    let start = Instant::now();
    let found = association(&data, Unit::Press, MonteCarlo::seeded(1)).expect("data are valid");
    let drawn = found.by_word.iter().map(|word| word.p.drawn).max().unwrap();
    line!(out, "drawn {drawn}, {:.3} s", start.elapsed().as_secs_f64());
    line!(out, "```");
    section.tables.push(text);
    Ok(section)
}
