//! What a coach put aside: by what a need is known, how far it had gone then, until when, and what brings it back before.

use super::line::{Measure, SignKind};
use super::need::{About, BackFor, Need, Put, Since, What};
use super::order::pressing;
use crate::cause::Cause;
use sayso_model::{AnimalId, Moment, WordId, Zone};
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;

/// Days after which what was put aside is back, unless the coach says otherwise.
pub const ASIDE_DAYS: u16 = 7;

/// A change, or a share of sessions left, is worse by so many hundredths; silence by so many times as long.
const WORSE_HUNDREDTHS: u32 = 10;
const WORSE_SILENCE: u32 = 2;

/// By what a need of one animal is known from one day to the next.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug, Serialize, Deserialize)]
pub struct Mark {
    /// What it is about.
    pub about: About,
    /// The word it is about.
    pub word: Option<WordId>,
    /// The sign it is about.
    pub kind: Option<SignKind>,
    /// What changed, of a sudden change. Left out elsewhere: what was put aside is found again by how this is written.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub measure: Option<Measure>,
}

/// How far a need has gone. Two of one [`Mark`] tell which is the worse.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Extent {
    /// How pressing within what it is about, 0 first.
    pub pressing: u8,
    /// The cause it is put down to.
    pub cause: Option<Cause>,
    /// What of it grows: days, records, words, or hundredths, by what it is about; 0 where nothing does.
    pub size: u32,
}

/// Put aside: when, until when, and how far it had gone; none where that was not kept.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub struct PutAside {
    /// When.
    pub at: Moment,
    /// When it is back at the latest.
    pub until: Moment,
    /// How far it had gone.
    pub extent: Option<Extent>,
}

impl Need {
    /// By what it is known from one day to the next.
    #[must_use]
    pub const fn mark(&self) -> Mark {
        let mark = Mark { about: self.about, word: None, kind: None, measure: None };
        match &self.what {
            What::Held { word, .. } | What::Ready { word, .. } | What::Outside { word, .. } => {
                Mark { word: Some(*word), ..mark }
            }
            What::Signs { kind, .. } | What::TakenBack { kind, .. } => Mark { kind: Some(*kind), ..mark },
            What::Change(look) => Mark { measure: Some(look.measure), ..mark },
            _ => mark,
        }
    }

    /// How far it has gone.
    #[must_use]
    pub fn extent(&self) -> Extent {
        let cause = match &self.what {
            What::Held { held, .. } | What::Outside { held, .. } => held.map(|held| held.cause),
            _ => None,
        };
        Extent { pressing: pressing(self), cause, size: size(&self.what) }
    }

    /// Whether it is put aside.
    #[must_use]
    pub const fn is_aside(&self) -> bool {
        matches!(self.put, Some(Put::Aside { .. }))
    }
}

fn size(what: &What) -> u32 {
    let count = |n: usize| u32::try_from(n).unwrap_or(u32::MAX);
    match what {
        What::TakenBack { count: n, .. } | What::Ration { days: n, .. } | What::CheckNever { words: n } => count(*n),
        What::Silent { days, .. } => *days,
        What::Leaves { share } => hundredths(share.value.unwrap_or(0.0)),
        What::Change(look) => {
            let (lately, before) = (look.lately.value, look.before.value.unwrap_or(0.0));
            match look.measure {
                Measure::Joining => hundredths(before - lately.unwrap_or(before)),
                Measure::Presses => hundredths(1.0 - lately.unwrap_or(before) / before.max(f64::MIN_POSITIVE)),
                // Where it no longer presses in half of the waits there is no middle: nothing is longer.
                Measure::Latency => lately.map_or(u32::MAX, |s| hundredths(s / before.max(f64::MIN_POSITIVE))),
            }
        }
        What::Signs { .. }
        | What::Held { .. }
        | What::Ready { .. }
        | What::CheckOpen { .. }
        | What::Little { .. }
        | What::Outside { .. } => 0,
    }
}

#[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
fn hundredths(x: f64) -> u32 {
    (100.0 * x).round().clamp(0.0, 1e9) as u32
}

impl Extent {
    /// What makes it worse than it was; none where it is not.
    fn worse_than(self, then: Self, about: About) -> Option<BackFor> {
        if self.cause.is_some() && self.cause != then.cause {
            return Some(BackFor::Cause);
        }
        let grown = self.size > then.size
            && match about {
                About::Silent => self.size >= then.size.saturating_mul(WORSE_SILENCE),
                About::Change | About::Leaves => self.size >= then.size.saturating_add(WORSE_HUNDREDTHS),
                _ => true,
            };
        (self.pressing < then.pressing || grown).then_some(BackFor::Worse)
    }
}

/// What a coach has put aside. A need comes back to its place by its day, and at once when it begins anew or gets worse.
#[derive(Clone, PartialEq, Eq, Debug, Default)]
pub struct Seen(BTreeMap<(AnimalId, Mark), PutAside>);

impl Seen {
    /// Puts a need of an animal aside.
    pub fn put_aside(&mut self, animal: AnimalId, need: Mark, put: PutAside) {
        self.0.insert((animal, need), put);
    }

    /// What was done to a need, as it is read now. Safety is never put aside.
    pub(crate) fn of(&self, animal: AnimalId, need: &Need, (now, zone): (Moment, &Zone)) -> Option<Put> {
        if need.about == About::Safety {
            return None;
        }
        let PutAside { at, until, extent } = *self.0.get(&(animal, need.mark()))?;
        let anew = need
            .since
            .is_some_and(|since| matches!(since, Since::Began(day) if day > at.day(zone)))
            .then_some(BackFor::Anew);
        let because = anew
            .or_else(|| need.extent().worse_than(extent?, need.about))
            .or_else(|| (until <= now).then_some(BackFor::Days));
        Some(because.map_or(Put::Aside { at, until }, |because| Put::Back { at, because }))
    }
}
