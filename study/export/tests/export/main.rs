//! From logs to tables.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

mod consent;
mod rows;
mod stopped;
mod summary;
mod tables;
