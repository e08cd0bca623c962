//! Releases: written, read, refused by field, and searched for the closest cell.

use sayso_model::{Day, Species};
use sayso_norms::{
    AgeBand, Answer, Cell, Curve, DayPart, HourShare, Hours, Like, MadeBy, Noise, NotEnough, Outside, Part, Parts,
    People, Point, Quantile, Quantiles, Question, Release, ReleaseFault, Rule, Spread, Stretch, Told, WeekShare, Weeks,
    WordKind,
};

fn quantile(value: f64, low: f64, high: f64) -> Quantile {
    Quantile { value: Some(value), low: Some(low), high: Some(high) }
}

const BEYOND: Quantile = Quantile { value: None, low: None, high: None };

fn curve() -> Curve {
    let point = |at, share, low, high| Point { at, share, low, high };
    Curve {
        points: vec![
            point(0.0, 0.01, 0.0, 0.03),
            point(10.0, 0.12, 0.08, 0.16),
            point(60.0, 0.5, 0.44, 0.56),
            point(200.0, 0.81, 0.75, 0.86),
        ],
        quantiles: Quantiles {
            p05: quantile(4.0, 2.5, 6.0),
            p25: quantile(24.0, 20.0, 31.5),
            p50: quantile(60.0, 52.0, 71.0),
            p75: Quantile { high: None, ..quantile(160.0, 130.0, 0.0) },
            p95: BEYOND,
        },
    }
}

fn cell(question: Question, age_band: Option<AgeBand>, word_kind: Option<WordKind>) -> Cell {
    let answer = match question {
        Question::ShowingsToFirstPress | Question::DaysToFirstPress | Question::DaysInShow | Question::DaysInInvite => {
            Answer::Curve(curve())
        }
        Question::Joined => Answer::Spread(Spread {
            quantiles: Quantiles {
                p05: quantile(0.3, 0.22, 0.36),
                p25: quantile(0.6, 0.55, 0.65),
                p50: quantile(0.8, 0.76, 0.83),
                p75: quantile(0.9, 0.88, 0.93),
                p95: quantile(1.0, 0.98, 1.0),
            },
        }),
        Question::Words => Answer::Parts(Parts {
            parts: vec![
                Part { word: 1, kind: WordKind::Food, share: 0.4, low: 0.34, high: 0.46 },
                Part { word: 1, kind: WordKind::Play, share: 0.6, low: 0.54, high: 0.66 },
                Part { word: 2, kind: WordKind::Play, share: 0.5, low: 0.44, high: 0.56 },
            ],
        }),
        Question::Hours => Answer::Hours(Hours {
            hours: DayPart::ALL.map(|part| HourShare { part, share: 0.125, low: 0.1, high: 0.15 }).to_vec(),
        }),
        Question::PressesByWeek => {
            let told = |share: f64| Told { share, low: share - 0.1, high: share + 0.1 };
            let one =
                |from: Stretch| WeekShare { from, to: from.to(), households: 140, some: told(0.6), daily: told(0.2) };
            Answer::Weeks(Weeks { weeks: Stretch::ALL.map(one).to_vec() })
        }
    };
    Cell { question, species: Species::Dog, age_band, word_kind, households: 312, words: 590, answer }
}

fn release() -> Release {
    Release {
        form: Release::FORM,
        name: "Invented homes".to_owned(),
        made: "2026-03-01".parse::<Day>().unwrap(),
        people: People::SelfChosen,
        club: None,
        rule: Rule { least_with_noise: 100, least_without_noise: 20, words_per_household: 4 },
        noise: Some(Noise { epsilon: 1.0 }),
        level: 0.95,
        made_by: MadeBy {
            command: "study norms release rows.jsonl --epsilon 1".to_owned(),
            program: "study 0.1.0".to_owned(),
            program_sha256: "ab".repeat(32),
        },
        cells: vec![
            cell(Question::ShowingsToFirstPress, Some(AgeBand::UnderTwo), Some(WordKind::Play)),
            cell(Question::ShowingsToFirstPress, None, Some(WordKind::Play)),
            cell(Question::ShowingsToFirstPress, Some(AgeBand::UnderTwo), None),
            cell(Question::ShowingsToFirstPress, None, None),
            cell(Question::Joined, None, None),
            cell(Question::Words, None, None),
            cell(Question::Hours, None, None),
            cell(Question::DaysInShow, None, None),
            cell(Question::DaysInInvite, None, None),
            cell(Question::PressesByWeek, None, None),
        ],
    }
}

