//! First words: every set of two or three that fits the constraints is scored, so the best is the best.
//!
//! Source: own objective, stated here and in docs/methods/first-words.md; complete enumeration, so nothing is approximate but
//! the probability of being best, which is simulated from the likings' uncertainty with a seed.
//!
//! For a set of `k` words:
//!
//! ```text
//! score = mean over words of (liking - caution x sd) x opportunity
//!       + spread x kinds of reward / most words
//!       + apart x least distance between two of them
//!       + said x share the home already says
//! opportunity = min(1, deliveries a day / enough a day)
//! ```
//!
//! Deliveries a day are limited by satiation, by the ration (shared between food words) and by the time for showing
//! (shared between all words).

mod choose;
mod given;
mod reasons;
mod score;

pub use choose::{FirstWords, FirstWordsError, MOST_SETS, first_words};
pub use given::{Candidate, FirstWordRules, Liking, Weights};
pub use reasons::{LeftOut, Part, Reason};
pub use score::{Bound, Delivery, Score, Scored};
