//! How often is understanding claimed of learners that do not understand?

use super::figure::{Finding, Wanted};
use super::power::answered;
use super::work::Work;
use super::{LabError, Section, end, told};
use sayso_advisor::claims::claims;
use sayso_methods::understanding::MonteCarlo;
use sayso_methods::understanding::association::{PressIn, Unit, association};
use sayso_methods::understanding::ladder::{Conduct, LadderRule, ProbeEvidence, Rung, WordEvidence, climb};
use sayso_methods::understanding::probe::{ProbeDesign, ProbeTrial, analyse_probe, plan_probe};
use sayso_methods::understanding::uptake::uptake_by_word;
use sayso_model::{ProbeDesign as Design, Story};
use sayso_sim::{
    Chance, Household, LightPresser, LightSetting, ProbeSchedule, Style, plain_household, presses, simulate,
};

/// Most households in which any word may be claimed.
const ANY: Wanted = Wanted::AtMost(0.05);
/// Most households in which any word may stand on the top rung.
const TOP: Wanted = Wanted::AtMost(0.01);

/// Runs the experiment.
pub fn run(work: &Work) -> Result<Section, LabError> {
    let mut section = Section::new("False claims of understanding");
    let reps = work.size(2000, 40);
    for (name, habit) in [
        ("at random", LightPresser::Random),
        ("by place", LightPresser::PlaceHabit(vec![0.6, 0.2, 0.15, 0.05])),
        ("two words, by frequency", LightPresser::PlaceHabit(vec![0.5, 0.5, 0.0, 0.0])),
    ] {
        let best = work.each(&format!("light, {name}"), reps, |seed| light(&habit, seed))?;
        add(&mut section, &format!("light learners pressing {name}"), &best);
    }
    let reps = work.size(400, 10);
    for (name, shape) in HOUSEHOLDS {
        let best = work.each(&format!("household, {name}"), reps, |seed| whole(shape, seed))?;
        add(&mut section, &format!("households, {name}"), &best);
    }
    // For comparison: with true understanding the same tests do find something.
    let best = work.each("household, understands", work.size(100, 4), |seed| whole(understands, seed))?;
    let any = best.iter().filter(|r| **r >= Rung::DiffersByWord).count();
    section.add(Finding::share("households, understands: any claim (power)", Wanted::AtLeast(0.8), any, best.len()));
    let top = best.iter().filter(|r| **r == Rung::StandsUpToBlindCheck).count();
    section.add(Finding::share("households, understands: top rung (power)", Wanted::Known, top, best.len()));
    section.text("Light learners: four words, 160 presses, situations and answers as in the power experiment, and a blind check of three words carried out as planned, at chance. Households: six weeks, three words, invitations, two blind checks (things laid out, 36 trials each), one check by pressing; everything as the Evidence page would read it. A claim is any rung from \"differs by word\" up, after the correction over all words and tests of the household.");
    Ok(section)
}

fn add(section: &mut Section, name: &str, best: &[Rung]) {
    let at = |least: Rung| best.iter().filter(|r| **r >= least).count();
    section.add(Finding::share(format!("{name}: any claim"), ANY, at(Rung::DiffersByWord), best.len()));
    section.add(Finding::share(format!("{name}: top rung"), TOP, at(Rung::StandsUpToBlindCheck), best.len()));
}

