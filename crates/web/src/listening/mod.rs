//! Listening through a browser's microphone: one stream of samples for one board, heard by the one engine.

mod hearing;
mod message;
mod seats;
mod socket;

pub use seats::Seats;
pub use socket::{end_all, open};
