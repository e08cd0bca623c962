//! The exercise about a word that does not get on: each cause shows itself to who tries for it, and hardly to who does not.
#![allow(clippy::unwrap_used, clippy::cast_precision_loss, missing_docs)]

use sayso_model::Label;
use sayso_sim::Cause;
use sayso_sim::rehearsal::{Act, Character, Does, Exercise, Hidden, Run, Setup, Thing, What, play, weeks};
use std::collections::BTreeSet;

/// Setups of that cause.
fn hiding(cause: Cause) -> impl Iterator<Item = (Setup, Thing)> {
    let all =
        (0..400).map(|seed| Setup { seed, character: Character::ALL[seed as usize % 5], exercise: Exercise::Stuck });
    all.filter_map(move |setup| {
        let hidden = setup.hides().filter(|hidden| hidden.cause == cause)?;
        Some((setup, hidden.word))
    })
}

fn act(at_ms: u32, does: Does) -> Act {
    Act { at_ms, does }
}

/// The word and another in turn, each thing half a second after its press.
fn showing(word: Thing, first: Option<Does>) -> Vec<Act> {
    let other = if word == Thing::Ball { Thing::Treat } else { Thing::Ball };
    let mut acts: Vec<Act> = first.map(|does| act(500, does)).into_iter().collect();
    for turn in 0..12 {
        let (at, thing) = (2_000 + 14_000 * turn, if turn % 2 == 0 { word } else { other });
        acts.extend([act(at, Does::Show(thing)), act(at + 500, Does::Give(thing))]);
    }
    acts
}

fn count(run: &Run, is: impl Fn(What) -> bool) -> usize {
    run.told.iter().filter(|t| is(t.what)).count()
}

/// Middle share or number over the animals of a cause.
fn mean(cause: Cause, acts: impl Fn(Thing) -> Vec<Act>, of: impl Fn(&Run, Thing) -> f64) -> f64 {
    let all: Vec<f64> = hiding(cause).map(|(setup, word)| of(&play(setup, &acts(word)), word)).collect();
    assert!(all.len() > 30, "{cause:?}: {}", all.len());
    all.iter().sum::<f64>() / all.len() as f64
}

fn taken(run: &Run, word: Thing) -> f64 {
    let took = count(run, |what| what == What::Took(word)) as f64;
    took / (took + count(run, |what| what == What::Ignored(word)) as f64).max(1.0)
}

fn gained(run: &Run, word: Thing) -> f64 {
    run.logits.1[word.place()] - run.logits.0[word.place()]
}

#[test]
fn every_cause_and_every_word_comes_up_and_no_other_exercise_hides_any() {
    let drawn: BTreeSet<String> = Hidden::CAUSES
        .into_iter()
        .flat_map(|cause| hiding(cause).map(move |(_, word)| format!("{cause:?} {word:?}")))
        .collect();
    assert_eq!(drawn.len(), 24);
    for exercise in Exercise::ALL.into_iter().filter(|e| *e != Exercise::Stuck) {
        assert_eq!(Setup { seed: 1, character: Character::Eager, exercise }.hides(), None);
    }
}

#[test]
fn what_is_not_wanted_is_left_lying_and_not_chosen() {
    let plain = |word| showing(word, None);
    let (unwanted, late) = (mean(Cause::RewardNotWanted, plain, taken), mean(Cause::TooLittleShowing, plain, taken));
    assert!(unwanted < 0.3 && late > 0.5, "{unwanted} {late}");
    let pairs = |_| (0..12).map(|i| act(2_000 + 13_000 * i, Does::Two)).collect();
    let chosen = |run: &Run, word| count(run, |what| what == What::Chose(word)) as f64;
    let (unwanted, other) = (mean(Cause::RewardNotWanted, pairs, chosen), mean(Cause::TooLittleShowing, pairs, chosen));
    assert!(3.0 * unwanted < other, "{unwanted} {other}");
}

#[test]
fn what_is_only_shown_too_little_learns_at_once() {
    let plain = |word| showing(word, None);
    let gain = mean(Cause::TooLittleShowing, plain, gained);
    for other in [Cause::RewardNotWanted, Cause::DelayTooLong, Cause::DeviceAvoided, Cause::Unwell] {
        let less = mean(other, plain, gained);
        assert!(gain > 2.0 * less, "{other:?}: {gain} {less}");
    }
}

