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

/// Reads the log once. Entries dated after `now` are not there yet.
#[must_use]
pub fn originals(story: &Story, animal: AnimalId, now: Moment) -> Originals<'_> {
    let mut found = Originals::default();
    let ledger = story.ledger();
    for event in ledger.all().filter(|e| e.animal == Some(animal) && e.happened_at <= now) {
        macro_rules! keep {
            ($shelf:ident, $part:expr) => {{
                let fate = match ledger.standing(event.id) {
                    None => Fate::TakenBack,
                    Some(stands) if result(&stands.body) == result(&event.body) => Fate::Stands,
                    Some(_) => Fate::Changed,
                };
                found.$shelf.push(Original { event, part: $part, fate });
            }};
        }
        match &event.body {
            Body::Round(part) => keep!(rounds, part),
            Body::Invitation(part) if part.call.is_some() => keep!(calls, part),
            Body::SwapPlan(part) => keep!(swaps, part),
            Body::SwapDraw(part) => keep!(draws, part),
            Body::SwapStop(part) => keep!(stops, part),
            Body::ProbePlan(part) => keep!(plans, part),
            Body::ProbeTrial(part) => keep!(trials, part),
            // Nothing in these is drawn by chance and read from its first record.
            Body::Invitation(_)
            | Body::HomeCard(_)
            | Body::PersonCard(_)
            | Body::AnimalCard(_)
            | Body::RewardCard(_)
            | Body::WordCard(_)
            | Body::ClipCard(_)
            | Body::BoardLayout(_)
            | Body::HouseRule(_)
            | Body::StageChoice(_)
            | Body::SessionStart(_)
            | Body::Joining(_)
            | Body::Leaving(_)
            | Body::SessionEnd(_)
            | Body::Press(_)
            | Body::Delivery(_)
            | Body::Look(_)
            | Body::Brush(_)
            | Body::Catch(_)
            | Body::Sign(_)
            | Body::Feed(_)
            | Body::LikesTest(_)
            | Body::LikeTrial(_)
            | Body::DesignPlan(_)
            | Body::DesignNote(_)
            | Body::DesignStop(_)
            | Body::Remark(_)
            | Body::Correction(_)
            | Body::Withdrawal(_) => {}
        }
    }
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

/// What counts of an entry: of an invitation only its call and result, for the rest is filled in as it goes on.
fn result(body: &Body) -> Body {
    match Invitation::of(body) {
        Some(i) => Invitation { shown: false, took: None, session: None, ..i.clone() }.into(),
        None => body.clone(),
    }
}
