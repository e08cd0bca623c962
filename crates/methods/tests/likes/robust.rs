//! Whatever comes in, likes, latency, agreement and exact tests answer with numbers or a typed error: no NaN, no panic.

use proptest::prelude::*;
use sayso_methods::agreement::{RatingTable, Scale, Weighting, alpha_interval, krippendorff_alpha};
use sayso_methods::learning::latency::{Wait, kaplan_meier};
use sayso_methods::likes::*;
use sayso_methods::stats::*;

fn sound(interval: &Interval) {
    assert!(!interval.low.is_nan() && !interval.high.is_nan() && interval.low <= interval.high, "{interval:?}");
}

fn sound_fit(fit: &ChoiceFit) {
    for s in &fit.strengths {
        assert!(s.value.is_finite() && s.standard_error.is_finite(), "{s:?}");
        assert!(s.interval.contains(s.value), "{s:?}");
        sound(&s.interval);
    }
    let sum: f64 = fit.strengths.iter().map(|s| s.value).sum();
    assert!(sum.abs() < 1e-6, "strengths are about their mean: {sum}");
    for term in [fit.side, fit.nothing, fit.both].into_iter().flatten() {
        assert!(term.value.is_finite() && (0.0..=1.0).contains(&term.p), "{term:?}");
        sound(&term.interval);
    }
}

fn outcome() -> impl Strategy<Value = PairOutcome> {
    prop_oneof![
        6 => Just(PairOutcome::Left),
        6 => Just(PairOutcome::Right),
        2 => Just(PairOutcome::Neither),
        1 => Just(PairOutcome::Both)
    ]
}

fn pair_trials(items: usize, most: usize) -> impl Strategy<Value = Vec<PairTrial>> {
    proptest::collection::vec((0..items, 1..items, outcome()), 0..most).prop_map(move |rows| {
        rows.into_iter()
            .map(|(left, step, outcome)| PairTrial { left, right: (left + step) % items, outcome })
            .collect()
    })
}

