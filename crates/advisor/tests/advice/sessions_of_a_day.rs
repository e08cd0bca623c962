//! After a session: what was held is told, and the next one waits for a later hour or another day.

use sayso_advisor::plan::LengthFrom;
use sayso_advisor::today::{Next, Today, today};
use sayso_advisor::{Act, Case};
use sayso_model::{
    AnimalId, Event, EventId, LikeTrial, Moment, Note, Press, PressedBy, Sign, SignLevel, Source, Story, When,
};
use uuid::Uuid;

const DAY_S: f64 = 86_400.0;

fn now() -> Moment {
    "2026-11-25T19:30:00Z".parse().unwrap()
}

fn events() -> Vec<Event> {
    sayso_sim::demo(7, now()).events
}

fn at(story: &Story, animal: AnimalId, now: Moment) -> Today {
    today(&Case::new(story, animal, now)).unwrap()
}

/// A minute after the end of each session of the last two weeks of every animal, what was told then.
fn after_sessions(story: &Story) -> Vec<(AnimalId, Moment, Today)> {
    let mut all = Vec::new();
    for animal in story.animals().into_keys() {
        for session in story.sessions(animal) {
            let Some(end) = session.end.map(|end| end.at().plus_seconds(60.0)) else { continue };
            if now().seconds_since(end) < 14.0 * DAY_S && end <= now() {
                all.push((animal, end, at(story, animal, end)));
            }
        }
    }
    all
}

#[test]
fn what_was_held_today_is_told_with_its_showings_and_its_end() {
    let story = Story::from_events(events());
    let mut seen = 0;
    for (animal, now, told) in after_sessions(&story) {
        let zone = story.zone();
        let of_today: Vec<_> = story
            .sessions(animal)
            .into_iter()
            .filter(|s| s.start.at().day(&zone) == now.day(&zone) && s.start.at() <= now)
            .map(|s| s.id())
            .collect();
        let shown = story.of::<Press>(animal).filter(|p| {
            p.at() <= now && p.part.by == PressedBy::Person && p.part.session.is_some_and(|s| of_today.contains(&s))
        });
        let held = told.held.expect("a session is over");
        assert_eq!((held.sessions, held.showings), (of_today.len(), shown.count()), "{animal} at {now}");
        assert!(held.ended <= now && now.seconds_since(held.ended) < 120.0, "{held:?} at {now}");
        seen += 1;
    }
    assert!(seen > 10, "{seen}");
    let animal = *story.animals().keys().next().unwrap();
    let morning = now().day(&story.zone()).start(&story.zone());
    assert_eq!(at(&story, animal, morning).held, None, "a new day begins without");
}

#[test]
fn no_session_follows_at_once_and_the_usual_number_is_enough() {
    let story = Story::from_events(events());
    let (mut later, mut enough) = (0, 0);
    for (animal, now, told) in after_sessions(&story) {
        let Some(plan) = told.plan().cloned() else { continue };
        assert!((1..=3).contains(&plan.a_day), "{plan:?}");
        let held = told.held.unwrap();
        match &told.next {
            Next::Pause { until: None, .. } => enough += 1,
            Next::Pause { until: Some(until), .. } => {
                assert!(held.sessions < plan.a_day, "{held:?} of {}", plan.a_day);
                assert!(until.seconds_since(held.ended) >= 2.0 * 3600.0, "a rest before {until}");
                assert_eq!(until.day(&story.zone()), now.day(&story.zone()));
                // As it was known then: what came after it is taken away.
                let known = Story::from_events(events().into_iter().filter(|e| e.happened_at <= now));
                let before = at(&known, animal, until.plus_seconds(-60.0));
                assert!(
                    matches!(before.next, Next::Pause { .. }),
                    "not before {until}: {:?} {:?}",
                    before.held,
                    before.next
                );
                let then = at(&known, animal, *until);
                assert!(matches!(then.next, Next::Session { .. }), "{until}: {:?}", then.next);
                later += 1;
            }
            other => panic!("after a session: {other:?}"),
        }
        if held.sessions >= plan.a_day {
            assert!(matches!(told.next, Next::Pause { until: None, .. }));
        }
        assert!(!matches!(plan.minutes_from, LengthFrom::QuarterLeft { timed: 0, .. }));
    }
    assert!(later > 0 && enough > 0, "{later} later, {enough} enough");
}

/// The demo without likes tests, so that one is due, with a growl so many days ago.
fn growled(days: Option<f64>) -> Vec<Today> {
    let mut events = events();
    events.retain(|e| !matches!(e.body, sayso_model::Body::LikeTrial(LikeTrial { .. }) | sayso_model::Body::Sign(_)));
    let story = Story::from_events(events.iter().cloned());
    let animals: Vec<AnimalId> = story.animals().into_keys().collect();
    for (n, animal) in animals.iter().enumerate() {
        let Some(days) = days else { continue };
        let sign =
            Sign { sign: Note::new("growl").unwrap(), level: SignLevel::Strong, when: When::During, session: None };
        let at = now().plus_seconds(-days * DAY_S);
        events.push(Event {
            id: EventId(Uuid::from_u128(9_000 + n as u128)),
            animal: Some(*animal),
            person: None,
            happened_at: at,
            recorded_at: at,
            source: Source::Tap,
            body: sign.into(),
            ..events[0].clone()
        });
    }
    let story = Story::from_events(events);
    animals.iter().map(|animal| at(&story, *animal, now())).collect()
}

const fn needs_the_animal(act: &Act) -> bool {
    matches!(act, Act::TestLikes | Act::RetestLikes | Act::PlanCheck { .. } | Act::GoOnWithCheck { .. })
}

#[test]
fn nothing_that_needs_the_animal_is_offered_on_a_day_of_rest_nor_on_the_day_after() {
    let offers = |all: &[Today]| all.iter().filter(|t| t.advice().any(|a| needs_the_animal(&a.act))).count();
    let calm = growled(None);
    assert_eq!(offers(&calm), calm.len(), "a likes test is due for each");
    for days in [0.02, 1.0] {
        let rested = growled(Some(days));
        assert_eq!(offers(&rested), 0, "{days} days after a growl: {:?}", rested[0].later);
        assert!(rested.iter().all(|t| !t.welfare.is_empty()));
    }
    assert_eq!(offers(&growled(Some(3.0))), calm.len(), "three days on it is offered again");
}
