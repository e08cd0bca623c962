//! The same plans and the same aggregates on many machines: a scheduler, executors that work for it, and whoever asks them.
//!
//! Each knows the aggregates by their names ([`study_cohort::aggregates`]): what is not registered with all three cannot be asked.
//! Nothing here checks who is who, so ports belong in a network of one's own.

mod address;
mod asking;
mod error;
mod executor;
mod files;
mod scheduler;
mod warnings;

pub use address::Address;
pub use asking::{Trouble, context, trouble};
pub use error::ClusterError;
pub use executor::Executor;
pub use scheduler::Scheduler;
pub use warnings::warn_on_stderr;

use std::net::IpAddr;

/// Whether an address is reached from other machines, and so must be in a network of one's own.
#[must_use]
pub const fn open_to_others(address: IpAddr) -> bool {
    !address.is_loopback()
}
