//! Articulatory features of speech sounds, and how far two sounds are apart.
//!
//! Sources: the set of 24 features follows Mortensen et al. (2016), COLING, 3475 (every feature counts 1/24); the
//! values are set here from N. Chomsky & M. Halle (1968), The Sound Pattern of English, and B. Hayes (2009),
//! Introductory Phonology. A feature is +, - or not applicable; any two of these differ. Vowels said through the nose carry
//! the nasal feature beside those of the mouth; a tap differs from a trill by its closure (not continuant), reduced vowels
//! (ə, ɐ) are neither tense nor lax: both are ours, for the set has no feature of its own for them.

/// Number of features.
pub const FEATURES: u32 = 24;

// One bit a feature. Clicks, length and the two tone features never differ between the sounds below; they keep a
// feature's weight at 1/24.
const SYL: u32 = 1; // syllabic
const SON: u32 = 1 << 1; // sonorant
const CONS: u32 = 1 << 2; // consonantal
const CONT: u32 = 1 << 3; // continuant
const DELREL: u32 = 1 << 4; // delayed release
const LAT: u32 = 1 << 5; // lateral
const NAS: u32 = 1 << 6; // nasal
const STRID: u32 = 1 << 7; // strident
const VOI: u32 = 1 << 8; // voiced
const SG: u32 = 1 << 9; // spread glottis
const CG: u32 = 1 << 10; // constricted glottis
const ANT: u32 = 1 << 11; // anterior
const COR: u32 = 1 << 12; // coronal
const DISTR: u32 = 1 << 13; // distributed
const LAB: u32 = 1 << 14; // labial
const HI: u32 = 1 << 15; // high
const LO: u32 = 1 << 16; // low
const BACK: u32 = 1 << 17; // back
const ROUND: u32 = 1 << 18; // round
const TENSE: u32 = 1 << 20; // tense

/// A speech sound of one articulation: IPA sign and features.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub struct Segment {
    ipa: char,
    plus: u32,
    not_applicable: u32,
}

/// The IPA mark of what is said through the nose, after its sign.
const NASAL_MARK: char = '\u{303}';

impl Segment {
    /// Looks a segment up by its IPA sign.
    pub(super) fn find(ipa: char) -> Option<Self> {
        SEGMENTS.iter().find(|s| s.ipa == ipa).copied()
    }

    /// The segments of a text of IPA signs; none where one is unknown.
    pub(super) fn all_of(ipa: &str) -> Option<Vec<Self>> {
        let mut found: Vec<Self> = Vec::new();
        for c in ipa.chars() {
            match (c, composed(c)) {
                (NASAL_MARK, _) => found.last_mut()?.plus |= NAS,
                (_, Some(plain)) => {
                    let oral = Self::find(plain)?;
                    found.push(Self { plus: oral.plus | NAS, ..oral });
                }
                _ => found.push(Self::find(c)?),
            }
        }
        Some(found)
    }

    /// Whether it makes a syllable.
    pub(super) const fn is_vowel(&self) -> bool {
        self.plus & SYL != 0
    }

    /// Features in which two segments differ, 0 to 24.
    pub const fn differences(&self, other: &Self) -> u32 {
        ((self.plus ^ other.plus) | (self.not_applicable ^ other.not_applicable)).count_ones()
    }
}

// Some vowels with the nasal mark are one character.
const fn composed(c: char) -> Option<char> {
    match c {
        'ã' => Some('a'),
        'ẽ' => Some('e'),
        'ĩ' => Some('i'),
        'õ' => Some('o'),
        'ũ' => Some('u'),
        _ => None,
    }
}

// Tense applies to vowels only, distributed to coronals only.
const fn consonant(ipa: char, plus: u32) -> Segment {
    let not_applicable = if plus & COR == 0 { TENSE | DISTR } else { TENSE };
    Segment { ipa, plus, not_applicable }
}

const fn vowel(ipa: char, plus: u32) -> Segment {
    let not_applicable = if plus & COR == 0 { DISTR } else { 0 };
    Segment { ipa, plus: plus | SYL | SON | CONT | VOI, not_applicable }
}

// Neither tense nor lax.
const fn reduced(ipa: char, plus: u32) -> Segment {
    Segment { not_applicable: TENSE | DISTR, ..vowel(ipa, plus) }
}

