//! What sounds in a home when no button does.

use super::room::Home;
use super::signal::{Biquad, RATE, add, level, rms};
use super::voice::{Voice, Word, say};
use sayso_sim::Chance;
use std::f64::consts::PI;

fn seconds(s: f64) -> usize {
    (s * RATE as f64) as usize
}

fn white(n: usize, c: &mut Chance) -> Vec<f32> {
    (0..n).map(|_| c.normal() as f32).collect()
}

/// Noise whose power falls with frequency: three leaky sums.
fn pink(n: usize, c: &mut Chance) -> Vec<f32> {
    let mut sums = [0.0f64; 3];
    let leaks = [0.9985, 0.97, 0.7];
    let mut x: Vec<f32> = (0..n)
        .map(|_| {
            for (s, leak) in sums.iter_mut().zip(leaks) {
                *s = leak * *s + (1.0 - leak) * c.normal() / (1.0f64 - leak).sqrt();
            }
            sums.iter().sum::<f64>() as f32
        })
        .collect();
    level(&mut x, 1.0);
    x
}

/// Somebody talking: a few words after one another.
pub(crate) fn talk(c: &mut Chance) -> Vec<f32> {
    let voice = Voice::draw(c);
    let mut x = Vec::new();
    for _ in 0..3 + c.below(8) {
        x.extend(say(&Word::draw(c), &voice, c));
        x.resize(x.len() + seconds(c.between(0.0, 0.12)), 0.0);
    }
    x
}

/// Something struck: a few resonances that ring out.
fn dish(c: &mut Chance) -> Vec<f32> {
    let n = seconds(c.between(0.08, 0.5));
    let modes: Vec<(f64, f64, f64)> =
        (0..4).map(|_| (c.between(500.0, 6500.0), c.between(0.01, 0.12), c.normal())).collect();
    (0..n)
        .map(|i| {
            let t = i as f64 / RATE as f64;
            let ring = |(hz, fade, a): &(f64, f64, f64)| a * (2.0 * PI * hz * t).sin() * (-t / fade).exp();
            modes.iter().map(ring).sum::<f64>() as f32
        })
        .collect()
}

/// A bark: a rough harmonic sound whose pitch rises and falls, one to four times.
fn bark(c: &mut Chance) -> Vec<f32> {
    let (pitch, gap) = (c.between(280.0, 850.0), c.between(0.15, 0.5));
    let mut x = Vec::new();
    for _ in 0..1 + c.below(4) {
        let n = seconds(c.between(0.1, 0.25));
        let (mut phase, bend) = (0.0f64, c.between(0.1, 0.4));
        x.extend((0..n).map(|i| {
            let u = i as f64 / n as f64;
            phase += pitch * (1.0 + bend * (PI * u).sin()) * (1.0 + 0.02 * c.normal()) / RATE as f64;
            let tone: f64 = (1..9).map(|k| (2.0 * PI * phase * f64::from(k)).sin() / f64::from(k).powf(0.7)).sum();
            ((tone + 0.5 * c.normal()) * (PI * u).sin().powf(0.6)) as f32
        }));
        x.resize(x.len() + seconds(gap * c.between(0.7, 1.3)), 0.0);
    }
    x
}

/// Music: chords of plucked or held notes on a scale.
pub(crate) fn music(c: &mut Chance) -> Vec<f32> {
    let (beat, held) = (c.between(0.25, 0.7), c.coin(0.4));
    let (root, beats) = (110.0 * 2f64.powf(c.unit()), 6 + c.below(10));
    let mut x = vec![0.0f32; seconds(beat * (beats as f64 + 3.0))];
    for b in 0..beats {
        for _ in 0..1 + c.below(3) {
            let step = [0, 2, 4, 5, 7, 9, 11, 12, 14, 16][c.below(10)];
            let (hz, n) = (root * 2f64.powf(f64::from(step) / 12.0), seconds(beat * c.between(0.8, 2.5)));
            let (shake, parts) = (if held { 0.004 } else { 0.0 }, 3 + c.below(5));
            let note: Vec<f32> = (0..n)
                .map(|i| {
                    let t = i as f64 / RATE as f64;
                    let swing = 1.0 + shake * (2.0 * PI * 5.5 * t).sin();
                    let shape = if held { (PI * i as f64 / n as f64).sin() } else { (-3.0 * t / beat).exp() };
                    let tone = |k: usize| (2.0 * PI * hz * swing * k as f64 * t).sin() / (k as f64).powf(1.3);
                    (shape * (1..=parts).map(tone).sum::<f64>()) as f32
                })
                .collect();
            add(&mut x, &note, seconds(beat * b as f64), 1.0);
        }
    }
    x
}

