//! A word as it is written on a pad: how long its longest part is, and where it may be parted.

use hypher::{Lang, hyphenate};
use sayso_model::Language;

/// Words of more letters than this may be parted; shorter ones fit any pad.
const WHOLE: usize = 6;
/// Lengths that a class of their own exists for, in letters.
const LENGTHS: (usize, usize) = (4, 16);
/// Where a word may be parted, with a hyphen, if its line ends there.
const SOFT_HYPHEN: &str = "\u{ad}";

/// A word of more letters leaves a picture beside it less room.
const LONG: usize = 8;
/// A label of more letters takes several lines of a small pad, and its count gives way to them.
const MUCH: usize = 12;

/// The classes that say how many letters the longest word of a label has, and whether it is long.
#[must_use]
pub fn length(says: &str) -> String {
    let longest = says.split_whitespace().map(|word| word.chars().count()).max().unwrap_or(0);
    let long = if longest > LONG { " long" } else { "" };
    let much = if says.chars().count() > MUCH { " much" } else { "" };
    format!("l-{}{long}{much}", longest.clamp(LENGTHS.0, LENGTHS.1))
}

/// The class of a mat that says how long its longest word is: its short words are written not much larger than that one.
#[must_use]
pub fn longest<'a>(says: impl Iterator<Item = &'a str>) -> &'static str {
    let longest = says.flat_map(str::split_whitespace).map(|word| word.chars().count()).max().unwrap_or(0);
    match longest {
        n if n <= WHOLE => "",
        n if n <= LONG => " upto-8",
        _ => " upto-10",
    }
}

/// The label with soft hyphens in its long words, by the rules of its language.
#[must_use]
pub fn parted(says: &str, language: Language) -> String {
    let language = match language {
        Language::En => Lang::English,
        Language::Es => Lang::Spanish,
        Language::De => Lang::German,
        Language::Fr => Lang::French,
        Language::Pt => Lang::Portuguese,
    };
    let word = |word: &str| match word.chars().count() > WHOLE {
        true => hyphenate(word, language).flat_map(short).collect::<Vec<_>>().join(SOFT_HYPHEN),
        false => word.to_owned(),
    };
    says.split(' ').map(word).collect::<Vec<_>>().join(" ")
}

/// A syllable in parts that fit any pad: in another language than the board's a word may have none that does.
fn short(syllable: &str) -> Vec<String> {
    let letters: Vec<char> = syllable.chars().collect();
    let parts = letters.len().div_ceil(WHOLE + 1).max(1);
    letters.chunks(letters.len().div_ceil(parts).max(1)).map(|part| part.iter().collect()).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn shown(says: &str, language: Language) -> String {
        parted(says, language).replace(SOFT_HYPHEN, "-")
    }

    #[test]
    fn long_words_are_parted_by_the_rules_of_their_language_and_short_ones_never() {
        assert_eq!(shown("Streicheleinheit", Language::De), "Strei-chel-ein-heit");
        assert_eq!(shown("caminata larga", Language::Es), "ca-mi-na-ta larga");
        assert_eq!(shown("all done", Language::En), "all done");
        assert_eq!(shown("scratch", Language::En), "scratch");
        assert!(shown("Streicheleinheit", Language::En).split('-').all(|part| part.chars().count() <= 7));
    }

    #[test]
    fn the_longest_word_counts_in_letters_and_stays_within_bounds() {
        assert_eq!(length("all done"), "l-4");
        assert_eq!(length("gehen wir"), "l-5");
        assert_eq!(length("Bälle"), "l-5");
        assert_eq!(length("raus gehen wir"), "l-5 much");
        assert_eq!(length("Leberwurst"), "l-10 long");
        assert_eq!(length("Donaudampfschifffahrt"), "l-16 long much");
        let mats = [vec!["tug", "all done"], vec!["tug", "outside"], vec!["tug", "dandelion"], vec![]];
        assert_eq!(mats.map(|says| longest(says.into_iter())), ["", " upto-8", " upto-10", ""]);
    }
}
