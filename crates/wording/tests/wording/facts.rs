//! Every fact of the trade is said in every language, by its id; English as the facts have it.

use sayso_advisor::ration::{cautions_of, food_cautions};
use sayso_model::facts::{all_food_hazards, all_signs, ideas, other_hazards, practice};
use sayso_model::{Language, RewardKind, Species};
use sayso_wording::{Locale, by_id, hazards, say, signs};
use std::collections::BTreeSet;

/// Message ids of the facts with the English text of each.
fn of_facts() -> Vec<(String, &'static str)> {
    let mut all: Vec<(String, &str)> = Vec::new();
    for f in all_food_hazards() {
        all.push((format!("hazards-food-{}", f.id), &f.item));
        all.push((format!("hazards-why-{}", f.id), &f.why));
    }
    for h in other_hazards() {
        all.push((format!("hazards-other-{}", h.id), &h.hazard));
        all.push((format!("hazards-harm-{}", h.id), &h.why));
        all.push((format!("hazards-act-{}", h.id), &h.act));
    }
    for s in all_signs() {
        all.push((format!("signs-see-{}", s.id), &s.sign));
        all.push((format!("signs-act-{}", s.act_id), &s.act));
    }
    for p in practice() {
        all.push((format!("practice-what-{}", p.id), &p.practice));
        all.push((format!("practice-value-{}", p.id), &p.value));
    }
    all
}

/// Sources that are more than a title: the id of the message of each, if it needs one, with the source.
fn sources() -> Vec<(String, &'static str)> {
    let foods = all_food_hazards().iter().map(|f| (format!("hazards-source-{}", f.id), f.source.as_str()));
    let others = other_hazards().iter().map(|h| (format!("hazards-source-{}", h.id), h.source.as_str()));
    let practice = practice().iter().map(|p| (format!("practice-source-{}", p.id), p.source.as_str()));
    foods.chain(others).chain(practice).collect()
}

#[test]
fn every_fact_has_its_message_and_english_is_as_the_facts_have_it() {
    for (id, english) in of_facts() {
        assert_eq!(by_id(&Locale::ENGLISH, &id).as_deref(), Some(english), "{id}");
    }
    assert_eq!(say!(&Locale::ENGLISH, hazards::note), sayso_model::facts::hazards_note());
}

#[test]
fn every_language_has_words_of_its_own_for_every_fact() {
    // A figure is the same in every language, and so is the English name of a thing that other languages took over.
    let same = ["5 s", "5 min", "macadamia"];
    for language in Language::ALL.into_iter().filter(|l| *l != Language::En) {
        for (id, english) in of_facts() {
            let own = by_id(&Locale::of(language), &id).unwrap();
            assert!(own != english || same.iter().any(|s| english.contains(s)), "{language:?} {id}: {own}");
        }
    }
}

#[test]
fn remarks_beside_a_title_are_said_and_titles_stay() {
    let remarks = [" read)", "read;", "secondary", "from memory", "no primary source", "page", "(doses)", "review"];
    for (id, source) in sources() {
        let message = by_id(&Locale::ENGLISH, &id);
        if source != "common practice, no source" && remarks.iter().any(|r| source.contains(r)) {
            assert_eq!(message.as_deref(), Some(source), "{id}");
        } else {
            assert_eq!(message, None, "{id}: {source}");
        }
    }
}

#[test]
fn no_message_of_a_fact_is_over() {
    let mut known: BTreeSet<String> = of_facts().into_iter().map(|(id, _)| id).collect();
    known.extend(sources().into_iter().map(|(id, _)| id));
    known.extend(all_food_hazards().iter().map(|f| format!("hazards-brief-{}", f.id)));
    for (file, kinds) in [
        ("hazards", &["food", "why", "brief", "other", "harm", "act", "source"][..]),
        ("signs", &["see", "act"]),
        ("practice", &["what", "value", "source"]),
    ] {
        let path = format!("{}/catalogues/en/{file}.ftl", env!("CARGO_MANIFEST_DIR"));
        for line in std::fs::read_to_string(path).unwrap().lines() {
            let id = line.split(' ').next().unwrap();
            let of_fact = kinds.iter().any(|kind| id.starts_with(&format!("{file}-{kind}-")));
            assert!(!of_fact || known.contains(id), "{id} is the message of no fact");
        }
    }
}

#[test]
fn what_must_be_asked_of_a_veterinarian_is_said_so_in_every_language() {
    // The word for a veterinarian or the practice, as each language writes it.
    let vet = |l| match l {
        Language::En => "veterinarian",
        Language::Es | Language::Pt => "veterin",
        Language::De => "Tierarztpraxis",
        Language::Fr => "vétérinaire",
    };
    for language in Language::ALL {
        let l = Locale::of(language);
        let said = |text: String| assert!(text.contains(vet(language)), "{language:?}: {text}");
        for (id, _) in of_facts().into_iter().filter(|(_, english)| english.contains("veterinarian")) {
            said(by_id(&l, &id).unwrap());
        }
        said(say!(&l, hazards::note));
        said(say!(&l, hazards::battery));
        said(say!(&l, cautions::eaten, why = ""));
        said(say!(&l, ration::starting_point));
        said(say!(&l, ration::growing));
        said(say!(&l, ration::weight_loss));
    }
}

#[test]
fn a_caution_says_what_how_bad_for_whom_and_why() {
    let grapes = food_cautions(Species::Dog, "Uvas");
    let said = |language| hazards::foods(&Locale::of(language), &grapes);
    assert_eq!(
        said(Language::En),
        "grapes, raisins, currants: never for a dog \u{2013} kidney failure; dose unpredictable (Merck Veterinary Manual)"
    );
    assert_eq!(
        said(Language::De),
        "Weintrauben, Rosinen, Korinthen: nie für einen Hund \u{2013} Nierenversagen; die Menge ist nicht vorhersehbar (Merck Veterinary Manual)"
    );
    let string = cautions_of(Species::Cat, RewardKind::Play, "ball of wool");
    for language in Language::ALL {
        let (whole, brief) =
            (hazards::foods(&Locale::of(language), &string), hazards::briefly(&Locale::of(language), "wool", &string));
        assert!(brief.starts_with("wool") && 2 * brief.len() < whole.len(), "{language:?}: {brief}");
        assert!(by_id(&Locale::of(language), "hazards-brief-strings").is_some_and(|own| brief.ends_with(&own)));
    }
    let cheese = cautions_of(Species::Dog, RewardKind::Food, "cheese");
    let brief = hazards::briefly(&Locale::ENGLISH, "Gouda", &cheese);
    assert_eq!(brief, "Gouda: only a little \u{2013} many cannot digest lactose");
    let bones = hazards::foods(&Locale::of(Language::Es), &food_cautions(Species::Dog, "pizza"));
    assert!(bones.contains("puede contenerlo: mira qué lleva"), "{bones}");
    let noted = |text| signs::noted(&Locale::of(Language::Fr), text);
    assert_eq!([noted("growl"), noted("looked at me oddly")], ["grognement", "looked at me oddly"]);
}

#[test]
fn an_idea_is_judged_alike_under_its_name_in_every_language() {
    for species in Species::ALL {
        for idea in ideas(species).filter(|i| i.kind == RewardKind::Food) {
            let found = |language| -> BTreeSet<&str> {
                let name = say!(&Locale::of(language), ideas::name, key = &idea.key);
                food_cautions(species, &name).iter().map(|c| c.fact.id.as_str()).collect()
            };
            let english = found(Language::En);
            for language in Language::ALL {
                assert_eq!(found(language), english, "{} for {species:?} in {language:?}", idea.key);
            }
        }
    }
}
