//! Every lesson is whole in every language.

use sayso_model::facts::{Lesson, Tells, lesson, lesson_facts, lessons, signs};
use sayso_model::{Language, Species};
use sayso_wording::lessons::{named, told};
use sayso_wording::signs::seen;
use sayso_wording::{Locale, say};
use std::collections::{BTreeMap, BTreeSet};

/// Endings of the ids of a lesson's messages.
fn parts(lesson: &Lesson) -> Vec<String> {
    let mut all: Vec<String> = ["title", "short", "drawing", "mistake", "care"].map(str::to_owned).into();
    all.extend((1..=lesson.steps).map(|i| format!("do-{i}")));
    all.extend(lesson.unknown.then(|| "unknown".to_owned()));
    for (i, question) in lesson.questions.iter().enumerate() {
        all.push(format!("q{}", i + 1));
        for answer in &question.answers {
            all.push(format!("q{}-{answer}", i + 1));
            all.push(format!("q{}-{answer}-why", i + 1));
        }
    }
    all
}

/// Messages of a language's two files by id, as they are written.
fn written(language: Language) -> BTreeMap<String, String> {
    let folder = format!("{}/catalogues/{}", env!("CARGO_MANIFEST_DIR"), language.tag());
    let read = |file| std::fs::read_to_string(format!("{folder}/{file}.ftl")).unwrap();
    let text = read("lessons") + &read("lesson_facts");
    let lines = text.lines().filter(|line| line.starts_with("lesson"));
    lines.filter_map(|line| line.split_once(" = ")).map(|(id, text)| (id.to_owned(), text.to_owned())).collect()
}

/// Ids of the messages that lessons and their facts find.
fn wanted() -> BTreeSet<String> {
    let of_lesson = |l: &'static Lesson| parts(l).into_iter().map(|part| format!("lessons-{}-{part}", l.id));
    let of_facts = lesson_facts().iter().map(|fact| format!("lesson-facts-{}", fact.id));
    let described = lesson_facts().iter().filter(|fact| fact.described);
    let of_sources = described.map(|fact| format!("lesson-facts-source-{}", fact.id));
    lessons().iter().flat_map(of_lesson).chain(of_facts).chain(of_sources).collect()
}

#[test]
fn every_lesson_has_all_its_words_in_every_language_and_none_is_over() {
    let frame: BTreeSet<String> = [
        "title",
        "intro",
        "your-animal",
        "stage",
        "what-to-do",
        "signs",
        "mistake",
        "take-care",
        "not-known",
        "two-questions",
        "how",
        "question",
        "answers",
        "rests-on",
        "rest",
        "fact",
        "read-as",
        "mark",
        "unmark",
        "show-coach",
        "coach-sees",
        "hide-coach",
        "shows-what",
        "read-on",
        "read-by",
        "say-who",
        "previous",
        "next",
        "all",
        "booklet",
        "booklet-what",
        "booklet-file",
        "fits",
    ]
    .map(|name| format!("lessons-{name}"))
    .into();
    for language in Language::ALL {
        let own: BTreeSet<String> = written(language).into_keys().collect();
        let all: BTreeSet<String> = wanted().union(&frame).cloned().collect();
        assert_eq!(own, all, "{language:?}");
    }
}

#[test]
fn english_has_the_facts_as_they_stand_and_every_other_language_has_its_own_words() {
    let english = written(Language::En);
    for fact in lesson_facts() {
        assert_eq!(english[&format!("lesson-facts-{}", fact.id)], fact.fact, "{}", fact.id);
        if fact.described {
            assert_eq!(english[&format!("lesson-facts-source-{}", fact.id)], fact.source, "{}", fact.id);
        }
    }
    for language in Language::ALL.into_iter().filter(|l| *l != Language::En) {
        for (id, own) in written(language) {
            // Messages that are nothing but their arguments, or choose by one from the second line on.
            let alike =
                ["lessons-fact", "lessons-stage", "lessons-read-as", "lessons-show-coach", "lessons-coach-sees"]
                    .contains(&id.as_str());
            assert!(alike || own != english[&id], "{language:?} {id}: {own}");
        }
    }
}

