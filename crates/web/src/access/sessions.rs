//! Paired devices. Only hashes of their secrets are kept, in one file, so that a restart keeps phones paired.

use sayso_model::Moment;
use serde::{Deserialize, Serialize};
use sha2::{Digest, Sha256};
use std::io::{ErrorKind, Write};
use std::path::{Path, PathBuf};
use subtle::ConstantTimeEq;

/// A device that was not paired anew for this long must pair again.
const GOOD_FOR_S: f64 = 400.0 * 86_400.0;
/// The oldest is forgotten beyond this many.
const MOST: usize = 100;

#[derive(Clone, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Session {
    sha256: String,
    paired_at: Moment,
}

/// The paired devices.
pub struct Sessions {
    file: PathBuf,
    all: Vec<Session>,
}

impl Sessions {
    /// Those in the file; none where there is no file.
    pub fn read(file: &Path) -> std::io::Result<Self> {
        let all = match std::fs::read(file) {
            Ok(bytes) => serde_json::from_slice(&bytes).map_err(|e| {
                let what = "the list of paired devices is damaged; move the file away, and pair each phone again";
                std::io::Error::new(ErrorKind::InvalidData, format!("{}: {what} ({e})", file.display()))
            })?,
            Err(e) if e.kind() == ErrorKind::NotFound => Vec::new(),
            Err(e) => return Err(e),
        };
        Ok(Self { file: file.to_owned(), all })
    }

    /// How many there are.
    pub const fn len(&self) -> usize {
        self.all.len()
    }

    /// Whether a device with this secret is paired.
    pub fn knows(&self, secret: &str, now: Moment) -> bool {
        let hash = hash(secret);
        self.all
            .iter()
            .filter(|s| now.seconds_since(s.paired_at) < GOOD_FOR_S)
            .fold(false, |found, s| found | bool::from(s.sha256.as_bytes().ct_eq(hash.as_bytes())))
    }

    /// Pairs a device; gives its secret of 256 random bits.
    pub fn begin(&mut self, now: Moment) -> std::io::Result<String> {
        let mut bytes = [0_u8; 32];
        getrandom::fill(&mut bytes).map_err(std::io::Error::other)?;
        let secret = hex(&bytes);
        let mut all = self.all.clone();
        all.push(Session { sha256: hash(&secret), paired_at: now });
        let surplus = all.len().saturating_sub(MOST);
        all.drain(..surplus);
        self.replace(all)?;
        Ok(secret)
    }

    /// Forgets all.
    pub fn forget_all(&mut self) -> std::io::Result<()> {
        self.replace(Vec::new())
    }

    fn replace(&mut self, all: Vec<Session>) -> std::io::Result<()> {
        let new = self.file.with_extension("new");
        let mut options = std::fs::OpenOptions::new();
        options.write(true).create(true).truncate(true);
        #[cfg(unix)]
        std::os::unix::fs::OpenOptionsExt::mode(&mut options, 0o600);
        let mut file = options.open(&new)?;
        file.write_all(&serde_json::to_vec(&all)?)?;
        file.sync_all()?;
        std::fs::rename(&new, &self.file)?;
        self.all = all;
        Ok(())
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

    #[test]
    fn a_paired_device_is_known_after_a_restart_and_its_secret_is_not_in_the_file() {
        let dir = tempfile::tempdir().unwrap();
        let file = dir.path().join("paired.json");
        let now = Moment::clamped(1_800_000_000_000);
        let secret = Sessions::read(&file).unwrap().begin(now).unwrap();
        assert_eq!(secret.len(), 64);
        let again = Sessions::read(&file).unwrap();
        assert!(again.knows(&secret, now));
        assert!(!again.knows("", now) && !again.knows(&secret[1..], now));
        assert!(!again.knows(&secret, now.plus_seconds(GOOD_FOR_S)));
        assert!(!std::fs::read_to_string(&file).unwrap().contains(&secret));
        std::fs::write(&file, "[{").unwrap();
        let told = Sessions::read(&file).err().unwrap().to_string();
        assert!(told.contains("paired.json") && told.contains("pair each phone again"), "{told}");
        let mut again = again;
        again.forget_all().unwrap();
        assert!(!Sessions::read(&file).unwrap().knows(&secret, now));
    }
}
