//! What is unsafe: for as long as the home's own page says it, read from a line of any age; and records taken back.

use crate::kit::{DAY_S, Home, ago, animal, now, read};
use sayso_advisor::desk::{About, Line, Need, SignKind, Until, What};
use sayso_advisor::welfare::welfare;
use sayso_advisor::{Act, Case};
use serde_json::json;

fn told(needs: &[Need]) -> Vec<SignKind> {
    let signs = needs.iter().filter(|n| n.about == About::Safety);
    signs.map(|n| if let What::Signs { kind, .. } = n.what { kind } else { panic!("{n:?}") }).collect()
}

#[test]
fn a_line_says_on_every_later_day_what_the_homes_own_page_says_of_its_signs() {
    let mut home = Home::new();
    home.lives(60, 0);
    home.sign(ago(0.1), "growl");
    home.sign(ago(16.0), "growl");
    home.sign(ago(33.0), "growl");
    home.sign(ago(2.0), "guards food, a thing or the button");
    home.sign(ago(1.2), "tail tucked, crouching");
    let story = home.story();
    let line = home.line();
    for later in 0..40 {
        let at = now().plus_seconds(f64::from(later) * DAY_S);
        let page = welfare(&Case::new(&story, animal(), at));
        let acts: Vec<&Act> = page.iter().map(|a| &a.act).collect();
        let desk = told(&read(&line, at));
        let rests = acts.iter().any(|a| matches!(a, Act::GiveSpace | Act::PauseSessions | Act::NoMoreToday));
        assert_eq!(desk.contains(&SignKind::Other), rests, "day {later}: {acts:?} {desk:?}");
        let threat = acts.iter().any(|a| matches!(a, Act::AskAboutThreats | Act::GiveSpace));
        assert_eq!(desk.contains(&SignKind::Threat), threat, "day {later}: {acts:?} {desk:?}");
        let guards = acts.contains(&&Act::AskAboutGuarding);
        assert_eq!(desk.contains(&SignKind::Guarding), guards, "day {later}: {acts:?} {desk:?}");
        let back = page.iter().flat_map(|a| &a.because).find_map(|r| match r.fact {
            sayso_advisor::Because::Recurring { weeks, of, .. } => Some((weeks, of)),
            _ => None,
        });
        let desk_back = read(&line, at).iter().find_map(|n| match n.what {
            What::Signs { kind: SignKind::Threat, recurring, .. } => recurring,
            _ => None,
        });
        assert_eq!(desk_back, back, "day {later}");
        // What would change it has not happened yet, and is what ends it: not a day sooner or later.
        for need in read(&line, at).iter().filter(|n| n.about == About::Safety) {
            let (What::Signs { kind, .. }, Until::Without { before }) = (&need.what, need.until) else {
                panic!("{need:?}")
            };
            let days = before.days_since(at.day(&line.zone));
            let stands = |days: i32| told(&read(&line, at.plus_seconds(f64::from(days) * DAY_S))).contains(kind);
            assert!(days > 0 && stands(days - 1) && !stands(days), "day {later}, {kind:?}: {days}");
        }
    }
    assert!(told(&read(&line, now().plus_seconds(40.0 * DAY_S))).is_empty());
}

#[test]
fn one_strong_sign_today_is_over_tomorrow_and_says_so() {
    let mut home = Home::new();
    home.lives(60, 0);
    home.sign(ago(0.1), "tail tucked, crouching");
    let needs = home.needs();
    let need = needs.iter().find(|n| n.about == About::Safety).unwrap();
    let tomorrow = now().day(&home.line().zone).plus(1);
    assert_eq!(need.until, Until::Without { before: tomorrow }, "a calm week there is already");
}

#[test]
fn a_home_that_does_well_has_no_need() {
    let mut home = Home::new();
    home.lives(60, 0);
    let above: Vec<_> = home.needs().into_iter().filter(|n| n.about < About::Check).collect();
    assert!(above.is_empty(), "{above:?}");
}

#[test]
fn mild_signs_and_one_strong_sign_of_last_week_are_no_need() {
    let mut home = Home::new();
    home.lives(60, 0);
    home.sign(ago(4.0), "tail tucked, crouching");
    home.tell(ago(0.1), json!({ "kind": "sign", "sign": "yawns", "level": "mild", "when": "before" }));
    assert!(told(&home.needs()).is_empty());
}

#[test]
fn a_growl_taken_back_is_told_as_taken_back_and_not_as_a_growl() {
    let mut home = Home::new();
    home.lives(60, 0);
    let growl = home.sign(ago(3.0), "growl");
    home.card(ago(2.9), json!({ "kind": "withdrawal", "of": growl }));
    let needs = home.needs();
    assert!(told(&needs).is_empty(), "{needs:?}");
    let back = needs.iter().find(|n| n.about == About::TakenBack).unwrap();
    assert!(matches!(back.what, What::TakenBack { kind: SignKind::Threat, count: 1, .. }), "{back:?}");
    let softer = home.sign(ago(5.0), "guards food, a thing or the button");
    let yawn = json!({ "kind": "sign", "sign": "yawns", "level": "mild", "when": "during" });
    home.card(ago(4.9), json!({ "kind": "correction", "of": softer, "body": yawn }));
    let kinds = |line: &Line| line.signs.iter().filter(|s| s.taken_back).map(|s| s.kind).collect::<Vec<_>>();
    assert_eq!(kinds(&home.line()), [SignKind::Guarding, SignKind::Threat]);
    // Put right to something as strong: that stands.
    let other = home.sign(ago(6.0), "tail tucked, crouching");
    let growl = json!({ "kind": "sign", "sign": "growl", "level": "strong", "when": "during" });
    home.card(ago(5.9), json!({ "kind": "correction", "of": other, "body": growl }));
    assert_eq!(told(&home.needs()), [SignKind::Threat]);
}
