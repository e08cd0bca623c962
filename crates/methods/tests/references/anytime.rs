//! E-values and confidence sequences against `tests/reference/anytime.json`; each case names its source.
#![allow(clippy::cast_possible_truncation, clippy::indexing_slicing)]

use crate::read::cases;
use sayso_methods::stats::Proportion;
use sayso_methods::stats::confidence_sequence::confidence_sequence;
use sayso_methods::stats::evalue::{Bets, SwapCells, holm_on_maxima, swap_bets, table_bets};
use sayso_methods::understanding::pooled_probes::{Answered, probe_evidence, trials_to_plan};
use serde_json::Value;

/// Runs every case whose name begins so; fails where there is none.
fn each(beginning: &str, run: impl Fn(&str, &Value, &Value)) {
    let mut fitting = cases("anytime.json");
    fitting.retain(|c| c["name"].as_str().unwrap().starts_with(beginning));
    assert!(!fitting.is_empty(), "no case begins with {beginning:?}");
    for case in fitting {
        run(case["name"].as_str().unwrap(), &case["input"], &case["expected"]);
    }
}

#[track_caller]
fn near(name: &str, found: f64, wanted: f64) {
    assert!((found - wanted).abs() <= 1e-9 * wanted.abs().max(1.0), "{name}: found {found}, wanted {wanted}");
}

fn number(v: &Value) -> f64 {
    v.as_f64().unwrap()
}

fn counts(v: &Value) -> [u32; 2] {
    [v[0].as_u64().unwrap() as u32, v[1].as_u64().unwrap() as u32]
}

fn compare(name: &str, bets: Bets, expected: &Value) {
    for (found, wanted) in bets.0.iter().zip(expected["by_odds_ratio"].as_array().unwrap()) {
        near(name, found.exp(), number(wanted));
    }
    near(name, bets.ln().exp(), number(&expected["e"]));
}

#[test]
fn closed_blocks_and_sittings() {
    for beginning in ["closed-block", "sitting e-value"] {
        each(beginning, |name, input, expected| {
            let tables = input["tables"].as_array().unwrap().iter();
            let bets = tables.map(|t| table_bets([counts(&t[0]), counts(&t[1])])).fold(Bets::NONE, Bets::and);
            compare(name, bets, expected);
        });
    }
}

#[test]
fn swaps() {
    each("swap", |name, input, expected| {
        let blocks = input["blocks"].as_array().unwrap().iter();
        let bets = blocks.map(|b| {
            swap_bets(SwapCells {
                first_after_first: counts(&b["w_after_w"]),
                first_after_second: counts(&b["w_after_j"]),
                second_after_second: counts(&b["j_after_j"]),
                second_after_first: counts(&b["j_after_w"]),
            })
        });
        compare(name, bets.fold(Bets::NONE, Bets::and), expected);
    });
}

#[test]
fn blind_checks() {
    each("blind check", |name, input, expected| {
        let choices = (1.0 / number(&input["chance"])).round() as u16;
        let [right, wrong] = ["right", "wrong"].map(|k| input[k].as_u64().unwrap() as usize);
        let answers: Vec<Answered> = (0..right + wrong).map(|i| Answered { choices, right: i < right }).collect();
        near(name, *probe_evidence(&answers).unwrap().last().unwrap(), number(&expected["ln_e"]));
    });
}

#[test]
fn trials_planned() {
    each("trials to plan", |name, input, expected| {
        let words = input["words"].as_u64().unwrap() as usize;
        let choices = (1.0 / number(&input["chance"])).round() as u16;
        let [rate, alpha, power] = ["rate", "alpha", "power"].map(|k| number(&input[k]));
        let plan = trials_to_plan(words, choices, rate, alpha, power, 400).unwrap();
        assert_eq!(plan.n, expected["n"].as_u64().unwrap(), "{name}");
        near(name, plan.power, number(&expected["power"]));
    });
}

#[test]
fn shares_read_at_any_time() {
    each("confidence sequence", |name, input, expected| {
        let seen = Proportion::new(input["k"].as_u64().unwrap(), input["n"].as_u64().unwrap()).unwrap();
        let found = confidence_sequence(seen, number(&input["t_opt"])).unwrap();
        near(name, found.low, number(&expected["interval95"][0]));
        near(name, found.high, number(&expected["interval95"][1]));
    });
}

#[test]
fn claims_that_stay() {
    each("claims that stay", |name, input, expected| {
        let ln: Vec<f64> = input["max_e"].as_array().unwrap().iter().map(|e| number(e).ln()).collect();
        for (found, wanted) in holm_on_maxima(&ln).iter().zip(expected["adjusted_p"].as_array().unwrap()) {
            near(name, *found, number(wanted));
        }
    });
}
