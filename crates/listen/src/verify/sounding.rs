//! How much of a clip tells it from other sounds.
//!
//! A word of half a second may be one loud vowel of a tenth and little else: whatever has that vowel fits it. Its windows count by
//! how evenly they sound: Kish's effective sample size (Kish 1965, Survey Sampling) of their amplitudes in the band looked at.

use crate::dsp::resampler::RATE;
use crate::dsp::stft::Stft;
use crate::verify::coherent_sum::SHARES;
use crate::verify::whitened_stft::{BINS, LOW, WINDOW};

/// Distance of the windows.
const HOP: usize = WINDOW / 2;

/// Seconds of effective sound of an engine-rate clip, at each share of its length that is looked at.
pub(crate) fn sounding_s(clip: &[f32]) -> [f64; SHARES.len()] {
    let mut spectra = Stft::new(WINDOW, LOW, BINS);
    let (mut re, mut im) = ([0.0f32; BINS], [0.0f32; BINS]);
    let amplitudes: Vec<f64> = clip
        .windows(WINDOW)
        .step_by(HOP)
        .map(|window| {
            spectra.frame(window, &mut re, &mut im);
            re.iter().zip(&im).map(|(a, b)| f64::from(a * a + b * b)).sum::<f64>().sqrt()
        })
        .collect();
    SHARES.map(|share| {
        let some = &amplitudes[..((amplitudes.len() as f64 * f64::from(share)).round() as usize).min(amplitudes.len())];
        let (sum, squares) = some.iter().fold((0.0, 0.0), |(sum, squares), a| (sum + a, squares + a * a));
        if squares > 0.0 { sum * sum / squares * HOP as f64 / RATE as f64 } else { 0.0 }
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    fn tone(loud: impl Fn(f64) -> f32) -> Vec<f32> {
        let sample = |i: usize| loud(i as f64 / RATE as f64) * (0.8 * i as f32).sin();
        (0..RATE).map(sample).collect()
    }

    #[test]
    fn an_even_second_counts_whole_and_one_vowel_of_it_alone() {
        let even = sounding_s(&tone(|_| 0.3));
        assert!((0.9..=1.0).contains(&even[SHARES.len() - 1]), "{even:?}");
        assert!(even.windows(2).all(|w| w[0] < w[1]) && (even[0] - 0.46).abs() < 0.05, "{even:?}");
        let vowel = sounding_s(&tone(|t| if (0.4..0.55).contains(&t) { 0.3 } else { 0.003 }));
        assert!((0.1..0.3).contains(&vowel[SHARES.len() - 1]), "{vowel:?}");
        // How loud it is makes no difference, and none of silence counts.
        let louder = sounding_s(&tone(|_| 0.6));
        assert!(louder.iter().zip(&even).all(|(a, b)| (a - b).abs() < 1e-3));
        assert_eq!(sounding_s(&[0.0; 4_000]), [0.0; SHARES.len()]);
    }
}
