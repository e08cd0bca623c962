//! Learns the hearing's weights from corpora with known truth.

use super::score::TOLERANCE_S;
use super::truth::{SoundFile, Truth};
use super::{hear, logistic};
use crate::error::{LabError, at, told};
use sayso_listen::{
    Candidate, Cascade, Classifier, FIGURE_NAMES, Provenance, RIVAL_BEYOND, SHORTNESS, StageBound, Weights, rival_leads,
};
use sha2::{Digest, Sha256};
use std::cmp::Reverse;
use std::collections::BTreeMap;
use std::path::PathBuf;

/// What to learn from, and how.
#[derive(Debug, Clone, clap::Args)]
pub struct Order {
    /// Corpora, as `scenes` makes them.
    #[arg(required = true, value_name = "CORPUS")]
    pub corpora: Vec<PathBuf>,
    /// Penalties of the logistic models to try, on figures of spread 1. Of several the one is taken that tells the candidates
    /// of each corpus best when learned from the others.
    #[arg(long, value_delimiter = ',', default_values_t = [1.0])]
    pub ridge: Vec<f64>,
    /// How many missed presses a wrong one weighs as much as: the constant is lowered by its logarithm.
    #[arg(long, default_value_t = 1.0)]
    pub caution: f64,
    /// By which power that caution grows where a clip has less than 0.45 s of effective sound: at 4, half of that weighs 16
    /// times as much. The corpora hold few words so short, the hours without a press many chances for each.
    #[arg(long, default_value_t = 0.0)]
    pub caution_short: f64,
    /// Presses a day expected where a home is quiet; with the corpora's presses a minute it sets the idle prior.
    #[arg(long, default_value_t = 8.0)]
    pub presses_a_day: f64,
    /// The day written into the file, as YYYY-MM-DD.
    #[arg(long)]
    pub date: jiff::civil::Date,
    /// File to write, such as crates/listen/src/decide/weights.json.
    #[arg(long, value_name = "FILE")]
    pub out: PathBuf,
}

/// Share of presses a bound of the cascade may give up, of those that would be called presses in the end.
const GIVEN_UP: f64 = 0.005;
/// Log odds from which a candidate counts as called (confidence 0.55).
const CALLED: f64 = 0.2;
/// Share of a candidate that a press of its own word covers, from which it is the press seen twice.
const SAME_PRESS: f64 = 0.4;

/// How often the cascade is learned again: whether a candidate has a rival depends on which candidates the cascade lets
/// pass, and the cascade on the classifier. The first time all pass, so that what is learned follows from the corpora alone.
const ROUNDS: usize = 3;

/// A sound's candidates with their truth; none of a press seen twice.
pub(crate) struct Labelled {
    words: Vec<String>,
    candidates: Vec<Candidate>,
    right: Vec<Option<bool>>,
    busy: bool,
}

/// A candidate with its truth, and its strongest rival's lead.
pub(crate) struct Row<'a> {
    candidate: &'a Candidate,
    lead: f64,
    right: bool,
    busy: bool,
}

/// What a candidate is: a press, none, or that press seen a second time, which the decider's suppression sees to.
fn label(c: &Candidate, sound: &SoundFile, words: &[String], best: &[Option<usize>], at: usize) -> Option<bool> {
    let mut twice = false;
    for (j, p) in sound.presses.iter().enumerate().filter(|(_, p)| p.word == words[c.clip]) {
        if (c.onset_s - p.onset_s).abs() <= TOLERANCE_S {
            if best[j] == Some(at) {
                return Some(true);
            }
            twice = true;
        }
        let end = p.onset_s + p.cut_s.unwrap_or(c.end_s - c.onset_s);
        let over = (c.end_s.min(end) - c.onset_s.max(p.onset_s)) / (c.end_s - c.onset_s).max(1e-9);
        twice |= over > SAME_PRESS;
    }
    (!twice).then_some(false)
}

