//! A step of the animal of a rehearsal, and the answer to one act: the whole rehearsal played anew with all acts so far.
//!
//! `cargo bench -p sayso-sim --bench rehearsal` (add `-- --quick` to see whether it runs).
#![allow(clippy::unwrap_used, clippy::cast_precision_loss, missing_docs)]

use sayso_sim::rehearsal::{Act, Character, Does, Exercise, Rehearsal, Setup, Thing, play};
use std::hint::black_box;
use std::time::Instant;

/// What was asked for: a step in less than this.
const WANTED_MS: f64 = 1.0;

fn main() {
    let runs: u64 = if std::env::args().any(|a| a == "--quick") { 2 } else { 200 };
    println!("| exercise | steps | a step, ms | all of them anew, ms |\n| --- | --- | --- | --- |");
    for exercise in Exercise::ALL {
        let acts: Vec<Act> = (1..exercise.most_ms() / 4_000)
            .flat_map(|i| {
                let thing = Thing::ALL[i as usize % 4];
                [(i * 4_000, Does::Show(thing)), (i * 4_000 + 900, Does::Give(thing))]
            })
            .map(|(at_ms, does)| Act { at_ms, does })
            .collect();
        let (mut steps, mut whole) = (0_u32, f64::INFINITY);
        let mut slowest: f64 = 0.0;
        for seed in 0..runs {
            let setup = Setup { seed, character: Character::ALL[seed as usize % 5], exercise };
            let begin = Instant::now();
            black_box(play(setup, black_box(&acts)));
            whole = whole.min(begin.elapsed().as_secs_f64() * 1_000.0);
            let mut live = Rehearsal::new(setup);
            let begin = Instant::now();
            steps = 0;
            while !live.is_over() {
                live.step();
                steps += 1;
            }
            slowest = slowest.max(begin.elapsed().as_secs_f64() * 1_000.0 / f64::from(steps.max(1)));
        }
        let verdict = if slowest < WANTED_MS { "" } else { " (more than wanted)" };
        println!("| {} | {steps} | {slowest:.5}{verdict} | {whole:.3} |", exercise.name());
    }
}
