//! The closed vocabularies of the table: what cannot be said in them is not said.

use datafusion::arrow::array::{Array, AsArray, DictionaryArray, StringArray, UInt8Array};
use datafusion::arrow::datatypes::UInt8Type;
use datafusion::common::{Result, exec_err};
use sayso_norms::{AgeBand, WordKind};
use std::sync::Arc;

/// A list of words, known beforehand.
pub trait Vocabulary: Copy + PartialEq + Sized + 'static {
    /// Every word of it, in the order of their numbers.
    const ALL: &'static [Self];

    /// How it is written.
    fn name(self) -> &'static str;

    /// What it means.
    fn means(self) -> &'static str;

    /// Its number.
    fn number(self) -> u8 {
        Self::ALL.iter().position(|each| *each == self).and_then(|at| u8::try_from(at).ok()).unwrap_or(u8::MAX)
    }

    /// The word that is written so.
    fn named(name: &str) -> Option<Self> {
        Self::ALL.iter().copied().find(|each| each.name() == name)
    }
}

macro_rules! vocabulary {
    ($($(#[$doc:meta])* $name:ident { $(#[doc = $means:literal] $variant:ident => $word:literal),+ $(,)? })+) => {$(
        $(#[$doc])*
        #[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
        pub enum $name { $(#[doc = $means] $variant),+ }

        impl Vocabulary for $name {
            const ALL: &'static [Self] = &[$(Self::$variant),+];
            fn name(self) -> &'static str {
                match self { $(Self::$variant => $word),+ }
            }
            fn means(self) -> &'static str {
                match self { $(Self::$variant => $means),+ }.trim_start()
            }
        }
    )+};
}

vocabulary! {
    /// What a row tells.
    Kind {
        /// A person pressed the word and gave the thing, of their own accord or after an invitation or a request: an exposure.
        Showing => "showing",
        /// A button sounded otherwise: by the animal, by nobody knows whom, or by a person who then did not give the thing.
        Press => "press",
        /// A press that looked like a stumble.
        Stumble => "stumble",
        /// An offered opportunity, then a wait.
        Invitation => "invitation",
        /// A request made without a button.
        Catch => "catch",
        /// A stretch at the board, from its start to its end.
        Session => "session",
        /// The animal looked at the board.
        Look => "look",
        /// Contact that did not sound the button.
        Brush => "brush",
        /// Observed body language.
        Sign => "sign",
        /// A word came to a stage.
        Stage => "stage",
    }
    /// Who pressed.
    By {
        /// The animal.
        Animal => "animal",
        /// A person.
        Person => "person",
        /// Nobody saw.
        Unknown => "unknown",
    }
    /// What came of it; which words are used depends on the kind of row.
    Outcome {
        /// A press was answered with the thing.
        Given => "given",
        /// A press was answered with some of it.
        Partly => "partly",
        /// A press was answered with "not now".
        Declined => "declined",
        /// A press was answered with something else.
        Alternative => "alternative",
        /// A press was not answered in time.
        Missed => "missed",
        /// At an invitation the invited word was pressed.
        Right => "right",
        /// At an invitation another word was pressed.
        Wrong => "wrong",
        /// At an invitation the animal answered in its own way.
        OwnWay => "own_way",
        /// At an invitation nothing came by the end of the wait.
        Nothing => "nothing",
        /// The animal left.
        Left => "left",
        /// A session ended as planned.
        Done => "done",
        /// A session ended because body language said stop.
        StrongSign => "strong_sign",
        /// A session ended with a closing word.
        ClosingWord => "closing_word",
        /// Something else came up in a session.
        Interrupted => "interrupted",
        /// The animal takes part: body language.
        Joining => "joining",
        /// A mild sign of stress.
        Mild => "mild",
        /// A strong sign of stress.
        Strong => "strong",
        /// The stage in which a word is prepared.
        Prepare => "prepare",
        /// The stage in which a word is shown.
        Show => "show",
        /// The stage in which the animal is invited to press it.
        Invite => "invite",
        /// The stage in which the animal presses of its own accord.
        Converse => "converse",
    }
}

impl Vocabulary for WordKind {
    const ALL: &'static [Self] = &Self::ALL;

    fn name(self) -> &'static str {
        self.name()
    }

    fn means(self) -> &'static str {
        match self {
            Self::Food => "Anything eaten or licked.",
            Self::Play => "Play with a person or a toy.",
            Self::Touch => "Being stroked, brushed, held.",
            Self::Training => "A known exercise.",
            Self::Exploring => "Going somewhere, sniffing, looking.",
            Self::Rest => "A place or time to rest.",
            Self::Closing => "It ends a session.",
            Self::Other => "Nothing is said of what it brings.",
        }
    }
}

