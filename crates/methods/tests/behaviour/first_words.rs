//! First and next words: the exact choice against an independent one, its reasons, and absurd input.

use proptest::prelude::*;
use sayso_methods::stats::{Clumping, Count, Proportion};
use sayso_methods::words::*;
use sayso_model::{Language, RewardKind};

fn candidate(says: &str, kind: RewardKind, mean: f64) -> Candidate {
    Candidate {
        says: says.to_owned(),
        kind,
        liking: Liking { mean, sd: 0.05 },
        at_board: true,
        seconds: Some(10.0),
        most_per_day: None,
        ration_pieces: None,
        barred: false,
        cautioned: false,
        already_said: false,
    }
}

fn home() -> Vec<Candidate> {
    let mut all = vec![
        candidate("ball", RewardKind::Play, 0.80),
        candidate("chicken", RewardKind::Food, 0.90),
        candidate("scratch", RewardKind::Touch, 0.60),
        candidate("walk", RewardKind::Exploring, 0.95),
        candidate("talk", RewardKind::Training, 0.40),
        candidate("grape", RewardKind::Food, 0.99),
        candidate("mat", RewardKind::Rest, 0.20),
        candidate("rope", RewardKind::Play, 0.55),
    ];
    all[1].ration_pieces = Some(30);
    all[3].seconds = Some(1200.0);
    all[5].barred = true;
    all
}

fn reason<'a>(left_out: &'a [LeftOut], says: &str) -> &'a Reason {
    &left_out.iter().find(|l| l.says == says).unwrap_or_else(|| panic!("{says} is not left out")).reason
}

#[test]
fn the_home_gets_its_words_and_every_other_one_its_reason() {
    let found = first_words(&home(), &FirstWordRules::default()).unwrap();
    assert_eq!(found.best.words, [0, 1, 2], "three kinds");
    assert!(matches!(reason(&found.left_out, "grape"), Reason::Barred));
    assert!(matches!(reason(&found.left_out, "walk"), Reason::TooSlow { seconds, .. } if *seconds == 1200.0));
    assert!(
        matches!(reason(&found.left_out, "mat"), Reason::Outscored { by: Part::Liking, behind, .. } if *behind > 0.0)
    );
    assert_eq!(found.best.words.len() + found.left_out.len(), home().len());
    assert!(found.alternatives.windows(2).all(|w| w[0].score.total >= w[1].score.total));
}

#[test]
fn of_two_that_are_as_good_the_one_without_a_caution_is_taken_and_no_reason_is_made_up() {
    let mut rules = FirstWordRules::default();
    // How the two names sound beside the others is another matter.
    rules.weights.apart = 0.0;
    let mut all = home();
    all.push(Candidate { ration_pieces: Some(30), ..candidate("cheese", RewardKind::Food, 0.90) });
    for cautioned in [8, 1] {
        all[1].cautioned = cautioned == 1;
        all[8].cautioned = cautioned == 8;
        let found = first_words(&all, &rules).unwrap();
        assert!(!found.best.words.contains(&cautioned), "{:?}", found.best);
        assert_eq!(reason(&found.left_out, &all[cautioned].says), &Reason::AsGood { cautioned: true });
    }
    // Without a caution either is as good, and neither is said to be worse.
    all[1].cautioned = false;
    let found = first_words(&all, &rules).unwrap();
    let out = if found.best.words.contains(&1) { "cheese" } else { "chicken" };
    assert_eq!(reason(&found.left_out, out), &Reason::AsGood { cautioned: false });
    // Plainly more liked, it is taken with its caution.
    all[8] = Candidate { cautioned: true, ration_pieces: Some(30), ..candidate("cheese", RewardKind::Food, 1.0) };
    assert!(first_words(&all, &rules).unwrap().best.words.contains(&8));
}

#[test]
fn how_often_a_word_can_be_given_is_told_with_the_limit_that_it_is() {
    let mut all = home()[..3].to_vec();
    all[0].most_per_day = Some(4);
    all[1].ration_pieces = Some(5);
    let found = first_words(&all, &FirstWordRules::default()).unwrap();
    let told = |of: usize| {
        let at = found.best.words.iter().position(|w| *w == of).unwrap();
        (found.best.deliveries[at].per_day, found.best.deliveries[at].bound)
    };
    assert_eq!((told(0), told(1), told(2)), ((4.0, Bound::Most), (5.0, Bound::Ration), (10.0, Bound::Time)));
}

