//! One home's records as rows: what is left when everything that could tell who it was is left out.

use sayso_advisor::observe::{Answered, answered_between};
use sayso_advisor::summary::kinds;
use sayso_model::{
    Accident, AnimalCard, AnimalId, Answer, Brush, Catch, EndReason, Fact, Invitation, InvitationResult, Look, Moment,
    Press, PressedBy, Session, Sign, SignLevel, Stage, StageChoice, Story, WordId, Zone,
};
use std::collections::{BTreeMap, BTreeSet};
use study_cohort::{AgeBand, Animal, By, Kind, Outcome, Row, WordKind};

/// A home's rows, sorted as the table is.
#[derive(Clone, Default, PartialEq, Debug)]
pub struct Household {
    /// Animals that were shown something.
    pub animals: Vec<Animal>,
    /// Their events.
    pub rows: Vec<Row>,
    /// Presses left out because nobody said which animal it was.
    pub of_nobody: u64,
}

/// The rows of a home under its number in the study. Whether it agreed is not asked here.
///
/// An animal that was never shown a word has no first showing to count from, and no rows.
#[must_use]
pub fn household(story: &Story, number: u32) -> Household {
    let (zone, kinds) = (story.zone(), kinds(story));
    let mut all = Household::default();
    // Numbers by the order of ids, which is that of the cards' making.
    for ((animal, card), name) in story.animals().into_iter().zip(0_u8..=u8::MAX) {
        let told = Told { story, animal, zone: &zone, kinds: &kinds };
        if let Some((one, rows)) = told.rows(card, number, name) {
            all.animals.push(one);
            all.rows.extend(rows);
        }
    }
    all.rows.sort_unstable();
    all.of_nobody = story.unassigned::<Press>().count() as u64;
    all
}

/// One animal's part of a story.
struct Told<'a> {
    story: &'a Story,
    animal: AnimalId,
    zone: &'a Zone,
    kinds: &'a BTreeMap<WordId, WordKind>,
}

/// A row before anything is counted from the first showing.
struct Seen {
    at: Moment,
    kind: Kind,
    word: Option<WordId>,
    by: Option<By>,
    outcome: Option<Outcome>,
    joined: Option<bool>,
    seconds: Option<f64>,
}

impl Seen {
    const fn new(at: Moment, kind: Kind, word: Option<WordId>) -> Self {
        Self { at, kind, word, by: None, outcome: None, joined: None, seconds: None }
    }

    fn showing(at: Moment, word: WordId) -> Self {
        Self { by: Some(By::Person), ..Self::new(at, Kind::Showing, Some(word)) }
    }
}

impl Told<'_> {
    fn rows(&self, card: &AnimalCard, household: u32, animal: u8) -> Option<(Animal, Vec<Row>)> {
        let mut seen = self.seen();
        seen.sort_by_key(|s| s.at);
        let zero = seen.iter().find(|s| s.kind == Kind::Showing)?.at;
        let order = order(&seen);
        let row = |s: &Seen| Row {
            word: s.word.and_then(|w| Some((*order.get(&w)?, self.kinds.get(&w).copied().unwrap_or(WordKind::Other)))),
            by: s.by,
            outcome: s.outcome,
            joined: s.joined,
            tenths: s.seconds.map(|seconds| (seconds.max(0.0) * 10.0).round() as u32),
            ..Row::new(household, animal, since(s.at, zero), s.at.hour(self.zone), s.kind)
        };
        let rows: Vec<Row> = seen.iter().map(row).collect();
        let until_s = rows.iter().map(|r| r.at_s).max().unwrap_or(0);
        let age_band = AgeBand::of(card.born, zero.day(self.zone));
        Some((Animal { household, animal, species: card.species.name(), age_band, until_s }, rows))
    }

    fn seen(&self) -> Vec<Seen> {
        let (story, animal) = (self.story, self.animal);
        let (first, last) = (Moment::clamped(i64::MIN), Moment::clamped(i64::MAX));
        let sessions = story.sessions(animal);
        let joined: BTreeSet<_> = sessions.iter().filter(|s| s.joined()).map(Session::id).collect();
        let mut seen: Vec<Seen> = sessions.iter().map(session).collect();
        seen.extend(answered_between(story, animal, (first, last), last).iter().map(press));
        for fact in story.of::<Invitation>(animal) {
            let there = fact.part.session.is_none_or(|session| joined.contains(&session));
            seen.extend(invitation(fact, there));
        }
        for Fact { event, part } in story.of::<Catch>(animal) {
            seen.push(Seen::new(event.happened_at, Kind::Catch, Some(part.word)));
            if part.shown {
                seen.push(Seen::showing(event.happened_at, part.word));
            }
        }
        seen.extend(story.of::<Look>(animal).map(|f| Seen::new(f.at(), Kind::Look, f.part.word)));
        seen.extend(story.of::<Brush>(animal).map(|f| Seen::new(f.at(), Kind::Brush, Some(f.part.word))));
        seen.extend(story.of::<Sign>(animal).map(|f| Seen {
            outcome: Some(match f.part.level {
                SignLevel::Joining => Outcome::Joining,
                SignLevel::Mild => Outcome::Mild,
                SignLevel::Strong => Outcome::Strong,
            }),
            ..Seen::new(f.at(), Kind::Sign, None)
        }));
        seen.extend(story.of::<StageChoice>(animal).map(|f| Seen {
            outcome: Some(match f.part.stage {
                Stage::Prepare => Outcome::Prepare,
                Stage::Show => Outcome::Show,
                Stage::Invite => Outcome::Invite,
                Stage::Converse => Outcome::Converse,
            }),
            ..Seen::new(f.at(), Kind::Stage, Some(f.part.word))
        }));
        seen
    }
}

