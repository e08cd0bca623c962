//! Kills a process in the midst of writing and looks at what it had acknowledged. Runs itself as that process, hence
//! its own `main`. With `-- --kills 1000` so many are killed in the midst of mixed work instead of a few.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

mod common;
#[path = "crash/mixed.rs"]
mod mixed;
#[path = "crash/snapshots.rs"]
mod snapshots;

use common::*;
use mixed::{Dice, Outcome};
use sayso_store::{Appended, Revision, Store};
use std::collections::{BTreeMap, BTreeSet};
use std::io::{BufRead, BufReader, Write};
use std::path::Path;
use std::process::{Command, Stdio};

const EVENTS: u128 = 10_000;
const CALLERS: u128 = 16;

/// The process to be killed: many callers append one event at a time and print its number once it is acknowledged.
async fn append_all(dir: &Path) {
    let store = Store::open(dir).await.unwrap();
    let mut callers = Vec::new();
    for caller in 0..CALLERS {
        let store = store.clone();
        callers.push(tokio::spawn(async move {
            for n in (caller..EVENTS).step_by(usize::try_from(CALLERS).unwrap()) {
                let out = store.append(vec![event(n, "2026-03-01T10:00:00Z", press(n % 9))]).await.unwrap();
                assert!(matches!(out[0], Appended::New | Appended::Duplicate), "{out:?}");
                // One write a line, so that a line is never seen in part.
                std::io::stdout().write_all(format!("{n}\n").as_bytes()).unwrap();
            }
        }));
    }
    for caller in callers {
        caller.await.unwrap();
    }
}

/// Starts the process, kills it after so many acknowledgements, and answers those it had printed.
fn run_and_kill(dir: &Path, after: usize) -> (BTreeSet<u128>, bool) {
    let mut child = Command::new(std::env::current_exe().unwrap())
        .arg("--append-to")
        .arg(dir)
        .stdout(Stdio::piped())
        .spawn()
        .unwrap();
    let mut acknowledged = BTreeSet::new();
    let mut lines = BufReader::new(child.stdout.take().unwrap()).lines();
    while acknowledged.len() < after {
        match lines.next() {
            Some(line) => acknowledged.insert(line.unwrap().parse().unwrap()),
            None => break,
        };
    }
    // SIGKILL: no destructor runs, nothing is flushed.
    child.kill().unwrap();
    acknowledged.extend(lines.map(|line| line.unwrap().parse::<u128>().unwrap()));
    (acknowledged, child.wait().unwrap().success())
}

async fn stored(dir: &Path) -> BTreeMap<u128, usize> {
    let store = Store::open(dir).await.unwrap();
    let mut counts = BTreeMap::new();
    for logged in store.events(Revision(0), usize::MAX).await.unwrap() {
        *counts
            .entry(logged.event.id.0.as_u128() - event(0, "2026-03-01T10:00:00Z", press(1)).id.0.as_u128())
            .or_default() += 1;
    }
    assert_eq!(store.check().await.unwrap().fault_count, 0, "the log is sound after a crash");
    store.close().await.unwrap();
    counts
}

/// Two processes append the same events to one file at the same time; each is stored once.
fn two_processes_on_one_file(runtime: &tokio::runtime::Runtime) {
    let dir = tempfile::tempdir().unwrap();
    let start = || {
        let mut command = Command::new(std::env::current_exe().unwrap());
        command.arg("--append-to").arg(dir.path()).stdout(Stdio::null()).spawn().unwrap()
    };
    let (mut one, mut two) = (start(), start());
    assert!(one.wait().unwrap().success() && two.wait().unwrap().success());
    let stored = runtime.block_on(stored(dir.path()));
    assert_eq!(stored.len(), 10_000);
    assert!(stored.values().all(|count| *count == 1));
}

fn main() {
    let args: Vec<String> = std::env::args().collect();
    let runtime = tokio::runtime::Builder::new_multi_thread().worker_threads(2).enable_all().build().unwrap();
    if args.get(1).map(String::as_str) == Some("--append-to") {
        return runtime.block_on(append_all(Path::new(&args[2])));
    }
    if args.get(1).map(String::as_str) == Some("--snapshots-in") {
        return runtime.block_on(snapshots::grow(Path::new(&args[2]), args[3].parse().unwrap()));
    }
    if args.get(1).map(String::as_str) == Some("--work-on") {
        let (from, seed, fills) = (args[3].parse().unwrap(), args[4].parse().unwrap(), args[5].parse().unwrap());
        return runtime.block_on(mixed::work(Path::new(&args[2]), from, seed, fills));
    }
    if let Some(kills) = args.iter().position(|a| a == "--kills").and_then(|i| args.get(i + 1)) {
        return mixed_kills(&runtime, kills.parse().expect("--kills and a number"));
    }
    if args.iter().any(|a| a == "--list") {
        return println!("crash: test");
    }
    two_processes_on_one_file(&runtime);
    one_by_one(&runtime);
    snapshots::killed(&runtime, 5);
    mixed_kills(&runtime, 30);
}

/// A tenth first starts, three tenths on a disk that fills, the rest mixed work.
fn mixed_kills(runtime: &tokio::runtime::Runtime, kills: u32) {
    let (mut dice, mut outcome) = (Dice::new(7), Outcome::default());
    mixed::first_starts(runtime, kills / 10, &mut dice, &mut outcome);
    mixed::mixed(runtime, kills * 3 / 10, &mut dice, true, &mut outcome);
    mixed::mixed(runtime, kills - outcome.kills, &mut dice, false, &mut outcome);
    println!("{outcome:?}: nothing acknowledged lost or doubled, every finished backup whole");
    // Where no small disk can be mounted, and was said not to be, its share is done with room.
    assert_eq!(outcome.kills, kills);
    assert!(outcome.acknowledged > 0);
}

/// Kills one process after the other on the same events, until one finishes.
fn one_by_one(runtime: &tokio::runtime::Runtime) {
    let dir = tempfile::tempdir().unwrap();
    let mut promised = BTreeSet::new();
    for after in [700, 2_500, 4_000, usize::MAX] {
        let (acknowledged, finished) = run_and_kill(dir.path(), after);
        promised.extend(acknowledged);
        let stored = runtime.block_on(stored(dir.path()));
        let lost: Vec<_> = promised.iter().filter(|n| !stored.contains_key(n)).collect();
        assert!(lost.is_empty(), "acknowledged and lost: {lost:?}");
        assert!(stored.values().all(|count| *count == 1));
        println!(
            "{} acknowledged, {} stored, {}",
            promised.len(),
            stored.len(),
            if finished { "finished" } else { "killed" }
        );
        if finished {
            assert_eq!((stored.len(), promised.len()), (10_000, 10_000));
            return;
        }
    }
    panic!("the last run was to finish");
}
