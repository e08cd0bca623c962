//! Likes tests in all four formats, and checks of understanding.

use crate::chance::logistic;
use crate::plan::{LikesPlan, ProbeSchedule};
use crate::sitting::Sitting;
use crate::world::{World, seconds};
use sayso_model::order::order;
use sayso_model::*;

/// A taste in a likes test satiates this much of a portion.
const TASTE: f64 = 0.4;
/// Length of a free-access test in seconds (Roane et al. 1998: five minutes).
const FREE_S: f64 = 300.0;
/// Probability of walking away rather than staying when nothing is chosen.
const WALKS: f64 = 0.2;

impl World<'_> {
    /// A likes test, put off if the learner does not join. Gives the end, and whether it was run.
    pub(crate) fn likes_session(
        &mut self,
        animal: usize,
        person: usize,
        at: Moment,
        plan: &LikesPlan,
    ) -> (Moment, bool) {
        let (over, sitting) = self.sit_down(animal, person, at, Purpose::Likes, &[]);
        let Some(mut s) = sitting else { return (over, false) };
        let assessment = AssessmentId(self.pen.fresh(s.at));
        let test = LikesTest {
            assessment,
            format: plan.format,
            rewards: plan.rewards.iter().map(|r| self.ids.rewards[*r]).collect(),
            rounds: plan.rounds,
            seed: self.chance.seed(),
        };
        self.note(animal, person, s.at, test);
        s.at = s.at.plus_seconds(4.0);
        for round in 1..=plan.rounds {
            match plan.format {
                LikesFormat::Single => self.single_round(&mut s, assessment, round, &plan.rewards),
                LikesFormat::Paired => self.paired_round(&mut s, assessment, round, &plan.rewards),
                LikesFormat::Multiple => self.multiple_round(&mut s, assessment, round, &plan.rewards),
                LikesFormat::FreeAccess => self.free_round(&mut s, assessment, round, &plan.rewards),
            }
        }
        self.stand_up(&mut s, EndReason::Done);
        (s.at, true)
    }

    fn trial(&mut self, s: &mut Sitting, trial: LikeTrial, chosen: Option<usize>) {
        let over = s.at.plus_seconds(self.chance.between(2.0, 9.0));
        let seen = self.tap(s.animal, s.person, s.at, over);
        self.pen.write(seen, trial);
        s.at = over;
        if let Some(reward) = chosen {
            self.minds[s.animal].has(reward, TASTE, over);
            self.eats(s.animal, reward, s.person, over, Some(s.session));
        }
        s.at = s.at.plus_seconds(self.chance.between(5.0, 15.0));
    }

    fn none_chosen(&mut self) -> LikeOutcome {
        if self.chance.coin(WALKS) { LikeOutcome::WalkedAway } else { LikeOutcome::ChoseNone }
    }

    fn single_round(&mut self, s: &mut Sitting, assessment: AssessmentId, round: u16, rewards: &[usize]) {
        let mut order = rewards.to_vec();
        self.chance.shuffle(&mut order);
        for reward in order {
            let hour = self.hour(s.at);
            let p = self.minds[s.animal].wants(reward, s.at, hour);
            let chosen = self.chance.coin(p).then_some(reward);
            let id = self.ids.rewards[reward];
            let result = match chosen {
                Some(_) => LikeOutcome::Chose { reward: id },
                None => self.none_chosen(),
            };
            let trial = LikeTrial { assessment, format: LikesFormat::Single, round, offered: vec![id], result };
            self.trial(s, trial, chosen);
        }
    }

    /// The item chosen among those offered from left to right (Luce's rule, with a side bias and a choice of none).
    fn chooses(&mut self, s: &Sitting, offered: &[usize]) -> Option<usize> {
        let hour = self.hour(s.at);
        let presser = &self.cfg.animals[s.animal].presser;
        let mut weights: Vec<f64> = offered
            .iter()
            .enumerate()
            .map(|(i, r)| {
                #[allow(clippy::cast_precision_loss)]
                let side = if offered.len() < 2 { 0.0 } else { 0.5 - i as f64 / (offered.len() - 1) as f64 };
                (self.minds[s.animal].appeal(*r, s.at, hour) + side * presser.side_bias).exp()
            })
            .collect();
        weights.push(presser.none_logit.exp());
        self.chance.pick(&weights).and_then(|i| offered.get(i)).copied()
    }

    fn paired_round(&mut self, s: &mut Sitting, assessment: AssessmentId, round: u16, rewards: &[usize]) {
        let mut pairs = Vec::new();
        for (i, a) in rewards.iter().enumerate() {
            for b in &rewards[i + 1..] {
                // Sides alternate over pairs and rounds, so that each item is on the left about half the time.
                let swap = (pairs.len() + usize::from(round)) % 2 == 0;
                pairs.push(if swap { [*b, *a] } else { [*a, *b] });
            }
        }
        self.chance.shuffle(&mut pairs);
        for offered in pairs {
            let chosen = self.chooses(s, &offered);
            let result = match chosen {
                Some(r) => LikeOutcome::Chose { reward: self.ids.rewards[r] },
                None => self.none_chosen(),
            };
            let offered = offered.iter().map(|r| self.ids.rewards[*r]).collect();
            let trial = LikeTrial { assessment, format: LikesFormat::Paired, round, offered, result };
            self.trial(s, trial, chosen);
        }
    }

    fn multiple_round(&mut self, s: &mut Sitting, assessment: AssessmentId, round: u16, rewards: &[usize]) {
        let mut left = rewards.to_vec();
        self.chance.shuffle(&mut left);
        while !left.is_empty() {
            let chosen = self.chooses(s, &left);
            let result = match chosen {
                Some(r) => LikeOutcome::Chose { reward: self.ids.rewards[r] },
                None => self.none_chosen(),
            };
            let offered = left.iter().map(|r| self.ids.rewards[*r]).collect();
            let trial = LikeTrial { assessment, format: LikesFormat::Multiple, round, offered, result };
            self.trial(s, trial, chosen);
            let Some(r) = chosen else { break };
            left.retain(|x| *x != r);
            // The rest move up one place, the first to the end (DeLeon and Iwata 1996).
            if !left.is_empty() {
                left.rotate_left(1);
            }
        }
    }

    fn free_round(&mut self, s: &mut Sitting, assessment: AssessmentId, round: u16, rewards: &[usize]) {
        let hour = self.hour(s.at);
        let none = self.cfg.animals[s.animal].presser.none_logit.exp();
        // Time is spent in bouts; each bout goes to an item by Luce's rule.
        let weights: Vec<f64> = rewards
            .iter()
            .map(|r| self.minds[s.animal].appeal(*r, s.at, hour).exp())
            .chain(std::iter::once(none))
            .collect();
        let (mut spent, mut left) = (vec![0.0; rewards.len()], FREE_S);
        while left > 0.5 {
            let bout = self.chance.exponential(25.0).min(left);
            left -= bout;
            if let Some(i) = self.chance.pick(&weights)
                && i < rewards.len()
            {
                spent[i] += bout;
            }
        }
        let engaged: Vec<Engaged> = rewards
            .iter()
            .zip(&spent)
            .filter(|(_, t)| **t > 0.0)
            .map(|(r, t)| Engaged { reward: self.ids.rewards[*r], seconds: seconds(*t) })
            .collect();
        let result = LikeOutcome::Observed { observed_s: seconds(FREE_S), engaged };
        let offered = rewards.iter().map(|r| self.ids.rewards[*r]).collect();
        let trial = LikeTrial { assessment, format: LikesFormat::FreeAccess, round, offered, result };
        let over = s.at.plus_seconds(FREE_S);
        let seen = self.tap(s.animal, s.person, s.at, over);
        self.pen.write(seen, trial);
        s.at = over;
    }

    /// A check of understanding. Gives the end, and whether it was run.
    pub(crate) fn probe_session(
        &mut self,
        animal: usize,
        person: usize,
        at: Moment,
        plan: &ProbeSchedule,
    ) -> (Moment, bool) {
        let (over, sitting) = self.sit_down(animal, person, at, Purpose::Probe, &plan.words);
        let Some(mut s) = sitting else { return (over, false) };
        let probe = ProbeId(self.pen.fresh(s.at));
        let choices = u16::try_from(plan.words.len().max(2)).unwrap_or(u16::MAX);
        let body = ProbePlan {
            probe,
            design: plan.design,
            words: plan.words.iter().map(|w| self.ids.words[*w]).collect(),
            choices,
            trials: plan.trials,
            seed: self.chance.seed(),
            blind: plan.blind,
        };
        // The truth was checked: two words at least, none twice, so there is an order.
        let drawn = order(&body).unwrap_or_default();
        let targets: Vec<usize> =
            drawn.iter().filter_map(|t| plan.words.iter().copied().find(|w| self.ids.words[*w] == t.word)).collect();
        self.note(animal, person, s.at, body);
        s.at = s.at.plus_seconds(5.0);
        for (trial, target) in (1..).zip(targets) {
            let (response, leaves) = self.probe_response(&s, plan, target);
            let body = ProbeTrial { probe, trial, target: self.ids.words[target], blind: plan.blind, response };
            let over = s.at.plus_seconds(self.chance.between(4.0, 12.0));
            let seen = self.tap(animal, person, s.at, over);
            self.pen.write(seen, body);
            s.at = over.plus_seconds(self.chance.between(10.0, 30.0));
            if leaves {
                self.note(animal, person, s.at, Leaving { session: s.session });
                self.stand_up(&mut s, EndReason::AnimalLeft);
                return (s.at, true);
            }
        }
        self.stand_up(&mut s, EndReason::Done);
        (s.at, true)
    }

    fn probe_response(&mut self, s: &Sitting, plan: &ProbeSchedule, target: usize) -> (ProbeResponse, bool) {
        let hour = self.hour(s.at);
        let presser = &self.cfg.animals[s.animal].presser;
        let wants = self.minds[s.animal].wants(self.cfg.words[target].reward, s.at, hour);
        if !self.chance.coin(logistic(wants * 4.0)) {
            let leaves = self.chance.coin(0.1);
            return (if leaves { ProbeResponse::Left } else { ProbeResponse::Nothing }, leaves);
        }
        let knows = match presser.style {
            crate::animal::Style::ByMeaning => self.minds[s.animal].understands(target),
            _ => 0.0,
        };
        let cued = !plan.blind && self.chance.coin(presser.cued);
        let after_s = Some(seconds(self.minds[s.animal].latency(target, &mut self.chance)));
        if cued || self.chance.coin(knows) {
            return (ProbeResponse::Chose { word: self.ids.words[target], after_s }, false);
        }
        // A wrong delivery that is not put right looks like nothing pressed.
        if plan.design == ProbeDesign::WrongDelivery && self.chance.coin(0.5) {
            return (ProbeResponse::Nothing, false);
        }
        let word = match &presser.style {
            crate::animal::Style::ByPlace(w) if plan.design == ProbeDesign::PressForThing => {
                let weights: Vec<f64> = plan.words.iter().map(|x| w.get(*x).copied().unwrap_or(0.0)).collect();
                self.chance.pick(&weights).map_or(target, |i| plan.words[i])
            }
            _ => plan.words[self.chance.below(plan.words.len())],
        };
        (ProbeResponse::Chose { word: self.ids.words[word], after_s }, false)
    }
}
