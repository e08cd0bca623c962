//! What is said of claims, in every language.

use sayso_advisor::Case;
use sayso_advisor::claims::claims;
use sayso_advisor::evidence::{Evidence, evidence};
use sayso_model::{Language, Moment, Story};
use sayso_wording::Locale;
use sayso_wording::claims::{by_ladder, of_animal, rivals_of, tests_of, times};
use sayso_wording::evidence::sentence;

#[test]
fn no_claim_says_that_the_animal_does_not_understand() {
    let now: Moment = "2026-11-25T19:30:00Z".parse().unwrap();
    let story = Story::from_events(sayso_sim::demo(7, now).events);
    let zone = story.zone();
    for language in Language::ALL {
        let locale = Locale::of(language);
        let mut said = String::new();
        for animal in story.animals().into_keys() {
            let found = claims(&Case::new(&story, animal, now)).unwrap();
            said += &of_animal(&locale, &found.animal, &zone);
            for claim in &found.words {
                said += &format!("{:?}", by_ladder(&locale, claim, &zone));
                said += &format!("{:?}{:?}", rivals_of(&locale, claim), tests_of(&locale, claim));
            }
        }
        assert!(said.len() > 1000, "{language:?}");
        let said = said.to_lowercase();
        for never in [
            "does not understand",
            "doesn't understand",
            "cannot learn",
            "failed",
            "stubborn",
            "no entiende",
            "versteht nicht",
            "ne comprend pas",
            "não entende",
            // A figure makes another explanation unlikely; it rules none out.
            "ruled out",
            "ausgeschlossen",
            "descartad",
            "exclu",
        ] {
            assert!(!said.contains(never), "{language:?}: {never}");
        }
    }
}

#[test]
fn two_counts_of_presses_that_differ_say_why() {
    let now: Moment = "2026-11-25T19:30:00Z".parse().unwrap();
    let story = Story::from_events(sayso_sim::demo(7, now).events);
    let animals = story.animals().into_keys();
    let found: Vec<_> = animals
        .flat_map(|animal| {
            let words = story.words_of(animal).into_iter().map(|w| w.word);
            words.filter_map(|word| evidence(&Case::new(&story, animal, now), word)).collect::<Vec<_>>()
        })
        .collect();
    let differs = |e: &Evidence| e.invitations.presses > e.invitations.pressed;
    assert!(found.iter().any(differs) && !found.iter().all(differs), "the demo has both");
    for e in &found {
        let said = sentence(&Locale::ENGLISH, "Tarn", e);
        assert_eq!(said.contains("left out of the"), differs(e), "{said}");
    }
}

#[test]
fn evidence_is_told_as_what_a_bet_has_grown_to() {
    let told = |x: f64| times(&Locale::ENGLISH, x.ln());
    assert_eq!(
        [told(0.5), told(2.0), told(14.6), told(2000.0)],
        ["none", "2.0 to 1", "15 to 1", "more than 1,000 to 1"]
    );
}
