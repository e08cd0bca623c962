//! Releases by the command line, from rows of invented households.

#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, missing_docs)]

use datafusion::parquet::arrow::arrow_reader::ParquetRecordBatchReaderBuilder;
use sayso_norms::{People, Release, write_rows};
use std::path::{Path, PathBuf};
use std::process::{Command, Output};
use study_norms::known::Laws;

fn study(args: &[&str]) -> Output {
    Command::new(env!("CARGO_BIN_EXE_study")).args(args).output().unwrap()
}

struct Place(tempfile::TempDir);

impl Place {
    /// Rows of 900 households, of which 600 agree.
    fn new() -> Self {
        let place = Self(tempfile::tempdir().unwrap());
        let rows = Laws { words: 3, ..Laws::default() }.rows(900, 5);
        std::fs::write(place.path("rows.jsonl"), write_rows(&rows).unwrap()).unwrap();
        let agreed: std::collections::BTreeSet<&str> =
            rows.iter().map(|row| row.household.as_str()).filter(|name| *name < "known-000600").collect();
        std::fs::write(place.path("agreed.txt"), agreed.into_iter().collect::<Vec<_>>().join("\n")).unwrap();
        place
    }

    fn path(&self, name: &str) -> PathBuf {
        self.0.path().join(name)
    }

    fn text(&self, name: &str) -> String {
        self.path(name).to_str().unwrap().to_owned()
    }

    fn release(&self, name: &str, more: &[&str]) -> Output {
        self.dated(name, "2026-11-27", more)
    }

    fn dated(&self, name: &str, day: &str, more: &[&str]) -> Output {
        let (rows, to) = (self.text("rows.jsonl"), self.text(&format!("{name}.sayso-norms")));
        study(&[&["norms", "release", &rows, "--name", name, "--to", &to, "--made", day], more].concat())
    }
}

fn said(out: &Output) -> String {
    String::from_utf8_lossy(&out.stderr).into_owned()
}

fn read(path: &Path) -> Release {
    Release::read(&std::fs::read_to_string(path).unwrap()).unwrap()
}

#[test]
fn a_release_is_made_once_a_year_of_those_who_agree_and_becomes_a_table() {
    let place = Place::new();
    let (agreed, budget) = (place.text("agreed.txt"), place.text("budget.jsonl"));
    let real = ["--agreed", &agreed, "--budget", &budget];
    let made = place.release("first", &real);
    assert!(made.status.success(), "{}", said(&made));
    assert!(said(&made).contains("600 households used, 300 left out"), "{}", said(&made));
    let release = read(&place.path("first.sayso-norms"));
    assert_eq!((release.people, release.noise.map(|n| n.epsilon)), (People::SelfChosen, Some(1.0)));
    // No name of a file: of whoever made it, or, a file a home, of homes.
    let command = &release.made_by.command;
    assert!(command.starts_with("study norms release ROWS --agreed FILE --budget FILE --epsilon 1"), "{command}");
    assert!(!command.contains("jsonl") && !command.contains(".txt"), "{command}");
    // The same again, with other noise: refused, and nothing is written.
    let again = place.release("second", &real);
    assert!(!again.status.success() && said(&again).contains("would go over the budget"), "{}", said(&again));
    assert!(!place.path("second.sayso-norms").exists());
    // Nor by another date of its own: the year is that in which it is made.
    for day in ["2020-01-01", "2031-01-01"] {
        let dated = place.dated("dated", day, &real);
        assert!(!dated.status.success() && said(&dated).contains("would go over the budget"), "{}", said(&dated));
    }
    // Nor over another.
    let over = place.release("first", &real);
    assert!(said(&over).contains("is there already"), "{}", said(&over));
    assert_eq!(std::fs::read_to_string(&budget).unwrap().lines().count(), 1);
    let table = study(&["norms", "table", &place.text("first.sayso-norms"), "--to", &place.text("first.parquet")]);
    assert!(table.status.success(), "{}", said(&table));
    let file = std::fs::File::open(place.path("first.parquet")).unwrap();
    let rows: usize =
        ParquetRecordBatchReaderBuilder::try_new(file).unwrap().build().unwrap().map(|b| b.unwrap().num_rows()).sum();
    assert_eq!(rows, study_norms::table::figures(&release).len());
    let book = std::fs::read_to_string(place.path("first.md")).unwrap();
    assert!(book.contains(command.as_str()) && book.contains(&release.made_by.program_sha256), "{book}");
}

#[test]
fn a_club_is_told_of_without_noise_and_its_file_says_so() {
    let place = Place::new();
    let (agreed, budget) = (place.text("agreed.txt"), place.text("budget.jsonl"));
    let made = place.release("club", &["--agreed", &agreed, "--budget", &budget, "--club", "Club"]);
    assert!(made.status.success(), "{}", said(&made));
    let release = read(&place.path("club.sayso-norms"));
    assert_eq!((release.club.as_deref(), release.noise), (Some("Club"), None));
    let again = place.release("again", &["--agreed", &agreed, "--budget", &budget, "--club", "Club"]);
    assert!(!again.status.success() && said(&again).contains("within a year"), "{}", said(&again));
}

#[test]
fn a_seed_is_for_invented_households_only_and_the_release_says_so() {
    let place = Place::new();
    let (agreed, budget) = (place.text("agreed.txt"), place.text("budget.jsonl"));
    let real = place.release("a", &["--agreed", &agreed, "--budget", &budget, "--seed-for-tests", "1"]);
    assert!(!real.status.success() && said(&real).contains("--invented"), "{}", said(&real));
    assert!(!place.release("a", &["--budget", &budget]).status.success());
    assert!(!place.release("a", &["--agreed", &agreed]).status.success());
    assert!(place.release("a", &["--invented", "--seed-for-tests", "1"]).status.success());
    assert_eq!(read(&place.path("a.sayso-norms")).people, People::Invented);
}

#[test]
fn a_bad_row_is_named_and_costs_nothing() {
    let place = Place::new();
    let rows = std::fs::read_to_string(place.path("rows.jsonl")).unwrap();
    std::fs::write(place.path("rows.jsonl"), rows.replacen("\"days\":", "\"days\":-", 1)).unwrap();
    let (agreed, budget) = (place.text("agreed.txt"), place.text("budget.jsonl"));
    let made = place.release("a", &["--agreed", &agreed, "--budget", &budget]);
    assert!(!made.status.success() && said(&made).contains("line 1, days"), "{}", said(&made));
    assert!(!place.path("budget.jsonl").exists());
}

#[test]
fn a_list_of_other_households_costs_nothing() {
    let place = Place::new();
    std::fs::write(place.path("agreed.txt"), "somebody-else\n").unwrap();
    let (agreed, budget) = (place.text("agreed.txt"), place.text("budget.jsonl"));
    let made = place.release("a", &["--agreed", &agreed, "--budget", &budget]);
    assert!(!made.status.success() && said(&made).contains("nothing was spent"), "{}", said(&made));
    assert!(!place.path("budget.jsonl").exists());
}
