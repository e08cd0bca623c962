//! What went wrong with the notebook's files and with sounds, in the reader's language. What the system, the database or a
//! decoder said of it stays as it was said.

use crate::locale::Locale;
use crate::message::Message;
use crate::{faults, say};
use sayso_listen::ListenError;
use sayso_model::Problems;
use sayso_notebook::{NoNotebook, NoSound, NoVocabulary, NotKept, NotLogged};
use sayso_store::{
    ArchiveFault, BackupFault, CheckFault, ClipFault, Damage, DamagedRow, NotImported, OnlyInAFolder, RowDamage,
    Shares, SnapshotFault, StoreError,
};
use std::path::Path;

/// Homes of a file, each with the count of its events.
#[must_use]
pub fn homes(l: &Locale, shares: &Shares) -> String {
    let told: Vec<String> = shares
        .iter()
        .map(|(id, share)| {
            let home = match &share.name {
                Some(name) => format!("{name} ({id})"),
                None => say!(l, exchange::unnamed, id = id.to_string()),
            };
            say!(l, store::home_brings, home = home, events = share.events)
        })
        .collect();
    l.apart(&told)
}

fn shown(path: &Path) -> String {
    path.display().to_string()
}

impl Message for StoreError {
    fn say(&self, l: &Locale) -> String {
        match self {
            Self::NotADatabase(path) => say!(l, store::not_a_database, path = shown(path)),
            Self::NotOurs(path) => say!(l, store::not_ours, path = shown(path)),
            Self::Newer { path, found, known } => {
                say!(l, store::newer, path = shown(path), found = found.to_string(), known = known.to_string())
            }
            Self::Corrupt { path, what } => say!(l, store::corrupt, path = shown(path), what = what.say(l)),
            Self::Unwritable { path, what } => say!(l, store::unwritable, path = shown(path), what = what),
            Self::CannotHold { path, source } => {
                say!(l, store::cannot_hold, path = shown(path), what = source.to_string())
            }
            Self::DiskFull => say!(l, store::full),
            Self::Busy => say!(l, store::busy),
            Self::Closed => say!(l, store::closed),
            Self::Exists(path) => say!(l, store::exists, path = shown(path)),
            Self::BadBackup { path, what } => say!(l, store::bad_backup, path = shown(path), what = what.say(l)),
            Self::BadArchive { path, what } => say!(l, store::bad_archive, path = shown(path), what = what.say(l)),
            Self::UnknownFile(name) => say!(l, store::unknown_file, name = name),
            Self::OtherHome { path, who } => say!(l, store::other_home, path = shown(path), homes = homes(l, who)),
            Self::BadClip { sha256, what } => say!(l, store::bad_clip, hash = sha256, what = what.say(l)),
            Self::NotImported(why) => say!(l, store::not_imported, why = why.say(l)),
            Self::Io { path, source } => say!(l, sounds::of_file, file = shown(path), why = source.to_string()),
            Self::Database(why) => say!(l, store::database, why = why.to_string()),
            Self::Unreachable { what } => say!(l, store::unreachable, what = what),
            Self::OldDatabase { found, least } => {
                say!(l, store::old_database, found = found.to_string(), least = least.to_string())
            }
            Self::NewerDatabase { found, known } => {
                say!(l, store::newer_database, found = found.to_string(), known = known.to_string())
            }
            Self::NoRights { what } => say!(l, store::no_rights, what = what),
            Self::NotLetIn { what } => say!(l, store::not_let_in, what = what),
            Self::NeedsOwner { what } => say!(l, store::needs_owner, what = what),
            Self::DatabaseDamaged(what) => say!(l, store::database_damaged, what = what.say(l)),
            Self::NoSuchHome(home) => say!(l, store::no_such_home, home = home.to_string()),
            Self::HomeLeft(_) => say!(l, store::home_left),
            Self::OnlyInAFolder(lacks) => lacks.say(l),
            // One of a later version of the store, in English.
            other => other.to_string(),
        }
    }
}

impl Message for OnlyInAFolder {
    fn say(&self, l: &Locale) -> String {
        match self {
            Self::Backup => say!(l, store::only_folder_backup),
            Self::Restore => say!(l, store::only_folder_restore),
            Self::Check => say!(l, store::only_folder_check),
            Self::Snippets => say!(l, store::only_folder_snippets),
            // One of a later version of the store, in English.
            other => other.to_string(),
        }
    }
}

impl Message for BackupFault {
    fn say(&self, l: &Locale) -> String {
        match self {
            Self::NoFile => say!(l, store::backup_no_file),
            Self::Itself => say!(l, store::backup_itself),
            Self::OtherDigest => say!(l, store::backup_other_digest),
            Self::NoDigest => say!(l, store::backup_no_digest),
            Self::Row(what) => say!(l, store::backup_row, what = what.say(l)),
            Self::NotTheLog => say!(l, store::backup_not_the_log),
            Self::Loose(rows) => say!(l, store::backup_loose, rows = *rows),
            // What the database found, or a fault of a later version.
            other => other.to_string(),
        }
    }
}

impl Message for ArchiveFault {
    fn say(&self, l: &Locale) -> String {
        match self {
            Self::Lacks(file) => say!(l, store::archive_lacks, file = *file),
            // What the system said, or a fault of a later version.
            other => other.to_string(),
        }
    }
}

