//! What heard presses tell about the buttons themselves: said with count and chance, and only when there is something.

use sayso_advisor::buttons::{advice, buttons};
use sayso_advisor::{Act, Advice, Because, Caution, Change, Topic, today};
use sayso_advisor::{Case, Sums};
use sayso_model::{
    Accident, AnimalCard, AnimalId, Body, ClipCard, ClipId, Event, EventId, HomeCard, HomeId, Label, Moment, Press,
    PressedBy, Probability, Ratio, Seconds, Source, Story, Withdrawal, WordCard, WordId, Zone,
};
use uuid::Uuid;

const WORDS: [&str; 4] = ["ball", "walk", "bed", "water"];
const DAY: f64 = 86_400.0;

fn word(w: usize) -> WordId {
    WordId(Uuid::from_u128(100 + w as u128))
}

fn began() -> Moment {
    "2026-10-01T08:00:00Z".parse().unwrap()
}

fn animal() -> AnimalId {
    AnimalId(Uuid::from_u128(7))
}

/// A household whose four words are listened for, and presses told by word, day, speed.
struct Home {
    events: Vec<Event>,
}

impl Home {
    fn new() -> Self {
        let mut home = Self { events: Vec::new() };
        home.add(began(), Source::Tap, HomeCard { name: Label::new("Mill House").unwrap(), zone: Zone::utc() });
        let card: AnimalCard = serde_json::from_value(serde_json::json!({
            "animal": animal(), "name": "Pip", "species": "dog", "active": true
        }))
        .unwrap();
        home.add(began(), Source::Tap, card);
        for (w, says) in WORDS.iter().enumerate() {
            home.add(began(), Source::Tap, WordCard::new(word(w), Label::new(says).unwrap()));
            home.record(w, began());
        }
        home
    }

    fn add(&mut self, at: Moment, source: Source, body: impl Into<Body>) -> EventId {
        let id = EventId(Uuid::from_u128(1000 + self.events.len() as u128));
        self.events.push(Event {
            id,
            home: HomeId(Uuid::from_u128(1)),
            animal: None,
            person: None,
            happened_at: at,
            zone: Zone::utc(),
            recorded_at: at,
            source,
            body: body.into(),
        });
        id
    }

    fn record(&mut self, w: usize, at: Moment) {
        let clip = ClipId(Uuid::from_u128(self.events.len() as u128));
        let seconds = Seconds::new(0.8).unwrap();
        self.add(
            at,
            Source::Tap,
            ClipCard { clip, word: word(w), seconds, sha256: "0".repeat(64), lufs: None, active: true },
        );
    }

    fn press(&mut self, w: usize, day: f64, speed: f64, source: Source) -> EventId {
        let press = Press {
            word: word(w),
            by: PressedBy::Unknown,
            certainty: Probability::new(0.99).unwrap(),
            accident: Accident::Unsure,
            place: None,
            speed: (source == Source::Heard).then(|| Ratio::new(speed).unwrap()),
            stream: None,
            session: None,
        };
        self.add(began().plus_seconds(day * DAY), source, press)
    }

    /// Every word twice a day over these days, at steady speeds of their own, but for those left out.
    fn days(&mut self, days: std::ops::Range<u32>, but: &[usize]) {
        for d in days {
            for w in (0..WORDS.len()).filter(|w| !but.contains(w)) {
                for k in 0..2 {
                    let wobble = f64::from((3 * d + 5 * k + w as u32) % 5) * 0.001 - 0.002;
                    self.press(
                        w,
                        f64::from(d) + 0.1 + 0.3 * f64::from(k),
                        0.98 + 0.01 * w as f64 + wobble,
                        Source::Heard,
                    );
                }
            }
        }
    }

    fn story(&self) -> Story {
        Story::from_events(self.events.clone())
    }
}

fn at(day: f64) -> Moment {
    began().plus_seconds(day * DAY)
}

fn facts(advice: &Advice) -> Vec<&Because> {
    advice.because.iter().map(|r| &r.fact).collect()
}

#[test]
fn steady_buttons_in_use_bring_no_advice() {
    let mut home = Home::new();
    home.days(0..20, &[]);
    assert!(advice(&home.story(), None, at(20.0), &Sums::default()).is_empty());
    assert!(advice(&Home::new().story(), None, at(20.0), &Sums::default()).is_empty(), "nobody listens");
}

