//! Reference values of `tests/reference/exact_tests.json` and the counting cases of `counts_and_change.json`:
//! every case, every expected figure, at its stated tolerance. A case or figure unknown here fails.

use crate::read::cases;
use sayso_methods::agreement::{RatingTable, Scale, Weighting, krippendorff_alpha};
use sayso_methods::stats::{Count, Interval, Level, Proportion, Tail, TwoByTwo, benjamini_hochberg, compare_rates};
use serde_json::Value;

fn list(value: &Value) -> Vec<f64> {
    value.as_array().unwrap().iter().map(|v| v.as_f64().unwrap()).collect()
}

fn counts(value: &Value) -> Vec<u64> {
    value.as_array().unwrap().iter().map(|v| v.as_u64().unwrap()).collect()
}

fn table(value: &Value) -> Vec<Vec<u64>> {
    value.as_array().unwrap().iter().map(counts).collect()
}

/// The table of counts, from scores that give it.
fn ratings(counts: &[Vec<u64>]) -> RatingTable {
    let cells = || (0..counts.len()).flat_map(|a| (0..counts.len()).map(move |b| (a, b)));
    let (first, second): (Vec<usize>, Vec<usize>) =
        cells().flat_map(|(a, b)| std::iter::repeat_n((a, b), counts[a][b] as usize)).unzip();
    RatingTable::from_ratings(&first, &second, counts.len()).unwrap()
}

fn ends(interval: Interval) -> Vec<f64> {
    vec![interval.low, interval.high]
}

fn exact(input: &Value, figure: &str, name: &str) -> Vec<f64> {
    if name.starts_with("Fisher exact") {
        let rows = table(&input["table"]);
        let table = TwoByTwo([[rows[0][0], rows[0][1]], [rows[1][0], rows[1][1]]]);
        let tail = match figure {
            "p_two_sided" => Tail::TwoSided,
            "p_greater" => Tail::Greater,
            "p_less" => Tail::Less,
            _ => panic!("{name}: unknown figure {figure}"),
        };
        return vec![table.fisher(tail).unwrap().p];
    }
    if name.starts_with("binomial ") {
        let seen = Proportion::new(input["k"].as_u64().unwrap(), input["n"].as_u64().unwrap()).unwrap();
        return match figure {
            "clopper_pearson95" => ends(seen.clopper_pearson(Level::P95)),
            "p_two_sided_half" => vec![seen.test(0.5, Tail::TwoSided).unwrap()],
            "p_greater_third" => vec![seen.test(1.0 / 3.0, Tail::Greater).unwrap()],
            _ => panic!("{name}: unknown figure {figure}"),
        };
    }
    if name.starts_with("Benjamini-Hochberg") {
        let found = benjamini_hochberg(&list(&input["p"]), input["q"].as_f64().unwrap()).unwrap();
        return match figure {
            "rejected" => vec![found.rejected as f64],
            "adjusted" => found.adjusted,
            _ => panic!("{name}: unknown figure {figure}"),
        };
    }
    if name.starts_with("Cohen's kappa") {
        let table = ratings(&table(&input["table"]));
        let weighting = match figure {
            "kappa" => Weighting::Unweighted,
            "kappa_linear" => Weighting::Linear,
            "kappa_quadratic" => Weighting::Quadratic,
            _ => panic!("{name}: unknown figure {figure}"),
        };
        return vec![table.kappa(weighting, Level::P95).unwrap().kappa];
    }
    if name.starts_with("Krippendorff's alpha") {
        let rows = input["ratings_by_observer"].as_array().unwrap();
        let rows: Vec<Vec<Option<f64>>> =
            rows.iter().map(|r| r.as_array().unwrap().iter().map(Value::as_f64).collect()).collect();
        let scale = match figure {
            "nominal" => Scale::Nominal,
            "ordinal" => Scale::Ordinal,
            "interval" => Scale::Interval,
            "ratio" => Scale::Ratio,
            _ => panic!("{name}: unknown figure {figure}"),
        };
        return vec![krippendorff_alpha(&rows, scale).unwrap().alpha];
    }
    panic!("unknown case {name}")
}

/// `None`: another test's case.
fn counting(input: &Value, figure: &str, name: &str) -> Option<Vec<f64>> {
    if name.starts_with("Poisson mean") {
        assert_eq!(figure, "interval95", "{name}");
        let count = Count::new(input["count"].as_u64().unwrap(), 1.0).unwrap();
        return Some(ends(count.interval(Level::P95)));
    }
    if name.starts_with("two Poisson rates") {
        let (count, exposure) = (counts(&input["count"]), list(&input["exposure"]));
        let side = |at: usize| Count::new(count[at], exposure[at]).unwrap();
        let found = compare_rates(side(0), side(1), Tail::TwoSided, Level::P95).unwrap();
        return Some(match figure {
            "p_two_sided" => vec![found.p],
            "ratio" => vec![found.ratio.unwrap()],
            _ => panic!("{name}: unknown figure {figure}"),
        });
    }
    // Change points have their own test beside the method that finds them.
    if name.contains("change points") || input.get("penalty").is_some() {
        return None;
    }
    panic!("unknown case {name}")
}

fn check(file: &str, compute: impl Fn(&Value, &str, &str) -> Option<Vec<f64>>) {
    for case in cases(file) {
        let name = case["name"].as_str().unwrap();
        let tolerance = case["tolerance"].as_f64().unwrap();
        let expected = case["expected"].as_object().unwrap();
        assert!(!expected.is_empty(), "{name}");
        for (figure, wanted) in expected {
            let Some(got) = compute(&case["input"], figure, name) else { continue };
            let wanted = if wanted.is_array() { list(wanted) } else { vec![wanted.as_f64().unwrap()] };
            assert_eq!(got.len(), wanted.len(), "{name}: {figure}");
            for (got, wanted) in got.iter().zip(&wanted) {
                assert!((got - wanted).abs() <= tolerance, "{name}: {figure} is {got}, not {wanted}");
            }
        }
    }
}

#[test]
fn exact_tests() {
    check("exact_tests.json", |input, figure, name| Some(exact(input, figure, name)));
}

#[test]
fn counts_over_time() {
    check("counts_and_change.json", counting);
}
