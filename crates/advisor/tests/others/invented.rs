//! The invented release (`tests/norms/invented.sayso-norms`): what simulated homes come to, without noise. Written anew by
//! `SAYSO_WRITE_SHARED=1 cargo test --workspace --test others`.

use sayso_advisor::summary::summary_rows;
use sayso_methods::learning::latency::{SurvivalCurve, Wait, kaplan_meier};
use sayso_methods::stats::{Level, Proportion};
use sayso_model::{Species, Story};
use sayso_norms::{
    AgeBand, Answer, Cell, Curve, DayPart, HourShare, Hours, MadeBy, Often, Part, Parts, People, Point, Quantile,
    Quantiles, Question, Release, Rule, Spread, Stretch, StudyName, SummaryRow, TimedStage, Told, WeekShare, Weeks,
    WordKind,
};
use sayso_sim::{any_home, simulate};
use std::collections::{BTreeMap, BTreeSet};
use std::path::PathBuf;

const HOMES: u64 = 90;
const DAYS: u32 = 45;
/// Words of learners that a home contributes to a cell.
const WORDS: usize = 4;
/// Points of a curve: enough to draw.
const POINTS: usize = 24;

fn path() -> PathBuf {
    [env!("CARGO_MANIFEST_DIR"), "../../tests/norms/invented.sayso-norms"].iter().collect()
}

pub fn rows() -> Vec<SummaryRow> {
    (1..=HOMES).flat_map(rows_of).collect()
}

/// Rows of one home of that population.
pub fn rows_of(seed: u64) -> Vec<SummaryRow> {
    let end = "2026-03-01T19:00:00Z".parse().unwrap();
    let mut home = any_home(seed);
    home.days = DAYS;
    home.animals[0].species = Species::Dog;
    let story = Story::from_events(simulate(&home, seed, end).unwrap().events);
    summary_rows(&story, &StudyName::new(&format!("invented-{seed}")).unwrap())
}

/// Four digits say all there is to say, and are read as they were written.
fn rounded(x: f64) -> f64 {
    (10_000.0 * x).round() / 10_000.0
}

fn quantile(curve: &SurvivalCurve, share: f64) -> Quantile {
    let first = |of: &dyn Fn(&sayso_methods::learning::latency::SurvivalPoint) -> f64| {
        curve.points.iter().find(|p| of(p) <= 1.0 - share + 1e-12).map(|p| p.time)
    };
    Quantile { value: curve.quantile(share), low: first(&|p| p.interval.low), high: first(&|p| p.interval.high) }
}

fn curve(waits: &[Wait]) -> Curve {
    let curve = kaplan_meier(waits, Level::P95).unwrap();
    let every = curve.points.len().div_ceil(POINTS).max(1);
    let last = curve.points.len() - 1;
    let mut points: Vec<Point> = Vec::new();
    for (at, point) in curve.points.iter().enumerate() {
        if at % every == 0 || at == last {
            let [share, low, high] =
                [1.0 - point.survival, 1.0 - point.interval.high, 1.0 - point.interval.low].map(rounded);
            points.push(Point { at: point.time, share, low, high });
        }
    }
    let [p05, p25, p50, p75, p95] = [0.05, 0.25, 0.5, 0.75, 0.95].map(|share| quantile(&curve, share));
    Curve { points, quantiles: Quantiles { p05, p25, p50, p75, p95 } }
}

/// Quantiles of shares by rank, with intervals by the ranks that a binomial count of those below would have.
fn spread(mut shares: Vec<f64>) -> Spread {
    shares.sort_by(f64::total_cmp);
    let n = shares.len() as f64;
    let at = |rank: f64| rounded(shares[(rank.round().max(0.0) as usize).min(shares.len() - 1)]);
    let of = |share: f64| {
        let half = 1.96 * (n * share * (1.0 - share)).sqrt();
        let rank = share * n - 0.5;
        Quantile { value: Some(at(rank)), low: Some(at(rank - half)), high: Some(at(rank + half)) }
    };
    let [p05, p25, p50, p75, p95] = [0.05, 0.25, 0.5, 0.75, 0.95].map(of);
    Spread { quantiles: Quantiles { p05, p25, p50, p75, p95 } }
}

