//! What the person's acts do to the animal.

use super::act::{Act, Does};
use super::animal::{Animal, Given, MILD, PEACE_MS, Place};
use super::answering::answered;
use super::hidden::HeldUp;
use super::luck::{Luck, Of};
use super::mind::ms;
use super::pairing::{Answers, Came};
use super::showing::{Reaches, Showing};
use super::thing::Thing;
use super::told::What;

/// Two acts that ask something within this many milliseconds of each other press it.
const HASTE_MS: u32 = 1_500;

/// What the person did last, and how much of something is left.
#[derive(Clone, Debug)]
pub(super) struct Person {
    asked_ms: Option<u32>,
    /// Treats that are left; none where they are not counted.
    treats: Option<usize>,
    /// Pairs to hold out, in order, the first on the animal's left.
    pairs: Vec<(Thing, Thing)>,
    held: usize,
}

impl Person {
    /// With so many treats, where they are counted, and pairs in an order that follows from the seed.
    /// A word that does not get on is in each of them.
    pub fn new(treats: Option<usize>, about: Option<Thing>, luck: Luck) -> Self {
        let of =
            |left: Thing| Thing::ALL.into_iter().filter(move |right| *right != left).map(move |right| (left, right));
        let mut pairs: Vec<(Thing, Thing)> = Thing::ALL.into_iter().flat_map(of).collect();
        pairs.retain(|(left, right)| about.is_none_or(|word| word == *left || word == *right));
        luck.of(Of::Pairs, 0).shuffle(&mut pairs);
        Self { asked_ms: None, treats, pairs, held: 0 }
    }

    /// Does something to the animal, at the act's own moment.
    pub fn does(&mut self, act: Act, animal: &mut Animal) {
        let Act { at_ms, does } = act;
        // Nothing is given twice of what is used up.
        if matches!(does, Does::Give(Thing::Treat) | Does::Instead(Thing::Treat)) && self.treats == Some(0) {
            return;
        }
        animal.now = at_ms;
        animal.tell(What::Person(does));
        if does.asks() {
            self.asks(at_ms, does, animal);
        }
        match does {
            Does::Show(thing) => {
                animal.offered = None;
                if animal.place != Place::Board && animal.now >= animal.busy_until {
                    animal.interest = (animal.interest + 0.05).min(1.0);
                }
                animal.shown = Some((thing, at_ms));
                animal.showing = Some(showing(animal, at_ms));
                animal.hears(thing);
            }
            Does::Give(thing) => self.gives(thing, at_ms, animal),
            Does::Offer(thing) => {
                animal.shown = None;
                animal.is_offered(thing);
            }
            Does::Two if animal.has_left() => {}
            Does::Two => {
                let (left, right) = self.pairs[self.held % self.pairs.len()];
                self.held += 1;
                animal.is_held_out(left, right);
            }
            Does::Again => {
                // Help before the wait is over: what it would have done by itself is not seen any more.
                if let Some(offered) = animal.offered.as_mut() {
                    offered.press = None;
                }
            }
            Does::NotNow => {
                if let Some((pressed, _)) = animal.own.take() {
                    animal.unpaid(pressed, Came::NotNow, 0.06, 0.05);
                }
            }
            Does::Instead(thing) => {
                if let Some((pressed, at)) = animal.own.take() {
                    animal.offered = None;
                    self.lays(thing, Some((pressed, seconds(at_ms, at), Answers::Declined)), animal);
                    animal.interest -= 0.01;
                }
            }
            Does::Back => {
                animal.peace_until = at_ms + PEACE_MS;
                (animal.offered, animal.shown) = (None, None);
            }
            Does::Ready => animal.held_up = animal.held_up.map(|held| HeldUp { ready: true, ..held }),
            Does::Softer => animal.held_up = animal.held_up.map(|held| HeldUp { soft: true, ..held }),
            Does::Quiet => animal.held_up = animal.held_up.map(|held| HeldUp { quiet: true, ..held }),
            Does::Call | Does::Block | Does::End => {}
        }
    }

