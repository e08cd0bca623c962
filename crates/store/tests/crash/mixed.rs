//! Everything at once, and killed: posts, corrections, imports, backups, a disk that fills and empties, first starts.

use crate::common::disk::SmallDisk;
use crate::common::*;
use sayso_model::{Event, EventId};
use sayso_store::{Appended, Format, ImportOptions, Others, Revision, Store, StoreError};
use std::collections::{BTreeMap, BTreeSet};
use std::io::{BufRead, BufReader, Write};
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};
use std::sync::atomic::{AtomicU64, Ordering};
use std::time::Duration;

const AT: &str = "2026-03-01T10:00:00Z";
/// Callers at work in the process to be killed.
const CALLERS: u64 = 4;
/// Kills a notebook lives through before the next one is begun, so that looking at all of it stays quick.
const KILLS_A_NOTEBOOK: u32 = 20;

/// Numbers that look random and are the same in every run (splitmix64, Steele et al. 2014).
pub struct Dice(u64);

impl Dice {
    pub fn new(seed: u64) -> Self {
        Self(seed)
    }

    pub fn below(&mut self, n: u64) -> u64 {
        self.0 = self.0.wrapping_add(0x9E37_79B9_7F4A_7C15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
        (z ^ (z >> 31)) % n
    }
}

/// Tells the parent in one write, so that a line is never seen in part.
fn told(line: &str) {
    std::io::stdout().write_all(format!("{line}\n").as_bytes()).unwrap();
}

/// The process to be killed: works on the notebook in `dir/notebook` for ever. Events are numbered from `from` on; each
/// is told once it is acknowledged, each backup once it is finished.
pub async fn work(dir: &Path, from: u64, seed: u64, fills_disk: bool) {
    let store = Store::open(&dir.join("notebook")).await.unwrap();
    let next = std::sync::Arc::new(AtomicU64::new(from));
    for caller in 0..CALLERS {
        let (store, next, dir) = (store.clone(), next.clone(), dir.to_owned());
        tokio::spawn(async move {
            let mut dice = Dice::new(seed ^ (caller + 1));
            loop {
                one_step(&store, &next, &dir, &mut dice).await;
            }
        });
    }
    let ballast = dir.join("ballast");
    loop {
        if fills_disk {
            let mut file = std::fs::File::create(&ballast).unwrap();
            while file.write_all(&[7; 4_096]).is_ok() {
                tokio::task::yield_now().await;
            }
            drop(file);
            tokio::time::sleep(Duration::from_millis(5)).await;
            std::fs::remove_file(&ballast).unwrap();
        }
        tokio::time::sleep(Duration::from_millis(10)).await;
    }
}

async fn one_step(store: &Store, next: &AtomicU64, dir: &Path, dice: &mut Dice) {
    let fresh = |n| next.fetch_add(n, Ordering::Relaxed);
    let sort = dice.below(60);
    let done = match sort {
        0 => {
            let name = format!("{}.sayso-backup", fresh(1));
            store.backup(&dir.join(&name)).await.map(|made| {
                assert!(made.damaged_clips.is_empty());
                told(&format!("backup {name}"));
            })
        }
        1..=4 => {
            let first = fresh(5);
            let events: Vec<Event> =
                (first..first + 5).map(|n| event(n.into(), AT, press(u128::from(n % 7)))).collect();
            let lines: Vec<String> = events.iter().map(|e| serde_json::to_string(e).unwrap()).collect();
            let options = ImportOptions { format: Format::JsonLines, home: None };
            let imported = match store.preview(lines.join("\n").as_bytes(), &options).await {
                Ok(preview) => store.commit(preview, Others::Refuse).await,
                Err(error) => Err(error),
            };
            imported.map(|_| (first..first + 5).for_each(|n| told(&n.to_string())))
        }
        _ => {
            let n = fresh(1);
            let of = event(n.saturating_sub(1).into(), AT, press(1));
            let one = match sort {
                5..=20 => event(n.into(), AT, correction(&of, press(2))),
                _ => event(n.into(), AT, press(u128::from(n % 7))),
            };
            store.append(vec![one]).await.map(|out| {
                assert_eq!(out, [Appended::New]);
                told(&n.to_string());
            })
        }
    };
    match done {
        Ok(()) => {}
        // Told as what it is, and passing.
        Err(StoreError::DiskFull) => tokio::time::sleep(Duration::from_millis(2)).await,
        Err(other) => panic!("{other:?}"),
    }
}

/// What the killed processes of one notebook had acknowledged.
#[derive(Default)]
struct Promised {
    events: BTreeSet<u64>,
    backups: Vec<PathBuf>,
    next: u64,
}

/// What became of all of it.
#[derive(Default, Debug)]
pub struct Outcome {
    pub kills: u32,
    pub first_starts: u32,
    pub with_full_disk: u32,
    pub acknowledged: usize,
    pub backups: usize,
}

fn spawn(dir: &Path, from: u64, seed: u64, fills_disk: bool) -> std::process::Child {
    let mut command = Command::new(std::env::current_exe().unwrap());
    command.arg("--work-on").arg(dir).args([from.to_string(), seed.to_string(), fills_disk.to_string()]);
    command.stdout(Stdio::piped()).spawn().unwrap()
}

/// Kills one process after so many lines, and takes down what it had told.
fn kill_one(dir: &Path, promised: &mut Promised, lines_to_wait: u64, seed: u64, fills_disk: bool) {
    // Numbers used but not told leave gaps of at most what is in flight.
    promised.next += 100_000;
    let mut child = spawn(dir, promised.next, seed, fills_disk);
    let mut lines = BufReader::new(child.stdout.take().unwrap()).lines();
    let mut take = |line: String| match line.strip_prefix("backup ") {
        Some(name) => promised.backups.push(dir.join(name)),
        None => assert!(promised.events.insert(line.parse().unwrap()), "acknowledged twice"),
    };
    for _ in 0..lines_to_wait {
        match lines.next() {
            Some(line) => take(line.unwrap()),
            None => panic!("the process ended by itself: {:?}", child.wait()),
        }
    }
    // SIGKILL: no destructor runs, nothing is flushed.
    child.kill().unwrap();
    lines.for_each(|line| take(line.unwrap()));
    child.wait().unwrap();
}

/// Opens the notebook after a kill and looks at all of it.
async fn look(dir: &Path, promised: &Promised) {
    // What was filling the disk is in nobody's way any more.
    let _ = std::fs::remove_file(dir.join("ballast"));
    let store = Store::open(&dir.join("notebook")).await.unwrap();
    let mut counts: BTreeMap<EventId, usize> = BTreeMap::new();
    for logged in store.events(Revision(0), usize::MAX).await.unwrap() {
        *counts.entry(logged.event.id).or_default() += 1;
    }
    let lost: Vec<&u64> =
        promised.events.iter().filter(|n| !counts.contains_key(&event(u128::from(**n), AT, press(1)).id)).collect();
    assert!(lost.is_empty(), "acknowledged and lost: {lost:?}");
    assert!(counts.values().all(|n| *n == 1), "stored twice");
    assert_eq!(store.check().await.unwrap().fault_count, 0, "the log is sound after a crash");
    let parts = std::fs::read_dir(store.dir())
        .unwrap()
        .filter(|e| e.as_ref().unwrap().file_name().to_string_lossy().contains("part"));
    assert_eq!(parts.count(), 0, "leftovers in the notebook's folder");
    store.close().await.unwrap();
}

/// Restores a finished backup: it must be whole, and hold nothing the notebook does not.
async fn restore(backup: &Path) {
    let dir = tempfile::tempdir().unwrap();
    let other = Store::open(dir.path()).await.unwrap();
    let restored = other.restore(backup, Others::Refuse).await.unwrap();
    assert!(restored.digest && restored.conflicts.is_empty() && restored.faults.is_empty(), "{restored:?}");
    other.close().await.unwrap();
}

/// Kills `kills` processes in the midst of mixed work, on a disk that fills where there is one.
pub fn mixed(runtime: &tokio::runtime::Runtime, kills: u32, dice: &mut Dice, full_disk: bool, outcome: &mut Outcome) {
    let mut left = kills;
    while left > 0 {
        let small = if full_disk { SmallDisk::of_kib(12_000) } else { None };
        if full_disk && small.is_none() {
            return;
        }
        let plain = tempfile::tempdir().unwrap();
        let dir = small.as_ref().map_or(plain.path(), SmallDisk::path);
        let mut promised = Promised::default();
        for _ in 0..left.min(KILLS_A_NOTEBOOK) {
            let wait = dice.below(150);
            let before = promised.backups.len();
            kill_one(dir, &mut promised, wait, dice.below(u64::MAX), full_disk);
            runtime.block_on(look(dir, &promised));
            for (i, backup) in promised.backups.iter().enumerate() {
                if i >= before {
                    runtime.block_on(restore(backup));
                    outcome.backups += 1;
                    if full_disk {
                        std::fs::remove_file(backup).unwrap();
                    }
                }
            }
            left -= 1;
            outcome.kills += 1;
            outcome.with_full_disk += u32::from(full_disk);
        }
        outcome.acknowledged += promised.events.len();
    }
}

/// Kills first starts, each after another while, until one has opened; the folder must open after every one of them.
pub fn first_starts(runtime: &tokio::runtime::Runtime, kills: u32, dice: &mut Dice, outcome: &mut Outcome) {
    for _ in 0..kills {
        let dir = tempfile::tempdir().unwrap();
        let mut child = spawn(dir.path(), 0, 1, false);
        std::thread::sleep(Duration::from_micros(dice.below(60_000)));
        child.kill().unwrap();
        child.wait().unwrap();
        runtime.block_on(look(dir.path(), &Promised::default()));
        outcome.kills += 1;
        outcome.first_starts += 1;
    }
}
