//! A story is the same whatever the order in which its events come, and what it reads quickly is what reading all of it
//! would give.
#![allow(clippy::unwrap_used)]

use proptest::prelude::*;
use sayso_model::*;
use std::cmp::Reverse;
use uuid::Uuid;

fn animal(n: u8) -> Option<AnimalId> {
    (n > 0).then(|| AnimalId(Uuid::from_u128(u128::from(n))))
}

/// Times close enough that presses are told twice and events share a moment.
fn moment(tick: u16) -> Moment {
    Moment::clamped(1_800_000_000_000 + i64::from(tick) * 400)
}

fn body(kind: u8, word: u8) -> Body {
    match kind {
        0 => Remark { text: Note::new("seen").unwrap() }.into(),
        1 => Look { word: None, session: None }.into(),
        _ => Press {
            word: WordId(Uuid::from_u128(u128::from(word))),
            by: PressedBy::Unknown,
            certainty: Probability::clamped(1.0),
            accident: Accident::Unsure,
            place: None,
            speed: None,
            stream: (kind > 2).then(|| StreamId(Uuid::from_u128(u128::from(kind)))),
            session: None,
        }
        .into(),
    }
}

prop_compose! {
    fn an_event(n: u128, many: u128)(
        (kind, word, who, to) in (0u8..6, 0u8..2, 0u8..3, 0u8..3),
        (tick, moved, recorded) in (0u16..60, 0u16..60, 0u16..9),
        of in 0..many,
        (amends, heard, stranger) in (0u8..10, any::<bool>(), 0u8..20),
    ) -> Event {
        let of = EventId(Uuid::from_u128(of));
        let body = match amends {
            0 => Withdrawal { of, because: None }.into(),
            1 | 2 => Correction {
                of,
                happened_at: (moved % 2 == 0).then(|| moment(moved)),
                animal: animal(to),
                body: Box::new(body(kind, word)),
            }
            .into(),
            _ => body(kind, word),
        };
        Event {
            id: EventId(Uuid::from_u128(n)),
            home: HomeId(Uuid::from_u128(if stranger == 0 { 9 } else { 7 })),
            animal: animal(who),
            person: None,
            happened_at: moment(tick),
            zone: Zone::utc(),
            recorded_at: moment(recorded),
            source: if heard { Source::Heard } else { Source::Tap },
            body,
        }
    }
}

fn events() -> impl Strategy<Value = Vec<Event>> {
    let all = |many: u128| (0..many).map(|n| an_event(n, many + 2)).collect::<Vec<_>>();
    (1u128..320).prop_flat_map(all).prop_shuffle()
}

/// All that a story tells.
fn told(story: &Story) -> Vec<Vec<Event>> {
    let own = |all: &mut dyn Iterator<Item = &Event>| all.cloned().collect::<Vec<_>>();
    let mut told = vec![
        own(&mut story.ledger().all()),
        own(&mut story.everyones::<Press>().map(|f| f.event)),
        own(&mut story.everyones::<Look>().map(|f| f.event)),
        own(&mut story.everyones::<Remark>().map(|f| f.event)),
        own(&mut story.heard_presses().map(|f| f.event)),
        own(&mut story.unassigned::<Press>().map(|f| f.event)),
        own(&mut story.ahead(moment(0)).into_iter()),
    ];
    for animal in [1, 2].map(|n| animal(n).unwrap()) {
        told.push(own(&mut story.newest(Some(animal), 25).into_iter()));
        told.push(own(&mut story.records_before(animal, None)));
        told.push(own(&mut story.of::<Press>(animal).rev().map(|f| f.event)));
    }
    told
}

/// The marks of the weeks around every moment of these tests.
fn marks(story: &Story) -> u64 {
    let week = Week::of(moment(0));
    story.mark_of_weeks(week.plus(-1)..=week.plus(1))
}

