//! A notebook at home that is linked to its home on a server: what both say to each other, and the notebook's side of it.
//!
//! Both are logs of facts under ids made once, so they become one by union, whichever way round and however often. The notebook
//! asks and the server answers; nothing here is in the way of a tap, and without a network everything is as ever
//! ([why](../../../docs/decisions/linked.md)).

mod address;
mod begin;
mod fault;
mod going_on;
mod kept;
pub mod letters;
mod media;
mod there;
mod turn;
pub mod wire;
mod work;

pub use address::{Address, NotAnAddress, SHOWN_AT};
pub use begin::{Asked, Ended, again, begin, end, say_yes};
pub use fault::{Hinders, Hindrance, LinkError};
pub use going_on::go_on;
pub use kept::{
    Held, HeldEvent, LINK_FILE, Link, PROGRESS_FILE, Place, Progress, Sends, State, WITNESSED_FILE, link, progress,
    state, witnessed,
};
pub use media::named;
pub use there::PATIENCE;
pub use turn::{Turned, turn};
