//! Errors of the floors below, in every language.
#![allow(clippy::unwrap_used, missing_docs)]

use sayso_advisor::evidence::NoClaim;
use sayso_listen::{ListenError, Undecodable};
use sayso_methods::stats::StatsError;
use sayso_methods::understanding::UnderstandingError;
use sayso_model::{Fault, Language, Problem, Problems};
use sayso_notebook::{NoSound, NotKept};
use sayso_store::{BackupFault, RowProblem, Share, Shares, StoreError};
use sayso_wording::{Locale, Message, Words};

const LANGUAGES: [Language; 5] = [Language::En, Language::Es, Language::De, Language::Fr, Language::Pt];

/// What an error says in each language.
fn told(why: &dyn Message) -> Vec<String> {
    LANGUAGES.iter().map(|language| why.say(&Locale::of(*language))).collect()
}

/// Said in five ways, each with these parts.
fn differ(why: &dyn Message, parts: &[&str]) {
    let told = told(why);
    for (i, one) in told.iter().enumerate() {
        assert!(parts.iter().all(|part| one.contains(part)), "{one}");
        assert!(!told[..i].contains(one), "twice: {one}");
    }
}

#[test]
fn errors_of_the_notebook_and_of_sounds_are_said_in_each_language_with_their_place() {
    differ(&StoreError::DiskFull, &[]);
    differ(&StoreError::NotADatabase("a/b.db".into()), &["a/b.db"]);
    differ(&StoreError::BadBackup { path: "c.sayso".into(), what: BackupFault::NoDigest }, &["c.sayso"]);
    differ(&StoreError::BadBackup { path: "c.sayso".into(), what: BackupFault::Loose(3) }, &["c.sayso", "3"]);
    let home = "0197a1b2-0000-7000-8000-000000000001".parse().unwrap();
    let who: Shares = [(home, Share { name: Some("The Lane".into()), events: 12, other: true })].into();
    differ(&StoreError::OtherHome { path: "d.tar".into(), who }, &["d.tar", "The Lane", "12"]);
    let row = RowProblem { line: 7, field: "word".into(), found: "bal".into(), wanted: "an id".into() };
    differ(&row, &["7", "word", "bal", "an id"]);
    let file = RowProblem { line: 0, ..row };
    assert!(told(&file).iter().all(|one| !one.contains('0') && one.starts_with("word")), "{:?}", told(&file));
    let sound = ListenError::Decode { name: None, reason: Undecodable::OtherFile("QXF") };
    differ(&NoSound::Sound(sound), &["QXF", "WAV", "m4a"]);
    differ(&ListenError::ClipLength { word: "ball".into(), seconds: 6.0 }, &["ball", "6"]);
}

#[test]
fn a_refused_event_names_its_field_and_a_lack_its_counts() {
    let why = NotKept::Refused(Problems(vec![Problem { field: "body.word".into(), fault: Fault::TwoPlaces }]));
    assert_eq!(why.say(&Locale::ENGLISH), "Word stands in two places.");
    assert!(why.say(&Locale::of(Language::De)).starts_with("Wort "), "{}", why.say(&Locale::of(Language::De)));
    let few = StatsError::TooFew { what: "trials", needed: 5, got: 2 };
    differ(&NoClaim::Why(UnderstandingError::Stats(few)), &["5", "2"]);
    differ(&NoClaim::NoCard, &[]);
}

#[test]
fn words_may_be_ended_by_a_full_stop() {
    let said = Words::from(StoreError::Busy).sentence().say(&Locale::of(Language::Fr));
    assert!(said.ends_with('.') && !said.ends_with(".."), "{said}");
    assert_eq!(said.trim_end_matches('.'), StoreError::Busy.say(&Locale::of(Language::Fr)));
}
