//! Ids for what a file leaves without one. They follow from the content alone, so that the same file, read twice or
//! on two devices, means the same events. UUID version 8 (RFC 9562): our own layout.

use super::earlier;
use sayso_model::{Event, HomeId};
use sha2::{Digest, Sha256};
use std::collections::HashMap;
use uuid::Uuid;

/// Counts equal rows of a file: the first, second, third of the same content are different events.
#[derive(Default)]
pub(super) struct Occurrences(HashMap<[u8; 32], u32>);

impl Occurrences {
    /// The id of an event that came without one. Begins with the time it happened, like version 7, so that ids
    /// keep sorting by time.
    ///
    /// Zone, source and time of recording do not count: they are filled in by the reader where a file lacks them.
    pub(super) fn id(&mut self, event: &Event) -> Result<Uuid, serde_json::Error> {
        let mut hash = Sha256::new();
        hash.update(b"sayso event 1");
        let told = (event.home, event.animal, event.person, event.happened_at, &event.body);
        hash.update(earlier::json(&serde_json::to_string(&told)?));
        let content: [u8; 32] = hash.finalize().into();
        let count = self.0.entry(content).or_default();
        let mut hash = Sha256::new();
        hash.update(content);
        hash.update(count.to_be_bytes());
        *count += 1;
        let mut bytes = first_16(&hash.finalize().into());
        let millis = u64::try_from(event.happened_at.millis()).unwrap_or(0).to_be_bytes();
        bytes[..6].copy_from_slice(&millis[2..]);
        Ok(Uuid::new_v8(bytes))
    }
}

/// The id of something that a file calls only by a label, such as a session "Sunday 1" or a new word "walk".
#[must_use]
pub fn labelled(home: HomeId, type_name: &str, label: &str) -> Uuid {
    let mut hash = Sha256::new();
    hash.update(b"sayso label 1");
    hash.update(home.0.as_bytes());
    hash.update(earlier::type_name(type_name).as_bytes());
    hash.update([0]);
    hash.update(label.trim().to_lowercase().as_bytes());
    Uuid::new_v8(first_16(&hash.finalize().into()))
}

fn first_16(hash: &[u8; 32]) -> [u8; 16] {
    let mut bytes = [0; 16];
    bytes.copy_from_slice(&hash[..16]);
    bytes
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;

    // Written down once. If this fails, files imported before would be imported a second time.
    #[test]
    fn ids_made_from_content_never_change() {
        let json = r#"{"id":"00000000-0000-0000-0000-000000000000","home":"00000000-0000-0000-0000-0000000000a0",
            "happened_at":"2026-03-01T10:00:00.000Z","zone":"UTC","recorded_at":"2026-03-01T10:00:00.000Z",
            "source":"import","body":{"kind":"remark","text":"hello"}}"#;
        let event: Event = serde_json::from_str(json).unwrap();
        let mut seen = Occurrences::default();
        let (first, second) = (seen.id(&event).unwrap(), seen.id(&event).unwrap());
        assert_eq!(first.to_string(), "019ca8d7-2d00-856e-ac2b-9fc93370a992");
        assert_eq!(second.to_string(), "019ca8d7-2d00-8fc3-a1c8-a75635fcf7a2");
        let later = Event { zone: sayso_model::Zone::new("Asia/Tokyo").unwrap(), ..event };
        assert_eq!(Occurrences::default().id(&later).unwrap(), first, "the zone does not count");
        let label = labelled(later.home, "WordId", " Walk ");
        assert_eq!(label, labelled(later.home, "WordId", "walk"));
        assert_ne!(label, labelled(later.home, "RewardId", "walk"));
    }
}
