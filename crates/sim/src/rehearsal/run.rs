//! A rehearsal from its first moment to its end.

use super::act::{Act, Does};
use super::animal::{Animal, Place, STEP_MS};
use super::character::{Character, Traits};
use super::deeds::Person;
use super::exercise::{Exercise, INVITATIONS, PAIRS, PRESSES, TREATS, WAIT_S};
use super::hidden::{HeldUp, Hidden};
use super::luck::Luck;
use super::mind::{ms, understanding};
use super::pairing::{Pairing, after};
use super::room::{Motion, Spot};
use super::thing::Thing;
use super::told::{Told, What};

/// Milliseconds after the last invitation, or the last press of an evening, in which its answer may still come.
const SETTLES_MS: u32 = 8_000;

/// What is rehearsed, with whom, and which of all the lives it might have.
#[derive(Clone, Copy, PartialEq, Eq, Hash, Debug)]
pub struct Setup {
    /// Decides everything that is chance.
    pub seed: u64,
    /// With whom.
    pub character: Character,
    /// What.
    pub exercise: Exercise,
}

impl Setup {
    /// What it hides: a word that does not get on, and why; nothing but in the exercise about that.
    #[must_use]
    pub fn hides(self) -> Option<Hidden> {
        Hidden::drawn(self.exercise, Luck(self.seed))
    }
}

/// Why it is over.
#[derive(Clone, Copy, PartialEq, Eq, Hash, Debug)]
pub enum Over {
    /// The person ended it.
    Ended,
    /// Its time was up.
    Time,
    /// What it was about is done.
    Done,
}

impl Over {
    /// Its name, for messages.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::Ended => "ended",
            Self::Time => "time",
            Self::Done => "done",
        }
    }
}

/// A rehearsal that goes on: acts in, moments out, step by step.
#[derive(Clone, Debug)]
pub struct Rehearsal {
    setup: Setup,
    animal: Animal,
    person: Person,
    begins_at: Spot,
    before: [f64; 4],
    acts: Vec<Act>,
    next_act: usize,
    next_ms: u32,
    offers: (usize, u32),
    presses: (usize, u32),
    choices: usize,
    counted: usize,
    over: Option<(u32, Over)>,
}

impl Rehearsal {
    /// Begins with an animal of the setup's character.
    #[must_use]
    pub fn new(setup: Setup) -> Self {
        Self::with(setup, setup.character.traits())
    }

    /// Begins with an animal of these traits.
    #[must_use]
    pub fn with(setup: Setup, traits: Traits) -> Self {
        let animal = Animal::new(traits, setup.exercise, setup.seed);
        let treats = (setup.exercise == Exercise::Evening).then_some(TREATS);
        Self {
            setup,
            begins_at: animal.here(),
            before: animal.mind.logit,
            person: Person::new(treats, setup.hides().map(|hidden| hidden.word), animal.mind.luck),
            animal,
            acts: Vec::new(),
            next_act: 0,
            next_ms: 0,
            offers: (0, 0),
            presses: (0, 0),
            choices: 0,
            counted: 0,
            over: None,
        }
    }

    /// What it knows at the beginning instead of what the exercise says, in logits by the place of the word: for one who is met
    /// again.
    #[must_use]
    pub fn knowing(mut self, logits: [f64; 4]) -> Self {
        self.animal.mind.logit = logits;
        self.before = logits;
        self
    }

    /// Now, in milliseconds since it began.
    #[must_use]
    pub const fn now_ms(&self) -> u32 {
        self.next_ms
    }

    /// What happened so far.
    #[must_use]
    pub fn told(&self) -> &[Told] {
        &self.animal.told
    }

    /// Whether the animal is at the board.
    #[must_use]
    pub fn is_there(&self) -> bool {
        self.animal.is_there()
    }

    /// Whether it is over.
    #[must_use]
    pub const fn is_over(&self) -> bool {
        self.over.is_some()
    }

    /// The person does something now.
    pub fn does(&mut self, does: Does) {
        let at_ms = self.acts.last().map_or(0, |last| last.at_ms).max(self.next_ms);
        self.acts.push(Act { at_ms, does });
    }

    /// Goes on by a step: first what the person does in it, then the animal.
    pub fn step(&mut self) {
        if self.over.is_some() {
            return;
        }
        let now = self.next_ms;
        while let Some(act) = self.acts.get(self.next_act).copied().filter(|act| act.at_ms <= now) {
            self.next_act += 1;
            self.person.does(act, &mut self.animal);
            if act.does == Does::End {
                self.over = Some((act.at_ms, Over::Ended));
                return;
            }
        }
        self.animal.step(now);
        self.count();
        self.next_ms = now + STEP_MS;
        let most = self.setup.exercise.most_ms();
        if self.is_done() {
            self.over = Some((self.next_ms, Over::Done));
        } else if self.next_ms >= most {
            self.over = Some((most, Over::Time));
        }
    }

