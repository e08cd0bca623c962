//! What may need a coach: typed, with figures, what it rests on, how sure it is, since when, and what would change it.

use super::line::{Held, Logging, Look, SignKind};
use crate::advice::Sure;
use crate::estimate::Estimate;
use crate::stuck::StuckFor;
use sayso_model::{Day, Moment, Species, WordId};
use sayso_norms::{AgeBand, Cell, Outside, Quantile, Question, WordKind};
use serde::{Deserialize, Serialize};

/// What a need is about, the first in the order of precedence to the last. See `docs/decisions/desk.md`.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum About {
    /// Something swallowed, a growl, snap or bite, guarding, strong signs.
    Safety,
    /// Such a record was taken back.
    TakenBack,
    /// A sudden change for the worse.
    Change,
    /// It leaves sessions.
    Leaves,
    /// Nobody writes any more.
    Silent,
    /// A word does not get on, or something holds it up.
    Held,
    /// More food than the day's rewards.
    Ration,
    /// A word is ready to be invited.
    Ready,
    /// A check is open, or due.
    Check,
    /// Too little is written down to say more.
    Little,
    /// A word lies outside the middle nine tenths of comparable homes: context, no trouble.
    Outside,
}

/// Homes that a word was laid beside.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Serialize)]
pub struct Comparable {
    /// How many.
    pub homes: u32,
    /// Species of their animals.
    pub species: Species,
    /// Age of their animals; none for every age.
    pub age_band: Option<AgeBand>,
    /// What their words bring; none for every kind.
    pub word_kind: Option<WordKind>,
}

impl Comparable {
    pub(crate) const fn of(cell: &Cell) -> Self {
        Self { homes: cell.households, species: cell.species, age_band: cell.age_band, word_kind: cell.word_kind }
    }
}

/// What too little is written down of.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Lack {
    /// Days with a record.
    Days,
    /// Presses and sessions, on days that are enough.
    Records,
    /// Answers and ends, on days that are enough.
    Whole,
}

impl Lack {
    /// What a log that is not full lacks first; none where it is.
    pub(super) fn of(log: &Logging) -> Option<Self> {
        if log.full() {
            None
        } else if !log.enough_days() {
            Some(Self::Days)
        } else if log.closed.too_early() {
            Some(Self::Records)
        } else {
            Some(Self::Whole)
        }
    }
}

/// Since when something is so.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Serialize)]
#[serde(tag = "since", content = "day", rename_all = "snake_case")]
pub enum Since {
    /// The records tell the day on which it began.
    Began(Day),
    /// So far back the records were looked at: it was so from that day on, and may have been before. That day moves on by
    /// itself, so it says nothing of a new beginning.
    AtLeast(Day),
    /// They do not: the day on which it was first seen here.
    Seen(Day),
}

impl Since {
    /// The day.
    #[must_use]
    pub const fn day(self) -> Day {
        match self {
            Self::Began(day) | Self::AtLeast(day) | Self::Seen(day) => day,
        }
    }
}

