//! A rehearsal: a person teaches an animal that cannot be harmed, moment by moment, from a seed.
//!
//! The same setup and the same acts at the same moments give the same rehearsal. What it assumes stands in
//! `docs/methods/rehearsal.md`; none of it is evidence about animals. Nothing of it is an event of a home.

mod act;
mod animal;
mod bothers;
mod character;
mod deeds;
mod events;
mod exercise;
mod hidden;
mod luck;
mod mind;
mod offers;
mod pairing;
mod room;
mod run;
mod showing;
mod thing;
mod told;
mod weeks;

pub use act::{Act, ActsError, Does, read, written};
pub use character::{Character, Traits};
pub use events::{Whose, Written, written_down, written_of};
pub use exercise::{Exercise, INVITATIONS, TREATS, WAIT_S};
pub use hidden::Hidden;
pub use mind::understanding;
pub use pairing::{Came, Pairing};
pub use room::{BED, BOARD, DOOR, GIVEN, Motion, PERSON, ROOM, Spot};
pub use run::{Over, Rehearsal, Run, Setup, play, play_with};
pub use thing::Thing;
pub use told::{LEANS_AWAY, SignSeen, Told, What};
pub use weeks::{Weeks, weeks};
