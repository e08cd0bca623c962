//! Rows that a home makes for the norms, and the tables of the study: both say the same of first presses.

use datafusion::arrow::array::{Array, ArrayRef, AsArray};
use datafusion::arrow::compute::cast;
use datafusion::arrow::datatypes::{DataType, Float64Type};
use datafusion::prelude::SessionContext;
use sayso_advisor::summary::summary_rows;
use sayso_methods::learning::latency::{Wait, kaplan_meier};
use sayso_methods::stats::Level;
use sayso_model::Story;
use sayso_norms::{DayPart, Often, StudyName, SummaryRow, TimedStage, WordKind};
use sayso_sim::{any_home, simulate};
use std::collections::{BTreeMap, BTreeSet};
use study_cohort::{By, Kind, Outcome, Question, Row, animals_batch, ask, config, events_batch};
use study_export::{Household, household};

const HOMES: u32 = 12;

fn homes() -> Vec<(Household, Vec<SummaryRow>)> {
    let of = |number: u32| {
        let seed = u64::from(number) + 40;
        let mut home = any_home(seed);
        home.days = 50;
        let events = simulate(&home, seed, "2026-06-01T19:00:00Z".parse().unwrap()).unwrap().events;
        let story = Story::from_events(events);
        let name = StudyName::new(&format!("h{number}")).unwrap();
        (household(&story, number), summary_rows(&story, &name))
    };
    (0..HOMES).map(of).collect()
}

/// Showings before the first press, whether there was one, whole days to it or to the end, whole days in all: from the table.
fn by_hand(rows: &[&Row], until: i32) -> Option<(u32, bool, u32, u32)> {
    let shown: Vec<i32> = rows.iter().filter(|r| r.kind == Kind::Showing).map(|r| r.at_s).collect();
    let begin = *shown.iter().min()?;
    let own = |r: &&&Row| {
        (r.kind == Kind::Press && r.by == Some(By::Animal))
            || (r.kind == Kind::Invitation && r.outcome == Some(Outcome::Right))
    };
    let first = rows.iter().filter(own).map(|r| r.at_s).min();
    let before = shown.iter().filter(|at| first.is_none_or(|first| **at < first)).count();
    let days = |to: i32| u32::try_from((to - begin).max(0) / 86_400).unwrap();
    Some((u32::try_from(before).unwrap(), first.is_some(), days(first.unwrap_or(until)), days(until)))
}

/// Whole days in a stage, and whether a later one was chosen: from the table. A word of which nobody chose a stage is shown.
fn stay(rows: &[&Row], until: i32, stage: TimedStage) -> Option<(u32, bool)> {
    let shown = rows.iter().filter(|r| r.kind == Kind::Showing).map(|r| r.at_s).min()?;
    let chosen = |wanted: &[Outcome]| {
        let of = |r: &&&Row| r.kind == Kind::Stage && r.outcome.is_some_and(|one| wanted.contains(&one));
        rows.iter().filter(of).map(|r| r.at_s).min()
    };
    let (from, to) = match stage {
        TimedStage::Show => (shown, chosen(&[Outcome::Invite, Outcome::Converse])),
        TimedStage::Invite => (chosen(&[Outcome::Invite])?.max(shown), chosen(&[Outcome::Converse])),
    };
    let days = u32::try_from((to.unwrap_or(until) - from).max(0) / 86_400).unwrap();
    to.is_none_or(|to| to >= from).then_some((days, to.is_some()))
}

#[test]
fn a_row_says_of_one_stage_what_the_table_says_whichever_was_drawn() {
    let (mut drawn, mut moved_on, mut open) = ([0, 0], 0, 0);
    for (table, summary) in homes() {
        for row in &summary {
            let of_word = |r: &&Row| r.animal == row.learner && r.word.map(|w| w.0) == Some(row.word - 1);
            let rows: Vec<&Row> = table.rows.iter().filter(of_word).collect();
            let until = table.animals.iter().find(|a| a.animal == row.learner).unwrap().until_s;
            let stays = TimedStage::ALL.map(|stage| stay(&rows, until, stage));
            let Some(told) = row.stage else {
                assert!(row.word_kind == WordKind::Closing || stays.contains(&None), "{row:?}: {stays:?}");
                continue;
            };
            assert_ne!(row.word_kind, WordKind::Closing);
            assert_eq!(stays[told.stage as usize], Some((told.days, told.moved_on)), "{row:?}");
            *(if told.moved_on { &mut moved_on } else { &mut open }) += 1;
            // Where a word came to both, either is as likely: else the one that lasts would be told more often.
            drawn[told.stage as usize] += u32::from(!stays.contains(&None));
        }
    }
    assert!(moved_on > 5 && open > 5 && drawn.iter().all(|many| *many > 5), "{moved_on} {open} {drawn:?}");
}