#[test]
fn an_amendment_of_an_amendment_leaves_no_mark_in_whatever_order_they_come() {
    let event = |n, body: Body| Event {
        id: EventId(Uuid::from_u128(n)),
        home: HomeId(Uuid::from_u128(7)),
        animal: animal(1),
        person: None,
        happened_at: moment(0),
        zone: Zone::utc(),
        recorded_at: moment(n as u16),
        source: Source::Tap,
        body,
    };
    let back = |n| Withdrawal { of: EventId(Uuid::from_u128(n)), because: None }.into();
    let chain = [event(1, body(0, 0)), event(2, back(1)), event(3, back(2)), event(4, back(3))];
    let whole = marks(&Story::from_events(chain.clone()));
    for order in [[0, 1, 2, 3], [3, 2, 1, 0], [2, 0, 3, 1], [1, 3, 0, 2]] {
        let mut story = Story::default();
        for n in order {
            story.add(chain[n].clone());
        }
        assert_eq!(marks(&story), whole, "{order:?}");
    }
}

/// First records about an animal or about none, read from all there are.
fn records(story: &Story, animal: AnimalId) -> Vec<&Event> {
    let ours = |e: &Event| e.animal.is_none_or(|l| l == animal);
    let first = story.ledger().all().filter(|e| e.body.amends().is_none());
    let mut all: Vec<&Event> =
        first.filter(|e| ours(e) || story.ledger().standing(e.id).is_some_and(|s| ours(&s))).collect();
    all.sort_by_key(|e| Reverse((e.happened_at, e.id)));
    all
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(200))]

    #[test]
    fn one_by_one_and_in_any_order_it_tells_the_same(events in events(), cut in 0usize..320) {
        let mut sorted = events.clone();
        sorted.sort_by_key(|e| e.id);
        let whole = told(&Story::from_events(sorted));
        prop_assert_eq!(&told(&Story::from_events(events.clone())), &whole);
        // Some at once, the rest one by one.
        let cut = cut.min(events.len());
        let mut story = Story::from_events(events[..cut].iter().cloned());
        let (begun, before) = (story.clone(), told(&story));
        for event in &events[cut..] {
            prop_assert_eq!(story.add(event.clone()), Inserted::New);
            prop_assert_eq!(story.add(event.clone()), Inserted::Duplicate);
        }
        prop_assert_eq!(&told(&story), &whole);
        prop_assert_eq!(marks(&story), marks(&Story::from_events(events.clone())));
        prop_assert_eq!(told(&begun), before, "a copy stays as it was");
    }

    #[test]
    fn reading_from_a_place_is_reading_a_part_of_all(events in events(), tick in 0u16..60, id in 0u128..320) {
        let story = Story::from_events(events);
        let (at, to) = ((moment(tick), EventId(Uuid::from_u128(id))), moment(tick).plus_seconds(8.0));
        for animal in [1, 2].map(|n| animal(n).unwrap()) {
            let all = records(&story, animal);
            let before: Vec<&Event> = all.iter().copied().filter(|e| (e.happened_at, e.id) < at).collect();
            prop_assert_eq!(story.records_before(animal, Some(at)).collect::<Vec<_>>(), before);
            let from: Vec<&Event> = all.iter().rev().copied().filter(|e| (e.happened_at, e.id) >= at).collect();
            prop_assert_eq!(story.records_from(animal, at).collect::<Vec<_>>(), from);
            let within = |e: &Event| (at.0..to).contains(&e.happened_at);
            let between: Vec<EventId> = story.between::<Press>(animal, at.0, to).map(|f| f.id()).collect();
            let presses = story.of::<Press>(animal).filter(|f| (at.0..=to).contains(&f.at())).map(|f| f.id());
            prop_assert_eq!(between, presses.collect::<Vec<_>>());
            let mut standing: Vec<&Event> = story.newest(Some(animal), usize::MAX);
            standing.retain(|e| within(e));
            standing.reverse();
            prop_assert_eq!(story.all_between(animal, at.0, to).collect::<Vec<_>>(), standing);
        }
    }
}
