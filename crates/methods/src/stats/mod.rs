//! General statistics the other modules share: exact tests, intervals, counts, false discovery control.
//!
//! Plain numbers in, typed results out. Input that cannot be computed gives a [`StatsError`], never a NaN and never a panic.

mod bayes;
mod binomial;
mod clumping;
pub mod confidence_sequence;
mod counting;
pub(crate) mod dense;
pub mod evalue;
mod fdr;
mod fisher;
mod interval;
mod p_method;
mod poisson;
mod scan;
mod special;

pub use bayes::{BayesFactor, BetaPrior, Direction, binomial_bayes_factor};
pub use binomial::{Proportion, Tail, binomial_at_most};
pub use clumping::{Clumping, clumped_p};
pub use fdr::{Discoveries, benjamini_hochberg};
pub use fisher::{FisherTest, TwoByTwo};
pub use interval::{Interval, Level, StatsError};
pub use p_method::PMethod;
pub use poisson::{Count, RateComparison, compare_rates};
pub use scan::{Scan, highest_stretch};
pub(crate) use special::normal_quantile_quick;
pub use special::{chi_square_upper, normal_cdf, normal_quantile, student_t_quantile};
