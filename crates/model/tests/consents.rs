//! Consent opens only by what a person gave, and whatever is unclear closes.
#![allow(clippy::unwrap_used, missing_docs)]

use proptest::prelude::*;
use sayso_model::consents::{consents, last_ended};
use sayso_model::*;
use uuid::Uuid;

const fn to(n: u128) -> Coach {
    Coach::Account { account: AccountId(Uuid::from_u128(n)) }
}

fn at(second: i64) -> Moment {
    Moment::clamped(1_800_000_000_000).plus_seconds(second as f64)
}

fn event(n: u128, second: i64, body: impl Into<Body>) -> Event {
    Event {
        id: EventId(Uuid::from_u128(n)),
        home: HomeId(Uuid::from_u128(1)),
        animal: None,
        person: None,
        happened_at: at(second),
        zone: Zone::utc(),
        recorded_at: at(second),
        source: Source::Tap,
        body: body.into(),
    }
}

fn given(consent: Consent) -> ConsentGiven {
    ConsentGiven { consent, words_version: Consent::WORDS, holds: None }
}

const LOG: Consent = Consent::CoachLog { to: to(7) };

#[test]
fn nothing_is_open_until_given_and_each_purpose_stands_alone() {
    assert_eq!(consents(&Story::default(), at(0)).open().count(), 0);
    let story = Story::from_events([event(1, 10, given(LOG))]);
    assert!(!consents(&story, at(9)).is_open(LOG), "not before it was given");
    let now = consents(&story, at(10));
    assert!(now.is_open(LOG) && now.any_to(to(7)) && !now.any_to(to(8)));
    for other in
        [Consent::CoachFigures { to: to(7) }, Consent::CoachSnippets { to: to(7) }, Consent::CoachLog { to: to(8) }]
    {
        assert!(!now.is_open(other), "{other:?}");
    }
}

#[test]
fn taken_back_it_is_closed_at_once_whatever_the_clocks_say_and_a_new_giving_opens_anew() {
    for clock in [-3_600, 0, 86_400 * 400] {
        let back = ConsentTakenBack { consent: LOG, given: EventId(Uuid::from_u128(1)) };
        let story = Story::from_events([event(1, 10, given(LOG)), event(2, 11 + clock, back)]);
        assert!(!consents(&story, at(12)).is_open(LOG), "clock off by {clock} s");
    }
    let first = [event(1, 10, given(LOG)), event(2, 11, given(LOG))];
    let closing = consents(&Story::from_events(first.clone()), at(12)).closing(LOG);
    assert_eq!(closing.len(), 2, "each giving");
    let taken = closing.into_iter().zip(3..).map(|(back, n)| event(n, 13, back));
    let mut story = Story::from_events(first.into_iter().chain(taken));
    assert!(!consents(&story, at(14)).is_open(LOG));
    story.add(event(9, 20, given(LOG)));
    assert!(consents(&story, at(20)).is_open(LOG));
}

#[test]
fn a_giving_ends_by_its_time_or_when_it_is_taken_back_whichever_comes_first() {
    let log = |consent| consent == LOG;
    let for_a_while = ConsentGiven { holds: Some(Stretch { from: at(10), until: at(200) }), ..given(LOG) };
    let back = ConsentTakenBack { consent: LOG, given: EventId(Uuid::from_u128(1)) };
    let mut story = Story::from_events([event(1, 10, for_a_while)]);
    assert_eq!((last_ended(&story, log, at(199)), last_ended(&story, log, at(300))), (None, Some(at(200))));
    story.add(event(2, 50, back));
    assert_eq!(last_ended(&story, log, at(300)), Some(at(50)), "taken back before its time was over");
    assert_eq!(last_ended(&story, |consent| consent == Consent::Norms, at(300)), None);
    story.add(event(3, 60, given(LOG)));
    story.add(event(4, 90, ConsentTakenBack { consent: LOG, given: EventId(Uuid::from_u128(3)) }));
    assert_eq!(last_ended(&story, log, at(300)), Some(at(90)), "the later of two");
}

#[test]
fn what_was_imported_heard_sent_changed_or_asked_in_unknown_words_opens_nothing() {
    for source in [Source::Import, Source::Heard, Source::Device] {
        let story = Story::from_events([Event { source, ..event(1, 0, given(LOG)) }]);
        assert!(!consents(&story, at(1)).is_open(LOG), "{source:?}");
        // What never opened anything has no end, either.
        let back = ConsentTakenBack { consent: LOG, given: EventId(Uuid::from_u128(1)) };
        let story = Story::from_events([Event { source, ..event(1, 0, given(LOG)) }, event(2, 1, back)]);
        assert_eq!(last_ended(&story, |consent| consent == LOG, at(2)), None, "{source:?}");
    }
    for version in [0, Consent::WORDS + 1] {
        let strange = event(1, 0, ConsentGiven { consent: LOG, words_version: version, holds: None });
        assert!(strange.check().is_err());
        assert!(!consents(&Story::from_events([strange]), at(1)).is_open(LOG));
    }
    let remark = || Remark { text: Note::new("x").unwrap() };
    let of = EventId(Uuid::from_u128(1));
    let to_consent = Correction { of, happened_at: None, animal: None, body: Box::new(given(LOG).into()) };
    // A remark turned into consent; consent turned into wider consent; consent withdrawn.
    let story = Story::from_events([event(1, 0, remark()), event(2, 1, to_consent.clone())]);
    assert_eq!(consents(&story, at(2)).open().count(), 0);
    let story = Story::from_events([event(1, 0, given(Consent::Norms)), event(2, 1, to_consent)]);
    assert_eq!(consents(&story, at(2)).open().count(), 0);
    let story = Story::from_events([event(1, 0, given(LOG)), event(2, 1, Withdrawal { of, because: None })]);
    assert!(!consents(&story, at(2)).is_open(LOG));
}

