//! Heard presses into the log, each once however often its sound is heard.

use crate::vocabulary::Listened;
use sayso_listen::Detection;
use sayso_model::{
    Accident, AnimalId, Body, Event, EventId, HomeId, Moment, Press, PressedBy, Probability, Problems, Ratio, Session,
    SessionId, Source, Story, StreamId, WordId,
};
use sayso_store::{Appended, Store, StoreError};
use sha2::{Digest, Sha256};
use std::collections::BTreeMap;
use uuid::Uuid;

/// Heard presses of one word closer than this are one press: onsets may shift a little when a sound is heard again
/// with another recording or a later version.
const SAME_SOUND_S: f64 = 0.2;

/// A sound is never as certain as a tap, nor as a person's word on it.
const MOST_SURE: f64 = 0.9999;

/// Certainty under which a person is asked first whether a heard press sounded at all.
pub const UNSURE: f64 = sayso_listen::SURE;

/// Why heard presses were not logged.
#[derive(Debug, thiserror::Error)]
#[non_exhaustive]
pub enum NotLogged {
    /// An event the log does not take.
    #[error(transparent)]
    Refused(#[from] Problems),
    /// The notebook cannot be written.
    #[error(transparent)]
    Store(#[from] StoreError),
}

/// Writes heard presses into a notebook.
pub struct Diary {
    home: HomeId,
    animal: Option<AnimalId>,
    /// Heard presses known so far, withdrawn and corrected ones included: a person has judged those.
    before: BTreeMap<WordId, Vec<Moment>>,
}

impl Diary {
    /// For presses of this animal, or of none: sound does not tell whose press it was.
    #[must_use]
    pub fn new(story: &Story, home: HomeId, animal: Option<AnimalId>) -> Self {
        let mut before: BTreeMap<WordId, Vec<Moment>> = BTreeMap::new();
        for event in story.ledger().all() {
            if let (Source::Heard, Body::Press(press)) = (event.source, &event.body) {
                before.entry(press.word).or_default().push(event.happened_at);
            }
        }
        Self { home, animal, before }
    }

    /// Logs presses of a sound that began at `began`; for each its event, or none where it was in the log before,
    /// in order, those of words not listened for left out. `origin` names the sound, such as by its hash; `now` is when they are written down.
    ///
    /// # Errors
    /// [`NotLogged`]; what was sent with a refused event may be in the log.
    pub async fn keep(
        &mut self,
        store: &Store,
        words: &BTreeMap<String, Listened>,
        origin: &str,
        began: Moment,
        heard: &[Detection],
        now: Moment,
    ) -> Result<Vec<Option<Event>>, NotLogged> {
        let mut entries = Vec::new();
        if heard.is_empty() {
            return Ok(entries);
        }
        let story = store.story(self.home).await?;
        let zone = story.zone();
        let sessions = self.animal.map(|animal| story.sessions(animal)).unwrap_or_default();
        let stream = stream_of(origin);
        let event = |id: EventId, at: Moment, word: WordId, h: &Detection| Event {
            id,
            home: self.home,
            animal: self.animal,
            person: None,
            happened_at: at,
            zone: zone.clone(),
            recorded_at: now,
            source: Source::Heard,
            body: Press {
                word,
                // Also in a session: the animal may press while a person shows. A tap beside it tells who.
                by: PressedBy::Unknown,
                certainty: Probability::clamped(h.confidence.min(MOST_SURE)),
                accident: Accident::Unsure,
                place: None,
                speed: Ratio::new(h.speed).ok(),
                stream: Some(stream),
                session: session_at(&sessions, at),
            }
            .into(),
        };
        for h in heard {
            let Some(Listened { word, .. }) = words.get(&h.word) else { continue };
            let at = began.plus_seconds(h.onset_s);
            let id = heard_id(origin, h.onset_s, *word, at);
            let near = self.before.get(word).into_iter().flatten();
            let known = story.ledger().first(id).is_some()
                || near.into_iter().any(|m| m.seconds_since(at).abs() <= SAME_SOUND_S);
            entries.push((!known).then(|| event(id, at, *word, h)));
        }
        let new: Vec<Event> = entries.iter().flatten().cloned().collect();
        let mut outcomes = store.append(new).await?.into_iter();
        for entry in entries.iter_mut().filter(|e| e.is_some()) {
            match outcomes.next() {
                Some(Appended::New) => {
                    if let Some((word, at)) = entry.as_ref().and_then(|e| e.body.word().map(|w| (w, e.happened_at))) {
                        self.before.entry(word).or_default().push(at);
                    }
                }
                // Another process heard the same sound meanwhile, perhaps recorded a moment apart.
                Some(Appended::Duplicate | Appended::Conflict) => *entry = None,
                Some(Appended::Refused(problems)) => return Err(problems.into()),
                None => return Err(StoreError::Closed.into()),
            }
        }
        Ok(entries)
    }
}

/// The session that was going on at a moment.
fn session_at(sessions: &[Session<'_>], at: Moment) -> Option<SessionId> {
    let running = |s: &&Session<'_>| at >= s.start.at() && s.end.map_or_else(|| s.open(at), |end| at <= end.at());
    sessions.iter().rev().find(running).map(|s| s.id())
}

/// One sound is one stream, also where it is heard again.
fn stream_of(origin: &str) -> StreamId {
    let hash = Sha256::new().chain_update(b"sayso stream 1").chain_update(origin.as_bytes()).finalize();
    let mut bytes = [0; 16];
    bytes.copy_from_slice(&hash[..16]);
    StreamId(Uuid::new_v8(bytes))
}

/// The id of a heard press follows from its sound, so that hearing it twice adds nothing. UUID version 8 (RFC 9562),
/// beginning with the time, so that ids keep sorting by time.
fn heard_id(origin: &str, onset_s: f64, word: WordId, at: Moment) -> EventId {
    let mut hash = Sha256::new();
    hash.update(b"sayso heard 1");
    hash.update(origin.as_bytes());
    hash.update([0]);
    hash.update(format!("{onset_s:.3}"));
    hash.update(word.0.as_bytes());
    let mut bytes = [0; 16];
    bytes.copy_from_slice(&hash.finalize()[..16]);
    let millis = u64::try_from(at.millis()).unwrap_or(0).to_be_bytes();
    bytes[..6].copy_from_slice(&millis[2..]);
    EventId(Uuid::new_v8(bytes))
}
