//! A notebook in memory with one dog at home, asked as a browser asks.

#![allow(dead_code, clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use axum::Router;
use axum::body::Body;
use axum::http::{Request, Response, StatusCode, header};
use http_body_util::BodyExt;
use sayso_model::{AnimalId, HomeId, Moment, Story};
use sayso_web::access::Access;
use sayso_web::{AppState, app};
use std::sync::Arc;
use tower::ServiceExt;
use uuid::Uuid;

pub struct Home {
    pub app: Router,
    pub state: AppState,
    pub animal: AnimalId,
    pub home: HomeId,
    cookie: String,
    _dir: tempfile::TempDir,
}

fn noon() -> Moment {
    "2026-03-02T12:00:00Z".parse().unwrap()
}

/// The answer to a request.
pub struct Answer {
    pub status: StatusCode,
    pub to: String,
    pub text: String,
}

impl Answer {
    #[track_caller]
    pub fn kept(&self) -> &Self {
        assert_eq!(self.status, StatusCode::SEE_OTHER, "{}", self.text);
        self
    }
    #[track_caller]
    pub fn refused(&self) -> &Self {
        assert_eq!(self.status, StatusCode::UNPROCESSABLE_ENTITY, "{}", self.text);
        self
    }
    #[track_caller]
    pub fn says(&self, what: &str) -> &Self {
        assert!(self.text.contains(what), "no {what:?} in {}", self.text);
        self
    }
    #[track_caller]
    pub fn does_not_say(&self, what: &str) -> &Self {
        assert!(!self.text.contains(what), "{what:?} in {}", self.text);
        self
    }
}

async fn read(response: Response<Body>) -> (StatusCode, header::HeaderMap, String) {
    let (parts, body) = response.into_parts();
    let bytes = body.collect().await.unwrap().to_bytes();
    (parts.status, parts.headers, String::from_utf8_lossy(&bytes).into_owned())
}

fn encoded(text: &str) -> String {
    text.bytes()
        .map(|b| if b.is_ascii_alphanumeric() { char::from(b).to_string() } else { format!("%{b:02X}") })
        .collect()
}

pub fn form(pairs: &[(&str, &str)]) -> String {
    pairs.iter().map(|(n, v)| format!("{}={}", encoded(n), encoded(v))).collect::<Vec<_>>().join("&")
}

impl Home {
    /// A notebook of nobody yet.
    pub async fn empty() -> Self {
        let dir = tempfile::tempdir().unwrap();
        let store = sayso_web::store::Store::open(dir.path()).await.unwrap();
        let state = AppState::new(Arc::new(store), Access::this_machine()).with_clock(noon);
        let (animal, home) = (AnimalId(Uuid::nil()), HomeId(Uuid::nil()));
        Self { app: app(state.clone()), state, animal, home, cookie: String::new(), _dir: dir }
    }

    /// A household of one person and one dog, as set up on the start page.
    pub async fn new() -> Self {
        let empty = Self::empty().await;
        let body = form(&[
            ("home", "The house by the park"),
            ("you", "Robin"),
            ("animal", "Pip"),
            ("species", "dog"),
            ("zone", "Europe/Berlin"),
        ]);
        let request = Request::post("/start")
            .header(header::HOST, "localhost")
            .header(header::CONTENT_TYPE, "application/x-www-form-urlencoded")
            .body(Body::from(body))
            .unwrap();
        let (status, headers, text) = read(empty.app.clone().oneshot(request).await.unwrap()).await;
        assert_eq!(status, StatusCode::SEE_OTHER, "{text}");
        let cookie = headers[header::SET_COOKIE].to_str().unwrap().split(';').next().unwrap().to_owned();
        let home = empty.state.store.home().await.unwrap().unwrap();
        let animal = *empty.state.store.story(home).await.unwrap().animals().keys().next().unwrap();
        Self { animal, home, cookie, ..empty }
    }

    /// From here on pages are read in this language.
    pub fn reads(&mut self, language: sayso_model::Language) {
        self.cookie = format!("{}; sayso_language={}", self.cookie, language.tag());
    }

    pub async fn story(&self) -> Arc<Story> {
        self.state.store.story(self.home).await.unwrap()
    }

    async fn send(&self, request: axum::http::request::Builder, body: impl Into<Body>) -> Answer {
        let request =
            request.header(header::HOST, "localhost").header(header::COOKIE, &self.cookie).body(body.into()).unwrap();
        let (status, headers, text) = read(self.app.clone().oneshot(request).await.unwrap()).await;
        let to = headers.get(header::LOCATION).map_or("", |l| l.to_str().unwrap()).to_owned();
        Answer { status, to, text }
    }

    /// A file, with its content type.
    pub async fn file(&self, path: &str) -> (String, Vec<u8>) {
        let request = Request::get(path).header(header::HOST, "localhost").header(header::COOKIE, &self.cookie);
        let response = self.app.clone().oneshot(request.body(Body::empty()).unwrap()).await.unwrap();
        assert_eq!(response.status(), StatusCode::OK, "{path}");
        let kind = response.headers()[header::CONTENT_TYPE].to_str().unwrap().to_owned();
        (kind, response.into_body().collect().await.unwrap().to_bytes().to_vec())
    }

    pub async fn get(&self, path: &str) -> Answer {
        self.send(Request::get(path), String::new()).await
    }

    /// Sends bytes of some kind, such as a sound.
    pub async fn post_bytes(&self, path: &str, kind: &str, bytes: Vec<u8>) -> Answer {
        self.send(Request::post(path).header(header::CONTENT_TYPE, kind), bytes).await
    }

    /// Sends a sound file as a script does that wants JSON.
    pub async fn post_for_json(&self, path: &str, sound: Vec<u8>) -> Answer {
        let request = Request::post(path).header(header::ACCEPT, "application/json");
        self.send(request.header(header::CONTENT_TYPE, "audio/wav"), sound).await
    }

    /// A page that must be there, with the things every page must have.
    #[track_caller]
    pub fn page(&self, path: &str) -> impl Future<Output = Answer> + '_ {
        let path = path.to_owned();
        async move {
            let answer = self.get(&path).await;
            assert_eq!(answer.status, StatusCode::OK, "{path}: {}", answer.text);
            assert!(!answer.text.contains(" style=\"") && !answer.text.contains(" onclick"), "{path}");
            answer
        }
    }

    pub async fn post(&self, path: &str, pairs: &[(&str, &str)]) -> Answer {
        self.send(Request::post(path).header(header::CONTENT_TYPE, "application/x-www-form-urlencoded"), form(pairs))
            .await
    }

    /// Something the dog may want; gives its id.
    pub async fn reward(&self, kind: &str, name: &str, more: &[(&str, &str)]) -> String {
        let mut pairs = vec![("kind", kind), ("name", name)];
        pairs.extend_from_slice(more);
        let answer = self.post("/people/reward/new", &pairs).await;
        answer.kept();
        answer.to.split(['/', '?']).nth(3).unwrap().to_owned()
    }
}
