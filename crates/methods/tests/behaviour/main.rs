//! What the methods do with records of known make, with the poorest input, and with names.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, missing_docs)]

mod board_plan;
mod bursts_and_wobble;
mod degenerate_input;
mod episode_lengths;
mod first_words;
mod food_names;
mod labels;
mod stage_rule;
mod understanding_checks;