#[test]
fn a_row_says_of_one_week_what_the_table_says_of_some_week_of_that_stretch() {
    let (mut told, mut pressed) = (0, 0);
    for (table, summary) in homes() {
        for row in &summary {
            let Some(week) = row.week else { continue };
            let of_learner: Vec<&Row> = table.rows.iter().filter(|r| r.animal == row.learner).collect();
            let of_word = |r: &&&Row| r.word.map(|w| w.0) == Some(row.word - 1);
            let begin =
                of_learner.iter().filter(of_word).filter(|r| r.kind == Kind::Showing).map(|r| r.at_s).min().unwrap();
            let own = |r: &&&Row| of_word(r) && r.kind == Kind::Press && r.by == Some(By::Animal);
            // Weeks that are over, and in which something else was noted.
            let weeks = (week.from.from()..=week.from.to()).filter_map(|week| {
                let (start, end) = (begin + (i32::from(week) - 1) * 604_800, begin + i32::from(week) * 604_800);
                let within: Vec<&&Row> = of_learner.iter().filter(|r| (start..end).contains(&r.at_s)).collect();
                let presses = within.iter().filter(|r| own(r)).count();
                let over = end <= table.animals.iter().find(|a| a.animal == row.learner).unwrap().until_s;
                (over && within.len() > presses).then(|| Often::of(presses))
            });
            let weeks: Vec<Often> = weeks.collect();
            assert!(weeks.contains(&week.pressed), "{row:?}: {weeks:?}");
            told += 1;
            pressed += u32::from(week.pressed != Often::Not);
        }
    }
    assert!(told > 10 && pressed > 5 && pressed < told, "{told} {pressed}");
}

#[test]
fn a_row_says_of_a_word_what_the_table_says() {
    let (mut pressed, mut open, mut joined) = (0, 0, 0);
    for (table, summary) in homes() {
        let mut seen = BTreeSet::new();
        for row in &summary {
            let animal = table.animals.iter().find(|a| a.animal == row.learner).unwrap();
            let word = row.word - 1;
            let of_word: Vec<&Row> =
                table.rows.iter().filter(|r| r.animal == row.learner && r.word.map(|w| w.0) == Some(word)).collect();
            let told = (row.exposures, row.pressed, row.days, row.watched);
            assert_eq!(by_hand(&of_word, animal.until_s), Some(told), "{row:?}");
            assert_eq!(of_word[0].word.unwrap().1.name(), row.word_kind.name());
            assert_eq!((animal.age_band.name(), animal.species), (row.age_band.name(), row.species.name()));
            let invited: Vec<_> = of_word.iter().filter(|r| r.kind == Kind::Invitation).collect();
            let took_part = invited.iter().filter(|r| r.joined == Some(true)).count();
            assert_eq!((invited.len(), took_part), (row.invited as usize, row.joined as usize));
            let own = of_word.iter().filter(|r| r.kind == Kind::Press && r.by == Some(By::Animal));
            let parts: Vec<DayPart> = own.map(|r| DayPart::of_hour(r.hour)).collect();
            assert_eq!(row.hours.is_some(), !parts.is_empty(), "{row:?}");
            assert!(row.hours.is_none_or(|part| parts.contains(&part)), "{row:?}: {parts:?}");
            assert!(seen.insert((row.learner, row.word)));
            joined += row.joined;
            *(if row.pressed { &mut pressed } else { &mut open }) += 1;
        }
        let words: BTreeSet<_> = table.rows.iter().filter(|r| r.kind == Kind::Showing).map(|r| r.word).collect();
        assert_eq!(words.len(), summary.len(), "a row for every word that was shown");
    }
    assert!(pressed > 5 && open > 0 && joined > 100, "{pressed} {open} {joined}: they say something of each");
}

