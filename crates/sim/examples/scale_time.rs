//! Times a learner with many presses, and many households:
//! `cargo run -p sayso-sim --release --example scale_time -- 100000 200` (presses, and households; fewer for a quick look).

use std::error::Error;
use std::time::Instant;

fn main() -> Result<(), Box<dyn Error>> {
    let presses: usize = std::env::args().nth(1).as_deref().unwrap_or("100000").parse()?;
    let homes: u64 = std::env::args().nth(2).as_deref().unwrap_or("200").parse()?;
    let start = Instant::now();
    let run = sayso_sim::scale(1, presses, "2026-11-25T19:30:00Z".parse()?);
    println!("{} events, {} days, in {:.2} s", run.events.len(), run.truth.home.days, start.elapsed().as_secs_f64());
    let end = "2026-11-25T19:30:00Z".parse()?;
    let start = Instant::now();
    let mut events = 0;
    for seed in 0..homes {
        events += sayso_sim::simulate(&sayso_sim::any_home(seed), seed, end)?.events.len();
    }
    println!("{homes} households, {events} events, in {:.2} s", start.elapsed().as_secs_f64());
    Ok(())
}
