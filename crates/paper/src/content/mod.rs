//! What each sheet says.

mod checks;
mod kit;
mod labels;
mod lessons;
mod likes;
mod meeting;
mod progress;
mod report;
mod rules;
mod said;

pub use checks::{check_scorer, check_setter};
pub use kit::{KIT_DISTANCES_M, kit};
pub use labels::labels;
pub use lessons::lessons;
pub use likes::likes;
pub use meeting::meeting;
pub use progress::{LENGTHS, progress};
pub use rules::rules;

use crate::sheet::{Block, Foot, Sheet};
use sayso_model::{AnimalCard, Moment, Story, WordCard};
use sayso_wording::Locale;

/// A sheet of a home at a moment.
fn sheet(story: &Story, now: Moment, locale: Locale, title: String, blocks: Vec<Block>) -> Sheet {
    let home = story.home().map_or_else(String::new, |h| h.name.to_string());
    let foot = Foot { home, day: locale.date(now.day(&story.zone())) };
    Sheet { locale, title, blocks, shorter: Vec::new(), foot, made: now }
}

/// Words in use, by what they say.
fn words(story: &Story) -> Vec<&WordCard> {
    let mut words: Vec<&WordCard> = story.words().into_values().filter(|w| w.active).collect();
    words.sort_by(|a, b| a.says.cmp(&b.says).then(a.word.cmp(&b.word)));
    words
}

/// Animals that live here, by name.
fn animals(story: &Story) -> Vec<&AnimalCard> {
    let mut all: Vec<&AnimalCard> = story.animals().into_values().filter(|a| a.active).collect();
    all.sort_by(|a, b| a.name.cmp(&b.name).then(a.animal.cmp(&b.animal)));
    all
}
