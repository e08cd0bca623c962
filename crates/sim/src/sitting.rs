//! Sessions: joining, leaving, signs, showings and invitations.

use crate::answer::Pressed;
use crate::truth::{SessionTruth, Why};
use crate::world::{World, seconds};
use sayso_model::*;

/// A session that the learner has joined.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Sitting {
    pub(crate) session: SessionId,
    pub(crate) animal: usize,
    pub(crate) person: usize,
    pub(crate) mood: f64,
    pub(crate) turn: u16,
    pub(crate) at: Moment,
}

/// Recent invitations looked at before a word goes to converse.
const RECENT: usize = 10;

impl World<'_> {
    /// Offers a session. None if the learner does not come; the session is then ended, as done, after a while.
    pub(crate) fn sit_down(
        &mut self,
        animal: usize,
        person: usize,
        at: Moment,
        purpose: Purpose,
        words: &[usize],
    ) -> (Moment, Option<Sitting>) {
        let session = SessionId(self.pen.fresh(at));
        let hour = self.hour(at);
        let mood = self.minds[animal].mood(hour) + 0.4 * self.chance.normal();
        let join = self.minds[animal].joins(mood, hour);
        let words = words.iter().map(|w| self.ids.words[*w]).collect();
        self.note(animal, person, at, SessionStart { session, purpose, words, room: None });
        if at <= self.end {
            self.sessions.push(SessionTruth { session, animal, join, mood });
        }
        let joined = self.chance.coin(join);
        if self.cfg.animals[animal].presser.style == crate::animal::Style::BySession {
            self.favourites[animal] = self.chance.below(self.cfg.words.len());
        }
        self.sign(animal, person, at.plus_seconds(1.0), When::Before, session, mood, joined);
        if !joined {
            let over = at.plus_seconds(self.chance.between(60.0, 150.0));
            self.note(animal, person, over, SessionEnd { session, reason: EndReason::Done });
            return (over, None);
        }
        let median = self.cfg.animals[animal].temper.join_latency_s;
        let after = self.chance.lognormal(median * (-0.25 * mood).exp(), 0.6).clamp(0.5, 240.0);
        let came = at.plus_seconds(after);
        let seen = self.tap(animal, person, came, came);
        self.pen.write(seen, Joining { session, after_s: Some(seconds(after)) });
        let at = came.plus_seconds(self.chance.between(3.0, 8.0));
        (at, Some(Sitting { session, animal, person, mood, turn: 0, at }))
    }

    /// The body language a learner shows; written down now and then, strong signs nearly always.
    #[allow(clippy::too_many_arguments)]
    fn sign(
        &mut self,
        animal: usize,
        person: usize,
        at: Moment,
        when: When,
        session: SessionId,
        mood: f64,
        joined: bool,
    ) -> Option<SignLevel> {
        let truth = &self.cfg.animals[animal];
        let shown = mood + 0.8 * self.chance.normal();
        let level = if shown < truth.temper.strong_below {
            SignLevel::Strong
        } else if shown < truth.temper.mild_below {
            SignLevel::Mild
        } else if joined && shown > 0.0 {
            SignLevel::Joining
        } else {
            return None;
        };
        let noted = if level == SignLevel::Strong { 0.9 } else { truth.temper.sign_noted };
        if self.chance.coin(noted) {
            let name = match level {
                SignLevel::Joining => "-",
                SignLevel::Mild => "mild",
                SignLevel::Strong => "strong",
            };
            let known: Vec<&str> = facts::signs(truth.species)
                .into_iter()
                .filter(|s| s.level == name && !s.sign.contains("bite"))
                // What lasts beyond the day is written by who asks for it, not by chance.
                .filter(|s| matches!(s.tells, None | Some(facts::Tells::Threat)))
                .map(|s| s.sign.as_str())
                .collect();
            let text = if known.is_empty() {
                ["comes near", "turns away", "keeps away"][level as usize]
            } else {
                known[self.chance.below(known.len())]
            };
            if let Ok(sign) = Note::new(text) {
                self.note(animal, person, at, Sign { sign, level, when, session: Some(session) });
            }
        }
        Some(level)
    }

    /// After a turn: goes on (true), or the session is over.
    pub(crate) fn stays(&mut self, s: &mut Sitting) -> bool {
        s.turn += 1;
        let level = if self.chance.coin(0.2) {
            self.sign(s.animal, s.person, s.at.plus_seconds(0.5), When::During, s.session, s.mood, true)
        } else {
            None
        };
        if level == Some(SignLevel::Strong) {
            self.stand_up(s, EndReason::StrongSign);
            return false;
        }
        let leaves = self.minds[s.animal].leaves(s.mood, s.turn);
        if self.chance.coin(leaves) {
            let at = s.at.plus_seconds(1.5);
            self.note(s.animal, s.person, at, Leaving { session: s.session });
            s.at = at;
            self.stand_up(s, EndReason::AnimalLeft);
            return false;
        }
        s.at = s.at.plus_seconds(self.chance.between(6.0, 16.0));
        true
    }

    /// Ends a session.
    pub(crate) fn stand_up(&mut self, s: &mut Sitting, reason: EndReason) {
        s.at = s.at.plus_seconds(self.chance.between(2.0, 6.0));
        self.note(s.animal, s.person, s.at, SessionEnd { session: s.session, reason });
        if self.chance.coin(0.3) {
            let after = s.at.plus_seconds(self.chance.between(20.0, 90.0));
            self.sign(s.animal, s.person, after, When::After, s.session, s.mood + 0.3, true);
        }
    }

    /// Ends a session that ran to its end, with the closing word if there is one.
    pub(crate) fn finish(&mut self, s: &mut Sitting) {
        let closing: Vec<usize> = self
            .at_stage(s.animal, &[Stage::Show, Stage::Invite, Stage::Converse])
            .into_iter()
            .filter(|w| self.cfg.words[*w].closing)
            .collect();
        if let Some(word) = closing.first()
            && self.chance.coin(0.8)
        {
            let (over, _) = self.show(s.animal, *word, s.person, s.at, Some(s.session), None);
            s.at = over;
            self.stand_up(s, EndReason::ClosingWord);
        } else {
            self.stand_up(s, EndReason::Done);
        }
    }

    /// A session of showings. Gives the moment it is over.
    pub(crate) fn showing_session(&mut self, animal: usize, person: usize, at: Moment) -> Moment {
        let words: Vec<usize> = self
            .at_stage(animal, &[Stage::Show, Stage::Invite, Stage::Converse])
            .into_iter()
            .filter(|w| !self.cfg.words[*w].closing)
            .collect();
        if words.is_empty() {
            return at;
        }
        let (over, sitting) = self.sit_down(animal, person, at, Purpose::Showing, &words);
        let Some(mut s) = sitting else { return over };
        for _ in 0..self.cfg.animals[animal].plan.showings {
            let Some(word) = self.next_shown(animal, &words) else { break };
            let (over, _) = self.show(animal, word, person, s.at, Some(s.session), None);
            s.at = over;
            self.presses_in_passing(&mut s, &words);
            if !self.stays(&mut s) {
                return s.at;
            }
        }
        self.finish(&mut s);
        s.at
    }

    /// The word to show next: new words more than known ones, and nothing beyond its ration.
    fn next_shown(&mut self, animal: usize, words: &[usize]) -> Option<usize> {
        let weights: Vec<f64> = words
            .iter()
            .map(|w| match self.progress[animal][*w].stage {
                _ if !self.still_given(animal, *w) => 0.0,
                Some(Stage::Show) => 3.0,
                Some(Stage::Invite) => 1.0,
                _ => 0.4,
            })
            .collect();
        self.chance.pick(&weights).map(|i| words[i])
    }

    /// Between turns a learner may press of its own accord.
    fn presses_in_passing(&mut self, s: &mut Sitting, words: &[usize]) {
        let word = words[self.chance.below(words.len())];
        let hour = self.hour(s.at);
        let p =
            0.3 * self.minds[s.animal].wants(self.cfg.words[word].reward, s.at, hour) * self.presses(s.animal, word);
        if self.chance.coin(p) {
            let at = s.at.plus_seconds(self.chance.between(1.0, 5.0));
            let (pressed, why) = self.aims(s.animal, word);
            let p = Pressed { animal: s.animal, word: pressed, why, wanted: Some(word), session: Some(s.session), at };
            s.at = self.press_and_answer(p, s.person).0;
        }
    }

    /// A session of invitations. Gives the moment it is over.
    pub(crate) fn inviting_session(&mut self, animal: usize, person: usize, at: Moment) -> Moment {
        let words = self.at_stage(animal, &[Stage::Invite, Stage::Converse]);
        let fresh = self.at_stage(animal, &[Stage::Invite]);
        let (over, sitting) = self.sit_down(animal, person, at, Purpose::Inviting, &fresh);
        let Some(mut s) = sitting else { return over };
        if self.cfg.animals[animal].plan.rounds {
            return self.rounds(s, &words);
        }
        for _ in 0..self.cfg.animals[animal].plan.invitations {
            let open: Vec<usize> = fresh.iter().copied().filter(|w| self.still_given(animal, *w)).collect();
            if open.is_empty() {
                break;
            }
            let word = open[self.chance.below(open.len())];
            self.invite(&mut s, word, &words, None);
            if !self.stays(&mut s) {
                return s.at;
            }
        }
        self.finish(&mut s);
        s.at
    }

    /// One invitation: an offer, a wait, and always the thing itself.
    pub(crate) fn invite(&mut self, s: &mut Sitting, word: usize, words: &[usize], call: Option<Call>) {
        let offer = s.at;
        let animal = s.animal;
        let wait = self.cfg.animals[animal].plan.wait_s;
        let others: Vec<usize> = words.iter().copied().filter(|w| *w != word).collect();
        let other = if call.is_none() && !others.is_empty() && self.chance.coin(0.2) {
            Some(others[self.chance.below(others.len())])
        } else {
            None
        };
        let way = match other {
            Some(_) => InvitationKind::AskBetweenTwo,
            None if self.chance.coin(0.6) => InvitationKind::OfferInView,
            None => InvitationKind::AskAndPoint,
        };
        let (result, pressed, wanted) = self.responds(s, word, other, wait);
        let (mut took, mut shown) = (None, false);
        if let Some(p) = pressed {
            let (over, had) = self.press_and_give(p, s.person);
            s.at = over;
            if p.word == word {
                took = Some(had);
            }
        } else {
            s.at = offer.plus_seconds(wait);
        }
        let left = matches!(result, InvitationResult::Left { .. });
        if took.is_none() && !left {
            let (over, had) =
                self.show(animal, word, s.person, s.at.plus_seconds(1.0), Some(s.session), Some(wanted == Some(word)));
            s.at = over;
            (took, shown) = (Some(had), true);
        }
        if took == Some(true) {
            let recent = &mut self.progress[animal][word].recent;
            recent.push_back(pressed.is_some_and(|p| p.word == word));
            while recent.len() > RECENT {
                recent.pop_front();
            }
        }
        let body = Invitation {
            word: self.ids.words[word],
            other: other.map(|w| self.ids.words[w]),
            way,
            wait_s: seconds(wait),
            result,
            shown,
            took,
            session: Some(s.session),
            call,
        };
        let seen = self.tap(animal, s.person, offer, s.at);
        self.pen.write(seen, body);
    }

    /// What a learner does in the wait, and the word of the thing it wants.
    fn responds(
        &mut self,
        s: &Sitting,
        word: usize,
        other: Option<usize>,
        wait: f64,
    ) -> (InvitationResult, Option<Pressed>, Option<usize>) {
        let animal = s.animal;
        let hour = self.hour(s.at);
        let wants = |w: &Self, x: usize| w.minds[animal].wants(w.cfg.words[x].reward, s.at, hour);
        let first = wants(self, word);
        let mut wanted = self.chance.coin(first).then_some(word);
        if wanted.is_none()
            && let Some(o) = other
        {
            let second = wants(self, o);
            wanted = self.chance.coin(second).then_some(o);
        }
        let Some(target) = wanted else {
            if self.chance.coin(0.05) {
                let after = self.chance.between(0.5, wait.max(0.6));
                return (InvitationResult::Left { after_s: Some(seconds(after)) }, None, wanted);
            }
            return (InvitationResult::NothingByWait, None, wanted);
        };
        let presses = self.presses(animal, target);
        let after = self.minds[animal].latency(target, &mut self.chance);
        if self.chance.coin(presses) {
            // Too slow for the wait: the person shows it first.
            if seconds(after).get() > seconds(wait).get() {
                return (InvitationResult::NothingByWait, None, wanted);
            }
            let (pressed, why) = self.aims(animal, target);
            let result = InvitationResult::Pressed { word: self.ids.words[pressed], after_s: seconds(after) };
            let at = s.at.plus_seconds(seconds(after).get());
            let p = Pressed { animal, word: pressed, why, wanted, session: Some(s.session), at };
            return (result, Some(p), wanted);
        }
        if self.chance.coin(self.cfg.animals[animal].presser.own_way) && after <= wait {
            return (InvitationResult::WithoutButton { after_s: Some(seconds(after)) }, None, wanted);
        }
        if self.chance.coin(0.01) {
            let board = self.on_board();
            let pressed = board[self.chance.below(board.len())];
            let after = seconds(self.chance.between(0.5, wait.max(0.6)).min(wait));
            let p = Pressed {
                animal,
                word: pressed,
                why: Why::Accident,
                wanted,
                session: Some(s.session),
                at: s.at.plus_seconds(after.get()),
            };
            return (InvitationResult::Pressed { word: self.ids.words[pressed], after_s: after }, Some(p), wanted);
        }
        (InvitationResult::NothingByWait, None, wanted)
    }
}