    /// Something is asked of it: too soon after the last time, while it eats, while it shows that it is too much, or after it left.
    fn asks(&mut self, at_ms: u32, does: Does, animal: &mut Animal) {
        let hasty = self.asked_ms.is_some_and(|last| at_ms < last + HASTE_MS);
        self.asked_ms = Some(at_ms);
        animal.peace_until = animal.peace_until.min(at_ms);
        if hasty {
            animal.strains(0.10);
        }
        if at_ms < animal.busy_until {
            animal.strains(0.04);
            if animal.busy_with == Some(Thing::Treat) {
                let guards = animal.mind.traits.guards;
                animal.strains(guards);
            }
        }
        if animal.strain > 0.3 {
            animal.strains(0.14);
        }
        match does {
            Does::Call => {
                animal.strains(if animal.leaving || animal.place == Place::Gone { 0.3 } else { 0.12 });
                // A lure works, for the moment; what it teaches is that something is wanted of it.
                if matches!(animal.place, Place::Bed | Place::Roams) && animal.strain < 0.5 {
                    animal.interest = (animal.interest + 0.1).min(1.0);
                }
            }
            Does::Block => {
                animal.strains(0.4);
                if animal.leaving {
                    animal.leaving = false;
                    animal.stops();
                    animal.held_until = at_ms + 2_500;
                    animal.tell(What::Barred);
                }
            }
            Does::Again => animal.strains(0.10),
            _ => {}
        }
    }

    fn gives(&mut self, thing: Thing, at_ms: u32, animal: &mut Animal) {
        let answers = answered(thing, (&mut animal.own, &mut animal.shown), |(pressed, _)| *pressed);
        // What it asked for itself has come: it has something to do now, and is invited no longer.
        if answers.is_some_and(|(_, own)| own) {
            animal.offered = None;
        }
        let whose = |own| if own { Answers::Own } else { Answers::Showing };
        let answers = answers.map(|((pressed, at), own)| (pressed, seconds(at_ms, at), whose(own)));
        self.lays(thing, answers, animal);
    }

    fn lays(&mut self, thing: Thing, answers: Option<(Thing, f64, Answers)>, animal: &mut Animal) {
        if thing == Thing::Treat {
            self.treats = self.treats.map(|left| left.saturating_sub(1));
        }
        let in_s = if animal.is_there() { 0.6 } else { 2.0 };
        let fetch_ms = animal.is_fetched_in(thing);
        if fetch_ms.is_some() {
            animal.tell(What::Fetches(thing));
        }
        let late_s = seconds(fetch_ms.unwrap_or(0), 0);
        let shown = |whose| animal.showing.filter(|_| whose == Answers::Showing);
        let answers = answers.map(|(pressed, delay_s, whose)| (pressed, delay_s + late_s, whose, shown(whose)));
        let fetched_ms = fetch_ms.map(|ms| animal.now + ms);
        animal.given.push(Given { thing, at_ms: fetched_ms.unwrap_or(animal.now) + ms(in_s), fetched_ms, answers });
    }
}

/// A button is pressed for it to see: how that finds it.
fn showing(animal: &Animal, at_ms: u32) -> Showing {
    let has_enough = at_ms < animal.busy_until || !animal.given.is_empty();
    let reaches = if animal.place != Place::Board || animal.leaving || has_enough {
        Reaches::Unseen
    } else if animal.strain >= MILD {
        Reaches::Strained
    } else {
        Reaches::Free
    };
    let gap_s = animal.showing.map_or(f64::INFINITY, |last| seconds(at_ms, last.at_ms));
    Showing { at_ms, gap_s, reaches }
}

fn seconds(at_ms: u32, since_ms: u32) -> f64 {
    f64::from(at_ms.saturating_sub(since_ms)) / 1000.0
}
