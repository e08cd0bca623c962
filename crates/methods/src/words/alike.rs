//! Do two labels sound too much alike to be told apart?
//!
//! Source: phoneme and feature edit distance (see `distance`) over the length of the longer label. The two thresholds
//! are ours, without a source: what an animal tells apart also depends on the recording and on practice.

use super::distance::{phoneme_edits, segments, sound_distance};
use super::sounds::{Sounds, sounds_of};

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

/// How alike two labels sound.
#[derive(Debug, Clone, PartialEq)]
pub struct Likeness {
    /// Sounds that differ.
    pub edits: usize,
    /// Sounds of the longer label.
    pub of: usize,
    /// Distance by features (1 is one whole sound).
    pub sound_distance: f64,
    /// Feature distance a segment of the longer label: 0 the same, 1 nothing in common.
    pub apart: f64,
    /// Whether they are too alike under the rule.
    pub too_alike: bool,
    /// Whether a word was guessed by letter rules, which makes the answer less sure.
    pub guessed: bool,
    /// The answer in words.
    pub reason: String,
}

/// Compares two labels in a language (BCP 47 tag).
///
/// ```
/// use sayso_methods::words::{AlikeRule, alike};
/// let found = alike("walk", "talk", "en", AlikeRule::default());
/// assert!(found.too_alike);
/// assert_eq!(found.reason, "walk / talk: 1 of 3 sounds differs");
/// ```
pub fn alike(a: &str, b: &str, language: &str, rule: AlikeRule) -> Likeness {
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
    let guessed = sounds_a.guessed() || sounds_b.guessed();
    let said = match (edits, of) {
        (_, 0) => "no sounds known".to_owned(),
        (0, _) => "the same sounds".to_owned(),
        _ => format!("{edits} of {of} sounds differ{}", if edits == 1 { "s" } else { "" }),
    };
    let made_alike =
        if by_features && !by_share { format!(", but they are made alike ({apart:.2} apart)") } else { String::new() };
    let guess = if guessed { " (pronunciation guessed)" } else { "" };
    let reason = format!("{a} / {b}: {said}{made_alike}{guess}");
    Likeness { edits, of, sound_distance: distance, apart, too_alike: by_share || by_features, guessed, reason }
}
