//! What an animal wants, by tests of likes: known truth, robustness.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, missing_docs)]

mod best_item;
mod known_truth;
mod robust;