#[test]
fn what_is_written_is_read_again() {
    let made = release();
    let text = made.write().unwrap();
    assert_eq!(Release::read(&text).unwrap(), made);
}

/// The release with one thing changed, and the field that the fault names.
fn refused(change: impl FnOnce(&mut Release), field: &str) {
    let mut made = release();
    change(&mut made);
    let text = serde_json::to_string(&made).unwrap();
    match Release::read(&text) {
        Err(ReleaseFault::Value { field: named, .. }) => assert_eq!(named, field),
        other => panic!("{field}: {other:?}"),
    }
    assert!(made.write().is_err(), "{field}: none that is not read is written");
}

fn hours(made: &mut Release) -> &mut Vec<HourShare> {
    match &mut made.cells[6].answer {
        Answer::Hours(hours) => &mut hours.hours,
        other => panic!("{other:?}"),
    }
}

fn weeks(made: &mut Release) -> &mut Vec<WeekShare> {
    match &mut made.cells[9].answer {
        Answer::Weeks(weeks) => &mut weeks.weeks,
        other => panic!("{other:?}"),
    }
}

fn first(made: &mut Release) -> &mut Curve {
    match &mut made.cells[0].answer {
        Answer::Curve(curve) => curve,
        other => panic!("{other:?}"),
    }
}

