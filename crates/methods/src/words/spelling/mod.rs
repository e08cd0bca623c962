//! From letters to sounds by letter rules, one list a language. A guess, and marked as one.
//!
//! Form of a rule: (left, letters, right, sounds): `letters` between `left` and `right` are said as `sounds`. In contexts `.`
//! is the word's edge, V a vowel letter, C a consonant letter, E a vowel letter that softens c and g, X the edge or a consonant
//! other than n, m and h (a nasal before it is said through the nose), D the edge or a voiceless consonant (German devoices before
//! it). The first rule that fits counts, so longer and narrower ones stand first. How far each list agrees with an independent
//! program stands in docs/methods/sounds-alike.md.

mod english;
mod french;
mod german;
mod portuguese;
mod spanish;

use super::phoneme::Phoneme;
use sayso_model::Language;

type Rule = (&'static str, &'static str, &'static str, &'static str);

/// How a language is spelt.
struct Spelling {
    vowels: &'static str,
    // Vowel letters that soften c and g.
    front: &'static str,
    digits: [&'static str; 10],
    // A sound by its name in the rules.
    sound: fn(&'static str) -> Option<Phoneme>,
    rules: &'static [Rule],
}

const fn spelling(language: Language) -> &'static Spelling {
    match language {
        Language::En => &english::ENGLISH,
        Language::Es => &spanish::SPANISH,
        Language::De => &german::GERMAN,
        Language::Fr => &french::FRENCH,
        Language::Pt => &portuguese::PORTUGUESE,
    }
}

/// The word for a digit, 0 to 9.
pub(super) fn digit(language: Language, digit: u32) -> Option<&'static str> {
    spelling(language).digits.get(usize::try_from(digit).ok()?).copied()
}

/// A word (lower case) by the letter rules of its language. A letter that they lack is read without its accent, or stays a
/// letter of unknown sound.
pub(super) fn read(language: Language, word: &str) -> Vec<Phoneme> {
    read_by(spelling(language), word)
}

fn read_by(spelling: &Spelling, word: &str) -> Vec<Phoneme> {
    let fits_some = |c: char| spelling.rules.iter().any(|(_, said, _, _)| said.chars().eq([c]));
    let letters: Vec<char> = word
        .chars()
        .filter(|c| *c != '\'')
        .map(|c| if c.is_ascii() || fits_some(c) { c } else { without_accent(c) })
        .collect();
    let mut sounds: Vec<Phoneme> = Vec::new();
    let mut at = 0;
    while let Some(letter) = letters.get(at) {
        match spelling.rules.iter().find(|rule| spelling.fits(rule, &letters, at)) {
            Some((_, said, _, names)) => {
                sounds.extend(names.split(' ').filter_map(spelling.sound));
                at += said.chars().count();
            }
            None => {
                sounds.push(Phoneme::from_letter(*letter));
                at += 1;
            }
        }
    }
    // The same consonant twice at a seam ("bookkeeper") is said once.
    sounds.dedup_by(|a, b| a == b && !a.is_vowel());
    sounds
}

/// The plain letter of an accented one that a language borrows.
const fn without_accent(letter: char) -> char {
    match letter {
        'à' | 'á' | 'â' | 'ã' | 'ä' | 'å' | 'ā' => 'a',
        'è' | 'é' | 'ê' | 'ë' | 'ē' | 'ě' | 'æ' => 'e',
        'ì' | 'í' | 'î' | 'ï' | 'ī' => 'i',
        'ò' | 'ó' | 'ô' | 'õ' | 'ö' | 'ø' | 'œ' | 'ō' => 'o',
        'ù' | 'ú' | 'û' | 'ü' | 'ů' | 'ū' => 'u',
        'ý' | 'ÿ' => 'y',
        'ñ' | 'ń' | 'ň' => 'n',
        'ç' | 'ß' | 'ś' | 'š' | 'ş' => 's',
        'ź' | 'ż' | 'ž' => 'z',
        'ł' => 'l',
        other => other,
    }
}

