//! How many trials does it take to find true understanding?

use super::chart::{Chart, Line};
use super::figure::{Finding, Wanted};
use super::work::Work;
use super::{LabError, Section, told};
use sayso_methods::understanding::MonteCarlo;
use sayso_methods::understanding::association::{PressIn, Unit, association};
use sayso_methods::understanding::ladder::{Conduct, LadderRule, ProbeEvidence, Rung, WordEvidence, climb};
use sayso_methods::understanding::probe::{ProbeDesign, ProbeTrial, analyse_probe, plan_probe};
use sayso_methods::understanding::uptake::{AnsweredPress, uptake_by_word};
use sayso_sim::{Chance, LightPress, LightPresser, LightSetting, presses};

/// Words on the board.
const WORDS: usize = 4;
/// Share of answers that bring another thing than the one asked for.
const WRONG: f64 = 0.15;
/// Presses of each word.
const PRESSES: [usize; 6] = [10, 20, 40, 80, 160, 320];
/// Shares of presses that are meant.
const LEVELS: [f64; 5] = [0.0, 0.3, 0.5, 0.7, 0.9];
/// Trials of each word in a blind check.
const CHECKED: [u64; 7] = [8, 12, 16, 20, 26, 34, 46];
/// Words in a blind check.
const IN_CHECK: usize = 3;

/// Runs the experiment.
pub fn run(work: &Work) -> Result<Section, LabError> {
    let mut section = Section::new("Power: trials needed to find true understanding");
    everyday(work, &mut section)?;
    blind(work, &mut section)?;
    section.text(format!("Everyday: {WORDS} words, what is wanted comes in runs, {:.0} % of the answers bring another thing; a wanted thing is taken nine times in ten, an unwanted one 45 times in a hundred. Found means that the adjusted p of the word is at most 0.05. Blind check: two choices, {IN_CHECK} words, trials as planned; found means the top rung for that word. A level is the share of presses that are meant (the rest hit a word at random), so a level of 0.5 is right in 75 % of the choices between two.", 100.0 * WRONG));
    Ok(section)
}

/// Presses with their answers: mostly the thing pressed for, now and then another one.
pub fn answered(pressed: &[LightPress], setting: &LightSetting, seed: u64) -> Vec<AnsweredPress> {
    let mut c = Chance::new(seed, 46);
    let words = setting.words;
    pressed
        .iter()
        .map(|p| {
            let fits = words < 2 || !c.coin(WRONG);
            let item = if fits { p.pressed } else { (p.pressed + 1 + c.below(words - 1)) % words };
            let took = c.coin(if item == p.wanted { setting.takes_wanted } else { setting.takes_unwanted });
            AnsweredPress { session: p.session, word: p.pressed, item, fits, took }
        })
        .collect()
}

fn everyday(work: &Work, section: &mut Section) -> Result<(), LabError> {
    let reps = work.size(400, 4);
    let names = ["uptake", "situation"];
    let titles = ["Uptake: the same thing taken more when asked for", "Situations: words go with what is wanted"];
    let mut lines: [Vec<Line>; 2] = Default::default();
    for level in LEVELS {
        let mut points: [Vec<(f64, f64)>; 2] = Default::default();
        let mut enough = [None, None];
        for n in PRESSES {
            let found =
                work.each(&format!("everyday, level {level}, {n} presses"), reps, |seed| found(level, n, seed))?;
            for (test, points) in points.iter_mut().enumerate() {
                let power = found.iter().map(|f| f[test]).sum::<f64>() / reps as f64;
                points.push(((n as f64).log2(), power));
                if power >= 0.8 && enough[test].is_none() {
                    enough[test] = Some(n);
                }
                if level == 0.0 && n == 80 {
                    let claims = found.iter().filter(|f| f[test] > 0.0).count();
                    let what = format!("{}: any word of a random presser, 80 presses a word", names[test]);
                    section.add(Finding::share(what, Wanted::AtMost(0.05), claims, reps));
                }
                if n == 80 && level >= 0.5 {
                    let each: Vec<f64> = found.iter().map(|f| f[test]).collect();
                    let what = format!("{}: words found, level {level}, 80 presses a word", names[test]);
                    section.add(Finding::mean(what, Wanted::Known, &each, super::figure::In::Percent));
                }
            }
        }
        for (test, (points, lines)) in points.into_iter().zip(&mut lines).enumerate() {
            let n = enough[test].map_or("-".to_owned(), |n| format!("80 % at {n}"));
            lines.push(Line { name: format!("{:.0} % meant ({n})", 100.0 * level), points });
        }
    }
    for ((lines, name), title) in lines.into_iter().zip(names).zip(titles) {
        section.charts.push(Chart {
            file: format!("power-{name}.svg"),
            title: title.into(),
            x: "presses of the word (powers of two)".into(),
            y: "share of words found".into(),
            range: (0.0, 1.0),
            lines,
            wanted: Some(0.8),
        });
    }
    Ok(())
}

