//! Which words first, which next, and which sound alike.

mod alike;
mod arpabet;
mod dictionary;
mod distance;
mod features;
mod letters;
mod phoneme;
mod sounds;

pub use alike::{AlikeRule, Likeness, alike, compare};
pub use dictionary::{DICTIONARY_LICENCE, pronunciation};
pub use distance::{feature_distance, phoneme_edits, sound_distance};
pub use features::{FEATURES, Segment};
pub use phoneme::Phoneme;
pub use sounds::{ReadBy, Sounds, sounds_of};
