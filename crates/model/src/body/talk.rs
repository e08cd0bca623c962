//! What a coach proposes to a home or asks it, what the home answers, and what it plans of its own.

use super::enums::{CaseExpected, CaseMeasure, CaseQuestion, DaysChart, FigurePage, Reply, WordChart};
use super::plan::{PlanLine, check_lines};
use super::practice::{Practice, Rehearsed};
use super::programme::Programme;
use crate::event::{About, Content, Does};
use crate::fault::Fault;
use crate::findings::Findings;
use crate::id::*;
use crate::stage::Stage;
use crate::text::{Label, ShortNote, TextError};
use crate::time::{Day, Moment};
use borsh::{BorshDeserialize, BorshSerialize};
use serde::{Deserialize, Serialize};
use std::collections::BTreeSet;

/// Whose words these are: a coach belongs to no home, and an account may be erased, so the name of that day is written down.
#[derive(Clone, PartialEq, Eq, Debug, Serialize, Deserialize, BorshSerialize, BorshDeserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Author {
    /// The account.
    pub account: AccountId,
    /// What it was called then.
    pub name: Label,
}

/// What a note or question is about.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Serialize, Deserialize, BorshSerialize, BorshDeserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(tag = "of", rename_all = "snake_case", deny_unknown_fields)]
pub enum TalkAbout {
    /// A word.
    Word {
        /// Which.
        word: WordId,
    },
    /// A stretch at the board.
    Session {
        /// Which.
        session: SessionId,
    },
    /// What a page of figures shows.
    Page {
        /// Which.
        page: FigurePage,
    },
    /// A chart of a word's evidence.
    WordChart {
        /// Which word.
        word: WordId,
        /// Which chart.
        chart: WordChart,
    },
    /// A chart of the page Days.
    DaysChart {
        /// Which.
        chart: DaysChart,
    },
}

impl TalkAbout {
    /// The word, where it is about one.
    #[must_use]
    pub const fn word(&self) -> Option<WordId> {
        match self {
            Self::Word { word } | Self::WordChart { word, .. } => Some(*word),
            Self::Session { .. } | Self::Page { .. } | Self::DaysChart { .. } => None,
        }
    }
}

/// What is proposed, noted or asked.
#[derive(Clone, PartialEq, Eq, Debug, Serialize, Deserialize, BorshSerialize, BorshDeserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(tag = "what", rename_all = "snake_case", deny_unknown_fields)]
pub enum Proposed {
    /// A plan for some days.
    Plan {
        /// Word by word.
        lines: Vec<PlanLine>,
        /// Its last day.
        last_day: Day,
    },
    /// A stage for a word.
    Stage {
        /// Which word.
        word: WordId,
        /// The stage.
        stage: Stage,
    },
    /// A word to add.
    Word {
        /// What it would say.
        says: Label,
    },
    /// A likes test.
    Likes,
    /// A check of understanding.
    Check {
        /// Of which word.
        word: WordId,
    },
    /// A note.
    Note {
        /// About what, if not the whole.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        about: Option<TalkAbout>,
    },
    /// A question.
    Question {
        /// About what, if not the whole.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        about: Option<TalkAbout>,
    },
    /// A meeting, in person or by telephone.
    Meeting {
        /// When it begins.
        starts_at: Moment,
        /// How long it is, in minutes.
        minutes: u16,
    },
    /// A change to try: of the surroundings, or of what people do.
    Change {
        /// What is changed.
        question: CaseQuestion,
        /// The same in words, as in a trial of it.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        label: Option<Label>,
        /// Words that it is about; all where empty.
        #[serde(default, skip_serializing_if = "Vec::is_empty")]
        words: Vec<WordId>,
        /// By what one would see that it helps, said before.
        measure: CaseMeasure,
        /// Which way that is expected to go.
        expected: CaseExpected,
    },
    /// A programme to join.
    Programme {
        /// The course.
        course: Programme,
        /// The first day of its first week.
        first: Day,
    },
    /// Another coach in this one's place.
    HandOver {
        /// Who.
        to: Author,
    },
    /// Another coach while this one is away.
    Cover {
        /// Who.
        by: Author,
        /// The first day.
        first: Day,
        /// The last day.
        last: Day,
    },
    /// Something to practise.
    Practice {
        /// What.
        practice: Practice,
    },
}

impl Proposed {
    /// Shortest and longest meeting, in minutes.
    pub const MEETING_MINUTES: (u16, u16) = (5, 480);
    /// Most words in a plan.
    pub const MOST_LINES: usize = PlanLine::MOST_LINES;