    fn count(&mut self) {
        for told in &self.animal.told[self.counted..] {
            match told.what {
                What::Person(Does::Offer(_)) => self.offers = (self.offers.0 + 1, told.at_ms),
                What::Chose(_) | What::ChoseNone => self.choices += 1,
                What::Pressed(_) => self.presses = (self.presses.0 + 1, told.at_ms),
                _ => {}
            }
        }
        self.counted = self.animal.told.len();
    }

    fn is_done(&self) -> bool {
        let a = &self.animal;
        let settled = a.offered.is_none()
            && a.given.is_empty()
            && a.own.is_none()
            && a.shown.is_none()
            && a.held.is_none()
            && a.busy_with.is_none();
        let since = |last: u32| self.next_ms >= last + SETTLES_MS;
        match self.setup.exercise {
            Exercise::Likes => self.choices >= PAIRS && settled,
            Exercise::Inviting => self.offers.0 >= INVITATIONS && settled && since(self.offers.1 + ms(WAIT_S)),
            Exercise::Evening => self.presses.0 >= PRESSES && settled && since(self.presses.1),
            Exercise::Showing | Exercise::Leaving | Exercise::Stuck | Exercise::Free => false,
        }
    }

    /// How it went, as far as it went.
    #[must_use]
    pub fn ends(self) -> Run {
        let mind = &self.animal.mind;
        let before = self.setup.hides().map(HeldUp::from);
        Run {
            setup: self.setup,
            over: self.over.unwrap_or((self.next_ms, Over::Time)),
            begins_at: self.begins_at,
            likes: mind.likes,
            traits: mind.traits,
            pairings: mind.pairings.clone(),
            logits: (self.before, mind.logit),
            demand: mind.demand,
            shut: (before.and_then(HeldUp::shuts), self.animal.held_up.and_then(HeldUp::shuts)),
            stays: self.animal.place != Place::Gone,
            told: self.animal.told,
            motions: self.animal.motions,
        }
    }
}

/// A rehearsal that is over: what was seen, and what was true.
#[derive(Clone, PartialEq, Debug)]
pub struct Run {
    /// What was rehearsed.
    pub setup: Setup,
    /// When and why it was over.
    pub over: (u32, Over),
    /// Where the animal was at first.
    pub begins_at: Spot,
    /// All that happened, in time.
    pub told: Vec<Told>,
    /// How it moved, in time; between two it stands.
    pub motions: Vec<Motion>,
    /// What it likes: log-odds of wanting each thing, by its place.
    pub likes: [f64; 4],
    /// What makes it what it is.
    pub traits: Traits,
    /// What taught it, in order.
    pub pairings: Vec<Pairing>,
    /// Logits of understanding each word, before and after.
    pub logits: ([f64; 4], [f64; 4]),
    /// How often it asks for each thing, against the beginning.
    pub demand: [f64; 4],
    /// A button that it keeps away from, whatever it understands: at the beginning and at the end.
    pub shut: (Option<Thing>, Option<Thing>),
    /// Whether it is still in the room.
    pub stays: bool,
}

impl Run {
    /// Probability of a meant press of each word, given that it wants the thing, before and after.
    #[must_use]
    pub fn understood(&self) -> ([f64; 4], [f64; 4]) {
        (presses(self.logits.0, self.shut.0), presses(self.logits.1, self.shut.1))
    }

    /// The same at the end, had it these logits of understanding.
    #[must_use]
    pub fn presses(&self, logits: [f64; 4]) -> [f64; 4] {
        presses(logits, self.shut.1)
    }

    /// Logits of understanding at the end, had these been the pairings.
    #[must_use]
    pub fn had(&self, pairings: impl IntoIterator<Item = Pairing>) -> [f64; 4] {
        after(&self.traits, self.logits.0, pairings)
    }

    /// Logits that it learned, over all words.
    #[must_use]
    pub fn learned(&self) -> f64 {
        self.logits.1.iter().zip(&self.logits.0).map(|(after, before)| after - before).sum()
    }
}

/// Probability of a meant press by the place of the word: none of a button that it keeps away from.
fn presses(logits: [f64; 4], shut: Option<Thing>) -> [f64; 4] {
    let mut all = logits.map(understanding);
    if let Some(word) = shut {
        all[word.place()] = 0.0;
    }
    all
}

/// The whole rehearsal, given all that the person does.
#[must_use]
pub fn play(setup: Setup, acts: &[Act]) -> Run {
    play_with(setup, setup.character.traits(), acts)
}

/// The same with an animal of these traits.
#[must_use]
pub fn play_with(setup: Setup, traits: Traits, acts: &[Act]) -> Run {
    let mut rehearsal = Rehearsal::with(setup, traits);
    acts.clone_into(&mut rehearsal.acts);
    while !rehearsal.is_over() {
        rehearsal.step();
    }
    rehearsal.ends()
}
