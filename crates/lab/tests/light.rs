//! Light learners behave as their labels say.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, clippy::cast_precision_loss)]

use sayso_lab::{Chooser, LightPresser, LightSetting, latencies, learning_curve, presses};
use sayso_sim::logistic;

fn share(hits: usize, n: usize) -> f64 {
    hits as f64 / n as f64
}

/// Whether `hits` of `n` lies within four standard errors of `p`.
fn near(hits: usize, n: usize, p: f64) {
    let se = (p * (1.0 - p) / n as f64).sqrt();
    assert!((share(hits, n) - p).abs() <= 4.0 * se + 1e-9, "{hits} of {n} is far from {p:.3}");
}

#[test]
fn light_pressers_differ_as_their_labels_say() {
    let setting = LightSetting { sessions: 250, ..LightSetting::default() };
    let right = |p: &LightPresser| {
        let all = presses(p, &setting, 4);
        (all.iter().filter(|x| x.pressed == x.wanted).count(), all.len())
    };
    let (hits, n) = right(&LightPresser::Random);
    near(hits, n, 0.25);
    let (hits, n) = right(&LightPresser::PlaceHabit(vec![0.7, 0.1, 0.1, 0.1]));
    near(hits, n, 0.25);
    let (hits, n) = right(&LightPresser::Understands(0.6));
    near(hits, n, 0.6 + 0.4 / 4.0);
    assert!(presses(&LightPresser::Random, &LightSetting { words: 0, ..setting }, 1).is_empty());
}

#[test]
fn light_choosers_curves_and_latencies_have_their_stated_rates() {
    let c = Chooser { strengths: vec![1.0, 0.0], side_bias: 0.8, none: f64::NEG_INFINITY };
    let trials = c.paired(4_000, 2);
    let left = |item| {
        let of: Vec<_> = trials.iter().filter(|t| t.0 == item).collect();
        (of.iter().filter(|t| t.2 == Some(item)).count(), of.len())
    };
    let (hits, n) = left(0);
    near(hits, n, logistic(1.0 + 0.8));
    let (hits, n) = left(1);
    near(hits, n, logistic(-1.0 + 0.8));
    assert!(c.multiple(50, 1).iter().all(|order| order.len() == 2));
    let approached = c.single(4_000, 3).iter().filter(|t| t.0 == 0 && t.1).count();
    near(approached, 4_000, logistic(1.0));
    let spent = c.free(50_000.0, 5);
    assert!((spent[0] / 50_000.0 - logistic(1.0)).abs() < 0.06, "{spent:?}");
    let nothing = Chooser { strengths: Vec::new(), side_bias: 0.0, none: 0.0 };
    assert!(nothing.paired(3, 1).is_empty() && nothing.free(10.0, 1).is_empty());

    let curve = learning_curve(-2.0, 0.0, 0.0, 4_000, 6);
    near(curve.pressed.iter().filter(|x| **x).count(), 4_000, logistic(-2.0));
    let times = latencies(3.0, 0.5, 0.2, 3.0, 4_000, 7);
    near(times.iter().filter(|t| t.1).count(), 4_000, 0.8 * 0.5);
    assert!(times.iter().all(|t| t.0 <= 3.0 && (t.1 || t.0 == 3.0)));
}
