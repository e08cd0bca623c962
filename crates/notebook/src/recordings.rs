//! Recordings as sound: read from the store, checked against each other, enrolled for a word.

use sayso_listen::{Clip, ClipReport, Enrolled, ListenError, Pace, check_clips};
use sayso_model::{ClipCard, ClipId, HomeId, Seconds, Story, WordCard};
use sayso_store::{ClipHash, Store, StoreError, labelled};

/// A recording in use, with its sound if that can be had.
#[derive(Debug)]
pub struct Recording {
    /// Its card.
    pub card: ClipCard,
    /// What the button says.
    pub says: String,
    /// Its sound, named by what the button says.
    pub sound: Result<Clip, NoSound>,
}

/// Why a recording has no sound.
#[derive(Debug, thiserror::Error)]
#[non_exhaustive]
pub enum NoSound {
    /// The card is known, the file is not.
    #[error("its sound file is not stored here; enrol it again")]
    NotStored,
    /// The stored file cannot be read.
    #[error(transparent)]
    Store(#[from] StoreError),
    /// The stored file is no sound that can be listened for.
    #[error(transparent)]
    Sound(#[from] ListenError),
}

/// What a new recording of a word does to those in use. Those it takes the place of stay in the notebook, not in use.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Replaces {
    /// It takes the place of all of them: the word has one button, recorded anew.
    All,
    /// It takes the place of this one, where that is in use: one of several buttons was recorded anew.
    One(ClipId),
    /// It joins them: another button that says the same.
    None,
}

impl Replaces {
    fn takes(self, clip: ClipId) -> bool {
        match self {
            Self::All => true,
            Self::One(one) => one == clip,
            Self::None => false,
        }
    }
}

/// A recording that was checked and stored, and the cards that say so.
#[derive(Debug)]
pub struct Enrolment {
    /// The recording.
    pub clip: ClipId,
    /// Cards to put into the log: the new one, unless this very recording was in use for the word already, and those it
    /// takes the place of, now inactive.
    pub cards: Vec<ClipCard>,
    /// What the check found.
    pub report: ClipReport,
    /// How many other recordings it was checked against.
    pub others: usize,
}

/// Every recording in use of a word in use, with its sound, by what the button says.
///
/// # Errors
/// [`StoreError::Closed`] where the work was cut off. A recording whose sound cannot be had is in the list.
pub async fn recordings(store: &Store, story: &Story) -> Result<Vec<Recording>, StoreError> {
    let words = story.words();
    let mut found = Vec::new();
    for card in story.clips().into_values().filter(|c| c.active) {
        let Some(word) = words.get(&card.word).filter(|w| w.active) else { continue };
        let bytes = match card.sha256.parse::<ClipHash>() {
            Ok(hash) => store.clip(&hash).await,
            Err(e) => Err(e),
        };
        found.push((card.clone(), word.says.to_string(), bytes));
    }
    let decoded = tokio::task::spawn_blocking(move || {
        let mut all: Vec<Recording> = found
            .into_iter()
            .map(|(card, says, bytes)| {
                let sound = match bytes {
                    Ok(Some(bytes)) => Clip::from_bytes(says.clone(), bytes).map_err(NoSound::from),
                    Ok(None) => Err(NoSound::NotStored),
                    Err(e) => Err(NoSound::from(e)),
                };
                Recording { card, says, sound }
            })
            .collect();
        all.sort_by(|a, b| a.says.cmp(&b.says).then(a.card.clip.cmp(&b.card.clip)));
        all
    });
    decoded.await.map_err(|_| StoreError::Closed)
}

/// Decodes and checks a recording of `word` against the other words' recordings, and stores its bytes. The cards
/// of the answer are not in the log yet.
///
/// # Errors
/// [`NoSound::Sound`] where it is no sound, silent, or too short or long to be listened for; [`NoSound::Store`].
pub async fn enrol(
    store: &Store,
    home: HomeId,
    story: &Story,
    word: &WordCard,
    bytes: Vec<u8>,
    replaces: Replaces,
) -> Result<Enrolment, NoSound> {
    let (others, of_word): (Vec<_>, Vec<_>) =
        recordings(store, story).await?.into_iter().partition(|r| r.card.word != word.word);
    let mut clips: Vec<Clip> = others.into_iter().filter_map(|r| r.sound.ok()).collect();
    let others = clips.len();
    let says = word.says.to_string();
    let (bytes, report) = tokio::task::spawn_blocking(move || {
        let clip = Clip::from_bytes(says, bytes.clone())?;
        // The engine itself says which lengths it can listen for.
        Enrolled::new(std::slice::from_ref(&clip), Pace::File)?;
        clips.insert(0, clip);
        let report = check_clips(&clips).swap_remove(0);
        Ok::<_, ListenError>((bytes, report))
    })
    .await
    .map_err(|_| StoreError::Closed)??;
    let hash = store.put_clip(bytes).await?;
    let clip = ClipId(labelled(home, "clip", &format!("{} {hash}", word.word)));
    let mut cards = Vec::new();
    if !of_word.iter().any(|r| r.card.clip == clip) {
        cards.push(ClipCard {
            clip,
            word: word.word,
            seconds: Seconds::clamped(report.seconds),
            sha256: hash.to_string(),
            lufs: report.loudness_lufs.map(|l| l.clamp(-100.0, 20.0)),
            active: true,
        });
    }
    let out = of_word.into_iter().filter(|r| r.card.clip != clip && replaces.takes(r.card.clip));
    cards.extend(out.map(|r| ClipCard { active: false, ..r.card }));
    Ok(Enrolment { clip, cards, report, others })
}
