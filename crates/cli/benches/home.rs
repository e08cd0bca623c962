//! What a household waits for, measured: events acknowledged by the server, Today and Evidence for an animal with
//! 100 000 presses, and a cold start to the first page. Each figure stands beside a reference measured in the same run.
//!
//! `cargo bench -p sayso --bench household` (add `-- --presses 10000` for a quick look).
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, missing_docs)]

use sayso_advisor::{Case, evidence, today};
use sayso_model::{Body, Event, EventId, Moment, Press, PressedBy, Probability, Source, Story};
use sayso_store::Store;
use std::io::{BufRead, BufReader, Read, Write};
use std::net::TcpStream;
use std::path::Path;
use std::process::{Child, Command, Stdio};
use std::time::{Duration, Instant};

fn main() {
    let args: Vec<String> = std::env::args().collect();
    let after = |name: &str| args.iter().position(|a| a == name).and_then(|i| args.get(i + 1)).cloned();
    let presses: usize = after("--presses").and_then(|n| n.parse().ok()).unwrap_or(100_000);
    let runtime = tokio::runtime::Runtime::new().unwrap();
    let end: Moment = "2026-11-25T18:00:00Z".parse().unwrap();
    println!("{} presses, {} cores", presses, std::thread::available_parallelism().map_or(0, usize::from));
    let events = sayso_sim::scale(1, presses, end).events;
    println!("simulated {} events", events.len());
    pages(&events, end);
    let dir = tempfile::tempdir().unwrap();
    runtime.block_on(async {
        let store = Store::open(dir.path()).await.unwrap();
        for batch in events.chunks(5_000) {
            store.append(batch.to_vec()).await.unwrap();
        }
        store.close().await.unwrap();
    });
    cold_start(dir.path(), events.len());
    acknowledged(&events[0]);
    durable_writes();
}

/// Today and Evidence computed from the story; the reference is the fold of the same events into a story.
fn pages(events: &[Event], now: Moment) {
    let (story, fold) = timed(|| Story::from_events(events.iter().cloned()));
    let who = *story.animals().keys().next().expect("an animal");
    let word = story.words_of(who)[0].word;
    let (_, day) = best_of(5, || today::today(&Case::new(&story, who, now)).expect("Today"));
    let (_, proof) = best_of(5, || evidence::evidence(&Case::new(&story, who, now), word).expect("Evidence"));
    println!("reference: fold of {} events into a story  {:>9.1} ms", events.len(), ms(fold));
    println!("Today, computed                            {:>9.1} ms  ({:.2} of the fold)", ms(day), ratio(day, fold));
    println!(
        "Evidence of one word, computed             {:>9.1} ms  ({:.2} of the fold)",
        ms(proof),
        ratio(proof, fold)
    );
}

/// From starting the binary to the first page, with a large notebook and with an empty one as the reference.
fn cold_start(full: &Path, events: usize) {
    let empty = tempfile::tempdir().unwrap();
    for (name, dir) in [("reference: empty notebook", empty.path()), ("large notebook", full)] {
        let begin = Instant::now();
        let (mut server, port) = serve(dir);
        let open = begin.elapsed();
        let first = page(port, "/");
        let path = first.lines().find_map(|l| l.strip_prefix("location: ").or_else(|| l.strip_prefix("Location: ")));
        let path = path.unwrap_or("/").trim().to_owned();
        page(port, &path);
        let shown = begin.elapsed();
        let again = Instant::now();
        page(port, &path);
        println!(
            "cold start, {name:<26} open {:>7.1} ms, first page {:>8.1} ms, again {:>7.1} ms",
            ms(open),
            ms(shown),
            ms(again.elapsed())
        );
        server.kill().unwrap();
        server.wait().unwrap();
    }
    println!("(the large notebook holds {events} events)");
}

/// Events acknowledged by the server over HTTP, by callers and events a request.
fn acknowledged(pattern: &Event) {
    let mut reference = 0.0;
    for (callers, batch, total) in [(1, 1, 300), (8, 1, 3_000), (1, 100, 10_000), (8, 100, 40_000)] {
        let dir = tempfile::tempdir().unwrap();
        let (mut server, port) = serve(dir.path());
        let begin = Instant::now();
        std::thread::scope(|scope| {
            for _ in 0..callers {
                scope.spawn(|| {
                    let mut line = Line::open(port);
                    for _ in 0..total / callers / batch {
                        let events: Vec<Event> = (0..batch).map(|_| press(pattern)).collect();
                        line.post(&serde_json::to_string(&events).unwrap());
                    }
                });
            }
        });
        #[allow(clippy::cast_precision_loss)]
        let rate = total as f64 / begin.elapsed().as_secs_f64();
        if reference == 0.0 {
            reference = rate;
        }
        println!(
            "acknowledged: {callers} callers, {batch:>3} events a request  {rate:>9.0} events/s  ({:.1} times one by one)",
            rate / reference
        );
        server.kill().unwrap();
        server.wait().unwrap();
    }
}

