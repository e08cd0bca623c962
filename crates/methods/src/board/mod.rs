//! Where words go on a board.
//!
//! `plan` lays a board out; `solve` is the quadratic assignment underneath, for any problem of this kind.

mod bound;
mod exact;
mod plan;
mod problem;
mod setting;
mod solve;
mod tabu;
mod why;
mod wishes;

pub use plan::{Plan, PlanError, plan};
pub use problem::{MOST_PLACES, PlacingError, Problem};
pub use setting::Parts;
pub use solve::{Effort, Placing, Proof, solve};
pub use why::{Move, MoveReason};
pub use wishes::{BoardWord, Grid, Pair, WishWeights, Wishes};
