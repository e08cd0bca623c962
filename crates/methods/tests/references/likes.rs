//! Reference values of `tests/reference/choice_models.json` and `preference_scoring.json`: every case, every expected figure, at
//! its stated tolerance. A case or figure unknown here fails.

use crate::read::cases;
use sayso_methods::likes::{
    ChoiceScore, FreeAccessSession, PairOutcome, PairTrial, Prior, Ranking, SingleItem, Tournament, bradley_terry,
    consistency, free_access_scores, multiple_scores, paired_scores, plackett_luce, side_bias, single_item_scores,
};
use sayso_methods::stats::Level;
use serde_json::{Map, Value};
use std::collections::BTreeSet;

fn list(value: &Value) -> Vec<f64> {
    value.as_array().unwrap().iter().map(|v| v.as_f64().unwrap()).collect()
}

fn matrix(value: &Value) -> Vec<Vec<f64>> {
    value.as_array().unwrap().iter().map(list).collect()
}

fn prior(input: &Value) -> Prior {
    match input.get("alpha").and_then(Value::as_f64) {
        Some(alpha) if alpha > 0.0 => Prior::Weak { alpha },
        _ => Prior::None,
    }
}

fn choice_model(input: &Value, figure: &str, name: &str) -> Vec<f64> {
    let unknown = || panic!("{name}: unknown figure {figure}");
    if name.starts_with("Bradley-Terry") || name.starts_with("Plackett-Luce") {
        let fit = if input.get("rankings_best_first").is_some() {
            let rankings: Vec<Vec<usize>> = matrix(&input["rankings_best_first"])
                .iter()
                .map(|r| r.iter().map(|item| *item as usize).collect())
                .collect();
            let items = rankings.iter().flatten().max().unwrap() + 1;
            let rankings: Vec<Ranking> = rankings.iter().map(|r| Ranking::complete(r)).collect();
            plackett_luce(items, &rankings, prior(input), Level::P95).unwrap()
        } else {
            bradley_terry(&matrix(&input["wins_row_over_column"]), prior(input), Level::P95).unwrap()
        };
        return match figure {
            "log_strength" | "log_strength_sum_zero" => fit.strengths.iter().map(|s| s.value).collect(),
            "standard_error_sum_zero" => fit.strengths.iter().map(|s| s.standard_error).collect(),
            "log_likelihood" => vec![fit.log_likelihood],
            _ => unknown(),
        };
    }
    if name.starts_with("circular triads") {
        let beats: Vec<Vec<u64>> =
            matrix(&input["beats"]).iter().map(|r| r.iter().map(|b| *b as u64).collect()).collect();
        let found = consistency(&Tournament::from_wins(&beats).unwrap()).unwrap();
        return match figure {
            "circular_triads" => vec![found.circular_triads as f64],
            "zeta" => vec![found.zeta],
            _ => unknown(),
        };
    }
    if name.starts_with("side bias") {
        assert_eq!(figure, "p_two_sided", "{name}");
        let (left, n) = (input["left"].as_u64().unwrap(), input["n"].as_u64().unwrap());
        return vec![side_bias(left, n - left, Level::P95).unwrap().p];
    }
    panic!("unknown case {name}")
}

#[test]
fn choice_models() {
    for case in cases("choice_models.json") {
        let name = case["name"].as_str().unwrap();
        let tolerance = case["tolerance"].as_f64().unwrap();
        for (figure, wanted) in case["expected"].as_object().unwrap() {
            let got = choice_model(&case["input"], figure, name);
            let wanted = if wanted.is_array() { list(wanted) } else { vec![wanted.as_f64().unwrap()] };
            assert_eq!(got.len(), wanted.len(), "{name}: {figure}");
            for (got, wanted) in got.iter().zip(&wanted) {
                assert!((got - wanted).abs() <= tolerance, "{name}: {figure} is {got}, not {wanted}");
            }
        }
    }
}

/// Names in order, so that each has an index.
fn names<'a>(found: impl Iterator<Item = &'a str>) -> Vec<String> {
    found.collect::<BTreeSet<_>>().into_iter().map(str::to_owned).collect()
}

fn at(names: &[String], name: &Value) -> usize {
    names.iter().position(|n| n == name.as_str().unwrap()).unwrap()
}

