//! Whatever comes in, learning, understanding and demand answer with a number in its range or a typed refusal: no NaN, no
//! panic, no interval that leaves out its own estimate.

use proptest::prelude::*;
use sayso_methods::demand::DemandError;
use sayso_methods::demand::answers::{Answer, AnsweredPress, PIECES, after_answers};
use sayso_methods::demand::bursts::{BurstSettings, bursts};
use sayso_methods::demand::change::{change_points_with_exposure, default_penalty};
use sayso_methods::demand::gaps::gaps;
use sayso_methods::demand::rates::rates_by_bin;
use sayso_methods::demand::thinning::{ThinningSession, next_step};
use sayso_methods::learning::LearningError;
use sayso_methods::learning::celeration::{ZeroRates, celeration, celeration_from_counts};
use sayso_methods::learning::curve::{CurveSettings, LearningCurve, learning_curve};
use sayso_methods::learning::phases::{Better, compare_phases};
use sayso_methods::learning::rank_sum::rank_sum;
use sayso_methods::learning::readiness::{SessionSigns, readiness};
use sayso_methods::learning::shown::curve_by_day;
use sayso_methods::stats::evalue::{SwapCells, swap_bets, table_bets};
use sayso_methods::stats::{Clumping, Interval, Level, PMethod};
use sayso_methods::understanding::accidents::{Contact, accidents};
use sayso_methods::understanding::association::{PressIn, Unit, association};
use sayso_methods::understanding::ladder::{Growth, LadderRule, WordEvidence, climb};
use sayso_methods::understanding::probe::{ProbeTrial, analyse_probe};
use sayso_methods::understanding::sequences::{SequenceRule, TimedPress, sequences};
use sayso_methods::understanding::{MonteCarlo, UnderstandingError};

fn proper(interval: Interval, least: f64, most: f64) {
    assert!(interval.low <= interval.high, "{interval:?}");
    assert!(interval.low >= least - 1e-9 && interval.high <= most + 1e-9, "{interval:?}");
}

fn probability(p: f64) {
    assert!((0.0..=1.0).contains(&p), "{p}");
}

fn sound(curve: &LearningCurve, trials: &[Option<bool>]) {
    assert_eq!(curve.points.len(), trials.len());
    assert_eq!(curve.n, trials.iter().flatten().count());
    assert!(curve.sigma2.is_finite() && curve.sigma2 >= 0.0);
    for point in &curve.points {
        assert!(point.lower <= point.p && point.p <= point.upper, "{point:?}");
        probability(point.lower);
        probability(point.upper);
    }
    if let Some(trial) = curve.learning_trial {
        assert_eq!(trials[trial - 1].map(|_| ()), Some(()));
    }
}

fn trials() -> impl Strategy<Value = Vec<Option<bool>>> {
    prop::collection::vec(prop_oneof![Just(None), Just(Some(true)), Just(Some(false))], 1..40)
}

