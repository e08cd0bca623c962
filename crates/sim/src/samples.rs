//! One valid event of every kind, for tests of the wire, the schema, import and export.

// A new kind of event must be decided on here.
#![deny(clippy::wildcard_enum_match_arm)]

use crate::chance::Chance;
use crate::fixed::{label, note, zone};
use crate::pen::{Pen, Seen, uuid_at};
use sayso_model::*;

/// One valid event of every kind, the same at every call, every optional field filled in.
///
/// # Example
/// ```
/// use sayso_model::Kind;
/// let kinds: Vec<Kind> = sayso_sim::samples().iter().map(|e| e.body.kind()).collect();
/// assert_eq!(kinds, Kind::ALL);
/// ```
#[must_use]
pub fn samples() -> Vec<Event> {
    let begin = Moment::clamped(1_780_315_200_000); // 2026-06-01T12:00:00Z
    let mut names = Chance::new(1, 41);
    let mut id = || uuid_at(begin, &mut names);
    let s = Names {
        person: PersonId(id()),
        animal: AnimalId(id()),
        rewards: [RewardId(id()), RewardId(id())],
        words: [WordId(id()), WordId(id())],
        session: SessionId(id()),
        assessment: AssessmentId(id()),
        probe: ProbeId(id()),
        clip: ClipId(id()),
        rule: RuleId(id()),
        round: RoundId(id()),
        swap: SwapId(id()),
        design: DesignId(id()),
    };
    let mut pen = Pen::new(zone("Europe/Lisbon"), begin, begin.plus_seconds(86_400.0), Chance::new(1, 42));
    let (mut at, mut press) = (begin, None);
    let mut events = Vec::new();
    for kind in Kind::ALL {
        at = at.plus_seconds(30.0);
        let seen = Seen {
            animal: Some(s.animal),
            person: Some(s.person),
            at,
            known: at,
            source: if *kind == Kind::Press { Source::Heard } else { Source::Tap },
            lag_s: 0.5,
        };
        let written = pen.write(seen, s.body(*kind, at, press));
        if *kind == Kind::Press {
            press = Some(written);
        }
        events.extend(pen.take());
    }
    events
}

struct Names {
    person: PersonId,
    animal: AnimalId,
    rewards: [RewardId; 2],
    words: [WordId; 2],
    session: SessionId,
    assessment: AssessmentId,
    probe: ProbeId,
    clip: ClipId,
    rule: RuleId,
    round: RoundId,
    swap: SwapId,
    design: DesignId,
}

