//! Single-case designs against `tests/reference/single_case.json`, and the size and power of their randomisation test.

use crate::read::file;
use rand_xoshiro::Xoshiro256PlusPlus;
use rand_xoshiro::rand_core::{Rng, SeedableRng};
use sayso_methods::learning::phases::Better;
use sayso_methods::single_case::CaseError;
use sayso_methods::single_case::effects::{Point, Scale, contrast, phase_celeration};
use sayso_methods::single_case::randomisation::{Expected, Statistic, randomisation_test, shift_interval};
use sayso_methods::single_case::schedule::{Assignment, Design, MOST_POINTS};
use sayso_methods::single_case::standards::{Verdict, standards};
use serde_json::Value;
use std::collections::BTreeMap;

fn number(value: &Value) -> f64 {
    value.as_f64().expect("a number")
}

fn size(value: &Value, field: &str) -> usize {
    value[field].as_u64().unwrap_or_else(|| panic!("{field}")) as usize
}

fn design(value: &Value) -> Design {
    let points = size(value, "points");
    match value["kind"].as_str().unwrap() {
        "reversal" => Design::Reversal { points, phases: size(value, "phases"), least: size(value, "least") },
        "changing_criterion" => {
            Design::ChangingCriterion { points, phases: size(value, "phases"), least: size(value, "least") }
        }
        "alternating" => Design::Alternating { points },
        "multiple_baseline" => Design::MultipleBaseline {
            points,
            series: size(value, "series"),
            least: size(value, "least"),
            apart: size(value, "apart"),
        },
        other => panic!("{other}"),
    }
}

fn close(name: &str, got: f64, wanted: f64, tolerance: f64) {
    assert!((got - wanted).abs() <= tolerance, "{name}: {got}, reference {wanted}");
}

#[test]
fn every_reference_case() {
    let file = file("single_case.json");
    let cases = file["cases"].as_array().unwrap();
    assert!(cases.len() >= 12);
    for case in cases {
        let (name, wanted) = (case["name"].as_str().unwrap(), &case["expected"]);
        let tolerance = number(&case["tolerance"]);
        if case["kind"] == "effect" {
            let read = |key: &str, from: usize| -> Vec<Point> {
                let values = case[key].as_array().unwrap().iter().enumerate();
                values.map(|(i, v)| Point { day: (from + i) as f64, value: number(v) }).collect()
            };
            let a = read("a", 0);
            let b = read("b", a.len());
            let found = contrast(&a, &b, Better::Larger).unwrap();
            let n = found.nonoverlap;
            for (key, got) in [
                ("nap", n.nap),
                ("nap_low90", n.nap_interval.low),
                ("nap_high90", n.nap_interval.high),
                ("tau", n.tau_ab),
                ("tau_u", n.tau_u),
            ] {
                close(&format!("{name}: {key}"), got, number(&wanted[key]), tolerance);
            }
            for (key, change) in [("level", found.level.unwrap()), ("trend", found.trend.unwrap())] {
                let interval = change.interval.unwrap();
                for (at, got) in [change.value, interval.low, interval.high].into_iter().enumerate() {
                    close(&format!("{name}: {key}"), got, number(&wanted[key][at]), tolerance);
                }
            }
            continue;
        }
        let series: Vec<Vec<Option<f64>>> = case["series"]
            .as_array()
            .unwrap()
            .iter()
            .map(|s| s.as_array().unwrap().iter().map(Value::as_f64).collect())
            .collect();
        let mut drawn: Assignment = serde_json::from_value(case["drawn"].clone()).unwrap();
        if case["design"]["kind"] == "reversal" {
            // The reference lists conditions, usual and changed in turn; here phases are numbered.
            let mut phase = 0;
            let conditions = drawn[0].clone();
            for at in 1..conditions.len() {
                phase += u8::from(conditions[at] != conditions[at - 1]);
                drawn[0][at] = phase;
            }
        }
        let criteria: Vec<f64> =
            case.get("criteria").map(|c| c.as_array().unwrap().iter().map(number).collect()).unwrap_or_default();
        let statistic = match case["tail"].as_str().unwrap() {
            "more" => Statistic::MeanDifference(Expected::More),
            "less" => Statistic::MeanDifference(Expected::Less),
            "either" => Statistic::MeanDifference(Expected::Either),
            _ => Statistic::CriterionFit(&criteria),
        };
        let test = randomisation_test(design(&case["design"]), &series, &drawn, statistic, 9, 1).unwrap();
        assert!(test.exact, "{name}");
        assert_eq!(
            (test.orders, test.as_extreme),
            (wanted["orders"].as_u64().unwrap(), wanted["as_extreme"].as_u64().unwrap()),
            "{name}"
        );
        close(name, test.observed, number(&wanted["observed"]), 1e-9);
        close(name, test.p, number(&wanted["as_extreme"]) / number(&wanted["orders"]), 1e-15);
    }
    for case in file["counts"].as_array().unwrap() {
        assert_eq!(design(case).count().unwrap(), u128::from(case["expected"].as_u64().unwrap()), "{case}");
    }
}

