//! An identity provider of the tests' own, which may be told to say what does not hold.

use axum::extract::State;
use axum::http::{HeaderMap, StatusCode};
use axum::routing::{get, post};
use axum::{Form, Json, Router};
use base64::Engine;
use base64::engine::general_purpose::{STANDARD, URL_SAFE_NO_PAD};
use ring::rand::SystemRandom;
use ring::signature::{ECDSA_P256_SHA256_FIXED_SIGNING, EcdsaKeyPair, KeyPair};
use sayso_host::ProviderConfig;
use sayso_model::Label;
use sayso_web::state::machine_clock;
use serde_json::{Value, json};
use std::collections::BTreeMap;
use std::sync::atomic::{AtomicBool, Ordering};
use std::sync::{Arc, Mutex};
use tokio::net::TcpListener;
use url::Url;

pub const CLIENT: &str = "sayso at the club";
pub const SECRET: &str = "what both know: 7%&+";

/// What a browser was led to ask for.
#[derive(Clone, Debug)]
pub struct Asked {
    pub state: String,
    pub nonce: String,
    pub challenge: String,
    pub all: BTreeMap<String, String>,
}

impl Asked {
    pub fn of(to: &str) -> Self {
        let url: Url = to.parse().unwrap();
        let all: BTreeMap<String, String> = url.query_pairs().into_owned().collect();
        let one = |name: &str| all.get(name).cloned().unwrap_or_default();
        Self { state: one("state"), nonce: one("nonce"), challenge: one("code_challenge"), all }
    }
}

/// What stands in a token, before it is signed.
pub type Claims = serde_json::Map<String, Value>;

fn pair() -> EcdsaKeyPair {
    let random = SystemRandom::new();
    let kept = EcdsaKeyPair::generate_pkcs8(&ECDSA_P256_SHA256_FIXED_SIGNING, &random).unwrap();
    EcdsaKeyPair::from_pkcs8(&ECDSA_P256_SHA256_FIXED_SIGNING, kept.as_ref(), &random).unwrap()
}

struct Known {
    issuer: String,
    key: Mutex<EcdsaKeyPair>,
    codes: Mutex<BTreeMap<String, (String, String)>>,
    away: AtomicBool,
    asked: Mutex<usize>,
}

/// A provider that answers on this machine.
#[derive(Clone)]
pub struct Provider(Arc<Known>);

impl Provider {
    pub async fn open() -> Self {
        let listener = TcpListener::bind("127.0.0.1:0").await.unwrap();
        let issuer = format!("http://127.0.0.1:{}/club", listener.local_addr().unwrap().port());
        let known = Arc::new(Known {
            issuer,
            key: Mutex::new(pair()),
            codes: Mutex::default(),
            away: AtomicBool::new(false),
            asked: Mutex::new(0),
        });
        let app = Router::new()
            .route("/club/.well-known/openid-configuration", get(about))
            .route("/club/keys", get(keys))
            .route("/club/token", post(token))
            .with_state(Arc::clone(&known));
        tokio::spawn(async move { axum::serve(listener, app).await.unwrap() });
        Self(known)
    }

    pub fn config(&self) -> ProviderConfig {
        ProviderConfig {
            issuer: self.0.issuer.clone(),
            client_id: CLIENT.into(),
            client_secret: SECRET.into(),
            name: Label::new("the club").unwrap(),
        }
    }

    /// From now on it answers nothing of use.
    pub fn goes(&self) {
        self.0.away.store(true, Ordering::Relaxed);
    }

    /// It signs by another key from now on.
    pub fn changes_keys(&self) {
        *self.0.key.lock().unwrap() = pair();
    }

    /// How often it was asked for anything.
    pub fn asked(&self) -> usize {
        *self.0.asked.lock().unwrap()
    }

    /// What it says of someone who signed in just now, for whoever asked.
    pub fn claims(&self, subject: &str, asked: &Asked) -> Claims {
        let now = machine_clock().millis() / 1_000;
        let said = json!({
            "iss": self.0.issuer, "sub": subject, "aud": CLIENT, "nonce": asked.nonce, "email": "ilda@home.example",
            "email_verified": true, "iat": now, "exp": now + 300, "auth_time": now,
        });
        said.as_object().unwrap().clone()
    }

