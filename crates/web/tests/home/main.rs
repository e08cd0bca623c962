//! Pages of a home as a browser asks for them.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, missing_docs)]

mod agreement;
#[path = "../at_home/mod.rs"]
mod at_home;
mod buttons;
mod checks;
mod designs;
mod exchange;
mod going_out;
mod heard;
mod learn;
mod likes;
mod linked;
mod listen;
mod own_plan;
mod people;
mod pictures;
mod recording;
mod rehearsed;
mod rewards;
mod sheets;
#[path = "../../../listen/tests/common/mod.rs"]
mod sounds;
mod swaps;
mod talk;
mod today;
mod words;