#[test]
fn what_cannot_be_given_at_the_board_is_no_first_word() {
    let mut all = home();
    all[3] = Candidate { at_board: false, seconds: Some(5.0), ..candidate("garden", RewardKind::Exploring, 0.95) };
    let found = first_words(&all, &FirstWordRules::default()).unwrap();
    assert!(matches!(reason(&found.left_out, "garden"), Reason::NotAtBoard));
}

#[test]
fn three_kinds_come_before_two_of_one_unless_the_third_is_hardly_liked() {
    let set = |third: f64| {
        let all = [
            candidate("chicken", RewardKind::Food, 0.9),
            candidate("liver", RewardKind::Food, 0.75),
            candidate("tug", RewardKind::Play, 0.8),
            candidate("scratch", RewardKind::Touch, third),
        ];
        let rules = FirstWordRules { sizes: 3..=3, ..FirstWordRules::default() };
        first_words(&all, &rules).unwrap().best.words
    };
    assert_eq!(set(0.4), [0, 2, 3]);
    assert_eq!(set(0.02), [0, 1, 2], "what it hardly takes is not pushed on it");
}

#[test]
fn a_word_kept_out_by_a_better_one_that_sounds_like_it_says_so() {
    let all = [
        candidate("tug", RewardKind::Play, 0.9),
        candidate("hug", RewardKind::Touch, 0.88),
        candidate("biscuit", RewardKind::Food, 0.3),
    ];
    let found = first_words(&all, &FirstWordRules { sizes: 2..=2, ..FirstWordRules::default() }).unwrap();
    assert_eq!(found.best.words, [0, 2]);
    match reason(&found.left_out, "hug") {
        Reason::SoundsLike { other: 0, how } => assert_eq!(how.heard, Heard::Differ { edits: 1, of: 3 }),
        other => panic!("{other:?}"),
    }
}

#[test]
fn food_words_share_the_ration() {
    let mut all = [
        candidate("chicken", RewardKind::Food, 0.9),
        candidate("carrot", RewardKind::Food, 0.9),
        candidate("scratch", RewardKind::Touch, 0.5),
    ];
    all[0].ration_pieces = Some(5);
    all[1].ration_pieces = Some(5);
    let found = first_words(&all, &FirstWordRules { sizes: 2..=2, ..FirstWordRules::default() }).unwrap();
    // Two pieces a day of each would be fewer than the three a word needs.
    assert!(found.best.words.contains(&2));
    assert_eq!(found.sets, 2);
}

#[test]
fn a_liking_hardly_tested_gives_way_to_a_sure_one_and_keeps_its_chance() {
    let mut all = [
        candidate("ball", RewardKind::Play, 0.8),
        candidate("rope", RewardKind::Play, 0.62),
        candidate("scratch", RewardKind::Touch, 0.6),
        candidate("brush", RewardKind::Touch, 0.61),
    ];
    all[3].liking.sd = 0.3;
    let found = first_words(&all, &FirstWordRules { sizes: 2..=2, ..FirstWordRules::default() }).unwrap();
    assert_eq!(found.best.words, [0, 2]);
    assert!(matches!(reason(&found.left_out, "brush"), Reason::Outscored { by: Part::Uncertainty, .. }));
    assert!(found.in_best[3] > 0.3, "{:?}", found.in_best);
    let total: f64 = found.in_best.iter().sum();
    assert!((total - 2.0).abs() < 1e-9, "two words a draw");
}

#[test]
fn the_probability_of_being_best_matches_its_closed_form() {
    // One word of two, equal but for likings 0.6 +- 0.1 and 0.5 +- 0.1: P(first is best) = Phi(0.1 / (0.1 sqrt 2)).
    let mut all = [candidate("ball", RewardKind::Play, 0.6), candidate("frisbee", RewardKind::Play, 0.5)];
    all.iter_mut().for_each(|c| c.liking.sd = 0.1);
    let rules = FirstWordRules { sizes: 1..=1, draws: 20_000, ..FirstWordRules::default() };
    let found = first_words(&all, &rules).unwrap();
    assert!((found.best.best_in - 0.760_25).abs() < 0.012, "{}", found.best.best_in);
    assert_eq!(found, first_words(&all, &rules).unwrap(), "the same seed gives the same answer");
}

