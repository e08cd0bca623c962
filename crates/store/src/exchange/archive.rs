//! A whole notebook as one archive: the events as JSON Lines and recordings and pictures as the files they are, in the tar format
//! (POSIX.1-2001, pax), which any system unpacks.

use super::{Format, MOST_FILE_BYTES};
use crate::aside::{self, Aside};
use crate::clips::{ClipHash, MOST_CLIP_BYTES};
use crate::error::{ArchiveFault, StoreError};
use crate::folder::folder_of;
use crate::held::cannot_hold;
use crate::store::Store;
use std::fs::File;
use std::io::{BufReader, BufWriter, Read, Seek, SeekFrom, Write};
use std::path::Path;

/// The events in an archive.
const EVENTS: &str = "events.jsonl";
/// The folder of recordings and pictures in it, each named by the SHA-256 of its bytes.
const CLIPS: &str = "recordings/";
/// Says what the archive is, to a person who unpacks it.
const READ_ME: (&str, &str) = (
    "README.txt",
    "A notebook, exported whole.\nevents.jsonl: every event as first recorded, one a line, as JSON.\n\
     recordings/: the sounds on the buttons, and the pictures, each named by the SHA-256 of its bytes; the events called\n\
     clip_card say which word a sound belongs to, those called picture_card what a picture shows.\n",
);

/// What an archive holds.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Default)]
pub struct Archived {
    /// Events.
    pub events: usize,
    /// Recordings.
    pub clips: usize,
    /// Recordings left out because they are damaged.
    pub damaged_clips: usize,
}

/// Recordings brought in from an archive.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Default)]
pub struct ClipsBrought {
    /// Stored now.
    pub new: usize,
    /// Stored already.
    pub known: usize,
    /// Damaged, and left out.
    pub damaged: usize,
}

impl Store {
    /// Writes every event and every recording to a new archive, which appears under its name once it is whole.
    ///
    /// # Errors
    /// As [`Store::export_to`].
    pub async fn export_archive(&self, to: &Path) -> Result<Archived, StoreError> {
        if to.exists() {
            return Err(StoreError::Exists(to.to_owned()));
        }
        aside::tidy(folder_of(to));
        let mut aside = Aside::beside(to)?;
        let done = self.write_archive(aside.file(), to).await?;
        aside.place()?;
        Ok(done)
    }

    /// Writes an archive to an open file, called `to` where something goes wrong.
    pub(crate) async fn write_archive(&self, file: &mut File, to: &Path) -> Result<Archived, StoreError> {
        let io = || StoreError::io(to);
        // How long an entry is stands before it, so the events are written to a nameless file first.
        let folder = self.folder_to_send_from();
        let nameless = tempfile::tempfile_in(&folder).map_err(|e| cannot_hold(&folder, StoreError::io(&folder)(e)))?;
        let mut events = BufWriter::new(nameless);
        let mut done = Archived { events: self.export(Format::JsonLines, &mut events).await?, ..Archived::default() };
        let mut events = events.into_inner().map_err(|e| io()(e.into_error()))?;
        let length = events.stream_position().map_err(io())?;
        events.seek(SeekFrom::Start(0)).map_err(io())?;
        let mut out = tar::Builder::new(BufWriter::new(file));
        add(&mut out, READ_ME.0, READ_ME.1.len() as u64, READ_ME.1.as_bytes()).map_err(io())?;
        add(&mut out, EVENTS, length, BufReader::new(events)).map_err(io())?;
        for hash in self.clips().await? {
            match self.clip(&hash).await {
                Ok(Some(bytes)) => {
                    let name = format!("{CLIPS}{hash}");
                    add(&mut out, &name, bytes.len() as u64, bytes.as_slice()).map_err(io())?;
                    done.clips += 1;
                }
                Ok(None) => {}
                Err(StoreError::BadClip { .. }) => done.damaged_clips += 1,
                Err(other) => return Err(other),
            }
        }
        let mut out = out.into_inner().map_err(io())?;
        out.flush().map_err(io())?;
        Ok(done)
    }

