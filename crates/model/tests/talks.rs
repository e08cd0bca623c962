//! What was agreed stays what it was when it was agreed, and whatever is unclear is not agreed.
#![allow(clippy::unwrap_used, missing_docs)]

use proptest::prelude::*;
use sayso_model::talks::{Standing, agreed, talks};
use sayso_model::*;
use uuid::Uuid;

const DOG: AnimalId = AnimalId(Uuid::from_u128(30));
const BALL: WordId = WordId(Uuid::from_u128(40));
const WALK: WordId = WordId(Uuid::from_u128(41));
const DAY: i64 = 86_400;

const fn id(n: u128) -> EventId {
    EventId(Uuid::from_u128(n))
}

fn at(second: i64) -> Moment {
    "2026-03-02T09:00:00Z".parse::<Moment>().unwrap().plus_seconds(second as f64)
}

fn event(n: u128, second: i64, body: impl Into<Body>) -> Event {
    Event {
        id: id(n),
        home: HomeId(Uuid::from_u128(1)),
        animal: Some(DOG),
        person: None,
        happened_at: at(second),
        zone: Zone::utc(),
        recorded_at: at(second),
        source: Source::Tap,
        body: body.into(),
    }
}

fn proposal(proposes: Proposed) -> Proposal {
    let name = Label::new("Brook").unwrap();
    Proposal {
        from: Author { account: AccountId(Uuid::from_u128(7)), name },
        proposes,
        text: ShortNote::new("Keep it at the board.").ok(),
        takes_up: None,
        club: None,
    }
}

fn plan(word: WordId, times: u8) -> Proposal {
    let lines = vec![PlanLine { word, way: Some(PlanWay::Show), minutes: 3, times }];
    proposal(Proposed::Plan { lines, last_day: at(0).day(&Zone::utc()).plus(6) })
}

fn answer(to: u128, reply: Reply) -> ProposalAnswer {
    ProposalAnswer { to: id(to), reply, text: ShortNote::new("From Monday on.").ok(), by: None, rehearsed: None }
}

fn standing(events: &[Event], now: i64) -> Standing {
    let story = Story::from_events(events.to_vec());
    talks(&story, at(now)).first().unwrap().standing
}

#[test]
fn it_is_open_then_as_the_home_says_and_over_after_its_last_day() {
    let first = event(1, 0, plan(BALL, 3));
    assert_eq!(standing(std::slice::from_ref(&first), 10), Standing::Open);
    let said = [first.clone(), event(2, 5, answer(1, Reply::Said))];
    assert_eq!(standing(&said, 10), Standing::Open, "words alone agree to nothing");
    let yes = [first.clone(), event(2, 5, answer(1, Reply::Accepted))];
    assert_eq!(standing(&yes, 10), Standing::Accepted);
    assert_eq!(standing(&yes, 6 * DAY), Standing::Accepted, "the last day is one of its days");
    assert_eq!(standing(&yes, 7 * DAY), Standing::Ended { accepted: true });
    assert_eq!(standing(std::slice::from_ref(&first), 7 * DAY), Standing::Ended { accepted: false });
    let no = [yes[0].clone(), yes[1].clone(), event(3, 8, answer(1, Reply::Declined))];
    assert_eq!(standing(&no, 10), Standing::Declined, "not any more");
    assert_eq!(standing(&no, 7 * DAY), Standing::Declined);
    let mut again = no.to_vec();
    again.push(event(4, 9, answer(1, Reply::Accepted)));
    assert_eq!(standing(&again, 10), Standing::Accepted);
    let asked = [
        event(1, 0, proposal(Proposed::Question { about: Some(TalkAbout::Word { word: BALL }) })),
        event(2, 5, answer(1, Reply::Said)),
    ];
    assert_eq!(standing(&asked, 10), Standing::Answered);
    let noted = [event(1, 0, proposal(Proposed::Note { about: None })), event(2, 5, answer(1, Reply::Accepted))];
    assert_eq!(standing(&noted, 10), Standing::Answered, "noted is no agreement");
}

