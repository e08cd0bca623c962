//! Draws of strengths from a fitted model, and who is at the top in each.

use super::{ChoiceFit, LikesError, posterior::Sample};
use crate::stats::StatsError;
use rand::{RngExt, SeedableRng};
use rand_chacha::ChaCha8Rng;
use std::f64::consts::TAU;

/// Strengths drawn from what is known (the posterior sample, or the normal approximation without one), one row a draw.
pub(super) fn draw_strengths(fit: &ChoiceFit, draws: usize, seed: u64) -> Result<Vec<Vec<f64>>, LikesError> {
    if draws == 0 {
        return Err(StatsError::TooFew { what: "draws", needed: 1, got: 0 }.into());
    }
    if let Some(sample) = fit.sample() {
        return Ok(resample(sample, fit.strengths.len(), draws, seed));
    }
    let factor = fit.factor().ok_or(LikesError::Unsettled)?;
    let items = fit.strengths.len();
    let mut rng = ChaCha8Rng::seed_from_u64(seed);
    let mut normals = vec![0.0; items];
    Ok((0..draws)
        .map(|_| {
            for pair in normals.chunks_mut(2) {
                // Box and Muller's method: two uniforms make two normals.
                let radius = (-2.0 * (1.0 - rng.random::<f64>()).ln()).sqrt();
                let angle = TAU * rng.random::<f64>();
                pair[0] = radius * angle.cos();
                if let Some(second) = pair.get_mut(1) {
                    *second = radius * angle.sin();
                }
            }
            factor.times(&normals).iter().zip(&fit.strengths).map(|(d, s)| s.value + d).collect()
        })
        .collect())
}

/// Draws from the weighted sample at even steps of the summed weights, from a random start.
fn resample(sample: &Sample, items: usize, draws: usize, seed: u64) -> Vec<Vec<f64>> {
    let mut rng = ChaCha8Rng::seed_from_u64(seed);
    let step = 1.0 / draws as f64;
    let mut next = step * rng.random::<f64>();
    let mut drawn = Vec::with_capacity(draws);
    let (mut sum, mut last) = (0.0, None);
    for (point, weight) in sample.points().zip(&sample.weights) {
        sum += weight;
        while next < sum && drawn.len() < draws {
            drawn.push(point[..items].to_vec());
            next += step;
        }
        last = Some(point);
    }
    // Rounding of the sum may leave the last step unfilled.
    while let (true, Some(point)) = (drawn.len() < draws, last) {
        drawn.push(point[..items].to_vec());
    }
    drawn
}

/// The `top` strongest items of one draw, as flags.
pub(super) fn members(strengths: &[f64], top: usize) -> Vec<bool> {
    let mut order: Vec<usize> = (0..strengths.len()).collect();
    order.sort_by(|a, b| strengths[*b].total_cmp(&strengths[*a]));
    let mut is_member = vec![false; strengths.len()];
    order.iter().take(top).for_each(|i| is_member[*i] = true);
    is_member
}

pub(super) fn check_top(top: usize, items: usize) -> Result<(), LikesError> {
    if top >= 1 && top < items {
        Ok(())
    } else {
        Err(StatsError::OutOfRange { what: "size of the top set", value: top as f64 }.into())
    }
}
