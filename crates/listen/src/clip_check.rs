//! Checks of clips at the moment they are enrolled.

use crate::io::clip::Clip;
use crate::median::median;
use crate::search::likeness::{Fingerprint, TOO_ALIKE};
use ebur128::{EbuR128, Mode};
use serde::{Deserialize, Serialize};

/// Longest and shortest clip that is advised, in seconds (common practice, no source).
pub const ADVISED_S: std::ops::RangeInclusive<f64> = 0.3..=3.0;
/// Share of samples in flat tops above which a clip is called clipped.
const CLIPPED_SHARE: f64 = 0.01;
/// Loudness units from the other clips' median above which a clip stands out (EBU R 128 s1 allows less between
/// programmes; twice that is plainly heard).
pub const LOUDNESS_APART: f64 = 6.0;
/// Decibels between loud and quiet parts below which background noise is called too high.
const LEAST_CONTRAST_DB: f64 = 20.0;
/// Something a person should know about a clip.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[non_exhaustive]
pub enum Finding {
    /// Longer than is advised.
    TooLong,
    /// Shorter than is advised; hard to tell from other sounds.
    TooShort,
    /// Flat tops: recorded too loud or too near.
    Clipped,
    /// Quieter than the other clips.
    Quieter,
    /// Louder than the other clips; a sudden loud sound can frighten, so record it again more softly.
    Louder,
    /// Little between its loud and its quiet parts: noise in the background, or no pause at its ends.
    Noisy,
    /// Nearly the same sound as another clip, named.
    TooLike(String),
}

/// What was found about one clip.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct ClipReport {
    /// What the button says.
    pub word: String,
    /// Length.
    pub seconds: f64,
    /// Loudness (ITU-R BS.1770), LUFS; none for a clip too quiet to measure.
    pub loudness_lufs: Option<f64>,
    /// Loudness against the median of the other clips, loudness units; none with fewer than two clips measured.
    pub against_others: Option<f64>,
    /// Highest sample, dB under full scale.
    pub peak_db: f64,
    /// Share of samples in flat tops.
    pub clipped_share: f64,
    /// Level of its loud parts over its quiet ones, dB.
    pub contrast_db: f64,
    /// The clip most like it and how alike they are, from 0 to 1 (correlation of whitened spectrograms over the
    /// speeds buttons play at).
    pub most_like: Option<(String, f64)>,
    /// Findings, none if all is well.
    pub findings: Vec<Finding>,
}

/// Checks clips against good practice and against each other.
pub fn check_clips(clips: &[Clip]) -> Vec<ClipReport> {
    let loudness: Vec<Option<f64>> = clips.iter().map(loudness).collect();
    let like = likeness(clips);
    clips.iter().enumerate().map(|(i, clip)| report(clip, i, clips, &loudness, &like)).collect()
}

fn report(clip: &Clip, i: usize, clips: &[Clip], loudness: &[Option<f64>], like: &[Vec<f64>]) -> ClipReport {
    let others: Vec<f64> = loudness.iter().enumerate().filter(|(j, _)| *j != i).filter_map(|(_, l)| *l).collect();
    let against_others = loudness[i].filter(|_| !others.is_empty()).map(|l| l - median(others));
    let most_like = (0..clips.len())
        .filter(|j| *j != i)
        .max_by(|a, b| like[i][*a].total_cmp(&like[i][*b]))
        .map(|j| (clips[j].word().to_owned(), like[i][j]));
    let peak = clip.samples().iter().fold(0.0f32, |m, v| m.max(v.abs()));
    let (clipped_share, contrast_db) = (flat_tops(clip.samples(), peak), contrast(clip));
    let mut findings = Vec::new();
    if clip.seconds() > *ADVISED_S.end() {
        findings.push(Finding::TooLong);
    }
    if clip.seconds() < *ADVISED_S.start() {
        findings.push(Finding::TooShort);
    }
    if clipped_share > CLIPPED_SHARE {
        findings.push(Finding::Clipped);
    }
    match against_others {
        Some(d) if d < -LOUDNESS_APART => findings.push(Finding::Quieter),
        Some(d) if d > LOUDNESS_APART => findings.push(Finding::Louder),
        _ => {}
    }
    if contrast_db < LEAST_CONTRAST_DB {
        findings.push(Finding::Noisy);
    }
    for (j, other) in clips.iter().enumerate() {
        if j != i && like[i][j] > TOO_ALIKE {
            findings.push(Finding::TooLike(other.word().to_owned()));
        }
    }
    ClipReport {
        word: clip.word().to_owned(),
        seconds: clip.seconds(),
        loudness_lufs: loudness[i],
        against_others,
        peak_db: 20.0 * f64::from(peak.max(1e-9)).log10(),
        clipped_share,
        contrast_db,
        most_like,
        findings,
    }
}

/// Integrated loudness of the clip played over and over for at least three seconds, since the standard's gate works on
/// blocks of 0.4 s and many clips are hardly longer.
fn loudness(clip: &Clip) -> Option<f64> {
    let mut meter = EbuR128::new(1, clip.rate(), Mode::I).ok()?;
    for _ in 0..(3.0 / clip.seconds().max(0.01)).ceil().min(300.0) as usize {
        meter.add_frames_f32(clip.samples()).ok()?;
    }
    meter.loudness_global().ok().filter(|l| l.is_finite())
}

/// Share of samples in runs of three or more within 1 % of the highest.
fn flat_tops(x: &[f32], peak: f32) -> f64 {
    let (mut run, mut flat) = (0usize, 0usize);
    for v in x.iter().chain(std::iter::once(&0.0)) {
        if v.abs() >= 0.99 * peak && peak > 0.0 {
            run += 1;
        } else {
            flat += if run >= 3 { run } else { 0 };
            run = 0;
        }
    }
    flat as f64 / x.len().max(1) as f64
}

/// Decibels between the 90th and the 5th percentile of the level in 20 ms.
fn contrast(clip: &Clip) -> f64 {
    let step = (clip.rate() as usize / 50).max(1);
    let mut levels: Vec<f64> = clip
        .samples()
        .chunks(step)
        .filter(|c| c.len() == step)
        .map(|c| 10.0 * (c.iter().map(|v| f64::from(v * v)).sum::<f64>() / step as f64).max(1e-10).log10())
        .collect();
    if levels.is_empty() {
        return 0.0;
    }
    levels.sort_by(f64::total_cmp);
    levels[levels.len() * 9 / 10] - levels[levels.len() / 20]
}

/// How alike each pair of clips is.
fn likeness(clips: &[Clip]) -> Vec<Vec<f64>> {
    let prints: Vec<Fingerprint> = clips.iter().map(|c| Fingerprint::of(&c.at_engine_rate())).collect();
    let n = clips.len();
    let mut like = vec![vec![0.0; n]; n];
    for i in 0..n {
        for j in 0..i {
            let v = prints[i].likeness(&prints[j]);
            like[i][j] = v;
            like[j][i] = v;
        }
    }
    like
}
