//! First look: where might a clip be playing? A bank of speed-warped templates, cross-correlated with the whitened
//! spectrogram by FFT along time, summed over bins before the one inverse transform.

use crate::dsp::frame_buffer::FrameBuffer;
use crate::dsp::resampler::{RATE, SpeedResampler};
use crate::dsp::simd::{on_vectors, wide};
use crate::dsp::stft::Stft;
use crate::search::cross_correlation::{CrossCorrelation, TILE, transform};
use crate::search::whitening::{AROUND, BINS, HOP, LOW, WIDE, WINDOW, Whitener, flatten_neighbours};
use crate::speeds::Speeds;
use realfft::num_complex::Complex;
use realfft::{ComplexToReal, RealFftPlanner, RealToComplex};
use std::sync::Arc;

/// Longest stretch of a clip the first look compares; the second look sees all of it.
const LONGEST_S: f64 = 1.2;
/// Speeds of neighbouring templates: apart by what the 25 Hz bins cannot tell.
const SPEED_STEP: f64 = 0.015;

/// Speeds of a clip's templates, rising: each stands for those within half a step.
pub(crate) fn template_speeds(speeds: Speeds) -> Vec<f64> {
    let count = ((speeds.span() / SPEED_STEP - 1e-6).ceil() as usize).max(1);
    (0..count).map(|i| speeds.low() + SPEED_STEP * (i as f64 + 0.5)).collect()
}

/// One clip at one speed, as unit-energy rows.
pub(crate) fn template(x: &[f32], speed: f64, resampler: &SpeedResampler) -> Vec<f32> {
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
    /// Speeds of each clip's templates, and where they begin among all.
    speeds: Vec<Vec<f64>>,
    starts: Vec<usize>,
    forward: Arc<dyn RealToComplex<f32>>,
    inverse: Arc<dyn ComplexToReal<f32>>,
    /// Per clip: median and spread of the score where the clip is not.
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
    /// Of clips, each with the speeds it is listened for.
    pub(crate) fn new(clips: &[Vec<f32>], speeds: &[Speeds], cut: Cut) -> Self {
        let resampler = SpeedResampler::new();
        let speeds: Vec<Vec<f64>> = speeds.iter().map(|s| template_speeds(*s)).collect();
        let starts = speeds.iter().scan(0, |at, s| Some(std::mem::replace(at, *at + s.len()))).collect();
        let of = |(c, speeds): (&Vec<f32>, &Vec<f64>)| -> Vec<Vec<f32>> {
            speeds.iter().map(|s| template(c, *s, &resampler)).collect()
        };
        let rows: Vec<Vec<f32>> = clips.iter().zip(&speeds).flat_map(of).collect();
        let frames: Vec<usize> = rows.iter().map(|r| r.len() / BINS).collect();
        let longest = frames.iter().copied().max().unwrap_or(1);
        // The longest template has 117 frames (it is cut to 1.2 s), so 32 scores of it, taken for 128, fit 160.
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
        let mut bank = Self { block_size, tiles, frames, spectra, speeds, starts, forward, inverse, null };
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
        for w in 0..self.speeds.len() {
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

    /// Speed of a clip's template.
    pub(crate) fn speed(&self, clip: usize, template: usize) -> f64 {
        self.speeds[clip][template]
    }

    /// Places of a clip's templates among all.
    pub(crate) fn templates(&self, clip: usize) -> std::ops::Range<usize> {
        self.starts[clip]..self.starts[clip] + self.speeds[clip].len()
    }

    /// Rows needed for the next scores of a clip.
    pub(crate) fn need(&self, clip: usize) -> usize {
        let frames = &self.frames[self.templates(clip)];
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

    /// Scores of a clip for the frames `at .. at + step` of each block, in spreads above what is usual.
    pub(crate) fn score(&self, blocks: &[Block], clip: usize) -> Vec<Scores> {
        let (n, step) = (self.block_size.size, self.block_size.step);
        let none = || Scores { best: vec![f32::MIN; step], speed: vec![0; step] };
        let mut all: Vec<Scores> = blocks.iter().map(|_| none()).collect();
        let mut spectrum = self.inverse.make_input_vec();
        let mut lags = self.inverse.make_output_vec();
        let mut scratch = self.inverse.make_scratch_vec();
        let mut sums = vec![0.0f32; blocks.len() * self.tiles * 2 * TILE];
        let (median, spread) = self.null[clip];
        let sound: Vec<&[f32]> = blocks.iter().map(|b| b.spectrum.as_slice()).collect();
        for (speed, i) in self.templates(clip).enumerate() {
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
