//! The animal from one step to the next: where it goes, what it touches, what it feels.

use super::character::Traits;
use super::exercise::Exercise;
use super::hidden::{HeldUp, Hidden};
use super::luck::{Luck, Of};
use super::mind::{Mind, ms};
use super::pairing::{Answers, Came, Pairing};
use super::room::{BED, BEFORE, DOOR, GIVEN, Motion, Spot, about, at_button};
use super::showing::Showing;
use super::thing::Thing;
use super::told::{SignSeen, Told, What, signs};
use sayso_model::SignLevel;

/// A step.
pub(super) const STEP_MS: u32 = 100;
const DT_S: f64 = STEP_MS as f64 / 1000.0;
/// Strain at which a mild and a strong sign show, and below which it is at ease again.
pub(super) const MILD: f64 = 0.35;
const STRONG: f64 = 0.75;
const AT_EASE: f64 = 0.2;
/// Milliseconds between a mild sign and a strong one, at the least.
const WARNS_MS: u32 = 1_500;
/// Milliseconds after which a press of its own counts as unanswered.
const UNANSWERED_MS: u32 = 8_000;
/// Milliseconds for which the person's stepping away calms it.
pub(super) const PEACE_MS: u32 = 8_000;

/// Seconds within which the first press of an evening comes.
const FIRST_S: (f64, f64) = (5.0, 19.0);

/// Where it is, or goes.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub(super) enum Place {
    Bed,
    Roams,
    Board,
    Gone,
}

/// A thing that was given and lies there.
#[derive(Clone, Copy, Debug)]
pub(super) struct Given {
    pub thing: Thing,
    /// When it will take it or not.
    pub at_ms: u32,
    /// When the person is back with it, where it is fetched.
    pub fetched_ms: Option<u32>,
    /// What it teaches about: the press, its seconds of delay, whose it was, and the showing, where it was one.
    pub answers: Option<(Thing, f64, Answers, Option<Showing>)>,
}

/// An invitation that waits.
#[derive(Clone, Copy, Debug)]
pub(super) struct Offered {
    pub thing: Thing,
    pub until_ms: u32,
    /// Its press that is to come.
    pub press: Option<(u32, Thing)>,
}

/// Two things held out.
#[derive(Clone, Copy, Debug)]
pub(super) struct Held {
    pub left: Thing,
    pub right: Thing,
    /// When it will have chosen.
    pub at_ms: u32,
    /// Until when it may come for it.
    pub until_ms: u32,
}

/// The animal.
#[derive(Clone, Debug)]
pub(super) struct Animal {
    pub mind: Mind,
    pub now: u32,
    pub place: Place,
    heading: Option<Place>,
    stands: Spot,
    motion: Option<Motion>,
    pub strain: f64,
    pub interest: f64,
    level: u8,
    warned_ms: u32,
    pub busy_until: u32,
    pub busy_with: Option<Thing>,
    /// What lies there or is being fetched, in the order in which it was given.
    pub given: Vec<Given>,
    pub offered: Option<Offered>,
    pub held: Option<Held>,
    /// A press by the person whose thing has not come yet.
    pub shown: Option<(Thing, u32)>,
    pub showing: Option<Showing>,
    /// Its own press without an answer.
    pub own: Option<(Thing, u32)>,
    /// Whether it has gone for good.
    pub leaving: bool,
    pub held_until: u32,
    pub peace_until: u32,
    /// What holds a word up, in the exercise about that.
    pub held_up: Option<HeldUp>,
    /// A moment at which it wants to go, whatever happens.
    goes_ms: Option<u32>,
    asks: f64,
    /// When an evening's first press comes, until it has come.
    pub(super) first_ms: Option<u32>,
    looked_ms: u32,
    pub told: Vec<Told>,
    pub motions: Vec<Motion>,
}

impl Animal {
    pub fn new(traits: Traits, exercise: Exercise, seed: u64) -> Self {
        let luck = Luck(seed);
        let goes_ms = (exercise == Exercise::Leaving).then(|| ms(luck.of(Of::Goes, 0).between(22.0, 42.0)));
        // What is rehearsed there begins at the board.
        let there = matches!(exercise, Exercise::Leaving | Exercise::Evening | Exercise::Stuck);
        let hidden = Hidden::drawn(exercise, luck);
        let traits = hidden.map_or(traits, |hidden| hidden.makes(traits));
        let traits = Traits { stays_s: traits.stays_s * exercise.lasts(), ..traits };
        let (place, stands) = if there { (Place::Board, BEFORE) } else { (Place::Bed, BED) };
        Self {
            mind: Mind::new(traits, exercise, luck),
            now: 0,
            place,
            heading: None,
            stands,
            motion: None,
            strain: 0.0,
            interest: 0.8,
            level: 0,
            warned_ms: 0,
            busy_until: 0,
            busy_with: None,
            given: Vec::new(),
            offered: None,
            held: None,
            shown: None,
            showing: None,
            own: None,
            leaving: false,
            held_until: 0,
            peace_until: 0,
            held_up: hidden.map(HeldUp::from),
            goes_ms,
            asks: exercise.asks(),
            first_ms: (exercise == Exercise::Evening).then(|| ms(luck.of(Of::First, 0).between(FIRST_S.0, FIRST_S.1))),
            looked_ms: 0,
            told: Vec::new(),
            motions: Vec::new(),
        }
    }

