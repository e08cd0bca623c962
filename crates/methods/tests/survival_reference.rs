//! Reference values of `tests/reference/survival.json`: every case, every expected figure, at its stated tolerance.
//! A case or figure unknown here fails.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use sayso_methods::learning::latency::{SurvivalCurve, Wait, cox_regression, kaplan_meier, log_rank};
use sayso_methods::stats::Level;
use serde_json::Value;

fn list(value: &Value) -> Vec<f64> {
    value.as_array().unwrap().iter().map(|v| v.as_f64().unwrap()).collect()
}

fn waits(value: &Value) -> Vec<Wait> {
    list(&value["time"])
        .into_iter()
        .zip(value["event"].as_array().unwrap())
        .map(|(time, event)| Wait { time, event: event.as_i64() == Some(1) || event.as_bool() == Some(true) })
        .collect()
}

fn curve_figure(curve: &SurvivalCurve, figure: &str, name: &str) -> Vec<f64> {
    let points = curve.points.iter();
    match figure {
        "time" => points.map(|p| p.time).collect(),
        "survival" => points.map(|p| p.survival).collect(),
        "lower95_loglog" => points.map(|p| p.interval.low).collect(),
        "upper95_loglog" => points.map(|p| p.interval.high).collect(),
        "median" => curve.median().into_iter().collect(),
        _ => match figure.strip_prefix("restricted_mean_").and_then(|rest| rest.strip_suffix('s')) {
            Some(cut) => vec![curve.restricted_mean(cut.parse().unwrap()).unwrap().mean],
            None => panic!("{name}: unknown figure {figure}"),
        },
    }
}

#[test]
fn every_case() {
    let path = concat!(env!("CARGO_MANIFEST_DIR"), "/../../tests/reference/survival.json");
    let file: Value = serde_json::from_str(&std::fs::read_to_string(path).unwrap()).unwrap();
    let cases = file["cases"].as_array().unwrap();
    assert!(!cases.is_empty());
    let two_groups = cases.iter().find(|c| c["input"].get("a").is_some()).expect("the log-rank case");
    for case in cases {
        let name = case["name"].as_str().unwrap();
        let tolerance = case["tolerance"].as_f64().unwrap();
        for (figure, wanted) in case["expected"].as_object().unwrap() {
            let input = if case["input"].get("see").is_some() { &two_groups["input"] } else { &case["input"] };
            let got = if name.starts_with("Kaplan-Meier") || name.starts_with("latency") {
                curve_figure(&kaplan_meier(&waits(input), Level::P95).unwrap(), figure, name)
            } else if name.starts_with("log-rank") {
                let found = log_rank(&[&waits(&input["a"]), &waits(&input["b"])]).unwrap();
                match figure.as_str() {
                    "chi2" => vec![found.chi2],
                    "p" => vec![found.p],
                    _ => panic!("{name}: unknown figure {figure}"),
                }
            } else if name.starts_with("Cox regression") {
                let (a, b) = (waits(&input["a"]), waits(&input["b"]));
                let second: Vec<f64> = a.iter().map(|_| 0.0).chain(b.iter().map(|_| 1.0)).collect();
                let fit = cox_regression(&[a, b].concat(), &[&second], Level::P95).unwrap();
                match figure.as_str() {
                    "coef" => vec![fit.terms[0].coef],
                    "se" => vec![fit.terms[0].standard_error],
                    _ => panic!("{name}: unknown figure {figure}"),
                }
            } else {
                panic!("unknown case {name}")
            };
            let wanted = match wanted {
                Value::Array(_) => list(wanted),
                Value::Null => vec![],
                single => vec![single.as_f64().unwrap()],
            };
            assert_eq!(got.len(), wanted.len(), "{name}: {figure}");
            for (got, wanted) in got.iter().zip(&wanted) {
                assert!((got - wanted).abs() <= tolerance, "{name}: {figure} is {got}, not {wanted}");
            }
        }
    }
}
