//! Listening through a real browser's microphone, which plays a scene of known presses, over the web socket: the browser
//! cannot run the engine itself.

use crate::harness::{Browser, PHONE, Server, story};
use crate::sounds::{add, bed, replay, room, say, wav};
use fantoccini::Locator;
use sayso_model::{
    AnimalCard, AnimalId, Body, ClipCard, Event, EventId, HomeCard, HomeId, Label, Moment, Press, PressedBy, Source,
    Species, WordCard, WordId, Zone,
};
use sayso_notebook::Replaces;
use sayso_store::{Appended, Store};
use std::path::{Path, PathBuf};
use tempfile::TempDir;
use uuid::Uuid;

/// Words, and those of them that have recordings.
pub struct Notebook {
    pub dir: TempDir,
    pub animal: AnimalId,
    pub words: Vec<WordId>,
}

impl Notebook {
    /// A home of one dog with "word 0" and so on, `recorded` of them with recordings.
    pub async fn new(words: u64, recorded: u64) -> Self {
        let dir = tempfile::tempdir().unwrap();
        let store = Store::open(dir.path()).await.unwrap();
        let home = HomeId(Uuid::now_v7());
        let at: Moment = "2026-03-01T08:00:00Z".parse().unwrap();
        let event = |body: Body| Event {
            id: EventId(Uuid::now_v7()),
            home,
            animal: None,
            person: None,
            happened_at: at,
            zone: Zone::utc(),
            recorded_at: at,
            source: Source::Tap,
            body,
        };
        let animal = AnimalId(Uuid::now_v7());
        let card: AnimalCard = serde_json::from_value(serde_json::json!({
            "animal": animal, "name": "Pip", "species": Species::Dog, "active": true
        }))
        .unwrap();
        let word = |w: u64| WordCard::new(WordId(Uuid::now_v7()), Label::new(&format!("word {w}")).unwrap());
        let cards: Vec<WordCard> = (0..words).map(word).collect();
        let home_card = HomeCard { name: Label::new("The house by the park").unwrap(), zone: Zone::utc() };
        let mut events = vec![event(home_card.into()), event(card.into())];
        events.extend(cards.iter().map(|c| event(c.clone().into())));
        taken(&store, events).await;
        for (w, card) in (0..recorded).zip(&cards) {
            record(&store, card, w, event(card.clone().into())).await;
        }
        store.close().await.unwrap();
        Self { dir, animal, words: cards.iter().map(|c| c.word).collect() }
    }

    /// A sound file beside the notebook.
    pub fn sound(&self, x: &[f32]) -> PathBuf {
        let path = self.dir.path().join("scene.wav");
        std::fs::write(&path, wav(x)).unwrap();
        path
    }
}

/// Gives a word the sound of "word `w`"; `pattern` is any event of its household.
pub async fn record(store: &Store, card: &WordCard, w: u64, pattern: Event) {
    let story = store.story(pattern.home).await.unwrap();
    let done = sayso_notebook::enrol(store, pattern.home, &story, card, wav(&say(w, 0)), Replaces::All).await.unwrap();
    let event = |c: ClipCard| Event { id: EventId(Uuid::now_v7()), animal: None, body: c.into(), ..pattern.clone() };
    taken(store, done.cards.into_iter().map(event).collect()).await;
}

async fn taken(store: &Store, events: Vec<Event>) {
    for outcome in store.append(events).await.unwrap() {
        assert_eq!(outcome, Appended::New);
    }
}

/// Word, seconds from the start, speed.
const PRESSES: [(u64, f64, f64); 6] =
    [(0, 2.5, 1.0), (2, 5.0, 0.975), (1, 7.5, 1.02), (3, 10.0, 0.99), (0, 12.5, 1.0), (1, 15.0, 1.01)];

