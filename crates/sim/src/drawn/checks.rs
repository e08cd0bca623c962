//! Planned checks, a few trials a day, and what a person may do to them.

use super::checking::Check;
use super::life::Life;
use super::mind::LaidOut;
use super::rounds::AHEAD_S;
use super::{DrawnCheck, Trick};
use sayso_model::order::{PlannedTrial, order};
use sayso_model::*;

/// Trials on one day.
const A_DAY: usize = 16;
/// Checks begun in place of dropped ones, for each that was planned.
const IN_PLACE: u32 = 15;

impl Life<'_> {
    pub(super) fn check_due(&self, day: u32) -> bool {
        self.checking.on.is_some() || self.home.checks.get(self.checking.begun).is_some_and(|c| c.day <= day)
    }

    fn begins_check(&mut self, planned: DrawnCheck) -> Check {
        let words = self.book.words.clone();
        let count = u16::try_from(words.len()).unwrap_or(u16::MAX);
        let plan = ProbePlan {
            probe: ProbeId(self.book.fresh(self.now)),
            design: planned.design,
            choices: if planned.design == ProbeDesign::PressForThing { count } else { 2 },
            trials: planned.trials_a_word * count,
            seed: self.chance.seed(),
            blind: planned.blind,
            words,
        };
        self.book.writes(self.now, plan.clone());
        // Four words, each once: there is an order.
        let left = order(&plan).unwrap_or_default().into();
        Check { plan, left, right: 0, wrong: 0 }
    }

    /// A day's trials.
    pub(super) fn check(&mut self) {
        self.mind.sits_down(&mut self.chance);
        let mut trials = 0;
        while trials < A_DAY {
            let Some(planned) = self.home.checks.get(self.checking.begun).copied() else { return };
            let mut check = match self.checking.on.take() {
                Some(check) => check,
                None => self.begins_check(planned),
            };
            let mut over = true;
            while let Some(trial) = check.left.pop_front() {
                self.waits(30.0);
                trials += 1;
                if !self.trial(&mut check, &trial) {
                    break;
                }
                if trials >= A_DAY && !check.left.is_empty() {
                    over = false;
                    break;
                }
            }
            if !over {
                self.checking.on = Some(check);
                return;
            }
            if !check.left.is_empty() && self.checking.in_place < IN_PLACE {
                self.checking.in_place += 1;
            } else {
                self.checking.in_place = 0;
                self.checking.begun += 1;
                return;
            }
        }
    }

    /// One trial. Gives whether the check goes on.
    fn trial(&mut self, check: &mut Check, trial: &PlannedTrial) -> bool {
        let places: Vec<usize> = trial.laid_out.iter().map(|w| self.book.word(*w)).collect();
        let target = self.book.word(trial.word);
        let known = !check.plan.blind;
        let pick = |life: &mut Self| {
            // Now and then it takes nothing.
            if life.chance.coin(0.05) {
                return None;
            }
            let laid = LaidOut { places: &places, target, known };
            let place = if check.plan.design == ProbeDesign::PressForThing
                && !matches!(life.home.habit, super::Habit::Means(_))
            {
                let word = life.mind.aims(Some(super::mind::Offer { thing: target, known }), &mut life.chance);
                life.mind.gets(target, &mut life.chance);
                places.iter().position(|w| *w == word).unwrap_or(0)
            } else {
                life.mind.picks(laid, &mut life.chance)
            };
            Some(places[place])
        };
        let mut chose = pick(self);
        let right = |chose: Option<usize>| chose == Some(target);
        let is_wrong = |chose: Option<usize>| chose.is_some_and(|c| c != target);
        let body = |life: &Self, chose: Option<usize>| ProbeTrial {
            probe: check.plan.probe,
            trial: trial.number,
            target: trial.word,
            blind: check.plan.blind,
            response: chose
                .map_or(ProbeResponse::Nothing, |c| ProbeResponse::Chose { word: life.book.words[c], after_s: None }),
        };
        let does = |life: &Self, trick| life.home.does(trick);
        if is_wrong(chose) && does(self, Trick::DropsAtWrong) {
            return false;
        }
        if is_wrong(chose) && does(self, Trick::DropsBadChecks) && check.wrong >= 2 && check.wrong >= check.right {
            return false;
        }
        let ahead = if is_wrong(chose) && does(self, Trick::DatesAhead) { AHEAD_S } else { 0.0 };
        let first = body(self, chose);
        let written = self.book.writes_dated(self.now, self.now.plus_seconds(ahead), first);
        if is_wrong(chose) && does(self, Trick::CorrectsToRight) {
            let mended = body(self, Some(target));
            self.book.corrects(self.now.plus_seconds(5.0), written, None, mended);
        }
        if is_wrong(chose) && (does(self, Trick::TakesBack) || does(self, Trick::ExtraTrials)) {
            if does(self, Trick::TakesBack) {
                self.book.takes_back(self.now.plus_seconds(5.0), written);
            }
            for _ in 0..4 {
                self.waits(15.0);
                chose = pick(self);
                if right(chose) {
                    let again = body(self, chose);
                    self.book.writes(self.now, again);
                    break;
                }
            }
        }
        if right(chose) {
            check.right += 1;
        } else if chose.is_some() {
            check.wrong += 1;
        }
        true
    }
}
