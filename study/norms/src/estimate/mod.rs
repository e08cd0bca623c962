//! From counts, with or without noise, to curves, quantiles and shares with intervals that hold both what the choice of households and what
//! the noise may do. Plain numbers in and out; nothing here looks at a household, so it costs no privacy.

mod counts;
mod curve;
mod interval;
mod shares;
mod step;
mod telling;

pub use counts::Counts;
pub use curve::{Between, quantiles, steps, steps_of_shares};
pub use interval::interval;
pub use shares::{Share, from_each_on, shares};