fn session(session: &Session<'_>) -> Seen {
    let reason = session.end.map(|end| match end.part.reason {
        EndReason::Done => Outcome::Done,
        EndReason::AnimalLeft => Outcome::Left,
        EndReason::StrongSign => Outcome::StrongSign,
        EndReason::ClosingWord => Outcome::ClosingWord,
        EndReason::Interrupted => Outcome::Interrupted,
    });
    Seen {
        outcome: reason,
        joined: Some(session.joined()),
        seconds: session.seconds(),
        ..Seen::new(session.start.at(), Kind::Session, None)
    }
}

/// A person's press that was followed by the thing is a showing; any other press is one.
fn press(answered: &Answered<'_>) -> Seen {
    let part = answered.press.part;
    let by = match part.by {
        PressedBy::Animal => By::Animal,
        PressedBy::Person => By::Person,
        PressedBy::Unknown => By::Unknown,
    };
    let kind = match part.accident {
        _ if by == By::Person && answered.given() => Kind::Showing,
        Accident::Likely => Kind::Stumble,
        Accident::No | Accident::Unsure => Kind::Press,
    };
    let outcome = answered.delivery.map(|delivery| match delivery.part.answer {
        Answer::Given => Outcome::Given,
        Answer::Partly => Outcome::Partly,
        Answer::Declined => Outcome::Declined,
        Answer::Alternative => Outcome::Alternative,
        Answer::Missed => Outcome::Missed,
    });
    Seen { by: Some(by), outcome, seconds: answered.delay_s(), ..Seen::new(answered.press.at(), kind, Some(part.word)) }
}

/// An invitation, and the showing that followed it.
fn invitation(fact: Fact<'_, Invitation>, there: bool) -> impl Iterator<Item = Seen> {
    let part = fact.part;
    let (outcome, seconds) = match &part.result {
        InvitationResult::Pressed { word, after_s } if *word == part.word => (Outcome::Right, *after_s),
        InvitationResult::Pressed { after_s, .. } => (Outcome::Wrong, *after_s),
        InvitationResult::WithoutButton { after_s } => (Outcome::OwnWay, after_s.unwrap_or(part.wait_s)),
        InvitationResult::NothingByWait => (Outcome::Nothing, part.wait_s),
        InvitationResult::Left { after_s } => (Outcome::Left, after_s.unwrap_or(part.wait_s)),
    };
    let joined = if there && outcome != Outcome::Left { part.took } else { Some(false) };
    let invited = Seen {
        outcome: Some(outcome),
        joined,
        seconds: Some(seconds.get()),
        ..Seen::new(fact.at(), Kind::Invitation, Some(part.word))
    };
    let shown = part.shown.then(|| Seen::showing(fact.at().plus_seconds(seconds.get()), part.word));
    std::iter::once(invited).chain(shown)
}

/// The how-manieth word each was: by its first showing, and after those, words never shown by their first row.
fn order(seen: &[Seen]) -> BTreeMap<WordId, u16> {
    let mut order = BTreeMap::new();
    let shown = seen.iter().filter(|s| s.kind == Kind::Showing);
    for word in shown.chain(seen).filter_map(|s| s.word) {
        let next = u16::try_from(order.len()).unwrap_or(u16::MAX);
        order.entry(word).or_insert(next);
    }
    order
}

fn since(at: Moment, zero: Moment) -> i32 {
    // Moments lie within two centuries, which is more seconds than this holds: those at the end are one.
    at.seconds_since(zero).floor() as i32
}
