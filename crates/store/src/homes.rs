//! Whose events come in. A notebook is one home's; another one's events are taken in only where a person says so.

use crate::error::StoreError;
use crate::shares::Shares;
use crate::store::Store;
use sayso_model::HomeId;
use std::collections::BTreeSet;

impl Store {
    /// Marks the homes that come in only where somebody says so. One comes into an empty notebook by itself.
    pub(crate) async fn mark_others(&self, shares: &mut Shares) -> Result<(), StoreError> {
        let here: BTreeSet<HomeId> = self.homes().await?.into_iter().collect();
        let one_begins = here.is_empty() && shares.len() < 2;
        for (id, share) in shares.iter_mut() {
            share.other = !one_begins && !here.contains(id);
            if share.name.is_none() && here.contains(id) {
                share.name = self.story(*id).await?.home().map(|card| card.name.to_string());
            }
        }
        Ok(())
    }
}
