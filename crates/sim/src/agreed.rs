//! What the notebook draws in a household: rounds of invitations, and answers in agreed times of swaps.

use crate::answer::Pressed;
use crate::clock::at_hour;
use crate::sitting::Sitting;
use crate::world::World;
use sayso_model::*;

impl World<'_> {
    /// As many whole rounds as the session has invitations for, at least one; over when the learner leaves.
    pub(crate) fn rounds(&mut self, mut s: Sitting, words: &[usize]) -> Moment {
        let animal = s.animal;
        for _ in 0..(self.cfg.animals[animal].plan.invitations / draw::CALLS).max(1) {
            // What is not to hand is left out before anything is drawn.
            let open: Vec<usize> = words.iter().copied().filter(|w| self.still_given(animal, *w)).collect();
            if open.len() < 2 {
                break;
            }
            let round = RoundId(self.pen.fresh(s.at));
            let ids = open.iter().map(|w| self.ids.words[*w]).collect();
            let body = Round { round, words: ids, calls: draw::CALLS, session: Some(s.session) };
            self.note(animal, s.person, s.at, body.clone());
            s.at = s.at.plus_seconds(2.0);
            for number in 1..=draw::CALLS {
                let Some(word) = draw::called(round, number, &body.words)
                    .and_then(|called| open.iter().copied().find(|w| self.ids.words[*w] == called))
                else {
                    continue;
                };
                self.invite(&mut s, word, words, Some(Call { round, number }));
                if !self.stays(&mut s) {
                    return s.at;
                }
            }
        }
        self.finish(&mut s);
        s.at
    }

    /// In the morning: a time of swaps begins, or is stopped, or is over.
    pub(crate) fn agrees(&mut self, animal: usize, number: u32, day: Day) {
        let cfg = self.cfg;
        let at = at_hour(day, 6.8, &cfg.zone);
        for schedule in &cfg.animals[animal].plan.swaps {
            if let Some((_, reason)) = schedule.stopped.filter(|(day, _)| *day == number)
                && let Some((plan, _)) = self.swaps[animal].take()
            {
                self.note(animal, 0, at, SwapStop { swap: plan.swap, reason });
            }
            let words = self.at_stage(animal, &[Stage::Invite, Stage::Converse]);
            if schedule.day == number && words.len() >= 2 {
                let swap = SwapId(self.pen.fresh(at));
                let words = words.iter().map(|w| self.ids.words[*w]).collect();
                let plan = SwapPlan { swap, words, one_in: draw::ONE_IN, days: schedule.days };
                self.note(animal, 0, at, plan.clone());
                self.swaps[animal] = Some((plan, at));
            }
        }
    }

    /// Draws what is to be given for a press of ordinary life, and writes it down; none where nothing is drawn.
    pub(crate) fn draws(&mut self, p: &Pressed, press: EventId, person: usize) -> Option<usize> {
        let (plan, begun) = self.swaps[p.animal].clone().filter(|_| p.session.is_none())?;
        let word = self.ids.words[p.word];
        let running = p.at.seconds_since(begun) < f64::from(plan.days) * 86_400.0;
        if !running || !plan.words.contains(&word) {
            return None;
        }
        let partner = draw::partner(&plan.words, draw::block(begun, p.at)?, word);
        let give = partner.filter(|_| draw::swapped(plan.swap, press, plan.one_in)).unwrap_or(word);
        self.note(p.animal, person, p.at.plus_seconds(0.2), SwapDraw { swap: plan.swap, press, word, give });
        self.ids.words.iter().position(|w| *w == give)
    }
}
