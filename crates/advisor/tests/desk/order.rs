//! In which order needs and animals stand, and what was put aside.

use crate::kit::{DAY_S, Home, ago, animal, now, word};
use sayso_advisor::desk::{
    ASIDE_DAYS, About, BackFor, Bar, CheckLine, Held, Line, Measure, Need, Put, PutAside, Seen, Since, What, desk,
    needs, order,
};
use sayso_advisor::stuck::{Cause, StuckFor};
use sayso_advisor::{Estimate, Sure};
use sayso_model::Moment;
use serde_json::json;

fn growls(days: &[f64]) -> Line {
    let mut home = Home::new();
    home.lives(60, 0);
    days.iter().for_each(|d| {
        home.sign(ago(*d), "growl");
    });
    home.line()
}

fn fallen() -> Line {
    let mut home = Home::new();
    home.lives(60, 9);
    (0..9).rev().for_each(|d| home.day(d, false, &[0, 1, 2], 2.0, 3));
    home.line()
}

fn silent() -> Line {
    let mut home = Home::new();
    home.lives(60, 14);
    home.line()
}

fn overfed() -> Line {
    let mut home = Home::new();
    home.lives(60, 0);
    (0..7).for_each(|d| home.feed(ago(f64::from(d) + 0.1), 120.0));
    home.line()
}

fn waiting() -> Line {
    let mut home = Home::new();
    home.lives(60, 0);
    home.tell(ago(59.0), json!({ "kind": "stage_choice", "word": word(1), "stage": "show" }));
    home.line()
}

fn fine() -> Line {
    let mut home = Home::new();
    home.lives(60, 0);
    home.line()
}

#[test]
fn animals_stand_in_the_written_order_whatever_order_they_come_in() {
    let today = growls(&[0.05]);
    let (again, old) = (growls(&[3.0, 12.0, 20.0]), growls(&[3.0]));
    let all = [
        ("a fine one", fine()),
        ("ready", waiting()),
        ("silent", silent()),
        ("growled last week", old),
        ("overfed", overfed()),
        ("growls again and again", again),
        ("joins no more", fallen()),
        ("growled today", today),
    ];
    let expected = [
        "growled today",
        "growls again and again",
        "growled last week",
        "joins no more",
        "silent",
        "overfed",
        "ready",
        "a fine one",
    ];
    for turn in 0..all.len() {
        let turned = all.iter().cycle().skip(turn).take(all.len());
        let rows = desk(turned.map(|(name, line)| (*name, line)), now(), &Seen::default(), None);
        assert_eq!(rows.iter().map(|r| r.key).collect::<Vec<_>>(), expected);
    }
}

#[test]
fn how_soon_somebody_may_be_hurt_decides_among_unsafe_homes() {
    let signs = |days: &[f64], text: &str| {
        let mut home = Home::new();
        home.lives(60, 0);
        days.iter().for_each(|d| {
            home.sign(ago(*d), text);
        });
        home.line()
    };
    let (growl, guards, crouches) = ("growl", "guards food, a thing or the button", "tail tucked, crouching");
    // As it is written down, the first first.
    let written = [
        ("growled today", signs(&[0.1], growl)),
        ("guarded today", signs(&[0.1], guards)),
        ("crouched on three days", signs(&[1.2, 2.2, 4.2], crouches)),
        ("growled yesterday", signs(&[1.2], growl)),
        ("growls again and again, three days ago", signs(&[3.2, 12.0, 20.0], growl)),
        ("growled three days ago", signs(&[3.2], growl)),
        ("guarded yesterday", signs(&[1.2], guards)),
        ("guards again and again, nine days ago", signs(&[9.0, 16.0, 23.0], guards)),
        ("growled eight days ago", signs(&[8.0], growl)),
        ("growled twelve days ago", signs(&[12.0], growl)),
        ("guarded eight days ago", signs(&[8.0], guards)),
    ];
    for turn in 0..written.len() {
        let turned = written.iter().cycle().skip(turn).take(written.len());
        let rows = desk(turned.map(|(name, line)| (*name, line)), now(), &Seen::default(), None);
        assert_eq!(rows.iter().map(|r| r.key).collect::<Vec<_>>(), written.each_ref().map(|(name, _)| *name));
    }
}

#[test]
fn strong_signs_stand_above_everything_that_any_other_home_can_have() {
    let worst = [fallen(), silent(), overfed(), waiting()];
    for guard in ["growl", "guards food, a thing or the button", "swallowed something that is no food"] {
        let mut home = Home::new();
        home.lives(60, 0);
        home.sign(ago(26.0), guard);
        let line = home.line();
        let all = worst.iter().chain([&line]).enumerate();
        let rows = desk(all, now(), &Seen::default(), None);
        assert_eq!(rows[0].key, worst.len(), "{guard}: {:?}", rows[0].needs);
    }
}

