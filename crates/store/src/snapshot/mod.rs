//! A home's events as they were at one moment, beside the log, in a form that is read quickly. The log is the
//! truth: a snapshot that is missing, damaged, of another notebook or of another version is passed over and made anew.
//!
//! Bytes: a mark; blocks of events; what the file is of; the length and SHA-256 of that.

mod form;

use crate::aside::{self, Aside};
use crate::error::StoreError;
use crate::written::Revision;
use borsh::{BorshDeserialize, BorshSerialize};
use form::wrong;
use sayso_model::{Event, HomeId};
use sha2::{Digest as _, Sha256};
use std::io::{self, ErrorKind};
use std::path::{Path, PathBuf};
use std::sync::Arc;
use std::sync::atomic::{AtomicUsize, Ordering};
use uuid::Uuid;

const MARK: &[u8; 16] = b"sayso snapshot 1";
/// Events in a block.
const BLOCK: usize = 4_096;
/// Threads that read, at most; a snapshot has blocks enough for them.
const MOST_THREADS: usize = 8;
/// The least that stands in the head of a block.
const BLOCK_BYTES: usize = 44;

/// Fewer events than this are read from a file quickly enough; no snapshot is made of them.
pub const WORTH_A_SNAPSHOT: usize = 5_000;

/// When a snapshot is made.
pub(crate) struct Pace {
    /// Of fewer events than this none is made.
    pub worth: usize,
    /// It is made anew once so many events came since, and one in `share` of all.
    pub gained: usize,
    pub share: usize,
    /// At an orderly stop, or where the story is let go, it is made anew once so many came.
    pub gained_at_stop: usize,
}

/// Of a file, whose rows are read one after the other.
pub(crate) const IN_A_FILE: Pace = Pace { worth: WORTH_A_SNAPSHOT, gained: 2_000, share: 50, gained_at_stop: 500 };

/// Places in the log that tell it from another one, spread over all of it; and so many at its end.
const SPREAD: i64 = 48;
const AT_END: i64 = 16;

/// Of a home on a server: its rows lie scattered over the table, a page of the disk each, so that few are many already.
pub(crate) const ON_A_SERVER: Pace = Pace { worth: 300, gained: 200, share: 10, gained_at_stop: 50 };

/// A place in the log and the id of the event there: tells one log from another.
pub(crate) type Landmark = (i64, Uuid);

/// What a snapshot holds.
#[derive(Default)]
pub(crate) struct Snapshot {
    /// How far the log had grown.
    pub at: Revision,
    /// Events as first recorded, by id.
    pub events: Vec<Arc<Event>>,
    /// Places in the log of events that were not understood; a newer version may understand them.
    pub unread: Vec<i64>,
    /// What the log had at some places.
    pub landmarks: Vec<Landmark>,
}

/// What the file is of.
#[derive(BorshSerialize, BorshDeserialize)]
struct Head {
    form: u32,
    home: HomeId,
    at: i64,
    unread: Vec<i64>,
    landmarks: Vec<Landmark>,
    blocks: Vec<Block>,
}

#[derive(BorshSerialize, BorshDeserialize)]
struct Block {
    bytes: u64,
    events: u32,
    sha256: [u8; 32],
}

/// The folder of snapshots in a notebook's folder.
pub(crate) fn folder_in(dir: &Path) -> PathBuf {
    dir.join("snapshots")
}

/// The snapshot of a home.
pub(crate) fn path_in(dir: &Path, home: HomeId) -> PathBuf {
    folder_in(dir).join(home.to_string())
}

/// A snapshot as bytes.
///
/// # Errors
/// Where the events of a block have too many different values.
pub(crate) fn write<'a>(
    home: HomeId,
    (at, unread, landmarks): (Revision, Vec<i64>, Vec<Landmark>),
    events: impl Iterator<Item = &'a Event>,
) -> io::Result<Vec<u8>> {
    let mut to = MARK.to_vec();
    let (mut events, mut blocks) = (events.peekable(), Vec::new());
    while events.peek().is_some() {
        let mut count = 0;
        let bytes = form::write(events.by_ref().take(BLOCK).inspect(|_| count += 1))?;
        to.extend_from_slice(&bytes);
        blocks.push(Block { bytes: bytes.len() as u64, events: count, sha256: digest(&bytes) });
    }
    let head = Head { form: form::FORM, home, at: at.0, unread, landmarks, blocks };
    let head = borsh::to_vec(&head)?;
    to.extend_from_slice(&head);
    to.extend_from_slice(&(head.len() as u64).to_le_bytes());
    to.extend_from_slice(&digest(&head));
    Ok(to)
}

