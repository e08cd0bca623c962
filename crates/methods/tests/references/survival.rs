//! Reference values of `tests/reference/survival.json`: every case, every expected figure, at its stated tolerance.
//! A case or figure unknown here fails.

use crate::read::cases;
use sayso_methods::learning::latency::{SurvivalCurve, Wait, kaplan_meier};
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
        _ => panic!("{name}: unknown figure {figure}"),
    }
}

#[test]
fn every_case() {
    for case in &cases("survival.json") {
        let name = case["name"].as_str().unwrap();
        let tolerance = case["tolerance"].as_f64().unwrap();
        for (figure, wanted) in case["expected"].as_object().unwrap() {
            assert!(name.starts_with("Kaplan-Meier") || name.starts_with("latency"), "unknown case {name}");
            let curve = kaplan_meier(&waits(&case["input"]), Level::P95).unwrap();
            let got = curve_figure(&curve, figure, name);
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
