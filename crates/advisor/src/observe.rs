//! What the methods need, taken out of a story: showings, requests, usable invitations, days.

use sayso_model::{
    Accident, AnimalId, Answer, Day, Delivery, EventId, Fact, Invitation, InvitationResult, Moment, Press, PressedBy,
    SessionId, Story, WordId, Zone,
};
use std::collections::{BTreeMap, BTreeSet};

/// A delivery that names no press answers the last unanswered press of its word within this many seconds.
pub(crate) const ANSWERS_WITHIN_S: f64 = 120.0;
/// A delivery answers the press it names only if it is dated this near to it, in days: further off, one of the two times is
/// wrong, and looking no further keeps the work of a day from growing with the log.
pub(crate) const NAMED_WITHIN_DAYS: f64 = 3.0;

/// A press and how it was answered.
#[derive(Clone, Copy, Debug)]
pub struct Answered<'a> {
    /// The press.
    pub press: Fact<'a, Press>,
    /// Its answer, if recorded.
    pub delivery: Option<Fact<'a, Delivery>>,
}

impl Answered<'_> {
    /// Seconds from press to delivery: as measured by the person, else from the two times.
    #[must_use]
    pub fn delay_s(&self) -> Option<f64> {
        let delivery = self.delivery?;
        let between = delivery.at().seconds_since(self.press.at());
        delivery.part.delay_s.map(|s| s.get()).or_else(|| (0.0..=600.0).contains(&between).then_some(between))
    }

    /// Whether something was given in answer.
    #[must_use]
    pub fn given(&self) -> bool {
        self.delivery.is_some_and(|d| matches!(d.part.answer, Answer::Given | Answer::Partly))
    }
}

/// Presses of one animal from `from` up to `to` (both included) with their answers as known at `now`, by time.
///
/// A delivery answers the press it names if it is dated within three days of it; one that names none, the last
/// unanswered press of its word within two minutes before it.
#[must_use]
pub fn answered_between(
    story: &Story,
    animal: AnimalId,
    (from, to): (Moment, Moment),
    now: Moment,
) -> Vec<Answered<'_>> {
    // Deliveries after `to` may belong to presses after `to` just as well.
    let upto = to.plus_seconds(ANSWERS_WITHIN_S).min(now);
    let mut all: Vec<Answered<'_>> =
        story.between::<Press>(animal, from, upto).map(|press| Answered { press, delivery: None }).collect();
    let mut index: Vec<(EventId, usize)> = all.iter().enumerate().map(|(i, a)| (a.press.id(), i)).collect();
    index.sort_unstable();
    let place = |id: EventId| index.binary_search_by_key(&id, |(id, _)| *id).ok().map(|at| index[at].1);
    let apart = NAMED_WITHIN_DAYS * 86_400.0;
    let mut loose = Vec::new();
    for delivery in story.between::<Delivery>(animal, from.plus_seconds(-apart), upto.plus_seconds(apart).min(now)) {
        match delivery.part.answers.map(|id| place(story.same_press(id).unwrap_or(id))) {
            Some(Some(i)) if delivery.at().seconds_since(all[i].press.at()).abs() <= apart => {
                all[i].delivery = all[i].delivery.or(Some(delivery));
            }
            Some(_) => {}
            None => loose.push(delivery),
        }
    }
    for delivery in loose {
        let upto = all.partition_point(|a| a.press.at() <= delivery.at());
        let found = all[..upto]
            .iter_mut()
            .rev()
            .take_while(|a| delivery.at().seconds_since(a.press.at()) <= ANSWERS_WITHIN_S)
            .find(|a| a.delivery.is_none() && a.press.part.word == delivery.part.word);
        if let Some(a) = found {
            a.delivery = Some(delivery);
        }
    }
    all.truncate(all.partition_point(|a| a.press.at() <= to));
    all
}

/// Showings: a person's own presses followed by their delivery.
#[must_use]
pub fn showings<'a>(answered: &[Answered<'a>], word: Option<WordId>) -> Vec<Answered<'a>> {
    answered
        .iter()
        .filter(|a| a.press.part.by == PressedBy::Person && a.given())
        .filter(|a| word.is_none_or(|w| a.press.part.word == w))
        .copied()
        .collect()
}

