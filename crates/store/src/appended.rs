//! What comes of events that are given to a log, the same in every one.

use crate::error::NotImported;
use crate::incoming::hidden_characters;
use crate::written::Written;
use sayso_model::{Event, EventId, Fault, HomeId, Problem, Problems};
use std::collections::{BTreeMap, BTreeSet};

/// What came of one event given to [`crate::Store::append`].
#[derive(Clone, PartialEq, Debug)]
pub enum Appended {
    /// It is stored now.
    New,
    /// It was stored already, the same.
    Duplicate,
    /// Another event of this id is stored; that one is kept.
    Conflict,
    /// It cannot stand in a log, and is not stored.
    Refused(Problems),
}

impl Appended {
    /// Why it is not stored; none where it is.
    #[must_use]
    pub fn refusal(self) -> Option<Problems> {
        match self {
            Self::New | Self::Duplicate => None,
            Self::Conflict => Some(Problems(vec![Problem { field: "id".into(), fault: Fault::IdTaken }])),
            Self::Refused(problems) => Some(problems),
        }
    }
}

/// The most bytes one event may take as JSON.
pub const MOST_EVENT_BYTES: usize = 128 * 1024;

/// The events that may be new, each id once: not those at the places `strangers`.
pub(crate) fn first<'a>(events: &[&'a Written], strangers: &BTreeSet<usize>) -> Vec<&'a Written> {
    let mut seen = BTreeSet::new();
    let ours = events.iter().enumerate().filter(|(place, _)| !strangers.contains(place)).map(|(_, w)| *w);
    ours.filter(|w| seen.insert(w.id)).collect()
}

/// The ids whose stored content decides: known before, or here for the second time.
pub(crate) fn known(events: &[&Written], fresh: &BTreeSet<EventId>) -> Vec<EventId> {
    let mut once = BTreeSet::new();
    let old: BTreeSet<EventId> =
        events.iter().map(|w| w.id).filter(|id| !once.insert(*id) || !fresh.contains(id)).collect();
    old.into_iter().collect()
}

/// One outcome each, in their order; `fresh` were stored now, and `stored` is what stands under the other ids.
pub(crate) fn outcomes(
    events: &[&Written],
    strangers: &BTreeSet<usize>,
    fresh: &mut BTreeSet<EventId>,
    stored: &BTreeMap<EventId, String>,
) -> Vec<Appended> {
    let mut outcomes = Vec::with_capacity(events.len());
    for (place, w) in events.iter().enumerate() {
        outcomes.push(if strangers.contains(&place) {
            Appended::Refused(refusal(w.home))
        } else if fresh.remove(&w.id) {
            Appended::New
        } else if stored.get(&w.id).is_some_and(|json| w.is(json)) {
            Appended::Duplicate
        } else {
            Appended::Conflict
        });
    }
    outcomes
}

/// Why not all of them can be stored, if so.
pub(crate) fn in_the_way(events: &[&Written], outcomes: &[Appended]) -> Option<NotImported> {
    events.iter().zip(outcomes).find_map(|(w, outcome)| match outcome {
        Appended::New | Appended::Duplicate => None,
        Appended::Conflict => Some(NotImported::Taken(w.id)),
        Appended::Refused(problems) => Some(NotImported::Refused(problems.clone())),
    })
}

/// Why an event of another home is refused.
pub(crate) fn refusal(home: HomeId) -> Problems {
    Problems::one("home", Fault::OtherHome(home))
}

/// Checks an event and writes it as JSON; one with problems gets these instead.
pub(crate) fn write_down(event: &Event) -> Result<Written, Problems> {
    let written = Written::of(event)?;
    sound(event, &written)?;
    Ok(written)
}

/// Checks an event that is to be new in the log.
pub(crate) fn sound(event: &Event, written: &Written) -> Result<(), Problems> {
    event.check()?;
    let hidden = hidden_characters(&written.json);
    if !hidden.is_empty() {
        return Err(Problems(hidden));
    }
    let long = written.json.len();
    if long > MOST_EVENT_BYTES {
        return Err(Problems::one("event", Fault::TooLong { bytes: long, most: MOST_EVENT_BYTES }));
    }
    Ok(())
}