#[test]
fn whatever_cannot_be_is_refused_by_its_field() {
    refused(|r| r.form = 5, "form");
    refused(|r| r.form = 1, "cells[6].question");
    refused(|r| r.form = 2, "cells[7].question");
    refused(|r| r.form = 3, "cells[9].question");
    refused(|r| weeks(r).clear(), "cells[9].answer.weeks.weeks");
    refused(|r| weeks(r).swap(0, 1), "cells[9].answer.weeks.weeks[1].from");
    refused(|r| weeks(r)[2].to = 13, "cells[9].answer.weeks.weeks[2].to");
    refused(|r| weeks(r)[1].households = 99, "cells[9].answer.weeks.weeks[1].households");
    refused(|r| weeks(r)[3].some.high = 0.5, "cells[9].answer.weeks.weeks[3].some.share");
    refused(|r| weeks(r)[3].daily.low = -0.1, "cells[9].answer.weeks.weeks[3].daily.low");
    refused(
        |r| weeks(r)[0].daily = Told { share: 0.7, low: 0.6, high: 0.8 },
        "cells[9].answer.weeks.weeks[0].daily.share",
    );
    refused(|r| r.cells[8].answer = r.cells[4].answer.clone(), "cells[8].answer");
    refused(|r| hours(r).truncate(7), "cells[6].answer.hours.hours");
    refused(|r| hours(r).swap(1, 2), "cells[6].answer.hours.hours[1].part");
    refused(|r| hours(r)[3].low = 0.2, "cells[6].answer.hours.hours[3].share");
    refused(
        |r| hours(r)[7] = HourShare { share: 0.2, high: 0.3, ..hours(r)[7] },
        "cells[6].answer.hours.hours[7].share",
    );
    refused(|r| r.name = String::new(), "name");
    refused(|r| r.name = "a\nb".to_owned(), "name");
    refused(|r| r.club = Some(" ".to_owned()), "club");
    refused(|r| r.rule.least_with_noise = 99, "rule.least_with_noise");
    refused(|r| r.rule.least_without_noise = 19, "rule.least_without_noise");
    refused(|r| r.rule.words_per_household = 0, "rule.words_per_household");
    refused(|r| r.noise = Some(Noise { epsilon: 0.0 }), "noise.epsilon");
    refused(|r| r.noise = None, "noise");
    refused(|r| r.level = 1.0, "level");
    refused(|r| r.made_by.program_sha256 = "AB".repeat(32), "made_by.program_sha256");
    refused(|r| r.cells[2].households = 99, "cells[2].households");
    refused(|r| r.cells[1].age_band = Some(AgeBand::UnderTwo), "cells[1]");
    refused(|r| r.cells[4].question = Question::DaysToFirstPress, "cells[4].answer");
    refused(|r| first(r).points[1].at = 0.0, "cells[0].answer.curve.points[1].at");
    refused(|r| first(r).points[1].share = 1.2, "cells[0].answer.curve.points[1].share");
    refused(|r| first(r).points[2].low = 0.51, "cells[0].answer.curve.points[2].share");
    refused(
        |r| {
            let second = &mut first(r).points[1];
            (second.share, second.low) = (0.005, 0.0);
        },
        "cells[0].answer.curve.points[1].share",
    );
    refused(|r| first(r).points.clear(), "cells[0].answer.curve.points");
    refused(|r| first(r).quantiles.p25.value = Some(19.0), "cells[0].answer.curve.quantiles.p25.value");
    refused(|r| first(r).quantiles.p05 = quantile(30.0, 20.0, 40.0), "cells[0].answer.curve.quantiles.p25.value");
    refused(|r| first(r).quantiles.p50.high = Some(201.0), "cells[0].answer.curve.quantiles.p50.high");
    refused(
        |r| first(r).quantiles.p50 = Quantile { high: Some(150.0), ..BEYOND },
        "cells[0].answer.curve.quantiles.p50.value",
    );
}

#[test]
fn spreads_and_parts_are_held_too() {
    let spread = |r: &mut Release, to: Quantile| match &mut r.cells[4].answer {
        Answer::Spread(spread) => spread.quantiles.p95 = to,
        other => panic!("{other:?}"),
    };
    refused(|r| spread(r, BEYOND), "cells[4].answer.spread.quantiles.p95");
    refused(|r| spread(r, quantile(1.0, 0.98, 1.1)), "cells[4].answer.spread.quantiles.p95.high");
    let parts = |r: &mut Release, change: fn(&mut Vec<Part>)| match &mut r.cells[5].answer {
        Answer::Parts(parts) => change(&mut parts.parts),
        other => panic!("{other:?}"),
    };
    refused(|r| parts(r, |p| p.swap(0, 1)), "cells[5].answer.parts.parts[1]");
    refused(|r| parts(r, |p| p[0].word = 0), "cells[5].answer.parts.parts[0].word");
    refused(|r| parts(r, |p| (p[1].share, p[1].high) = (0.66, 0.7)), "cells[5].answer.parts.parts[1].share");
}

#[test]
fn a_clubs_own_release_may_be_without_noise_and_small() {
    let mut made = release();
    (made.noise, made.club) = (None, Some("Invented club".to_owned()));
    made.cells[0].households = 20;
    assert!(made.write().is_ok());
    made.cells[0].households = 19;
    assert!(made.write().is_err());
}

