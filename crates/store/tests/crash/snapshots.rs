//! Kills a process while it writes snapshots: the next start tells every acknowledged event, from the snapshot before or
//! the one after, and leaves nothing lying about.

use super::common::*;
use super::mixed::Dice;
use sayso_model::{EventId, Press};
use sayso_store::{Appended, Store};
use std::io::{BufRead, BufReader, Write};
use std::path::Path;
use std::process::{Command, Stdio};
use std::time::Duration;
use tokio::runtime::Runtime;

/// Events a call; about as many as make the next snapshot due.
const BATCH: u128 = 2_100;
/// Calls before a process ends by itself.
const CALLS: u128 = 6;

/// The process to be killed: appends from a number on and reads its story, so that one snapshot follows another.
pub async fn grow(dir: &Path, from: u128) {
    let store = Store::open(dir).await.unwrap();
    for call in 0..CALLS {
        let first = from + call * BATCH;
        let events = (first..first + BATCH).map(|n| event(n, "2026-03-01T10:00:00Z", press(n % 9))).collect();
        let out = store.append(events).await.unwrap();
        assert!(out.iter().all(|o| matches!(o, Appended::New | Appended::Duplicate)));
        std::io::stdout().write_all(format!("{}\n", first + BATCH).as_bytes()).unwrap();
        store.story(home()).await.unwrap();
    }
    store.close().await.unwrap();
}

pub fn killed(runtime: &Runtime, kills: u32) {
    let (dir, mut dice) = (tempfile::tempdir().unwrap(), Dice::new(11));
    let (mut promised, mut with_snapshot) = (0, 0);
    for _ in 0..kills {
        let mut child = Command::new(std::env::current_exe().unwrap())
            .arg("--snapshots-in")
            .arg(dir.path())
            .arg(promised.to_string())
            .stdout(Stdio::piped())
            .spawn()
            .unwrap();
        let mut lines = BufReader::new(child.stdout.take().unwrap()).lines();
        for _ in 0..=dice.below(3) {
            promised = lines.next().unwrap().unwrap().parse::<u128>().unwrap();
        }
        // Some while into putting the story together or writing it out.
        std::thread::sleep(Duration::from_millis(dice.below(120)));
        child.kill().unwrap();
        for line in lines {
            promised = line.unwrap().parse().unwrap();
        }
        child.wait().unwrap();
        let store = runtime.block_on(Store::open(dir.path())).unwrap();
        let left = std::fs::read_dir(dir.path().join("snapshots")).into_iter().flatten().flatten();
        let left: Vec<_> = left.map(|e| e.file_name()).filter(|n| n.to_string_lossy().starts_with('.')).collect();
        assert!(left.is_empty(), "{left:?}");
        let story = runtime.block_on(store.story(home())).unwrap();
        let told = |n: u128| story.ledger().first(EventId(event(n, "2026-03-01T10:00:00Z", press(1)).id.0)).is_some();
        let lost: Vec<u128> = (0..promised).filter(|n| !told(*n)).collect();
        assert!(lost.is_empty(), "acknowledged and lost: {lost:?}");
        assert_eq!(story.everyones::<Press>().count(), story.ledger().len());
        let checked = runtime.block_on(store.check()).unwrap();
        assert_eq!(checked.faults, []);
        with_snapshot += checked.snapshots;
        runtime.block_on(store.close()).unwrap();
    }
    println!(
        "{kills} kills while snapshots were written, {with_snapshot} starts from one, {promised} events, none lost"
    );
    assert!(with_snapshot > 0);
}
