//! Rows and releases as they are written and read.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, missing_docs)]

mod release;
mod rows;
