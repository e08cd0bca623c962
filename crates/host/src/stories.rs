//! Where permission reads a home's story.

use crate::fault::told;
use crate::host::Host;
use sayso_model::{HomeId, Story};
use sayso_people::db::Homes;
use sayso_store::{Server, StoreError};
use std::error::Error;
use std::sync::Arc;

/// The stories of a server's homes.
pub struct Stories<'a>(pub &'a Server);

impl Homes for Stories<'_> {
    async fn story(&self, home: HomeId) -> Result<Option<Arc<Story>>, Box<dyn Error + Send + Sync>> {
        match self.0.home(home).story(home).await {
            Ok(story) => Ok(Some(story)),
            Err(StoreError::NoSuchHome(_) | StoreError::HomeLeft(_)) => Ok(None),
            Err(error) => Err(error.into()),
        }
    }
}

/// What a home's log says; none where there is no such home.
///
/// # Errors
/// Where it cannot be read.
pub async fn story(host: &Host, home: HomeId) -> Result<Option<Arc<Story>>, sayso_web::Error> {
    Stories(&host.server).story(home).await.map_err(|e| told(sayso_people::Error::Home(e)))
}
