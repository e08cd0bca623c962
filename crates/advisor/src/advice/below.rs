//! A share that misses its bar.

use crate::estimate::Estimate;
use sayso_methods::learning::ground::Counted;
use serde::Serialize;

/// A share that is surely below what it must reach, by the rule that decides on it.
#[derive(Clone, Copy, PartialEq, Debug, Serialize)]
pub struct Below {
    /// What was counted.
    pub counted: Counted,
    /// The share, with the 90 % interval by which that is decided.
    pub share: Estimate,
    /// What it must reach.
    pub bar: f64,
}
