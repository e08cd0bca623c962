//! A hazardous food gets the same verdict in five languages, for every species; a harmless one gets none in any
//! (tests/reference/food_names.json).

use crate::read::file;
use sayso_methods::ration::look_up;
use sayso_model::Species::{self, Cat, Dog, Parrot, Rabbit};
use sayso_model::facts::{GivenAs, all_food_hazards};
use serde_json::Value;

const LISTED: [Species; 4] = [Dog, Cat, Parrot, Rabbit];
const LANGUAGES: [&str; 5] = ["en", "es", "de", "fr", "pt"];

fn reference() -> Value {
    file("food_names.json")
}

/// The names one entry has in a language.
fn names<'a>(of: &'a Value, language: &str) -> Vec<&'a str> {
    of[language].as_array().unwrap().iter().map(|name| name.as_str().unwrap()).collect()
}

#[test]
fn a_hazardous_food_gets_the_same_verdict_in_every_language() {
    let reference = reference();
    let mut unlike = Vec::new();
    for food in reference["hazardous"].as_array().unwrap() {
        let fact = all_food_hazards().iter().find(|f| f.id == food["fact"].as_str().unwrap()).unwrap();
        for species in LISTED {
            let first = names(food, "en")[0];
            let expected = look_up(species, first).level();
            for (language, name) in LANGUAGES.iter().flat_map(|l| names(food, l).into_iter().map(move |n| (l, n))) {
                let verdict = look_up(species, name);
                let said = verdict.level();
                if said != expected {
                    unlike.push(format!("{species:?}: {language} {name:?} is {said:?}, {first:?} {expected:?}"));
                }
                let found = verdict.findings.iter().any(|f| f.fact.id == fact.id);
                if found != fact.species.contains(&species) {
                    let no = if found { "" } else { "no " };
                    unlike.push(format!("{species:?}: {language} {name:?} is {no}{}", fact.id));
                }
            }
        }
    }
    assert!(unlike.is_empty(), "{} unlike:\n{}", unlike.len(), unlike.join("\n"));
}

#[test]
fn every_hazard_of_the_facts_and_every_species_is_among_them() {
    let reference = reference();
    let said: Vec<&str> =
        reference["hazardous"].as_array().unwrap().iter().map(|food| food["fact"].as_str().unwrap()).collect();
    let eaten = all_food_hazards().iter().filter(|f| f.given_as.contains(&GivenAs::Food));
    let missing: Vec<&str> = eaten.map(|f| f.id.as_str()).filter(|id| !said.contains(id)).collect();
    assert!(missing.is_empty(), "{missing:?}");
    let species: Vec<Species> = all_food_hazards().iter().flat_map(|f| f.species.clone()).collect();
    assert!(species.iter().all(|s| LISTED.contains(s)), "{species:?}");
}

#[test]
fn harmless_foods_are_flagged_in_no_language() {
    let reference = reference();
    let mut flagged = Vec::new();
    for language in LANGUAGES {
        let names = names(&reference["harmless"], language);
        assert!(names.len() >= 30, "{language}: {}", names.len());
        for (species, name) in LISTED.into_iter().flat_map(|s| names.iter().map(move |name| (s, *name))) {
            if let Some(f) = look_up(species, name).findings.first() {
                flagged.push(format!("{species:?}: {language} {name:?} as {:?} ({:?})", f.read_as, f.how));
            }
        }
    }
    assert!(flagged.is_empty(), "{}", flagged.join("\n"));
}
