//! What a home answered to its coaches lately: kept beside its lines, so that a desk tells it without a story.

use sayso_model::talks::{Standing, Talk};
use sayso_model::{AccountId, AnimalId, EventId, Moment, Proposed, Reply, WordId};
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;

/// Days for which an answer is kept, and most answers of a home: what is older stands on the page of what was agreed alone.
const DAYS: f64 = 28.0;
const MOST: usize = 24;
const DAY_S: f64 = 86_400.0;

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
    /// Since when the server knows of it: what a phone without a network wrote comes later than it happened.
    pub known: Moment,
}

/// Answers of a home at a moment, the latest first. `earlier` is what was kept before, at which moment.
pub fn answers(all: &[Talk<'_>], now: Moment, earlier: Option<(&[HomeAnswer], Moment)>) -> Vec<HomeAnswer> {
    let before: BTreeMap<EventId, Moment> =
        earlier.iter().flat_map(|(kept, _)| kept.iter()).map(|kept| (kept.answer, kept.known)).collect();
    let known = |id: EventId, at: Moment| match (before.get(&id), earlier) {
        (Some(known), _) => *known,
        // It was not there when the home was last worked out, though it had happened.
        (None, Some((_, worked_out))) if at <= worked_out => now,
        _ => at.min(now),
    };
    let live = all.iter().filter(|talk| talk.standing != Standing::Withdrawn);
    let of_talk = |talk: &Talk<'_>| {
        let (proposal, by, written) = (talk.id(), talk.part.from.account, talk.event.happened_at);
        let (animal, kind, words) = (talk.event.animal, talk.part.proposes.name(), words(&talk.part.proposes));
        let one = |answer: &sayso_model::talks::Answered<'_>| HomeAnswer {
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
            from: answer.part.by.as_ref().map(|by| by.account),
            at: answer.event.happened_at,
            known: known(answer.event.id, answer.event.happened_at),
        };
        talk.answers.iter().map(one).collect::<Vec<_>>()
    };
    let mut found: Vec<HomeAnswer> = live.flat_map(of_talk).collect();
    found.retain(|answer| answer.known > now.plus_seconds(-DAYS * DAY_S));
    found.sort_by_key(|answer| std::cmp::Reverse((answer.known, answer.at, answer.answer)));
    found.truncate(MOST);
    found
}

fn words(what: &Proposed) -> Vec<WordId> {
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
