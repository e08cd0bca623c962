//! What a household waits for, measured at 100 000, 300 000 and a million events: an import, a cold start to the first
//! page, every page, a press while pages are read, memory; and events acknowledged by the server. Each stands beside a
//! reference measured in the same run.
//!
//! `cargo bench -p sayso --bench home` (add `-- --events 10000` for a quick look, `--binary FILE` to measure another
//! version, `--ages-alone` for the table alone).
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, missing_docs)]

use sayso_model::{Body, Event, EventId, Moment, Press, PressedBy, Probability, Source};
use std::io::{BufRead, BufReader, Read, Write};
use std::net::TcpStream;
use std::path::{Path, PathBuf};
use std::process::{Child, Command, Stdio};
use std::time::{Duration, Instant, UNIX_EPOCH};

#[path = "home/age.rs"]
mod age;

fn main() {
    let args: Vec<String> = std::env::args().collect();
    let after = |name: &str| args.iter().position(|a| a == name).and_then(|i| args.get(i + 1)).cloned();
    let ages = after("--events").unwrap_or_else(|| "100000,300000,1000000".to_owned());
    let ages: Vec<usize> = ages.split(',').map(|n| n.parse().expect("--events and numbers")).collect();
    let binary = PathBuf::from(after("--binary").unwrap_or_else(|| env!("CARGO_BIN_EXE_sayso").to_owned()));
    // As if it were measured on an evening, so that today has presses; pages go by the machine's clock.
    let end = Moment::clamped(i64::try_from(UNIX_EPOCH.elapsed().unwrap().as_millis()).unwrap());
    println!("{} cores", std::thread::available_parallelism().map_or(0, usize::from));
    age::ages(&ages, &binary, end);
    if !args.iter().any(|a| a == "--ages-alone") {
        let pattern = sayso_sim::scale(1, 100, end).events.remove(0);
        acknowledged(&binary, &pattern);
        durable_writes();
    }
}

/// Events acknowledged by the server over HTTP, by callers and events a request.
fn acknowledged(binary: &Path, pattern: &Event) {
    let mut reference = 0.0;
    for (callers, batch, total) in [(1, 1, 300), (8, 1, 3_000), (1, 100, 10_000), (8, 100, 40_000)] {
        let dir = tempfile::tempdir().unwrap();
        let (mut server, port) = serve(binary, dir.path());
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
        stream: None,
        session: None,
    };
    Event { id: EventId(uuid::Uuid::now_v7()), source: Source::Tap, body: Body::Press(press), ..pattern.clone() }
}

fn serve(binary: &Path, dir: &Path) -> (Child, u16) {
    let mut child = Command::new(binary)
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

fn ms(t: Duration) -> f64 {
    1000.0 * t.as_secs_f64()
}
