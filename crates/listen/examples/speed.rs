//! How quickly a file is heard, and how much memory that takes; beside it, the plain way in SciPy.
//!
//! `speed [--minutes 60] [--python PYTHON] [--keep FOLDER]`. Makes a busy home by rule (a press or somebody talking every
//! four seconds, on average), hears it as a file with 12 and 60 words on one thread and with 12 on all, each in a process
//! of its own, and prints hours of sound a minute of processor time (or of waiting, for all threads together). With `--python` also
//! runs `benches/listen/fftconvolve.py` over the first two minutes. Processor time and memory are read from /proc, so
//! only on Linux. With `--keep` the sound stays, as a corpus for `hear`.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "../tests/common/mod.rs"]
mod common;

use common::{Chance, RATE, add, bed, replay, room, say};
use sayso_listen::{Clip, Enrolled, FileHearing, Pace, hear_file};
use std::path::Path;
use std::process::Command;
use std::sync::Arc;
use std::time::Instant;

fn wav(path: &Path, samples: &[f32]) {
    let data: Vec<u8> = samples.iter().flat_map(|v| ((v.clamp(-1.0, 1.0) * 32767.0) as i16).to_le_bytes()).collect();
    let (rate, size) = (RATE as u32, data.len() as u32);
    let mut out = [&b"RIFF"[..], &(36 + size).to_le_bytes(), b"WAVEfmt ", &16u32.to_le_bytes()].concat();
    out.extend([1u16, 1].iter().flat_map(|v| v.to_le_bytes()));
    out.extend([rate, 2 * rate].iter().flat_map(|v| v.to_le_bytes()));
    out.extend([2u16, 16].iter().flat_map(|v| v.to_le_bytes()));
    out.extend([&b"data"[..], &size.to_le_bytes(), &data].concat());
    std::fs::write(path, out).expect("room for the sound");
}

/// A minute of a busy home: presses of the first twelve words, people saying them and saying other things.
fn minute(n: u64) -> Vec<f32> {
    let mut chance = Chance::new(n + 1);
    let mut sound = bed(60, 0.004, n);
    for i in 0..15u64 {
        let word = ((chance.pm() + 1.0) * 6.0) as u64 % 12;
        let said = match i % 3 {
            0 => replay(&say(word, 0), f64::from(chance.between(0.97, 1.03))),
            1 => say(word, 2 + n * 15 + i),
            _ => (0..3).flat_map(|k| say(100 + n * 45 + 3 * i + k, 1)).collect(),
        };
        let at = f64::from(chance.between(0.0, 57.0 - said.len() as f32 / RATE as f32));
        add(&mut sound, &room(&said, 0.35, n + 9), at, chance.between(0.05, 0.3));
    }
    sound
}

fn proc(file: &str, key: &str) -> String {
    let text = std::fs::read_to_string(file).expect("/proc");
    text.lines().find_map(|l| l.strip_prefix(key)).unwrap_or_default().trim().to_owned()
}

/// Hears one file and says: seconds of sound, of waiting and of processor time, and the peak of memory in MB.
fn one(words: u64, threads: usize, file: &Path) {
    let clips: Vec<Clip> =
        (0..words).map(|w| Clip::from_samples(format!("word {w}"), say(w, 0), RATE as u32).unwrap()).collect();
    let start = Instant::now();
    let enrolled = Arc::new(Enrolled::new(&clips, Pace::File).unwrap());
    let how = FileHearing { threads, ..FileHearing::default() };
    let (heard, info) = hear_file(file, &enrolled, &how, |_| true).unwrap();
    let waited = start.elapsed().as_secs_f64();
    let stat = proc("/proc/self/stat", "");
    let ticks: Vec<f64> = stat.rsplit(')').next().unwrap().split(' ').filter_map(|v| v.parse().ok()).collect();
    // Fields 14 and 15, in hundredths of a second; the third field, a letter, is not among the numbers.
    let processor = (ticks[10] + ticks[11]) / 100.0;
    let peak: f64 = proc("/proc/self/status", "VmHWM:").split(' ').next().unwrap().parse().unwrap();
    let seconds = info.frames as f64 / f64::from(info.rate);
    let times = seconds / processor;
    println!(
        "{words} words, {threads} thread(s): {seconds:.0} s of sound in {processor:.2} s of processor time ({waited:.2} s \
         of waiting), {times:.0} times real time on one core, {:.1} hours a minute on one core, {:.1} as waited for, \
         peak {:.0} MB, {} presses heard",
        times / 60.0,
        seconds / waited / 60.0,
        peak / 1024.0,
        heard.len(),
    );
}

fn main() {
    let args: Vec<String> = std::env::args().skip(1).collect();
    let value = |name: &str| args.iter().position(|a| a == name).map(|i| args[i + 1].clone());
    if let Some(i) = args.iter().position(|a| a == "--one") {
        return one(args[i + 1].parse().unwrap(), args[i + 2].parse().unwrap(), Path::new(&args[i + 3]));
    }
    let minutes: u64 = value("--minutes").map_or(60, |v| v.parse().expect("a number"));
    let kept = value("--keep").map(std::path::PathBuf::from);
    let passing = std::env::temp_dir().join(format!("sayso-speed-{}", std::process::id()));
    let folder = kept.clone().unwrap_or(passing);
    std::fs::create_dir_all(&folder).expect("a temporary folder");
    let sound: Vec<f32> = (0..minutes).flat_map(minute).collect();
    wav(&folder.join("sound.wav"), &sound);
    let mut clips = Vec::new();
    for w in 0..12u64 {
        wav(&folder.join(format!("{w}.wav")), &say(w, 0));
        clips.push(serde_json::json!({"word": format!("word {w}"), "file": format!("{w}.wav")}));
    }
    let truth = serde_json::json!({"clips": clips, "sounds": [{"sound": "sound", "file": "sound.wav"}]});
    std::fs::write(folder.join("truth.json"), truth.to_string()).expect("room for the truth");
    let all = std::thread::available_parallelism().map_or(1, usize::from);
    for (words, threads) in [(12, 1), (60, 1), (12, all)] {
        let done = Command::new(std::env::current_exe().unwrap())
            .args(["--one", &words.to_string(), &threads.to_string()])
            .arg(folder.join("sound.wav"))
            .status();
        assert!(done.expect("this program again").success());
    }
    if let Some(python) = value("--python") {
        let script = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../benches/listen/fftconvolve.py");
        let done = Command::new(python).arg(script).arg(&folder).status();
        assert!(done.expect("python").success());
    }
    if kept.is_none() {
        std::fs::remove_dir_all(&folder).expect("clearing up");
    }
}
