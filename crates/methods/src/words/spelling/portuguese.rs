//! Portuguese letter rules.
//!
//! Source: the values of the letters after E. Bechara (2009), Moderna gramática portuguesa, and T. Cristófaro Silva (2002),
//! Fonética e fonologia do português; from memory, not checked against the books. Brazilian: t and d soften before i, last e and o
//! are i and u, l closes a syllable as u. Open and closed e and o without an accent cannot be told by letters: read as closed.

use super::{Rule, Spelling};
use crate::words::phoneme::Phoneme;

pub(super) static PORTUGUESE: Spelling = Spelling {
    vowels: "aáàâãeéêiíoóôõuúü",
    front: "eéêií",
    digits: ["zero", "um", "dois", "três", "quatro", "cinco", "seis", "sete", "oito", "nove"],
    sound: Phoneme::from_ipa,
    rules: RULES,
};

#[rustfmt::skip]
const RULES: &[Rule] = &[
    // Vowels said through the nose.
    ("", "ão", "", "ɐ̃ ũ"), ("", "ãe", "", "ɐ̃ i"), ("", "õe", "", "õ i"), ("", "ã", "", "ɐ̃"), ("", "õ", "", "õ"), ("CC", "am", ".", "ɐ̃ ũ"), ("VC", "am", ".", "ɐ̃ ũ"),
    ("", "an", "X", "ɐ̃"), ("", "am", "X", "ɐ̃"), ("", "ân", "X", "ɐ̃"), ("", "âm", "X", "ɐ̃"), ("", "en", "X", "ẽ"), ("", "em", "X", "ẽ"), ("", "ên", "X", "ẽ"), ("", "êm", "X", "ẽ"), ("", "én", "X", "ẽ"), ("", "ém", "X", "ẽ"), ("", "in", "X", "ĩ"), ("", "im", "X", "ĩ"), ("", "ín", "X", "ĩ"), ("", "ím", "X", "ĩ"),
    ("", "on", "X", "õ"), ("", "om", "X", "õ"), ("", "ôn", "X", "õ"), ("", "ôm", "X", "õ"), ("", "un", "X", "ũ"), ("", "um", "X", "ũ"), ("", "ún", "X", "ũ"), ("", "úm", "X", "ũ"),
    // Consonants.
    ("", "tch", "", "tʃ"), ("", "ch", "", "ʃ"), ("", "lh", "", "ʎ"), ("", "nh", "", "ɲ"), ("", "rr", "", "ʁ"), (".", "r", "", "ʁ"), ("n", "r", "", "ʁ"), ("l", "r", "", "ʁ"), ("s", "r", "", "ʁ"), ("", "r", "", "ɾ"), ("", "ss", "", "s"), ("", "sc", "E", "s"), ("", "xc", "E", "s"),
    ("", "qu", "E", "k"), ("", "qu", "", "k w"), ("", "q", "", "k"), ("", "gu", "E", "ɡ"), ("", "gu", "V", "ɡ w"), ("", "gü", "", "ɡ w"), ("", "g", "E", "ʒ"), ("", "g", "", "ɡ"), ("", "j", "", "ʒ"), ("", "cc", "E", "k s"), ("", "c", "E", "s"), ("", "c", "", "k"), ("", "ç", "", "s"),
    ("", "z", ".", "s"), ("", "z", "", "z"), ("V", "s", "V", "z"), ("", "s", "", "s"), (".e", "x", "V", "z"), ("", "x", "", "ʃ"), ("", "ph", "", "f"), ("", "th", "", "t"), ("", "h", "", ""), ("", "te", ".", "tʃ i"), ("", "tes", ".", "tʃ i s"), ("", "de", ".", "dʒ i"), ("", "des", ".", "dʒ i s"),
    ("", "t", "i", "tʃ"), ("", "t", "í", "tʃ"), ("", "d", "i", "dʒ"), ("", "d", "í", "dʒ"), ("", "t", "", "t"), ("", "d", "", "d"), ("", "ll", "", "l"), ("V", "l", ".", "u"), ("V", "l", "C", "u"), ("", "l", "", "l"), ("", "w", "", "w"), ("", "y", "", "i"),
    ("", "b", "", "b"), ("", "f", "", "f"), ("", "k", "", "k"), ("", "m", "", "m"), ("", "n", "", "n"), ("", "p", "", "p"), ("", "v", "", "v"),
    // Last vowels without stress, then the others.
    (".C", "a", ".", "a"), ("", "a", ".", "ɐ"), ("", "a", "s.", "ɐ"), ("", "e", ".", "i"), ("", "e", "s.", "i"), ("C", "i", "o.", "j"), ("", "o", ".", "u"), ("", "o", "s.", "u"), ("", "ou", "", "o"),
    ("", "a", "", "a"), ("", "á", "", "a"), ("", "à", "", "a"), ("", "â", "", "a"), ("", "é", "", "ɛ"), ("", "ê", "", "e"), ("", "e", "", "e"), ("", "i", "", "i"), ("", "í", "", "i"), ("", "ó", "", "ɔ"), ("", "ô", "", "o"), ("", "o", "", "o"), ("", "u", "", "u"), ("", "ú", "", "u"), ("", "ü", "", "w"),
];
