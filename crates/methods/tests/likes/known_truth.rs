//! Likes with a truth that is known: a side habit, a change of liking, a daily cycle, a ranking gone stale.

use sayso_methods::likes::*;
use sayso_methods::stats::{Level, Proportion};

#[test]
fn side_is_told_apart_from_liking() {
    // Items are liked alike; the learner takes the left four times in five.
    let trials: Vec<PairTrial> = (0..60)
        .map(|t| {
            let (a, b) = [(0, 1), (1, 2), (2, 0), (1, 0), (2, 1), (0, 2)][t % 6];
            let outcome = if t % 5 == 4 { PairOutcome::Right } else { PairOutcome::Left };
            PairTrial { left: a, right: b, outcome }
        })
        .collect();
    let fit = fit_pairs(3, &trials, &PairModel::default()).unwrap();
    let side = fit.side.unwrap();
    assert!(side.interval.low > 0.5 && side.interval.contains(4.0_f64.ln()), "{side:?}");
    assert!(fit.strengths.iter().all(|s| s.interval.contains(0.0)), "{:?}", fit.strengths);
    assert!(side_bias(48, 12, Level::P95).unwrap().p < 1e-4, "48 of 60 on the left");
}

#[test]
fn sides_are_counterbalanced_as_trials_are_added() {
    let mut history: Vec<PairTrial> = Vec::new();
    for t in 0..40 {
        let fit =
            fit_pairs(4, &history, &PairModel { prior: Prior::Weak { alpha: 0.2 }, ..PairModel::default() }).unwrap();
        let next = next_pair(&fit, &history, Goal::Strengths, 100, t).unwrap();
        let outcome = if t % 3 == 0 { PairOutcome::Right } else { PairOutcome::Left };
        history.push(PairTrial { left: next.left, right: next.right, outcome });
    }
    for item in 0..4 {
        let left = history.iter().filter(|t| t.left == item).count() as i64;
        let right = history.iter().filter(|t| t.right == item).count() as i64;
        assert!((left - right).abs() <= 2, "item {item}: {left} left, {right} right");
    }
    assert!(history.windows(2).all(|w| {
        let pair = |t: &PairTrial| (t.left.min(t.right), t.left.max(t.right));
        pair(&w[0]) != pair(&w[1])
    }));
}

#[test]
fn likes_by_hour() {
    // Food wins in the morning, the ball in the evening, eight sessions each.
    let trials: Vec<HourTrial> = (0..16)
        .flat_map(|session| {
            let morning = session % 2 == 0;
            (0..6).map(move |t| {
                let flipped = t % 2 == 1;
                let food_wins = morning != (t == 5);
                let (left, right) = if flipped { (1, 0) } else { (0, 1) };
                let outcome = if food_wins == (left == 0) { PairOutcome::Left } else { PairOutcome::Right };
                let hour = if morning { 8.0 } else { 20.0 };
                HourTrial { trial: PairTrial { left, right, outcome }, hour, session, weight: 1.0 }
            })
        })
        .collect();
    let fit = fit_pairs_by_hour(2, &trials, Level::P95, 199, 5).unwrap();
    assert!(fit.p < 0.02, "{}", fit.p);
    assert!(fit.at(8.0).unwrap()[0].interval.low > 0.0);
    assert!(fit.at(20.0).unwrap()[0].interval.high < 0.0);
    assert!(fit_pairs_by_hour(2, &trials[..12], Level::P95, 199, 5).is_err(), "two sessions show no daily cycle");
}

#[test]
fn stale_rankings() {
    let state = RankingState { age_days: Some(1.0), half_life_days: 30.0, top_probability: 0.9, turned_down: None };
    let rule = RetestRule::default();
    let with = |change: fn(&mut RankingState)| {
        let mut changed = state;
        change(&mut changed);
        retest(&changed, &rule).unwrap()
    };
    assert_eq!(retest(&state, &rule).unwrap(), Retest::InDays(29.0));
    assert_eq!(with(|s| s.age_days = None), Retest::Now(RetestReason::NeverTested));
    assert_eq!(with(|s| s.age_days = Some(40.0)), Retest::Now(RetestReason::TooOld(10.0)));
    assert_eq!(with(|s| s.half_life_days = f64::INFINITY), Retest::InDays(f64::INFINITY));
    assert!(matches!(with(|s| s.top_probability = 0.3), Retest::Now(RetestReason::TopUnclear(_))));
    let no = |s: &mut RankingState| s.turned_down = Some(Proportion::new(7, 9).unwrap());
    assert!(matches!(with(no), Retest::Now(RetestReason::TurnedDown(_))));
    assert!(retest(&RankingState { half_life_days: f64::NAN, ..state }, &rule).is_err());
}