    pub const fn traits(&self) -> Traits {
        self.mind.traits
    }

    pub fn tell(&mut self, what: What) {
        self.told.push(Told { at_ms: self.now, what });
    }

    /// Whether it is there, at the board.
    pub fn is_there(&self) -> bool {
        self.place == Place::Board && self.heading.is_none()
    }

    /// It feels pushed by so much.
    pub fn strains(&mut self, by: f64) {
        self.strain = (self.strain + by * self.traits().minds).clamp(0.0, 1.2);
    }

    /// Its own press brought nothing: so much interest is lost, by so much it feels pushed.
    pub fn unpaid(&mut self, word: Thing, came: Came, interest: f64, strain: f64) {
        self.mind.paid(word, 0.93);
        self.mind.learns(Pairing::of(word, came, 0.0));
        self.interest -= interest;
        self.strains(strain);
    }

    pub fn happens(&self, of: Of, rate: f64) -> bool {
        rate > 0.0 && self.mind.luck.of(of, self.now).coin(1.0 - (-rate * DT_S).exp())
    }

    /// Begins to walk.
    pub fn walks(&mut self, to: Spot, heading: Place) {
        let from = self.here();
        let ends = self.now + ms(to.from(from) / self.traits().speed).max(STEP_MS);
        let motion = Motion { begins_ms: self.now, ends_ms: ends, from, to };
        (self.motion, self.heading) = (Some(motion), Some(heading));
        self.motions.push(motion);
    }

    /// Stops where it is.
    pub fn stops(&mut self) {
        self.stands = self.here();
        if self.motion.take().is_some() {
            let motion = Motion { begins_ms: self.now, ends_ms: self.now, from: self.stands, to: self.stands };
            self.motions.push(motion);
        }
        self.heading = None;
    }

    pub fn here(&self) -> Spot {
        self.motion.map_or(self.stands, |m| m.at(self.now))
    }

    /// Whether it has left, or is on its way out, and has not set out to come back.
    pub fn has_left(&self) -> bool {
        self.leaving || (self.place == Place::Gone && self.heading.is_none())
    }

    /// It leaves, unless it has: what it was given, invited to or held out ends with that.
    pub fn leaves(&mut self) {
        if self.place == Place::Gone || self.leaving {
            return;
        }
        self.leaving = true;
        (self.busy_until, self.busy_with) = (0, None);
        self.given.clear();
        (self.offered, self.held) = (None, None);
        self.tell(What::Leaves);
        self.walks(DOOR, Place::Gone);
    }

    /// Goes on by one step; `now` is its beginning.
    pub fn step(&mut self, now: u32) {
        self.now = now;
        self.mind.step(now, DT_S);
        self.noises();
        self.feels();
        self.arrives();
        self.takes();
        self.waits();
        self.chooses();
        if self.own.is_some_and(|(_, at)| now >= at + UNANSWERED_MS)
            && let Some((thing, _)) = self.own.take()
        {
            self.tell(What::Unanswered(thing));
            self.unpaid(thing, Came::Unanswered, 0.12, 0.08);
        }
        if self.goes_ms.is_some_and(|at| now >= at) && now >= self.held_until {
            self.leaves();
        }
        if self.motion.is_none() && now >= self.busy_until && now >= self.held_until && !self.leaving {
            match self.place {
                Place::Board => self.at_board(),
                Place::Bed | Place::Roams => self.elsewhere(),
                Place::Gone => self.comes_back(),
            }
        }
    }

    fn feels(&mut self) {
        let t = self.traits();
        let peace = if self.now < self.peace_until { 3.0 } else { 1.0 };
        self.strain *= (-DT_S * peace / t.calms_s).exp();
        let long = f64::from(self.now) / 1000.0 - t.stays_s;
        if long > 0.0 && self.place == Place::Board {
            self.strain += 0.03 * DT_S * t.minds;
        }
        self.interest = (self.interest - 0.008 * DT_S).clamp(0.05, 1.0);
        let eats = self.busy_with == Some(Thing::Treat) && self.now < self.busy_until;
        // A mild sign comes first, unless food is to be guarded; whoever is watched closely gets it in time.
        let warned = self.level > 0 && self.now >= self.warned_ms + WARNS_MS;
        let level = match self.strain {
            s if s >= STRONG && (warned || eats) => 2,
            s if s >= MILD => self.level.max(1),
            _ => 0,
        };
        if level > self.level && self.place != Place::Gone {
            self.level = level;
            self.warned_ms = self.now;
            let known = signs(t.species, level == 2, eats);
            let id = known[self.mind.luck.of(Of::Signs, self.now).below(known.len())];
            let level = if level == 2 { SignLevel::Strong } else { SignLevel::Mild };
            self.tell(What::Sign(SignSeen { level, id }));
        } else if self.level > 0 && self.strain < AT_EASE {
            self.level = 0;
            if self.place != Place::Gone && !self.leaving {
                self.tell(What::Eases);
            }
        }
        // Nothing keeps it after a strong sign but a barred way.
        if self.level == 2 && self.now >= self.held_until {
            self.leaves();
        }
    }

