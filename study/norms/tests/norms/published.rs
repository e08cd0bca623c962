//! What a release holds, and that no small group follows from it.

use crate::made::{order, row};
use sayso_norms::{AgeBand, Answer, Question, Release, SummaryRow, WordKind};
use study_norms::draw::{LEAST_INVITED, draw};
use study_norms::group::Group;
use study_norms::known::Laws;
use study_norms::measure::{Kind, measure};
use study_norms::table::{COLUMNS, codebook, figures};
use study_norms::{FromSeed, Loss, Proven, release};

fn homes(many: &[(usize, WordKind, AgeBand)]) -> Vec<SummaryRow> {
    let each = many.iter().enumerate().flat_map(|(group, (many, word_kind, age_band))| {
        (0..*many).map(move |n| SummaryRow {
            word_kind: *word_kind,
            age_band: *age_band,
            ..row(&format!("g{group}-{n}"), 0, 1)
        })
    });
    each.collect()
}

fn groups(rows: &[SummaryRow], question: Question) -> Vec<(Option<WordKind>, Option<AgeBand>, u32)> {
    let made = release(rows, None, order("a", Some("Club")), None).unwrap();
    let cells = made.release.cells.into_iter().filter(|cell| cell.question == question);
    cells.map(|cell| (cell.word_kind, cell.age_band, cell.households)).collect()
}

#[test]
fn a_small_group_does_not_follow_from_a_wide_one_less_its_siblings() {
    use AgeBand::{TwoToSeven, UnderTwo};
    use WordKind::{Food, Play, Rest};
    let showings = |rows: &[SummaryRow]| groups(rows, Question::ShowingsToFirstPress);
    // 5 of rest words would be what is left of all: the smaller sibling goes too.
    let rows = homes(&[(40, Food, UnderTwo), (25, Play, UnderTwo), (5, Rest, UnderTwo)]);
    assert_eq!(showings(&rows), [(Some(Food), Some(UnderTwo), 40), (Some(Food), None, 40), (None, None, 70)]);
    // 20 and more may be left.
    let rows = homes(&[(40, Food, UnderTwo), (25, Play, UnderTwo), (20, Rest, UnderTwo)]);
    assert_eq!(showings(&rows).iter().filter(|(_, age, _)| age.is_none()).count(), 4);
    // Ages within a kind.
    let rows = homes(&[(30, Food, UnderTwo), (12, Food, TwoToSeven)]);
    assert_eq!(showings(&rows), [(Some(Food), None, 42), (None, None, 42)]);
}

#[test]
fn who_is_invited_too_seldom_or_has_no_second_word_is_told_of_as_many_or_not_at_all() {
    // Of `many` households so many were invited often enough, and so many have a second word.
    let rows = |many: usize, invited: usize, second: usize| {
        let of = move |n: usize, word| SummaryRow {
            joined: 6,
            invited: if word == 1 && n < invited { 12 } else { 6 },
            ..row(&format!("h{n}"), 0, word)
        };
        (0..many).flat_map(move |n| [1, 2].into_iter().filter(move |w| *w == 1 || n < second).map(move |w| of(n, w)))
    };
    let cells = |question, rows: Vec<SummaryRow>| {
        let made = release(&rows, None, order("a", Some("Club")), None).unwrap();
        made.release.cells.into_iter().filter(|cell| cell.question == question).collect::<Vec<_>>()
    };
    let joined = |invited| cells(Question::Joined, rows(60, invited, 0).collect());
    assert!(joined(58).is_empty(), "two households would follow from the interval");
    assert_eq!(joined(60)[0].households, 60);
    assert_eq!(joined(40)[0].households, 40, "twenty are enough");
    let words = |second| {
        let all = cells(Question::Words, rows(60, 60, second).collect());
        let Answer::Parts(parts) = &all[0].answer else { panic!("{all:?}") };
        parts.parts.iter().map(|part| part.word).max()
    };
    assert_eq!((words(59), words(60), words(40)), (Some(1), Some(2), Some(2)));
}

