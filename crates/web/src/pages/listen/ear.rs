//! What a page needs to hear by itself: what is listened for, and each clip as the engine takes it.

use crate::error::Error;
use crate::page::AnimalPage;
use crate::state::AppState;
use axum::Json;
use axum::extract::{Path, State};
use axum::http::header::{CACHE_CONTROL, CONTENT_TYPE};
use axum::response::{IntoResponse, Response};
use sayso_listen::{Clip, ENGINE_RATE, Speeds};
use sayso_model::{AnimalId, HomeId, WordId, Zone};
use sayso_notebook::{recordings, speeds};
use sayso_store::ClipHash;
use sayso_wording::words;
use serde::Serialize;

/// What is listened for, and what presses are noted with.
#[derive(Debug, Serialize)]
pub struct Vocabulary {
    home: HomeId,
    zone: Zone,
    /// Samples a second of the clips.
    rate: usize,
    words: Vec<Listened>,
    /// What buttons say whose recording cannot be had.
    left_out: Vec<String>,
}

/// One recording.
#[derive(Debug, Serialize)]
struct Listened {
    word: WordId,
    says: String,
    /// Where its samples are.
    clip: String,
    /// The slowest and the fastest speed to listen for.
    speeds: [f64; 2],
}

const fn usual() -> [f64; 2] {
    [Speeds::USUAL.low(), Speeds::USUAL.high()]
}

/// Answers with the recordings in use.
///
/// # Errors
/// As reading them.
pub async fn vocabulary(page: AnimalPage) -> Result<Json<Vocabulary>, Error> {
    let (mut words, mut left_out) = (Vec::new(), Vec::new());
    let known = speeds(&page.story, page.now);
    for recording in recordings(&page.state.store, &page.story).await? {
        match recording.sound {
            Ok(_) => words.push(Listened {
                speeds: known.get(&recording.card.clip).map_or_else(usual, |s| [s.low(), s.high()]),
                word: recording.card.word,
                says: recording.says,
                clip: format!("/a/{}/ear/{}", page.id, recording.card.sha256),
            }),
            Err(_) => left_out.push(recording.says),
        }
    }
    Ok(Json(Vocabulary { home: page.home, zone: page.zone.clone(), rate: ENGINE_RATE, words, left_out }))
}

/// A clip by the hash of its file: samples at the engine's rate, 32-bit little-endian floats. What the engine here would
/// make of the file, so that both hear the same; it never changes under its address.
///
/// # Errors
/// [`Error::NotFound`] where it is not stored, [`Error::Unavailable`] where it is no sound.
pub async fn clip(State(state): State<AppState>, Path((_, hash)): Path<(AnimalId, String)>) -> Result<Response, Error> {
    let missing = || Error::NotFound(words!(errors::no_such_file));
    let hash: ClipHash = hash.parse().map_err(|_| missing())?;
    let bytes = state.store.clip(&hash).await?.ok_or_else(missing)?;
    let samples = tokio::task::spawn_blocking(move || {
        let clip = Clip::from_bytes("", bytes)?.brought_to_engine_rate();
        Ok(clip.samples().iter().flat_map(|v| v.to_le_bytes()).collect::<Vec<u8>>())
    });
    let samples = samples.await.map_err(Error::internal)?;
    let samples = samples.map_err(|e: sayso_listen::ListenError| Error::Unavailable(e.to_string().into()))?;
    let keep = "private, max-age=31536000, immutable";
    Ok(([(CONTENT_TYPE, "application/octet-stream"), (CACHE_CONTROL, keep)], samples).into_response())
}
