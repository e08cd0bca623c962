//! Archives of recordings as the notebook's page saves them, here with sounds of the scene maker, whose truth is known: what
//! is counted is that truth, and an archive that is not whole is refused in words that name the file and what is wrong.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use sayso_lab::hearing::kit::archive::{Kit, hash};
use sayso_lab::hearing::kit::error::KitError;
use sayso_lab::hearing::kit::tally::Scores;
use sayso_lab::hearing::kit::{Order, kit};
use sayso_lab::hearing::scenes::{self, Home, make};
use sayso_lab::hearing::score::{self, score};
use sayso_lab::hearing::truth::Truth;
use sayso_listen::{Clip, wav};
use serde_json::{Value, json};
use std::path::{Path, PathBuf};

const RATE: usize = 16_000;

fn corpus(dir: &Path) -> Truth {
    let order = scenes::Order {
        out: dir.to_owned(),
        seed: 5,
        home: Home::Flat,
        words: 4,
        snr: vec![20.0, 0.0],
        sounds: 1,
        minutes: 1.0,
        empty_minutes: 0.5,
        television_sounds: 0,
        television_minutes: 0.0,
    };
    make(&order).unwrap()
}

fn sound(file: &str, bytes: &[u8]) -> Value {
    json!({ "file": file, "sha256": hash(bytes), "seconds": (bytes.len() - 44) as f64 / 2.0 / RATE as f64 })
}

fn take(file: &str, bytes: &[u8], word: Option<&str>, distance_m: f64, presses_s: &[f64]) -> Value {
    json!({
        "word": word, "distance_m": distance_m, "room": "kitchen", "noise": "quiet", "marked": "countdown",
        "presses_s": presses_s, "sound": sound(file, bytes),
    })
}

fn manifest(buttons: Vec<Value>, takes: Vec<Value>) -> Value {
    json!({
        "kit": 1, "made_by": "sayso 0.1.0", "made_at": "2026-03-01T10:00:00Z",
        "consent": { "text": "All who can be heard agree.", "language": "en", "at": "2026-03-01T09:00:00Z", "publish": false },
        "phone": "small, some years old",
        "microphone": { "echo_cancellation": false, "noise_suppression": false, "auto_gain_control": null },
        "buttons": buttons, "takes": takes,
    })
}

fn packed(files: &[(String, Vec<u8>)]) -> Vec<u8> {
    let mut tar = tar::Builder::new(Vec::new());
    for (name, bytes) in files {
        let mut header = tar::Header::new_ustar();
        header.set_size(bytes.len() as u64);
        header.set_mode(0o644);
        header.set_cksum();
        tar.append_data(&mut header, name, bytes.as_slice()).unwrap();
    }
    tar.into_inner().unwrap()
}

/// Writes an archive: the manifest, then the files.
fn saved(dir: &Path, manifest: &Value, files: &[(String, Vec<u8>)]) -> PathBuf {
    let mut all = vec![("manifest.json".to_owned(), serde_json::to_vec(manifest).unwrap())];
    all.extend(files.iter().cloned());
    let path = dir.join("kit.tar");
    std::fs::write(&path, packed(&all)).unwrap();
    path
}

fn heard(path: &Path) -> Scores {
    kit(&Order { files: vec![path.to_owned()], weights: None, out: None }).unwrap()
}

/// A button of the corpus pressed every six seconds over a quiet hiss: samples, and when.
fn pressed(clip: &Clip, times: usize) -> (Vec<u8>, Vec<f64>) {
    let length = (6 * times + 4) * RATE;
    let mut state = 1_u32;
    let mut x: Vec<f32> = (0..length)
        .map(|_| {
            state = state.wrapping_mul(1_664_525).wrapping_add(1_013_904_223);
            0.0005 * (state as f32 / u32::MAX as f32 - 0.5)
        })
        .collect();
    let at: Vec<f64> = (0..times).map(|k| 2.0 + 6.0 * k as f64).collect();
    for onset in &at {
        for (o, v) in x[(onset * RATE as f64) as usize..].iter_mut().zip(clip.samples()) {
            *o += 0.3 * v;
        }
    }
    (wav(x.iter().map(|v| (v.clamp(-1.0, 1.0) * 32_767.0) as i16).collect::<Vec<_>>().into_iter(), RATE as u32), at)
}

