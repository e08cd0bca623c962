//! The hearing's laboratory on small corpora: the same seed makes the same sounds, their truth is right, scores count what
//! they should, and weights can be learned and heard with.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use sayso_lab::hearing::boards::Range;
use sayso_lab::hearing::fit::{self, fit};
use sayso_lab::hearing::quiet::{self, hours};
use sayso_lab::hearing::real;
use sayso_lab::hearing::scenes::{self, Home, make};
use sayso_lab::hearing::score::{self, Scores, matched, score};
use sayso_lab::hearing::speeds::{self, speeds};
use sayso_lab::hearing::truth::{Live, Press, SoundFile, Truth};
use sayso_listen::{Detection, SHORTNESS, Weights};
use std::path::Path;

fn order(out: &Path, seed: u64, home: Home) -> scenes::Order {
    scenes::Order {
        out: out.to_owned(),
        seed,
        home,
        words: 4,
        snr: vec![20.0],
        sounds: 1,
        minutes: 1.0,
        empty_minutes: 0.5,
        television_sounds: 0,
        television_minutes: 0.0,
    }
}

fn bytes(corpus: &Path) -> Vec<Vec<u8>> {
    let truth = Truth::read(corpus).unwrap();
    let files = truth.clips.iter().map(|c| &c.file).chain(truth.sounds.iter().map(|s| &s.file));
    files.map(|f| std::fs::read(corpus.join(f)).unwrap()).collect()
}

#[test]
fn one_seed_one_corpus_another_seed_another() {
    let dirs: Vec<tempfile::TempDir> = (0..3).map(|_| tempfile::tempdir().unwrap()).collect();
    let truths: Vec<Truth> =
        dirs.iter().zip([3, 3, 4]).map(|(d, seed)| make(&order(d.path(), seed, Home::House)).unwrap()).collect();
    assert_eq!(truths[0], truths[1]);
    assert_eq!(Truth::read(dirs[0].path()).unwrap(), truths[0]);
    assert_eq!(bytes(dirs[0].path()), bytes(dirs[1].path()));
    assert_ne!(bytes(dirs[0].path()), bytes(dirs[2].path()));
}

/// Made presses are heard where the truth says, so the truth and the detector agree; weights learned from the corpus are
/// written with its hash, read again, and hear it too.
#[test]
fn truth_is_heard_and_weights_are_learned_from_it() {
    let dir = tempfile::tempdir().unwrap();
    let truth = make(&order(dir.path(), 5, Home::Flat)).unwrap();
    let busy = &truth.sounds[0];
    assert!(busy.presses.len() >= 6 && !busy.live.is_empty(), "{busy:?}");
    assert!(busy.presses.iter().all(|p| (0.94..=1.04).contains(&p.speed) && p.onset_s < busy.seconds));
    assert!(truth.sounds[1].snr_db.is_none() && truth.sounds[1].presses.is_empty());
    let corpora = vec![dir.path().to_owned()];
    let heard =
        score(&score::Order { corpora: corpora.clone(), heard: None, weights: None, speeds_known: false, out: None })
            .unwrap();
    assert!(heard.busy.recall() > 0.6, "{}", heard.tables());
    assert!(heard.busy.onset_s.iter().all(|e| *e < 0.05) && heard.busy.speed.iter().all(|e| *e < 0.01));

    let out = dir.path().join("weights.json");
    let date = "2026-02-03".parse().unwrap();
    let order = fit::Order {
        corpora: corpora.clone(),
        ridge: vec![1.0],
        caution: 1.0,
        caution_short: 0.0,
        presses_a_day: 8.0,
        date,
        out: out.clone(),
    };
    let learned = fit(&order).unwrap();
    // Other weights than the shipped ones hear the candidates: the same is learned.
    assert_ne!(learned.cascade, Weights::shipped().cascade);
    assert_eq!(fit::fit_heard_with(&order, &learned).unwrap(), learned);
    assert_eq!(Weights::from_json(&std::fs::read_to_string(&out).unwrap()).unwrap(), learned);
    // Caution lowers the constant, and with the other one the weight of a short clip, and nothing else.
    let cautious = fit(&fit::Order { caution: 5.0, caution_short: 3.0, ..order.clone() }).unwrap();
    let mut lowered = learned.classifier.clone();
    lowered.constant -= 5f64.ln();
    lowered.figures[SHORTNESS] -= 3.0;
    assert_eq!((cautious.classifier, &cautious.cascade), (lowered, &learned.cascade));
    std::fs::write(&out, serde_json::to_string(&learned).unwrap()).unwrap();
    assert_eq!(
        (learned.provenance.seeds.as_slice(), learned.provenance.date.as_deref()),
        (&[5][..], Some("2026-02-03"))
    );
    assert_eq!(learned.provenance.corpus_sha256.as_ref().map(String::len), Some(64));
    let again =
        score(&score::Order { corpora, heard: None, weights: Some(out), speeds_known: false, out: None }).unwrap();
    assert!(again.busy.right > 0, "{}", again.tables());
}