#[test]
fn needs_of_one_animal_come_in_the_order_of_what_they_are_about() {
    let mut home = Home::new();
    home.lives(60, 9);
    (0..9).rev().for_each(|d| home.day(d, false, &[0, 1, 2], 2.0, 3));
    (0..7).for_each(|d| home.feed(ago(f64::from(d) + 0.1), 120.0));
    home.sign(ago(10.0), "growl");
    let mut found = home.needs();
    let abouts: Vec<About> = found.iter().map(|n| n.about).collect();
    assert_eq!(abouts[..3], [About::Safety, About::Change, About::Ration], "{abouts:?}");
    found.reverse();
    order(&mut found);
    assert_eq!(found, home.needs());
}

/// A need as it stands, put aside at a moment for a week.
fn aside(seen: &mut Seen, need: &Need, at: Moment) {
    let until = at.plus_seconds(f64::from(ASIDE_DAYS) * DAY_S);
    seen.put_aside(animal(), need.mark(), PutAside { at, until, extent: Some(need.extent()) });
}

fn of(line: &Line, at: Moment, seen: &Seen, about: About) -> Need {
    let all = needs(line, at, &Bar::over([line]), seen, None);
    all.into_iter().find(|n| n.about == about).unwrap_or_else(|| panic!("no {about:?}"))
}

/// Puts what an animal needs aside now, and says what became of that in another state of it, so many days later.
fn later(about: About, before: &Line, after: &Line, days: f64) -> Option<Put> {
    let mut seen = Seen::default();
    aside(&mut seen, &of(before, now(), &Seen::default(), about), now());
    of(after, ago(-days), &seen, about).put
}

fn back(because: BackFor) -> Option<Put> {
    Some(Put::Back { at: Moment::clamped(0), because })
}

fn why(put: Option<Put>) -> Option<Put> {
    match put {
        Some(Put::Back { because, .. }) => back(because),
        other => other,
    }
}

/// One word, stuck or not, with this cause or none.
fn held(cause: Option<Cause>, stuck: bool) -> Line {
    let mut line = waiting();
    let (figure, beside) = (Estimate::share(1, 20), Estimate::share(1, 2));
    let found = |cause| Held { cause, sure: Sure::Fairly, figure, beside, p: Some(1e-9) };
    line.words.truncate(1);
    let stuck = stuck.then_some(StuckFor::SeldomRight);
    line.words.iter_mut().for_each(|w| (w.stuck, w.held) = (stuck, cause.map(found)));
    line
}

#[test]
fn what_was_put_aside_stands_behind_its_like_for_a_week_but_safety_never_does() {
    let line = overfed();
    let mut seen = Seen::default();
    aside(&mut seen, &of(&line, now(), &Seen::default(), About::Ration), now());
    let need = of(&line, now(), &seen, About::Ration);
    let until = now().plus_seconds(7.0 * DAY_S);
    assert_eq!((need.put, need.is_aside()), (Some(Put::Aside { at: now(), until }), true));
    let rows = desk([(0, &line), (1, &waiting())], now(), &seen, None);
    assert_eq!(rows[0].key, 0, "what it is about still comes first");
    let growled = growls(&[3.0]);
    aside(&mut seen, &of(&growled, now(), &Seen::default(), About::Safety), now());
    assert_eq!(of(&growled, now(), &seen, About::Safety).put, None);
    // Back by its day, which is said.
    let line = held(Some(Cause::TooLate), true);
    assert!(matches!(later(About::Held, &line, &line, 6.9), Some(Put::Aside { .. })));
    assert_eq!(why(later(About::Held, &line, &line, 7.0)), back(BackFor::Days));
}

#[test]
fn what_gets_worse_is_back_at_once_and_says_that_it_had_been_put_aside() {
    let (late, alike) = (held(Some(Cause::TooLate), true), held(Some(Cause::SoundsAlike), true));
    assert!(matches!(later(About::Held, &late, &late, 1.0), Some(Put::Aside { .. })));
    assert_eq!(why(later(About::Held, &late, &alike, 1.0)), back(BackFor::Cause), "another cause on the same word");
    let (gets_on, unknown) = (held(Some(Cause::TooLate), false), held(None, true));
    assert_eq!(why(later(About::Held, &gets_on, &late, 1.0)), back(BackFor::Worse), "it got stuck");
    assert!(matches!(later(About::Held, &late, &unknown, 1.0), Some(Put::Aside { .. })), "less is known, not worse");
    // A silence twice as long; a check waiting where before there was none; one more word; one more day of food.
    let line = silent();
    let days = match of(&line, now(), &Seen::default(), About::Silent).what {
        What::Silent { days, .. } => f64::from(days),
        other => panic!("{other:?}"),
    };
    assert!(days > 7.0, "{days}");
    assert!(matches!(later(About::Silent, &line, &line, 6.0), Some(Put::Aside { .. })));
    let mut seen = Seen::default();
    let then = Need {
        what: What::Silent { days: 5, usual: Estimate::share(0, 0), longest: 1, after: 4 },
        ..of(&line, now(), &seen, About::Silent)
    };
    aside(&mut seen, &then, now());
    assert_eq!(why(of(&line, now(), &seen, About::Silent).put), back(BackFor::Worse), "twice as long");
    let checks = |open, never| {
        let mut line = fine();
        line.check = CheckLine { open, never };
        line
    };
    let (two, three, open) = (checks(None, 2), checks(None, 3), checks(Some((4, 20)), 0));
    assert!(matches!(later(About::Check, &two, &two, 1.0), Some(Put::Aside { .. })));
    assert_eq!(why(later(About::Check, &two, &three, 1.0)), back(BackFor::Worse));
    assert_eq!(why(later(About::Check, &two, &open, 1.0)), back(BackFor::Worse), "a check waits");
    let mut less = overfed();
    less.over.truncate(4);
    assert_eq!(why(later(About::Ration, &less, &overfed(), 0.0)), back(BackFor::Worse));
    assert!(matches!(later(About::Ration, &overfed(), &less, 0.0), Some(Put::Aside { .. })));
    // A change of something else.
    let line = fallen();
    let mut slower = fallen();
    slower.looks.iter_mut().for_each(|look| look.measure = Measure::Latency);
    slower.looks.iter_mut().for_each(|look| look.lately.value = None);
    assert_eq!(later(About::Change, &line, &slower, 0.0), None);
    // Without a middle nothing grows: what stays as it was stays put aside.
    assert!(matches!(later(About::Change, &slower, &slower, 0.0), Some(Put::Aside { .. })));
}

