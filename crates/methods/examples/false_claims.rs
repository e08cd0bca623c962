//! How often the ladder claims something for learners that press without meaning anything, and how often it finds one
//! that does. Prints the tables of `docs/lab/understanding.md`.
//!
//! `cargo run --release -p sayso-methods --example false_claims [households] [first seed]`
#![allow(clippy::unwrap_used, clippy::expect_used)]

use rand_xoshiro::Xoshiro256PlusPlus;
use rand_xoshiro::rand_core::{Rng, SeedableRng};
use sayso_methods::stats::Proportion;
use sayso_methods::understanding::MonteCarlo;
use sayso_methods::understanding::association::{PressIn, Unit, association};
use sayso_methods::understanding::corrections::{AfterDelivery, Next, corrections};
use sayso_methods::understanding::ladder::{Conduct, LadderRule, ProbeEvidence, Rung, WordEvidence, climb};
use sayso_methods::understanding::probe::{ProbeDesign, ProbeTrial, analyse_probe, plan_probe};
use sayso_methods::understanding::sequences::{SequenceRule, TimedPress, sequences};
use sayso_methods::understanding::uptake::{AnsweredPress, uptake_by_word};

const WORDS: usize = 8; // two rows of four places
const SITUATIONS: usize = 4;
const SESSIONS: usize = 60;
const PRESSES: usize = 20;
const PROBED: usize = 4;

#[derive(Clone, Copy, PartialEq, Debug)]
enum Learner {
    /// Presses by its own word frequencies.
    Random,
    /// Half the time the same place again, a quarter a neighbouring one.
    PlaceHabit,
    /// Leans on one button through each session.
    SessionFavourite,
    /// Means what it presses in a third of the presses (and the rest is place habit).
    Means,
}

#[derive(Clone, Copy, PartialEq, Debug)]
enum Chooser {
    Guess,
    OneSide,
    Alternates,
    WinStayLoseShift,
    LoseStayWinShift,
    Cued,
    Knows,
}

struct Dice(Xoshiro256PlusPlus);

impl Dice {
    fn unit(&mut self) -> f64 {
        (self.0.next_u64() >> 11) as f64 / (1u64 << 53) as f64
    }
    fn yes(&mut self, p: f64) -> bool {
        self.unit() < p
    }
    fn below(&mut self, n: usize) -> usize {
        (self.unit() * n as f64) as usize
    }
    fn weighted(&mut self, weights: &[f64]) -> usize {
        let mut u = self.unit() * weights.iter().sum::<f64>();
        weights
            .iter()
            .position(|w| {
                u -= w;
                u < 0.0
            })
            .unwrap_or(weights.len() - 1)
    }
}

fn place_distance(a: usize, b: usize) -> u8 {
    ((a % 4).abs_diff(b % 4) + (a / 4).abs_diff(b / 4)) as u8
}

struct Everyday {
    in_situations: Vec<PressIn>,
    answered: Vec<AnsweredPress>,
    after: Vec<AfterDelivery>,
    timed: Vec<TimedPress>,
}

