//! The binary from beginning to end.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

mod common;

use common::{QUESTIONS, cells};
use std::path::Path;
use std::process::{Command, Output};

fn study(args: &[&str]) -> Output {
    Command::new(env!("CARGO_BIN_EXE_study")).args(args).output().unwrap()
}

fn said(output: &Output) -> String {
    assert!(output.status.success(), "{}", String::from_utf8_lossy(&output.stderr));
    String::from_utf8(output.stdout.clone()).unwrap()
}

fn tables(dir: &Path) -> String {
    let out = dir.to_str().unwrap();
    said(&study(&["simulate", "--households", "24", "--days", "50", "--bucket", "5", "--threads", "2", "--out", out]))
}

#[test]
fn every_question_is_answered_the_same_by_any_number_of_threads() {
    let dir = tempfile::tempdir().unwrap();
    let told = tables(dir.path());
    assert!(told.contains("24 households"), "{told}");
    let out = dir.path().to_str().unwrap();
    for question in QUESTIONS {
        let ask = |threads| said(&study(&["ask", question, out, "--threads", threads, "--csv"]));
        let (one, four) = (ask("1"), ask("4"));
        assert!(one.lines().count() > 2, "{question}: {one}");
        assert_eq!(cells(&one), cells(&four), "{question}");
    }
    // Who stops reading is no reason to break down.
    let read =
        Command::new("sh").args(["-c", "\"$0\" ask curve \"$1\" | true", env!("CARGO_BIN_EXE_study"), out]).output();
    assert!(!String::from_utf8_lossy(&read.unwrap().stderr).contains("panicked"));
    let table = said(&study(&["ask", "sessions", out]));
    assert!(table.contains("minutes_half") && table.contains("these are not all animals"), "{table}");
}

#[test]
fn the_engine_sorts_no_events() {
    let dir = tempfile::tempdir().unwrap();
    tables(dir.path());
    let out = dir.path().to_str().unwrap();
    let plan = said(&study(&["ask", "first-press", out, "--threads", "2", "--plan"]));
    // Groups of a household are done when the next household begins: none is kept longer.
    assert!(plan.contains("ordering_mode=PartiallySorted"), "{plan}");
    let (_, below) = plan.split_once("AggregateExec: mode=Partial, gby=[household").unwrap();
    assert!(!below.contains("SortExec"), "{plan}");
}

#[test]
fn what_is_not_there_or_not_whole_is_said() {
    let dir = tempfile::tempdir().unwrap();
    let asked = study(&["ask", "hours", dir.path().to_str().unwrap()]);
    assert!(!asked.status.success());
    assert!(String::from_utf8_lossy(&asked.stderr).contains("is not whole"), "{asked:?}");
}

#[test]
fn the_codebook_names_every_column_and_word() {
    let book = said(&study(&["codebook"]));
    for part in [
        "| at_s | Int32 | no |",
        "| pressed_by | words | yes |",
        "| stumble | A press that looked",
        "| under 2 | Under two",
    ] {
        assert!(book.contains(part), "{part} is not in {book}");
    }
}

#[test]
fn tables_of_homes_ask_for_the_approval_of_the_study() {
    let dir = tempfile::tempdir().unwrap();
    let at = |name: &str| dir.path().join(name).to_str().unwrap().to_owned();
    std::fs::write(at("key"), [7; 32]).unwrap();
    let (homes, key, out) = (at("homes.txt"), at("key"), at("tables"));
    let asked = ["export", "--homes", &homes, "--key", &key, "--out", &out];
    let told = |more: &[&str]| {
        let output = Command::new(env!("CARGO_BIN_EXE_study"))
            .args(asked)
            .args(more)
            .env("SAYSO_DATABASE", "postgres://nobody@127.0.0.1:1/sayso")
            .output()
            .unwrap();
        (output.status.code(), String::from_utf8(output.stderr).unwrap())
    };
    let (code, said) = told(&[]);
    assert!(code == Some(2) && said.contains("--approval"), "{said}");
    let (code, said) = told(&["--approval", "  "]);
    assert!(code == Some(2) && said.contains("which board approved"), "{said}");
    // Said, it is the database that is missing; asking again writes nothing, and needs no approval.
    for said_so in [&["--approval", "Board of the Meadow Institute, 12/2026"][..], &["--check"]] {
        let (code, said) = told(said_so);
        assert!(code == Some(1) && !said.contains("--approval"), "{said}");
    }
    assert!(!dir.path().join("tables").exists(), "nothing was written");
}