#[test]
fn an_amended_proposal_is_taken_back_for_good_and_its_new_form_was_never_accepted() {
    let (first, yes) = (event(1, 0, plan(BALL, 3)), event(2, 5, answer(1, Reply::Accepted)));
    let turned = Correction { of: id(1), happened_at: None, animal: None, body: Box::new(plan(WALK, 8).into()) };
    let back = Withdrawal { of: id(1), because: None };
    let brought = Correction { of: id(1), happened_at: None, animal: None, body: Box::new(first.body.clone()) };
    for (amendments, when) in [
        (vec![event(3, 6, turned.clone())], "turned into another after it was accepted"),
        (vec![event(3, 4, turned)], "turned before it was accepted"),
        (vec![event(3, 6, back.clone())], "withdrawn"),
        (vec![event(3, 6, back), event(4, 7, brought)], "brought back"),
    ] {
        let mut events = vec![first.clone(), yes.clone()];
        events.extend(amendments);
        let story = Story::from_events(events);
        let all = talks(&story, at(10));
        assert_eq!(all.len(), 1, "{when}");
        assert_eq!(all[0].standing, Standing::Withdrawn, "{when}");
        assert_eq!(all[0].part, &plan(BALL, 3), "told as it was first written: {when}");
        assert!(agreed(&story, &all, DOG, at(10)).is_empty(), "{when}");
    }
}

#[test]
fn what_becomes_a_proposal_by_a_correction_is_none() {
    let remark = event(1, 0, Remark { text: Note::new("x").unwrap() });
    let body = Box::new(Body::from(plan(BALL, 3)));
    let turned = event(2, 1, Correction { of: id(1), happened_at: None, animal: None, body });
    let story = Story::from_events([remark, turned, event(3, 2, answer(1, Reply::Accepted))]);
    assert!(talks(&story, at(10)).is_empty());
}

#[test]
fn a_meeting_is_over_when_it_has_ended() {
    let meeting = proposal(Proposed::Meeting { starts_at: at(3_600), minutes: 30 });
    let yes = [event(1, 0, meeting.clone()), event(2, 5, answer(1, Reply::Accepted))];
    assert_eq!(standing(&yes, 3_600 + 1_800), Standing::Accepted, "as long as it is going on");
    assert_eq!(standing(&yes, 3_600 + 1_801), Standing::Ended { accepted: true });
    assert_eq!(standing(&yes[..1], 2 * DAY), Standing::Ended { accepted: false });
    let check = |minutes| event(1, 0, proposal(Proposed::Meeting { starts_at: at(0), minutes })).check();
    assert!(check(5).is_ok() && check(480).is_ok() && check(4).is_err() && check(481).is_err());
}

#[test]
fn of_a_plan_of_ones_own_and_an_agreed_one_the_later_is_in_force() {
    let own = |n, second, times| {
        let lines = vec![PlanLine { word: BALL, way: None, minutes: 5, times }];
        event(n, second, OwnPlan { lines, last_day: at(0).day(&Zone::utc()).plus(6) })
    };
    let times = |events: &[Event], now: i64| {
        let story = Story::from_events(events.to_vec());
        agreed(&story, &talks(&story, at(now)), DOG, at(now)).get(&BALL).map(|line| line.times)
    };
    let agreed_with = [event(1, 0, plan(BALL, 3)), event(2, 5, answer(1, Reply::Accepted))];
    let both = |second| [agreed_with.to_vec(), vec![own(3, second, 1)]].concat();
    assert_eq!(times(&both(6), 10), Some(1));
    assert_eq!(times(&both(4), 10), Some(3));
    assert_eq!(times(&[own(3, 6, 1)], 5), None, "not before it was made");
    assert_eq!(times(&[own(3, 6, 1)], 7 * DAY), None, "nor after its last day");
    // The home's own words may be taken back and put right.
    let back = event(4, 7, Withdrawal { of: id(3), because: None });
    assert_eq!(times(&[both(6), vec![back]].concat(), 10), Some(3));
    let right = Correction { of: id(3), happened_at: None, animal: None, body: Box::new(own(9, 0, 2).body) };
    assert_eq!(times(&[both(6), vec![event(4, 7, right)]].concat(), 10), Some(2));
    assert!(own(1, 0, 9).check().is_err() && Event { animal: None, ..own(1, 0, 2) }.check().is_err());
}

