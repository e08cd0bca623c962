//! Snapshots beside the log: what is read from one and from what came since is what the log tells; one that cannot be
//! trusted is passed over, told of and made anew.

use crate::common::*;
use proptest::prelude::*;
use proptest::strategy::ValueTree;
use proptest::test_runner::TestRunner;
use sayso_model::*;
use sayso_store::Store;
use sqlx::sqlite::SqliteConnectOptions;
use sqlx::{ConnectOptions, Connection};
use std::io::Write;
use std::path::{Path, PathBuf};
use std::pin::Pin;
use std::sync::{LazyLock, Mutex};
use std::task::Poll;

/// More events than these are worth a snapshot.
const MANY: u128 = 5_200;

static SAID: LazyLock<&'static Mutex<Vec<u8>>> = LazyLock::new(|| {
    let said: &'static Mutex<Vec<u8>> = Box::leak(Box::default());
    tracing_subscriber::fmt().with_writer(|| Said(*SAID)).init();
    said
});

struct Said(&'static Mutex<Vec<u8>>);

impl Write for Said {
    fn write(&mut self, bytes: &[u8]) -> std::io::Result<usize> {
        self.0.lock().unwrap().write(bytes)
    }
    fn flush(&mut self) -> std::io::Result<()> {
        Ok(())
    }
}

/// How often a line with all of these was logged so far.
fn said(parts: &[&str]) -> usize {
    let said = String::from_utf8(SAID.lock().unwrap().clone()).unwrap();
    said.lines().filter(|line| parts.iter().all(|part| line.contains(part))).count()
}

/// An event of one of many kinds, about one before or after it where it amends; of its own household.
fn any_event(whose: HomeId, n: u128, many: u128) -> impl Strategy<Value = Event> {
    let samples: Vec<Event> = sayso_sim::samples().into_iter().filter(|e| e.body.amends().is_none()).collect();
    let sample = proptest::sample::select(samples);
    (sample.clone(), sample, 0u8..8, 0..many, 0i64..400).prop_map(move |(mut event, other, amends, of, minutes)| {
        let (of, was) = (event_id(of), event.happened_at);
        event.id = event_id(n);
        event.home = whose;
        event.happened_at = was.plus_seconds(60.0 * minutes as f64);
        event.recorded_at = event.happened_at.plus_seconds(1.0);
        match amends {
            0 => event.body = Withdrawal { of, because: None }.into(),
            1 => {
                let body = Box::new(other.body);
                event.body = Correction { of, happened_at: Some(was), animal: other.animal, body }.into();
            }
            _ => {}
        }
        event
    })
}

fn event_id(n: u128) -> EventId {
    EventId(id(0xE0_0000_0000 + n))
}

fn some_events(whose: HomeId, runner: &mut TestRunner, numbers: std::ops::Range<u128>, many: u128) -> Vec<Event> {
    numbers.map(|n| any_event(whose, n, many).new_tree(runner).unwrap().current()).collect()
}

async fn keep(store: &Store, events: &[Event]) {
    for batch in events.chunks(2_000) {
        for out in store.append(batch.to_vec()).await.unwrap() {
            assert!(matches!(out, sayso_store::Appended::New), "{out:?}");
        }
    }
}

/// A notebook with a snapshot: its events are kept, read and closed.
async fn with_snapshot(dir: &Path, whose: HomeId, events: &[Event]) -> PathBuf {
    let store = Store::open(dir).await.unwrap();
    keep(&store, events).await;
    store.story(whose).await.unwrap();
    store.close().await.unwrap();
    let file = dir.join("snapshots").join(whose.to_string());
    assert!(file.exists());
    file
}

/// Only for these tests: household numbers that no two of them share.
fn whose(n: u128) -> HomeId {
    LazyLock::force(&SAID);
    HomeId(id(0xAA_0000 + n))
}

/// Events that pass every check of the log.
fn sound(mut events: Vec<Event>) -> Vec<Event> {
    events.retain(|e| e.check().is_ok());
    events
}

#[tokio::test]
async fn snapshot_and_tail_tell_what_the_log_tells() {
    for seed in 0..3u8 {
        let (home, mut runner) = (whose(u128::from(seed)), TestRunner::deterministic());
        for _ in 0..seed {
            some_events(home, &mut runner, 0..10, 10);
        }
        let many = MANY * 6 / 5;
        let first = sound(some_events(home, &mut runner, 0..many, many + 400));
        let tail = sound(some_events(home, &mut runner, many..many + 400, many + 400));
        let dir = tempfile::tempdir().unwrap();
        let file = with_snapshot(dir.path(), home, &first).await;
        let bytes = std::fs::read(&file).unwrap();
        let all = || first.iter().chain(&tail).cloned();
        let whole = told(&Story::from_events(all()));
        // Read from the snapshot; then what comes while it is open; then after another start.
        let store = Store::open(dir.path()).await.unwrap();
        assert_eq!(told(&store.story(home).await.unwrap()), told(&Story::from_events(first.iter().cloned())));
        keep(&store, &tail[..200]).await;
        let early = store.story(home).await.unwrap();
        keep(&store, &tail[200..]).await;
        assert!(told(&store.story(home).await.unwrap()) == whole, "seed {seed}: while it grew");
        assert!(told(&early) == told(&Story::from_events(first.iter().chain(&tail[..200]).cloned())), "as it was");
        store.close().await.unwrap();
        assert_eq!(std::fs::read(&file).unwrap(), bytes, "a short tail is not worth another");
        let store = Store::open(dir.path()).await.unwrap();
        assert!(told(&store.story(home).await.unwrap()) == whole, "seed {seed}: after a start");
        let checked = store.check().await.unwrap();
        assert_eq!((checked.faults, checked.snapshots), (Vec::new(), 1));
        store.close().await.unwrap();
        assert_eq!(said(&["WARN", &home.to_string()]), 0);
    }
}

fn presses(home: HomeId, numbers: std::ops::Range<u128>) -> Vec<Event> {
    let one = |n| Event { home, ..event(n, "2026-03-01T10:00:00Z", press(n % 7)) };
    numbers.map(one).collect()
}

async fn change(dir: &Path, statements: &'static str) {
    let mut db = SqliteConnectOptions::new().filename(dir.join("sayso.db")).connect().await.unwrap();
    sqlx::raw_sql(statements).execute(&mut db).await.unwrap();
    db.close().await.unwrap();
}

#[tokio::test]
async fn what_a_snapshot_holds_is_not_read_from_the_log_again_but_checked_against_it() {
    let (dir, home) = (tempfile::tempdir().unwrap(), whose(20));
    with_snapshot(dir.path(), home, &presses(home, 0..MANY)).await;
    change(
        dir.path(),
        "DROP TRIGGER event_is_never_changed; \
         UPDATE event SET content = replace(content, 'unsure', 'likely') WHERE seq = 17;",
    )
    .await;
    let store = Store::open(dir.path()).await.unwrap();
    let story = store.story(home).await.unwrap();
    assert!(story.everyones::<Press>().all(|f| f.part.accident == Accident::Unsure), "read from the snapshot");
    let checked = store.check().await.unwrap();
    assert_eq!(checked.fault_count, 1, "{:?}", checked.faults);
    let told = checked.faults[0].to_string();
    assert!(told.contains("snapshot") && told.contains("(row 17)"), "{told}");
    assert_eq!(checked.snapshot_faults, 1, "nothing is to be restored");
}

/// Polls a future so many times, each time it asks to be; its outcome, if it came to one.
async fn polled<F: Future + Unpin>(future: &mut F, mut times: usize) -> Option<F::Output> {
    std::future::poll_fn(|cx| {
        if times == 0 {
            return Poll::Ready(None);
        }
        times -= 1;
        match Pin::new(&mut *future).poll(cx) {
            Poll::Ready(done) => Poll::Ready(Some(done)),
            // The last one does not wait to be woken.
            Poll::Pending if times == 0 => Poll::Ready(None),
            Poll::Pending => Poll::Pending,
        }
    })
    .await
}

#[tokio::test]
async fn a_reader_who_stops_waiting_leaves_nothing_half_read() {
    let (dir, home) = (tempfile::tempdir().unwrap(), whose(80));
    with_snapshot(dir.path(), home, &presses(home, 0..MANY)).await;
    let store = Store::open(dir.path()).await.unwrap();
    keep(&store, &presses(home, MANY..MANY + 300)).await;
    store.close().await.unwrap();
    let mut whole = false;
    for times in 1..400 {
        let store = Store::open(dir.path()).await.unwrap();
        whole = polled(&mut Box::pin(store.story(home)), times).await.is_some();
        let story = store.story(home).await.unwrap();
        assert_eq!(story.ledger().len(), MANY as usize + 300, "dropped after {times} polls");
        assert_eq!(story.everyones::<Press>().count(), MANY as usize + 300, "dropped after {times} polls");
        store.close().await.unwrap();
        if whole {
            break;
        }
    }
    assert!(whole, "every place to stop was tried");
}

#[tokio::test]
async fn a_snapshot_made_while_the_notebook_is_looked_through_is_no_fault() {
    let (dir, home) = (tempfile::tempdir().unwrap(), whose(90));
    let (old, new) = (dir.path().join("old"), dir.path().join("new"));
    with_snapshot(&old, home, &presses(home, 0..MANY)).await;
    let tail = presses(home, MANY..MANY + 600);
    std::fs::create_dir(&new).unwrap();
    std::fs::copy(old.join("sayso.db"), new.join("sayso.db")).unwrap();
    let later = with_snapshot(&new, home, &tail).await;
    for times in 0..14 {
        let now = dir.path().join(format!("{times}"));
        std::fs::create_dir_all(now.join("snapshots")).unwrap();
        let file = now.join("snapshots").join(home.to_string());
        std::fs::copy(old.join("sayso.db"), now.join("sayso.db")).unwrap();
        std::fs::copy(old.join("snapshots").join(home.to_string()), &file).unwrap();
        let store = Store::open(&now).await.unwrap();
        let mut check = Box::pin(store.check());
        let checked = polled(&mut check, times).await;
        keep(&store, &tail).await;
        let beside = now.join("beside");
        std::fs::copy(&later, &beside).unwrap();
        std::fs::rename(&beside, &file).unwrap();
        let checked = match checked {
            Some(checked) => checked,
            None => check.await,
        };
        assert_eq!(checked.unwrap().faults, [], "after {times} polls");
        store.close().await.unwrap();
    }
}

#[tokio::test]
async fn a_damaged_snapshot_is_passed_over_told_of_and_made_anew() {
    let (dir, home) = (tempfile::tempdir().unwrap(), whose(30));
    let events = presses(home, 0..MANY);
    let file = with_snapshot(dir.path(), home, &events).await;
    let good = std::fs::read(&file).unwrap();
    let whole = told(&Story::from_events(events));
    let turned = |at: usize| {
        let mut bytes = good.clone();
        bytes[at] ^= 4;
        bytes
    };
    let long = good.len();
    let mut told_of = 0;
    for bad in [
        turned(3),
        turned(40),
        turned(long / 2),
        turned(long - 100),
        turned(long - 36),
        turned(long - 1),
        good[..long - 1].to_vec(),
        good[..long / 2].to_vec(),
        good[..20].to_vec(),
        Vec::new(),
    ] {
        std::fs::write(&file, bad).unwrap();
        let store = Store::open(dir.path()).await.unwrap();
        assert!(told(&store.story(home).await.unwrap()) == whole);
        store.close().await.unwrap();
        told_of += 1;
        assert_eq!(said(&["WARN", &home.to_string(), "passed over"]), told_of);
        assert_eq!(std::fs::read(&file).unwrap(), good, "made anew");
    }
}

#[tokio::test]
async fn a_snapshot_of_another_log_is_passed_over() {
    let (dir, home) = (tempfile::tempdir().unwrap(), whose(40));
    let one = dir.path().join("one");
    let file = with_snapshot(&one, home, &presses(home, 0..MANY)).await;
    // The log of another device with as many events of the same household; a shorter one; one that parted on the way.
    let parted: Vec<Event> = presses(home, 0..MANY - 600).into_iter().chain(presses(home, MANY..MANY + 600)).collect();
    for (n, events) in [presses(home, 9_000..9_000 + MANY), presses(home, 0..100), parted].into_iter().enumerate() {
        let other = dir.path().join(format!("other {n}"));
        let store = Store::open(&other).await.unwrap();
        keep(&store, &events).await;
        store.close().await.unwrap();
        std::fs::create_dir_all(other.join("snapshots")).unwrap();
        std::fs::copy(&file, other.join("snapshots").join(home.to_string())).unwrap();
        let store = Store::open(&other).await.unwrap();
        assert!(told(&store.story(home).await.unwrap()) == told(&Story::from_events(events)), "log {n}");
        store.close().await.unwrap();
        assert_eq!(said(&["WARN", &home.to_string(), "of another notebook"]), n + 1);
    }
    // Under another household's name.
    let (stranger, dir) = (whose(41), dir.path().join("stranger"));
    let store = Store::open(&dir).await.unwrap();
    keep(&store, &presses(stranger, 0..10)).await;
    std::fs::create_dir_all(dir.join("snapshots")).unwrap();
    std::fs::copy(&file, dir.join("snapshots").join(stranger.to_string())).unwrap();
    assert_eq!(store.story(stranger).await.unwrap().ledger().len(), 10);
    assert_eq!(said(&["WARN", &stranger.to_string(), "of another home"]), 1);
}

#[tokio::test]
async fn a_snapshot_that_cannot_be_written_stops_nothing() {
    let (dir, home) = (tempfile::tempdir().unwrap(), whose(50));
    let store = Store::open(dir.path()).await.unwrap();
    // Where the folder would be stands a file.
    std::fs::write(dir.path().join("snapshots"), "in the way").unwrap();
    keep(&store, &presses(home, 0..MANY)).await;
    assert_eq!(store.story(home).await.unwrap().ledger().len(), MANY as usize);
    store.close().await.unwrap();
    assert!(said(&["WARN", "No snapshot was made"]) > 0);
    let store = Store::open(dir.path()).await.unwrap();
    keep(&store, &presses(home, MANY..MANY + 5)).await;
    assert_eq!(store.story(home).await.unwrap().ledger().len(), MANY as usize + 5);
}

#[cfg(unix)]
#[tokio::test]
async fn only_the_owner_may_read_a_snapshot() {
    use std::os::unix::fs::PermissionsExt;
    let (dir, home) = (tempfile::tempdir().unwrap(), whose(60));
    let file = with_snapshot(dir.path(), home, &presses(home, 0..MANY)).await;
    let mode = |path: &Path| std::fs::metadata(path).unwrap().permissions().mode() & 0o777;
    assert_eq!((mode(&file), mode(file.parent().unwrap())), (0o600, 0o700));
}

#[tokio::test]
async fn what_an_older_version_could_not_read_is_read_from_the_log_again() {
    let (dir, home) = (tempfile::tempdir().unwrap(), whose(70));
    let store = Store::open(dir.path()).await.unwrap();
    keep(&store, &presses(home, 0..MANY)).await;
    store.close().await.unwrap();
    // As if this version did not know the word.
    change(
        dir.path(),
        "DROP TRIGGER event_is_never_changed; \
         UPDATE event SET content = replace(content, 'unsure', 'perhaps') WHERE seq = 17;",
    )
    .await;
    let store = Store::open(dir.path()).await.unwrap();
    assert_eq!(store.story(home).await.unwrap().ledger().len(), MANY as usize - 1);
    store.close().await.unwrap();
    // And as if the next one did.
    change(dir.path(), "UPDATE event SET content = replace(content, 'perhaps', 'likely') WHERE seq = 17;").await;
    let store = Store::open(dir.path()).await.unwrap();
    let story = store.story(home).await.unwrap();
    assert_eq!(story.everyones::<Press>().filter(|f| f.part.accident == Accident::Likely).count(), 1);
    assert_eq!(story.ledger().len(), MANY as usize);
    assert!(store.not_understood(home).await.unwrap().is_empty());
    let checked = store.check().await.unwrap();
    assert_eq!((checked.faults, checked.snapshots), (Vec::new(), 1));
    assert_eq!(said(&["WARN", &home.to_string()]), 0);
}
