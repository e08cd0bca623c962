//! Sounds with known truth, made by rule: words of formants and hiss, a room, noises of a home.
#![allow(dead_code)]

use sayso_listen::Clip;

pub const RATE: usize = 16_000;

/// A small repeatable source of chance (xorshift).
pub struct Chance(u64);

impl Chance {
    pub fn new(seed: u64) -> Self {
        Self(seed.wrapping_mul(0x9E37_79B9_7F4A_7C15) | 1)
    }

    /// Uniform in -1 to 1.
    pub fn pm(&mut self) -> f32 {
        self.0 ^= self.0 << 13;
        self.0 ^= self.0 >> 7;
        self.0 ^= self.0 << 17;
        (self.0 >> 40) as f32 / (1u64 << 23) as f32 - 1.0
    }

    pub fn between(&mut self, a: f32, b: f32) -> f32 {
        a + (b - a) * 0.5 * (self.pm() + 1.0)
    }
}

/// A word-like sound: three to five sounds, each a buzz through two moving formants or a hiss. `take` 0 is the
/// recording; others vary pitch, melody, pace and formants as a person does who says it again, and their pulses come
/// unevenly, as those of every throat do (about 1 % from one to the next; from memory, no source).
pub fn say(word: u64, take: u64) -> Vec<f32> {
    voice(word, take, 0.01)
}

/// The same as [`say`], with pulses and melody as even as a machine's: not a person, but a toy or a screen might be so.
pub fn machine(word: u64, take: u64) -> Vec<f32> {
    voice(word, take, 0.0)
}

fn voice(word: u64, take: u64, uneven: f32) -> Vec<f32> {
    let (mut shape, mut voice) = (Chance::new(word + 1), Chance::new(1000 * take + word + 7));
    let vary = |v: &mut Chance, x: f32, by: f32| if take == 0 { x } else { x * (1.0 + by * v.pm()) };
    let mut out = Vec::new();
    let pitch = vary(&mut voice, shape.between(110.0, 220.0), 0.15);
    let (mut phase, mut low, mut high) = (0.0f32, [0.0f32; 2], [0.0f32; 2]);
    for part in 0..(3.0 + shape.between(0.0, 2.9)) as usize {
        let seconds = vary(&mut voice, shape.between(0.09, 0.2), 0.2);
        let (f1, f2) = (shape.between(300.0, 850.0), shape.between(1000.0, 2700.0));
        let (g1, g2) = (shape.between(300.0, 850.0), shape.between(1000.0, 2700.0));
        let (f1, f2) = (vary(&mut voice, f1, 0.1), vary(&mut voice, f2, 0.1));
        let (g1, g2) = (vary(&mut voice, g1, 0.1), vary(&mut voice, g2, 0.1));
        let (melody, mut turn) = (if uneven > 0.0 { vary(&mut voice, 1.0, 0.04) } else { 1.0 }, 1.0);
        let hiss = part % 2 == 0 && shape.pm() > 0.0;
        let n = (seconds * RATE as f32) as usize;
        for i in 0..n {
            let u = i as f32 / n as f32;
            phase += turn * melody * pitch * (1.0 + 0.15 * (u - 0.5) + 0.1 * part as f32) / RATE as f32;
            let source = if hiss {
                voice.pm() * 0.6
            } else if phase >= 1.0 {
                phase -= 1.0;
                turn = if uneven > 0.0 { vary(&mut voice, 1.0, uneven) } else { 1.0 };
                8.0
            } else {
                0.02 * voice.pm()
            };
            let first = resonate(&mut low, source, f1 + (g1 - f1) * u, 90.0);
            let second = resonate(&mut high, source, f2 + (g2 - f2) * u, 140.0);
            out.push((first + 0.7 * second) * (std::f32::consts::PI * u).sin().sqrt());
        }
    }
    let peak = out.iter().fold(0.0f32, |m, v| m.max(v.abs()));
    let mut padded = vec![0.0; RATE / 20];
    padded.extend(out.iter().map(|v| 0.6 * v / peak));
    padded.extend(vec![0.0; RATE / 12]);
    padded
}

fn resonate(state: &mut [f32; 2], x: f32, hz: f32, width: f32) -> f32 {
    let r = (-std::f32::consts::PI * width / RATE as f32).exp();
    let y =
        (1.0 - r) * x + 2.0 * r * (2.0 * std::f32::consts::PI * hz / RATE as f32).cos() * state[0] - r * r * state[1];
    state[1] = state[0];
    state[0] = y;
    y
}

