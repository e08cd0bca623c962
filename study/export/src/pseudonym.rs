//! What a home is called in a study: HMAC-SHA256 (RFC 2104) of its id under a key that is kept apart.

use crate::dataset::hex;
use hmac::{Hmac, Mac};
use sayso_model::HomeId;
use sha2::{Digest, Sha256};
use std::path::{Path, PathBuf};

/// Fewest bytes of a key: as long as the hash, by RFC 2104.
const LEAST: usize = 32;

/// Why a key cannot be used.
#[derive(Debug, thiserror::Error)]
pub enum KeyFault {
    /// Too short.
    #[error("a key must have {LEAST} bytes or more of good randomness, not {0}")]
    Short(usize),
    /// It lies with the tables.
    #[error("the key {0} lies in the folder of the tables: whoever gets them would get it too")]
    WithTheTables(PathBuf),
    /// Its file cannot be read.
    #[error("{path}: {why}")]
    Io {
        /// Which.
        path: PathBuf,
        /// Why.
        why: std::io::Error,
    },
}

/// The key of a study.
pub struct Key(Hmac<Sha256>);

impl std::fmt::Debug for Key {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str("Key(..)")
    }
}

/// What a home is called. Sorts at random, for who has not the key.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Debug)]
pub struct StudyId([u8; 32]);

/// Whether a path, links of it followed, lies in the folder of the tables: whoever gets them must not get what goes with a key.
pub(crate) fn lies_within(real: &Path, tables: &Path) -> bool {
    tables.canonicalize().is_ok_and(|tables| real.starts_with(tables))
}

/// A short mark of these homes in this order, by which two sets of homes are told apart and from which nobody is.
pub(crate) fn mark<'a>(homes: impl Iterator<Item = &'a StudyId>) -> String {
    let mut hash = Sha256::new();
    homes.for_each(|id| hash.update(id.bytes()));
    hex(&hash.finalize()[..8])
}

impl Key {
    /// A key of these bytes.
    ///
    /// # Errors
    /// [`KeyFault::Short`].
    pub fn new(bytes: &[u8]) -> Result<Self, KeyFault> {
        let short = || KeyFault::Short(bytes.len());
        if bytes.len() < LEAST {
            return Err(short());
        }
        Hmac::new_from_slice(bytes).map(Self).map_err(|_| short())
    }

    /// The key in a file, which must not lie within `tables`.
    ///
    /// # Errors
    /// [`KeyFault`].
    pub fn read(path: &Path, tables: &Path) -> Result<Self, KeyFault> {
        let io = |why| KeyFault::Io { path: path.to_owned(), why };
        let real = path.canonicalize().map_err(io)?;
        if lies_within(&real, tables) {
            return Err(KeyFault::WithTheTables(path.to_owned()));
        }
        Self::new(&std::fs::read(real).map_err(io)?)
    }

    /// What a home is called under this key.
    #[must_use]
    pub fn study_id(&self, home: HomeId) -> StudyId {
        let mut mac = self.0.clone();
        mac.update(b"sayso study household\0");
        mac.update(home.0.as_bytes());
        StudyId(mac.finalize().into_bytes().into())
    }
}

impl StudyId {
    /// One of 64 hexadecimal digits; none where they are none.
    #[must_use]
    pub fn read(digits: &str) -> Option<Self> {
        let (pairs, rest) = digits.as_bytes().as_chunks::<2>();
        let digit = |byte: u8| char::from(byte).to_digit(16).filter(|_| !byte.is_ascii_uppercase());
        let byte = |[high, low]: [u8; 2]| u8::try_from(digit(high)? * 16 + digit(low)?).ok();
        let bytes = pairs.iter().copied().map(byte).collect::<Option<Vec<u8>>>()?;
        rest.is_empty().then_some(Self(bytes.try_into().ok()?))
    }

    /// Its bytes.
    #[must_use]
    pub const fn bytes(&self) -> &[u8; 32] {
        &self.0
    }
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;

    #[test]
    fn another_key_gives_another_name_and_the_same_the_same() {
        let home: HomeId = serde_json::from_str("\"0195a0a0-0000-7000-8000-000000000001\"").unwrap();
        let (one, two) = (Key::new(&[1; 32]).unwrap(), Key::new(&[2; 32]).unwrap());
        assert_eq!(one.study_id(home), one.study_id(home));
        assert_ne!(one.study_id(home), two.study_id(home));
        assert!(matches!(Key::new(&[1; 31]), Err(KeyFault::Short(31))));
        let text = hex(one.study_id(home).bytes());
        assert_eq!(StudyId::read(&text), Some(one.study_id(home)));
        for none in [&text[1..], &text[2..], &format!("{text}00"), &text.replace(|c: char| c.is_ascii_digit(), "x")] {
            assert_eq!(StudyId::read(none), None, "{none}");
        }
    }

    #[test]
    fn a_key_with_the_tables_is_refused() {
        let dir = tempfile::tempdir().unwrap();
        let key = dir.path().join("key");
        std::fs::write(&key, [7; 32]).unwrap();
        assert!(matches!(Key::read(&key, dir.path()), Err(KeyFault::WithTheTables(_))));
        assert!(Key::read(&key, &dir.path().join("tables")).is_ok());
    }
}
