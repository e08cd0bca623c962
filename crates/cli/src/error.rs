//! What can go wrong at the command line, in words.

use sayso_notebook::{NoNorms, NoNotebook, NotKept, NotNamed};
use sayso_wording::{Locale, Words, words};
use std::fmt;
use std::path::Path;

/// An error of a command, said in the reader's language. What the system and the database say of errors stays as they say it.
#[derive(Debug)]
pub struct CliError(Words);

impl CliError {
    /// An error in words.
    pub fn said(what: impl Into<Words>) -> Self {
        Self(what.into())
    }

    /// What the system says about its error.
    pub fn below(why: impl fmt::Display) -> Self {
        Self(why.to_string().into())
    }

    /// A file, and what is wrong with it.
    pub fn file(path: &Path, why: impl fmt::Display) -> Self {
        Self(format!("{}: {why}", path.display()).into())
    }

    /// A flag, and what is wrong with its value.
    pub fn flag(name: &str, why: impl fmt::Display) -> Self {
        Self(format!("{name}: {why}").into())
    }

    /// What it says to a reader.
    pub fn say(&self, l: &Locale) -> String {
        self.0.say(l)
    }
}

impl fmt::Display for CliError {
    /// In English, for the log.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.0.fmt(f)
    }
}

macro_rules! said {
    ($($error:ty),* $(,)?) => { $(
        impl From<$error> for CliError {
            fn from(why: $error) -> Self {
                Self::said(why)
            }
        }
    )* };
}
said!(
    sayso_store::StoreError,
    sayso_host::HostError,
    sayso_web::ServeError,
    sayso_web::access::PairedError,
    sayso_paper::PaperError,
    NotKept
);

impl From<std::io::Error> for CliError {
    fn from(why: std::io::Error) -> Self {
        Self::below(why)
    }
}

impl From<NoNotebook> for CliError {
    fn from(why: NoNotebook) -> Self {
        match why {
            NoNotebook::None(dir) => Self::said(words!(command::no_home, dir = dir.display().to_string())),
            other => Self::said(other),
        }
    }
}

impl From<NotNamed> for CliError {
    fn from(why: NotNamed) -> Self {
        let listed = |known: Vec<String>| known.join(", ");
        Self::said(match why {
            NotNamed::Animal { asked, known } if known.is_empty() => words!(command::no_animal_yet, asked = asked),
            NotNamed::Animal { asked, known } => words!(command::no_animal, asked = asked, known = listed(known)),
            NotNamed::Word { asked, known } if known.is_empty() => words!(command::no_word_yet, asked = asked),
            NotNamed::Word { asked, known } => words!(command::no_word, asked = asked, known = listed(known)),
            NotNamed::Reward { asked, known } if known.is_empty() => words!(command::no_reward_yet, asked = asked),
            NotNamed::Reward { asked, known } => words!(command::no_reward, asked = asked, known = listed(known)),
            NotNamed::Rewards { asked, ids } => words!(command::several_rewards, asked = asked, ids = listed(ids)),
            NotNamed::Several { asked, ids } => words!(command::several_words, asked = asked, ids = listed(ids)),
            other => return Self::below(other),
        })
    }
}

impl From<NoNorms> for CliError {
    fn from(why: NoNorms) -> Self {
        match why {
            NoNorms::NoNotebook(dir) => Self::said(words!(command::no_home, dir = dir.display().to_string())),
            NoNorms::Io { path, why } => Self::file(&path, why),
            NoNorms::Unusable { path, why } => {
                let file = path.display().to_string();
                Self::said(words!(command_norms::unusable, file = file, why = why.to_string()))
            }
            NoNorms::Store(why) => why.into(),
        }
    }
}
