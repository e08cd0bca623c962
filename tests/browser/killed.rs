//! `kill -9` while ten thousand events are posted: each acknowledged one is there after the restart, once.

use crate::harness::{Server, animal, demo_dir, story};
use sayso_model::{Accident, Body, Event, EventId, Moment, Press, PressedBy, Probability, Source};
use std::collections::BTreeSet;
use std::io::{Read, Write};
use std::net::TcpStream;
use std::sync::atomic::{AtomicBool, AtomicUsize, Ordering};
use std::sync::{Arc, Mutex};

const EVENTS: usize = 10_000;
const BATCH: usize = 10;
const CALLERS: usize = 4;

/// Posts a body on a connection of its own; the answer's body if it came whole.
fn post(port: u16, body: &str) -> Option<String> {
    let mut stream = TcpStream::connect(("127.0.0.1", port)).ok()?;
    let head = format!(
        "POST /api/events HTTP/1.1\r\nHost: 127.0.0.1:{port}\r\nOrigin: http://127.0.0.1:{port}\r\nContent-Type: application/json\r\nContent-Length: {}\r\nConnection: close\r\n\r\n",
        body.len()
    );
    stream.write_all(head.as_bytes()).ok()?;
    stream.write_all(body.as_bytes()).ok()?;
    let mut answer = String::new();
    stream.read_to_string(&mut answer).ok()?;
    let (head, body) = answer.split_once("\r\n\r\n")?;
    head.starts_with("HTTP/1.1 200").then(|| body.to_owned())
}

#[tokio::test(flavor = "multi_thread")]
async fn acknowledged_events_survive_a_kill_and_are_there_once() {
    let dir = demo_dir();
    let (home, before) = story(dir.path()).await;
    let known = before.ledger().len();
    let who = animal(&before);
    let word = before.words_of(who)[0].word;
    let at: Moment = "2026-06-01T12:00:00Z".parse().unwrap();
    let events: Vec<Event> = (0..EVENTS)
        .map(|_| Event {
            id: EventId(uuid::Uuid::now_v7()),
            home,
            animal: Some(who),
            person: None,
            happened_at: at,
            zone: before.zone(),
            recorded_at: at,
            source: Source::Tap,
            body: Body::Press(Press {
                word,
                by: PressedBy::Animal,
                certainty: Probability::clamped(1.0),
                accident: Accident::Unsure,
                place: None,
                speed: None,
                stream: None,
                session: None,
            }),
        })
        .collect();
    let mut server = Server::start(dir.path(), 0);
    let port = server.port;
    let acknowledged: Arc<Mutex<BTreeSet<EventId>>> = Arc::default();
    let (next, gone) = (Arc::new(AtomicUsize::new(0)), Arc::new(AtomicBool::new(false)));
    let batches: Arc<Vec<Vec<Event>>> = Arc::new(events.chunks(BATCH).map(<[Event]>::to_vec).collect());
    let callers: Vec<_> = (0..CALLERS)
        .map(|_| {
            let (acknowledged, next, gone, batches) =
                (acknowledged.clone(), next.clone(), gone.clone(), batches.clone());
            std::thread::spawn(move || {
                while let Some(batch) = batches.get(next.fetch_add(1, Ordering::SeqCst)) {
                    let body = serde_json::to_string(batch).unwrap();
                    match post(port, &body) {
                        Some(answer) => {
                            assert_eq!(answer.matches("\"new\"").count(), batch.len(), "{answer}");
                            acknowledged.lock().unwrap().extend(batch.iter().map(|e| e.id));
                        }
                        None => {
                            assert!(gone.load(Ordering::SeqCst), "the server answers until it is killed");
                            return;
                        }
                    }
                }
            })
        })
        .collect();
    // Kill it in the middle of the work, wherever that is.
    while acknowledged.lock().unwrap().len() < EVENTS / 3 {
        std::thread::sleep(std::time::Duration::from_millis(2));
    }
    gone.store(true, Ordering::SeqCst);
    server.kill();
    for caller in callers {
        caller.join().unwrap();
    }
    let acknowledged = acknowledged.lock().unwrap().clone();
    assert!((EVENTS / 3..EVENTS).contains(&acknowledged.len()), "{} acknowledged", acknowledged.len());

    // After the restart the same events are sent again, as an outbox would.
    server.restart();
    for batch in batches.iter() {
        let answer = post(server.port, &serde_json::to_string(batch).unwrap()).expect("the server is back");
        for (event, result) in batch.iter().zip(answer.split("\"result\":").skip(1)) {
            if acknowledged.contains(&event.id) {
                assert!(result.starts_with("\"duplicate\""), "{} was acknowledged, so it must be known", event.id);
            }
        }
    }
    server.kill();
    let (_, after) = story(dir.path()).await;
    assert_eq!(after.ledger().len(), known + EVENTS, "each event is there once");
    let presses = after.of::<Press>(who).filter(|p| p.at() == at).count();
    assert_eq!(presses, EVENTS);
}
