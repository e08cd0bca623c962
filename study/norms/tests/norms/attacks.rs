//! Whoever knows everything but one household, and looks at releases.

use crate::made::{Kept, order, row};
use sayso_model::Species;
use sayso_norms::{
    AgeBand, DayPart, Often, Question, StageWait, Stretch, SummaryRow, TimedStage, WeekPresses, WordKind, read_rows,
};
use study_norms::draw::{Drawn, draw};
use study_norms::known::Laws;
use study_norms::loss::Counted;
use study_norms::measure::{Kind, measure};
use study_norms::{FromSeed, Loss, NoNoise, Noise, Noisy, Proven, release};

/// How much what is counted moves between two sets of rows, each count's move by its noise: whoever knows every row but one household's
/// cannot tell the two apart by more. What was said of earlier counts is the same for both, as it is to whoever looks.
fn moved(one: &[SummaryRow], other: &[SummaryRow], households: i64) -> f64 {
    let counted = |rows: &[SummaryRow]| {
        // Sizes at which much is published, so that there is much to tell.
        let says = |_: usize, counts: &[i64]| vec![700; counts.len()];
        let mut kept = Kept { given: Vec::new(), says };
        measure(&draw(rows, "a"), Kind::Noisy(Loss::YEARLY, &mut kept)).unwrap();
        kept.given
    };
    let (one, other) = (counted(one), counted(other));
    assert_eq!((one.len(), other.len()), (Counted::ALL.len(), Counted::ALL.len()));
    let mut all = 0.0;
    for ((a, sensitivity, scale), (b, _, _)) in one.iter().zip(&other) {
        assert_eq!(a.len(), b.len());
        let apart: i64 = a.iter().zip(b).map(|(a, b)| (a - b).abs()).sum();
        assert!(apart <= households * i64::from(*sensitivity), "{apart} of {sensitivity}");
        all += apart as f64 / scale;
    }
    all
}

/// Homes that mean to be seen.
fn homes() -> Vec<(&'static str, Vec<SummaryRow>)> {
    let words = |many: u16, learner: u8| {
        (1..=many).map(move |word| SummaryRow {
            word_kind: WordKind::ALL[usize::from(word) % 8],
            exposures: u32::from(word) * 100,
            days: u32::from(word),
            watched: 2_000,
            hours: Some(DayPart::ALL[usize::from(word) % DayPart::MANY]),
            stage: (word % 3 > 0).then(|| StageWait {
                stage: TimedStage::ALL[usize::from(word) % 2],
                days: u32::from(word),
                moved_on: word % 5 > 0,
            }),
            week: (word % 7 > 0).then(|| WeekPresses {
                from: Stretch::ALL[usize::from(word) % 4],
                pressed: Often::ALL[usize::from(word) % 3],
            }),
            ..row("seen", learner, word)
        })
    };
    let twice = words(3, 0).chain(words(3, 0)).collect();
    let contradictory = words(3, 0).chain(words(3, 0).map(|r| SummaryRow { species: Species::Cat, ..r })).collect();
    let learners = (0..=u8::MAX).flat_map(|learner| {
        words(4, learner).map(move |r| SummaryRow { age_band: AgeBand::ALL[usize::from(learner) % 4], ..r })
    });
    let huge = SummaryRow {
        exposures: SummaryRow::MOST_COUNTED,
        days: SummaryRow::MOST_DAYS,
        watched: SummaryRow::MOST_DAYS,
        stage: Some(StageWait { stage: TimedStage::Invite, days: SummaryRow::MOST_DAYS, moved_on: false }),
        invited: SummaryRow::MOST_COUNTED,
        joined: SummaryRow::MOST_COUNTED,
        ..row("seen", 0, 1)
    };
    vec![
        ("one word", vec![row("seen", 0, 1)]),
        ("a thousand words", words(1_000, 0).collect()),
        ("every row twice", twice),
        ("the same words as two species", contradictory),
        ("256 learners", learners.collect()),
        (
            "as much as a row may say",
            vec![huge.clone(), SummaryRow { word: 2, ..huge.clone() }, SummaryRow { word: 3, ..huge }],
        ),
    ]
}

