//! The log on a database server: PostgreSQL, for many homes and several programs that serve them.

mod append;
mod blobs;
pub(crate) mod digest;
mod erased;
mod faults;
pub(crate) mod home;
mod prepare;
pub(crate) mod server;
