//! A home with a notebook, and the program as a person runs it.

use crate::sounds::{self, say, scene};
use sayso_model::{
    AnimalCard, AnimalId, Body, Event, EventId, HomeCard, HomeId, Label, Moment, Press, Source, Species, WordCard,
    WordId, Zone,
};
use sayso_store::Store;
use serde_json::Value;
use std::path::{Path, PathBuf};
use std::process::{Command, Output, Stdio};
use std::sync::OnceLock;
use uuid::Uuid;

pub const WORDS: u64 = 6;
pub const BEGAN: &str = "2026-03-02T17:00:00Z";

pub fn sayso(arguments: &[&str]) -> Output {
    Command::new(env!("CARGO_BIN_EXE_sayso")).args(arguments).stdin(Stdio::null()).output().unwrap()
}

pub fn said(output: &Output) -> String {
    String::from_utf8_lossy(&output.stderr).into_owned()
}

#[track_caller]
pub fn well(output: Output) -> Output {
    assert!(output.status.success(), "{}", said(&output));
    output
}

/// A plain WAV file: 16 bits, one channel.
pub fn wav(path: &Path, x: &[f32]) {
    std::fs::write(path, sounds::wav(x)).unwrap();
}

/// A notebook of one dog and words "word 0" to "word 5", and sounds beside it.
pub struct Home {
    dir: tempfile::TempDir,
    home: HomeId,
}

impl Home {
    pub async fn new() -> Self {
        let dir = tempfile::tempdir().unwrap();
        let home = Self { dir, home: HomeId(Uuid::now_v7()) };
        let store = Store::open(&home.data()).await.unwrap();
        let at: Moment = "2026-03-01T08:00:00Z".parse().unwrap();
        let event = |body: Body| Event {
            id: EventId(Uuid::now_v7()),
            home: home.home,
            animal: None,
            person: None,
            happened_at: at,
            zone: Zone::utc(),
            recorded_at: at,
            source: Source::Tap,
            body,
        };
        let mut events = vec![
            event(HomeCard { name: Label::new("The house by the park").unwrap(), zone: Zone::utc() }.into()),
            event(animal("Pip").into()),
        ];
        events.extend(
            (0..WORDS).map(|w| {
                event(WordCard::new(WordId(Uuid::now_v7()), Label::new(&format!("word {w}")).unwrap()).into())
            }),
        );
        for outcome in store.append(events).await.unwrap() {
            assert_eq!(outcome, sayso_store::Appended::New);
        }
        store.close().await.unwrap();
        home
    }

    pub fn data(&self) -> PathBuf {
        self.dir.path().join("notebook")
    }

    pub fn path(&self, name: &str) -> String {
        self.dir.path().join(name).display().to_string()
    }

    pub fn enrol(&self, word: &str, file: &str) -> Output {
        sayso(&["enrol", "--data", &self.path("notebook"), "--word", word, file])
    }

    pub fn enrol_all(&self) {
        for w in 0..WORDS {
            let file = self.path(&format!("clip{w}.wav"));
            wav(Path::new(&file), &say(w, 0));
            well(self.enrol(&format!("word {w}"), &file));
        }
    }

    pub async fn heard(&self) -> Vec<(Event, Press)> {
        let store = Store::open(&self.data()).await.unwrap();
        let story = store.story(self.home).await.unwrap();
        let found = story.everyones::<Press>().map(|f| (f.event.clone(), f.part.clone())).collect();
        store.close().await.unwrap();
        found
    }

    pub fn log(&self, more: &[&str]) -> Output {
        let data = self.path("notebook");
        let mut arguments = vec!["listen", "--data", &data, "--log", "--started-at", BEGAN];
        arguments.extend(more);
        sayso(&arguments)
    }
}

fn animal(name: &str) -> AnimalCard {
    serde_json::from_value(serde_json::json!({
        "animal": AnimalId(Uuid::now_v7()), "name": name, "species": Species::Dog, "active": true
    }))
    .unwrap()
}

/// Half a minute with ten presses, and people saying the words.
pub fn half_a_minute() -> &'static [f32] {
    static SCENE: OnceLock<Vec<f32>> = OnceLock::new();
    SCENE.get_or_init(|| scene(0.002).0)
}

pub fn lines(output: &Output) -> Vec<Value> {
    String::from_utf8_lossy(&output.stdout).lines().map(|l| serde_json::from_str(l).unwrap()).collect()
}
