//! Homes' own logs, as the notebook exports them: a line of JSON an event.

use crate::dataset::Source;
use crate::error::ExportError;
use crate::household::{Household, household};
use crate::pseudonym::{Key, StudyId, mark};
use sayso_model::consents::consents;
use sayso_model::{Consent, Event, HomeId, Moment, Story};
use serde::Deserialize;
use std::collections::BTreeMap;
use std::fs::File;
use std::io::{BufRead, BufReader, Seek, SeekFrom};
use std::ops::Range;
use std::path::{Path, PathBuf};

/// Where an event stands.
#[derive(Clone, Copy, Debug)]
struct Place {
    file: usize,
    offset: u64,
    line: usize,
}

/// Logs of homes. A home's number is its place among all of them by what the key calls it: it tells neither when the home
/// began nor where it came from.
#[derive(Debug)]
pub struct Logs {
    files: Vec<PathBuf>,
    /// By number.
    homes: Vec<(StudyId, Vec<Place>)>,
    now: Moment,
}

/// All that is read of an event to know whose it is.
#[derive(Deserialize)]
struct Whose {
    #[serde(alias = "household")]
    home: HomeId,
}

impl Logs {
    /// Looks through files, or folders of files, whose names end in `.jsonl`. Consent is asked for as of `now`.
    ///
    /// # Errors
    /// Where one cannot be read or a line names no home.
    pub fn open(paths: &[PathBuf], key: &Key, now: Moment) -> Result<Self, ExportError> {
        let mut files = Vec::new();
        for path in paths {
            files.extend(if path.is_dir() { inside(path)? } else { vec![path.clone()] });
        }
        let mut homes: BTreeMap<HomeId, Vec<Place>> = BTreeMap::new();
        for (file, path) in files.iter().enumerate() {
            let mut lines = BufReader::new(File::open(path).map_err(ExportError::io(path))?);
            let (mut text, mut offset) = (String::new(), 0);
            for line in 1.. {
                text.clear();
                let read = lines.read_line(&mut text).map_err(ExportError::io(path))?;
                if read == 0 {
                    break;
                }
                if !text.trim().is_empty() {
                    let whose: Whose = serde_json::from_str(&text).map_err(|why| ExportError::NoEvent {
                        path: path.clone(),
                        line,
                        why: why.to_string(),
                    })?;
                    homes.entry(whose.home).or_default().push(Place { file, offset, line });
                }
                offset += read as u64;
            }
        }
        let mut homes: Vec<_> = homes.into_iter().map(|(home, places)| (key.study_id(home), places)).collect();
        homes.sort_by_key(|(id, _)| *id);
        Ok(Self { files, homes, now })
    }

    /// The story of a home if it agrees to research now.
    fn story(&self, number: u32) -> Result<Option<Story>, ExportError> {
        let Some((_, places)) = self.homes.get(number as usize) else { return Ok(None) };
        let mut events: Vec<Event> = Vec::with_capacity(places.len());
        for of_one in places.chunk_by(|a, b| a.file == b.file) {
            let path = &self.files[of_one[0].file];
            let mut lines = BufReader::new(File::open(path).map_err(ExportError::io(path))?);
            let (mut text, mut at) = (String::new(), 0);
            for place in of_one {
                if place.offset != at {
                    lines.seek(SeekFrom::Start(place.offset)).map_err(ExportError::io(path))?;
                }
                text.clear();
                at = place.offset + lines.read_line(&mut text).map_err(ExportError::io(path))? as u64;
                events.push(read(&text, path, place.line)?);
            }
        }
        let story = Story::from_events(events);
        Ok(consents(&story, self.now).is_open(Consent::Research).then_some(story))
    }
}

fn read(text: &str, path: &Path, line: usize) -> Result<Event, ExportError> {
    let no = |why: String| ExportError::NoEvent { path: path.to_owned(), line, why };
    let event: Event = serde_json::from_str(text).map_err(|why| no(why.to_string()))?;
    event.check().map_err(|why| no(why.to_string()))?;
    Ok(event)
}

fn inside(folder: &Path) -> Result<Vec<PathBuf>, ExportError> {
    let mut files = Vec::new();
    for entry in std::fs::read_dir(folder).map_err(ExportError::io(folder))? {
        let path = entry.map_err(ExportError::io(folder))?.path();
        if path.extension().is_some_and(|end| end == "jsonl") {
            files.push(path);
        }
    }
    files.sort();
    Ok(files)
}

impl Source for Logs {
    fn of(&self) -> String {
        format!("logs of {} homes, {}", self.homes.len(), mark(self.homes.iter().map(|(id, _)| id)))
    }

    fn households(&self) -> u32 {
        u32::try_from(self.homes.len()).unwrap_or(u32::MAX)
    }

    fn agreeing(&self, numbers: Range<u32>) -> Result<Vec<u32>, ExportError> {
        let agrees = |number: &u32| self.story(*number).map(|story| story.is_some());
        let mut agreeing = Vec::new();
        for number in numbers {
            if agrees(&number)? {
                agreeing.push(number);
            }
        }
        Ok(agreeing)
    }

    fn household(&self, number: u32) -> Result<Option<Household>, ExportError> {
        Ok(self.story(number)?.map(|story| household(&story, number)))
    }
}
