//! Signing in, joining and the account page, over HTTP through the whole application, on a database of their own.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, missing_docs)]

mod account;
mod browser;
#[path = "../../../../tests/postgres/cluster.rs"]
mod cluster;
#[path = "../../../../tests/postgres/fresh.rs"]
mod fresh;
mod join;
mod key;
mod post;
mod provider;
mod secrets;
mod server;
mod sign_in;
