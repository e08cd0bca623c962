//! Recordings of words and pictures, by the hash of their bytes: only those that cards name, and only what somebody said may go. Sound
//! around presses is none of them.

use crate::fault::LinkError;
use crate::letters::{MEDIA, Media};
use crate::work::Work;
use sayso_model::{Body, Story};
use sayso_store::{ClipHash, Store, StoreError};
use std::collections::BTreeSet;

/// What cards of a home name: by every card there ever was, for a later one may be taken back.
#[must_use]
pub fn named(story: &Story, pictures: bool, recordings: bool) -> BTreeSet<String> {
    let mut found = BTreeSet::new();
    for event in story.ledger().all() {
        match event.body.stands_as() {
            Body::PictureCard(card) if pictures => found.extend(card.picture.as_ref().map(|p| p.sha256.clone())),
            Body::ClipCard(card) if recordings => {
                found.insert(card.sha256.clone());
            }
            _ => {}
        }
    }
    found
}

/// Brings each side what it lacks: of all that cards name, where they name something else than before; then of what neither had.
pub(crate) async fn both_ways(work: &mut Work<'_>) -> Result<(), LinkError> {
    let (pictures, recordings) = (work.sends.pictures, work.sends.recordings);
    if !(pictures || recordings) {
        return Ok(());
    }
    let story = work.store.story(work.link.home_here).await?;
    let mut wanted = named(&story, pictures, recordings);
    let names = ClipHash::of(wanted.iter().flat_map(|name| name.bytes()).collect::<Vec<_>>().as_slice()).to_string();
    if work.progress.media_of.as_ref() == Some(&names) {
        wanted = work.progress.missing.clone();
    }
    if wanted.is_empty() {
        return Ok(());
    }
    work.still()?;
    let Media { hashes } = work.there.get(MEDIA).await?;
    let there: BTreeSet<String> = hashes.into_iter().collect();
    let mut missing = BTreeSet::new();
    for sha256 in wanted {
        let Ok(hash) = sha256.parse::<ClipHash>() else { continue };
        let (here, path) = (sound(work.store, &hash).await?, format!("{MEDIA}/{hash}"));
        work.still()?;
        match (here, there.contains(hash.as_str())) {
            (Some(bytes), false) => work.there.put(&path, bytes).await?,
            (Some(_), true) => continue,
            (None, is_there) => match if is_there { work.there.bytes(&path).await? } else { None } {
                Some(bytes) if ClipHash::of(&bytes) == hash => {
                    work.still()?;
                    work.store.put_clip(bytes).await?;
                }
                Some(_) => return Err(LinkError::Strange(format!("{hash} came with other bytes"))),
                // Cards come before what they name: it may be brought yet.
                None => {
                    missing.insert(sha256);
                    continue;
                }
            },
        }
        work.progress.media += 1;
        work.keep()?;
    }
    work.progress.media_of = Some(names);
    work.progress.missing = missing;
    Ok(())
}

/// One that is here and whole: a damaged one is fetched like one that is missing, and not sent.
async fn sound(store: &Store, hash: &ClipHash) -> Result<Option<Vec<u8>>, StoreError> {
    match store.clip(hash).await {
        Err(StoreError::BadClip { .. }) => Ok(None),
        other => other,
    }
}
