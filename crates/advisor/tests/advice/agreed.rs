//! What the log has of an agreed plan, counted: no more than is there, and a day without a record is no day of not doing it.

use sayso_advisor::agreed::doing;
use sayso_advisor::plan::SoFar;
use sayso_advisor::stuck::{Bearing, Cause, differential};
use sayso_advisor::today::{Next, today};
use sayso_advisor::{Because, Case};
use sayso_model::*;
use uuid::Uuid;

const DOG: AnimalId = AnimalId(Uuid::from_u128(30));
const BALL: WordId = WordId(Uuid::from_u128(40));
const WALK: WordId = WordId(Uuid::from_u128(41));
const HOUR: f64 = 3_600.0;

/// Noon of the day on which it was agreed.
fn agreed_at() -> Moment {
    "2026-03-02T12:00:00Z".parse().unwrap()
}

/// Hours after noon of that day.
fn at(hours: f64) -> Moment {
    agreed_at().plus_seconds(hours * HOUR)
}

struct Log(Vec<Event>);

impl Log {
    fn new() -> Self {
        let mut log = Self(Vec::new());
        let label = |text: &str| Label::new(text).unwrap();
        log.put(-900.0, AnimalCard::new(DOG, label("Tarn"), Species::Dog));
        log.put(-900.0, WordCard::new(BALL, label("ball")));
        log.put(-900.0, WordCard::new(WALK, label("walk")));
        log
    }

    fn put(&mut self, hours: f64, body: impl Into<Body>) -> EventId {
        let id = EventId(Uuid::from_u128(1_000 + self.0.len() as u128));
        self.0.push(Event {
            id,
            home: HomeId(Uuid::from_u128(1)),
            animal: Some(DOG),
            person: None,
            happened_at: at(hours),
            zone: Zone::utc(),
            recorded_at: at(hours),
            source: Source::Tap,
            body: body.into(),
        });
        id
    }

    /// A person presses, and gives.
    fn shows(&mut self, hours: f64, word: WordId, session: Option<SessionId>) {
        let press = self.put(
            hours,
            Press {
                word,
                by: PressedBy::Person,
                certainty: Probability::clamped(1.0),
                accident: Accident::No,
                place: None,
                speed: None,
                stream: None,
                session,
            },
        );
        let delivery = Delivery {
            answers: Some(press),
            word,
            answer: Answer::Given,
            alternative: None,
            delay_s: None,
            then: Some(Then::Took),
            then_word: None,
            session,
        };
        self.put(hours + 0.001, delivery);
    }

    fn invites(&mut self, hours: f64, way: InvitationKind, pressed: bool) {
        let result = if pressed {
            InvitationResult::Pressed { word: BALL, after_s: Seconds::clamped(2.0) }
        } else {
            InvitationResult::NothingByWait
        };
        let (other, wait_s) = ((way == InvitationKind::AskBetweenTwo).then_some(WALK), Seconds::clamped(5.0));
        let took = Some(true);
        self.put(
            hours,
            Invitation { word: BALL, other, way, wait_s, result, shown: false, took, session: None, call: None },
        );
    }

    fn session(&mut self, n: u128, from: f64, minutes: Option<f64>) -> SessionId {
        let session = SessionId(Uuid::from_u128(n));
        self.put(from, SessionStart { session, purpose: Purpose::Showing, words: vec![BALL], room: None });
        if let Some(minutes) = minutes {
            self.put(from + minutes / 60.0, SessionEnd { session, reason: EndReason::Done });
        }
        session
    }

    fn story(&self) -> Story {
        Story::from_events(self.0.clone())
    }
}

fn line(way: Option<PlanWay>) -> PlanLine {
    PlanLine { word: BALL, way, minutes: 3, times: 3 }
}

fn last_day() -> Day {
    agreed_at().day(&Zone::utc()).plus(6)
}

