//! What is said, in every language.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, missing_docs)]

mod acts;
mod advice;
mod claims;
mod consents;
mod desk;
mod errors;
mod facts;
mod faults;
mod idea_labels;
mod lessons;
mod names;
mod outside;