/// Numbers that occur and numbers that should not.
fn wild() -> impl Strategy<Value = f64> {
    prop_oneof![
        6 => -50.0f64..50.0,
        2 => prop::sample::select(vec![0.0, -0.0, 1.0, 1e300, -1e300, 1e-300]),
        1 => prop::sample::select(vec![f64::NAN, f64::INFINITY, f64::NEG_INFINITY]),
    ]
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(48))]

    #[test]
    fn curves(trials in trials(), chance in 0.01f64..0.99) {
        let settings = CurveSettings { max_iterations: 200, ..Default::default() };
        match learning_curve(&trials, chance, &settings) {
            Ok(curve) => {
                sound(&curve, &trials);
                // Not being offered anything afterwards takes nothing away from what was learnt.
                let mut longer = trials.clone();
                longer.extend([None; 7]);
                let later = learning_curve(&longer, chance, &settings).unwrap();
                prop_assert_eq!(later.learning_trial, curve.learning_trial);
                prop_assert_eq!(&later.points[..trials.len()], &curve.points[..]);
            }
            Err(error) => prop_assert_eq!(error, LearningError::NoObservations),
        }
        let days: Vec<i32> = (0..trials.len() as i32).map(|k| k / 5).collect();
        if let Ok(shown) = curve_by_day(&trials, &days, chance, Level::P95) {
            sound(&shown, &trials);
        }
    }

    #[test]
    fn phases_and_ranks(a in prop::collection::vec(wild(), 0..30), b in prop::collection::vec(wild(), 0..30)) {
        if let Ok(found) = compare_phases(&a, &b, Better::Smaller) {
            probability(found.nap);
            probability(found.p);
            probability(found.tau_u_p);
            probability(found.pnd);
            proper(found.nap_interval, 0.0, 1.0);
            prop_assert!(found.nap_interval.contains(found.nap));
            prop_assert!(found.tau_u.is_finite());
        } else {
            prop_assert!(a.is_empty() || b.is_empty() || a.iter().chain(&b).any(|v| !v.is_finite()));
        }
    }

    #[test]
    fn celerations(points in prop::collection::vec((wild(), wild(), 0u32..30), 0..30)) {
        let day: Vec<f64> = points.iter().map(|p| p.0).collect();
        let rate: Vec<f64> = points.iter().map(|p| p.1).collect();
        let counts: Vec<u32> = points.iter().map(|p| p.2).collect();
        for found in [
            celeration(&day, &rate, ZeroRates::LeaveOut),
            celeration(&day, &rate, ZeroRates::At(0.01)),
            celeration_from_counts(&day, &counts, &vec![5.0; day.len()]),
        ].into_iter().flatten() {
            prop_assert!(found.times_per_week.is_finite() && found.times_per_week > 0.0);
            if let Some(interval) = found.interval {
                prop_assert!(interval.low <= found.times_per_week && found.times_per_week <= interval.high, "{:?}", found);
            }
        }
    }

    #[test]
    fn readiness_of_anything(
        sessions in prop::collection::vec((0u32..6, 0u32..6, prop::option::of(0.1f64..500.0), 0u32..5, 0u32..5), 0..25)
    ) {
        let signs: Vec<SessionSigns> = sessions
            .iter()
            .map(|s| SessionSigns { offers: s.0, joined: s.1, approach_seconds: s.2, relaxed_signs: s.3, stress_signs: s.4 })
            .collect();
        if let Ok(found) = readiness(&signs) {
            for row in found.by_session.iter().chain(&found.transitions) {
                prop_assert!((row.iter().sum::<f64>() - 1.0).abs() < 1e-9);
                row.iter().for_each(|p| probability(*p));
            }
            proper(found.ready_interval, 0.0, 1.0);
            prop_assert!(found.ready_interval.contains(found.now[2]));
            let join = found.profiles.map(|p| p.joining_rate);
            prop_assert!(join[0] <= join[1] && join[1] <= join[2], "states keep their order: {:?}", join);
        }
    }

    #[test]
    fn presses_of_any_kind(
        rows in prop::collection::vec((0usize..5, 0usize..4, 0usize..3, any::<bool>(), any::<bool>(), 0.0f64..9.0), 0..80)
    ) {
        let mut rows = rows;
        rows.sort_by_key(|row| row.0);
        let draws = MonteCarlo { seed: 1, most: 60, enough: 5 };
        let press: Vec<PressIn> = rows.iter().map(|r| PressIn { session: r.0, word: r.1, outcome: r.2 }).collect();
        for unit in [Unit::Press, Unit::Episode] {
            match association(&press, unit, draws) {
                Ok(found) => for word in &found.by_word {
                    probability(word.p.p);
                    probability(word.adjusted_p);
                    prop_assert!(word.p.p > 0.0 && word.expected.is_finite());
                    proper(word.p.error, 0.0, 1.0);
                },
                Err(error) => prop_assert_eq!(error, UnderstandingError::NoObservations),
            }
        }
        let mut time = 0.0;
        let timed: Vec<TimedPress> = rows
            .iter()
            .map(|r| { time += r.5; TimedPress { session: r.0, word: r.1, time } })
            .collect();
        let distance: Vec<Vec<u8>> = (0..4usize).map(|a| (0..4).map(|b| a.abs_diff(b) as u8).collect()).collect();
        for pair in sequences(&timed, &distance, &SequenceRule::default(), draws).into_iter().flat_map(|s| s.pairs) {
            probability(pair.p.p);
            probability(pair.adjusted_p);
        }
        let contacts: Vec<Contact> = timed
            .iter()
            .zip(&rows)
            .map(|(t, r)| Contact { session: t.session, time: t.time, place: t.word, sounded: r.3 })
            .collect();
        let neighbours = vec![vec![1], vec![0, 2], vec![1], vec![]];
        if let Ok(found) = accidents(&contacts, &neighbours, 1.5) {
            let shares = found.places.iter().filter_map(|p| p.share).chain([found.overall]);
            for share in shares.chain(found.after_press).chain(found.after_brush) {
                proper(share.interval, 0.0, 1.0);
                prop_assert!(share.interval.low <= share.share + 1e-9 && share.share <= share.interval.high + 1e-9);
            }
        }
    }

    #[test]
    fn ladders_of_any_evidence(ln in prop::collection::vec((-50.0f64..900.0, any::<bool>()), 0..9)) {
        let at = sayso_model::Moment::clamped;
        let words: Vec<WordEvidence> = ln
            .iter()
            .map(|(ln, there)| WordEvidence {
                rounds: there.then(|| Growth { steps: vec![(at(5), *ln)], n: 3 }),
                ..Default::default()
            })
            .collect();
        let verdicts = climb(&words, None, &vec![at(0); words.len()], at(9), &LadderRule::default());
        prop_assert_eq!(verdicts.words.len(), words.len());
        verdicts.words.iter().flatten().filter_map(|v| v.adjusted_p).for_each(probability);
    }

    #[test]
    fn tables_of_any_counts(counts in prop::collection::vec(0u32..300, 8)) {
        let c = |i: usize| counts[i];
        for ln in table_bets([[c(0), c(1)], [c(2), c(3)]]).0 {
            prop_assert!(ln.is_finite());
        }
        let cells = SwapCells {
            first_after_first: [c(0), c(1)],
            first_after_second: [c(2), c(3)],
            second_after_second: [c(4), c(5)],
            second_after_first: [c(6), c(7)],
        };
        for ln in swap_bets(cells).0 {
            prop_assert!(ln.is_finite());
        }
    }

    #[test]
    fn demand_of_any_kind(
        bins in prop::collection::vec((0u64..50, wild()), 0..30),
        times in prop::collection::vec(0.0f64..1e5, 0..60),
        waits in prop::collection::vec((0usize..4, wild(), any::<bool>()), 0..40),
    ) {
        let counts: Vec<u64> = bins.iter().map(|b| b.0).collect();
        let exposure: Vec<f64> = bins.iter().map(|b| b.1).collect();
        for bin in rates_by_bin(&counts, &exposure, Clumping::NONE).into_iter().flatten() {
            bin.adjusted_p.iter().for_each(|p| probability(*p));
            bin.interval.iter().for_each(|i| proper(*i, 0.0, f64::INFINITY));
        }
        if let Ok(found) = change_points_with_exposure(&counts, &exposure, 5.0) {
            prop_assert!(!found.objective.is_nan());
        }
        let mut sorted = times.clone();
        sorted.sort_by(f64::total_cmp);
        let found = bursts(&sorted, &BurstSettings::default()).unwrap();
        for burst in &found {
            prop_assert!(burst.first < burst.last && burst.start <= burst.end);
            let nested = burst.level == 1
                || found.iter().any(|outer| {
                    outer.level == burst.level - 1 && outer.first <= burst.first && burst.last <= outer.last
                });
            prop_assert!(nested, "a burst of a higher level lies inside one of the level below");
        }
        let presses: Vec<AnsweredPress> = waits
            .iter()
            .map(|w| AnsweredPress { answer: Answer::ALL[w.0], seconds: w.1, pressed_again: w.2 })
            .collect();
        for after in after_answers(&presses, &PIECES).into_iter().flatten() {
            for piece in after.pieces {
                piece.interval.iter().for_each(|i| proper(*i, 0.0, f64::INFINITY));
            }
            if let Some(ratio) = after.ratio_to_yes {
                prop_assert!(ratio.ratio.is_finite() && ratio.interval.contains(ratio.ratio));
            }
        }
    }

    #[test]
    fn thinning_of_any_sessions(
        at in prop::option::of(0usize..8),
        sessions in prop::collection::vec((0u32..5000, 0u32..5000, any::<bool>(), any::<bool>()), 0..6)
    ) {
        let sessions: Vec<ThinningSession> = sessions
            .iter()
            .map(|s| ThinningSession { while_available: s.0, while_unavailable: s.1, strain: s.2, left: s.3 })
            .collect();
        if let Ok(plan) = next_step(at, &sessions) {
            proper(plan.interval, 0.0, 1.0);
        } else {
            prop_assert!(at.unwrap() >= 6);
        }
    }
}

