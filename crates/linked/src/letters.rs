//! What notebook and server say to each other, as JSON. A field that one side does not know is passed over: they are not updated
//! on the same day.

use sayso_model::{EventId, HomeId};
use sayso_store::{Revision, Store, StoreError};
use serde::{Deserialize, Serialize};
use serde_json::value::RawValue;

/// Most events in one request or answer.
pub const MOST_EVENTS: usize = 500;
/// Bytes of events in one request or answer, where one event alone does not take more.
pub const MOST_BYTES: usize = 700 * 1024;
/// How many of its first events a notebook names, by which the server knows a home that moved in.
pub const MOST_KNOWN: usize = 64;

/// Where a code is exchanged for a key.
pub const KEY: &str = "/linked/key";
/// Events, read and written.
pub const EVENTS: &str = "/linked/events";
/// What a server says about the home.
pub const ABOUT: &str = "/linked/about";
/// Recordings and pictures: which there are; with a hash behind it, one of them.
pub const MEDIA: &str = "/linked/media";
/// Where a notebook says that it goes.
pub const END: &str = "/linked/end";

/// A code is to be exchanged.
#[derive(Serialize, Deserialize, Debug)]
pub struct AsksForKey {
    /// The code, once.
    pub code: String,
    /// What the notebook is to be called in the server's list.
    pub name: String,
    /// The home it is of; none while nothing is written in it.
    pub home: Option<HomeId>,
    /// Its first events, by which a home that moved in is known.
    pub known: Vec<EventId>,
}

/// The key.
#[derive(Serialize, Deserialize)]
pub struct GivesKey {
    /// The secret, told once.
    pub key: String,
    /// The home's id on the server.
    pub home: HomeId,
    /// What the home is called there; empty where nothing is written there yet.
    pub name: String,
}

/// Events in the server's log after a place.
#[derive(Serialize, Deserialize, Debug)]
pub struct GivesEvents {
    /// In order of arrival there.
    pub events: Vec<Box<RawValue>>,
    /// The place up to which this goes.
    pub up_to: Spot,
    /// Whether more stands behind that.
    pub more: bool,
    /// Whether the server does not know the place that was asked from, so that these are from the beginning: it was brought
    /// back from a copy.
    pub anew: bool,
}

/// A place in a log, and the event there: so that a log brought back from a copy is not taken for the one it was.
#[derive(Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize, Debug)]
pub struct Spot {
    /// How many stand up to here.
    pub at: i64,
    /// The event there; none at the beginning.
    pub is: Option<EventId>,
}

impl Spot {
    /// A place in a log.
    ///
    /// # Errors
    /// Where the log cannot be read.
    pub async fn of(log: &Store, at: Revision) -> Result<Self, StoreError> {
        Ok(Self { at: at.0, is: log.id_at(at).await? })
    }
}

/// Events for the server's log.
#[derive(Serialize, Deserialize, Debug)]
pub struct BringsEvents {
    /// As events of the home on the server.
    pub events: Vec<Box<RawValue>>,
}

/// What came of them.
#[derive(Serialize, Deserialize, Debug)]
pub struct Outcomes {
    /// One each, in their order.
    pub came: Vec<Came>,
    /// How far the server's log has grown.
    pub up_to: Spot,
}

/// What came of one event.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, Debug)]
#[serde(rename_all = "snake_case")]
pub enum Came {
    /// It stands in the log now.
    New,
    /// It stood there already, the same.
    Known,
    /// It does not stand there.
    Out(Why),
}

/// Why an event does not stand in the other log.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, Debug)]
#[serde(rename_all = "snake_case")]
pub enum Why {
    /// Another one stands under its id; each side keeps its own.
    Differs,
    /// Consent: that is given and taken back on the server itself, by a keeper.
    Consent,
    /// What a coach wrote, or who answered a coach: that is written on the server itself, under one's own account.
    Coach,
    /// It amends, or agrees to, something that does not stand there (yet).
    Lacks,
    /// It is dated too far ahead.
    Ahead,
    /// The other side does not know this kind of record, or a word in it.
    Unread,
    /// The other side's rules do not let it in.
    Unsound,
    /// It is another home's.
    OtherHome,
    /// Something that this version has no word for.
    #[serde(other)]
    Unknown,
}

impl Why {
    /// Every reason.
    pub const ALL: [Self; 9] = [
        Self::Differs,
        Self::Consent,
        Self::Coach,
        Self::Lacks,
        Self::Ahead,
        Self::Unread,
        Self::Unsound,
        Self::OtherHome,
        Self::Unknown,
    ];

    /// Its name, as messages choose by it.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::Differs => "differs",
            Self::Consent => "consent",
            Self::Coach => "coach",
            Self::Lacks => "lacks",
            Self::Ahead => "ahead",
            Self::Unread => "unread",
            Self::Unsound => "unsound",
            Self::OtherHome => "other_home",
            Self::Unknown => "unknown",
        }
    }
}

/// What the server says about the home.
#[derive(Clone, PartialEq, Eq, Default, Serialize, Deserialize, Debug)]
pub struct About {
    /// What it is called there.
    pub name: String,
    /// Coaches who can see something of it there at this moment.
    pub coaches: Vec<String>,
    /// Proposals and notes of coaches that the server saw being written by whom they name.
    pub witnessed: Vec<EventId>,
    /// How many records stand there.
    #[serde(default)]
    pub records: u64,
}

/// Recordings and pictures that the server holds of the home, by hash.
#[derive(Serialize, Deserialize, Debug)]
pub struct Media {
    /// 64 hexadecimal digits each.
    pub hashes: Vec<String>,
}

/// That a code is not exchanged. Told by its own name, so that no other program's "not found" is taken for it.
#[derive(Serialize, Deserialize, Debug)]
pub struct NoKey {
    /// Why.
    pub no_key: NoKeyFor,
}

/// Why a code is not exchanged.
#[derive(Clone, Copy, PartialEq, Eq, Serialize, Deserialize, Debug)]
#[serde(rename_all = "snake_case")]
pub enum NoKeyFor {
    /// It is unknown, used or too old.
    Code,
    /// The home there holds other records than the notebook.
    OtherHome,
}

/// That the server takes nothing from this notebook any more.
#[derive(Serialize, Deserialize, Debug)]
pub struct Stopped {
    /// Why.
    pub stopped: Stop,
}

/// Why a server takes nothing from a notebook any more.
#[derive(Clone, Copy, PartialEq, Eq, Serialize, Deserialize, Debug)]
#[serde(rename_all = "snake_case")]
pub enum Stop {
    /// The link was ended there, lapsed, or whoever made it keeps the home no more.
    Ended,
    /// The home left the server and was erased.
    Left,
}

impl Stop {
    /// Its name, as messages choose by it.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::Ended => "ended",
            Self::Left => "left",
        }
    }
}
