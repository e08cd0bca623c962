//! Do the intervals of likes hold the truth, with as few trials as a household makes?

use super::coverage::WANTED;
use super::figure::{Finding, In};
use super::work::Work;
use super::{LabError, Section, told};
use sayso_methods::likes::{PairModel, PairOutcome, PairTrial, RankModel, Ranking, fit_pairs, fit_rankings};
use sayso_sim::{Chance, Chooser, logistic};

const ITEMS: usize = 5;

/// Runs the experiment.
pub fn run(work: &Work) -> Result<Section, LabError> {
    let mut section = Section::new("Coverage: likes");
    let reps = work.size(500, 6);
    for spread in [0.5, 1.0, 2.0] {
        let pairs = work.each(&format!("pairs, spread {spread}"), reps, |seed| pairs(spread, seed))?;
        let named = |what: &str| format!("{what}, likes spread by {spread}");
        let column = |of: fn(&Pairs) -> f64| pairs.iter().map(of).collect::<Vec<f64>>();
        let mut add = |what: &str, values: &[f64]| {
            section.add(Finding::mean(named(what), WANTED, values, In::Percent));
        };
        add("strength from 20 pairs (Bradley-Terry)", &column(|p| p.strengths));
        add("preference between two, from 20 pairs", &column(|p| p.preference));
        add("pull to a side, from 20 pairs", &column(|p| p.side));
        let ranks = work.each(&format!("ranks, spread {spread}"), reps, |seed| ranks(spread, seed))?;
        add("strength from 3 rounds without replacement (Plackett-Luce)", &ranks);
    }
    section.text("Five items, strengths drawn from a normal distribution with the spread named, centred; a pull to a side with a spread of 0.8 logits; nothing chosen with the weight of an item of strength -1.5. Each pair twice, sides exchanged. The fits are those of the Likes page, with the spread of likes learned from the same choices. The simulator chooses by the model's own rule, which makes this easier than life.");
    Ok(section)
}

struct Pairs {
    strengths: f64,
    preference: f64,
    side: f64,
}

fn chooser(spread: f64, seed: u64) -> Chooser {
    let mut c = Chance::new(seed, 44);
    let mut strengths: Vec<f64> = (0..ITEMS).map(|_| spread * c.normal()).collect();
    let mean = strengths.iter().sum::<f64>() / ITEMS as f64;
    strengths.iter_mut().for_each(|s| *s -= mean);
    Chooser { strengths, side_bias: 0.8 * c.normal(), none: -1.5 }
}

fn yes(held: bool) -> f64 {
    f64::from(u8::from(held))
}

fn pairs(spread: f64, seed: u64) -> Result<Pairs, LabError> {
    let truth = chooser(spread, seed);
    let trials: Vec<PairTrial> = truth
        .paired(2, seed)
        .into_iter()
        .map(|(left, right, chosen)| {
            let outcome = match chosen {
                Some(item) if item == left => PairOutcome::Left,
                Some(_) => PairOutcome::Right,
                None => PairOutcome::Neither,
            };
            PairTrial { left, right, outcome }
        })
        .collect();
    let fit = fit_pairs(ITEMS, &trials, &PairModel::default()).map_err(told)?;
    let held = fit.strengths.iter().zip(&truth.strengths).filter(|(s, t)| s.interval.contains(**t)).count();
    let preference = fit.preference(0, 1).map_err(told)?.interval;
    Ok(Pairs {
        strengths: held as f64 / ITEMS as f64,
        preference: yes(preference.contains(logistic(truth.strengths[0] - truth.strengths[1]))),
        side: yes(fit.side.is_some_and(|side| side.interval.contains(truth.side_bias))),
    })
}

fn ranks(spread: f64, seed: u64) -> Result<f64, LabError> {
    let truth = chooser(spread, seed);
    // Places in the array are drawn anew for each choice in life; the rounds here are drawn without a pull to a side.
    let truth = Chooser { side_bias: 0.0, ..truth };
    let rankings: Vec<Ranking> = truth
        .multiple(3, seed)
        .into_iter()
        .map(|chosen| {
            let left: Vec<usize> = (0..ITEMS).filter(|i| !chosen.contains(i)).collect();
            Ranking::turned_away(&chosen, &left)
        })
        .collect();
    let fit = fit_rankings(ITEMS, &rankings, &RankModel::default()).map_err(told)?;
    let held = fit.strengths.iter().zip(&truth.strengths).filter(|(s, t)| s.interval.contains(**t)).count();
    Ok(held as f64 / ITEMS as f64)
}
