//! Does what it likes depend on the hour?

use crate::advice::NAMELESS;
use crate::estimate::{Estimate, LEVEL, Unit};
use crate::likes::logistic;
use sayso_methods::likes::{HourFit, HourTrial, LikesError, PairOutcome, PairTrial, fit_pairs_by_hour};
use sayso_model::{AnimalId, LikeOutcome, LikeTrial, LikesFormat, Moment, RewardId, Story};
use std::collections::BTreeSet;

/// A pause so long starts a new sitting, hours (common practice, no source).
const NEW_SITTING_H: f64 = 2.0;
/// Days looked back on: likes change.
pub const DAYS: u32 = 90;
/// Rearrangements of the sittings' hours, and the seed that makes the same records give the same words.
const REARRANGED: usize = 999;
const SEED: u64 = 1;
/// Hours told.
const TOLD: [u8; 3] = [8, 13, 19];
/// p from which on the hour is said to matter.
const SURE: f64 = 0.05;

/// What it likes at one hour.
#[derive(Clone, PartialEq, Debug)]
pub struct AtHour {
    /// Local hour.
    pub hour: u8,
    /// Each thing tested, best liked first: chance of being taken rather than one of average liking at that hour.
    pub things: Vec<(String, Estimate)>,
}

/// Likes by the hour.
#[derive(Clone, PartialEq, Debug)]
pub struct Hours {
    /// p that hours make so much difference by chance; nothing where there is too little to tell.
    pub p: Option<f64>,
    /// Choices between two things.
    pub n: u64,
    /// Sittings.
    pub sittings: usize,
    /// Hours told, where the hour matters.
    pub at: Vec<AtHour>,
    /// Why nothing can be told yet.
    pub lacking: Option<LikesError>,
}

/// Choices between two things by local hour.
pub(super) fn hours(story: &Story, animal: AnimalId, now: Moment) -> Hours {
    let zone = story.zone();
    let from = now.plus_seconds(-f64::from(DAYS) * 86_400.0);
    let facts: Vec<_> = story
        .of::<LikeTrial>(animal)
        .filter(|t| t.part.format == LikesFormat::Paired && t.at() >= from && t.at() <= now)
        .collect();
    let items: Vec<RewardId> =
        facts.iter().flat_map(|t| t.part.offered.iter().copied()).collect::<BTreeSet<_>>().into_iter().collect();
    let (mut session, mut last) = (0, None::<Moment>);
    let mut trials = Vec::new();
    for t in &facts {
        let [l, r] = t.part.offered[..] else { continue };
        let outcome = match t.part.result {
            LikeOutcome::Chose { reward } if reward == l => PairOutcome::Left,
            LikeOutcome::Chose { reward } if reward == r => PairOutcome::Right,
            _ => continue,
        };
        let paused = last.replace(t.at()).is_some_and(|last| t.at().seconds_since(last) > 3600.0 * NEW_SITTING_H);
        session += usize::from(paused);
        let index = |reward: RewardId| items.partition_point(|i| *i < reward);
        let local = t.at().local(&zone);
        let hour = f64::from(local.hour()) + f64::from(local.minute()) / 60.0;
        trials.push(HourTrial {
            trial: PairTrial { left: index(l), right: index(r), outcome },
            hour,
            session,
            weight: 1.0,
        });
    }
    let n = trials.len() as u64;
    let sittings = if trials.is_empty() { 0 } else { session + 1 };
    match fit_pairs_by_hour(items.len(), &trials, LEVEL, REARRANGED, SEED) {
        Err(why) => Hours { p: None, n, sittings, at: Vec::new(), lacking: Some(why) },
        Ok(fit) => {
            let at = if fit.p <= SURE { at_hours(story, &items, &fit) } else { Vec::new() };
            Hours { p: Some(fit.p), n: fit.n, sittings: fit.sessions, at, lacking: None }
        }
    }
}

fn at_hours(story: &Story, items: &[RewardId], fit: &HourFit) -> Vec<AtHour> {
    let cards = story.rewards();
    let name = |i: usize| items.get(i).and_then(|r| cards.get(r)).map_or(NAMELESS, |c| c.name.as_str()).to_owned();
    let n = usize::try_from(fit.n).unwrap_or(usize::MAX);
    TOLD.iter()
        .filter_map(|&hour| {
            let mut strengths = fit.at(f64::from(hour)).ok()?;
            strengths.sort_by(|a, b| b.value.total_cmp(&a.value));
            let things = strengths.iter().map(|s| {
                let mut interval = s.interval;
                (interval.low, interval.high) = (logistic(interval.low), logistic(interval.high));
                (name(s.item), Estimate::with(logistic(s.value), interval, n, Unit::Share))
            });
            Some(AtHour { hour, things: things.collect() })
        })
        .collect()
}