#[test]
fn what_was_given_for_some_days_is_closed_before_and_after_and_at_its_end() {
    let stretch = Stretch { from: at(10), until: at(20) };
    let story = Story::from_events([event(1, 0, ConsentGiven { holds: Some(stretch), ..given(LOG) })]);
    let open: Vec<i64> = (0..30).filter(|second| consents(&story, at(*second)).is_open(LOG)).collect();
    assert_eq!(open, (10..20).collect::<Vec<_>>());
    assert_eq!(consents(&story, at(10)).open().next().unwrap().1[0].until, Some(at(20)));
    // Taken back before its end, whatever clock says so.
    let back = ConsentTakenBack { consent: LOG, given: EventId(Uuid::from_u128(1)) };
    let story =
        Story::from_events([event(1, 0, ConsentGiven { holds: Some(stretch), ..given(LOG) }), event(2, 40, back)]);
    assert!(!consents(&story, at(15)).is_open(LOG));
    let never = ConsentGiven { holds: Some(Stretch { from: at(20), until: at(20) }), ..given(LOG) };
    assert!(event(1, 0, never).check().is_err());
}

#[test]
fn coaches_of_a_club_read_each_other_only_where_the_words_said_so() {
    let club = ClubId(Uuid::from_u128(5));
    let figures = Consent::CoachFigures { to: Coach::Club { club } };
    let reads = |words_version: u16, consent: Consent| {
        let story = Story::from_events([event(1, 0, ConsentGiven { words_version, ..given(consent) })]);
        consents(&story, at(1)).club_reads(club)
    };
    assert!(!reads(2, figures) && reads(3, figures));
    assert!(!reads(3, Consent::CoachLog { to: Coach::Club { club } }), "the log is another purpose");
    assert!(!reads(3, Consent::CoachFigures { to: Coach::Account { account: AccountId(Uuid::from_u128(5)) } }));
}

#[test]
fn an_undone_taking_back_stays_a_taking_back() {
    let back = ConsentTakenBack { consent: LOG, given: EventId(Uuid::from_u128(1)) };
    let undo = Withdrawal { of: EventId(Uuid::from_u128(2)), because: None };
    let story = Story::from_events([event(1, 10, given(LOG)), event(2, 11, back), event(3, 12, undo)]);
    assert!(!consents(&story, at(13)).is_open(LOG));
}

#[test]
fn only_givings_that_pass_count() {
    let story = Story::from_events([event(1, 0, given(LOG)), event(2, 0, given(Consent::Norms))]);
    let now = consents(&story, at(1)).only(|id| id == EventId(Uuid::from_u128(2)));
    assert!(!now.is_open(LOG) && now.is_open(Consent::Norms));
}

/// Anything that may stand in a log around consent.
fn any_event() -> impl Strategy<Value = (u8, i64, u128, bool)> {
    (0_u8..6, -50_i64..50, 1_u128..12, any::<bool>())
}

fn body(kind: u8, of: u128) -> Body {
    let of = EventId(Uuid::from_u128(of));
    match kind {
        0 => given(LOG).into(),
        1 => ConsentTakenBack { consent: LOG, given: of }.into(),
        2 => Withdrawal { of, because: None }.into(),
        3 => Correction { of, happened_at: Some(at(0)), animal: None, body: Box::new(given(LOG).into()) }.into(),
        4 => given(Consent::Research).into(),
        _ => Remark { text: Note::new("x").unwrap() }.into(),
    }
}

proptest! {
    #[test]
    fn a_log_that_ends_with_taking_back_is_closed_in_any_order(
        mut events in prop::collection::vec(any_event(), 0..14), turn in 0_usize..14,
    ) {
        let made = |(n, (kind, second, of, tap)): (usize, &(u8, i64, u128, bool))| Event {
            source: if *tap { Source::Tap } else { Source::Import },
            ..event(n as u128 + 1, *second, body(*kind, *of))
        };
        let mut log: Vec<Event> = events.iter().enumerate().map(made).collect();
        let open = consents(&Story::from_events(log.clone()), at(60));
        // Open only where a tapped, unchanged first record gave it.
        for (consent, given) in open.open() {
            for open in given {
                let event = log.iter().find(|e| e.id == open.given).unwrap();
                prop_assert_eq!(event.source, Source::Tap);
                prop_assert!(matches!(&event.body, Body::ConsentGiven(g) if g.consent == consent));
                prop_assert!(log.iter().all(|e| e.body.amends() != Some(event.id)));
            }
        }
        let closing: Vec<_> = open.closing(LOG);
        log.extend(closing.into_iter().zip(100..).map(|(back, n)| event(n, 60, back)));
        if !log.is_empty() {
            let by = turn % log.len();
            log.rotate_left(by);
        }
        prop_assert!(!consents(&Story::from_events(log.clone()), at(60)).is_open(LOG));
        let mut added = Story::default();
        for event in log {
            added.add(event);
        }
        prop_assert!(!consents(&added, at(60)).is_open(LOG));
        events.clear();
    }
}
