//! Times the making of a learner with many presses: `cargo run -p sayso-sim --release --example scale_time -- 100000`

use std::error::Error;
use std::time::Instant;

fn main() -> Result<(), Box<dyn Error>> {
    let presses: usize = std::env::args().nth(1).as_deref().unwrap_or("100000").parse()?;
    let start = Instant::now();
    let run = sayso_sim::scale(1, presses, "2026-11-25T19:30:00Z".parse()?);
    println!(
        "{} events, {} days, in {:.2} s",
        run.events.len(),
        run.truth.household.days,
        start.elapsed().as_secs_f64()
    );
    Ok(())
}
