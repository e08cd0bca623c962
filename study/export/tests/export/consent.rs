//! Only homes that agree to research, at the time of the export.

use sayso_model::{Body, Consent, ConsentGiven, ConsentTakenBack, Event, EventId, HomeId, Moment, Source as By};
use sayso_sim::{any_home, simulate};
use std::io::Write;
use std::path::Path;
use study_export::{Bucket, ExportError, Key, Logs, Manifest, write};

fn now() -> Moment {
    "2026-06-02T12:00:00Z".parse().unwrap()
}

/// A home's log; the last event is of the evening before [`now`].
fn log(seed: u64) -> Vec<Event> {
    let mut home = any_home(seed);
    home.days = 15;
    simulate(&home, seed, "2026-06-01T19:00:00Z".parse().unwrap()).unwrap().events
}

fn id(n: u64) -> EventId {
    serde_json::from_str(&format!("\"0195a0a0-0000-7000-8000-{n:012x}\"")).unwrap()
}

fn said(log: &[Event], n: u64, body: Body) -> Event {
    let last = log.last().unwrap();
    let at = last.happened_at.plus_seconds(n as f64);
    Event { id: id(n), animal: None, happened_at: at, recorded_at: at, source: By::Tap, body, ..last.clone() }
}

fn given(log: &[Event], n: u64, consent: Consent) -> Event {
    said(log, n, ConsentGiven { consent, words_version: Consent::WORDS, holds: None }.into())
}

fn put(dir: &Path, name: &str, log: &[Event]) {
    let mut file = std::fs::File::create(dir.join(name)).unwrap();
    for event in log {
        writeln!(file, "{}", serde_json::to_string(event).unwrap()).unwrap();
    }
}

fn export(from: &Path, to: &Path) -> Result<Manifest, ExportError> {
    let key = Key::new(&[9; 32]).unwrap();
    write(to, &Logs::open(&[from.to_owned()], &key, now())?, Bucket(10), 1, &|_| {})
}

#[test]
fn consent_to_something_else_or_taken_back_is_none() {
    let (from, to) = (tempfile::tempdir().unwrap(), tempfile::tempdir().unwrap());
    let (mut agrees, mut norms, mut back, never) = (log(1), log(2), log(3), log(4));
    agrees.push(given(&agrees, 1, Consent::Research));
    norms.push(given(&norms, 2, Consent::Norms));
    back.push(given(&back, 3, Consent::Research));
    back.push(said(&back, 4, ConsentTakenBack { consent: Consent::Research, given: id(3) }.into()));
    put(from.path(), "a.jsonl", &agrees);
    put(from.path(), "b.jsonl", &norms);
    // Several homes in one file, their lines among each other.
    let mut mixed: Vec<Event> = back.into_iter().chain(never).collect();
    mixed.sort_by_key(|e| (e.recorded_at, e.id));
    put(from.path(), "c.jsonl", &mixed);
    let manifest = export(from.path(), to.path()).unwrap();
    assert_eq!(manifest.whole.iter().map(|e| e.households).sum::<u32>(), 1);
    assert!(manifest.events() > 20);
}

#[test]
fn who_takes_consent_back_is_out_of_tables_that_were_whole() {
    let (from, to) = (tempfile::tempdir().unwrap(), tempfile::tempdir().unwrap());
    let (mut one, mut two) = (log(1), log(2));
    one.push(given(&one, 1, Consent::Research));
    two.push(given(&two, 2, Consent::Research));
    put(from.path(), "one.jsonl", &one);
    put(from.path(), "two.jsonl", &two);
    let before = export(from.path(), to.path()).unwrap();
    two.push(said(&two, 3, ConsentTakenBack { consent: Consent::Research, given: id(2) }.into()));
    put(from.path(), "two.jsonl", &two);
    let after = export(from.path(), to.path()).unwrap();
    assert_eq!((before.whole[0].households, after.whole[0].households), (2, 1));
    assert!(after.events() < before.events());
    let there = std::fs::metadata(to.path().join("events/bucket-00000.parquet")).unwrap().len();
    assert_eq!(there, after.whole[0].bytes);
}

#[test]
fn a_home_s_number_follows_from_the_key_alone() {
    let mut logs: Vec<Vec<Event>> = (1..8).map(log).collect();
    for (n, log) in logs.iter_mut().enumerate() {
        log.push(given(log, n as u64, Consent::Research));
    }
    let order = |reverse: bool| {
        let from = tempfile::tempdir().unwrap();
        for (n, log) in logs.iter().enumerate() {
            put(from.path(), &format!("{}.jsonl", if reverse { 9 - n } else { n }), log);
        }
        let to = tempfile::tempdir().unwrap();
        export(from.path(), to.path()).unwrap();
        std::fs::read(to.path().join("events/bucket-00000.parquet")).unwrap()
    };
    assert_eq!(order(false), order(true));
}

#[test]
fn a_line_that_is_no_event_is_named() {
    let (from, to) = (tempfile::tempdir().unwrap(), tempfile::tempdir().unwrap());
    let home: HomeId = log(1)[0].home;
    let line = serde_json::json!({ "home": home, "kind": "press" });
    std::fs::write(from.path().join("x.jsonl"), format!("\n{line}\n")).unwrap();
    let why = export(from.path(), to.path()).unwrap_err().to_string();
    assert!(why.contains("x.jsonl, line 2"), "{why}");
}
