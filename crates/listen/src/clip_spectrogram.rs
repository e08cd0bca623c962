//! Data for a picture of a clip: its waveform's outline and its spectrogram.

use crate::dsp::stft::Stft;
use crate::io::clip::Clip;

/// A clip's outline and spectrogram.
#[derive(Debug, Clone, PartialEq, serde::Serialize, serde::Deserialize)]
pub struct Picture {
    /// Length in seconds.
    pub seconds: f64,
    /// Lowest and highest sample per column.
    pub outline: Vec<(f32, f32)>,
    /// Level per column and band, dB under the loudest cell, at most 80; bands ascend from 0 Hz.
    pub levels: Vec<Vec<f32>>,
    /// Top of the highest band, Hz.
    pub top_hz: f64,
}

/// A picture of `columns` columns and `bands` frequency bands (each at least 1).
pub fn picture(clip: &Clip, columns: usize, bands: usize) -> Picture {
    let (columns, bands) = (columns.max(1), bands.clamp(1, 256));
    let x = clip.samples();
    let outline = (0..columns)
        .map(|c| {
            let (a, b) = (c * x.len() / columns, ((c + 1) * x.len() / columns).max(c * x.len() / columns + 1));
            let part = &x[a.min(x.len() - 1)..b.min(x.len()).max(a.min(x.len() - 1) + 1)];
            (part.iter().copied().fold(f32::MAX, f32::min), part.iter().copied().fold(f32::MIN, f32::max))
        })
        .collect();
    const WINDOW: usize = 512;
    let mut spectra = Stft::new(WINDOW, 0, WINDOW / 2);
    let mut powers = vec![vec![0.0f32; bands]; columns];
    let (mut re, mut im) = (vec![0.0f32; WINDOW / 2], vec![0.0f32; WINDOW / 2]);
    for (c, column) in powers.iter_mut().enumerate() {
        let centre = (2 * c + 1) * x.len() / (2 * columns);
        let frame: Vec<f32> = (0..WINDOW)
            .map(|i| (centre + i).checked_sub(WINDOW / 2).and_then(|j| x.get(j)).copied().unwrap_or(0.0))
            .collect();
        spectra.frame(&frame, &mut re, &mut im);
        for (k, (a, b)) in re.iter().zip(&im).enumerate() {
            column[k * bands / (WINDOW / 2)] += a * a + b * b;
        }
    }
    let loudest = powers.iter().flatten().copied().fold(1e-12, f32::max);
    let levels = powers
        .into_iter()
        .map(|column| column.into_iter().map(|p| (10.0 * (p / loudest).max(1e-8).log10()).max(-80.0)).collect())
        .collect();
    Picture { seconds: clip.seconds(), outline, levels, top_hz: f64::from(clip.rate()) / 2.0 }
}
