//! Hours without a press, made block by block: a home's own sounds, people, and in half of them a television.

use super::chain::Loudspeaker;
use super::noise::{music, talk};
use super::room::Home;
use super::scene::{Button, Stage};
use super::signal::{RATE, add, rms};
use crate::hearing::truth::Live;
use sayso_sim::Chance;

/// A block's sound, and the words said in it.
pub(crate) struct Quiet {
    pub(crate) samples: Vec<f32>,
    pub(crate) live: Vec<Live>,
}

/// Seconds between people saying a button's word, in the mean.
const SAID_EVERY_S: f64 = 20.0;

/// A home without a press for so many seconds. Somebody says one of the buttons' words three times a minute; where the
/// television is on, it talks and plays nearly all the while from one place.
pub(crate) fn quiet(home: Home, television: bool, seconds: f64, buttons: &[Button], c: Chance) -> Quiet {
    let mut s = Stage::new(home, seconds, buttons, c);
    if television {
        let programme = programme(seconds, s.chance());
        s.elsewhere(&programme, 0.7);
    }
    s.talked(SAID_EVERY_S);
    let scene = s.end(home, None);
    Quiet { samples: scene.samples, live: scene.live }
}

/// What a television plays: people, music, and both at once, its own loudspeaker over all.
fn programme(seconds: f64, c: &mut Chance) -> Vec<f32> {
    let mut x = vec![0.0f32; (seconds * RATE as f64) as usize];
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