#[test]
fn what_has_to_be_fetched_comes_late_until_it_is_at_hand() {
    let fetched = |run: &Run, _| count(run, |what| matches!(what, What::Fetched(_))) as f64;
    let without = mean(Cause::DelayTooLong, |word| showing(word, None), fetched);
    let with = mean(Cause::DelayTooLong, |word| showing(word, Some(Does::Ready)), fetched);
    assert!(without > 2.0 && with == 0.0, "{without} {with}");
    let (late, soon) = (
        mean(Cause::DelayTooLong, |word| showing(word, None), gained),
        mean(Cause::DelayTooLong, |word| showing(word, Some(Does::Ready)), gained),
    );
    assert!(soon > 2.0 * late.max(0.0), "{soon} {late}");
    for other in Hidden::CAUSES.into_iter().filter(|cause| *cause != Cause::DelayTooLong) {
        assert_eq!(mean(other, |word| showing(word, None), fetched), 0.0);
    }
}

#[test]
fn a_button_that_is_too_loud_is_kept_away_from_until_it_is_softer() {
    let startled = |run: &Run, _| count(run, |what| matches!(what, What::Startled(_))) as f64;
    let near =
        |run: &Run, word| count(run, |what| matches!(what, What::Pressed(t) | What::Brushed(t) if t == word)) as f64;
    assert!(mean(Cause::DeviceAvoided, |word| showing(word, None), startled) > 1.0);
    assert_eq!(mean(Cause::DeviceAvoided, |word| showing(word, None), near), 0.0);
    let softer = |word| {
        let mut acts = vec![act(500, Does::Softer)];
        acts.extend((0..10).map(|i| act(3_000 + 16_000 * i, Does::Offer(word))));
        acts
    };
    assert_eq!(mean(Cause::DeviceAvoided, softer, startled), 0.0);
    assert!(mean(Cause::DeviceAvoided, softer, near) > 1.0);
}

#[test]
fn noise_bangs_for_all_and_is_minded_by_one_until_the_windows_are_closed() {
    let noise = |run: &Run, _| count(run, |what| what == What::Noise) as f64;
    let signs = |run: &Run, _| {
        let after = run.told.windows(2).filter(|w| w[0].what == What::Noise && matches!(w[1].what, What::Sign(_)));
        after.count() as f64
    };
    for cause in Hidden::CAUSES {
        assert!(mean(cause, |_| Vec::new(), noise) > 4.0, "{cause:?}");
        assert_eq!(mean(cause, |_| vec![act(0, Does::Quiet)], noise), 0.0, "{cause:?}");
        let minded = mean(cause, |_| Vec::new(), signs);
        assert_eq!(minded > 0.8, cause == Cause::PlaceOrNoise, "{cause:?}: {minded}");
    }
}

#[test]
fn who_is_not_well_leaves_what_it_likes_best() {
    let favourite = |run: &Run, _| {
        let best = Thing::ALL.into_iter().max_by(|a, b| run.likes[a.place()].total_cmp(&run.likes[b.place()]));
        taken(run, best.unwrap())
    };
    let all = |_: Thing| {
        (0..12)
            .flat_map(|i| {
                let (at, thing) = (2_000 + 14_000 * i, Thing::ALL[i as usize % 4]);
                [act(at, Does::Show(thing)), act(at + 500, Does::Give(thing))]
            })
            .collect::<Vec<_>>()
    };
    let (unwell, well) = (mean(Cause::Unwell, all, favourite), mean(Cause::TooLittleShowing, all, favourite));
    assert!(unwell + 0.25 < well, "{unwell} {well}");
}

#[test]
fn the_weeks_before_hold_together_and_are_those_of_the_words_on_the_buttons() {
    let label = |text: &str| Label::new(text).unwrap();
    let says = ["Treat", "Ball", "Out", "Company"].map(label);
    for seed in 0..24 {
        let setup = Setup { seed, character: Character::Quick, exercise: Exercise::Stuck };
        let weeks = weeks(setup, &label("Pico"), &says).unwrap();
        assert!(weeks.events.len() > 100 && weeks.events.iter().all(|e| e.check().is_ok()));
        assert!(weeks.events.iter().all(|e| e.recorded_at <= weeks.whose.begins && e.home == weeks.whose.home));
        let ids: BTreeSet<_> = weeks.whose.words.into_iter().collect();
        assert_eq!(ids.len(), 4);
    }
    assert_eq!(
        weeks(Setup { seed: 1, character: Character::Quick, exercise: Exercise::Free }, &label("a"), &says),
        None
    );
}
