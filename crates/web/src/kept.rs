//! What was worked out is kept until an event comes: a second visit costs nothing.

use crate::store::Revision;
use sayso_advisor::evidence::{Evidence, evidence};
use sayso_advisor::overview::{WordRow, overview};
use sayso_advisor::patterns::{Patterns, patterns};
use sayso_advisor::stages::{Standing, standings};
use sayso_advisor::stuck::{Weighed, differential};
use sayso_advisor::summary::{Summary, summaries};
use sayso_advisor::today::{Today, today};
use sayso_advisor::{Case, Sums};
use sayso_methods::understanding::UnderstandingError;
use sayso_model::later::AHEAD_S;
use sayso_model::{AnimalId, HomeId, Language, Moment, Story, WordId};
use std::collections::BTreeMap;
use std::sync::{Arc, Mutex, PoisonError};

/// Kept no longer than this, in seconds: figures look back from now.
const FOR_S: f64 = 60.0;
/// Most results kept of a kind.
const MOST: usize = 64;

/// Which records something was worked out from: a log only grows, so its length tells it apart from what it was before.
#[derive(Clone, Copy, PartialEq, Debug)]
struct Of {
    events: usize,
    at: Moment,
    /// When the next event is due that was dated ahead; it was left out.
    next: Option<Moment>,
}

impl Of {
    fn now(story: &Story, now: Moment) -> Self {
        // All that are dated after now, also those within the leeway for clocks that do not agree.
        let next = story.ahead(now.plus_seconds(-AHEAD_S)).first().map(|e| e.happened_at);
        Self { events: story.ledger().len(), at: now, next }
    }

    fn good_for(self, story: &Story, now: Moment) -> bool {
        self.events == story.ledger().len()
            && (0.0..FOR_S).contains(&now.seconds_since(self.at))
            // What holds of a day, such as a rest after a growl, ends with it.
            && now.day(&story.zone()) == self.at.day(&story.zone())
            && self.next.is_none_or(|next| now < next)
    }
}

struct Shelf<K, V>(Mutex<BTreeMap<K, (Of, Arc<V>)>>);

impl<K, V> Default for Shelf<K, V> {
    fn default() -> Self {
        Self(Mutex::default())
    }
}

impl<K: Ord, V> Shelf<K, V> {
    fn get(&self, key: K, story: &Story, now: Moment, work_out: impl FnOnce() -> V) -> Arc<V> {
        // Whoever panicked with it in hand left whole entries behind.
        let lock = || self.0.lock().unwrap_or_else(PoisonError::into_inner);
        if let Some((of, kept)) = lock().get(&key)
            && of.good_for(story, now)
        {
            return Arc::clone(kept);
        }
        // Worked out without the lock: two at once do the same work, but nobody waits.
        let fresh = Arc::new(work_out());
        let mut shelf = lock();
        if shelf.len() >= MOST {
            shelf.clear();
        }
        shelf.insert(key, (Of::now(story, now), Arc::clone(&fresh)));
        fresh
    }
}

/// A word's evidence, none where the animal is taught no such word, and what may hold it up.
pub type OneWord = (Option<Evidence>, Vec<Weighed>);

/// What homes are called beside each other.
pub type Labels = Arc<BTreeMap<HomeId, String>>;

/// Results of the pages that cost most, and what all pages add up.
#[derive(Default)]
pub struct Kept {
    words: Shelf<(HomeId, AnimalId, WordId), OneWord>,
    standings: Shelf<(HomeId, AnimalId), Vec<Standing>>,
    overview: Shelf<(HomeId, AnimalId), Result<Vec<WordRow>, UnderstandingError>>,
    today: Shelf<(HomeId, AnimalId), Option<Today>>,
    patterns: Shelf<(HomeId, AnimalId), Option<Patterns>>,
    summaries: Shelf<(HomeId, AnimalId), Vec<Summary>>,
    sums: Mutex<BTreeMap<HomeId, Sums>>,
    labels: Mutex<BTreeMap<Language, (Revision, Labels)>>,
}

impl Kept {
    /// The evidence of one word.
    pub fn evidence(&self, home: HomeId, case: &Case<'_>, word: WordId) -> Arc<OneWord> {
        let key = (home, case.animal(), word);
        self.words.get(key, case.story(), case.now(), || (evidence(case, word), differential(case, word)))
    }

    /// Where every word of an animal stands.
    pub fn standings(&self, home: HomeId, case: &Case<'_>) -> Arc<Vec<Standing>> {
        self.standings.get((home, case.animal()), case.story(), case.now(), || standings(case).to_vec())
    }

