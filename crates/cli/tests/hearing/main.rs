//! From a recording and a sound to presses in the log, through the program as a person runs it.

#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

mod enrolled;
mod heard;
mod home;
#[path = "../../../listen/tests/common/mod.rs"]
mod sounds;
mod told;