impl Message for ClipFault {
    fn say(&self, l: &Locale) -> String {
        match self {
            Self::NotAHash => say!(l, store::clip_not_a_hash),
            Self::Size { found, most } => say!(l, store::clip_size, found = *found, most = *most),
            Self::OtherContent => say!(l, store::clip_other_content),
            // One of a later version of the store, in English.
            other => other.to_string(),
        }
    }
}

impl Message for NotImported {
    fn say(&self, l: &Locale) -> String {
        match self {
            Self::Faults { count, first } => say!(l, store::import_faults, count = *count, first = first.say(l)),
            Self::NotItsOwn(shares) => say!(l, store::import_not_its_own, homes = homes(l, shares)),
            Self::NotEmpty(of) => say!(l, store::import_not_empty, home = of.to_string()),
            Self::OtherHomes(shares) => say!(l, store::import_other_homes, homes = homes(l, shares)),
            Self::Taken(id) => say!(l, store::import_taken, id = id.to_string()),
            Self::Refused(problems) => problems.say(l),
            // One of a later version of the store, in English.
            other => other.to_string(),
        }
    }
}

impl Message for DamagedRow {
    fn say(&self, l: &Locale) -> String {
        let what = match self.what {
            RowDamage::NoEvent => say!(l, store::row_no_event),
            RowDamage::Column(column) => say!(l, store::row_column, column = column),
            // One of a later version of the store, in English.
            other => other.to_string(),
        };
        say!(l, store::damaged_row, id = self.id.to_string(), row = self.seq.to_string(), what = what)
    }
}

impl Message for Damage {
    fn say(&self, l: &Locale) -> String {
        match self {
            Self::Row(row) => row.say(l),
            Self::LogLeft(file) => say!(l, store::log_left, file = shown(file)),
            Self::OtherSchema(schema) => say!(l, store::other_schema, schema = schema.to_string()),
            // What the database said, or one of a later version of the store.
            other => other.to_string(),
        }
    }
}

impl Message for CheckFault {
    fn say(&self, l: &Locale) -> String {
        match self {
            Self::Row(row) => row.say(l),
            Self::Snapshot { home, what, file } => {
                let what = match what {
                    SnapshotFault::Differs { id, seq } => {
                        say!(l, store::snapshot_differs, id = id.to_string(), row = seq.to_string())
                    }
                    SnapshotFault::More(id) => say!(l, store::snapshot_more, id = id.to_string()),
                    // One of a later version of the store, in English.
                    other => other.to_string(),
                };
                say!(l, store::snapshot, home = home.to_string(), what = what, file = shown(file))
            }
            Self::Clip { sha256, what } => say!(l, store::bad_clip, hash = sha256, what = what.say(l)),
            // What the database said, or one of a later version of the store.
            other => other.to_string(),
        }
    }
}

impl Message for Problems {
    /// One sentence for each.
    fn say(&self, l: &Locale) -> String {
        let told: Vec<String> = self
            .0
            .iter()
            .map(|p| say!(l, faults::at, field = faults::field(l, &p.field), what = p.fault.say(l)))
            .collect();
        told.join(" ")
    }
}

impl Message for NotKept {
    fn say(&self, l: &Locale) -> String {
        match self {
            Self::Late(late) => say!(l, faults::at, field = faults::field(l, late.field()), what = late.say(l)),
            Self::Refused(problems) => problems.say(l),
            Self::Store(why) => why.say(l),
            // One of a later version of the notebook, in English.
            other => other.to_string(),
        }
    }
}

impl Message for NotLogged {
    fn say(&self, l: &Locale) -> String {
        match self {
            Self::Refused(problems) => problems.say(l),
            Self::Store(why) => why.say(l),
            // One of a later version of the notebook, in English.
            other => other.to_string(),
        }
    }
}

impl Message for NoNotebook {
    fn say(&self, l: &Locale) -> String {
        match self {
            Self::None(dir) => say!(l, store::no_home_yet, dir = shown(dir)),
            Self::Store(why) => why.say(l),
            // One of a later version of the notebook, in English.
            other => other.to_string(),
        }
    }
}

impl Message for NoSound {
    fn say(&self, l: &Locale) -> String {
        match self {
            Self::NotStored => say!(l, sounds::not_stored),
            Self::Store(why) => why.say(l),
            Self::Sound(why) => why.say(l),
            // One of a later version of the notebook, in English.
            other => other.to_string(),
        }
    }
}

impl Message for NoVocabulary {
    fn say(&self, l: &Locale) -> String {
        match self {
            Self::Nothing(_) => say!(l, sounds::nothing_enrolled),
            Self::Sound(why) => why.say(l),
            Self::Store(why) => why.say(l),
            // One of a later version of the notebook, in English.
            other => other.to_string(),
        }
    }
}

impl Message for ListenError {
    fn say(&self, l: &Locale) -> String {
        match self {
            Self::NoClips => say!(l, sounds::no_clips),
            Self::ClipLength { word, seconds } => {
                say!(l, sounds::clip_length, word = word, seconds = l.number(*seconds, 2))
            }
            Self::Silent { word } => say!(l, sounds::silent, word = word),
            Self::Format { rate, channels } => {
                say!(l, sounds::format, rate = rate.to_string(), channels = channels.to_string())
            }
            Self::File { path, source } => say!(l, sounds::of_file, file = shown(path), why = source.to_string()),
            Self::Decode { name: Some(name), reason } => say!(l, sounds::of_file, file = name, why = reason.say(l)),
            Self::Decode { name: None, reason } => reason.say(l),
            // One of a later version of the listener, in English.
            other => other.to_string(),
        }
    }
}
