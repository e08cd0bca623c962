//! A microphone's sound over the web socket: heard, logged once, resumed, kept apart; and who may listen.

use crate::at_home::Home;
use crate::sounds::{RATE, add, bed, replay, room, samples_16, say, wav};
use sayso_model::{Body, Event, EventId, Moment, Press, PressedBy, Source, WordId};
use sayso_web::access::Access;
use sayso_web::connections::{Bounds, Patience, run};
use sayso_web::{AppState, app};
use serde_json::{Value, json};
use std::collections::BTreeMap;
use std::net::{SocketAddr, TcpStream};
use std::sync::{Arc, Mutex};
use tungstenite::client::IntoClientRequest;
use tungstenite::stream::MaybeTlsStream;
use tungstenite::{Message, WebSocket};
use uuid::Uuid;

const BLOCK: usize = RATE / 10;
const BEGAN: &str = "2026-03-02T11:59:00Z";

/// A home with recordings of some words, served on a port.
struct Heard {
    home: Home,
    at: SocketAddr,
    words: BTreeMap<String, WordId>,
}

async fn serve(state: AppState) -> SocketAddr {
    let listener = tokio::net::TcpListener::bind("127.0.0.1:0").await.unwrap();
    let at = listener.local_addr().unwrap();
    // As the binary serves it, so that bounds and time-outs are shown to leave web sockets alone.
    let limits = (Patience::default(), Bounds::of_this_process());
    tokio::spawn(run(listener, app(state), None, limits, std::future::pending()));
    at
}

impl Heard {
    async fn new(words: u64) -> Self {
        let home = Home::new().await;
        for w in 0..words {
            let answer = home.post(&format!("/a/{}/words/new", home.animal), &[("says", &format!("word {w}"))]).await;
            let card = answer.kept().to.split('?').next().unwrap().to_owned();
            home.post_bytes(&format!("{card}/recording"), "audio/wav", wav(&say(w, 0))).await.kept();
        }
        let at = serve(home.state.clone()).await;
        let words = home.story().await.words().into_iter().map(|(id, w)| (w.says.to_string(), id)).collect();
        Self { home, at, words }
    }

    fn url(&self) -> String {
        format!("ws://{}/api/listen/{}", self.at, self.home.animal)
    }

    async fn presses(&self) -> Vec<(String, f64, Event)> {
        let (story, began) = (self.home.story().await, BEGAN.parse::<Moment>().unwrap());
        let says = |id: WordId| self.words.iter().find(|(_, w)| **w == id).unwrap().0.clone();
        let mut all: Vec<_> = story
            .everyones::<Press>()
            .map(|f| (says(f.part.word), f.at().seconds_since(began), f.event.clone()))
            .collect();
        all.sort_by(|a, b| a.1.total_cmp(&b.1));
        all
    }

    #[track_caller]
    fn all_true(&self, found: &[(String, f64, Event)], truth: &[(u64, f64)]) {
        let told: Vec<_> = found.iter().map(|(w, t, _)| format!("{w} at {t:.2}")).collect();
        assert_eq!(found.len(), truth.len(), "{told:?}");
        for ((word, at, _), (w, t)) in found.iter().zip(truth) {
            assert!(*word == format!("word {w}") && (at - t).abs() < 0.15, "{told:?}");
        }
    }
}

/// Presses of words at times, in a quiet room.
fn scene(seconds: usize, presses: &[(u64, f64)]) -> Vec<i16> {
    let mut scene = bed(seconds, 0.002, 3);
    for (i, (w, t)) in presses.iter().enumerate() {
        let speed = 0.98 + 0.01 * i as f64;
        add(&mut scene, &room(&replay(&say(*w, 0), speed), 0.3, 7), *t, 0.3);
    }
    samples_16(&scene)
}

/// A page that listens, driven from a thread of its own.
struct Page {
    socket: WebSocket<MaybeTlsStream<TcpStream>>,
    told: Vec<Value>,
}

