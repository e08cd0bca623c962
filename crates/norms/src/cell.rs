//! One cell of a release: what is told of the households whose learners are alike.

use crate::curve::{Curve, Spread};
use crate::fault::{At, ReleaseFault};
use crate::hours::Hours;
use crate::kinds::{AgeBand, WordKind};
use crate::stage::TimedStage;
use crate::week::Weeks;
use sayso_model::Species;
use serde::{Deserialize, Serialize};

/// What a cell answers.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Question {
    /// Showings of a word until the learner first pressed it by itself: a [`Curve`].
    ShowingsToFirstPress,
    /// Days from a word's first showing until the learner first pressed it by itself: a [`Curve`].
    DaysToFirstPress,
    /// Share of invitations in which the learner took part, by household: a [`Spread`].
    Joined,
    /// What the first, second, third word brought: [`Parts`].
    Words,
    /// In which hours of the day learners press of their own accord: [`Hours`].
    Hours,
    /// Days of a word in the stage in which it is shown, until people chose a later one: a [`Curve`].
    DaysInShow,
    /// Days in the stage in which it is invited, until people chose a later one: a [`Curve`].
    DaysInInvite,
    /// How often words are pressed in a week, by weeks since their first showing: [`Weeks`].
    PressesByWeek,
}

impl Question {
    /// Every question.
    pub const ALL: [Self; 8] = [
        Self::ShowingsToFirstPress,
        Self::DaysToFirstPress,
        Self::Joined,
        Self::Words,
        Self::Hours,
        Self::DaysInShow,
        Self::DaysInInvite,
        Self::PressesByWeek,
    ];

    /// The question of how long words stand in a stage.
    #[must_use]
    pub const fn in_stage(stage: TimedStage) -> Self {
        match stage {
            TimedStage::Show => Self::DaysInShow,
            TimedStage::Invite => Self::DaysInInvite,
        }
    }

    /// The first form of a release that answers it.
    #[must_use]
    pub const fn since_form(self) -> u32 {
        match self {
            Self::ShowingsToFirstPress | Self::DaysToFirstPress | Self::Joined | Self::Words => 1,
            Self::Hours => 2,
            Self::DaysInShow | Self::DaysInInvite => 3,
            Self::PressesByWeek => 4,
        }
    }

    /// How it is written.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::ShowingsToFirstPress => "showings_to_first_press",
            Self::DaysToFirstPress => "days_to_first_press",
            Self::Joined => "joined",
            Self::Words => "words",
            Self::Hours => "hours",
            Self::DaysInShow => "days_in_show",
            Self::DaysInInvite => "days_in_invite",
            Self::PressesByWeek => "presses_by_week",
        }
    }
}

/// The share of learners whose so-manieth word was of a kind.
#[derive(Clone, Copy, PartialEq, Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Part {
    /// The place in the order of the words, from 1.
    pub word: u16,
    /// What it brought.
    pub kind: WordKind,
    /// Share, from 0 to 1, of the learners that had so many words.
    pub share: f64,
    /// Lower end of its interval.
    pub low: f64,
    /// Upper end.
    pub high: f64,
}

/// What words brought, by their order.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Parts {
    /// By the place in the order of the words and kind, each once.
    pub parts: Vec<Part>,
}

/// The answer of a cell.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Answer {
    /// How waits lie.
    Curve(Curve),
    /// How a share lies across households.
    Spread(Spread),
    /// Shares of the kinds of words.
    Parts(Parts),
    /// Shares of the hours of a day.
    Hours(Hours),
    /// Shares by weeks.
    Weeks(Weeks),
}

impl Answer {
    const fn name(&self) -> &'static str {
        match self {
            Self::Curve(_) => "curve",
            Self::Spread(_) => "spread",
            Self::Parts(_) => "parts",
            Self::Hours(_) => "hours",
            Self::Weeks(_) => "weeks",
        }
    }
}

/// One cell.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Cell {
    /// What it answers.
    pub question: Question,
    /// Of which species.
    pub species: Species,
    /// Age at the first showing; `null` for every age.
    pub age_band: Option<AgeBand>,
    /// What the word brings; `null` for every kind.
    pub word_kind: Option<WordKind>,
    /// Households counted; where noise was added, by the noisy count.
    pub households: u32,
    /// Words of learners counted; where noise was added, by the noisy count.
    pub words: u32,
    /// The answer, of the shape that the question has.
    pub answer: Answer,
}

impl Cell {
    pub(crate) fn check(&self, at: &At<'_>, least: u32) -> Result<(), ReleaseFault> {
        at.field("households").must(
            self.households >= least,
            self.households,
            format!("{least} or more by its rule"),
        )?;
        let answer = at.field("answer");
        let wanted = match self.question {
            Question::ShowingsToFirstPress
            | Question::DaysToFirstPress
            | Question::DaysInShow
            | Question::DaysInInvite => "curve",
            Question::Joined => "spread",
            Question::Words => "parts",
            Question::Hours => "hours",
            Question::PressesByWeek => "weeks",
        };
        let name = self.answer.name();
        answer.must(name == wanted, name, format!("{wanted}, as {} has", self.question.name()))?;
        let at = answer.field(name);
        match &self.answer {
            Answer::Curve(curve) => curve.check(&at),
            Answer::Spread(spread) => spread.check(&at),
            Answer::Parts(parts) => parts.check(&at),
            Answer::Hours(hours) => hours.check(&at),
            Answer::Weeks(weeks) => weeks.check(&at, least),
        }
    }
}

impl Parts {
    /// Words beyond the so-manieth are not told.
    const MOST_WORDS: u16 = 20;

    fn check(&self, at: &At<'_>) -> Result<(), ReleaseFault> {
        let all = at.field("parts");
        let most = usize::from(Self::MOST_WORDS) * WordKind::ALL.len();
        let many = self.parts.len();
        all.must((1..=most).contains(&many), format!("{many} parts long"), format!("1 to {most}"))?;
        let mut last: Option<(u16, WordKind)> = None;
        let mut whole = 0.0;
        for (number, part) in self.parts.iter().enumerate() {
            let at = all.item(number);
            let nth = (1..=Self::MOST_WORDS).contains(&part.word);
            at.field("word").must(nth, part.word, format!("from 1 to {}", Self::MOST_WORDS))?;
            at.interval(part.share, part.low, part.high)?;
            let here = (part.word, part.kind);
            let rises = last.is_none_or(|last| last < here);
            at.must(
                rises,
                format!("word {}, {}", part.word, part.kind.name()),
                "after the part before, by word and kind",
            )?;
            whole = if last.is_some_and(|(word, _)| word == part.word) { whole + part.share } else { part.share };
            at.field("share").must(whole <= 1.0 + 1e-6, whole, "1 or less with the other kinds of the same word")?;
            last = Some(here);
        }
        Ok(())
    }
}