    /// Every word in a row; or why the records contradict themselves.
    pub fn overview(&self, home: HomeId, case: &Case<'_>) -> Arc<Result<Vec<WordRow>, UnderstandingError>> {
        self.overview.get((home, case.animal()), case.story(), case.now(), || overview(case))
    }

    /// What to do now; none for an animal the story does not know.
    pub fn today(&self, home: HomeId, case: &Case<'_>) -> Arc<Option<Today>> {
        self.today.get((home, case.animal()), case.story(), case.now(), || today(case))
    }

    /// What shows in presses and choices; none for an animal the story does not know.
    pub fn patterns(&self, home: HomeId, case: &Case<'_>) -> Arc<Option<Patterns>> {
        self.patterns.get((home, case.animal()), case.story(), case.now(), || patterns(case))
    }

    /// A row for each word of an animal that was shown, as it may be given for norms.
    pub fn summaries(&self, home: HomeId, case: &Case<'_>) -> Arc<Vec<Summary>> {
        self.summaries
            .get((home, case.animal()), case.story(), case.now(), || summaries(case.story(), case.animal(), case.now()))
    }

    /// What homes are called beside each other, where the log has not grown since.
    pub fn labels(&self, at: Revision, language: Language) -> Option<Labels> {
        let kept = self.labels.lock().unwrap_or_else(PoisonError::into_inner);
        kept.get(&language).filter(|(of, _)| *of == at).map(|(_, labels)| Arc::clone(labels))
    }

    /// Keeps what homes are called, as of a place in the log.
    pub fn keep_labels(&self, at: Revision, language: Language, labels: Labels) {
        self.labels.lock().unwrap_or_else(PoisonError::into_inner).insert(language, (at, labels));
    }

    /// Sums over the weeks of a home, shared by all its pages; they hold as long as nobody touches those weeks.
    pub fn sums(&self, home: HomeId) -> Sums {
        self.sums.lock().unwrap_or_else(PoisonError::into_inner).entry(home).or_default().clone()
    }
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;

    #[test]
    fn kept_until_an_event_comes_or_a_minute_is_over() {
        let now = Moment::clamped(1_800_000_000_000);
        let shelf: Shelf<u8, usize> = Shelf::default();
        let mut story = Story::default();
        assert_eq!(*shelf.get(1, &story, now, || 1), 1);
        assert_eq!(*shelf.get(1, &story, now.plus_seconds(59.0), || 2), 1, "kept");
        assert_eq!(*shelf.get(2, &story, now, || 3), 3, "another's own");
        story.add(sayso_sim::samples().remove(0));
        assert_eq!(*shelf.get(1, &story, now.plus_seconds(59.0), || 4), 4, "an event came");
        assert_eq!(*shelf.get(1, &story, now.plus_seconds(119.0), || 5), 5, "a minute is over");
        assert_eq!(*shelf.get(1, &story, now, || 6), 6, "a clock set back");
    }

    #[test]
    fn kept_no_longer_than_the_day() {
        let midnight = Moment::clamped(1_800_000_000_000).day(&sayso_model::Zone::utc()).plus(1);
        let midnight = midnight.start(&sayso_model::Zone::utc());
        let (shelf, story): (Shelf<u8, usize>, _) = (Shelf::default(), Story::default());
        assert_eq!(*shelf.get(1, &story, midnight.plus_seconds(-20.0), || 1), 1);
        assert_eq!(*shelf.get(1, &story, midnight.plus_seconds(-1.0), || 2), 1, "the same day");
        assert_eq!(*shelf.get(1, &story, midnight.plus_seconds(1.0), || 3), 3, "another day");
    }

    #[test]
    fn kept_no_longer_than_until_an_event_dated_ahead_is_due() {
        let now = Moment::clamped(1_800_000_000_000);
        let shelf: Shelf<u8, usize> = Shelf::default();
        let mut story = Story::default();
        let mut event = sayso_sim::samples().remove(0);
        event.happened_at = now.plus_seconds(20.0);
        story.add(event);
        assert_eq!(*shelf.get(1, &story, now, || 1), 1);
        assert_eq!(*shelf.get(1, &story, now.plus_seconds(19.0), || 2), 1, "not due yet");
        assert_eq!(*shelf.get(1, &story, now.plus_seconds(20.0), || 3), 3, "due");
        assert_eq!(*shelf.get(1, &story, now.plus_seconds(70.0), || 4), 3, "kept, now that it is counted");
    }
}