const EVERY_KIND: [Design; 5] = [
    Design::Reversal { points: 15, phases: 4, least: 3 },
    Design::MultipleBaseline { points: 14, series: 3, least: 3, apart: 2 },
    Design::Alternating { points: 9 },
    Design::Alternating { points: 10 },
    Design::ChangingCriterion { points: 14, phases: 4, least: 3 },
];

#[test]
fn listing_counting_drawing_and_admitting_agree_and_the_draw_is_fair() {
    for design in EVERY_KIND {
        let mut seen: BTreeMap<Assignment, u32> = BTreeMap::new();
        design.each(&mut |order| *seen.entry(order.clone()).or_default() += 1).unwrap();
        assert!(seen.values().all(|times| *times == 1), "{design:?} lists one order twice");
        assert_eq!(seen.len() as u128, design.count().unwrap());
        assert!(seen.keys().all(|order| design.admits(order)));
        let each = 400;
        let draws = each * seen.len() as u64;
        seen.values_mut().for_each(|times| *times = 0);
        for seed in 0..draws {
            *seen.get_mut(&design.draw(seed).unwrap()).expect("drawn orders are admissible") += 1;
        }
        // Chi-square over cells has mean k - 1 and variance 2 (k - 1); five standard deviations are no accident.
        let chi: f64 = seen.values().map(|n| (f64::from(*n) - each as f64).powi(2) / each as f64).sum();
        let freedom = seen.len() as f64 - 1.0;
        assert!((chi - freedom).abs() < 5.0 * (2.0 * freedom).sqrt(), "{design:?}: chi-square {chi} on {freedom}");
        assert_eq!(design.draw(7), design.draw(7));
    }
    let design = EVERY_KIND[0];
    for other in [vec![], vec![vec![0; 15]], vec![vec![0, 0, 0, 1, 1, 1, 2, 2, 2, 3, 3, 3, 3, 3, 9]]] {
        assert!(!design.admits(&other));
    }
}

/// Standard normal by the sum of twelve uniforms: close enough for a made-up series.
fn noise(rng: &mut Xoshiro256PlusPlus) -> f64 {
    (0..12).map(|_| (rng.next_u64() >> 11) as f64 / (1u64 << 53) as f64).sum::<f64>() - 6.0
}

/// Share of `runs` made-up series with p at most 0.05: lag-one dependence `phi`, a trend a point, an effect in standard
/// deviations of the noise.
fn found(design: Design, phi: f64, trend: f64, effect: f64, tail: Expected, runs: u64) -> f64 {
    let mut hits = 0_u32;
    for run in 0..runs {
        let mut rng = Xoshiro256PlusPlus::seed_from_u64(1_000 + run);
        let order = design.draw(50_000 + run).unwrap();
        let series: Vec<Vec<Option<f64>>> = order
            .iter()
            .map(|phases| {
                let mut last = noise(&mut rng) / (1.0 - phi * phi).sqrt();
                let value = |(at, phase): (usize, &u8)| {
                    last = phi * last + noise(&mut rng);
                    Some(last + trend * at as f64 + effect * f64::from(u8::from(design.changed(*phase))))
                };
                phases.iter().enumerate().map(value).collect()
            })
            .collect();
        let test = randomisation_test(design, &series, &order, Statistic::MeanDifference(tail), 199, run).unwrap();
        hits += u32::from(test.p <= 0.05);
    }
    f64::from(hits) / runs as f64
}