/// Shares of the words found by uptake and by situation.
fn found(level: f64, n: usize, seed: u64) -> Result<[f64; 2], LabError> {
    let setting =
        LightSetting { words: WORDS, sessions: (n * WORDS).div_ceil(8), per_session: 8, ..LightSetting::default() };
    let pressed = presses(&LightPresser::Understands(level), &setting, seed);
    let uptake = uptake_by_word(&answered(&pressed, &setting, seed), |_| 0).map_err(told)?;
    let situations: Vec<PressIn> =
        pressed.iter().map(|p| PressIn { session: p.session, word: p.pressed, outcome: p.wanted }).collect();
    let draws = MonteCarlo { seed, most: 999, enough: 20 };
    let situation = association(&situations, Unit::Episode, draws).map_err(told)?;
    let share = |k: usize| k as f64 / WORDS as f64;
    Ok([
        share(uptake.iter().filter(|w| w.fitting_adjusted_p <= 0.05).count()),
        share(situation.by_word.iter().filter(|w| w.adjusted_p <= 0.05).count()),
    ])
}

fn conduct() -> Conduct {
    Conduct { random_order: true, random_places: true, presenter_blind: true, scorer_blind: true }
}

/// Words of a check that reach the top rung, with that many trials each and that share right.
fn top(right: f64, n: u64, c: &mut Chance) -> Result<usize, LabError> {
    let words = (0..IN_CHECK)
        .map(|word| {
            let trials: Vec<ProbeTrial> =
                (0..n).map(|_| ProbeTrial { word, right: Some(c.coin(right)), seconds: None }).collect();
            let seen =
                analyse_probe(&trials, 0.5).map_err(told)?.first().map(|r| r.seen).ok_or_else(|| told("no trial"))?;
            let probe = ProbeEvidence { seen, chance: 0.5, planned: n, carried_out: n, conduct: conduct() };
            Ok(WordEvidence { word, probes: vec![probe], ..WordEvidence::default() })
        })
        .collect::<Result<Vec<_>, LabError>>()?;
    let verdicts = climb(&words, &LadderRule::default()).map_err(told)?;
    Ok(verdicts.iter().filter(|v| v.rung == Rung::StandsUpToBlindCheck).count())
}

fn blind(work: &Work, section: &mut Section) -> Result<(), LabError> {
    let reps = work.size(2000, 40);
    let mut lines = Vec::new();
    for level in LEVELS {
        let right = 0.5 + 0.5 * level;
        let mut points = Vec::new();
        for n in CHECKED {
            let what = format!("blind check, level {level}, {n} trials");
            let tops = work.each(&what, reps, |seed| top(right, n, &mut Chance::new(seed, 47)))?;
            let words = tops.iter().sum::<usize>();
            points.push((n as f64, words as f64 / (reps * IN_CHECK) as f64));
            if level == 0.0 && n == 26 {
                let any = tops.iter().filter(|t| **t > 0).count();
                section.add(Finding::share(
                    "blind check: top rung for any of 3 words by guessing",
                    Wanted::AtMost(0.01),
                    any,
                    reps,
                ));
            }
        }
        lines.push(Line { name: format!("{:.0} % meant", 100.0 * level), points });
    }
    // The planner's promise: with its own number of trials, the power asked for.
    let design = ProbeDesign::of((0..IN_CHECK).collect());
    let plan = plan_probe(&design, work.seed).map_err(told)?;
    let found = work.each("planned check", reps, |seed| {
        let mut c = Chance::new(seed, 48);
        let trials: Vec<ProbeTrial> = plan
            .sittings
            .iter()
            .flatten()
            .map(|t| ProbeTrial { word: t.word, right: Some(c.coin(design.rate)), seconds: None })
            .collect();
        let results = analyse_probe(&trials, plan.chance).map_err(told)?;
        let level = design.alpha / IN_CHECK as f64;
        Ok(results.iter().filter(|r| r.p <= level).count() as f64 / IN_CHECK as f64)
    })?;
    let what = format!("words found in a planned check ({} trials a word, right in 90 %)", plan.per_word);
    section.add(Finding::mean(what, Wanted::AtLeast(0.8), &found, super::figure::In::Percent));
    section.charts.push(Chart {
        file: "power-blind.svg".into(),
        title: "Blind check: share of words that reach the top rung".into(),
        x: "trials of the word".into(),
        y: "share of words".into(),
        range: (0.0, 1.0),
        lines,
        wanted: Some(0.8),
    });
    Ok(())
}
