//! First look: where might a clip be playing? A bank of speed-warped templates, cross-correlated with the whitened
//! spectrogram by FFT along time, summed over bins before the one inverse transform.

use crate::dsp::frame_buffer::FrameBuffer;
use crate::dsp::resampler::{RATE, SpeedResampler};
use crate::dsp::simd::{on_vectors, wide};
use crate::dsp::stft::Stft;
use crate::search::cross_correlation::{CrossCorrelation, TILE, transform};
use crate::search::whitening::{AROUND, BINS, HOP, LOW, WIDE, WINDOW, Whitener, flatten_neighbours};
use realfft::num_complex::Complex;
use realfft::{ComplexToReal, RealFftPlanner, RealToComplex};
use std::sync::Arc;

/// Longest stretch of a clip the first look compares; the second look sees all of it.
const LONGEST_S: f64 = 1.2;
/// Speeds of the templates: 94 to 104 % in steps the 25 Hz bins cannot tell apart.
pub(crate) const SPEEDS: [f64; 7] = [0.9475, 0.9625, 0.9775, 0.9925, 1.0075, 1.0225, 1.0375];
pub(crate) const SLOWEST: f64 = SPEEDS[0];
pub(crate) const FASTEST: f64 = SPEEDS[SPEEDS.len() - 1];

/// One clip at one speed, as unit-energy rows.
fn template(x: &[f32], speed: f64, resampler: &SpeedResampler) -> Vec<f32> {
    let mut y = resampler.resample(x, speed);
    y.truncate((LONGEST_S * RATE as f64) as usize);
    if y.len() < WINDOW {
        y.resize(WINDOW, 0.0);
    }
    let mut spectra = Stft::new(WINDOW, LOW - AROUND, WIDE);
    let frames = (y.len() - WINDOW) / HOP + 1;
    let (mut re, mut im) = (vec![0.0; WIDE], vec![0.0; WIDE]);
    let mut rows = vec![0.0f32; frames * WIDE];
    for t in 0..frames {
        spectra.frame(&y[t * HOP..t * HOP + WINDOW], &mut re, &mut im);
        for i in 0..WIDE {
            rows[t * WIDE + i] = (re[i] * re[i] + im[i] * im[i]).sqrt();
        }
    }
    let floor = 0.06 * rows.iter().copied().fold(1e-9, f32::max);
    rows.iter_mut().for_each(|v| *v = (*v + floor).ln());
    for i in 0..WIDE {
        let mean = (0..frames).map(|t| rows[t * WIDE + i]).sum::<f32>() / frames as f32;
        (0..frames).for_each(|t| rows[t * WIDE + i] -= mean);
    }
    let mut out = vec![0.0f32; frames * BINS];
    for t in 0..frames {
        flatten_neighbours(&rows[t * WIDE..(t + 1) * WIDE], &mut out[t * BINS..(t + 1) * BINS]);
    }
    let norm = out.iter().map(|v| v * v).sum::<f32>().sqrt().max(1e-9);
    out.iter_mut().for_each(|v| *v /= norm);
    out
}

/// Modulations above this frequency say little about a word and are left out, which halves the work.
const KEPT_HZ: f64 = 28.0;
/// How a block of frames is cut: `size` is the FFT length, `step` the new scores each block yields. Templates are taken to
/// be longer than they are, by up to `like` frames: words of like length then share a block.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) struct BlockSize {
    pub(crate) size: usize,
    pub(crate) step: usize,
    like: usize,
}

/// How soon scores must come: each is cheaper than the one before.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Cut {
    Short,
    Middle,
    Long,
}

/// Blocks of so many lengths are held while words are scored.
const HELD: usize = 8;

/// All templates of all clips, ready for correlation.
pub(crate) struct TemplateBank {
    block_size: BlockSize,
    /// Modulation frequencies kept, in tiles of [`TILE`].
    tiles: usize,
    /// Per template: frames.
    frames: Vec<usize>,
    /// Per template: per tile, per bin, the real and the imaginary parts of the tile.
    spectra: Vec<Vec<f32>>,
    words: usize,
    forward: Arc<dyn RealToComplex<f32>>,
    inverse: Arc<dyn ComplexToReal<f32>>,
    /// Per word: median and spread of the score where the clip is not.
    null: Vec<(f32, f32)>,
}

/// Scores of one word in one block: `step` best scores and the index of the best speed.
pub(crate) struct Scores {
    pub(crate) best: Vec<f32>,
    pub(crate) speed: Vec<u8>,
}

