//! Tests of understanding against published examples, full enumeration and simulated truth.

use rand_xoshiro::Xoshiro256PlusPlus;
use rand_xoshiro::rand_core::{Rng, SeedableRng};
use sayso_methods::understanding::MonteCarlo;
use sayso_methods::understanding::accidents::{Contact, accidents};
use sayso_methods::understanding::association::{PressIn, Unit, association};
use sayso_methods::understanding::ladder::{Growth, Ladder, LadderRule, Rung, WordEvidence, climb};
use sayso_methods::understanding::sequences::{SequenceRule, TimedPress, sequences};
use sayso_model::Moment;

/// The permutation p of a single session with two words and two outcomes is Fisher's (two-sided by distance).
#[test]
fn association_matches_fisher() {
    // 9 presses: word 0 with outcome 0 four of five times, word 1 once of four.
    let cells = [(0, 0, 4), (0, 1, 1), (1, 0, 1), (1, 1, 3)];
    let presses: Vec<PressIn> = cells
        .iter()
        .flat_map(|&(word, outcome, times)| (0..times).map(move |_| PressIn { session: 0, word, outcome }))
        .collect();
    let draws = MonteCarlo { seed: 3, most: 200_000, enough: u64::MAX };
    let found = association(&presses, Unit::Press, draws).unwrap();
    // Hypergeometric(5 of 9, 5): P(a) = C(5,a) C(4,5-a) / C(9,5); distances from 25/9 at least 4 - 25/9: a = 1, 4, 5.
    let exact = (5.0 + 20.0 + 1.0) / 126.0;
    assert!(found.overall.error.low <= exact && exact <= found.overall.error.high, "{:?} {exact}", found.overall);
}

/// Same seed, same answer; and it does not depend on how many threads the machine offers, because the blocks are seeded.
#[test]
fn the_seed_is_the_answer() {
    let mut rng = Xoshiro256PlusPlus::seed_from_u64(8);
    let presses: Vec<PressIn> = (0..20_000)
        .map(|k| PressIn {
            session: k / 40,
            word: (rng.next_u64() % 6) as usize,
            outcome: (rng.next_u64() % 3) as usize,
        })
        .collect();
    let draws = MonteCarlo { seed: 5, most: 400, enough: 400 };
    let first = association(&presses, Unit::Press, draws).unwrap();
    assert_eq!(first, association(&presses, Unit::Press, draws).unwrap());
    assert_ne!(first.overall, association(&presses, Unit::Press, MonteCarlo { seed: 6, ..draws }).unwrap().overall);
}

/// Runs of one button during long situations: rearranging presses one by one claims far too often, episodes do not.
#[test]
fn episodes_keep_habits_from_looking_like_meaning() {
    let mut claims = [0, 0];
    let homes = 200;
    for home in 0..homes {
        let mut rng = Xoshiro256PlusPlus::seed_from_u64(home);
        let mut presses = Vec::new();
        for session in 0..15 {
            let mut word = (rng.next_u64() % 4) as usize;
            let mut outcome = 0;
            for k in 0..24 {
                if k % 6 == 0 {
                    outcome = (rng.next_u64() % 3) as usize;
                }
                if rng.next_u64() % 5 == 0 {
                    word = (rng.next_u64() % 4) as usize;
                }
                presses.push(PressIn { session, word, outcome });
            }
        }
        for (slot, unit) in claims.iter_mut().zip([Unit::Press, Unit::Episode]) {
            let draws = MonteCarlo { seed: home, most: 199, enough: 20 };
            *slot += u32::from(association(&presses, unit, draws).unwrap().overall.p <= 0.05);
        }
    }
    // 200 households at 5 %: 10 expected, 20 or more has a chance of 0.2 %.
    assert!(claims[1] < 20, "episodes: {} of {homes}", claims[1]);
    assert!(claims[0] > 40, "presses one by one: {} of {homes} (the test must be able to fail)", claims[0]);
}

/// A line of buttons, each next to its neighbours.
fn line(size: usize) -> Vec<Vec<u8>> {
    (0..size).map(|a| (0..size).map(|b| a.abs_diff(b) as u8).collect()).collect()
}

fn walker(seed: u64, pairs: bool) -> Vec<TimedPress> {
    let mut rng = Xoshiro256PlusPlus::seed_from_u64(seed);
    let mut presses = Vec::new();
    for session in 0..30 {
        let mut at = (rng.next_u64() % 6) as usize;
        let mut time = 0.0;
        for _ in 0..12 {
            time += 2.0;
            presses.push(TimedPress { session, word: at, time });
            // Half the time it stays or steps to a neighbour, else it jumps.
            at = match rng.next_u64() % 6 {
                0 => at,
                1 => (at + 1).min(5),
                2 => at.saturating_sub(1),
                _ => (rng.next_u64() % 6) as usize,
            };
            if pairs && presses.last().unwrap().word == 0 && rng.next_u64() % 2 == 0 {
                at = 4;
            }
        }
    }
    presses
}

#[test]
fn steps_along_the_board_are_no_sentences_and_real_pairs_are_found() {
    let draws = |seed| MonteCarlo { seed, most: 999, enough: 20 };
    let mut claims = 0;
    for seed in 0..60 {
        let found = sequences(&walker(seed, false), &line(6), &SequenceRule::default(), draws(seed)).unwrap();
        assert!(found.accepted > 0.1);
        claims += u32::from(found.pairs.iter().any(|pair| pair.adjusted_p <= 0.05));
    }
    // 60 at 5 %: 3 expected, 9 or more has a chance of 0.3 %.
    assert!(claims < 9, "{claims} of 60 walkers");
    let found = sequences(&walker(1, true), &line(6), &SequenceRule::default(), draws(1)).unwrap();
    assert_eq!((found.pairs[0].first, found.pairs[0].second), (0, 4));
    assert!(found.pairs[0].adjusted_p <= 0.05 && !found.pairs[0].neighbours);
}

