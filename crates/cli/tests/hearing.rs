//! From a recording and a sound to presses in the log, through the program as a person runs it.

#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "../../listen/tests/common/mod.rs"]
mod sounds;

use sayso_model::{
    AnimalCard, AnimalId, Body, Event, EventId, HomeCard, HomeId, Label, Moment, Press, PressedBy, Source, Species,
    WordCard, WordId, Zone,
};
use sayso_store::Store;
use serde_json::Value;
use sounds::{PRESSES, RATE, say, scene};
use std::io::Write;
use std::path::{Path, PathBuf};
use std::process::{Command, Output, Stdio};
use std::sync::OnceLock;
use uuid::Uuid;

const WORDS: u64 = 6;
const BEGAN: &str = "2026-03-02T17:00:00Z";

fn sayso(arguments: &[&str]) -> Output {
    Command::new(env!("CARGO_BIN_EXE_sayso")).args(arguments).stdin(Stdio::null()).output().unwrap()
}

fn said(output: &Output) -> String {
    String::from_utf8_lossy(&output.stderr).into_owned()
}

#[track_caller]
fn well(output: Output) -> Output {
    assert!(output.status.success(), "{}", said(&output));
    output
}

/// A plain WAV file: 16 bits, one channel.
fn wav(path: &Path, x: &[f32]) {
    std::fs::write(path, sounds::wav(x)).unwrap();
}

/// A notebook of one dog and words "word 0" to "word 5", and sounds beside it.
struct Home {
    dir: tempfile::TempDir,
    home: HomeId,
}