/// Presses in a room, and a person saying two of the words.
pub fn scene() -> Vec<f32> {
    let mut scene = bed(18, 0.002, 11);
    for (w, t, speed) in PRESSES {
        add(&mut scene, &room(&replay(&say(w, 0), speed), 0.3, 9), t, 0.3);
    }
    for (w, t) in [(2, 3.8), (0, 8.8)] {
        add(&mut scene, &room(&say(w, 4), 0.3, 21), t, 0.3);
    }
    scene
}

/// The presses in the log, by time: word, when, event.
pub async fn heard(dir: &Path) -> Vec<(WordId, Moment, Event)> {
    let (_, story) = story(dir).await;
    let mut all: Vec<_> = story.everyones::<Press>().map(|f| (f.part.word, f.at(), f.event.clone())).collect();
    all.sort_by_key(|(_, at, _)| *at);
    all
}

/// Exactly the presses of the scene, in order, as far apart as they were.
pub fn assert_exact(found: &[(WordId, Moment, Event)], notebook: &Notebook) {
    let told: Vec<_> = found
        .iter()
        .map(|(w, at, _)| format!("word {} at {at}", notebook.words.iter().position(|x| x == w).unwrap()))
        .collect();
    let words: Vec<_> = found.iter().map(|(w, ..)| *w).collect();
    let truth: Vec<_> = PRESSES.iter().map(|(w, ..)| notebook.words[*w as usize]).collect();
    assert_eq!(words, truth, "{told:?}");
    for (pair, truth) in found.windows(2).zip(PRESSES.windows(2)) {
        let (apart, true_apart) = (pair[1].1.seconds_since(pair[0].1), truth[1].1 - truth[0].1);
        assert!((apart - true_apart).abs() < 0.3, "{apart} s apart, in truth {true_apart} s: {told:?}");
    }
}

const ALL_HEARD: &str = "return Number(document.getElementById('listen').dataset.heard) >= 6";

#[tokio::test(flavor = "multi_thread")]
async fn presses_at_the_microphone_appear_on_the_page_and_in_the_log() {
    let notebook = Notebook::new(4, 4).await;
    let server = Server::start(notebook.dir.path(), 0);
    let browser = Browser::sending(PHONE, &notebook.sound(&scene())).await;
    browser.goto(&server.url(&format!("/a/{}/listen", notebook.animal))).await;
    assert_eq!(browser.text("listen-state").await, "Off.");
    assert!(browser.text("listen-way").await.starts_with("This browser cannot hear by itself"));
    browser.tap("listen-switch").await;
    browser.until("listening", "return document.getElementById('listen').dataset.state === 'on'").await;
    assert!(browser.text("listen-state").await.starts_with("Listening for 4 words since "));
    browser.until("six presses", ALL_HEARD).await;
    browser.picture("listen").await;
    browser.tap("listen-switch").await;
    browser.until("off", "return document.getElementById('listen').dataset.state === 'off'").await;
    assert_eq!(browser.text("listen-state").await, "Off. 6 presses were heard.");
    let rows = browser.page.find_all(Locator::Css("[data-test=listen-press]")).await.unwrap();
    let mut says = Vec::new();
    for row in rows {
        says.insert(0, row.attr("data-says").await.unwrap().unwrap());
        assert!(row.text().await.unwrap().contains("% sure, noted"));
    }
    assert_eq!(says, PRESSES.map(|(w, ..)| format!("word {w}")));
    browser.close().await;
    drop(server);

    let found = heard(notebook.dir.path()).await;
    assert_exact(&found, &notebook);
    for (_, _, event) in &found {
        assert_eq!((event.source, event.animal), (Source::Heard, Some(notebook.animal)));
        assert!(matches!(&event.body, Body::Press(p) if p.by == PressedBy::Unknown && p.certainty.get() > 0.5));
    }
    assert!(!notebook.dir.path().join("snippets").exists(), "no sound is kept unless asked for");
}

