//! What there is: identities, units, events, stages, and the story a log of events tells.
//!
//! No I/O, no clock, no hidden randomness. Knows nothing of storage, pages or estimates.

pub mod body;
pub mod cards;
pub mod check;
pub mod consents;
mod current;
pub mod draw;
pub mod ears;
pub mod event;
pub mod facts;
mod fault;
pub mod findings;
pub mod id;
pub mod later;
pub mod ledger;
pub mod marks;
pub mod order;
pub mod reading;
mod records;
pub mod session;
mod shelf;
mod shown;
pub mod species;
pub mod stage;
pub mod story;
pub mod talks;
pub mod text;
pub mod time;
mod too_late;
pub mod twice;
pub mod units;
pub mod window;

pub use body::*;
pub use cards::*;
pub use event::{Body, Event, Kind, Source};
pub use fault::Fault;
pub use findings::{Problem, Problems};
pub use id::*;
pub use ledger::{Inserted, Ledger};
pub use marks::Week;
pub use reading::{Clock, Language, WeightUnit};
pub use session::Session;
pub use shelf::Key;
pub use species::{LifeStage, Species};
pub use stage::Stage;
pub use story::{Fact, Story};
pub use text::{Label, Note, ShortNote};
pub use time::{Day, Moment, Zone};
pub use too_late::TooLate;
pub use twice::SAME_PRESS_S;
pub use units::{Grams, Kcal, Kilograms, Probability, Ratio, Seconds};
