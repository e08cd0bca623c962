//! What a log gives to another log of the same household, and takes from it: a notebook at home and a home on a server, each
//! with a home's id of its own. A record keeps its own id and everything else; only whose it is, is written anew.

use crate::appended::{self, Appended, MOST_EVENT_BYTES};
use crate::damage::{DamagedRow, RowDamage};
use crate::error::StoreError;
use crate::store::Store;
use crate::written::{Revision, Written};
use sayso_model::{Event, EventId, Fault, HomeId, Problems};
use serde_json::Value;

/// What a home's log holds after a place in it.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Given {
    /// The place up to which it was looked through.
    pub up_to: Revision,
    /// Id and JSON of each event, in order of arrival.
    pub events: Vec<(EventId, String)>,
    /// Whether more stands behind that.
    pub more: bool,
}

/// How much is given at once.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub struct AtOnce {
    /// Most events.
    pub events: usize,
    /// Most bytes of their JSON; one event is given whatever it takes.
    pub bytes: usize,
}

/// What came of one event that another log gave.
#[derive(Clone, PartialEq, Debug)]
pub struct Taken {
    /// Its id; none where it is no event.
    pub id: Option<EventId>,
    /// The name of its kind; empty where it is no event.
    pub kind: String,
    /// What came of it.
    pub came: Appended,
}

/// How an event stands in a log already.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Stands {
    /// Nothing stands under its id.
    Not,
    /// It does, the same.
    Same,
    /// Another one does.
    Other,
}

impl Store {
    /// What the log of `home` holds after a place, each as an event of the home `to`. Those that this version does not understand
    /// are among them, as they are.
    ///
    /// # Errors
    /// As [`Store::events`].
    pub async fn given(&self, home: HomeId, after: Revision, to: HomeId, most: AtOnce) -> Result<Given, StoreError> {
        let limit = most.events.clamp(1, 10_000);
        let rows = self.rows(after, i64::try_from(limit).unwrap_or(i64::MAX)).await?;
        let (full, mut bytes) = (rows.len() == limit, 0);
        let mut given = Given { up_to: after, events: Vec::new(), more: full };
        for row in rows {
            if row.home == home.0 {
                let Some(json) = as_of(&row.content, home, to) else {
                    let (id, seq) = (EventId(row.id), row.seq);
                    let damage = row.named_fault().unwrap_or(DamagedRow { id, seq, what: RowDamage::NoEvent });
                    return Err(self.log.corrupt(damage));
                };
                bytes += json.len();
                if bytes > most.bytes && !given.events.is_empty() {
                    return Ok(Given { more: true, ..given });
                }
                given.events.push((EventId(row.id), json));
            }
            given.up_to = Revision(row.seq);
        }
        Ok(given)
    }

    /// Stores what the log of the home `from` gave, as events of `into`; one outcome each, in their order. An event that this
    /// version does not understand is kept as it is, as from a backup.
    ///
    /// # Errors
    /// As [`Store::append`].
    pub async fn taken(&self, given: &[&str], from: HomeId, into: HomeId) -> Result<Vec<Taken>, StoreError> {
        let mut all = Vec::with_capacity(given.len());
        let mut sound = Vec::new();
        for json in given {
            let (id, kind, read) = read(json, from, into);
            let place = read.map(|written| {
                sound.push(written);
                sound.len() - 1
            });
            all.push((id, kind, place));
        }
        let came = if sound.is_empty() { Vec::new() } else { self.append_written(sound).await? };
        let told = all.into_iter().map(|(id, kind, place)| {
            let came = match place {
                Ok(place) => came.get(place).cloned().ok_or(StoreError::Closed)?,
                Err(problems) => Appended::Refused(problems),
            };
            Ok(Taken { id, kind, came })
        });
        told.collect()
    }

    /// How events stand here already, in their order.
    ///
    /// # Errors
    /// [`StoreError`] where the log cannot be read.
    pub async fn standing(&self, events: &[Event]) -> Result<Vec<Stands>, StoreError> {
        let ids: Vec<EventId> = events.iter().map(|event| event.id).collect();
        let stored = self.log.contents(&ids).await?;
        let stands = |event: &Event| match stored.get(&event.id) {
            None => Stands::Not,
            Some(json) if Written::of(event).is_ok_and(|written| written.is(json)) => Stands::Same,
            Some(_) => Stands::Other,
        };
        Ok(events.iter().map(stands).collect())
    }

