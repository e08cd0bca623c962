//! Errors of the floors below, in every language.

use sayso_advisor::evidence::NoClaim;
use sayso_listen::{ListenError, Undecodable};
use sayso_methods::stats::StatsError;
use sayso_methods::understanding::UnderstandingError;
use sayso_model::{Fault, Language, Problem, Problems};
use sayso_notebook::{NoSound, NotKept};
use sayso_store::{
    BackupFault, CheckFault, ClipFault, Damage, DamagedRow, FaultKind, OnlyInAFolder, RowDamage, RowProblem, Share,
    Shares, SnapshotFault, StoreError, Wanted,
};
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
    differ(&StoreError::Unreachable { what: "no route".into() }, &["no route"]);
    differ(&StoreError::OldDatabase { found: 12, least: 14 }, &["12", "14"]);
    differ(&StoreError::NewerDatabase { found: 9, known: 8 }, &["9", "8"]);
    differ(&StoreError::NoRights { what: "no role".into() }, &["no role", "sayso_server"]);
    differ(
        &StoreError::NotLetIn { what: "password authentication failed".into() },
        &["authentication failed", "SAYSO_DATABASE"],
    );
    differ(&StoreError::NeedsOwner { what: "no option".into() }, &["no option", "SAYSO_DATABASE_OWNER"]);
    for lacks in [OnlyInAFolder::Backup, OnlyInAFolder::Restore, OnlyInAFolder::Check, OnlyInAFolder::Snippets] {
        differ(&StoreError::OnlyInAFolder(lacks), &[]);
    }
    differ(&StoreError::BadBackup { path: "c.sayso".into(), what: BackupFault::Loose(3) }, &["c.sayso", "3"]);
    let home = "0197a1b2-0000-7000-8000-000000000001".parse().unwrap();
    differ(&StoreError::HomeLeft(home), &[]);
    differ(&StoreError::NoSuchHome(home), &[&home.to_string()]);
    let who: Shares = [(home, Share { name: Some("The Lane".into()), events: 12, other: true })].into();
    differ(&StoreError::OtherHome { path: "d.tar".into(), who }, &["d.tar", "The Lane", "12"]);
    let row = RowProblem {
        line: 7,
        field: "word".into(),
        found: "bal".into(),
        wanted: Box::new(Wanted::Whole { low: 3, high: 9 }),
    };
    differ(&row, &["7", "word", "bal", "3", "9"]);
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

fn wanted() -> Vec<Wanted> {
    let names = || vec!["ball".to_owned(), "walk".to_owned()];
    let text = || "x7".to_owned();
    vec![
        Wanted::Text,
        Wanted::Number,
        Wanted::Point,
        Wanted::Whole { low: 1, high: 9 },
        Wanted::Flag,
        Wanted::List,
        Wanted::JsonList,
        Wanted::Object(names()),
        Wanted::Tagged { tag: text(), names: names() },
        Wanted::ObjectNotList,
        Wanted::OneOf(names()),
        Wanted::Needed,
        Wanted::NeededOneOf(names()),
        Wanted::NoSuchField(names()),
        Wanted::EmptyCell(text()),
        Wanted::Parts(text()),
        Wanted::BodyColumns,
        Wanted::Fitting,
        Wanted::Id,
        Wanted::HomeId,
        Wanted::FirstHomeId,
        Wanted::NoNameYet,
        Wanted::Name { known: names(), more: 0 },
        Wanted::Name { known: names(), more: 3 },
        Wanted::OneOfIds { count: 2, ids: names() },
        Wanted::Time,
        Wanted::Offset("2026-03-01T18:30:00".to_owned()),
        Wanted::Twice { first: text(), second: "y".to_owned(), zone: "Europe/Berlin".to_owned() },
        Wanted::Skipped { first: text(), second: "y".to_owned(), zone: "Europe/Berlin".to_owned() },
        Wanted::Event,
        Wanted::Json { column: 12 },
        Wanted::OwnId,
        Wanted::SmallerFile { most: 4_096 },
        Wanted::ShorterLine { most: 4_096 },
        Wanted::Utf8,
        Wanted::ClosedQuotes,
        Wanted::Table,
        Wanted::Cells(5),
        Wanted::Header,
        Wanted::ColumnOnce,
        Wanted::Column(names()),
        Wanted::ThisColumn(text()),
        Fault::TwoPlaces.into(),
    ]
}

#[test]
fn what_is_wanted_is_said_in_every_language_with_a_kind_for_programs() {
    for wanted in wanted() {
        let english = wanted.say(&Locale::ENGLISH);
        assert_eq!(english, wanted.to_string());
        let kind = wanted.kind().unwrap();
        assert!(kind.starts_with("wanted-") || matches!(wanted, Wanted::Other(_)), "{kind}");
        for language in LANGUAGES.into_iter().skip(1) {
            let own = wanted.say(&Locale::of(language));
            assert!(own != english && !own.contains(kind) && !own.is_empty(), "{language:?}: {own}");
        }
        let row = RowProblem { line: 3, field: "word".into(), found: "bal".into(), wanted: Box::new(wanted.clone()) };
        differ(&row, &["3", "word"]);
    }
    for field in ["file", "line", "row", "column", ""] {
        differ(
            &RowProblem { line: 0, field: field.into(), found: "bal".into(), wanted: Box::new(Wanted::Text) },
            &["bal"],
        );
    }
}

#[test]
fn a_mistake_made_often_is_told_once_with_its_lines() {
    let example = RowProblem { line: 2, field: "word".into(), found: "bal".into(), wanted: Box::new(Wanted::Id) };
    for (count, lines) in [(1, vec![2]), (3, vec![2, 5, 9]), (80, vec![2, 3, 4, 5, 6]), (1, Vec::new())] {
        let kind = FaultKind { count, lines: lines.clone(), example: example.clone() };
        let said: Vec<String> = LANGUAGES.iter().map(|l| sayso_wording::wanted::told(&Locale::of(*l), &kind)).collect();
        for (i, one) in said.iter().enumerate() {
            assert!(lines.iter().all(|n| one.contains(&n.to_string())) && one.contains("bal"), "{one}");
            assert!(!said[..i].contains(one), "twice: {one}");
        }
    }
}

#[test]
fn what_a_check_finds_is_said_in_every_language() {
    let id = "0197a1b2-0000-7000-8000-000000000001".parse().unwrap();
    let home = "0197a1b2-0000-7000-8000-000000000002".parse().unwrap();
    let row = |what| DamagedRow { id, seq: 17, what };
    differ(&CheckFault::Row(row(RowDamage::NoEvent)), &["0197a1b2", "17"]);
    differ(&CheckFault::Row(row(RowDamage::Column("kind"))), &["17", "kind"]);
    for what in [SnapshotFault::Differs { id, seq: 17 }, SnapshotFault::More(id)] {
        differ(&CheckFault::Snapshot { home, what, file: "a/b.snapshot".into() }, &["a/b.snapshot", "000000000001"]);
    }
    differ(&CheckFault::Clip { sha256: "ab12".into(), what: ClipFault::OtherContent }, &["ab12"]);
    for what in [Damage::Row(row(RowDamage::NoEvent)), Damage::LogLeft("a.db-wal".into()), Damage::OtherSchema(3)] {
        differ(&StoreError::Corrupt { path: "c.db".into(), what }, &["c.db"]);
    }
}
