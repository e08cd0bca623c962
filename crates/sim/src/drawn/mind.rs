//! The state of a learner of a drawn life, and what it does next.

use super::habit::Habit;
use crate::chance::{Chance, logistic};

/// Probability of pressing anything when something is offered, before liking and mood.
const PRESSES: f64 = 0.65;
/// Probability of pressing again after a thing that was not taken (assumed; no source).
const AGAIN: f64 = 0.3;
/// Hours after which 1/e of having had enough is left, and logits of liking that one portion costs.
const ENOUGH: (f64, f64) = (1.5, 0.8);
/// Days after which 1/e of a change of liking is left, unless the habit says otherwise.
const LIKING_DAYS: f64 = 25.0;

/// What a learner sees when something is offered.
#[derive(Clone, Copy, Debug)]
pub(super) struct Offer {
    /// The word whose thing it is.
    pub(super) thing: usize,
    /// Whether the person with it knows that.
    pub(super) known: bool,
}

/// Things or buttons in the places of a check, and which is asked for.
#[derive(Clone, Copy, Debug)]
pub(super) struct LaidOut<'a> {
    pub(super) places: &'a [usize],
    pub(super) target: usize,
    pub(super) known: bool,
}

/// One learner.
#[derive(Clone, Debug)]
pub(super) struct Mind {
    habit: Habit,
    words: usize,
    sees_likes: bool,
    likes: Vec<f64>,
    interest: Vec<f64>,
    enough: Vec<f64>,
    shares: Vec<f64>,
    income: Vec<f64>,
    had: Vec<bool>,
    favourite: usize,
    counted: usize,
    pressed: Option<usize>,
    got: Option<(usize, bool)>,
    place: Option<(usize, usize)>,
    want: Option<usize>,
    aroused: bool,
    mood: bool,
    burst: Option<usize>,
    hours: f64,
}

impl Mind {
    pub(super) fn new(habit: Habit, words: usize, sees_likes: bool, c: &mut Chance) -> Self {
        let mut shares = [0.6, 0.2, 0.15, 0.05].repeat(words.div_ceil(4));
        shares.truncate(words);
        c.shuffle(&mut shares);
        let spread = |c: &mut Chance, sd: f64| (0..words).map(|_| sd * c.normal()).collect::<Vec<f64>>();
        Self {
            habit,
            words,
            sees_likes,
            likes: spread(c, 0.7),
            interest: spread(c, 1.0),
            enough: vec![0.0; words],
            shares,
            income: vec![0.5; words],
            had: vec![false; words],
            favourite: c.below(words),
            counted: 0,
            pressed: None,
            got: None,
            place: None,
            want: None,
            aroused: false,
            mood: false,
            burst: None,
            hours: 0.0,
        }
    }

    /// Time goes on to that many hours since the start.
    pub(super) fn moves_on(&mut self, hours: f64, c: &mut Chance) {
        let passed = (hours - self.hours).max(0.0);
        self.hours = hours;
        let days = if let Habit::Interest(days) = self.habit { days } else { LIKING_DAYS };
        let keep = (-passed / (24.0 * days)).exp();
        for x in &mut self.interest {
            *x = keep * *x + (1.0 - keep * keep).sqrt() * c.normal();
        }
        let left = (-passed / ENOUGH.0).exp();
        self.enough.iter_mut().for_each(|x| *x *= left);
        if c.coin(1.0 - (-passed / 0.5).exp()) {
            self.aroused = c.coin(0.4);
        }
        if let Habit::Moods(lasts) = self.habit
            && c.coin(1.0 - (-passed / lasts.max(1e-6)).exp())
        {
            self.mood = c.coin(0.5);
        }
        if c.coin(1.0 - (-passed / 0.15).exp()) {
            self.burst = c.coin(0.6).then(|| c.below(self.words));
        }
    }

    /// A sitting begins.
    pub(super) fn sits_down(&mut self, c: &mut Chance) {
        self.favourite = c.below(self.words);
        self.had.fill(false);
    }

    fn pull(&self, thing: usize) -> f64 {
        self.likes[thing] + self.interest[thing] - self.enough[thing]
    }