fn parts(rows: &[&SummaryRow]) -> Parts {
    let mut parts = Vec::new();
    for word in 1..=3 {
        let nth: Vec<_> = rows.iter().filter(|row| row.word == word).collect();
        for kind in WordKind::ALL {
            let of_kind = nth.iter().filter(|row| row.word_kind == kind).count();
            if of_kind > 0 {
                let counted = Proportion::new(of_kind as u64, nth.len() as u64).unwrap();
                let interval = counted.clopper_pearson(Level::P95);
                let share = of_kind as f64 / nth.len() as f64;
                let [share, low, high] = [share, interval.low, interval.high].map(rounded);
                parts.push(Part { word, kind, share, low, high });
            }
        }
    }
    Parts { parts }
}

fn hours(rows: &[&SummaryRow]) -> Hours {
    let share = |part: DayPart| {
        let of_part = rows.iter().filter(|row| row.hours == Some(part)).count();
        let interval = Proportion::new(of_part as u64, rows.len() as u64).unwrap().clopper_pearson(Level::P95);
        // Down, so that together they are never more than the whole.
        let share = (10_000.0 * of_part as f64 / rows.len() as f64).floor() / 10_000.0;
        let [low, high] = [interval.low.min(share), interval.high].map(rounded);
        HourShare { part, share, low, high }
    };
    Hours { hours: DayPart::ALL.map(share).to_vec() }
}

/// Stretches of which as many homes tell as a cell asks.
fn weeks(rows: &[&SummaryRow]) -> Option<Weeks> {
    let one = |from: Stretch| {
        let of: Vec<Often> =
            rows.iter().filter_map(|row| row.week).filter(|week| week.from == from).map(|week| week.pressed).collect();
        let told = |least: Often| {
            let many = of.iter().filter(|often| **often >= least).count() as u64;
            let interval = Proportion::new(many, of.len() as u64).unwrap().clopper_pearson(Level::P95);
            let [share, low, high] = [many as f64 / of.len() as f64, interval.low, interval.high].map(rounded);
            Told { share, low, high }
        };
        let households = u32::try_from(of.len()).unwrap();
        (households >= Release::LEAST_WITHOUT_NOISE).then(|| WeekShare {
            from,
            to: from.to(),
            households,
            some: told(Often::Some),
            daily: told(Often::Daily),
        })
    };
    let weeks: Vec<WeekShare> = Stretch::ALL.into_iter().filter_map(one).collect();
    (!weeks.is_empty()).then_some(Weeks { weeks })
}

fn answer(question: Question, rows: &[&SummaryRow]) -> Option<Answer> {
    let waits = |of: fn(&SummaryRow) -> u32| -> Vec<Wait> {
        rows.iter().map(|row| Wait { time: f64::from(of(row)), event: row.pressed }).collect()
    };
    Some(match question {
        Question::ShowingsToFirstPress => Answer::Curve(curve(&waits(|row| row.exposures))),
        Question::DaysToFirstPress => Answer::Curve(curve(&waits(|row| row.days))),
        Question::Joined => {
            let mut homes: BTreeMap<&StudyName, (u32, u32)> = BTreeMap::new();
            for row in rows {
                let home = homes.entry(&row.household).or_default();
                *home = (home.0 + row.joined, home.1 + row.invited);
            }
            let invited = homes.values().filter(|(_, invited)| *invited > 0);
            Answer::Spread(spread(invited.map(|(joined, invited)| f64::from(*joined) / f64::from(*invited)).collect()))
        }
        Question::Words => Answer::Parts(parts(rows)),
        Question::Hours => Answer::Hours(hours(rows)),
        Question::DaysInShow | Question::DaysInInvite => {
            let stays = rows.iter().filter_map(|row| row.stage);
            let waits: Vec<Wait> =
                stays.map(|stay| Wait { time: f64::from(stay.days), event: stay.moved_on }).collect();
            Answer::Curve(curve(&waits))
        }
        Question::PressesByWeek => Answer::Weeks(weeks(rows)?),
    })
}

