//! How long does it take to find learners that mean what they press?

use super::{Section, end};
use crate::error::{LabError, told};
use crate::report::chart::{Chart, Line};
use crate::report::figure::{Finding, In, Wanted};
use crate::work::Work;
use sayso_advisor::Case;
use sayso_advisor::claims::{Claims, claims};
use sayso_methods::understanding::ladder::Rung;
use sayso_model::{Moment, ProbeDesign, Story};
use sayso_sim::{DrawnCheck, DrawnHome, DrawnLife, Habit, drawn_life};

const DAYS: u32 = 180;
/// Days on which it is read.
const READ: [u32; 8] = [10, 20, 30, 45, 60, 90, 120, 180];
const LEVELS: [f64; 2] = [0.7, 0.5];
const TRIALS: u16 = 24;

/// What was claimed of one animal.
struct Found {
    /// Day of the first claim of anything.
    first: Option<f64>,
    /// By day of reading: words claimed from rounds, and whether the animal was.
    read: Vec<(usize, bool)>,
    words: usize,
}

fn day(life: &DrawnLife, at: Moment) -> f64 {
    at.seconds_since(life.begun) / 86_400.0
}

fn read(life: &DrawnLife) -> Result<Claims, LabError> {
    let story = Story::from_events(life.events.iter().cloned());
    claims(&Case::new(&story, life.animal, end()?)).map_err(told)
}

fn everyday(level: f64, seed: u64) -> Result<Found, LabError> {
    let life = drawn_life(&DrawnHome::of(Habit::Means(level), DAYS), seed, end()?);
    let found = read(&life)?;
    let since: Vec<f64> = found.words.iter().filter_map(|c| c.asking.since).map(|at| day(&life, at)).collect();
    let animal = found.animal.verdict.since.map(|at| day(&life, at));
    let first = since.iter().copied().chain(animal).reduce(f64::min);
    let by = |d: u32| {
        let d = f64::from(d);
        (since.iter().filter(|s| **s <= d).count(), animal.is_some_and(|a| a <= d))
    };
    Ok(Found { first, read: READ.iter().map(|d| by(*d)).collect(), words: found.words.len() })
}

/// Share of the words on the top rung after checks of one design, planned for every word.
fn checked(level: f64, design: ProbeDesign, seed: u64) -> Result<f64, LabError> {
    let mut home = DrawnHome::of(Habit::Means(level), 14);
    home.swaps = false;
    home.sittings_a_day = 0.0;
    home.checks = vec![DrawnCheck { day: 0, design, trials_a_word: TRIALS, blind: true }];
    let life = drawn_life(&home, seed, end()?);
    let found = read(&life)?;
    let top = found.words.iter().filter(|c| c.rung() == Rung::StandsUpToBlindCheck).count();
    Ok(top as f64 / found.words.len().max(1) as f64)
}

/// Runs the experiment.
pub fn run(work: &Work) -> Result<Section, LabError> {
    let mut section = Section::new("Power: how long it takes to find true understanding");
    let reps = work.size(300, 6);
    let mut lines = Vec::new();
    for level in LEVELS {
        let found = work.each(&format!("means it, {level}"), reps, |seed| everyday(level, seed))?;
        let firsts: Vec<f64> = found.iter().map(|f| f.first.unwrap_or(f64::INFINITY)).collect();
        let what = format!("meant at {level}: day of the first claim (never counts as beyond any day)");
        section.add(Finding::middle(what, Wanted::Known, &firsts, In::Number("days")));
        for (at, d) in READ.iter().enumerate().filter(|(_, d)| [60, 180].contains(*d)) {
            let words: Vec<f64> = found.iter().map(|f| f.read[at].0 as f64 / f.words.max(1) as f64).collect();
            let what = format!("meant at {level}: words claimed from rounds by day {d}");
            section.add(Finding::mean(what, Wanted::Known, &words, In::Percent));
            let animal = found.iter().filter(|f| f.read[at].1).count();
            let what = format!("meant at {level}: the animal claimed from swaps by day {d}");
            section.add(Finding::share(what, Wanted::Known, animal, found.len()));
        }
        let points = |share: &dyn Fn(usize) -> f64| {
            READ.iter().enumerate().map(|(at, d)| (f64::from(*d), share(at))).collect::<Vec<_>>()
        };
        let n = found.len().max(1) as f64;
        let words = |at: usize| found.iter().map(|f| f.read[at].0 as f64 / f.words.max(1) as f64).sum::<f64>() / n;
        let animal = |at: usize| found.iter().filter(|f| f.read[at].1).count() as f64 / n;
        lines.push(Line { name: format!("words, meant at {level}"), points: points(&words) });
        lines.push(Line { name: format!("the animal, meant at {level}"), points: points(&animal) });
        for (name, design) in
            [("things laid out", ProbeDesign::PickForWord), ("covered buttons", ProbeDesign::PressUnderCovers)]
        {
            let top = work.each(&format!("checked, {level}, {name}"), reps, |seed| checked(level, design, seed))?;
            let what = format!("meant at {level}: words on the top rung after {TRIALS} blind trials a word, {name}");
            section.add(Finding::mean(what, Wanted::Known, &top, In::Percent));
        }
    }
    let top = work.each("checked, right in 9 of 10", reps, |seed| checked(0.8, ProbeDesign::PickForWord, seed))?;
    let what = format!("right in 90 % of choices: words on the top rung after {TRIALS} blind trials a word");
    section.add(Finding::mean(what, Wanted::AtLeast(0.8), &top, In::Percent));
    section.charts.push(Chart {
        file: "power-drawn.svg".into(),
        title: "Claimed of animals that mean it".into(),
        x: "day".into(),
        y: "share of words, of animals".into(),
        range: (0.0, 1.0),
        lines,
        wanted: None,
    });
    section.text(format!("4 words, {DAYS} days, 10 to 40 presses a day, one and a half sittings of two rounds a day, swaps (1 in 8) all the time. Meant at p: with probability p it presses the button of what it wants, else any; so it is right in p + (1 - p)/2 of the choices between two. It presses again after 30 % of the things it does not take (assumed). Checks: {TRIALS} trials a word on average, 4 words, 5 % of the trials without a choice."));
    Ok(section)
}
