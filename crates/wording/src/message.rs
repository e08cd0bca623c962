//! Messages that are said later, by whoever knows the reader.

use crate::locale::Locale;
use std::fmt;
use std::sync::Arc;

/// A message with its arguments.
pub trait Message: fmt::Debug + Send + Sync {
    /// What it says to a reader.
    fn say(&self, locale: &Locale) -> String;

    /// Its id in the catalogues, by which programs tell it from others; none where it has no message of its own.
    fn kind(&self) -> Option<&'static str> {
        None
    }
}

/// What becomes a message by what it is, such as a fault.
pub trait Worded: fmt::Debug + Send + Sync {
    /// The message, its numbers written as the reader's language writes them.
    fn words(&self, locale: &Locale) -> Words;
}

impl<W: Worded> Message for W {
    fn say(&self, locale: &Locale) -> String {
        self.words(locale).say(locale)
    }

    fn kind(&self) -> Option<&'static str> {
        self.words(&Locale::ENGLISH).kind()
    }
}

/// A message on its way to a reader, as in an error.
#[derive(Clone, Debug)]
pub enum Words {
    /// One of the catalogues.
    Message(Arc<dyn Message>),
    /// Words that a floor below gave as a text: the same in every language.
    AsIs(String),
    /// Others, ended by a full stop.
    Sentence(Arc<Words>),
}

impl Words {
    /// The same as a sentence.
    #[must_use]
    pub fn sentence(self) -> Self {
        Self::Sentence(Arc::new(self))
    }

    /// The id of the message in the catalogues; none where they came as a text.
    #[must_use]
    pub fn kind(&self) -> Option<&'static str> {
        match self {
            Self::Message(message) => message.kind(),
            Self::AsIs(_) => None,
            Self::Sentence(words) => words.kind(),
        }
    }

    /// What they say to a reader.
    #[must_use]
    pub fn say(&self, locale: &Locale) -> String {
        match self {
            Self::Message(message) => message.say(locale),
            Self::AsIs(text) => text.clone(),
            Self::Sentence(words) => {
                let said = words.say(locale);
                if said.ends_with('.') { said } else { format!("{said}.") }
            }
        }
    }
}

impl fmt::Display for Words {
    /// In English, for the log.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.say(&Locale::ENGLISH))
    }
}

impl<M: Message + 'static> From<M> for Words {
    fn from(message: M) -> Self {
        Self::Message(Arc::new(message))
    }
}

impl From<&str> for Words {
    fn from(text: &str) -> Self {
        Self::AsIs(text.to_owned())
    }
}

impl From<String> for Words {
    fn from(text: String) -> Self {
        Self::AsIs(text)
    }
}
