//! Which words first, which next, and which sound alike.

mod alike;
mod arpabet;
mod dictionary;
mod distance;
mod features;
mod first;
mod label;
mod naming;
mod next;
mod phoneme;
mod sounds;
mod spelling;

pub use alike::{AlikeRule, Heard, Likeness, alike, compare};
pub use dictionary::{DICTIONARY_LICENCE, pronunciation};
pub use distance::{phoneme_edits, sound_distance};
pub use features::FEATURES;
pub use first::{
    Bound, Candidate, Delivery, FirstWordRules, FirstWords, FirstWordsError, LeftOut, Liking, MOST_SETS, Part, Reason,
    Score, Scored, Weights, first_words,
};
pub use label::{MOST_SYLLABLES, labels_for, syllables};
pub use next::{Gap, NextReason, NextWord, NextWordRules, NextWords, OnBoard, next_words};
pub use phoneme::Phoneme;
pub use sounds::{ReadBy, Sounds, sounds_of};
