//! The advice of the demo, said in every language.

use sayso_advisor::advice::Because;
use sayso_advisor::stages::standings;
use sayso_advisor::today::{Today, today};
use sayso_advisor::{Advice, Case};
use sayso_model::{Language, Moment, Story, Zone};
use sayso_wording::Locale;
use sayso_wording::advice as said;

fn demo() -> Vec<Today> {
    let now: Moment = "2026-11-25T19:30:00Z".parse().unwrap();
    let story = Story::from_events(sayso_sim::demo(7, now).events);
    story.animals().keys().map(|animal| today(&Case::new(&story, *animal, now)).unwrap()).collect()
}

/// What would change a mind is no reason said once more.
#[test]
fn no_change_repeats_a_reason() {
    let now: Moment = "2026-11-25T19:30:00Z".parse().unwrap();
    let l = Locale::ENGLISH;
    let mut changes = 0;
    for days in [0.0, 14.0, 35.0, 56.0, 77.0] {
        let until = now.plus_seconds(days * -86_400.0);
        let events = sayso_sim::demo(7, now).events.into_iter().filter(|e| e.happened_at <= until);
        let story = Story::from_events(events.collect::<Vec<_>>());
        for animal in story.animals().keys() {
            for word in standings(&Case::new(&story, *animal, until)) {
                let reasons: Vec<String> = word.because.iter().map(|b| said::because(&l, "Bo", b)).collect();
                for change in &word.would_change {
                    changes += 1;
                    let change = said::change(&l, "Bo", change);
                    assert!(!reasons.contains(&change), "{}: {change}", word.says);
                }
            }
        }
    }
    assert!(changes > 20, "{changes}");
}

fn of_advice(l: &Locale, name: &str, advice: &Advice, all: &mut Vec<String>) {
    all.push(said::topic(l, advice.topic));
    all.push(said::act(l, name, &advice.act));
    all.push(said::sure(l, advice.sure));
    all.extend(advice.because.iter().map(|r| said::because(l, name, &r.fact)));
    all.extend(advice.would_change.iter().map(|c| said::change(l, name, c)));
    all.extend(advice.cautions.iter().map(|c| said::caution(l, name, *c)));
}

fn page(l: &Locale, today: &Today) -> Vec<String> {
    let name = today.animal.name.as_str();
    let mut all = vec![said::next(l, name, &Zone::utc(), &today.next)];
    all.extend(today.held.iter().map(|held| said::held(l, &Zone::utc(), held)));
    if let Some(plan) = today.plan() {
        all.push(said::length(l, &plan.minutes_from));
        all.extend(plan.words.iter().map(|w| said::planned(l, w)));
        all.extend(plan.cautions.iter().map(|c| said::caution(l, name, *c)));
    }
    for advice in today.welfare.iter().chain(&today.later) {
        of_advice(l, name, advice, &mut all);
    }
    for step in &today.steps {
        std::iter::once(&step.advice).chain(&step.also).for_each(|a| of_advice(l, name, a, &mut all));
        all.extend(step.hint.iter().map(|h| said::hint(l, name, h)));
    }
    all.extend(today.lately.iter().map(|fact| said::lately(l, name, fact)));
    all
}

#[test]
fn every_advice_of_the_demo_is_said_in_every_language() {
    let demo = demo();
    let english: Vec<String> = demo.iter().flat_map(|t| page(&Locale::ENGLISH, t)).collect();
    assert!(english.len() > 40, "{english:#?}");
    for language in Language::ALL {
        let own: Vec<String> = demo.iter().flat_map(|t| page(&Locale::of(language), t)).collect();
        assert_eq!(own.len(), english.len());
        for text in &own {
            // A message that is missing says its id; an argument that is missing leaves its braces.
            let id = ["act-", "because-", "advice-", "estimate-"].iter().any(|file| text.starts_with(file));
            assert!(!id && !text.contains('{') && !text.trim().is_empty(), "{language:?}: {text}");
        }
        let same = own.iter().zip(&english).filter(|(a, b)| a == b).count();
        assert!(
            language == Language::En || same * 10 < own.len(),
            "{language:?}: {same} of {} as in English",
            own.len()
        );
    }
}

#[test]
fn nothing_says_that_an_animal_does_not_understand() {
    let said: String =
        demo().iter().flat_map(|t| page(&Locale::ENGLISH, t)).collect::<Vec<_>>().join(" ").to_lowercase();
    for never in ["does not understand", "doesn't understand", "cannot learn", "failed", "stubborn", "wrong answer"] {
        assert!(!said.contains(never), "{never}");
    }
}

#[test]
fn where_a_battery_is_named_so_is_a_child_and_the_emergency() {
    for language in Language::ALL {
        let text = said::caution(&Locale::of(language), "Bo", sayso_advisor::Caution::Battery);
        let child = ["child", "niño", "Kind", "enfant", "criança"].iter().any(|w| text.contains(w));
        let at_once = ["emergency department", "urgencias", "Notaufnahme", "urgences", "pronto-socorro"];
        assert!(child && at_once.iter().any(|w| text.contains(w)), "{language:?}: {text}");
    }
}

#[test]
fn of_when_it_was_wanted_only_what_happened_is_told() {
    let told = |this, other, none| said::because(&Locale::ENGLISH, "Tarn", &Because::WhenWanted { this, other, none });
    assert_eq!(told(0, 0, 33), "Tarn was invited and wanted the thing 33 times: pressed nothing each time.");
    assert_eq!(
        told(1, 0, 9),
        "Tarn was invited and wanted the thing 10 times: pressed this word once and pressed nothing 9 times."
    );
    for language in Language::ALL {
        let said = said::because(&Locale::of(language), "Tarn", &Because::WhenWanted { this: 0, other: 2, none: 31 });
        assert!(!said.split(|c: char| !c.is_ascii_digit()).any(|number| number == "0"), "{said}");
    }
}
