//! Secrets: drawn, shown once, kept only as hashes.
//!
//! A secret is 128 or 256 bits from the operating system's generator. Guessing one is hopeless whatever the hash, so a plain
//! SHA-256 is enough; slow hashes such as Argon2 are for passwords, which people choose and which this crate does not have. A
//! secret is looked up by its hash: how long that takes tells of hashes, not of secrets.

use sha2::{Digest, Sha256};
use std::fmt;
use subtle::ConstantTimeEq;

/// Where secrets come from.
pub trait Secrets {
    /// Fills with bytes that nobody can guess.
    fn fill(&mut self, bytes: &mut [u8]);
}

/// The operating system's generator.
#[derive(Clone, Copy, Default, Debug)]
pub struct OsSecrets;

impl Secrets for OsSecrets {
    /// # Panics
    /// Where the operating system has no random bytes: nothing safe can be done then.
    #[allow(clippy::expect_used)]
    fn fill(&mut self, bytes: &mut [u8]) {
        getrandom::fill(bytes).expect("the operating system gives random bytes");
    }
}

/// A secret as its owner holds it: in a link, a cookie or a recovery code. Never stored, never logged.
#[derive(Clone)]
pub struct Secret(String);

/// What is kept of a secret.
#[derive(Clone, Copy)]
pub struct SecretHash([u8; 32]);

/// Most characters that are read of what may be a secret.
const MOST: usize = 200;

impl Secret {
    /// 256 bits, as 64 characters, for links and cookies.
    pub fn long(secrets: &mut impl Secrets) -> Self {
        let mut bytes = [0; 32];
        secrets.fill(&mut bytes);
        Self(hex(&bytes))
    }

    /// 128 bits, as eight groups of four characters, to be written on paper.
    pub fn for_paper(secrets: &mut impl Secrets) -> Self {
        let mut bytes = [0; 16];
        secrets.fill(&mut bytes);
        let plain: Vec<char> = hex(&bytes).chars().collect();
        Self(plain.chunks(4).map(String::from_iter).collect::<Vec<_>>().join("-"))
    }

    /// What someone handed in. Spaces, hyphens and upper case do not count, so that paper can be typed in.
    #[must_use]
    pub fn typed(text: &str) -> Self {
        Self(text.chars().take(MOST).collect())
    }

    /// The text, to be put into a link, a cookie or onto a page once.
    #[must_use]
    pub fn reveal(&self) -> &str {
        &self.0
    }

    /// What is kept of it.
    #[must_use]
    pub fn hash(&self) -> SecretHash {
        let plain = self.0.chars().filter(|c| !c.is_whitespace() && *c != '-').map(|c| c.to_ascii_lowercase());
        SecretHash(Sha256::digest(plain.collect::<String>()).into())
    }
}

impl fmt::Debug for Secret {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("Secret")
    }
}

impl fmt::Debug for SecretHash {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("SecretHash")
    }
}

impl SecretHash {
    /// The hash of something that only has to be found again, such as an address in a count of attempts.
    #[must_use]
    pub fn of(text: &str) -> Self {
        Self(Sha256::digest(text).into())
    }

    /// Its bytes.
    #[must_use]
    pub const fn bytes(&self) -> &[u8; 32] {
        &self.0
    }
}

impl PartialEq for SecretHash {
    fn eq(&self, other: &Self) -> bool {
        self.0.ct_eq(&other.0).into()
    }
}

impl Eq for SecretHash {}

fn hex(bytes: &[u8]) -> String {
    bytes.iter().map(|b| format!("{b:02x}")).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    struct Count(u8);

    impl Secrets for Count {
        fn fill(&mut self, bytes: &mut [u8]) {
            for b in bytes {
                *b = self.0;
                self.0 = self.0.wrapping_add(1);
            }
        }
    }

    #[test]
    fn a_code_from_paper_is_found_however_it_is_typed() {
        let code = Secret::for_paper(&mut Count(0));
        assert_eq!(code.reveal(), "0001-0203-0405-0607-0809-0a0b-0c0d-0e0f");
        assert_eq!(Secret::typed(" 00010203 0405-0607 0809 0A0B 0C0D 0E0F").hash(), code.hash());
        assert_ne!(Secret::typed("0001").hash(), code.hash());
    }

    #[test]
    fn a_secret_is_not_told_by_debug_and_drawn_anew_each_time() {
        let secret = Secret::long(&mut OsSecrets);
        assert_eq!((secret.reveal().len(), format!("{secret:?}").as_str()), (64, "Secret"));
        assert!(!format!("{:?}", secret.hash()).contains(&secret.reveal()[..4]));
        assert_ne!(secret.hash(), Secret::long(&mut OsSecrets).hash());
    }
}
