//! A button's label out of a reward's name: short, and what a home would say.
//!
//! Source: own rules. Amounts, articles, describing words and what follows "with", "of" and the like are dropped; of what is
//! left the word that names the thing is taken: the last in English and German; the first in Spanish, French and
//! Portuguese, and no other there, since what follows it describes it. One or two syllables are common practice for a button (no source). The lists of words (`naming.rs`) are from memory.

use super::naming::LANGUAGES;
use super::sounds::sounds_of;
use sayso_model::Language;

/// Most syllables of a good label (common practice, no source).
pub const MOST_SYLLABLES: usize = 2;

/// Labels for something by its name, best first: one word that names the thing, then its other words, then the whole
/// name where nothing is left.
///
/// ```
/// use sayso_methods::words::labels_for;
/// use sayso_model::Language;
/// assert_eq!(labels_for("Cheese cube", Language::En)[0], "cheese");
/// assert_eq!(labels_for("belly rub", Language::En), ["rub", "belly"]);
/// assert_eq!(labels_for("a piece of cooked chicken, 2 g", Language::En)[0], "chicken");
/// assert_eq!(labels_for("caricia en la barriga", Language::Es)[0], "caricia");
/// assert_eq!(labels_for("ein Stück käse", Language::De)[0], "Käse");
/// ```
#[must_use]
pub fn labels_for(name: &str, language: Language) -> Vec<String> {
    let rules = LANGUAGES.iter().find(|l| l.language == language).unwrap_or(&LANGUAGES[0]);
    // What follows a comma or stands in brackets only describes.
    let first = name.split([',', ';', ':', '(']).find(|part| part.chars().any(char::is_alphabetic)).unwrap_or(name);
    let lower = first.to_lowercase();
    let words: Vec<&str> = lower
        .split(|c: char| !(c.is_alphanumeric() || c == '-'))
        .filter(|w| w.chars().any(char::is_alphabetic) && !w.starts_with(|c: char| c.is_numeric()))
        .collect();
    let mut kept: Vec<&str> = Vec::new();
    for (i, word) in words.iter().enumerate() {
        if rules.joins.contains(word) && kept.is_empty() && i > 0 {
            // "Tira y afloja": what stands before "and" is no amount of what follows.
            kept.push(words[i - 1]);
            break;
        }
        if rules.links.contains(word) || rules.joins.contains(word) {
            // "Piece of cheese": nothing that names the thing has come yet.
            if kept.is_empty() {
                continue;
            }
            break;
        }
        if !rules.dropped.contains(word) {
            kept.push(word);
        }
    }
    let named = |w: &&&str| !rules.describing.iter().any(|end| w.len() > end.len() + 3 && w.ends_with(end));
    let naming: Vec<&str> = kept.iter().filter(named).copied().collect();
    let mut kept = if naming.is_empty() { kept } else { naming };
    if rules.head_last {
        kept.reverse();
    } else {
        kept.truncate(1);
    }
    // Stable: of words equally short the one that names the thing stays first.
    kept.sort_by_key(|w| syllables(w, language) > MOST_SYLLABLES);
    kept.dedup();
    let written = |word: &str| if rules.capital { capitalised(word) } else { word.to_owned() };
    if kept.is_empty() {
        return vec![written(&name.trim().to_lowercase())];
    }
    kept.into_iter().map(written).collect()
}

/// A word with its first letter as a capital.
fn capitalised(word: &str) -> String {
    let mut letters = word.chars();
    letters.next().map_or_else(String::new, |first| first.to_uppercase().chain(letters).collect())
}

/// Syllables of a label: its sounds that are vowels, vowels side by side counting once where letter rules tell no
/// diphthongs.
///
/// ```
/// use sayso_methods::words::syllables;
/// use sayso_model::Language;
/// assert_eq!((syllables("tug", Language::En), syllables("chicken", Language::En), syllables("dandelion", Language::En)), (1, 2, 4));
/// ```
#[must_use]
pub fn syllables(label: &str, language: Language) -> usize {
    let sounds = sounds_of(label, language).phonemes;
    let mut count = 0;
    let mut before = false;
    for sound in &sounds {
        let now = sound.is_vowel();
        count += usize::from(now && (language == Language::En || !before));
        before = now;
    }
    count.max(usize::from(!label.trim().is_empty()))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn first(name: &str, language: Language) -> String {
        labels_for(name, language).into_iter().next().unwrap_or_default()
    }

    #[test]
    fn amounts_articles_and_descriptions_fall_away() {
        for (name, label) in [
            ("Cheese cube", "cheese"),
            ("Belly rub", "rub"),
            ("tug", "tug"),
            ("Tug with the long rope", "tug"),
            ("dried fish, one bit", "fish"),
            ("2 g of cooked chicken", "chicken"),
            ("a long walk", "walk"),
            ("scattered kibble", "kibble"),
            ("shredded", "shredded"),
            ("bed", "bed"),
            ("one or two pieces of cheese", "cheese"),
            ("a piece or two of cheese", "cheese"),
        ] {
            assert_eq!(first(name, Language::En), label, "{name}");
        }
        for (name, language, label) in [
            ("ein Stück Käse", Language::De, "Käse"),
            ("käse", Language::De, "Käse"),
            ("ein oder zwei Stück Käse", Language::De, "Käse"),
            ("Ökoknochen", Language::De, "Ökoknochen"),
            ("Bauch kraulen", Language::De, "Kraulen"),
            ("un trozo de queso", Language::Es, "queso"),
            ("un petit morceau de fromage", Language::Fr, "fromage"),
            ("carinho na barriga", Language::Pt, "carinho"),
        ] {
            assert_eq!(first(name, language), label, "{name}");
        }
    }

    #[test]
    fn a_short_word_goes_before_a_long_one_and_nothing_is_lost() {
        assert_eq!(labels_for("dandelion salad", Language::En), ["salad", "dandelion"]);
        assert_eq!(labels_for("rabbit dandelion", Language::En), ["rabbit", "dandelion"]);
        for name in ["", "  ", "12 g", "the", "…", "ПЕС"] {
            assert_eq!(labels_for(name, Language::En).len(), 1, "{name:?}");
        }
    }
}
