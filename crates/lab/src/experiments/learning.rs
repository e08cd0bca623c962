//! Is the learning curve's rate of learning, and its learning trial, too early, too late or right?

use super::Section;
use crate::error::{LabError, told};
use crate::report::figure::{Finding, In, Wanted};
use crate::work::Work;
use sayso_methods::learning::curve::{CurveSettings, LearningCurve, learning_curve};
use sayso_methods::learning::shown::curve_by_day;
use sayso_methods::stats::Level;
use sayso_sim::{Chance, logistic};

/// The chance level the curves are held against: three words on the board.
pub const CHANCE: f64 = 1.0 / 3.0;
const TRIALS: usize = 60;
/// Trials of one day.
const A_DAY: usize = 4;
/// Trial at which [`Animal::Step`] changes.
const STEP_AT: usize = 20;

/// Light learners of one word.
#[derive(Clone, Copy, PartialEq, Debug)]
pub enum Animal {
    /// Presses at chance and does not change.
    Flat,
    /// Starts at chance; the logit grows a little every trial.
    Steady,
    /// Starts at chance; the logit wanders.
    Wanders,
    /// Chance up to the twentieth trial, then 0.85.
    Step,
    /// Starts at 2 %, far below chance: it hardly presses at all, as a new learner does; then it grows.
    FromNothing,
    /// Grows from below chance, and every day is better or worse by a normal amount (one logit).
    Wobbles,
    /// Presses with 0.85; in the last quarter of the trials with 0.3.
    LosesInterest,
}

/// Those whose band is looked at: all.
pub const BAND_ANIMALS: [Animal; 7] = [
    Animal::Flat,
    Animal::Steady,
    Animal::Wanders,
    Animal::Step,
    Animal::FromNothing,
    Animal::Wobbles,
    Animal::LosesInterest,
];

/// Those whose rate of learning is looked at.
const ANIMALS: [Animal; 5] = [Animal::Flat, Animal::Steady, Animal::Wanders, Animal::Step, Animal::FromNothing];

impl Animal {
    /// In words.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Flat => "flat at chance",
            Self::Steady => "grows from chance",
            Self::Wanders => "wanders from chance",
            Self::Step => "steps at trial 20",
            Self::FromNothing => "grows from 2 %",
            Self::Wobbles => "good and bad days",
            Self::LosesInterest => "loses interest late",
        }
    }

    /// True probabilities and presses.
    pub fn live(self, trials: usize, seed: u64) -> (Vec<f64>, Vec<Option<bool>>) {
        let zero = (CHANCE / (1.0 - CHANCE)).ln();
        let (first, gain, noise) = match self {
            Self::Flat => (zero, 0.0, 0.0),
            Self::Steady => (zero, 0.06, 0.03),
            Self::Wanders => (zero, 0.0, 0.25),
            Self::FromNothing => (-4.0, 0.15, 0.05),
            Self::Step => {
                return presses(seed, (1..=trials).map(|k| if k < STEP_AT { CHANCE } else { 0.85 }).collect());
            }
            Self::LosesInterest => {
                return presses(seed, (0..trials).map(|k| if 4 * k < 3 * trials { 0.85 } else { 0.3 }).collect());
            }
            Self::Wobbles => {
                let mut c = Chance::new(seed, 47);
                let days: Vec<f64> = (0..trials.div_ceil(A_DAY)).map(|_| c.normal()).collect();
                let at = |k: usize| logistic(zero - 0.5 + 0.06 * k as f64 + days[k / A_DAY]);
                return presses(seed, (0..trials).map(at).collect());
            }
        };
        let light = crate::light::learning_curve(first, gain, noise, trials, seed);
        (light.probability, light.pressed.into_iter().map(Some).collect())
    }
}

/// Presses with those probabilities.
fn presses(seed: u64, truth: Vec<f64>) -> (Vec<f64>, Vec<Option<bool>>) {
    let mut c = Chance::new(seed, 45);
    let pressed = truth.iter().map(|p| Some(c.coin(*p))).collect();
    (truth, pressed)
}

/// Ways of fitting the curve.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Fit {
    /// The published method: one word, EM, the start held at chance.
    Published,
    /// As the Evidence page shows it: the doubt about the step variance in the band, the start left open, good and bad days and
    /// a leap allowed for.
    Shown,
}

impl Fit {
    /// All of them.
    pub const ALL: [Self; 2] = [Self::Published, Self::Shown];

    /// In words.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Published => "published method (EM)",
            Self::Shown => "as shown (averaged, start open, days, a leap)",
        }
    }

    /// The curve.
    pub fn curve(self, pressed: &[Option<bool>]) -> Result<LearningCurve, LabError> {
        match self {
            Self::Published => learning_curve(pressed, CHANCE, &CurveSettings::default()).map_err(told),
            Self::Shown => {
                let days: Vec<i32> = (0..pressed.len()).map(|k| (k / A_DAY) as i32).collect();
                curve_by_day(pressed, &days, CHANCE, Level::P90).map_err(told)
            }
        }
    }
}