impl Names {
    /// `press` is the sample press, which comes earlier in the order of kinds than what is about it.
    fn body(&self, kind: Kind, at: Moment, press: Option<EventId>) -> Body {
        let [word, other] = self.words;
        let words = self.words.to_vec();
        let [reward, other_reward] = self.rewards;
        let session = Some(self.session);
        let of = press.unwrap_or(EventId(self.session.0));
        let (trial, s) = (self.design, Seconds::clamped);
        match kind {
            Kind::PersonCard => PersonCard {
                language: Some(Language::Pt),
                clock: Some(Clock::Hours24),
                weight_unit: Some(WeightUnit::Kg),
                ..PersonCard::new(self.person, label("Ilda"), Role::Home)
            }
            .into(),
            Kind::AnimalCard => AnimalCard {
                animal: self.animal,
                name: label("Tarn"),
                species: Species::Dog,
                born: "2022-10-27".parse().ok(),
                born_estimated: true,
                weight_kg: Some(Kilograms::clamped(14.2)),
                adult_weight_kg: Some(Kilograms::clamped(14.2)),
                life_stage: Some(LifeStage::NeuteredAdult),
                day_kcal: Some(Kcal::clamped(800.0)),
                reward_share: Some(Probability::clamped(0.1)),
                limits: Some(note("Deaf on the left side.")),
                cautions: Some(note("Guards chews.\nKeep them away from the board.")),
                active: true,
            }
            .into(),
            Kind::RewardCard => RewardCard {
                reward,
                name: label("dried fish, one bit"),
                kind: RewardKind::Food,
                kcal_per_piece: Some(Kcal::clamped(2.4)),
                grams_per_piece: Some(Grams::clamped(0.8)),
                seconds_to_deliver: Some(Seconds::clamped(4.0)),
                most_per_day: Some(26),
                says: Some(label("snack")),
                already_said: true,
                at_board: Some(true),
                stand_in: Some(label("the jar")),
                animals: vec![self.animal],
                active: true,
            }
            .into(),
            Kind::WordCard => WordCard {
                word,
                says: label("snack"),
                means: Some(note("A bit of dried fish.")),
                answer: Some(note("One bit, from the jar beside the board.")),
                not_now: Some(note("\"Snack is gone\"; show the empty jar.")),
                reward: Some(reward),
                closing: false,
                animals: vec![self.animal],
                active: true,
            }
            .into(),
            Kind::ClipCard => ClipCard {
                clip: self.clip,
                word,
                seconds: Seconds::clamped(0.8),
                sha256: "0123456789abcdef".repeat(4),
                lufs: Some(-21.5),
                active: true,
            }
            .into(),
            Kind::PictureCard => PictureCard {
                shows: PictureOf::Reward { reward },
                picture: Some(Picture {
                    sha256: "fedcba9876543210".repeat(4),
                    media_type: MediaType::Webp,
                    width: 512,
                    height: 384,
                }),
            }
            .into(),
            Kind::BoardLayout => BoardLayout {
                rows: 2,
                columns: 3,
                words: vec![Placed { word, row: 0, column: 0 }, Placed { word: other, row: 1, column: 2 }],
                language: Some(Language::De),
            }
            .into(),
            Kind::HouseRule => HouseRule {
                rule: self.rule,
                word: Some(word),
                text: note("One bit, then the jar is closed."),
                active: true,
            }
            .into(),
            Kind::StageChoice => {
                StageChoice { word, stage: Stage::Invite, because: Some(note("shown 60 times")) }.into()
            }
            Kind::HomeCard => HomeCard { name: label("Orchard Lane"), zone: zone("Europe/Lisbon") }.into(),
            Kind::SessionStart => SessionStart {
                session: self.session,
                purpose: Purpose::Inviting,
                words: vec![word],
                room: Some(label("kitchen")),
            }
            .into(),
            Kind::Joining => Joining { session: self.session, after_s: Some(s(6.5)) }.into(),
            Kind::Leaving => Leaving { session: self.session }.into(),
            Kind::SessionEnd => SessionEnd { session: self.session, reason: EndReason::AnimalLeft }.into(),
            Kind::Press => Press {
                word,
                by: PressedBy::Animal,
                certainty: Probability::clamped(0.97),
                accident: Accident::No,
                place: Some(Place { row: 0, column: 0 }),
                speed: Some(Ratio::clamped(0.99)),
                stream: Some(StreamId(self.session.0)),
                session,
            }
            .into(),
            Kind::Delivery => Delivery {
                answers: press,
                word,
                answer: Answer::Alternative,
                alternative: Some(other_reward),
                delay_s: Some(s(1.8)),
                then: Some(Then::PressedAgain),
                then_word: Some(word),
                session,
            }
            .into(),
            Kind::Look => Look { word: Some(word), session }.into(),
            Kind::Brush => Brush { word, session }.into(),
            Kind::Invitation => Invitation {
                word,
                other: Some(other),
                way: InvitationKind::AskBetweenTwo,
                wait_s: s(5.0),
                result: InvitationResult::Pressed { word, after_s: s(2.3) },
                shown: false,
                took: Some(true),
                session,
                call: Some(Call { round: self.round, number: 1 }),
            }
            .into(),
            Kind::Catch => Catch { word, how: Some(label("stares at the jar")), shown: true, session }.into(),
            Kind::Sign => {
                Sign { sign: note("loose body, soft tail"), level: SignLevel::Joining, when: When::During, session }
                    .into()
            }
            Kind::Feed => Feed {
                reward: Some(reward),
                food: Some(label("dried fish")),
                pieces: Some(1),
                grams: Some(Grams::clamped(0.8)),
                kcal: Kcal::clamped(2.4),
                session,
            }
            .into(),
            Kind::LikesTest => LikesTest {
                assessment: self.assessment,
                format: LikesFormat::FreeAccess,
                rewards: vec![reward, other_reward],
                rounds: 1,
                seed: 7,
            }
            .into(),
            Kind::LikeTrial => LikeTrial {
                assessment: self.assessment,
                format: LikesFormat::FreeAccess,
                round: 1,
                offered: vec![reward, other_reward],
                result: LikeOutcome::Observed {
                    observed_s: Seconds::clamped(300.0),
                    engaged: vec![Engaged { reward, seconds: Seconds::clamped(120.5) }],
                },
            }
            .into(),
            Kind::ProbePlan => ProbePlan {
                probe: self.probe,
                design: ProbeDesign::PressForThing,
                words,
                choices: 2,
                trials: 12,
                seed: 7,
                blind: true,
            }
            .into(),
            Kind::ProbeTrial => ProbeTrial {
                probe: self.probe,
                trial: 1,
                target: word,
                blind: true,
                response: ProbeResponse::Chose { word, after_s: Some(Seconds::clamped(3.1)) },
            }
            .into(),
            Kind::Round => Round { round: self.round, words, calls: draw::CALLS, session }.into(),
            Kind::SwapPlan => SwapPlan { swap: self.swap, words, one_in: draw::ONE_IN, days: 28 }.into(),
            Kind::SwapDraw => {
                let give = if draw::swapped(self.swap, of, draw::ONE_IN) { other } else { word };
                SwapDraw { swap: self.swap, press: of, word, give }.into()
            }
            Kind::SwapStop => SwapStop { swap: self.swap, reason: SwapEnd::Signs }.into(),
            Kind::DesignNote => DesignNote {
                trial,
                point: 3,
                word: Some(word),
                in_force: CaseCondition::Usual,
                because: Some(note("The quiet button had no battery.")),
            }
            .into(),
            Kind::DesignStop => {
                DesignStop { trial, reason: CaseStop::NotKept, because: Some(note("We were away.")) }.into()
            }
            Kind::DesignPlan => DesignPlan {
                trial,
                design: CaseDesign::ChangingCriterion,
                question: CaseQuestion::Other,
                label: Some(label("the jar beside the board")),
                measure: CaseMeasure::DeliveryDelay,
                expected: CaseExpected::Less,
                words,
                animals: Vec::new(),
                unit: CaseUnit::Day,
                first: Moment::clamped(1_780_315_200_000).day(&zone("Europe/Lisbon")),
                points: 24,
                phases: 4,
                least: 5,
                apart: 1,
                criteria: [6.0, 4.0, 2.5].map(Seconds::clamped).to_vec(),
                seed: 7,
                proposal: Some(of),
            }
            .into(),
            Kind::ConsentGiven => ConsentGiven {
                consent: Consent::CoachFigures { to: Coach::Club { club: ClubId(self.session.0) } },
                words_version: Consent::WORDS,
                holds: Some(Stretch { from: at, until: at.plus_seconds(604_800.0) }),
            }
            .into(),
            Kind::ConsentTakenBack => ConsentTakenBack { consent: Consent::Research, given: of }.into(),
            Kind::Proposal => Proposal {
                from: Author { account: AccountId(self.session.0), name: label("Brook") },
                proposes: Proposed::Plan {
                    lines: vec![PlanLine { word, way: Some(PlanWay::Show), minutes: 3, times: 3 }],
                    last_day: at.day(&zone("Europe/Lisbon")).plus(6),
                },
                text: ShortNote::new("Keep it at the board.").ok(),
                takes_up: Some(of),
                club: Some(ClubId(self.session.0)),
            }
            .into(),
            Kind::ProposalAnswer => ProposalAnswer {
                to: of,
                reply: Reply::Said,
                text: ShortNote::new("From Monday on.").ok(),
                by: Some(Author { account: AccountId(self.session.0), name: label("Heron") }),
                rehearsed: Some(Box::new(Rehearsed {
                    exercise: label("showing"),
                    character: label("eager"),
                    figures: vec![
                        RehearsedFigure::Middle {
                            of: RehearsalMeasure::Delay,
                            seconds: Seconds::clamped(1.2),
                            between: Some(SecondsBetween { low: Seconds::clamped(0.8), high: Seconds::clamped(1.9) }),
                            among: 9,
                        },
                        RehearsedFigure::Times { of: RehearsalMeasure::Taken, times: 7, among: 9 },
                    ],
                })),
            }
            .into(),
            Kind::OwnPlan => OwnPlan {
                lines: vec![PlanLine { word, way: None, minutes: 5, times: 2 }],
                last_day: at.day(&zone("Europe/Lisbon")).plus(13),
            }
            .into(),
            Kind::AimDone => AimDone { of, week: 2, aim: 3 }.into(),
            Kind::Correction => Correction {
                of,
                happened_at: Some(at.plus_seconds(-600.0)),
                animal: Some(self.animal),
                body: Box::new(self.body(Kind::Press, at, None)),
            }
            .into(),
            Kind::Withdrawal => Withdrawal { of, because: Some(note("tapped twice")) }.into(),
            Kind::LessonRead => LessonRead { lesson: label("showing"), shown: true }.into(),
            Kind::Remark => Remark { text: note("A visitor rang.\nThe dog went to the door.") }.into(),
        }
    }
}