/// A stretch of rows, transformed once for all words.
pub(crate) struct Block {
    /// Running sum of the rows' energy.
    energy: Vec<f64>,
    spectrum: Vec<f32>,
}

/// The last blocks made, by where they begin and how long they are.
#[derive(Default)]
pub(crate) struct HeldBlocks(Vec<(u64, usize, Vec<Block>)>);

impl HeldBlocks {
    /// Those that begin at `at` and need so many rows, made if they are not held.
    pub(crate) fn of(&mut self, at: u64, need: usize, make: impl FnOnce() -> Vec<Block>) -> &[Block] {
        let place = self.0.iter().position(|(a, n, _)| (*a, *n) == (at, need)).unwrap_or_else(|| {
            if self.0.len() == HELD {
                self.0.remove(0);
            }
            self.0.push((at, need, make()));
            self.0.len() - 1
        });
        &self.0[place].2
    }
}

impl TemplateBank {
    pub(crate) fn new(clips: &[Vec<f32>], cut: Cut) -> Self {
        let resampler = SpeedResampler::new();
        let rows: Vec<Vec<f32>> =
            clips.iter().flat_map(|c| SPEEDS.iter().map(|s| template(c, *s, &resampler)).collect::<Vec<_>>()).collect();
        let frames: Vec<usize> = rows.iter().map(|r| r.len() / BINS).collect();
        let longest = frames.iter().copied().max().unwrap_or(1);
        // The longest template has 117 frames, so 32 scores of it, taken for 128, fit 160.
        let block_size = match cut {
            Cut::Short => BlockSize { size: 160, step: 8, like: 1 },
            Cut::Middle => BlockSize { size: 160, step: 32, like: 32 },
            Cut::Long => BlockSize { size: 512, step: 512 - longest + 1, like: longest },
        };
        let tiles = (KEPT_HZ * block_size.size as f64 * HOP as f64 / RATE as f64) as usize / TILE + 1;
        let mut planner = RealFftPlanner::<f32>::new();
        let (forward, inverse) = (planner.plan_fft_forward(block_size.size), planner.plan_fft_inverse(block_size.size));
        let spectra = rows.iter().zip(&frames).map(|(r, n)| transform(&*forward, r, *n, tiles)).collect();
        let null = vec![(0.0, 1.0); clips.len()];
        let words = clips.len();
        let mut bank = Self { block_size, tiles, frames, spectra, words, forward, inverse, null };
        bank.calibrate(clips);
        bank
    }

    pub(crate) fn block_size(&self) -> BlockSize {
        self.block_size
    }

    /// Learns what each word scores on sound that is like the clips and is none of them: the clips backwards.
    fn calibrate(&mut self, clips: &[Vec<f32>]) {
        let mut sound: Vec<f32> = Vec::new();
        let mut seed = 1u32;
        while sound.len() < 24 * RATE && !clips.is_empty() {
            for c in clips {
                sound.extend(c.iter().rev());
                for _ in 0..RATE / 5 {
                    seed = seed.wrapping_mul(1_664_525).wrapping_add(1_013_904_223);
                    sound.push((seed >> 8) as f32 / 16_777_216.0 * 0.02 - 0.01);
                }
            }
        }
        let mut whitener = Whitener::new(0);
        for t in 0..sound.len().saturating_sub(WINDOW) / HOP {
            whitener.push(&sound[t * HOP..t * HOP + WINDOW]);
        }
        // Short blocks overlap so much that every eighth of them tells enough.
        let stride = self.block_size.step.max(64);
        let mut held = HeldBlocks::default();
        for w in 0..self.words {
            let need = self.need(w);
            let blocks = held.of(0, need, || {
                let last = (whitener.rows.end() + 1).saturating_sub(need as u64);
                (0..last).step_by(stride).map(|at| self.block(&whitener.rows, at, need)).collect()
            });
            let mut v: Vec<f32> = self.score(blocks, w).into_iter().flat_map(|s| s.best).collect();
            if v.is_empty() {
                continue;
            }
            let median = middle(&mut v);
            v.iter_mut().for_each(|x| *x = (*x - median).abs());
            self.null[w] = (median, 1.4826 * middle(&mut v).max(1e-3));
        }
    }

    /// Rows needed for the next scores of a word.
    pub(crate) fn need(&self, word: usize) -> usize {
        let frames = &self.frames[word * SPEEDS.len()..(word + 1) * SPEEDS.len()];
        let longest = frames.iter().copied().max().unwrap_or(1);
        self.block_size.step + longest.next_multiple_of(self.block_size.like) - 1
    }

