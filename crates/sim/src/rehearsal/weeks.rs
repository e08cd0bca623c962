//! What the notebook has of the weeks before, in the exercise about a word that does not get on: the same cause in a simulated home.

use super::events::Whose;
use super::run::Setup;
use super::thing::Thing;
use crate::animal::Liking;
use crate::chance::Chance;
use crate::home::{Home, RewardTruth, WordTruth};
use crate::run::Simulation;
use crate::stuck::{hold_up, plain};
use sayso_model::*;

/// Six weeks: as long as the advisor looks back.
const DAYS: u32 = 42;
/// When the session at hand begins: any moment will do.
const NOW_MS: i64 = 1_800_000_000_000;

/// Six weeks of records.
#[derive(Clone, PartialEq, Debug)]
pub struct Weeks {
    /// The events.
    pub events: Vec<Event>,
    /// Whose they are, and when the session at hand begins.
    pub whose: Whose,
}

/// The weeks before a rehearsal, with the words as they are called on its buttons; none where nothing is hidden.
#[must_use]
pub fn weeks(setup: Setup, name: &Label, says: &[Label; 4]) -> Option<Weeks> {
    let hidden = setup.hides()?;
    let mut c = Chance::new(setup.seed, 84);
    let mut home = plain(&mut c, DAYS);
    name_words(&mut home, says);
    let animal = &mut home.animals[0];
    animal.name = name.clone();
    animal.species = setup.character.species();
    // Shown enough, but for the cause that says otherwise.
    animal.plan.hours = vec![8.0, 12.5, 18.5];
    animal.plan.showings = 36;
    hold_up(&mut home, hidden.word.place(), hidden.cause, &mut c);
    let begins = Moment::clamped(NOW_MS);
    let run = Simulation::unchecked(&home, setup.seed, begins).run();
    let ids = &run.truth.ids;
    let words = Thing::ALL.map(|thing| ids.words[thing.place()]);
    let whose = Whose { home: ids.home, animal: ids.animals[0], words, begins, zone: home.zone.clone() };
    Some(Weeks { events: run.events, whose })
}

/// Four words in the place of three, each with the thing it stands for in a rehearsal.
fn name_words(home: &mut Home, says: &[Label; 4]) {
    let of = |thing: Thing| match thing {
        Thing::Treat => (RewardKind::Food, Some(1.5), 4.0),
        Thing::Ball => (RewardKind::Play, None, 30.0),
        Thing::Out => (RewardKind::Exploring, None, 30.0),
        Thing::Company => (RewardKind::Touch, None, 20.0),
    };
    let (reward, word) = (home.rewards[0].clone(), home.words[0].clone());
    home.rewards = Thing::ALL
        .map(|thing| {
            let (kind, kcal, seconds) = of(thing);
            RewardTruth {
                name: says[thing.place()].clone(),
                kind,
                kcal_per_piece: kcal.map(Kcal::clamped),
                grams_per_piece: kcal.map(|k| Grams::clamped(k / 3.0)),
                seconds_to_deliver: Seconds::clamped(seconds),
                ..reward.clone()
            }
        })
        .into();
    home.words = Thing::ALL
        .map(|thing| WordTruth {
            says: says[thing.place()].clone(),
            reward: thing.place(),
            place: Place { row: 0, column: thing as u8 },
            ..word.clone()
        })
        .into();
    let animal = &mut home.animals[0];
    animal.likes.push(Liking::of(1.3).sating(0.15, 1.0));
    for plan in &mut animal.plan.likes {
        plan.rewards = vec![0, 1, 2, 3];
    }
}