#[test]
fn nothing_observed_is_said_so() {
    assert_eq!(learning_curve(&[], 0.5, &CurveSettings::default()), Err(LearningError::NoObservations));
    assert_eq!(learning_curve(&[None; 9], 0.5, &CurveSettings::default()), Err(LearningError::NoObservations));
    assert_eq!(curve_by_day(&[], &[], 0.5, Level::P95), Err(LearningError::NoObservations));
    assert_eq!(readiness(&[SessionSigns::default(); 4]), Err(LearningError::NoObservations));
    assert_eq!(celeration(&[], &[], ZeroRates::LeaveOut), Err(LearningError::NoObservations));
    assert_eq!(celeration(&[1.0], &[0.0], ZeroRates::LeaveOut), Err(LearningError::NoObservations));
    assert_eq!(celeration(&[3.0, 3.0], &[1.0, 2.0], ZeroRates::LeaveOut), Err(LearningError::NoSpan { n: 2 }));
    assert_eq!(rank_sum(&[], &[1.0]), Err(LearningError::NoObservations));
    assert_eq!(association(&[], Unit::Press, MonteCarlo::seeded(1)), Err(UnderstandingError::NoObservations));
    assert_eq!(analyse_probe(&[], 0.5), Err(UnderstandingError::NoObservations));
    assert_eq!(change_points_with_exposure(&[], &[], 1.0), Err(DemandError::NoObservations));
    assert_eq!(rates_by_bin(&[0, 0], &[0.0, 0.0], Clumping::NONE), Err(DemandError::NoObservations));
    assert_eq!(gaps(&[], &[], &[]), Err(DemandError::NoObservations));
    assert_eq!(bursts(&[], &BurstSettings::default()), Ok(vec![]));
    let none = climb(&[], None, &[], sayso_model::Moment::clamped(0), &LadderRule::default());
    assert!(none.words.is_empty());
}

