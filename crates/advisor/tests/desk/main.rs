//! A coach's desk on hand-made homes: each need where it must be and nowhere else, in order; lines; what changed.
#![allow(clippy::unwrap_used, clippy::panic, clippy::cast_precision_loss, missing_docs)]

mod changed;
mod kit;
mod lines;
mod little;
mod order;
mod outside;
mod programme;
mod safety;
mod sudden;
mod sureness;
mod tried;
mod words;