#[test]
fn whatever_is_published_without_noise_is_made_of_groups_that_are_large_enough() {
    for seed in 0..60 {
        let laws = Laws { words: 3, ..Laws::default() };
        let drawn = draw(&laws.rows(30 + 17 * (seed as u32), seed), "a");
        let measured = measure(&drawn, Kind::Plain).unwrap();
        let (by_word, by_invited) = (&measured.showings.division, &measured.joined.division);
        // Who tells hours, a stage, or a week, would cut them once more.
        assert_eq!(
            [&measured.hours, &measured.stages, &measured.stretches, &measured.weeks].map(|t| &t.division.groups),
            [&vec![]; 4],
            "seed {seed}"
        );
        // Two households that are in the same published groups cannot be told apart by subtracting: together they must be enough.
        let published: Vec<Group> = [by_word, by_invited].iter().flat_map(|d| d.groups.iter().map(|g| g.0)).collect();
        let mut alike: std::collections::BTreeMap<Vec<bool>, usize> = std::collections::BTreeMap::new();
        for one in &drawn {
            let mut of: Vec<bool> = published.iter().map(|group| group.holds(one)).collect();
            // Whether they join is told of those invited often enough: the others could be subtracted.
            let joins = by_invited.groups.iter().any(|(group, _)| group.holds(one));
            of.push(joins && one.joined.1 >= LEAST_INVITED);
            *alike.entry(of).or_default() += 1;
        }
        for (of, many) in alike {
            assert!(many >= 20 || !of.contains(&true), "seed {seed}: {many} of {of:?}");
        }
        // And a group is the sum of its parts.
        for (group, parts) in &by_word.groups {
            let whole = measured.showings.counts(parts).whole();
            assert_eq!(whole as usize, drawn.iter().filter(|one| group.holds(one)).count(), "seed {seed}: {group:?}");
        }
    }
}

#[test]
fn a_release_is_read_back_and_its_table_has_every_figure() {
    let rows = Laws { words: 3, ..Laws::default() }.rows(3_000, 4);
    let mut noise = Proven;
    let made = release(&rows, None, order("Norms 2026", None), Some((Loss::YEARLY, &mut noise))).unwrap();
    assert_eq!(Release::read(&made.release.write().unwrap()).unwrap(), made.release);
    assert_eq!((made.used, made.left_out), (3_000, 0));
    let of = |question| made.release.cells.iter().filter(move |cell| cell.question == question);
    for question in Question::ALL {
        assert!(of(question).count() > 0, "{question:?}");
        assert!(of(question).all(|cell| cell.households >= 100), "{question:?}");
    }
    // By kind of word, and by age for what concerns the learner.
    assert!(of(Question::DaysToFirstPress).any(|cell| cell.word_kind == Some(WordKind::Play)));
    assert!(of(Question::Joined).any(|cell| cell.age_band.is_some()));
    // Of households that press about as often as they do, the middle lies near the truth.
    let all = of(Question::ShowingsToFirstPress).find(|c| c.word_kind.is_none()).unwrap();
    let Answer::Curve(curve) = &all.answer else { panic!("{all:?}") };
    let median = curve.quantiles.p50;
    assert!(median.low.unwrap() < 60.0 && median.high.unwrap() > 35.0, "{median:?}");
    let told = figures(&made.release);
    let cells: std::collections::BTreeSet<_> = told.iter().map(|f| (f.question, f.word_kind, f.age_band)).collect();
    assert_eq!(cells.len(), made.release.cells.len());
    let book = codebook(&made.release, "abc");
    for part in ["Norms 2026", "epsilon = 1", "no cell under 100 households", "SHA-256 abc", "no sample of all animals"]
    {
        assert!(book.contains(part), "{part} is not in {book}");
    }
    assert!(COLUMNS.iter().all(|(name, _)| book.contains(&format!("| {name} |"))));
}

#[test]
fn the_noise_of_a_release_costs_what_was_allowed_and_all_of_it() {
    let rows = Laws::default().rows(500, 1);
    for epsilon in ["1", "0.5", "0.125"] {
        let loss: Loss = epsilon.parse().unwrap();
        let spent = measure(&draw(&rows, "a"), Kind::Noisy(loss, &mut Proven)).unwrap().spent;
        assert!(spent <= loss.get() && spent > loss.get() * 0.999_999, "{epsilon}: {spent}");
    }
}

#[test]
fn seeded_noise_is_the_same_again_and_another_seed_is_not() {
    let rows = Laws::default().rows(2_000, 1);
    let made = |seed| {
        let mut noise = FromSeed::new(seed);
        release(&rows, None, order("a", None), Some((Loss::YEARLY, &mut noise))).unwrap().release
    };
    assert_eq!(made(1), made(1));
    assert_ne!(made(1), made(2));
}

#[test]
fn a_release_of_nobody_or_of_much_noise_holds_together() {
    let mut noise = FromSeed::new(1);
    assert_eq!(release(&[], None, order("a", None), Some((Loss::YEARLY, &mut noise))).unwrap().release.cells, []);
    // All sizes and losses: whatever the noise does, what is made is a release.
    for seed in 0..150 {
        let laws = Laws { words: 1 + (seed % 4) as u16, ..Laws::default() };
        let rows = laws.rows(20 * (1 + seed as u32 % 40), seed);
        let loss: Loss = ["1", "0.3", "5"][seed as usize % 3].parse().unwrap();
        let mut noise = FromSeed::new(seed);
        release(&rows, None, order("a", None), Some((loss, &mut noise))).unwrap();
        release(&rows, None, order("a", Some("Club")), None).unwrap();
    }
}
