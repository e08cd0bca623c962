//! The proof of a recording for a page that cannot hear by itself: as the ear in the page does it, with what is stored here.

use crate::recordings::NoSound;
use crate::vocabulary::{NoVocabulary, vocabulary};
use sayso_listen::{Clip, ListenError, Pace, Proof, Stretches, decode_bytes, prove as prove_by, stretches};
use sayso_model::{Story, WordId};
use sayso_store::{Store, StoreError};

/// Hears a sound file in which the button of `word` was pressed once against all recordings in use; nothing is logged.
/// Another word is named by its id.
///
/// # Errors
/// [`NoVocabulary`]; of a word without a recording in use [`ListenError::NoClips`].
pub async fn prove(store: &Store, story: &Story, word: WordId, bytes: Vec<u8>) -> Result<Proof, NoVocabulary> {
    let known = vocabulary(store, story, Pace::Page, None).await?;
    let work = tokio::task::spawn_blocking(move || match Clip::from_bytes("", bytes) {
        Ok(sound) => prove_by(&known.enrolled, &word.to_string(), &sound),
        // A microphone that gives nothing at all.
        Err(ListenError::Silent { .. }) => Ok(Proof::Nothing),
        Err(why) => Err(why),
    });
    Ok(work.await.map_err(|_| StoreError::Closed)??)
}

/// Cuts a sound file at its pauses. Positions count samples of one channel at the file's own rate.
///
/// # Errors
/// [`NoSound::Sound`] where it is no sound or silent; [`NoSound::Store`] where the work was cut off.
pub async fn cut(bytes: Vec<u8>) -> Result<Stretches, NoSound> {
    let work = tokio::task::spawn_blocking(move || {
        // Longer than any clip, so it is not read as one.
        let mut samples = Vec::new();
        let info = decode_bytes(bytes, |block| {
            let channels = usize::from(block.channels).max(1);
            samples.extend(block.samples.chunks(channels).map(|c| c.iter().sum::<f32>() / channels as f32));
            true
        })?;
        Ok(stretches(&Clip::from_samples("", samples, info.rate)?))
    });
    work.await.map_err(|_| StoreError::Closed)?
}