/// A bird: quick whistles that slide.
fn bird(c: &mut Chance) -> Vec<f32> {
    let mut x = Vec::new();
    for _ in 0..3 + c.below(6) {
        let (from, to, n) = (c.between(2200.0, 5500.0), c.between(2200.0, 5500.0), seconds(c.between(0.04, 0.16)));
        let mut phase = 0.0f64;
        x.extend((0..n).map(|i| {
            let u = i as f64 / n as f64;
            phase += (from + (to - from) * u) / RATE as f64;
            ((2.0 * PI * phase).sin() * (PI * u).sin()) as f32
        }));
        x.resize(x.len() + seconds(c.between(0.02, 0.12)), 0.0);
    }
    x
}

/// A machine that turns: noise in a band that swells with each turn, over a hum with overtones.
fn machine(n: usize, hz: f64, turns: f64, c: &mut Chance) -> Vec<f32> {
    let mut x = white(n, c);
    Biquad::band(c.between(300.0, 1400.0), 0.7).over(&mut x);
    level(&mut x, 1.0);
    let overtones: Vec<f64> = (1..6).map(|k| c.between(0.1, 0.7) / f64::from(k)).collect();
    for (i, v) in x.iter_mut().enumerate() {
        let t = i as f64 / RATE as f64;
        let swell = 1.0 + 0.6 * (2.0 * PI * turns * t).sin();
        let tone = |(k, a): (usize, &f64)| a * (2.0 * PI * hz * (k + 1) as f64 * t).sin();
        *v = (f64::from(*v) * swell + overtones.iter().enumerate().map(tone).sum::<f64>()) as f32;
    }
    x
}

/// Rain: very many small drops.
fn rain(n: usize, c: &mut Chance) -> Vec<f32> {
    let mut x: Vec<f32> = white(n, c).iter().map(|v| v * 0.3).collect();
    let mut at = 0.0;
    while (at as usize) < n {
        let (hz, size) = (c.between(1500.0, 6000.0), c.lognormal(1.0, 0.7));
        for (i, v) in x.iter_mut().skip(at as usize).take(120).enumerate() {
            let t = i as f64 / RATE as f64;
            *v += (size * (2.0 * PI * hz * t).sin() * (-t / 0.0015).exp()) as f32;
        }
        at += c.exponential(RATE as f64 / 120.0);
    }
    Biquad::highpass(400.0).over(&mut x);
    x
}

/// The sound of a home for so many samples, about unit power on the whole; nobody says a button's word in it.
pub(crate) fn bed(home: Home, n: usize, c: &mut Chance) -> Vec<f32> {
    let mut x = pink(n, c);
    let gain = c.between(0.5, 1.0) as f32;
    x.iter_mut().for_each(|v| *v *= gain);
    let steady = |x: &mut [f32], mut part: Vec<f32>, to: f64| {
        level(&mut part, to);
        add(x, &part, 0, 1.0);
    };
    match home {
        Home::Flat => {
            let hum = machine(n, 50.0, 0.05, c);
            steady(&mut x, hum, c.between(0.05, 0.3));
        }
        Home::House => {
            if c.coin(0.5) {
                let drops = rain(n, c);
                steady(&mut x, drops, c.between(0.1, 0.6));
            }
            let (hz, turns) = (c.between(80.0, 200.0), c.between(0.8, 12.0));
            let drum = machine(n, hz, turns, c);
            steady(&mut x, drum, c.between(0.1, 0.7));
        }
    }
    type Kind = (fn(&mut Chance) -> Vec<f32>, f64, (f64, f64));
    let kinds: &[Kind] = match home {
        Home::Flat => {
            &[(talk, 5.0, (0.2, 0.9)), (dish, 3.0, (0.5, 3.0)), (bark, 25.0, (0.6, 2.5)), (music, 40.0, (0.1, 0.5))]
        }
        Home::House => &[
            (talk, 7.0, (0.2, 1.1)),
            (dish, 9.0, (0.4, 2.0)),
            (bark, 9.0, (0.6, 3.0)),
            (music, 14.0, (0.15, 0.7)),
            (bird, 12.0, (0.1, 0.6)),
        ],
    };
    for (kind, every_s, (low, high)) in kinds {
        let mut at = c.exponential(*every_s);
        while seconds(at) < n {
            let sound = kind(c);
            let gain = c.between(*low, *high) / rms(&sound);
            add(&mut x, &sound, seconds(at), gain);
            at += c.exponential(*every_s);
        }
    }
    level(&mut x, 1.0);
    x
}
