//! How well presses are heard: detections against the truth.

use super::hear;
use super::truth::{SoundFile, Truth};
use crate::error::{LabError, at, told};
use crate::experiments::line;
use crate::report::figure::table;
use sayso_listen::{Detection, tired_batteries};
use sayso_methods::stats::{Count, Level, Proportion};
use serde::Deserialize;
use std::collections::BTreeMap;
use std::path::{Path, PathBuf};

/// A press is right when its word matches within so many seconds.
pub const TOLERANCE_S: f64 = 0.15;
/// A wrong press is put down to live speech when the word was said within so many seconds of it.
const SAID_S: f64 = 0.5;

/// What to score.
#[derive(Debug, Clone, clap::Args)]
pub struct Order {
    /// Corpora, as `scenes` makes them.
    #[arg(required = true, value_name = "CORPUS")]
    pub corpora: Vec<PathBuf>,
    /// Detections to score, one JSON object a line with `sound`, `word`, `onset_s`, `confidence` and `speed`, as
    /// `sayso listen` prints them; if left out, the corpora are heard.
    #[arg(long, value_name = "FILE")]
    pub heard: Option<PathBuf>,
    /// Weights to hear with; the shipped ones, if left out.
    #[arg(long, value_name = "FILE", conflicts_with = "heard")]
    pub weights: Option<PathBuf>,
    /// Listen for each button around the speeds it has in each sound, as after long acquaintance, instead of the usual ones.
    #[arg(long, conflicts_with = "heard")]
    pub speeds_known: bool,
    /// File for the tables as well.
    #[arg(long, value_name = "FILE")]
    pub out: Option<PathBuf>,
}

/// A detection as it is printed.
#[derive(Debug, Clone, Deserialize)]
struct Line {
    #[serde(alias = "scene")]
    sound: String,
    word: String,
    onset_s: f64,
    confidence: f64,
    speed: f64,
}

/// What became of one sound's detections.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct Matched {
    /// Per detection: the press it is, if any, as an index of the truth's.
    pub press: Vec<Option<usize>>,
    /// Utterances of live speech taken for a press of their word.
    pub live_taken: usize,
}

/// Matches detections with presses (word, seconds) no further away than `within_s`, nearest first, each press and each
/// detection once. Per detection: the press it is, if any.
pub(crate) fn paired(heard: &[Detection], presses: &[(&str, f64)], within_s: f64) -> Vec<Option<usize>> {
    let mut pairs: Vec<(f64, usize, usize)> = Vec::new();
    for (i, h) in heard.iter().enumerate() {
        for (j, (word, at)) in presses.iter().enumerate() {
            let apart = (h.onset_s - at).abs();
            if h.word == *word && apart <= within_s {
                pairs.push((apart, i, j));
            }
        }
    }
    pairs.sort_by(|a, b| a.0.total_cmp(&b.0).then(a.1.cmp(&b.1)));
    let mut press = vec![None; heard.len()];
    let mut found = vec![false; presses.len()];
    for (_, i, j) in pairs {
        if press[i].is_none() && !found[j] {
            (press[i], found[j]) = (Some(j), true);
        }
    }
    press
}

/// Matches detections with a sound's presses.
pub fn matched(sound: &SoundFile, heard: &[Detection]) -> Matched {
    let presses: Vec<(&str, f64)> = sound.presses.iter().map(|p| (p.word.as_str(), p.onset_s)).collect();
    let press = paired(heard, &presses, TOLERANCE_S);
    let wrong = |word: &str, at: f64| {
        let near =
            |(i, h): (usize, &Detection)| press[i].is_none() && h.word == word && (h.onset_s - at).abs() <= SAID_S;
        heard.iter().enumerate().any(near)
    };
    let live_taken = sound.live.iter().filter(|l| wrong(&l.word, l.onset_s)).count();
    Matched { press, live_taken }
}

/// Sums over sounds.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct Tally {
    /// Sounds.
    pub sounds: usize,
    /// Hours.
    pub hours: f64,
    /// Presses in truth, those heard, and detections that are none.
    pub presses: usize,
    /// Presses heard.
    pub right: usize,
    /// Detections that are no press.
    pub wrong: usize,
    /// Utterances of live speech.
    pub live: usize,
    /// Of these, taken for a press.
    pub live_taken: usize,
    /// Onset errors of right detections, seconds.
    pub onset_s: Vec<f64>,
    /// Speed errors.
    pub speed: Vec<f64>,
    /// Confidence, and whether it was right.
    pub confidence: Vec<(f64, bool)>,
    /// Sounds in which a battery runs down: it alone named, nobody named, another named.
    pub tired: [usize; 3],
}

