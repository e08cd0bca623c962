//! A browser: keeps cookies, sends what pages send, follows nothing by itself.

use axum::Router;
use axum::body::Body;
use axum::http::{Request, header};
use http_body_util::BodyExt;
use sayso_people::Secret;
use serde_json::Value;
use std::collections::BTreeMap;
use tower::ServiceExt;

const SESSION: &str = "__Host-sayso_session";

/// An answer.
#[derive(Debug, PartialEq, Eq)]
pub struct Answer {
    pub status: u16,
    pub to: Option<String>,
    pub cookies: Vec<String>,
    pub retry_after: Option<String>,
    pub text: String,
}

impl Answer {
    pub fn json(&self) -> Value {
        serde_json::from_str(&self.text).unwrap_or_else(|e| panic!("{e}: {}", self.text))
    }
}

/// A browser.
#[derive(Clone)]
pub struct Browser {
    app: Router,
    pub cookies: BTreeMap<String, String>,
    /// Where it comes from, as the proxy tells it.
    pub from: String,
    pub site: &'static str,
}

impl Browser {
    pub fn of(app: Router) -> Self {
        Self { app, cookies: BTreeMap::new(), from: "192.0.2.1".into(), site: "same-origin" }
    }

    pub fn token(&self) -> Option<Secret> {
        self.cookies.get(SESSION).map(|token| Secret::typed(token))
    }

    pub async fn get(&mut self, path: &str) -> Answer {
        self.ask("GET", path, "text/html", "", String::new()).await
    }

    pub async fn head(&mut self, path: &str) -> Answer {
        self.ask("HEAD", path, "text/html", "", String::new()).await
    }

    pub async fn post(&mut self, path: &str, fields: &[(&str, &str)]) -> Answer {
        let mut body = url::form_urlencoded::Serializer::new(String::new());
        body.extend_pairs(fields);
        self.ask("POST", path, "text/html", "application/x-www-form-urlencoded", body.finish()).await
    }

    /// What scripts send.
    pub async fn json(&mut self, path: &str, body: &Value) -> Answer {
        self.ask("POST", path, "application/json", "application/json", body.to_string()).await
    }

    async fn ask(&mut self, method: &str, path: &str, accept: &str, kind: &str, body: String) -> Answer {
        let sent = format!("{path} {body}");
        let cookies: Vec<String> = self.cookies.iter().map(|(name, value)| format!("{name}={value}")).collect();
        let mut request = Request::builder()
            .method(method)
            .uri(path)
            .header(header::HOST, "sayso.example")
            .header(header::ACCEPT, accept)
            .header(header::COOKIE, cookies.join("; "))
            .header(header::USER_AGENT, "Mozilla/5.0 (iPhone; a test)")
            .header("sec-fetch-site", self.site)
            .header("x-forwarded-for", &self.from);
        if !kind.is_empty() {
            request = request.header(header::CONTENT_TYPE, kind);
        }
        let response = self.app.clone().oneshot(request.body(Body::from(body)).unwrap()).await.unwrap();
        let named = |name: header::HeaderName| -> Vec<String> {
            response.headers().get_all(name).iter().map(|v| v.to_str().unwrap().to_owned()).collect()
        };
        let cookies = named(header::SET_COOKIE);
        let to = named(header::LOCATION).pop();
        let retry_after = named(header::RETRY_AFTER).pop();
        let cache = named(header::CACHE_CONTROL);
        let status = response.status().as_u16();
        if !path.starts_with("/assets/") {
            assert_eq!(cache, ["no-store"], "{path}");
        }
        for cookie in &cookies {
            let (pair, _) = cookie.split_once(';').unwrap();
            let (name, value) = pair.split_once('=').unwrap();
            if cookie.contains("Max-Age=0") {
                self.cookies.remove(name);
            } else {
                self.cookies.insert(name.to_owned(), value.to_owned());
            }
        }
        // An address one is led to stands in histories and in the logs of others: only what the browser had sent may be in it.
        if let Some(to) = &to {
            for secret in secrets_in(to) {
                assert!(sent.contains(secret), "{path} leads to {to}");
            }
        }
        let text = String::from_utf8(response.into_body().collect().await.unwrap().to_bytes().to_vec()).unwrap();
        Answer { status, to, cookies, retry_after, text }
    }
}

/// Runs of hexadecimal digits as long as a secret.
pub fn secrets_in(text: &str) -> impl Iterator<Item = &str> {
    text.split(|c: char| !c.is_ascii_hexdigit()).filter(|run| run.len() >= 64)
}
