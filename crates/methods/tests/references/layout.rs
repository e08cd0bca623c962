//! Placing words against reference values (tests/reference/layout.json), against all placings tried, and absurd input.

use crate::read::cases;
use proptest::prelude::*;
use sayso_methods::board::*;
use serde_json::Value;

fn table(value: &Value) -> Vec<Vec<f64>> {
    let row = |r: &Value| r.as_array().unwrap().iter().map(|v| v.as_f64().unwrap()).collect();
    value.as_array().unwrap().iter().map(row).collect()
}

#[test]
fn every_reference_case_holds() {
    for case in &cases("layout.json") {
        let name = case["name"].as_str().unwrap();
        let (flow, distance) = (table(&case["input"]["flow"]), table(&case["input"]["distance"]));
        let problem = Problem::new(flow.len(), distance.len()).unwrap().with_flow(&flow, &distance).unwrap();
        let (optimum, tolerance) =
            (case["expected"]["optimum"].as_f64().unwrap(), case["tolerance"].as_f64().unwrap_or(0.0));
        if let Some(known) = case["expected"].get("an_optimal_placing") {
            let places: Vec<usize> = known.as_array().unwrap().iter().map(|p| p.as_u64().unwrap() as usize).collect();
            assert_eq!(problem.cost(&places).unwrap(), case["expected"]["its_cost"].as_f64().unwrap(), "{name}");
        }
        let found = solve(&problem, None, &Effort::default()).unwrap();
        assert!((found.cost - optimum).abs() <= tolerance, "{name}: {}", found.cost);
        assert_eq!(problem.cost(&found.places).unwrap(), found.cost, "{name}");
        assert!(matches!(found.proof, Proof::Best { .. }), "{name}: {:?}", found.proof);
    }
}

// Every placing tried: the cheapest cost.
fn cheapest(problem: &Problem, words: usize, places: usize, fixed: Option<(usize, usize)>) -> f64 {
    fn fill(problem: &Problem, words: usize, places: usize, at: &mut Vec<usize>, fixed: Option<(usize, usize)>) -> f64 {
        if at.len() == words {
            return problem.cost(at).unwrap();
        }
        let mut best = f64::INFINITY;
        for place in 0..places {
            let allowed = fixed.is_none_or(|(w, p)| (w == at.len()) == (p == place));
            if allowed && !at.contains(&place) {
                at.push(place);
                best = best.min(fill(problem, words, places, at, fixed));
                at.pop();
            }
        }
        best
    }
    fill(problem, words, places, &mut Vec::new(), fixed)
}

fn any_table(rows: usize, columns: usize, low: f64) -> impl Strategy<Value = Vec<Vec<f64>>> {
    proptest::collection::vec(proptest::collection::vec(low..10.0_f64, columns), rows)
}

type Numbers = Vec<Vec<f64>>;

fn any_problem() -> impl Strategy<Value = (usize, usize, Numbers, Numbers, Numbers, bool)> {
    (1..=4_usize, 0..=2_usize).prop_flat_map(|(words, more)| {
        let places = words + more;
        (
            Just(words),
            Just(places),
            any_table(words, words, -10.0),
            any_table(places, places, 0.0),
            any_table(words, places, -10.0),
            any::<bool>(),
        )
    })
}

