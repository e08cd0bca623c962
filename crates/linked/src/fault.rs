//! What can go wrong with a link, and what hinders it for a while.

use crate::address::NotAnAddress;
use crate::letters::Stop;
use crate::wire::{NoWire, WireError};
use sayso_store::StoreError;
use serde::{Deserialize, Serialize};
use std::path::PathBuf;

/// What can go wrong with a link.
#[derive(Debug, thiserror::Error)]
#[non_exhaustive]
pub enum LinkError {
    /// The notebook.
    #[error(transparent)]
    Store(#[from] StoreError),
    /// The server's address.
    #[error(transparent)]
    Address(#[from] NotAnAddress),
    /// The machine's certificates.
    #[error(transparent)]
    NoWire(#[from] NoWire),
    /// What the notebook keeps of its link is not readable.
    #[error("{} does not hold a link ({why}). Delete it: the notebook is unlinked then, and nothing in it is lost", file.display())]
    Damaged {
        /// The file.
        file: PathBuf,
        /// Line, column and what is wrong.
        why: String,
    },
    /// The notebook is linked already.
    #[error("this notebook is linked already, to {0}; unlink it first")]
    Linked(String),
    /// The notebook is not linked, or was unlinked just now.
    #[error("this notebook is not linked")]
    NotLinked,
    /// A code that is unknown, used or too old.
    #[error("the code is not valid, or not any more: make a new one on the server")]
    Code,
    /// Notebook and server hold records of different homes.
    #[error("the home on the server holds other records than this notebook; two homes are not mixed")]
    OtherHome,
    /// Too many tries.
    #[error("too many tries; wait a quarter of an hour")]
    TooOften,
    /// The server takes nothing any more.
    #[error("the server no longer takes it: {}", .0.name())]
    Stopped(Stop),
    /// The server is not reached, or cannot just now.
    #[error("the server is not reached: {0}")]
    Away(String),
    /// The server answered otherwise than one of this program does.
    #[error("the server answered otherwise than expected: {0}")]
    Strange(String),
    /// It answered with a status that says no, and with nothing that this program would say beside it.
    #[error("the server answered otherwise than expected: {0}")]
    Answered(u16),
}

impl LinkError {
    /// Which kind of hindrance it is, where it may pass by.
    #[must_use]
    pub const fn hinders(&self) -> Hinders {
        match self {
            Self::Away(_) | Self::NoWire(_) | Self::TooOften => Hinders::Away,
            Self::Store(_) | Self::Damaged { .. } | Self::NotLinked => Hinders::Here,
            _ => Hinders::Strange,
        }
    }
}

impl From<WireError> for LinkError {
    fn from(why: WireError) -> Self {
        Self::Away(why.to_string())
    }
}

/// What hinders for now.
#[derive(Clone, PartialEq, Eq, Serialize, Deserialize, Debug)]
pub struct Hindrance {
    /// Which.
    pub kind: Hinders,
    /// What was said of it.
    pub said: String,
}

/// Kinds of it.
#[derive(Clone, Copy, PartialEq, Eq, Serialize, Deserialize, Debug)]
#[serde(rename_all = "snake_case")]
pub enum Hinders {
    /// The server is not reached.
    Away,
    /// It answered otherwise than a server of this program does.
    Strange,
    /// This notebook cannot be read or written.
    Here,
}

impl Hinders {
    /// Its name, as messages choose by it.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::Away => "away",
            Self::Strange => "strange",
            Self::Here => "here",
        }
    }
}
