//! The club's own identity provider (OpenID Connect Core 1.0), where there is one: one more way to show who one is.
//!
//! Authorization code with PKCE, state and nonce. What it says is believed only where its signature, issuer, audience, time and
//! nonce hold, and of all it says only who someone is there (its `sub`) and when they last proved it. Nobody waits for it but who
//! chose it: it is asked when someone does, not when the server starts.

mod way;

use openidconnect::core::{
    CoreAuthPrompt, CoreClient, CoreClientAuthMethod, CoreIdToken, CoreJwsSigningAlgorithm, CoreProviderMetadata,
    CoreResponseType,
};
use openidconnect::{
    AuthType, AuthenticationFlow, AuthorizationCode, ClaimsVerificationError, ClientId, ClientSecret, CsrfToken,
    IssuerUrl, Nonce, PkceCodeChallenge, PkceCodeVerifier, RedirectUrl, TokenResponse,
};
use sayso_linked::wire::{self, Bounds, NoWire, Wire, WireError};
use sayso_model::{Label, Moment};
use sayso_people::Secret;
use sayso_people::db::Errand;
use std::sync::{Arc, Mutex, PoisonError};
use std::time::{Duration, Instant};
use url::Url;
use way::Way;

/// Where the browser comes back to. The provider has to be told this address.
pub const BACK: &str = "/sign-in/provider/back";

/// What it says of itself (addresses, keys) is asked for anew after this long.
const KEPT: Duration = Duration::from_secs(600);
/// How long one question may take, and most bytes of an answer.
const BOUNDS: Bounds = Bounds { patience: Duration::from_secs(5), most: 256 * 1024 };
/// Most bytes of who someone is there (OpenID Connect Core 1.0, 2: 255 ASCII characters).
const MOST_SUBJECT: usize = 255;

/// Signatures that are believed: those that the provider alone can make. Not those by the secret it shares with this server.
const BELIEVED: [CoreJwsSigningAlgorithm; 9] = [
    CoreJwsSigningAlgorithm::RsaSsaPkcs1V15Sha256,
    CoreJwsSigningAlgorithm::RsaSsaPkcs1V15Sha384,
    CoreJwsSigningAlgorithm::RsaSsaPkcs1V15Sha512,
    CoreJwsSigningAlgorithm::RsaSsaPssSha256,
    CoreJwsSigningAlgorithm::RsaSsaPssSha384,
    CoreJwsSigningAlgorithm::RsaSsaPssSha512,
    CoreJwsSigningAlgorithm::EcdsaP256Sha256,
    CoreJwsSigningAlgorithm::EcdsaP384Sha384,
    CoreJwsSigningAlgorithm::EdDsa,
];

/// Which provider, and as whom this server is known there.
#[derive(Clone)]
pub struct ProviderConfig {
    /// Its address, letter by letter as it writes it into what it signs.
    pub issuer: String,
    /// The name under which it knows this server.
    pub client_id: String,
    /// The secret that it shares with this server.
    pub client_secret: String,
    /// What the button says people sign in with.
    pub name: Label,
}

/// Why a provider cannot be used.
#[derive(Debug, thiserror::Error)]
pub enum ProviderError {
    /// Its address is none that can be trusted.
    #[error("the identity provider's address {0} must be https, or http on this machine")]
    Issuer(String),
    /// The machine's certificates do not let it be told from anyone else.
    #[error("the identity provider cannot be asked: {0}")]
    Wire(#[from] NoWire),
    /// It does not answer, or not as a provider does.
    #[error("the identity provider: {0}")]
    Away(String),
    /// It names no address for tokens.
    #[error("the identity provider has no token endpoint")]
    NoTokens,
    /// It names an address that is not safe.
    #[error("the identity provider names an address that is not safe: {0}")]
    Unsafe(WireError),
    /// It brought no ID token.
    #[error("the identity provider brought no ID token")]
    NoToken,
    /// It sent the browser back without a code.
    #[error("the identity provider sent the browser back with the error {0:?} and no code")]
    SaidNo(Option<String>),
    /// Somebody else sent the browser back.
    #[error("the browser came back from {0:?}, which is another identity provider")]
    Elsewhere(String),
    /// What it said does not hold.
    #[error("the identity provider's answer does not hold: {0}")]
    Refused(String),
}

/// Who someone is there.
#[derive(Debug)]
pub struct Named {
    /// Its name for them, the same at each sign-in.
    pub subject: String,
    /// When they last proved it there; none where it does not say.
    pub proved_at: Option<Moment>,
}

/// A provider.
pub struct Provider {
    /// What the button says.
    pub name: Label,
    issuer: IssuerUrl,
    client_id: ClientId,
    client_secret: ClientSecret,
    back: RedirectUrl,
    way: Way,
    known: Mutex<Option<(Instant, Arc<CoreProviderMetadata>)>>,
}

impl std::fmt::Debug for Provider {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.debug_struct("Provider").field("issuer", &self.issuer.as_str()).finish_non_exhaustive()
    }
}