#[test]
fn nothing_usable_is_a_typed_answer_with_reasons() {
    let none = first_words(&[], &FirstWordRules::default());
    assert!(matches!(none, Err(FirstWordsError::NoSet { usable: 0, .. })));
    let twins = [candidate("ball", RewardKind::Play, 0.5), candidate("ball", RewardKind::Food, 0.5)];
    match first_words(&twins, &FirstWordRules::default()) {
        Err(FirstWordsError::NoSet { usable: 2, left_out, .. }) => {
            assert!(left_out.iter().all(|l| matches!(l.reason, Reason::SoundsLike { .. })));
        }
        other => panic!("{other:?}"),
    }
    let mut broken = home();
    for c in &mut broken {
        c.liking.mean = f64::NAN;
    }
    assert!(matches!(first_words(&broken, &FirstWordRules::default()), Err(FirstWordsError::NoSet { usable: 0, .. })));
    let many: Vec<Candidate> = (0..200).map(|i| candidate(&format!("word {i}"), RewardKind::Play, 0.5)).collect();
    assert_eq!(first_words(&many, &FirstWordRules::default()), Err(FirstWordsError::TooMany));
    let senseless = FirstWordRules { caution: f64::NAN, ..FirstWordRules::default() };
    assert!(matches!(first_words(&home(), &senseless), Err(FirstWordsError::Rules(_))));
}

// The objective written a second time, over bit masks.
fn best_by_masks(all: &[Candidate], rules: &FirstWordRules) -> Option<(f64, Vec<usize>)> {
    let mut best: Option<(f64, Vec<usize>)> = None;
    for mask in 0_u32..1 << all.len() {
        let words: Vec<usize> = (0..all.len()).filter(|i| mask >> i & 1 == 1).collect();
        let k = words.len() as f64;
        if !rules.sizes.contains(&words.len()) {
            continue;
        }
        let foods = words.iter().filter(|i| all[**i].ration_pieces.is_some()).count().max(1) as f64;
        let (mut total, mut fits, mut least, mut kinds) = (0.0, true, 1.0_f64, std::collections::BTreeSet::new());
        for (at, i) in words.iter().enumerate() {
            let c = &all[*i];
            let mut per_day = 300.0 / (k * c.seconds.unwrap());
            per_day = per_day.min(c.most_per_day.map_or(1e9, f64::from));
            per_day = per_day.min(c.ration_pieces.map_or(1e9, |p| (f64::from(p) / foods).floor()));
            fits &= !c.barred && c.seconds.unwrap() <= 60.0 && per_day >= 3.0;
            total += (c.liking.mean - 0.5 * c.liking.sd) * (per_day / 10.0).min(1.0) / k;
            total += if c.already_said { 0.05 / k } else { 0.0 };
            kinds.insert(c.kind);
            for j in &words[at + 1..] {
                let pair = alike(&c.says, &all[*j].says, Language::En, AlikeRule::default());
                fits &= !pair.too_alike;
                least = least.min(pair.apart);
            }
        }
        total += 0.6 * kinds.len() as f64 / *rules.sizes.end() as f64 + 0.1 * least;
        if fits && best.as_ref().is_none_or(|b| total > b.0) {
            best = Some((total, words));
        }
    }
    best
}

const WORDS: [&str; 8] = ["ball", "walk", "talk", "treat", "hug", "tug", "outside", "mat"];

