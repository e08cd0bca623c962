//! A notebook in its folder: written, read, carried over, damaged, cut short.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, missing_docs)]

mod append;
mod backup;
mod brought;
mod check;
#[path = "../common/mod.rs"]
mod common;
mod damage;
mod disk_full;
mod earlier;
mod exchange;
mod faults;
mod files;
mod first_start;
mod homes;
mod import_page;
mod later;
mod many;
mod merging;
mod read_only;
mod round_trip;
mod snapshots;
mod snippets;
mod texts;
