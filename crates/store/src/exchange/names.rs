//! Animals, people, words and rewards by the names a home uses for them.

use super::wanted::Wanted;
use sayso_model::{HomeId, Story};
use serde_json::Value;
use std::collections::{BTreeMap, BTreeSet, HashMap};
use uuid::Uuid;

/// The kinds of things that have names: type of the id, kind of card, the card's own id field and its name field.
pub(super) const NAMED: [(&str, &str, &str, &str); 4] = [
    ("AnimalId", "animal_card", "animal", "name"),
    ("PersonId", "person_card", "person", "name"),
    ("WordId", "word_card", "word", "says"),
    ("RewardId", "reward_card", "reward", "name"),
];

/// How many names a message lists.
const MOST_LISTED: usize = 20;

#[derive(Default)]
struct Entry {
    spelling: String,
    /// Ids of this name, and whether still in use.
    ids: BTreeMap<Uuid, bool>,
}

/// Names by home and type of id.
#[derive(Default)]
pub(super) struct Names(HashMap<(HomeId, &'static str), BTreeMap<String, Entry>>);

impl Names {
    /// Takes in what a home has named.
    pub(super) fn learn_story(&mut self, home: HomeId, story: &Story) {
        for (id, card) in story.animals() {
            self.learn(home, "AnimalId", card.name.as_str(), id.0, card.active);
        }
        for (id, card) in story.people() {
            self.learn(home, "PersonId", card.name.as_str(), id.0, card.active);
        }
        for (id, card) in story.words() {
            self.learn(home, "WordId", card.says.as_str(), id.0, card.active);
        }
        for (id, card) in story.rewards() {
            self.learn(home, "RewardId", card.name.as_str(), id.0, card.active);
        }
    }

    /// Takes in a card of the file itself. One without an id gets the id known for its name, or a new one.
    pub(super) fn learn_card(&mut self, home: HomeId, body: &Value) {
        let text = |field: &str| body.get(field).and_then(Value::as_str).map(str::trim).filter(|s| !s.is_empty());
        let Some((type_name, _, own, name)) = NAMED.into_iter().find(|(_, kind, _, _)| text("kind") == Some(kind))
        else {
            return;
        };
        let Some(label) = text(own).or_else(|| text(name)) else { return };
        let active = body.get("active").and_then(Value::as_bool).unwrap_or(true);
        let id = match label.parse::<Uuid>() {
            Ok(id) => id,
            Err(_) => match self.find(home, type_name, label) {
                Ok(known) => known,
                Err(_) => crate::exchange::derive::labelled(home, type_name, label),
            },
        };
        self.learn(home, type_name, label, id, active);
        if let Some(name) = text(name) {
            self.learn(home, type_name, name, id, active);
        }
    }

    fn learn(&mut self, home: HomeId, type_name: &'static str, name: &str, id: Uuid, active: bool) {
        let entry = self.0.entry((home, type_name)).or_default().entry(name.to_lowercase()).or_default();
        name.clone_into(&mut entry.spelling);
        entry.ids.insert(id, active);
    }

    /// The one thing of a type that is in use; none where there are several.
    pub(super) fn only(&self, home: HomeId, type_name: &'static str) -> Option<Uuid> {
        let entries = self.0.get(&(home, type_name))?.values();
        let ids: BTreeSet<Uuid> =
            entries.flat_map(|e| &e.ids).filter(|(_, active)| **active).map(|(id, _)| *id).collect();
        ids.first().copied().filter(|_| ids.len() == 1)
    }

    /// The id of a name, or what should stand there instead.
    pub(super) fn find(&self, home: HomeId, type_name: &str, name: &str) -> Result<Uuid, Wanted> {
        let type_name = NAMED.into_iter().map(|n| n.0).find(|t| *t == type_name).unwrap_or_default();
        let table = self.0.get(&(home, type_name));
        let Some(entry) = table.and_then(|t| t.get(&name.trim().to_lowercase())) else {
            let mut known: Vec<&str> = table
                .into_iter()
                .flatten()
                .map(|(_, e)| e.spelling.as_str())
                .filter(|s| s.parse::<Uuid>().is_err())
                .collect();
            let more = known.len().saturating_sub(MOST_LISTED);
            known.truncate(MOST_LISTED);
            let known: Vec<String> = known.into_iter().map(str::to_owned).collect();
            return Err(if known.is_empty() { Wanted::NoNameYet } else { Wanted::Name { known, more } });
        };
        // Of several, the one still in use.
        let in_use: Vec<Uuid> = entry.ids.iter().filter(|(_, active)| **active).map(|(id, _)| *id).collect();
        match (in_use.as_slice(), entry.ids.len()) {
            ([one], _) => Ok(*one),
            ([], 1) => entry.ids.keys().next().copied().ok_or(Wanted::Id),
            _ => {
                let ids: Vec<String> = entry.ids.keys().take(MOST_LISTED).map(Uuid::to_string).collect();
                Err(Wanted::OneOfIds { count: entry.ids.len(), ids })
            }
        }
    }
}
