//! What comes of a rehearsal: how the person taught, by the figures of real use; what was true of the animal; the one thing to
//! change next time; and what held a word up that did not get on.
//!
//! Pure, typed and without prose. Stores nothing.

mod change;
mod choose;
mod conduct;
mod counted;
mod found;
mod gain;
mod invited;
mod shared;
mod there;
mod truth;

pub use change::Change;
pub use choose::change;
pub use conduct::{Conduct, conduct};
pub use found::{Found, NAMEABLE, Shown, before, found, shown_before};
pub use gain::Gain;
pub use shared::{figures, is_worth_sharing};
pub use truth::{Truth, truth};
