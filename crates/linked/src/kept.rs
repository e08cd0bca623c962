//! What a notebook keeps of its link, in files of its folder, each for its owner alone and in no backup and no export: what people
//! decided (`link.json`, which holds the key), and how far the two have got (`link-progress.json`). The first is the truth: without
//! it nothing is sent, in whichever process. What the server saw being written by whom it names (`link-witnessed.json`) outlasts them.

use crate::address::Address;
use crate::fault::{Hindrance, LinkError};
use crate::letters::{About, Came, Spot, Stop, Why};
use sayso_model::{EventId, HomeId, Moment};
use sayso_store::{Revision, Store, StoreError, keep_private, read_private};
use serde::de::DeserializeOwned;
use serde::{Deserialize, Serialize};
use std::collections::{BTreeMap, BTreeSet};
use std::path::{Path, PathBuf};
use uuid::Uuid;

/// The file of what people decided.
pub const LINK_FILE: &str = "link.json";
/// The file of how far the two have got.
pub const PROGRESS_FILE: &str = "link-progress.json";
/// The file of what servers saw being written by whom it names. It stays when the link ends: what was seen was seen.
pub const WITNESSED_FILE: &str = "link-witnessed.json";
/// Events told one by one of those that do not stand on the other side; the others are counted.
const MOST_TOLD: usize = 50;

/// A link, as people decided on it.
#[derive(Clone, PartialEq, Serialize, Deserialize)]
pub struct Link {
    /// Which: another one is another link, though it leads to the same home.
    pub id: Uuid,
    /// Where the server is.
    pub server: String,
    /// By which the server knows this notebook. Never told, never logged.
    pub key: String,
    /// The home's id in this notebook.
    pub home_here: HomeId,
    /// The home's id on the server.
    pub home_there: HomeId,
    /// What may go there; none until somebody at home said so, and then nothing goes.
    pub sends: Option<Sends>,
}

impl std::fmt::Debug for Link {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.debug_struct("Link").field("id", &self.id).field("server", &self.server).finish_non_exhaustive()
    }
}

impl Link {
    /// Where the server is.
    ///
    /// # Errors
    /// [`LinkError::Address`] where somebody wrote into the file.
    pub fn address(&self) -> Result<Address, LinkError> {
        Ok(Address::new(&self.server)?)
    }
}

/// What may go to the server, besides all that is written in the notebook.
#[derive(Clone, Copy, PartialEq, Eq, Serialize, Deserialize, Debug)]
pub struct Sends {
    /// Pictures, both ways.
    pub pictures: bool,
    /// Recordings of words, both ways. Sound around presses never goes.
    pub recordings: bool,
}

/// A place in a log, and the event there.
pub type Place = Spot;

/// Events that do not stand on the other side.
#[derive(Clone, PartialEq, Eq, Default, Serialize, Deserialize, Debug)]
pub struct Held {
    /// How many, by why.
    pub counts: BTreeMap<Why, u64>,
    /// The first of them.
    pub told: Vec<HeldEvent>,
}

/// One of them.
#[derive(Clone, PartialEq, Eq, Serialize, Deserialize, Debug)]
pub struct HeldEvent {
    /// Its id; none where it could not be read.
    pub id: Option<EventId>,
    /// The name of its kind, as far as it is known here.
    pub kind: String,
    /// Why.
    pub why: Why,
}

impl Held {
    pub(crate) fn add(&mut self, id: Option<EventId>, kind: &str, why: Why) {
        *self.counts.entry(why).or_default() += 1;
        if self.told.len() < MOST_TOLD {
            self.told.push(HeldEvent { id, kind: kind.to_owned(), why });
        }
    }

    /// How many.
    #[must_use]
    pub fn total(&self) -> u64 {
        self.counts.values().sum()
    }
}

/// How far the two have got.
#[derive(Clone, PartialEq, Eq, Default, Serialize, Deserialize, Debug)]
pub struct Progress {
    /// Of which link.
    pub link: Uuid,
    /// The place up to which this log was sent.
    pub here: Spot,
    /// The place up to which the server's log was read.
    pub there: Spot,
    /// When the two last agreed.
    pub agreed_at: Option<Moment>,
    /// What hinders, in English, for whoever looks after the machine; none where nothing does.
    pub hinders: Option<Hindrance>,
    /// Tries that failed since one did not.
    pub failures: u32,
    /// The server takes nothing any more.
    pub stopped: Option<Stop>,
    /// Events of this log that do not stand in the server's.
    pub held: Held,
    /// Events of the server's log that do not stand in this one.
    pub lacks: Held,
    /// When all is gone through again because something was held.
    pub again_at: Option<Moment>,
    /// Events that went there, and that came from there, since the link was made.
    pub sent: u64,
    /// The same the other way.
    pub received: u64,
    /// Recordings and pictures that went there or came from there.
    pub media: u64,
    /// What cards named when recordings and pictures were compared last, as a hash.
    pub media_of: Option<String>,
    /// Those of them that neither side had.
    #[serde(default)]
    pub missing: BTreeSet<String>,
    /// What the home is called there, as told with the key.
    #[serde(default)]
    pub called: String,
    /// What the server said about the home; none until it said something.
    #[serde(default)]
    pub about: Option<About>,
}