#[test]
fn an_undo_accepts_nothing_and_undoes_no_no() {
    let first = event(1, 0, plan(BALL, 3));
    let undo = |of: u128, n| event(n, 20, Withdrawal { of: id(of), because: None });
    let turn = |of: u128, n, into: ProposalAnswer| {
        event(n, 20, Correction { of: id(of), happened_at: None, animal: None, body: Box::new(into.into()) })
    };
    let (yes, no) = (event(2, 5, answer(1, Reply::Accepted)), event(3, 6, answer(1, Reply::Declined)));
    let of = |more: &[Event]| {
        let mut events = vec![first.clone()];
        events.extend_from_slice(more);
        standing(&events, 30)
    };
    assert_eq!(of(&[yes.clone(), undo(2, 9)]), Standing::Open, "an acceptance that was taken back");
    assert_eq!(of(&[yes.clone(), no.clone(), undo(3, 9)]), Standing::Declined, "a no that was taken back");
    assert_eq!(of(&[no.clone(), turn(3, 9, answer(1, Reply::Accepted))]), Standing::Declined, "a no turned into a yes");
    let other = event(4, 1, plan(WALK, 2));
    let moved = turn(2, 9, answer(4, Reply::Accepted));
    let story = Story::from_events([first.clone(), other, yes, moved]);
    assert!(talks(&story, at(30)).iter().all(|t| t.standing == Standing::Open), "an acceptance moved elsewhere");
}

#[test]
fn of_two_plans_for_a_word_the_one_agreed_last_is_in_force() {
    let events = [
        event(1, 0, plan(BALL, 3)),
        event(2, 1, plan(BALL, 5)),
        event(3, 2, plan(WALK, 1)),
        event(4, 10, answer(2, Reply::Accepted)),
        event(5, 11, answer(1, Reply::Accepted)),
        event(6, 12, answer(3, Reply::Declined)),
    ];
    let story = Story::from_events(events);
    let all = talks(&story, at(20));
    let lines = agreed(&story, &all, DOG, at(20));
    assert_eq!(lines.iter().map(|(w, l)| (*w, l.times)).collect::<Vec<_>>(), [(BALL, 3)]);
    assert!(
        agreed(&story, &all, AnimalId(Uuid::from_u128(31)), at(20)).is_empty(),
        "for the animal it was written for"
    );
    assert!(
        agreed(&story, &talks(&story, at(8 * DAY)), DOG, at(8 * DAY)).is_empty(),
        "and no longer than its last day"
    );
}

#[test]
fn a_change_to_try_says_in_words_what_has_no_name_and_only_that() {
    let change = |question: CaseQuestion, label: Option<&str>, words: Vec<WordId>| {
        let label = label.map(|text| Label::new(text).unwrap());
        let (measure, expected) = (CaseMeasure::OwnPresses, CaseExpected::More);
        event(1, 0, proposal(Proposed::Change { question, label, words, measure, expected })).check()
    };
    assert!(change(CaseQuestion::QuieterButton, None, vec![BALL]).is_ok());
    assert!(change(CaseQuestion::QuieterButton, Some("softer"), vec![]).is_err());
    assert!(change(CaseQuestion::Other, None, vec![]).is_err(), "what is changed?");
    assert!(change(CaseQuestion::Other, Some("a mat"), vec![]).is_ok());
    assert!(change(CaseQuestion::AnotherWord, None, vec![]).is_ok());
    assert!(change(CaseQuestion::AnotherWord, Some("tug"), vec![]).is_ok());
    assert!(change(CaseQuestion::NewPlace, None, vec![BALL, BALL]).is_err());
    let (measure, expected) = (CaseMeasure::OwnPresses, CaseExpected::More);
    let one = Proposed::Change { question: CaseQuestion::NewPlace, label: None, words: vec![BALL], measure, expected };
    assert!(one.takes_sessions() && one.needs_animal() && !one.is_words());
    assert_eq!((one.word(), one.name()), (Some(BALL), "change"));
}

