//! A session that still runs: it may yet be joined, so no share of sessions joined counts it.

use sayso_advisor::{Case, days, readiness, stages, today};
use sayso_model::{
    AnimalId, Body, EndReason, Event, EventId, Joining, Moment, Purpose, SessionEnd, SessionId, SessionStart, Source,
    Story, session::OPEN_FOR_S,
};
use sayso_sim::{plain_home, simulate};
use uuid::Uuid;

const SESSION: SessionId = SessionId(Uuid::from_u128(9_000));

fn now() -> Moment {
    "2026-11-25T19:30:00Z".parse().unwrap()
}

/// A home, and what happened in one more session, in seconds from now.
fn home(more: &[(f64, Body)]) -> (Story, AnimalId) {
    let run = simulate(&plain_home(3), 3, now()).unwrap();
    let animal = run.truth.ids.animals[0];
    let mut events: Vec<Event> = run.events;
    let pattern = events[0].clone();
    for (number, (seconds, body)) in more.iter().enumerate() {
        let at = now().plus_seconds(*seconds);
        events.push(Event {
            id: EventId(Uuid::from_u128(9_001 + number as u128)),
            animal: Some(animal),
            person: None,
            happened_at: at,
            recorded_at: at,
            source: Source::Tap,
            body: body.clone(),
            ..pattern.clone()
        });
    }
    (Story::from_events(events), animal)
}

/// Joined and all: of four weeks, of the last row of days; sessions in the fit of readiness; the share on Today.
fn counted(story: &Story, animal: AnimalId, at: Moment) -> ((usize, usize), (usize, usize), usize, usize) {
    let case = Case::new(story, animal, at);
    let days = days::days(&case, 28).days;
    let row = days.last().unwrap();
    let fitted = readiness::readiness(&case).map_or(0, |r| r.by_session.len());
    let joining = today::today(&case).unwrap().joining.n;
    (stages::joining_recent(&case), (row.joined, row.sessions), fitted, joining)
}

#[test]
fn no_share_joined_counts_a_session_before_it_is_over() {
    let start = SessionStart { session: SESSION, purpose: Purpose::Showing, words: Vec::new(), room: None };
    let begun = (-60.0, start.into());
    let (story, animal) = home(&[]);
    let without = counted(&story, animal, now());
    let (story, _) = home(std::slice::from_ref(&begun));
    assert_eq!(counted(&story, animal, now()), without, "it runs");
    let old = now().plus_seconds(OPEN_FOR_S);
    let ((joined, all), ..) = counted(&story, animal, old);
    let (story, _) = home(&[]);
    let ((joined_without, all_without), ..) = counted(&story, animal, old);
    assert_eq!((joined, all), (joined_without, all_without + 1), "an hour has passed: nobody joined");

    let joining = Joining { session: SESSION, after_s: None };
    let end = SessionEnd { session: SESSION, reason: EndReason::Done };
    let (story, _) = home(&[begun.clone(), (-30.0, joining.clone().into())]);
    assert_eq!(counted(&story, animal, now()), without, "joined, and it runs");
    let (story, _) = home(&[begun, (-30.0, joining.into()), (-10.0, end.into())]);
    let ((joined, all), (row_joined, row_all), fitted, share) = counted(&story, animal, now());
    let ((joined_was, all_was), (row_joined_was, row_all_was), fitted_was, share_was) = without;
    assert_eq!((joined, all, share), (joined_was + 1, all_was + 1, share_was + 1), "ended");
    assert_eq!((row_joined, row_all), (row_joined_was + 1, row_all_was + 1));
    assert!(fitted == fitted_was + 1 || fitted == 60, "{fitted} of {fitted_was}");
}
