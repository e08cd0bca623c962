//! Hearing on the device: the page's own engine at a real browser's microphone, with all that leaves the browser read.

use crate::harness::{Browser, PHONE, Server, has_module, story};
use crate::listen::{Notebook, assert_exact, heard, scene};
use sayso_model::event::Part;
use sayso_model::{Body, Press, PressedBy, Source};
use serde_json::json;
use std::sync::atomic::{AtomicBool, Ordering};
use std::sync::{Arc, Mutex};
use tokio::io::{AsyncReadExt, AsyncWriteExt};
use tokio::net::{TcpListener, TcpStream};

/// The way between a browser and a server: can be cut, and keeps what the browser sends.
struct Way {
    port: u16,
    open: Arc<AtomicBool>,
    sent: Arc<Mutex<Vec<u8>>>,
}

impl Way {
    async fn to(server: u16) -> Self {
        let listener = TcpListener::bind("127.0.0.1:0").await.unwrap();
        let port = listener.local_addr().unwrap().port();
        let (open, sent) = (Arc::new(AtomicBool::new(true)), Arc::new(Mutex::new(Vec::new())));
        let way = Self { port, open: open.clone(), sent: sent.clone() };
        tokio::spawn(async move {
            while let Ok((browser, _)) = listener.accept().await {
                if open.load(Ordering::SeqCst) {
                    tokio::spawn(carry(browser, server, open.clone(), sent.clone()));
                }
            }
        });
        way
    }

    fn url(&self, path: &str) -> String {
        format!("http://127.0.0.1:{}{path}", self.port)
    }

    fn set(&self, open: bool) {
        self.open.store(open, Ordering::SeqCst);
    }

    fn sent(&self) -> String {
        String::from_utf8_lossy(&self.sent.lock().unwrap()).into_owned()
    }
}

async fn carry(mut browser: TcpStream, server: u16, open: Arc<AtomicBool>, sent: Arc<Mutex<Vec<u8>>>) {
    let Ok(mut server) = TcpStream::connect(("127.0.0.1", server)).await else { return };
    let (mut asked, mut answered) = (vec![0; 1 << 16], vec![0; 1 << 16]);
    while open.load(Ordering::SeqCst) {
        tokio::select! {
            n = browser.read(&mut asked) => {
                let Ok(n @ 1..) = n else { return };
                sent.lock().unwrap().extend(&asked[..n]);
                if server.write_all(&asked[..n]).await.is_err() { return }
            }
            n = server.read(&mut answered) => {
                let Ok(n @ 1..) = n else { return };
                if browser.write_all(&answered[..n]).await.is_err() { return }
            }
            // A cut also ends what is open.
            () = tokio::time::sleep(std::time::Duration::from_millis(100)) => {}
        }
    }
}

/// What the browser sent holds requests for pages and files, and presses as JSON: no web socket, no sound.
fn assert_no_sound(sent: &str) {
    let lines: Vec<&str> = sent.lines().filter(|l| l.ends_with(" HTTP/1.1") || l.contains(" HTTP/1.1\r")).collect();
    assert!(!sent.to_ascii_lowercase().contains("upgrade: websocket"), "a web socket was opened");
    for line in &lines {
        let said = line.rsplit_once(' ').map_or(*line, |(l, _)| l);
        let asks = said.contains("GET /");
        let notes = said.contains("POST /api/events");
        assert!(asks || notes, "{line}");
        assert!(!said.contains("/api/listen"), "{line}");
    }
    // 18 s of sound would be 576 000 bytes, and 72 000 were it coded at 32 kbit/s.
    let bodies: usize = sent.split("\r\n\r\n").filter(|part| part.starts_with('[')).map(str::len).sum();
    assert!(bodies < 20_000, "{bodies} bytes of events");
    let each = sent.len() / lines.len().max(1);
    assert!(each < 2_000, "{each} bytes a request");
}

const OFF: &str = "return document.getElementById('listen').dataset.state === 'off'";
const ON: &str = "return document.getElementById('listen').dataset.state === 'on'";
const KEPT: &str = "return caches.open('sayso-ear-1').then((c) => c.keys()).then((k) => k.length >= 6)";

