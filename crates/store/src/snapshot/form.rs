//! Events as bytes, many at once. Ids and zones that come again and again stand once in front.

use borsh::io::{Error, ErrorKind, Read, Result, Write};
use borsh::{BorshDeserialize, BorshSerialize};
use sayso_model::{AnimalId, Body, Event, EventId, HomeId, Moment, PersonId, Source, Zone};
use std::sync::Arc;

/// The form of these bytes. Raise it whenever the same event would be written otherwise; a snapshot of another form is
/// not read.
pub(super) const FORM: u32 = 12;

/// What events of a block have in common.
#[derive(Default, BorshSerialize, BorshDeserialize)]
struct Tables {
    homes: Vec<HomeId>,
    animals: Vec<AnimalId>,
    people: Vec<PersonId>,
    zones: Vec<Zone>,
}

/// The place of a value in its table, from 1; 0 stands for none.
fn place<T: PartialEq + Clone>(table: &mut Vec<T>, value: Option<&T>) -> Result<u16> {
    let Some(value) = value else { return Ok(0) };
    let found = table.iter().position(|known| known == value).unwrap_or_else(|| {
        table.push(value.clone());
        table.len() - 1
    });
    u16::try_from(found + 1).map_err(|_| Error::new(ErrorKind::InvalidInput, "too many different values in a block"))
}

fn value<T: Clone>(table: &[T], place: u16) -> Result<Option<T>> {
    match usize::from(place).checked_sub(1) {
        None => Ok(None),
        Some(i) => table.get(i).cloned().map(Some).ok_or_else(|| wrong("a value that is not in its table")),
    }
}

pub(super) fn wrong(what: &'static str) -> Error {
    Error::new(ErrorKind::InvalidData, what)
}

/// Events as bytes.
pub(super) fn write<'a>(events: impl Iterator<Item = &'a Event>) -> Result<Vec<u8>> {
    let (mut tables, mut rest) = (Tables::default(), Vec::new());
    for event in events {
        event.id.serialize(&mut rest)?;
        place(&mut tables.homes, Some(&event.home))?.serialize(&mut rest)?;
        place(&mut tables.animals, event.animal.as_ref())?.serialize(&mut rest)?;
        place(&mut tables.people, event.person.as_ref())?.serialize(&mut rest)?;
        place(&mut tables.zones, Some(&event.zone))?.serialize(&mut rest)?;
        event.happened_at.serialize(&mut rest)?;
        event.recorded_at.serialize(&mut rest)?;
        event.source.serialize(&mut rest)?;
        event.body.serialize(&mut rest)?;
    }
    let mut bytes = borsh::to_vec(&tables)?;
    bytes.write_all(&rest)?;
    Ok(bytes)
}

/// The events of such bytes, all of them.
pub(super) fn read(mut bytes: &[u8], count: usize) -> Result<Vec<Arc<Event>>> {
    let from = &mut bytes;
    let tables = Tables::deserialize_reader(from)?;
    // The least an event takes; a count that cannot be true takes no memory.
    let mut events = Vec::with_capacity(count.min(from.len() / 32));
    for _ in 0..count {
        events.push(Arc::new(event(from, &tables)?));
    }
    if from.is_empty() { Ok(events) } else { Err(wrong("more bytes than events")) }
}

fn event(from: &mut impl Read, tables: &Tables) -> Result<Event> {
    let missing = || wrong("an event without home or zone");
    Ok(Event {
        id: EventId::deserialize_reader(from)?,
        home: value(&tables.homes, u16::deserialize_reader(from)?)?.ok_or_else(missing)?,
        animal: value(&tables.animals, u16::deserialize_reader(from)?)?,
        person: value(&tables.people, u16::deserialize_reader(from)?)?,
        zone: value(&tables.zones, u16::deserialize_reader(from)?)?.ok_or_else(missing)?,
        happened_at: Moment::deserialize_reader(from)?,
        recorded_at: Moment::deserialize_reader(from)?,
        source: Source::deserialize_reader(from)?,
        body: Body::deserialize_reader(from)?,
    })
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;
    use sha2::{Digest, Sha256};

    #[test]
    fn every_kind_comes_back_as_it_was() {
        let events = sayso_sim::samples();
        let bytes = write(events.iter()).unwrap();
        let back = read(&bytes, events.len()).unwrap();
        assert!(back.iter().map(Arc::as_ref).eq(&events));
        assert!(read(&bytes, events.len() - 1).is_err(), "bytes are left");
        assert!(read(&bytes[..bytes.len() - 1], events.len()).is_err(), "cut short");
    }

    #[test]
    fn the_form_is_the_one_its_number_says() {
        let bytes = write(sayso_sim::samples().iter()).unwrap();
        let digest: String = Sha256::digest(&bytes).iter().take(8).map(|b| format!("{b:02x}")).collect();
        // Another digest: events are written otherwise than before. Raise `FORM`, then note the digest here.
        assert_eq!((FORM, digest.as_str()), (12, "475a0883cad9e1a0"));
    }
}
