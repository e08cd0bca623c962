//! A club: many small invented homes, no two alike, whose truth is known. For a server of many homes, and for comparisons
//! across them.

mod names;

use crate::animal::{AnimalTruth, Liking, Presser, Style, Temper};
use crate::chance::Chance;
use crate::fixed::{label, note, zone};
use crate::held_up::Cause;
use crate::home::*;
use crate::plan::{LikesPlan, Plan};
use crate::run::{Simulated, Simulation};
use crate::stuck::hold_up;
use names::{ANIMALS, PEOPLE, Thing, WHAT, WHERE, ZONES, things};
use sayso_model::*;

/// What is behind a home of the club.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
pub enum Lot {
    /// Words are learned, one after the other.
    Fine,
    /// One word is stuck, for that cause and no other.
    Stuck(Cause),
    /// Presses mean nothing: any button, or those of a place.
    Meaningless,
    /// It has only begun; there is hardly anything to tell from.
    New,
}

/// A home of the club.
#[derive(Clone, PartialEq, Debug)]
pub struct ClubHome {
    /// What is behind it.
    pub lot: Lot,
    /// Its events, and the truth behind them.
    pub run: Simulated,
}

/// So many of ten homes after another.
const LOTS: [Sort; 10] = {
    use Sort::{Fine, Meaningless, New, Stuck};
    [Fine, Stuck, Fine, New, Stuck, Fine, Meaningless, Fine, Stuck, Fine]
};
/// Weeks in which a word can be found stuck, at least.
const WEEKS_TO_STICK: f64 = 6.0;

#[derive(Clone, Copy, PartialEq, Eq)]
enum Sort {
    Fine,
    Stuck,
    Meaningless,
    New,
}

/// So many homes, ending at `end`. The same seed, number and end give the same events to the byte; of more homes the first ones
/// are the same.
///
/// # Example
/// ```
/// use sayso_sim::{Lot, club};
/// let end = "2026-06-01T19:00:00Z".parse()?;
/// let club = club(1, 4, end);
/// assert_eq!(club.iter().map(|home| home.lot).filter(|lot| *lot == Lot::Fine).count(), 2);
/// # Ok::<(), sayso_model::time::TimeError>(())
/// ```
#[must_use]
pub fn club(seed: u64, homes: u32, end: Moment) -> Vec<ClubHome> {
    let one = |number| {
        let (lot, home) = club_home(seed, number, end);
        ClubHome { lot, run: Simulation::unchecked(&home, own_seed(seed, number), end).run() }
    };
    (0..homes).map(one).collect()
}

/// The seed of one of the homes, from which its ids follow.
fn own_seed(seed: u64, number: u32) -> u64 {
    let mut c = Chance::new(seed, 71);
    (0..=number).fold(0, |_, _| u64::from(c.seed()) << 32 | u64::from(c.seed()))
}

