//! The change-point cases of `tests/reference/counts_and_change.json`, and the segmentation against brute force.

use crate::read::file;
use proptest::prelude::*;
use sayso_methods::demand::change::{change_points_with_exposure, default_penalty};

#[test]
fn every_change_point_case() {
    let file = file("counts_and_change.json");
    let mut checked = 0;
    // Whatever expects change points belongs here, by what it holds rather than by name.
    for case in file["cases"].as_array().unwrap().iter().filter(|c| c["expected"].get("change_after_index").is_some()) {
        let name = case["name"].as_str().unwrap();
        let tolerance = case["tolerance"].as_f64().unwrap();
        let counts: Vec<u64> =
            case["input"]["counts"].as_array().unwrap().iter().map(|v| v.as_u64().unwrap()).collect();
        let penalty = case["input"]["penalty"].as_f64().unwrap();
        let found = change_points_with_exposure(&counts, &vec![1.0; counts.len()], penalty).unwrap();
        let wanted: Vec<usize> = case["expected"]["change_after_index"]
            .as_array()
            .unwrap()
            .iter()
            .map(|v| v.as_u64().unwrap() as usize)
            .collect();
        assert_eq!(found.change_after, wanted, "{name}");
        let objective = case["expected"]["objective"].as_f64().unwrap();
        assert!((found.objective - objective).abs() <= tolerance, "{name}: {} {objective}", found.objective);
        assert!((default_penalty(counts.len()) - penalty).abs() < 1e-9, "{name}: the default penalty");
        if let Some(first) = case["input"]["first_year"].as_u64() {
            let years: Vec<u64> = found.change_after.iter().map(|at| first + *at as u64).collect();
            let wanted: Vec<u64> =
                case["expected"]["change_years"].as_array().unwrap().iter().map(|v| v.as_u64().unwrap()).collect();
            assert_eq!(years, wanted, "{name}");
        }
        checked += 1;
    }
    assert!(checked >= 1);
}

fn segment_cost(counts: &[u64], exposure: &[f64]) -> f64 {
    let events = counts.iter().sum::<u64>() as f64;
    if events == 0.0 { 0.0 } else { 2.0 * (events - events * (events / exposure.iter().sum::<f64>()).ln()) }
}

/// Optimal partitioning with no pruning at all.
fn brute_force(counts: &[u64], exposure: &[f64], penalty: f64) -> f64 {
    let mut best = vec![-penalty];
    for end in 1..=counts.len() {
        let least = (0..end)
            .map(|start| best[start] + penalty + segment_cost(&counts[start..end], &exposure[start..end]))
            .fold(f64::INFINITY, f64::min);
        best.push(least);
    }
    best[counts.len()]
}

fn series() -> impl Strategy<Value = Vec<(u64, f64)>> {
    let step = prop_oneof![
        4 => (0u64..4, Just(1.0)),
        3 => (0u64..40, Just(1.0)),
        1 => (0u64..2000, 0.1f64..30.0),
        1 => Just((0u64, 0.0)),
    ];
    prop::collection::vec(step, 1..120)
}

proptest! {
    #[test]
    fn objective_is_the_least_there_is(series in series(), penalty in prop_oneof![Just(0.0), 0.01f64..30.0]) {
        let counts: Vec<u64> = series.iter().map(|s| s.0).collect();
        let exposure: Vec<f64> = series.iter().map(|s| s.1).collect();
        let found = change_points_with_exposure(&counts, &exposure, penalty).unwrap();
        let least = brute_force(&counts, &exposure, penalty);
        prop_assert!((found.objective - least).abs() <= 1e-9 * (1.0 + least.abs()), "{} {}", found.objective, least);
        // The segments reported are the ones the objective is for.
        let again: f64 = found
            .segments
            .iter()
            .map(|s| segment_cost(&counts[s.start..s.end], &exposure[s.start..s.end]))
            .sum::<f64>() + penalty * found.change_after.len() as f64;
        prop_assert!((again - found.objective).abs() <= 1e-9 * (1.0 + least.abs()));
        prop_assert_eq!(found.segments.len(), found.change_after.len() + 1);
    }
}

/// Two rates, then a year away: the silence of an unobserved year is no change to a rate of zero.
#[test]
fn time_not_observed_is_no_silence() {
    let mut counts = vec![5u64; 100];
    counts.extend(vec![0; 365]);
    counts.extend(vec![5; 100]);
    let exposure: Vec<f64> = (0..counts.len()).map(|t| if (100..465).contains(&t) { 0.0 } else { 1.0 }).collect();
    let found = change_points_with_exposure(&counts, &exposure, default_penalty(counts.len())).unwrap();
    assert!(found.change_after.is_empty());
}
