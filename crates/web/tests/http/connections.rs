//! Connections that dawdle, and many at once.

use crate::web::{Ids, Web};
use sayso_web::connections::{Bounds, Patience, run};
use std::net::SocketAddr;
use std::time::Duration;
use tokio::io::{AsyncReadExt, AsyncWriteExt};
use tokio::net::{TcpListener, TcpStream};

/// Long enough for a busy machine, for what must not be waited for.
const LONG: Duration = Duration::from_secs(600);
/// Short, for what is waited for.
const SHORT: Duration = Duration::from_millis(300);

const fn patient() -> Patience {
    Patience { head: LONG, pause: LONG, body: LONG, write: LONG, stop: LONG }
}

async fn open(web: &Web, patience: Patience, bounds: Bounds) -> SocketAddr {
    let listener = TcpListener::bind(("127.0.0.1", 0)).await.unwrap();
    let at = listener.local_addr().unwrap();
    tokio::spawn(run(listener, web.app.clone(), None, (patience, bounds), std::future::pending()));
    at
}

const ROOMY: Bounds = Bounds { in_all: 64, of_one: 64 };

/// What comes until the other end closes.
async fn rest(stream: &mut TcpStream) -> String {
    let mut answer = Vec::new();
    // A reset is an end too.
    let _ = stream.read_to_end(&mut answer).await;
    String::from_utf8_lossy(&answer).into_owned()
}

async fn sending(at: SocketAddr, text: &str) -> TcpStream {
    let mut stream = TcpStream::connect(at).await.unwrap();
    stream.write_all(text.as_bytes()).await.unwrap();
    stream
}

fn head(method: &str, path: &str, more: &str) -> String {
    format!("{method} {path} HTTP/1.1\r\nHost: localhost\r\n{more}\r\n")
}

#[tokio::test]
async fn a_socket_that_sends_half_a_head_or_nothing_is_closed() {
    let web = Web::this_machine().await;
    let at = open(&web, Patience { head: SHORT, ..patient() }, ROOMY).await;
    for begun in ["", "GET / HTTP/1.1\r\nHost: local", "GET / HTTP/1.1\r\n"] {
        let said = rest(&mut sending(at, begun).await).await;
        assert!(said.is_empty() || said.starts_with("HTTP/1.1 4"), "{begun:?}: {said}");
    }
    // Between two requests too, after the first was answered.
    let said = rest(&mut sending(at, &head("GET", "/pair", "")).await).await;
    assert!(said.starts_with("HTTP/1.1 200"), "{said}");
}

#[tokio::test]
async fn a_body_that_stops_coming_breaks_off_and_nothing_of_it_is_kept() {
    let web = Web::this_machine().await;
    let post = head("POST", "/api/events", "Content-Type: application/json\r\nContent-Length: 100\r\n") + "[";
    for patience in [Patience { pause: SHORT, ..patient() }, Patience { body: SHORT, ..patient() }] {
        let at = open(&web, patience, ROOMY).await;
        let said = rest(&mut sending(at, &post).await).await;
        assert!(said.starts_with("HTTP/1.1 400") && said.contains("broke off"), "{said}");
    }
    assert!(web.get("/api/events").await.json()["events"].as_array().unwrap().is_empty());
}

#[tokio::test]
async fn a_body_that_comes_slowly_but_comes_is_taken() {
    let (web, ids) = (Web::this_machine().await, Ids::new());
    let at = open(&web, Patience { pause: Duration::from_secs(20), ..patient() }, ROOMY).await;
    let body = serde_json::to_string(&ids.cards()).unwrap();
    let length = format!("Content-Type: application/json\r\nConnection: close\r\nContent-Length: {}\r\n", body.len());
    let mut stream = sending(at, &head("POST", "/api/events", &length)).await;
    for piece in body.as_bytes().chunks(body.len() / 5) {
        stream.write_all(piece).await.unwrap();
        tokio::time::sleep(Duration::from_millis(20)).await;
    }
    let said = rest(&mut stream).await;
    assert!(said.starts_with("HTTP/1.1 200") && said.contains("new"), "{said}");
}