/// What one learner gave.
struct Learned {
    /// Logits gained a trial over all trials, estimated less true.
    rate_off: f64,
    /// Trials by which the estimate gets half of the way from chance to 1 later than the truth; none if either does not.
    half_late: Option<f64>,
    /// The learning trial, and the true probability there.
    declared: Option<(usize, f64)>,
}

/// Runs the experiment.
pub fn run(work: &Work) -> Result<Section, LabError> {
    let mut section = Section::new("Rate of learning and learning trial");
    let reps = work.size(400, 4);
    for animal in ANIMALS {
        for fit in Fit::ALL {
            let what = format!("{}, {}", fit.name(), animal.name());
            let all = work.each(&format!("rate: {what}"), reps, |seed| learned(animal, fit, seed))?;
            let rates: Vec<f64> = all.iter().map(|l| 10.0 * l.rate_off).collect();
            let unit = In::Number("logits in ten trials");
            section.add(Finding::mean(
                format!("rate estimated less true, {what}"),
                Wanted::Within(-0.2, 0.2),
                &rates,
                unit,
            ));
            let declared: Vec<(usize, f64)> = all.iter().filter_map(|l| l.declared).collect();
            match animal {
                Animal::Flat => {
                    let what = format!("learning declared where there is none, {what}");
                    section.add(Finding::share(what, Wanted::AtMost(0.05), declared.len(), reps));
                }
                Animal::Step => {
                    let late: Vec<f64> = declared.iter().map(|d| d.0 as f64 - STEP_AT as f64).collect();
                    let wanted = Wanted::Within(-5.0, 10.0);
                    section.add(Finding::middle(
                        format!("learning trial after the true step, {what}"),
                        wanted,
                        &late,
                        In::Number("trials"),
                    ));
                    for (by, wanted) in [(0.0, Wanted::Known), (5.0, Wanted::AtMost(0.1))] {
                        let early = late.iter().filter(|l| **l < -by).count();
                        let what = format!("declared more than {by} trials before the step, {what}");
                        section.add(Finding::share(what, wanted, early, reps));
                    }
                    section.add(Finding::share(
                        format!("declared by trial 60, {what}"),
                        Wanted::AtLeast(0.9),
                        late.len(),
                        reps,
                    ));
                }
                Animal::Steady | Animal::FromNothing => {
                    let late: Vec<f64> = all.iter().filter_map(|l| l.half_late).collect();
                    let wanted = Wanted::Within(-5.0, 5.0);
                    section.add(Finding::middle(
                        format!("half-way point estimated after the true one, {what}"),
                        wanted,
                        &late,
                        In::Number("trials"),
                    ));
                    let wrong = declared.iter().filter(|d| d.1 <= CHANCE).count();
                    let what = format!("true probability not above chance at the learning trial, {what}");
                    section.add(Finding::share(what, Wanted::AtMost(0.05), wrong, reps));
                }
                Animal::Wanders | Animal::Wobbles | Animal::LosesInterest => {}
            }
        }
    }
    section.text(format!("{TRIALS} trials, {A_DAY} a day, chance {CHANCE:.2}. The rate is the change of the logit over all trials divided by their number. The learning trial is the first from which the lower end of the 90 % band stays above chance; half-way is a probability half-way from chance to 1."));
    Ok(section)
}

fn learned(animal: Animal, fit: Fit, seed: u64) -> Result<Learned, LabError> {
    let (truth, pressed) = animal.live(TRIALS, seed);
    let curve = fit.curve(&pressed)?;
    let logit = |p: f64| (p / (1.0 - p)).ln();
    let estimated: Vec<f64> = curve.points.iter().map(|p| p.p).collect();
    let rate = |p: &[f64]| match (p.first(), p.last()) {
        (Some(first), Some(last)) => (logit(*last) - logit(*first)) / (p.len() as f64 - 1.0),
        _ => 0.0,
    };
    let half = f64::midpoint(CHANCE, 1.0);
    let crosses = |p: &[f64]| p.iter().position(|p| *p >= half).map(|k| k as f64);
    Ok(Learned {
        rate_off: rate(&estimated) - rate(&truth),
        half_late: crosses(&estimated).zip(crosses(&truth)).map(|(e, t)| e - t),
        declared: curve.learning_trial.and_then(|k| truth.get(k - 1).map(|t| (k, *t))),
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn animals_are_what_their_names_say() {
        let at = |l: Animal, k: usize| l.live(60, 1).0[k];
        assert!((at(Animal::Flat, 59) - CHANCE).abs() < 1e-12);
        assert!((at(Animal::FromNothing, 0) - logistic(-4.0)).abs() < 1e-12);
        assert!(at(Animal::Steady, 59) > 0.8 && at(Animal::Step, 19) > 0.8 && at(Animal::Step, 18) < 0.4);
    }
}
