//! Agreed times of swaps, as first written down: what was taken back in the log still counts until it is stopped.

use sayso_model::event::Part;
use sayso_model::{
    AnimalId, Answer, Delivery, Event, EventId, Kind, Moment, Story, SwapDraw, SwapId, SwapPlan, SwapStop, draw,
};
use std::collections::BTreeMap;

const DAY_S: f64 = 86_400.0;
/// Days after its end in which presses of a time are answered at the latest.
const ANSWERED_DAYS: f64 = 3.0;

/// One agreed time of swaps.
#[derive(Clone, PartialEq, Debug)]
pub struct AgreedTime {
    /// What was agreed.
    pub plan: SwapPlan,
    /// Its first moment.
    pub begins: Moment,
    /// When it is over: after its days, or when it was stopped.
    pub ends: Moment,
    /// How it was stopped, if it was.
    pub stopped: Option<SwapStop>,
}

impl AgreedTime {
    /// Whether it is going on.
    #[must_use]
    pub fn running(&self, now: Moment) -> bool {
        self.begins <= now && now < self.ends
    }
}

/// Every agreed time of one animal, oldest first. Of two that overlap the first counts.
#[must_use]
pub fn agreed(story: &Story, animal: AnimalId) -> Vec<AgreedTime> {
    let mut plans: Vec<(&Event, &SwapPlan)> = Vec::new();
    let mut stops: BTreeMap<SwapId, (Moment, &SwapStop)> = BTreeMap::new();
    let recorded = |kind| story.as_recorded(kind).filter(|e| e.animal == Some(animal));
    for event in recorded(Kind::SwapPlan).chain(recorded(Kind::SwapStop)) {
        if let Some(plan) = SwapPlan::of(&event.body) {
            plans.push((event, plan));
        }
        if let Some(stop) = SwapStop::of(&event.body) {
            let first = stops.entry(stop.swap).or_insert((event.happened_at, stop));
            if event.happened_at < first.0 {
                *first = (event.happened_at, stop);
            }
        }
    }
    plans.sort_by_key(|(e, _)| (e.happened_at, e.id));
    let mut found: Vec<AgreedTime> = Vec::new();
    for (event, plan) in plans {
        let begins = event.happened_at;
        if found.last().is_some_and(|before| begins < before.ends) {
            continue;
        }
        let planned = begins.plus_seconds(f64::from(plan.days) * DAY_S);
        let stop = stops.get(&plan.swap).filter(|(at, _)| *at < planned);
        found.push(AgreedTime {
            plan: plan.clone(),
            begins,
            ends: stop.map_or(planned, |(at, _)| *at),
            stopped: stop.map(|(_, stop)| (*stop).clone()),
        });
    }
    found
}

/// The time that is going on, if one is.
#[must_use]
pub fn running(story: &Story, animal: AnimalId, now: Moment) -> Option<AgreedTime> {
    agreed(story, animal).into_iter().find(|t| t.running(now))
}

/// How far one time has got.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Default)]
pub struct Progress {
    /// Presses that something was drawn for.
    pub drawn: usize,
    /// Of those, the partner's thing.
    pub swapped: usize,
    /// Recorded as given just as drawn.
    pub as_drawn: usize,
}

/// What was drawn in a time and came of it.
#[must_use]
pub fn progress(story: &Story, animal: AnimalId, time: &AgreedTime) -> Progress {
    let words = story.words();
    let given: BTreeMap<EventId, &Delivery> = story
        .between::<Delivery>(animal, time.begins, time.ends.plus_seconds(ANSWERED_DAYS * DAY_S))
        .filter_map(|d| Some((d.part.answers?, d.part)))
        .collect();
    let mut draws: BTreeMap<EventId, &SwapDraw> = BTreeMap::new();
    for d in story.of::<SwapDraw>(animal).filter(|d| d.part.swap == time.plan.swap) {
        draws.entry(d.part.press).or_insert(d.part);
    }
    let mut found = Progress { drawn: draws.len(), ..Progress::default() };
    for (press, d) in draws {
        let swapped = draw::swapped(time.plan.swap, press, time.plan.one_in);
        found.swapped += usize::from(swapped);
        let reward = words.get(&d.give).and_then(|c| c.reward);
        let as_drawn = given.get(&press).is_some_and(|came| match came.answer {
            Answer::Given | Answer::Partly => d.give == d.word,
            Answer::Alternative => d.give != d.word && reward.is_some() && came.alternative == reward,
            Answer::Declined | Answer::Missed => false,
        });
        found.as_drawn += usize::from(as_drawn && (d.give != d.word) == swapped);
    }
    found
}