#[test]
fn hours_of_a_press_drawn_by_lot_are_on_average_those_of_all_presses() {
    // Of each word the share of its own presses in each part of the day is what the draw should come to, in the mean over words.
    let (mut off, mut varies, mut words) = ([0.0; DayPart::MANY], [0.0; DayPart::MANY], 0);
    for (table, summary) in homes() {
        for row in &summary {
            let Some(drawn) = row.hours else { continue };
            let of_word = |r: &&Row| r.animal == row.learner && r.word.map(|w| w.0) == Some(row.word - 1);
            let own = table.rows.iter().filter(of_word).filter(|r| r.kind == Kind::Press && r.by == Some(By::Animal));
            let parts: Vec<DayPart> = own.map(|r| DayPart::of_hour(r.hour)).collect();
            for (at, part) in DayPart::ALL.into_iter().enumerate() {
                let share = parts.iter().filter(|one| **one == part).count() as f64 / parts.len() as f64;
                off[at] += f64::from(u8::from(drawn == part)) - share;
                varies[at] += share * (1.0 - share);
            }
            words += 1;
        }
    }
    assert!(words > 20, "{words} words");
    for (off, varies) in off.iter().zip(varies) {
        assert!(off.abs() <= 4.0 * varies.sqrt() + 1e-9, "{off} of {varies}");
    }
}

#[tokio::test]
async fn their_curves_are_those_of_the_question() {
    let homes = homes();
    let rows: Vec<Row> = homes.iter().flat_map(|(table, _)| table.rows.clone()).collect();
    let animals: Vec<_> = homes.iter().flat_map(|(table, _)| table.animals.clone()).collect();
    let context = SessionContext::new_with_config(config(2));
    let events = context.read_batch(events_batch(0, &rows).unwrap()).unwrap();
    let animals = context.read_batch(animals_batch(0, &animals).unwrap()).unwrap();
    let answer = ask(Question::FirstPress, events, animals).unwrap().collect().await.unwrap();

    let mut groups: BTreeMap<[String; 3], Vec<&SummaryRow>> = BTreeMap::new();
    for row in homes.iter().flat_map(|(_, summary)| summary) {
        let group = [row.species.name(), row.age_band.name(), row.word_kind.name()].map(str::to_owned);
        groups.entry(group).or_default().push(row);
    }
    let mut compared = 0;
    for batch in &answer {
        let text = |name: &str| -> ArrayRef { cast(batch.column_by_name(name).unwrap(), &DataType::Utf8).unwrap() };
        let number =
            |name: &str| -> ArrayRef { cast(batch.column_by_name(name).unwrap(), &DataType::Float64).unwrap() };
        let names = ["species", "age_band", "word_kind"].map(text);
        let figures =
            ["households", "words", "pressed", "showings_quarter", "showings_half", "showings_three_quarters"];
        let figures = figures.map(number);
        for at in 0..batch.num_rows() {
            let group = names.each_ref().map(|column| column.as_string::<i32>().value(at).to_owned());
            let told = figures.each_ref().map(|column| {
                let column = column.as_primitive::<Float64Type>();
                column.is_valid(at).then(|| column.value(at))
            });
            let mine = groups.remove(&group).unwrap_or_else(|| panic!("no rows of {group:?}"));
            let waits: Vec<Wait> =
                mine.iter().map(|row| Wait { time: f64::from(row.exposures), event: row.pressed }).collect();
            let curve = kaplan_meier(&waits, Level::P95).unwrap();
            let households: BTreeSet<_> = mine.iter().map(|row| &row.household).collect();
            let counts = [households.len(), mine.len(), mine.iter().filter(|row| row.pressed).count()];
            let [some, words, pressed] = counts.map(|count| Some(count as f64));
            let quantiles = [0.25, 0.5, 0.75].map(|share| curve.quantile(share));
            let expected = [some, words, pressed, quantiles[0], quantiles[1], quantiles[2]];
            assert_eq!(told, expected, "{group:?}");
            compared += 1;
        }
    }
    assert!(groups.is_empty() && compared > 3, "{compared} groups compared, left: {:?}", groups.keys());
}
