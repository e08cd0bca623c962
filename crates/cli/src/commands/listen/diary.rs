//! Heard presses into the log, each once however often its sound is heard.

use super::vocabulary::Vocabulary;
use crate::commands::notebook::Notebook;
use crate::commands::serve::now;
use crate::error::CliError;
use sayso_listen::Heard;
use sayso_model::{
    Accident, Body, Event, EventId, LearnerId, Moment, Press, PressedBy, Probability, Ratio, Source, WordId,
};
use sayso_store::Appended;
use sha2::{Digest, Sha256};
use std::collections::BTreeMap;
use tokio::runtime::Handle;
use uuid::Uuid;

/// Heard presses of one word closer than this are one press: onsets may shift a little when a file is heard again
/// with another recording or a later version.
const SAME_PRESS_S: f64 = 0.2;

/// What became of heard presses.
#[derive(Clone, Copy, Default)]
pub struct Kept {
    /// Now in the log.
    pub new: usize,
    /// There before.
    pub known: usize,
}

/// Writes heard presses into a notebook.
pub struct Diary<'a> {
    notebook: &'a Notebook,
    learner: Option<LearnerId>,
    /// Presses heard before this run, withdrawn and corrected ones included: a person has judged those.
    before: BTreeMap<WordId, Vec<Moment>>,
}

impl<'a> Diary<'a> {
    /// For the animal named, or the only one, or none: sound does not tell whose press it was.
    pub fn new(notebook: &'a Notebook, learner: Option<&str>) -> Result<Self, CliError> {
        let learners = notebook.story.learners();
        let active: Vec<_> = learners.values().filter(|l| l.active).collect();
        let learner = match learner {
            Some(name) => {
                let found =
                    active.iter().find(|l| l.name.as_str().eq_ignore_ascii_case(name) || l.learner.to_string() == name);
                let names: Vec<&str> = active.iter().map(|l| l.name.as_str()).collect();
                let none =
                    || CliError::said(format!("no animal is called \"{name}\"; there are: {}", names.join(", ")));
                Some(found.ok_or_else(none)?.learner)
            }
            None => match active.as_slice() {
                [only] => Some(only.learner),
                _ => None,
            },
        };
        let mut before: BTreeMap<WordId, Vec<Moment>> = BTreeMap::new();
        for event in notebook.story.ledger().all() {
            if let (Source::Heard, Body::Press(press)) = (event.source, &event.body) {
                before.entry(press.word).or_default().push(event.happened_at);
            }
        }
        Ok(Self { notebook, learner, before })
    }

    /// Logs presses of a sound that began at `began`; `origin` names the sound, such as by its hash.
    pub fn keep(
        &self,
        vocabulary: &Vocabulary,
        origin: &str,
        began: Moment,
        heard: &[Heard],
    ) -> Result<Kept, CliError> {
        let mut kept = Kept::default();
        let mut events = Vec::new();
        for h in heard {
            let Some(known) = vocabulary.known.get(&h.word) else { continue };
            let at = began.plus_seconds(h.onset_s);
            let id = id(origin, h.onset_s, known.word, at);
            let near = self.before.get(&known.word).into_iter().flatten();
            if self.notebook.story.ledger().first(id).is_some()
                || near.into_iter().any(|m| m.seconds_since(at).abs() <= SAME_PRESS_S)
            {
                kept.known += 1;
                continue;
            }
            events.push(self.event(id, at, known.word, h));
        }
        if events.is_empty() {
            return Ok(kept);
        }
        for outcome in Handle::current().block_on(self.notebook.store.append(events))? {
            match outcome {
                Appended::New => kept.new += 1,
                // Another process heard the same sound meanwhile, perhaps recorded a moment apart.
                Appended::Duplicate | Appended::Conflict => kept.known += 1,
                Appended::Refused(problems) => return Err(CliError::said(problems.to_string())),
            }
        }
        Ok(kept)
    }

    fn event(&self, id: EventId, at: Moment, word: WordId, h: &Heard) -> Event {
        Event {
            id,
            household: self.notebook.household,
            learner: self.learner,
            teacher: None,
            happened_at: at,
            zone: self.notebook.story.zone(),
            recorded_at: now(),
            source: Source::Heard,
            body: Press {
                word,
                by: PressedBy::Unknown,
                certainty: Probability::clamped(h.confidence),
                accident: Accident::Unsure,
                place: None,
                speed: Ratio::new(h.speed).ok(),
                session: None,
            }
            .into(),
        }
    }
}

/// The id of a heard press follows from its sound, so that hearing it twice adds nothing. UUID version 8 (RFC 9562),
/// beginning with the time, so that ids keep sorting by time.
fn id(origin: &str, onset_s: f64, word: WordId, at: Moment) -> EventId {
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
