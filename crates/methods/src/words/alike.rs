//! Do two labels sound too much alike to be told apart?
//!
//! Source: phoneme and feature edit distance (see `distance`) over the length of the longer label. The two thresholds
//! are ours, without a source: what an animal tells apart also depends on the recording and on practice.

use super::distance::{phoneme_edits, segments, sound_distance};
use super::sounds::{Sounds, sounds_of};
use sayso_model::Language;

/// When two labels count as too alike: where either measure is at or below its threshold.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct AlikeRule {
    /// Share of sounds that differ.
    pub share_changed: f64,
    /// Feature distance a segment of the longer label.
    pub apart: f64,
}

impl Default for AlikeRule {
    /// A third of the sounds, or a tenth of the features.
    fn default() -> Self {
        Self { share_changed: 1.0 / 3.0, apart: 0.1 }
    }
}

/// What the sounds of two labels have in common.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Heard {
    /// Neither has sounds: labels without letters.
    Nothing,
    /// The same sounds.
    Same,
    /// Some differ.
    Differ {
        /// Sounds that differ.
        edits: usize,
        /// Sounds of the longer label.
        of: usize,
    },
}

/// How alike two labels sound.
#[derive(Debug, Clone, PartialEq)]
pub struct Likeness {
    /// One label.
    pub a: String,
    /// The other.
    pub b: String,
    /// How many of their sounds differ.
    pub heard: Heard,
    /// Distance by features (1 is one whole sound).
    pub sound_distance: f64,
    /// Feature distance a segment of the longer label: 0 the same, 1 nothing in common.
    pub apart: f64,
    /// Whether they are too alike under the rule.
    pub too_alike: bool,
    /// Whether they are so by features alone: enough sounds differ, but these are made alike.
    pub made_alike: bool,
    /// Whether a word was guessed by letter rules, which makes the answer less sure.
    pub guessed: bool,
}

/// Compares two labels of a language.
///
/// ```
/// use sayso_methods::words::{AlikeRule, Heard, alike};
/// use sayso_model::Language;
/// let found = alike("walk", "talk", Language::En, AlikeRule::default());
/// assert!(found.too_alike);
/// assert_eq!(found.heard, Heard::Differ { edits: 1, of: 3 });
/// ```
pub fn alike(a: &str, b: &str, language: Language, rule: AlikeRule) -> Likeness {
    compare(a, &sounds_of(a, language), b, &sounds_of(b, language), rule)
}

/// The same for labels whose sounds are known already, for comparing many pairs.
pub fn compare(a: &str, sounds_a: &Sounds, b: &str, sounds_b: &Sounds, rule: AlikeRule) -> Likeness {
    let (x, y) = (&sounds_a.phonemes, &sounds_b.phonemes);
    let (edits, of) = (phoneme_edits(x, y), x.len().max(y.len()));
    let distance = sound_distance(x, y);
    let longest = segments(x).len().max(segments(y).len());
    // Without sounds on either side nothing can be confused; without sounds on one side all of the other's differ.
    let apart = if longest == 0 { 1.0 } else { distance / longest as f64 };
    let share = if of == 0 { 1.0 } else { edits as f64 / of as f64 };
    let by_share = of > 0 && share <= rule.share_changed;
    let by_features = of > 0 && apart <= rule.apart;
    Likeness {
        a: a.to_owned(),
        b: b.to_owned(),
        heard: match (edits, of) {
            (_, 0) => Heard::Nothing,
            (0, _) => Heard::Same,
            _ => Heard::Differ { edits, of },
        },
        sound_distance: distance,
        apart,
        too_alike: by_share || by_features,
        made_alike: by_features && !by_share,
        guessed: sounds_a.guessed() || sounds_b.guessed(),
    }
}
