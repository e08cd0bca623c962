//! A folder of tables: written bucket by bucket, so that a stop in the middle costs the buckets under way and nothing twice.

use crate::aside::PART;
use crate::error::ExportError;
use crate::household::Household;
use crate::manifest::{Entry, Manifest, animals_path, events_path};
use crate::parquet;
use datafusion::arrow::array::RecordBatch;
use datafusion::arrow::error::ArrowError;
use sha2::{Digest, Sha256};
use std::fs::{File, TryLockError};
use std::ops::Range;
use std::path::{Path, PathBuf};
use std::sync::Mutex;
use std::sync::atomic::{AtomicUsize, Ordering};
use study_cohort::{ORDER, animals_batch, events_batch};

/// Where households come from, by their numbers in the study.
pub trait Source: Sync {
    /// What it is, so that two different things do not get into one folder.
    fn of(&self) -> String;

    /// How many numbers there are.
    fn households(&self) -> u32;

    /// Which of these agree now.
    ///
    /// # Errors
    /// Where they cannot be read.
    fn agreeing(&self, numbers: Range<u32>) -> Result<Vec<u32>, ExportError>;

    /// One of them, if it agrees.
    ///
    /// # Errors
    /// Where it cannot be read.
    fn household(&self, number: u32) -> Result<Option<Household>, ExportError>;
}

/// How many households lie together.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub struct Bucket(pub u32);

/// A folder of tables that is whole.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Dataset {
    /// What it holds.
    pub manifest: Manifest,
    /// Files of events, by bucket.
    pub events: Vec<PathBuf>,
    /// Files of animals, by bucket.
    pub animals: Vec<PathBuf>,
}

impl Dataset {
    /// Opens a folder.
    ///
    /// # Errors
    /// [`ExportError::NotWhole`] where an export has not come to its end, or a file was lost or cut short since: the engine would take
    /// one that is not there for a table without rows.
    pub fn open(dir: &Path) -> Result<Self, ExportError> {
        let none = || ExportError::NotWhole { path: dir.to_owned(), there: 0, all: 0 };
        let manifest = Manifest::read(dir)?.ok_or_else(none)?;
        let there = manifest.whole.iter().filter(|entry| lies(dir, entry)).count();
        let all = usize::from(manifest.buckets);
        if there != all {
            return Err(ExportError::NotWhole { path: dir.to_owned(), there, all });
        }
        let paths = |path: fn(&Path, u16) -> PathBuf| (0..manifest.buckets).map(|b| path(dir, b)).collect();
        Ok(Self { events: paths(events_path), animals: paths(animals_path), manifest })
    }
}

/// Writes what is missing of a folder's tables, on so many threads; `told` hears of each bucket written. What is whole stays,
/// unless who agrees has changed since.
///
/// # Errors
/// [`ExportError`]; what was whole by then stays whole.
pub fn write(
    dir: &Path,
    source: &dyn Source,
    Bucket(each): Bucket,
    threads: usize,
    told: &(dyn Fn(&Entry) + Sync),
) -> Result<Manifest, ExportError> {
    let wanted = wanted(source, each)?;
    let buckets = wanted.buckets;
    let lock = begin(dir)?;
    let manifest = there(dir, &wanted)?.unwrap_or(wanted);
    let work = Work { dir, source, each, manifest: Mutex::new(manifest), next: AtomicUsize::new(0), told };
    let results: Vec<Result<(), ExportError>> = std::thread::scope(|scope| {
        let running: Vec<_> = (0..threads.max(1)).map(|_| scope.spawn(|| work.run(buckets))).collect();
        running
            .into_iter()
            .map(|thread| thread.join().unwrap_or_else(|panic| std::panic::resume_unwind(panic)))
            .collect()
    });
    results.into_iter().collect::<Result<(), _>>()?;
    let manifest = work.manifest.into_inner().unwrap_or_else(std::sync::PoisonError::into_inner);
    manifest.write(dir)?;
    drop(lock);
    Ok(manifest)
}

/// Asks anew whether those who agreed when a folder's tables were written are those who agree now; writes nothing. To be asked before
/// anything worked out of the tables is published.
///
/// # Errors
/// [`ExportError::Agreement`] where they are not; [`ExportError::NotWhole`] and others.
pub fn check(dir: &Path, source: &dyn Source, Bucket(each): Bucket) -> Result<Manifest, ExportError> {
    let wanted = wanted(source, each)?;
    let all = usize::from(wanted.buckets);
    there(dir, &wanted)?;
    let manifest = Dataset::open(dir)?.manifest;
    let mut changed = 0;
    for entry in &manifest.whole {
        changed += usize::from(!same_agree(entry, source, numbers(entry.bucket, each, source))?);
    }
    if changed > 0 { Err(ExportError::Agreement { path: dir.to_owned(), changed, all }) } else { Ok(manifest) }
}

/// What a folder of these is to hold, before anything of it is there.
fn wanted(source: &dyn Source, each: u32) -> Result<Manifest, ExportError> {
    let wanted = ExportError::Range {
        what: "households of a bucket",
        wanted: "1 or more, and of all no more than 65535 buckets",
    };
    let buckets = source.households().checked_div(each).map(|_| source.households().div_ceil(each));
    let Some(Ok(buckets)) = buckets.map(u16::try_from) else { return Err(wanted) };
    Ok(Manifest::new(format!("{}; {each} a bucket", source.of()), buckets))
}

