//! The inner sums of the second look: sound times conjugate clip, summed with a turning phase per bin.
//!
//! A small change of speed by `e` turns the product in bin `f` at time `t` by `2 π e f t`. For the turns by `+e` and `-e`
//! the four real products are the same, so each pair of speeds costs four multiplications and additions, and the sums
//! are put together only where they are read. Everything is laid out in groups of eight bins, which stay in the
//! nearest cache while all speeds and lags of a candidate pass over them.

use crate::dsp::simd::{LANES, on_vectors};
use crate::dsp::stft::Stft;
use crate::verify::phase_ramp::{PAIRS, PhaseRamps, TURNS};
use crate::verify::whitened_stft::{BINS, Row, WINDOW};
use pulp::{Simd, WithSimd};
use std::ops::Range;

/// Longest stretch summed with phase, in engine-rate samples; longer clips add stretches without.
const STRETCH: usize = 7936;
/// Shares of the clip at which the sums are read.
pub(crate) const SHARES: [f32; 4] = [0.46, 0.6, 0.78, 1.0];
/// Clip amplitudes above this many times their root mean square are held there, so that no burst rules alone.
const CLAMP: f32 = 2.0;
/// Values per group and window: real, imaginary and a third.
const CELL: usize = 3 * LANES;

/// A clip at several speeds: per group of bins, per speed, per window, the real and imaginary parts and one over the
/// amplitude. What is read one after the other lies side by side.
pub(crate) struct ReplaySpectra {
    windows: Vec<usize>,
    /// Windows summed with phase.
    stretch: usize,
    /// First value of each speed within a group.
    starts: Vec<usize>,
    size: usize,
    cells: Vec<f32>,
}

/// One of several replays.
#[derive(Clone, Copy)]
pub(crate) struct ReplaySpectrum<'a> {
    of: &'a ReplaySpectra,
    index: usize,
}

impl ReplaySpectra {
    /// Of sounds as played, in windows `hop` samples apart.
    pub(crate) fn new(played: &[Vec<f32>], hop: usize, spectra: &mut Stft) -> Self {
        let windows: Vec<usize> = played.iter().map(|x| (x.len() + hop) / hop + 1).collect();
        let starts = windows.iter().scan(0, |at, w| Some(std::mem::replace(at, *at + w * CELL))).collect();
        let size = windows.iter().sum::<usize>() * CELL;
        let mut all = Self { windows, stretch: STRETCH / hop, starts, size, cells: vec![0.0; size * (BINS / LANES)] };
        let (mut re, mut im) = ([0.0f32; BINS], [0.0f32; BINS]);
        for (i, played) in played.iter().enumerate() {
            let mut x = vec![0.0f32; WINDOW / 2];
            x.extend_from_slice(played);
            x.resize((all.windows[i] - 1) * hop + WINDOW, 0.0);
            for m in 0..all.windows[i] {
                spectra.frame(&x[m * hop..m * hop + WINDOW], &mut re, &mut im);
                for group in 0..BINS / LANES {
                    let at = group * size + all.starts[i] + m * CELL;
                    let cell = &mut all.cells[at..at + CELL];
                    for (j, k) in (group * LANES..(group + 1) * LANES).enumerate() {
                        cell[j] = re[k];
                        cell[LANES + j] = im[k];
                        cell[2 * LANES + j] = 1.0 / (re[k] * re[k] + im[k] * im[k]).sqrt().max(1e-9);
                    }
                }
            }
        }
        all
    }

    pub(crate) fn at(&self, index: usize) -> ReplaySpectrum<'_> {
        ReplaySpectrum { of: self, index }
    }

    pub(crate) fn most_windows(&self) -> usize {
        self.windows.iter().copied().max().unwrap_or(0)
    }
}

impl ReplaySpectrum<'_> {
    pub(crate) fn windows(&self) -> usize {
        self.of.windows[self.index]
    }

    fn group(&self, group: usize) -> &[f32] {
        let at = group * self.of.size + self.of.starts[self.index];
        &self.of.cells[at..at + self.windows() * CELL]
    }
}