#[test]
fn bad_numbers_are_refused_by_name() {
    for chance in [0.0, 1.0, -0.2, f64::NAN] {
        assert!(matches!(
            learning_curve(&[Some(true)], chance, &CurveSettings::default()),
            Err(LearningError::ChanceOutOfRange(_))
        ));
    }
    assert_eq!(bursts(&[5.0, 3.0], &BurstSettings::default()), Err(DemandError::TimeGoesBack { at: 1 }));
    let back = [0.0, 5.0, 3.0].map(|time| TimedPress { session: 1, word: 0, time });
    assert_eq!(
        sequences(&back, &[vec![0]], &SequenceRule::default(), MonteCarlo::seeded(1)),
        Err(UnderstandingError::TimeGoesBack { at: 2 })
    );
    let mixed = [1, 2, 1].map(|session| PressIn { session, word: 0, outcome: 0 });
    assert_eq!(
        association(&mixed, Unit::Press, MonteCarlo::seeded(1)),
        Err(UnderstandingError::SessionsMixed { session: 1 })
    );
    assert_eq!(rates_by_bin(&[3], &[0.0], Clumping::NONE), Err(DemandError::PressesWithoutExposure { at: 0 }));
    let more = [SessionSigns { offers: 1, joined: 2, ..Default::default() }];
    assert!(matches!(readiness(&more), Err(LearningError::BadNumber { .. })));
}

