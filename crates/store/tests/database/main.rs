//! Both stores behind the one interface; what is PostgreSQL alone.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, missing_docs)]

#[path = "../../../../tests/postgres/cluster.rs"]
mod cluster;
#[path = "../common/mod.rs"]
mod common;
mod conformance;
mod opening;
mod server;