/// The configuration behind one home of [`club`], and what is behind it. Birth dates follow from `end`.
#[must_use]
pub fn club_home(seed: u64, number: u32, end: Moment) -> (Lot, Home) {
    let place = usize::try_from(number).unwrap_or(usize::MAX);
    let sort = LOTS[place % LOTS.len()];
    let mut c = Chance::new(own_seed(seed, number), 72);
    let weeks = match sort {
        Sort::New => c.between(0.2, 0.9),
        Sort::Stuck => spread(&mut c, WEEKS_TO_STICK, 40.0),
        Sort::Fine | Sort::Meaningless => spread(&mut c, 3.0, 40.0),
    };
    let days = whole(weeks * 7.0).max(2);
    let word_count = match sort {
        Sort::New => 2,
        Sort::Stuck => 3 + c.below(6),
        Sort::Fine | Sort::Meaningless => 2 + c.below(7),
    };
    let species = Species::ALL[place % Species::ALL.len()];
    let things = things(species);
    let things = &things[..word_count];
    let mut home = Home {
        name: label(&home_name(seed, place)),
        zone: zone(ZONES[c.below(ZONES.len())]),
        days,
        board: (2, 4),
        people: people(&mut c),
        rewards: things.iter().map(reward).collect(),
        words: words(things, days),
        animals: Vec::new(),
        rules: vec![Rule { word: None, text: note("Whoever hears a button answers within three seconds.") }],
        remarks: Vec::new(),
        clips: false,
        stuck: Vec::new(),
    };
    let name = label(nth(&ANIMALS, seed, 73, place));
    home.animals.push(animal(&mut c, name, species, word_count, end.day(&home.zone)));
    // One home in eight has two; the second is never what a word is stuck with.
    if place % 8 == 5 {
        let name = label(nth(&ANIMALS, seed, 73, place + ANIMALS.len() / 2));
        home.animals.push(animal(&mut c, name, species, word_count, end.day(&home.zone)));
        home.words.iter_mut().for_each(|w| w.animals = vec![0, 1]);
    }
    let lot = match sort {
        Sort::Fine => Lot::Fine,
        Sort::New => Lot::New,
        Sort::Meaningless => {
            let anything = c.coin(0.5);
            let by_place = (0..word_count).map(|w| 0.5_f64.powi(i32::try_from(w).unwrap_or(8))).collect();
            home.animals[0].presser.style = if anything { Style::AnyWord } else { Style::ByPlace(by_place) };
            Lot::Meaningless
        }
        Sort::Stuck => {
            let before = LOTS[..place % LOTS.len()].iter().filter(|k| **k == Sort::Stuck).count();
            let each = LOTS.iter().filter(|k| **k == Sort::Stuck).count();
            let cause = Cause::ALL[(place / LOTS.len() * each + before) % Cause::ALL.len()];
            // One of those that are there from the first day on.
            hold_up(&mut home, c.below(FIRST.min(word_count)), cause, &mut c);
            Lot::Stuck(cause)
        }
    };
    (lot, home)
}

/// Words that are shown from the first day on.
const FIRST: usize = 3;

/// Between the two, as often in each doubling.
fn spread(c: &mut Chance, low: f64, high: f64) -> f64 {
    c.between(low.ln(), high.ln()).exp()
}

fn whole(x: f64) -> u32 {
    u32::try_from(x.round() as i64).unwrap_or(0)
}

/// One of `all` for each place, in an order of the seed's.
fn nth<'a>(all: &[&'a str], seed: u64, stream: u64, place: usize) -> &'a str {
    let mut order = all.to_vec();
    Chance::new(seed, stream).shuffle(&mut order);
    order[place % order.len()]
}

/// A name no other of the first eighty homes has.
fn home_name(seed: u64, place: usize) -> String {
    let mut order: Vec<usize> = (0..WHERE.len() * WHAT.len()).collect();
    Chance::new(seed, 74).shuffle(&mut order);
    let of = order[place % order.len()];
    let name = format!("{} {}", WHERE[of % WHERE.len()], WHAT[of / WHERE.len()]);
    let again = place / order.len();
    if again == 0 { name } else { format!("{name} {}", again + 1) }
}

/// Two or three people, the last of three a visitor.
fn people(c: &mut Chance) -> Vec<PersonTruth> {
    let mut names = PEOPLE.to_vec();
    c.shuffle(&mut names);
    let count = 2 + usize::from(c.coin(0.3));
    let person = |(i, name): (usize, &&str)| {
        let person = PersonTruth::ordinary(label(name), c.lognormal(1.8, 0.3));
        let share = [1.0, 0.5, 0.2][i];
        PersonTruth { share, role: if i == 2 { Role::Visitor } else { Role::Home }, ..person }
    };
    names[..count].iter().enumerate().map(person).collect()
}

fn reward(thing: &Thing) -> RewardTruth {
    RewardTruth {
        name: label(thing.name),
        kind: thing.kind,
        kcal_per_piece: thing.food.map(|(kcal, _)| Kcal::clamped(kcal)),
        grams_per_piece: thing.food.map(|(_, grams)| Grams::clamped(grams)),
        seconds_to_deliver: Seconds::clamped(thing.seconds),
        most_per_day: 20,
        says: Some(label(thing.says)),
        already_said: thing.kind == RewardKind::Exploring,
        animals: Vec::new(),
    }
}