/// Puts something aside for four weeks and reads it day by day while all goes on as it was: that the days looked back on move
/// on with it brings nothing back.
#[test]
fn what_only_goes_on_is_not_told_to_have_begun_anew() {
    // As if so many days had gone by in which everything was written a day later.
    let fallen_later = |later: i32| {
        let mut line = fallen();
        line.at = now().plus_seconds(f64::from(later) * DAY_S);
        line.looks.iter_mut().for_each(|look| look.since = look.since.plus(later));
        line
    };
    let overfed_later = |later: i32| {
        let mut line = overfed();
        line.over.iter_mut().for_each(|over| over.day = over.day.plus(later));
        line
    };
    let leaving_later = |later: i32| {
        let mut line = fine();
        let today = now().day(&line.zone);
        (line.left, line.left_since) = ((8, 8), Some(today.plus(later - 7)));
        line
    };
    let lines: [(About, &dyn Fn(i32) -> Line); 3] =
        [(About::Change, &fallen_later), (About::Ration, &overfed_later), (About::Leaves, &leaving_later)];
    for (about, line) in lines {
        let mut seen = Seen::default();
        let need = of(&line(0), now(), &seen, about);
        let put = PutAside { at: now(), until: ago(-28.0), extent: Some(need.extent()) };
        seen.put_aside(animal(), need.mark(), put);
        for later in 0..28 {
            let then = of(&line(later), ago(-f64::from(later)), &seen, about);
            assert!(then.is_aside(), "{about:?}, {later} days later: {:?}", then.put);
        }
        let then = of(&line(20), ago(-20.0), &seen, about);
        assert!(matches!(then.since, Some(Since::AtLeast(day)) if day > now().day(&line(0).zone)), "{then:?}");
        assert_eq!(why(of(&line(28), ago(-28.0), &seen, about).put), back(BackFor::Days));
    }
}

#[test]
fn what_the_records_say_began_later_is_back_as_begun_anew() {
    // Silent again, after somebody wrote in between.
    let line = silent();
    let mut seen = Seen::default();
    let need = of(&line, now(), &seen, About::Silent);
    let put = PutAside { at: ago(20.0), until: ago(-8.0), extent: Some(need.extent()) };
    seen.put_aside(animal(), need.mark(), put);
    assert_eq!(why(of(&line, now(), &seen, About::Silent).put), back(BackFor::Anew));
}

#[test]
fn a_change_counts_only_against_all_that_was_looked_at() {
    let mut weak = fallen();
    weak.looks.iter_mut().for_each(|l| l.p = 0.01);
    let alone = needs(&weak, now(), &Bar::over([&weak]), &Seen::default(), None);
    assert!(alone.iter().any(|n| n.about == About::Change));
    let others: Vec<Line> = (0..60).map(|_| fine()).collect();
    let among = needs(&weak, now(), &Bar::over(others.iter().chain([&weak])), &Seen::default(), None);
    assert!(among.iter().all(|n| n.about != About::Change), "{among:?}");
}

#[test]
fn what_one_kind_of_look_did_not_find_hides_nothing_that_another_found() {
    let mut fell = fallen();
    fell.looks.retain(|l| l.measure == Measure::Joining);
    fell.looks.iter_mut().for_each(|l| l.p = 0.01);
    let of = |measure| {
        let mut other = fell.clone();
        other.looks.iter_mut().for_each(|l| (l.measure, l.p) = (measure, 0.6));
        other
    };
    let told = |measure| {
        let others: Vec<Line> = (0..60).map(|_| of(measure)).collect();
        let all = needs(&fell, now(), &Bar::over(others.iter().chain([&fell])), &Seen::default(), None);
        all.iter().any(|n| n.about == About::Change)
    };
    assert_eq!([Measure::Joining, Measure::Presses, Measure::Latency].map(told), [false, true, true]);
}
