//! The release of norms: what it tells, and what nobody learns from it.

#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, missing_docs)]

mod attacks;
mod budget;
mod made;
mod published;
mod truth;