fn keys(map: &Value) -> Vec<String> {
    names(map.as_object().unwrap().keys().map(String::as_str))
}

struct Scored {
    names: Vec<String>,
    offered: Vec<f64>,
    chosen: Vec<f64>,
    percent: Vec<f64>,
}

fn scored(names: Vec<String>, scores: &[ChoiceScore]) -> Scored {
    Scored {
        names,
        offered: scores.iter().map(|s| s.count.n() as f64).collect(),
        chosen: scores.iter().map(|s| s.count.k() as f64).collect(),
        percent: scores.iter().map(|s| s.percent().unwrap()).collect(),
    }
}

fn score(input: &Value, name: &str) -> Scored {
    if name.starts_with("single item") {
        let names = keys(&input["presented"]);
        let count = |kind: &str, item: &String| input[kind][item].as_u64().unwrap();
        let items: Vec<SingleItem> = names
            .iter()
            .map(|n| SingleItem { presented: count("presented", n), approached: count("approached", n) })
            .collect();
        return scored(names, &single_item_scores(&items, Level::P95).unwrap());
    }
    if name.starts_with("paired") {
        let rows: Vec<Vec<Value>> =
            input["trials"].as_array().unwrap().iter().map(|t| t.as_array().unwrap().clone()).collect();
        let names = names(rows.iter().flatten().filter_map(Value::as_str));
        let trials: Vec<PairTrial> = rows
            .iter()
            .map(|row| {
                let (left, right) = (at(&names, &row[0]), at(&names, &row[1]));
                let outcome = match row[2].as_str() {
                    None => PairOutcome::Neither,
                    Some(chosen) if chosen == names[left] => PairOutcome::Left,
                    Some(chosen) if chosen == names[right] => PairOutcome::Right,
                    Some(other) => panic!("{name}: {other} was not offered"),
                };
                PairTrial { left, right, outcome }
            })
            .collect();
        let scores = paired_scores(names.len(), &trials, Level::P95).unwrap();
        return scored(names, &scores);
    }
    if name.starts_with("multiple without replacement") {
        let names = names(input["items"].as_array().unwrap().iter().filter_map(Value::as_str));
        let sessions: Vec<Ranking> = input["chosen_in_order"]
            .as_array()
            .unwrap()
            .iter()
            .map(|session| {
                let chosen: Vec<usize> = session.as_array().unwrap().iter().map(|n| at(&names, n)).collect();
                let left: Vec<usize> = (0..names.len()).filter(|i| !chosen.contains(i)).collect();
                Ranking::turned_away(&chosen, &left)
            })
            .collect();
        let scores = multiple_scores(names.len(), &sessions, Level::P95).unwrap();
        return scored(names, &scores);
    }
    if name.starts_with("free access") {
        let names = keys(&input["engaged_s"]);
        let engaged = names.iter().enumerate().map(|(i, n)| (i, input["engaged_s"][n].as_f64().unwrap())).collect();
        let session = FreeAccessSession { session_s: input["session_s"].as_f64().unwrap(), engaged_s: engaged };
        let scores = free_access_scores(names.len(), &[session], Level::P95).unwrap();
        let percent = scores.iter().map(|s| s.percent().unwrap()).collect();
        return Scored { names, offered: vec![], chosen: vec![], percent };
    }
    panic!("unknown case {name}")
}

#[test]
fn preference_scores() {
    for case in cases("preference_scoring.json") {
        let name = case["name"].as_str().unwrap();
        let tolerance = case["tolerance"].as_f64().unwrap();
        let got = score(&case["input"], name);
        for (figure, wanted) in case["expected"].as_object().unwrap() {
            let column = match figure.as_str() {
                "percent" => &got.percent,
                "offered" => &got.offered,
                "chosen" => &got.chosen,
                _ => panic!("{name}: unknown figure {figure}"),
            };
            let wanted: &Map<String, Value> = wanted.as_object().unwrap();
            assert_eq!(wanted.len(), column.len(), "{name}: {figure}");
            for (item, wanted) in wanted {
                let got = column[got.names.iter().position(|n| n == item).unwrap()];
                assert!((got - wanted.as_f64().unwrap()).abs() <= tolerance, "{name}: {figure} of {item} is {got}");
            }
        }
    }
}
