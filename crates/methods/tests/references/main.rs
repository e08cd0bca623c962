//! The maths against published values and other packages.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, missing_docs)]

mod anytime;
mod change_point;
mod exact;
mod foods_alike;
mod layout;
mod learning;
mod likes;
mod more;
mod pronunciation;
mod ration;
mod read;
mod single_case;
mod sounds;
mod survival;
