//! Paired devices. Only hashes of their secrets are kept, in one file, so that a restart keeps phones paired.
//!
//! The file may be changed beside a running notebook (`sayso devices`); what it says then counts from the next request.

use sayso_model::Moment;
use sayso_wording::{Locale, Message, say};
use serde::{Deserialize, Serialize};
use sha2::{Digest, Sha256};
use std::fs::{File, OpenOptions};
use std::io::{self, ErrorKind, Write};
use std::path::{Path, PathBuf};
use std::time::SystemTime;
use subtle::ConstantTimeEq;

/// A device that was not paired anew for this long must pair again.
const GOOD_FOR_S: f64 = 400.0 * 86_400.0;
/// A device that was not seen for this long must pair again.
pub const IDLE_DAYS: u32 = 180;
/// The longest unseen is forgotten beyond this many.
const MOST: usize = 100;
/// "Last seen" is written this seldom, in seconds.
const SEEN_EVERY_S: f64 = 3_600.0;
/// Longest name of a device, in characters.
pub const LONGEST_NAME: usize = 40;

/// Why the paired devices cannot be read or kept.
#[derive(Debug, thiserror::Error)]
#[non_exhaustive]
pub enum PairedError {
    /// The file cannot be read or written.
    #[error("the paired devices in {file}: {source}; see that this program may read and write the file", file = .file.display())]
    File {
        /// Which.
        file: PathBuf,
        /// Why.
        source: io::Error,
    },
    /// The file holds something else.
    #[error(
        "{file} does not hold paired devices ({why}). Bring it back from a copy, or delete it: every phone then pairs \
         anew; nothing in the notebook is lost",
        file = .file.display()
    )]
    Content {
        /// Which.
        file: PathBuf,
        /// Line, column and what is wrong.
        why: serde_json::Error,
    },
}

impl Message for PairedError {
    fn say(&self, l: &Locale) -> String {
        match self {
            Self::File { file, source } => {
                say!(l, pairing::file, file = file.display().to_string(), why = source.to_string())
            }
            Self::Content { file, why } => {
                say!(l, pairing::file_content, file = file.display().to_string(), why = why.to_string())
            }
        }
    }
}

/// One paired device, without its secret.
#[derive(Clone, PartialEq, Debug)]
pub struct Device {
    /// Names it among the others; twelve hexadecimal digits.
    pub id: String,
    /// What its people call it.
    pub name: String,
    /// When it was paired.
    pub paired_at: Moment,
    /// When it last asked for something, to the hour.
    pub seen_at: Moment,
}

#[derive(Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Session {
    sha256: String,
    paired_at: Moment,
    #[serde(default)]
    name: Option<String>,
    #[serde(default)]
    seen_at: Option<Moment>,
}

impl Session {
    fn seen(&self) -> Moment {
        self.seen_at.unwrap_or(self.paired_at)
    }

    fn good(&self, now: Moment) -> bool {
        now.seconds_since(self.paired_at) < GOOD_FOR_S
            && now.seconds_since(self.seen()) < f64::from(IDLE_DAYS) * 86_400.0
    }

    fn id(&self) -> &str {
        self.sha256.get(..12).unwrap_or(&self.sha256)
    }
}

/// When the file was last changed, and its size; none where it is not there.
type Stamp = Option<(SystemTime, u64)>;

/// The paired devices.
pub struct Sessions {
    file: PathBuf,
    all: Vec<Session>,
    stamp: Stamp,
}

impl Sessions {
    /// Those in the file; none where there is no file.
    ///
    /// # Errors
    /// [`PairedError`] naming the file and the remedy.
    pub fn read(file: &Path) -> Result<Self, PairedError> {
        let io = |source| PairedError::File { file: file.to_owned(), source };
        let stamp = stamp(file).map_err(io)?;
        let all = match std::fs::read(file) {
            Ok(bytes) => {
                for_its_owner_alone(file).map_err(io)?;
                serde_json::from_slice(&bytes).map_err(|why| PairedError::Content { file: file.to_owned(), why })?
            }
            Err(e) if e.kind() == ErrorKind::NotFound => Vec::new(),
            Err(e) => return Err(io(e)),
        };
        Ok(Self { file: file.to_owned(), all, stamp })
    }

    /// Those that may come in, the last seen first.
    pub fn devices(&mut self, now: Moment) -> Vec<Device> {
        self.catch_up();
        let mut all: Vec<Device> = self
            .all
            .iter()
            .filter(|s| s.good(now))
            .map(|s| Device {
                id: s.id().to_owned(),
                name: s.name.clone().unwrap_or_default(),
                paired_at: s.paired_at,
                seen_at: s.seen(),
            })
            .collect();
        all.sort_by_key(|d| std::cmp::Reverse(d.seen_at));
        all
    }