/// What a folder holds, which must be what is wanted; none where it holds nothing yet.
fn there(dir: &Path, wanted: &Manifest) -> Result<Option<Manifest>, ExportError> {
    let there = Manifest::read(dir)?;
    match there {
        Some(other) if (&other.of, other.buckets) != (&wanted.of, wanted.buckets) => {
            Err(ExportError::Other { path: dir.to_owned(), there: other.of, asked: wanted.of.clone() })
        }
        there => Ok(there),
    }
}

/// The households of a bucket.
fn numbers(bucket: u16, each: u32, source: &dyn Source) -> Range<u32> {
    let from = u32::from(bucket) * each;
    from..(from.saturating_add(each)).min(source.households())
}

/// Makes the folders, takes them for this export alone, and clears away what an earlier one left half written.
fn begin(dir: &Path) -> Result<File, ExportError> {
    for folder in [dir.join("events"), dir.join("animals")] {
        std::fs::create_dir_all(&folder).map_err(ExportError::io(&folder))?;
    }
    let path = dir.join(".lock");
    let lock = File::create(&path).map_err(ExportError::io(&path))?;
    match lock.try_lock() {
        Ok(()) => {}
        Err(TryLockError::WouldBlock) => return Err(ExportError::Busy(dir.to_owned())),
        Err(TryLockError::Error(why)) => return Err(ExportError::Io { path, why }),
    }
    for folder in [dir.to_owned(), dir.join("events"), dir.join("animals")] {
        for entry in std::fs::read_dir(&folder).map_err(ExportError::io(&folder))? {
            let path = entry.map_err(ExportError::io(&folder))?.path();
            if path.file_name().is_some_and(|name| name.to_string_lossy().starts_with(PART)) {
                std::fs::remove_file(&path).map_err(ExportError::io(&path))?;
            }
        }
    }
    Ok(lock)
}

struct Work<'a> {
    dir: &'a Path,
    source: &'a dyn Source,
    each: u32,
    manifest: Mutex<Manifest>,
    next: AtomicUsize,
    told: &'a (dyn Fn(&Entry) + Sync),
}

impl Work<'_> {
    fn manifest(&self) -> std::sync::MutexGuard<'_, Manifest> {
        self.manifest.lock().unwrap_or_else(std::sync::PoisonError::into_inner)
    }

    fn run(&self, buckets: u16) -> Result<(), ExportError> {
        while let Ok(bucket) = u16::try_from(self.next.fetch_add(1, Ordering::Relaxed))
            && bucket < buckets
        {
            let numbers = numbers(bucket, self.each, self.source);
            let whole = self.manifest().whole.iter().find(|e| e.bucket == bucket).cloned();
            if let Some(entry) = whole
                && lies(self.dir, &entry)
                && same_agree(&entry, self.source, numbers.clone())?
            {
                continue;
            }
            let entry = self.bucket(bucket, numbers)?;
            {
                let mut manifest = self.manifest();
                manifest.put(entry.clone());
                manifest.write(self.dir)?;
            }
            (self.told)(&entry);
        }
        Ok(())
    }

    fn bucket(&self, bucket: u16, numbers: Range<u32>) -> Result<Entry, ExportError> {
        let (mut animals, mut rows, mut agreed, mut of_nobody) = (Vec::new(), Vec::new(), Vec::new(), 0);
        // In order of their numbers: so the whole is sorted by household and time.
        for number in numbers {
            let Some(household) = self.source.household(number)? else { continue };
            agreed.push(number);
            of_nobody += household.of_nobody;
            animals.extend(household.animals);
            rows.extend(household.rows);
        }
        let (to_events, to_animals) = (events_path(self.dir, bucket), animals_path(self.dir, bucket));
        let batch = |of: Result<RecordBatch, ArrowError>, to: &Path| of.map_err(ExportError::table(to));
        let bytes = parquet::write(&to_events, &batch(events_batch(bucket, &rows), &to_events)?, &ORDER)?;
        let by_animal = ["household", "animal"];
        parquet::write(&to_animals, &batch(animals_batch(bucket, &animals), &to_animals)?, &by_animal)?;
        let (animals, events) = (animals.len() as u64, rows.len() as u64);
        let households = agreed.len() as u32;
        Ok(Entry { bucket, households, animals, events, of_nobody, bytes, agreed: hash(&agreed) })
    }
}

/// Whether those of these numbers who agreed when a bucket was written are those who agree now.
fn same_agree(entry: &Entry, source: &dyn Source, numbers: Range<u32>) -> Result<bool, ExportError> {
    Ok(entry.agreed == hash(&source.agreeing(numbers)?))
}

/// Whether a bucket's files are there, as long as they were written.
fn lies(dir: &Path, entry: &Entry) -> bool {
    let length = std::fs::metadata(events_path(dir, entry.bucket)).map(|m| m.len());
    length.is_ok_and(|n| n == entry.bytes) && animals_path(dir, entry.bucket).exists()
}

/// Bytes as text.
pub(crate) fn hex(bytes: &[u8]) -> String {
    bytes.iter().map(|byte| format!("{byte:02x}")).collect()
}

fn hash(numbers: &[u32]) -> String {
    let mut hash = Sha256::new();
    numbers.iter().for_each(|number| hash.update(number.to_le_bytes()));
    hex(&hash.finalize())
}
