//! The log in a file: SQLite in the notebook's folder, for a program that is used at home.

pub(crate) mod backup;
pub(crate) mod check;
pub(crate) mod db;
pub(crate) mod digest;
pub(crate) mod log;
pub(crate) mod notebook;
pub(crate) mod open;
pub(crate) mod restore;
pub(crate) mod strangers;
pub(crate) mod writer;
