//! A phone at a board: keeps each tap until a server has said that it is kept, and sends it again, to whichever answers.

use crate::server::NAME;
use sayso_model::{Body, Event, EventId, HomeId, Note, Remark, Source, Zone};
use sayso_people::Secret;
use sayso_web::state::machine_clock;
use serde_json::Value;
use std::io::{Read, Write};
use std::net::TcpStream;
use std::sync::Mutex;
use std::sync::atomic::{AtomicU64, Ordering};
use std::time::{Duration, Instant};

/// What came of sending, of all phones.
#[derive(Default)]
pub struct Sent {
    answered: AtomicU64,
    failed: AtomicU64,
    again: AtomicU64,
    took: Mutex<Vec<Duration>>,
}

impl Sent {
    pub fn answered(&self) -> u64 {
        self.answered.load(Ordering::Relaxed)
    }

    pub fn figures(&self) -> String {
        let mut took = self.took.lock().unwrap().clone();
        took.sort();
        let at = |share: f64| took[((took.len() - 1) as f64 * share) as usize].as_secs_f64() * 1000.0;
        format!(
            "{} requests answered (p50 {:.1} ms, p99 {:.1} ms), {} not; {} events were there already when sent again",
            took.len(),
            at(0.5),
            at(0.99),
            self.failed.load(Ordering::Relaxed),
            self.again.load(Ordering::Relaxed),
        )
    }
}

/// A phone of one home.
pub struct Phone {
    home: HomeId,
    token: Secret,
    ports: [u16; 2],
    next: usize,
    line: Option<TcpStream>,
    waiting: Vec<Event>,
    told: Vec<String>,
}

impl Phone {
    pub const fn new(home: HomeId, token: Secret, ports: [u16; 2], first: usize) -> Self {
        Self { home, token, ports, next: first, line: None, waiting: Vec::new(), told: Vec::new() }
    }

    /// What a server said is kept.
    pub fn told(self) -> (HomeId, Vec<String>) {
        (self.home, self.told)
    }

    /// One or two new taps; then what waits is sent once.
    pub fn tap(&mut self, sent: &Sent) {
        for _ in 0..=self.next % 2 {
            let now = machine_clock();
            let body: Body = Remark { text: Note::new("It looked at the button.").unwrap() }.into();
            self.waiting.push(Event {
                id: EventId(uuid::Uuid::now_v7()),
                home: self.home,
                animal: None,
                person: None,
                happened_at: now,
                zone: Zone::utc(),
                recorded_at: now,
                source: Source::Tap,
                body,
            });
        }
        self.send(sent);
    }

    /// Sends until nothing waits.
    pub fn finish(&mut self, sent: &Sent) {
        let begun = Instant::now();
        while !self.waiting.is_empty() {
            assert!(begun.elapsed() < Duration::from_secs(120), "what waits is never taken");
            self.send(sent);
        }
    }

    fn send(&mut self, sent: &Sent) {
        let begun = Instant::now();
        match self.asked() {
            Ok(outcomes) => {
                sent.took.lock().unwrap().push(begun.elapsed());
                sent.answered.fetch_add(1, Ordering::Relaxed);
                for outcome in outcomes.as_array().unwrap() {
                    let (id, result) = (outcome["id"].as_str().unwrap(), outcome["result"].as_str().unwrap());
                    assert!(["new", "duplicate"].contains(&result), "{outcome}");
                    sent.again.fetch_add(u64::from(result == "duplicate"), Ordering::Relaxed);
                    self.told.push(id.to_owned());
                }
                self.waiting.drain(..outcomes.as_array().unwrap().len());
            }
            Err(_) => {
                sent.failed.fetch_add(1, Ordering::Relaxed);
                // To the other one.
                self.line = None;
                self.next += 1;
                std::thread::sleep(Duration::from_millis(20));
            }
        }
    }

    /// The outcomes, or that there is no answer this time.
    fn asked(&mut self) -> std::io::Result<Value> {
        let broken = |what: String| std::io::Error::other(what);
        let body = serde_json::to_string(&self.waiting[..self.waiting.len().min(100)]).unwrap();
        if self.line.is_none() {
            let line = TcpStream::connect(("127.0.0.1", self.ports[self.next % 2]))?;
            line.set_read_timeout(Some(Duration::from_secs(30)))?;
            line.set_nodelay(true)?;
            self.line = Some(line);
        }
        let line = self.line.as_mut().unwrap();
        write!(
            line,
            "POST /api/events HTTP/1.1\r\nhost: {NAME}\r\ncookie: sayso_session={}\r\ncontent-type: application/json\r\ncontent-length: {}\r\n\r\n{body}",
            self.token.reveal(),
            body.len()
        )?;
        let mut answer = Vec::new();
        let mut piece = [0; 4096];
        loop {
            let text = String::from_utf8_lossy(&answer).into_owned();
            if let Some((head, content)) = text.split_once("\r\n\r\n") {
                let length =
                    head.lines().find_map(|l| l.to_ascii_lowercase().strip_prefix("content-length: ")?.parse().ok());
                let length: usize = length.ok_or_else(|| broken(format!("no length in {head}")))?;
                if content.len() >= length {
                    if !head.starts_with("HTTP/1.1 200") {
                        return Err(broken(text));
                    }
                    return serde_json::from_str(content).map_err(std::io::Error::other);
                }
            }
            let got = line.read(&mut piece)?;
            if got == 0 {
                return Err(broken("the line broke".into()));
            }
            answer.extend_from_slice(&piece[..got]);
        }
    }
}