/// The highest rung of any word of a light learner that understands nothing.
pub fn light(habit: &LightPresser, seed: u64) -> Result<Rung, LabError> {
    let setting = LightSetting::default();
    let pressed = presses(habit, &setting, seed);
    let situations: Vec<PressIn> =
        pressed.iter().map(|p| PressIn { session: p.session, word: p.pressed, outcome: p.wanted }).collect();
    let found = association(&situations, Unit::Episode, MonteCarlo { seed, most: 1999, enough: 20 }).map_err(told)?;
    let uptake = uptake_by_word(&answered(&pressed, &setting, seed), |_| 0).map_err(told)?;
    let plan = plan_probe(&ProbeDesign::of(vec![0, 1, 2]), seed).map_err(told)?;
    let mut c = Chance::new(seed, 49);
    let trials: Vec<ProbeTrial> = plan
        .sittings
        .iter()
        .flatten()
        // A habit of place in the check as well: always the left one, or either.
        .map(|t| {
            let place = if *habit == LightPresser::Random { c.below(2) } else { 0 };
            ProbeTrial { word: t.word, right: Some(t.right_place == place), seconds: None }
        })
        .collect();
    let checked = analyse_probe(&trials, plan.chance).map_err(told)?;
    let conduct = Conduct { random_order: true, random_places: true, presenter_blind: true, scorer_blind: true };
    let words: Vec<WordEvidence> = found
        .by_word
        .iter()
        .map(|word| WordEvidence {
            word: word.word,
            presses: word.n,
            association_p: Some(word.p.p),
            fitting_p: uptake.iter().find(|u| u.word == word.word).map(|u| u.fitting.p),
            correction_p: None,
            probes: checked
                .iter()
                .filter(|r| r.word == word.word)
                .map(|r| ProbeEvidence {
                    seen: r.seen,
                    chance: plan.chance,
                    planned: plan.per_word,
                    carried_out: plan.per_word,
                    conduct,
                })
                .collect(),
        })
        .collect();
    let verdicts = climb(&words, &LadderRule::default()).map_err(told)?;
    Ok(verdicts.iter().map(|v| v.rung).max().unwrap_or(Rung::NothingYet))
}

type Shape = fn(&mut Household);
const HOUSEHOLDS: [(&str, Shape); 3] =
    [("any word", any_word), ("by place", by_place), ("by accident only", by_accident)];

fn any_word(home: &mut Household) {
    home.learners[0].presser.style = Style::AnyWord;
}

fn by_place(home: &mut Household) {
    home.learners[0].presser.style = Style::ByPlace(vec![0.7, 0.2, 0.1]);
}

fn by_accident(home: &mut Household) {
    let presser = &mut home.learners[0].presser;
    presser.first_logit = -20.0;
    presser.rate = 0.0;
    presser.accidents_per_hour = 0.5;
}

fn understands(home: &mut Household) {
    home.learners[0].presser.rate *= 1.5;
}

/// The highest rung of any word of a whole household, read from its events.
fn whole(shape: Shape, seed: u64) -> Result<Rung, LabError> {
    let mut home = plain_household(seed);
    home.words.iter_mut().for_each(|w| w.invited_from = Some(8));
    let learner = &mut home.learners[0];
    // Words stay at invitations, so that there are many.
    learner.plan.presses_to_converse = 11;
    let check = |day, design, trials| ProbeSchedule { day, design, words: vec![0, 1, 2], trials, blind: true };
    learner.plan.probes = vec![
        check(25, Design::PickForWord, 36),
        check(30, Design::PressForThing, 24),
        check(35, Design::PickForWord, 36),
    ];
    shape(&mut home);
    let run = simulate(&home, seed, end()?).map_err(told)?;
    let id = run.truth.ids.learners.first().copied().ok_or_else(|| told("no learner"))?;
    let found = claims(&Story::from_events(run.events), id, end()?).map_err(told)?;
    Ok(found.iter().map(|c| c.verdict.rung).max().unwrap_or(Rung::NothingYet))
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used)]
    use super::*;

    /// By the binomial: at true rates of 5 % and 1 %, ten claims or five top rungs among 40 come with probabilities of 2.1e-5
    /// and 4.9e-5.
    #[test]
    fn learners_that_understand_nothing_are_seldom_claimed() {
        let work = Work { seed: 11, quick: true };
        for habit in [LightPresser::Random, LightPresser::PlaceHabit(vec![0.6, 0.2, 0.15, 0.05])] {
            let best = work.each("bound", 40, |seed| light(&habit, seed)).unwrap();
            assert!(best.iter().filter(|r| **r >= Rung::DiffersByWord).count() < 10);
            assert!(best.iter().filter(|r| **r == Rung::StandsUpToBlindCheck).count() < 5);
        }
    }

    /// With a power of 80 %, seven or fewer found among 20 come with a probability of 1.5e-5.
    #[test]
    fn households_that_understand_are_found() {
        let work = Work { seed: 12, quick: true };
        let best = work.each("power bound", 20, |seed| whole(understands, seed)).unwrap();
        assert!(best.iter().filter(|r| **r >= Rung::DiffersByWord).count() > 7);
    }
}
