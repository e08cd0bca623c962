//! Which home a request is about.

use sayso_model::HomeId;

/// A request on its way to a home; nothing has been asked for yet.
#[derive(Clone, Debug)]
pub struct ToHome {
    /// Which.
    pub home: HomeId,
    /// All that the account can choose from.
    pub homes: Vec<HomeId>,
}
