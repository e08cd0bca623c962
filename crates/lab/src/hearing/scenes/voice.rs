//! Speech by rule: a glottal source with uneven pulses through a cascade of moving formants, and noise for what has no
//! voice (the source-filter model; Klatt 1980, J Acoust Soc Am 67:971, in outline). Not words of any language: strings
//! of sounds, of which each seed makes its own.

use super::signal::{Biquad, RATE, peak};
use sayso_sim::Chance;
use std::f64::consts::PI;

/// First three formants of vowels, Hz (after Peterson and Barney 1952, men; from memory).
const VOWELS: [[f64; 3]; 9] = [
    [270.0, 2290.0, 3010.0],
    [390.0, 1990.0, 2550.0],
    [530.0, 1840.0, 2480.0],
    [660.0, 1720.0, 2410.0],
    [730.0, 1090.0, 2440.0],
    [570.0, 840.0, 2410.0],
    [440.0, 1020.0, 2240.0],
    [300.0, 870.0, 2240.0],
    [640.0, 1190.0, 2390.0],
];
/// Middle and narrowness of the noise of fricatives, and how loud it is (our own choice).
const FRICATIVES: [(f64, f64, f64); 4] =
    [(5600.0, 2.0, 0.5), (2900.0, 1.8, 0.6), (1600.0, 0.6, 0.2), (4200.0, 1.0, 0.3)];
/// Middle of the burst of stops (our own choice).
const STOPS: [f64; 3] = [700.0, 1800.0, 3600.0];
/// Second formant of nasals (our own choice).
const NASALS: [f64; 3] = [1000.0, 1400.0, 1900.0];

/// One speech sound.
#[derive(Debug, Clone, Copy, PartialEq)]
enum Phone {
    Vowel(usize, usize),
    Fricative(usize, bool),
    Stop(usize, bool),
    Nasal(usize),
}

/// A word: one to three syllables.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Word(Vec<Phone>);

impl Word {
    pub(crate) fn draw(c: &mut Chance) -> Self {
        let mut phones = Vec::new();
        for _ in 0..1 + c.pick(&[0.35, 0.45, 0.2]).unwrap_or(0) {
            match c.below(5) {
                0 => phones.push(Phone::Fricative(c.below(FRICATIVES.len()), c.coin(0.3))),
                1 | 2 => phones.push(Phone::Stop(c.below(STOPS.len()), c.coin(0.5))),
                3 => phones.push(Phone::Nasal(c.below(NASALS.len()))),
                _ => {}
            }
            let from = c.below(VOWELS.len());
            phones.push(Phone::Vowel(from, if c.coin(0.35) { c.below(VOWELS.len()) } else { from }));
            match c.below(6) {
                0 => phones.push(Phone::Fricative(c.below(FRICATIVES.len()), false)),
                1 => phones.push(Phone::Stop(c.below(STOPS.len()), false)),
                2 => phones.push(Phone::Nasal(c.below(NASALS.len()))),
                _ => {}
            }
        }
        Self(phones)
    }
}

/// Somebody's voice.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Voice {
    pitch_hz: f64,
    /// Formants against an adult man's.
    tract: f64,
    tempo: f64,
    breath: f64,
    /// Unevenness from pulse to pulse, as a share.
    jitter: f64,
    /// Where the source's spectrum begins to fall.
    tilt_hz: f64,
}

impl Voice {
    pub(crate) fn draw(c: &mut Chance) -> Self {
        let high = c.unit();
        Self {
            pitch_hz: 95.0 * 2.6f64.powf(high) * c.between(0.92, 1.08),
            tract: 1.0 + 0.24 * high + c.between(-0.05, 0.05),
            tempo: c.between(0.8, 1.25),
            breath: c.between(0.01, 0.08),
            jitter: c.between(0.006, 0.018),
            tilt_hz: c.between(1200.0, 3000.0),
        }
    }
}

/// One sound as it is said this time.
struct Target {
    samples: usize,
    formants: [[f64; 3]; 2],
    voiced: f64,
    breath: f64,
    noise: Option<(f64, f64, f64)>,
}

fn targets(phone: Phone, voice: &Voice, c: &mut Chance) -> Vec<Target> {
    let mut length = |s: f64| (s * c.between(0.8, 1.25) / voice.tempo * RATE as f64) as usize;
    let open = [500.0, 1500.0, 2500.0];
    let quiet = |samples| Target { samples, formants: [open; 2], voiced: 0.0, breath: 0.0, noise: None };
    match phone {
        Phone::Vowel(a, b) => {
            let samples = length(if a == b { 0.13 } else { 0.18 });
            vec![Target { voiced: 1.0, breath: 1.0, formants: [VOWELS[a], VOWELS[b]], ..quiet(samples) }]
        }
        Phone::Nasal(n) => {
            let samples = length(0.08);
            vec![Target { voiced: 0.4, formants: [[260.0, NASALS[n], 2500.0]; 2], ..quiet(samples) }]
        }
        Phone::Fricative(n, voiced) => {
            let samples = length(0.11);
            vec![Target { voiced: if voiced { 0.25 } else { 0.0 }, noise: Some(FRICATIVES[n]), ..quiet(samples) }]
        }
        Phone::Stop(n, voiced) => {
            let (hold, burst, after) = (length(0.05), length(0.012), length(if voiced { 0.01 } else { 0.035 }));
            vec![
                Target { voiced: if voiced { 0.08 } else { 0.0 }, ..quiet(hold) },
                Target { noise: Some((STOPS[n], 1.2, 0.9)), ..quiet(burst) },
                Target { breath: 6.0, ..quiet(after) },
            ]
        }
    }
}

