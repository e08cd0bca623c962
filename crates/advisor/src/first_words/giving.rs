//! How long giving something takes at the board, and how often a day it can be given: measured at home, else as its card
//! says, else as is usual for its kind.

use crate::case::Case;
use crate::estimate::{Unit, median};
use crate::observe::answered_between;
use sayso_model::facts::{given_at_board, giving};
use sayso_model::{Day, RewardCard, RewardId, RewardKind};
use std::collections::BTreeMap;

/// Deliveries (or days) from which a home's own figures take the place of a guess (ours, no source).
pub const MEASURED_FROM: usize = 5;
/// Days looked back on.
const DAYS: i32 = 56;

/// Where a figure comes from.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Basis {
    /// This thing, given at home.
    Measured {
        /// Deliveries (or days on which it was given).
        n: usize,
    },
    /// Other things of its kind, given at home.
    MeasuredKind {
        /// Deliveries.
        n: usize,
    },
    /// As its card says.
    Card,
    /// As is usual for its kind (common practice, no source): a guess until measured.
    Usual,
}

/// How something is given at the board.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Given {
    /// Whether it can be given there at all.
    pub at_board: bool,
    /// Seconds from press to done; none where nothing tells.
    pub seconds: Option<f64>,
    /// Where the seconds come from.
    pub seconds_from: Basis,
    /// Times a day.
    pub per_day: u32,
    /// Where the times a day come from.
    pub per_day_from: Basis,
}

/// What was given at home lately, by all people and to all animals.
#[derive(Default)]
pub(super) struct AtHome {
    delays: BTreeMap<RewardId, Vec<f64>>,
    days: BTreeMap<RewardId, BTreeMap<Day, u32>>,
    kinds: BTreeMap<RewardKind, Vec<f64>>,
}

impl AtHome {
    pub(super) fn of(case: &Case<'_>) -> Self {
        let (story, zone) = (case.story(), case.zone());
        let (words, rewards) = (story.words(), story.rewards());
        let mut home = Self::default();
        for animal in story.animals().keys() {
            let presses = answered_between(story, *animal, (case.since(DAYS), case.now()), case.now());
            for answered in presses.iter().filter(|a| a.given()) {
                let reward = words.get(&answered.press.part.word).and_then(|w| w.reward);
                let Some(card) = reward.and_then(|r| rewards.get(&r)) else { continue };
                *home.days.entry(card.reward).or_default().entry(answered.press.at().day(zone)).or_default() += 1;
                if let Some(seconds) = answered.delay_s() {
                    home.delays.entry(card.reward).or_default().push(seconds);
                    home.kinds.entry(card.kind).or_default().push(seconds);
                }
            }
        }
        home
    }

    /// How one thing is given. Only the time to the giving is measured; how long it then lasts is as usual for its kind.
    pub(super) fn given(&self, card: &RewardCard) -> Given {
        let usual = giving(card.kind);
        let enough = |v: Option<&Vec<f64>>| {
            let v = v.filter(|v| v.len() >= MEASURED_FROM)?;
            median(v, Unit::Seconds).value.map(|m| (m + usual.lasts_s, v.len()))
        };
        let at_board = given_at_board(card);
        let (seconds, seconds_from) = if let Some((s, n)) = enough(self.delays.get(&card.reward)) {
            (Some(s), Basis::Measured { n })
        } else if let Some(s) = card.seconds_to_deliver {
            (Some(s.get()), Basis::Card)
        } else if let Some((s, n)) = enough(self.kinds.get(&card.kind)) {
            (Some(s), Basis::MeasuredKind { n })
        } else if at_board && !usual.at_board {
            // Given at the board against the habit of its kind: the kind's times are those of somewhere else.
            (None, Basis::Usual)
        } else {
            (Some(usual.given_in_s + usual.lasts_s), Basis::Usual)
        };
        let counts = self.days.get(&card.reward).filter(|days| days.len() >= MEASURED_FROM);
        let typical = counts.and_then(|days| {
            let counts: Vec<f64> = days.values().map(|n| f64::from(*n)).collect();
            #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
            median(&counts, Unit::PerDay).value.map(|m| (m.round().max(1.0) as u32, days.len()))
        });
        let (per_day, per_day_from) = match (typical, card.most_per_day) {
            // A limit that people set holds also where the home gave more.
            (Some((n, _)), Some(most)) if u32::from(most) < n => (u32::from(most), Basis::Card),
            (Some((n, days)), _) => (n, Basis::Measured { n: days }),
            (None, Some(most)) => (u32::from(most), Basis::Card),
            (None, None) => (u32::from(usual.most_per_day), Basis::Usual),
        };
        Given { at_board, seconds, seconds_from, per_day, per_day_from }
    }
}
