//! E-mail addresses as they are kept.

use crate::error::Error;
use std::fmt;

/// An e-mail address in lower case, so that one is one however it is typed.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Email(String);

impl Email {
    /// Reads one.
    ///
    /// # Errors
    /// [`Error::Email`] where it is none.
    pub fn new(text: &str) -> Result<Self, Error> {
        let text = text.trim().to_lowercase();
        // 254 characters are the most a path in SMTP may have (RFC 5321, errata 1690).
        if text.len() > 254 {
            return Err(Error::Email);
        }
        text.parse::<lettre::Address>().map(|_| Self(text)).map_err(|_| Error::Email)
    }

    /// The address.
    #[must_use]
    pub fn as_str(&self) -> &str {
        &self.0
    }
}

impl fmt::Display for Email {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.0)
    }
}