    /// How likely it is to press anything at what it sees, or of its own accord.
    pub(super) fn presses(&self, seen: Option<usize>) -> f64 {
        let logit = (PRESSES / (1.0 - PRESSES)).ln();
        let usual = match seen {
            Some(thing) if self.sees_likes => logistic(logit + 1.2 * self.pull(thing)),
            _ => PRESSES,
        };
        match (self.habit, seen) {
            (Habit::Sated, Some(thing)) => logistic(logit + 0.5 - 1.5 * self.enough[thing]),
            (Habit::Sated, None) => logistic(logit + 0.5 - 0.5 * self.enough.iter().sum::<f64>()),
            (Habit::Aroused, _) if self.aroused => 0.95,
            (Habit::Moods(_), _) if self.mood => 0.95,
            (Habit::Moods(_), Some(thing)) => {
                if thing == 1 {
                    0.9
                } else {
                    0.1
                }
            }
            (Habit::Sight, Some(0)) => 0.95,
            _ => usual,
        }
    }

    fn by_weight(&self, weights: impl Iterator<Item = f64>, c: &mut Chance) -> usize {
        let weights: Vec<f64> = weights.collect();
        c.pick(&weights).unwrap_or_else(|| c.below(self.words))
    }

    /// Mostly `word`, else any.
    fn mostly(&self, word: usize, share: f64, c: &mut Chance) -> usize {
        if c.coin(share) { word } else { c.below(self.words) }
    }

    /// Any word but one.
    fn but(&self, word: Option<usize>, c: &mut Chance) -> usize {
        match word {
            Some(word) if self.words > 1 => (word + 1 + c.below(self.words - 1)) % self.words,
            _ => c.below(self.words),
        }
    }

    /// The button it presses.
    pub(super) fn aims(&mut self, offer: Option<Offer>, c: &mut Chance) -> usize {
        self.want = offer.map(|o| o.thing).or_else(|| Some(c.below(self.words)));
        let word = match self.habit {
            Habit::Random | Habit::Sated => c.below(self.words),
            Habit::Place => self.by_weight(self.shares.iter().copied(), c),
            Habit::SessionFavourite => self.mostly(self.favourite, 0.85, c),
            Habit::RepeatsLast => match self.pressed {
                Some(last) => self.mostly(last, 0.85, c),
                None => c.below(self.words),
            },
            Habit::Alternates => self.but(self.pressed, c),
            Habit::AvoidsGiven => self.but(self.got.map(|g| g.0), c),
            Habit::GoesThrough => {
                if self.had.iter().all(|had| *had) {
                    self.had.fill(false);
                }
                self.by_weight(self.had.iter().map(|had| if *had { 0.03 } else { 1.0 }), c)
            }
            Habit::Interest(_) => self.by_weight(self.interest.iter().map(|x| (1.5 * x).exp()), c),
            Habit::Bursts => match self.burst {
                Some(word) => self.mostly(word, 0.95, c),
                None => c.below(self.words),
            },
            Habit::Aroused => {
                if self.aroused {
                    self.mostly(0, 0.9, c)
                } else {
                    c.below(self.words)
                }
            }
            Habit::Cued => match offer.filter(|o| o.known) {
                Some(o) => self.mostly(o.thing, 0.8, c),
                None => c.below(self.words),
            },
            Habit::WinStay => match (self.pressed, self.got) {
                (Some(last), Some((_, true))) => self.mostly(last, 0.9, c),
                (last, _) => self.but(last, c),
            },
            Habit::Matching => self.by_weight(self.income.iter().map(|x| x.max(0.02)), c),
            Habit::Moods(_) => self.mostly(usize::from(!self.mood).min(self.words - 1), 0.85, c),
            Habit::Sight => {
                if offer.is_some_and(|o| o.thing == 0) {
                    self.mostly(0, 0.8, c)
                } else {
                    c.below(self.words)
                }
            }
            Habit::Busy => self.by_weight((0..self.words).map(|w| if w % 2 == 0 { 2.0 } else { 1.0 }), c),
            Habit::Counts => self.mostly(self.counted % self.words, 0.9, c),
            Habit::FavouriteThing => self.mostly(0, 0.8, c),
            Habit::Means(p) => match self.want {
                Some(want) if c.coin(p) => want,
                _ => c.below(self.words),
            },
        };
        self.pressed = Some(word);
        word
    }

    /// Portions it has had lately.
    pub(super) fn had_lately(&self) -> f64 {
        self.enough.iter().sum::<f64>() / ENOUGH.1
    }