impl Provider {
    /// One that is not asked yet.
    ///
    /// # Errors
    /// [`ProviderError::Issuer`], [`ProviderError::Wire`].
    pub fn new(config: &ProviderConfig, public_url: &Url) -> Result<Self, ProviderError> {
        let wrong = || ProviderError::Issuer(config.issuer.clone());
        let url = Url::parse(&config.issuer).map_err(|_| wrong())?;
        let here = wire::is_here(&url);
        let nobody = url.username().is_empty() && url.password().is_none();
        if !(url.scheme() == "https" || here) || url.query().is_some() || url.fragment().is_some() || !nobody {
            return Err(wrong());
        }
        let back = crate::links::page(public_url, BACK.trim_start_matches('/'));
        Ok(Self {
            name: config.name.clone(),
            issuer: IssuerUrl::new(config.issuer.clone()).map_err(|_| wrong())?,
            client_id: ClientId::new(config.client_id.clone()),
            client_secret: ClientSecret::new(config.client_secret.clone()),
            back: RedirectUrl::new(back).map_err(|_| wrong())?,
            way: Way(Wire::new(here, BOUNDS)?),
            known: Mutex::new(None),
        })
    }

    /// Its address, as accounts are linked by it.
    #[must_use]
    pub fn issuer(&self) -> &str {
        self.issuer.as_str()
    }

    /// Where the browser is led. `recently`: they must have proved who they are there in so many seconds; `anew`: they are asked to
    /// once more in any case.
    ///
    /// # Errors
    /// [`ProviderError::Away`].
    pub async fn leads(&self, errand: &Errand, recently: f64, anew: bool) -> Result<Url, ProviderError> {
        let about = self.about().await?;
        self.way.0.admits(about.authorization_endpoint().url()).map_err(ProviderError::Unsafe)?;
        let client = CoreClient::from_provider_metadata((*about).clone(), self.client_id.clone(), None)
            .set_redirect_uri(self.back.clone());
        let verifier = PkceCodeVerifier::new(errand.verifier.reveal().to_owned());
        let (state, nonce) = (errand.state.reveal().to_owned(), errand.nonce.reveal().to_owned());
        let asked = client
            .authorize_url(
                AuthenticationFlow::<CoreResponseType>::AuthorizationCode,
                move || CsrfToken::new(state),
                move || Nonce::new(nonce),
            )
            .set_pkce_challenge(PkceCodeChallenge::from_code_verifier_sha256(&verifier))
            .set_max_age(Duration::from_secs_f64(recently.max(0.0)));
        let asked = if anew { asked.add_prompt(CoreAuthPrompt::Login) } else { asked };
        Ok(asked.url().0)
    }

