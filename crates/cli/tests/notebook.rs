//! The commands that keep, check and move a notebook, as a person runs them.
#![cfg(unix)]
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use std::io::{Read, Write};
use std::path::Path;
use std::process::{Command, Output, Stdio};

fn sayso(args: &[&str]) -> Output {
    Command::new(env!("CARGO_BIN_EXE_sayso")).args(args).output().unwrap()
}

fn out(done: &Output) -> String {
    format!("{}{}", String::from_utf8_lossy(&done.stdout), String::from_utf8_lossy(&done.stderr))
}

fn remark(home: u8, n: u32, text: &str) -> String {
    format!(
        r#"{{"id":"00000000-0000-7000-8000-{n:012}","home":"00000000-0000-7000-8000-0000000000{home:02}","happened_at":"2026-03-01T10:00:00.000Z","zone":"UTC","recorded_at":"2026-03-01T10:00:00.000Z","source":"tap","body":{{"kind":"remark","text":"{text}"}}}}"#
    )
}

fn log(dir: &Path, lines: &str) -> Output {
    let mut command = Command::new(env!("CARGO_BIN_EXE_sayso"));
    command.args(["log", "--data"]).arg(dir).stdin(Stdio::piped()).stdout(Stdio::piped()).stderr(Stdio::piped());
    let mut child = command.spawn().unwrap();
    child.stdin.take().unwrap().write_all(lines.as_bytes()).unwrap();
    child.wait_with_output().unwrap()
}

#[test]
fn a_notebook_is_checked_exported_and_taken_in_elsewhere_only_by_choice() {
    let outside = tempfile::tempdir().unwrap();
    let path = |name: &str| outside.path().join(name).to_str().unwrap().to_owned();
    let (one, two, tar) = (path("one"), path("two"), path("all.tar"));
    let kept = log(Path::new(&one), &format!("{}\n{}\n", remark(1, 1, "a"), remark(1, 2, "b")));
    assert!(kept.status.success(), "{}", out(&kept));
    let list = log(Path::new(&one), &format!("[[{}]]", remark(1, 3, "c")));
    assert!(
        !list.status.success() && out(&list).contains("event 1") && out(&list).contains("from { to }"),
        "{}",
        out(&list)
    );
    let strange = log(Path::new(&one), &remark(2, 4, "d"));
    assert!(!strange.status.success() && out(&strange).contains("home"), "{}", out(&strange));

    let checked = sayso(&["check", "--data", &one]);
    assert!(checked.status.success() && out(&checked).contains("2 events"), "{}", out(&checked));
    let mistyped = sayso(&["check", "--data", &path("noe")]);
    assert!(!mistyped.status.success() && !outside.path().join("noe").exists());

    assert!(sayso(&["export", "--data", &one, "--form", "tar", "--to", &tar]).status.success());
    assert!(log(Path::new(&two), &remark(2, 4, "d")).status.success());
    let refused = sayso(&["import", "--data", &two, &tar, "--yes"]);
    assert!(!refused.status.success() && out(&refused).contains("--take-in-other-home"), "{}", out(&refused));
    let taken = sayso(&["import", "--data", &two, &tar, "--yes", "--take-in-other-home"]);
    assert!(taken.status.success() && out(&taken).contains("Imported 2 events"), "{}", out(&taken));

    // It holds two homes now; an empty notebook does not begin with both unless told.
    let (both, both_copy) = (path("both.jsonl"), path("both.sayso"));
    assert!(sayso(&["export", "--data", &two, "--form", "jsonl", "--to", &both]).status.success());
    assert!(sayso(&["backup", "--data", &two, &both_copy]).status.success());
    let (five, six) = (path("five"), path("six"));
    let import: &[&str] = &["import", "--data", &five, &both, "--yes"];
    for command in [import, &["restore", "--data", &six, &both_copy]] {
        let refused = sayso(command);
        assert!(!refused.status.success() && out(&refused).contains("--take-in-other-home"), "{}", out(&refused));
        let taken = sayso(&[command, &["--take-in-other-home"]].concat());
        assert!(taken.status.success() && out(&taken).contains("3 events"), "{}", out(&taken));
    }

    let copy = path("copy.sayso");
    assert!(sayso(&["backup", "--data", &one, &copy]).status.success());
    assert!(log(Path::new(&path("three")), &remark(3, 9, "e")).status.success());
    let refused = sayso(&["restore", "--data", &path("three"), &copy]);
    assert!(!refused.status.success() && out(&refused).contains("--take-in-other-home"), "{}", out(&refused));
    assert!(sayso(&["restore", "--data", &path("four"), &copy]).status.success());
}

#[test]
fn an_export_cut_off_by_its_reader_says_nothing_and_fails() {
    let dir = tempfile::tempdir().unwrap();
    let text = "x".repeat(1_900);
    let lines: String = (0..400).map(|n| remark(1, n, &text) + "\n").collect();
    assert!(log(dir.path(), &lines).status.success());
    let mut command = Command::new(env!("CARGO_BIN_EXE_sayso"));
    command.args(["export", "--data"]).arg(dir.path()).stdout(Stdio::piped()).stderr(Stdio::piped());
    let mut child = command.spawn().unwrap();
    let mut head = [0; 100];
    child.stdout.take().unwrap().read_exact(&mut head).unwrap();
    let done = child.wait_with_output().unwrap();
    assert!(!done.status.success());
    assert_eq!(String::from_utf8_lossy(&done.stderr), "");
}

#[test]
fn one_mistake_in_many_rows_is_told_once_and_a_backup_is_referred_to_its_command() {
    let outside = tempfile::tempdir().unwrap();
    let path = |name: &str| outside.path().join(name).to_str().unwrap().to_owned();
    let (data, table) = (path("one"), path("diary.csv"));
    assert!(log(Path::new(&data), &remark(1, 1, "a")).status.success());
    let rows: String = (10..40).map(|m| format!("remarc,2026-03-01 10:{m},x\n")).collect();
    std::fs::write(&table, format!("kind,happened_at,text\n{rows}")).unwrap();
    let told = out(&sayso(&["import", "--data", &data, &table]));
    assert_eq!(told.matches("remarc").count(), 1, "{told}");
    assert!(told.contains("kind, 30 times (lines 2, 3, 4, 5, 6 and more)"), "{told}");

    let copy = path("copy.sayso");
    assert!(sayso(&["backup", "--data", &data, &copy]).status.success());
    let referred = sayso(&["import", "--data", &data, &copy]);
    assert!(!referred.status.success() && out(&referred).contains("sayso restore"), "{}", out(&referred));
}
