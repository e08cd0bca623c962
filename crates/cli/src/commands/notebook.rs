//! A notebook opened for commands that write.

use super::serve::now;
use crate::error::CliError;
use sayso_model::{Body, Event, EventId, HomeId, Source, Story};
use sayso_store::{Appended, Store};
use std::path::Path;
use std::sync::Arc;
use uuid::Uuid;

/// Opens the store in a folder, made where missing; says on standard error what is waited for.
pub async fn open_store(dir: &Path) -> Result<Store, CliError> {
    Ok(Store::open_saying(dir, &|what| eprintln!("{what}")).await?)
}

/// Opens the store of a notebook that must be there: a folder mistyped is not made. Reads nothing of it yet, so that a
/// damaged one can still be checked and copied.
pub async fn existing_store(dir: &Path) -> Result<Store, CliError> {
    if dir.join("sayso.db").exists() { open_store(dir).await } else { Err(none_in(dir)) }
}

fn none_in(dir: &Path) -> CliError {
    let dir = dir.display();
    CliError::said(format!("{dir} holds no household yet; run `sayso serve --data {dir}` and set one up"))
}

/// An open notebook that has a household.
pub struct Notebook {
    pub store: Store,
    pub home: HomeId,
    pub story: Arc<Story>,
}

impl Notebook {
    /// Opens a notebook that must be there.
    pub async fn open(dir: &Path) -> Result<Self, CliError> {
        let store = existing_store(dir).await?;
        let home = store.home().await?.ok_or_else(|| none_in(dir))?;
        let story = store.story(home).await?;
        for (kind, n) in store.not_understood(home).await? {
            eprintln!(
                "{n} events of kind {kind} are not understood: a later version wrote them. They are kept, not counted here."
            );
        }
        Ok(Self { store, home, story })
    }

    /// An event of now about the household.
    pub fn event(&self, body: impl Into<Body>) -> Event {
        let now = now();
        Event {
            id: EventId(Uuid::now_v7()),
            home: self.home,
            animal: None,
            person: None,
            happened_at: now,
            zone: self.story.zone(),
            recorded_at: now,
            source: Source::Tap,
            body: body.into(),
        }
    }

    /// Stores events, all of which must be taken; cards dated so that they count.
    pub async fn keep(&self, events: Vec<Event>) -> Result<(), CliError> {
        let events = events.into_iter().map(|e| self.story.in_time(e)).collect::<Result<Vec<_>, _>>();
        let events = events.map_err(|late| CliError::said(format!("{} {late}", late.field())))?;
        for outcome in self.store.append(events).await? {
            match outcome {
                Appended::New | Appended::Duplicate => {}
                Appended::Conflict => return Err(CliError::said("an event of this id is in the notebook already")),
                Appended::Refused(problems) => return Err(CliError::said(problems.to_string())),
            }
        }
        Ok(())
    }
}