/// Per press of a sound, the candidate of its word, place and highest coherence.
fn best(candidates: &[Candidate], sound: &SoundFile, words: &[String]) -> Vec<Option<usize>> {
    let of = |press: &super::truth::Press| {
        let near = |c: &Candidate| words[c.clip] == press.word && (c.onset_s - press.onset_s).abs() <= TOLERANCE_S;
        let fitting = candidates.iter().enumerate().filter(|(_, c)| near(c));
        fitting.max_by(|a, b| a.1.figures[0].total_cmp(&b.1.figures[0])).map(|(i, _)| i)
    };
    sound.presses.iter().map(of).collect()
}

/// How many presses of sounds of one signal-to-noise ratio the first look found, and what else.
#[derive(Default)]
struct FirstLook {
    presses: usize,
    found: usize,
    others: usize,
    seconds: f64,
}

/// By ratio in tenths of a decibel, falling.
type FirstLooks = BTreeMap<Reverse<i64>, FirstLook>;

fn labelled(truth: &Truth, sounds: Vec<hear::HeardSound>, looks: &mut FirstLooks) -> Vec<Labelled> {
    let words: Vec<String> = truth.clips.iter().map(|c| c.word.clone()).collect();
    let mut all = Vec::new();
    for (sound, heard) in truth.sounds.iter().zip(sounds) {
        let best = best(&heard.candidates, sound, &words);
        if let Some(snr) = sound.snr_db {
            let look = looks.entry(Reverse((10.0 * snr) as i64)).or_default();
            let found = best.iter().flatten().count();
            look.presses += sound.presses.len();
            look.found += found;
            look.others += heard.candidates.len() - found;
            look.seconds += sound.seconds;
        }
        let right = heard.candidates.iter().enumerate().map(|(at, c)| label(c, sound, &words, &best, at)).collect();
        all.push(Labelled { words: words.clone(), candidates: heard.candidates, right, busy: sound.snr_db.is_some() });
    }
    all
}

fn rows_of(sound: &Labelled) -> Vec<Row<'_>> {
    let leads = rival_leads(&sound.candidates, &sound.words);
    let told = sound.candidates.iter().zip(leads).zip(&sound.right);
    told.filter_map(|((candidate, lead), right)| Some(Row { candidate, lead, right: (*right)?, busy: sound.busy }))
        .collect()
}

/// Lets the candidates pass that the cascade lets pass; all where there is none yet.
fn let_pass(sounds: &mut [Vec<Labelled>], cascade: Option<&Cascade>) {
    let passes = |(stage, figures): &(usize, Vec<f64>)| {
        cascade.is_none_or(|c| [&c.quick, &c.liked, &c.scanned][*stage].passes(figures))
    };
    for c in sounds.iter_mut().flatten().flat_map(|s| &mut s.candidates) {
        c.passed = c.stages.iter().all(passes);
    }
}

/// The classifier: weights from all candidates, the constant from sounds with presses alone.
fn classifier(rows: &[&Row<'_>], ridge: f64) -> Result<Classifier, LabError> {
    let figures = |r: &&Row<'_>| {
        let mut x = r.candidate.figures.clone();
        x.extend([r.lead, (r.lead - RIVAL_BEYOND).max(0.0)]);
        x
    };
    let all: Vec<Vec<f64>> = rows.iter().map(figures).collect();
    let right: Vec<bool> = rows.iter().map(|r| r.right).collect();
    let found = logistic::fit(&all, &right, ridge)?;
    let sum = |x: &Vec<f64>| found.weights.iter().zip(x).map(|(w, x)| w * x).sum::<f64>();
    let busy: Vec<(f64, bool)> =
        rows.iter().zip(&all).filter(|(r, _)| r.busy).map(|(r, x)| (sum(x), r.right)).collect();
    let (sums, right): (Vec<f64>, Vec<bool>) = busy.into_iter().unzip();
    let mut weights = [0.0; FIGURE_NAMES.len()];
    weights.copy_from_slice(&found.weights[..FIGURE_NAMES.len()]);
    Ok(Classifier {
        constant: logistic::constant(&sums, &right)?,
        figures: weights,
        rival_lead: found.weights[FIGURE_NAMES.len()],
        rival_lead_beyond: found.weights[FIGURE_NAMES.len() + 1],
    })
}

