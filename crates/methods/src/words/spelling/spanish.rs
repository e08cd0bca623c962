//! Spanish letter rules.
//!
//! Source: the values of the letters after RAE & ASALE (2010), Ortografía de la lengua española, chapter I; from memory,
//! not checked against the book. American Spanish, as most speak it: c before e or i and z as s, ll as y. Where a household
//! tells these apart, its words differ more than is said here.

use super::{Rule, Spelling};
use crate::words::phoneme::Phoneme;

pub(super) static SPANISH: Spelling = Spelling {
    vowels: "aeiouáéíóúü",
    front: "eiéí",
    digits: ["cero", "uno", "dos", "tres", "cuatro", "cinco", "seis", "siete", "ocho", "nueve"],
    sound: Phoneme::from_ipa,
    rules: RULES,
};

#[rustfmt::skip]
const RULES: &[Rule] = &[
    ("", "ch", "", "tʃ"), ("", "ll", "", "ʝ"), ("", "rr", "", "r"), (".", "r", "", "r"), ("n", "r", "", "r"), ("l", "r", "", "r"), ("s", "r", "", "r"), ("", "r", "", "ɾ"),
    ("", "qu", "E", "k"), ("", "qu", "", "k w"), ("", "q", "", "k"), ("", "gü", "E", "ɡ w"), ("", "gu", "E", "ɡ"), ("", "gu", "V", "ɡ w"), ("", "g", "E", "x"), ("", "g", "", "ɡ"),
    ("", "sc", "E", "s"), ("", "xc", "E", "k s"), ("", "cc", "E", "k s"), ("", "c", "E", "s"), ("", "c", "", "k"), ("", "z", "", "s"), ("", "ç", "", "s"), (".", "ps", "", "s"),
    (".", "x", "", "s"), ("", "x", "", "k s"), ("", "j", "", "x"), ("", "ñ", "", "ɲ"), ("", "v", "", "b"), ("", "b", "", "b"),
    (".", "hu", "V", "w"), ("V", "hu", "V", "w"), (".", "hi", "e", "ʝ"), ("", "sh", "", "ʃ"), ("", "ph", "", "f"), ("", "h", "", ""),
    (".", "y", ".", "i"), ("", "y", ".", "i"), ("", "y", "C", "i"), ("", "y", "", "ʝ"), ("", "w", "", "w"),
    ("C", "i", "V", "j"), ("qu", "i", "V", "j"), ("gu", "i", "V", "j"), ("C", "u", "V", "w"), ("", "a", "", "a"), ("", "á", "", "a"), ("", "e", "", "e"), ("", "é", "", "e"), ("", "i", "", "i"), ("", "í", "", "i"),
    ("", "o", "", "o"), ("", "ó", "", "o"), ("", "u", "", "u"), ("", "ú", "", "u"), ("", "ü", "V", "w"), ("", "ü", "", "u"),
    ("", "d", "", "d"), ("", "f", "", "f"), ("", "k", "", "k"), ("", "l", "", "l"), ("", "m", "", "m"), ("", "n", "", "n"), ("", "p", "", "p"), ("", "s", "", "s"), ("", "t", "", "t"),
];
