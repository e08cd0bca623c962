//! The days of a drawn life: sittings, checks and bouts of pressing, one after another.

use super::book::Book;
use super::checking::Checking;
use super::mind::Mind;
use super::{DrawnHome, DrawnLife};
use crate::chance::Chance;
use sayso_model::*;

/// Hours of the two sittings, and of the check, if one is on.
const SITTINGS: [f64; 2] = [9.0, 18.0];
const CHECK: f64 = 15.0;
/// Hours of waking.
const AWAKE: (f64, f64) = (7.0, 21.5);
/// Presses in a bout, about.
const IN_BOUT: f64 = 2.0;
/// Probability of going on with a bout at most, so that lively learners stay within what a day holds.
const MOST_ON: f64 = 0.75;

/// One drawn life, being lived.
pub(super) struct Life<'a> {
    pub(super) home: &'a DrawnHome,
    pub(super) book: Book,
    pub(super) chance: Chance,
    pub(super) mind: Mind,
    pub(super) begun: Moment,
    pub(super) now: Moment,
    pub(super) swap: Option<Swapping>,
    pub(super) checking: Checking,
    /// Presses of each word so far, as a person remembers them.
    pub(super) pressed: Vec<u32>,
}

/// The time of swaps that is on.
#[derive(Clone, Debug)]
pub(super) struct Swapping {
    pub(super) plan: SwapPlan,
    pub(super) begun: Moment,
    /// As the person sees it: for and against.
    pub(super) well: u32,
    pub(super) badly: u32,
}

#[derive(Clone, Copy)]
enum Planned {
    Sitting,
    Check,
    Bout,
}

pub(super) fn live(home: &DrawnHome, seed: u64, end: Moment) -> DrawnLife {
    let back = i32::try_from(home.days.saturating_sub(1)).unwrap_or(0);
    let begun = end.day(&Zone::utc()).plus(-back).start(&Zone::utc());
    let mut chance = Chance::new(seed, 62);
    let mind = Mind::new(home.habit, home.words, home.sees_likes, &mut chance);
    let book = Book::new(home.words, seed, begun);
    let presses = home.presses_a_day.unwrap_or_else(|| chance.between(10.0, 40.0));
    let pressed = vec![0; home.words];
    let checking = Checking::default();
    let mut life = Life { home, book, chance, mind, begun, now: begun, swap: None, checking, pressed };
    for day in 0..home.days {
        life.day(day, presses);
    }
    let Life { book, .. } = life;
    let (animal, words) = (book.animal, book.words.clone());
    DrawnLife { events: book.closes(end), animal, words, begun }
}

impl Life<'_> {
    fn day(&mut self, day: u32, presses: f64) {
        let midnight = self.begun.plus_seconds(f64::from(day) * 86_400.0);
        self.agree(midnight);
        let mut agenda: Vec<(f64, Planned)> = Vec::new();
        for hour in SITTINGS {
            if self.chance.coin(self.home.sittings_a_day / 2.0) {
                agenda.push((hour + 0.2 * self.chance.unit(), Planned::Sitting));
            }
        }
        if self.check_due(day) {
            agenda.push((CHECK, Planned::Check));
        }
        let bouts = presses / IN_BOUT;
        let mut hour = AWAKE.0 + self.chance.exponential((AWAKE.1 - AWAKE.0) / bouts);
        while hour < AWAKE.1 {
            agenda.push((hour, Planned::Bout));
            hour += self.chance.exponential((AWAKE.1 - AWAKE.0) / bouts);
        }
        agenda.sort_by(|a, b| a.0.total_cmp(&b.0));
        for (hour, planned) in agenda {
            self.goes_on(midnight.plus_seconds(hour * 3600.0));
            match planned {
                Planned::Sitting => self.sitting(),
                Planned::Check => self.check(),
                Planned::Bout => self.bout(),
            }
        }
    }

    /// Time goes on to a moment, or, where that is over, by a minute.
    pub(super) fn goes_on(&mut self, to: Moment) {
        self.now = to.max(self.now.plus_seconds(60.0));
        self.moves();
    }

    /// Time goes on by so many seconds.
    pub(super) fn waits(&mut self, seconds: f64) {
        self.now = self.now.plus_seconds(seconds);
        self.moves();
    }

    fn moves(&mut self) {
        let hours = self.now.seconds_since(self.begun) / 3600.0;
        self.mind.moves_on(hours, &mut self.chance);
    }

    /// Hours since the day began.
    pub(super) fn hour(&self) -> f64 {
        (self.now.seconds_since(self.begun) / 3600.0).rem_euclid(24.0)
    }

    /// Of its own accord it presses a few times.
    fn bout(&mut self) {
        let wants = self.mind.presses(None);
        while self.chance.coin(wants.min(MOST_ON)) {
            let word = self.mind.aims(None, &mut self.chance);
            self.answers_press(word, 0);
            let pause = self.chance.between(45.0, 180.0);
            self.waits(pause);
        }
    }
}