#[test]
fn a_household_more_or_less_moves_what_is_counted_by_no_more_than_was_paid_for() {
    let others = Laws::default().rows(400, 3);
    for (name, home) in homes() {
        let with: Vec<SummaryRow> = others.iter().chain(&home).cloned().collect();
        let apart = moved(&others, &with, 1);
        assert!(apart <= 1.0, "{name}: {apart}");
        // The test would see it: that household is counted.
        assert!(apart > 0.5, "{name}: {apart}");
    }
    // A household that changes its rows is one that went and one that came.
    let all: Vec<Vec<SummaryRow>> =
        homes().into_iter().map(|(_, home)| others.iter().chain(&home).cloned().collect()).collect();
    for pair in all.windows(2) {
        assert!(moved(&pair[0], &pair[1], 2) <= 2.0);
    }
}

/// A part of the noise that was paid for: half of it, or none.
struct Part<N>(f64, N);

impl<N: Noise> Noise for Part<N> {
    fn add(&mut self, counts: Vec<i64>, sensitivity: u32, scale: f64) -> Result<Noisy, NoNoise> {
        if self.0 == 0.0 {
            return Ok(Noisy { counts, loss: f64::from(sensitivity) / scale });
        }
        self.1.add(counts, sensitivity, scale * self.0)
    }
}

/// How often, at best, whoever sees what cost `epsilon` guesses right which of two neighbours it is of, either as likely beforehand: the odds
/// are at most e^ε to one.
fn best(epsilon: f64) -> f64 {
    epsilon.exp() / (1.0 + epsilon.exp())
}

/// How far above its chance a share of so many guesses lies once in ten thousand: normal approximation.
fn chance(share: f64, runs: u32) -> f64 {
    3.719 * (share * (1.0 - share) / f64::from(runs)).sqrt()
}

/// The share of right guesses above which so many runs show, but for once in ten thousand, that more was told than `epsilon` allows.
fn most(epsilon: f64, runs: u32) -> f64 {
    best(epsilon) + chance(best(epsilon), runs)
}

#[test]
fn one_count_is_guessed_as_often_as_its_epsilon_says_and_no_more() {
    // A count of 40 or of 41 households, by an epsilon of 1. The best guess is 41 where 41 or more is told, and reaches what is possible.
    let runs = 40_000;
    let right = |noise: &mut dyn Noise| {
        let half = runs as usize / 2;
        let mut told = |count: i64| noise.add(vec![count; half], 1, 1.0).unwrap().counts;
        let right =
            told(41).iter().filter(|told| **told >= 41).count() + told(40).iter().filter(|told| **told < 41).count();
        right as f64 / f64::from(runs)
    };
    for (name, noise) in [("OpenDP", &mut Proven as &mut dyn Noise), ("seed", &mut FromSeed::new(5))] {
        let found = right(noise);
        assert!(found <= most(1.0, runs), "{name}: {found}");
        assert!(found >= best(1.0) - chance(best(1.0), runs), "{name}: no best guess, {found}");
    }
    for part in [0.5, 0.0] {
        for (name, noise) in
            [("OpenDP", &mut Part(part, Proven) as &mut dyn Noise), ("seed", &mut Part(part, FromSeed::new(5)))]
        {
            let found = right(noise);
            assert!(found > most(1.0, runs), "{name}, {part} of it: {found}");
        }
    }
}

/// Hands on what another noise says, and keeps it.
struct Heard<'a>(&'a mut dyn Noise, Vec<(Vec<i64>, Vec<i64>, f64)>);

impl Noise for Heard<'_> {
    fn add(&mut self, counts: Vec<i64>, sensitivity: u32, scale: f64) -> Result<Noisy, NoNoise> {
        let said = self.0.add(counts.clone(), sensitivity, scale)?;
        self.1.push((counts, said.counts.clone(), scale));
        Ok(said)
    }
}

/// By each thing that is counted, how much likelier what a release of `these` told of it is from these than from `those`, as a logarithm, if
/// the noise is what it is said to be. Whatever cannot come of those at all is infinitely likelier.
fn evidence(these: &[Drawn], those: &[Drawn], noise: &mut dyn Noise) -> Vec<f64> {
    let mut heard = Heard(noise, Vec::new());
    measure(these, Kind::Noisy(Loss::YEARLY, &mut heard)).unwrap();
    let told = heard.1;
    let mut again = Kept { given: Vec::new(), says: |number: usize, _: &[i64]| told[number].1.clone() };
    measure(those, Kind::Noisy(Loss::YEARLY, &mut again)).unwrap();
    let far = |counts: &[i64], told: &[i64]| counts.iter().zip(told).map(|(a, b)| (a - b).abs()).sum::<i64>() as f64;
    let each = told.iter().zip(&again.given).map(|((here, told, scale), (there, _, _))| {
        if here.len() == there.len() { (far(there, told) - far(here, told)) / scale } else { f64::INFINITY }
    });
    each.collect()
}