fn press(word: &str, onset_s: f64) -> Press {
    Press { word: word.into(), onset_s, speed: 1.0, cut_s: None }
}

fn heard(word: &str, onset_s: f64) -> Detection {
    Detection { word: word.into(), clip: 0, onset_s, confidence: 0.9, speed: 1.001, level_db: -20.0, share: 1.0 }
}

fn sound(snr_db: Option<f64>, presses: Vec<Press>) -> SoundFile {
    let live = vec![Live { word: "ball".into(), onset_s: 50.0, source: "person".into() }];
    SoundFile { sound: "a".into(), file: "a.wav".into(), snr_db, seconds: 3600.0, tired: None, presses, live }
}

#[test]
fn scores_count_by_hand() {
    let truth = sound(Some(10.0), (0..10).map(|i| press("ball", 3.0 * f64::from(i))).collect());
    let right: Vec<Detection> = (0..10).map(|i| heard("ball", 3.0 * f64::from(i) + 0.01)).collect();
    let scored = |heard: &[Detection]| {
        let mut s = Scores::default();
        s.add(&truth, heard);
        (s.busy.right, s.busy.wrong, s.busy.live_taken, s.busy.f1())
    };
    assert_eq!(scored(&right), (10, 0, 0, 1.0));
    assert_eq!(scored(&[]), (0, 0, 0, 0.0));
    // Too late, another word, each press twice, live speech.
    let late: Vec<Detection> = right.iter().map(|h| heard("ball", h.onset_s + 0.2)).collect();
    assert_eq!(scored(&late), (0, 10, 0, 0.0));
    let other: Vec<Detection> = right.iter().map(|h| heard("walk", h.onset_s)).collect();
    assert_eq!(scored(&other).0, 0);
    assert_eq!(scored(&[right.clone(), right.clone()].concat()), (10, 10, 0, 20.0 / 30.0));
    assert_eq!(scored(&[right, vec![heard("ball", 50.3)]].concat()), (10, 1, 1, 20.0 / 21.0));
    // Two presses close together: each detection goes to the nearer one.
    let close = sound(Some(0.0), vec![press("ball", 1.0), press("ball", 1.2)]);
    assert_eq!(matched(&close, &[heard("ball", 1.19), heard("ball", 1.09)]).press, [Some(1), Some(0)]);
}

#[test]
fn false_presses_an_hour_have_the_exact_bound() {
    let mut s = Scores::default();
    assert_eq!(s.false_an_hour(), None);
    s.add(&sound(None, Vec::new()), &[]);
    // No event in one hour: the bound is -ln 0.05.
    let (rate, bound) = s.false_an_hour().unwrap();
    assert!(rate == 0.0 && (bound - 2.9957).abs() < 1e-3, "{bound}");
    s.add(&sound(None, Vec::new()), &[heard("ball", 9.0)]);
    // One event in two hours: 4.744 / 2 (Garwood 1936).
    assert!((s.false_an_hour().unwrap().1 - 4.7439 / 2.0).abs() < 1e-3);
}

#[test]
fn corpora_and_detections_that_are_none_are_refused_in_words() {
    let dir = tempfile::tempdir().unwrap();
    let asked = |heard| score::Order {
        corpora: vec![dir.path().to_owned()],
        heard,
        weights: None,
        speeds_known: false,
        out: None,
    };
    assert!(score(&asked(None)).unwrap_err().to_string().contains("truth.json"));
    std::fs::write(dir.path().join("truth.json"), "{\"seed\":1}").unwrap();
    assert!(score(&asked(None)).unwrap_err().to_string().contains("missing field"));
    // The older names of fields are read.
    let text = "{\"sample_rate\":16000,\"seed\":1,\"clips\":[],\"scenes\":[{\"scene\":\"a\",\"file\":\"a.wav\",\"snr_db\":5,\
                \"seconds\":9,\"presses\":[],\"live\":[]}]}";
    std::fs::write(dir.path().join("truth.json"), text).unwrap();
    let lines = dir.path().join("heard.jsonl");
    std::fs::write(&lines, "{\"scene\":\"a\",\"word\":\"ball\",\"onset_s\":1,\"confidence\":0.9,\"speed\":1}\n")
        .unwrap();
    assert_eq!(score(&asked(Some(lines.clone()))).unwrap().busy.wrong, 1);
    std::fs::write(&lines, "{\"sound\":\"b\",\"word\":\"ball\",\"onset_s\":1,\"confidence\":0.9,\"speed\":1}\n")
        .unwrap();
    assert!(score(&asked(Some(lines.clone()))).unwrap_err().to_string().contains("no sound \"b\""));
    std::fs::write(&lines, "\n{\"sound\":3}\n").unwrap();
    assert!(score(&asked(Some(lines))).unwrap_err().to_string().contains("line 2"));
}

