//! At which speeds each button is listened for.
#![allow(clippy::unwrap_used, missing_docs)]

use sayso_listen::Speeds;
use sayso_model::{
    Accident, Body, ClipCard, ClipId, Event, EventId, HomeId, Moment, Press, PressedBy, Probability, Ratio, Seconds,
    Source, Story, WordId, Zone,
};
use sayso_notebook::speeds;
use uuid::Uuid;

const DAY_S: f64 = 86_400.0;

fn now() -> Moment {
    "2026-03-20T18:00:00Z".parse().unwrap()
}

fn event(n: u128, source: Source, days_ago: f64, body: impl Into<Body>) -> Event {
    let at = now().plus_seconds(-days_ago * DAY_S);
    Event {
        id: EventId(Uuid::from_u128(n)),
        home: HomeId(Uuid::from_u128(1)),
        animal: None,
        person: None,
        happened_at: at,
        zone: Zone::utc(),
        recorded_at: at,
        source,
        body: body.into(),
    }
}

const fn word(n: u128) -> WordId {
    WordId(Uuid::from_u128(n))
}

const fn clip(n: u128) -> ClipId {
    ClipId(Uuid::from_u128(n))
}

fn recorded(n: u128, of: u128, days_ago: f64) -> Event {
    let seconds = Seconds::new(0.8).unwrap();
    let card = ClipCard { clip: clip(n), word: word(of), seconds, sha256: "0".repeat(64), lufs: None, active: true };
    event(1_000 + n, Source::Tap, days_ago, card)
}

fn heard(n: u128, of: u128, days_ago: f64, speed: f64) -> Event {
    let press = Press {
        word: word(of),
        by: PressedBy::Unknown,
        certainty: Probability::clamped(0.98),
        accident: Accident::Unsure,
        place: None,
        speed: Some(Ratio::new(speed).unwrap()),
        stream: None,
        session: None,
    };
    event(n, Source::Heard, days_ago, press)
}

fn of_first(events: Vec<Event>) -> Speeds {
    speeds(&Story::from_events(events), now())[&clip(1)]
}

#[test]
fn a_new_recording_is_listened_for_at_the_usual_speeds_and_a_silent_button_at_all() {
    assert_eq!(of_first(vec![recorded(1, 5, 2.0)]), Speeds::USUAL);
    assert_eq!(of_first(vec![recorded(1, 5, 20.0)]), Speeds::WIDE);
    assert_eq!(of_first(vec![recorded(1, 5, 60.0), heard(1, 5, 30.0, 0.97)]), Speeds::WIDE, "silent for a month");
}

#[test]
fn a_button_that_was_heard_is_listened_for_around_its_own_speed() {
    let presses = (0..6).map(|i| heard(i, 5, 1.0 + 0.1 * i as f64, 0.965));
    let own = of_first(std::iter::once(recorded(1, 5, 60.0)).chain(presses).collect());
    assert!(own.low() > 0.95 && own.low() < 0.965 && own.high() > 0.965 && own.high() < 0.98, "{own:?}");
}

#[test]
fn presses_from_before_a_recording_and_of_other_words_tell_nothing_of_it() {
    let before = (0..6).map(|i| heard(i, 5, 5.0, 0.91)).chain((6..12).map(|i| heard(i, 6, 1.0, 0.91)));
    assert_eq!(of_first(std::iter::once(recorded(1, 5, 2.0)).chain(before).collect()), Speeds::USUAL);
}

#[test]
fn of_several_buttons_of_one_word_a_press_does_not_say_which_sounded() {
    let presses = (0..6).map(|i| heard(i, 5, 1.0, 0.965));
    let both = [recorded(1, 5, 60.0), recorded(2, 5, 60.0)];
    assert_eq!(of_first(both.into_iter().chain(presses).collect()), Speeds::USUAL);
}