    /// The address that it sends the browser back to, with a code for these claims, signed as it should be.
    pub fn back(&self, claims: &Claims, asked: &Asked) -> String {
        let token = self.signed(&json!({ "alg": "ES256", "kid": "one", "typ": "JWT" }), claims);
        self.back_with(token, asked)
    }

    /// The same with a token of the test's own.
    pub fn back_with(&self, token: String, asked: &Asked) -> String {
        let mut codes = self.0.codes.lock().unwrap();
        let code = format!("code-{}", codes.len());
        codes.insert(code.clone(), (token, asked.challenge.clone()));
        format!("/sign-in/provider/back?code={code}&state={}&session_state=x", asked.state)
    }

    pub fn signed(&self, head: &Value, claims: &Claims) -> String {
        let part = |value: &Value| URL_SAFE_NO_PAD.encode(value.to_string());
        let said = format!("{}.{}", part(head), part(&Value::Object(claims.clone())));
        let signature = self.0.key.lock().unwrap().sign(&SystemRandom::new(), said.as_bytes()).unwrap();
        format!("{said}.{}", URL_SAFE_NO_PAD.encode(signature.as_ref()))
    }
}

fn here(known: &Known) -> Result<(), StatusCode> {
    *known.asked.lock().unwrap() += 1;
    if known.away.load(Ordering::Relaxed) { Err(StatusCode::BAD_GATEWAY) } else { Ok(()) }
}

async fn about(State(known): State<Arc<Known>>) -> Result<Json<Value>, StatusCode> {
    here(&known)?;
    let at = |page: &str| format!("{}/{page}", known.issuer);
    Ok(Json(json!({
        "issuer": known.issuer, "authorization_endpoint": at("authorize"), "token_endpoint": at("token"),
        "jwks_uri": at("keys"), "response_types_supported": ["code"], "subject_types_supported": ["public"],
        // It claims more than may be believed.
        "id_token_signing_alg_values_supported": ["ES256", "HS256", "none"],
    })))
}

async fn keys(State(known): State<Arc<Known>>) -> Result<Json<Value>, StatusCode> {
    here(&known)?;
    let key = known.key.lock().unwrap();
    // An uncompressed point: 4, x, y.
    let point = key.public_key().as_ref();
    let (x, y) = (URL_SAFE_NO_PAD.encode(&point[1..33]), URL_SAFE_NO_PAD.encode(&point[33..]));
    let one = json!({ "kty": "EC", "crv": "P-256", "kid": "one", "use": "sig", "alg": "ES256", "x": x, "y": y });
    Ok(Json(json!({ "keys": [one] })))
}

/// A code is worth one token, to who knows the verifier of its challenge and is who they say.
async fn token(
    State(known): State<Arc<Known>>,
    headers: HeaderMap,
    Form(sent): Form<BTreeMap<String, String>>,
) -> Result<Json<Value>, (StatusCode, Json<Value>)> {
    let refused = |error: &str| (StatusCode::BAD_REQUEST, Json(json!({ "error": error })));
    here(&known).map_err(|status| (status, Json(json!({}))))?;
    let encoded = |text: &str| url::form_urlencoded::byte_serialize(text.as_bytes()).collect::<String>();
    let basic = format!("Basic {}", STANDARD.encode(format!("{}:{}", encoded(CLIENT), encoded(SECRET))));
    if headers.get("authorization").is_none_or(|sent| *sent != basic.as_str()) {
        return Err(refused("invalid_client"));
    }
    let one = |name: &str| sent.get(name).cloned().unwrap_or_default();
    if one("redirect_uri") != "https://sayso.example/sign-in/provider/back" {
        return Err(refused("invalid_request"));
    }
    let found = known.codes.lock().unwrap().remove(&one("code"));
    let (token, challenge) = found.ok_or_else(|| refused("invalid_grant"))?;
    let shown = ring::digest::digest(&ring::digest::SHA256, one("code_verifier").as_bytes());
    if URL_SAFE_NO_PAD.encode(shown.as_ref()) != challenge {
        return Err(refused("invalid_grant"));
    }
    Ok(Json(json!({ "access_token": "unused", "token_type": "Bearer", "expires_in": 60, "id_token": token })))
}