/// Whether a press counts for what is said of understanding: the animal's own, unless somebody judged that it looked like a
/// stumble. That one is answered all the same, so answers, demand and slips count it; see `docs/decisions/stumbles.md`.
#[must_use]
pub fn meant(press: &Press) -> bool {
    press.by == PressedBy::Animal && press.accident != Accident::Likely
}

/// The animal's own presses, in or out of sessions, by accident or not.
#[must_use]
pub fn own_presses<'a>(answered: &[Answered<'a>], word: Option<WordId>) -> Vec<Answered<'a>> {
    answered
        .iter()
        .filter(|a| a.press.part.by == PressedBy::Animal)
        .filter(|a| word.is_none_or(|w| a.press.part.word == w))
        .copied()
        .collect()
}

/// The animal's own presses that count for understanding: see [`meant`].
#[must_use]
pub fn meant_presses<'a>(answered: &[Answered<'a>], word: Option<WordId>) -> Vec<Answered<'a>> {
    own_presses(answered, word).into_iter().filter(|a| meant(a.press.part)).collect()
}

/// An invitation in which the animal was there and wanted the thing.
#[derive(Clone, Copy, Debug)]
pub struct Usable<'a> {
    /// The invitation.
    pub invitation: Fact<'a, Invitation>,
    /// Whether a button was pressed within the wait, whichever.
    pub pressed: bool,
    /// Whether it was the invited word's.
    pub right: bool,
    /// Seconds to the press, or to the end of watching.
    pub seconds: f64,
}

/// A press at an invitation, whatever was wanted: leaving out those that did not fit would make the rest look right.
#[derive(Clone, Copy, Debug)]
pub struct PressedAt<'a> {
    /// The invitation.
    pub invitation: Fact<'a, Invitation>,
    /// The word pressed.
    pub word: WordId,
}

impl PressedAt<'_> {
    /// Whether the invited word was pressed.
    #[must_use]
    pub fn right(&self) -> bool {
        self.word == self.invitation.part.word
    }
}

/// Invitations of one word, sorted for the two figures that are always apart: pressed, of wanted; right, of presses.
#[derive(Clone, Debug, Default)]
pub struct Invitations<'a> {
    /// Those in which it had joined and took the thing when it was given.
    pub usable: Vec<Usable<'a>>,
    /// Those in which it pressed, wanted or not.
    pub presses: Vec<PressedAt<'a>>,
    /// The animal left, had not joined, or did not take the thing when it was given: it did not want it then.
    pub not_wanted: usize,
    /// It answered in its own way: it wanted the thing and said so without a button.
    pub without_button: usize,
    /// Not recorded whether it took the thing.
    pub unrecorded: usize,
}

impl Invitations<'_> {
    /// All invitations of the word.
    #[must_use]
    pub fn total(&self) -> usize {
        self.usable.len() + self.not_wanted + self.unrecorded
    }

    /// Presses of the invited word, of presses.
    #[must_use]
    pub fn right(&self) -> (usize, usize) {
        (self.presses.iter().filter(|p| p.right()).count(), self.presses.len())
    }

    /// Presses of any word, of wanted.
    #[must_use]
    pub fn pressed(&self) -> (usize, usize) {
        (self.usable.iter().filter(|u| u.pressed).count(), self.usable.len())
    }
}

/// Every press at one of these invitations, of whatever word.
pub(crate) fn invited_presses<'a>(all: &[Fact<'a, Invitation>]) -> Vec<PressedAt<'a>> {
    all.iter()
        .filter_map(|&invitation| match invitation.part.result {
            InvitationResult::Pressed { word, .. } => Some(PressedAt { invitation, word }),
            _ => None,
        })
        .collect()
}

