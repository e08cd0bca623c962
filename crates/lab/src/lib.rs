//! The laboratory: methods run on simulated learners, and the hearing on made sounds, whose truth is known.
//!
//! It tells whether intervals hold the truth as often as they say, how often something is claimed that is not so, how
//! much it takes to find what is, and how well presses are heard. It says nothing about real animals or real homes.

mod error;
pub mod experiments;
pub mod hearing;
pub mod host;
mod light;
mod report;
mod work;

pub use error::LabError;
pub use light::*;
pub use work::Work;