    /// Whether the log has any of these.
    ///
    /// # Errors
    /// As [`Store::standing`].
    pub async fn knows_any(&self, ids: &[EventId]) -> Result<bool, StoreError> {
        Ok(!self.log.contents(ids).await?.is_empty())
    }

    /// The id of the event at a place, by which two logs are told apart that have grown equally far.
    ///
    /// # Errors
    /// As [`Store::revision`].
    pub async fn id_at(&self, place: Revision) -> Result<Option<EventId>, StoreError> {
        let found = self.log.landmarks(&[place.0]).await?;
        Ok(found.into_iter().find(|(at, _)| *at == place.0).map(|(_, id)| EventId(id)))
    }

    /// How many events of a home stand after a place.
    ///
    /// # Errors
    /// As [`Store::revision`].
    pub async fn count_after(&self, home: HomeId, place: Revision) -> Result<u64, StoreError> {
        self.log.count_after(home, place).await
    }
}

/// An event's JSON as one of another home; none where it is no event of this one.
fn as_of(json: &str, home: HomeId, to: HomeId) -> Option<String> {
    if home == to {
        return Some(json.to_owned());
    }
    if let Ok(event) = serde_json::from_str::<Event>(json) {
        return (event.home == home).then(|| serde_json::to_string(&Event { home: to, ..event }).ok())?;
    }
    let mut event: Value = serde_json::from_str(json).ok()?;
    let object = event.as_object_mut()?;
    let field = if object.contains_key("home") { "home" } else { "household" };
    let whose = object.get_mut(field)?;
    if whose.as_str() != Some(home.to_string().as_str()) {
        return None;
    }
    *whose = Value::String(to.to_string());
    serde_json::to_string(&event).ok()
}

/// An event of the home `from`, to be written as one of `into`: its id, its kind, and what there is to write or what is wrong.
fn read(json: &str, from: HomeId, into: HomeId) -> (Option<EventId>, String, Result<Written, Problems>) {
    let unread = || Problems::one("event", Fault::NotWritten);
    let Some(says) = Written::unread(json) else { return (None, String::new(), Err(unread())) };
    let (id, kind) = (Some(says.id), says.kind.clone());
    if says.home != from {
        return (id, kind, Err(Problems::one("home", Fault::OtherHome(says.home))));
    }
    let Some(json) = as_of(json, from, into) else { return (id, kind, Err(unread())) };
    let written = match serde_json::from_str::<Event>(&json) {
        Ok(event) => appended::write_down(&event),
        Err(_) if json.len() > MOST_EVENT_BYTES => {
            Err(Problems::one("event", Fault::TooLong { bytes: json.len(), most: MOST_EVENT_BYTES }))
        }
        Err(_) => Written::unread(&json).ok_or_else(unread),
    };
    (id, kind, written)
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;
    use uuid::Uuid;

    #[test]
    fn only_whose_it_is_is_written_anew_also_of_what_is_not_understood() {
        let (here, there) = (HomeId(Uuid::from_u128(1)), HomeId(Uuid::from_u128(2)));
        let of =
            |home: HomeId| format!(r#"{{"body":{{"kind":"hum","x":[1.5]}},"home":"{home}","id":"{}"}}"#, Uuid::nil());
        assert_eq!(as_of(&of(here), here, there).unwrap(), of(there));
        assert_eq!(as_of(&of(here), here, here).unwrap(), of(here), "letter for letter");
        assert_eq!(as_of(&of(there), here, there), None, "another home's is not taken along");
        let earlier = of(here).replace("\"home\"", "\"household\"");
        assert!(as_of(&earlier, here, there).unwrap().contains(&there.to_string()));
        let (id, kind, read) = read(&of(there), there, here);
        assert_eq!((id, kind.as_str(), read.unwrap().home), (Some(EventId(Uuid::nil())), "hum", here));
    }
}
