//! What is listened for: the recordings in use, as the engine holds them.

use crate::recordings::{NoSound, recordings};
use crate::speeds::speeds;
use sayso_listen::{Clip, Enrolled, ListenError, Pace};
use sayso_model::{Moment, Story, WordId};
use sayso_store::{Store, StoreError};
use std::collections::BTreeMap;
use std::sync::Arc;

/// A word that is listened for.
#[derive(Clone, Debug)]
pub struct Listened {
    /// Its id.
    pub word: WordId,
    /// What the button says.
    pub says: String,
    /// Length of its longest recording.
    pub seconds: f64,
}

/// The recordings of a notebook as the engine holds them.
pub struct Vocabulary {
    /// The clips. The engine's names are ids of words, since two words may say the same; a word with several buttons has
    /// several clips of one name.
    pub enrolled: Arc<Enrolled>,
    /// The words by the engine's name.
    pub words: BTreeMap<String, Listened>,
    /// What buttons say whose recording has no sound, with the reason; they are not listened for.
    pub left_out: Vec<(String, NoSound)>,
}

/// Why there is nothing to listen for.
#[derive(Debug, thiserror::Error)]
#[non_exhaustive]
pub enum NoVocabulary {
    /// No word in use has a recording that can be listened for.
    #[error("no recording is enrolled, so there is nothing to listen for")]
    Nothing(Vec<(String, NoSound)>),
    /// A recording the engine refuses.
    #[error(transparent)]
    Sound(#[from] ListenError),
    /// The notebook cannot be read.
    #[error(transparent)]
    Store(#[from] StoreError),
}

/// Every recording in use, ready to be listened for: at the speeds its button is known by at a moment ([`speeds`]), else at
/// the usual ones.
///
/// # Errors
/// [`NoVocabulary`].
pub async fn vocabulary(
    store: &Store,
    story: &Story,
    pace: Pace,
    at: Option<Moment>,
) -> Result<Vocabulary, NoVocabulary> {
    let known = at.map(|at| speeds(story, at)).unwrap_or_default();
    let (mut clips, mut words, mut left_out) = (Vec::new(), BTreeMap::new(), Vec::new());
    for recording in recordings(store, story).await? {
        match recording.sound {
            Ok(clip) => {
                let name = recording.card.word.to_string();
                let own = Clip::from_samples(name.clone(), clip.samples().to_vec(), clip.rate())?;
                clips.push(match known.get(&recording.card.clip) {
                    Some(speeds) => own.at_speeds(*speeds),
                    None => own,
                });
                let word = Listened { word: recording.card.word, says: recording.says, seconds: 0.0 };
                let listened = words.entry(name).or_insert(word);
                listened.seconds = listened.seconds.max(clip.seconds());
            }
            Err(why) => left_out.push((recording.says, why)),
        }
    }
    if clips.is_empty() {
        return Err(NoVocabulary::Nothing(left_out));
    }
    let enrolled = tokio::task::spawn_blocking(move || Enrolled::new(&clips, pace));
    let enrolled = Arc::new(enrolled.await.map_err(|_| StoreError::Closed)??);
    Ok(Vocabulary { enrolled, words, left_out })
}