impl Home {
    async fn new() -> Self {
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

    fn data(&self) -> PathBuf {
        self.dir.path().join("notebook")
    }

    fn path(&self, name: &str) -> String {
        self.dir.path().join(name).display().to_string()
    }

    fn enrol(&self, word: &str, file: &str) -> Output {
        sayso(&["enrol", "--data", &self.path("notebook"), "--word", word, file])
    }

    fn enrol_all(&self) {
        for w in 0..WORDS {
            let file = self.path(&format!("clip{w}.wav"));
            wav(Path::new(&file), &say(w, 0));
            well(self.enrol(&format!("word {w}"), &file));
        }
    }

    async fn heard(&self) -> Vec<(Event, Press)> {
        let store = Store::open(&self.data()).await.unwrap();
        let story = store.story(self.home).await.unwrap();
        let found = story.everyones::<Press>().map(|f| (f.event.clone(), f.part.clone())).collect();
        store.close().await.unwrap();
        found
    }

    fn log(&self, more: &[&str]) -> Output {
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
fn half_a_minute() -> &'static [f32] {
    static SCENE: OnceLock<Vec<f32>> = OnceLock::new();
    SCENE.get_or_init(|| scene(0.002).0)
}

fn lines(output: &Output) -> Vec<Value> {
    String::from_utf8_lossy(&output.stdout).lines().map(|l| serde_json::from_str(l).unwrap()).collect()
}

#[tokio::test]
async fn presses_in_a_file_are_printed_and_logged_once() {
    let home = Home::new().await;
    home.enrol_all();
    let file = home.path("evening.wav");
    wav(Path::new(&file), half_a_minute());
    let first = well(home.log(&[&file]));
    let printed = lines(&first);
    let truth = scene(0.002).1;
    let right = printed
        .iter()
        .filter(|p| {
            let near = |onset: f64| (p["onset_s"].as_f64().unwrap() - onset).abs() < 0.15;
            truth.iter().any(|(w, onset, _)| p["word"] == format!("word {w}") && near(*onset))
        })
        .count();
    assert!(right >= PRESSES.len() - 1 && printed.len() <= right + 1, "{printed:?}");
    assert!(printed.iter().all(|p| p["sound"] == "evening"));
    let heard = home.heard().await;
    assert_eq!(heard.len(), printed.len());
    let began: Moment = BEGAN.parse().unwrap();
    for (event, press) in &heard {
        assert_eq!((event.source, press.by), (Source::Heard, PressedBy::Unknown));
        assert!(event.animal.is_some(), "the only animal");
        let line = printed
            .iter()
            .find(|p| (p["onset_s"].as_f64().unwrap() - event.happened_at.seconds_since(began)).abs() < 0.002);
        let line = line.unwrap();
        assert!((line["confidence"].as_f64().unwrap() - press.certainty.get()).abs() < 1e-3);
        assert!((line["speed"].as_f64().unwrap() - press.speed.unwrap().get()).abs() < 1e-3);
    }
    let again = well(home.log(&[&file]));
    assert!(said(&again).contains(&format!("0 of them logged; {} were in the log already", heard.len())));
    assert_eq!(lines(&again), printed, "hearing again prints the same");
    assert_eq!(home.heard().await.len(), heard.len(), "hearing again adds nothing");
    // Another copy of the sound, cut a little differently, holds the same presses.
    let copy = home.path("copy.wav");
    wav(Path::new(&copy), &half_a_minute()[..half_a_minute().len() - 100]);
    well(home.log(&[&copy]));
    assert_eq!(home.heard().await.len(), heard.len());
}

#[tokio::test]
async fn without_the_log_flag_nothing_is_logged_and_a_folder_of_clips_does() {
    let home = Home::new().await;
    home.enrol_all();
    let file = home.path("evening.wav");
    wav(Path::new(&file), half_a_minute());
    let with_notebook = well(sayso(&["listen", "--data", &home.path("notebook"), &file]));
    assert!(home.heard().await.is_empty());
    let clips = home.path("clips");
    std::fs::create_dir(&clips).unwrap();
    for w in 0..WORDS {
        wav(&Path::new(&clips).join(format!("{w:02}_word_{w}.wav")), &say(w, 0));
    }
    let with_folder = well(sayso(&["listen", "--clips", &clips, &file]));
    assert_eq!(lines(&with_folder), lines(&with_notebook));
    assert!(!lines(&with_folder).is_empty());
}

#[tokio::test]
async fn a_stream_is_heard_alike_however_it_is_cut() {
    let home = Home::new().await;
    home.enrol_all();
    let bytes: Vec<u8> = sounds::samples_16(half_a_minute()).into_iter().flat_map(i16::to_le_bytes).collect();
    let data = home.path("notebook");
    let hear = |block: usize| {
        let mut child = Command::new(env!("CARGO_BIN_EXE_sayso"))
            .args(["listen", "--data", &data, "--log", "--started-at", BEGAN])
            .args(["--pcm", "s16le", "--rate", "16000", "--channels", "1", "-"])
            .stdin(Stdio::piped())
            .stdout(Stdio::piped())
            .stderr(Stdio::piped())
            .spawn()
            .unwrap();
        let mut input = child.stdin.take().unwrap();
        for part in bytes.chunks(block) {
            input.write_all(part).unwrap();
        }
        drop(input);
        well(child.wait_with_output().unwrap())
    };
    let odd = lines(&hear(777));
    assert!(odd.len() >= PRESSES.len() - 1, "{odd:?}");
    let logged = home.heard().await.len();
    assert_eq!(logged, odd.len());
    assert_eq!(lines(&hear(1 << 20)), odd);
    assert_eq!(home.heard().await.len(), logged);
}

/// Seven minutes of presses: two pieces, after the first of which a checkpoint is stored.
fn long_evening(home: &Home) -> String {
    let file = home.path("long.wav");
    wav(Path::new(&file), &half_a_minute().repeat(12));
    file
}

fn in_order(heard: Vec<(Event, Press)>) -> Vec<(Moment, String)> {
    let told = |(e, p): (Event, Press)| (e.happened_at, format!("{:.3} {:?}", p.certainty.get(), p.speed));
    let mut all: Vec<_> = heard.into_iter().map(told).collect();
    all.sort();
    all
}

#[tokio::test]
async fn a_run_that_is_killed_goes_on_from_its_checkpoint_with_the_presses_of_one_run() {
    let (whole, halved) = (Home::new().await, Home::new().await);
    whole.enrol_all();
    halved.enrol_all();
    let one = well(whole.log(&[&long_evening(&whole)]));
    assert!(said(&one).contains("% read"), "progress is shown: {}", said(&one));
    let (file, checkpoint) = (long_evening(&halved), halved.path("checkpoint.json"));
    let mut child = Command::new(env!("CARGO_BIN_EXE_sayso"))
        .args(["listen", "--data", &halved.path("notebook"), "--log", "--started-at", BEGAN])
        .args(["--threads", "1", "--checkpoint", &checkpoint, &file])
        .stdin(Stdio::null())
        .stdout(Stdio::piped())
        .stderr(Stdio::piped())
        .spawn()
        .unwrap();
    while !Path::new(&checkpoint).exists() && child.try_wait().unwrap().is_none() {
        std::thread::sleep(std::time::Duration::from_millis(2));
    }
    child.kill().unwrap();
    let first = child.wait_with_output().unwrap();
    assert!(!first.status.success(), "it was to be killed half-way");
    let before = halved.heard().await.len();
    assert!(before > 0 && before < whole.heard().await.len(), "{before} logged before it was killed");
    let other = halved.path("other.wav");
    wav(Path::new(&other), half_a_minute());
    assert!(said(&halved.log(&["--checkpoint", &checkpoint, &other])).contains("belongs to another sound file"));
    assert!(said(&halved.log(&["--checkpoint", &other, &file])).contains("is no checkpoint"));
    let second = well(halved.log(&["--checkpoint", &checkpoint, &file]));
    assert!(said(&second).contains("going on at "), "{}", said(&second));
    assert!(!Path::new(&checkpoint).exists(), "it is removed at the end");
    assert_eq!(in_order(halved.heard().await), in_order(whole.heard().await), "the same presses, none twice");
    let (all, mut parts) = (lines(&one), lines(&first));
    parts.extend(lines(&second));
    // A press may be printed again that was printed but not yet passed by a checkpoint when the run was killed.
    assert!(all.iter().all(|l| parts.contains(l)) && parts.iter().all(|l| all.contains(l)), "{parts:#?}");
}

#[cfg(not(feature = "microphone"))]
#[tokio::test]
async fn without_the_microphone_built_in_it_says_what_to_do() {
    let home = Home::new().await;
    home.enrol_all();
    let data = home.path("notebook");
    for arguments in [
        vec!["listen", "--data", &data, "--microphone"],
        vec!["enrol", "--data", &data, "--word", "word 0", "--record", "2"],
    ] {
        let answer = sayso(&arguments);
        assert!(!answer.status.success());
        for what in ["arecord", "--features microphone"] {
            assert!(said(&answer).contains(what), "{}", said(&answer));
        }
    }
    assert!(said(&sayso(&["enrol", "--data", &data, "--word", "word 0", "--record", "99"])).contains("0.5 to 10"));
    assert!(!sayso(&["listen", "--data", &data, "--microphone", "evening.wav"]).status.success());
}

#[tokio::test]
async fn rubbish_is_told_and_logs_nothing() {
    let home = Home::new().await;
    home.enrol_all();
    let rubbish = home.path("rubbish.wav");
    std::fs::write(&rubbish, [7u8; 5000]).unwrap();
    let empty = home.path("empty.mp3");
    std::fs::write(&empty, []).unwrap();
    for file in [&rubbish, &empty, &home.path("none.wav")] {
        let answer = home.log(&[file]);
        assert!(!answer.status.success() && said(&answer).contains(file.as_str()), "{}", said(&answer));
        assert!(answer.stdout.is_empty());
        let answer = home.enrol("word 0", file);
        assert!(!answer.status.success() && said(&answer).contains(file.as_str()), "{}", said(&answer));
    }
    assert!(home.heard().await.is_empty());
    // A good file beside a bad one is heard all the same.
    let file = home.path("evening.wav");
    wav(Path::new(&file), half_a_minute());
    let both = sayso(&["listen", "--data", &home.path("notebook"), &rubbish, &file]);
    assert!(!both.status.success() && !lines(&both).is_empty());
}

#[tokio::test]
async fn words_are_enrolled_and_heard_in_a_new_folder_before_any_page_was_opened() {
    let dir = tempfile::tempdir().unwrap();
    let path = |name: &str| dir.path().join(name).display().to_string();
    let (data, file) = (path("new"), path("evening.wav"));
    for w in 0..2 {
        let clip = path(&format!("{w}.wav"));
        wav(Path::new(&clip), &say(w, 0));
        let answer = well(sayso(&["enrol", "--data", &data, "--word", &format!("word {w}"), &clip]));
        assert_eq!(said(&answer).contains("A new notebook was begun in"), w == 0, "{}", said(&answer));
        assert!(said(&answer).contains(&format!("“word {w}” is a new word")), "{}", said(&answer));
        assert!(
            !said(&well(sayso(&["enrol", "--data", &data, "--word", &format!("word {w}"), &clip]))).contains("new")
        );
    }
    wav(Path::new(&file), half_a_minute());
    let answer = well(sayso(&["listen", "--data", &data, "--log", "--started-at", BEGAN, &file]));
    assert!(
        !lines(&answer).is_empty() && lines(&answer).iter().all(|p| p["word"] == "word 0" || p["word"] == "word 1")
    );
}

#[tokio::test]
async fn a_file_cut_short_is_refused_with_its_seconds_and_logs_nothing() {
    let home = Home::new().await;
    home.enrol_all();
    let (whole, file, checkpoint) = (home.path("whole.wav"), home.path("evening.wav"), home.path("c.json"));
    wav(Path::new(&whole), half_a_minute());
    let bytes = std::fs::read(&whole).unwrap();
    std::fs::write(&file, &bytes[..44 + 2 * 20 * RATE]).unwrap();
    for more in [vec![file.as_str()], vec!["--checkpoint", &checkpoint, &file]] {
        let answer = home.log(&more);
        assert!(!answer.status.success() && answer.stdout.is_empty());
        assert!(said(&answer).contains("it is cut short: 20.0 s of "), "{}", said(&answer));
    }
    assert!(home.heard().await.is_empty());
    let answer = sayso(&["--language", "de", "listen", "--data", &home.path("notebook"), &file]);
    assert!(!answer.status.success() && said(&answer).contains("evening.wav"), "{}", said(&answer));
}

#[tokio::test]
async fn what_cannot_be_meant_is_told() {
    let home = Home::new().await;
    let file = home.path("clip.wav");
    wav(Path::new(&file), &say(0, 0));
    let data = home.path("notebook");
    let told = |arguments: &[&str], what: &str| {
        let answer = sayso(arguments);
        assert!(!answer.status.success() && said(&answer).contains(what), "{what}: {}", said(&answer));
    };
    told(&["listen", "--data", &data, &file], "no recording is enrolled");
    told(&["enrol", "--data", &data, "--word", "sofa", &file], "no word says \"sofa\"; there are: word 0");
    told(&["listen", "--data", &home.path("nowhere"), &file], "holds no home");
    let bad = home.path("bad.wav");
    std::fs::write(&bad, b"no sound at all").unwrap();
    told(&["enrol", "--data", &home.path("nowhere"), "--word", "sofa", &bad], "bad.wav: it is no sound file");
    assert!(!Path::new(&home.path("nowhere")).exists(), "a mistyped folder is not made");
    well(home.enrol("word 0", &file));
    told(&["listen", "--data", &data, "-"], "--pcm");
    told(&["listen", "--data", &data, "--log", &file], "--started-at");
    told(&["listen", "--data", &data, "--log", "--started-at", "yesterday", &file], "2026-03-01T18:30:00Z");
    told(&["listen", "--data", &data, "--log", "--started-at", BEGAN, &file, &file], "one file at a time");
    let silent = home.path("silent.wav");
    wav(Path::new(&silent), &[0.0; 16_000]);
    told(&["enrol", "--data", &data, "--word", "word 1", &silent], "silent");
    let long = home.path("long.wav");
    wav(Path::new(&long), &half_a_minute()[..6 * RATE]);
    told(&["enrol", "--data", &data, "--word", "word 1", &long], "6.00 s");
}

#[tokio::test]
async fn a_recording_is_checked_against_the_others_and_a_new_one_takes_its_place() {
    let home = Home::new().await;
    home.enrol_all();
    let data = home.path("notebook");
    let same = well(home.enrol("word 0", &home.path("clip0.wav")));
    assert!(String::from_utf8_lossy(&same.stdout).contains("enrolled already"));
    // Another word's sound, much louder than the rest.
    let loud: Vec<f32> = say(1, 0).iter().map(|v| (v * 12.0).clamp(-0.9, 0.9)).collect();
    let file = home.path("loud.wav");
    wav(Path::new(&file), &loud);
    let answer = well(home.enrol("word 0", &file));
    let text = String::from_utf8_lossy(&answer.stdout).into_owned();
    for what in ["Clipped", "louder than the others", "word 1", "5 others", "from another room"] {
        assert!(text.contains(what), "no {what} in {text}");
    }
    let all = sayso(&["clips", "--data", &data]);
    assert_eq!(all.status.code(), Some(2));
    assert_eq!(String::from_utf8_lossy(&all.stdout).matches("Clipped").count(), 1, "the former one is not in use");
    well(home.enrol("word 0", &home.path("clip0.wav")));
    let all = sayso(&["clips", "--data", &data]);
    assert!(!String::from_utf8_lossy(&all.stdout).contains("Clipped"), "the former one is in use again");
}
