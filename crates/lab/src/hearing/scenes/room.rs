//! Rooms: impulse responses of shoeboxes, early reflections by the image-source method (Allen and Berkley 1979, J Acoust
//! Soc Am 65:943), then a diffuse tail of noise that fades at its own rate in two bands.

use super::signal::{Biquad, RATE, rms};
use sayso_sim::Chance;

/// Metres a second.
const SOUND_SPEED: f64 = 343.0;
/// Seconds from the direct sound to where the tail takes over.
const EARLY_S: f64 = 0.04;

/// The kinds of home a corpus may be of: rooms and chains are drawn from other ranges, steady noises are others.
#[derive(Debug, Clone, Copy, PartialEq, Eq, serde::Serialize, serde::Deserialize, clap::ValueEnum)]
#[serde(rename_all = "snake_case")]
pub enum Home {
    /// Small furnished rooms; fridge, street, radio, dishes, a bark; plain recorders.
    Flat,
    /// Larger and livelier rooms; rain, fan, washing machine, music, birds, barks and children; coding recorders.
    House,
}

/// A room with a microphone in it.
#[derive(Debug, Clone)]
pub(crate) struct Room {
    size: [f64; 3],
    /// Seconds to fade by 60 dB, low and high.
    fade_s: [f64; 2],
    microphone: [f64; 3],
}

fn away(a: [f64; 3], b: [f64; 3]) -> f64 {
    (0..3).map(|i| (a[i] - b[i]).powi(2)).sum::<f64>().sqrt()
}

impl Room {
    pub(crate) fn draw(home: Home, c: &mut Chance) -> Self {
        let (low, high, fade) = match home {
            Home::Flat => ([2.4, 2.2, 2.3], [4.8, 4.0, 2.6], c.between(0.2, 0.5)),
            Home::House => ([4.0, 3.6, 2.4], [8.5, 6.5, 3.4], c.between(0.4, 0.85)),
        };
        let size: [f64; 3] = std::array::from_fn(|i| c.between(low[i], high[i]));
        let microphone = [c.between(0.4, size[0] - 0.4), c.between(0.4, size[1] - 0.4), c.between(0.4, 1.4)];
        Self { size, fade_s: [fade, fade * c.between(0.5, 0.9)], microphone }
    }

    /// A place of this height, about so far from the microphone if one is given.
    pub(crate) fn place(&self, far: Option<f64>, height: f64, c: &mut Chance) -> [f64; 3] {
        let mut draw = || [c.between(0.3, self.size[0] - 0.3), c.between(0.3, self.size[1] - 0.3), height];
        let places: Vec<[f64; 3]> = (0..60).map(|_| draw()).collect();
        let miss = |p: &[f64; 3]| far.map_or(0.0, |far| (away(*p, self.microphone) - far).abs());
        places.iter().copied().min_by(|a, b| miss(a).total_cmp(&miss(b))).unwrap_or(self.microphone)
    }

    /// From a place to the microphone: the impulse response, and the samples until the direct sound arrives, at which it
    /// stands. Direct sound has unit strength.
    pub(crate) fn response(&self, source: [f64; 3], c: &mut Chance) -> (Vec<f32>, usize) {
        let direct = away(source, self.microphone).max(0.2);
        let delay = direct / SOUND_SPEED * RATE as f64;
        let length = (delay + self.fade_s[0].min(0.7) * RATE as f64) as usize + RATE / 20;
        let mut h = vec![0.0f32; length];
        // Sabine's walls: what each reflection keeps.
        let [x, y, z] = self.size;
        let surface = 2.0 * (x * y + y * z + z * x);
        let absorbs = (0.161 * x * y * z / (surface * self.fade_s[0])).clamp(0.05, 0.9);
        let keeps = (1.0 - absorbs).sqrt();
        let reach = 1 + (EARLY_S * SOUND_SPEED / x.min(y).min(z)).ceil() as i64;
        let image = |n: i64, at: f64, wall: f64| {
            if n.rem_euclid(2) == 0 { n as f64 * wall + at } else { (n + 1) as f64 * wall - at }
        };
        for i in -reach..=reach {
            for j in -reach..=reach {
                for k in -reach..=reach {
                    let p = [image(i, source[0], x), image(j, source[1], y), image(k, source[2], z)];
                    let far = away(p, self.microphone).max(0.2);
                    let t = far / SOUND_SPEED * RATE as f64;
                    if t > delay + EARLY_S * RATE as f64 || t as usize + 2 > length {
                        continue;
                    }
                    // Furniture scatters: reflections differ in strength, and some come turned.
                    let bounces = i.abs() + j.abs() + k.abs();
                    let rough =
                        if bounces == 0 { 1.0 } else { c.between(0.6, 1.1) * if c.coin(0.15) { -1.0 } else { 1.0 } };
                    let gain = rough * keeps.powi(bounces as i32) * direct / far;
                    let (at, part) = (t as usize, t.fract());
                    h[at] += (gain * (1.0 - part)) as f32;
                    h[at + 1] += (gain * part) as f32;
                }
            }
        }
        self.tail(&mut h, delay, direct, absorbs, c);
        (h, delay.round() as usize)
    }

    fn tail(&self, h: &mut [f32], delay: f64, direct: f64, absorbs: f64, c: &mut Chance) {
        let from = (delay + 0.5 * EARLY_S * RATE as f64) as usize;
        let [x, y, z] = self.size;
        // Reverberant against direct energy of a source without direction (room acoustics' critical distance).
        let constant = 2.0 * (x * y + y * z + z * x) * absorbs / (1.0 - absorbs);
        // Of it, what comes after the early reflections.
        let late = (-13.816 * EARLY_S / self.fade_s[0]).exp();
        let energy = late * 16.0 * std::f64::consts::PI * direct * direct / constant;
        let mut parts = [Vec::new(), Vec::new()];
        for (part, fade) in parts.iter_mut().zip(self.fade_s) {
            part.extend((from..h.len()).map(|i| {
                let t = (i as f64 - delay) / RATE as f64;
                let grow = ((i - from) as f64 / (0.5 * EARLY_S * RATE as f64)).min(1.0);
                (c.normal() * grow * (-6.908 * t / fade).exp()) as f32
            }));
        }
        Biquad::lowpass(1500.0).over(&mut parts[0]);
        Biquad::highpass(1500.0).over(&mut parts[1]);
        let mut sum: Vec<f32> = parts[0].iter().zip(&parts[1]).map(|(a, b)| a + b).collect();
        Biquad::lowpass(6500.0).over(&mut sum);
        let have = rms(&sum).powi(2) * sum.len() as f64;
        let gain = (energy / have.max(1e-12)).sqrt() as f32;
        h[from..].iter_mut().zip(&sum).for_each(|(o, v)| *o += gain * v);
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_response_begins_with_the_direct_sound_and_fades() {
        for (home, seed) in [(Home::Flat, 1), (Home::House, 2)] {
            let mut c = Chance::new(seed, 0);
            let room = Room::draw(home, &mut c);
            let place = room.place(Some(1.5), 0.1, &mut c);
            let (h, delay) = room.response(place, &mut c);
            let far = away(place, room.microphone);
            assert!((delay as f64 - far / 343.0 * RATE as f64).abs() <= 1.0);
            assert!(
                h[..delay - 1].iter().all(|v| *v == 0.0) && (h[delay - 1] + h[delay] + h[delay + 1] - 1.0).abs() < 0.6
            );
            let n = h.len();
            assert!(rms(&h[n - n / 8..]) < 0.2 * rms(&h[delay..delay + n / 8]), "{home:?}");
        }
    }
}
