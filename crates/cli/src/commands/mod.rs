//! One file a group of commands.

pub mod exchange;
pub mod keep;
pub mod serve;
pub mod tell;
