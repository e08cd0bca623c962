//! Free text about food, cut into comparable words.
//!
//! Source: own rules, tested against the facts. Leans towards finding a danger that is not there over missing one.

/// Lower-case singular words of a text; accents folded, everything but letters and digits a gap.
pub(super) fn food_words(text: &str) -> Vec<String> {
    let folded: String = text.chars().flat_map(char::to_lowercase).map(fold).filter(|c| *c != '\'').collect();
    folded.split(|c: char| !c.is_alphanumeric()).filter(|w| !w.is_empty()).map(singular).collect()
}

const fn fold(c: char) -> char {
    match c {
        'à' | 'á' | 'â' | 'ä' | 'ã' | 'å' => 'a',
        'ç' => 'c',
        'è' | 'é' | 'ê' | 'ë' => 'e',
        'ì' | 'í' | 'î' | 'ï' => 'i',
        'ñ' => 'n',
        'ò' | 'ó' | 'ô' | 'ö' | 'õ' | 'ø' => 'o',
        'ù' | 'ú' | 'û' | 'ü' => 'u',
        '’' | 'ʼ' => '\'',
        other => other,
    }
}

// Both sides of a comparison pass through here, so only sameness matters, not good English ("cookie" is "cooky").
fn singular(word: &str) -> String {
    let ends = |e: &str| word.ends_with(e);
    let less = |n: usize| word[..word.len() - n].to_owned();
    if (word.len() < 4 && !ends("ie")) || !word.is_ascii() || ends("ss") || ends("us") || ends("is") {
        word.to_owned()
    } else if ends("ies") {
        less(3) + "y"
    } else if ends("ie") {
        less(2) + "y"
    } else if ends("oes") || ends("ches") || ends("shes") || ends("xes") || ends("sses") {
        less(2)
    } else if ends("s") {
        less(1)
    } else {
        word.to_owned()
    }
}

/// How a phrase is found in a text.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub(super) enum Found {
    /// In these words, or inside a longer word.
    Written,
    /// In a likely misspelling.
    Misspelt,
    /// Only as something the text says is left out.
    Without,
}

/// Looks for `phrase` (singular words) in `text`; gives how, and where it starts.
pub(super) fn find(phrase: &[String], text: &[String]) -> Option<(Found, usize)> {
    if phrase.is_empty() || phrase.len() > text.len() {
        return None;
    }
    let mut best: Option<(Found, usize)> = None;
    for (start, window) in text.windows(phrase.len()).enumerate() {
        let found = if phrase.iter().zip(window).all(|(p, w)| same(p, w)) {
            let before = start.checked_sub(1).and_then(|i| text.get(i));
            let after = text.get(start + phrase.len());
            let said = before.is_some_and(|w| matches!(w.as_str(), "no" | "without" | "non"))
                || after.is_some_and(|w| w == "free");
            if said { Found::Without } else { Found::Written }
        } else if phrase.iter().zip(window).all(|(p, w)| same(p, w) || misspelt(p, w)) {
            Found::Misspelt
        } else {
            continue;
        };
        let rank = |f: Found| [Found::Without, Found::Misspelt, Found::Written].iter().position(|g| *g == f);
        if best.is_none_or(|(b, _)| rank(found) > rank(b)) {
            best = Some((found, start));
        }
    }
    best
}

// Long enough that a word which begins or ends with it is nearly always made of it ("cheesecake").
const LONG_ENOUGH_TO_COMPOUND: usize = 5;

// Words that look like a dangerous one and are not made of it.
const INNOCENT: [&str; 13] = [
    "grapefruit",
    "grapeseed",
    "breadfruit",
    "sweetbread",
    "sourdough",
    "doughnut",
    "toffee",
    "cheesecloth",
    "breadth",
    "pineapple",
    "honeydew",
    "crispy",
    "unsalted",
];

fn same(term: &str, word: &str) -> bool {
    term == word
        || (term.len() >= LONG_ENOUGH_TO_COMPOUND
            && !INNOCENT.contains(&word)
            && (word.starts_with(term) || word.ends_with(term)))
}

fn misspelt(term: &str, word: &str) -> bool {
    if INNOCENT.contains(&word) || term.chars().next() != word.chars().next() {
        return false;
    }
    let (shorter, apart) = (term.len().min(word.len()), edits(term, word));
    match shorter {
        0..=4 => false,
        // So short a word has too many neighbours; two letters swapped is the slip that remains.
        5 => term.len() == word.len() && apart == 1 && sorted(term) == sorted(word),
        6 | 7 => apart <= 1,
        _ => apart <= 2,
    }
}

fn sorted(word: &str) -> Vec<char> {
    let mut letters: Vec<char> = word.chars().collect();
    letters.sort_unstable();
    letters
}

// Optimal string alignment: insertions, deletions, substitutions, swaps of neighbours.
fn edits(a: &str, b: &str) -> usize {
    let (a, b): (Vec<char>, Vec<char>) = (a.chars().collect(), b.chars().collect());
    let mut rows = vec![(0..=b.len()).collect::<Vec<usize>>()];
    for i in 1..=a.len() {
        let mut row = vec![i];
        for j in 1..=b.len() {
            let swapped = i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1];
            let substituted = rows[i - 1][j - 1] + usize::from(a[i - 1] != b[j - 1]);
            let best = substituted.min(rows[i - 1][j] + 1).min(row[j - 1] + 1);
            row.push(if swapped { best.min(rows[i - 2][j - 2] + 1) } else { best });
        }
        rows.push(row);
    }
    rows[a.len()][b.len()]
}

#[cfg(test)]
mod tests {
    use super::*;

    fn found(phrase: &str, text: &str) -> Option<Found> {
        find(&food_words(phrase), &food_words(text)).map(|(f, _)| f)
    }

    #[test]
    fn plurals_accents_and_compounds_read_as_one_word() {
        assert_eq!(food_words("Crème-BRÛLÉE, cookies & cherries"), ["creme", "brulee", "cooky", "cherry"]);
        assert_eq!(found("mince pie", "Mince pies"), Some(Found::Written));
        assert_eq!(found("cheese", "cheesecake"), Some(Found::Written));
        assert_eq!(found("grape", "grapefruit"), None);
        assert_eq!(found("grape", "Grapes (seedless)"), Some(Found::Written));
    }

    #[test]
    fn slips_of_the_finger_are_found_and_words_of_their_own_are_not() {
        assert_eq!(found("chocolate", "choclate drops"), Some(Found::Misspelt));
        assert_eq!(found("onion", "onoin"), Some(Found::Misspelt));
        assert_eq!(found("coffee", "toffee"), None);
        assert_eq!(found("grape", "grate"), None);
    }

    #[test]
    fn what_a_text_leaves_out_is_told_apart() {
        assert_eq!(found("xylitol", "xylitol-free peanut butter"), Some(Found::Without));
        assert_eq!(found("onion", "broth without onions"), Some(Found::Without));
        assert_eq!(found("onion", "onion-free gravy with onion powder"), Some(Found::Written));
    }
}