#[test]
fn a_programme_has_bounds_ends_by_itself_and_asks_something_of_people_alone() {
    let course = |weeks: Vec<ProgrammeWeek>| {
        let (programme, name) = (ProgrammeId(Uuid::from_u128(5)), Label::new("First words").unwrap());
        proposal(Proposed::Programme { course: Programme { programme, name, weeks }, first: at(0).day(&Zone::utc()) })
    };
    let week = |aims: Vec<Aim>| ProgrammeWeek { aims, exercise: None };
    let check = |weeks: Vec<ProgrammeWeek>| event(1, 0, course(weeks)).check();
    let shown = Aim::Showings { times: 30 };
    assert!(check(vec![week(vec![shown.clone()])]).is_ok());
    assert!(check(vec![]).is_err());
    assert!(check(vec![week(vec![]); Programme::MOST_WEEKS + 1]).is_err());
    assert!(check(vec![week(vec![shown.clone(), shown.clone()])]).is_err(), "one twice");
    for wrong in [
        Aim::Showings { times: 0 },
        Aim::Invitations { times: Aim::MOST_TIMES + 1 },
        Aim::Sessions { a_day: 0, days: 3 },
        Aim::Sessions { a_day: 2, days: 8 },
    ] {
        assert!(check(vec![week(vec![wrong.clone()])]).is_err(), "{wrong:?}");
    }
    let day = 86_400;
    let story =
        Story::from_events([event(1, 0, course(vec![week(vec![shown]); 2])), event(2, 1, answer(1, Reply::Accepted))]);
    assert_eq!(talks(&story, at(13 * day))[0].standing, Standing::Accepted);
    assert_eq!(talks(&story, at(15 * day))[0].standing, Standing::Ended { accepted: true });
    for (week, aim) in [(0, 1), (1, 0), (13, 1), (1, 9)] {
        assert!(event(3, 0, AimDone { of: id(1), week, aim }).check().is_err(), "{week} {aim}");
    }
}

#[test]
fn words_and_numbers_have_bounds_and_an_empty_note_says_nothing() {
    let check = |body: Proposal| event(1, 0, body).check();
    assert!(check(plan(BALL, 3)).is_ok());
    for times in [0, PlanLine::MOST_TIMES + 1] {
        assert!(check(plan(BALL, times)).is_err());
    }
    let line = PlanLine { word: BALL, way: None, minutes: 3, times: 3 };
    let lines = |lines: Vec<PlanLine>| proposal(Proposed::Plan { lines, last_day: at(0).day(&Zone::utc()) });
    assert!(check(lines(vec![])).is_err());
    assert!(check(lines(vec![line; 2])).is_err());
    let shown = PlanLine { way: Some(PlanWay::Show), ..line };
    assert!(check(lines(vec![line, shown])).is_ok(), "one word in two ways");
    assert!(check(lines(vec![PlanLine { minutes: 16, ..line }])).is_err());
    assert!(check(Proposal { text: None, ..proposal(Proposed::Note { about: None }) }).is_err());
    assert!(check(Proposal { text: None, ..plan(BALL, 3) }).is_ok());
    assert!(ShortNote::new(&"x".repeat(501)).is_err());
    let unsaid = ProposalAnswer { text: None, ..answer(1, Reply::Said) };
    assert!(event(1, 0, unsaid).check().is_err());
    assert!(Event { animal: None, ..event(1, 0, plan(BALL, 3)) }.check().is_err(), "a plan is for one animal");
    assert!(Event { animal: None, ..event(1, 0, proposal(Proposed::Question { about: None })) }.check().is_ok());
}

proptest! {
    /// In whatever order events arrive, and whatever amends them: agreed is only what stands as first written and was accepted
    /// last by an answer that nobody touched.
    #[test]
    fn whatever_is_done_nothing_is_agreed_that_was_not(
        replies in prop::collection::vec((0_u8..3, 0_i64..50), 0..6),
        amended in prop::collection::vec(0_usize..7, 0..4),
        order in any::<prop::sample::Index>(),
    ) {
        let mut events = vec![event(1, 0, plan(BALL, 3))];
        for (n, (reply, second)) in replies.iter().enumerate() {
            let reply = [Reply::Accepted, Reply::Declined, Reply::Said][usize::from(*reply)];
            events.push(event(10 + n as u128, *second, answer(1, reply)));
        }
        let touched: Vec<EventId> = amended.iter().filter_map(|n| events.get(*n)).map(|e| e.id).collect();
        // The plain book.
        let mut answers: Vec<&Event> = events[1..].iter().collect();
        answers.sort_by_key(|e| (e.happened_at, e.id));
        let mut holds = false;
        for e in &answers {
            let Body::ProposalAnswer(a) = &e.body else { continue };
            match a.reply {
                Reply::Accepted if !touched.contains(&e.id) => holds = true,
                Reply::Declined => holds = false,
                Reply::Accepted | Reply::Said => {}
            }
        }
        let holds = holds && !touched.contains(&id(1));
        for (n, of) in touched.iter().enumerate() {
            events.push(event(100 + n as u128, 60, Withdrawal { of: *of, because: None }));
        }
        let turn = order.index(events.len());
        events.rotate_left(turn);
        let story = Story::from_events(events);
        let is = talks(&story, at(100))[0].standing == Standing::Accepted;
        prop_assert_eq!(is, holds);
    }
}