    /// The rows `at .. at + need` along the time axis's frequencies, for [`TemplateBank::score`].
    pub(crate) fn block(&self, rows: &FrameBuffer, at: u64, need: usize) -> Block {
        let mut block = vec![0.0f32; need * BINS];
        let mut energy = vec![0.0f64; need + 1];
        for t in 0..need {
            let row = rows.row(at + t as u64);
            block[t * BINS..(t + 1) * BINS].copy_from_slice(row);
            energy[t + 1] = energy[t] + f64::from(row.iter().map(|v| v * v).sum::<f32>());
        }
        Block { energy, spectrum: transform(&*self.forward, &block, need, self.tiles) }
    }

    /// Scores of a word for the frames `at .. at + step` of each block, in spreads above what is usual.
    pub(crate) fn score(&self, blocks: &[Block], word: usize) -> Vec<Scores> {
        let (n, step) = (self.block_size.size, self.block_size.step);
        let none = || Scores { best: vec![f32::MIN; step], speed: vec![0; step] };
        let mut all: Vec<Scores> = blocks.iter().map(|_| none()).collect();
        let mut spectrum = self.inverse.make_input_vec();
        let mut lags = self.inverse.make_output_vec();
        let mut scratch = self.inverse.make_scratch_vec();
        let mut sums = vec![0.0f32; blocks.len() * self.tiles * 2 * TILE];
        let (median, spread) = self.null[word];
        let sound: Vec<&[f32]> = blocks.iter().map(|b| b.spectrum.as_slice()).collect();
        for speed in 0..SPEEDS.len() {
            let i = word * SPEEDS.len() + speed;
            on_vectors(CrossCorrelation { sound: &sound, clip: &self.spectra[i], sums: &mut sums });
            let m = self.frames[i];
            for ((block, scores), sum) in blocks.iter().zip(&mut all).zip(sums.chunks_exact(self.tiles * 2 * TILE)) {
                spectrum.fill(Complex::default());
                for (part, tile) in spectrum.chunks_mut(TILE).zip(sum.chunks_exact(2 * TILE)) {
                    let (re, im) = tile.split_at(TILE);
                    part.iter_mut().zip(re.iter().zip(im)).for_each(|(c, (r, i))| *c = Complex { re: *r, im: *i });
                }
                spectrum[0].im = 0.0;
                if self.inverse.process_with_scratch(&mut spectrum, &mut lags, &mut scratch).is_err() {
                    continue;
                }
                let (from, to) = (&block.energy[..step], &block.energy[m..m + step]);
                wide(
                    #[inline(always)]
                    || {
                        let scores = scores.best.iter_mut().zip(&mut scores.speed);
                        for (((best, at), lag), (from, to)) in scores.zip(&lags).zip(from.iter().zip(to)) {
                            let mean = (to - from) as f32 / (60 * m) as f32;
                            let z = (lag / n as f32 / mean.sqrt().max(0.05) - median) / spread;
                            let better = z > *best;
                            *best = if better { z } else { *best };
                            *at = if better { speed as u8 } else { *at };
                        }
                    },
                );
            }
        }
        all
    }
}

fn middle(v: &mut [f32]) -> f32 {
    let at = v.len() / 2;
    *v.select_nth_unstable_by(at, f32::total_cmp).1
}

/// Templates of a clip at all [`SPEEDS`].
pub(crate) fn templates(clip: &[f32]) -> Vec<Vec<f32>> {
    let resampler = SpeedResampler::new();
    SPEEDS.iter().map(|s| template(clip, *s, &resampler)).collect()
}

/// Highest correlation of two templates over shifts of up to 0.2 s.
pub(crate) fn likeness(a: &[f32], b: &[f32]) -> f64 {
    let (m, n) = ((a.len() / BINS) as i64, (b.len() / BINS) as i64);
    let mut best = 0.0f32;
    for shift in -20i64..=20 {
        let (from, to) = (shift.max(0), m.min(n + shift));
        if from >= to {
            continue;
        }
        let x = &a[from as usize * BINS..to as usize * BINS];
        let y = &b[(from - shift) as usize * BINS..(to - shift) as usize * BINS];
        best = best.max(wide(
            #[inline(always)]
            || {
                let mut acc = [0.0f32; 8];
                for (p, q) in x.chunks_exact(8).zip(y.chunks_exact(8)) {
                    for i in 0..8 {
                        acc[i] += p[i] * q[i];
                    }
                }
                acc.iter().sum::<f32>()
            },
        ));
    }
    f64::from(best.clamp(0.0, 1.0))
}
