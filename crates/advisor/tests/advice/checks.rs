//! Orders, sizes and readings of planned checks.

use sayso_advisor::checks::{order, size};
use sayso_methods::stats::{BetaPrior, Direction, Proportion, binomial_bayes_factor};
use sayso_model::{ProbeDesign, ProbeId, ProbePlan, WordId};
use std::collections::BTreeMap;
use uuid::Uuid;

fn word(n: u128) -> WordId {
    WordId(Uuid::from_u128(n))
}

fn plan(words: u128, choices: u16, trials: u16, seed: u32) -> ProbePlan {
    ProbePlan {
        probe: ProbeId(Uuid::from_u128(1000)),
        design: ProbeDesign::PickForWord,
        words: (1..=words).map(word).collect(),
        choices,
        trials,
        seed,
        blind: true,
    }
}

#[test]
fn an_order_follows_from_the_plan_alone() {
    let plan = plan(3, 2, 31, 7);
    let first = order(&plan).unwrap();
    assert_eq!(first, order(&plan.clone()).unwrap());
    assert_ne!(first, order(&ProbePlan { seed: 8, ..plan.clone() }).unwrap());
    assert_eq!(first.iter().map(|t| t.number).collect::<Vec<_>>(), (1..=31).collect::<Vec<_>>());
    let mut times = BTreeMap::new();
    for t in &first {
        assert_eq!(t.laid_out[t.right_place], t.word);
        assert_eq!(t.laid_out.len(), 2);
        assert_ne!(t.laid_out[0], t.laid_out[1]);
        *times.entry(t.word).or_insert(0) += 1;
    }
    // Each a third on average: at most 3 or at least 20 of 31 come once in a thousand draws.
    assert!(times.len() == 3 && times.values().all(|n| (4..20).contains(n)), "{times:?}");
    // Buttons keep their places.
    let press = order(&ProbePlan { design: ProbeDesign::PressForThing, choices: 3, ..plan.clone() }).unwrap();
    assert!(press.iter().all(|t| t.laid_out == plan.words && t.laid_out[t.right_place] == t.word));
}

#[test]
fn plans_that_do_not_fit_together_are_refused() {
    for wrong in [plan(2, 3, 10, 1), plan(3, 1, 10, 1), plan(3, 2, 0, 1), plan(0, 2, 10, 1), plan(1, 2, 10, 1)] {
        assert!(order(&wrong).is_err(), "{wrong:?}");
    }
    let twice = ProbePlan { words: vec![word(1), word(1)], ..plan(2, 2, 10, 1) };
    assert!(order(&twice).is_err());
    assert!(order(&plan(2, 2, u16::MAX, 1)).is_ok());
}

#[test]
fn a_size_keeps_what_it_promises() {
    for (words, choices, rate) in [(2, 2, 0.9), (3, 3, 0.8), (8, 2, 0.75), (1, 4, 0.99)] {
        let s = size(words, choices, rate).unwrap();
        assert_eq!(s.trials, s.per_word * words as u64);
        assert!(s.false_alarm <= s.alpha / words as f64 && s.power >= 0.8, "{s:?}");
        let e = |k: u64| {
            let seen = Proportion::new(k, s.per_word).unwrap();
            binomial_bayes_factor(seen, s.chance, BetaPrior::EVEN, Direction::Above).unwrap().factor()
        };
        let bar = words as f64 / s.alpha;
        assert!(e(s.critical) >= bar && e(s.critical - 1) < bar, "the bar is the lowest that holds");
    }
    assert_eq!(size(4, 2, 0.9).unwrap().per_word, 24);
    for (words, choices, rate) in [(0, 2, 0.9), (2, 1, 0.9), (2, 0, 0.9), (2, 2, 0.5), (2, 2, f64::NAN), (2, 2, 0.501)]
    {
        assert!(size(words, choices, rate).is_err());
    }
}
