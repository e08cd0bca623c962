//! People in PostgreSQL: a cluster of their own, started for the tests and gone after them.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, missing_docs)]

mod accounts;
#[path = "../../../../tests/postgres/cluster.rs"]
mod cluster;
mod consent;
mod database;
#[path = "../../../../tests/postgres/fresh.rs"]
mod fresh;
mod homes;
mod invitations;
mod keepers;
mod links;
mod passkeys;
mod sessions;
mod together;
