//! Answers worked out by hand.

use crate::made::answer;
use study_cohort::*;

const DAY: i32 = 86_400;

fn dog(household: u32, until_s: i32) -> Animal {
    Animal { household, animal: 0, species: "dog", age_band: AgeBand::UnderTwo, until_s }
}

fn row(household: u32, at_s: i32, kind: Kind) -> Row {
    Row { word: Some((0, WordKind::Play)), by: Some(By::Animal), ..Row::new(household, 0, at_s, 9, kind) }
}

fn stage(household: u32, at_s: i32, outcome: Outcome) -> Row {
    Row { outcome: Some(outcome), ..row(household, at_s, Kind::Stage) }
}

fn invitation(household: u32, at_s: i32, outcome: Outcome, joined: Option<bool>) -> Row {
    Row { outcome: Some(outcome), joined, ..row(household, at_s, Kind::Invitation) }
}

#[tokio::test]
async fn showings_before_the_first_press_with_words_not_pressed_yet() {
    let mut rows = Vec::new();
    // Pressed after 2, 4 and 6 showings, one a day; in the fourth home not after 5.
    for (household, before) in [(1, 2), (2, 4), (3, 6)] {
        rows.extend((0..before).map(|day| row(household, day * DAY, Kind::Showing)));
        rows.push(row(household, before * DAY, Kind::Press));
        // Later showings and presses change nothing.
        rows.push(row(household, (before + 1) * DAY, Kind::Showing));
        rows.push(row(household, (before + 2) * DAY, Kind::Press));
    }
    rows.extend((0..5).map(|day| row(4, day * DAY, Kind::Showing)));
    // A stumble, a person's press and another word at an invitation are no press by itself.
    rows.push(row(4, DAY, Kind::Stumble));
    rows.push(Row { by: Some(By::Person), ..row(4, DAY, Kind::Press) });
    rows.push(invitation(4, DAY, Outcome::Wrong, Some(true)));
    rows.sort_unstable();
    let animals: Vec<Animal> = (1..=4).map(|home| dog(home, 10 * DAY)).collect();
    let found = answer(Question::FirstPress, &rows, &animals).await;
    assert_eq!(found.rows(), 1);
    let is = |column: &str| found.number(0, column);
    assert_eq!((is("households"), is("words"), is("pressed")), (Some(4.0), Some(4.0), Some(3.0)));
    // Kaplan-Meier: 3/4 left after 2, 1/2 after 4, of the two left one leaves at 5, none after 6.
    assert_eq!(
        (is("showings_quarter"), is("showings_half"), is("showings_three_quarters")),
        (Some(2.0), Some(4.0), Some(6.0))
    );
    // Days: presses on 2, 4 and 6; the fourth is still open at 10.
    assert_eq!(is("days_half"), Some(4.0));
}

#[tokio::test]
async fn the_invited_word_at_an_invitation_is_a_press_by_itself() {
    let rows = [
        row(1, 0, Kind::Showing),
        row(1, DAY, Kind::Showing),
        invitation(1, 2 * DAY, Outcome::Right, Some(true)),
        row(1, 3 * DAY, Kind::Showing),
    ];
    let found = answer(Question::FirstPress, &rows, &[dog(1, 9 * DAY)]).await;
    assert_eq!((found.number(0, "pressed"), found.number(0, "showings_half")), (Some(1.0), Some(2.0)));
    assert_eq!(found.number(0, "days_half"), Some(2.0));
}

#[tokio::test]
async fn hours_count_an_animal_once_however_much_it_presses() {
    let press = |household, hour, n: i32| (0..n).map(move |i| Row { hour, ..row(household, i, Kind::Press) });
    let mut rows: Vec<Row> = press(1, 8, 100).chain(press(2, 8, 1)).chain(press(2, 20, 3)).collect();
    rows.push(Row { by: Some(By::Unknown), hour: 3, ..row(1, 0, Kind::Press) });
    rows.sort_unstable();
    let found = answer(Question::Hours, &rows, &[dog(1, 9), dog(2, 9)]).await;
    assert_eq!(found.rows(), 24);
    assert_eq!((found.number(8, "presses"), found.number(8, "animals")), (Some(101.0), Some(2.0)));
    // The mean of 1 and 1/4.
    assert_eq!((found.number(8, "share"), found.number(20, "share")), (Some(0.625), Some(0.375)));
    assert_eq!((found.number(3, "share"), found.number(3, "presses")), (Some(0.0), Some(0.0)));
}

#[tokio::test]
async fn sessions_joined_and_their_length() {
    let session = |household, at_s, joined, tenths| Row {
        word: None,
        joined: Some(joined),
        tenths,
        ..row(household, at_s, Kind::Session)
    };
    let rows = [
        session(1, 0, true, Some(1200)),
        session(1, DAY, true, Some(2400)),
        session(1, 2 * DAY, false, None),
        session(1, 3 * DAY, false, Some(0)),
        session(2, 0, true, Some(6000)),
    ];
    let found = answer(Question::Sessions, &rows, &[dog(1, 9), dog(2, 9)]).await;
    let is = |column: &str| found.number(0, column);
    assert_eq!((is("sessions"), is("joined"), is("share")), (Some(5.0), Some(3.0), Some(0.75)));
    // Student's t of one degree of freedom is 12.7: of two animals nothing is known.
    assert_eq!((is("share_low"), is("share_high")), (Some(0.0), Some(1.0)));
    // Two minutes a session in one home (what is not known is left out), ten in the other.
    assert_eq!((is("minutes_half"), is("minutes_three_quarters")), (Some(2.0), Some(10.0)));
}