impl Page {
    fn open(url: &str, headers: &[(&'static str, String)]) -> Result<Self, tungstenite::Error> {
        let mut request = url.into_client_request().unwrap();
        for (name, value) in headers {
            request.headers_mut().insert(*name, value.parse().unwrap());
        }
        tungstenite::connect(request).map(|(socket, _)| Self { socket, told: Vec::new() })
    }

    fn begin(&mut self, stream: Uuid, more: &[(&str, Value)]) {
        let mut begin = json!({ "stream": stream, "began": BEGAN, "rate": RATE, "only": true });
        for (name, value) in more {
            begin[*name] = value.clone();
        }
        self.text(&json!({ "begin": begin }));
    }

    fn text(&mut self, what: &Value) {
        self.socket.send(Message::text(what.to_string())).unwrap();
    }

    fn send(&mut self, scene: &[i16], blocks: std::ops::Range<usize>) {
        for i in blocks {
            let part = &scene[i * BLOCK..((i + 1) * BLOCK).min(scene.len())];
            let mut bytes = ((i * BLOCK) as u64).to_le_bytes().to_vec();
            bytes.extend(part.iter().flat_map(|v| v.to_le_bytes()));
            self.socket.send(Message::binary(bytes)).unwrap();
        }
    }

    /// Reads until something of this kind was told, and gives it.
    fn until(&mut self, kind: &str) -> Value {
        loop {
            let message = self.socket.read().unwrap_or_else(|e| panic!("no {kind}: {e} after {:?}", self.told));
            let Message::Text(text) = message else { continue };
            let told: Value = serde_json::from_str(text.as_str()).unwrap();
            self.told.push(told.clone());
            if told == json!(kind) || told.get(kind).is_some() {
                return told;
            }
        }
    }

    fn heard(&self) -> Vec<&Value> {
        self.told.iter().filter_map(|t| t.get("heard")).collect()
    }
}

/// Drives a page apart from the server's threads.
async fn apart<T: Send + 'static>(work: impl FnOnce() -> T + Send + 'static) -> T {
    tokio::task::spawn_blocking(work).await.unwrap()
}

const PRESSES: [(u64, f64); 5] = [(0, 1.0), (2, 3.5), (1, 6.0), (0, 8.5), (3, 11.0)];

#[tokio::test(flavor = "multi_thread")]
async fn presses_are_told_and_logged_once_though_the_connection_breaks_and_blocks_come_twice() {
    let heard = Heard::new(4).await;
    let (url, sound) = (heard.url(), scene(14, &PRESSES));
    let stream = Uuid::now_v7();
    let told = apart(move || {
        let mut first = Page::open(&url, &[]).unwrap();
        first.begin(stream, &[]);
        let go = first.until("go");
        assert_eq!(go["go"]["from"], Value::Null);
        assert_eq!(go["go"]["words"].as_array().unwrap().len(), 4);
        first.send(&sound, 0..40);
        first.send(&sound, 20..70);
        // The press at 3.5 s is told while the sound goes on.
        first.until("heard");
        drop(first);
        let mut second = Page::open(&url, &[]).unwrap();
        second.begin(stream, &[]);
        let from = second.until("go")["go"]["from"].as_u64().unwrap();
        assert!(from > 0 && from <= 70 * BLOCK as u64, "{from}");
        // All that is still there comes again.
        second.send(&sound, 0..140);
        second.text(&json!("end"));
        second.until("ended");
        second.heard().len()
    })
    .await;
    let found = heard.presses().await;
    heard.all_true(&found, &PRESSES);
    assert!((1..=4).contains(&told), "{told} told on the second connection");
    for (_, _, event) in &found {
        assert_eq!((event.source, event.animal), (Source::Heard, Some(heard.home.animal)));
        assert!(matches!(&event.body, Body::Press(p) if p.by == PressedBy::Unknown && p.speed.is_some()));
    }
    // The same stream after the notebook has forgotten it: nothing is logged twice.
    let (url, sound) = (heard.url(), scene(14, &PRESSES));
    let states = apart(move || {
        let mut page = Page::open(&url, &[]).unwrap();
        page.begin(stream, &[]);
        assert_eq!(page.until("go")["go"]["from"], Value::Null);
        page.send(&sound, 30..140);
        page.text(&json!("end"));
        page.until("ended");
        page.heard().iter().map(|h| h["state"].clone()).collect::<Vec<_>>()
    })
    .await;
    assert!(!states.is_empty() && states.iter().all(|s| s == "known"), "{states:?}");
    assert_eq!(heard.presses().await.len(), found.len());
}

#[tokio::test(flavor = "multi_thread")]
async fn missing_sound_shifts_nothing() {
    let heard = Heard::new(3).await;
    let truth = [(0, 1.0), (1, 9.0), (2, 13.0)];
    let (url, sound) = (heard.url(), scene(17, &truth));
    apart(move || {
        let mut page = Page::open(&url, &[]).unwrap();
        page.begin(Uuid::now_v7(), &[]);
        page.until("go");
        page.send(&sound, 0..40);
        page.send(&sound, 70..170);
        page.text(&json!("end"));
        page.until("ended");
    })
    .await;
    heard.all_true(&heard.presses().await, &truth);
}

#[tokio::test(flavor = "multi_thread")]
async fn after_a_long_gap_the_times_are_still_true() {
    let heard = Heard::new(2).await;
    let (url, sound) = (heard.url(), scene(5, &[(1, 2.0)]));
    apart(move || {
        let mut page = Page::open(&url, &[]).unwrap();
        page.begin(Uuid::now_v7(), &[]);
        page.until("go");
        for minutes in [0_u64, 10] {
            let at = minutes * 60 * RATE as u64;
            for (i, part) in sound.chunks(BLOCK).enumerate() {
                let mut bytes = (at + (i * BLOCK) as u64).to_le_bytes().to_vec();
                bytes.extend(part.iter().flat_map(|v| v.to_le_bytes()));
                page.socket.send(Message::binary(bytes)).unwrap();
            }
        }
        page.text(&json!("end"));
        page.until("ended");
    })
    .await;
    heard.all_true(&heard.presses().await, &[(1, 2.0), (1, 602.0)]);
}

#[tokio::test(flavor = "multi_thread")]
async fn a_press_that_was_tapped_too_counts_once_as_tapped() {
    let heard = Heard::new(2).await;
    let card = heard.home.story().await.unassigned::<sayso_model::WordCard>().next().unwrap().event.clone();
    let body: Body =
        serde_json::from_value(json!({ "kind": "press", "word": heard.words["word 0"], "by": "animal" })).unwrap();
    let happened_at = BEGAN.parse::<Moment>().unwrap().plus_seconds(1.8);
    let tap = Event { id: EventId(Uuid::now_v7()), animal: Some(heard.home.animal), happened_at, body, ..card };
    heard.home.state.store.append(vec![tap.clone()]).await.unwrap();
    let (url, sound) = (heard.url(), scene(6, &[(0, 1.0), (1, 3.0)]));
    let states = apart(move || {
        let mut page = Page::open(&url, &[]).unwrap();
        page.begin(Uuid::now_v7(), &[]);
        page.until("go");
        page.send(&sound, 0..60);
        page.text(&json!("end"));
        page.until("ended");
        page.heard().iter().map(|h| h["state"].as_str().unwrap().to_owned()).collect::<Vec<_>>()
    })
    .await;
    assert_eq!(states, ["tapped", "new"]);
    let found = heard.presses().await;
    assert_eq!(found.len(), 2);
    assert_eq!(found[0].2.id, tap.id);
    // Only the one nobody tapped waits to be judged.
    let page = heard.home.page(&format!("/a/{}/heard", heard.home.animal)).await;
    page.does_not_say("\u{201c}word 0\u{201d}").says("\u{201c}word 1\u{201d}");
}

#[tokio::test(flavor = "multi_thread")]
async fn one_page_listens_at_a_time_and_another_may_take_over() {
    let heard = Heard::new(2).await;
    let (url, sound) = (heard.url(), scene(5, &[(1, 2.0)]));
    apart(move || {
        let mut first = Page::open(&url, &[]).unwrap();
        first.begin(Uuid::now_v7(), &[]);
        first.until("go");
        first.send(&sound, 0..50);
        first.until("heard");
        let mut second = Page::open(&url, &[]).unwrap();
        second.begin(Uuid::now_v7(), &[]);
        assert_eq!(second.until("busy")["busy"], json!("2026-03-02T12:00:00.000Z"));
        let mut third = Page::open(&url, &[]).unwrap();
        third.begin(Uuid::now_v7(), &[("take", json!(true))]);
        third.until("go");
        first.until("taken");
    })
    .await;
    heard.all_true(&heard.presses().await, &[(1, 2.0)]);
}

#[tokio::test(flavor = "multi_thread")]
async fn what_cannot_be_listened_to_is_told() {
    let heard = Heard::new(0).await;
    let url = heard.url();
    apart(move || {
        let mut page = Page::open(&url, &[]).unwrap();
        page.begin(Uuid::now_v7(), &[]);
        assert!(page.until("wrong")["wrong"].as_str().unwrap().contains("No word has a recording"));
    })
    .await;
    let heard = Heard::new(1).await;
    let url = heard.url();
    apart(move || {
        let told = |what: &dyn Fn(&mut Page)| {
            let mut page = Page::open(&url, &[]).unwrap();
            what(&mut page);
            page.until("wrong")["wrong"].as_str().unwrap().to_owned()
        };
        assert!(told(&|p| p.begin(Uuid::now_v7(), &[("rate", json!(100))])).contains("100 samples a second"));
        assert!(told(&|p| p.begin(Uuid::now_v7(), &[("began", json!("2026-03-04T12:00:00Z"))])).contains("clock"));
        assert!(told(&|p| p.begin(Uuid::now_v7(), &[("other", json!(1))])).contains("reload"));
        assert!(told(&|p| p.send(&[0; BLOCK], 0..1)).contains("before the stream"));
        let broken = |p: &mut Page| {
            p.begin(Uuid::now_v7(), &[]);
            p.socket.send(Message::binary(vec![0; 9])).unwrap();
        };
        assert!(told(&broken).contains("broken"));
    })
    .await;
    assert!(heard.presses().await.is_empty());
    heard.home.page(&format!("/a/{}/listen", heard.home.animal)).await.says("listen-switch");
    assert_eq!(heard.home.get(&format!("/api/listen/{}", heard.home.animal)).await.status.as_u16(), 400);
}

fn refused(result: Result<Page, tungstenite::Error>) -> u16 {
    match result {
        Err(tungstenite::Error::Http(answer)) => answer.status().as_u16(),
        Err(other) => panic!("{other}"),
        Ok(_) => 101,
    }
}

#[tokio::test(flavor = "multi_thread")]
async fn another_sites_page_and_a_device_that_is_not_paired_hear_nothing() {
    let heard = Heard::new(1).await;
    let (url, host) = (heard.url(), heard.at.to_string());
    apart(move || {
        for foreign in ["http://evil.example".to_owned(), "null".to_owned(), "http://127.0.0.1:1".to_owned()] {
            assert_eq!(refused(Page::open(&url, &[("origin", foreign)])), 403);
        }
        assert_eq!(
            refused(Page::open(&url, &[("sec-fetch-site", "cross-site".into()), ("origin", format!("http://{host}"))])),
            403
        );
        assert_eq!(refused(Page::open(&url, &[("origin", format!("http://{host}"))])), 101);
    })
    .await;
    // The same notebook on the home network.
    let codes = Arc::new(Mutex::new(Vec::new()));
    let shown = codes.clone();
    let dir = tempfile::tempdir().unwrap();
    let show = Arc::new(move |code: &str, _| shown.lock().unwrap().push(code.to_owned()));
    let access = Access::home_network(&dir.path().join("paired.json"), show).unwrap();
    let state = AppState::new(heard.home.state.store.clone(), access);
    let now = state.now();
    state.access.offer_code(now).unwrap();
    let code = codes.lock().unwrap()[0].clone();
    let tried = state.access.pair(&code, "a phone", "192.168.1.9".parse().unwrap(), now).unwrap();
    let sayso_web::access::Tried::Paired(secret) = tried else { panic!("{tried:?}") };
    let at = serve(state.clone()).await;
    let (url, cookie) = (format!("ws://{at}/api/listen/{}", heard.home.animal), format!("sayso_paired={secret}"));
    let began = now.to_string();
    apart(move || {
        assert_eq!(refused(Page::open(&url, &[])), 401);
        assert_eq!(refused(Page::open(&url, &[("cookie", "sayso_paired=guess".into())])), 401);
        let mut page = Page::open(&url, &[("cookie", cookie)]).unwrap();
        page.begin(Uuid::now_v7(), &[("began", json!(began))]);
        page.until("go");
        page.send(&[0; 2 * RATE], 0..20);
        // Forgotten while it listens, it is heard no longer.
        state.access.forget_all().unwrap();
        page.send(&[0; BLOCK], 0..1);
        assert!(page.until("wrong")["wrong"].as_str().unwrap().contains("not paired any more"));
    })
    .await;
}