/// Which penalty tells the candidates of each corpus best when learned from the other corpora: the least mean negative
/// log-likelihood over all candidates of sounds with presses, for which confidences are said.
fn best_ridge(corpora: &[Vec<Row<'_>>], ridges: &[f64]) -> Result<f64, LabError> {
    if let [one] = ridges {
        return Ok(*one);
    }
    if corpora.len() < 2 {
        return Err(told("penalties are told apart by several corpora; name one --ridge, or more corpora"));
    }
    let loss = |ridge: f64| -> Result<f64, LabError> {
        let (mut sum, mut n) = (0.0, 0usize);
        for left_out in 0..corpora.len() {
            let others: Vec<&Row<'_>> =
                corpora.iter().enumerate().filter(|(i, _)| *i != left_out).flat_map(|(_, rows)| rows).collect();
            let learned = classifier(&others, ridge)?;
            for r in corpora[left_out].iter().filter(|r| r.busy) {
                let against = log_odds(&learned, r) * if r.right { -1.0 } else { 1.0 };
                sum += against.max(0.0) + (-against.abs()).exp().ln_1p();
                n += 1;
            }
        }
        let loss = sum / n as f64;
        eprintln!("penalty {ridge}: {loss:.6} a candidate left out");
        Ok(loss)
    };
    let mut best = (f64::NAN, f64::INFINITY);
    for ridge in ridges {
        let loss = loss(*ridge)?;
        if loss < best.1 {
            best = (*ridge, loss);
        }
    }
    Ok(best.0)
}

fn log_odds(c: &Classifier, r: &Row<'_>) -> f64 {
    c.log_odds(&r.candidate.figures) + c.rivalry(r.lead)
}

/// One stage's bound: the direction from a logistic model, the bound where it gives up one called press in two hundred.
fn stage(index: usize, rows: &[&Row<'_>], classifier: &Classifier, ridge: f64) -> Result<StageBound, LabError> {
    let (mut figures, mut right) = (Vec::new(), Vec::new());
    for r in rows {
        let called = r.right && log_odds(classifier, r) > CALLED;
        if r.right && !called {
            continue;
        }
        for (_, x) in r.candidate.stages.iter().filter(|(s, _)| *s == index) {
            figures.push(x.clone());
            right.push(called);
        }
    }
    let found = logistic::fit(&figures, &right, ridge)?;
    let sum = |x: &Vec<f64>| found.weights.iter().zip(x).map(|(w, x)| w * x).sum::<f64>();
    let mut presses: Vec<f64> = figures.iter().zip(&right).filter(|(_, y)| **y).map(|(x, _)| sum(x)).collect();
    presses.sort_by(f64::total_cmp);
    let least = presses[(presses.len() as f64 * GIVEN_UP) as usize] - 1e-6;
    let kept = figures.iter().zip(&right).filter(|(x, y)| !**y && sum(x) > least).count();
    let others = right.iter().filter(|y| !**y).count();
    eprintln!("stage {index}: {} presses, {kept} of {others} others go on", presses.len());
    Ok(StageBound { figures: found.weights, least })
}

/// What one round learned.
struct Learned {
    ridge: f64,
    classifier: Classifier,
    cascade: Cascade,
    candidates: usize,
    right: usize,
}

fn learn(sounds: &[Vec<Labelled>], ridges: &[f64]) -> Result<Learned, LabError> {
    let by_corpus: Vec<Vec<Row<'_>>> = sounds.iter().map(|s| s.iter().flat_map(rows_of).collect()).collect();
    let ridge = best_ridge(&by_corpus, ridges)?;
    let all: Vec<&Row<'_>> = by_corpus.iter().flatten().collect();
    let classifier = classifier(&all, ridge)?;
    let stage = |index| stage(index, &all, &classifier, ridge);
    let cascade = Cascade { quick: stage(0)?, liked: stage(1)?, scanned: stage(2)? };
    Ok(Learned { ridge, classifier, cascade, candidates: all.len(), right: all.iter().filter(|r| r.right).count() })
}

/// Learns weights and writes them with their provenance.
///
/// # Errors
/// [`LabError`] where a corpus cannot be read or heard, or nothing can be learned from it.
pub fn fit(order: &Order) -> Result<Weights, LabError> {
    fit_heard_with(order, Weights::shipped())
}

/// [`fit`], with the candidates heard by these weights: which ones makes no difference to what is learned.
///
/// # Errors
/// As [`fit`].
pub fn fit_heard_with(order: &Order, weights: &Weights) -> Result<Weights, LabError> {
    let above_0 = |v: &f64| *v > 0.0 && v.is_finite();
    if order.ridge.is_empty()
        || !order.ridge.iter().all(above_0)
        || !above_0(&order.caution)
        || !above_0(&order.presses_a_day)
        || !(0.0..=20.0).contains(&order.caution_short)
    {
        return Err(told("--ridge, --caution and --presses-a-day are numbers above 0, --caution-short from 0 to 20"));
    }
    let (mut by_corpus, mut hash, mut seeds) = (Vec::new(), Sha256::new(), Vec::new());
    let mut looks = FirstLooks::new();
    for corpus in &order.corpora {
        let truth = Truth::read(corpus)?;
        truth.hash(corpus, &mut hash)?;
        seeds.push(truth.seed);
        let sounds = labelled(&truth, hear::hear(corpus, &truth, weights.clone(), true, false)?, &mut looks);
        let candidates: usize = sounds.iter().map(|s| s.candidates.len()).sum();
        eprintln!("{}: {candidates} candidates", corpus.display());
        by_corpus.push(sounds);
    }
    for (snr, l) in &looks {
        let (snr, others) = (snr.0 as f64 / 10.0, l.others as f64 / l.seconds);
        eprintln!("{snr} dB: {} of {} presses among the candidates, {others:.1} others a second", l.found, l.presses);
    }
    let_pass(&mut by_corpus, None);
    let mut learned = learn(&by_corpus, &order.ridge)?;
    for _ in 1..ROUNDS {
        let_pass(&mut by_corpus, Some(&learned.cascade));
        learned = learn(&by_corpus, &order.ridge)?;
    }
    let Learned { ridge, mut classifier, cascade, candidates, right } = learned;
    // After the cascade, which is to give up no press that is called without it.
    classifier.constant -= order.caution.ln();
    classifier.figures[SHORTNESS] -= order.caution_short;
    let presses: usize = looks.values().map(|l| l.presses).sum();
    let seconds: f64 = looks.values().map(|l| l.seconds).sum();
    let learned = Weights {
        provenance: Provenance {
            made_by: format!(
                "lab hearing fit --ridge {ridge} --caution {} --caution-short {} --presses-a-day {}: {right} presses among {} candidates",
                order.caution, order.caution_short, order.presses_a_day, candidates
            ),
            corpus_sha256: Some(hash.finalize().iter().map(|b| format!("{b:02x}")).collect()),
            seeds,
            date: Some(order.date.to_string()),
        },
        idle_prior: (order.presses_a_day / 86_400.0 / (presses as f64 / seconds)).min(1.0),
        classifier,
        cascade,
    };
    let text = serde_json::to_string_pretty(&learned).map_err(told)? + "\n";
    std::fs::write(&order.out, text).map_err(at(&order.out))?;
    Ok(learned)
}