impl Spelling {
    fn fits(&self, (left, said, right, _): &Rule, letters: &[char], at: usize) -> bool {
        let after = at + said.chars().count();
        letters.get(at..after).is_some_and(|here| here.iter().copied().eq(said.chars()))
            && self.context(left.chars().rev(), letters[..at].iter().rev().copied())
            && self.context(right.chars(), letters[after..].iter().copied())
    }

    fn context(&self, mut pattern: impl Iterator<Item = char>, mut letters: impl Iterator<Item = char>) -> bool {
        let vowel = |c: char| self.vowels.contains(c);
        pattern.all(|wanted| match (wanted, letters.next()) {
            ('.' | 'X' | 'D', None) => true,
            ('V', Some(c)) => vowel(c),
            ('C', Some(c)) => c.is_alphabetic() && !vowel(c),
            ('E', Some(c)) => self.front.contains(c),
            ('X', Some(c)) => !vowel(c) && !"nmh".contains(c),
            ('D', Some(c)) => "cfkpqstxzßç".contains(c),
            (literal, Some(c)) => literal == c,
            (_, None) => false,
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_rule_names_known_sounds_and_can_be_reached() {
        for language in Language::ALL {
            let spelling = spelling(language);
            for (i, rule) in spelling.rules.iter().enumerate() {
                for name in rule.3.split(' ').filter(|n| !n.is_empty()) {
                    assert!((spelling.sound)(name).is_some(), "{language:?} {name:?}");
                }
                let hidden = spelling.rules[..i].iter().find(|r| (r.0, r.1, r.2) == (rule.0, rule.1, rule.2));
                assert_eq!(hidden, None, "{language:?}: a rule that never counts");
            }
        }
    }

    #[test]
    fn digits_and_letters_of_its_language_is_read() {
        for language in Language::ALL {
            let known = |word: &str| {
                let sounds = read(language, word);
                !sounds.is_empty()
                    && sounds.iter().all(|p| *p != Phoneme::from_letter(p.ipa().chars().next().unwrap_or(' ')))
            };
            for n in 0..10 {
                assert!(known(digit(language, n).unwrap_or_default()), "{language:?} {n}");
            }
            for letter in 'a'..='z' {
                assert!(known(&format!("a{letter}a")), "{language:?} {letter}");
            }
            assert!(known("bãb") && known("béb") && known("aß"), "{language:?}: accents of others");
            assert_eq!(read(language, "日本"), ['日', '本'].map(Phoneme::from_letter), "{language:?}");
        }
    }

    #[test]
    fn common_spellings_of_each_language_are_read() {
        let said = |language, word| read(language, word).iter().map(|p| p.ipa()).collect::<String>();
        for (language, word, sounds) in [
            (Language::Es, "queso", "keso"),
            (Language::Es, "guitarra", "ɡitara"),
            (Language::Es, "pingüino", "pinɡwino"),
            (Language::Es, "niño", "niɲo"),
            (Language::Es, "llave", "ʝabe"),
            (Language::Es, "hueso", "weso"),
            (Language::De, "hund", "hʊnt"),
            (Language::De, "kuscheln", "kʊʃəln"),
            (Language::De, "eichhörnchen", "aɪçhœʁnçən"),
            (Language::De, "häuser", "hɔʏzɐ"),
            (Language::De, "stock", "ʃtɔk"),
            (Language::De, "liebe", "libə"),
            (Language::De, "lieb", "lip"),
            (Language::Fr, "oiseau", "wazo"),
            (Language::Fr, "champagne", "ʃɑ̃paɲ"),
            (Language::Fr, "chats", "ʃa"),
            (Language::Fr, "bonne", "bɔn"),
            (Language::Fr, "bon", "bɔ̃"),
            (Language::Fr, "feuille", "fœj"),
            (Language::Pt, "pão", "pɐ̃ũ"),
            (Language::Pt, "filho", "fiʎu"),
            (Language::Pt, "banho", "baɲu"),
            (Language::Pt, "noite", "noitʃi"),
            (Language::Pt, "carro", "kaʁu"),
            (Language::Pt, "chave", "ʃavi"),
        ] {
            assert_eq!(said(language, word), sounds, "{language:?} {word}");
        }
    }
}