impl Progress {
    /// The beginning of a link.
    pub(crate) fn of(link: &Link) -> Self {
        Self { link: link.id, ..Self::default() }
    }

    /// What the home is called there; empty where nothing is written there yet.
    #[must_use]
    pub fn name(&self) -> &str {
        self.about.as_ref().map_or(&self.called, |about| &about.name)
    }

    /// All is gone through once more.
    pub(crate) fn begin_anew(&mut self) {
        self.here = Spot::default();
        self.there = Spot::default();
        self.held = Held::default();
        self.lacks = Held::default();
        self.again_at = None;
        self.media_of = None;
    }

    /// What came of an event that was sent.
    pub(crate) fn went(&mut self, id: EventId, kind: &str, came: Came) {
        match came {
            Came::New => self.sent += 1,
            Came::Known => {}
            Came::Out(why) => self.held.add(Some(id), kind, why),
        }
    }
}

/// How a notebook's link stands.
#[derive(Clone, PartialEq, Debug)]
pub struct State {
    /// The link.
    pub link: Link,
    /// How far the two have got.
    pub progress: Progress,
    /// How many events of the home wait to be sent.
    pub waits: u64,
}

fn path(dir: &Path, file: &str) -> PathBuf {
    dir.join(file)
}

fn read<T: DeserializeOwned>(file: &Path) -> Result<Option<T>, LinkError> {
    let Some(bytes) = read_private(file)? else { return Ok(None) };
    let damaged = |why: serde_json::Error| LinkError::Damaged { file: file.to_owned(), why: why.to_string() };
    serde_json::from_slice(&bytes).map(Some).map_err(damaged)
}

fn write<T: Serialize>(file: &Path, what: &T) -> Result<(), LinkError> {
    let bytes = serde_json::to_vec_pretty(what).map_err(|why| LinkError::Strange(why.to_string()))?;
    Ok(keep_private(file, &bytes)?)
}

/// The link of the notebook in a folder, if it has one.
///
/// # Errors
/// [`LinkError::Damaged`] naming the file; [`LinkError::Store`] where it cannot be read.
pub fn link(dir: &Path) -> Result<Option<Link>, LinkError> {
    read(&path(dir, LINK_FILE))
}

pub(crate) fn keep_link(dir: &Path, link: &Link) -> Result<(), LinkError> {
    write(&path(dir, LINK_FILE), link)
}

/// How far a link has got: from the beginning where nothing is kept of it. It is only a place to go on from, so one that cannot be read
/// is begun anew.
///
/// # Errors
/// [`LinkError::Store`] where the file cannot be read.
pub fn progress(dir: &Path, link: &Link) -> Result<Progress, LinkError> {
    let kept: Option<Progress> = match read(&path(dir, PROGRESS_FILE)) {
        Ok(kept) => kept,
        Err(LinkError::Damaged { file, why }) => {
            tracing::warn!(
                "{} cannot be read ({why}); notebook and server are compared from the beginning.",
                file.display()
            );
            None
        }
        Err(other) => return Err(other),
    };
    Ok(kept.filter(|kept| kept.link == link.id).unwrap_or_else(|| Progress::of(link)))
}

pub(crate) fn keep_progress(dir: &Path, progress: &Progress) -> Result<(), LinkError> {
    write(&path(dir, PROGRESS_FILE), progress)
}

/// What servers saw being written by whom it names.
///
/// # Errors
/// [`LinkError::Damaged`] naming the file; [`LinkError::Store`] where it cannot be read.
pub fn witnessed(dir: &Path) -> Result<BTreeSet<EventId>, LinkError> {
    Ok(read(&path(dir, WITNESSED_FILE))?.unwrap_or_default())
}

/// Adds what a server saw. A file that cannot be read is begun anew by what the server says, which is all it saw of the home.
pub(crate) fn keep_witnessed(dir: &Path, seen: &[EventId]) -> Result<(), LinkError> {
    let before = match witnessed(dir) {
        Err(LinkError::Damaged { file, why }) => {
            tracing::warn!("{} cannot be read ({why}) and is written anew.", file.display());
            None
        }
        other => Some(other?),
    };
    let mut all = before.clone().unwrap_or_default();
    all.extend(seen);
    if before.as_ref() == Some(&all) {
        return Ok(());
    }
    write(&path(dir, WITNESSED_FILE), &all)
}

