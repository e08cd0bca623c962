//! A request that knows which home it is about.

use sayso_model::HomeId;
use sayso_people::Who;

/// A request on its way to a home; nothing has been asked for yet.
#[derive(Clone, Debug)]
pub struct ToHome {
    /// Whose request, with every role.
    pub who: Who,
    /// Which.
    pub home: HomeId,
    /// All that the account can choose from.
    pub homes: Vec<HomeId>,
}
