//! What is advised from the records of a home.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, missing_docs)]

mod agreed;
mod agreement;
mod buttons;
mod causes;
mod cautions;
mod checks;
mod demo;
mod first_words;
mod patterns;
mod ration;
mod running;
mod sessions_of_a_day;
mod steps;
mod stumbles;
mod sums;
mod taken_over;
mod weeks;
mod welfare;
mod would_change;
