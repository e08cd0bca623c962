//! A stop in the middle: the same export goes on, and the tables are as if nothing had happened.

use std::ops::Range;
use std::path::Path;
use std::sync::Mutex;
use std::sync::atomic::{AtomicU32, Ordering};
use study_export::{Bucket, Dataset, ExportError, Household, Simulated, Source, write};

/// A source that breaks off after so many households.
struct Breaks<'a> {
    of: &'a dyn Source,
    left: AtomicU32,
}

impl Source for Breaks<'_> {
    fn of(&self) -> String {
        self.of.of()
    }
    fn households(&self) -> u32 {
        self.of.households()
    }
    fn agreeing(&self, numbers: Range<u32>) -> Result<Vec<u32>, ExportError> {
        self.of.agreeing(numbers)
    }
    fn household(&self, number: u32) -> Result<Option<Household>, ExportError> {
        let left = self.left.fetch_update(Ordering::SeqCst, Ordering::SeqCst, |left| left.checked_sub(1));
        if left.is_err() {
            let why = std::io::Error::other("the power went");
            return Err(ExportError::Io { path: "source".into(), why });
        }
        self.of.household(number)
    }
}

fn of() -> Simulated {
    Simulated::new(9, 2, 20, "2026-06-01T19:00:00Z".parse().unwrap(), None).unwrap()
}

fn bytes(dir: &Path) -> Vec<Vec<u8>> {
    let tables = Dataset::open(dir).unwrap();
    tables.events.iter().chain(&tables.animals).map(|path| std::fs::read(path).unwrap()).collect()
}

#[test]
fn what_was_whole_is_not_written_again_and_nothing_is_there_twice() {
    let whole = tempfile::tempdir().unwrap();
    let all = write(whole.path(), &of(), Bucket(2), 1, &|_| {}).unwrap();
    let dir = tempfile::tempdir().unwrap();
    // Five households: two buckets whole, a third begun.
    let source = of();
    let breaks = Breaks { of: &source, left: AtomicU32::new(5) };
    let stopped = write(dir.path(), &breaks, Bucket(2), 1, &|_| {});
    assert!(matches!(stopped, Err(ExportError::Io { .. })), "{stopped:?}");
    assert!(matches!(Dataset::open(dir.path()), Err(ExportError::NotWhole { there: 2, all: 5, .. })));
    // Half a file, as a power cut leaves it; and a whole one that the manifest does not know of.
    std::fs::write(dir.path().join("events/.part-half"), b"PAR1").unwrap();
    std::fs::write(dir.path().join("events/bucket-00002.parquet"), b"PAR1").unwrap();
    let written = Mutex::new(Vec::new());
    let then = write(dir.path(), &of(), Bucket(2), 2, &|e| written.lock().unwrap().push(e.bucket)).unwrap();
    let mut written = written.into_inner().unwrap();
    written.sort_unstable();
    assert_eq!(written, [2, 3, 4]);
    assert_eq!(then, all);
    assert_eq!(bytes(dir.path()), bytes(whole.path()));
    assert!(!dir.path().join("events/.part-half").exists());
}

#[test]
fn a_file_cut_short_since_is_written_again() {
    let dir = tempfile::tempdir().unwrap();
    write(dir.path(), &of(), Bucket(4), 1, &|_| {}).unwrap();
    let before = bytes(dir.path());
    std::fs::write(dir.path().join("events/bucket-00001.parquet"), b"PAR1").unwrap();
    // Until then nothing is asked of what is left.
    assert!(matches!(Dataset::open(dir.path()), Err(ExportError::NotWhole { there: 2, all: 3, .. })));
    write(dir.path(), &of(), Bucket(4), 1, &|_| {}).unwrap();
    assert_eq!(bytes(dir.path()), before);
    std::fs::remove_file(dir.path().join("animals/bucket-00000.parquet")).unwrap();
    assert!(matches!(Dataset::open(dir.path()), Err(ExportError::NotWhole { there: 2, all: 3, .. })));
}

#[test]
fn another_study_does_not_get_into_the_same_folder() {
    let dir = tempfile::tempdir().unwrap();
    write(dir.path(), &of(), Bucket(4), 1, &|_| {}).unwrap();
    let other = Simulated::new(9, 3, 20, "2026-06-01T19:00:00Z".parse().unwrap(), None).unwrap();
    assert!(matches!(write(dir.path(), &other, Bucket(4), 1, &|_| {}), Err(ExportError::Other { .. })));
    assert!(matches!(write(dir.path(), &of(), Bucket(3), 1, &|_| {}), Err(ExportError::Other { .. })));
    assert!(matches!(write(dir.path(), &of(), Bucket(0), 1, &|_| {}), Err(ExportError::Range { .. })));
}

#[test]
fn repeated_households_are_told_as_such_and_have_numbers_of_their_own() {
    let end = "2026-06-01T19:00:00Z".parse().unwrap();
    let repeated = Simulated::new(6, 2, 20, end, Some(2)).unwrap();
    assert!(repeated.of().contains("2 of them repeated"), "{}", repeated.of());
    let (first, third) = (repeated.household(0).unwrap().unwrap(), repeated.household(2).unwrap().unwrap());
    assert_eq!(first.rows.len(), third.rows.len());
    assert!(third.rows.iter().all(|r| r.household == 2) && third.animals.iter().all(|a| a.household == 2));
}