#[tokio::test]
async fn two_hundred_idle_sockets_do_not_stop_a_fresh_request() {
    let web = Web::this_machine().await;
    // Also where all come from one address, and where the process has few handles.
    for bounds in [Bounds { in_all: 256, of_one: 48 }, Bounds { in_all: 36, of_one: 27 }] {
        let at = open(&web, patient(), bounds).await;
        let mut idle = Vec::new();
        for i in 0..200 {
            idle.push(sending(at, if i % 2 == 0 { "" } else { "POST /api/events HTTP/1.1\r\nHost: loc" }).await);
        }
        let said = rest(&mut sending(at, &head("GET", "/pair", "Connection: close\r\n")).await).await;
        assert!(said.starts_with("HTTP/1.1 200"), "{said}");
        // The first to come is the one that gave way.
        assert_eq!(rest(&mut idle[0]).await, "");
    }
}

#[tokio::test]
async fn bodies_that_never_come_give_way_too() {
    let web = Web::this_machine().await;
    let at = open(&web, patient(), Bounds { in_all: 10, of_one: 10 }).await;
    let post = head("POST", "/api/events", "Content-Type: application/json\r\nContent-Length: 100\r\n");
    let mut stuck = Vec::new();
    for _ in 0..10 {
        stuck.push(sending(at, &post).await);
    }
    let said = rest(&mut sending(at, &head("GET", "/pair", "Connection: close\r\n")).await).await;
    assert!(said.starts_with("HTTP/1.1 200"), "{said}");
}

#[tokio::test]
async fn an_answer_nobody_takes_is_given_up() {
    let (web, ids) = (Web::this_machine().await, Ids::new());
    web.events(&ids.cards()).await;
    // More than the system's buffers hold.
    let note = "x".repeat(1_900);
    for _ in 0..20 {
        let many: Vec<_> = (0..400).map(|_| ids.event(serde_json::json!({ "kind": "remark", "text": note }))).collect();
        let kept = web.events(&many).await;
        assert_eq!(kept.text.matches("\"new\"").count(), many.len());
    }
    let at = open(&web, Patience { write: SHORT, ..patient() }, Bounds { in_all: 1, of_one: 1 }).await;
    let _deaf = sending(at, &head("GET", "/api/export.jsonl", "")).await;
    // Its place is the only one: another is answered once it has been given up.
    loop {
        let mut other = sending(at, &head("GET", "/pair", "Connection: close\r\n")).await;
        if rest(&mut other).await.starts_with("HTTP/1.1 200") {
            break;
        }
        tokio::time::sleep(SHORT).await;
    }
}

#[tokio::test]
async fn stopping_lets_what_is_answered_finish_and_cuts_off_what_dawdles() {
    let (web, ids) = (Web::this_machine().await, Ids::new());
    let listener = TcpListener::bind(("127.0.0.1", 0)).await.unwrap();
    let at = listener.local_addr().unwrap();
    let (stop, stopped) = tokio::sync::oneshot::channel::<()>();
    let patience = Patience { stop: Duration::from_secs(2), ..patient() };
    let stopping = async move { drop(stopped.await) };
    let served = tokio::spawn(run(listener, web.app.clone(), None, (patience, ROOMY), stopping));
    let body = serde_json::to_string(&ids.cards()).unwrap();
    let length = format!("Content-Type: application/json\r\nContent-Length: {}\r\n", body.len());
    let mut tap = sending(at, &(head("POST", "/api/events", &length) + &body[..10])).await;
    let mut half = sending(at, "GET / HTTP/1.1\r\nHost: loc").await;
    let mut idle = sending(at, &head("GET", "/pair", "")).await;
    let mut first = [0; 12];
    idle.read_exact(&mut first).await.unwrap();
    stop.send(()).unwrap();
    tap.write_all(&body.as_bytes()[10..]).await.unwrap();
    let said = rest(&mut tap).await;
    assert!(said.starts_with("HTTP/1.1 200") && said.contains("new"), "{said}");
    served.await.unwrap();
    rest(&mut half).await;
    rest(&mut idle).await;
    assert!(TcpStream::connect(at).await.is_err(), "nothing more is accepted");
}
