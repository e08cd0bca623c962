//! `picture`: the picture of an animal, a reward or a word, kept or removed.

use super::notebook;
use super::serve::now;
use crate::args::{Picturing, Shown};
use crate::error::CliError;
use crate::out::tell;
use sayso_model::{Event, MOST_PICTURE_BYTES, PictureCard, PictureOf, Story, Unfit};
use sayso_notebook::{NoPicture, animal_named, reward_named, word_named};
use sayso_wording::{Locale, Message, pictures::unfit};
use std::path::Path;

/// Keeps a file as the picture of a thing, or removes the one it has.
pub async fn picture(l: &Locale, args: &Picturing) -> Result<(), CliError> {
    let notebook = notebook::open(l, &args.data.data).await?;
    let (of, name) = named(&notebook.story, &args.shown)?;
    // Without a file it is the one to be removed.
    let card = match &args.file {
        None => PictureCard { shows: of, picture: None },
        Some(file) => {
            let refused = |why| CliError::file(file, unfit(l, why));
            let bytes = read(file)?.map_err(refused)?;
            sayso_notebook::picture(&notebook.store, of, bytes).await.map_err(|e| match e {
                NoPicture::Unfit(why) => refused(why),
                NoPicture::Store(why) => CliError::file(file, why.say(l)),
                other => CliError::file(file, other),
            })?
        }
    };
    let kept = card.picture.as_ref().map(|p| (p.width, p.height));
    let event = Event { animal: of.animal(), ..notebook.pen(now()).event(card) };
    notebook.keep(vec![event]).await?;
    match kept {
        Some((width, height)) => tell!(l, pictures::command_kept, name = name, width = width, height = height),
        None => tell!(l, pictures::command_removed, name = name),
    }
    notebook.store.close().await?;
    Ok(())
}

fn named(story: &Story, shown: &Shown) -> Result<(PictureOf, String), CliError> {
    if let Some(asked) = &shown.reward {
        let card = reward_named(story, asked)?;
        return Ok((PictureOf::Reward { reward: card.reward }, card.name.to_string()));
    }
    if let Some(asked) = &shown.word {
        let card = word_named(story, None, asked)?;
        return Ok((PictureOf::Word { word: card.word }, card.says.to_string()));
    }
    let card = animal_named(story, shown.animal.as_deref())?.swap_remove(0);
    Ok((PictureOf::Animal { animal: card.animal }, card.name.to_string()))
}

/// The bytes of a file that is no larger than a picture may be.
fn read(file: &Path) -> Result<Result<Vec<u8>, Unfit>, CliError> {
    let told = |why| CliError::file(file, why);
    let size = std::fs::metadata(file).map_err(told)?.len();
    match usize::try_from(size) {
        Ok(size) if size <= MOST_PICTURE_BYTES => Ok(Ok(std::fs::read(file).map_err(told)?)),
        _ => Ok(Err(Unfit::TooManyBytes(usize::try_from(size).unwrap_or(usize::MAX)))),
    }
}
