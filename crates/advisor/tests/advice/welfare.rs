//! Welfare that lasts, and one strong sign that does not speak about every word.

use sayso_advisor::advice::Lasting;
use sayso_advisor::rest::{LEAST_REST_S, rests_until};
use sayso_advisor::today::{Next, Today, today};
use sayso_advisor::{Act, Because, Case, Caution, days, stages};
use sayso_model::{AnimalId, Event, EventId, Moment, Note, Sign, SignLevel, Source, Story, When};
use sayso_sim::{plain_home, simulate};
use uuid::Uuid;

const DAY_S: f64 = 86_400.0;

fn now() -> Moment {
    "2026-11-25T19:30:00Z".parse().unwrap()
}

/// A home without trouble, and signs so many days ago.
fn home(signs: &[(f64, &str)]) -> (Story, AnimalId) {
    let mut home = plain_home(3);
    for word in &mut home.words {
        word.answer = Some(Note::new("Give it.").unwrap());
        word.not_now = Some(Note::new("Later.").unwrap());
    }
    let run = simulate(&home, 3, now()).unwrap();
    let animal = run.truth.ids.animals[0];
    let mut events: Vec<Event> = run.events;
    events.retain(|e| !matches!(e.body, sayso_model::Body::Sign(_)));
    let pattern = events[0].clone();
    for (number, (days, text)) in signs.iter().enumerate() {
        let sign = Sign { sign: Note::new(text).unwrap(), level: SignLevel::Strong, when: When::During, session: None };
        let at = now().plus_seconds(-days * DAY_S);
        let id = EventId(Uuid::from_u128(7_000 + number as u128));
        events.push(Event {
            id,
            animal: Some(animal),
            person: None,
            happened_at: at,
            recorded_at: at,
            source: Source::Tap,
            body: sign.into(),
            ..pattern.clone()
        });
    }
    (Story::from_events(events), animal)
}

fn read(signs: &[(f64, &str)]) -> Today {
    let (story, animal) = home(signs);
    today(&Case::new(&story, animal, now())).unwrap()
}

fn recurring(today: &Today) -> Option<(usize, usize)> {
    today.welfare.iter().flat_map(|a| &a.because).find_map(|r| match r.fact {
        Because::Recurring { weeks, of, .. } => Some((weeks, of)),
        _ => None,
    })
}

#[test]
fn a_growl_stays_at_the_top_for_four_weeks_and_rests_only_its_day() {
    let same_day = read(&[(0.02, "growl")]);
    assert_eq!((&same_day.next, &same_day.welfare[0].act), (&Next::Rest, &Act::GiveSpace));
    for days in [1.0, 6.0, 14.0, 27.0] {
        let later = read(&[(days, "growl")]);
        assert_eq!(later.welfare[0].act, Act::AskAboutThreats, "{days} days on");
        assert_eq!(later.welfare[0].cautions, [Caution::AskBoth], "with whom to ask");
        assert!(later.plan().is_some(), "a session may be held again");
        let events = &later.welfare[0].because[0].events;
        assert_eq!(events, &[EventId(Uuid::from_u128(7_000))], "it names what was seen");
        assert_eq!(recurring(&later), None);
    }
    assert!(read(&[(28.5, "growl")]).welfare.iter().all(|a| a.act != Act::AskAboutThreats), "four weeks without one");
    assert!(read(&[]).welfare.is_empty());
}

#[test]
fn a_strong_sign_rests_its_day_and_twelve_hours_at_the_least() {
    for (days_ago, by_the_hours) in [(0.02, true), (0.5, false)] {
        let (story, animal) = home(&[(days_ago, "growl")]);
        let (zone, seen) = (story.zone(), now().plus_seconds(-days_ago * DAY_S));
        let (midnight, hours) = (seen.day(&zone).plus(1).start(&zone), seen.plus_seconds(LEAST_REST_S));
        assert_eq!(hours > midnight, by_the_hours, "one in the evening, one in the morning");
        let until = midnight.max(hours);
        let at = |moment: Moment| today(&Case::new(&story, animal, moment)).unwrap();
        let resting = at(until.plus_seconds(-1.0));
        assert_eq!(resting.next, Next::Rest, "also after midnight");
        assert_eq!(rests_until(&Case::new(&story, animal, now())), Some(until));
        let said = resting.welfare[0]
            .because
            .iter()
            .any(|r| matches!(r.fact, Because::RestsUntil { until: u, .. } if u == until));
        assert!(said, "it says until when: {:?}", resting.welfare[0].because);
        assert_ne!(at(until).next, Next::Rest);
    }
}

#[test]
fn one_a_week_is_named_as_coming_back_and_two_are_not() {
    assert_eq!(recurring(&read(&[(3.0, "growl"), (10.0, "snap or bite"), (17.0, "growl")])), Some((3, 6)));
    assert_eq!(recurring(&read(&[(3.0, "growl"), (10.0, "growl")])), None);
    assert_eq!(recurring(&read(&[(0.1, "growl"), (20.0, "growl"), (40.0, "growl")])), Some((3, 6)), "also on the day");
}