#[tokio::test(flavor = "multi_thread")]
async fn nothing_is_lost_or_doubled_while_the_notebook_is_away() {
    let notebook = Notebook::new(4, 4).await;
    let mut server = Server::start(notebook.dir.path(), 0);
    let browser = Browser::sending(PHONE, &notebook.sound(&scene())).await;
    browser.goto(&server.url(&format!("/a/{}/board", notebook.animal))).await;
    browser.tap("fold-microphone").await;
    browser.tap("listen-switch").await;
    browser.until("a press", "return Number(document.getElementById('listen').dataset.heard) >= 2").await;
    assert_eq!(browser.text("listen-chip").await, "Listening", "seen at the top of the board");
    browser.picture("listen-board").await;
    server.kill();
    browser.until("told", "return document.getElementById('listen').dataset.link === 'waiting'").await;
    assert!(browser.text("listen-link").await.starts_with("No answer from the notebook"));
    tokio::time::sleep(std::time::Duration::from_secs(4)).await;
    server.restart();
    let last = "return [...document.querySelectorAll('[data-test=listen-press]')].filter((p) => !p.textContent.includes('before')).length >= 6";
    browser.until("all presses", last).await;
    browser.tap("listen-switch").await;
    browser.until("off", "return document.getElementById('listen').dataset.state === 'off'").await;
    browser.close().await;
    drop(server);
    assert_exact(&heard(notebook.dir.path()).await, &notebook);
}

#[tokio::test(flavor = "multi_thread")]
async fn without_recordings_the_page_says_what_to_do_first() {
    let notebook = Notebook::new(1, 0).await;
    let server = Server::start(notebook.dir.path(), 0);
    let browser = Browser::open(PHONE).await;
    for page in ["board", "listen"] {
        browser.goto(&server.url(&format!("/a/{}/{page}", notebook.animal))).await;
        if page == "board" {
            browser.tap("fold-microphone").await;
        }
        assert!(
            browser.text("listen-missing").await.starts_with("Nothing can be heard yet: no word here has a recording.")
        );
        assert!(browser.page.find(Locator::Css("[data-test=listen-switch]")).await.is_err());
    }
    browser.picture("listen-missing").await;
    browser.follow("[data-test=listen] a.button:not(.primary)").await;
    let at = browser.page.current_url().await.unwrap();
    assert!(
        at.path().ends_with(&format!("/words/card/{}", notebook.words[0])) && at.fragment() == Some("recording"),
        "{at}"
    );
    browser.page.back().await.unwrap();
    browser.follow("[data-test=record-all]").await;
    let at = browser.page.current_url().await.unwrap();
    assert!(at.path().ends_with("/words/record"), "{at}");
    browser.close().await;
}

#[tokio::test(flavor = "multi_thread")]
async fn where_no_microphone_can_be_had_the_page_says_why_and_what_to_do() {
    let notebook = Notebook::new(1, 1).await;
    let server = Server::start_with(notebook.dir.path(), 0, &["--lan"]);
    let code = server.said("Pairing code for a phone (good for 15 minutes): ").await;
    // A name that is not this machine's own, as a phone has it: no secure context over plain HTTP.
    let browser = Browser::open_with(PHONE, &["--host-resolver-rules=MAP kitchen.local 127.0.0.1"]).await;
    let at = |path: &str| format!("http://kitchen.local:{}{path}", server.port);
    browser.goto(&at("/pair")).await;
    browser.css("#code").await.send_keys(&code).await.unwrap();
    browser.follow("button.primary").await;
    browser.goto(&at(&format!("/a/{}/listen", notebook.animal))).await;
    browser.until("told", "return document.getElementById('listen').dataset.state === 'unable'").await;
    let said = browser.text("listen-state").await;
    assert!(
        said.contains("plain HTTP") && said.contains("--lan --secure") && said.contains("http://localhost"),
        "{said}"
    );
    assert!(!browser.find("listen-switch").await.is_enabled().await.unwrap());
    browser.picture("listen-insecure").await;
    browser.goto(&at(&format!("/a/{}/words/card/{}", notebook.animal, notebook.words[0]))).await;
    browser.tap("record-more").await;
    let said = browser.text("record-state").await;
    assert!(said.contains("A sound file works in any case"), "{said}");
    browser.close().await;
}
