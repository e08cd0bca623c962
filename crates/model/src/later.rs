//! Clocks that were ahead: a time for a new event at which it counts, and the events dated after now.
//!
//! Of cards the newest by `happened_at` counts, of amendments the last by `recorded_at`. One written while a clock was
//! ahead would outlast every later one until that time comes; what a person decides now is therefore dated after it.

use crate::event::{Body, Does, Event};
use crate::story::Story;
use crate::time::Moment;
use crate::too_late::TooLate;

/// An event dated further after now than this was written by a clock that is ahead, in seconds. Home devices set by
/// the network agree to seconds; those set by hand to minutes (common practice, no source).
pub const AHEAD_S: f64 = 600.0;
/// The step after what an event replaces: the least a [`Moment`] tells apart, in seconds.
const STEP_S: f64 = 0.001;

impl Story {
    /// The event, dated after what it replaces where that is dated later, so that it counts at once.
    ///
    /// # Errors
    /// [`TooLate`] where there is no later time.
    pub fn in_time(&self, mut event: Event) -> Result<Event, TooLate> {
        let after = |newest: Moment, own: Moment, late: fn(Moment) -> TooLate| {
            if own > newest {
                return Ok(own);
            }
            let next = newest.plus_seconds(STEP_S);
            if next > newest { Ok(next) } else { Err(late(newest)) }
        };
        if let Some(of) = event.body.amends() {
            if let Some(last) = self.ledger().last_amendment(of) {
                event.recorded_at = after(last.recorded_at, event.recorded_at, TooLate::Amendment)?;
            }
        } else if let Some(newest) = self.newest_card_like(&event.body) {
            event.happened_at = after(newest, event.happened_at, TooLate::Card)?;
        }
        Ok(event)
    }

    /// The date of the newest card of the same thing; none where it is no card or the first.
    fn newest_card_like(&self, body: &Body) -> Option<Moment> {
        let does = body.about().does;
        let Does::Sets(_) = does else { return None };
        let same_kind = self.standing_of(body.kind());
        same_kind.filter(|e| e.body.about().does == does).map(|e| e.happened_at).max()
    }

    /// Standing events dated more than [`AHEAD_S`] after now, the soonest first.
    #[must_use]
    pub fn ahead(&self, now: Moment) -> Vec<&Event> {
        let from = now.plus_seconds(AHEAD_S);
        let late = self.shelves().flat_map(|(_, shelf)| shelf.iter().rev().take_while(|e| e.happened_at > from));
        let mut all: Vec<&Event> = late.map(std::sync::Arc::as_ref).collect();
        all.sort_by_key(|e| (e.happened_at, e.id));
        all
    }
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;
    use crate::{Correction, EventId, HomeCard, HomeId, Label, Note, Remark, Source, Withdrawal, Zone};
    use uuid::Uuid;

    fn at(text: &str) -> Moment {
        text.parse().unwrap()
    }

    fn event(id: u128, when: &str, body: impl Into<Body>) -> Event {
        Event {
            id: EventId(Uuid::from_u128(id)),
            home: HomeId(Uuid::from_u128(1)),
            animal: None,
            person: None,
            happened_at: at(when),
            zone: Zone::utc(),
            recorded_at: at(when),
            source: Source::Tap,
            body: body.into(),
        }
    }

    fn card(name: &str) -> HomeCard {
        HomeCard { name: Label::new(name).unwrap(), zone: Zone::utc() }
    }

    fn remark() -> Remark {
        Remark { text: Note::new("seen").unwrap() }
    }

    #[test]
    fn a_card_written_now_counts_over_one_whose_clock_was_ahead() {
        let mut story = Story::from_events([event(9, "2031-01-01T00:00:00Z", card("ahead"))]);
        let new = story.in_time(event(2, "2026-03-02T12:00:00Z", card("now"))).unwrap();
        assert_eq!(new.recorded_at, at("2026-03-02T12:00:00Z"), "when it was written down is told as it was");
        story.add(new);
        assert_eq!(story.home().unwrap().name.as_str(), "now");
        // In the right order of time nothing is touched.
        let later = event(3, "2032-01-01T00:00:00Z", card("later"));
        assert_eq!(story.in_time(later.clone()).unwrap(), later);
    }

    #[test]
    fn a_change_written_now_counts_over_one_whose_clock_was_ahead() {
        let first = event(1, "2026-03-02T11:00:00Z", remark());
        let of = first.id;
        let mut story =
            Story::from_events([first.clone(), event(9, "2199-01-01T00:00:00Z", Withdrawal { of, because: None })]);
        assert!(story.ledger().standing(of).is_none());
        let back = Correction { of, happened_at: None, animal: None, body: Box::new(first.body) };
        let back = story.in_time(event(2, "2026-03-02T12:00:00Z", back)).unwrap();
        story.add(back);
        assert!(story.ledger().standing(of).is_some());
        let again = story.in_time(event(3, "2026-03-02T12:01:00Z", Withdrawal { of, because: None })).unwrap();
        story.add(again);
        assert!(story.ledger().standing(of).is_none());
    }

    #[test]
    fn after_the_last_moment_there_is_none_and_that_is_said() {
        let end = "2199-12-31T23:59:59.999Z";
        let (first, of) = (event(1, "2026-03-02T11:00:00Z", remark()), EventId(Uuid::from_u128(1)));
        let story = Story::from_events([
            first,
            event(8, end, Withdrawal { of, because: None }),
            event(9, end, card("for ever")),
        ]);
        let now = "2026-03-02T12:00:00Z";
        let late = story.in_time(event(2, now, card("now"))).unwrap_err();
        assert_eq!((late, late.field()), (TooLate::Card(at(end)), "happened_at"));
        let late = story.in_time(event(3, now, Withdrawal { of, because: None })).unwrap_err();
        assert_eq!((late, late.field()), (TooLate::Amendment(at(end)), "recorded_at"));
    }

    #[test]
    fn events_dated_after_now_are_told_the_soonest_first() {
        let story = Story::from_events([
            event(1, "2026-03-02T12:09:00Z", remark()),
            event(2, "2027-01-01T00:00:00Z", remark()),
            event(3, "2026-03-02T12:11:00Z", card("ahead")),
        ]);
        let ids: Vec<u128> = story.ahead(at("2026-03-02T12:00:00Z")).iter().map(|e| e.id.0.as_u128()).collect();
        assert_eq!(ids, [3, 2]);
        assert!(story.ahead(at("2027-01-01T00:00:00Z")).is_empty());
    }
}