/// Writes the bytes of a snapshot in place of the file before. A kill leaves the one or the other.
///
/// # Errors
/// [`StoreError::DiskFull`] and others; the one before stays.
pub(crate) fn write_file(dir: &Path, home: HomeId, bytes: &[u8]) -> Result<(), StoreError> {
    let to = path_in(dir, home);
    aside::private_folder(&folder_in(dir)).map_err(StoreError::io(&to))?;
    Aside::replace_by(&to, bytes)
}

/// Reads the file of a home's snapshot; none where there is none.
///
/// # Errors
/// Why it cannot be used.
pub(crate) fn read_file(dir: &Path, home: HomeId) -> io::Result<Option<Snapshot>> {
    match std::fs::read(path_in(dir, home)) {
        Err(e) if e.kind() == ErrorKind::NotFound => Ok(None),
        bytes => read(&bytes?, home).map(Some),
    }
}

/// Reads the bytes of a home's snapshot.
///
/// # Errors
/// Why it cannot be used.
pub(crate) fn read(bytes: &[u8], home: HomeId) -> io::Result<Snapshot> {
    let head = head(bytes)?;
    if head.form != form::FORM {
        return Err(wrong("another version wrote it"));
    }
    if head.home != home {
        return Err(wrong("it is of another home"));
    }
    let mut rest = bytes.get(MARK.len()..).unwrap_or_default();
    let mut blocks = Vec::with_capacity(head.blocks.len().min(bytes.len() / BLOCK_BYTES));
    for block in &head.blocks {
        let length = usize::try_from(block.bytes).map_err(|_| damaged())?;
        let (bytes, after) = rest.split_at_checked(length).ok_or_else(damaged)?;
        blocks.push((bytes, block));
        rest = after;
    }
    let events = events(&blocks)?;
    Ok(Snapshot { at: Revision(head.at), events, unread: head.unread, landmarks: head.landmarks })
}

fn damaged() -> io::Error {
    wrong("it is damaged")
}

fn digest(bytes: &[u8]) -> [u8; 32] {
    Sha256::digest(bytes).into()
}

fn head(bytes: &[u8]) -> io::Result<Head> {
    let rest = bytes.strip_prefix(MARK).ok_or_else(|| wrong("it is no snapshot"))?;
    let (rest, sha256) = rest.split_last_chunk::<32>().ok_or_else(damaged)?;
    let (rest, length) = rest.split_last_chunk::<8>().ok_or_else(damaged)?;
    let length = usize::try_from(u64::from_le_bytes(*length)).map_err(|_| damaged())?;
    let begin = rest.len().checked_sub(length).ok_or_else(damaged)?;
    let head = rest.get(begin..).unwrap_or_default();
    if digest(head) != *sha256 {
        return Err(damaged());
    }
    borsh::from_slice(head)
}

/// The events of all blocks, read on as many threads as there are processors.
fn events(blocks: &[(&[u8], &Block)]) -> io::Result<Vec<Arc<Event>>> {
    let next = AtomicUsize::new(0);
    let work = || -> io::Result<Vec<(usize, Vec<Arc<Event>>)>> {
        let mut done = Vec::new();
        while let Some((number, (bytes, block))) = {
            let number = next.fetch_add(1, Ordering::Relaxed);
            blocks.get(number).map(|b| (number, b))
        } {
            if digest(bytes) != block.sha256 {
                return Err(damaged());
            }
            done.push((number, form::read(bytes, block.events as usize)?));
        }
        Ok(done)
    };
    let threads = std::thread::available_parallelism().map_or(1, usize::from).min(MOST_THREADS).min(blocks.len());
    let mut parts = std::thread::scope(|scope| {
        let helpers: Vec<_> = (1..threads).map(|_| scope.spawn(work)).collect();
        let mut parts = work()?;
        for helper in helpers {
            // A thread that panicked has read nothing that could be used.
            parts.extend(helper.join().map_err(|_| wrong("it cannot be read"))??);
        }
        io::Result::Ok(parts)
    })?;
    parts.sort_by_key(|(number, _)| *number);
    let mut all = Vec::with_capacity(parts.iter().map(|(_, events)| events.len()).sum());
    for (_, events) in parts {
        all.extend(events);
    }
    Ok(all)
}

/// Places over all of a log up to a place, and at its end.
pub(crate) fn spread_to(at: Revision) -> Vec<i64> {
    let spread =
        (1..=SPREAD).map(|n| (i128::from(at.0) * i128::from(n) / i128::from(SPREAD)).try_into().unwrap_or(at.0));
    let mut places: Vec<i64> = spread.chain(at.0 - AT_END..=at.0).filter(|seq| *seq > 0).collect();
    places.sort_unstable();
    places.dedup();
    places
}