/// Known share of slips: the interval should hold it about as often as it says.
#[test]
fn slips_are_counted_about_right() {
    let neighbours: Vec<Vec<usize>> = (0..6usize).map(|a| (0..6).filter(|b| a.abs_diff(*b) == 1).collect()).collect();
    let truth = 0.3;
    let mut held = 0;
    for seed in 0..100 {
        let mut rng = Xoshiro256PlusPlus::seed_from_u64(seed);
        let mut contacts = Vec::new();
        let mut time = 0.0;
        for _ in 0..300 {
            let place = (rng.next_u64() % 6) as usize;
            time += 30.0;
            contacts.push(Contact { session: 0, time, place, sounded: true });
            // Every press is followed at once by another: a slip or one meant.
            let next = if (rng.next_u64() % 1000) as f64 / 1000.0 < truth {
                neighbours[place][(rng.next_u64() % neighbours[place].len() as u64) as usize]
            } else {
                (rng.next_u64() % 6) as usize
            };
            contacts.push(Contact { session: 0, time: time + 0.5, place: next, sounded: true });
        }
        let found = accidents(&contacts, &neighbours, 1.5).unwrap();
        // Meant presses that hit the same place are left out, so among those judged slips are a little more common.
        let truth = truth / (truth + 0.7 * 5.0 / 6.0);
        held += u32::from(found.after_press.unwrap().interval.contains(truth));
    }
    assert!((88..=100).contains(&held), "{held} of 100");
}

fn at(minute: i64) -> sayso_model::Moment {
    sayso_model::Moment::clamped(1_800_000_000_000 + minute * 60_000)
}

/// Evidence that grew to `e` after so many minutes.
fn grew(e: f64, minute: i64) -> Option<Growth> {
    Some(Growth { steps: vec![(at(0), 0.0), (at(minute), e.ln()), (at(minute + 5), 0.0)], n: 20 })
}

#[test]
fn a_claim_stays_when_its_evidence_falls_again_and_the_ladders_are_apart() {
    let [asks, hears] = [Ladder::Asking as usize, Ladder::Hearing as usize];
    let mut blind = WordEvidence::default();
    blind.blind[hears] = grew(101.0, 7);
    let judge = |words: &[WordEvidence]| climb(words, None, &vec![at(0); words.len()], at(100), &LadderRule::default());
    let found = judge(&[blind.clone()]).words[0];
    assert_eq!((found[asks].rung, found[hears].rung), (Rung::NothingYet, Rung::StandsUpToBlindCheck));
    assert_eq!(found[hears].since, Some(at(7)));
    // Two words checked: twice as much is asked of the first.
    assert_eq!(judge(&[blind.clone(), blind.clone()]).words[0][hears].rung, Rung::FitsChance);
    // Open checks and rounds are judged among the everyday evidence, the animal's swaps with them.
    let mut open = WordEvidence { rounds: grew(80.0, 3), ..WordEvidence::default() };
    open.open[asks] = grew(90.0, 4);
    let found = judge(&[open.clone()]);
    assert_eq!(found.words[0][asks].rung, Rung::PassesOpenProbe);
    assert_eq!(found.animal.rung, Rung::NothingYet);
    let found = climb(&[open], grew(80.0, 9).as_ref(), &[at(0)], at(100), &LadderRule::default());
    assert_eq!((found.animal.rung, found.animal.since), (Rung::HoldsAgainstHabit, Some(at(9))));
}

#[test]
fn a_claim_that_lapses_because_words_were_added_is_told_as_such() {
    let strong = WordEvidence { rounds: grew(55.0, 3), ..WordEvidence::default() };
    let known = [at(0), at(50), at(50), at(50)];
    let words: Vec<WordEvidence> = std::iter::once(strong).chain(vec![WordEvidence::default(); 3]).collect();
    let before = climb(&words[..1], None, &known[..1], at(40), &LadderRule::default()).words[0][0];
    assert_eq!((before.rung, before.lapsed), (Rung::DiffersByWord, None));
    let after = climb(&words, None, &known, at(60), &LadderRule::default()).words[0][0];
    assert_eq!((after.rung, after.lapsed), (Rung::FitsChance, Some(at(50))));
}

#[test]
fn the_bar_told_is_the_one_that_decides() {
    let moment = |day: u32| Moment::clamped(1_800_000_000_000 + i64::from(day) * 86_400_000);
    let grew = |e: f64| WordEvidence {
        rounds: Some(Growth { steps: vec![(moment(1), e.ln())], n: 40 }),
        ..WordEvidence::default()
    };
    let judged = |es: [f64; 3]| climb(&es.map(grew), None, &[moment(0); 3], moment(5), &LadderRule::default());
    // Four are judged together, the animal being one: 4 / 0.04 for the best, then 3 / 0.04 and so on.
    for others in [[1.0, 2.0], [90.0, 2.0], [500.0, 2.0], [500.0, 80.0], [500.0, 70.0]] {
        let bar = judged([1.0, others[0], others[1]]).bars[0].rounds;
        for (e, told) in [(bar * 1.001, true), (bar * 0.999, false)] {
            let verdict = judged([e, others[0], others[1]]).words[0][0];
            assert_eq!(verdict.rung > Rung::FitsChance, told, "{others:?}: {e} beside a bar of {bar}");
        }
    }
    assert!((judged([1.0, 1.0, 1.0]).bars[0].rounds - 100.0).abs() < 1e-9);
    assert!((judged([1.0, 500.0, 1.0]).bars[0].rounds - 75.0).abs() < 1e-9);
}
