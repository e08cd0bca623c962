//! The engine on sounds made by rule, on files of every format, on streams.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, missing_docs)]

mod alike;
#[path = "../common/mod.rs"]
mod common;
mod cut;
#[path = "../common/encoded.rs"]
mod encoded;
mod files;
mod formats;
mod phones;
mod presses;
mod proof;
mod speeds;
mod stream;
mod stretches;
