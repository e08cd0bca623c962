//! A home's events as they were at one moment, beside the log, in a form that is read quickly. The log is the
//! truth: a snapshot that is missing, damaged, of another notebook or of another version is passed over and made anew.
//!
//! Bytes: a mark; blocks of events; what the file is of; the length and SHA-256 of that.

mod form;

use crate::aside::{self, Aside};
use crate::error::StoreError;
use crate::log::Revision;
use borsh::{BorshDeserialize, BorshSerialize};
use form::wrong;
use sayso_model::{Event, HomeId};
use sha2::{Digest as _, Sha256};
use std::fs::File;
use std::io::{self, ErrorKind, Read, Seek, SeekFrom, Write};
use std::path::{Path, PathBuf};
use std::sync::Arc;
use std::sync::atomic::{AtomicUsize, Ordering};
use uuid::Uuid;

const MARK: &[u8; 16] = b"sayso snapshot 1";
/// Events in a block.
const BLOCK: usize = 4_096;
/// Threads that read, at most; a snapshot has blocks enough for them.
const MOST_THREADS: usize = 8;
/// Most bytes of a block or of what the file is of.
const MOST_BYTES: u64 = 1 << 30;

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

/// Writes a snapshot in place of the one before. A kill leaves the one or the other.
///
/// # Errors
/// [`StoreError::DiskFull`] and others; the one before stays.
pub(crate) fn write<'a>(
    dir: &Path,
    home: HomeId,
    (at, unread, landmarks): (Revision, Vec<i64>, Vec<Landmark>),
    events: impl Iterator<Item = &'a Event>,
) -> Result<(), StoreError> {
    let to = path_in(dir, home);
    aside::private_folder(&folder_in(dir)).map_err(StoreError::io(&to))?;
    let mut aside = Aside::beside(&to)?;
    put(aside.file(), home, (at, unread, landmarks), events).map_err(StoreError::io(&to))?;
    aside.replace()
}

fn put<'a>(
    to: &mut File,
    home: HomeId,
    (at, unread, landmarks): (Revision, Vec<i64>, Vec<Landmark>),
    events: impl Iterator<Item = &'a Event>,
) -> io::Result<()> {
    to.write_all(MARK)?;
    let (mut events, mut blocks) = (events.peekable(), Vec::new());
    while events.peek().is_some() {
        let mut count = 0;
        let bytes = form::write(events.by_ref().take(BLOCK).inspect(|_| count += 1))?;
        to.write_all(&bytes)?;
        blocks.push(Block { bytes: bytes.len() as u64, events: count, sha256: digest(&bytes) });
    }
    let head = Head { form: form::FORM, home, at: at.0, unread, landmarks, blocks };
    let head = borsh::to_vec(&head)?;
    to.write_all(&head)?;
    to.write_all(&(head.len() as u64).to_le_bytes())?;
    to.write_all(&digest(&head))
}

/// Reads the snapshot of a home; none where there is none.
///
/// # Errors
/// Why it cannot be used.
pub(crate) fn read(dir: &Path, home: HomeId) -> io::Result<Option<Snapshot>> {
    let path = path_in(dir, home);
    let mut file = match File::open(&path) {
        Err(e) if e.kind() == ErrorKind::NotFound => return Ok(None),
        file => file?,
    };
    let head = head(&mut file)?;
    if head.form != form::FORM {
        return Err(wrong("another version wrote it"));
    }
    if head.home != home {
        return Err(wrong("it is of another home"));
    }
    let mut begin = MARK.len() as u64;
    let blocks = head.blocks.iter().map(|block| {
        let at = begin;
        begin = begin.saturating_add(block.bytes);
        (at, block)
    });
    let blocks: Vec<_> = blocks.collect();
    let events = events(&path, &blocks)?;
    Ok(Some(Snapshot { at: Revision(head.at), events, unread: head.unread, landmarks: head.landmarks }))
}

fn digest(bytes: &[u8]) -> [u8; 32] {
    Sha256::digest(bytes).into()
}

fn head(file: &mut File) -> io::Result<Head> {
    let mut mark = [0; MARK.len()];
    file.read_exact(&mut mark)?;
    if mark != *MARK {
        return Err(wrong("it is no snapshot"));
    }
    let (mut length, mut sha256) = ([0; 8], [0; 32]);
    file.seek(SeekFrom::End(-40))?;
    file.read_exact(&mut length)?;
    file.read_exact(&mut sha256)?;
    let bytes = part(file, SeekFrom::End(-40), u64::from_le_bytes(length), true)?;
    if digest(&bytes) != sha256 {
        return Err(wrong("it is damaged"));
    }
    borsh::from_slice(&bytes)
}

/// So many bytes from a place on, or before it.
fn part(file: &mut File, at: SeekFrom, length: u64, before: bool) -> io::Result<Vec<u8>> {
    if length > MOST_BYTES.min(file.metadata()?.len()) {
        return Err(wrong("it is damaged"));
    }
    file.seek(at)?;
    if before {
        file.seek(SeekFrom::Current(-i64::try_from(length).unwrap_or(0)))?;
    }
    let mut bytes = vec![0; usize::try_from(length).unwrap_or(0)];
    file.read_exact(&mut bytes)?;
    Ok(bytes)
}

/// The events of all blocks, read on as many threads as there are processors.
fn events(path: &Path, blocks: &[(u64, &Block)]) -> io::Result<Vec<Arc<Event>>> {
    let next = AtomicUsize::new(0);
    let work = || -> io::Result<Vec<(usize, Vec<Arc<Event>>)>> {
        let (mut file, mut done) = (File::open(path)?, Vec::new());
        while let Some((number, (at, block))) = {
            let number = next.fetch_add(1, Ordering::Relaxed);
            blocks.get(number).map(|b| (number, b))
        } {
            let bytes = part(&mut file, SeekFrom::Start(*at), block.bytes, false)?;
            if digest(&bytes) != block.sha256 {
                return Err(wrong("it is damaged"));
            }
            done.push((number, form::read(&bytes, block.events as usize)?));
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
