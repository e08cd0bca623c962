//! Which records are handed to the ladder, and what a person who bends them wins: nothing.

#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, clippy::cast_possible_truncation)]

mod blind_checks;
mod invitations;
mod log;
mod swaps;
