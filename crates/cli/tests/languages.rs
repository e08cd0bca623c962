//! The command line speaks the reader's language.
#![cfg(unix)]
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use sayso_store::Store;
use std::process::{Command, Output};

/// As at a machine that speaks no language of its own.
fn sayso(args: &[&str], set: &[(&str, &str)]) -> Output {
    let mut command = Command::new(env!("CARGO_BIN_EXE_sayso"));
    for name in ["LC_ALL", "LC_MESSAGES", "LANG", "SAYSO_LANGUAGE"] {
        command.env_remove(name);
    }
    command.args(args).envs(set.iter().copied()).output().unwrap()
}

fn text(done: &Output) -> String {
    format!("{}{}", String::from_utf8_lossy(&done.stdout), String::from_utf8_lossy(&done.stderr))
}

/// English of some messages that every run below says.
const ENGLISH: [&str; 8] = [
    "because:",
    "how sure:",
    "may be said",
    "recordings looked at",
    "as it was written",
    "there are:",
    "Nothing here",
    "What to do today",
];

#[tokio::test]
async fn all_five_languages_are_spoken_and_no_english_is_left_over() {
    let dir = tempfile::tempdir().unwrap();
    let data = dir.path().to_str().unwrap();
    let store = Store::open(dir.path()).await.unwrap();
    for events in sayso_sim::demo(3, "2026-03-01T18:00:00Z".parse().unwrap()).events.chunks(2_000) {
        store.append(events.to_vec()).await.unwrap();
    }
    store.close().await.unwrap();
    let commands: [&[&str]; 5] = [
        &["today", "--data", data],
        &["evidence", "--data", data],
        &["check", "--data", data],
        &["today", "--data", data, "--animal", "nobody of this name"],
        &["--help"],
    ];
    let mut said = std::collections::BTreeSet::new();
    for (tag, own) in
        [("en", "how sure"), ("es", "certeza"), ("de", "wie sicher"), ("fr", "certitude"), ("pt", "certeza")]
    {
        let all: String = commands.iter().map(|c| text(&sayso(&[&["--language", tag], *c].concat(), &[]))).collect();
        assert!(all.contains(own), "{tag}: {all}");
        let english: Vec<_> = ENGLISH.iter().filter(|e| all.contains(**e)).collect();
        if tag == "en" {
            assert!(english.len() >= 6, "{english:?} of {all}");
        } else {
            assert!(english.is_empty(), "{tag}: {english:?} in {all}");
        }
        assert!(said.insert(all), "{tag} says what another language says");
        // The variable and the system say the same as the argument.
        let asked = text(&sayso(&["check", "--data", data, "--language", tag], &[]));
        assert_eq!(asked, text(&sayso(&["check", "--data", data], &[("SAYSO_LANGUAGE", tag)])));
        assert_eq!(asked, text(&sayso(&["check", "--data", data], &[("LANG", &format!("{tag}_XX.UTF-8"))])));
    }
}

#[test]
fn an_unknown_language_is_refused_with_those_there_are() {
    for done in [
        sayso(&["devices", "--data", "nowhere", "--language", "nl"], &[]),
        sayso(&["devices", "--data", "nowhere"], &[("SAYSO_LANGUAGE", "nl")]),
    ] {
        assert_eq!(done.status.code(), Some(2));
        let told = text(&done);
        assert!(told.contains("nl") && told.contains("en, es, de, fr, pt"), "{told}");
    }
    // What the system speaks may be any: it is answered in English.
    let done = sayso(&["devices", "--data", "nowhere"], &[("LANG", "nl_NL.UTF-8")]);
    assert!(text(&done).contains("is no folder"), "{}", text(&done));
}
