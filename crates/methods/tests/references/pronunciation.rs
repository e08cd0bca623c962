//! Letter rules against an independent program (tests/reference/pronunciations.json), and pairs of words in each language.

use crate::read::file;
use sayso_methods::words::*;
use sayso_model::Language;
use serde_json::Value;

fn language(tag: &str) -> Language {
    Language::ALL.into_iter().find(|l| l.tag() == tag).expect("one of the five languages")
}

/// IPA signs, each with the mark that follows it; one-character nasals like those written with a mark.
fn segments(ipa: &str) -> Vec<String> {
    let mut found: Vec<String> = Vec::new();
    for c in ipa.chars() {
        match c {
            '\u{303}' => found.last_mut().expect("a mark follows a sign").push(c),
            'ã' => found.push("a\u{303}".to_owned()),
            'ẽ' => found.push("e\u{303}".to_owned()),
            'ĩ' => found.push("i\u{303}".to_owned()),
            'õ' => found.push("o\u{303}".to_owned()),
            'ũ' => found.push("u\u{303}".to_owned()),
            _ => found.push(c.to_string()),
        }
    }
    found
}

/// Segments to insert, delete or change (Levenshtein 1966), written here anew.
fn edits(a: &[String], b: &[String]) -> usize {
    let mut above: Vec<usize> = (0..=b.len()).collect();
    for (i, x) in a.iter().enumerate() {
        let mut row = vec![i + 1];
        for (j, y) in b.iter().enumerate() {
            row.push((above[j] + usize::from(x != y)).min(above[j + 1] + 1).min(row[j] + 1));
        }
        above = row;
    }
    above[b.len()]
}

/// Share of the program's segments that the rules say otherwise, and the words where they do.
fn disagreement(case: &Value, list: &str) -> (f64, Vec<String>) {
    let language = language(case["input"]["language"].as_str().unwrap());
    let replaced = case["input"]["read_as"].as_array().unwrap();
    let (mut wrong, mut all, mut which) = (0, 0, Vec::new());
    for (word, said) in case["expected"][list].as_object().unwrap() {
        let theirs = replaced.iter().fold(said.as_str().unwrap().to_owned(), |ipa, pair| {
            ipa.replace(pair[0].as_str().unwrap(), pair[1].as_str().unwrap())
        });
        let ours: String = sounds_of(word, language).phonemes.iter().map(|p| p.ipa()).collect();
        let (x, y) = (segments(&ours), segments(&theirs));
        let n = edits(&x, &y);
        (wrong, all) = (wrong + n, all + y.len());
        if n > 0 {
            which.push(format!("{word} {ours} {theirs}"));
        }
    }
    (f64::from(u32::try_from(wrong).unwrap()) / f64::from(u32::try_from(all).unwrap()), which)
}

// Shares measured when written (docs/methods/sounds-alike.md), rounded up, in the order of `Language::ALL`: over words seen
// while the rules were written, and over words held back.
const WRITTEN: [f64; 5] = [0.023, 0.007, 0.024, 0.008, 0.022];
const HELD_BACK: [f64; 5] = [0.039, 0.018, 0.021, 0.030, 0.052];

#[test]
fn the_letter_rules_agree_with_an_independent_program() {
    let reference = file("pronunciations.json");
    let cases = reference["cases"].as_array().unwrap();
    assert_eq!(cases.len(), Language::ALL.len());
    for case in cases {
        let words = case["expected"]["ipa"].as_object().unwrap().len();
        assert!(words >= 60, "{}: {words} words", case["name"]);
        for (list, bounds) in [("ipa", WRITTEN), ("held_back", HELD_BACK)] {
            let bound = bounds[Language::ALL.iter().position(|l| l.tag() == case["name"]).unwrap()];
            let (share, which) = disagreement(case, list);
            assert!(share <= bound, "{} {list}: {share:.4} of the segments otherwise: {which:#?}", case["name"]);
        }
    }
}

#[test]
fn words_that_rhyme_by_all_but_one_sound_are_too_alike_and_others_are_not() {
    for (tag, near, far) in [
        (
            "en",
            [("walk", "talk"), ("tug", "hug"), ("snoofle", "shoofle")],
            [("water", "ball"), ("outside", "tug"), ("cheese", "garden")],
        ),
        (
            "es",
            [("casa", "cama"), ("pelo", "perro"), ("gato", "pato")],
            [("agua", "pelota"), ("queso", "fuera"), ("jugar", "comida")],
        ),
        (
            "de",
            [("Hund", "Mund"), ("Ball", "Fall"), ("Rad", "Rat")],
            [("Wasser", "raus"), ("Käse", "Spielzeug"), ("Futter", "Ball")],
        ),
        (
            "fr",
            [("balle", "salle"), ("pain", "bain"), ("eau", "haut")],
            [("dehors", "fromage"), ("manger", "balle"), ("eau", "jouer")],
        ),
        (
            "pt",
            [("bola", "cola"), ("gato", "rato"), ("mão", "pão")],
            [("água", "queijo"), ("passeio", "bola"), ("brincar", "osso")],
        ),
    ] {
        let found = |(a, b)| alike(a, b, language(tag), AlikeRule::default());
        for pair in near {
            let likeness = found(pair);
            assert!(likeness.too_alike, "{tag} {likeness:?}");
        }
        for pair in far {
            let likeness = found(pair);
            assert!(!likeness.too_alike && likeness.apart > 0.1, "{tag} {likeness:?}");
        }
    }
    // Spelt alike in no letter, said the same.
    assert_eq!(alike("seau", "sot", Language::Fr, AlikeRule::default()).heard, Heard::Same);
    assert_eq!(alike("Rad", "Rat", Language::De, AlikeRule::default()).heard, Heard::Same);
    assert_eq!(alike("vaca", "baca", Language::Es, AlikeRule::default()).heard, Heard::Same);
}
