//! Where permission, and whoever was let in, reads a home's log.

use crate::host::Host;
use sayso_model::{HomeId, Story};
use sayso_people::db::Homes;
use sayso_store::{Server, StoreError};
use sayso_wording::Locale;
use sayso_wording::events::home_name;
use std::collections::BTreeMap;
use std::error::Error;
use std::sync::Arc;

/// The stories of a server's homes.
pub struct Stories<'a>(pub &'a Server);

impl Homes for Stories<'_> {
    // Not the whole story: a tap would have to read all of a home that nobody looked at lately.
    async fn opens(&self, home: HomeId) -> Result<Option<Arc<Story>>, Box<dyn Error + Send + Sync>> {
        Ok(opening(self.0, &[home]).await?.remove(&home).map(Arc::new))
    }
}

/// What of homes' logs decides to whom they are open, which holds their cards too; nothing of a home without any.
///
/// # Errors
/// Where they cannot be read.
pub async fn opening(server: &Server, homes: &[HomeId]) -> Result<BTreeMap<HomeId, Story>, StoreError> {
    let opens = server.opens(homes).await?;
    Ok(opens.into_iter().map(|(home, events)| (home, Story::from_events(events))).collect())
}

/// What a home is called.
///
/// # Errors
/// Where its log cannot be read.
pub async fn name_of(host: &Host, l: &Locale, home: HomeId) -> Result<String, sayso_web::Error> {
    Ok(home_name(l, &opening(&host.server, &[home]).await?.remove(&home).unwrap_or_default()))
}

/// What a home's log says; none where there is no such home.
///
/// # Errors
/// Where it cannot be read.
pub async fn story(host: &Host, home: HomeId) -> Result<Option<Arc<Story>>, sayso_web::Error> {
    match host.server.home(home).story(home).await {
        Ok(story) => Ok(Some(story)),
        Err(StoreError::NoSuchHome(_) | StoreError::HomeLeft(_)) => Ok(None),
        Err(error) => Err(error.into()),
    }
}
