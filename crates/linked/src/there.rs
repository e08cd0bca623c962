//! Asking the server.

use crate::address::Address;
use crate::fault::LinkError;
use crate::letters::{NoKey, NoKeyFor, Stopped};
use crate::wire::{Bounds, Wire};
use hyper::header::{ACCEPT, AUTHORIZATION, CONTENT_TYPE, HeaderValue};
use hyper::{Method, Request, Response, StatusCode};
use sayso_store::MOST_CLIP_BYTES;
use serde::Serialize;
use serde::de::DeserializeOwned;
use std::time::Duration;

/// How long one question may take: a recording over a slow line.
pub const PATIENCE: Duration = Duration::from_secs(120);

/// A server that is asked.
pub(crate) struct There {
    wire: Wire,
    address: Address,
    key: Option<String>,
}

impl There {
    pub fn new(address: Address, key: Option<String>) -> Result<Self, LinkError> {
        let bounds = Bounds { patience: PATIENCE, most: MOST_CLIP_BYTES + 1024 };
        Ok(Self { wire: Wire::new(address.is_here(), bounds)?, address, key })
    }

    /// The same, asked under the key that it gave.
    pub fn known_by(self, key: String) -> Self {
        Self { key: Some(key), ..self }
    }

    /// Asks for JSON.
    pub async fn get<T: DeserializeOwned>(&self, path: &str) -> Result<T, LinkError> {
        read(&self.ask(Method::GET, path, None).await?)
    }

    /// Sends JSON, and reads JSON.
    pub async fn post<T: DeserializeOwned>(&self, path: &str, what: &impl Serialize) -> Result<T, LinkError> {
        let body = serde_json::to_vec(what).map_err(|why| LinkError::Strange(why.to_string()))?;
        read(&self.ask(Method::POST, path, Some(("application/json", body))).await?)
    }

    /// Sends bytes; nothing is read.
    pub async fn put(&self, path: &str, bytes: Vec<u8>) -> Result<(), LinkError> {
        self.ask(Method::POST, path, Some(("application/octet-stream", bytes))).await.map(drop)
    }

    /// Asks for bytes; none where there are none.
    pub async fn bytes(&self, path: &str) -> Result<Option<Vec<u8>>, LinkError> {
        let answer = self.answer(Method::GET, path, None).await?;
        if answer.status() == StatusCode::NOT_FOUND {
            return Ok(None);
        }
        sound(answer).map(|answer| Some(answer.into_body()))
    }

    async fn ask(
        &self,
        how: Method,
        path: &str,
        body: Option<(&'static str, Vec<u8>)>,
    ) -> Result<Response<Vec<u8>>, LinkError> {
        sound(self.answer(how, path, body).await?)
    }

    async fn answer(
        &self,
        how: Method,
        path: &str,
        body: Option<(&'static str, Vec<u8>)>,
    ) -> Result<Response<Vec<u8>>, LinkError> {
        let strange = |why: &dyn std::fmt::Display| LinkError::Strange(why.to_string());
        let mut request = Request::builder()
            .method(how)
            .uri(self.address.at(path))
            .header(ACCEPT, HeaderValue::from_static("application/json"));
        if let Some(key) = &self.key {
            let mut bearer = HeaderValue::from_str(&format!("Bearer {key}")).map_err(|why| strange(&why))?;
            bearer.set_sensitive(true);
            request = request.header(AUTHORIZATION, bearer);
        }
        let request = match body {
            Some((kind, bytes)) => request.header(CONTENT_TYPE, kind).body(bytes),
            None => request.body(Vec::new()),
        };
        Ok(self.wire.ask(request.map_err(|why| strange(&why))?).await?)
    }
}

fn read<T: DeserializeOwned>(answer: &Response<Vec<u8>>) -> Result<T, LinkError> {
    serde_json::from_slice(answer.body()).map_err(|why| LinkError::Strange(why.to_string()))
}

/// An answer that says yes. That it says “no more” is believed of a server of this program alone: what stands between the two, such
/// as the page of a guest network, says no as well.
fn sound(answer: Response<Vec<u8>>) -> Result<Response<Vec<u8>>, LinkError> {
    let status = answer.status();
    if status.is_success() {
        return Ok(answer);
    }
    if let Ok(Stopped { stopped }) = serde_json::from_slice(answer.body()) {
        return Err(LinkError::Stopped(stopped));
    }
    if let Ok(NoKey { no_key }) = serde_json::from_slice(answer.body()) {
        return Err(match no_key {
            NoKeyFor::Code => LinkError::Code,
            NoKeyFor::OtherHome => LinkError::OtherHome,
        });
    }
    Err(match status {
        StatusCode::TOO_MANY_REQUESTS => LinkError::TooOften,
        _ if status.is_server_error() => LinkError::Away(status.to_string()),
        // Not what it says: who may type an address here shall not read by it what else this machine reaches.
        _ => LinkError::Answered(status.as_u16()),
    })
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;
    use crate::letters::Stop;

    #[test]
    fn only_a_server_of_this_program_is_believed_that_it_takes_nothing_any_more() {
        let says = |status: u16, body: &str| {
            let answer = Response::builder().status(status).body(body.as_bytes().to_vec()).unwrap();
            sound(answer).unwrap_err()
        };
        assert!(matches!(says(401, r#"{"stopped":"ended"}"#), LinkError::Stopped(Stop::Ended)));
        assert!(matches!(says(410, r#"{"stopped":"left"}"#), LinkError::Stopped(Stop::Left)));
        assert!(matches!(says(404, r#"{"no_key":"code"}"#), LinkError::Code));
        assert!(matches!(says(409, r#"{"no_key":"other_home"}"#), LinkError::OtherHome));
        assert!(
            matches!(says(404, "<html>Not found"), LinkError::Answered(404)),
            "another program's is no word on a code"
        );
        assert!(matches!(says(401, "<html>Sign in to the guest network"), LinkError::Answered(401)));
        assert!(matches!(says(503, ""), LinkError::Away(_)) && matches!(says(429, ""), LinkError::TooOften));
    }
}