#[test]
fn separation_and_sameness() {
    // All right from the first trial; all wrong; one trial only.
    for (trials, high) in [(vec![Some(true); 40], true), (vec![Some(false); 40], false), (vec![Some(true)], true)] {
        let curve = learning_curve(&trials, 0.5, &CurveSettings::default()).unwrap();
        sound(&curve, &trials);
        assert_eq!(curve.points.last().unwrap().p > 0.5, high);
    }
    // Presses on the last day only: the factor is large but a number.
    let fit = celeration_from_counts(&[0.0, 1.0, 2.0, 3.0], &[0, 0, 0, 5], &[1.0; 4]).unwrap();
    assert!(fit.times_per_week.is_finite() && fit.times_per_week > 1.0 && fit.zeros == 3);
    // None at all: no change to be seen, and the interval says how little that means.
    let none = celeration_from_counts(&[0.0, 1.0, 2.0, 3.0], &[0; 4], &[1.0; 4]).unwrap();
    assert!(none.interval.unwrap().contains(1.0));
    let same = compare_phases(&[2.0; 6], &[2.0; 6], Better::Larger).unwrap();
    assert_eq!((same.nap, same.p, same.tau_u), (0.5, 1.0, 0.0));
    // Twenty presses in the same second are one burst, not an infinite one.
    let mut times = vec![0.0, 4000.0, 9000.0];
    times.extend([9000.0; 20]);
    let found = bursts(&times, &BurstSettings::default()).unwrap();
    assert!(found.iter().any(|burst| burst.presses() >= 20));
}

#[test]
fn ten_years() {
    // Hourly counts with one change, daily trials, a press every half hour: all must simply come back.
    let hours = 87_600;
    let counts: Vec<u64> = (0..hours).map(|h| u64::from(h % 7 == 0) + u64::from(h > 50_000 && h % 3 == 0)).collect();
    let exposure = vec![1.0; hours];
    let found = change_points_with_exposure(&counts, &exposure, default_penalty(hours)).unwrap();
    assert_eq!(found.change_after.len(), 1);
    assert!(found.change_after[0].abs_diff(50_001) < 10);
    let quiet = change_points_with_exposure(&vec![0; hours], &exposure, default_penalty(hours)).unwrap();
    assert!(quiet.change_after.is_empty());
    let times: Vec<f64> = (0..100_000).map(|k| 1800.0 * f64::from(k)).collect();
    assert!(bursts(&times, &BurstSettings::default()).unwrap().is_empty());
    let trials: Vec<Option<bool>> = (0..3650).map(|k| (k % 5 > 0).then_some(k > 200 && k % 9 > 0)).collect();
    let days: Vec<i32> = (0..3650).collect();
    sound(&curve_by_day(&trials, &days, 0.5, Level::P95).unwrap(), &trials);
    let sessions: Vec<SessionSigns> =
        (0..3650).map(|k| SessionSigns { offers: 3, joined: u32::from(k > 1000) * 3, ..Default::default() }).collect();
    assert!(readiness(&sessions).unwrap().now[2] > 0.9);
    let (a, b): (Vec<f64>, Vec<f64>) = ((0..2000).map(f64::from).collect(), (500..2500).map(f64::from).collect());
    assert_eq!(rank_sum(&a, &b).unwrap().p_method, PMethod::Approximate);
}

#[test]
fn a_trial_without_a_choice_is_no_wrong_answer() {
    let declined = [ProbeTrial { word: 0, right: None, seconds: None }; 5];
    let result = analyse_probe(&declined, 0.5).unwrap()[0];
    assert_eq!((result.seen.n(), result.declined, result.p), (0, 5, 1.0));
}
