//! The page, the command and the API tell the same figures of the same records, for fifty households.

#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use sayso_model::Moment;
use sayso_sim::{plain_home, simulate};
use sayso_store::Store;
use serde_json::Value;
use std::io::{BufRead, BufReader, Read, Write};
use std::net::TcpStream;
use std::process::{Child, ChildStdout, Command, Stdio};

const HOMES: u64 = 50;

/// A notebook that is served; stopped when dropped.
struct Served {
    child: Child,
    port: u16,
    /// Kept open: who writes to a closed pipe is ended.
    _out: BufReader<ChildStdout>,
}

impl Served {
    fn at(data: &std::path::Path) -> Self {
        let mut child = Command::new(env!("CARGO_BIN_EXE_sayso"))
            .args(["serve", "--port", "0", "--data"])
            .arg(data)
            .stdin(Stdio::null())
            .stdout(Stdio::piped())
            .stderr(Stdio::null())
            .spawn()
            .unwrap();
        let mut said = String::new();
        let mut out = BufReader::new(child.stdout.take().unwrap());
        let port = loop {
            said.clear();
            assert!(out.read_line(&mut said).unwrap() > 0, "it ended without an address");
            let port = said
                .split("127.0.0.1:")
                .nth(1)
                .and_then(|rest| rest.chars().take_while(char::is_ascii_digit).collect::<String>().parse().ok());
            if let Some(port) = port {
                break port;
            }
        };
        Self { child, port, _out: out }
    }

    fn get(&self, path: &str) -> String {
        let mut stream = TcpStream::connect(("127.0.0.1", self.port)).unwrap();
        let host = format!("127.0.0.1:{}", self.port);
        write!(stream, "GET {path} HTTP/1.1\r\nHost: {host}\r\nConnection: close\r\n\r\n").unwrap();
        let mut all = Vec::new();
        stream.read_to_end(&mut all).unwrap();
        let text = String::from_utf8_lossy(&all).into_owned();
        assert!(text.starts_with("HTTP/1.1 200"), "{path}: {}", text.lines().next().unwrap_or_default());
        text
    }
}

impl Drop for Served {
    fn drop(&mut self) {
        // Gone already, or ended now: either is fine.
        let _ = self.child.kill();
        let _ = self.child.wait();
    }
}

/// Text of a page: no tags, its few entities undone.
fn text(html: &str) -> String {
    let mut out = String::new();
    let mut inside = false;
    for c in html.chars() {
        match c {
            '<' => inside = true,
            '>' => inside = false,
            c if !inside => out.push(c),
            _ => {}
        }
    }
    out.replace("&quot;", "\"").replace("&amp;", "&").replace("&lt;", "<").replace("&gt;", ">")
}

#[tokio::test]
async fn page_command_and_api_say_the_same_of_fifty_homes() {
    let end: Moment = "2026-06-01T20:00:00Z".parse().unwrap();
    let mut claimed = 0;
    for seed in 0..HOMES {
        let mut home = plain_home(seed);
        home.days = 21 + u32::try_from(seed % 3).unwrap() * 7;
        home.animals[0].presser.rate *= [0.5, 1.0, 4.0][usize::try_from(seed % 3).unwrap()];
        home.animals[0].plan.rounds = seed % 2 == 0;
        let run = simulate(&home, seed, end).unwrap();
        let animal = run.truth.ids.animals[0];
        let dir = tempfile::tempdir().unwrap();
        let data = dir.path().join("notebook");
        let store = Store::open(&data).await.unwrap();
        store.append(run.events).await.unwrap();
        store.close().await.unwrap();

        let served = Served::at(&data);
        let api = served.get(&format!("/api/evidence/{animal}"));
        let api: Value = serde_json::from_str(&api[api.find('{').unwrap()..=api.rfind('}').unwrap()]).unwrap();
        let command =
            Command::new(env!("CARGO_BIN_EXE_sayso")).args(["evidence", "--data"]).arg(&data).output().unwrap();
        assert!(command.status.success());
        let command = String::from_utf8(command.stdout).unwrap();
        let of_all = api["animal"]["said"].as_str().unwrap();
        assert!(command.contains(of_all), "household {seed}: {of_all:?} not in {command}");
        for word in api["words"].as_array().unwrap() {
            let page = text(&served.get(&format!("/a/{animal}/evidence/{}", word["word"].as_str().unwrap())));
            assert!(page.contains(of_all), "household {seed}: {of_all:?} not on the page");
            for ladder in ["asking", "hearing"] {
                let said = word[ladder]["said"].as_str().unwrap();
                assert!(page.contains(said) && command.contains(said), "household {seed}: {said:?}");
                claimed += usize::from(word[ladder]["since"].is_string());
            }
            for figure in ["pressed", "right"] {
                let f = &word[figure];
                if let (Some(value), Some(low), Some(high)) =
                    (f["value"].as_f64(), f["low"].as_f64(), f["high"].as_f64())
                {
                    // Fewer are no finding on either.
                    if f["n"].as_u64().unwrap() < 5 {
                        continue;
                    }
                    let [value, low, high] = [value, low, high].map(|share| format!("{:.0}%", 100.0 * share));
                    let shown = format!("{value} ({low} to {high}, from {} records)", f["n"]);
                    assert!(page.contains(&shown) && command.contains(&shown), "household {seed}: {figure} {shown}");
                }
            }
        }
    }
    assert!(claimed > 0, "some household has something to say");
}
