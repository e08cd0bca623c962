//! What a home answered to its coaches lately: kept beside its lines, so that a desk tells it without a story.

use sayso_model::talks::{Answered, Standing, Talk};
use sayso_model::{AccountId, AnimalId, EventId, Moment, Proposed, Reply, WordId};
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;

/// Days for which a desk tells an answer, and most answers of a home: what is older stands on the page of what was agreed alone.
const DAYS: f64 = 28.0;
const MOST: usize = 24;
pub const DAY_S: f64 = 86_400.0;
/// Seconds for which what was written or answered is kept; older is news to nobody.
pub const LATELY_S: f64 = 30.0 * DAY_S;

/// Whether something was lately enough to be kept.
pub fn lately(at: Moment, now: Moment) -> bool {
    at > now.plus_seconds(-LATELY_S)
}

/// How a home answered.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum HowAnswered {
    /// It agreed.
    Accepted,
    /// It said no.
    Declined,
    /// In words.
    Said,
    /// By something of a rehearsal.
    Shared,
}

impl HowAnswered {
    /// Its name, for messages.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Accepted => "accepted",
            Self::Declined => "declined",
            Self::Said => "said",
            Self::Shared => "shared",
        }
    }
}

/// An answer of a home to a proposal. Its words are not in it.
#[derive(Clone, PartialEq, Eq, Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct HomeAnswer {
    /// To which proposal.
    pub proposal: EventId,
    /// The account that wrote the proposal.
    pub by: AccountId,
    /// When it wrote it.
    pub written: Moment,
    /// About which animal; none for the home.
    pub animal: Option<AnimalId>,
    /// What was proposed, by its name on the wire.
    pub kind: String,
    /// Words it is about.
    pub words: Vec<WordId>,
    /// The answer.
    pub answer: EventId,
    /// How.
    pub reply: HowAnswered,
    /// The account that answered, where it is no person of the home.
    pub from: Option<AccountId>,
    /// When.
    pub at: Moment,
    /// Whether the proposal was not taken back.
    pub live: bool,
    /// When the desk first had it in the log: what a phone without a network wrote comes later than it happened.
    pub known: Moment,
}

/// Answers that a home gave lately, those first that were known last. `earlier` is what was kept before: all that was given lately is
/// kept, so that what is not there came since. When it happened says nothing of that: coaches looked in between, and a look is preceded
/// by working out what there was ([`super::unread`]).
pub fn answers(all: &[Talk<'_>], now: Moment, earlier: Option<&[HomeAnswer]>) -> Vec<HomeAnswer> {
    let before: BTreeMap<EventId, Moment> =
        earlier.iter().flat_map(|kept| kept.iter()).map(|kept| (kept.answer, kept.known)).collect();
    let known = |id: EventId, at: Moment| match (before.get(&id), earlier) {
        (Some(known), _) => *known,
        (None, Some(_)) => now,
        (None, None) => at.min(now),
    };
    let of_talk = |talk: &Talk<'_>| {
        let (proposal, by, written) = (talk.id(), talk.part.from.account, talk.event.happened_at);
        let (animal, kind, words) = (talk.event.animal, talk.part.proposes.name(), words(&talk.part.proposes));
        let one = |answer: &Answered<'_>| HomeAnswer {
            proposal,
            by,
            written,
            animal,
            kind: kind.to_owned(),
            words: words.clone(),
            answer: answer.event.id,
            reply: match answer.part.reply {
                Reply::Accepted => HowAnswered::Accepted,
                Reply::Declined => HowAnswered::Declined,
                Reply::Said if answer.part.rehearsed.is_some() => HowAnswered::Shared,
                Reply::Said => HowAnswered::Said,
            },
            live: talk.standing != Standing::Withdrawn,
            from: answer.part.by.as_ref().map(|by| by.account),
            at: answer.event.happened_at,
            known: known(answer.event.id, answer.event.happened_at),
        };
        talk.answers.iter().filter(|a| lately(a.event.happened_at, now)).map(one).collect::<Vec<_>>()
    };
    let mut found: Vec<HomeAnswer> = all.iter().flat_map(of_talk).collect();
    found.sort_by_key(|answer| std::cmp::Reverse((answer.known, answer.at, answer.answer)));
    found
}

/// What of answers a desk tells at the moment at which they were worked out, the latest first.
pub fn told(all: &[HomeAnswer], worked_out: Moment) -> impl Iterator<Item = &HomeAnswer> {
    let from = worked_out.plus_seconds(-DAYS * DAY_S);
    all.iter().filter(move |answer| answer.live && answer.known > from).take(MOST)
}

