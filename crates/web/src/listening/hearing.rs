//! One stream as the engine hears it: samples by position, presses into the log, sound of unsure ones kept if wanted.

use super::message::{Begin, HeardPress, ToPage};
use crate::error::Error;
use sayso_listen::{Config, Detection, Detector, Enrolled, ListenError, Pace, wav};
use sayso_model::{AnimalId, EventId, HomeId, Moment, Story};
use sayso_notebook::{Diary, Listened, NoVocabulary, NotLogged, UNSURE, vocabulary};
use sayso_store::Store;
use sayso_wording::words;
use std::collections::{BTreeMap, VecDeque};
use std::sync::Arc;

/// Missing sound up to this long is heard as silence; after a longer gap the engine begins anew.
const MOST_GAP_S: f64 = 30.0;
/// Sound the engine may still need for presses it has not decided on: what the page must be able to send again after
/// the notebook was restarted.
const UNDECIDED_S: f64 = 6.0;
/// Sound held for pieces around unsure presses: the longest clip at the slowest speed, its decision, and a margin.
const RECENT_S: f64 = 10.0;
/// Sound kept on each side of an unsure press.
const MARGIN_S: f64 = 0.25;

/// What stands before the name of a stream in the origin of a press.
const STREAM: &str = "stream ";

/// A stream being heard.
pub struct Hearing {
    ear: Detector,
    enrolled: Arc<Enrolled>,
    config: Config,
    words: BTreeMap<String, Listened>,
    diary: Diary,
    origin: String,
    began: Moment,
    /// Position of the ear's first frame.
    base: u64,
    /// Position of the next frame; none before the first.
    next: Option<u64>,
    /// Heard, not yet in the log; onsets from the stream's beginning.
    waiting: Vec<Detection>,
    recent: VecDeque<i16>,
    /// Whether pieces around unsure presses are kept.
    pub keep_unsure: bool,
    left_out: Vec<String>,
}

impl Hearing {
    /// Gets ready to hear a stream.
    ///
    /// # Errors
    /// [`Error::Unavailable`] where nothing is enrolled, [`Error::BadRequest`] for a rate that cannot be heard.
    pub async fn new(
        store: &Store,
        story: &Story,
        home: HomeId,
        animal: Option<AnimalId>,
        begin: &Begin,
    ) -> Result<Self, Error> {
        let vocabulary = vocabulary(store, story, Pace::Live, Some(begin.began)).await.map_err(|e| match e {
            NoVocabulary::Nothing(_) => Error::Unavailable(words!(listen::nothing_recorded)),
            NoVocabulary::Sound(e) => Error::Unavailable(e.into()),
            NoVocabulary::Store(e) => e.into(),
            other => Error::internal(other),
        })?;
        let config = Config::new(begin.rate, 1, Pace::Live);
        let ear = ear(&vocabulary.enrolled, config)?;
        Ok(Self {
            ear,
            config,
            enrolled: vocabulary.enrolled,
            words: vocabulary.words,
            diary: Diary::new(story, home, animal),
            origin: format!("{STREAM}{}", begin.stream),
            began: begin.began,
            base: 0,
            next: None,
            waiting: Vec::new(),
            recent: VecDeque::new(),
            keep_unsure: begin.keep_unsure,
            left_out: vocabulary.left_out.into_iter().map(|(says, _)| says).collect(),
        })
    }

    /// What to tell a page that begins or goes on.
    pub fn go(&self) -> ToPage {
        let mut words: Vec<String> = self.words.values().map(|w| w.says.clone()).collect();
        words.sort();
        ToPage::Go { from: self.next, words, left_out: self.left_out.clone() }
    }

    /// Position before which samples need not be sent again, also if all that is known here were lost.
    pub fn upto(&self) -> u64 {
        self.next.unwrap_or(0).saturating_sub(self.frames(UNDECIDED_S))
    }

    /// Frames a second.
    pub const fn rate(&self) -> u32 {
        self.config.rate
    }

    fn frames(&self, seconds: f64) -> u64 {
        (seconds * f64::from(self.config.rate)) as u64
    }

    /// Hears samples that stand at `position`. Those heard before are passed over; missing ones count as silence.
    ///
    /// # Errors
    /// [`Error::BadRequest`] where the engine refuses the stream.
    pub fn take(&mut self, position: u64, samples: &[i16]) -> Result<(), Error> {
        let next = *self.next.get_or_insert_with(|| {
            self.base = position;
            position
        });
        let known = usize::try_from(next.saturating_sub(position)).unwrap_or(usize::MAX);
        let Some(new) = samples.get(known..).filter(|s| !s.is_empty()) else { return Ok(()) };
        let gap = position.saturating_sub(next);
        if gap > self.frames(MOST_GAP_S) {
            self.begin_anew(position)?;
        } else if gap > 0 {
            let heard = self.ear.gap(gap);
            self.hold(heard);
            self.remember(std::iter::repeat_n(0, usize::try_from(gap).unwrap_or(0)));
        }
        let sound: Vec<f32> = new.iter().map(|v| f32::from(*v) / 32768.0).collect();
        let heard = self.ear.push(&sound);
        self.hold(heard);
        self.remember(new.iter().copied());
        self.next = Some(position.max(next) + new.len() as u64);
        Ok(())
    }

