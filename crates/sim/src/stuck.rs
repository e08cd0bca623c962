//! Households with one word stuck for a known cause, and households drawn at random.

use crate::animal::{AnimalTruth, Liking, Noise, Presser, Style, Temper};
use crate::chance::Chance;
use crate::fixed::{label, zone};
use crate::held_up::{Cause, Stuck};
use crate::home::*;
use crate::plan::LikesPlan;
use crate::run::{Simulated, Simulation};
use sayso_model::*;

/// The word that is stuck in [`stuck_home`].
const STUCK: usize = 2;

/// Six weeks of a small household in which the third word is stuck for that cause and no other.
#[must_use]
pub fn stuck(cause: Cause, seed: u64, end: Moment) -> Simulated {
    Simulation::unchecked(&stuck_home(cause, seed), seed, end).run()
}

/// The configuration behind [`stuck`]. The seed draws ordinary differences between households.
#[must_use]
pub fn stuck_home(cause: Cause, seed: u64) -> Home {
    let mut c = Chance::new(seed, 11);
    let mut home = plain(&mut c, 42);
    hold_up(&mut home, STUCK, cause, &mut c);
    home
}

/// Holds up a word of the first learner by that cause and no other. It takes three words or more, shown from the first days,
/// two people, and two weeks or more.
pub(crate) fn hold_up(home: &mut Home, word: usize, cause: Cause, c: &mut Chance) {
    home.stuck = vec![Stuck { animal: 0, word, cause }];
    // A word it may be taken for.
    let other = if word == 1 { 0 } else { 1 };
    let reward = home.words[word].reward;
    let animal = &mut home.animals[0];
    match cause {
        Cause::RewardNotWanted => animal.likes[reward].strength = c.between(-3.0, -2.0),
        Cause::TooLittleShowing => {
            // The word comes late and sessions are few and short.
            animal.plan.hours = vec![18.0];
            animal.plan.kept = 0.3;
            animal.plan.showings = 3;
            home.words[word].shown_from = (home.days / 2).saturating_sub(1);
        }
        Cause::DelayTooLong => home.words[word].fetch_s = c.between(11.0, 18.0),
        Cause::DeviceAvoided => {
            animal.presser.shies_from = vec![(word, c.between(0.9, 0.98))];
            animal.presser.own_way = 0.85;
        }
        Cause::PlaceOrNoise => {
            // Most sessions fall into the noisy hours.
            animal.plan.hours = vec![8.0, 17.2, 18.6];
            animal.plan.kept = 0.6;
            animal.temper.noise = Some(Noise { from: 16.0, to: 20.0, mood: c.between(2.8, 3.6) });
            home.words[word].shown_from = 12;
        }
        Cause::SoundsAlike => {
            home.words[other].says = label("ball");
            home.words[word].says = label("bowl");
            animal.presser.mixes_up = vec![(other, word, c.between(0.45, 0.6))];
        }
        Cause::AnsweredDifferently => {
            home.people[1].share = 1.5;
            home.people[1].delay_s = c.between(4.0, 6.0);
            home.people[1].answers =
                AnswerHabit { given: 0.15, partly: 0.05, declined: 0.4, alternative: 0.3, missed: 0.1 };
        }
        Cause::Unwell => animal.temper.unwell_from = Some(home.days.saturating_sub(10)),
    }
}

/// The same small household without any trouble, for comparison: the same seed draws the same differences.
#[must_use]
pub fn plain_home(seed: u64) -> Home {
    plain(&mut Chance::new(seed, 11), 42)
}

