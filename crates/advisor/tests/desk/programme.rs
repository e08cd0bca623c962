//! A programme against its own aims: counted where the log tells, ticked where it cannot, and kept in the line.

use crate::kit::{Home, ago, animal, now, word};
use sayso_advisor::Case;
use sayso_advisor::programme::{Marks, course, doing, week_of};
use sayso_model::talks::talks;
use sayso_model::{Story, Zone};
use serde_json::{Value, json};
use uuid::Uuid;

/// A course of two weeks that began nine days ago.
fn proposes() -> Value {
    let aims = json!([
        { "aim": "showings", "times": 20 },
        { "aim": "invitations", "times": 2 },
        { "aim": "sessions", "a_day": 2, "days": 3 },
        { "aim": "lesson", "lesson": "showing" },
        { "aim": "own", "text": "Put the board by the door" },
    ]);
    json!({ "what": "programme", "first": ago(9.0).day(&Zone::utc()), "course": {
        "programme": Uuid::from_u128(5), "name": "First words",
        "weeks": [{ "aims": aims, "exercise": "Watch the ears." }, { "aims": [{ "aim": "showings", "times": 20 }] }] } })
}

fn joins(home: &mut Home, reply: &str) -> Uuid {
    let from = json!({ "account": Uuid::from_u128(9), "name": "Brook" });
    let id = home.tell(ago(10.0), json!({ "kind": "proposal", "from": from, "proposes": proposes() }));
    home.tell(ago(9.5), json!({ "kind": "proposal_answer", "to": id, "reply": reply }));
    id.0
}

fn stood(story: &Story, week: usize) -> Vec<(usize, usize)> {
    let case = Case::new(story, animal(), now());
    let all = talks(story, now());
    let talk = all.iter().find(|t| course(t).is_some()).unwrap();
    doing(&case, talk, week, Marks::All).iter().map(|d| (d.done, d.of)).collect()
}

#[test]
fn aims_are_counted_in_their_week_and_nowhere_else() {
    let mut home = Home::new();
    let of = joins(&mut home, "accepted");
    assert_eq!(stood(&home.story(), 0), [(0, 20), (0, 2), (0, 3), (0, 1), (0, 1)]);
    // The day before it begins counts for nothing; three days of two sessions each in the first week; one in the second.
    for (days, times) in [(10, 1), (9, 2), (8, 2), (5, 2), (4, 1), (1, 1)] {
        for n in 0..times {
            home.session(ago(f64::from(days)).plus_seconds(-3600.0 * f64::from(n + 1)), true, &[0, 1], 2.0);
        }
    }
    home.invite(ago(6.0), 0, None);
    home.card(ago(3.0), json!({ "kind": "lesson_read", "lesson": "inviting" }));
    assert_eq!(stood(&home.story(), 0), [(14, 20), (1, 2), (3, 3), (0, 1), (0, 1)], "{word:?}", word = word(0));
    assert_eq!(stood(&home.story(), 1), [(2, 20)]);
    // A lesson read before counts; a tick counts for its own week and aim, and is taken back by taking it back.
    home.card(ago(30.0), json!({ "kind": "lesson_read", "lesson": "showing" }));
    let tick = |week: u8, aim: u8| json!({ "kind": "aim_done", "of": of, "week": week, "aim": aim });
    home.tell(ago(2.0), tick(1, 4));
    home.tell(ago(2.0), tick(2, 5));
    assert_eq!(stood(&home.story(), 0)[3..], [(1, 1), (0, 1)]);
    let done = home.tell(ago(2.0), tick(1, 5));
    assert_eq!(stood(&home.story(), 0)[3..], [(1, 1), (1, 1)]);
    home.tell(ago(1.0), json!({ "kind": "withdrawal", "of": done }));
    assert_eq!(stood(&home.story(), 0)[4], (0, 1));
}

#[test]
fn a_line_holds_what_was_joined_and_only_that() {
    for (reply, joined) in [("accepted", 1), ("declined", 0)] {
        let mut home = Home::new();
        joins(&mut home, reply);
        home.lives(9, 0);
        let line = home.line();
        assert_eq!(line.programmes.len(), joined, "{reply}");
        for of in &line.programmes {
            assert_eq!(of.weeks, [stood(&home.story(), 0), stood(&home.story(), 1)]);
            assert!(of.weeks[0][0].0 > 0, "{of:?}");
        }
    }
}

#[test]
fn a_week_is_found_by_its_days() {
    let mut home = Home::new();
    joins(&mut home, "accepted");
    let story = home.story();
    let all = talks(&story, now());
    let (of, first) = all.iter().find_map(course).unwrap();
    let weeks: Vec<Option<usize>> = [-1, 0, 6, 7, 13, 14].map(|n| week_of(of, first, first.plus(n))).to_vec();
    assert_eq!(weeks, [None, Some(0), Some(0), Some(1), Some(1), None]);
    assert_eq!(of.last(first), first.plus(13));
}