impl Vocabulary for AgeBand {
    const ALL: &'static [Self] = &Self::ALL;

    fn name(self) -> &'static str {
        self.name()
    }

    fn means(self) -> &'static str {
        match self {
            Self::UnderTwo => "Under two years.",
            Self::TwoToSeven => "Two to seven years.",
            Self::EightOrMore => "Eight years or more.",
            Self::Unknown => "Not known.",
        }
    }
}

/// Numbers of a vocabulary as a column of its words.
pub(crate) fn column<V: Vocabulary>(numbers: impl IntoIterator<Item = Option<V>>) -> DictionaryArray<UInt8Type> {
    let keys: UInt8Array = numbers.into_iter().map(|word| word.map(V::number)).collect();
    let words = StringArray::from_iter_values(V::ALL.iter().map(|word| word.name()));
    // Every number is a place in the list of words.
    DictionaryArray::new(keys, Arc::new(words))
}

/// The words of a column, row by row. A dictionary read from a file numbers its words in an order of its own.
///
/// # Errors
/// Where the column is no dictionary of text, or has a word that the vocabulary has not.
pub(crate) fn words<V: Vocabulary>(column: &dyn Array) -> Result<impl Fn(usize) -> Option<V> + '_> {
    let Some(dictionary) = column.as_any().downcast_ref::<DictionaryArray<UInt8Type>>() else {
        return exec_err!("a column of words must be a dictionary numbered by bytes, not {}", column.data_type());
    };
    let Some(texts) = dictionary.values().as_string_opt::<i32>() else {
        return exec_err!("a dictionary must hold text, not {}", dictionary.values().data_type());
    };
    let mut known = Vec::with_capacity(texts.len());
    for text in texts {
        let word = text.map(|text| V::named(text).ok_or(text)).transpose();
        match word {
            Ok(word) => known.push(word),
            Err(text) => return exec_err!("\"{text}\" is not in the vocabulary of this column"),
        }
    }
    let keys = dictionary.keys();
    Ok(
        move |row: usize| {
            if keys.is_null(row) { None } else { known.get(usize::from(keys.value(row))).copied().flatten() }
        },
    )
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;

    #[test]
    fn a_column_gives_back_its_words_whatever_their_numbers() {
        let all = [Some(Kind::Press), None, Some(Kind::Stage), Some(Kind::Showing)];
        let mine = column(all);
        let back = words::<Kind>(&mine).unwrap();
        assert_eq!((0..4).map(&back).collect::<Vec<_>>(), all);
        let other: DictionaryArray<UInt8Type> = ["stage", "press"].into_iter().collect();
        let back = words::<Kind>(&other).unwrap();
        assert_eq!([back(0), back(1)], [Some(Kind::Stage), Some(Kind::Press)]);
    }

    #[test]
    fn a_word_of_no_vocabulary_is_refused() {
        let other: DictionaryArray<UInt8Type> = ["press", "Wick"].into_iter().collect();
        let why = words::<Kind>(&other).err().unwrap().to_string();
        assert!(why.contains("\"Wick\""), "{why}");
    }
}
