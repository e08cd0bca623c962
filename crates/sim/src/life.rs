//! A day: planned sessions in their order, and ordinary life between them.

use crate::answer::Pressed;
use crate::clock::at_hour;
use crate::truth::{TrueDay, Why};
use crate::world::World;
use sayso_model::*;

/// Ordinary life goes by in steps of this many seconds.
const STEP_S: f64 = 600.0;
/// Probability that somebody is near enough to see what the learner does.
const SEEN: f64 = 0.75;

#[derive(Clone, Copy, Debug)]
enum Planned {
    Likes(usize),
    Probe(usize),
    Training,
}

impl World<'_> {
    /// One learner's day, up to the end of the run.
    pub(crate) fn live(&mut self, animal: usize, number: u32, day: Day, last: bool) -> TrueDay {
        self.minds[animal].new_day(number, &mut self.chance);
        self.kcal[animal] = 0.0;
        for p in &mut self.progress[animal] {
            p.today = 0;
        }
        self.agrees(animal, number, day);
        let zone = &self.cfg.zone;
        let awake = self.cfg.animals[animal].plan.awake;
        let mut agenda = self.agenda(animal, number, day, last);
        let first = agenda.first().map(|(at, _)| *at);
        let mut at = at_hour(day, awake.0, zone);
        if last && let Some(first) = first {
            at = at.min(first);
        }
        let until = at_hour(day, awake.1, zone).min(self.end);
        agenda.reverse();
        while at < until {
            if agenda.last().is_some_and(|(when, _)| *when <= at) {
                if let Some((_, planned)) = agenda.pop() {
                    at = self.run(animal, planned, at).plus_seconds(self.chance.between(30.0, 200.0));
                }
                continue;
            }
            let mut step = STEP_S.min(until.seconds_since(at));
            if let Some((when, _)) = agenda.last() {
                step = step.min(when.seconds_since(at));
            }
            self.ordinary(animal, at, step);
            at = at.plus_seconds(step.max(0.001));
        }
        if !last {
            self.settle(animal, number, day);
        }
        self.true_day(animal, day)
    }

    fn true_day(&self, animal: usize, day: Day) -> TrueDay {
        let mind = &self.minds[animal];
        let words = 0..self.cfg.words.len();
        TrueDay {
            animal,
            day,
            mood: mind.mood(12.0),
            understanding: words
                .clone()
                .map(|w| if self.taught(animal, w) { mind.understands(w) } else { 0.0 })
                .collect(),
            wanting: (0..self.cfg.rewards.len()).map(|r| mind.wants_all_day(r)).collect(),
            showings: words.map(|w| self.progress[animal][w].showings).collect(),
        }
    }

    /// What is planned for a day, in order. On the last day something always lies before the end, if there is room.
    fn agenda(&mut self, animal: usize, number: u32, day: Day, last: bool) -> Vec<(Moment, Planned)> {
        let plan = &self.cfg.animals[animal].plan;
        let zone = &self.cfg.zone;
        let mut agenda = Vec::new();
        for hour in &plan.hours {
            let moved = hour + 0.3 * self.chance.normal().clamp(-2.0, 2.0);
            if self.chance.coin(plan.kept) || last {
                agenda.push((at_hour(day, moved.clamp(0.0, 23.5), zone), Planned::Training));
            }
        }
        if !last {
            let at = at_hour(day, 11.0 + self.chance.between(0.0, 2.0), zone);
            if let Some(i) = self.likes_due[animal].iter().copied().find(|i| plan.likes[*i].day <= number) {
                agenda.push((at, Planned::Likes(i)));
            } else if let Some(i) = self.probes_due[animal].iter().copied().find(|i| plan.probes[*i].day <= number) {
                agenda.push((at.plus_seconds(7200.0), Planned::Probe(i)));
            }
        } else {
            let start = day.start(zone);
            agenda.retain(|(at, _)| at.plus_seconds(900.0) < self.end);
            let room = self.end.seconds_since(start);
            if agenda.is_empty() && room > 1200.0 && !plan.hours.is_empty() {
                agenda.push((self.end.plus_seconds(-room.min(2400.0) * 0.75), Planned::Training));
            }
        }
        agenda.sort_by_key(|(at, _)| *at);
        agenda
    }

    fn run(&mut self, animal: usize, planned: Planned, at: Moment) -> Moment {
        let hour = self.hour(at);
        let person = self.someone(hour);
        let cfg = self.cfg;
        let plan = &cfg.animals[animal].plan;
        match planned {
            Planned::Likes(i) => {
                let (over, run) = self.likes_session(animal, person, at, &plan.likes[i]);
                if run {
                    self.likes_due[animal].retain(|x| *x != i);
                }
                over
            }
            Planned::Probe(i) => {
                let (over, run) = self.probe_session(animal, person, at, &plan.probes[i]);
                if run {
                    self.probes_due[animal].retain(|x| *x != i);
                }
                over
            }
            Planned::Training => {
                let inviting = !self.at_stage(animal, &[Stage::Invite]).is_empty();
                if inviting && self.chance.coin(0.5) {
                    self.inviting_session(animal, person, at)
                } else {
                    self.showing_session(animal, person, at)
                }
            }
        }
    }

    /// A stretch of ordinary life: wants, accidents, brushes, looks.
    fn ordinary(&mut self, animal: usize, from: Moment, step: f64) {
        let hours = step / 3600.0;
        let hour = self.hour(from);
        let presser = &self.cfg.animals[animal].presser;
        let some_time = |w: &mut Self| from.plus_seconds(w.chance.between(0.0, step * 0.9));
        for word in self.at_stage(animal, &[Stage::Show, Stage::Invite, Stage::Converse]) {
            let reward = self.cfg.words[word].reward;
            let mind = &self.minds[animal];
            let rate = presser.asks_per_hour * mind.demand(word) * mind.wants(reward, from, hour);
            if self.chance.coin(1.0 - (-rate * hours).exp()) {
                let at = some_time(self);
                self.asks(animal, word, at);
            }
        }
        let happens = |w: &mut Self, rate: f64| w.chance.coin(1.0 - (-rate * hours).exp());
        if happens(self, presser.accidents_per_hour)
            && let Some(word) = self.comes_near(animal)
        {
            let at = some_time(self);
            let p = Pressed { animal, word, why: Why::Accident, wanted: None, session: None, at };
            self.pressed_at_home(p);
        }
        if happens(self, presser.brushes_per_hour)
            && let Some(word) = self.comes_near(animal)
        {
            let at = some_time(self);
            let person = self.someone(hour);
            let word = self.ids.words[word];
            self.note(animal, person, at, Brush { word, session: None });
        }
        if let Some((rate, food, kcal)) = &self.cfg.animals[animal].plan.extra {
            let (from_hour, to_hour) = self.cfg.animals[animal].plan.awake;
            if happens(self, rate / (to_hour - from_hour).max(1.0)) {
                let at = some_time(self);
                let person = self.someone(hour);
                self.kcal[animal] += kcal.get();
                let (food, kcal) = (Some(food.clone()), *kcal);
                let body = Feed { reward: None, food, pieces: Some(1), grams: None, kcal, session: None };
                self.note(animal, person, at, body);
            }
        }
        if happens(self, presser.looks_per_hour) {
            let at = some_time(self);
            let person = self.someone(hour);
            let word = if self.chance.coin(0.5) { self.comes_near(animal) } else { None };
            let word = word.map(|w| self.ids.words[w]);
            self.note(animal, person, at, Look { word, session: None });
        }
    }

    /// The learner wants a word's thing: it presses, or asks in its own way, or lets it be.
    fn asks(&mut self, animal: usize, word: usize, at: Moment) {
        let p = self.presses(animal, word);
        if self.chance.coin(p) {
            let (pressed, why) = self.aims(animal, word);
            self.pressed_at_home(Pressed { animal, word: pressed, why, wanted: Some(word), session: None, at });
            return;
        }
        let own = self.cfg.animals[animal].presser.own_way;
        if self.chance.coin(own) && self.chance.coin(SEEN) {
            let hour = self.hour(at);
            let person = self.someone(hour);
            let shown = self.still_given(animal, word) && self.chance.coin(0.7);
            let reward = &self.cfg.rewards[self.cfg.words[word].reward];
            let ways = own_ways(reward.kind);
            let how = Label::new(ways[self.chance.below(ways.len())]).ok();
            let later = at.plus_seconds(40.0);
            let body = Catch { word: self.ids.words[word], how, shown, session: None };
            let seen = self.tap(animal, person, at, later);
            self.pen.write(seen, body);
            if shown {
                self.show(animal, word, person, at.plus_seconds(6.0), None, Some(true));
            }
        }
    }

    /// A press outside sessions: seen and answered, or only heard, or lost.
    fn pressed_at_home(&mut self, p: Pressed) {
        if self.chance.coin(SEEN) {
            let hour = self.hour(p.at);
            let person = self.someone(hour);
            self.press_and_answer(p, person);
        } else if self.chance.coin(self.cfg.animals[p.animal].plan.heard) {
            self.press_unanswered(p);
        } else {
            self.unlogged += 1;
        }
    }

    /// At the end of a day the household moves words to another stage.
    fn settle(&mut self, animal: usize, number: u32, day: Day) {
        let cfg = self.cfg;
        let plan = &cfg.animals[animal].plan;
        for word in 0..cfg.words.len() {
            let w = &cfg.words[word];
            let p = &self.progress[animal][word];
            let (stage, because) = match p.stage {
                Some(Stage::Prepare) if w.shown_from <= number + 1 => (Stage::Show, "we start to show it".to_owned()),
                Some(Stage::Show) if !w.closing && w.invited_from.is_some_and(|d| d <= number) => {
                    (Stage::Invite, format!("shown {} times; we want to try", p.showings))
                }
                Some(Stage::Show) if !w.closing && p.showings >= plan.show_before_invite => {
                    (Stage::Invite, format!("shown {} times, and it joins gladly", p.showings))
                }
                Some(Stage::Invite) => {
                    let pressed = p.recent.iter().filter(|x| **x).count();
                    if p.recent.len() < 10 || pressed < plan.presses_to_converse {
                        continue;
                    }
                    (
                        Stage::Converse,
                        format!("pressed in {pressed} of the last {} invitations it wanted", p.recent.len()),
                    )
                }
                _ => continue,
            };
            let at = at_hour(day, 21.0, &cfg.zone);
            self.choose_stage(animal, word, stage, &because, at);
        }
    }

    /// Writes a choice of stage.
    pub(crate) fn choose_stage(&mut self, animal: usize, word: usize, stage: Stage, because: &str, at: Moment) {
        self.progress[animal][word].stage = Some(stage);
        let body = StageChoice { word: self.ids.words[word], stage, because: Note::new(because).ok() };
        self.note(animal, 0, at, body);
    }
}

/// How an animal asks without a button.
const fn own_ways(kind: RewardKind) -> &'static [&'static str] {
    match kind {
        RewardKind::Food => &["stares at the cupboard", "sits by the bowl", "follows into the kitchen"],
        RewardKind::Play => &["brings the toy", "bows and looks up", "noses the toy box"],
        RewardKind::Touch => &["leans on a leg", "noses a hand"],
        RewardKind::Training => &["stands on the mat"],
        RewardKind::Exploring => &["stands at the door", "looks from door to person"],
        RewardKind::Rest => &["goes to its bed and looks back"],
    }
}
