//! The sounds of a label: dictionary first, letter rules where it is silent.
//!
//! Source: see `dictionary` and `letters`.

use super::dictionary::pronunciation;
use super::letters;
use super::phoneme::Phoneme;

/// How a word's sounds were found.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum ReadBy {
    /// In the pronouncing dictionary.
    Dictionary,
    /// Guessed by English letter rules.
    EnglishRules,
    /// Guessed, one sound a letter, because the language is not one with rules here.
    Letters,
}

/// The sounds of a label of one or more words.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Sounds {
    /// Sounds in order; empty for a label without letters.
    pub phonemes: Vec<Phoneme>,
    /// Each word with the way it was read.
    pub words: Vec<(String, ReadBy)>,
}

impl Sounds {
    /// Whether any word was guessed.
    pub fn guessed(&self) -> bool {
        self.words.iter().any(|(_, by)| *by != ReadBy::Dictionary)
    }
}

/// Reads a label aloud. `language` is a BCP 47 tag; English ("en", "en-GB", ...) has a dictionary (American) and letter
/// rules, any other language is read one sound a letter.
///
/// ```
/// use sayso_methods::words::sounds_of;
/// let all_done = sounds_of("all done!", "en");
/// assert_eq!((all_done.phonemes.len(), all_done.guessed()), (5, false));
/// assert!(sounds_of("snoofle", "en").guessed());
/// assert!(sounds_of("", "en").phonemes.is_empty());
/// ```
pub fn sounds_of(label: &str, language: &str) -> Sounds {
    let english = language.split(['-', '_']).next().is_some_and(|l| l.eq_ignore_ascii_case("en"));
    let mut sounds = Sounds { phonemes: Vec::new(), words: Vec::new() };
    for word in words(label) {
        let (said, by) = match (english, english.then(|| pronunciation(&word)).flatten()) {
            (_, Some(said)) => (said, ReadBy::Dictionary),
            (true, None) => (letters::english(&word), ReadBy::EnglishRules),
            (false, None) => (letters::generic(&word), ReadBy::Letters),
        };
        sounds.phonemes.extend(said);
        sounds.words.push((word, by));
    }
    sounds
}

// Letters and inner apostrophes make words; English digits are said one by one.
fn words(label: &str) -> Vec<String> {
    const DIGITS: [&str; 10] = ["zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine"];
    let mut spaced = String::new();
    for c in label.chars().flat_map(char::to_lowercase) {
        match c.to_digit(10).and_then(|d| DIGITS.get(d as usize)) {
            Some(digit) => spaced.extend([" ", digit, " "]),
            None if c == '’' => spaced.push('\''),
            None => spaced.push(c),
        }
    }
    let cut = spaced.split(|c: char| !c.is_alphabetic() && c != '\'').map(|w| w.trim_matches('\''));
    cut.filter(|w| !w.is_empty()).map(str::to_owned).collect()
}
