//! What lies between a voice and the file: a button's recorder and loudspeaker, a microphone and its coding.

use super::room::Home;
use super::signal::{Biquad, RATE, at_speed, peak};
use sayso_sim::Chance;

/// How samples are kept.
#[derive(Debug, Clone, Copy, PartialEq)]
enum Coding {
    /// Steps of this many to the full scale.
    Steps(f64),
    /// Logarithmic steps of 8 bits (ITU-T G.711, mu-law).
    MuLaw,
    /// Four bits of difference a sample (IMA's scheme).
    Adpcm,
}

impl Coding {
    fn over(self, x: &mut [f32]) {
        match self {
            Self::Steps(n) => x.iter_mut().for_each(|v| *v = ((f64::from(*v) * n).round() / n) as f32),
            Self::MuLaw => x.iter_mut().for_each(|v| *v = mu_law(*v)),
            Self::Adpcm => adpcm(x),
        }
    }
}

fn mu_law(v: f32) -> f32 {
    let (x, mu) = (f64::from(v.clamp(-1.0, 1.0)), 255.0f64);
    let y = ((1.0 + mu * x.abs()).ln() / (1.0 + mu).ln() * 127.0).round() / 127.0;
    (x.signum() * ((1.0 + mu).powf(y) - 1.0) / mu) as f32
}

/// Adaptive differences of four bits; the step grows by 1.1 a place, as in IMA's table.
fn adpcm(x: &mut [f32]) {
    const MOVES: [i32; 8] = [-1, -1, -1, -1, 2, 4, 6, 8];
    let (mut guess, mut place) = (0.0f64, 0i32);
    for v in x {
        let step = (7.0 * 1.1f64.powi(place)).min(32_767.0) / 32_768.0;
        let difference = f64::from(*v) - guess;
        let size = ((difference.abs() / step * 4.0) as usize).min(7);
        guess += difference.signum() * step * (size as f64 + 0.5) / 4.0;
        guess = guess.clamp(-1.0, 1.0);
        place = (place + MOVES[size]).clamp(0, 88);
        *v = guess as f32;
    }
}

/// A button's recorder: what it keeps of a voice.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Recorder {
    band: (f64, f64),
    coding: Coding,
    hiss: f64,
    drive: (f64, f64),
}

impl Recorder {
    pub(crate) fn draw(home: Home, c: &mut Chance) -> Self {
        match home {
            Home::Flat => Self {
                band: (c.between(180.0, 320.0), c.between(3400.0, 5000.0)),
                coding: Coding::Steps(c.between(120.0, 400.0)),
                hiss: c.between(0.002, 0.006),
                drive: (0.8, 1.4),
            },
            Home::House => Self {
                band: (c.between(250.0, 420.0), c.between(3000.0, 6500.0)),
                coding: if c.coin(0.5) { Coding::MuLaw } else { Coding::Adpcm },
                hiss: c.between(0.001, 0.005),
                drive: (0.7, 1.2),
            },
        }
    }

    /// Records a saying, with some quiet before and after it.
    pub(crate) fn record(&self, voice: &[f32], c: &mut Chance) -> Vec<f32> {
        let (before, after) = (c.between(0.03, 0.16), c.between(0.05, 0.25));
        let mut x = vec![0.0f32; (before * RATE as f64) as usize];
        x.extend_from_slice(voice);
        x.resize(x.len() + (after * RATE as f64) as usize, 0.0);
        Biquad::highpass(self.band.0).over(&mut x);
        Biquad::lowpass(self.band.1).over(&mut x);
        Biquad::lowpass(self.band.1).over(&mut x);
        let gain = c.between(self.drive.0, self.drive.1) as f32 / peak(&x);
        x.iter_mut().for_each(|v| *v = (gain * *v + (self.hiss * c.normal()) as f32).clamp(-1.0, 1.0) * 0.9);
        self.coding.over(&mut x);
        x
    }
}

/// A button's small loudspeaker.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Loudspeaker {
    filters: [Biquad; 4],
    drive: f64,
}

impl Loudspeaker {
    pub(crate) fn draw(home: Home, c: &mut Chance) -> Self {
        let (low, first, second) = match home {
            Home::Flat => (c.between(300.0, 450.0), c.between(800.0, 1300.0), c.between(2400.0, 3600.0)),
            Home::House => (c.between(380.0, 600.0), c.between(600.0, 1000.0), c.between(1700.0, 2600.0)),
        };
        let filters = [
            Biquad::highpass(low),
            Biquad::peak(first, c.between(1.5, 4.0), c.between(3.0, 9.0)),
            Biquad::peak(second, c.between(1.0, 3.0), c.between(-6.0, 6.0)),
            Biquad::lowpass(c.between(4500.0, 7000.0)),
        ];
        Self { filters, drive: c.between(0.2, 0.9) }
    }

    /// Plays a clip at a speed, from its first sample on.
    pub(crate) fn play(&self, clip: &[f32], speed: f64) -> Vec<f32> {
        let mut x = at_speed(clip, speed);
        // A small cone bends the wave when driven.
        x.iter_mut().for_each(|v| *v = ((self.drive * f64::from(*v)).tanh() / self.drive) as f32);
        self.filters.iter().for_each(|f| f.over(&mut x));
        x
    }
}

/// The microphone that listens, and how its sound is kept.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Microphone {
    filters: [Biquad; 3],
    coding: Coding,
    levels: bool,
    hiss: f64,
}

impl Microphone {
    pub(crate) fn draw(home: Home, c: &mut Chance) -> Self {
        let filters = [
            Biquad::highpass(c.between(50.0, 150.0)),
            Biquad::peak(c.between(2000.0, 5000.0), 1.0, c.between(-4.0, 5.0)),
            Biquad::lowpass(c.between(5500.0, 7600.0)),
        ];
        let coded = home == Home::House && c.coin(0.3);
        let coding = if coded { Coding::MuLaw } else { Coding::Steps(32_000.0) };
        Self { filters, coding, levels: home == Home::House && c.coin(0.3), hiss: c.between(1e-4, 6e-4) }
    }

    /// Takes in a whole scene, its peak at 0.8.
    pub(crate) fn take(&self, mut x: Vec<f32>, c: &mut Chance) -> Vec<f32> {
        self.filters.iter().for_each(|f| f.over(&mut x));
        if self.levels {
            // A slow automatic level: half a second up, a twentieth down.
            let mut level = 0.1f64;
            for v in &mut x {
                let now = f64::from(v.abs());
                level += (now - level) / (RATE as f64 * if now > level { 0.05 } else { 0.5 });
                *v = (f64::from(*v) / level.max(0.005).powf(0.4)) as f32;
            }
        }
        let gain = 0.8 / peak(&x);
        x.iter_mut().for_each(|v| *v = *v * gain + (self.hiss * c.normal()) as f32);
        self.coding.over(&mut x);
        x
    }
}

#[cfg(test)]
mod tests {
    use super::super::signal::rms;
    use super::*;

    #[test]
    fn codings_keep_the_sound_and_lose_a_little() {
        let tone: Vec<f32> = (0..RATE).map(|i| 0.5 * (i as f32 * 0.2).sin()).collect();
        for coding in [Coding::Steps(120.0), Coding::MuLaw, Coding::Adpcm] {
            let mut coded = tone.clone();
            coding.over(&mut coded);
            let lost: Vec<f32> = tone.iter().zip(&coded).map(|(a, b)| a - b).collect();
            let db = 20.0 * (rms(&tone) / rms(&lost)).log10();
            assert!((15.0..50.0).contains(&db), "{coding:?}: {db:.1} dB");
        }
    }
}
