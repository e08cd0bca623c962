//! From logs to tables.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

mod approval;
#[path = "../../../../tests/postgres/cluster.rs"]
mod cluster;
mod consent;
#[path = "../../../../tests/postgres/fresh.rs"]
mod fresh;
mod rows;
mod server;
mod stopped;
mod summary;
mod tables;
