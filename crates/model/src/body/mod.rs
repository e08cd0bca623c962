//! What happens at and around the board, and what is said of it later.

mod board;
mod consent;
mod designs;
mod drawn;
mod enums;
mod lessons;
mod likes;
mod plan;
mod practice;
mod probes;
mod programme;
mod remarks;
mod sessions;
mod talk;

pub use board::*;
pub use consent::*;
pub use designs::*;
pub use drawn::*;
pub use enums::*;
pub use lessons::*;
pub use likes::*;
pub use plan::*;
pub use practice::*;
pub use probes::*;
pub use programme::*;
pub use remarks::*;
pub use sessions::*;
pub use talk::*;
