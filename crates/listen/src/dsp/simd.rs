//! The few inner loops that take nearly all the time, compiled for the widest vectors the machine has.

/// Values worked on together where a loop is written for vectors.
pub(crate) const LANES: usize = 8;

/// Runs a loop with every vector instruction this processor offers.
#[inline(always)]
pub(crate) fn wide<R>(work: impl FnOnce() -> R) -> R {
    pulp::Arch::new().dispatch(work)
}

/// Runs hand-written vector work on vectors of at most [`LANES`] lanes.
#[inline(always)]
pub(crate) fn on_vectors<W: pulp::WithSimd>(work: W) -> W::Output {
    #[cfg(any(target_arch = "x86", target_arch = "x86_64"))]
    if let Some(simd) = pulp::x86::V3::try_new() {
        return pulp::Simd::vectorize(simd, work);
    }
    #[cfg(target_arch = "aarch64")]
    if let Some(simd) = pulp::aarch64::Neon::try_new() {
        return pulp::Simd::vectorize(simd, work);
    }
    #[cfg(target_arch = "wasm32")]
    if let Some(simd) = pulp::wasm::Simd128::try_new() {
        return pulp::Simd::vectorize(simd, work);
    }
    pulp::Simd::vectorize(pulp::Scalar::new(), work)
}

/// Natural logarithm, good to 1e-5, in a form compilers turn into vector code. Input must be positive and normal.
#[inline(always)]
pub(crate) fn ln(x: f32) -> f32 {
    let bits = x.to_bits();
    let exponent = (bits >> 23) as i32 - 127;
    let m = f32::from_bits((bits & 0x007f_ffff) | 0x3f80_0000) - 1.0;
    // Least-squares polynomial for log2(1 + m) on [0, 1), tied to 0 and 1 at its ends; worst error 3.3e-6.
    let p = m
        * (1.442_501_7
            + m * (-0.717_668_1 + m * (0.455_747_4 + m * (-0.274_832_3 + m * (0.119_381_4 - m * 0.025_125_6)))));
    (exponent as f32 + p) * std::f32::consts::LN_2
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_quick_logarithm_is_close() {
        let worst = (1..4000).map(|i| i as f32 * 0.003).map(|x| (ln(x) - x.ln()).abs()).fold(0.0, f32::max);
        assert!(worst < 2e-5, "{worst}");
    }
}