/// Sixty sessions of twenty presses. Situations come in episodes, things differ in how much they are liked and pall within a
/// session, one delivery in ten is wrong, and after a wrong one the learner presses more of anything.
fn live(learner: Learner, dice: &mut Dice) -> Everyday {
    let frequency: Vec<f64> = (0..WORDS).map(|_| -dice.unit().ln()).collect();
    let liking: Vec<f64> = (0..WORDS).map(|_| 0.3 + 0.65 * dice.unit()).collect();
    let mut out = Everyday { in_situations: vec![], answered: vec![], after: vec![], timed: vec![] };
    for session in 0..SESSIONS {
        let favourite = dice.below(WORDS);
        let mut place = dice.weighted(&frequency);
        let mut situation = dice.below(SITUATIONS);
        let mut time = 0.0;
        for k in 0..PRESSES {
            if dice.yes(0.25) {
                situation = dice.below(SITUATIONS);
            }
            let habit = |dice: &mut Dice, place: usize| {
                let near: Vec<usize> = (0..WORDS).filter(|b| place_distance(place, *b) == 1).collect();
                match dice.unit() {
                    u if u < 0.5 => place,
                    u if u < 0.75 => near[dice.below(near.len())],
                    _ => dice.weighted(&frequency),
                }
            };
            let meant = learner == Learner::Means && dice.yes(0.33);
            place = match learner {
                _ if meant => 2 * situation + dice.below(2), // two words belong to each situation
                Learner::Random => dice.weighted(&frequency),
                Learner::SessionFavourite if dice.yes(0.6) => favourite,
                Learner::SessionFavourite => dice.weighted(&frequency),
                Learner::PlaceHabit | Learner::Means => habit(dice, place),
            };
            let word = place;
            time += 1.0 + 20.0 * dice.unit();
            out.in_situations.push(PressIn { session, word, outcome: situation });
            out.timed.push(TimedPress { session, word, time });
            let fits = dice.yes(0.9);
            let item = if fits { word } else { (word + 1 + dice.below(WORDS - 1)) % WORDS };
            let mut take = liking[item] * (1.0 - 0.5 * k as f64 / PRESSES as f64);
            if meant {
                take = if fits { 0.95 } else { 0.3 * take };
            }
            out.answered.push(AnsweredPress { session, word, item, fits, took: dice.yes(take) });
            let next = if dice.yes(if fits { 0.4 } else { 0.7 }) {
                let again = if meant && !fits && dice.yes(0.7) { word } else { habit(dice, place) };
                if again == word { Next::SameWord } else { Next::OtherWord }
            } else {
                Next::Nothing
            };
            out.after.push(AfterDelivery { word, right: fits, next });
        }
    }
    out
}

fn probe(chooser: Chooser, blind: bool, seed: u64, dice: &mut Dice) -> Vec<(usize, ProbeEvidence)> {
    let plan = plan_probe(&ProbeDesign::of((0..PROBED).collect()), seed).expect("a valid design");
    let mut side = dice.below(2);
    let mut trials = Vec::new();
    for trial in plan.sittings.iter().flatten() {
        let right = trial.right_place;
        let choice = match chooser {
            Chooser::Guess => dice.below(2),
            Chooser::Knows => {
                if dice.yes(0.9) {
                    right
                } else {
                    1 - right
                }
            }
            Chooser::Cued if !blind => {
                if dice.yes(0.95) {
                    right
                } else {
                    1 - right
                }
            }
            Chooser::Cued => dice.below(2),
            _ => side,
        };
        side = match chooser {
            Chooser::Alternates => 1 - choice,
            Chooser::WinStayLoseShift => right,
            Chooser::LoseStayWinShift => 1 - right,
            _ => choice,
        };
        trials.push(ProbeTrial { word: trial.word, right: Some(choice == right), seconds: None });
    }
    let conduct = Conduct { random_order: true, random_places: true, presenter_blind: blind, scorer_blind: blind };
    analyse_probe(&trials, plan.chance)
        .expect("valid trials")
        .into_iter()
        .map(|result| {
            let seen = result.seen;
            let planned = plan.per_word;
            (result.word, ProbeEvidence { seen, chance: plan.chance, planned, carried_out: planned, conduct })
        })
        .collect()
}