/// Takes the link and how far it got away, the key first.
pub(crate) fn remove(dir: &Path) -> Result<(), LinkError> {
    for file in [LINK_FILE, PROGRESS_FILE] {
        let file = path(dir, file);
        match std::fs::remove_file(&file) {
            Err(why) if why.kind() != std::io::ErrorKind::NotFound => {
                return Err(StoreError::Io { path: file, source: std::sync::Arc::new(why) }.into());
            }
            _ => {}
        }
    }
    Ok(())
}

/// How the link of a notebook stands; none where it has none.
///
/// # Errors
/// As [`link`]; where the notebook cannot be read.
pub async fn state(store: &Store) -> Result<Option<State>, LinkError> {
    let Some(link) = link(store.dir())? else { return Ok(None) };
    let progress = progress(store.dir(), &link)?;
    let waits = store.count_after(link.home_here, Revision(progress.here.at)).await?;
    Ok(Some(State { link, progress, waits }))
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;

    fn made() -> Link {
        Link {
            id: Uuid::from_u128(1),
            server: "https://sayso.example".into(),
            key: "0f".repeat(32),
            home_here: HomeId(Uuid::from_u128(2)),
            home_there: HomeId(Uuid::from_u128(3)),
            sends: None,
        }
    }

    #[test]
    fn the_key_is_its_owners_alone_and_told_by_no_debug() {
        let dir = tempfile::tempdir().unwrap();
        keep_link(dir.path(), &made()).unwrap();
        assert_eq!(link(dir.path()).unwrap(), Some(made()));
        assert!(!format!("{:?}", made()).contains("0f0f"));
        #[cfg(unix)]
        {
            use std::os::unix::fs::PermissionsExt;
            let file = dir.path().join(LINK_FILE);
            let mode = || std::fs::metadata(&file).unwrap().permissions().mode() & 0o777;
            assert_eq!(mode(), 0o600);
            std::fs::set_permissions(&file, PermissionsExt::from_mode(0o644)).unwrap();
            link(dir.path()).unwrap();
            assert_eq!(mode(), 0o600, "one brought back from a copy is closed");
        }
    }

    #[test]
    fn another_link_begins_at_the_beginning_and_so_does_one_whose_place_cannot_be_read() {
        let dir = tempfile::tempdir().unwrap();
        let far = Progress { sent: 7, ..Progress::of(&made()) };
        keep_progress(dir.path(), &far).unwrap();
        assert_eq!(progress(dir.path(), &made()).unwrap(), far);
        let other = Link { id: Uuid::from_u128(9), ..made() };
        assert_eq!(progress(dir.path(), &other).unwrap().sent, 0);
        std::fs::write(dir.path().join(PROGRESS_FILE), "{").unwrap();
        assert_eq!(progress(dir.path(), &made()).unwrap().sent, 0);
        std::fs::write(dir.path().join(LINK_FILE), "{").unwrap();
        assert!(matches!(link(dir.path()), Err(LinkError::Damaged { .. })), "what was decided is not guessed");
    }

    #[test]
    fn what_a_server_saw_being_written_outlasts_the_link() {
        let dir = tempfile::tempdir().unwrap();
        let [one, two] = [1, 2].map(|n| EventId(Uuid::from_u128(n)));
        assert!(witnessed(dir.path()).unwrap().is_empty());
        keep_link(dir.path(), &made()).unwrap();
        keep_witnessed(dir.path(), &[one]).unwrap();
        keep_witnessed(dir.path(), &[two]).unwrap();
        remove(dir.path()).unwrap();
        assert_eq!(link(dir.path()).unwrap(), None);
        assert_eq!(witnessed(dir.path()).unwrap(), BTreeSet::from([one, two]));
        std::fs::write(dir.path().join(WITNESSED_FILE), "{").unwrap();
        assert!(matches!(witnessed(dir.path()), Err(LinkError::Damaged { .. })));
        keep_witnessed(dir.path(), &[two]).unwrap();
        assert_eq!(witnessed(dir.path()).unwrap(), BTreeSet::from([two]), "begun anew by what the server says");
    }

    #[test]
    fn what_is_held_is_counted_beyond_what_is_told() {
        let mut held = Held::default();
        (0..200).for_each(|_| held.add(None, "remark", Why::Ahead));
        assert_eq!((held.total(), held.told.len()), (200, MOST_TOLD));
    }
}
