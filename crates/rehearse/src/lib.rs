//! What comes of a rehearsal: how the person taught, by the figures of real use; what was true of the animal; and the one
//! thing to change next time.
//!
//! Pure, typed and without prose. Stores nothing.

mod change;
mod conduct;
mod truth;

pub use change::{Change, change};
pub use conduct::{Conduct, conduct};
pub use truth::{Truth, truth};
