//! Reasons for a stage, in figures and in words. Source: the rule in [`super::stage`].

use crate::stats::Interval;
use serde::Serialize;
use std::fmt;

/// What a share that misses its bar was counted over.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Counted {
    /// Pressed, of all invitations in which it wanted the thing.
    Wanted,
    /// The same of the latest of them.
    Latest,
    /// The same two weeks and more after mastery.
    LaterWanted,
    /// Right, of presses two weeks and more after mastery.
    LaterPresses,
}

/// One reason for the stage, or one thing that would change it.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub enum Ground {
    /// Strain comes first: go one stage back and make it easier.
    Strain,
    /// Something of the word is not settled yet.
    NotPrepared,
    /// Showings so far against those wanted.
    Showings {
        /// Showings, and how many are wanted.
        showings: (u32, u32),
        /// Days with showings, and how many are wanted.
        days: (u32, u32),
    },
    /// How often it joins, with its interval, against the floor.
    Joining {
        /// Joined, offered.
        joined: (u32, u32),
        /// 90 % interval of the rate.
        interval: Interval,
        /// What the lower end should reach.
        floor: f64,
    },
    /// How often it pressed when it wanted the thing, over all sessions.
    Response {
        /// Pressed, wanted.
        pressed: (u32, u32),
        /// 90 % interval of the share.
        interval: Interval,
    },
    /// How often it was right when it pressed, over all sessions, with what chance is here.
    Right {
        /// Right, presses.
        right: (u32, u32),
        /// 90 % interval of the share.
        interval: Interval,
        /// Share of presses that are of this word when others are invited.
        elsewhere: Option<f64>,
        /// E-value that this is more than chance, and the one wanted.
        e: (f64, f64),
    },
    /// A share whose whole interval lies below what it must reach.
    Below {
        /// What was counted.
        counted: Counted,
        /// Pressed or right, and of how many.
        share: (u32, u32),
        /// 90 % interval of the share.
        interval: Interval,
        /// What it must reach.
        bar: f64,
    },
    /// Two weeks and more after mastery.
    Later {
        /// Pressed, wanted.
        pressed: (u32, u32),
        /// Right, presses.
        right: (u32, u32),
        /// Wanted invitations needed to say anything.
        needed: u32,
    },
    /// Sessions in a row at mastery, up to the latest, and people in them.
    Mastery {
        /// Sessions in a row, and how many are wanted.
        sessions: (u32, u32),
        /// People, and how many are wanted.
        people: (u32, u32),
        /// Share a session must reach.
        share: f64,
    },
    /// Presses of its own accord, taken.
    OwnPresses {
        /// Presses, and how many are wanted.
        presses: (u32, u32),
        /// Days, and how many are wanted.
        days: (u32, u32),
    },
}

impl Ground {
    /// Whether all it wants is reached. What wants nothing, such as strain, is never.
    #[must_use]
    pub fn is_met(&self) -> bool {
        let enough = |(found, wanted): (u32, u32)| found >= wanted;
        match *self {
            Self::Showings { showings, days } => enough(showings) && enough(days),
            Self::Joining { interval, floor, .. } => interval.low >= floor,
            Self::Right { e: (e, bar), .. } => e >= bar,
            Self::Mastery { sessions, people, .. } => enough(sessions) && enough(people),
            Self::OwnPresses { presses, days } => enough(presses) && enough(days),
            Self::Strain | Self::NotPrepared | Self::Response { .. } | Self::Below { .. } | Self::Later { .. } => false,
        }
    }
}

impl fmt::Display for Ground {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match *self {
            Self::Strain => write!(f, "strong signs of stress, or leaving again and again, in the latest sessions"),
            Self::NotPrepared => write!(f, "the reward, card, clip or place of the word is not settled"),
            Self::Showings { showings, days } => {
                write!(f, "{} showings ({} wanted) on {} days ({} wanted)", showings.0, showings.1, days.0, days.1)
            }
            Self::Joining { joined, interval, floor } => write!(
                f,
                "joined {} of {} ({:.0} to {:.0} %); the lower end should reach {:.0} %",
                joined.0,
                joined.1,
                100.0 * interval.low,
                100.0 * interval.high,
                100.0 * floor
            ),
            Self::Response { pressed, interval } => write!(
                f,
                "pressed {} of the {} times it wanted the thing ({:.0} to {:.0} %)",
                pressed.0,
                pressed.1,
                100.0 * interval.low,
                100.0 * interval.high
            ),
            Self::Right { right, interval, elsewhere, e } => {
                write!(
                    f,
                    "right in {} of {} presses ({:.0} to {:.0} %)",
                    right.0,
                    right.1,
                    100.0 * interval.low,
                    100.0 * interval.high
                )?;
                if let Some(elsewhere) = elsewhere {
                    write!(f, ", this button being pressed in {:.0} % when others are invited", 100.0 * elsewhere)?;
                }
                if e.0 >= e.1 {
                    write!(f, "; more than chance")
                } else {
                    write!(f, "; not more than chance yet (evidence {:.1}, {:.0} wanted)", e.0, e.1)
                }
            }
            Self::Below { counted, share, interval, bar } => {
                let of = match counted {
                    Counted::Wanted => "pressed, of the times it wanted the thing",
                    Counted::Latest => "pressed, of the latest times it wanted the thing",
                    Counted::LaterWanted => {
                        "two weeks and more after mastery, pressed, of the times it wanted the thing"
                    }
                    Counted::LaterPresses => "two weeks and more after mastery, right, of presses",
                };
                let (low, high, bar) = (100.0 * interval.low, 100.0 * interval.high, 100.0 * bar);
                write!(f, "{of}: {} of {} ({low:.0} to {high:.0} %), below {bar:.0} %", share.0, share.1)
            }
            Self::Later { pressed, right, needed } if pressed.1 < needed => write!(
                f,
                "whether it lasts is not known: {} wanted invitations two weeks and more after mastery ({needed} wanted), right in {} of {} presses",
                pressed.1, right.0, right.1
            ),
            Self::Later { pressed, right, .. } => write!(
                f,
                "two weeks and more after mastery it pressed {} of the {} times it wanted the thing, right in {} of {}",
                pressed.0, pressed.1, right.0, right.1
            ),
            Self::Mastery { sessions, people, share } => write!(
                f,
                "{} sessions in a row ({} wanted) with {:.0} % or more pressed and right, with {} people ({} wanted)",
                sessions.0,
                sessions.1,
                100.0 * share,
                people.0,
                people.1
            ),
            Self::OwnPresses { presses, days } => write!(
                f,
                "{} presses of its own accord, taken ({} wanted), on {} days ({} wanted)",
                presses.0, presses.1, days.0, days.1
            ),
        }
    }
}