    /// Which device has this secret, if one that may come in has it. Notes that it was seen.
    pub fn knows(&mut self, secret: &str, now: Moment) -> Option<String> {
        self.catch_up();
        let hash = hash(secret);
        // Every hash is compared in full, so that the time taken tells nothing.
        let found = self.all.iter().enumerate().filter(|(_, s)| s.good(now)).fold(None, |found, (i, s)| {
            if bool::from(s.sha256.as_bytes().ct_eq(hash.as_bytes())) { Some(i) } else { found }
        });
        let session = self.all.get(found?)?;
        let id = session.id().to_owned();
        if now.seconds_since(session.seen()) >= SEEN_EVERY_S {
            let seen = |all: &mut Vec<Session>| {
                for s in all.iter_mut().filter(|s| s.sha256 == hash) {
                    s.seen_at = Some(now);
                }
            };
            if let Err(error) = self.change(seen) {
                tracing::warn!("That a device was seen could not be noted: {error}");
            }
        }
        Some(id)
    }

    /// Pairs a device; gives its secret of 256 random bits. Devices that lapsed are taken off the list.
    ///
    /// # Errors
    /// [`PairedError::File`] where there are no random bytes or the file cannot be written.
    pub fn begin(&mut self, name: &str, now: Moment) -> Result<String, PairedError> {
        let mut bytes = [0_u8; 32];
        getrandom::fill(&mut bytes).map_err(|e| self.io(io::Error::other(e)))?;
        let secret = hex(&bytes);
        let name = Some(name.chars().take(LONGEST_NAME).collect());
        let session = Session { sha256: hash(&secret), paired_at: now, name, seen_at: Some(now) };
        self.change(|all| {
            all.retain(|s| s.good(now));
            all.sort_by_key(Session::seen);
            let surplus = (all.len() + 1).saturating_sub(MOST);
            all.drain(..surplus);
            all.push(session);
        })?;
        Ok(secret)
    }

    /// Ends one device; whether it was there.
    ///
    /// # Errors
    /// [`PairedError::File`] where the file cannot be written.
    pub fn end(&mut self, id: &str) -> Result<bool, PairedError> {
        let mut found = false;
        self.change(|all| {
            let before = all.len();
            all.retain(|s| s.id() != id);
            found = all.len() < before;
        })?;
        Ok(found)
    }

    /// Forgets all.
    ///
    /// # Errors
    /// [`PairedError::File`] where the file cannot be written.
    pub fn forget_all(&mut self) -> Result<(), PairedError> {
        self.change(Vec::clear)
    }

    fn io(&self, source: io::Error) -> PairedError {
        PairedError::File { file: self.file.clone(), source }
    }

    /// Reads the file anew where another process has changed it.
    fn catch_up(&mut self) {
        let Ok(now) = stamp(&self.file) else { return };
        if now == self.stamp {
            return;
        }
        match Self::read(&self.file) {
            Ok(new) => *self = new,
            Err(error) => {
                // Told once; until it is put right, who was paired stays so.
                tracing::error!("{error}. Until then the devices paired before stay so.");
                self.stamp = now;
            }
        }
    }

    fn change(&mut self, change: impl FnOnce(&mut Vec<Session>)) -> Result<(), PairedError> {
        // Two processes that change the file take turns; the lock goes with the handle.
        let turn = OpenOptions::new().create(true).append(true).open(self.file.with_extension("lock"));
        let turn = turn.map_err(|e| self.io(e))?;
        turn.lock().map_err(|e| self.io(e))?;
        self.catch_up();
        let mut all = self.all.clone();
        change(&mut all);
        if all != self.all {
            replace(&self.file, &all).map_err(|e| self.io(e))?;
            self.stamp = stamp(&self.file).map_err(|e| self.io(e))?;
            self.all = all;
        }
        Ok(())
    }
}

fn replace(file: &Path, all: &[Session]) -> io::Result<()> {
    let new = file.with_extension("new");
    // One left behind may be open to others; made anew it is not.
    match std::fs::remove_file(&new) {
        Err(e) if e.kind() != ErrorKind::NotFound => return Err(e),
        _ => {}
    }
    let mut options = OpenOptions::new();
    options.write(true).create_new(true);
    #[cfg(unix)]
    std::os::unix::fs::OpenOptionsExt::mode(&mut options, 0o600);
    let mut out = options.open(&new)?;
    out.write_all(&serde_json::to_vec_pretty(all)?)?;
    out.sync_all()?;
    std::fs::rename(&new, file)
}

/// Shuts a file that others could read, such as one brought back from a copy.
fn for_its_owner_alone(file: &Path) -> io::Result<()> {
    #[cfg(unix)]
    {
        use std::os::unix::fs::PermissionsExt;
        let open = File::open(file)?;
        let mode = open.metadata()?.permissions().mode();
        if mode & 0o077 != 0 {
            tracing::warn!("{} could be read by others on this machine; now only by its owner.", file.display());
            open.set_permissions(PermissionsExt::from_mode(0o600))?;
        }
    }
    Ok(())
}