#[tokio::test]
async fn words_that_stand_longer_in_a_stage_than_nine_in_ten_did() {
    let mut rows = Vec::new();
    // Ten words leave "show" after 10 to 19 days; one has stood there for 40, one was begun 5 days ago.
    for home in 0..10 {
        rows.push(stage(home, 0, Outcome::Show));
        rows.push(stage(home, (10 + home as i32) * DAY, Outcome::Invite));
        rows.push(stage(home, (10 + home as i32) * DAY, Outcome::Converse));
    }
    rows.push(stage(10, 0, Outcome::Show));
    rows.push(stage(11, 35 * DAY, Outcome::Show));
    rows.sort_unstable();
    let animals: Vec<Animal> = (0..12).map(|home| dog(home, 40 * DAY)).collect();
    let found = answer(Question::Stuck, &rows, &animals).await;
    assert_eq!(found.rows(), 1, "of two stages in one second the further counts, and in the last nobody waits");
    let is = |column: &str| found.number(0, column);
    assert_eq!((is("words"), is("moved"), is("households")), (Some(12.0), Some(10.0), Some(12.0)));
    // One of eleven is left at the end: 1/11 is below a tenth.
    assert_eq!((is("days_half"), is("days_nine_tenths"), is("longer")), (Some(15.0), Some(19.0), Some(1.0)));
}

#[tokio::test]
async fn presses_at_invitations_by_showings_before() {
    let mut rows: Vec<Row> = (0..12).map(|n| row(1, n * 10, Kind::Showing)).collect();
    // After 1 showing: wanted twice, pressed once, wrongly. After 12: wanted once, pressed rightly; and one press unwanted.
    rows.push(invitation(1, 5, Outcome::Wrong, Some(true)));
    rows.push(invitation(1, 6, Outcome::Nothing, Some(true)));
    rows.push(invitation(1, 7, Outcome::Nothing, Some(false)));
    rows.push(invitation(1, 8, Outcome::Nothing, None));
    rows.push(invitation(1, 500, Outcome::Right, Some(true)));
    rows.push(invitation(1, 501, Outcome::Right, Some(false)));
    rows.sort_unstable();
    let found = answer(Question::Curve, &rows, &[dog(1, 999)]).await;
    assert_eq!(found.rows(), 2);
    let row = |row, columns: [&str; 5]| columns.map(|column| found.number(row, column));
    let columns = ["shown_from", "wanted", "pressed", "presses", "right"];
    assert_eq!(row(0, columns), [Some(0.0), Some(2.0), Some(1.0), Some(1.0), Some(0.0)]);
    assert_eq!(row(1, columns), [Some(10.0), Some(1.0), Some(1.0), Some(2.0), Some(2.0)]);
    assert_eq!((found.number(0, "pressed_share"), found.number(1, "right_share")), (Some(0.5), Some(1.0)));
    assert_eq!(found.number(0, "pressed_low"), None, "one animal tells nothing of others");
}

#[tokio::test]
async fn the_interval_of_a_share_is_that_of_the_animals() {
    // Ten animals, joined in 4 to 6 of 10 sessions each.
    let shares = [4, 5, 6, 5, 4, 6, 5, 5, 6, 4];
    let mut rows = Vec::new();
    for (home, joins) in (0_u32..).zip(shares) {
        let session = |n: i32| Row { word: None, joined: Some(n < joins), ..row(home, n * DAY, Kind::Session) };
        rows.extend((0..10).map(session));
    }
    let animals: Vec<Animal> = (0..10).map(|home| dog(home, 9)).collect();
    let found = answer(Question::Sessions, &rows, &animals).await;
    // Mean 0.5, standard deviation sqrt(0.06 / 9), t of nine degrees 2.262157 (tables): 0.5 -+ 0.058409.
    let near = |column: &str, value: f64| (found.number(0, column).unwrap() - value).abs() < 1e-6;
    assert!(near("share", 0.5) && near("share_low", 0.441_591) && near("share_high", 0.558_409), "{:?}", found.cells());
}

#[tokio::test]
async fn animals_that_are_all_alike_are_no_certainty() {
    let joined = |home, n| Row { word: None, joined: Some(true), ..row(home, n, Kind::Session) };
    let rows: Vec<Row> = (0..3).flat_map(|home| (0..50).map(move |n| joined(home, n))).collect();
    let animals: Vec<Animal> = (0..3).map(|home| dog(home, 99)).collect();
    let found = answer(Question::Sessions, &rows, &animals).await;
    // Clopper and Pearson, 3 of 3: the cube root of 0.025.
    let low = found.number(0, "share_low").unwrap();
    assert!((low - 0.025_f64.cbrt()).abs() < 1e-9, "{low}");
    assert_eq!((found.number(0, "share"), found.number(0, "share_high")), (Some(1.0), Some(1.0)));
}