    fn begin_anew(&mut self, position: u64) -> Result<(), Error> {
        let former = std::mem::replace(&mut self.ear, ear(&self.enrolled, self.config)?);
        let (last, _) = former.finish();
        self.hold(last);
        self.base = position;
        self.recent.clear();
        Ok(())
    }

    /// Hears what is still undecided; the stream is over.
    ///
    /// # Errors
    /// As [`Hearing::take`].
    pub fn finish(&mut self) -> Result<(), Error> {
        let recent = std::mem::take(&mut self.recent);
        self.begin_anew(self.next.unwrap_or(0))?;
        self.recent = recent;
        Ok(())
    }

    fn hold(&mut self, heard: Vec<Detection>) {
        let base_s = self.base as f64 / f64::from(self.config.rate);
        self.waiting.extend(heard.into_iter().map(|h| Detection { onset_s: h.onset_s + base_s, ..h }));
    }

    fn remember(&mut self, samples: impl Iterator<Item = i16>) {
        if !self.keep_unsure {
            self.recent.clear();
            return;
        }
        self.recent.extend(samples);
        let most = usize::try_from(self.frames(RECENT_S)).unwrap_or(usize::MAX);
        self.recent.drain(..self.recent.len().saturating_sub(most));
    }

    /// Puts what was heard into the log and says what became of it. What cannot be stored now waits for the next call.
    ///
    /// # Errors
    /// [`NotLogged`].
    pub async fn log(&mut self, store: &Store, home: HomeId, now: Moment) -> Result<Vec<HeardPress>, NotLogged> {
        if self.waiting.is_empty() {
            return Ok(Vec::new());
        }
        let heard = std::mem::take(&mut self.waiting);
        let entries = match self.diary.keep(store, &self.words, &self.origin, self.began, &heard, now).await {
            Ok(entries) => entries,
            Err(NotLogged::Store(why)) => {
                self.waiting = heard;
                return Err(why.into());
            }
            // Would be refused again.
            Err(why) => return Err(why),
        };
        let story = store.story(home).await?;
        let mut told = Vec::new();
        let known_words: Vec<&Detection> = heard.iter().filter(|h| self.words.contains_key(&h.word)).collect();
        for (h, entry) in known_words.into_iter().zip(entries) {
            let id = entry.as_ref().map(|e| e.id);
            let piece =
                id.filter(|_| self.keep_unsure && h.confidence < UNSURE).and_then(|id| Some((id, self.piece(h)?)));
            let kept = match piece {
                Some((id, wav)) => keep_piece(store, id, wav, now).await,
                None => false,
            };
            let state = match entry {
                None => "known",
                Some(e) if story.same_press(e.id).is_some() => "tapped",
                Some(_) => "new",
            };
            let says = self.words.get(&h.word).map_or_else(String::new, |w| w.says.clone());
            let at = self.began.plus_seconds(h.onset_s);
            told.push(HeardPress { id, says, at, confidence: h.confidence, state, kept });
        }
        Ok(told)
    }

    /// The sound around a press as a WAV file, as far as it is still held.
    fn piece(&self, h: &Detection) -> Option<Vec<u8>> {
        let rate = f64::from(self.config.rate);
        let held_from = self.next?.checked_sub(self.recent.len() as u64)? as f64;
        let seconds = self.words.get(&h.word)?.seconds / h.speed.max(0.5);
        let place = |s: f64| ((s * rate - held_from).max(0.0) as usize).min(self.recent.len());
        let (from, to) = (place(h.onset_s - MARGIN_S), place(h.onset_s + seconds + MARGIN_S));
        (to > from).then(|| wav(self.recent.range(from..to).copied(), self.config.rate))
    }
}

fn ear(enrolled: &Arc<Enrolled>, config: Config) -> Result<Detector, Error> {
    Detector::with(Arc::clone(enrolled), config).map_err(|e: ListenError| Error::BadRequest(e.into()))
}

/// A piece that cannot be kept loses nothing but itself; the press is in the log.
async fn keep_piece(store: &Store, press: EventId, wav: Vec<u8>, now: Moment) -> bool {
    match store.put_snippet(press, wav, now).await {
        Ok(()) => true,
        Err(why) => {
            tracing::warn!(error = %why, "the sound around a press could not be kept");
            false
        }
    }
}

#[cfg(test)]
#[allow(clippy::unwrap_used, clippy::panic)]
mod tests {
    use super::*;
    use sayso_model::{Body, Event, Source, WordCard, WordId, Zone};
    use uuid::Uuid;