struct Made {
    dir: tempfile::TempDir,
    truth: Truth,
    buttons: Vec<Value>,
    clips: Vec<(String, Vec<u8>)>,
}

impl Made {
    fn new() -> Self {
        let dir = tempfile::tempdir().unwrap();
        let truth = corpus(dir.path());
        let clips: Vec<(String, Vec<u8>)> = truth
            .clips
            .iter()
            .enumerate()
            .map(|(i, c)| (format!("clip-{}.wav", i + 1), std::fs::read(dir.path().join(&c.file)).unwrap()))
            .collect();
        let buttons = truth
            .clips
            .iter()
            .zip(&clips)
            .map(|(c, (file, bytes))| json!({ "word": c.word, "about": "round, large", "clip": sound(file, bytes) }))
            .collect();
        Self { dir, truth, buttons, clips }
    }

    fn clip(&self, i: usize) -> Clip {
        Clip::from_bytes(&self.truth.clips[i].word, self.clips[i].1.clone()).unwrap()
    }
}

/// Presses at known moments, some marked late, one marked that was none, one that nobody marked.
#[test]
fn what_is_counted_is_what_is_known() {
    let made = Made::new();
    let word = made.truth.clips[0].word.clone();
    let (near, at) = pressed(&made.clip(0), 5);
    let (far, far_at) = pressed(&made.clip(0), 4);
    let late: Vec<f64> = at.iter().map(|s| s + 0.4).collect();
    // The last press of the far take is not marked, and where nothing sounds a mark stands.
    let marked = [far_at[0], far_at[1], far_at[2], far_at[2] + 3.0];
    let mut files = made.clips.clone();
    files.extend([("take-1.wav".to_owned(), near.clone()), ("take-2.wav".to_owned(), far.clone())]);
    let takes =
        vec![take("take-1.wav", &near, Some(&word), 0.5, &late), take("take-2.wav", &far, Some(&word), 4.0, &marked)];
    let path = saved(made.dir.path(), &manifest(made.buttons.clone(), takes), &files);
    let scores = heard(&path);
    let (near, far) = (scores.of(|t| t.distance_mm == 500), scores.of(|t| t.distance_mm == 4000));
    assert_eq!((near.presses, near.heard, near.wrong), (5, 5, 0));
    assert_eq!((far.presses, far.heard, far.wrong), (4, 3, 1));
    assert!(near.from_mark_s.iter().all(|s| (s + 0.4).abs() < 0.02), "{near:?}");
    assert_eq!((near.from_rise_s.len(), far.from_rise_s.len()), (5, 3));
    assert!(scores.all().from_rise_s.iter().all(|s| s.abs() < 0.02), "{scores:?}");
    let said = scores.tables();
    assert!(said.contains("5 of 5: 1.000 (0.478-1.000)") && said.contains("3 of 4: 0.750 (0.194-0.994)"), "{said}");
    assert!(said.contains("| 4 m") && said.contains("is not to be published"), "{said}");
}

/// Scenes of the maker as takes: the same presses are heard as the corpus's own score counts, none without presses.
#[test]
fn scenes_go_through_with_the_figures_of_their_score() {
    let made = Made::new();
    let corpora = vec![made.dir.path().to_owned()];
    let known = score(&score::Order { corpora, heard: None, weights: None, speeds_known: false, out: None }).unwrap();
    let mut files = made.clips.clone();
    let mut takes = Vec::new();
    for (i, s) in made.truth.sounds.iter().enumerate() {
        // A take is of one button; those of others in the scene are not marked, and count as not marked.
        let bytes = std::fs::read(made.dir.path().join(&s.file)).unwrap();
        let file = format!("take-{}.wav", i + 1);
        let word = s.presses.first().map(|p| p.word.as_str());
        let at: Vec<f64> = s.presses.iter().filter(|p| Some(p.word.as_str()) == word).map(|p| p.onset_s).collect();
        takes.push(take(&file, &bytes, word, if s.snr_db == Some(20.0) { 0.5 } else { 4.0 }, &at));
        files.push((file, bytes));
    }
    let scores = heard(&saved(made.dir.path(), &manifest(made.buttons.clone(), takes), &files));
    let all = scores.all();
    assert_eq!(all.heard + all.wrong, known.busy.right + known.busy.wrong + known.empty.wrong);
    assert_eq!(scores.of(|t| t.tally.presses == 0).wrong, known.empty.wrong);
    let near = scores.of(|t| t.distance_mm == 500);
    assert!(near.heard > 0 && near.from_mark_s.iter().all(|s| s.abs() < 0.1), "{near:?}");
}