#[test]
fn a_word_that_fell_silent_is_named_with_since_when_and_count() {
    let mut home = Home::new();
    home.days(0..10, &[]);
    home.days(10..20, &[1]);
    let story = home.story();
    let found = advice(&story, Some(animal()), at(20.0), &Sums::default());
    let [one] = found.as_slice() else { panic!("{found:#?}") };
    assert!(one.topic == Topic::SetUp && one.word == Some(word(1)));
    assert!(matches!(&one.act, Act::CheckSilent { words } if words[0].says == "walk"));
    let Because::Silent { last_on, days, others, before, .. } = facts(one)[0] else { panic!("{one:#?}") };
    assert_eq!((last_on.unwrap().to_string().as_str(), days.round(), *others), ("2026-10-10", 10.0, 60));
    assert_eq!(before.unwrap().n, 20, "the rate before is told with its count");
    assert!(one.would_change == [Change::HeardAgain] && one.cautions == [Caution::Battery]);
    let day = today::today(&Case::new(&story, animal(), at(20.0))).unwrap();
    let step = day.steps.iter().find(|s| s.word.word == word(1)).unwrap();
    assert!(step.advice == *one || step.also.contains(one), "it stands on the page Today: {step:#?}");
    // Noted by hand meanwhile: it sounds, but otherwise than its recording.
    home.press(1, 15.0, 1.0, Source::Tap);
    let noted = advice(&home.story(), None, at(20.0), &Sums::default());
    assert!(facts(&noted[0]).iter().any(|f| matches!(f, Because::NotedByHand { times: 1, .. })));
    // Heard again: no more to say. Nor after a month without listening.
    assert!(advice(&story, None, at(50.0), &Sums::default()).is_empty());
    home.press(1, 19.9, 0.99, Source::Heard);
    assert!(advice(&home.story(), None, at(20.0), &Sums::default()).is_empty());
}

#[test]
fn a_word_never_heard_is_said_with_little_certainty_and_a_new_one_is_not() {
    let mut home = Home::new();
    home.days(0..10, &[2]);
    let found = advice(&home.story(), None, at(10.0), &Sums::default());
    let Because::Silent { last_on, days, .. } = facts(&found[0])[0] else { panic!("{found:#?}") };
    assert_eq!((*last_on, days.round()), (None, 9.0), "not heard since it is listened for");
    assert_eq!(found[0].sure, sayso_advisor::Sure::Little);
    // Recorded anew two days ago: its former silence says nothing of the new recording.
    home.record(2, at(8.0));
    assert!(advice(&home.story(), None, at(10.0), &Sums::default()).is_empty());
}

#[test]
fn a_slowing_button_is_named_alone_and_its_new_recording_ends_it() {
    let mut home = Home::new();
    home.days(0..20, &[3]);
    let mut last = None;
    for d in 0..20 {
        last = Some(home.press(3, f64::from(d) + 0.2, 1.01 - 0.001 * f64::from(d), Source::Heard));
    }
    let found = buttons(&home.story(), at(20.0), &Sums::default());
    assert_eq!(found.tired.iter().map(|b| b.says.as_str()).collect::<Vec<_>>(), ["water"]);
    let found = advice(&home.story(), None, at(20.0), &Sums::default());
    let [one] = found.as_slice() else { panic!("{found:#?}") };
    assert!(matches!(&one.act, Act::CheckBatteries { words } if words[0].says == "water"), "{one:?}");
    let Because::Slowing { by, .. } = facts(one)[0] else { panic!("{one:#?}") };
    assert!((by.value.unwrap() - 0.019).abs() < 0.0005 && by.n == 20, "{by:?}");
    assert_eq!(one.because[0].events.first(), last.as_ref(), "the newest press is linked");
    assert_eq!(one.cautions, [Caution::Battery]);
    // Presses taken back no longer count.
    let heard: Vec<EventId> = home
        .events
        .iter()
        .filter(|e| e.body.word() == Some(word(3)) && e.source == Source::Heard)
        .map(|e| e.id)
        .collect();
    let mut taken_back = Home { events: home.events.clone() };
    for of in heard {
        taken_back.add(at(20.0), Source::Tap, Withdrawal { of, because: None });
    }
    assert!(buttons(&taken_back.story(), at(20.0), &Sums::default()).tired.is_empty());
    home.record(3, at(20.0));
    assert!(buttons(&home.story(), at(20.0), &Sums::default()).tired.is_empty());
}
