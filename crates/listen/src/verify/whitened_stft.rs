//! The sound's short-time spectra, each divided by its own smoothed power, kept while they may be asked for.

use crate::dsp::stft::Stft;
use std::collections::VecDeque;

pub(crate) const WINDOW: usize = 512;
/// Grid on which the sound's spectra are kept.
pub(crate) const GRID: usize = 64;
pub(crate) const LOW: usize = 20;
/// Bins used: 312 to 3 562 Hz.
pub(crate) const BINS: usize = 208;
const SMOOTH_BINS: usize = 4;
pub(crate) const SMOOTH_ROWS: u64 = 4;
const WIDE: usize = BINS + 2 * SMOOTH_BINS;

/// One window of sound, whitened.
#[derive(Debug, Clone)]
pub(crate) struct Row {
    pub(crate) re: [f32; BINS],
    pub(crate) im: [f32; BINS],
    /// One over the root of the smoothed power.
    pub(crate) scale: [f32; BINS],
}

#[derive(Debug, Clone)]
struct Raw {
    re: [f32; WIDE],
    im: [f32; WIDE],
    power: [f32; WIDE],
}

/// The sound's whitened spectra, made when first asked for.
pub(crate) struct Sound {
    spectra: Stft,
    raw: VecDeque<Option<Box<Raw>>>,
    rows: VecDeque<Option<Box<Row>>>,
    pub(crate) first: u64,
}

/// Engine-rate samples with their place in the stream.
pub(crate) struct Segment<'a> {
    pub(crate) samples: &'a [f32],
    pub(crate) at: u64,
}

impl Sound {
    pub(crate) fn new(first_sample: u64) -> Self {
        Self {
            spectra: Stft::new(WINDOW, LOW - SMOOTH_BINS, WIDE),
            raw: VecDeque::new(),
            rows: VecDeque::new(),
            first: first_sample / GRID as u64,
        }
    }

    pub(crate) fn forget_before(&mut self, sample: u64) {
        let keep = (sample / GRID as u64).saturating_sub(SMOOTH_ROWS);
        while self.first < keep && (!self.raw.is_empty() || !self.rows.is_empty()) {
            self.raw.pop_front();
            self.rows.pop_front();
            self.first += 1;
        }
        if self.raw.is_empty() && self.rows.is_empty() {
            self.first = self.first.max(keep);
        }
    }

    fn prepare_raw(&mut self, sound: &Segment, index: u64) {
        let at = (index - self.first) as usize;
        if self.raw.len() <= at {
            self.raw.resize_with(at + 1, || None);
        }
        if self.raw[at].is_some() {
            return;
        }
        let mut frame = [0.0f32; WINDOW];
        let start = index as usize * GRID;
        for (i, v) in frame.iter_mut().enumerate() {
            let s = (start + i) as u64;
            if s >= sound.at {
                *v = sound.samples.get((s - sound.at) as usize).copied().unwrap_or(0.0);
            }
        }
        let mut raw = Box::new(Raw { re: [0.0; WIDE], im: [0.0; WIDE], power: [0.0; WIDE] });
        self.spectra.frame(&frame, &mut raw.re, &mut raw.im);
        for i in 0..WIDE {
            raw.power[i] = raw.re[i] * raw.re[i] + raw.im[i] * raw.im[i];
        }
        self.raw[at] = Some(raw);
    }

    /// Makes these rows ready.
    pub(crate) fn prepare(&mut self, sound: &Segment, wanted: impl Iterator<Item = u64>) {
        for index in wanted {
            let at = (index - self.first) as usize;
            if self.rows.len() <= at {
                self.rows.resize_with(at + 1, || None);
            }
            if self.rows[at].is_some() {
                continue;
            }
            // Every other row is enough, and is often all that is there.
            let before = (SMOOTH_ROWS / 2).min((index - self.first) / 2);
            let reach = (0..=before + SMOOTH_ROWS / 2).map(|i| index - 2 * before + 2 * i);
            let count = (before + SMOOTH_ROWS / 2 + 1) as f32 * (2 * SMOOTH_BINS + 1) as f32;
            reach.clone().for_each(|i| self.prepare_raw(sound, i));
            let mut row = Box::new(Row { re: [0.0; BINS], im: [0.0; BINS], scale: [0.0; BINS] });
            let mut sum = [0.0f32; WIDE];
            for i in reach {
                if let Some(r) = &self.raw[(i - self.first) as usize] {
                    sum.iter_mut().zip(&r.power).for_each(|(s, p)| *s += p);
                }
            }
            let mut run: f32 = sum[..2 * SMOOTH_BINS].iter().sum();
            for i in 0..BINS {
                run += sum[i + 2 * SMOOTH_BINS];
                row.scale[i] = 1.0 / (run.max(0.0) / count + 1e-9).sqrt();
                run -= sum[i];
            }
            if let Some(r) = &self.raw[at] {
                for i in 0..BINS {
                    row.re[i] = r.re[i + SMOOTH_BINS] * row.scale[i];
                    row.im[i] = r.im[i + SMOOTH_BINS] * row.scale[i];
                }
            }
            self.rows[at] = Some(row);
        }
    }

    pub(crate) fn row(&self, index: u64) -> Option<&Row> {
        self.rows.get(index.checked_sub(self.first)? as usize)?.as_deref()
    }
}