/// What is said for "not now".
const LATER: &str = "\"Not now\", a calm look, and back to what we did.";
/// The same of food, of which there is so much a day.
const GONE: &str = "\"Gone for today\" once the day's ration is used; show the empty jar.";

/// The first ones at once, each of the others some time later.
fn words(things: &[Thing], days: u32) -> Vec<WordTruth> {
    let later = things.len().saturating_sub(FIRST).max(1);
    let word = |(i, thing): (usize, &Thing)| {
        let number = u32::try_from(i.saturating_sub(FIRST - 1)).unwrap_or(0);
        let introduced = days * number / (u32::try_from(later).unwrap_or(1) + 2);
        WordTruth {
            says: label(thing.says),
            means: Some(note(thing.means)),
            answer: Some(note(thing.answer)),
            not_now: Some(note(if thing.food.is_some() { GONE } else { LATER })),
            reward: i,
            closing: false,
            animals: vec![0],
            place: Place { row: u8::from(i >= 4), column: u8::try_from(i % 4).unwrap_or(0) },
            introduced,
            shown_from: introduced + 1,
            invited_from: None,
            ease: 1.2,
            fetch_s: 0.0,
        }
    };
    things.iter().enumerate().map(word).collect()
}

fn animal(c: &mut Chance, name: Label, species: Species, things: usize, today: Day) -> AnimalTruth {
    let likes = (0..things).map(|_| Liking::of(c.between(0.8, 2.0)).sating(c.between(0.1, 0.3), 1.0)).collect();
    let kg = match species {
        Species::Dog => c.between(5.0, 32.0),
        Species::Cat => c.between(3.0, 6.0),
        Species::Rabbit => c.between(1.4, 3.5),
        Species::Parrot => c.between(0.3, 0.6),
        Species::Other => c.between(0.7, 1.2),
    };
    AnimalTruth {
        born: Some(today.plus(-i32::try_from(400 + c.below(3000)).unwrap_or(1500))),
        born_estimated: c.coin(0.3),
        weight_kg: Some(Kilograms::clamped((kg * 10.0).round() / 10.0)),
        life_stage: matches!(species, Species::Dog | Species::Cat).then_some(LifeStage::NeuteredAdult),
        temper: Temper { join: c.between(0.9, 2.0), ..Temper::default() },
        presser: Presser {
            rate: 0.4 * c.lognormal(1.0, 0.25),
            forgets: 0.005,
            // Homes with little time: few presses a day, of which not all are heard.
            asks_per_hour: c.between(0.02, 0.06),
            looks_per_hour: 0.005,
            brushes_per_hour: 0.003,
            ..Presser::default()
        },
        plan: Plan {
            hours: vec![c.between(16.0, 20.0)],
            kept: c.between(0.25, 0.6),
            showings: 6,
            invitations: 4,
            show_before_invite: 18,
            heard: 0.4,
            likes: vec![LikesPlan { day: 1, format: LikesFormat::Paired, rounds: 1, rewards: (0..things).collect() }],
            ..Plan::default()
        },
        ..AnimalTruth::ordinary(name, species, likes)
    }
}

/// What the club and the people around its homes are called, invented as all of it is.
pub mod called {
    /// The club.
    pub const CLUB: &str = "Meadow Club";
    /// The keeper of the server.
    pub const SERVER_KEEPER: &str = "Alma";
    /// The keeper of a home without people.
    pub const KEEPER: &str = "Ines";
    /// The keeper of the club.
    pub const CLUB_KEEPER: &str = "Bruno";
    /// Its coach.
    pub const COACH: &str = "Cleo";
    /// A colleague of the coach.
    pub const COLLEAGUE: &str = "Nils";
    /// A sitter in the first home.
    pub const SITTER: &str = "Dora";
    /// An observer there.
    pub const OBSERVER: &str = "Emil";
}
