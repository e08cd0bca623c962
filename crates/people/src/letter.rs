//! Letters: what is to be told to whom. Whoever sends one finds the words.

use crate::email::Email;
use crate::secret::Secret;
use crate::tidings::Every;
use sayso_model::{HomeId, Label, Language, Moment};

/// What is to be told to someone by mail; whoever sends it finds the words.
#[derive(Clone, Debug)]
pub enum Letter {
    /// A link to sign in.
    SignIn {
        /// The secret of the link.
        secret: Secret,
        /// Minutes it holds.
        minutes: u32,
    },
    /// A keeper of the server invited a new keeper to the person's home.
    Rescue {
        /// Who did.
        by: Label,
        /// From when someone may come by it.
        opens_at: Moment,
    },
    /// That something is new: how much, and where it is read; nothing of what.
    Tidings {
        /// Homes in which something is new for a coach.
        homes: usize,
        /// Things that coaches sent to the person's own homes.
        things: usize,
        /// The home to which all of them were sent; none where there are several.
        sent_to: Option<HomeId>,
        /// How often at most the person chose to be written to.
        every: Every,
        /// By what such letters are stopped.
        stop: Secret,
    },
    /// A link that proves the address.
    Prove {
        /// The secret of the link.
        secret: Secret,
        /// Minutes it holds.
        minutes: u32,
    },
}

/// A letter with whom it is for and what that person reads.
#[derive(Clone, Debug)]
pub struct Addressed {
    /// Whom.
    pub to: Email,
    /// In which language.
    pub language: Language,
    /// What.
    pub letter: Letter,
}
