//! How far from its clip's speed a button may play and still be heard.

use super::boards::Range;
use super::hear::hear_made;
use super::scenes::{Button, Home, board, busy};
use super::score::Tally;
use super::truth::SoundFile;
use crate::error::{LabError, told};
use crate::report::figure::table;
use crate::work::side_by_side;
use clap::ValueEnum;
use sayso_listen::{Clip, Enrolled, Pace};
use sayso_sim::Chance;
use std::sync::Arc;

/// What to hear.
#[derive(Debug, Clone, clap::Args)]
pub struct Order {
    /// Seed everything follows from.
    #[arg(long, default_value_t = 1)]
    pub seed: u64,
    /// Buttons on the board, 2 to 60.
    #[arg(long, default_value_t = 12, value_parser = clap::value_parser!(u16).range(2..=60))]
    pub words: u16,
    /// Signal-to-noise ratio in decibels.
    #[arg(long, default_value_t = 10.0, allow_negative_numbers = true)]
    pub snr: f64,
    /// Minutes at each speed.
    #[arg(long, default_value_t = 2.0)]
    pub minutes: f64,
    /// Speeds of all buttons, against their clips.
    #[arg(long, value_delimiter = ',', default_values_t = [0.88, 0.90, 0.92, 0.94, 0.96, 0.98, 1.0, 1.02, 1.04, 1.06, 1.08, 1.10])]
    pub at: Vec<f64>,
}

fn clips(buttons: &[Button], range: Range, own: f64) -> Result<Arc<Enrolled>, LabError> {
    let clips: Result<Vec<Clip>, _> = buttons.iter().map(|b| range.clip(b, own)).collect();
    Ok(Arc::new(Enrolled::new(&clips.map_err(told)?, Pace::File).map_err(told)?))
}

/// Hears made homes of either kind whose buttons all play at one speed; answers the table. Narrow is around that speed.
///
/// # Errors
/// [`LabError`] where the minutes or speeds are none.
pub fn speeds(order: &Order) -> Result<String, LabError> {
    if !(0.25..=600.0).contains(&order.minutes) || order.at.iter().any(|v| !(0.5..=2.0).contains(v)) {
        return Err(told("--minutes is from 0.25 to 600, --at from 0.5 to 2"));
    }
    let homes = [Home::Flat, Home::House];
    let boards = homes.map(|home| board(order.seed, home, order.words));
    let one = |i: usize| -> Result<Vec<Tally>, LabError> {
        let speed = order.at[i];
        let mut tallies = vec![Tally::default(); Range::value_variants().len()];
        for (home, buttons) in homes.into_iter().zip(&boards) {
            let c = Chance::new(order.seed, 30_000);
            let scene = busy(home, false, order.snr, 60.0 * order.minutes, buttons, Some(speed), c);
            let sound = SoundFile {
                sound: String::new(),
                file: String::new(),
                snr_db: Some(order.snr),
                seconds: 60.0 * order.minutes,
                tired: None,
                presses: scene.presses,
                live: scene.live,
            };
            for (tally, range) in tallies.iter_mut().zip(Range::value_variants()) {
                tally.add(&sound, &hear_made(&scene.samples, &clips(buttons, *range, speed)?)?);
            }
        }
        Ok(tallies)
    };
    let rows = side_by_side(order.at.len(), |i, _| one(i)).into_iter().zip(&order.at).map(|(tallies, speed)| {
        let tallies = tallies?;
        let heard = |t: &Tally| format!("{} of {}, {} wrong", t.right, t.presses, t.wrong);
        Ok(std::iter::once(format!("{speed:.2}")).chain(tallies.iter().map(heard)).collect())
    });
    let rows: Vec<Vec<String>> = rows.collect::<Result<_, LabError>>()?;
    Ok(table(&["speed", "heard wide", "heard usual", "heard narrow"], &rows))
}
