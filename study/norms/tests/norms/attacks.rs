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

/// Half the noise that was paid for.
struct Half<N>(N);

impl<N: Noise> Noise for Half<N> {
    fn add(&mut self, counts: Vec<i64>, sensitivity: u32, scale: f64) -> Result<Noisy, NoNoise> {
        self.0.add(counts, sensitivity, scale / 2.0)
    }
}

/// The smallest loss that these numbers of hits can come from, but for once in some thirty thousand: the logarithm of how much likelier an
/// outcome is with the household than without, at four standard errors.
fn least_loss(with: u32, without: u32, runs: u32) -> f64 {
    let (p, q) = (f64::from(with) / f64::from(runs), f64::from(without) / f64::from(runs));
    let error = ((1.0 - p) / f64::from(with) + (1.0 - q) / f64::from(without)).sqrt();
    (p / q).ln() - 4.0 * error
}

#[test]
fn the_noise_hides_one_of_a_count_and_half_of_it_does_not() {
    // A count of 40 or of 41 households, by an epsilon of 1: how often is 41 or more told?
    let runs = 20_000;
    let told = |noise: &mut dyn Noise, count: i64| {
        let told = noise.add(vec![count; runs as usize], 1, 1.0).unwrap().counts;
        told.iter().filter(|told| **told >= 41).count() as u32
    };
    let loss = |noise: &mut dyn Noise| least_loss(told(noise, 41), told(noise, 40), runs);
    for (name, noise) in [("OpenDP", &mut Proven as &mut dyn Noise), ("seed", &mut FromSeed::new(5))] {
        let found = loss(noise);
        assert!((0.85..=1.0).contains(&found), "{name}: {found}");
    }
    for (name, noise) in [("OpenDP", &mut Half(Proven) as &mut dyn Noise), ("seed", &mut Half(FromSeed::new(5)))] {
        let found = loss(noise);
        assert!(found > 1.5, "{name}, half of it: {found}");
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

/// How much likelier everything that a release of `these` told is from these than from `those`, as a logarithm, if the noise is what it is
/// said to be.
fn evidence(these: &[Drawn], those: &[Drawn], noise: &mut dyn Noise) -> f64 {
    let mut heard = Heard(noise, Vec::new());
    measure(these, Kind::Noisy(Loss::YEARLY, &mut heard)).unwrap();
    let told = heard.1;
    let mut again = Kept { given: Vec::new(), says: |number: usize, _: &[i64]| told[number].1.clone() };
    measure(those, Kind::Noisy(Loss::YEARLY, &mut again)).unwrap();
    let far = |counts: &[i64], told: &[i64]| counts.iter().zip(told).map(|(a, b)| (a - b).abs()).sum::<i64>() as f64;
    let each = told.iter().zip(&again.given);
    each.map(|((here, told, scale), (there, _, _))| (far(there, told) - far(here, told)) / scale).sum()
}

#[test]
fn two_releases_of_neighbours_cannot_be_told_apart_by_more_than_their_epsilon() {
    // The best that whoever knows all but one household can do: everything that was told, weighed by how much likelier it is with it.
    let others: Vec<SummaryRow> = (0..170).map(|n| row(&format!("h{n}"), 0, 1)).collect();
    let with: Vec<SummaryRow> = others.iter().cloned().chain([row("seen", 0, 1)]).collect();
    let (with, without) = (draw(&with, "a"), draw(&others, "a"));
    // The more counts share the loss, the rarer is an outcome that tells much: enough runs that half the noise is found out.
    let (runs, large) = (40_000, 0.7);
    let hits = |noise: &mut dyn Noise| {
        let there = (0..runs).filter(|_| evidence(&with, &without, noise) >= large).count() as u32;
        let not_there = (0..runs).filter(|_| -evidence(&without, &with, noise) >= large).count() as u32;
        (there, not_there)
    };
    let (there, not_there) = hits(&mut FromSeed::new(1));
    let found = least_loss(there, not_there, runs);
    assert!(found <= 1.0, "{found}");
    let (there, not_there) = hits(&mut Half(FromSeed::new(1)));
    let half = least_loss(there, not_there, runs);
    assert!(half > 1.0, "a release with half the noise must not pass: {half}, {there} {not_there}");
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
