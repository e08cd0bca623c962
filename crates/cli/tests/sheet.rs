//! The sheets as a person prints them from the command line.
#![cfg(unix)]
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use sayso_model::{Event, ProbeDesign, ProbePlan, Story};
use std::io::Write;
use std::path::Path;
use std::process::{Command, Output, Stdio};

fn sayso(args: &[&str], language: &str) -> Output {
    let mut command = Command::new(env!("CARGO_BIN_EXE_sayso"));
    command.args(args).env_remove("LC_ALL").env_remove("LC_MESSAGES").env("LANG", language).output().unwrap()
}

fn out(done: &Output) -> String {
    format!("{}{}", String::from_utf8_lossy(&done.stdout), String::from_utf8_lossy(&done.stderr))
}

/// A check of Quillet's.
const CHECK: &str = "01890000-0000-7000-8000-00000000c4ec";

/// A notebook with the demo home in it.
fn notebook(dir: &Path) {
    let end = "2026-03-01T19:30:00Z".parse().unwrap();
    let mut events = sayso_sim::demo(1, end).events;
    let story = Story::from_events(events.clone());
    let quillet = story.animals().into_values().find(|a| a.name.as_str() == "Quillet").unwrap().animal;
    let words = story.words_of(quillet).into_iter().filter(|w| w.reward.is_some()).take(2).map(|w| w.word).collect();
    let design = ProbeDesign::PickForWord;
    let plan = ProbePlan { probe: CHECK.parse().unwrap(), design, words, choices: 2, trials: 8, seed: 1, blind: true };
    let id = CHECK.parse().unwrap();
    events.push(Event {
        id,
        animal: Some(quillet),
        happened_at: end,
        recorded_at: end,
        body: plan.into(),
        ..events[0].clone()
    });
    let lines: Vec<String> = events.iter().map(|e| serde_json::to_string(e).unwrap()).collect();
    let mut command = Command::new(env!("CARGO_BIN_EXE_sayso"));
    command.args(["log", "--data"]).arg(dir).stdin(Stdio::piped()).stdout(Stdio::null()).stderr(Stdio::inherit());
    let mut child = command.spawn().unwrap();
    child.stdin.take().unwrap().write_all(lines.join("\n").as_bytes()).unwrap();
    assert!(child.wait().unwrap().success());
}

fn language(file: &str) -> String {
    let document = lopdf::Document::load(file).unwrap();
    lopdf::decode_text_string(document.catalog().unwrap().get(b"Lang").unwrap()).unwrap()
}

#[test]
fn sheets_are_written_in_the_readers_language_about_the_animal_asked_for() {
    let outside = tempfile::tempdir().unwrap();
    let path = |name: &str| outside.path().join(name).to_str().unwrap().to_owned();
    let (data, to) = (path("notebook"), path("sheet.pdf"));
    notebook(Path::new(&data));

    let rules = sayso(&["sheet", "rules", "--data", &data, "--to", &to], "de_DE.UTF-8");
    assert!(rules.status.success() && out(&rules).contains("(eine Seite)"), "{}", out(&rules));
    assert_eq!(language(&to), "de");
    for (kind, more) in [
        ("likes", vec!["--animal", "Tarn"]),
        ("labels", vec!["--size", "small", "--paper", "letter"]),
        ("meeting", vec!["--animal", "Tarn", "--since", "2026-11-01"]),
        ("kit", vec![]),
        ("lessons", vec![]),
        ("setter", vec!["--animal", "Quillet"]),
        ("scorer", vec!["--animal", "Quillet", "--check", CHECK]),
    ] {
        let asked = [vec!["sheet", kind, "--data", &data, "--to", &to, "--language", "fr"], more].concat();
        let done = sayso(&asked, "de_DE.UTF-8");
        assert!(done.status.success() && out(&done).contains("Écrit"), "{}", out(&done));
        assert_eq!(language(&to), "fr");
    }
    let progress = sayso(
        &["sheet", "progress", "--data", &data, "--to", &to, "--animal", "quillet", "--days", "84"],
        "nl_NL.UTF-8",
    );
    assert!(progress.status.success(), "{}", out(&progress));
    assert_eq!(language(&to), "en");

    let unknown = ["--check", "01890000-0000-7000-8000-000000000000"];
    let asked = [&["sheet", "setter", "--data", &data, "--to", &to, "--animal", "Tarn"][..], &unknown].concat();
    let none = sayso(&asked, "C");
    assert!(!none.status.success() && out(&none).contains("Tarn has no such check"), "{}", out(&none));

    let which = sayso(&["sheet", "likes", "--data", &data, "--to", &to], "C");
    assert!(!which.status.success() && out(&which).contains("Quillet or Tarn"), "{}", out(&which));
    let whole = sayso(&["sheet", "rules", "--data", &data, "--to", &to, "--animal", "Tarn"], "C");
    assert!(!whole.status.success() && out(&whole).contains("leave out --animal"), "{}", out(&whole));
    let days = sayso(&["sheet", "progress", "--data", &data, "--to", &to, "--days", "30"], "C");
    assert!(!days.status.success() && out(&days).contains("14, 28, 84"), "{}", out(&days));
    let since = sayso(&["sheet", "meeting", "--data", &data, "--to", &to, "--since", "soon"], "C");
    assert!(!since.status.success() && out(&since).contains("soon"), "{}", out(&since));
    let nowhere = sayso(&["sheet", "rules", "--data", &data, "--to", &path("no/such/folder.pdf")], "C");
    assert!(!nowhere.status.success() && out(&nowhere).contains("no/such/folder.pdf"), "{}", out(&nowhere));
}
