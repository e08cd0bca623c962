//! Trials of a change on one animal (single-case designs): what the draw says for today, what was measured, what may be said.
//!
//! Methods: [`sayso_methods::single_case`]. Everything follows from the events and the moment, so that page and command say
//! the same. Later conditions are never told before their time: knowing them changes what people do. A strong sign of
//! stress under the changed condition ends the trial; nothing is tested before the end, for stopping while ahead wins nothing.

mod beside;
mod measure;
mod report;
mod result;
mod small;
mod standing;
mod trial;

pub use beside::{Beside, beside, during, planned_end};
pub use measure::{Measured, measured};
pub use report::{Compared, Departure, Judgement, LaneResult, NoTest, PhaseMean, PhaseName, Report, Tested, unit_of};
pub use result::{Outcome, outcome, report};
pub use small::Try;
pub use standing::{Standing, Today};
pub use trial::{Lane, Trial, design_of, plans, proposal, trial, trial_among, trying};