proptest! {
    #[test]
    fn the_placing_is_the_cheapest_of_all_and_says_so((words, places, flow, distance, cost, fix) in any_problem()) {
        let mut problem = Problem::new(words, places).unwrap()
            .with_flow(&flow, &distance).unwrap()
            .with_flow(&distance[..words].iter().map(|r| r[..words].to_vec()).collect::<Vec<_>>(), &distance).unwrap()
            .with_place_cost(&cost).unwrap();
        let fixed = fix.then_some((words - 1, places - 1));
        if let Some((word, place)) = fixed {
            problem = problem.with_fixed(word, place).unwrap();
        }
        // Without tabu rounds, so that branch and bound alone has to find it.
        let found = solve(&problem, None, &Effort { starts: 0, ..Effort::default() }).unwrap();
        let expected = cheapest(&problem, words, places, fixed);
        prop_assert!((found.cost - expected).abs() < 1e-6, "{} against {expected}", found.cost);
        let is_best = matches!(found.proof, Proof::Best { .. });
        prop_assert!(is_best);
        prop_assert!(fixed.is_none_or(|(w, p)| found.places[w] == p));
    }

    #[test]
    fn a_bound_is_never_above_the_optimum((words, places, flow, distance, cost, _) in any_problem()) {
        let problem = Problem::new(words, places).unwrap()
            .with_flow(&flow, &distance).unwrap().with_place_cost(&cost).unwrap();
        let found = solve(&problem, None, &Effort { prove_up_to: 0, ..Effort::default() }).unwrap();
        let expected = cheapest(&problem, words, places, None);
        match found.proof {
            Proof::Found { bound, .. } => prop_assert!(bound <= expected + 1e-6 && expected <= found.cost + 1e-6),
            Proof::Best { .. } => prop_assert!((found.cost - expected).abs() < 1e-6),
        }
    }

    #[test]
    fn any_numbers_give_a_placing_or_a_typed_refusal(values in proptest::collection::vec(any::<f64>(), 27)) {
        let table = |from: usize| -> Vec<Vec<f64>> { values[from..from + 9].chunks(3).map(<[f64]>::to_vec).collect() };
        let problem = Problem::new(3, 3).unwrap().with_flow(&table(0), &table(9)).and_then(|p| p.with_place_cost(&table(18)));
        if let Ok(problem) = problem {
            let found = solve(&problem, None, &Effort::default()).unwrap();
            prop_assert!(!found.cost.is_nan());
        }
    }
}

#[test]
fn degenerate_problems_have_typed_answers() {
    assert!(matches!(Problem::new(3, 2), Err(PlacingError::TooFewPlaces { words: 3, places: 2 })));
    assert!(matches!(Problem::new(1, 100_000), Err(PlacingError::TooMany(_))));
    let none = solve(&Problem::new(0, 4).unwrap(), None, &Effort::default()).unwrap();
    assert_eq!((none.cost, none.places.len()), (0.0, 0));
    let equal = solve(&Problem::new(4, 4).unwrap(), None, &Effort::default()).unwrap();
    assert!(equal.cost == 0.0 && matches!(equal.proof, Proof::Best { .. }));
    let two = Problem::new(2, 2).unwrap();
    assert!(matches!(two.clone().with_flow(&[vec![0.0]], &[vec![0.0]]), Err(PlacingError::Size { .. })));
    let bad = [vec![0.0, f64::NAN], vec![0.0, 0.0]];
    let zero = [vec![0.0, 0.0], vec![0.0, 0.0]];
    assert!(matches!(two.clone().with_flow(&bad, &zero), Err(PlacingError::Value { .. })));
    let negative = [vec![0.0, -1.0], vec![0.0, 0.0]];
    assert!(matches!(two.clone().with_flow(&zero, &negative), Err(PlacingError::Value { .. })));
    let fixed = two.with_fixed(0, 1).unwrap();
    assert!(fixed.clone().with_fixed(1, 1).is_err() && fixed.clone().with_fixed(0, 0).is_err());
    assert!(solve(&fixed, Some(&[0, 1]), &Effort::default()).is_err(), "a start that moves a fixed word");
    assert!(solve(&fixed, Some(&[1, 1]), &Effort::default()).is_err());
    assert_eq!(solve(&fixed, None, &Effort::default()).unwrap().places, [1, 0]);
}

#[test]
fn an_unfinished_proof_says_so() {
    let size = 12;
    let table = |k: usize| -> Vec<Vec<f64>> {
        let cell = |i: usize, j: usize| if i == j { 0.0 } else { ((i.min(j) * 7 + i.max(j) * k) % 11) as f64 };
        (0..size).map(|i| (0..size).map(|j| cell(i, j)).collect()).collect()
    };
    let problem = Problem::new(size, size).unwrap().with_flow(&table(5), &table(3)).unwrap();
    let effort = Effort { nodes: 3, ..Effort::default() };
    let found = solve(&problem, None, &effort).unwrap();
    match found.proof {
        Proof::Found { bound, nodes: 3 } => assert!(bound < found.cost),
        other => panic!("{other:?}"),
    }
    assert_eq!(found, solve(&problem, None, &effort).unwrap(), "the same seed gives the same answer");
}