pub fn clips(n: u64) -> Vec<Clip> {
    (0..n).map(|w| Clip::from_samples(format!("word {w}"), say(w, 0), RATE as u32).unwrap()).collect()
}

/// Replay at a speed, by cubic interpolation.
pub fn replay(x: &[f32], speed: f64) -> Vec<f32> {
    let at = |i: i64| if i < 0 { 0.0 } else { x.get(i as usize).copied().unwrap_or(0.0) };
    (0..(x.len() as f64 / speed) as usize)
        .map(|n| {
            let t = n as f64 * speed;
            let (i, u) = (t.floor() as i64, (t - t.floor()) as f32);
            let (a, b, c, d) = (at(i - 1), at(i), at(i + 1), at(i + 2));
            b + 0.5 * u * (c - a + u * (2.0 * a - 5.0 * b + 4.0 * c - d + u * (3.0 * (b - c) + d - a)))
        })
        .collect()
}

/// A room of a direct path and a noise-like tail that fades by 60 dB in `rt` seconds.
pub fn room(x: &[f32], rt: f32, seed: u64) -> Vec<f32> {
    let mut chance = Chance::new(seed);
    let taps: Vec<(usize, f32)> = std::iter::once((0, 1.0))
        .chain((0..160).map(|_| {
            let t = chance.between(0.002, rt * 0.7);
            ((t * RATE as f32) as usize, 0.35 * chance.pm() * (-6.9 * t / rt).exp())
        }))
        .collect();
    let mut out = vec![0.0; x.len() + RATE];
    for (delay, gain) in taps {
        for (o, v) in out[delay..].iter_mut().zip(x) {
            *o += gain * v;
        }
    }
    out
}

/// As whole numbers of 16 bits.
pub fn samples_16(x: &[f32]) -> Vec<i16> {
    x.iter().map(|v| (v.clamp(-1.0, 1.0) * 32767.0) as i16).collect()
}

/// A WAV file of one channel, as bytes.
pub fn wav(x: &[f32]) -> Vec<u8> {
    sayso_listen::wav(samples_16(x).into_iter(), RATE as u32)
}

pub fn add(scene: &mut [f32], sound: &[f32], at_s: f64, gain: f32) {
    let at = (at_s * RATE as f64) as usize;
    for (o, v) in scene[at..].iter_mut().zip(sound) {
        *o += gain * v;
    }
}

/// Brown-ish noise with hum.
pub fn bed(seconds: usize, level: f32, seed: u64) -> Vec<f32> {
    let (mut chance, mut slow) = (Chance::new(seed), 0.0f32);
    (0..seconds * RATE)
        .map(|i| {
            slow = 0.95 * slow + 0.3 * chance.pm();
            level * (slow + 0.3 * (2.0 * std::f32::consts::PI * 50.0 * i as f32 / RATE as f32).sin())
        })
        .collect()
}

/// A press of the fixed scene: word, seconds, speed, share played.
pub const PRESSES: [(u64, f64, f64, f64); 10] = [
    (0, 2.0, 1.0, 1.0),
    (1, 5.0, 0.97, 1.0),
    (2, 8.2, 1.03, 1.0),
    (3, 11.0, 0.985, 0.6),
    (3, 11.0, 0.985, 1.0),
    (4, 15.0, 1.01, 1.0),
    (5, 15.35, 0.99, 1.0),
    (0, 19.0, 1.001, 1.0),
    (2, 23.0, 1.029, 1.0),
    (1, 27.0, 0.969, 1.0),
];

/// Half a minute in a room: the presses above, and people saying the same words. Returns true onsets too.
pub fn scene(noise: f32) -> (Vec<f32>, Vec<(u64, f64, f64)>) {
    let mut scene = bed(34, noise, 5);
    let mut truth = Vec::new();
    let mut cut_end = 0.0;
    for (w, t, speed, share) in PRESSES {
        let mut x = replay(&say(w, 0), speed);
        x.truncate((x.len() as f64 * share) as usize);
        let at = if truth.last().is_some_and(|l: &(u64, f64, f64)| l.0 == w && l.1 == t) { cut_end } else { t };
        cut_end = at + x.len() as f64 / RATE as f64;
        add(&mut scene, &room(&x, 0.35, 9), at, 0.3);
        truth.push((w, at, speed));
    }
    for (i, t) in [3.6, 6.6, 13.0, 21.0, 25.0, 29.5].into_iter().enumerate() {
        add(&mut scene, &room(&say(i as u64 % 6, 3 + i as u64), 0.35, 20 + i as u64), t, 0.3);
    }
    (scene, truth)
}