fn cell(
    rows: &[SummaryRow],
    question: Question,
    age_band: Option<AgeBand>,
    word_kind: Option<WordKind>,
) -> Option<Cell> {
    let mut given: BTreeMap<&StudyName, usize> = BTreeMap::new();
    let of_a_word = matches!(question, Question::ShowingsToFirstPress | Question::DaysToFirstPress);
    let rows: Vec<&SummaryRow> = rows
        .iter()
        .filter(|row| row.species == Species::Dog)
        .filter(|row| age_band.is_none_or(|age| row.age_band == age))
        .filter(|row| word_kind.is_none_or(|kind| row.word_kind == kind))
        .filter(|row| question != Question::Hours || row.hours.is_some())
        .filter(|row| question != Question::PressesByWeek || row.week.is_some())
        .filter(|row| {
            let of_stage = |stage| question == Question::in_stage(stage);
            !TimedStage::ALL.into_iter().any(of_stage) || row.stage.is_some_and(|stay| of_stage(stay.stage))
        })
        .filter(|row| {
            let given = given.entry(&row.household).or_default();
            *given += 1;
            match question {
                Question::Hours | Question::DaysInShow | Question::DaysInInvite | Question::PressesByWeek => {
                    *given == 1
                }
                _ => !of_a_word || *given <= WORDS,
            }
        })
        .collect();
    let homes: BTreeSet<_> = rows.iter().map(|row| &row.household).collect();
    let households = u32::try_from(homes.len()).unwrap();
    if households < Release::LEAST_WITHOUT_NOISE {
        return None;
    }
    let answer = answer(question, &rows)?;
    let words = u32::try_from(rows.len()).unwrap();
    Some(Cell { question, species: Species::Dog, age_band, word_kind, households, words, answer })
}

/// The release that rows come to, without noise.
pub fn release(rows: &[SummaryRow]) -> Release {
    let ages = [None, Some(AgeBand::UnderTwo), Some(AgeBand::TwoToSeven), Some(AgeBand::EightOrMore)];
    let kinds = || std::iter::once(None).chain(WordKind::ALL.map(Some));
    let mut cells = Vec::new();
    for age in ages {
        for question in Question::ALL {
            if matches!(question, Question::ShowingsToFirstPress | Question::DaysToFirstPress) {
                cells.extend(kinds().filter_map(|kind| cell(rows, question, age, kind)));
            } else {
                cells.extend(cell(rows, question, age, None));
            }
        }
    }
    Release {
        form: Release::FORM,
        name: "Invented homes".to_owned(),
        made: "2026-03-01".parse().unwrap(),
        people: People::Invented,
        club: None,
        rule: Rule { least_with_noise: 100, least_without_noise: 20, words_per_household: WORDS as u32 },
        noise: None,
        level: 0.95,
        made_by: MadeBy {
            command: "SAYSO_WRITE_SHARED=1 cargo test --workspace --test others".to_owned(),
            program: "a test, from simulated homes".to_owned(),
            program_sha256: "0".repeat(64),
        },
        cells,
    }
}

#[test]
fn the_invented_release_is_what_the_simulated_homes_come_to() {
    let made = release(&rows());
    let text = made.write().unwrap();
    if std::env::var_os("SAYSO_WRITE_SHARED").is_some() {
        std::fs::write(path(), &text).unwrap();
    }
    assert_eq!(std::fs::read_to_string(path()).unwrap(), text);
    let read = Release::read(&text).unwrap();
    assert_eq!(read, made);
    assert!(read.cells.len() > 10, "{} cells", read.cells.len());
}