/// Says a word. Each saying has its own melody, pace and small differences of every sound, as people's have.
pub(crate) fn say(word: &Word, voice: &Voice, c: &mut Chance) -> Vec<f32> {
    let all: Vec<Target> = word.0.iter().flat_map(|p| targets(*p, voice, c)).collect();
    let total: usize = all.iter().map(|t| t.samples).sum();
    let pitch = voice.pitch_hz * c.between(0.86, 1.16);
    let (start, middle, end) = (c.between(-0.06, 0.1), c.between(-0.08, 0.12), c.between(-0.2, 0.05));
    let (at_middle, sway, sway_hz) = (c.between(0.3, 0.7), c.between(0.0, 0.012), c.between(3.0, 6.0));
    let wobble: Vec<[f64; 3]> = all.iter().map(|_| [0.0; 3].map(|_: f64| c.between(0.94, 1.06))).collect();
    let mut mouth = Cascade::new(voice);
    let mut out = Vec::with_capacity(total + RATE / 20);
    let (mut phase, mut turn, mut done) = (1.0, 1.0, 0usize);
    let (mut flow, mut slope) = (0.0f64, Biquad::lowpass(voice.tilt_hz));
    // Levels and formants glide.
    let (mut voiced, mut breath, mut hiss) = (0.0, 0.0, 0.0);
    let mut formants = all.first().map_or([500.0, 1500.0, 2500.0], |t| t.formants[0]);
    let mut colour = Biquad::band(3000.0, 1.0);
    for (target, wobble) in all.iter().zip(&wobble) {
        if let Some((hz, q, _)) = target.noise {
            colour = Biquad::band(hz * voice.tract.sqrt() * wobble[0], q);
        }
        for i in 0..target.samples {
            let (u, whole) = (i as f64 / target.samples as f64, done as f64 / total.max(1) as f64);
            let glide = |from: &mut f64, to: f64, s: f64| *from += (to - *from) / (s * RATE as f64);
            glide(&mut voiced, target.voiced, 0.006);
            glide(&mut breath, target.breath, 0.006);
            glide(&mut hiss, target.noise.map_or(0.0, |n| n.2), 0.003);
            for k in 0..3 {
                let to = target.formants[0][k] + (target.formants[1][k] - target.formants[0][k]) * u;
                glide(&mut formants[k], to * wobble[k], 0.014);
            }
            let bend = if whole < at_middle {
                start + (middle - start) * whole / at_middle
            } else {
                middle + (end - middle) * (whole - at_middle) / (1.0 - at_middle)
            };
            let seconds = done as f64 / RATE as f64;
            let hz = pitch * (1.0 + bend + sway * (2.0 * PI * sway_hz * seconds).sin());
            phase += hz * turn / RATE as f64;
            if phase >= 1.0 {
                phase -= 1.0;
                turn = 1.0 + voice.jitter * c.normal();
            }
            // Rosenberg's pulse (1971): two fifths opening, a sixth closing.
            let now = match phase {
                p if p < 0.4 => 0.5 * (1.0 - (PI * p / 0.4).cos()),
                p if p < 0.56 => (PI * (p - 0.4) / 0.32).cos(),
                _ => 0.0,
            };
            let air = c.normal();
            let source = slope.step(8.0 * (now - flow)) * voiced + voice.breath * breath * air * (0.4 + now);
            flow = now;
            out.push((mouth.step(source, &formants, done) + colour.step(air * hiss)) as f32);
            done += 1;
        }
    }
    // Sounds do not break off.
    for i in 0..RATE / 20 {
        let fade = (-(i as f64) / (0.012 * RATE as f64)).exp();
        out.push((mouth.step(0.0, &formants, done) * fade) as f32);
        done += 1;
    }
    let top = peak(&out);
    out.iter_mut().for_each(|v| *v /= top);
    out
}

/// Four resonances one after the other, their coefficients renewed every two milliseconds.
struct Cascade {
    tract: f64,
    state: [[f64; 2]; 4],
    coefficients: [[f64; 3]; 4],
}

impl Cascade {
    fn new(voice: &Voice) -> Self {
        Self { tract: voice.tract, state: [[0.0; 2]; 4], coefficients: [[1.0, 0.0, 0.0]; 4] }
    }

    fn step(&mut self, x: f64, formants: &[f64; 3], at: usize) -> f64 {
        if at.is_multiple_of(32) {
            let hz = [formants[0], formants[1], formants[2], 3500.0];
            for (k, width) in [70.0, 95.0, 130.0, 220.0].into_iter().enumerate() {
                let r = (-PI * width / RATE as f64).exp();
                let middle = (hz[k] * self.tract).min(7000.0);
                let b = 2.0 * r * (2.0 * PI * middle / RATE as f64).cos();
                self.coefficients[k] = [1.0 - b + r * r, b, -r * r];
            }
        }
        let mut y = x;
        for (s, [a, b, c]) in self.state.iter_mut().zip(&self.coefficients) {
            y = a * y + b * s[0] + c * s[1];
            *s = [y, s[0]];
        }
        y
    }
}
