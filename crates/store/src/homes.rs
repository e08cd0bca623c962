//! Whose events come in. A notebook is one household's; another one's events are taken in only where a person says so.

use crate::error::StoreError;
use crate::store::Store;
use sayso_model::{HomeId, Kind};
use std::collections::{BTreeMap, BTreeSet};

/// What to do with events of a household that the notebook does not hold yet.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Default)]
pub enum Others {
    /// Leave them out; an empty notebook takes whoever comes.
    #[default]
    Refuse,
    /// Take them in, for good: the notebook then holds several households.
    TakeIn,
}

/// What a household has in a file.
#[derive(Clone, PartialEq, Eq, Debug, Default)]
pub struct Share {
    /// Its name, where the file or the notebook says it.
    pub name: Option<String>,
    /// Its events: all of a backup, or the new ones of an import.
    pub events: usize,
    /// Whether taking them in would bring a household that the notebook does not hold.
    pub other: bool,
}

/// Shares by household.
pub type Shares = BTreeMap<HomeId, Share>;

/// The households of `shares` that would be brought, in words, with counts.
pub(crate) fn in_words(shares: &Shares) -> String {
    let told = shares.iter().filter(|(_, s)| s.other).map(|(id, s)| {
        let name = s.name.as_deref().unwrap_or("without a name");
        format!("{name} ({id}): {} {}", s.events, if s.events == 1 { "event" } else { "events" })
    });
    told.collect::<Vec<_>>().join("; ")
}

/// The name a household card gives, from its JSON.
pub(crate) fn named_by(row_kind: &str, json: &str) -> Option<String> {
    if Kind::named(row_kind) != Some(Kind::HomeCard) {
        return None;
    }
    let card: serde_json::Value = serde_json::from_str(json).ok()?;
    card.get("body")?.get("name")?.as_str().map(str::to_owned)
}

impl Store {
    /// Marks the households that the notebook does not hold. An empty one holds none, and takes whoever comes.
    pub(crate) async fn mark_others(&self, shares: &mut Shares) -> Result<(), StoreError> {
        let here: BTreeSet<HomeId> = self.homes().await?.into_iter().collect();
        for (id, share) in shares.iter_mut() {
            share.other = !here.is_empty() && !here.contains(id);
            if share.name.is_none() && here.contains(id) {
                share.name = self.story(*id).await?.home().map(|card| card.name.to_string());
            }
        }
        Ok(())
    }
}
