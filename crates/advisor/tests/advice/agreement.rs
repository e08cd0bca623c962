//! Scores of two people, from text to sentence.

use sayso_advisor::agreement::{Beyond, ScoreScale, ScoresError, agreement, read};

fn by_number(i: usize) -> String {
    format!("person {i}")
}

#[test]
fn a_published_table_is_read_and_judged() {
    // 20, 5, 10, 15 pairs: kappa 0.4, the worked example of the methods' own page.
    let mut text = "Ann,Ben\n".to_owned();
    for (pair, n) in [("yes,yes\n", 20), ("yes,no\n", 5), ("no,yes\n", 10), ("no,no\n", 15)] {
        text.push_str(&pair.repeat(n));
    }
    let found = agreement(&read(&text, true, ScoreScale::Names, by_number).unwrap(), ScoreScale::Names);
    assert_eq!(found.people, ["Ann", "Ben"]);
    let alike = found.alike.unwrap();
    assert_eq!((alike.value, alike.n), (Some(0.7), 50));
    let kappa = found.kappa.unwrap().estimate;
    assert!((kappa.value.unwrap() - 0.4).abs() < 1e-12 && kappa.n == 50);
    assert_eq!(
        (found.differing[0].first.as_str(), found.differing[0].second.as_str(), found.differing[0].n),
        ("no", "yes", 10)
    );
}

#[test]
fn steps_gaps_and_other_marks_are_read() {
    let scores = read("1;2\n2;2\n;3\n10;9\n1;-\n2;1.0\n", false, ScoreScale::Steps, by_number).unwrap();
    assert_eq!(scores.categories, ["1", "2", "3", "9", "10"], "by size, not by spelling");
    assert_eq!(scores.by_person[0], [Some(0), Some(1), None, Some(4), Some(0), Some(1)]);
    assert_eq!(scores.by_person[1], [Some(1), Some(1), Some(2), Some(3), None, Some(0)]);
    let found = agreement(&scores, ScoreScale::Steps);
    assert_eq!(found.shared, 4);
    assert!(found.alpha.lacking.is_some() && found.alpha.estimate.low.is_none(), "four are too few for an interval");
}

#[test]
fn nothing_is_claimed_from_nothing_or_from_one_category() {
    let lone = agreement(&read("a,\n,b\n", false, ScoreScale::Names, by_number).unwrap(), ScoreScale::Names);
    assert!(lone.shared == 0 && lone.beyond == Beyond::NotJudged);
    let same =
        agreement(&read(&"quiet,quiet\n".repeat(40), false, ScoreScale::Names, by_number).unwrap(), ScoreScale::Names);
    assert_eq!(same.kappa.clone().unwrap().estimate.value, None);
    assert_eq!(same.beyond, Beyond::NotJudged);
    let noise: String = (0..60).map(|i| format!("{},{}\n", i % 2, (i / 2) % 2)).collect();
    let noise = agreement(&read(&noise, false, ScoreScale::Names, by_number).unwrap(), ScoreScale::Names);
    assert_ne!(noise.beyond, Beyond::Well);
}

#[test]
fn what_is_wrong_is_told_with_its_line() {
    let told = |text: &str, scale| read(text, false, scale, by_number).unwrap_err();
    assert_eq!(told("", ScoreScale::Names), ScoresError::Empty);
    assert_eq!(told("press\nbrush\n", ScoreScale::Names), ScoresError::People(1));
    let ragged = told("a,b\n\na,b,c\n", ScoreScale::Names).to_string();
    assert!(ragged.contains("line 3 has 3 columns"), "{ragged}");
    let name = told("1,2\n1,calm\n", ScoreScale::Numbers).to_string();
    assert!(name.contains("line 2") && name.contains("person 2") && name.contains("calm"), "{name}");
    assert_eq!(read("Ann,Ben\n", true, ScoreScale::Names, by_number).unwrap_err(), ScoresError::Empty);
}