/// A small household without any trouble: two people, one dog, three words shown from the first day on.
pub(crate) fn plain(c: &mut Chance, days: u32) -> Home {
    let reward = |name: &str, kind, kcal: Option<f64>, seconds| RewardTruth {
        name: label(name),
        kind,
        kcal_per_piece: kcal.map(Kcal::clamped),
        grams_per_piece: kcal.map(|k| Grams::clamped(k / 3.0)),
        seconds_to_deliver: Seconds::clamped(seconds),
        most_per_day: 30,
        says: None,
        already_said: false,
        animals: Vec::new(),
    };
    let word = |says: &str, reward, column, ease| WordTruth {
        says: label(says),
        means: None,
        answer: None,
        not_now: None,
        reward,
        closing: false,
        animals: vec![0],
        place: Place { row: 0, column },
        introduced: 0,
        shown_from: 1,
        invited_from: Some(21),
        ease,
        fetch_s: 0.0,
    };
    let likes = (0..3).map(|_| Liking::of(c.between(1.0, 1.8)).sating(0.15, 1.0)).collect();
    let mut animal = AnimalTruth::ordinary(label("Wick"), Species::Dog, likes);
    animal.presser.rate = c.between(0.1, 0.14);
    animal.weight_kg = Some(Kilograms::clamped((c.between(6.0, 30.0) * 10.0).round() / 10.0));
    animal.life_stage = Some(LifeStage::NeuteredAdult);
    animal.plan.likes = vec![LikesPlan { day: 2, format: LikesFormat::Paired, rounds: 2, rewards: vec![0, 1, 2] }];
    Home {
        name: label("A small house"),
        zone: zone("Europe/Berlin"),
        days,
        board: (1, 6),
        people: vec![
            PersonTruth::ordinary(label("Mora"), c.between(1.2, 2.0)),
            PersonTruth { share: 0.5, ..PersonTruth::ordinary(label("Kes"), c.between(1.2, 2.4)) },
        ],
        rewards: vec![
            reward("yard", RewardKind::Exploring, None, 30.0),
            reward("roll a ball", RewardKind::Play, None, 30.0),
            reward("a kibble", RewardKind::Food, Some(1.5), 4.0),
        ],
        words: vec![word("yard", 0, 0, 1.3), word("roll", 1, 2, 1.2), word("kibble", 2, 4, 1.2)],
        animals: vec![animal],
        rules: Vec::new(),
        remarks: Vec::new(),
        clips: false,
        stuck: Vec::new(),
    }
}

/// A household drawn at random from the seed: for comparisons across households and for tests over many.
///
/// Species, number of people, liking, learning rate, delays, moods, dose and style all differ. About one in seven
/// learners presses at random or by place; about a third have one word stuck for a known cause.
#[must_use]
pub fn any_home(seed: u64) -> Home {
    let mut c = Chance::new(seed, 12);
    let cause = c.coin(0.35).then(|| Cause::ALL[c.below(Cause::ALL.len())]);
    let mut home = cause.map_or_else(|| plain_home(seed), |cause| stuck_home(cause, seed));
    home.days = 14 + u32::try_from(c.below(57)).unwrap_or(0);
    vary(&mut home, &mut c);
    home
}

/// Ordinary differences between households: zone, species, liking, mood, style, dose, people.
pub(crate) fn vary(home: &mut Home, c: &mut Chance) {
    home.zone = zone(["Europe/Lisbon", "America/Chicago", "Asia/Kolkata", "Australia/Lord_Howe", "UTC"][c.below(5)]);
    let animal = &mut home.animals[0];
    animal.species = Species::ALL[c.below(Species::ALL.len())];
    if animal.species != Species::Dog {
        animal.life_stage = None;
        animal.weight_kg = Some(Kilograms::clamped(match animal.species {
            Species::Parrot => 0.4,
            Species::Rabbit => 2.2,
            _ => 4.3,
        }));
    }
    animal.born = "2020-01-15".parse::<Day>().ok().map(|d| d.plus(i32::try_from(c.below(2000)).unwrap_or(0)));
    for like in &mut animal.likes {
        like.drift_sd = c.between(0.0, 0.8);
        like.satiation = c.between(0.0, 0.5);
    }
    let temper = Temper { join: animal.temper.join + c.normal() * 0.7, ..animal.temper.clone() };
    animal.temper = temper;
    let style = match c.below(14) {
        0 => Style::AnyWord,
        1 => Style::ByPlace(vec![0.7, 0.2, 0.1]),
        _ => Style::ByMeaning,
    };
    animal.presser = Presser {
        style,
        rate: animal.presser.rate * c.lognormal(1.0, 0.5),
        side_bias: c.normal() * 0.5,
        accidents_per_hour: c.between(0.0, 0.15),
        slip: c.between(0.0, 0.1),
        ..animal.presser.clone()
    };
    animal.plan.showings = 2 + u16::try_from(c.below(12)).unwrap_or(0);
    animal.plan.kept = c.between(0.3, 1.0).min(animal.plan.kept.max(0.3));
    for t in &mut home.people {
        t.delay_s *= c.lognormal(1.0, 0.3);
        t.late = c.between(0.0, 0.3);
        t.mistaps = c.between(0.0, 0.03);
    }
}
