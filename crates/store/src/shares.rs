//! What homes have in a file, and what to do with homes that are not here.

use sayso_model::{HomeId, Kind};
use std::collections::BTreeMap;

/// What to do where a file would make the notebook hold another home beside its own, or begin with several.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Default)]
pub enum Others {
    /// Take nothing of the file. An empty notebook takes the one home that comes.
    #[default]
    Refuse,
    /// Take it in, for good: the notebook then holds several homes.
    TakeIn,
}

/// What a home has in a file.
#[derive(Clone, PartialEq, Eq, Debug, Default)]
pub struct Share {
    /// Its name, where the file or the notebook says it.
    pub name: Option<String>,
    /// Its events: all of a backup, or the new ones of an import.
    pub events: usize,
    /// Whether they come in only where somebody says so: the notebook does not hold this home, and would hold several.
    pub other: bool,
}

/// Shares by home.
pub type Shares = BTreeMap<HomeId, Share>;

/// The homes that come in only where somebody says so.
pub(crate) fn others(shares: &Shares) -> Shares {
    shares.iter().filter(|(_, share)| share.other).map(|(id, share)| (*id, share.clone())).collect()
}

/// The homes of `shares` that come in only where somebody says so, in words, with counts.
pub(crate) fn in_words(shares: &Shares) -> String {
    let told = shares.iter().filter(|(_, s)| s.other).map(|(id, s)| {
        let name = s.name.as_deref().unwrap_or("without a name");
        format!("{name} ({id}): {} {}", s.events, if s.events == 1 { "event" } else { "events" })
    });
    told.collect::<Vec<_>>().join("; ")
}

/// The name a home's card gives, from its JSON.
pub(crate) fn named_by(row_kind: &str, json: &str) -> Option<String> {
    if Kind::named(row_kind) != Some(Kind::HomeCard) {
        return None;
    }
    let card: serde_json::Value = serde_json::from_str(json).ok()?;
    card.get("body")?.get("name")?.as_str().map(str::to_owned)
}
