//! The way to a provider, as the protocol's library asks by it.

use openidconnect::{AsyncHttpClient, HttpRequest, HttpResponse};
use sayso_linked::wire::{Wire, WireError};
use std::future::Future;
use std::pin::Pin;

/// A wire that the library can hold.
pub struct Way(pub Wire);

impl<'c> AsyncHttpClient<'c> for Way {
    type Error = WireError;
    type Future = Pin<Box<dyn Future<Output = Result<HttpResponse, WireError>> + Send + 'c>>;

    fn call(&'c self, request: HttpRequest) -> Self::Future {
        Box::pin(self.0.ask(request))
    }
}
