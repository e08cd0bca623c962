//! The door and the API as a client meets them.

#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

mod agreement;
mod api;
mod client;
mod connections;
mod crawl;
mod damaged;
mod devices;
mod door;
mod homes;
mod homescreen;
mod links;
mod log;
mod open;
mod others;
mod schema;
mod secure;
mod shared;
mod strange;
mod web;