    /// Who someone is, by the code that their browser brought back.
    ///
    /// # Errors
    /// [`ProviderError::Away`], [`ProviderError::Refused`].
    pub async fn named(&self, code: String, nonce: &Secret, verifier: &Secret) -> Result<Named, ProviderError> {
        let about = self.about().await?;
        let tokens = about.token_endpoint().ok_or(ProviderError::NoTokens)?.url();
        self.way.0.admits(tokens).map_err(ProviderError::Unsafe)?;
        let methods = about.token_endpoint_auth_methods_supported();
        let by_form = methods.is_some_and(|methods| !methods.contains(&CoreClientAuthMethod::ClientSecretBasic));
        let client = CoreClient::from_provider_metadata(
            (*about).clone(),
            self.client_id.clone(),
            Some(self.client_secret.clone()),
        )
        .set_redirect_uri(self.back.clone())
        .set_auth_type(if by_form { AuthType::RequestBody } else { AuthType::BasicAuth });
        let exchange = client.exchange_code(AuthorizationCode::new(code)).map_err(away)?;
        let exchange = exchange.set_pkce_verifier(PkceCodeVerifier::new(verifier.reveal().to_owned()));
        let answer = exchange.request_async(&self.way).await.map_err(|why| match why {
            openidconnect::RequestTokenError::ServerResponse(said) => ProviderError::Refused(said.to_string()),
            other => away(chain(&other)),
        })?;
        let token = answer.id_token().ok_or(ProviderError::NoToken)?;
        let nonce = Nonce::new(nonce.reveal().to_owned());
        match self.read(&about, token, &nonce) {
            // It may have changed its keys since they were fetched.
            Err(ClaimsVerificationError::SignatureVerification(_)) => {
                self.forget();
                let about = self.about().await?;
                self.read(&about, token, &nonce)
            }
            read => read,
        }
        .map_err(|why| ProviderError::Refused(chain(&why)))
    }

    fn read(
        &self,
        about: &CoreProviderMetadata,
        token: &CoreIdToken,
        nonce: &Nonce,
    ) -> Result<Named, ClaimsVerificationError> {
        let client = CoreClient::from_provider_metadata(about.clone(), self.client_id.clone(), None);
        let claims = token.claims(&client.id_token_verifier().set_allowed_algs(BELIEVED), nonce)?;
        let subject = claims.subject().as_str();
        if subject.is_empty() || subject.len() > MOST_SUBJECT || subject.contains('\0') {
            return Err(ClaimsVerificationError::InvalidSubject("not 1 to 255 characters".into()));
        }
        let proved_at = claims.auth_time().map(|at| Moment::clamped(at.timestamp_millis()));
        Ok(Named { subject: subject.to_owned(), proved_at })
    }

    /// What it says of itself, with its keys.
    async fn about(&self) -> Result<Arc<CoreProviderMetadata>, ProviderError> {
        if let Some((at, about)) = &*self.known.lock().unwrap_or_else(PoisonError::into_inner)
            && at.elapsed() < KEPT
        {
            return Ok(Arc::clone(about));
        }
        let about = CoreProviderMetadata::discover_async(self.issuer.clone(), &self.way).await;
        let about = Arc::new(about.map_err(|why| away(chain(&why)))?);
        *self.known.lock().unwrap_or_else(PoisonError::into_inner) = Some((Instant::now(), Arc::clone(&about)));
        Ok(about)
    }

    fn forget(&self) {
        *self.known.lock().unwrap_or_else(PoisonError::into_inner) = None;
    }
}

fn away(why: impl std::fmt::Display) -> ProviderError {
    ProviderError::Away(why.to_string())
}

/// An error with what caused it.
fn chain(error: &dyn std::error::Error) -> String {
    let mut words = error.to_string();
    let mut source = error.source();
    while let Some(cause) = source {
        words = format!("{words}: {cause}");
        source = cause.source();
    }
    words
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    #[allow(clippy::unwrap_used)]
    fn only_an_address_that_can_be_trusted_is_a_provider() {
        let at = |issuer: &str| {
            let config = ProviderConfig {
                issuer: issuer.into(),
                client_id: "sayso".into(),
                client_secret: "shared".into(),
                name: Label::new("the club").unwrap(),
            };
            Provider::new(&config, &"https://sayso.example".parse().unwrap())
        };
        let trusted = at("https://id.example.org/club").unwrap();
        assert_eq!(trusted.issuer(), "https://id.example.org/club");
        assert_eq!(trusted.back.as_str(), "https://sayso.example/sign-in/provider/back");
        assert!(at("http://127.0.0.1:9000").is_ok() && at("http://localhost:9000").is_ok(), "while trying");
        let bad = ["http://id.example.org", "id.example.org", "ftp://id.example.org", "https://me:pw@id.example.org"];
        for bad in bad.into_iter().chain(["https://id.example.org/?x=1", "https://id.example.org/#x", ""]) {
            assert!(matches!(at(bad), Err(ProviderError::Issuer(_))), "{bad}");
        }
    }
}