#[test]
fn a_text_of_another_form_names_the_field() {
    let text = release().write().unwrap();
    for (right, wrong, field) in [
        ("\"species\": \"dog\"", "\"species\": \"wolf\"", "cells[0].species"),
        ("\"households\": 312", "\"households\": -1", "cells[0].households"),
        ("\"level\": 0.95", "\"level\": 1e999", "level"),
        ("\"level\": 0.95", "\"level\": 0.95, \"mail\": \"x\"", "mail"),
        ("\"made\": \"2026-03-01\"", "\"made\": \"2026-13-01\"", "made"),
    ] {
        let text = text.replacen(right, wrong, 1);
        match Release::read(&text) {
            Err(ReleaseFault::Form { field: named, .. }) => assert_eq!(named, field, "{wrong}"),
            other => panic!("{wrong}: {other:?}"),
        }
    }
    let long = format!("{text}{}", " ".repeat(Release::MOST_BYTES));
    assert!(matches!(Release::read(&long), Err(ReleaseFault::Large { .. })));
}

#[test]
fn a_file_cut_anywhere_is_refused() {
    let text = serde_json::to_string(&release()).unwrap();
    for end in 0..text.len() {
        assert!(Release::read(&text[..end]).is_err(), "cut at {end}");
    }
}

#[test]
fn a_file_with_a_byte_changed_or_two_fields_swapped_never_panics() {
    let text = serde_json::to_string(&release()).unwrap();
    for at in 0..text.len() {
        for byte in [b'0', b'9', b'-', b'"', b'}', b','] {
            let mut bytes = text.clone().into_bytes();
            bytes[at] = byte;
            let _ = Release::read(&String::from_utf8(bytes).unwrap());
        }
    }
    let value: serde_json::Value = serde_json::from_str(&text).unwrap();
    let fields: Vec<String> = value.as_object().unwrap().keys().cloned().collect();
    for one in &fields {
        for other in &fields {
            let mut swapped = value.clone();
            let (a, b) = (value[one].clone(), value[other].clone());
            (swapped[one], swapped[other]) = (b, a);
            let read = Release::read(&swapped.to_string());
            assert_eq!(read.is_ok(), value[one] == value[other] || one == other, "{one} and {other}");
        }
    }
}

#[test]
fn the_closest_cell_is_of_this_kind_before_it_is_of_this_age() {
    let mut made = release();
    let like = Like { species: Species::Dog, age_band: AgeBand::UnderTwo, word_kind: Some(WordKind::Play) };
    let found = |made: &Release, like| {
        let near = made.cell_for(Question::ShowingsToFirstPress, like)?;
        Ok((near.cell.age_band, near.cell.word_kind, near.any_age, near.any_kind))
    };
    assert_eq!(found(&made, like), Ok((Some(AgeBand::UnderTwo), Some(WordKind::Play), false, false)));
    let unknown = Like { age_band: AgeBand::Unknown, ..like };
    assert_eq!(found(&made, unknown), Ok((None, Some(WordKind::Play), true, false)));
    made.cells.remove(0);
    assert_eq!(found(&made, like), Ok((None, Some(WordKind::Play), true, false)));
    made.cells.remove(0);
    assert_eq!(found(&made, like), Ok((Some(AgeBand::UnderTwo), None, false, true)));
    made.cells.remove(0);
    assert_eq!(found(&made, like), Ok((None, None, true, true)));
    assert_eq!(found(&made, Like { species: Species::Cat, ..like }), Err(NotEnough));
    made.cells.remove(0);
    assert_eq!(found(&made, like), Err(NotEnough));
}

#[test]
fn outside_the_middle_is_said_only_beyond_the_whole_interval() {
    let curve = Quantiles { p95: quantile(150.0, 120.0, 180.0), ..curve().quantiles };
    let outside = |wait, ended| curve.outside(wait, ended);
    assert_eq!(outside(2.0, true), Some(Outside::Below));
    assert_eq!(outside(3.0, true), None);
    assert_eq!(outside(2.0, false), None, "a wait that goes on is not short");
    assert_eq!(outside(170.0, true), None);
    assert_eq!(outside(181.0, true), Some(Outside::Above));
    assert_eq!(outside(181.0, false), Some(Outside::Above));
    let open = Quantiles { p95: BEYOND, ..curve };
    assert_eq!(open.outside(100_000.0, false), None);
}
