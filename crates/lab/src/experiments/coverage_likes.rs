//! Do the intervals of likes hold the truth, with as few trials as a home makes?

use super::Section;
use super::coverage::WANTED;
use crate::error::{LabError, told};
use crate::light::Chooser;
use crate::report::figure::{Finding, In};
use crate::work::Work;
use sayso_methods::likes::{PairModel, PairOutcome, PairTrial, RankModel, Ranking, fit_pairs, fit_rankings};
use sayso_sim::Chance;

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
        add("pull to a side, from 20 pairs", &column(|p| p.side));
        let ranks = work.each(&format!("ranks, spread {spread}"), reps, |seed| ranks(spread, seed))?;
        add("strength from 3 rounds without replacement (Plackett-Luce)", &ranks);
    }
    best_items(work, &mut section)?;
    section.text("Five items, strengths drawn from a normal distribution with the spread named, centred; a pull to a side with a spread of 0.8 logits; nothing chosen with the weight of an item of strength -1.5. Each pair twice, sides exchanged. The fits are those of the Likes page, with the spread of likes learned from the same choices. The simulator chooses by the model's own rule, which makes this easier than life. Where one item stands out the others spread by 0.5 about their mean, without a pull to a side; the item estimated best is judged whether or not it is truly the best. An animal that tires loses the logits named on each taste of an item, of which the share named stays from trial to trial; the truth asked for is its liking before the first taste.");
    Ok(section)
}

/// The best-liked item, the one a home acts on: where it stands out, and where the learner tires of what it had.
fn best_items(work: &Work, section: &mut Section) -> Result<(), LabError> {
    let reps = work.size(300, 6);
    for (items, rounds) in [(4, 2), (5, 1), (5, 4), (8, 1)] {
        let pairs = rounds * items * (items - 1) / 2;
        let mut add = |what: &str, truth: &Tiring| -> Result<(), LabError> {
            let what = format!("{what}, {items} items, {pairs} pairs");
            let found = work.each(&what, reps, |seed| best_item(truth, items, rounds, seed))?;
            let columns: [(&str, Column); 3] = [
                ("strength of any item", |b| b.any),
                ("strength of the truly best item", |b| b.truly),
                ("strength of the item estimated best", |b| b.named),
            ];
            for (figure, of) in columns {
                let values: Vec<f64> = found.iter().map(of).collect();
                section.add(Finding::mean(format!("{figure}: {what}"), WANTED, &values, In::Percent));
            }
            Ok(())
        };
        for gap in [2.0, 3.0, 4.0] {
            let truth = Tiring { gap: Some(gap), spread: 0.5, tires: 0.0, stays: 0.0 };
            add(&format!("one stands out by {gap}"), &truth)?;
        }
        for (tires, stays) in [(0.1, 0.98), (0.3, 0.9), (0.8, 0.7)] {
            let truth = Tiring { gap: None, spread: 1.0, tires, stays };
            add(&format!("tires by {tires}, of which {stays} stays"), &truth)?;
        }
    }
    Ok(())
}

/// How likes and their wearing off come about in one row.
struct Tiring {
    /// How far the first item stands above the others, if it does.
    gap: Option<f64>,
    spread: f64,
    tires: f64,
    stays: f64,
}

/// Reads one figure off a home.
type Column = fn(&Best) -> f64;

struct Best {
    any: f64,
    truly: f64,
    named: f64,
}

fn best_item(truth: &Tiring, items: usize, rounds: usize, seed: u64) -> Result<Best, LabError> {
    let mut c = Chance::new(seed, 45);
    let centred = |values: &mut [f64]| {
        let mean = values.iter().sum::<f64>() / values.len() as f64;
        values.iter_mut().for_each(|v| *v -= mean);
    };
    let mut strengths: Vec<f64> = (0..items).map(|_| truth.spread * c.normal()).collect();
    if let Some(gap) = truth.gap {
        centred(&mut strengths[1..]);
        strengths[0] = gap;
    }
    centred(&mut strengths);
    let mut sated = vec![0.0; items];
    let mut trials = Vec::new();
    for round in 0..rounds {
        let mut offers: Vec<(usize, usize)> = (0..items)
            .flat_map(|a| (a + 1..items).map(move |b| if (a + b + round) % 2 == 0 { (a, b) } else { (b, a) }))
            .collect();
        c.shuffle(&mut offers);
        for (left, right) in offers {
            let weight = |item: usize| (strengths[item] - sated[item]).exp();
            let taken = c.pick(&[weight(left), weight(right), f64::exp(-1.5)]);
            sated.iter_mut().for_each(|s| *s *= truth.stays);
            let outcome = match taken {
                Some(0) => PairOutcome::Left,
                Some(1) => PairOutcome::Right,
                _ => PairOutcome::Neither,
            };
            let trial = PairTrial { left, right, outcome };
            if let Some(item) = trial.chosen() {
                sated[item] += truth.tires;
            }
            trials.push(trial);
        }
    }
    let fit = fit_pairs(items, &trials, &PairModel::default()).map_err(told)?;
    let holds = |item: usize| fit.strengths[item].interval.contains(strengths[item]);
    let truly = (0..items).fold(0, |best, item| if strengths[item] > strengths[best] { item } else { best });
    let order = fit.ranking();
    Ok(Best {
        any: (0..items).filter(|item| holds(*item)).count() as f64 / items as f64,
        truly: yes(holds(truly)),
        named: yes(holds(order[0])),
    })
}

struct Pairs {
    strengths: f64,
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
    Ok(Pairs {
        strengths: held as f64 / ITEMS as f64,
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
