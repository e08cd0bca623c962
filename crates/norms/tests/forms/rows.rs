//! Rows: written, read, and refused with line and field.

use proptest::prelude::*;
use sayso_model::Species;
use sayso_norms::{
    AgeBand, DayPart, Often, StageWait, Stretch, StudyName, SummaryRow, TimedStage, WeekPresses, WordKind, read_rows,
    write_rows,
};

fn row() -> SummaryRow {
    SummaryRow {
        form: SummaryRow::FORM,
        household: StudyName::new("h-01").unwrap(),
        learner: 0,
        word: 1,
        species: Species::Dog,
        age_band: AgeBand::UnderTwo,
        word_kind: WordKind::Play,
        exposures: 61,
        pressed: true,
        days: 12,
        watched: 200,
        invited: 40,
        joined: 31,
        hours: Some(DayPart::of_hour(19)),
        stage: Some(StageWait { stage: TimedStage::Show, days: 21, moved_on: true }),
        week: Some(WeekPresses { from: Stretch::ALL[2], pressed: Often::Some }),
    }
}

#[test]
fn what_is_written_is_read_again() {
    let week = Some(WeekPresses { from: Stretch::ALL[0], pressed: Often::Not });
    let not_yet = SummaryRow { word: 2, pressed: false, days: 200, hours: None, week, ..row() };
    let rows = vec![row(), not_yet];
    let text = write_rows(&rows).unwrap();
    assert_eq!(read_rows(&text).unwrap(), rows);
    assert_eq!(
        text.lines().next().unwrap(),
        r#"{"form":4,"household":"h-01","learner":0,"word":1,"species":"dog","age_band":"under 2","word_kind":"play","exposures":61,"pressed":true,"days":12,"watched":200,"invited":40,"joined":31,"hours":6,"stage":{"stage":"show","days":21,"moved_on":true},"week":{"from":5,"pressed":"some"}}"#
    );
    // Of homes that agreed to earlier words, which name no week, no stages either, or no hours.
    for form in [SummaryRow::WITHOUT_WEEK, SummaryRow::WITHOUT_STAGE, SummaryRow::WITHOUT_HOURS] {
        let before = row().in_form(form);
        let text = write_rows(std::slice::from_ref(&before)).unwrap();
        assert!(text.starts_with(&format!(r#"{{"form":{form},"#)) && !text.contains("week"), "{text}");
        assert_eq!(text.contains("stage"), form > SummaryRow::WITHOUT_STAGE, "{text}");
        assert_eq!(text.contains("hours"), form > SummaryRow::WITHOUT_HOURS, "{text}");
        assert_eq!(read_rows(&text).unwrap(), [before]);
    }
}

#[test]
fn a_wrong_row_is_refused_with_its_line_and_field() {
    let good = write_rows(&[row()]).unwrap();
    let cases = [
        (r#""form":4"#, r#""form":5"#, "line 3, form is 5: it must be from 1 to 4"),
        (r#""form":4"#, r#""form":3"#, "line 3, week is 5: it must be left out before form 4"),
        (
            r#""watched":200"#,
            r#""watched":34"#,
            "line 3, week.from is 5: it must be a week that is over within 34 days",
        ),
        (r#""from":5"#, r#""from":6"#, "line 3, week.from: no stretch of weeks begins with week 6"),
        (r#""pressed":"some""#, r#""pressed":"often""#, "line 3, week.pressed: unknown variant `often`"),
        (
            r#""pressed":true,"days":12,"watched":200,"invited":40,"joined":31,"hours":6"#,
            r#""pressed":false,"days":200,"watched":200,"invited":40,"joined":31"#,
            "line 3, week.pressed is some: it must be not, where it was not pressed yet",
        ),
        (r#""form":4"#, r#""form":1"#, "line 3, hours is 6: it must be left out in form 1"),
        (r#""form":4"#, r#""form":2"#, "line 3, stage is show: it must be left out before form 3"),
        (
            r#""word_kind":"play""#,
            r#""word_kind":"closing""#,
            "line 3, stage is show: it must be left out of a word that ends",
        ),
        (r#""days":21"#, r#""days":201"#, "line 3, stage.days is 201: it must be from 0 to 200"),
        (r#""moved_on":true"#, r#""moved_on":false"#, "line 3, stage.days is 21: it must be 200"),
        (r#"{"stage":"show""#, r#"{"stage":"converse""#, "line 3, stage.stage: unknown variant `converse`"),
        (r#""hours":6"#, r#""hours":8"#, "line 3, hours: 8 is no part of a day"),
        (
            r#""pressed":true,"days":12"#,
            r#""pressed":false,"days":200"#,
            "line 3, hours is 6: it must be left out where nothing was pressed yet",
        ),
        (r#""word":1"#, r#""word":0"#, "line 3, word is 0: it must be from 1 to 1000"),
        (r#""exposures":61"#, r#""exposures":4000000"#, "line 3, exposures is 4000000: it must be from 0 to 100000"),
        (r#""days":12"#, r#""days":-1"#, "line 3, days: invalid value: integer `-1`, expected u32"),
        (r#""days":12"#, r#""days":201"#, "line 3, days is 201: it must be from 0 to 200"),
        (r#""joined":31"#, r#""joined":41"#, "line 3, joined is 41: it must be from 0 to 40"),
        (r#""pressed":true"#, r#""pressed":false"#, "line 3, days is 12: it must be 200"),
        (r#""species":"dog""#, r#""species":"wolf""#, "line 3, species: unknown variant `wolf`"),
        (r#""household":"h-01""#, r#""household":"Ann Lee""#, "line 3, household: a household's study name"),
        (r#""joined":31"#, r#""joined":31,"note":"x""#, "line 3, note: unknown field `note`"),
        (r#","joined":31"#, "", "line 3, .: missing field `joined`"),
        ("}}", "}} {}", "line 3, .: trailing characters"),
    ];
    for (right, wrong, why) in cases {
        assert!(good.contains(right), "{right}");
        let text = format!("{good}\n{}", good.replacen(right, wrong, 1));
        let said = read_rows(&text).unwrap_err().to_string();
        assert!(said.starts_with(why), "{wrong}: {said}");
    }
}

#[test]
fn a_word_never_shown_and_never_pressed_is_no_row() {
    let said = write_rows(&[SummaryRow { exposures: 0, pressed: false, days: 200, hours: None, week: None, ..row() }])
        .unwrap_err()
        .to_string();
    assert_eq!(said, "line 1, exposures is 0: it must be from 1 to 100000");
    assert!(write_rows(&[SummaryRow { exposures: 0, days: 0, ..row() }]).is_ok(), "pressed before it was first shown");
}

proptest! {
    #[test]
    fn no_text_panics(text in "\\PC{0,200}") {
        let _ = read_rows(&text);
    }

    #[test]
    fn no_cut_row_is_taken_for_another(at in 0_usize..200) {
        let text = write_rows(&[row()]).unwrap();
        let cut = &text[..at.min(text.len() - 2)];
        prop_assert!(read_rows(cut).map_or(true, |rows| rows.is_empty()), "{}", cut);
    }
}
