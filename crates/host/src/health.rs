//! How the server does, for programs that watch it: alive, ready, and figures in the OpenMetrics text format 1.0
//! (<https://prometheus.io/docs/specs/om/open_metrics_spec/>). Counts and sizes of the whole; nothing of any home.

use crate::answers::{Asked, CLASSES};
use crate::host::Host;
use axum::Router;
use axum::extract::{ConnectInfo, Request, State};
use axum::http::header::{AUTHORIZATION, CACHE_CONTROL, CONTENT_TYPE};
use axum::http::{Extensions, HeaderMap, StatusCode};
use axum::middleware::Next;
use axum::response::{IntoResponse, Response};
use axum::routing::get;
use sayso_people::Secret;
use sayso_web::secure::Peer;
use std::fmt::Write;
use std::sync::Arc;
use std::sync::atomic::Ordering;
use std::time::{Duration, Instant};

/// How long a database may take to answer a question about nothing.
const PATIENCE: Duration = Duration::from_secs(3);
/// The type of the figures.
const OPEN_METRICS: &str = "application/openmetrics-text; version=1.0.0; charset=utf-8";
/// The addresses. They are asked by programs beside the server, which know no name of it and are nobody.
pub fn router() -> Router<Arc<Host>> {
    Router::new().route("/healthz", get(alive)).route("/readyz", get(ready)).route("/metrics", get(metrics))
}

/// Middleware around everything: counts answers, and how long each took until it began.
pub async fn count(State(host): State<Arc<Host>>, request: Request, next: Next) -> Response {
    let asked = Asked::of(request.method(), request.uri().path());
    let since = Instant::now();
    let response = next.run(request).await;
    host.answers.count(response.status(), asked, since.elapsed());
    response
}

fn plain(status: StatusCode, says: &'static str) -> Response {
    (status, [(CONTENT_TYPE, "text/plain; charset=utf-8"), (CACHE_CONTROL, "no-store")], says).into_response()
}

/// That the process answers at all.
async fn alive() -> Response {
    plain(StatusCode::OK, "alive\n")
}

/// That both databases answer, so that requests may come here.
async fn ready(State(host): State<Arc<Host>>) -> Response {
    if is_ready(&host).await {
        plain(StatusCode::OK, "ready\n")
    } else {
        plain(StatusCode::SERVICE_UNAVAILABLE, "the database does not answer\n")
    }
}

async fn is_ready(host: &Host) -> bool {
    let both = async { (host.server.answers().await.is_ok(), host.people.answers().await.is_ok()) };
    tokio::time::timeout(PATIENCE, both).await == Ok((true, true))
}

/// Whoever asks from this machine itself, or with the token.
fn may_see(host: &Host, extensions: &Extensions, headers: &HeaderMap) -> bool {
    let here = extensions.get::<ConnectInfo<Peer>>().is_some_and(|peer| peer.0.ip().is_loopback());
    // What a proxy on this machine passes on does not come from this machine.
    let passed_on = ["forwarded", "x-forwarded-for", "x-forwarded-host", "x-real-ip", "via"];
    let passed_on = passed_on.iter().any(|name| headers.contains_key(*name));
    let given =
        headers.get(AUTHORIZATION).and_then(|value| value.to_str().ok()).and_then(|v| v.strip_prefix("Bearer "));
    let by_token =
        host.metrics_token.as_ref().zip(given).is_some_and(|(token, given)| Secret::typed(given).hash() == *token);
    by_token || (here && !passed_on)
}

async fn metrics(State(host): State<Arc<Host>>, request: Request) -> Response {
    if !may_see(&host, request.extensions(), request.headers()) {
        return plain(StatusCode::NOT_FOUND, "nothing here\n");
    }
    // Where the database is away the rest is told all the same.
    let sessions = tokio::time::timeout(PATIENCE, host.people.open_sessions(host.now()));
    let (ready, sessions) = tokio::join!(is_ready(&host), sessions);
    let sessions = sessions.ok().and_then(Result::ok);
    ([(CONTENT_TYPE, OPEN_METRICS), (CACHE_CONTROL, "no-store")], told(&host, ready, sessions)).into_response()
}

fn told(host: &Host, ready: bool, sessions: Option<u64>) -> String {
    let mut text = Text::default();
    text.family("sayso_ready", "gauge", "Whether both databases answer: 1, else 0.");
    text.sample("sayso_ready", &[], u8::from(ready));
    text.family("sayso_answers", "counter", "Answers given, by the class of their status.");
    for (class, count) in CLASSES.iter().zip(&host.answers.by_class) {
        text.sample("sayso_answers_total", &[("status", class)], count.load(Ordering::Relaxed));
    }
    let what = "Time until an answer began, in seconds: to taps that were sent, and to pages.";
    text.family("sayso_answer_seconds", "histogram", what);
    text.line(format_args!("# UNIT sayso_answer_seconds seconds"));
    for (asked, of) in Asked::ALL {
        let times = host.answers.times(asked);
        let mut all = 0;
        for (end, count) in times.at_most() {
            text.sample("sayso_answer_seconds_bucket", &[("of", of), ("le", end)], count);
            all = count;
        }
        text.sample("sayso_answer_seconds_count", &[("of", of)], all);
        text.sample("sayso_answer_seconds_sum", &[("of", of)], times.seconds());
    }
    text.family("sayso_events_stored", "counter", "Records stored by this process.");
    text.sample("sayso_events_stored_total", &[], host.server.stored());
    text.family("sayso_story_bytes", "gauge", "Memory that homes kept at hand take, estimated.");
    text.sample("sayso_story_bytes", &[], host.server.story_bytes());
    text.family(
        "sayso_database_connections",
        "gauge",
        "Connections to the database, by whose they are and whether in use.",
    );
    for (pool, (used, idle)) in [("homes", host.server.connections()), ("people", host.people.connections())] {
        for (state, count) in [("used", used), ("idle", idle)] {
            text.sample("sayso_database_connections", &[("pool", pool), ("state", state)], count);
        }
    }
    if let Some(sessions) = sessions {
        text.family("sayso_open_sessions", "gauge", "Signed-in browsers, of all processes.");
        text.sample("sayso_open_sessions", &[], sessions);
    }
    text.0 + "# EOF\n"
}

#[derive(Default)]
struct Text(String);

impl Text {
    fn line(&mut self, line: std::fmt::Arguments<'_>) {
        // Writing to a text does not fail.
        let _ = writeln!(self.0, "{line}");
    }

    fn family(&mut self, name: &str, kind: &str, help: &str) {
        self.line(format_args!("# TYPE {name} {kind}"));
        self.line(format_args!("# HELP {name} {help}"));
    }

    fn sample(&mut self, name: &str, labels: &[(&str, &str)], value: impl std::fmt::Display) {
        let labels: Vec<String> = labels.iter().map(|(key, of)| format!("{key}=\"{of}\"")).collect();
        let labels = if labels.is_empty() { String::new() } else { format!("{{{}}}", labels.join(",")) };
        self.line(format_args!("{name}{labels} {value}"));
    }
}