#[test]
fn false_alarms_stay_at_five_per_cent_under_dependence_and_trend_and_effects_are_found() {
    let runs = 1_200;
    // 2.6 standard errors of a share of 0.05 above it.
    let most = 0.05 + 2.6 * (0.05 * 0.95 / runs as f64).sqrt();
    let designs = [
        ("reversal", Design::Reversal { points: 30, phases: 4, least: 5 }),
        ("multiple baseline", Design::MultipleBaseline { points: 28, series: 3, least: 5, apart: 3 }),
        ("alternating", Design::Alternating { points: 14 }),
        ("alternating, drawn", Design::Alternating { points: 30 }),
    ];
    for (name, design) in designs {
        for (phi, trend) in [(0.0, 0.0), (0.5, 0.1), (0.8, -0.2)] {
            for tail in [Expected::More, Expected::Either] {
                let share = found(design, phi, trend, 0.0, tail, runs);
                println!("{name}: phi {phi}, trend {trend}, {tail:?}: false alarms {share:.3} of {runs}");
                assert!(share <= most, "{name}: {share} false alarms at phi {phi}, trend {trend}");
            }
        }
        for effect in [1.0, 2.0] {
            let share = found(design, 0.3, 0.0, effect, Expected::More, 400);
            println!("{name}: effect {effect} sd, phi 0.3: found {share:.3} of 400");
            assert!(effect < 2.0 || share > 0.8, "{name}: finds an effect of 2 standard deviations in {share}");
        }
    }
}

#[test]
fn the_interval_of_the_shift_holds_the_truth_and_is_open_where_orders_are_too_few() {
    let design = Design::Reversal { points: 24, phases: 4, least: 4 };
    let (runs, truth) = (2_000, 1.5);
    let (mut inside, mut bounded) = (0, 0);
    for run in 0..runs {
        let mut rng = Xoshiro256PlusPlus::seed_from_u64(9_000 + run);
        let order = design.draw(run).unwrap();
        let mut last = 0.0;
        let values = order[0].iter().map(|phase| {
            last = 0.4 * last + noise(&mut rng);
            Some(last + truth * f64::from(phase % 2))
        });
        let series = vec![values.collect::<Vec<_>>()];
        let [low, high] = shift_interval(design, &series, &order, 999, run).unwrap();
        inside += u32::from(low.is_none_or(|l| l <= truth) && high.is_none_or(|h| truth <= h));
        bounded += u32::from(low.is_some() && high.is_some());
        // The interval and the two-sided test say the same of no shift at all.
        let test =
            randomisation_test(design, &series, &order, Statistic::MeanDifference(Expected::Either), 9, 1).unwrap();
        let zero_inside = low.is_none_or(|l| l <= 0.0) && high.is_none_or(|h| 0.0 <= h);
        assert_eq!(zero_inside, test.p > 0.05, "run {run}: {low:?} to {high:?}, p {}", test.p);
    }
    println!("shift interval: truth inside {inside} of {runs}, bounded {bounded}");
    // 2.6 standard errors below 95 %.
    assert!(f64::from(inside) >= runs as f64 * (0.95 - 2.6 * (0.05 * 0.95 / runs as f64).sqrt()));
    assert!(bounded * 4 > runs as u32 * 3);
    let few = Design::Reversal { points: 8, phases: 2, least: 2 };
    let seen = vec![[1.0, 2.0, 1.0, 2.0, 6.0, 7.0, 6.0, 7.0].map(Some).to_vec()];
    assert_eq!(shift_interval(few, &seen, &few.draw(1).unwrap(), 9, 1), Ok([None, None]));
}

#[test]
fn drawn_rearrangements_agree_with_counting_them_all() {
    let design = Design::Alternating { points: 26 };
    assert!(design.count().unwrap() > 50_000);
    let order = design.draw(3).unwrap();
    let series = vec![(0..26).map(|i| Some(f64::from((i * 7) % 5))).collect::<Vec<_>>()];
    let statistic = Statistic::MeanDifference(Expected::More);
    let test = randomisation_test(design, &series, &order, statistic, 9_999, 4).unwrap();
    assert!(!test.exact && test.orders == 10_000 && test.as_extreme >= 1);
    let (mut all, mut as_extreme) = (0_u32, 0_u32);
    let mean = |order: &Assignment| {
        let of = |with: u8| {
            let picked: Vec<f64> =
                order[0].iter().zip(&series[0]).filter(|(p, _)| **p == with).filter_map(|(_, v)| *v).collect();
            picked.iter().sum::<f64>() / picked.len() as f64
        };
        of(1) - of(0)
    };
    let seen = mean(&order);
    design
        .each(&mut |other| {
            all += 1;
            as_extreme += u32::from(mean(other) >= seen - 1e-9);
        })
        .unwrap();
    let exact = f64::from(as_extreme) / f64::from(all);
    assert!((test.p - exact).abs() < 4.0 * (exact * (1.0 - exact) / 10_000.0).sqrt() + 1e-4, "{} {exact}", test.p);
}