/// The sound around one candidate, in groups of bins: per group and row the real and imaginary parts and the scale.
#[derive(Default)]
pub(crate) struct SoundSpectra {
    rows: usize,
    cells: Vec<f32>,
}

impl SoundSpectra {
    /// Takes `bins` bins of the rows.
    pub(crate) fn gather(&mut self, rows: &[&Row], bins: usize) {
        self.rows = rows.len();
        self.cells.clear();
        self.cells.reserve(self.rows * bins * 3);
        for k in (0..bins).step_by(LANES) {
            for row in rows {
                self.cells.extend_from_slice(&row.re[k..k + LANES]);
                self.cells.extend_from_slice(&row.im[k..k + LANES]);
                self.cells.extend_from_slice(&row.scale[k..k + LANES]);
            }
        }
    }

    fn group(&self, group: usize) -> &[f32] {
        &self.cells[group * self.rows * CELL..(group + 1) * self.rows * CELL]
    }

    fn groups(&self) -> usize {
        self.cells.len() / (self.rows * CELL).max(1)
    }
}

/// Ratio of coherent energy to that of random phases, by share and turn.
pub(crate) type Ratios = [[f32; TURNS]; SHARES.len()];

/// Sums before the division: energies, and what random phases would give.
#[derive(Clone, Copy, Default)]
struct Sums {
    energy: Ratios,
    random: [f32; SHARES.len()],
}

/// Where one lag starts, in rows of the sound, and the rows from window to window.
#[derive(Clone, Copy)]
pub(crate) struct Lags<'a> {
    pub(crate) first_rows: &'a [usize],
    pub(crate) stride: usize,
}

/// Amplitude at which a clip's cells are held, as the sound's noise would have them.
pub(crate) fn hold(sound: &SoundSpectra, clip: ReplaySpectrum, first_row: usize, stride: usize) -> f32 {
    let groups = sound.groups();
    let power = on_vectors(Power { sound, clip, first_row, stride });
    CLAMP * (power / (clip.windows() * groups * LANES).max(1) as f32).sqrt() + 1e-9
}

struct Power<'a> {
    sound: &'a SoundSpectra,
    clip: ReplaySpectrum<'a>,
    first_row: usize,
    stride: usize,
}

impl WithSimd for Power<'_> {
    type Output = f32;

    #[inline(always)]
    fn with_simd<S: Simd>(self, simd: S) -> f32 {
        let n = LANES / S::F32_LANES;
        let mut acc = simd.splat_f32s(0.0);
        for g in 0..self.sound.groups() {
            let x = S::as_simd_f32s(self.clip.group(g)).0;
            let y = S::as_simd_f32s(&self.sound.group(g)[self.first_row * CELL..]).0;
            for (x, y) in x.chunks_exact(3 * n).zip(y.chunks(3 * n * self.stride)) {
                for j in 0..n {
                    let (re, im, q) = (x[j], x[n + j], y[2 * n + j]);
                    let a2 = simd.mul_add_e_f32s(re, re, simd.mul_f32s(im, im));
                    acc = simd.mul_add_e_f32s(a2, simd.mul_f32s(q, q), acc);
                }
            }
        }
        simd.reduce_sum_f32s(acc)
    }
}

/// Which turns to look at.
pub(crate) const QUICK: u8 = 0;
pub(crate) const ALL: u8 = 1;
pub(crate) const NEXT: u8 = 2;

/// The ratios of several speeds at several lags: `out[speed * lags + lag]`. With [`QUICK`] only the speeds two and four
/// steps away are looked at, with [`NEXT`] only those one step away; the others read zero.
pub(crate) fn ratios<const WHICH: u8>(
    sound: &SoundSpectra,
    clips: &[ReplaySpectrum],
    turns: &PhaseRamps,
    lags: Lags,
    hold: f32,
    out: &mut Vec<Ratios>,
) {
    let mut sums = vec![Sums::default(); clips.len() * lags.first_rows.len()];
    on_vectors(Pass::<WHICH> { sound, clips, turns, lags, hold, sums: &mut sums });
    out.clear();
    out.extend(sums.iter().map(|s| {
        let mut r = s.energy;
        r.iter_mut().zip(s.random).for_each(|(e, n)| e.iter_mut().for_each(|v| *v /= n.max(1e-9)));
        r
    }));
}

