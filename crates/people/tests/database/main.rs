//! People in PostgreSQL: a cluster of their own, started for the tests and gone after them.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, missing_docs)]

mod accounts;
mod cluster;
mod consent;
mod homes;
mod invitations;
mod keepers;
mod links;
mod passkeys;
mod sessions;
mod together;
