//! What cannot be heard or meant is told, and nothing is logged.

use crate::home::{BEGAN, Home, half_a_minute, lines, said, sayso, wav, well};
use crate::sounds::{RATE, say};
use std::path::Path;

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