fn any_candidate(i: usize) -> impl Strategy<Value = Candidate> {
    (
        0..6_usize,
        0.0..=1.0_f64,
        0.0..0.4_f64,
        1.0..90.0_f64,
        proptest::option::of(0..40_u32),
        proptest::option::of(0..40_u32),
        proptest::bool::weighted(0.1),
        any::<bool>(),
    )
        .prop_map(move |(kind, mean, sd, seconds, most, pieces, barred, said)| Candidate {
            says: WORDS[i].to_owned(),
            kind: RewardKind::ALL[kind],
            liking: Liking { mean, sd },
            at_board: true,
            seconds: Some(seconds),
            most_per_day: most,
            ration_pieces: pieces,
            barred,
            cautioned: false,
            already_said: said,
        })
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(64))]

    #[test]
    fn the_choice_is_the_best_of_all_sets(all in (0..WORDS.len()).map(any_candidate).collect::<Vec<_>>()) {
        let rules = FirstWordRules { sizes: 1..=4, draws: 20, ..FirstWordRules::default() };
        match (first_words(&all, &rules), best_by_masks(&all, &rules)) {
            (Ok(found), Some((total, _))) => {
                prop_assert!((found.best.score.total - total).abs() < 1e-9);
                prop_assert_eq!(found.best.words.len() + found.left_out.len(), all.len());
                let parts = found.best.score;
                let sum = parts.liking + parts.uncertainty + parts.deliveries + parts.spread + parts.apart + parts.said;
                prop_assert!((sum - parts.total).abs() < 1e-12);
            }
            (Err(FirstWordsError::NoSet { .. }), None) => {}
            (found, other) => prop_assert!(false, "{found:?} against {other:?}"),
        }
    }

    #[test]
    fn any_figures_give_a_choice_or_a_typed_refusal(
        figures in proptest::collection::vec((any::<f64>(), any::<f64>(), proptest::option::of(any::<f64>()), ".{0,6}"), 0..6),
        weight in any::<f64>(),
    ) {
        let all: Vec<Candidate> = figures.into_iter().map(|(mean, sd, seconds, says)| Candidate {
            liking: Liking { mean, sd }, seconds, ..candidate(&says, RewardKind::Play, 0.0)
        }).collect();
        let mut rules = FirstWordRules { draws: 10, ..FirstWordRules::default() };
        rules.weights.spread = weight;
        if let Ok(found) = first_words(&all, &rules) {
            prop_assert!(found.best.score.total.is_finite() && found.best.best_in.is_finite());
        }
    }

    #[test]
    fn any_gaps_give_suggestions_or_a_typed_refusal(asked in 0..10_000_u64, days in any::<f64>(), says in ".{0,8}") {
        let board = OnBoard { says: vec!["ball".into()], in_use: 0, has_closing: false, presses: None, high_arousal: None };
        if let Ok(found) = next_words(&[Gap { says, asked, days, clumping: Clumping::NONE }], &board, &NextWordRules::default()) {
            prop_assert!(found.suggestions.len() <= 1);
        }
    }
}

#[test]
fn gaps_are_ranked_by_what_is_sure_and_wait_while_few_words_are_in_use() {
    let gap = |says: &str, asked, days| Gap { says: says.to_owned(), asked, days, clumping: Clumping::NONE };
    let board = OnBoard {
        says: vec!["ball".into(), "scratch".into(), "treat".into()],
        in_use: 1,
        has_closing: true,
        presses: Count::new(500, 10.0).ok().map(|c| (c, Clumping::NONE)),
        high_arousal: None,
    };
    let gaps =
        [gap("rope", 3, 1.0), gap("outside", 14, 7.0), gap("call", 9, 7.0), gap("bone", 2, 7.0), gap("ball", 9, 7.0)];
    let found = next_words(&gaps, &board, &NextWordRules::default()).unwrap();
    let says: Vec<&str> = found.suggestions.iter().map(|s| s.says.as_str()).collect();
    assert_eq!(says, ["outside", "rope", "call"]);
    assert!(found.suggestions[0].sure && found.suggestions[0].sounds_like.is_empty());
    assert!(found.suggestions[2].sounds_like[0].b == "ball");
    assert_eq!(found.hold, Some((1, 3)));
    assert!(next_words(&[gap("rope", 3, 0.0)], &board, &NextWordRules::default()).is_err());
}

#[test]
fn a_closing_word_comes_first_when_demand_or_arousal_is_high() {
    let mut board = OnBoard {
        says: vec!["later".into()],
        in_use: 1,
        has_closing: false,
        presses: Count::new(200, 10.0).ok().map(|c| (c, Clumping::NONE)),
        high_arousal: Proportion::new(1, 4).ok(),
    };
    let rules = NextWordRules { closing: vec!["later".into(), "all done".into()], ..NextWordRules::default() };
    let found =
        next_words(&[Gap { says: "outside".into(), asked: 30, days: 7.0, clumping: Clumping::NONE }], &board, &rules)
            .unwrap();
    let closing = &found.suggestions[0];
    assert!(closing.closing && closing.sure && closing.says == "all done");
    assert!(matches!(closing.why, NextReason::HighDemand { presses: 200, .. }), "{closing:?}");
    board.presses = Count::new(1, 10.0).ok().map(|c| (c, Clumping::NONE));
    let unsure = next_words(&[], &board, &rules).unwrap();
    assert!(matches!(unsure.suggestions[0].why, NextReason::HighArousal { ended_high: 1, of: 4, .. }));
    assert!(!unsure.suggestions[0].sure);
    board.has_closing = true;
    assert!(next_words(&[], &board, &rules).unwrap().suggestions.is_empty());
}