    fn arrives(&mut self) {
        let Some(motion) = self.motion.filter(|m| m.ends_ms <= self.now) else { return };
        (self.motion, self.stands) = (None, motion.to);
        let Some(place) = self.heading.take() else { return };
        let came = place == Place::Board && self.place != Place::Board;
        self.place = place;
        match place {
            Place::Board if came => self.tell(What::Joined),
            Place::Gone => {
                self.tell(What::Gone);
                self.leaving = false;
                (self.own, self.shown) = (None, None);
                self.given.clear();
            }
            _ => {}
        }
    }

    /// There, and free to do as it likes.
    fn at_board(&mut self) {
        if self.first_ms.is_some() && self.strain < MILD {
            return self.begins_evening();
        }
        let t = self.traits();
        let calm = (1.0 - self.strain).max(0.0);
        let minutes = f64::from(self.now) / 1000.0 / t.stays_s;
        if self.happens(Of::Goes, t.leaves * (1.0 + minutes * minutes) * (1.0 + 4.0 * self.strain)) {
            return self.leaves();
        }
        if self.happens(Of::Moves, 0.10 * (1.0 - self.interest).powi(2) + 0.05 * self.strain) {
            let mut c = self.mind.luck.of(Of::Moves, self.now.wrapping_add(1));
            let (across, down) = (c.unit(), c.unit());
            self.tell(What::Wanders);
            self.place = Place::Roams;
            return self.walks(about(across, down), Place::Roams);
        }
        if self.offered.is_some() || !self.given.is_empty() || self.held.is_some() {
            return;
        }
        if self.own.is_none() && self.shown.is_none() {
            let wanted = self.mind.want;
            let asks = wanted
                .map_or(0.0, |w| t.asks * self.asks * self.mind.demand[w.place()] * self.mind.understands(w) * calm);
            if self.happens(Of::Presses, asks)
                && let Some(aimed) = wanted.map(|wanted| self.mind.aims(wanted, self.now))
                && !self.shies_from(aimed)
            {
                return self.presses(aimed);
            }
            let plays = if self.asks > 0.0 { t.plays } else { 0.0 };
            if self.happens(Of::Touches, plays * calm) {
                let thing = Thing::ALL[self.mind.luck.of(Of::Touches, self.now.wrapping_add(1)).below(4)];
                if !self.shies_from(thing) {
                    return self.presses(thing);
                }
            }
        }
        if self.happens(Of::Brushes, t.brushes) {
            let thing = Thing::ALL[self.mind.luck.of(Of::Brushes, self.now.wrapping_add(1)).below(4)];
            if self.shies_from(thing) {
                return;
            }
            self.walks(at_button(thing), Place::Board);
            return self.tell(What::Brushed(thing));
        }
        if self.now >= self.looked_ms + 6_000 && self.happens(Of::Looks, 0.15) {
            self.looked_ms = self.now;
            let thing = self.mind.want.unwrap_or(Thing::Treat);
            self.tell(What::Looks(thing));
        }
    }

    /// An evening is about presses: it stays at the board until the first of them, which comes soon and not at once.
    fn begins_evening(&mut self) {
        let free = self.given.is_empty() && self.offered.is_none() && self.own.is_none() && self.shown.is_none();
        if free && self.first_ms.is_some_and(|first| self.now >= first) {
            let thing = self.mind.want.unwrap_or_else(|| self.mind.best());
            self.presses(self.mind.aims(thing, self.now));
        }
    }

    /// Who went comes back by itself, at ease again.
    fn comes_back(&mut self) {
        if self.goes_ms.is_none() && self.strain < 0.1 && self.happens(Of::Moves, 0.1 * self.traits().comes) {
            self.tell(What::Comes);
            self.walks(BEFORE, Place::Board);
        }
    }

    /// In its bed or about the room.
    fn elsewhere(&mut self) {
        let t = self.traits();
        let called = if self.shown.is_some() || !self.given.is_empty() || self.offered.is_some() || self.held.is_some()
        {
            1.6
        } else {
            1.0
        };
        let calm = (1.0 - 1.6 * self.strain).max(0.0);
        if self.happens(Of::Moves, t.comes * called * calm * (0.3 + self.interest)) {
            self.tell(What::Comes);
            return self.walks(if !self.given.is_empty() { GIVEN } else { BEFORE }, Place::Board);
        }
        if self.place == Place::Roams && self.happens(Of::Goes, 0.01 + 0.08 * self.strain) {
            return self.leaves();
        }
        if self.now >= self.looked_ms + 7_000 && self.happens(Of::Looks, 0.12) {
            self.looked_ms = self.now;
            self.tell(What::LooksUp);
        }
    }
}
