//! How far two sequences of sounds are apart.
//!
//! Source: V. I. Levenshtein (1966), Soviet Physics Doklady 10:707, over phonemes; over IPA segments with the
//! share of differing articulatory features as the cost of a substitution and 1 for an insertion or deletion, as in
//! the Hamming feature edit distance of Mortensen et al. (2016), COLING, 3475.

use super::features::FEATURES;
use super::phoneme::{Phoneme, Sound};

/// Sounds to insert, delete or change to get from one word to the other.
///
/// ```
/// use sayso_methods::words::{phoneme_edits, pronunciation};
/// let (walk, talk) = (pronunciation("walk").unwrap(), pronunciation("talk").unwrap());
/// assert_eq!(phoneme_edits(&walk, &talk), 1);
/// ```
pub fn phoneme_edits(a: &[Phoneme], b: &[Phoneme]) -> usize {
    // Whole numbers far below 2^52, so exact.
    edit_distance(a, b, |x, y| if x == y { 0.0 } else { 1.0 }) as usize
}

/// The same over IPA segments, each change weighted by the share of features it changes; 0 for the same sounds.
///
/// ```
/// use sayso_methods::words::{pronunciation, sound_distance};
/// let (park, bark) = (pronunciation("park").unwrap(), pronunciation("bark").unwrap());
/// assert!((sound_distance(&park, &bark) - 1.0 / 24.0).abs() < 1e-12); // voicing only
/// ```
pub fn sound_distance(a: &[Phoneme], b: &[Phoneme]) -> f64 {
    weighted(&segments(a), &segments(b))
}

fn weighted(a: &[Sound], b: &[Sound]) -> f64 {
    edit_distance(a, b, |x, y| match (x, y) {
        (Sound::Known(x), Sound::Known(y)) => f64::from(x.differences(y)) / f64::from(FEATURES),
        _ if x == y => 0.0,
        _ => 1.0,
    })
}

pub(super) fn segments(phonemes: &[Phoneme]) -> Vec<Sound> {
    phonemes.iter().flat_map(|p| p.sounds()).collect()
}

fn edit_distance<T>(a: &[T], b: &[T], change: impl Fn(&T, &T) -> f64) -> f64 {
    let mut above: Vec<f64> = (0..=b.len()).map(|j| j as f64).collect();
    for (i, x) in a.iter().enumerate() {
        let mut row = vec![(i + 1) as f64];
        for (j, y) in b.iter().enumerate() {
            row.push((above[j] + change(x, y)).min(above[j + 1] + 1.0).min(row[j] + 1.0));
        }
        above = row;
    }
    above[b.len()]
}
