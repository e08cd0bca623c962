//! Heard presses into the log of a notebook.

use super::vocabulary::Vocabulary;
use crate::commands::serve::now;
use crate::error::CliError;
use sayso_listen::Detection;
use sayso_model::Moment;
use sayso_notebook::{Notebook, animal_named};
use tokio::runtime::Handle;

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
    diary: sayso_notebook::Diary,
}

impl<'a> Diary<'a> {
    /// For the animal named, or the only one, or none: sound does not tell whose press it was.
    pub fn new(notebook: &'a Notebook, animal: Option<&str>) -> Result<Self, CliError> {
        let mut named = animal_named(&notebook.story, animal)?;
        let only = if named.len() == 1 { named.pop() } else { None };
        let animal = only.map(|card| card.animal);
        Ok(Self { notebook, diary: sayso_notebook::Diary::new(&notebook.story, notebook.home, animal) })
    }

    /// Logs presses of a sound that began at `began`; `origin` names the sound, such as by its hash.
    pub fn keep(
        &mut self,
        vocabulary: &Vocabulary,
        origin: &str,
        began: Moment,
        heard: &[Detection],
    ) -> Result<Kept, CliError> {
        let kept = self.diary.keep(&self.notebook.store, &vocabulary.known, origin, began, heard, now());
        let entries = Handle::current().block_on(kept).map_err(CliError::said)?;
        let new = entries.iter().flatten().count();
        Ok(Kept { new, known: entries.len() - new })
    }
}
