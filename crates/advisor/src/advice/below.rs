//! A share that misses its bar.

use crate::estimate::Estimate;
use sayso_methods::learning::ground::Counted;
use serde::{Serialize, Serializer};

/// A share that is surely below what it must reach, by the rule that decides on it.
#[derive(Clone, Copy, PartialEq, Debug, Serialize)]
pub struct Below {
    /// What was counted.
    #[serde(serialize_with = "counted")]
    pub counted: Counted,
    /// The share.
    pub share: Estimate,
    /// What it must reach.
    pub bar: f64,
}

fn counted<S: Serializer>(counted: &Counted, out: S) -> Result<S::Ok, S::Error> {
    out.serialize_str(match counted {
        Counted::Wanted => "wanted",
        Counted::Latest => "latest",
        Counted::LaterWanted => "later_wanted",
        Counted::LaterPresses => "later_presses",
    })
}
