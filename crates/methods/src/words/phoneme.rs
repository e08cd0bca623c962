//! Speech sounds: the 39 of (American) English, sounds of other languages in IPA, and letters nobody told us how to read.
//!
//! Source: ARPAbet names as in the CMU Pronouncing Dictionary; each stands for one or two IPA segments.

use super::arpabet::ARPABET;
use super::features::Segment;

// IPA of each ARPAbet sound, in its order. Affricates and diphthongs are two segments.
const IPA: [&str; 39] = [
    "ɑ", "æ", "ʌ", "ɔ", "aʊ", "aɪ", "b", "tʃ", "d", "ð", "ɛ", "ɚ", "eɪ", "f", "ɡ", "h", "ɪ", "i", "dʒ", "k", "l", "m",
    "n", "ŋ", "oʊ", "ɔɪ", "p", "ɹ", "s", "ʃ", "t", "θ", "ʊ", "u", "v", "w", "j", "z", "ʒ",
];

/// One sound of a word.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Phoneme(Kind);

#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
enum Kind {
    English(u8),
    Ipa(&'static str),
    Letter(char),
}

/// A segment with known features, or a letter without.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) enum Sound {
    Known(Segment),
    Letter(char),
}

impl Phoneme {
    /// An English sound by its ARPAbet name; a stress digit is ignored.
    ///
    /// ```
    /// use sayso_methods::words::Phoneme;
    /// assert_eq!(Phoneme::from_arpabet("AO1").map(|p| p.ipa()).as_deref(), Some("ɔ"));
    /// assert_eq!(Phoneme::from_arpabet("XX"), None);
    /// ```
    pub fn from_arpabet(name: &str) -> Option<Self> {
        let bare = name.strip_suffix(['0', '1', '2']).unwrap_or(name);
        let code = ARPABET.iter().position(|a| *a == bare)?;
        u8::try_from(code).ok().map(|c| Self(Kind::English(c)))
    }

    /// A sound in IPA: one segment, or two where a language takes them for one sound; none if their features are not known.
    ///
    /// ```
    /// use sayso_methods::words::Phoneme;
    /// assert!(Phoneme::from_ipa("ɛ̃").is_some() && Phoneme::from_ipa("tʃ").is_some());
    /// assert_eq!(Phoneme::from_ipa("!"), None);
    /// ```
    pub fn from_ipa(ipa: &'static str) -> Option<Self> {
        Segment::all_of(ipa).filter(|segments| !segments.is_empty()).map(|_| Self(Kind::Ipa(ipa)))
    }

    /// A letter of unknown sound: like itself and like nothing else.
    pub const fn from_letter(letter: char) -> Self {
        Self(Kind::Letter(letter))
    }

    pub(super) fn from_code(code: u8) -> Option<Self> {
        (usize::from(code) < ARPABET.len()).then_some(Self(Kind::English(code)))
    }

    /// ARPAbet name, IPA sign or letter.
    pub fn name(self) -> String {
        match self.0 {
            Kind::English(code) => ARPABET.get(usize::from(code)).copied().unwrap_or_default().to_owned(),
            Kind::Ipa(ipa) => ipa.to_owned(),
            Kind::Letter(c) => c.to_string(),
        }
    }

    /// IPA signs (the bare letter where the sound is unknown).
    pub fn ipa(self) -> String {
        match self.0 {
            Kind::English(code) => IPA.get(usize::from(code)).copied().unwrap_or_default().to_owned(),
            Kind::Ipa(ipa) => ipa.to_owned(),
            Kind::Letter(c) => c.to_string(),
        }
    }

    /// Whether it makes a syllable (a letter of unknown sound does not).
    pub fn is_vowel(self) -> bool {
        self.sounds().first().is_some_and(|s| matches!(s, Sound::Known(segment) if segment.is_vowel()))
    }

    pub(super) fn sounds(self) -> Vec<Sound> {
        if let Kind::Letter(c) = self.0 {
            return vec![Sound::Letter(c)];
        }
        // Every sound was looked up when it was made.
        Segment::all_of(&self.ipa()).unwrap_or_default().into_iter().map(Sound::Known).collect()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_english_sound_is_made_of_known_segments() {
        for name in ARPABET {
            let sound = Phoneme::from_arpabet(name);
            assert_eq!(sound.map(Phoneme::name).as_deref(), Some(name));
            assert!(sound.is_some_and(|p| !p.sounds().is_empty()), "{name}");
        }
    }
}
