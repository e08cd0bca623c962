//! What holds a word up, as the animal meets it: a thing that has to be fetched, a button too loud, noise outside.

use super::animal::{Animal, Place};
use super::hidden::HeldUp;
use super::luck::Of;
use super::mind::ms;
use super::room::about;
use super::thing::Thing;
use super::told::What;
use crate::held_up::Cause;

/// Seconds that fetching takes: a thing that lies at hand is no fetching.
const FETCHES_S: (f64, f64) = (7.0, 10.0);
/// Noises a second outside, and the least seconds between two.
const NOISES: (f64, f64) = (1.0 / 9.0, 6.0);
/// Strain of a noise for one who minds it, and of a sound that is too loud.
const MINDS: f64 = 0.46;
const TOO_LOUD: f64 = 0.4;

impl Animal {
    fn held_by(&self, cause: Cause) -> Option<HeldUp> {
        self.held_up.filter(|held| held.hidden.cause == cause)
    }

    /// Whether it keeps away from a button, whose sound is too loud for it.
    pub fn shies_from(&self, thing: Thing) -> bool {
        self.held_up.and_then(HeldUp::shuts) == Some(thing)
    }

    /// Milliseconds in which a thing that is not at hand is fetched.
    pub fn is_fetched_in(&self, thing: Thing) -> Option<u32> {
        let held = self.held_by(Cause::DelayTooLong);
        let far = held.is_some_and(|held| held.hidden.word == thing && !held.ready);
        far.then(|| ms(self.mind.luck.of(Of::Hides, self.now).between(FETCHES_S.0, FETCHES_S.1)))
    }

    /// A button sounds that is too loud for it.
    pub fn hears(&mut self, thing: Thing) {
        if self.shies_from(thing) && self.is_there() {
            self.tell(What::Startled(thing));
            self.strains(TOO_LOUD);
            let mut c = self.mind.luck.of(Of::Hides, self.now);
            let (across, down) = (c.unit(), c.unit());
            self.place = Place::Roams;
            self.walks(about(across, down), Place::Roams);
        }
    }

    /// Something bangs outside now and then, whatever holds the word up; whoever minds it shows so.
    pub fn noises(&mut self) {
        let Some(held) = self.held_up.filter(|held| !held.quiet) else { return };
        let (rate, apart_s) = NOISES;
        if self.now < held.noise_ms + ms(apart_s) || !self.happens(Of::Noises, rate) {
            return;
        }
        self.held_up = Some(HeldUp { noise_ms: self.now, ..held });
        self.tell(What::Noise);
        if held.hidden.cause == Cause::PlaceOrNoise && self.place != Place::Gone {
            self.strains(MINDS);
            self.interest -= 0.05;
        }
    }
}