fn rankings(items: usize) -> impl Strategy<Value = Vec<Ranking>> {
    let one = (Just((0..items).collect::<Vec<usize>>()).prop_shuffle(), 0..=items, 0..=items, any::<bool>());
    proptest::collection::vec(one, 0..6).prop_map(|rows| {
        rows.into_iter()
            .map(|(order, a, b, turned_away)| {
                let (cut, end) = (a.min(b), a.max(b));
                Ranking { chosen: order[..cut].to_vec(), left_over: order[cut..end].to_vec(), turned_away }
            })
            .collect()
    })
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(40))]

    #[test]
    fn pairs_always_give_an_answer_with_a_prior(trials in (2_usize..7).prop_flat_map(|n| (Just(n), pair_trials(n, 40)))) {
        let (items, trials) = trials;
        for prior in [Prior::Learned, Prior::Weak { alpha: 0.1 }] {
            let fit = fit_pairs(items, &trials, &PairModel { prior, ..PairModel::default() }).unwrap();
            sound_fit(&fit);
            let next = next_pair(&fit, &trials, Goal::Strengths, 200, 3).unwrap();
            prop_assert!(next.left != next.right && next.gain >= 0.0);
            if items > 2 {
                let set = top_set(&fit, 1, 0.0, 200, 3).unwrap();
                prop_assert!((0.0..=1.0).contains(&set.probability));
                prop_assert!((set.each.iter().sum::<f64>() - 1.0).abs() < 1e-9);
            }
        }
        match fit_pairs(items, &trials, &PairModel { prior: Prior::None, side: false, ..PairModel::default() }) {
            Ok(fit) => sound_fit(&fit),
            Err(error) => prop_assert!(matches!(error, LikesError::Disconnected { .. } | LikesError::Separated { .. }), "{error}"),
        }
        for score in paired_scores(items, &trials, Level::P95).unwrap() {
            sound(&score.interval);
        }
    }

    #[test]
    fn arrays_always_give_an_answer_with_a_prior(data in (2_usize..7).prop_flat_map(|n| (Just(n), rankings(n)))) {
        let (items, rankings) = data;
        sound_fit(&fit_rankings(items, &rankings, &RankModel::default()).unwrap());
        sound_fit(&plackett_luce(items, &rankings, Prior::Weak { alpha: 0.1 }, Level::P95).unwrap());
        match plackett_luce(items, &rankings, Prior::None, Level::P95) {
            Ok(fit) => sound_fit(&fit),
            Err(error) => prop_assert!(matches!(error, LikesError::Disconnected { .. } | LikesError::Separated { .. }), "{error}"),
        }
        for score in multiple_scores(items, &rankings, Level::P95).unwrap() {
            sound(&score.interval);
        }
    }

    #[test]
    fn waits_of_any_shape(rows in proptest::collection::vec((0_u8..12, any::<bool>()), 0..40)) {
        let waits: Vec<Wait> = rows.iter().map(|(t, event)| Wait { time: f64::from(*t) / 2.0, event: *event }).collect();
        if let Ok(curve) = kaplan_meier(&waits, Level::P95) {
            let mut last = 1.0;
            for point in &curve.points {
                prop_assert!((0.0..=last).contains(&point.survival));
                sound(&point.interval);
                prop_assert!(point.interval.contains(point.survival));
                last = point.survival;
            }
        } else {
            prop_assert!(waits.is_empty());
        }
    }

    #[test]
    fn scores_of_any_shape(rows in proptest::collection::vec((proptest::option::of(0_u8..4), proptest::option::of(0_u8..4)), 0..20)) {
        let (first, second): (Vec<Option<u8>>, Vec<Option<u8>>) = rows.iter().copied().unzip();
        let both = [first, second].map(|column| column.iter().map(|score| score.map(f64::from)).collect::<Vec<_>>());
        for scale in [Scale::Nominal, Scale::Ordinal, Scale::Interval, Scale::Ratio] {
            if let Ok(found) = krippendorff_alpha(&both, scale) {
                prop_assert!(found.alpha <= 1.0 + 1e-12 && found.alpha.is_finite());
            }
            if let Ok(found) = alpha_interval(&both, scale, Level::P95, 200, 1) {
                sound(&found.interval);
            }
        }
        let (a, b): (Vec<usize>, Vec<usize>) = rows.iter().filter_map(|r| Some((r.0? as usize, r.1? as usize))).unzip();
        if let Ok(table) = RatingTable::from_ratings(&a, &b, 4) {
            for weighting in [Weighting::Unweighted, Weighting::Linear, Weighting::Quadratic] {
                if let Ok(kappa) = table.kappa(weighting, Level::P95) {
                    prop_assert!(kappa.kappa.is_finite() && kappa.kappa <= 1.0 + 1e-12 && kappa.standard_error.is_finite());
                }
            }
        }
    }

    #[test]
    fn exact_tests_of_any_shape(k in 0_u64..60, more in 0_u64..60, p in 0.0_f64..=1.0, a in 0_u64..30, b in 0_u64..30) {
        let seen = Proportion::new(k, k + more).unwrap();
        for tail in [Tail::Greater, Tail::Less, Tail::TwoSided] {
            prop_assert!((0.0..=1.0).contains(&seen.test(p, tail).unwrap()));
            let table = TwoByTwo([[k, more], [a, b]]).fisher(tail).unwrap();
            prop_assert!((0.0..=1.0).contains(&table.p));
            prop_assert!(!table.odds_ratio.is_some_and(f64::is_nan));
        }
        let interval = seen.clopper_pearson(Level::P95);
        sound(&interval);
        prop_assert!(seen.share().is_none_or(|s| interval.contains(s)));
        let rates = compare_rates(Count::new(k, 1.5).unwrap(), Count::new(a, 0.5).unwrap(), Tail::TwoSided, Level::P95).unwrap();
        prop_assert!((0.0..=1.0).contains(&rates.p));
        sound(&rates.ratio_interval);
        if p > 0.0 && p < 1.0 {
            for direction in [Direction::Any, Direction::Above, Direction::Below] {
                prop_assert!(!binomial_bayes_factor(seen, p, BetaPrior::EVEN, direction).unwrap().ln.is_nan());
            }
        }
    }
}

#[test]
fn maximum_likelihood_says_why_not() {
    let alone = bradley_terry(&[[0.0, 0.0], [0.0, 0.0]], Prior::None, Level::P95);
    assert_eq!(alone.unwrap_err(), LikesError::Disconnected { groups: vec![vec![0], vec![1]] });
    let always = bradley_terry(&[[0.0, 4.0, 3.0], [0.0, 0.0, 2.0], [0.0, 2.0, 0.0]], Prior::None, Level::P95);
    assert_eq!(always.unwrap_err(), LikesError::Separated { ahead: vec![0] });
    let separate = plackett_luce(4, &[Ranking::complete(&[0, 1]), Ranking::complete(&[2, 3])], Prior::None, Level::P95);
    assert_eq!(separate.unwrap_err(), LikesError::Disconnected { groups: vec![vec![0, 1], vec![2, 3]] });
}