/// What the disk allows: one small durable write after another.
fn durable_writes() {
    let dir = tempfile::tempdir().unwrap();
    let mut file = std::fs::File::create(dir.path().join("x")).unwrap();
    let begin = Instant::now();
    for _ in 0..200 {
        file.write_all(&[0; 512]).unwrap();
        file.sync_data().unwrap();
    }
    println!("reference: durable writes of 512 bytes      {:>9.0} writes/s", 200.0 / begin.elapsed().as_secs_f64());
}

fn press(pattern: &Event) -> Event {
    let word = sayso_model::WordId(pattern.id.0);
    let press = Press {
        word,
        by: PressedBy::Animal,
        certainty: Probability::clamped(1.0),
        accident: sayso_model::Accident::Unsure,
        place: None,
        speed: None,
        session: None,
    };
    Event { id: EventId(uuid::Uuid::now_v7()), source: Source::Tap, body: Body::Press(press), ..pattern.clone() }
}

fn serve(dir: &Path) -> (Child, u16) {
    let mut child = Command::new(env!("CARGO_BIN_EXE_sayso"))
        .args(["serve", "--data", dir.to_str().unwrap(), "--port", "0"])
        .stdout(Stdio::piped())
        .spawn()
        .unwrap();
    let mut line = String::new();
    let mut out = BufReader::new(child.stdout.take().unwrap());
    out.read_line(&mut line).unwrap();
    std::thread::spawn(move || std::io::copy(&mut out, &mut std::io::sink()));
    let port = line.trim_end_matches(['/', '\n', ' ']).rsplit(':').next().unwrap().parse().unwrap();
    (child, port)
}

/// One page on a connection of its own: head and body.
fn page(port: u16, path: &str) -> String {
    let mut stream = TcpStream::connect(("127.0.0.1", port)).unwrap();
    write!(stream, "GET {path} HTTP/1.1\r\nHost: 127.0.0.1:{port}\r\nConnection: close\r\n\r\n").unwrap();
    let mut answer = Vec::new();
    stream.read_to_end(&mut answer).unwrap();
    String::from_utf8_lossy(&answer).into_owned()
}

/// A connection kept open.
struct Line {
    stream: BufReader<TcpStream>,
    port: u16,
}

impl Line {
    fn open(port: u16) -> Self {
        let stream = TcpStream::connect(("127.0.0.1", port)).unwrap();
        stream.set_nodelay(true).unwrap();
        Self { stream: BufReader::new(stream), port }
    }

    fn post(&mut self, body: &str) {
        let port = self.port;
        let request = format!(
            "POST /api/events HTTP/1.1\r\nHost: 127.0.0.1:{port}\r\nOrigin: http://127.0.0.1:{port}\r\nContent-Type: application/json\r\nContent-Length: {}\r\n\r\n{body}",
            body.len()
        );
        self.stream.get_mut().write_all(request.as_bytes()).unwrap();
        let (mut length, mut status) = (0, String::new());
        loop {
            let mut line = String::new();
            self.stream.read_line(&mut line).unwrap();
            if status.is_empty() {
                status = line.clone();
            }
            if let Some(n) = line.to_ascii_lowercase().strip_prefix("content-length:") {
                length = n.trim().parse().unwrap();
            }
            if line.trim().is_empty() {
                break;
            }
        }
        let mut answer = vec![0; length];
        self.stream.read_exact(&mut answer).unwrap();
        assert!(status.contains(" 200 "), "{status}{}", String::from_utf8_lossy(&answer));
    }
}

fn timed<T>(work: impl FnOnce() -> T) -> (T, Duration) {
    let begin = Instant::now();
    let done = work();
    (done, begin.elapsed())
}

fn best_of<T>(times: usize, work: impl Fn() -> T) -> (T, Duration) {
    (0..times).map(|_| timed(&work)).min_by_key(|(_, t)| *t).unwrap()
}

fn ms(t: Duration) -> f64 {
    1000.0 * t.as_secs_f64()
}

fn ratio(a: Duration, b: Duration) -> f64 {
    a.as_secs_f64() / b.as_secs_f64()
}
