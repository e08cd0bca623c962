//! Linking, saying yes to it, and unlinking.

use crate::address::Address;
use crate::fault::LinkError;
use crate::kept::{self, Link, Progress, Sends};
use crate::letters::{ABOUT, AsksForKey, END, GivesKey, KEY, MOST_KNOWN};
use crate::there::There;
use sayso_model::{EventId, HomeId};
use sayso_store::{AtOnce, Revision, Store, StoreError};
use uuid::Uuid;

/// A link that is asked for.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Asked {
    /// Where the server is.
    pub address: Address,
    /// The code that it showed.
    pub code: String,
    /// What the notebook is to be called in the server's list.
    pub name: String,
    /// The home that is linked, of a notebook that holds several; its own where left out.
    pub home: Option<HomeId>,
}

/// Exchanges a code for a key. Nothing else is sent, and nothing will be until somebody says yes ([`say_yes`]).
///
/// # Errors
/// [`LinkError`]: of a code, a home or a server that does not do, nothing is kept.
pub async fn begin(store: &Store, asked: Asked) -> Result<Link, LinkError> {
    if store.is_read_only() {
        let what = "it may only be read here".to_owned();
        return Err(StoreError::Unwritable { path: store.dir().to_owned(), what }.into());
    }
    if let Some(before) = kept::link(store.dir())? {
        return Err(LinkError::Linked(before.server));
    }
    let home = match asked.home {
        Some(home) => Some(home),
        None => store.home().await?,
    };
    let known = match home {
        Some(home) => first_events(store, home).await?,
        None => Vec::new(),
    };
    let letter = AsksForKey { code: asked.code, name: asked.name, home, known };
    let there = There::new(asked.address.clone(), None)?;
    let gives: GivesKey = there.post(KEY, &letter).await?;
    let link = Link {
        id: Uuid::now_v7(),
        server: asked.address.to_string(),
        key: gives.key,
        // Nothing is written here yet: what comes from there is written as it stands there.
        home_here: home.unwrap_or(gives.home),
        home_there: gives.home,
        sends: None,
    };
    let mut progress = Progress { called: gives.name, ..Progress::of(&link) };
    kept::keep_progress(store.dir(), &progress)?;
    kept::keep_link(store.dir(), &link)?;
    // Who sees something there is told before the yes. The code is used up and the link is kept by now, so a server that goes away
    // here hinders nothing.
    match there.known_by(link.key.clone()).get(ABOUT).await {
        Ok(about) => {
            progress.about = Some(about);
            kept::keep_progress(store.dir(), &progress)?;
        }
        Err(why) => tracing::warn!("The server did not say who sees something there: {why}"),
    }
    Ok(link)
}

/// The first events of a home, which a log that it moved into has, too.
async fn first_events(store: &Store, home: HomeId) -> Result<Vec<EventId>, LinkError> {
    let (mut found, mut after) = (Vec::new(), Revision(0));
    loop {
        let most = AtOnce { events: MOST_KNOWN, bytes: usize::MAX };
        let given = store.given(home, after, home, most).await?;
        found.extend(given.events.into_iter().map(|(id, _)| id));
        found.truncate(MOST_KNOWN);
        if found.len() == MOST_KNOWN || !given.more {
            return Ok(found);
        }
        after = given.up_to;
    }
}

/// Notes that somebody at home said yes to what goes there, or changes it.
///
/// # Errors
/// [`LinkError::NotLinked`]; where the file cannot be written.
pub fn say_yes(store: &Store, pictures: bool, recordings: bool) -> Result<(), LinkError> {
    let link = kept::link(store.dir())?.ok_or(LinkError::NotLinked)?;
    kept::keep_link(store.dir(), &Link { sends: Some(Sends { pictures, recordings }), ..link })
}

/// Goes through everything once more with the next turn, also where the server took nothing any more.
///
/// # Errors
/// As [`say_yes`].
pub fn again(store: &Store) -> Result<(), LinkError> {
    let link = kept::link(store.dir())?.ok_or(LinkError::NotLinked)?;
    let mut progress = kept::progress(store.dir(), &link)?;
    progress.begin_anew();
    (progress.stopped, progress.hinders, progress.failures) = (None, None, 0);
    kept::keep_progress(store.dir(), &progress)?;
    // Whoever serves looks at this file, and begins at once where it changed.
    kept::keep_link(store.dir(), &link)
}

/// What unlinking came to.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub struct Ended {
    /// Whether the server was told, so that it ends the key as well.
    pub told: bool,
    /// Records of this notebook that never went there.
    pub waited: u64,
}

/// Unlinks: from here on nothing is sent, whatever the server says.
///
/// # Errors
/// [`LinkError::NotLinked`]; where the files cannot be removed; where the log cannot be read, after it was unlinked.
pub async fn end(store: &Store) -> Result<Ended, LinkError> {
    let link = match kept::link(store.dir()) {
        Ok(link) => link.ok_or(LinkError::NotLinked)?,
        // What cannot be read is taken away; whom to tell is not known then.
        Err(LinkError::Damaged { .. }) => {
            kept::remove(store.dir())?;
            return Ok(Ended { told: false, waited: 0 });
        }
        Err(other) => return Err(other),
    };
    let here = Revision(kept::progress(store.dir(), &link)?.here.at);
    kept::remove(store.dir())?;
    let waited = store.count_after(link.home_here, here).await;
    let told = async {
        let there = There::new(link.address()?, Some(link.key.clone()))?;
        there.put(END, Vec::new()).await
    };
    let told = match tokio::time::timeout(std::time::Duration::from_secs(10), told).await {
        Ok(Ok(()) | Err(LinkError::Stopped(_))) => true,
        Ok(Err(why)) => {
            tracing::warn!("The notebook is unlinked; the server could not be told: {why}");
            false
        }
        Err(_) => false,
    };
    Ok(Ended { told, waited: waited? })
}
