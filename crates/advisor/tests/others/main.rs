//! Rows from simulated homes, and the invented release that pages are tried with.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, missing_docs)]

mod away;
mod beside;
mod home;
mod invented;
mod outside;
mod weeks;