/// What is so.
#[derive(Clone, PartialEq, Debug, Serialize)]
#[serde(tag = "what", rename_all = "snake_case")]
pub enum What {
    /// Signs of a kind that lasts: swallowing, threat, guarding; or strong signs today or on two days of the week.
    Signs {
        /// Which.
        kind: SignKind,
        /// How many in the days looked back on.
        count: usize,
        /// On so many of them.
        on_days: usize,
        /// Days looked back on.
        days: i32,
        /// The last.
        last: Day,
        /// Whole days since, 0 today.
        ago: i32,
        /// Weeks with one, of the last so many, where they come back.
        recurring: Option<(usize, usize)>,
    },
    /// Records of such signs that were taken back, or made milder.
    TakenBack {
        /// Which.
        kind: SignKind,
        /// How many.
        count: usize,
        /// The day they were of.
        last: Day,
    },
    /// A sudden change.
    Change(Look),
    /// Sessions it left, of the last it had joined.
    Leaves {
        /// The share.
        share: Estimate,
    },
    /// Nobody wrote anything about it for longer than this home's habit.
    Silent {
        /// Whole days.
        days: u32,
        /// Days from one day with a record to the next: the middle.
        usual: Estimate,
        /// The longest gap before.
        longest: u32,
        /// Whole days from which it counts as silent.
        after: u32,
    },
    /// A word that does not get on, or that something holds up though it gets on.
    Held {
        /// The word.
        word: WordId,
        /// Because of what it does not get on; none where it does.
        stuck: Option<StuckFor>,
        /// Right, of invitations in which the thing was wanted.
        right: Estimate,
        /// The best supported cause; none where the records carry none.
        held: Option<Held>,
    },
    /// More food than the day's rewards on several days.
    Ration {
        /// Days clearly over.
        days: usize,
        /// Days looked back on.
        of: i32,
        /// The most given on one of them, kcal.
        most_kcal: f64,
        /// The day's energy for rewards, kcal.
        budget_kcal: f64,
    },
    /// A word shown enough to be invited.
    Ready {
        /// The word.
        word: WordId,
        /// Showings.
        showings: usize,
        /// Whole days it has waited.
        days: u32,
    },
    /// A check that was begun.
    CheckOpen {
        /// Trials done.
        done: usize,
        /// Trials planned.
        of: usize,
    },
    /// Words in use that were never checked.
    CheckNever {
        /// How many.
        words: usize,
    },
    /// Too little is written down to say why a word does or does not get on.
    Little {
        /// What there is too little of.
        lack: Lack,
        /// Days with a record.
        days: usize,
        /// Of so many.
        of: usize,
        /// Share of presses and sessions written down whole.
        closed: Estimate,
    },
    /// A word whose first press came, or is still to come, outside the middle nine tenths of comparable homes.
    Outside {
        /// The word.
        word: WordId,
        /// Sooner or later than theirs.
        side: Outside,
        /// Counted in showings or in days.
        by: Question,
        /// So many of them.
        wait: u32,
        /// Whether it was pressed; if not, it was not yet.
        pressed: bool,
        /// The place beyond which a twentieth of the others lies.
        place: Quantile,
        /// The level of its interval.
        level: f64,
        /// Whom it was laid beside.
        beside: Comparable,
        /// Words of the animal that could be laid beside others: about one in ten lies outside anywhere.
        laid: usize,
        /// The best supported cause of a wait longer than theirs, where the records carry one.
        held: Option<Held>,
    },
}

/// What would change it.
#[derive(Clone, Copy, PartialEq, Debug, Serialize)]
#[serde(tag = "until", rename_all = "snake_case")]
pub enum Until {
    /// No other such sign before a day to come.
    Without {
        /// The first day on which it would not stand here any more.
        before: Day,
    },
    /// A word with the home on why it was taken back.
    Asked,
    /// Figures back where they were, or a plain cause.
    AsBefore,
    /// Fewer than half of the next sessions left.
    FewerLeft,
    /// Any record.
    Record,
    /// The cause mended, and more right presses in two weeks.
    Mended,
    /// Clearly more right presses, or records that point to a cause.
    MoreRight,
    /// More records, so that a cause can be weighed: of what there is too little now.
    MoreRecords {
        /// See there.
        lack: Lack,
    },
    /// Fewer days over, or an allowance that a veterinarian sets.
    FewerOver,
    /// The word is invited, or the figures no longer point to it.
    Invited,
    /// The check is carried out.
    Checked,
    /// A first press, or another release.
    FirstPress,
    /// So many days since the first press, or another release.
    DaysSincePress {
        /// How many.
        days: i32,
    },
}

/// What brought a need back.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum BackFor {
    /// Its days are over.
    Days,
    /// It began anew.
    Anew,
    /// It got worse.
    Worse,
    /// The records point to another cause.
    Cause,
}

/// What a coach's hand did to a need.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Serialize)]
#[serde(tag = "put", rename_all = "snake_case")]
pub enum Put {
    /// It is put aside.
    Aside {
        /// When.
        at: Moment,
        /// When it is back at the latest.
        until: Moment,
    },
    /// It was, and is back.
    Back {
        /// When it had been put aside.
        at: Moment,
        /// Why it is back.
        because: BackFor,
    },
}

/// One thing that may need a coach.
#[derive(Clone, PartialEq, Debug, Serialize)]
pub struct Need {
    /// What it is about.
    pub about: About,
    /// What is so, with its figures.
    pub what: What,
    /// Since when.
    pub since: Option<Since>,
    /// Records behind it.
    pub n: usize,
    /// How sure.
    pub sure: Sure,
    /// What would change it.
    pub until: Until,
    /// Whether the coach put it aside, or had. Safety is never put aside.
    pub put: Option<Put>,
}
