//! What would change an advice is yet to come: nothing is listed that holds already.

use sayso_advisor::advice::Change;
use sayso_advisor::stages::{Standing, standings};
use sayso_advisor::today::today;
use sayso_advisor::{Because, Case};
use sayso_model::{Moment, Stage, Story};

/// Whether a condition is met by what stands beside it.
fn holds(change: &Change, of: Option<&Standing>) -> bool {
    match change {
        Change::Figure { figure } => match figure {
            Because::Showings { showings, wanted, days, days_wanted } => showings >= wanted && days >= days_wanted,
            Because::Mastery { sessions, sessions_wanted, people, people_wanted, .. } => {
                sessions >= sessions_wanted && people >= people_wanted
            }
            Because::OwnPresses { presses, wanted, days, days_wanted } => presses >= wanted && days >= days_wanted,
            Because::Right { above_chance, .. } => *above_chance,
            Because::Joining { share, floor, .. } => share.surely_above(*floor),
            Because::Later { wanted, needed, .. } => wanted >= needed,
            Because::Strain => of.is_some_and(|s| s.because.contains(&Because::Strain)),
            // What is no figure with something wanted cannot be waited for.
            _ => true,
        },
        Change::Fades { .. } => of.is_some_and(|s| s.figures_say != Stage::Converse),
        Change::LastsAgain { .. } => of.is_some_and(|s| s.figures_say == Stage::Converse),
        Change::CalmDays { .. } => of.is_some_and(|s| !s.because.contains(&Because::Strain)),
        Change::CardFilled => of.is_some_and(|s| !s.because.contains(&Because::NotPrepared)),
        _ => false,
    }
}

#[test]
fn no_condition_is_listed_that_holds_already() {
    let (mut seen, mut kinds) = (0, std::collections::BTreeSet::new());
    for seed in [3, 7, 19] {
        let end: Moment = "2026-11-25T19:30:00Z".parse().unwrap();
        let story = Story::from_events(sayso_sim::demo(seed, end).events);
        for ago in [0.0, 9.0, 24.0, 45.0, 75.0] {
            let now = end.plus_seconds(-ago * 86_400.0);
            for animal in story.animals().keys() {
                let case = Case::new(&story, *animal, now);
                for standing in standings(&case) {
                    for change in &standing.would_change {
                        assert!(!holds(change, Some(standing)), "{seed}, {ago} days ago: {change:?} of {standing:?}");
                        seen += 1;
                        kinds.insert(
                            change.figure().map_or_else(|| format!("{change:?}"), |f| format!("{f:?}")[..5].to_owned()),
                        );
                    }
                    assert!(standing.closing || !standing.would_change.is_empty(), "{standing:?}");
                }
                let told = today(&case).unwrap();
                for advice in told.advice().filter(|a| a.word.is_none()) {
                    assert!(!advice.would_change.iter().any(|c| holds(c, None)), "{advice:?}");
                }
            }
        }
    }
    assert!(seen > 100 && kinds.len() > 4, "{seen} of {kinds:?}");
}

#[test]
fn what_is_said_to_lie_below_a_bar_lies_below_it_with_the_interval_that_is_told() {
    let mut seen = 0;
    for seed in [3, 7, 19] {
        let end: Moment = "2026-11-25T19:30:00Z".parse().unwrap();
        let story = Story::from_events(sayso_sim::demo(seed, end).events);
        for ago in 0..40 {
            let now = end.plus_seconds(-86_400.0 * 3.0 * f64::from(ago));
            for animal in story.animals().keys() {
                let case = Case::new(&story, *animal, now);
                let told = standings(&case);
                for because in told.iter().flat_map(|standing| &standing.because) {
                    let Because::Below(below) = because else { continue };
                    assert!(below.share.surely_below(below.bar), "{seed}, {ago}: {below:?}");
                    seen += 1;
                }
            }
        }
    }
    assert!(seen > 10, "{seen}");
}