#[test]
fn quiet_hours_go_on_where_they_were_stopped() {
    let dir = tempfile::tempdir().unwrap();
    let order = |name: &str, blocks: f64| quiet::Order {
        hours: blocks * 0.5 / 60.0,
        skip: 0,
        block_minutes: 0.5,
        seed: 3,
        speeds: Range::Wide,
        kept: dir.path().join(name),
        weights: None,
        out: None,
    };
    let whole = hours(&order("whole.json", 3.0)).unwrap();
    hours(&order("parts.json", 1.0)).unwrap();
    assert_eq!(hours(&order("parts.json", 3.0)).unwrap(), whole);
    let bytes = |name: &str| std::fs::read(dir.path().join(name)).unwrap();
    assert_eq!(bytes("parts.json"), bytes("whole.json"));
    // Some blocks alone are heard as among all.
    hours(&quiet::Order { skip: 2, ..order("third.json", 1.0) }).unwrap();
    let blocks = |name: &str| {
        let kept: serde_json::Value = serde_json::from_slice(&bytes(name)).unwrap();
        kept["blocks"].as_array().unwrap().clone()
    };
    assert_eq!(blocks("third.json"), blocks("whole.json")[2..]);
    // What is there already is not heard again, and another run's file is refused.
    assert_eq!(hours(&order("whole.json", 3.0)).unwrap(), whole);
    let other = quiet::Order { seed: 4, ..order("whole.json", 3.0) };
    let why = hours(&other).unwrap_err().to_string();
    assert!(why.contains("seed 3") && why.contains("name another file for seed 4"), "{why}");
    std::fs::write(dir.path().join("odd.json"), "{}").unwrap();
    assert!(hours(&order("odd.json", 3.0)).unwrap_err().to_string().contains("missing field"));
}

#[test]
fn a_board_eight_per_cent_slow_is_heard_wide_and_not_as_usual() {
    let order = speeds::Order { seed: 2, words: 3, snr: 20.0, minutes: 0.5, at: vec![0.92] };
    let table = speeds(&order).unwrap();
    let row: Vec<&str> = table.trim_end().lines().last().unwrap().split('|').map(str::trim).collect();
    let heard = |cell: &str| cell.split(' ').next().unwrap().parse::<usize>().unwrap();
    assert_eq!(row[1], "0.92");
    assert!(heard(row[2]) >= 4 && heard(row[3]) == 0 && heard(row[4]) >= 4, "{table}");
}

/// Sound files of others: hours are those of the files, what cannot be read is counted and not heard, and a button's own
/// recording among them would be told.
#[test]
fn files_of_others_are_heard_by_every_board() {
    let dir = tempfile::tempdir().unwrap();
    let order = |folder: &Path| real::Order {
        folders: vec![folder.to_owned()],
        seed: 5,
        speeds: Range::Usual,
        weights: None,
        out: Some(dir.path().join("table.md")),
    };
    let none = dir.path().join("none");
    std::fs::create_dir_all(&none).unwrap();
    assert!(real::hours(&order(&none)).unwrap_err().to_string().contains("holds no sound file"));

    // The scenes' board of the same seed is another than those that listen: nothing of theirs is pressed in it.
    let corpus = dir.path().join("corpus");
    let truth = make(&self::order(&corpus, 77, Home::House)).unwrap();
    std::fs::write(corpus.join("broken.wav"), "no sound").unwrap();
    let table = real::hours(&order(&corpus)).unwrap();
    assert_eq!(std::fs::read_to_string(dir.path().join("table.md")).unwrap(), table);
    let cells: Vec<&str> = table.trim_end().lines().last().unwrap().split('|').map(str::trim).collect();
    let files = truth.sounds.len() + truth.clips.len() + 1;
    assert_eq!((cells[1], cells[2], cells[3]), ("all", files.to_string().as_str(), "1"), "{table}");
    let seconds: f64 = truth.sounds.iter().map(|s| s.seconds).sum();
    assert!(cells[4].parse::<f64>().unwrap() >= (seconds / 36.0).floor() / 100.0, "{table}");
    assert_eq!(cells[5], "0 / 0 / 0", "{table}");

    // The very buttons of the board of four: their presses are told, and by that board alone.
    let own = dir.path().join("own");
    make(&self::order(&own, 1_005, Home::Flat)).unwrap();
    let table = real::hours(&order(&own)).unwrap();
    let cells: Vec<&str> = table.trim_end().lines().last().unwrap().split('|').map(str::trim).collect();
    assert!(!cells[5].starts_with("0 ") && cells[5].ends_with(" / 0 / 0"), "{table}");
}
