//! What other animals did: the row that a home gives of each learner and word, and the release of figures made of many such rows.
//!
//! Two forms of text that are read from others, so everything in them is checked and an error names line and field. How rows
//! are made from a story is said in `sayso-advisor`; how a release is made of rows, in the study. Pure: no I/O, clock or
//! randomness. A press means nothing here beyond itself: learners to whom no word means a thing press too.

mod cell;
mod curve;
mod fault;
mod hours;
mod kinds;
mod nearest;
mod release;
mod row;
mod stage;
mod week;

pub use cell::{Answer, Cell, Part, Parts, Question};
pub use curve::{Curve, Outside, Point, Quantile, Quantiles, Spread};
pub use fault::ReleaseFault;
pub use hours::{DayPart, HourShare, Hours, NoDayPart};
pub use kinds::{AgeBand, WordKind};
pub use nearest::{Like, Nearest, NotEnough};
pub use release::{MadeBy, Noise, People, Release, Rule};
pub use row::{NoStudyName, RowFault, StudyName, SummaryRow, read_rows, write_rows};
pub use stage::{StageWait, TimedStage};
pub use week::{NoStretch, Often, Stretch, Told, WeekPresses, WeekShare, Weeks};
