//! A notebook opened.

use crate::keep::{NotKept, Pen, keep};
use sayso_model::{Event, HomeCard, HomeId, Label, Moment, Story, WordCard, WordId};
use sayso_store::{Store, StoreError};
use std::collections::BTreeMap;
use std::path::{Path, PathBuf};
use std::sync::Arc;
use uuid::Uuid;

/// Why a notebook was not opened.
#[derive(Debug, thiserror::Error)]
#[non_exhaustive]
pub enum NoNotebook {
    /// There is none in the folder, or an empty one.
    #[error("{} holds no home yet", _0.display())]
    None(PathBuf),
    /// It cannot be read.
    #[error(transparent)]
    Store(#[from] StoreError),
}

/// Opens the store of a notebook that must be there: a folder mistyped is not made. Reads nothing of it yet, so that a
/// damaged one can still be checked and copied. `saying` is told what is waited for.
///
/// # Errors
/// [`NoNotebook`].
pub async fn existing(dir: &Path, saying: &(dyn Fn(&str) + Sync)) -> Result<Store, NoNotebook> {
    if !Store::is_in(dir) {
        return Err(NoNotebook::None(dir.to_owned()));
    }
    Ok(Store::open_saying(dir, saying).await?)
}

/// An open notebook with a home in it, as it stood when it was opened.
pub struct Notebook {
    /// Its log.
    pub store: Store,
    /// Whose it is.
    pub home: HomeId,
    /// What has happened.
    pub story: Arc<Story>,
    /// How many events of kinds that a later version wrote; kept, but not among what has happened.
    pub not_understood: BTreeMap<String, usize>,
}

impl Notebook {
    /// Opens a notebook that must be there; `saying` is told what is waited for.
    ///
    /// # Errors
    /// [`NoNotebook`].
    pub async fn open(dir: &Path, saying: &(dyn Fn(&str) + Sync)) -> Result<Self, NoNotebook> {
        let store = existing(dir, saying).await?;
        let home = store.home().await?.ok_or_else(|| NoNotebook::None(dir.to_owned()))?;
        let story = store.story(home).await?;
        let not_understood = store.not_understood(home).await?;
        Ok(Self { store, home, story, not_understood })
    }

    /// Begins a notebook in a folder that holds none: a home, nobody in it yet.
    ///
    /// # Errors
    /// [`NoNotebook`].
    pub async fn begin(
        dir: &Path,
        card: HomeCard,
        now: Moment,
        saying: &(dyn Fn(&str) + Sync),
    ) -> Result<Self, NoNotebook> {
        let store = Store::open_saying(dir, saying).await?;
        let home = HomeId(Uuid::now_v7());
        let pen = Pen { home, animal: None, person: None, zone: card.zone.clone(), now };
        store.append(vec![pen.event(card)]).await?;
        store.close().await?;
        Self::open(dir, saying).await
    }

    /// For notes of nobody named about no animal.
    #[must_use]
    pub fn pen(&self, now: Moment) -> Pen {
        Pen { home: self.home, animal: None, person: None, zone: self.story.zone(), now }
    }

    /// A new word of everyone's, of which nothing is known but what its button says; in the log, not in this story.
    ///
    /// # Errors
    /// [`NotKept`].
    pub async fn add_word(&self, says: Label, now: Moment) -> Result<WordCard, NotKept> {
        let card = WordCard::new(WordId(Uuid::now_v7()), says);
        self.keep(vec![self.pen(now).event(card.clone())]).await?;
        Ok(card)
    }

    /// Puts events into the log, as [`keep`].
    ///
    /// # Errors
    /// [`NotKept`].
    pub async fn keep(&self, events: Vec<Event>) -> Result<(), NotKept> {
        keep(&self.store, &self.story, events).await
    }
}
