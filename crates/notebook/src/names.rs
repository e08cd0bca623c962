//! Animals and words by the names a home uses for them.

use sayso_model::{AnimalCard, AnimalId, RewardCard, Story, WordCard};

/// Why a name stands for nothing, or for no single thing.
#[derive(Clone, PartialEq, Eq, Debug, thiserror::Error)]
#[non_exhaustive]
pub enum NotNamed {
    /// No active animal has the name or id.
    #[error("no animal is called \"{asked}\"; there are: {}", listed(known))]
    Animal {
        /// What was asked for.
        asked: String,
        /// The names there are.
        known: Vec<String>,
    },
    /// No active word says this or has the id.
    #[error("no word says \"{asked}\"; there are: {}", listed(known))]
    Word {
        /// What was asked for.
        asked: String,
        /// What the words say.
        known: Vec<String>,
    },
    /// No active reward has the name or id.
    #[error("no reward is called \"{asked}\"; there are: {}", listed(known))]
    Reward {
        /// What was asked for.
        asked: String,
        /// The names there are.
        known: Vec<String>,
    },
    /// Several active rewards have the name.
    #[error("several rewards are called \"{asked}\"; give one of their ids: {}", ids.join(", "))]
    Rewards {
        /// What was asked for.
        asked: String,
        /// Their ids.
        ids: Vec<String>,
    },
    /// Several active words say this.
    #[error("several words say \"{asked}\"; give one of their ids: {}", ids.join(", "))]
    Several {
        /// What was asked for.
        asked: String,
        /// Their ids.
        ids: Vec<String>,
    },
}

fn listed(known: &[String]) -> String {
    if known.is_empty() { "none yet".to_owned() } else { known.join(", ") }
}

fn same(name: &str, asked: &str) -> bool {
    name.to_lowercase() == asked.trim().to_lowercase()
}

/// The active animals of a name or id, by name; all of them where none is asked for.
///
/// # Errors
/// [`NotNamed::Animal`] where there is none.
pub fn animal_named(story: &Story, asked: Option<&str>) -> Result<Vec<AnimalCard>, NotNamed> {
    let mut all: Vec<AnimalCard> = story.animals().into_values().filter(|a| a.active).cloned().collect();
    all.sort_by(|a, b| a.name.cmp(&b.name).then(a.animal.cmp(&b.animal)));
    let Some(asked) = asked else { return Ok(all) };
    let known = all.iter().map(|a| a.name.to_string()).collect();
    all.retain(|a| same(a.name.as_str(), asked) || a.animal.to_string() == asked);
    if all.is_empty() { Err(NotNamed::Animal { asked: asked.to_owned(), known }) } else { Ok(all) }
}

/// The active reward of a name or id.
///
/// # Errors
/// [`NotNamed::Reward`] where there is none, [`NotNamed::Rewards`] where several have the name.
pub fn reward_named(story: &Story, asked: &str) -> Result<RewardCard, NotNamed> {
    let mut all: Vec<RewardCard> = story.rewards().into_values().filter(|r| r.active).cloned().collect();
    all.sort_by(|a, b| a.name.cmp(&b.name).then(a.reward.cmp(&b.reward)));
    let known = all.iter().map(|r| r.name.to_string()).collect();
    all.retain(|r| same(r.name.as_str(), asked) || r.reward.to_string() == asked);
    if all.len() > 1 {
        let ids = all.iter().map(|r| r.reward.to_string()).collect();
        return Err(NotNamed::Rewards { asked: asked.to_owned(), ids });
    }
    all.pop().ok_or_else(|| NotNamed::Reward { asked: asked.to_owned(), known })
}

/// The active word that says this or has this id, among those of one animal or all.
///
/// # Errors
/// [`NotNamed::Word`] where there is none, [`NotNamed::Several`] where several say it.
pub fn word_named(story: &Story, animal: Option<AnimalId>, asked: &str) -> Result<WordCard, NotNamed> {
    let mut all: Vec<WordCard> = match animal {
        Some(animal) => story.words_of(animal).into_iter().cloned().collect(),
        None => story.words().into_values().filter(|w| w.active).cloned().collect(),
    };
    all.sort_by(|a, b| a.says.cmp(&b.says).then(a.word.cmp(&b.word)));
    let known = all.iter().map(|w| w.says.to_string()).collect();
    all.retain(|w| same(w.says.as_str(), asked) || w.word.to_string() == asked);
    if all.len() > 1 {
        let ids = all.iter().map(|w| w.word.to_string()).collect();
        return Err(NotNamed::Several { asked: asked.to_owned(), ids });
    }
    all.pop().ok_or_else(|| NotNamed::Word { asked: asked.to_owned(), known })
}