#[test]
fn days_times_sessions_and_minutes_are_those_of_the_log_since_the_agreement() {
    let mut log = Log::new();
    log.shows(-1.0, BALL, None); // before it was agreed, on the same day
    let first = log.session(1, 2.0, Some(3.0));
    log.shows(2.01, BALL, Some(first));
    log.shows(2.02, BALL, Some(first));
    let second = log.session(2, 26.0, None);
    log.shows(26.01, BALL, Some(second));
    log.shows(26.02, WALK, Some(second)); // another word
    log.put(50.0, Remark { text: Note::new("It slept.").unwrap() }); // the third day has a record, but none of it
    let answer = ProposalAnswer {
        to: EventId(Uuid::nil()),
        reply: Reply::Said,
        text: ShortNote::new("x").ok(),
        by: None,
        rehearsed: None,
    };
    log.put(74.0, answer); // on the fourth nothing was noted of the animal
    log.shows(24.0 * 8.0, BALL, None); // after the last day
    let story = log.story();
    let of =
        |hours: f64| doing(&Case::new(&story, DOG, at(hours)), &[line(Some(PlanWay::Show))], agreed_at(), last_day());
    // On the fifth day, on which nothing is noted yet.
    let found = of(24.0 * 4.0);
    assert_eq!((found.days, found.no_record), (4, 1));
    let kept = &found.lines[0];
    assert_eq!((kept.word.says.as_str(), kept.times, kept.on_days), ("ball", 3, 2));
    assert_eq!((kept.sessions, kept.timed, kept.seconds.round()), (2, 1, 180.0));
    assert_eq!(found.kept, 2, "days on which the one line was worked on");
    // A day keeps a plan of two words where each was worked on.
    let both = [line(Some(PlanWay::Show)), PlanLine { word: WALK, ..line(Some(PlanWay::Show)) }];
    let found = doing(&Case::new(&story, DOG, at(24.0 * 4.0)), &both, agreed_at(), last_day());
    assert_eq!((found.lines[0].on_days, found.lines[1].on_days, found.kept), (2, 1, 1));
    // Long after: seven days, of which three more are without a record.
    let found = of(24.0 * 20.0);
    assert_eq!((found.days, found.no_record, found.lines[0].times), (7, 4, 3));
    // Just agreed: no day has passed, and none is held against anyone.
    let found = of(0.1);
    assert_eq!((found.days, found.no_record, found.lines[0].times), (0, 0, 0));
    // Today is a day as soon as there is something of it.
    assert_eq!(of(2.5).days, 1);
}

#[test]
fn a_line_counts_its_own_way_and_one_without_a_way_counts_all() {
    let mut log = Log::new();
    log.shows(1.0, BALL, None);
    log.invites(2.0, InvitationKind::OfferInView, true);
    log.invites(3.0, InvitationKind::OfferInView, false);
    log.invites(4.0, InvitationKind::AskBetweenTwo, true);
    let story = log.story();
    let case = Case::new(&story, DOG, at(6.0));
    let ways = [
        None,
        Some(PlanWay::Show),
        Some(PlanWay::OfferInView),
        Some(PlanWay::AskAndPoint),
        Some(PlanWay::AskBetweenTwo),
    ];
    let found = doing(&case, &ways.map(line), agreed_at(), last_day());
    assert_eq!(found.lines.iter().map(|l| l.times).collect::<Vec<_>>(), [4, 1, 2, 0, 1]);
}

#[test]
fn figures_before_and_since_do_not_share_a_record() {
    let mut log = Log::new();
    for n in 1..=6 {
        log.invites(-24.0 * f64::from(n), InvitationKind::OfferInView, n <= 2);
    }
    log.invites(-24.0 * 40.0, InvitationKind::OfferInView, true); // too long ago to be set beside
    for n in 1..=7 {
        log.invites(f64::from(n), InvitationKind::OfferInView, n <= 5);
    }
    let story = log.story();
    let found = doing(&Case::new(&story, DOG, at(20.0)), &[line(None)], agreed_at(), last_day());
    let (before, since) = &found.lines[0].pressed;
    assert_eq!((before.n, since.n), (6, 7));
    assert!((before.value.unwrap() - 2.0 / 6.0).abs() < 1e-12 && (since.value.unwrap() - 5.0 / 7.0).abs() < 1e-12);
    let (before, since) = &found.lines[0].right;
    assert_eq!((before.n, since.n), (2, 5), "presses alone");
}

#[test]
fn how_far_showing_is_stands_in_the_plan_until_it_is_enough() {
    let so_far = |times: usize| {
        let mut log = Log::new();
        let reward = RewardCard::new(RewardId(Uuid::from_u128(50)), Label::new("ball").unwrap(), RewardKind::Play);
        let mut card = WordCard::new(BALL, Label::new("ball").unwrap());
        (card.reward, card.answer) = (Some(reward.reward), Some(Note::new("Throw it.").unwrap()));
        log.put(-800.0, reward);
        log.put(-800.0, card);
        (0..times).for_each(|i| log.shows(24.0 * (i / 5) as f64 + 0.1 * (i % 5) as f64, BALL, None));
        let story = log.story();
        let found = today(&Case::new(&story, DOG, at(24.0 * 8.0))).unwrap();
        let Next::Session { plan } = found.next else { panic!("{:?}", found.next) };
        plan.words.iter().find(|w| w.word.word == BALL).map(|w| w.so_far)
    };
    assert_eq!(so_far(12), Some(Some(SoFar { shown: 12, of: 20 })));
    assert_eq!(so_far(20), Some(None));
}

#[test]
fn minutes_of_showing_are_no_rate_a_day() {
    let too_little = |hours: f64| {
        let mut log = Log::new();
        log.shows(0.0, BALL, None);
        let story = log.story();
        let all = differential(&Case::new(&story, DOG, at(hours)), BALL);
        all.into_iter().find(|w| w.cause == Cause::TooLittle).unwrap()
    };
    let young = too_little(0.1);
    assert_eq!((young.bearing, young.evidence), (Bearing::Unknown, vec![Because::TooFewDays]));
    // Once shown and then left alone for a week is too little, and said with its rate.
    let old = too_little(24.0 * 7.0);
    assert!(old.bearing == Bearing::For && matches!(old.evidence[..], [Because::ShowingsADay { .. }]), "{old:?}");
}