/// Sorts invitations by word. Not pressing is never scored as not knowing: of those without a press only the ones count in
/// which the animal had joined (where it was a session) and took the thing when it was given.
pub(crate) fn invitations<'a>(
    all: &[Fact<'a, Invitation>],
    joined: &BTreeSet<SessionId>,
) -> BTreeMap<WordId, Invitations<'a>> {
    let mut by_word: BTreeMap<WordId, Invitations<'a>> = BTreeMap::new();
    for &invitation in all {
        let part = invitation.part;
        let sorted = by_word.entry(part.word).or_default();
        let (pressed, seconds) = match part.result {
            InvitationResult::Left { .. } => {
                sorted.not_wanted += 1;
                continue;
            }
            InvitationResult::Pressed { word, after_s } => {
                sorted.presses.push(PressedAt { invitation, word });
                (Some(word), after_s.get())
            }
            InvitationResult::NothingByWait => (None, part.wait_s.get()),
            InvitationResult::WithoutButton { after_s } => {
                (None, after_s.unwrap_or(part.wait_s).get().min(part.wait_s.get()))
            }
        };
        match part.took {
            _ if part.session.is_some_and(|s| !joined.contains(&s)) => sorted.not_wanted += 1,
            Some(true) => {
                sorted.without_button += usize::from(matches!(part.result, InvitationResult::WithoutButton { .. }));
                let right = pressed == Some(part.word);
                sorted.usable.push(Usable { invitation, pressed: pressed.is_some(), right, seconds });
            }
            Some(false) => sorted.not_wanted += 1,
            None => sorted.unrecorded += 1,
        }
    }
    by_word
}

/// Counts by household day, days without any being absent.
#[must_use]
pub fn by_day(moments: impl IntoIterator<Item = Moment>, zone: &Zone) -> BTreeMap<Day, usize> {
    let mut days = BTreeMap::new();
    for at in moments {
        *days.entry(at.day(zone)).or_insert(0) += 1;
    }
    days
}

/// Counts by local hour, 0 to 23.
#[must_use]
pub fn by_hour(moments: impl IntoIterator<Item = Moment>, zone: &Zone) -> [usize; 24] {
    let mut hours = [0; 24];
    for at in moments {
        hours[usize::from(at.hour(zone)).min(23)] += 1;
    }
    hours
}

/// Hours of watching in each local hour of the day, from the day of `from` to `to`; days of 23 and 25 hours count as such.
#[must_use]
pub fn hours_of_exposure(from: Moment, to: Moment, zone: &Zone) -> [f64; 24] {
    let mut hours = [0.0; 24];
    let quarter = 900.0;
    let mut at = from.day(zone).start(zone);
    while at < to {
        hours[usize::from(at.hour(zone)).min(23)] += to.seconds_since(at).min(quarter) / 3600.0;
        at = at.plus_seconds(quarter);
    }
    hours
}

/// Events of the last `days` household days up to `now`, today included.
#[must_use]
pub fn since(now: Moment, days: i32, zone: &Zone) -> Moment {
    now.day(zone).plus(1 - days).start(zone)
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;
    use sayso_model::{Body, Event, EventId, HomeId, Source};
    use serde_json::json;
    use uuid::Uuid;

    #[test]
    fn a_delivery_that_answers_a_heard_press_answers_the_tapped_one_that_counts() {
        let at = Moment::clamped(1_800_000_000_000);
        let (animal, word) = (AnimalId(Uuid::from_u128(1)), WordId(Uuid::from_u128(2)));
        let event = |n, source, after_s, body: serde_json::Value| Event {
            id: EventId(Uuid::from_u128(n)),
            home: HomeId(Uuid::from_u128(3)),
            animal: Some(animal),
            person: None,
            happened_at: at.plus_seconds(after_s),
            zone: Zone::utc(),
            recorded_at: at,
            source,
            body: serde_json::from_value::<Body>(body).unwrap(),
        };
        let heard = json!({ "kind": "press", "word": word, "by": "unknown", "certainty": 0.9 });
        let tapped = json!({ "kind": "press", "word": word, "by": "animal" });
        let answer = json!({ "kind": "delivery", "answers": Uuid::from_u128(10), "word": word, "answer": "given" });
        let story = Story::from_events([
            event(10, Source::Heard, 0.0, heard),
            event(11, Source::Tap, 0.8, tapped),
            event(12, Source::Tap, 3.0, answer),
        ]);
        let all = answered_between(&story, animal, (at, at.plus_seconds(60.0)), at.plus_seconds(60.0));
        assert_eq!(all.len(), 1, "one press, told twice");
        assert!(all[0].press.id() == EventId(Uuid::from_u128(11)) && all[0].given());
    }
}
