//! Listens to a corpus with known truth and writes what it hears, one JSON object a line;
//! names the buttons whose battery seems tired, and the one that is, on the standard error.
//!
//! `hear CORPUS OUT.jsonl [--live] [--glimpses FILE] [--threads N]`; CORPUS holds truth.json, clips/ and scenes/. With
//! `--threads` each scene is heard as a file, in pieces side by side; else as a stream.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use sayso_listen::{Clip, Config, Detector, Enrolled, FileHearing, Pace, decode_file, hear_file, tired_batteries};
use std::io::Write;
use std::path::PathBuf;
use std::sync::Arc;

fn main() {
    let args: Vec<String> = std::env::args().skip(1).collect();
    let corpus = PathBuf::from(&args[0]);
    let mut out = std::io::BufWriter::new(std::fs::File::create(&args[1]).expect("output"));
    let pace = if args.iter().any(|a| a == "--live") { Pace::Live } else { Pace::File };
    let threads = args.iter().position(|a| a == "--threads").map(|i| args[i + 1].parse().expect("a number"));
    let glimpses = args.iter().position(|a| a == "--glimpses").map(|i| args[i + 1].clone());
    let mut glimpse_file = glimpses.map(|f| std::io::BufWriter::new(std::fs::File::create(f).expect("glimpses")));
    let truth: serde_json::Value =
        serde_json::from_reader(std::fs::File::open(corpus.join("truth.json")).expect("truth")).expect("json");
    let clips: Vec<Clip> = truth["clips"]
        .as_array()
        .unwrap()
        .iter()
        .map(|c| Clip::from_file(c["word"].as_str().unwrap(), &corpus.join(c["file"].as_str().unwrap())).expect("clip"))
        .collect();
    let start = std::time::Instant::now();
    let enrolled = Arc::new(Enrolled::new(&clips, pace).expect("enrol"));
    eprintln!("enrolled in {:.2} s", start.elapsed().as_secs_f64());
    let (start, mut seconds) = (std::time::Instant::now(), 0.0);
    for scene in truth["scenes"].as_array().unwrap() {
        let name = scene["scene"].as_str().unwrap();
        let path = corpus.join(scene["file"].as_str().unwrap());
        let (heard, seen) = if let Some(threads) = threads {
            let how = FileHearing { threads, ..FileHearing::default() };
            let (heard, info) = hear_file(&path, &enrolled, &how, |_| true).expect("scene");
            seconds += info.frames as f64 / f64::from(info.rate);
            (heard, Vec::new())
        } else {
            let (mut ear, mut heard) = (None, Vec::new());
            decode_file(&path, |b| {
                let ear = ear.get_or_insert_with(|| {
                    let mut config = Config::new(b.rate, b.channels, pace);
                    config.keep_candidates = glimpse_file.is_some();
                    Detector::with(Arc::clone(&enrolled), config).expect("ear")
                });
                heard.extend(ear.push(b.samples));
                true
            })
            .expect("scene");
            let ear = ear.expect("some sound");
            seconds += ear.position_s();
            let (last, seen) = ear.finish();
            heard.extend(last);
            (heard, seen)
        };
        let tired: Vec<String> = tired_batteries(&heard).into_iter().map(|t| t.word).collect();
        eprintln!("{name}: tired {tired:?}, in truth {}", scene["tired"]);
        for h in heard {
            let line = serde_json::json!({"scene": name, "word": h.word, "onset_s": h.onset_s, "confidence": h.confidence,
                "speed": h.speed, "level_db": h.level_db, "share": h.share});
            writeln!(out, "{line}").unwrap();
        }
        if let Some(f) = &mut glimpse_file {
            for g in seen {
                let line = serde_json::json!({"scene": name, "word": enrolled.words()[g.word], "onset_s": g.onset_s,
                    "speed": g.speed, "z": g.first_look, "l": g.log_odds, "share": g.share, "f": g.figures});
                writeln!(f, "{line}").unwrap();
            }
        }
    }
    let took = start.elapsed().as_secs_f64();
    eprintln!("{seconds:.0} s of sound in {took:.2} s: {:.0} times real time", seconds / took);
}