    /// Its name on the wire.
    #[must_use]
    pub const fn name(&self) -> &'static str {
        match self {
            Self::Plan { .. } => "plan",
            Self::Stage { .. } => "stage",
            Self::Word { .. } => "word",
            Self::Likes => "likes",
            Self::Check { .. } => "check",
            Self::Note { .. } => "note",
            Self::Question { .. } => "question",
            Self::Meeting { .. } => "meeting",
            Self::Change { .. } => "change",
            Self::Programme { .. } => "programme",
            Self::HandOver { .. } => "hand_over",
            Self::Cover { .. } => "cover",
            Self::Practice { .. } => "practice",
        }
    }

    /// Whom it would open the home to, where it would: that takes more than agreeing.
    #[must_use]
    pub const fn opens_to(&self) -> Option<&Author> {
        match self {
            Self::HandOver { to } | Self::Cover { by: to, .. } => Some(to),
            Self::Plan { .. }
            | Self::Stage { .. }
            | Self::Word { .. }
            | Self::Likes
            | Self::Check { .. }
            | Self::Note { .. }
            | Self::Question { .. }
            | Self::Meeting { .. }
            | Self::Change { .. }
            | Self::Programme { .. }
            | Self::Practice { .. } => None,
        }
    }

    /// Whether it is about one animal.
    #[must_use]
    pub const fn needs_animal(&self) -> bool {
        match self {
            Self::Plan { .. }
            | Self::Stage { .. }
            | Self::Likes
            | Self::Check { .. }
            | Self::Change { .. }
            | Self::Programme { .. } => true,
            Self::Word { .. }
            | Self::Note { .. }
            | Self::Question { .. }
            | Self::Meeting { .. }
            | Self::HandOver { .. }
            | Self::Cover { .. }
            | Self::Practice { .. } => false,
        }
    }

    /// Whether carrying it out takes sessions, which rest while a strong sign rests them.
    #[must_use]
    pub const fn takes_sessions(&self) -> bool {
        matches!(self, Self::Plan { .. } | Self::Likes | Self::Check { .. } | Self::Change { .. })
    }

    /// Whether it is settled by words alone: there is nothing in it to agree to.
    #[must_use]
    pub const fn is_words(&self) -> bool {
        matches!(self, Self::Note { .. } | Self::Question { .. })
    }

    /// The one word it is about, if it is about one.
    #[must_use]
    pub fn word(&self) -> Option<WordId> {
        match self {
            Self::Stage { word, .. } | Self::Check { word } => Some(*word),
            Self::Note { about } | Self::Question { about } => about.as_ref().and_then(TalkAbout::word),
            Self::Plan { lines, .. } if lines.len() == 1 => lines.first().map(|line| line.word),
            Self::Change { words, .. } if words.len() == 1 => words.first().copied(),
            Self::Plan { .. }
            | Self::Word { .. }
            | Self::Likes
            | Self::Meeting { .. }
            | Self::Change { .. }
            | Self::Programme { .. }
            | Self::HandOver { .. }
            | Self::Cover { .. }
            | Self::Practice { .. } => None,
        }
    }
}

/// A coach proposes something, or asks. Who may is not for the log to say; whether the account named wrote it, a server of many
/// homes remembers.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, BorshSerialize, BorshDeserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Proposal {
    /// Whose words.
    pub from: Author,
    /// What.
    pub proposes: Proposed,
    /// In the coach's own words.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub text: Option<ShortNote>,
    /// The earlier one that it takes up again.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub takes_up: Option<EventId>,
    /// The club in whose name, where the home shares with the club: its coaches read it, and what is answered.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub club: Option<ClubId>,
}

/// Counts as first recorded: a change could otherwise turn what was accepted into something else.
impl Content for Proposal {
    fn about(&self) -> About<'_> {
        let needs_animal = self.proposes.needs_animal();
        About { session: None, word: self.proposes.word(), needs_animal, as_recorded: true, does: Does::Tells }
    }
    fn check(&self, found: &mut Findings) {
        if self.proposes.is_words() && self.text.is_none() {
            found.wrong("text", Fault::Text(TextError::Empty));
        }
        match &self.proposes {
            Proposed::Plan { lines, .. } => found.within("proposes", |found| check_lines(lines, found)),
            Proposed::Practice { practice } => found.within("proposes.practice", |found| practice.check(found)),
            Proposed::Programme { course, .. } => found.within("proposes.course", |found| course.check(found)),
            Proposed::Cover { first, last, .. } if last < first => {
                found.within("proposes", |found| found.wrong("last", Fault::EndsFirst));
            }
            Proposed::Change { question, label, words, .. } => found.within("proposes", |found| {
                question.check_label(label.as_ref(), found);
                if words.iter().collect::<BTreeSet<_>>().len() != words.len() {
                    found.wrong("words", Fault::Twice);
                }
                if words.len() > Proposed::MOST_LINES {
                    found.wrong("words", Fault::HowMany { low: 0, high: Proposed::MOST_LINES, found: words.len() });
                }
            }),
            Proposed::Meeting { minutes, .. } => {
                let (low, high) = Proposed::MEETING_MINUTES;
                if !(low..=high).contains(minutes) {
                    found.within("proposes", |found| found.wrong("minutes", Fault::range(low, high, *minutes)));
                }
            }
            Proposed::Cover { .. }
            | Proposed::HandOver { .. }
            | Proposed::Stage { .. }
            | Proposed::Word { .. }
            | Proposed::Likes
            | Proposed::Check { .. }
            | Proposed::Note { .. }
            | Proposed::Question { .. } => {}
        }
        if self.proposes.opens_to().is_some_and(|to| to.account == self.from.account) {
            found.wrong("proposes", Fault::OwnSuccessor);
        }
    }
}

/// The home answers a proposal.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, BorshSerialize, BorshDeserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct ProposalAnswer {
    /// The proposal.
    pub to: EventId,
    /// How.
    pub reply: Reply,
    /// In own words.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub text: Option<ShortNote>,
    /// Whose words, where the account is no person of the home: else the event names the person.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub by: Option<Author>,
    /// What the home shares of a rehearsal.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub rehearsed: Option<Box<Rehearsed>>,
}

/// Counts as first recorded: an Undo must not accept again what was declined.
impl Content for ProposalAnswer {
    fn about(&self) -> About<'_> {
        About { session: None, word: None, needs_animal: false, as_recorded: true, does: Does::Tells }
    }
    fn check(&self, found: &mut Findings) {
        if self.reply == Reply::Said && self.text.is_none() && self.rehearsed.is_none() {
            found.wrong("text", Fault::Text(TextError::Empty));
        }
        if let Some(rehearsed) = &self.rehearsed {
            found.within("rehearsed", |found| rehearsed.check(found));
        }
    }
}
