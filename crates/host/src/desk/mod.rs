//! What the desk knows of each home: lines of its animals, worked out from its story when that grew, and kept beside its log.
//!
//! Nothing here asks who may see it: [`crate::pages`] shows nothing of a home whose consent is not open at that moment, but to who handed
//! it over that it was ([`handed_on`]).

mod answers;
mod going_on;
mod kept;
mod lines;
mod news;
mod passed;

pub use answers::{HomeAnswer, LATELY_S};
pub use going_on::go_on;
pub use kept::{FORM, Kept, KeptAnimal};
pub use lines::{Desks, Found, all_lines, lines};
pub use news::{for_coach, for_home, unread};
pub use passed::{HandedOn, InHand, StoodIn, Witnessed, given_away, goes_on_with, handed_on, is_theirs, stood_in};
