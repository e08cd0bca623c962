//! A notebook with one animal, asked by plain requests.

use axum::Router;
use axum::body::Body;
use axum::http::{HeaderMap, Request, StatusCode, header};
use http_body_util::BodyExt;
use sayso_model::*;
use sayso_web::access::Access;
use sayso_web::store::Store;
use sayso_web::{AppState, app};
use serde_json::{Value, json};
use std::sync::{Arc, Mutex};
use tower::ServiceExt;
use uuid::Uuid;

pub struct Web {
    pub app: Router,
    pub dir: tempfile::TempDir,
    pub codes: Arc<Mutex<Vec<String>>>,
}

pub struct Answer {
    pub status: StatusCode,
    pub headers: HeaderMap,
    pub text: String,
}

impl Answer {
    #[track_caller]
    pub fn json(&self) -> Value {
        serde_json::from_str(&self.text).unwrap_or_else(|e| panic!("{e}: {}", self.text))
    }
    pub fn header(&self, name: &str) -> &str {
        self.headers.get(name).map_or("", |v| v.to_str().unwrap())
    }
}

pub fn noon() -> Moment {
    "2026-03-02T12:00:00Z".parse().unwrap()
}

impl Web {
    pub async fn this_machine() -> Self {
        Self::with(|_, _| Access::this_machine()).await
    }

    pub async fn home_network() -> Self {
        Self::with(|dir, codes| {
            let shown = Arc::new(move |code: &str, _| codes.lock().unwrap().push(code.to_owned()));
            Access::home_network(&dir.join("paired.json"), shown).unwrap()
        })
        .await
    }

    async fn with(access: impl FnOnce(&std::path::Path, Arc<Mutex<Vec<String>>>) -> Access) -> Self {
        let dir = tempfile::tempdir().unwrap();
        let codes = Arc::new(Mutex::new(Vec::new()));
        let store = Arc::new(Store::open(dir.path()).await.unwrap());
        let state = AppState::new(store, access(dir.path(), codes.clone())).with_clock(noon);
        Self { app: app(state), dir, codes }
    }

    pub async fn send(&self, request: Request<Body>) -> Answer {
        let (parts, body) = self.app.clone().oneshot(request).await.unwrap().into_parts();
        let bytes = body.collect().await.unwrap().to_bytes();
        Answer { status: parts.status, headers: parts.headers, text: String::from_utf8_lossy(&bytes).into_owned() }
    }

    pub async fn get(&self, path: &str) -> Answer {
        self.send(Request::get(path).header(header::HOST, "localhost:8080").body(Body::empty()).unwrap()).await
    }

    pub async fn post(&self, path: &str, body: impl Into<Body>) -> Answer {
        let kind = if path.starts_with("/api") { "application/json" } else { "application/x-www-form-urlencoded" };
        let request = Request::post(path).header(header::HOST, "localhost:8080").header(header::CONTENT_TYPE, kind);
        self.send(request.body(body.into()).unwrap()).await
    }

    pub async fn events(&self, events: &[Value]) -> Answer {
        self.post("/api/events", serde_json::to_vec(events).unwrap()).await
    }
}

pub fn id() -> String {
    Uuid::now_v7().to_string()
}

/// Ids of a household of one dog and one word.
pub struct Ids {
    pub home: String,
    pub person: String,
    pub animal: String,
    pub word: String,
    pub reward: String,
}

impl Ids {
    pub fn new() -> Self {
        Self { home: id(), person: id(), animal: id(), word: id(), reward: id() }
    }

    pub fn event(&self, body: Value) -> Value {
        json!({
            "id": id(), "home": self.home, "animal": self.animal, "person": self.person,
            "happened_at": "2026-03-02T11:00:00Z", "zone": "Europe/Berlin", "recorded_at": "2026-03-02T11:00:00Z",
            "source": "tap", "body": body,
        })
    }

    pub fn press(&self) -> Value {
        self.event(
            json!({ "kind": "press", "word": self.word, "by": "animal", "certainty": 1.0, "accident": "unsure" }),
        )
    }

    /// The cards of the household.
    pub fn cards(&self) -> Vec<Value> {
        vec![
            self.event(json!({ "kind": "home_card", "name": "The house", "zone": "Europe/Berlin" })),
            self.event(json!({ "kind": "person_card", "person": self.person, "name": "Ann", "role": "home" })),
            self.event(json!({ "kind": "animal_card", "animal": self.animal, "name": "Momo", "species": "dog",
                "weight_kg": 12.0, "life_stage": "neutered_adult" })),
            self.event(json!({ "kind": "reward_card", "reward": self.reward, "name": "chicken", "reward_kind": "food",
                "kcal_per_piece": 3.5 })),
            self.event(json!({ "kind": "word_card", "word": self.word, "says": "chicken", "reward": self.reward })),
        ]
    }
}
