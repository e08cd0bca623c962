//! What programs that watch a server are told: whether it lives, whether it is ready, and figures of the whole, to few.

use crate::cluster::Cluster;
use axum::Router;
use axum::body::Body;
use axum::extract::ConnectInfo;
use axum::http::{Request, StatusCode};
use http_body_util::BodyExt;
use sayso_host::{Host, HostConfig, Mail};
use sayso_people::{Lifetimes, Secret};
use sayso_store::Database;
use sayso_web::connections::Patience;
use sayso_web::secure::Peer;
use std::sync::Arc;
use tower::ServiceExt;

async fn server(cluster: &Cluster) -> (Arc<Host>, Router) {
    let config = HostConfig {
        database: Database::at(cluster.address("postgres", "postgres")),
        public_url: "https://sayso.example.org/".parse().unwrap(),
        at: ([127, 0, 0, 1], 0).into(),
        mail: Mail::Printed,
        provider: None,
        behind_proxy: true,
        metrics_token: Some(Secret::typed("a-token-of-the-test")),
        lifetimes: Lifetimes::default(),
        norms: None,
        patience: Patience::default(),
        opened: Arc::new(|_| {}),
    };
    let host = Arc::new(Host::open(&config).await.unwrap());
    (Arc::clone(&host), sayso_host::app(host))
}

/// Asked from an address, under no name of the server's.
async fn ask(app: &Router, path: &str, from: [u8; 4], header: Option<(&str, &str)>) -> (StatusCode, String) {
    let mut request = Request::get(path).header("host", "127.0.0.1:7297");
    if let Some((name, value)) = header {
        request = request.header(name, value);
    }
    let mut request = request.body(Body::empty()).unwrap();
    request.extensions_mut().insert(ConnectInfo(Peer { address: (from, 5000).into(), safe: false }));
    let response = app.clone().oneshot(request).await.unwrap();
    let status = response.status();
    (status, String::from_utf8(response.into_body().collect().await.unwrap().to_bytes().to_vec()).unwrap())
}

const HERE: [u8; 4] = [127, 0, 0, 1];
const ELSEWHERE: [u8; 4] = [192, 0, 2, 1];

#[tokio::test(flavor = "multi_thread")]
async fn it_is_ready_while_its_database_answers_and_alive_without() {
    let cluster = Cluster::start(false);
    let (_host, app) = server(&cluster).await;
    assert_eq!(ask(&app, "/healthz", ELSEWHERE, None).await, (StatusCode::OK, "alive\n".to_owned()));
    assert_eq!(ask(&app, "/readyz", ELSEWHERE, None).await, (StatusCode::OK, "ready\n".to_owned()));
    cluster.crash();
    assert_eq!(ask(&app, "/readyz", HERE, None).await.0, StatusCode::SERVICE_UNAVAILABLE);
    assert_eq!(ask(&app, "/healthz", HERE, None).await.0, StatusCode::OK);
    // Whoever is signed in is told within seconds, and does not wait as long as a proxy would.
    let cookie = ("cookie", "__Host-sayso_session=0123456789abcdef");
    for path in ["/", "/join/0123456789abcdef"] {
        let asked = Request::get(path).header("host", "sayso.example.org").header(cookie.0, cookie.1);
        let asked = app.clone().oneshot(asked.body(Body::empty()).unwrap());
        let told = tokio::time::timeout(std::time::Duration::from_secs(12), asked).await.expect(path).unwrap();
        assert_eq!(told.status(), StatusCode::SERVICE_UNAVAILABLE, "{path}");
    }
    // The figures that need no database are told all the same.
    let (status, text) = ask(&app, "/metrics", HERE, None).await;
    assert!(status == StatusCode::OK && !text.contains("sayso_open_sessions") && text.ends_with("# EOF\n"), "{text}");
    assert!(text.contains("\nsayso_ready 0\n"), "{text}");
    cluster.up();
    assert_eq!(ask(&app, "/readyz", HERE, None).await.0, StatusCode::OK);
    let (_, text) = ask(&app, "/metrics", HERE, None).await;
    assert!(text.contains("\nsayso_ready 1\n"), "{text}");
    // The two pages of above, each after at most so long; no tap, and nothing of what watches.
    assert!(text.contains("sayso_answer_seconds_count{of=\"pages\"} 2\n"), "{text}");
    assert!(text.contains("sayso_answer_seconds_bucket{of=\"pages\",le=\"+Inf\"} 2\n"), "{text}");
    assert!(text.contains("sayso_answer_seconds_count{of=\"taps\"} 0\n"), "{text}");
}

#[tokio::test(flavor = "multi_thread")]
async fn figures_are_for_this_machine_and_for_whoever_has_the_token() {
    let cluster = Cluster::start(false);
    let (host, app) = server(&cluster).await;
    let token = ("authorization", "Bearer a-token-of-the-test");
    for (from, header, may) in [
        (HERE, None, true),
        (ELSEWHERE, None, false),
        // What a proxy on this machine passes on comes from elsewhere.
        (HERE, Some(("x-forwarded-for", "192.0.2.9")), false),
        (HERE, Some(("forwarded", "for=192.0.2.9")), false),
        (ELSEWHERE, Some(token), true),
        (ELSEWHERE, Some(("authorization", "Bearer another")), false),
        (ELSEWHERE, Some(("authorization", "a-token-of-the-test")), false),
    ] {
        let (status, text) = ask(&app, "/metrics", from, header).await;
        let wanted = if may { StatusCode::OK } else { StatusCode::NOT_FOUND };
        assert_eq!(status, wanted, "{from:?} {header:?}");
        assert_eq!(text.contains("sayso_"), may);
    }
    let plan = sayso_sim::plain_home(3);
    let run = sayso_sim::simulate(&plan, 3, "2026-06-01T19:00:00Z".parse().unwrap()).unwrap();
    let some = run.events[..40].to_vec();
    let home = some[0].home;
    let store = host.server.found(home).await.unwrap();
    store.append(some.clone()).await.unwrap();
    // Known already: not stored, and not counted.
    store.append(some).await.unwrap();
    store.story(home).await.unwrap();
    let (_, text) = ask(&app, "/metrics", HERE, None).await;
    assert!(text.contains("sayso_events_stored_total 40\n"), "{text}");
    // Of those above two were let in and five were not.
    assert!(text.contains("sayso_answers_total{status=\"2xx\"} 2\n"), "{text}");
    assert!(text.contains("sayso_answers_total{status=\"4xx\"} 5\n"), "{text}");
    assert!(text.contains("sayso_open_sessions 0\n"), "{text}");
    assert!(
        !text.contains("sayso_story_bytes 0\n") && text.contains("sayso_database_connections{pool=\"people\""),
        "{text}"
    );
    assert!(!text.contains(&home.to_string()), "nothing of a home: {text}");
    // Each family is typed once, before its samples, and the whole ends as the format asks.
    assert!(text.ends_with("# EOF\n") && text.matches("# TYPE ").count() == 7, "{text}");
}
