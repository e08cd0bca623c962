//! Sound files and streams: presses are printed, logged once, and whole after a kill.

use crate::home::{BEGAN, Home, WORDS, half_a_minute, lines, said, sayso, wav, well};
use crate::sounds::{self, PRESSES, say, scene};
use sayso_model::{Event, Moment, Press, PressedBy, Source};
use std::io::Write;
use std::path::Path;
use std::process::{Command, Stdio};

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