    /// Stores the recordings of an archive; those that do not have the hash that is their name are left out.
    ///
    /// # Errors
    /// [`StoreError::BadArchive`] where the file is none; [`StoreError::DiskFull`] and others of [`Store::put_clip`].
    pub async fn take_recordings(&self, from: &Path) -> Result<ClipsBrought, StoreError> {
        let mut done = ClipsBrought::default();
        // Where each lies: whoever looked for each by name would read the whole file for every one of them.
        let mut places = Vec::new();
        each_entry(from, &mut |name, entry| {
            let wanted = name.strip_prefix(CLIPS).map(str::to_owned);
            places.extend(wanted.map(|wanted| (wanted, entry.raw_file_position(), entry.size())));
            Ok(())
        })?;
        let io = || StoreError::io(from);
        let mut file = File::open(from).map_err(io())?;
        for (wanted, place, length) in places {
            let mut bytes = Vec::new();
            if length <= MOST_CLIP_BYTES as u64 {
                file.seek(SeekFrom::Start(place)).map_err(io())?;
                (&mut file).take(length).read_to_end(&mut bytes).map_err(io())?;
            }
            let hash = ClipHash::of(&bytes);
            if hash.as_str() != wanted || bytes.is_empty() {
                done.damaged += 1;
            } else if matches!(self.clip(&hash).await, Ok(Some(_))) {
                done.known += 1;
            } else {
                self.put_clip(bytes).await?;
                done.new += 1;
            }
        }
        Ok(done)
    }
}

/// The events of an archive, as a file to import in [`Format::JsonLines`], and how many recordings there are with it.
///
/// # Errors
/// [`StoreError::BadArchive`] where the file is no such archive, is cut short, or its events are too many for one file.
pub fn events_of_archive(from: &Path) -> Result<(Vec<u8>, usize), StoreError> {
    let (mut events, mut clips) = (None, 0);
    each_entry(from, &mut |name, entry| {
        clips += usize::from(name.starts_with(CLIPS));
        if name == EVENTS {
            let mut bytes = Vec::new();
            entry.take(MOST_FILE_BYTES as u64 + 1).read_to_end(&mut bytes)?;
            events = Some(bytes);
        }
        Ok(())
    })?;
    let bad = |what| StoreError::BadArchive { path: from.to_owned(), what };
    let events = events.ok_or_else(|| bad(ArchiveFault::Lacks(EVENTS)))?;
    Ok((events, clips))
}

type Entry<'a> = tar::Entry<'a, BufReader<File>>;

/// Looks at every file in an archive, in order. What is no plain file (folders, links, files with holes, which grow when
/// they are read) is passed over.
fn each_entry(
    from: &Path,
    each: &mut dyn FnMut(&str, &mut Entry<'_>) -> std::io::Result<()>,
) -> Result<(), StoreError> {
    let file = File::open(from).map_err(StoreError::io(from))?;
    let mut archive = tar::Archive::new(BufReader::new(file));
    let mut read = || {
        for entry in archive.entries()? {
            let mut entry = entry?;
            if !entry.header().entry_type().is_file() {
                continue;
            }
            let name = entry.path()?.to_string_lossy().into_owned();
            each(&name, &mut entry)?;
        }
        Ok(())
    };
    read().map_err(|e: std::io::Error| {
        let what = ArchiveFault::Unreadable(e.to_string());
        StoreError::BadArchive { path: from.to_owned(), what }
    })
}

fn add(out: &mut tar::Builder<impl Write>, name: &str, length: u64, bytes: impl Read) -> std::io::Result<()> {
    let mut header = tar::Header::new_ustar();
    header.set_size(length);
    header.set_mode(0o600);
    out.append_data(&mut header, name, bytes)
}
