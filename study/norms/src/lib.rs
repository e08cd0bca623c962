//! Norms: from rows that households give to a release that tells nobody of one of them. No clock, and no I/O but in `files`; the only randomness is that of
//! OpenDP's noise.
//!
//! `draw` takes one word of each household, `measure` counts them, with noise, in the groups that `publish` finds large enough, and
//! `estimate` makes curves and intervals of the counts. `loss` and `ledger` keep account of what it costs households.

pub mod coverage;
pub mod draw;
pub mod estimate;
pub mod files;
pub mod grid;
pub mod group;
pub mod known;
pub mod ledger;
pub mod loss;
pub mod measure;
pub mod noise;
pub mod publish;
mod release;
pub mod table;

pub use ledger::{Entry, Ledger, LedgerFault};
pub use loss::{Loss, NoLoss};
pub use noise::{FromSeed, NoNoise, Noise, Noisy, Proven};
pub use release::{Made, NormsFault, Order, cells, release};