const NASAL: u32 = CONS | SON | NAS | VOI;
const FRICATIVE: u32 = CONS | CONT;
const LIQUID: u32 = CONS | SON | CONT | VOI;
const GLIDE: u32 = SON | CONT | VOI;

static SEGMENTS: [Segment; 54] = [
    consonant('p', CONS | ANT | LAB),
    consonant('b', CONS | ANT | LAB | VOI),
    consonant('t', CONS | ANT | COR),
    consonant('d', CONS | ANT | COR | VOI),
    consonant('k', CONS | HI | BACK),
    consonant('ɡ', CONS | HI | BACK | VOI),
    consonant('q', CONS | BACK),
    consonant('ʔ', CG),
    consonant('m', NASAL | ANT | LAB),
    consonant('n', NASAL | ANT | COR),
    consonant('ɲ', NASAL | COR | DISTR | HI),
    consonant('ŋ', NASAL | HI | BACK),
    consonant('f', FRICATIVE | STRID | ANT | LAB),
    consonant('v', FRICATIVE | STRID | ANT | LAB | VOI),
    consonant('θ', FRICATIVE | ANT | COR | DISTR),
    consonant('ð', FRICATIVE | ANT | COR | DISTR | VOI),
    consonant('s', FRICATIVE | STRID | ANT | COR),
    consonant('z', FRICATIVE | STRID | ANT | COR | VOI),
    consonant('ʃ', FRICATIVE | STRID | COR | DISTR),
    consonant('ʒ', FRICATIVE | STRID | COR | DISTR | VOI),
    consonant('x', FRICATIVE | HI | BACK),
    consonant('ɣ', FRICATIVE | HI | BACK | VOI),
    consonant('ç', FRICATIVE | HI),
    consonant('ʝ', FRICATIVE | HI | VOI),
    consonant('ʁ', FRICATIVE | BACK | VOI),
    consonant('h', CONT | SG),
    consonant('ʦ', CONS | DELREL | STRID | ANT | COR),
    consonant('l', LIQUID | LAT | ANT | COR),
    consonant('ʎ', LIQUID | LAT | COR | DISTR | HI),
    consonant('r', LIQUID | ANT | COR),
    consonant('ɾ', CONS | SON | VOI | ANT | COR),
    consonant('ɹ', LIQUID | COR),
    consonant('w', GLIDE | LAB | HI | BACK | ROUND),
    consonant('ɥ', GLIDE | LAB | HI | ROUND),
    consonant('j', GLIDE | HI),
    vowel('i', HI | TENSE),
    vowel('ɪ', HI),
    vowel('e', TENSE),
    vowel('ɛ', 0),
    vowel('æ', LO),
    vowel('a', LO | TENSE),
    vowel('ɑ', LO | BACK | TENSE),
    vowel('ɔ', BACK | ROUND),
    vowel('o', BACK | ROUND | TENSE),
    vowel('ʊ', HI | BACK | ROUND),
    vowel('u', HI | BACK | ROUND | TENSE),
    vowel('ʌ', BACK),
    vowel('ɚ', COR),
    vowel('y', HI | ROUND | TENSE),
    vowel('ʏ', HI | ROUND),
    vowel('ø', ROUND | TENSE),
    vowel('œ', ROUND),
    reduced('ə', 0),
    reduced('ɐ', LO),
];

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;

    #[test]
    fn no_two_segments_are_alike_and_a_segment_is_like_itself() {
        for (i, a) in SEGMENTS.iter().enumerate() {
            assert_eq!(a.differences(a), 0);
            for b in &SEGMENTS[i + 1..] {
                assert!(a.differences(b) > 0, "{} {}", a.ipa, b.ipa);
                assert_eq!(a.differences(b), b.differences(a));
                assert!(a.differences(b) <= FEATURES);
            }
        }
    }

    #[test]
    fn textbook_minimal_pairs_differ_in_their_one_feature() {
        for (a, b, differences) in
            [('p', 'b', 1), ('t', 'd', 1), ('s', 'z', 1), ('f', 'v', 1), ('i', 'ɪ', 1), ('m', 'b', 2), ('k', 'ɡ', 1)]
        {
            assert_eq!(Segment::find(a).unwrap().differences(&Segment::find(b).unwrap()), differences, "{a} {b}");
        }
    }
}
