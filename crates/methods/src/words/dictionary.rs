//! The pronouncing dictionary, packed by the build script and searched where it lies: nothing is loaded at start-up.
//!
//! Source: the CMU Pronouncing Dictionary (first pronunciation, without stress; American English), from the crate
//! `cmudict-fast`. Format: number of blocks, offset of each block (u32, little endian), then blocks of 32 words in byte order; a word is
//! letters shared with the word before it, count of further letters, these letters, count of sounds, their codes.

use super::phoneme::Phoneme;

static PACKED: &[u8] = include_bytes!(concat!(env!("OUT_DIR"), "/pronunciations.bin"));

/// The dictionary's licence, to go with any binary that holds it.
pub const DICTIONARY_LICENCE: &str = include_str!(concat!(env!("OUT_DIR"), "/pronunciations-licence.txt"));

/// Sounds of one English word (letters and apostrophes, any case), or none if the dictionary lacks it.
///
/// ```
/// use sayso_methods::words::pronunciation;
/// let names: Vec<_> = pronunciation("Walk").unwrap().into_iter().map(|p| p.name()).collect();
/// assert_eq!(names, ["W", "AO", "K"]);
/// assert_eq!(pronunciation("qqqq"), None);
/// ```
pub fn pronunciation(word: &str) -> Option<Vec<Phoneme>> {
    let word = word.to_lowercase();
    let blocks = number(0)?;
    // The last block whose first word is not after the word sought.
    let (mut low, mut high) = (0, blocks);
    while high - low > 1 {
        let middle = low + (high - low) / 2;
        if Block::at(middle, blocks)?.next()?.0.as_slice() <= word.as_bytes() { low = middle } else { high = middle }
    }
    let mut block = Block::at(low, blocks)?;
    while let Some((found, codes)) = block.next() {
        if found == word.as_bytes() {
            return codes.iter().map(|c| Phoneme::from_code(*c)).collect();
        }
    }
    None
}

fn number(index: usize) -> Option<usize> {
    let bytes = PACKED.get(index * 4..index * 4 + 4)?;
    usize::try_from(u32::from_le_bytes(bytes.try_into().ok()?)).ok()
}

struct Block {
    word: Vec<u8>,
    rest: &'static [u8],
}

impl Block {
    fn at(index: usize, blocks: usize) -> Option<Self> {
        let body = PACKED.get((1 + blocks) * 4..)?;
        let start = number(1 + index)?;
        let end = if index + 1 < blocks { number(2 + index)? } else { body.len() };
        Some(Self { word: Vec::new(), rest: body.get(start..end)? })
    }

    fn next(&mut self) -> Option<(Vec<u8>, &'static [u8])> {
        let (shared, rest) = self.rest.split_first()?;
        let (more, rest) = rest.split_first()?;
        let (letters, rest) = rest.split_at_checked(usize::from(*more))?;
        let (sounds, rest) = rest.split_first()?;
        let (codes, rest) = rest.split_at_checked(usize::from(*sounds))?;
        self.word.truncate(usize::from(*shared));
        self.word.extend_from_slice(letters);
        self.rest = rest;
        Some((self.word.clone(), codes))
    }
}

#[cfg(test)]
pub(super) fn every_word() -> impl Iterator<Item = (String, Vec<Phoneme>)> {
    let blocks = number(0).unwrap_or_default();
    (0..blocks).filter_map(move |index| Block::at(index, blocks)).flat_map(|mut block| {
        std::iter::from_fn(move || {
            let (word, codes) = block.next()?;
            let sounds = codes.iter().map(|c| Phoneme::from_code(*c)).collect::<Option<_>>()?;
            Some((String::from_utf8_lossy(&word).into_owned(), sounds))
        })
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    fn names(word: &str) -> Option<Vec<String>> {
        Some(pronunciation(word)?.iter().map(|p| p.name()).collect())
    }

    #[test]
    fn every_packed_word_is_found_again() {
        let (mut words, mut last) = (0, String::new());
        for (word, sounds) in every_word() {
            assert!(last < word, "out of order: {word}");
            assert_eq!(pronunciation(&word), Some(sounds), "{word}");
            last = word;
            words += 1;
        }
        assert!(words > 120_000, "{words} words");
    }

    #[test]
    fn words_around_the_ends_and_absent_ones_are_answered() {
        assert_eq!(names("a").as_deref(), Some(&["AH".to_owned()][..]));
        for absent in ["", "'", "zzzzzzzz", "~", "é", "water water", "\u{0}"] {
            assert_eq!(names(absent), None, "{absent:?}");
        }
        assert!(DICTIONARY_LICENCE.contains("Carnegie Mellon"));
    }
}