struct Pass<'a, const WHICH: u8> {
    sound: &'a SoundSpectra,
    clips: &'a [ReplaySpectrum<'a>],
    turns: &'a PhaseRamps,
    lags: Lags<'a>,
    hold: f32,
    sums: &'a mut [Sums],
}

impl<const WHICH: u8> WithSimd for Pass<'_, WHICH> {
    type Output = ();

    #[inline(always)]
    fn with_simd<S: Simd>(self, simd: S) {
        let n = LANES / S::F32_LANES;
        let longest = self.clips.iter().map(ReplaySpectrum::windows).max().unwrap_or(0);
        let mut products = vec![(simd.splat_f32s(0.0), simd.splat_f32s(0.0)); longest];
        let hold = simd.splat_f32s(self.hold);
        let lags = self.lags.first_rows.len();
        let runs: Vec<Vec<Run>> = self.clips.iter().map(|c| runs(c)).collect();
        for group in 0..self.sound.groups() {
            let y = S::as_simd_f32s(self.sound.group(group)).0;
            for ((clip, runs), sums) in self.clips.iter().zip(&runs).zip(self.sums.chunks_exact_mut(lags)) {
                let x = S::as_simd_f32s(clip.group(group)).0;
                let z = &mut products[..clip.windows()];
                let table = |pair| &S::as_simd_f32s(self.turns.pair(group, pair)).0[..clip.windows() * 2 * n];
                for (row, sum) in self.lags.first_rows.iter().zip(sums) {
                    for j in 0..n {
                        multiply(simd, [x, &y[row * 3 * n..]], self.lags.stride, [n, j], hold, z, runs, sum);
                        if WHICH == QUICK {
                            turned(simd, [1, 3], [table(1), table(3)], [n, j], z, runs, sum);
                        } else if WHICH == NEXT {
                            turned(simd, [0], [table(0)], [n, j], z, runs, sum);
                        } else {
                            turned(simd, [0, 1], [table(0), table(1)], [n, j], z, runs, sum);
                            turned(simd, [2, 3], [table(2), table(3)], [n, j], z, runs, sum);
                            turned(simd, [4], [table(4)], [n, j], z, runs, sum);
                        }
                    }
                }
            }
        }
    }
}

/// A run of windows summed without a look at the sums: up to which window it goes, the shares read there, and whether
/// the sums start anew after it.
struct Run {
    windows: Range<usize>,
    shares: Range<usize>,
    anew: bool,
}

fn runs(clip: &ReplaySpectrum) -> Vec<Run> {
    let (windows, stretch_windows) = (clip.windows(), clip.of.stretch);
    let stops = SHARES.map(|s| (s * windows as f32).ceil() as usize);
    let mut out = Vec::new();
    let (mut at, mut share) = (0, 0);
    while at < windows {
        let stretch = (at / stretch_windows + 1) * stretch_windows;
        let stop = stops.get(share).copied().unwrap_or(windows).max(at + 1);
        let until = stretch.min(stop).min(windows);
        let first = share;
        while share < SHARES.len() && stops[share] <= until {
            share += 1;
        }
        out.push(Run { windows: at..until, shares: first..share, anew: until == stretch });
        at = until;
    }
    out
}

