//! Presses, showings and answers, and what the learner does then.

use crate::home::AnswerHabit;
use crate::truth::{PressTruth, Why};
use crate::world::{World, seconds};
use sayso_model::*;

/// One press by a learner.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Pressed {
    pub(crate) animal: usize,
    /// The word that sounded.
    pub(crate) word: usize,
    pub(crate) why: Why,
    /// The word of the thing wanted, if one was.
    pub(crate) wanted: Option<usize>,
    pub(crate) session: Option<SessionId>,
    pub(crate) at: Moment,
}

/// A press counts for this much of a showing, if it is answered with the thing.
const PRESS_TEACHES: f64 = 0.5;
/// Probability of taking a thing wanted just before.
const TAKES_WANTED: f64 = 0.95;
/// Probability of taking a thing offered that was not wanted just before.
const TAKES_UNWANTED: f64 = 0.1;
/// Probability that somebody tells later which animal pressed a button that was only heard.
const CLAIMED: f64 = 0.25;
/// Most presses in one exchange.
const MOST_AGAIN: u8 = 2;

const GIVES: AnswerHabit = AnswerHabit { given: 1.0, partly: 0.0, declined: 0.0, alternative: 0.0, missed: 0.0 };

impl World<'_> {
    /// Writes a learner's press seen by `person`, or heard by the microphone if nobody was near.
    pub(crate) fn write_press(&mut self, p: &Pressed, person: Option<usize>) -> EventId {
        let looks = self.looks(p.why);
        let mut body = Press {
            word: self.ids.words[p.word],
            by: PressedBy::Animal,
            certainty: Probability::clamped(1.0),
            accident: looks,
            place: Some(self.cfg.words[p.word].place),
            speed: None,
            stream: None,
            session: p.session,
        };
        let id = if let Some(t) = person {
            let seen = self.tap(p.animal, t, p.at, p.at);
            self.pen.write(seen, body)
        } else {
            let known = self.chance.coin(0.7);
            body.by = if known { PressedBy::Animal } else { PressedBy::Unknown };
            body.accident = Accident::Unsure;
            body.certainty = Probability::clamped((self.chance.between(0.82, 0.995) * 1000.0).round() / 1000.0);
            body.speed = Some(Ratio::clamped(((1.0 + 0.01 * self.chance.normal()) * 1000.0).round() / 1000.0));
            let mut seen = self.tap(p.animal, 0, p.at, p.at);
            seen.person = None;
            seen.source = Source::Heard;
            seen.lag_s = 0.8;
            if known {
                self.pen.write(seen, body)
            } else {
                seen.animal = None;
                let id = self.pen.write(seen, body.clone());
                if self.chance.coin(CLAIMED) {
                    let animal = Some(self.ids.animals[p.animal]);
                    let body = Box::new(Press { by: PressedBy::Animal, ..body }.into());
                    let at = p.at.plus_seconds(self.chance.between(120.0, 1800.0));
                    let hour = self.hour(at);
                    let someone = self.someone(hour);
                    self.note(p.animal, someone, at, Correction { of: id, happened_at: None, animal, body });
                }
                id
            }
        };
        let truth = PressTruth { animal: p.animal, why: p.why, wanted: p.wanted, pressed: p.word };
        self.presses.insert(id, truth);
        id
    }

    /// A learner's press that `person` sees and answers by habit. Gives the moment it is over and whether it took the thing.
    pub(crate) fn press_and_answer(&mut self, p: Pressed, person: usize) -> (Moment, bool) {
        let habit = self.cfg.people[person].answers;
        let id = self.write_press(&p, Some(person));
        self.answer(p, Some(id), person, habit, 0)
    }

    /// A learner's press in an invitation: the thing itself always follows.
    pub(crate) fn press_and_give(&mut self, p: Pressed, person: usize) -> (Moment, bool) {
        let id = self.write_press(&p, Some(person));
        self.answer(p, Some(id), person, GIVES, 0)
    }

    /// A heard press that nobody answers.
    pub(crate) fn press_unanswered(&mut self, p: Pressed) {
        let id = self.write_press(&p, None);
        let later = p.at.plus_seconds(60.0);
        let mut seen = self.tap(p.animal, 0, later, later);
        seen.person = None;
        seen.source = Source::Heard;
        let body = Delivery {
            answers: Some(id),
            word: self.ids.words[p.word],
            answer: Answer::Missed,
            alternative: None,
            delay_s: None,
            then: None,
            then_word: None,
            session: None,
        };
        self.pen.write(seen, body);
        self.minds[p.animal].paid(p.word, false);
    }

    fn choose_answer(&mut self, p: &Pressed, habit: AnswerHabit) -> Answer {
        let weights = [habit.given, habit.partly, habit.declined, habit.alternative, habit.missed];
        let answer = match self.chance.pick(&weights) {
            Some(1) => Answer::Partly,
            Some(2) => Answer::Declined,
            Some(3) => Answer::Alternative,
            Some(4) => Answer::Missed,
            _ => Answer::Given,
        };
        if matches!(answer, Answer::Given | Answer::Partly) && !self.still_given(p.animal, p.word) {
            return if self.chance.coin(0.5) { Answer::Declined } else { Answer::Alternative };
        }
        answer
    }

    /// Another thing than that of `word`: nothing to eat, and something this learner may have.
    fn other_reward(&mut self, animal: usize, word: usize) -> Option<usize> {
        let asked = self.cfg.words[word].reward;
        let fit: Vec<usize> = (0..self.cfg.rewards.len())
            .filter(|r| {
                let reward = &self.cfg.rewards[*r];
                *r != asked
                    && reward.kind != RewardKind::Food
                    && (reward.animals.is_empty() || reward.animals.contains(&animal))
            })
            .collect();
        if fit.is_empty() { None } else { Some(fit[self.chance.below(fit.len())]) }
    }

    fn answer(
        &mut self,
        p: Pressed,
        press: Option<EventId>,
        person: usize,
        habit: AnswerHabit,
        again: u8,
    ) -> (Moment, bool) {
        let mut answer = self.choose_answer(&p, habit);
        let given = press.filter(|_| answer == Answer::Given);
        let drawn = given.and_then(|press| self.draws(&p, press, person)).filter(|give| *give != p.word);
        answer = if drawn.is_some() { Answer::Alternative } else { answer };
        let other = match (answer, drawn) {
            (_, Some(give)) => Some(self.cfg.words[give].reward),
            (Answer::Alternative, None) => self.other_reward(p.animal, p.word),
            _ => None,
        };
        if answer == Answer::Alternative && other.is_none() {
            answer = Answer::Declined;
        }
        let word = &self.cfg.words[p.word];
        let t = &self.cfg.people[person];
        let hands_over = !matches!(answer, Answer::Declined | Answer::Missed);
        let mut delay = self.chance.lognormal(t.delay_s, t.delay_spread).clamp(0.2, 600.0);
        if hands_over {
            delay += word.fetch_s;
        }
        let given_at = if answer == Answer::Missed { p.at.plus_seconds(45.0) } else { p.at.plus_seconds(delay) };
        let (then, then_word) = self.reacts(&p, answer, other, given_at, again);
        let took = then == Then::Took;
        let over = given_at.plus_seconds(self.chance.between(1.0, 4.0));

        let noted = self.chance.coin(t.notes_then);
        let body = Delivery {
            answers: press,
            word: self.ids.words[p.word],
            answer,
            alternative: other.map(|r| self.ids.rewards[r]),
            delay_s: (answer != Answer::Missed).then(|| seconds(delay)),
            then: noted.then_some(then),
            then_word: then_word.filter(|_| noted).map(|w| self.ids.words[w]),
            session: p.session,
        };
        let seen = self.tap(p.animal, person, given_at, over);
        self.pen.write(seen, body);

        let portion = match answer {
            Answer::Given => 1.0,
            Answer::Partly => 0.5,
            _ => 0.0,
        };
        if took && portion > 0.0 {
            self.had(p.animal, p.word, person, portion, over, p.session);
        }
        if let Some(give) = drawn.filter(|_| took) {
            self.had(p.animal, give, person, 1.0, over, None);
        }
        self.taught_by_answer(&p, answer, delay, took);
        if let Some(next) = then_word {
            let at = over.plus_seconds(self.chance.between(1.0, 6.0));
            let why = if p.why == Why::Habit { Why::Habit } else { Why::Meant };
            let next = Pressed { word: next, why, wanted: p.wanted, at, ..p };
            let id = self.write_press(&next, Some(person));
            return self.answer(next, Some(id), person, habit, again + 1);
        }
        (over, took && hands_over && other.is_none())
    }

    fn taught_by_answer(&mut self, p: &Pressed, answer: Answer, delay: f64, took: bool) {
        if !self.taught(p.animal, p.word) {
            return;
        }
        let weight = match answer {
            Answer::Given if took => PRESS_TEACHES,
            Answer::Given => 0.1,
            Answer::Partly => 0.5 * PRESS_TEACHES,
            Answer::Declined | Answer::Missed => -0.2,
            Answer::Alternative => -0.3,
        };
        let mind = &mut self.minds[p.animal];
        mind.learns(p.word, self.cfg.words[p.word].ease, delay, weight, &mut self.chance);
        mind.paid(p.word, matches!(answer, Answer::Given | Answer::Partly));
    }

    /// What the learner does after an answer, and the word it presses if it presses again.
    fn reacts(
        &mut self,
        p: &Pressed,
        answer: Answer,
        other: Option<usize>,
        at: Moment,
        again: u8,
    ) -> (Then, Option<usize>) {
        let hour = self.hour(at);
        let reward = self.cfg.words[p.word].reward;
        let presser = &self.cfg.animals[p.animal].presser;
        let may_press = again < MOST_AGAIN;
        let wanted = p.wanted == Some(p.word);
        let wants = |w: &Self, r: usize| w.minds[p.animal].wants(r, at, hour);
        match answer {
            Answer::Given | Answer::Partly => {
                // Something else was wanted: one who knows the word for that presses it now.
                if let Some(meant) = p.wanted.filter(|w| *w != p.word) {
                    let corrects = presser.corrects * self.presses(p.animal, meant);
                    if may_press && self.chance.coin(corrects) {
                        let (next, _) = self.aims(p.animal, meant);
                        return (Then::PressedAgain, Some(next));
                    }
                }
                if wanted && answer == Answer::Partly && may_press && self.chance.coin(0.25) {
                    return (Then::PressedAgain, Some(p.word));
                }
                let takes = if wanted { TAKES_WANTED } else { wants(self, reward) };
                if self.chance.coin(takes) { (Then::Took, None) } else { (self.turns_away(), None) }
            }
            Answer::Alternative => {
                if let Some(meant) = p.wanted
                    && may_press
                    && self.chance.coin(presser.corrects * self.presses(p.animal, meant).max(0.2))
                {
                    let (next, _) = self.aims(p.animal, meant);
                    return (Then::PressedAgain, Some(next));
                }
                let takes = other.map_or(0.0, |r| wants(self, r));
                if self.chance.coin(takes) { (Then::Took, None) } else { (self.turns_away(), None) }
            }
            Answer::Declined | Answer::Missed => {
                if let Some(meant) = p.wanted
                    && may_press
                    && self.chance.coin(presser.persists)
                {
                    let (next, _) = self.aims(p.animal, meant);
                    return (Then::PressedAgain, Some(next));
                }
                (self.turns_away(), None)
            }
        }
    }

    fn turns_away(&mut self) -> Then {
        if self.chance.coin(0.3) { Then::Left } else { Then::Ignored }
    }

    /// The learner had the thing of a word: satiation, its number today, and the food if it is food.
    pub(crate) fn had(
        &mut self,
        animal: usize,
        word: usize,
        person: usize,
        portion: f64,
        at: Moment,
        session: Option<SessionId>,
    ) {
        self.progress[animal][word].today = self.progress[animal][word].today.saturating_add(1);
        let reward = self.cfg.words[word].reward;
        self.minds[animal].has(reward, portion, at);
        self.eats(animal, reward, person, at, session);
    }

    /// Writes one piece of a food reward; nothing for other rewards.
    pub(crate) fn eats(&mut self, animal: usize, reward: usize, person: usize, at: Moment, session: Option<SessionId>) {
        let card = &self.cfg.rewards[reward];
        let Some(kcal) = card.kcal_per_piece else { return };
        self.kcal[animal] += kcal.get();
        let body = Feed {
            reward: Some(self.ids.rewards[reward]),
            food: None,
            pieces: Some(1),
            grams: card.grams_per_piece,
            kcal,
            session,
        };
        self.note(animal, person, at, body);
    }

    /// One showing: the person presses and delivers. Gives the moment it is over and whether the learner took the thing.
    /// `wanted` says whether it is known to want the thing just then.
    pub(crate) fn show(
        &mut self,
        animal: usize,
        word: usize,
        person: usize,
        at: Moment,
        session: Option<SessionId>,
        wanted: Option<bool>,
    ) -> (Moment, bool) {
        let t = &self.cfg.people[person];
        let card = &self.cfg.words[word];
        let body = Press {
            word: self.ids.words[word],
            by: PressedBy::Person,
            certainty: Probability::clamped(1.0),
            accident: Accident::No,
            place: Some(card.place),
            speed: None,
            stream: None,
            session,
        };
        let press = self.write_shown(animal, person, at, body);
        let delay = self.chance.lognormal(t.delay_s, t.delay_spread).clamp(0.2, 600.0) + card.fetch_s;
        let given_at = at.plus_seconds(delay);
        let hour = self.hour(given_at);
        let takes = match wanted {
            Some(true) => TAKES_WANTED,
            Some(false) => TAKES_UNWANTED,
            None => self.minds[animal].wants(card.reward, given_at, hour),
        };
        let took = self.chance.coin(takes);
        let then = if took { Then::Took } else { self.turns_away() };
        let over = given_at.plus_seconds(self.chance.between(2.0, 5.0));
        let noted = self.chance.coin(t.notes_then);
        let body = Delivery {
            answers: Some(press),
            word: self.ids.words[word],
            answer: Answer::Given,
            alternative: None,
            delay_s: Some(seconds(delay)),
            then: noted.then_some(then),
            then_word: None,
            session,
        };
        let seen = self.tap(animal, person, given_at, over);
        self.pen.write(seen, body);
        let weight = if took { 1.0 } else { 0.15 };
        self.minds[animal].learns(word, card.ease, delay, weight, &mut self.chance);
        self.progress[animal][word].showings += 1;
        if took {
            self.had(animal, word, person, 1.0, over, session);
        }
        (over, took)
    }

    /// Writes a person's press, now and then mistapped and put right.
    fn write_shown(&mut self, animal: usize, person: usize, at: Moment, body: Press) -> EventId {
        let seen = self.tap(animal, person, at, at);
        if !self.chance.coin(self.cfg.people[person].mistaps) {
            return self.pen.write(seen, body);
        }
        let others: Vec<usize> = self.on_board().into_iter().filter(|w| self.ids.words[*w] != body.word).collect();
        if others.is_empty() || self.chance.coin(0.5) {
            let id = self.pen.write(seen, body.clone());
            self.pen.write_twice(seen, body, Note::new("tapped twice").ok());
            return id;
        }
        let wrong = others[self.chance.below(others.len())];
        let mistaken = Press { word: self.ids.words[wrong], place: Some(self.cfg.words[wrong].place), ..body.clone() };
        self.pen.write_corrected(seen, mistaken, body)
    }
}