#[test]
fn the_standards_count_observed_points_and_chances() {
    let verdict = |design: Design, missing: usize| {
        let order = design.draw(1).unwrap();
        let mut seen: Vec<Vec<bool>> = order.iter().map(|s| vec![true; s.len()]).collect();
        seen[0][..missing].fill(false);
        let found = standards(design, &order, &seen).unwrap();
        (found.verdict, found.demonstrations)
    };
    let reversal = |points, phases, least| Design::Reversal { points, phases, least };
    assert_eq!(verdict(reversal(20, 4, 5), 0), (Verdict::Meets, 3));
    assert_eq!(verdict(reversal(20, 4, 5), 1), (Verdict::WithReservations, 3));
    assert_eq!(verdict(reversal(20, 4, 5), 3), (Verdict::DoesNot, 3));
    assert_eq!(verdict(reversal(40, 2, 5), 0), (Verdict::DoesNot, 1));
    let lanes = |series| Design::MultipleBaseline { points: 30, series, least: 5, apart: 2 };
    assert_eq!(verdict(lanes(3), 0), (Verdict::Meets, 3));
    assert_eq!(verdict(lanes(2), 0), (Verdict::DoesNot, 2));
    assert_eq!(verdict(Design::Alternating { points: 10 }, 0), (Verdict::Meets, 5));
    assert_eq!(verdict(Design::Alternating { points: 8 }, 0), (Verdict::WithReservations, 4));
}

#[test]
fn strange_input_is_refused_in_words() {
    let short = Design::Reversal { points: 11, phases: 4, least: 3 };
    assert_eq!(short.count(), Err(CaseError::TooShort { points: 11, needed: 12 }));
    assert!(Design::Reversal { points: 9, phases: 1, least: 3 }.draw(1).is_err());
    assert!(Design::Alternating { points: MOST_POINTS + 1 }.count().is_err());
    assert!(Design::Alternating { points: 0 }.count().is_err());
    let zero = Design::MultipleBaseline { points: 9, series: 0, least: 0, apart: 0 };
    assert!(zero.count().is_err());
    // The largest sizes neither overflow nor panic.
    for design in [
        Design::Alternating { points: MOST_POINTS },
        Design::Reversal { points: MOST_POINTS, phases: 8, least: 1 },
        Design::MultipleBaseline { points: MOST_POINTS, series: 8, least: 1, apart: 1 },
    ] {
        assert!(design.count().unwrap() > 1_000_000 && design.admits(&design.draw(9).unwrap()));
    }
    let design = Design::Reversal { points: 8, phases: 2, least: 2 };
    let order = design.draw(1).unwrap();
    let test = |series: Vec<Vec<Option<f64>>>, order: &Assignment| {
        randomisation_test(design, &series, order, Statistic::MeanDifference(Expected::More), 9, 1)
    };
    assert!(matches!(test(vec![vec![Some(1.0); 7]], &order), Err(CaseError::NotTheDesign { .. })));
    assert_eq!(test(vec![vec![Some(f64::NAN); 8]], &order), Err(CaseError::NotANumber));
    assert_eq!(test(vec![vec![None; 8]], &order), Err(CaseError::EmptyCondition));
    assert_eq!(test(vec![vec![Some(1.0); 8]], &vec![vec![0; 8]]), Err(CaseError::NotAdmissible));
    // Nothing varies: every order is as extreme.
    assert_eq!(test(vec![vec![Some(1.0); 8]], &order).unwrap().p, 1.0);
    assert_eq!(contrast(&[], &[], Better::Larger), Err(CaseError::EmptyCondition));
    assert_eq!(phase_celeration(&[], Scale::Counts).map(|c| c.n), Err(CaseError::NoFigure));
    let one = [Point { day: 0.0, value: 1.0 }];
    assert!(contrast(&one, &one, Better::Smaller).unwrap().level.is_none());
}