impl Tally {
    /// Adds one sound.
    pub fn add(&mut self, sound: &SoundFile, heard: &[Detection]) {
        let m = matched(sound, heard);
        self.sounds += 1;
        self.hours += sound.seconds / 3600.0;
        self.presses += sound.presses.len();
        self.live += sound.live.len();
        self.live_taken += m.live_taken;
        for (h, press) in heard.iter().zip(&m.press) {
            self.confidence.push((h.confidence, press.is_some()));
            match press {
                Some(j) => {
                    self.right += 1;
                    self.onset_s.push((h.onset_s - sound.presses[*j].onset_s).abs());
                    self.speed.push((h.speed - sound.presses[*j].speed).abs());
                }
                None => self.wrong += 1,
            }
        }
        if let Some(tired) = &sound.tired {
            let named: Vec<String> = tired_batteries(heard).into_iter().map(|t| t.word).collect();
            let at = if named.is_empty() { 1 } else { usize::from(named != [tired.clone()]) * 2 };
            self.tired[at] += 1;
        }
    }

    /// Right detections among all; 1 where nothing was detected.
    pub fn precision(&self) -> f64 {
        if self.right + self.wrong == 0 { 1.0 } else { self.right as f64 / (self.right + self.wrong) as f64 }
    }

    /// Presses heard; 1 where there were none.
    pub fn recall(&self) -> f64 {
        if self.presses == 0 { 1.0 } else { self.right as f64 / self.presses as f64 }
    }

    /// Harmonic mean of precision and recall.
    pub fn f1(&self) -> f64 {
        let all = self.right + self.wrong + self.presses;
        if all == 0 { 1.0 } else { 2.0 * self.right as f64 / all as f64 }
    }
}

/// Scores of corpora: by signal-to-noise ratio, and of sounds without a press.
#[derive(Debug, Clone, Default)]
pub struct Scores {
    /// By ratio in tenths of a decibel, falling.
    by_snr: BTreeMap<std::cmp::Reverse<i64>, Tally>,
    /// All sounds with presses.
    pub busy: Tally,
    /// Sounds without a press.
    pub empty: Tally,
}

impl Scores {
    /// Adds one sound.
    pub fn add(&mut self, sound: &SoundFile, heard: &[Detection]) {
        match sound.snr_db {
            Some(snr) => {
                self.by_snr.entry(std::cmp::Reverse((10.0 * snr) as i64)).or_default().add(sound, heard);
                self.busy.add(sound, heard);
            }
            None => self.empty.add(sound, heard),
        }
    }

    /// False presses an hour where nothing was pressed: rate, and the exact Poisson bound that 95 of 100 such counts
    /// stay under; none without such sounds.
    pub fn false_an_hour(&self) -> Option<(f64, f64)> {
        let count = Count::new(self.empty.wrong as u64, self.empty.hours).ok()?;
        // The upper end of a two-sided interval of 90 % is a one-sided bound of 95 %.
        Some((count.rate(), count.interval(Level::P90).high))
    }