fn stamp(file: &Path) -> io::Result<Stamp> {
    match std::fs::metadata(file) {
        Ok(meta) => Ok(Some((meta.modified()?, meta.len()))),
        Err(e) if e.kind() == ErrorKind::NotFound => Ok(None),
        Err(e) => Err(e),
    }
}

fn hash(secret: &str) -> String {
    hex(&Sha256::digest(secret.as_bytes()))
}

fn hex(bytes: &[u8]) -> String {
    bytes.iter().map(|b| format!("{b:02x}")).collect()
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;

    fn noon() -> Moment {
        Moment::clamped(1_800_000_000_000)
    }

    fn days(n: u32) -> Moment {
        noon().plus_seconds(f64::from(n) * 86_400.0)
    }

    #[test]
    fn a_paired_device_is_known_after_a_restart_and_its_secret_is_not_in_the_file() {
        let dir = tempfile::tempdir().unwrap();
        let file = dir.path().join("paired.json");
        let secret = Sessions::read(&file).unwrap().begin("Ann's phone", noon()).unwrap();
        assert_eq!(secret.len(), 64);
        let mut again = Sessions::read(&file).unwrap();
        assert!(again.knows(&secret, noon()).is_some());
        assert!(again.knows("", noon()).is_none() && again.knows(&secret[1..], noon()).is_none());
        assert!(!std::fs::read_to_string(&file).unwrap().contains(&secret));
        again.forget_all().unwrap();
        assert!(Sessions::read(&file).unwrap().knows(&secret, noon()).is_none());
    }

    #[test]
    fn a_device_lapses_when_it_was_not_seen_for_long_and_a_year_after_pairing() {
        let dir = tempfile::tempdir().unwrap();
        let file = dir.path().join("paired.json");
        let mut all = Sessions::read(&file).unwrap();
        let (idle, used) = (all.begin("idle", noon()).unwrap(), all.begin("used", noon()).unwrap());
        assert!(all.knows(&used, days(100)).is_some());
        let mut all = Sessions::read(&file).unwrap();
        assert!(all.knows(&idle, days(IDLE_DAYS)).is_none());
        assert!(all.knows(&used, days(IDLE_DAYS)).is_some(), "it was seen since, and that was kept");
        assert_eq!(all.devices(days(IDLE_DAYS)).iter().map(|d| d.name.as_str()).collect::<Vec<_>>(), ["used"]);
        assert!(all.knows(&used, days(330)).is_some() && all.knows(&used, days(400)).is_none());
    }

    #[test]
    fn one_device_is_ended_also_by_another_process() {
        let dir = tempfile::tempdir().unwrap();
        let file = dir.path().join("paired.json");
        let mut served = Sessions::read(&file).unwrap();
        let (a, b) = (served.begin("a", noon()).unwrap(), served.begin("b", noon()).unwrap());
        let mut command = Sessions::read(&file).unwrap();
        let id = command.devices(noon()).iter().find(|d| d.name == "a").unwrap().id.clone();
        assert!(command.end(&id).unwrap() && !command.end(&id).unwrap());
        assert!(served.knows(&a, noon()).is_none() && served.knows(&b, noon()).is_some());
    }

    #[test]
    fn a_file_of_before_devices_had_names_is_read_and_a_damaged_one_is_named_with_the_remedy() {
        let dir = tempfile::tempdir().unwrap();
        let file = dir.path().join("paired.json");
        let old = format!(r#"[{{"sha256":"{}","paired_at":"2027-01-15T08:00:00Z"}}]"#, hash("secret"));
        std::fs::write(&file, old).unwrap();
        let mut all = Sessions::read(&file).unwrap();
        assert!(all.knows("secret", noon()).is_some());
        for damaged in ["", "{", "[{\"sha256\":1}]", "\0\0\0"] {
            std::fs::write(&file, damaged).unwrap();
            let said = Sessions::read(&file).err().unwrap().to_string();
            assert!(said.contains("paired.json") && said.contains("line") && said.contains("delete it"), "{said}");
        }
        assert!(all.knows("secret", noon()).is_some(), "a notebook that runs keeps to what it knew");
    }

    #[cfg(unix)]
    #[test]
    fn only_its_owner_may_read_the_file() {
        use std::os::unix::fs::PermissionsExt;
        let dir = tempfile::tempdir().unwrap();
        let file = dir.path().join("paired.json");
        std::fs::write(file.with_extension("new"), "left behind").unwrap();
        Sessions::read(&file).unwrap().begin("a", noon()).unwrap();
        let mode = || std::fs::metadata(&file).unwrap().permissions().mode() & 0o777;
        assert_eq!(mode(), 0o600);
        std::fs::set_permissions(&file, PermissionsExt::from_mode(0o644)).unwrap();
        Sessions::read(&file).unwrap();
        assert_eq!(mode(), 0o600);
    }
}