#[test]
fn damaged_archives_are_refused_in_words() {
    let made = Made::new();
    let word = made.truth.clips[0].word.clone();
    let (bytes, at) = pressed(&made.clip(0), 1);
    let takes = vec![take("take-1.wav", &bytes, Some(&word), 1.0, &at)];
    let good = manifest(made.buttons[..1].to_vec(), takes);
    let files = vec![made.clips[0].clone(), ("take-1.wav".to_owned(), bytes)];
    let path = saved(made.dir.path(), &good, &files);
    let whole = std::fs::read(&path).unwrap();
    let refused = |bytes: &[u8]| Kit::from_bytes(Path::new("kit.tar"), bytes).unwrap_err();
    assert!(Kit::from_bytes(Path::new("kit.tar"), &whole).is_ok());

    // Cut short anywhere, or no archive at all.
    for keep in [0, 300, 700, whole.len() / 2, whole.len() - 1024, whole.len() - 1] {
        let why = refused(&whole[..keep]);
        assert!(matches!(why, KitError::Archive { .. }), "{keep}: {why}");
        assert!(why.to_string().starts_with("kit.tar: no whole tar archive"), "{why}");
    }
    // One bit of a sound.
    let mut changed = whole.clone();
    let middle = changed.len() - 10_000;
    changed[middle] ^= 1;
    let why = refused(&changed);
    assert!(matches!(&why, KitError::Changed { entry, .. } if entry == "take-1.wav"), "{why}");
    assert!(why.to_string().contains("take-1.wav has changed since it was recorded"), "{why}");
    // A file missing, one too many, no manifest.
    let of = |manifest: &Value, files: &[(String, Vec<u8>)]| {
        let path = saved(made.dir.path(), manifest, files);
        Kit::read(&path).unwrap_err().to_string()
    };
    assert!(of(&good, &files[..1]).contains("take-1.wav is missing, which its manifest names"));
    let more = [files.clone(), vec![("note.txt".to_owned(), b"hello".to_vec())]].concat();
    assert!(of(&good, &more).contains("note.txt is in the archive, but its manifest does not name it"));
    assert!(refused(&packed(&files)).to_string().contains("manifest.json is missing, which every kit has"));
    // Values that cannot be: each names its field and what would be right.
    let edits: [(&str, Value, &str); 8] = [
        ("/kit", json!(2), "a kit of version 2; this laboratory reads version 1"),
        ("/kit", json!("one"), "manifest.json, kit: the version of the kit is missing"),
        ("/consent/text", json!(" "), "consent.text is empty"),
        ("/buttons", json!([]), "buttons is empty; it should be one button or more"),
        ("/takes/0/word", json!("walk"), "takes[0].word is \"walk\"; it should be a word of one of the buttons"),
        ("/takes/0/presses_s", json!([99.0]), "takes[0].presses_s is 99; it should be seconds within the sound"),
        ("/takes/0/distance_m", json!(0), "takes[0].distance_m is 0; it should be metres"),
        ("/takes/0/marked", json!("guess"), "takes[0].marked: unknown variant"),
    ];
    for (field, value, words) in edits {
        let mut wrong = good.clone();
        *wrong.pointer_mut(field).unwrap() = value;
        let said = of(&wrong, &files);
        assert!(said.contains(words) && said.contains("kit.tar: "), "{field}: {said}");
    }
    let mut without = good.clone();
    without.as_object_mut().unwrap().remove("consent");
    assert!(of(&without, &files).contains("missing field `consent`"));
}