/// Of releases of either neighbour in turn, the share that is guessed right: by all that was told, then by each thing that is counted alone.
fn guessed((with, without): (&[Drawn], &[Drawn]), runs: u32, noise: &mut dyn Noise) -> Vec<f64> {
    let mut right = vec![0.0; 1 + Counted::ALL.len()];
    for run in 0..runs {
        let (these, those) = if run % 2 == 0 { (with, without) } else { (without, with) };
        let each = evidence(these, those, noise);
        assert_eq!(each.len(), Counted::ALL.len());
        for (right, found) in right.iter_mut().zip([each.iter().sum()].iter().chain(&each)) {
            // What tells neither way is guessed by a coin.
            *right += if found.abs() < 1e-9 { 0.5 } else { f64::from(u8::from(*found > 0.0)) };
        }
    }
    right.iter().map(|right| right / f64::from(runs)).collect()
}

#[test]
fn who_knows_all_but_one_household_guesses_whether_it_is_there_no_better_than_epsilon_allows() {
    // Each thing that is counted has its share of epsilon, and must keep to that alone.
    let allowed = |of: usize| of.checked_sub(1).map_or(1.0, |of| f64::from(Counted::ALL[of].share()) / 100.0);
    let beyond = |found: &[f64], runs: u32| -> Vec<usize> {
        (0..found.len()).filter(|of| found[*of] > most(allowed(*of), runs)).collect()
    };
    // Where everything is told, and where one household more or less lies next to what is told at all.
    for (many, runs) in [(240, 40_000), (158, 10_000)] {
        let others: Vec<SummaryRow> = (0..many).map(|n| row(&format!("h{n}"), 0, 1)).collect();
        let seen = (1..=3).map(|word| row("seen", 0, word));
        let with: Vec<SummaryRow> = others.iter().cloned().chain(seen).collect();
        let (with, without) = (draw(&with, "a"), draw(&others, "a"));
        let found = |runs, noise: &mut dyn Noise| guessed((&with, &without), runs, noise);
        let whole = found(runs, &mut FromSeed::new(1));
        assert!(beyond(&whole, runs).is_empty(), "{many}: {whole:?}");
        // A release without noise is found out, and where everything is told, each thing that is counted by itself.
        let none = found(100, &mut Part(0.0, FromSeed::new(1)));
        assert!(beyond(&none, 100).contains(&0), "{many}: {none:?}");
        if many == 240 {
            assert_eq!(beyond(&none, 100).len(), none.len(), "{none:?}");
            // Half of the noise is, by what has most of epsilon.
            let half = found(10_000, &mut Part(0.5, FromSeed::new(1)));
            let showings = 1 + Counted::ALL.iter().position(|each| *each == Counted::Showings).unwrap();
            assert!(beyond(&half, 10_000).contains(&showings), "{half:?}");
        }
    }
}

#[test]
fn a_club_of_one_or_of_nineteen_is_not_told_of_at_all() {
    for many in [1, 19] {
        let rows: Vec<SummaryRow> = (0..many).map(|n| row(&format!("h{n}"), 0, 1)).collect();
        let made = release(&rows, None, order("a", Some("Club")), None).unwrap();
        assert_eq!(made.release.cells, []);
        let mut noise = FromSeed::new(many);
        let made = release(&rows, None, order("a", None), Some((Loss::YEARLY, &mut noise))).unwrap();
        assert_eq!(made.release.cells, []);
    }
    // One home under twenty names would be twenty: names are the key's, not the home's. Twenty learners of one home are one.
    let rows: Vec<SummaryRow> = (0..200).map(|learner| row("h", learner, 1)).collect();
    assert_eq!(release(&rows, None, order("a", Some("Club")), None).unwrap().release.cells, []);
    let rows: Vec<SummaryRow> = (0..20).map(|n| row(&format!("h{n}"), 0, 1)).collect();
    assert!(!release(&rows, None, order("a", Some("Club")), None).unwrap().release.cells.is_empty());
}