    const RATE: u32 = 16_000;

    fn noon() -> Moment {
        "2026-03-02T12:00:00Z".parse().unwrap()
    }

    /// A notebook in a folder with one word, whose recording is a second of a rising tone.
    async fn notebook(dir: &std::path::Path) -> (Store, HomeId, WordId) {
        let store = Store::open(dir).await.unwrap();
        let (home, word) = (HomeId(Uuid::now_v7()), WordId(Uuid::now_v7()));
        let event = |body: Body| Event {
            id: EventId(Uuid::now_v7()),
            home,
            animal: None,
            person: None,
            happened_at: noon(),
            zone: Zone::utc(),
            recorded_at: noon(),
            source: Source::Tap,
            body,
        };
        let card: WordCard = serde_json::from_value(serde_json::json!({ "word": word, "says": "ball" })).unwrap();
        store.append(vec![event(card.clone().into())]).await.unwrap();
        let tone = (0..RATE).map(|i| {
            let t = f64::from(i) / f64::from(RATE);
            (12_000.0 * (2.0 * std::f64::consts::PI * (400.0 + 600.0 * t) * t).sin()) as i16
        });
        let sound = wav(tone.collect::<Vec<_>>().into_iter(), RATE);
        let story = store.story(home).await.unwrap();
        let done =
            sayso_notebook::enrol(&store, home, &story, &card, sound, sayso_notebook::Replaces::All).await.unwrap();
        store.append(done.cards.into_iter().map(|c| event(c.into())).collect()).await.unwrap();
        (store, home, word)
    }

    fn heard(word: WordId, onset_s: f64, confidence: f64) -> Detection {
        Detection { word: word.to_string(), clip: 0, onset_s, confidence, speed: 1.0, level_db: -20.0, share: 1.0 }
    }

    #[tokio::test]
    async fn the_sound_of_unsure_presses_is_kept_only_where_asked_and_is_the_right_piece() {
        let dir = tempfile::tempdir().unwrap();
        let (store, home, word) = notebook(dir.path()).await;
        let story = store.story(home).await.unwrap();
        let begin =
            Begin { stream: Uuid::now_v7(), began: noon(), rate: RATE, only: true, keep_unsure: true, take: false };
        let mut hearing = Hearing::new(&store, &story, home, None, &begin).await.unwrap();
        // Each sample tells the tenth of a second it is from.
        let sound: Vec<i16> = (0..RATE * 14).map(|i| (i / (RATE / 10)) as i16).collect();
        for (i, part) in sound.chunks(1_600).enumerate() {
            hearing.take(1_600 * i as u64, part).unwrap();
        }
        hearing.waiting = vec![heard(word, 9.0, 0.7), heard(word, 11.0, 0.95), heard(word, 1.0, 0.7)];
        let told = hearing.log(&store, home, noon()).await.unwrap();
        let kept: Vec<bool> = told.iter().map(|h| h.kept).collect();
        assert_eq!(kept, [true, false, false], "unsure, sure, unsure but too long ago");
        let piece = store.snippet(told[0].id.unwrap()).await.unwrap().unwrap();
        let samples: Vec<i16> = piece[44..].chunks_exact(2).map(|b| i16::from_le_bytes([b[0], b[1]])).collect();
        assert_eq!(samples.len(), RATE as usize * 3 / 2);
        assert_eq!((samples[0], *samples.last().unwrap()), (87, 102), "from 8.75 s to 10.25 s");

        hearing.keep_unsure = false;
        hearing.take(RATE as u64 * 14, &[0; 1_600]).unwrap();
        hearing.waiting = vec![heard(word, 13.0, 0.7)];
        let told = hearing.log(&store, home, noon()).await.unwrap();
        assert!(!told[0].kept && hearing.recent.is_empty());
        assert_eq!(store.snippets(noon()).await.unwrap().len(), 1);
    }

    #[tokio::test]
    async fn presses_that_cannot_be_stored_wait_and_are_stored_later() {
        let dir = tempfile::tempdir().unwrap();
        let (store, home, word) = notebook(dir.path()).await;
        let story = store.story(home).await.unwrap();
        let begin =
            Begin { stream: Uuid::now_v7(), began: noon(), rate: RATE, only: true, keep_unsure: false, take: false };
        let mut hearing = Hearing::new(&store, &story, home, None, &begin).await.unwrap();
        hearing.waiting = vec![heard(word, 1.0, 0.99)];
        store.close().await.unwrap();
        assert!(hearing.log(&store, home, noon()).await.is_err());
        let again = Store::open(dir.path()).await.unwrap();
        let told = hearing.log(&again, home, noon()).await.unwrap();
        assert_eq!((told.len(), told[0].state), (1, "new"));
        assert_eq!(again.story(home).await.unwrap().heard_presses().count(), 1);
    }
}
