//! What is listened for: the recordings of a notebook, or of a folder.

use crate::commands::serve::now;
use crate::error::CliError;
use crate::out::note;
use sayso_listen::{Clip, Enrolled, Pace};
use sayso_notebook::{Listened, NoSound, NoVocabulary, Notebook, vocabulary};
use sayso_wording::{Locale, Message, words};
use std::collections::BTreeMap;
use std::path::Path;
use std::sync::Arc;

/// Endings of the sound files a folder is searched for.
const ENDINGS: [&str; 17] = [
    "wav", "m4a", "mp4", "aac", "opus", "ogg", "oga", "webm", "weba", "mka", "flac", "mp3", "aiff", "aif", "aifc",
    "caf", "3gp",
];

/// The enrolled clips, and what each stands for.
pub struct Vocabulary {
    /// The clips as the engine holds them. Its names are ids where a notebook is listened for.
    pub enrolled: Arc<Enrolled>,
    /// Words of the notebook by the engine's name.
    pub known: BTreeMap<String, Listened>,
}

impl Vocabulary {
    /// Every recording in use of a notebook; one that has no sound is told and left out.
    pub async fn of_notebook(l: &Locale, notebook: &Notebook, pace: Pace) -> Result<Self, CliError> {
        let told = |left_out: Vec<(String, NoSound)>| {
            for (says, why) in left_out {
                note!(l, command_listen::left_out, word = says, why = why.say(l));
            }
        };
        // A file may be from a time at which the buttons played at other speeds.
        let at = (pace == Pace::Live).then(now);
        match vocabulary(&notebook.store, &notebook.story, pace, at).await {
            Ok(found) => {
                told(found.left_out);
                Ok(Self { enrolled: found.enrolled, known: found.words })
            }
            Err(NoVocabulary::Nothing(left_out)) => {
                told(left_out);
                Err(CliError::said(words!(command_listen::nothing_enrolled)))
            }
            Err(other) => Err(CliError::said(other)),
        }
    }

    /// Every sound file in a folder, named by its file stem.
    pub fn of_folder(dir: &Path, pace: Pace) -> Result<Self, CliError> {
        let told = |why| CliError::file(dir, why);
        let mut files = Vec::new();
        for entry in std::fs::read_dir(dir).map_err(told)? {
            let path = entry.map_err(told)?.path();
            let ending = path.extension().and_then(|e| e.to_str()).map(str::to_ascii_lowercase);
            if ending.is_some_and(|e| ENDINGS.contains(&e.as_str())) {
                files.push(path);
            }
        }
        files.sort();
        let mut clips: Vec<Clip> = Vec::new();
        for path in files {
            let stem = path.file_stem().map(|s| s.to_string_lossy().into_owned()).unwrap_or_default();
            let word = named(&stem);
            if clips.iter().any(|c| c.word() == word) {
                let file = path.display().to_string();
                return Err(CliError::said(words!(command_listen::second_clip, file = file, word = word)));
            }
            clips.push(Clip::from_file(word, &path).map_err(CliError::said)?);
        }
        if clips.is_empty() {
            let dir = dir.display().to_string();
            return Err(CliError::said(words!(
                command_listen::no_sound_files,
                dir = dir,
                endings = ENDINGS.join(", ")
            )));
        }
        let enrolled = Enrolled::new(&clips, pace).map_err(CliError::said)?;
        Ok(Self { enrolled: Arc::new(enrolled), known: BTreeMap::new() })
    }

    /// What the button of this name says.
    pub fn says<'a>(&'a self, name: &'a str) -> &'a str {
        self.known.get(name).map_or(name, |k| k.says.as_str())
    }
}

/// `03_all_done` is the word "all done".
fn named(stem: &str) -> String {
    let bare = match stem.split_once('_') {
        Some((number, rest)) if !number.is_empty() && number.bytes().all(|b| b.is_ascii_digit()) => rest,
        _ => stem,
    };
    bare.replace('_', " ").trim().to_owned()
}

#[cfg(test)]
mod tests {
    use super::named;

    #[test]
    fn a_file_is_named_by_its_word() {
        for (stem, word) in [("03_all_done", "all done"), ("ball", "ball"), ("love_you", "love you"), ("7up", "7up")] {
            assert_eq!(named(stem), word);
        }
    }
}
