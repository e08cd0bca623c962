//! The sounds of a label: dictionary first, letter rules where it is silent.
//!
//! Source: see `dictionary` and `spelling`.

use super::dictionary::pronunciation;
use super::phoneme::Phoneme;
use super::spelling;
use sayso_model::Language;

/// How a word's sounds were found.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum ReadBy {
    /// In the pronouncing dictionary.
    Dictionary,
    /// Guessed by the letter rules of the language.
    Rules,
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

/// Reads a label aloud. English has a dictionary (American) and letter rules for the words it lacks, the other languages
/// have letter rules.
///
/// ```
/// use sayso_methods::words::sounds_of;
/// use sayso_model::Language;
/// let all_done = sounds_of("all done!", Language::En);
/// assert_eq!((all_done.phonemes.len(), all_done.guessed()), (5, false));
/// assert!(sounds_of("snoofle", Language::En).guessed() && sounds_of("queso", Language::Es).guessed());
/// assert!(sounds_of("", Language::En).phonemes.is_empty());
/// ```
pub fn sounds_of(label: &str, language: Language) -> Sounds {
    let mut sounds = Sounds { phonemes: Vec::new(), words: Vec::new() };
    for word in words(label, language) {
        let known = if language == Language::En { pronunciation(&word) } else { None };
        let (said, by) =
            known.map_or_else(|| (spelling::read(language, &word), ReadBy::Rules), |s| (s, ReadBy::Dictionary));
        sounds.phonemes.extend(said);
        sounds.words.push((word, by));
    }
    sounds
}

// Letters and inner apostrophes make words; digits are said one by one.
fn words(label: &str, language: Language) -> Vec<String> {
    let mut spaced = String::new();
    for c in label.chars().flat_map(char::to_lowercase) {
        match (c, c.to_digit(10).and_then(|d| spelling::digit(language, d))) {
            (_, Some(digit)) => spaced.extend([" ", digit, " "]),
            ('’', _) => spaced.push('\''),
            // An accent that was typed as a character of its own.
            ('\u{300}'..='\u{36f}', _) => {
                if let Some(letter) = spaced.pop() {
                    spaced.push(accented(letter, c));
                }
            }
            _ => spaced.push(c),
        }
    }
    let cut = spaced.split(|c: char| !c.is_alphabetic() && c != '\'').map(|w| w.trim_matches('\''));
    cut.filter(|w| !w.is_empty()).map(str::to_owned).collect()
}

// The letter with its accent as one character, as the rules write it; other marks are left out.
const fn accented(letter: char, mark: char) -> char {
    match (letter, mark) {
        ('a', '\u{300}') => 'à',
        ('e', '\u{300}') => 'è',
        ('u', '\u{300}') => 'ù',
        ('a', '\u{301}') => 'á',
        ('e', '\u{301}') => 'é',
        ('i', '\u{301}') => 'í',
        ('o', '\u{301}') => 'ó',
        ('u', '\u{301}') => 'ú',
        ('a', '\u{302}') => 'â',
        ('e', '\u{302}') => 'ê',
        ('i', '\u{302}') => 'î',
        ('o', '\u{302}') => 'ô',
        ('u', '\u{302}') => 'û',
        ('a', '\u{303}') => 'ã',
        ('o', '\u{303}') => 'õ',
        ('n', '\u{303}') => 'ñ',
        ('a', '\u{308}') => 'ä',
        ('e', '\u{308}') => 'ë',
        ('i', '\u{308}') => 'ï',
        ('o', '\u{308}') => 'ö',
        ('u', '\u{308}') => 'ü',
        ('c', '\u{327}') => 'ç',
        _ => letter,
    }
}