    /// Tables in Markdown.
    pub fn tables(&self) -> String {
        let mut out = String::new();
        let head = ["SNR", "presses", "precision", "recall (95 % interval)", "F1", "live speech taken (95 % interval)"];
        let row = |name: String, t: &Tally| {
            vec![
                name,
                t.presses.to_string(),
                format!("{:.4}", t.precision()),
                format!("{:.4}{}", t.recall(), interval(t.right, t.presses)),
                format!("{:.4}", t.f1()),
                format!("{} of {}{}", t.live_taken, t.live, interval(t.live_taken, t.live)),
            ]
        };
        let mut rows: Vec<_> =
            self.by_snr.iter().map(|(snr, t)| row(format!("{} dB", snr.0 as f64 / 10.0), t)).collect();
        if rows.len() > 1 {
            rows.push(row("all".into(), &self.busy));
        }
        if !rows.is_empty() {
            line!(out, "{}", table(&head, &rows));
        }
        let of = |v: &[f64], q: f64| {
            let mut v = v.to_vec();
            v.sort_by(f64::total_cmp);
            v.get(((v.len() as f64 * q) as usize).min(v.len().saturating_sub(1))).copied().unwrap_or(f64::NAN)
        };
        if !self.busy.onset_s.is_empty() {
            let (o, s) = (|q| 1e3 * of(&self.busy.onset_s, q), |q| 100.0 * of(&self.busy.speed, q));
            line!(
                out,
                "Onset error: median {:.1} ms, 95 % under {:.0} ms, 99 % under {:.0} ms, largest {:.0} ms. Speed error: median {:.3} %, 99 % under {:.3} %, largest {:.2} % (n = {}).\n",
                o(0.5),
                o(0.95),
                o(0.99),
                o(1.0),
                s(0.5),
                s(0.99),
                s(1.0),
                self.busy.onset_s.len()
            );
            let bins = [0.0, 0.55, 0.6, 0.8, 0.9, 0.95, 0.99, 1.01];
            let all: Vec<(f64, bool)> = self.busy.confidence.iter().chain(&self.empty.confidence).copied().collect();
            let rows: Vec<Vec<String>> = bins
                .windows(2)
                .filter_map(|w| {
                    let inside: Vec<bool> = all.iter().filter(|c| c.0 >= w[0] && c.0 < w[1]).map(|c| c.1).collect();
                    let right = inside.iter().filter(|r| **r).count();
                    (!inside.is_empty()).then(|| {
                        let share = right as f64 / inside.len() as f64;
                        let range = format!("{:.2}-{:.2}", w[0], w[1].min(1.0));
                        vec![range, inside.len().to_string(), format!("{share:.3}{}", interval(right, inside.len()))]
                    })
                })
                .collect();
            line!(out, "{}", table(&["confidence said", "detections", "right (95 % interval)"], &rows));
            let [named, nobody, another] = self.busy.tired;
            line!(
                out,
                "Battery running down, of {} sounds: it alone named in {named}, nobody in {nobody}, another in {another}.\n",
                named + nobody + another
            );
        }
        if let Some((rate, bound)) = self.false_an_hour() {
            let e = &self.empty;
            line!(
                out,
                "Without a press: {:.2} hours in {} sounds, {} false presses, {rate:.3} an hour, exact 95 % upper bound {bound:.3} an hour; live speech taken {} of {}{}.",
                e.hours,
                e.sounds,
                e.wrong,
                e.live_taken,
                e.live,
                interval(e.live_taken, e.live)
            );
        }
        out
    }
}

fn interval(k: usize, n: usize) -> String {
    match Proportion::new(k as u64, n as u64) {
        Ok(p) if n > 0 => {
            let i = p.clopper_pearson(Level::P95);
            format!(" ({:.3}-{:.3})", i.low, i.high)
        }
        _ => String::new(),
    }
}

fn read(path: &Path) -> Result<Vec<Line>, LabError> {
    let text = std::fs::read_to_string(path).map_err(at(path))?;
    let lines = text.lines().enumerate().filter(|(_, l)| !l.trim().is_empty());
    lines
        .map(|(i, l)| {
            serde_json::from_str(l)
                .map_err(|e| LabError::Content { path: path.to_owned(), reason: format!("line {}: {e}", i + 1) })
        })
        .collect()
}

/// Scores corpora; answers the tables.
///
/// # Errors
/// [`LabError`] where a file cannot be read, holds something else, or names sounds the corpus does not have.
pub fn score(order: &Order) -> Result<Scores, LabError> {
    if order.heard.is_some() && order.corpora.len() > 1 {
        return Err(told("--heard goes with one corpus"));
    }
    let mut scores = Scores::default();
    for corpus in &order.corpora {
        let truth = Truth::read(corpus)?;
        let heard: Vec<Vec<Detection>> = match &order.heard {
            Some(path) => {
                let lines = read(path)?;
                if let Some(l) = lines.iter().find(|l| truth.sounds.iter().all(|s| s.sound != l.sound)) {
                    return Err(LabError::Content {
                        path: path.clone(),
                        reason: format!("the corpus has no sound \"{}\"", l.sound),
                    });
                }
                let of = |s: &SoundFile| lines.iter().filter(|l| l.sound == s.sound).map(detection).collect();
                truth.sounds.iter().map(of).collect()
            }
            None => {
                let weights = hear::weights(order.weights.as_ref())?;
                hear::hear(corpus, &truth, weights, false, order.speeds_known)?.into_iter().map(|h| h.heard).collect()
            }
        };
        truth.sounds.iter().zip(&heard).for_each(|(s, h)| scores.add(s, h));
        eprintln!("{}: scored", corpus.display());
    }
    if let Some(path) = &order.out {
        std::fs::write(path, scores.tables()).map_err(at(path))?;
    }
    Ok(scores)
}

fn detection(l: &Line) -> Detection {
    Detection {
        word: l.word.clone(),
        clip: 0,
        onset_s: l.onset_s,
        confidence: l.confidence,
        speed: l.speed,
        level_db: 0.0,
        share: 1.0,
    }
}
