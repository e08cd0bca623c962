//! What to do next: pure functions from a case (an animal at a moment) to advice, each with its evidence.
//!
//! Typed, without prose: `sayso-wording` turns it into words. Knows nothing of storage or pages. Welfare outranks every other advice. It never says that an animal does not understand.

pub mod advice;
pub mod agreed;
pub mod agreement;
pub mod buttons;
pub mod called;
pub mod case;
pub mod cause;
mod causes;
pub mod checks;
pub mod claims;
pub mod days;
pub mod demand;
pub mod designs;
pub mod desk;
mod ease;
pub mod estimate;
pub mod evidence;
pub mod first_words;
pub mod generalise;
pub mod heard;
pub mod held;
pub mod hint;
pub mod lately;
pub mod latency;
pub mod later;
pub mod likes;
mod memo;
pub mod observe;
pub mod originals;
pub mod overview;
pub mod patterns;
pub mod plan;
pub mod pool;
mod precedence;
mod rate;
pub mod ration;
pub mod readiness;
pub mod rest;
pub mod rhythm;
pub mod stages;
pub mod standing;
pub mod steps;
pub mod stuck;
pub mod sums;
pub mod swaps;
pub mod thinning;
pub mod today;
mod weekly;
pub mod weeks;
pub mod welfare;

pub use advice::{Act, Advice, Because, Caution, Change, NamedWord, Reason, Sure, Topic};
pub use case::Case;
pub use estimate::{Estimate, Unit};
pub use sums::Sums;