#[tokio::test(flavor = "multi_thread")]
async fn the_page_hears_by_itself_and_only_presses_leave_it() {
    if !has_module() {
        return;
    }
    let notebook = Notebook::new(4, 4).await;
    // Sound is not even taken.
    let server = Server::start_with(notebook.dir.path(), 0, &["--no-sound"]);
    let way = Way::to(server.port).await;
    let browser = Browser::hearing(PHONE, &notebook.sound(&scene())).await;
    browser.goto(&way.url(&format!("/a/{}/board", notebook.animal))).await;
    browser.until("kept for offline", KEPT).await;
    browser.tap("fold-microphone").await;
    assert!(browser.text("listen-way").await.starts_with("This device hears by itself"));
    assert_eq!(browser.text("last-heard").await.matches("not heard yet").count(), 4);
    let asks = "return document.querySelector('[data-ear=keeping]').checkVisibility()";
    assert_eq!(browser.page.execute(asks, vec![]).await.unwrap(), false, "no sound is kept, so nothing asks for it");
    browser.tap("listen-switch").await;
    browser.until("listening", ON).await;
    browser.until("a press", "return Number(document.getElementById('listen').dataset.heard) >= 1").await;
    // The network goes: hearing goes on.
    way.set(false);
    browser.until("all", "return Number(document.getElementById('listen').dataset.heard) >= 6").await;
    browser.picture("ear-offline").await;
    assert!(heard(notebook.dir.path()).await.len() < 6, "the notebook is away");
    let last = browser.text("last-heard").await;
    assert!(!last.contains("not heard yet") && last.matches("% sure").count() == 4, "each word was heard: {last}");
    browser.tap("listen-switch").await;
    browser.until("off", OFF).await;
    assert_eq!(browser.text("listen-state").await, "Off. 6 presses were heard.");
    way.set(true);
    browser.page.execute("dispatchEvent(new Event('online'))", vec![]).await.unwrap();
    browser.all_sent().await;
    assert_eq!(
        browser
            .page
            .execute("return document.querySelectorAll('[data-test=listen-gap]').length", vec![])
            .await
            .unwrap(),
        0
    );
    browser.close().await;
    drop(server);
    assert_no_sound(&way.sent());

    let found = heard(notebook.dir.path()).await;
    assert_exact(&found, &notebook);
    for (_, _, event) in &found {
        assert_eq!((event.source, event.animal), (Source::Heard, Some(notebook.animal)));
        assert!(matches!(&event.body, Body::Press(p) if p.by == PressedBy::Unknown && p.certainty.get() > 0.5));
        assert_eq!(event.id.0.get_version_num(), 8);
    }
    assert!(!notebook.dir.path().join("snippets").exists(), "no sound is stored");
}

/// A page that was open once while the notebook answered begins to listen without it.
#[tokio::test(flavor = "multi_thread")]
async fn listening_begins_while_the_notebook_is_off_and_presses_are_sent_when_it_is_back() {
    if !has_module() {
        return;
    }
    let notebook = Notebook::new(4, 4).await;
    let mut server = Server::start(notebook.dir.path(), 0);
    let browser = Browser::hearing(PHONE, &notebook.sound(&scene())).await;
    let board = server.url(&format!("/a/{}/board", notebook.animal));
    browser.goto(&board).await;
    browser.until("kept for offline", KEPT).await;
    let page =
        "return caches.open('sayso-pad-1').then((c) => c.keys()).then((k) => k.some((r) => r.url === location.href))";
    browser.until("the page too", page).await;
    let scripts = "return caches.open('sayso-pad-1').then((c) => c.keys()).then((k) => k.some((r) => r.url.endsWith('/ear-worker.js')))";
    browser.until("the worker too", scripts).await;
    server.kill();
    browser.goto(&board).await;
    browser.tap("fold-microphone").await;
    browser.tap("listen-switch").await;
    browser.until("all", "return Number(document.getElementById('listen').dataset.heard) >= 6").await;
    browser.tap("listen-switch").await;
    browser.until("off", OFF).await;
    server.restart();
    browser.all_sent().await;
    browser.close().await;
    drop(server);
    assert_exact(&heard(notebook.dir.path()).await, &notebook);
}

/// Permission refused.
#[tokio::test(flavor = "multi_thread")]
async fn a_microphone_that_is_refused_is_told() {
    let notebook = Notebook::new(2, 2).await;
    let server = Server::start(notebook.dir.path(), 0);
    let more = ["--use-fake-device-for-media-stream", "--deny-permission-prompts"];
    let browser = Browser::open_with(PHONE, &more).await;
    browser.goto(&server.url(&format!("/a/{}/listen", notebook.animal))).await;
    browser.tap("listen-switch").await;
    browser.until("told", "return document.getElementById('listen').textContent.includes('was not allowed')").await;
    browser.until("off", OFF).await;
    browser.close().await;
}

