//! Reference values of `tests/reference/learning_curve.json`, every case, at its stated tolerance.

use crate::read::cases;
use sayso_methods::learning::celeration::{ZeroRates, celeration};
use sayso_methods::learning::curve::{CurveSettings, learning_curve};
use sayso_methods::learning::phases::{Better, compare_phases};
use sayso_methods::learning::rank_sum::rank_sum;
use sayso_methods::stats::PMethod;
use serde_json::Value;

fn numbers(value: &Value) -> Vec<f64> {
    value.as_array().expect("a list").iter().map(|v| v.as_f64().expect("a number")).collect()
}

fn close(name: &str, what: &str, got: f64, wanted: f64, tolerance: f64) {
    assert!((got - wanted).abs() <= tolerance, "{name}: {what} is {got}, reference {wanted} +- {tolerance}");
}

#[test]
fn every_case() {
    let all = cases("learning_curve.json");
    assert!(!all.is_empty());
    for case in all {
        let name = case["name"].as_str().expect("name");
        let tolerance = case["tolerance"].as_f64().expect("tolerance");
        let (input, expected) = (&case["input"], &case["expected"]);
        if input.get("responses").is_some() {
            let trials: Vec<Option<bool>> =
                input["responses"].as_array().unwrap().iter().map(|v| v.as_i64().map(|r| r == 1)).collect();
            let chance = input["chance"].as_f64().unwrap();
            let curve = learning_curve(&trials, chance, &CurveSettings::default()).unwrap();
            close(name, "sigma2", curve.sigma2, expected["sigma2"].as_f64().unwrap(), tolerance);
            for (key, pick) in [
                ("p_mode", (|p| p.p) as fn(&sayso_methods::learning::curve::CurvePoint) -> f64),
                ("lower90", |p| p.lower),
                ("upper90", |p| p.upper),
            ] {
                let wanted = numbers(&expected[key]);
                assert_eq!(wanted.len(), curve.points.len());
                for (point, wanted) in curve.points.iter().zip(wanted) {
                    close(name, key, pick(point), wanted, tolerance);
                }
            }
            let wanted = expected["learning_trial"].as_u64().map(|t| t as usize);
            assert_eq!(curve.learning_trial, wanted, "{name}: learning trial");
        } else if input.get("a").is_some() {
            let change = compare_phases(&numbers(&input["a"]), &numbers(&input["b"]), Better::Larger).unwrap();
            for (key, got) in
                [("nap", change.nap), ("tau_ab", change.tau_ab), ("tau_u", change.tau_u), ("pnd", change.pnd)]
            {
                close(name, key, got, expected[key].as_f64().unwrap(), tolerance);
            }
        } else if input.get("day").is_some() {
            let found =
                celeration(&numbers(&input["day"]), &numbers(&input["per_minute"]), ZeroRates::LeaveOut).unwrap();
            close(name, "times", found.times_per_week, expected["times_per_week"].as_f64().unwrap(), tolerance);
        } else {
            panic!("{name}: a case this test does not know");
        }
    }
}

/// The whole reference curve to far more digits than its tolerance, so that a change in how EM starts or stops shows.
#[test]
fn step_variance_is_the_references_to_ten_digits() {
    let mut checked = 0;
    for case in cases("learning_curve.json").iter().filter(|case| case["input"].get("responses").is_some()) {
        let trials: Vec<_> =
            case["input"]["responses"].as_array().unwrap().iter().map(|v| Some(v.as_i64() == Some(1))).collect();
        let chance = case["input"]["chance"].as_f64().unwrap();
        let curve = learning_curve(&trials, chance, &CurveSettings::default()).unwrap();
        let wanted = case["expected"]["sigma2"].as_f64().unwrap();
        assert!((curve.sigma2 / wanted - 1.0).abs() < 1e-10, "{} {}", curve.sigma2, wanted);
        checked += 1;
    }
    assert!(checked >= 3);
}

/// Mann & Whitney 1947 print the distribution of U; with 4 and 4, P(U <= 1) = 2/70 (from memory).
#[test]
fn rank_sum_matches_the_published_table() {
    let one_swap = rank_sum(&[1.0, 2.0, 3.0, 5.0], &[4.0, 6.0, 7.0, 8.0]).unwrap();
    assert_eq!((one_swap.larger, one_swap.tied, one_swap.smaller), (15, 0, 1));
    assert_eq!(one_swap.p_method, PMethod::Exact);
    assert!((one_swap.p_two_sided - 4.0 / 70.0).abs() < 1e-12);
}

/// With ties, against counting every choice of 4 of the 9 values (126) one by one.
#[test]
fn rank_sum_with_ties_matches_enumeration() {
    let (a, b) = ([2.0, 3.0, 5.0, 3.0], [4.0, 5.0, 5.0, 7.0, 6.0]);
    let all: Vec<f64> = a.iter().chain(&b).copied().collect();
    let score = |chosen: u32| {
        let mut s = 0i32;
        for i in 0..9 {
            for j in 0..9 {
                if chosen >> i & 1 == 1 && chosen >> j & 1 == 0 {
                    s += i32::from(all[j] > all[i]) - i32::from(all[j] < all[i]);
                }
            }
        }
        s
    };
    let seen = score(0b1111).abs();
    let choices: Vec<u32> = (0..512u32).filter(|c| c.count_ones() == 4).collect();
    let extreme = choices.iter().filter(|c| score(**c).abs() >= seen).count();
    let p = rank_sum(&a, &b).unwrap().p_two_sided;
    assert!((p - extreme as f64 / choices.len() as f64).abs() < 1e-12, "{p}");
}
