//! A television that is on: people, music, and both at once, nearly all the while.

use super::chain::Loudspeaker;
use super::noise::{music, talk};
use super::room::Home;
use super::signal::{RATE, add, rms};
use sayso_sim::Chance;

/// What it plays for so many samples, its own loudspeaker over all.
pub(crate) fn programme(n: usize, c: &mut Chance) -> Vec<f32> {
    let mut x = vec![0.0f32; n];
    let mut lay = |c: &mut Chance, kind: fn(&mut Chance) -> Vec<f32>, loud: (f64, f64), pause_s: f64| {
        let mut at = 0;
        while at < x.len() {
            let part = kind(c);
            add(&mut x, &part, at, c.between(loud.0, loud.1) / rms(&part));
            at += part.len() + (c.exponential(pause_s) * RATE as f64) as usize;
        }
    };
    lay(c, talk, (0.5, 1.0), 0.8);
    lay(c, music, (0.1, 0.8), 8.0);
    Loudspeaker::draw(Home::Flat, c).play(&x, 1.0)
}
