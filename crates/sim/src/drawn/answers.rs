//! Presses of ordinary life and their answers, now and then swapped as drawn.

use super::Trick;
use super::life::{Life, Swapping};
use sayso_model::*;

/// Days for which swaps are agreed to at a time.
const AGREED: u16 = 28;
/// Share of presses that are answered with a thing.
const ANSWERED: f64 = 0.85;
/// A press again within this many seconds is what the tests count.
const SOON_S: f64 = 28.0;
/// Presses again at most, one after the other.
const MOST_AGAIN: u32 = 3;
/// Portions after which a person thinks that it has had enough.
const PLENTY: f64 = 3.0;

/// Mealtimes by the local hour.
fn meal(hour: f64) -> bool {
    [(7.0, 9.0), (12.0, 13.0), (18.0, 19.5)].iter().any(|(from, to)| (*from..*to).contains(&hour))
}

impl Life<'_> {
    /// The household agrees to swaps, if it does and none are on.
    pub(super) fn agree(&mut self, midnight: Moment) {
        let badly = self.home.does(Trick::StopsSwaps) && self.swap.as_ref().is_some_and(|s| s.badly > s.well + 1);
        let at = midnight.plus_seconds(6.0 * 3600.0).max(self.now.plus_seconds(1.0));
        if let Some(old) = self.swap.take() {
            if at.seconds_since(old.begun) < f64::from(old.plan.days) * 86_400.0 && !badly {
                self.swap = Some(old);
                return;
            }
            if badly {
                self.book.writes(at, SwapStop { swap: old.plan.swap, reason: SwapEnd::Home });
            }
        }
        if self.home.swaps {
            let at = at.plus_seconds(30.0);
            let swap = SwapId(self.book.fresh(at));
            let plan = SwapPlan { swap, words: self.book.words.clone(), one_in: draw::ONE_IN, days: AGREED };
            self.book.writes(at, plan.clone());
            self.swap = Some(Swapping { plan, begun: at, well: 0, badly: 0 });
        }
    }

    /// One press of ordinary life, its answer, and what it presses again.
    pub(super) fn answers_press(&mut self, word: usize, again: u32) {
        let at = self.now;
        self.pressed[word] += 1;
        let press = Press {
            word: self.book.words[word],
            by: PressedBy::Animal,
            certainty: Probability::clamped(1.0),
            accident: Accident::Unsure,
            place: None,
            speed: None,
            stream: None,
            session: None,
        };
        let press = self.book.writes(at, press);
        let given = self.given(word);
        self.waits(3.0);
        let Some(thing) = given else {
            let declined = self.delivery(press, word, Answer::Declined, None, None);
            self.book.writes(self.now, declined);
            return;
        };
        let Some(Swapping { plan, begun, .. }) = self.swap.clone().filter(|_| thing == word) else {
            // Another thing of the person's own choice: nothing was drawn.
            let took = self.mind.gets(thing, &mut self.chance);
            let answer = if thing == word { Answer::Given } else { Answer::Alternative };
            let body = self.delivery(press, word, answer, Some(thing), Some(took));
            self.book.writes(self.now, body);
            return self.presses_on(word, thing, took, again);
        };
        let partner = draw::block(begun, at)
            .and_then(|block| draw::partner(&plan.words, block, self.book.words[word]))
            .filter(|_| draw::swapped(plan.swap, press, plan.one_in));
        let give = partner.map_or(word, |p| self.book.word(p));
        let body = SwapDraw { swap: plan.swap, press, word: self.book.words[word], give: self.book.words[give] };
        self.book.writes(at.plus_seconds(1.0), body);
        let ignores = (self.home.does(Trick::NoSwapsAtMeals) && meal(self.hour()))
            || (self.home.does(Trick::NoSwapsOfOne) && word == 0);
        let thing = if ignores { word } else { give };
        let took = self.mind.gets(thing, &mut self.chance);
        let next = (again < MOST_AGAIN).then(|| self.mind.again(word, thing, took, &mut self.chance)).flatten();
        if let Some(swap) = &mut self.swap {
            // What speaks for meaning: nothing after its own thing, the same button again after another.
            match (thing == word, next) {
                (true, Some(_)) | (false, None) => swap.badly += 1,
                (true, None) => {}
                (false, Some(_)) => swap.well += 3,
            }
        }
        let hidden = self.home.does(Trick::HidesAnswers) && thing != word && next.is_none();
        if !hidden {
            let answer = if thing == word { Answer::Given } else { Answer::Alternative };
            let took = took || (self.home.does(Trick::Wishful) && thing == word && self.chance.coin(0.7));
            let body = self.delivery(press, word, answer, Some(thing), Some(took));
            self.book.writes(self.now, body);
        }
        if let Some(next) = next {
            let soon = self.chance.between(3.0, SOON_S);
            self.waits(soon);
            if !(self.home.does(Trick::HidesCorrections) && thing == word) {
                self.answers_press(next, again + 1);
            }
        }
    }

    fn presses_on(&mut self, word: usize, thing: usize, took: bool, again: u32) {
        if again < MOST_AGAIN
            && let Some(next) = self.mind.again(word, thing, took, &mut self.chance)
        {
            let soon = self.chance.between(3.0, SOON_S);
            self.waits(soon);
            self.answers_press(next, again + 1);
        }
    }

    /// What the person means to give, before anything is drawn.
    fn given(&mut self, word: usize) -> Option<usize> {
        let other = |life: &mut Self| Some((word + 1 + life.chance.below(life.home.words - 1)) % life.home.words);
        if self.home.does(Trick::AnswersAtMeals) {
            return if meal(self.hour()) || self.chance.coin(0.3) { Some(word) } else { other(self) };
        }
        if self.home.does(Trick::AnswersByAppetite) && self.mind.had_lately() > PLENTY && self.chance.coin(0.7) {
            return other(self);
        }
        self.chance.coin(ANSWERED).then_some(word)
    }

    fn delivery(
        &self,
        press: EventId,
        word: usize,
        answer: Answer,
        thing: Option<usize>,
        took: Option<bool>,
    ) -> Delivery {
        Delivery {
            answers: Some(press),
            word: self.book.words[word],
            answer,
            alternative: thing.filter(|_| answer == Answer::Alternative).map(|t| self.book.things[t]),
            delay_s: Some(Seconds::clamped(3.0)),
            then: took.map(|took| if took { Then::Took } else { Then::Ignored }),
            then_word: None,
            session: None,
        }
    }
}
