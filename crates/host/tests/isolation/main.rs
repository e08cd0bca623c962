//! Every address of a home, by every role, and with another home's ids: what the table of capabilities says, and nothing else.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, missing_docs)]

mod addresses;
#[path = "../../../../tests/postgres/cluster.rs"]
mod cluster;
mod events;
mod foreign;
#[path = "../../../../tests/postgres/fresh.rs"]
mod fresh;
mod health;
mod house;
mod kept;
mod links;
mod own;
mod queries;
mod scores;
mod table;
mod tabs;
mod tested;
mod timing;
