//! What a calendar holds: what was agreed and has a day, no more, and nothing to be done while sessions rest.
#![allow(clippy::unwrap_used, clippy::panic, missing_docs)]

use sayso_advisor::calendar::{What, entries};
use sayso_model::talks::talks;
use sayso_model::*;
use uuid::Uuid;

const DOG: AnimalId = AnimalId(Uuid::from_u128(30));
const BALL: WordId = WordId(Uuid::from_u128(40));
const WALK: WordId = WordId(Uuid::from_u128(41));

fn now() -> Moment {
    "2026-03-20T20:00:00Z".parse().unwrap()
}

fn today() -> Day {
    now().day(&Zone::utc())
}

struct Log(Vec<Event>);

impl Log {
    fn new() -> Self {
        let mut log = Self(Vec::new());
        let label = |text: &str| Label::new(text).unwrap();
        log.put(60.0, AnimalCard::new(DOG, label("Tarn"), Species::Dog));
        log.put(60.0, WordCard::new(BALL, label("ball")));
        log.put(60.0, WordCard::new(WALK, label("walk")));
        log
    }

    /// So many days before now.
    fn put(&mut self, days: f64, body: impl Into<Body>) -> EventId {
        let (id, at) = (EventId(Uuid::from_u128(1_000 + self.0.len() as u128)), now().plus_seconds(-86_400.0 * days));
        self.0.push(Event {
            id,
            home: HomeId(Uuid::from_u128(1)),
            animal: Some(DOG),
            person: None,
            happened_at: at,
            zone: Zone::utc(),
            recorded_at: at,
            source: Source::Tap,
            body: body.into(),
        });
        id
    }

    fn proposes(&mut self, days: f64, proposes: Proposed, reply: Option<Reply>) -> EventId {
        let from = Author { account: AccountId(Uuid::from_u128(7)), name: Label::new("Brook").unwrap() };
        let to = self.put(days, Proposal { from, proposes, text: None, takes_up: None });
        if let Some(reply) = reply {
            self.put(days - 0.1, ProposalAnswer { to, reply, text: None });
        }
        to
    }

    /// What the calendar holds, as short lines.
    fn told(&self) -> Vec<String> {
        let story = Story::from_events(self.0.clone());
        let all = talks(&story, now());
        let day = |day: &Day| day.days_since(today());
        let told = entries(&story, &all, now()).into_iter().map(|entry| match entry.what {
            What::Meeting { minutes, agreed, .. } => format!("meeting {minutes} {agreed}"),
            What::Plan { from, lines, first, last } => {
                let words: Vec<_> = lines.iter().map(|l| if l.word == BALL { "ball" } else { "walk" }).collect();
                format!(
                    "{} {} {} {}",
                    if from.is_some() { "plan" } else { "own" },
                    words.join("+"),
                    day(&first),
                    day(&last)
                )
            }
            What::GoOnWithCheck { done, of, .. } => format!("check {done}/{of}"),
            What::PlanCheck { word, .. } => format!("check {}", word.says),
        });
        told.collect()
    }
}

fn lines(words: &[WordId]) -> Vec<PlanLine> {
    words.iter().map(|word| PlanLine { word: *word, way: None, minutes: 3, times: 3 }).collect()
}

fn plan(words: &[WordId], last: i32) -> Proposed {
    Proposed::Plan { lines: lines(words), last_day: today().plus(last) }
}

fn meeting(days: f64, minutes: u16) -> Proposed {
    Proposed::Meeting { starts_at: now().plus_seconds(86_400.0 * days), minutes }
}

#[test]
fn meetings_that_nobody_declined_and_that_are_not_long_over() {
    let mut log = Log::new();
    log.proposes(3.0, meeting(2.0, 10), None);
    log.proposes(3.0, meeting(2.0, 20), Some(Reply::Accepted));
    log.proposes(3.0, meeting(2.0, 30), Some(Reply::Declined));
    log.proposes(9.0, meeting(-5.0, 40), None);
    log.proposes(9.0, meeting(-5.0, 50), Some(Reply::Accepted));
    log.proposes(50.0, meeting(-40.0, 60), Some(Reply::Accepted));
    let back = log.proposes(3.0, meeting(2.0, 70), Some(Reply::Accepted));
    log.put(1.0, Withdrawal { of: back, because: None });
    let mut told = log.told();
    told.sort();
    assert_eq!(told, ["meeting 10 false", "meeting 20 true", "meeting 50 true"]);
}

#[test]
fn plans_that_hold_with_the_lines_in_force() {
    let mut log = Log::new();
    log.proposes(5.0, plan(&[BALL], 4), None);
    assert!(log.told().is_empty(), "nobody agreed");
    log.proposes(5.0, plan(&[BALL, WALK], 4), Some(Reply::Accepted));
    log.proposes(8.0, plan(&[BALL], -1), Some(Reply::Accepted));
    assert_eq!(log.told(), ["plan ball+walk -5 4"]);
    log.put(2.0, OwnPlan { lines: vec![PlanLine { times: 1, ..lines(&[BALL])[0] }], last_day: today().plus(9) });
    assert_eq!(log.told(), ["plan walk -5 4", "own ball -2 9"], "of two plans for a word the later is in force");
}

#[test]
fn a_check_that_was_agreed_until_it_is_planned() {
    let mut log = Log::new();
    log.proposes(5.0, Proposed::Check { word: BALL }, Some(Reply::Accepted));
    assert_eq!(log.told(), ["check ball"]);
    let probe = ProbeId(Uuid::from_u128(70));
    let words = vec![BALL, WALK];
    let (design, blind) = (ProbeDesign::PickForWord, true);
    log.put(1.0, ProbePlan { probe, design, words, trials: 12, choices: 2, blind, seed: 1 });
    assert!(log.told().is_empty());
}

#[test]
fn while_sessions_rest_nothing_is_to_be_done_before_they_may_be_held_again() {
    let mut log = Log::new();
    log.proposes(5.0, plan(&[BALL], 4), Some(Reply::Accepted));
    log.proposes(5.0, plan(&[WALK], 0), Some(Reply::Accepted));
    log.proposes(5.0, Proposed::Check { word: BALL }, Some(Reply::Accepted));
    log.proposes(5.0, meeting(2.0, 10), Some(Reply::Accepted));
    assert_eq!(log.told().len(), 4);
    let sign = Note::new("growl").unwrap();
    log.put(0.1, Sign { sign, level: SignLevel::Strong, when: When::During, session: None });
    let told = log.told();
    assert_eq!(told[0], "meeting 10 true", "to talk is always possible");
    assert!(
        told.len() <= 2 && told.iter().skip(1).all(|t| t.starts_with("plan ball") && !t.contains(" -")),
        "{told:?}"
    );
    assert!(told.iter().all(|t| !t.starts_with("plan ball 0")), "not today: {told:?}");
}