#[test]
fn nothing_known_gives_back_the_prior() {
    for prior in [Prior::Learned, Prior::Weak { alpha: 0.1 }] {
        let fit = fit_pairs(5, &[], &PairModel { prior, ..PairModel::default() }).unwrap();
        assert_eq!(fit.n, 0);
        for s in &fit.strengths {
            assert!(s.value.abs() < 0.2 && s.interval.low < -1.5 && s.interval.high > 1.5, "{s:?}");
        }
    }
    assert!(matches!(fit_pairs(1, &[], &PairModel::default()), Err(LikesError::Stats(StatsError::TooFew { .. }))));
}

#[test]
fn bad_input_is_named() {
    let same = PairTrial { left: 1, right: 1, outcome: PairOutcome::Left };
    assert_eq!(fit_pairs(3, &[same], &PairModel::default()).unwrap_err(), LikesError::Repeated { item: 1 });
    let far = PairTrial { left: 0, right: 9, outcome: PairOutcome::Left };
    assert_eq!(fit_pairs(3, &[far], &PairModel::default()).unwrap_err(), LikesError::UnknownItem { item: 9, items: 3 });
    assert!(bradley_terry(&[[0.0, f64::NAN], [1.0, 0.0]], Prior::HOME, Level::P95).is_err());
    assert!(bradley_terry(&[[0.0, -1.0], [1.0, 0.0]], Prior::HOME, Level::P95).is_err());
    assert!(kaplan_meier(&[Wait::ended(f64::NAN)], Level::P95).is_err());
    assert!(kaplan_meier(&[Wait::ended(-1.0)], Level::P95).is_err());
}

#[test]
fn weights_of_any_size() {
    let trials: Vec<PairTrial> =
        (0..12).map(|t| PairTrial { left: t % 4, right: (t + 1) % 4, outcome: PairOutcome::Left }).collect();
    for scale in [0.0, 1e-12, 1e-3, 1.0, 1e3, 2e5] {
        let weights: Vec<f64> = (0..12).map(|t| scale * f64::from(t % 5)).collect();
        for prior in [Prior::Learned, Prior::Weak { alpha: 1e-6 }, Prior::Weak { alpha: 1e5 }] {
            let fit = fit_sittings(4, &trials, &weights, &[0; 12], &PairModel { prior, ..PairModel::default() });
            sound_fit(&fit.unwrap_or_else(|error| panic!("{scale} {prior:?}: {error}")));
        }
    }
    assert!(fit_sittings(4, &trials, &[1.0; 11], &[0; 12], &PairModel::default()).is_err());
    assert!(fit_sittings(4, &trials, &[f64::NAN; 12], &[0; 12], &PairModel::default()).is_err());
}

#[test]
fn one_always_wins_many_times() {
    for times in [1.0, 1e3, 1e6, 1e9] {
        for prior in [Prior::Learned, Prior::Weak { alpha: 0.1 }, Prior::Weak { alpha: 1e-4 }] {
            let fit = bradley_terry(&[[0.0, times, times], [0.0, 0.0, times], [0.0; 3]], prior, Level::P95);
            sound_fit(&fit.unwrap_or_else(|error| panic!("{times} {prior:?}: {error}")));
        }
    }
}

#[test]
fn many_units_on_a_fine_scale() {
    let first: Vec<Option<f64>> = (0..20_000).map(|i| Some(f64::from(i) / 7.0)).collect();
    let second: Vec<Option<f64>> = (0..20_000).map(|i| Some(f64::from(i) / 7.0 + 0.01)).collect();
    assert!(krippendorff_alpha(&[&first, &second], Scale::Interval).unwrap().alpha > 0.999);
    assert!(krippendorff_alpha(&[&first, &second], Scale::Ordinal).is_err(), "too fine for order");
}

#[test]
fn a_crowd_of_items_is_quick_and_sound() {
    // 200 items in a circle of strengths; every item meets its next five.
    let items = 200;
    let mut wins = vec![vec![0.0; items]; items];
    for (i, step) in (0..items).flat_map(|i| (1..=5).map(move |step| (i, step))) {
        let j = (i + step) % items;
        wins[i][j] = if (i * 7 + step) % 3 == 0 { 3.0 } else { 1.0 };
        wins[j][i] = 2.0;
    }
    for prior in [Prior::None, Prior::Learned] {
        let fit = bradley_terry(&wins, prior, Level::P95).unwrap();
        assert_eq!(fit.interval_method, IntervalMethod::Normal);
        sound_fit(&fit);
    }
}
