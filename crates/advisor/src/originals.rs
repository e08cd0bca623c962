//! What was first written down of everything that is drawn, and what became of it later.
//!
//! Claims rest on first answers: an entry that was changed or taken back still counts as something that happened. So this
//! reads the log as it was recorded, not as it stands.

// A new kind of event must be decided on here.
#![deny(clippy::wildcard_enum_match_arm)]

use sayso_model::event::Part;
use sayso_model::{
    AnimalId, Body, Event, Invitation, Moment, ProbePlan, ProbeTrial, Round, Story, SwapDraw, SwapPlan, SwapStop,
};

/// What became of an entry.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Fate {
    /// It stands as it was first written.
    Stands,
    /// It was changed.
    Changed,
    /// It was taken back.
    TakenBack,
}

/// An entry as first written.
#[derive(Debug)]
pub struct Original<'a, P> {
    /// The event.
    pub event: &'a Event,
    /// Its content.
    pub part: &'a P,
    /// What became of it.
    pub fate: Fate,
}

impl<P> Original<'_, P> {
    /// When it happened.
    #[must_use]
    pub const fn at(&self) -> Moment {
        self.event.happened_at
    }
}

/// Everything drawn about one animal up to a moment, by time.
#[derive(Debug, Default)]
pub struct Originals<'a> {
    /// Rounds begun.
    pub rounds: Vec<Original<'a, Round>>,
    /// Invitations that were calls of a round.
    pub calls: Vec<Original<'a, Invitation>>,
    /// Times of swaps agreed.
    pub swaps: Vec<Original<'a, SwapPlan>>,
    /// What was drawn for single presses.
    pub draws: Vec<Original<'a, SwapDraw>>,
    /// Times of swaps stopped.
    pub stops: Vec<Original<'a, SwapStop>>,
    /// Checks planned.
    pub plans: Vec<Original<'a, ProbePlan>>,
    /// Trials of checks, by when they were written down.
    pub trials: Vec<Original<'a, ProbeTrial>>,
}

/// Reads what was drawn. Entries dated after `now` are not there yet.
#[must_use]
pub(crate) fn originals(story: &Story, animal: AnimalId, now: Moment) -> Originals<'_> {
    let mut found = Originals {
        rounds: all(story, animal, now),
        calls: all(story, animal, now),
        swaps: all(story, animal, now),
        draws: all(story, animal, now),
        stops: all(story, animal, now),
        plans: all(story, animal, now),
        trials: all(story, animal, now),
    };
    let by_time = |e: &Event| (e.happened_at, e.id);
    found.rounds.sort_by_key(|o| by_time(o.event));
    found.calls.sort_by_key(|o| (o.event.recorded_at, o.event.id));
    found.swaps.sort_by_key(|o| by_time(o.event));
    found.draws.sort_by_key(|o| by_time(o.event));
    found.stops.sort_by_key(|o| by_time(o.event));
    found.plans.sort_by_key(|o| by_time(o.event));
    found.trials.sort_by_key(|o| (o.event.recorded_at, o.event.id));
    found
}

fn all<'a, P: Part + 'a>(story: &'a Story, animal: AnimalId, now: Moment) -> Vec<Original<'a, P>> {
    let ledger = story.ledger();
    let there = story.as_recorded(P::KIND).filter(|e| e.animal == Some(animal) && e.happened_at <= now);
    there
        .filter_map(|event| {
            let fate = match ledger.last_amendment(event.id) {
                None => Fate::Stands,
                Some(_) => match ledger.standing(event.id) {
                    None => Fate::TakenBack,
                    Some(stands) if result(&stands.body) == result(&event.body) => Fate::Stands,
                    Some(_) => Fate::Changed,
                },
            };
            Some(Original { event, part: P::of(&event.body)?, fate })
        })
        .collect()
}

/// What counts of an entry: of an invitation only its call and result, for the rest is filled in as it goes on.
fn result(body: &Body) -> Body {
    match Invitation::of(body) {
        Some(i) => Invitation { shown: false, took: None, session: None, ..i.clone() }.into(),
        None => body.clone(),
    }
}
