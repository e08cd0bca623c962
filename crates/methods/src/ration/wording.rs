//! Free text about food, cut into comparable words.
//!
//! Source: own rules, tested against the facts. Leans towards finding a danger that is not there over missing one.

use super::aliases::NOT_MADE_OF;
use sayso_model::Language;
use sayso_model::text::unaccented;

/// Accented words that are other words without their accents ("the", "sale").
const ACCENTED: [(&str, &[&str]); 3] = [
    ("tea", &["thé", "thés", "té", "tés", "chá", "chás"]),
    ("salty", &["salé", "salés", "salée", "salées"]),
    // A word alone: other nuts (hazelnuts, peanuts) end in it and are not on the list.
    ("nuss", &["nüsse", "nüssen", "nuesse", "nuessen"]),
];

/// What French leaves before an apostrophe ("d'oignon").
const ELIDED: [&str; 9] = ["l", "d", "n", "s", "j", "m", "t", "c", "qu"];

/// How German says that something is left out, at the end of a word ("zuckerfrei").
const FREE: [&str; 6] = ["frei", "freie", "freien", "freier", "freies", "freiem"];

/// Lower-case singular words of a text; accents folded, everything but letters and digits a gap.
pub(super) fn food_words(text: &str) -> Vec<String> {
    let apart = |c: char| !c.is_alphanumeric() && c != '\'';
    let apart_marks = |c: &char| !matches!(c, '\u{300}'..='\u{36f}');
    let lower: String = text.chars().flat_map(char::to_lowercase).filter(apart_marks).collect();
    let lower = lower.replace(['’', 'ʼ'], "'");
    let raw: Vec<&str> = lower.split(apart).filter(|w| w.chars().any(char::is_alphanumeric)).collect();
    // "os" is French for a bone, and an article in Portuguese.
    if raw == ["os"] {
        return vec!["bone".to_owned()];
    }
    let mut words = Vec::new();
    for word in raw {
        let word = match word.split_once('\'') {
            Some((before, "os")) if ELIDED.contains(&before) => "bone",
            Some((before, after)) if ELIDED.contains(&before) && after.chars().count() > 1 => after,
            _ => word,
        };
        if let Some((read, _)) = ACCENTED.iter().find(|(_, written)| written.contains(&word)) {
            words.push((*read).to_owned());
            continue;
        }
        let folded = unaccented(&word.replace('\'', ""));
        match FREE.iter().find_map(|end| folded.strip_suffix(end)).filter(|stem| stem.len() > 3) {
            Some(stem) => words.extend([singular(stem), "free".to_owned()]),
            None => words.push(singular(&folded)),
        }
    }
    words
}

/// A name to look for.
#[derive(Clone, PartialEq, Eq, Debug)]
pub(super) struct Name {
    /// Its singular words.
    pub words: Vec<String>,
    language: Language,
    /// Whether the word may go on before and after it.
    open: (bool, bool),
}

impl Name {
    /// A name of the lists, with stars where its word may go on; also with "ae" for "ä", as German is typed without umlauts.
    pub(super) fn all(language: Language, listed: &str) -> Vec<Self> {
        let open = (listed.starts_with('*'), listed.ends_with('*'));
        let of = |text: &str| Self { words: food_words(text), language, open };
        let typed = listed.to_lowercase().replace('ä', "ae").replace('ö', "oe").replace('ü', "ue");
        let mut all = vec![of(listed)];
        if language == Language::De && typed != listed.to_lowercase() {
            all.push(of(&typed));
        }
        all
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

/// Looks for a name in `text` (singular words); gives how, and where it starts.
pub(super) fn find(name: &Name, text: &[String]) -> Option<(Found, usize)> {
    let phrase = &name.words;
    if phrase.is_empty() || phrase.len() > text.len() {
        return None;
    }
    let mut best: Option<(Found, usize)> = None;
    for (start, window) in text.windows(phrase.len()).enumerate() {
        let written = phrase.iter().zip(window).all(|(p, w)| same(name, p, w));
        if !written && !phrase.iter().zip(window).all(|(p, w)| same(name, p, w) || misspelt(name.language, p, w)) {
            continue;
        }
        let free = text.get(start + phrase.len()).is_some_and(|w| w == "free");
        let found = match (left_out(name.language, &text[..start]) || free, written) {
            (true, _) => Found::Without,
            (_, true) => Found::Written,
            (_, false) => Found::Misspelt,
        };
        let rank = |f: Found| [Found::Without, Found::Misspelt, Found::Written].iter().position(|g| *g == f);
        if best.is_none_or(|(b, _)| rank(found) > rank(b)) {
            best = Some((found, start));
        }
    }
    best
}

/// Whether the words before say that what follows is left out ("sans" reads "san"). In Portuguese "no" is "in the".
fn left_out(language: Language, before: &[String]) -> bool {
    let word = |back: usize| before.len().checked_sub(back).map(|i| before[i].as_str());
    match (word(2), word(1)) {
        (_, Some("no")) => language != Language::Pt,
        (_, Some("without" | "non" | "sin" | "ohne" | "kein" | "keine" | "san" | "sem" | "nao" | "ni" | "nem"))
        | (Some("pas" | "libre" | "livre" | "exento" | "isento" | "exempt"), Some("de"))
        | (Some("free"), Some("of"))
        | (Some("frei"), Some("von")) => true,
        _ => false,
    }
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

fn innocent(term: &str, word: &str) -> bool {
    INNOCENT.contains(&word) || NOT_MADE_OF.iter().any(|(begins, of)| word.starts_with(begins) && term.starts_with(of))
}

fn same(name: &Name, term: &str, word: &str) -> bool {
    if term == word {
        return true;
    }
    // English and German put what a thing is made of at either end; Spanish, French and Portuguese go on at the end only.
    let ends = matches!(name.language, Language::En | Language::De);
    let long = term.len() >= LONG_ENOUGH_TO_COMPOUND;
    let (before, after) = name.open;
    let alone = name.words.len() == 1;
    let goes_on = (word.starts_with(term) && (long || (alone && after)))
        || (word.ends_with(term) && ((long && ends) || (alone && before)))
        || (alone && before && after && word.contains(term));
    goes_on && !innocent(term, word)
}

fn misspelt(language: Language, term: &str, word: &str) -> bool {
    let unlike = term.chars().next() != word.chars().next() || term.len().abs_diff(word.len()) > 2;
    if unlike || innocent(term, word) {
        return false;
    }
    let (shorter, apart) = (term.len().min(word.len()), edits(term, word));
    match shorter {
        // Endings change more in these languages: two letters apart is another word there.
        8 | 9 if language != Language::En => apart <= 1,
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
        Name::all(Language::En, phrase).iter().find_map(|name| find(name, &food_words(text))).map(|(f, _)| f)
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