/// Words that a proposal is about.
pub fn words(what: &Proposed) -> Vec<WordId> {
    match what {
        Proposed::Plan { lines, .. } => lines.iter().map(|line| line.word).collect(),
        Proposed::Stage { word, .. } | Proposed::Check { word } => vec![*word],
        Proposed::Change { words, .. } => words.clone(),
        Proposed::Word { .. }
        | Proposed::Likes
        | Proposed::Note { .. }
        | Proposed::Question { .. }
        | Proposed::Meeting { .. }
        | Proposed::Programme { .. }
        | Proposed::HandOver { .. }
        | Proposed::Cover { .. }
        | Proposed::Practice { .. } => Vec::new(),
    }
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;
    use crate::desk::kept::Kept;
    use sayso_model::{
        AnimalCard, Author, Body, Event, HomeId, Label, Proposal, ProposalAnswer, Source, Species, Story, Zone,
    };
    use uuid::Uuid;

    const DOG: AnimalId = AnimalId(Uuid::from_u128(30));

    fn at(day: f64) -> Moment {
        Moment::clamped(1_772_442_000_000).plus_seconds(day * DAY_S)
    }

    fn event(n: u128, day: f64, body: impl Into<Body>) -> Event {
        Event {
            id: EventId(Uuid::from_u128(n)),
            home: HomeId(Uuid::from_u128(1)),
            animal: Some(DOG),
            person: None,
            happened_at: at(day),
            zone: Zone::utc(),
            recorded_at: at(day),
            source: Source::Tap,
            body: body.into(),
        }
    }

    /// A note of a coach, with an answer a day.
    fn answered(days: &[f64]) -> Vec<Event> {
        let from = Author { account: AccountId(Uuid::from_u128(7)), name: Label::new("Brook").unwrap() };
        let note = Proposed::Note { about: None };
        let note = Proposal { from, proposes: note, text: None, takes_up: None, club: None };
        let mut all =
            vec![event(1, 0.0, AnimalCard::new(DOG, Label::new("Tarn").unwrap(), Species::Dog)), event(2, 0.0, note)];
        let answer = ProposalAnswer {
            to: EventId(Uuid::from_u128(2)),
            reply: Reply::Said,
            text: None,
            by: None,
            rehearsed: None,
        };
        all.extend(days.iter().enumerate().map(|(i, day)| event(10 + i as u128, *day, answer.clone())));
        all
    }

    fn told(kept: &Kept) -> usize {
        kept.told_answers().count()
    }

    #[test]
    fn an_answer_that_is_no_news_any_more_does_not_become_news_again() {
        let story = Story::from_events(answered(&[0.5]));
        let mut kept = Kept::of(&story, at(1.0), None);
        assert_eq!(told(&kept), 1);
        for (day, news) in [(20.0, 1), (28.0, 1), (29.0, 0), (30.0, 0), (31.0, 0), (45.0, 0)] {
            kept = Kept::of(&story, at(day), Some(&kept));
            assert_eq!(told(&kept), news, "on day {day}");
        }
        // Of more than are told, the rest does not come after them.
        let days: Vec<f64> = (0..30).map(|i| 0.5 + f64::from(i) / 100.0).collect();
        let story = Story::from_events(answered(&days));
        let first = Kept::of(&story, at(1.0), None);
        let again = Kept::of(&story, at(2.0), Some(&first));
        let known = |kept: &Kept| kept.told_answers().map(|a| (a.answer, a.known)).collect::<Vec<_>>();
        assert_eq!((told(&first), known(&again)), (MOST, known(&first)));
    }

    #[test]
    fn what_came_late_is_known_since_it_came() {
        let before = Kept::of(&Story::from_events(answered(&[0.5])), at(3.0), None);
        let kept = Kept::of(&Story::from_events(answered(&[0.5, 1.0])), at(4.0), Some(&before));
        let late = kept.told_answers().next().unwrap();
        assert_eq!((late.at, late.known), (at(1.0), at(4.0)));
        // Also what happened after the home was last worked out: somebody may have looked before it came.
        let kept = Kept::of(&Story::from_events(answered(&[0.5, 1.0, 4.5])), at(6.0), Some(&kept));
        let late = kept.told_answers().next().unwrap();
        assert_eq!((late.at, late.known), (at(4.5), at(6.0)));
    }

    #[test]
    fn what_came_late_to_a_home_without_an_animal_is_known_since_it_came() {
        let nobody = |days: &[f64]| Story::from_events(answered(days).into_iter().skip(1).collect::<Vec<_>>());
        let before = Kept::of(&nobody(&[]), at(3.0), None);
        let mut kept = Kept::of(&nobody(&[1.0]), at(4.0), Some(&before));
        assert!(kept.animals.is_empty());
        let late = kept.told_answers().next().unwrap();
        assert_eq!((late.at, late.known), (at(1.0), at(4.0)));
        // And is no news any more in the end.
        for (day, news) in [(29.0, 1), (33.0, 0)] {
            kept = Kept::of(&nobody(&[1.0]), at(day), Some(&kept));
            assert_eq!(told(&kept), news, "on day {day}");
        }
    }
}
