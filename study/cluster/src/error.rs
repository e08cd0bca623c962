//! What can go wrong among machines.

use crate::address::Address;
use ballista_core::error::BallistaError;
use std::net::{IpAddr, SocketAddr};

/// Why a scheduler or an executor does not run.
#[derive(Debug, thiserror::Error)]
#[non_exhaustive]
pub enum ClusterError {
    /// A port that is not to be had.
    #[error("{address} cannot be listened on: {why}")]
    Bind {
        /// Which.
        address: SocketAddr,
        /// Why.
        why: std::io::Error,
    },
    /// Nobody there.
    #[error("no scheduler is reached at {scheduler} within {seconds} s: {why}")]
    Unreached {
        /// Where.
        scheduler: Address,
        /// How long it was tried.
        seconds: u64,
        /// Why.
        why: std::io::Error,
    },
    /// One that says of itself that it is nowhere.
    #[error("others cannot reach {0}: say with --advertise under which name or number they can")]
    Nowhere(IpAddr),
    /// A folder for what is handed on that cannot be had.
    #[error("no folder can be had for what is handed on: {0}")]
    Work(std::io::Error),
    /// An executor that is heard of too seldom.
    #[error(
        "an executor must be given up after more than {least} s: it is looked for every {least} s and says every \
         {heartbeat} s that it is there"
    )]
    TooSoon {
        /// The least.
        least: u64,
        /// How often it says so.
        heartbeat: u64,
    },
    /// The scheduler is gone.
    #[error("the scheduler at {0} was not there any more; this executor ended and is to be started anew")]
    Left(Address),
    /// Of the engine.
    #[error("the engine: {0}")]
    Engine(#[from] BallistaError),
}
