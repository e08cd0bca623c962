//! More values computed elsewhere, each with its program: SciPy 1.17, statsmodels 0.15, lifelines 0.30, choix 0.4.1,
//! krippendorff 0.9; and identities that must hold exactly.

use sayso_methods::agreement::{RatingTable, Scale, Weighting, alpha_interval, krippendorff_alpha};
use sayso_methods::learning::latency::{Wait, kaplan_meier};
use sayso_methods::likes::{Prior, Ranking, Tournament, consistency, plackett_luce};
use sayso_methods::stats::*;

fn close(got: f64, wanted: f64, tolerance: f64) {
    assert!((got - wanted).abs() <= tolerance, "{got}, not {wanted}");
}

/// Invented waits.
const TIME: [f64; 36] = [
    2.25, 1.0, 1.5, 0.75, 0.25, 0.75, 1.0, 0.25, 0.25, 1.25, 1.25, 1.5, 0.75, 4.0, 2.75, 3.75, 1.25, 0.5, 1.0, 1.25,
    3.75, 0.25, 0.5, 1.75, 1.0, 2.0, 3.0, 0.25, 4.5, 0.25, 5.5, 2.5, 1.0, 2.0, 3.5, 1.5,
];
const EVENT: [u8; 36] =
    [1, 1, 1, 0, 1, 1, 0, 1, 1, 1, 1, 0, 1, 0, 1, 0, 1, 0, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 0, 1, 1, 0, 1, 1];

fn waits() -> Vec<Wait> {
    TIME.iter().zip(EVENT).map(|(time, event)| Wait { time: *time, event: event == 1 }).collect()
}

#[test]
fn median_interval_as_lifelines() {
    let curve = kaplan_meier(&waits(), Level::P95).unwrap();
    assert_eq!(curve.median(), Some(1.5));
    let interval = curve.median_interval();
    assert_eq!((interval.low, interval.high), (Some(1.0), Some(2.25)));
}

#[test]
fn kappa_and_its_error_as_statsmodels() {
    let counts = [[11, 2, 19], [1, 3, 3], [0, 8, 82]];
    let (first, second): (Vec<usize>, Vec<usize>) = (0..3)
        .flat_map(|a| (0..3).map(move |b| (a, b)))
        .flat_map(|(a, b)| std::iter::repeat_n((a, b), counts[a][b]))
        .unzip();
    let table = RatingTable::from_ratings(&first, &second, 3).unwrap();
    for (weighting, kappa, error) in [
        (Weighting::Unweighted, 0.374_522_480_164_560_6, 0.078_873_554_260_550_37),
        (Weighting::Linear, 0.401_819_154_628_143_44, 0.082_973_953_732_493_12),
        (Weighting::Quadratic, 0.420_369_445_831_253_13, 0.089_194_500_770_568_77),
    ] {
        let found = table.kappa(weighting, Level::P95).unwrap();
        close(found.kappa, kappa, 1e-12);
        close(found.standard_error, error, 1e-12);
    }
}

#[test]
fn ratio_alpha_as_krippendorff() {
    let row = |text: &str| -> Vec<Option<f64>> { text.split(' ').map(|t| t.parse().ok()).collect() };
    let rows = [
        row("1 2 3 3 2 1 4 1 2 . . ."),
        row("1 2 3 3 2 2 4 1 2 5 . 3"),
        row(". 3 3 3 2 3 4 2 2 5 1 ."),
        row("1 2 3 3 2 4 4 1 2 5 1 ."),
    ];
    close(krippendorff_alpha(&rows, Scale::Ratio).unwrap().alpha, 0.797_402_774_711_612_1, 1e-12);
    let nominal = alpha_interval(&rows, Scale::Nominal, Level::P95, 2000, 7).unwrap();
    assert!(nominal.interval.low < 0.60 && nominal.interval.high > 0.85, "{nominal:?}");
    assert_eq!(nominal, alpha_interval(&rows, Scale::Nominal, Level::P95, 2000, 7).unwrap());
}

