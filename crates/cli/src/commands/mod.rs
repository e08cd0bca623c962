//! One file a group of commands.

pub mod describe;
pub mod design;
pub mod devices;
pub mod enrol;
pub mod exchange;
pub mod host;
pub mod keep;
pub mod link;
pub mod listen;
pub mod norms;
mod notebook;
pub mod picture;
pub mod serve;
pub mod sheet;
pub mod tell;