/// Products of sound and conjugate clip, their sums without a turn, and their energy.
#[inline(always)]
#[allow(clippy::too_many_arguments)]
fn multiply<S: Simd>(
    simd: S,
    [x, y]: [&[S::f32s]; 2],
    stride: usize,
    [n, j]: [usize; 2],
    hold: S::f32s,
    z: &mut [(S::f32s, S::f32s)],
    runs: &[Run],
    sum: &mut Sums,
) {
    let zero = simd.splat_f32s(0.0);
    let (mut re, mut im, mut chance) = (zero, zero, zero);
    let mut done = 0.0f32;
    let cell = 3 * n;
    for run in runs {
        let cells = x[run.windows.start * cell..]
            .chunks_exact(cell)
            .zip(y[run.windows.start * cell * stride..].chunks(cell * stride));
        for ((x, y), z) in cells.zip(&mut z[run.windows.clone()]) {
            let (xr, xi, inverse) = (x[j], x[n + j], x[2 * n + j]);
            let (yr, yi, q) = (y[j], y[n + j], y[2 * n + j]);
            let g = simd.min_f32s(q, simd.mul_f32s(hold, inverse));
            let (gr, gi) = (simd.mul_f32s(g, xr), simd.mul_f32s(g, xi));
            let zr = simd.mul_add_e_f32s(yr, gr, simd.mul_f32s(yi, gi));
            let zi = simd.sub_f32s(simd.mul_f32s(yi, gr), simd.mul_f32s(yr, gi));
            chance = simd.mul_add_e_f32s(zr, zr, simd.mul_add_e_f32s(zi, zi, chance));
            (re, im) = (simd.add_f32s(re, zr), simd.add_f32s(im, zi));
            *z = (zr, zi);
        }
        if !run.shares.is_empty() {
            let (random, still) = (simd.reduce_sum_f32s(chance), done + energy(simd, re, im));
            for share in run.shares.clone() {
                sum.random[share] += random;
                sum.energy[share][PAIRS] += still;
            }
        }
        if run.anew {
            done += energy(simd, re, im);
            (re, im) = (zero, zero);
        }
    }
}

/// Adds the energies of the products turned by some pairs of small speeds.
#[inline(always)]
fn turned<S: Simd, const N: usize>(
    simd: S,
    pairs: [usize; N],
    tables: [&[S::f32s]; N],
    [n, j]: [usize; 2],
    z: &[(S::f32s, S::f32s)],
    runs: &[Run],
    sum: &mut Sums,
) {
    let zero = simd.splat_f32s(0.0);
    let mut acc = [[zero; 4]; N];
    let mut done = [[0.0f32; 2]; N];
    for run in runs {
        let mut turning = acc;
        for (m, (zr, zi)) in run.windows.clone().zip(&z[run.windows.clone()]) {
            for (acc, table) in turning.iter_mut().zip(&tables) {
                let (tr, ti) = (table[m * 2 * n + j], table[m * 2 * n + n + j]);
                acc[0] = simd.mul_add_e_f32s(*zr, tr, acc[0]);
                acc[1] = simd.mul_add_e_f32s(*zi, ti, acc[1]);
                acc[2] = simd.mul_add_e_f32s(*zr, ti, acc[2]);
                acc[3] = simd.mul_add_e_f32s(*zi, tr, acc[3]);
            }
        }
        acc = turning;
        for ((pair, acc), done) in pairs.iter().zip(&mut acc).zip(&mut done) {
            // Forward is a slower replay than the prepared one.
            let on = energy(simd, simd.sub_f32s(acc[0], acc[1]), simd.add_f32s(acc[2], acc[3]));
            let back = energy(simd, simd.add_f32s(acc[0], acc[1]), simd.sub_f32s(acc[3], acc[2]));
            for share in run.shares.clone() {
                sum.energy[share][PAIRS - 1 - pair] += done[0] + on;
                sum.energy[share][PAIRS + 1 + pair] += done[1] + back;
            }
            if run.anew {
                done[0] += on;
                done[1] += back;
                *acc = [zero; 4];
            }
        }
    }
}

#[inline(always)]
fn energy<S: Simd>(simd: S, re: S::f32s, im: S::f32s) -> f32 {
    simd.reduce_sum_f32s(simd.mul_add_e_f32s(re, re, simd.mul_f32s(im, im)))
}
