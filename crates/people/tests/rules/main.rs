//! Who may do what: the rules alone, without a database.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, missing_docs)]

mod append;
mod consent;
mod days;
mod denied;
mod linked;
mod made;
mod table;
mod talk;
