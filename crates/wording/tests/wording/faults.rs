//! Every fault of an event is said in every language.

use sayso_model::text::TextError;
use sayso_model::time::TimeError;
use sayso_model::units::Seconds;
use sayso_model::{CaseMeasure, Fault, Language, LifeStage, Moment, Species, TooLate};
use sayso_wording::{Locale, Message, faults, words};

fn all() -> Vec<Fault> {
    let moment: Moment = "2026-03-01T18:30:00Z".parse().unwrap();
    vec![
        Fault::NotYourHome,
        Fault::NotYourRole,
        Fault::OnItsPage,
        Fault::InvitesClosing,
        Fault::NotYourAccount,
        Fault::NotYourDay,
        Fault::NoAnimal,
        Fault::Range { low: 1, high: 9, found: 12_345 },
        Fault::TooFew { least: 2, found: 1 },
        Fault::HowMany { low: 2, high: 12, found: 1 },
        Fault::Seconds { low: 0.5, high: 120.0, found: 130.0 },
        Fault::Twice,
        Fault::AmendsAmendment,
        Fault::NotAlternative,
        Fault::NotPressedAgain,
        Fault::NotBetweenTwo,
        Fault::SameWord,
        Fault::AfterTheWait { wait_s: 2.5 },
        Fault::NoFood,
        Fault::EndsFirst,
        Fault::OwnSuccessor,
        Fault::LabelOfOther,
        Fault::NotByWord(CaseMeasure::DeliveryDelay),
        Fault::OnlyOverAnimals,
        Fault::CriterionForPeople,
        Fault::CriterionAPhase { found: 3 },
        Fault::OnlyWithCriterion,
        Fault::NotOffered,
        Fault::FreeByTime,
        Fault::OnlyFree,
        Fault::OfferedOnce,
        Fault::LongerThanObserved { observed_s: 30.0 },
        Fault::SwapsOneIn { low: 4, high: 50, found: 2 },
        Fault::RewardShare { most: 0.1 },
        Fault::StageOfOther { stage: LifeStage::Puppy, species: Species::Cat },
        Fault::GrownLessThanNow { grown: 3.5, now: 4.0 },
        Fault::NoEnergy,
        Fault::OnlyFood,
        Fault::NotAHash,
        Fault::OffBoard { row: 3, column: 4 },
        Fault::PlaceTwice { row: 1, column: 2 },
        Fault::TwoPlaces,
        Fault::IdTaken,
        Fault::OtherHome("0197a1b2-0000-7000-8000-000000000001".parse().unwrap()),
        Fault::TooLong { bytes: 70_000, most: 65_536 },
        Fault::NotWritten,
        TextError::Empty.into(),
        TextError::TooLong { most: 80, found: 1_000 }.into(),
        TextError::Control.into(),
        TextError::Hidden('\u{200b}').into(),
        Seconds::new(90_000.5).unwrap_err().into(),
        TimeError::NotATime("noon".into()).into(),
        TimeError::OutOfRange("1 ms".into()).into(),
        TimeError::NotAZone("Here".into()).into(),
        TimeError::NotADay("today".into()).into(),
        TooLate::Card(moment).into(),
        TooLate::Amendment(moment).into(),
    ]
}

/// What an English sentence says of a fault, without the marks of direction that stand around arguments.
fn bare(text: &str) -> String {
    text.replace(['\u{2068}', '\u{2069}'], "")
}

#[test]
fn every_fault_is_said_in_every_language_and_english_is_what_programs_read() {
    for fault in all() {
        let english = bare(&fault.say(&Locale::ENGLISH));
        assert_eq!(english, fault.to_string());
        assert!(fault.kind().is_some_and(|kind| kind.starts_with("faults-")), "{fault:?}");
        for language in Language::ALL {
            let own = bare(&fault.say(&Locale::of(language)));
            assert!(!own.contains('{') && !own.starts_with("faults-") && !own.trim().is_empty(), "{language:?}: {own}");
            assert!(language == Language::En || own != english, "{language:?}: {own}");
        }
    }
}

#[test]
fn a_sentence_names_its_field_in_the_language_of_the_reader() {
    let (english, german) = (Locale::ENGLISH, Locale::of(Language::De));
    let what = words!(faults::number, text = "viel");
    let said = |l: &Locale, name: &str| bare(&faults::at(l, name, &what));
    assert_eq!(said(&german, "body.weight_kg"), "Gewicht muss eine Zahl wie 4,5 sein, nicht \u{201e}viel\u{201c}.");
    assert_eq!(said(&english, "weight_kg"), "Weight must be a number such as 4.5, not \u{201c}viel\u{201d}.");
    assert_eq!(bare(&faults::field(&german, "some_field-12")), "Some field");
}