    /// A thing comes. Gives whether it is taken.
    pub(super) fn gets(&mut self, thing: usize, c: &mut Chance) -> bool {
        let takes = match self.habit {
            Habit::Means(_) => {
                if self.want == Some(thing) {
                    0.9
                } else {
                    0.45
                }
            }
            Habit::Busy => {
                if thing.is_multiple_of(2) {
                    0.95
                } else {
                    0.2
                }
            }
            _ => logistic(0.6 + self.pull(thing)),
        };
        let took = c.coin(takes);
        self.got = Some((thing, took));
        self.had[thing] = true;
        if took {
            self.enough[thing] += ENOUGH.1;
        }
        self.counted += 1;
        if let Some(income) = self.pressed.and_then(|p| self.income.get_mut(p)) {
            *income += 0.15 * (f64::from(u8::from(took)) - *income);
        }
        took
    }

    /// The button it presses soon after a thing came, if any.
    pub(super) fn again(&mut self, pressed: usize, thing: usize, took: bool, c: &mut Chance) -> Option<usize> {
        let untaken = if took { 0.0 } else { AGAIN };
        let (presses, same) = match self.habit {
            // How lively the button is, times how soon the thing is over.
            Habit::Busy => {
                let lively = if pressed.is_multiple_of(2) { 0.9 } else { 0.12 };
                (lively * if thing.is_multiple_of(2) { 0.1 } else { 0.9 }, 0.6)
            }
            Habit::Bursts if self.burst.is_some() => (0.6, 0.95),
            Habit::Aroused if self.aroused => (0.6, 0.0),
            Habit::RepeatsLast => (untaken + 0.1, 0.9),
            Habit::Means(_) => (untaken, 0.0),
            _ => (untaken, 0.5),
        };
        if !c.coin(presses) {
            return None;
        }
        let wanted = self.want;
        let next = if let (Habit::Means(p), Some(want)) = (self.habit, wanted) {
            self.mostly(want, p, c)
        } else if c.coin(same) {
            pressed
        } else {
            let next = self.aims(None, c);
            self.want = wanted;
            next
        };
        self.pressed = Some(next);
        Some(next)
    }

    /// What it takes of things laid out (or covered buttons), by place.
    pub(super) fn picks(&mut self, laid: LaidOut<'_>, c: &mut Chance) -> usize {
        let n = laid.places.len();
        let at = |word: usize| laid.places.iter().position(|w| *w == word);
        let most = |score: &dyn Fn(usize) -> f64| {
            (0..n).max_by(|a, b| score(laid.places[*a]).total_cmp(&score(laid.places[*b]))).unwrap_or(0)
        };
        let place = match self.habit {
            Habit::Place => Some(0),
            Habit::SessionFavourite => at(self.favourite),
            Habit::RepeatsLast => self.pressed.and_then(at),
            Habit::Alternates => self.place.map(|(last, _)| (last + 1 + c.below(n.max(2) - 1)) % n),
            // Not the thing that came last; not where it came.
            Habit::AvoidsGiven => {
                let open: Vec<usize> = (0..n).filter(|p| self.got.is_none_or(|g| g.0 != laid.places[*p])).collect();
                open.get(c.below(open.len())).copied()
            }
            Habit::GoesThrough => {
                let open: Vec<usize> = (0..n).filter(|p| !self.had[laid.places[*p]]).collect();
                open.get(c.below(open.len())).copied()
            }
            Habit::Interest(_) | Habit::Matching => Some(most(&|w| self.likes[w] + self.interest[w])),
            Habit::WinStay => self.place.map(|(_, right)| right),
            Habit::Counts => self.place.map(|(_, right)| (right + 1) % n),
            Habit::Bursts => self.burst.and_then(at),
            Habit::Aroused if self.aroused => at(0),
            Habit::Sight | Habit::FavouriteThing => at(0),
            Habit::Busy => Some(most(&|w| if w % 2 == 0 { 1.0 } else { 0.0 })),
            Habit::Moods(_) => at(usize::from(!self.mood)),
            Habit::Cued if laid.known && c.coin(0.8) => at(laid.target),
            Habit::Means(p) if c.coin(p) => at(laid.target),
            _ => None,
        };
        let place = place.unwrap_or_else(|| c.below(n));
        self.pressed = Some(laid.places[place]);
        self.place = Some((place, at(laid.target).unwrap_or(0)));
        // After each trial comes what was played or asked for.
        self.got = Some((laid.target, true));
        self.had[laid.target] = true;
        if self.had.iter().all(|had| *had) {
            self.had.fill(false);
        }
        place
    }
}
