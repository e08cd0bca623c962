//! Questions on tables made by hand.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

mod answers;
mod made;
mod plans;
mod split;
