//! The inner loop of the first look: correlation along time, bin by bin, in the domain of modulation frequencies.

use crate::search::whitening::BINS;
use pulp::{Simd, WithSimd};
use realfft::RealToComplex;

/// Modulation frequencies worked on together.
pub(crate) const TILE: usize = 16;

/// FFT along time of every bin, conjugation left to the caller; per tile, per bin, real and imaginary parts.
pub(crate) fn transform(fft: &dyn RealToComplex<f32>, rows: &[f32], frames: usize, tiles: usize) -> Vec<f32> {
    let mut out = vec![0.0f32; tiles * BINS * 2 * TILE];
    let mut input = fft.make_input_vec();
    let mut spectrum = fft.make_output_vec();
    let mut scratch = fft.make_scratch_vec();
    for k in 0..BINS {
        input.fill(0.0);
        for (v, row) in input.iter_mut().zip(rows.chunks_exact(BINS)).take(frames) {
            *v = row[k];
        }
        if fft.process_with_scratch(&mut input, &mut spectrum, &mut scratch).is_err() {
            continue;
        }
        for (tile, part) in spectrum.chunks(TILE).take(tiles).enumerate() {
            let at = (tile * BINS + k) * 2 * TILE;
            for (i, c) in part.iter().enumerate() {
                out[at + i] = c.re;
                out[at + TILE + i] = c.im;
            }
        }
    }
    out
}

/// `sums[block][tile] = Σ over bins of sound · conj(clip)`. Blocks go two by two, so that a clip's tile is read from far
/// memory once for all of them; each block's sums come out the same whatever its company.
pub(crate) struct CrossCorrelation<'a> {
    pub(crate) sound: &'a [&'a [f32]],
    pub(crate) clip: &'a [f32],
    pub(crate) sums: &'a mut [f32],
}

impl WithSimd for CrossCorrelation<'_> {
    type Output = ();

    #[inline(always)]
    fn with_simd<S: Simd>(self, simd: S) {
        let size = BINS * 2 * TILE;
        let tiles = self.clip.len() / size;
        for (tile, clip) in self.clip.chunks_exact(size).enumerate() {
            let part = |b: &[f32]| tile * size..(tile * size + size).min(b.len());
            let mut at = 0;
            while at < self.sound.len() {
                let place = |b: usize| (b * tiles + tile) * 2 * TILE;
                let first = self.sound[at];
                let x = &first[part(first)];
                if let Some(&second) = self.sound.get(at + 1) {
                    let y = &second[part(second)];
                    let sums = tile_sums(simd, clip, [x, y]);
                    self.sums[place(at)..place(at) + 2 * TILE].copy_from_slice(&sums[0]);
                    self.sums[place(at + 1)..place(at + 1) + 2 * TILE].copy_from_slice(&sums[1]);
                    at += 2;
                } else {
                    let sums = tile_sums(simd, clip, [x]);
                    self.sums[place(at)..place(at) + 2 * TILE].copy_from_slice(&sums[0]);
                    at += 1;
                }
            }
        }
    }
}

/// Sums over bins of one tile, for `N` blocks.
#[inline(always)]
fn tile_sums<S: Simd, const N: usize>(simd: S, clip: &[f32], sound: [&[f32]; N]) -> [[f32; 2 * TILE]; N] {
    let mut out = [[0.0f32; 2 * TILE]; N];
    let n = TILE / S::F32_LANES;
    let clip = S::as_simd_f32s(clip).0;
    let zero = simd.splat_f32s(0.0);
    // Two vectors at once fill the registers of most machines.
    for j in (0..n).step_by(2) {
        let wide = 2.min(n - j);
        let mut acc = [[(zero, zero); 2]; N];
        for k in 0..BINS {
            let at = k * 2 * n + j;
            for v in 0..wide {
                let (c, d) = (clip[at + v], clip[at + n + v]);
                for (acc, s) in acc.iter_mut().zip(sound) {
                    let s = S::as_simd_f32s(s).0;
                    let (a, b) = (s[at + v], s[at + n + v]);
                    let (re, im) = &mut acc[v];
                    *re = simd.mul_add_e_f32s(b, d, simd.mul_add_e_f32s(a, c, *re));
                    *im = simd.negate_mul_add_e_f32s(a, d, simd.mul_add_e_f32s(b, c, *im));
                }
            }
        }
        for (out, acc) in out.iter_mut().zip(&acc) {
            let (re, im) = out.split_at_mut(TILE);
            for (v, (r, i)) in acc.iter().enumerate().take(wide) {
                S::as_mut_simd_f32s(re).0[j + v] = *r;
                S::as_mut_simd_f32s(im).0[j + v] = *i;
            }
        }
    }
    out
}
