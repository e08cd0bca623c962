//! `picture`: the picture of an animal, a reward or a word, kept or removed.

use super::notebook;
use super::serve::now;
use crate::args::{Picturing, Shown};
use crate::error::CliError;
use crate::out::say;
use sayso_model::{Event, MOST_PICTURE_BYTES, PictureCard, PictureOf, Story, Unfit};
use sayso_notebook::{NoPicture, animal_named, reward_named, word_named};
use sayso_wording::{Locale, pictures::unfit, say as words};
use std::path::Path;

/// Keeps a file as the picture of a thing, or removes the one it has.
pub async fn picture(args: &Picturing) -> Result<(), CliError> {
    let notebook = notebook::open(&args.data.data).await?;
    let (of, name) = named(&notebook.story, &args.shown)?;
    // Without a file it is the one to be removed.
    let card = match &args.file {
        None => PictureCard { shows: of, picture: None },
        Some(file) => {
            let told = |why| CliError::said(format!("{}: {why}", file.display()));
            let refused = |why| told(unfit(&Locale::ENGLISH, why));
            let bytes = read(file)?.map_err(refused)?;
            sayso_notebook::picture(&notebook.store, of, bytes).await.map_err(|e| match e {
                NoPicture::Unfit(why) => refused(why),
                other => told(other.to_string()),
            })?
        }
    };
    let said = match &card.picture {
        Some(p) => {
            words!(&Locale::ENGLISH, pictures::command_kept, name = name, width = p.width, height = p.height)
        }
        None => words!(&Locale::ENGLISH, pictures::command_removed, name = name),
    };
    let event = Event { animal: of.animal(), ..notebook.pen(now()).event(card) };
    notebook.keep(vec![event]).await?;
    say!("{said}");
    notebook.store.close().await?;
    Ok(())
}

fn named(story: &Story, shown: &Shown) -> Result<(PictureOf, String), CliError> {
    let told = |why: sayso_notebook::NotNamed| CliError::said(why.to_string());
    if let Some(asked) = &shown.reward {
        let card = reward_named(story, asked).map_err(told)?;
        return Ok((PictureOf::Reward { reward: card.reward }, card.name.to_string()));
    }
    if let Some(asked) = &shown.word {
        let card = word_named(story, None, asked).map_err(told)?;
        return Ok((PictureOf::Word { word: card.word }, card.says.to_string()));
    }
    let card = animal_named(story, shown.animal.as_deref()).map_err(told)?.swap_remove(0);
    Ok((PictureOf::Animal { animal: card.animal }, card.name.to_string()))
}

/// The bytes of a file that is no larger than a picture may be.
fn read(file: &Path) -> Result<Result<Vec<u8>, Unfit>, CliError> {
    let told = |source| CliError::File { path: file.to_owned(), source };
    let size = std::fs::metadata(file).map_err(told)?.len();
    match usize::try_from(size) {
        Ok(size) if size <= MOST_PICTURE_BYTES => Ok(Ok(std::fs::read(file).map_err(told)?)),
        _ => Ok(Err(Unfit::TooManyBytes(usize::try_from(size).unwrap_or(usize::MAX)))),
    }
}
