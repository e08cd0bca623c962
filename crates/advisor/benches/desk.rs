//! What a coach's desk costs: reading the lines of many homes and placing them, against reading their stories each time.
//!
//! `cargo bench -p sayso-advisor --bench desk` (add `-- --homes 20` for a quick look).
#![allow(clippy::unwrap_used, clippy::cast_precision_loss, missing_docs)]

use sayso_advisor::desk::{Line, Seen, desk};
use sayso_advisor::summary::summaries;
use sayso_advisor::{Case, welfare};
use sayso_model::{AnimalId, Moment, Story};
use std::hint::black_box;
use std::time::Instant;

fn main() {
    let args: Vec<String> = std::env::args().collect();
    let after = |name: &str| args.iter().position(|a| a == name).and_then(|i| args.get(i + 1)).cloned();
    let homes: u32 = after("--homes").and_then(|n| n.parse().ok()).unwrap_or(500);
    let now: Moment = "2026-11-25T18:00:00Z".parse().unwrap();
    let mut events = Vec::new();
    let mut who: Vec<AnimalId> = Vec::new();
    for number in 0..homes {
        let run = sayso_sim::troubled_one(3, number, now).run;
        who.push(run.truth.ids.animals[0]);
        events.push(run.events);
    }
    let n: usize = events.iter().map(Vec::len).sum();
    println!("{homes} homes, {n} events");
    let (stories, fold) = timed(|| events.into_iter().map(Story::from_events).collect::<Vec<_>>());
    println!("reference: events folded into stories      {fold:>10.1} ms");
    let cases = || stories.iter().zip(&who).map(|(story, animal)| Case::new(story, *animal, now));
    let (_, page) = timed(|| cases().for_each(|c| drop(black_box(welfare::welfare(&c)))));
    println!("welfare alone, read from every story       {page:>10.1} ms");
    let (lines, made) = timed(|| cases().map(|c| Line::of(&c)).collect::<Vec<_>>());
    println!("lines worked out from stories              {made:>10.1} ms  ({:.2} ms a home)", made / f64::from(homes));
    let (_, waits) = timed(|| stories.iter().zip(&who).for_each(|(s, a)| drop(black_box(summaries(s, *a, now)))));
    println!("of it, waits of words for other homes      {waits:>10.1} ms");
    let kept: Vec<String> = lines.iter().map(|line| serde_json::to_string(line).unwrap()).collect();
    let bytes: usize = kept.iter().map(String::len).sum();
    let (_, read) = timed(|| kept.iter().map(|k| serde_json::from_str::<Line>(k).unwrap()).collect::<Vec<_>>());
    println!(
        "lines read as they are kept                {read:>10.1} ms  ({} bytes a home)",
        bytes / lines.len().max(1)
    );
    for times in [1, 10] {
        let all = || (0..times).flat_map(|turn| lines.iter().enumerate().map(move |(i, line)| ((turn, i), line)));
        let placed = (0..5).map(|_| timed(|| drop(black_box(desk(all(), now, &Seen::default(), None)))).1);
        let placed = placed.fold(f64::INFINITY, f64::min);
        let many = lines.len() * times;
        println!("a desk of {many:<6} lines, needs and order    {placed:>10.2} ms  ({:.5} of the fold)", placed / fold);
    }
}

fn timed<T>(run: impl FnOnce() -> T) -> (T, f64) {
    let begun = Instant::now();
    let out = run();
    (out, begun.elapsed().as_secs_f64() * 1000.0)
}