fn judge(learner: Learner, chooser: Chooser, blind: bool, seed: u64) -> Vec<Rung> {
    let mut dice = Dice(Xoshiro256PlusPlus::seed_from_u64(seed));
    let days = live(learner, &mut dice);
    let draws = MonteCarlo { seed, most: 1_999, enough: 20 };
    let situations = association(&days.in_situations, Unit::Episode, draws).expect("valid presses");
    let uptake = uptake_by_word(&days.answered, |_| 0).expect("valid answers");
    let probes = probe(chooser, blind, seed, &mut dice);
    let words: Vec<WordEvidence> = situations
        .by_word
        .iter()
        .map(|found| {
            let own: Vec<AfterDelivery> = days.after.iter().copied().filter(|a| a.word == found.word).collect();
            WordEvidence {
                word: found.word,
                presses: found.n,
                association_p: Some(found.p.p),
                fitting_p: uptake.iter().find(|u| u.word == found.word).map(|u| u.fitting.p),
                correction_p: corrections(&own).ok().map(|c| c.same_of_pressed.p),
                probes: probes.iter().filter(|p| p.0 == found.word).map(|p| p.1).collect(),
            }
        })
        .collect();
    climb(&words, &LadderRule::default()).expect("valid evidence").iter().map(|verdict| verdict.rung).collect()
}

fn percent(k: u64, n: u64) -> String {
    let share = Proportion::new(k, n).expect("k of n");
    let interval = share.clopper_pearson(sayso_methods::stats::Level::P95);
    format!("{:5.2} % ({:.2} to {:.2})", 100.0 * k as f64 / n as f64, 100.0 * interval.low, 100.0 * interval.high)
}

fn main() {
    let mut arguments = std::env::args().skip(1).map(|a| a.parse::<u64>().expect("a whole number"));
    let households = arguments.next().unwrap_or(1000);
    let first = arguments.next().unwrap_or(1);
    println!("{households} households a row, seeds from {first}; share with at least one word at the rung or above");
    println!(
        "{:17} {:17} {:6} {:>28} {:>28} {:>28}",
        "presses", "probe", "blind", "any claim", "beats a probe", "top rung"
    );
    let rows = [
        (Learner::Random, Chooser::Guess, true),
        (Learner::PlaceHabit, Chooser::OneSide, true),
        (Learner::PlaceHabit, Chooser::Alternates, true),
        (Learner::PlaceHabit, Chooser::WinStayLoseShift, true),
        (Learner::PlaceHabit, Chooser::LoseStayWinShift, true),
        (Learner::SessionFavourite, Chooser::Guess, true),
        (Learner::PlaceHabit, Chooser::Cued, true),
        (Learner::PlaceHabit, Chooser::Cued, false),
        (Learner::Means, Chooser::Guess, true),
        (Learner::Means, Chooser::Knows, true),
    ];
    for (learner, chooser, blind) in rows {
        let mut reached = [0u64; 3];
        for household in 0..households {
            let rungs = judge(learner, chooser, blind, first + household);
            let best = rungs.into_iter().max().unwrap();
            for (count, rung) in
                reached.iter_mut().zip([Rung::DiffersByWord, Rung::PassesOpenProbe, Rung::StandsUpToBlindCheck])
            {
                *count += u64::from(best >= rung);
            }
        }
        let shown: Vec<String> = reached.iter().map(|k| percent(*k, households)).collect();
        println!(
            "{:17} {:17} {:6} {:>28} {:>28} {:>28}",
            format!("{learner:?}"),
            format!("{chooser:?}"),
            blind,
            shown[0],
            shown[1],
            shown[2]
        );
    }
    let few = (households / 20).max(1);
    println!("two-word sequences, {few} households a row: at least one pair claimed");
    let distance: Vec<Vec<u8>> = (0..WORDS).map(|a| (0..WORDS).map(|b| place_distance(a, b)).collect()).collect();
    for learner in [Learner::Random, Learner::PlaceHabit, Learner::SessionFavourite] {
        let mut claimed = 0;
        for household in 0..few {
            let seed = first + household;
            let days = live(learner, &mut Dice(Xoshiro256PlusPlus::seed_from_u64(seed)));
            let draws = MonteCarlo { seed, most: 3_999, enough: 20 };
            let found = sequences(&days.timed, &distance, &SequenceRule::default(), draws).expect("valid presses");
            claimed += u64::from(found.pairs.iter().any(|pair| pair.adjusted_p <= 0.05));
        }
        println!("{:17} {}", format!("{learner:?}"), percent(claimed, few));
    }
}