#[test]
fn a_lesson_says_the_name_or_your_animal_and_leaves_nothing_open() {
    for language in Language::ALL {
        let l = Locale::of(language);
        let yours = say!(&l, lessons::your_animal);
        for lesson in lessons() {
            let (of_quill, of_yours) = (told(&l, lesson, Some("Quill")), told(&l, lesson, None));
            let texts = [format!("{of_quill:?}"), format!("{of_yours:?}")];
            for text in &texts {
                assert!(!text.contains('{') || !text.contains("$"), "{language:?} {}: {text}", lesson.id);
                assert!(!text.contains(&format!("\"lessons-{}", lesson.id)), "{language:?}: {text}");
            }
            assert_eq!(texts[0].contains("Quill"), texts[1].contains(&yours), "{language:?} {}", lesson.id);
            assert_eq!(of_quill.questions.len(), 2);
            for question in &of_quill.questions {
                assert_eq!(question.answers.iter().filter(|a| a.right).count(), 1);
            }
            assert_eq!(of_quill.steps.len(), lesson.steps);
            assert_eq!(of_quill.rests_on.len(), lesson.facts.len());
            for (said, fact) in of_quill.rests_on.iter().zip(lesson.rests_on()) {
                assert!(fact.described || said.contains(&fact.source), "{said}");
            }
        }
    }
}

#[test]
fn the_name_begins_no_sentence_and_stands_in_no_german_dative() {
    for language in Language::ALL {
        for (id, text) in written(language) {
            assert!(!text.starts_with("{ $name }"), "{language:?} {id}");
            for stop in [". ", "? ", "\u{201c}", "\u{201e}"] {
                assert!(!text.contains(&format!("{stop}{{ $name }}")), "{language:?} {id}");
            }
            let german = language == Language::De;
            for before in ["mit", "von", "zu", "bei", "nach", "aus", "an", "in"] {
                assert!(!german || !text.contains(&format!(" {before} {{ $name }}")), "{id}: {text}");
            }
        }
    }
}

#[test]
fn cautions_name_whom_to_ask() {
    let vet = |l| match l {
        Language::En => "veterinarian",
        Language::Es | Language::Pt => "veterin",
        Language::De => "Tierarztpraxis",
        Language::Fr => "vétérinaire",
    };
    let professional = |l| match l {
        Language::En => "behaviour professional",
        Language::Es => "profesional cualificado del comportamiento",
        Language::De => "Fachperson für Tierverhalten",
        Language::Fr => "professionnel qualifié du comportement",
        Language::Pt => "profissional qualificado de comportamento",
    };
    for language in Language::ALL {
        let own = written(language);
        for (id, english) in written(Language::En) {
            for (named, whom) in [("veterinarian", vet(language)), ("behaviour professional", professional(language))] {
                // Who is a veterinary specialist by trade is no one to be asked.
                if english.contains(named) && !id.starts_with("lesson-facts-") {
                    assert!(own[&id].contains(whom), "{language:?} {id}: {}", own[&id]);
                }
            }
        }
    }
}

#[test]
fn every_lesson_has_its_caution_in_every_language() {
    for language in Language::ALL {
        let l = Locale::of(language);
        let cautions: BTreeSet<String> = lessons().iter().map(|lesson| told(&l, lesson, Some("Quill")).care).collect();
        assert_eq!(cautions.len(), lessons().len(), "{language:?}: each of its own");
        for care in cautions {
            assert!(care.split_whitespace().count() > 5 && !care.starts_with("lessons-"), "{language:?}: {care}");
        }
    }
}

#[test]
fn mild_and_strong_signs_stand_apart_as_on_the_boards_own_list() {
    for language in Language::ALL {
        let l = Locale::of(language);
        let told = told(&l, lesson("body").unwrap(), None);
        let mut lines = told.signs.iter();
        for species in Species::ALL.into_iter().filter(|of| !signs(*of).is_empty()) {
            let line = lines.next().unwrap();
            assert!(line.starts_with(&say!(&l, signs::whose, species = species.name())), "{line}");
            let at = |level: &str| -> Vec<usize> {
                let of = signs(species).into_iter().filter(|s| s.kind == "stress" && s.level == level);
                let listed = of.filter(|s| s.tells != Some(Tells::Swallowing));
                listed
                    .map(|s| line.find(&seen(&l, s)).unwrap_or_else(|| panic!("{language:?}: {} in {line}", s.id)))
                    .collect()
            };
            let (mild, strong) = (at("mild"), at("strong"));
            let first = strong.iter().min().unwrap();
            assert!(mild.iter().all(|place| place < first), "{language:?} {line}");
            // What is known of none is said.
            let frame = say!(&l, signs::only_strong, whose = "", strong = "");
            assert_eq!(
                mild.is_empty(),
                line.contains(frame.trim_matches([' ', '.', ':', '\u{a0}'])),
                "{language:?} {line}"
            );
        }
        assert_eq!(lines.next(), None);
        // No step names signs of a species beside that list.
        for step in &told.steps {
            for sign in Species::ALL.into_iter().flat_map(signs) {
                assert!(!step.contains(&seen(&l, sign)), "{language:?} {step}");
            }
        }
    }
}

#[test]
fn a_lesson_of_another_version_keeps_its_name() {
    assert_eq!(named(&Locale::ENGLISH, "showing"), "Press, say, give");
    assert_eq!(named(&Locale::ENGLISH, "later-one"), "later-one");
}