#[test]
fn guarding_and_swallowing_last_as_well_in_whatever_words() {
    for (text, sign, act) in [
        ("guards food, a thing or the button", Lasting::Guarding, Act::AskAboutGuarding),
        ("swallowed something that is no food", Lasting::Swallowing, Act::AskAboutSwallowing { today: false }),
        ("hat einen Knopf verschluckt", Lasting::Swallowing, Act::AskAboutSwallowing { today: false }),
        ("Gruñe cuando me acerco", Lasting::Threat, Act::AskAboutThreats),
    ] {
        let found = read(&[(9.0, text)]);
        assert_eq!(found.welfare[0].act, act, "{text}");
        assert!(
            matches!(found.welfare[0].because[0].fact, Because::LastingSigns { sign: s, count: 1, .. } if s == sign)
        );
        assert!(!found.welfare[0].cautions.is_empty(), "{text}: whom to ask");
    }
    let today = read(&[(0.02, "swallowed something that is no food"), (5.0, "growl")]);
    assert_eq!(today.welfare[0].act, Act::AskAboutSwallowing { today: true }, "what cannot wait comes first");
    assert!(today.welfare.iter().any(|a| a.act == Act::GiveSpace), "and the growl is not forgotten");
}

#[test]
fn other_strong_signs_rest_the_day_and_are_over_with_it() {
    assert_eq!(read(&[(0.02, "tail tucked, crouching")]).next, Next::Rest);
    assert!(read(&[(1.0, "tail tucked, crouching")]).welfare.is_empty());
    assert_eq!(
        read(&[(1.0, "tail tucked, crouching"), (3.0, "freezes, stares")]).next,
        Next::Rest,
        "two days of a week"
    );
}

/// A sign of every animal, so many days before the records end, as many times as there are numbers.
fn with_signs(mut story: Story, end: Moment, days_ago: &[f64]) -> Story {
    let pattern = story.ledger().all().next().unwrap().clone();
    let animals: Vec<AnimalId> = story.animals().into_keys().collect();
    let seen = animals.into_iter().flat_map(|animal| days_ago.iter().map(move |days| (animal, days)));
    for (number, (animal, days)) in seen.enumerate() {
        let at = end.plus_seconds(-days * DAY_S);
        let sign =
            Sign { sign: Note::new("growl").unwrap(), level: SignLevel::Strong, when: When::During, session: None };
        let id = EventId(Uuid::from_u128(8_000 + number as u128));
        story.add(Event {
            id,
            animal: Some(animal),
            person: None,
            happened_at: at,
            recorded_at: at,
            source: Source::Tap,
            body: sign.into(),
            ..pattern.clone()
        });
    }
    story
}

#[test]
fn a_word_that_rests_names_what_the_card_above_names_as_the_end_of_the_rest() {
    let stories =
        [3, 7, 19].map(|seed| Story::from_events(sayso_sim::demo(seed, now()).events)).into_iter().chain([home(&[]).0]);
    let (mut words, mut ends) = (0, std::collections::BTreeSet::new());
    for story in stories {
        for days_ago in [&[0.02][..], &[0.02, 1.0], &[1.0, 3.0], &[0.02, 5.0]] {
            let story = with_signs(story.clone(), now(), days_ago);
            for animal in story.animals().into_keys() {
                let told = today(&Case::new(&story, animal, now())).unwrap();
                assert_eq!(told.next, Next::Rest, "{days_ago:?}");
                let rests =
                    |a: &&sayso_advisor::Advice| a.because.iter().any(|r| matches!(r.fact, Because::RestsUntil { .. }));
                let card = told.welfare.iter().find(rests).expect("a card says until when");
                for step in &told.steps {
                    assert_eq!(step.advice.would_change, card.would_change, "{days_ago:?}");
                    words += 1;
                }
                ends.insert(format!("{:?}", card.would_change));
            }
        }
    }
    assert!(words > 20 && ends.len() == 2, "{words} words, {ends:?}");
}

#[test]
fn one_growl_does_not_send_every_word_back() {
    let (calm, animal) = home(&[]);
    let (growled, _) = home(&[(0.02, "growl")]);
    let stages = |story: &Story| -> Vec<_> {
        let case = Case::new(story, animal, now());
        stages::standings(&case).iter().map(|s| (s.word, s.stage, s.figures_say)).collect()
    };
    assert_eq!(stages(&calm), stages(&growled));
}

#[test]
fn hours_of_sleep_are_no_finding() {
    let (story, animal) = home(&[]);
    let found = days::days(&Case::new(&story, animal, now()), 42);
    let asleep: Vec<_> = found.rhythm.hours.iter().filter(|b| b.per_day.value.is_none()).map(|b| b.at).collect();
    assert!([1, 2, 3, 4].iter().all(|h| asleep.contains(h)), "nothing is recorded at night: {asleep:?}");
    let told = found.rhythm.outstanding(&found.rhythm.hours);
    assert!(told.iter().all(|b| !asleep.contains(&b.at)), "{told:?}");
    assert!(found.rhythm.hours[18].per_day.value.is_some(), "hours awake keep their rate");
}