#[test]
fn with_noise_ninety_nine_households_are_told_of_once_in_twenty_at_most() {
    let rows: Vec<SummaryRow> = (0..99).map(|n| row(&format!("h{n}"), 0, 1)).collect();
    let (runs, drawn) = (2_000, draw(&rows, "a"));
    let mut noise = FromSeed::new(11);
    let told = |noise: &mut FromSeed| measure(&drawn, Kind::Noisy(Loss::YEARLY, noise)).unwrap().sizes.by_species();
    let many = (0..runs).filter(|_| !told(&mut noise).groups.is_empty()).count();
    // Binomial, 4 standard errors above 1/20.
    assert!(many <= 100 + 39, "{many} of {runs}");
    assert!(many > 20, "the bar is higher than it need be: {many} of {runs}");
}

#[test]
fn crafted_rows_do_not_come_in() {
    let good = serde_json::to_string(&row("seen", 0, 1)).unwrap();
    for (what, with, field) in [
        ("\"exposures\":10", "\"exposures\":4000000000", "exposures"),
        ("\"exposures\":10", "\"exposures\":-1", "exposures"),
        ("\"days\":3", "\"days\":-3", "days"),
        ("\"days\":3", "\"days\":61", "days"),
        ("\"joined\":10", "\"joined\":21", "joined"),
        ("\"word\":1", "\"word\":1001", "word"),
        ("\"learner\":0", "\"learner\":256", "learner"),
        ("\"pressed\":true", "\"pressed\":1", "pressed"),
        ("\"dog\"", "\"dog \"", "species"),
        ("\"hours\":6", "\"hours\":8", "hours"),
        ("\"hours\":6", "\"hours\":[6,7]", "hours"),
        ("\"form\":4", "\"form\":1", "hours"),
        ("\"form\":4", "\"form\":2", "stage"),
        ("\"form\":4", "\"form\":3", "week"),
        ("\"from\":2", "\"from\":3", "week"),
        ("\"some\"", "9", "week"),
        ("\"days\":3,\"watched\":60", "\"days\":3,\"watched\":13", "stage.days"),
        ("\"stage\":\"show\"", "\"stage\":\"converse\"", "stage"),
        ("\"days\":30", "\"days\":61", "stage.days"),
        ("\"moved_on\":true", "\"moved_on\":false", "stage.days"),
    ] {
        let bad = good.replace(what, with);
        assert_ne!(bad, good, "{what}");
        let why = read_rows(&format!("{good}\n{bad}\n")).unwrap_err().to_string();
        assert!(why.contains("line 2") && why.contains(field), "{why}");
    }
}

#[test]
fn rows_given_twice_or_later_again_count_once() {
    let early =
        SummaryRow { pressed: false, hours: None, week: None, exposures: 4, days: 20, watched: 20, ..row("h", 0, 1) };
    let late = row("h", 0, 1);
    let one = draw([&late], "a");
    assert_eq!(draw([&late, &late], "a"), one);
    // The one that watched longer, in whatever order they come.
    assert_eq!(draw([&early, &late], "a"), one);
    assert_eq!(draw([&late, &early], "a"), one);
}

#[test]
fn the_word_is_drawn_by_no_value() {
    // Of a hundred homes of two words, one pressed at once and one late: which is drawn is even, and stays when values change.
    let rows: Vec<SummaryRow> = (0..400)
        .flat_map(|n| {
            [1, 2].map(|word| SummaryRow { exposures: u32::from(word) * 50, ..row(&format!("h{n}"), 0, word) })
        })
        .collect();
    let first = draw(&rows, "a").iter().filter(|one| one.exposures == 50).count();
    assert!((150..=250).contains(&first), "{first} of 400");
    let turned: Vec<SummaryRow> =
        rows.iter().map(|r| SummaryRow { exposures: 150 - r.exposures, ..r.clone() }).collect();
    assert_eq!(draw(&turned, "a").iter().filter(|one| one.exposures == 100).count(), first);
    // Another release draws anew.
    assert_ne!(draw(&rows, "a"), draw(&rows, "b"));
}

#[test]
fn who_took_consent_back_is_not_in_the_next_release() {
    let rows: Vec<SummaryRow> = (0..25).map(|n| row(&format!("h{n}"), 0, 1)).collect();
    let agreed = |from: usize| rows.iter().skip(from).map(|r| r.household.clone()).collect();
    let told = |from: usize| {
        let made = release(&rows, Some(&agreed(from)), order("a", Some("Club")), None).unwrap();
        let cell =
            made.release.cells.iter().find(|c| c.question == Question::ShowingsToFirstPress).map(|c| c.households);
        (made.used, made.left_out, cell)
    };
    assert_eq!(told(0), (25, 0, Some(25)));
    assert_eq!(told(4), (21, 4, Some(21)));
    assert_eq!(told(6), (19, 6, None));
}