/// Permission taken back while it listens: told at once; switched on again after it was given back, with the gap noted.
#[tokio::test(flavor = "multi_thread")]
async fn a_microphone_that_is_taken_away_is_told_and_can_be_switched_on_again() {
    if !has_module() {
        return;
    }
    let notebook = Notebook::new(4, 4).await;
    let server = Server::start_with(notebook.dir.path(), 0, &["--no-sound"]);
    // It asks for the permission, so that it can be given and taken back.
    let plays = format!("--use-file-for-fake-audio-capture={}%noloop", notebook.sound(&scene()).display());
    let browser = Browser::open_with(PHONE, &["--use-fake-device-for-media-stream", &plays]).await;
    let allow = async |setting: &str| {
        let asked = json!({ "permission": { "name": "microphone" }, "setting": setting, "origin": server.url("") });
        browser.devtools("Browser.setPermission", asked).await;
    };
    allow("granted").await;
    browser.goto(&server.url(&format!("/a/{}/listen", notebook.animal))).await;
    browser.until("kept for offline", KEPT).await;
    browser.tap("listen-switch").await;
    browser.until("a press", "return Number(document.getElementById('listen').dataset.heard) >= 1").await;
    let heard = "return Number(document.getElementById('listen').dataset.heard)";
    allow("denied").await;
    let taken = std::time::Instant::now();
    browser.until("told", OFF).await;
    let said = browser.text("listen-state").await;
    assert!(said.contains("The microphone was taken away"), "{said}");
    eprintln!("told {:.1} s after the permission was taken back", taken.elapsed().as_secs_f64());
    browser.picture("listen-taken-away").await;
    // Without the permission it cannot go on, and says so.
    browser.tap("listen-switch").await;
    browser.until("refused", "return document.getElementById('listen').textContent.includes('was not allowed')").await;
    let before = browser.page.execute(heard, vec![]).await.unwrap().as_u64().unwrap();
    allow("granted").await;
    browser.tap("listen-switch").await;
    browser.until("on", ON).await;
    assert!(browser.text("listen-gap").await.starts_with("Not heard: "));
    let more = format!("return Number(document.getElementById('listen').dataset.heard) > {before}");
    browser.until("it hears again", &more).await;
    browser.tap("listen-switch").await;
    browser.until("off", OFF).await;
    // Whoever opens the page later sees the gap too.
    browser.goto(&server.url(&format!("/a/{}/listen", notebook.animal))).await;
    assert!(browser.text("listen-gap").await.starts_with("Not heard: "));
    browser.close().await;
}

/// A phone and a tablet listen at once; on the phone a person says whose the last press was.
#[tokio::test(flavor = "multi_thread")]
async fn a_phone_and_a_tablet_that_listen_at_once_count_each_press_once() {
    if !has_module() {
        return;
    }
    let notebook = Notebook::new(4, 4).await;
    let server = Server::start_with(notebook.dir.path(), 0, &["--no-sound"]);
    let sound = notebook.sound(&scene());
    let phone = Browser::hearing(PHONE, &sound).await;
    let tablet = phone.beside((1024, 768), &sound).await;
    for browser in [&phone, &tablet] {
        browser.goto(&server.url(&format!("/a/{}/board", notebook.animal))).await;
        browser.until("kept for offline", KEPT).await;
        browser.tap("fold-microphone").await;
    }
    // The sound of each begins at the tap: what lies between the taps is as if their clocks were that far apart.
    tokio::join!(phone.tap("listen-switch"), tablet.tap("listen-switch"));
    for browser in [&phone, &tablet] {
        browser.until("all", "return Number(document.getElementById('listen').dataset.heard) >= 6").await;
    }
    phone.picture("whose").await;
    phone.tap("whose-animal").await;
    phone.until("answered", "return document.querySelector('[data-test=whose]').hidden").await;
    for browser in [&phone, &tablet] {
        browser.tap("listen-switch").await;
        browser.until("off", OFF).await;
        browser.all_sent().await;
    }
    phone.close().await;
    tablet.close().await;
    drop(server);
    let (_, story) = story(notebook.dir.path()).await;
    assert_eq!(story.heard_presses().count(), 12, "each device noted what it heard");
    let found = heard(notebook.dir.path()).await;
    assert_eq!(found.len(), 6);
    let by: Vec<PressedBy> = found.iter().filter_map(|(_, _, e)| Press::of(&e.body).map(|p| p.by)).collect();
    assert_eq!(by.iter().filter(|by| **by == PressedBy::Animal).count(), 1, "{by:?}");
    assert_eq!(by[5], PressedBy::Animal);
}
