//! Homes of which every event is written by a test.

use sayso_advisor::Case;
use sayso_advisor::claims::{Claims, claims};
use sayso_methods::understanding::ladder::Rung;
use sayso_model::order::order;
use sayso_model::{
    AnimalId, Body, Call, Event, EventId, HomeId, Invitation, InvitationKind, InvitationResult, Label, Moment,
    ProbeDesign, ProbeId, ProbePlan, ProbeResponse, ProbeTrial, RewardCard, RewardId, RewardKind, Round, RoundId,
    Seconds, Source, Story, WordCard, WordId, Zone, draw,
};
use serde_json::json;
use uuid::Uuid;

pub const ANIMAL: AnimalId = AnimalId(Uuid::from_u128(7));

fn begin() -> Moment {
    "2026-01-05T08:00:00Z".parse().unwrap()
}

pub fn word(n: usize) -> WordId {
    WordId(Uuid::from_u128(100 + n as u128))
}

pub fn words(n: usize) -> Vec<WordId> {
    (0..n).map(word).collect()
}

/// Writes events one after another, a minute apart unless told otherwise.
pub struct Log {
    pub events: Vec<Event>,
    pub at: Moment,
    next: u128,
    dice: u64,
}

impl Log {
    /// A household with so many words, each with its reward.
    pub fn with(words: usize) -> Self {
        let mut log = Self { events: Vec::new(), at: begin(), next: 1, dice: 9 };
        for n in 0..words {
            let reward = RewardId(Uuid::from_u128(200 + n as u128));
            let label = |s: &str| Label::new(&format!("{s}{n}")).unwrap();
            let card: RewardCard = serde_json::from_value(json!({
                "reward": reward, "name": label("thing"), "reward_kind": RewardKind::Play,
            }))
            .unwrap();
            log.write(card);
            let card: WordCard = serde_json::from_value(
                json!({ "word": word(n), "says": label("word"), "reward": reward, "answer": "Give it." }),
            )
            .unwrap();
            log.write(card);
        }
        log
    }

    /// Ids are random as those of devices are, but follow from a count.
    pub fn id(&mut self) -> Uuid {
        self.next += 1;
        let mut z = self.next.wrapping_mul(0x9E37_79B9_7F4A_7C15_F39C_C060_5CED_C834);
        z ^= z >> 61;
        Uuid::from_u128(z.wrapping_mul(0xBF58_476D_1CE4_E5B9_94D0_49BB_1331_11EB))
    }

    pub fn below(&mut self, n: usize) -> usize {
        self.dice = self.dice.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        (self.dice >> 33) as usize % n
    }

    pub fn write(&mut self, body: impl Into<Body>) -> EventId {
        self.at = self.at.plus_seconds(60.0);
        let id = EventId(self.id());
        let body = body.into();
        let about = !matches!(body, Body::WordCard(_) | Body::RewardCard(_));
        self.events.push(Event {
            id,
            home: HomeId(Uuid::from_u128(1)),
            animal: about.then_some(ANIMAL),
            person: None,
            happened_at: self.at,
            zone: Zone::utc(),
            recorded_at: self.at,
            source: Source::Tap,
            body,
        });
        id
    }

    pub fn plan(&mut self, design: ProbeDesign, words: usize, trials: u16) -> ProbePlan {
        let probe = ProbeId(self.id());
        let seed = self.below(1 << 30) as u32;
        let plan = ProbePlan { probe, design, words: self::words(words), choices: 2, trials, seed, blind: true };
        self.write(plan.clone());
        plan
    }

    /// One trial of a plan, right or wrong.
    pub fn trial(&mut self, plan: &ProbePlan, number: u16, right: bool) -> EventId {
        let planned = &order(plan).unwrap()[usize::from(number) - 1];
        let other = planned.laid_out.iter().copied().find(|w| *w != planned.word).unwrap();
        let word = if right { planned.word } else { other };
        let response = ProbeResponse::Chose { word, after_s: None };
        self.write(ProbeTrial { probe: plan.probe, trial: number, target: planned.word, blind: true, response })
    }

    /// A round in which `press` tells what is pressed when a word is called; none leaves the round there.
    pub fn round(&mut self, words: usize, mut press: impl FnMut(&mut Self, usize) -> Option<usize>) {
        let round = RoundId(self.id());
        let to_hand = self::words(words);
        self.write(Round { round, words: to_hand.clone(), calls: draw::CALLS, session: None });
        for number in 1..=draw::CALLS {
            let called = draw::called(round, number, &to_hand).unwrap();
            let at = to_hand.iter().position(|w| *w == called).unwrap();
            let Some(pressed) = press(self, at) else { return };
            self.invite(called, word(pressed), Some(Call { round, number }));
        }
    }

    pub fn invite(&mut self, word: WordId, pressed: WordId, call: Option<Call>) -> EventId {
        let seconds = |s| Seconds::new(s).unwrap();
        self.write(Invitation {
            word,
            other: None,
            way: InvitationKind::OfferInView,
            wait_s: seconds(5.0),
            result: InvitationResult::Pressed { word: pressed, after_s: seconds(2.0) },
            shown: false,
            took: Some(true),
            session: None,
            call,
        })
    }

    pub fn read(&self) -> Claims {
        let story = Story::from_events(self.events.clone());
        claims(&Case::new(&story, ANIMAL, self.at.plus_seconds(7_200.0))).unwrap()
    }
}

pub fn top(claims: &Claims) -> bool {
    claims.words.iter().any(|c| c.rung() == Rung::StandsUpToBlindCheck)
}