#[test]
fn binomial_tests_as_scipy() {
    let p = |k, n, p0, tail| Proportion::new(k, n).unwrap().test(p0, tail).unwrap();
    close(p(7, 1000, 0.02, Tail::TwoSided), 0.001_417_362_119_911_074_3, 1e-12);
    close(p(480_000, 1_000_000, 0.4801, Tail::TwoSided), 0.842_139_321_749_164_5, 1e-9);
    close(p(3, 15, 0.1, Tail::Greater), 0.184_061_069_106_391_06, 1e-12);
    close(p(0, 5, 0.3, Tail::TwoSided), 0.331_15, 1e-12);
    close(p(4, 5, 0.8, Tail::TwoSided), 1.0, 0.0);
    close(TwoByTwo([[2, 15], [10, 3]]).fisher(Tail::Less).unwrap().p, 0.000_465_180_943_362_903_05, 1e-12);
}

#[test]
fn partial_rankings_and_best_of_several_as_choix() {
    let fit = |items, rankings: &[Ranking], alpha| {
        plackett_luce(items, rankings, Prior::Weak { alpha }, Level::P95)
            .unwrap()
            .strengths
            .iter()
            .map(|s| s.value)
            .collect::<Vec<_>>()
    };
    let partial = [&[0, 1][..], &[1, 2], &[2, 3, 0], &[3, 1]].map(Ranking::complete);
    for (got, wanted) in fit(4, &partial, 0.05).iter().zip([-0.302_373_55, -0.481_347_19, 0.186_416_2, 0.597_304_54]) {
        close(*got, wanted, 1e-4);
    }
    let best = [
        Ranking::stopped(&[0], &[1, 2, 3]),
        Ranking::stopped(&[2], &[1, 3]),
        Ranking::stopped(&[1], &[0, 2]),
        Ranking::stopped(&[3], &[1]),
    ];
    for (got, wanted) in fit(4, &best, 0.1).iter().zip([0.534_375_23, -0.388_792_5, 0.074_494_31, -0.220_077_05]) {
        close(*got, wanted, 1e-4);
    }
}

#[test]
fn triads_of_all_tournaments_of_five() {
    // Kendall & Babington Smith 1940, table for n = 5 (from memory, and it adds up to 2^10): 120, 120, 240, 240, 280, 24.
    let mut counts = [0; 6];
    let pairs: Vec<(usize, usize)> = (0..5).flat_map(|i| (i + 1..5).map(move |j| (i, j))).collect();
    let mut largest_p = 0.0_f64;
    for outcome in 0..1024_u32 {
        let mut beats = [[0_u64; 5]; 5];
        for (at, (i, j)) in pairs.iter().enumerate() {
            if outcome >> at & 1 == 1 { beats[*i][*j] = 1 } else { beats[*j][*i] = 1 }
        }
        let found = consistency(&Tournament::from_wins(&beats).unwrap()).unwrap();
        counts[found.circular_triads as usize] += 1;
        largest_p = largest_p.max(found.p);
        if found.circular_triads == 0 {
            close(found.p, 120.0 / 1024.0, 1e-12);
        }
    }
    assert_eq!(counts, [120, 120, 240, 240, 280, 24]);
    assert_eq!(largest_p, 1.0);
}

#[test]
fn bayes_factor_by_integration() {
    // Simpson's rule over the rates above one third.
    let seen = Proportion::new(7, 9).unwrap();
    let chance: f64 = 1.0 / 3.0;
    let likelihood = |p: f64| p.powi(7) * (1.0 - p).powi(2);
    let steps = 2000;
    let h = (1.0 - chance) / f64::from(steps);
    let sum: f64 = (0..=steps)
        .map(|i| {
            let weight = if i == 0 || i == steps {
                1.0
            } else if i % 2 == 1 {
                4.0
            } else {
                2.0
            };
            weight * likelihood(chance + h * f64::from(i))
        })
        .sum();
    let average = sum * h / 3.0 / (1.0 - chance);
    let found = binomial_bayes_factor(seen, chance, BetaPrior::EVEN, Direction::Above).unwrap();
    close(found.factor() / (average / likelihood(chance)), 1.0, 1e-9);
}
