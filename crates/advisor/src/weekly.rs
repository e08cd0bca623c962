//! What was worked out of single weeks, kept for as long as nobody touches those weeks.

use sayso_model::{Moment, Story, Week};
use std::collections::BTreeMap;
use std::sync::{Arc, Mutex, PoisonError};

/// One result a week for each key, with the mark of the records it was made from ([`Story::mark_of_weeks`]).
#[derive(Debug)]
pub(crate) struct Weekly<K, T>(Mutex<BTreeMap<K, Weeks<T>>>);

type Weeks<T> = BTreeMap<Week, (u64, Arc<T>)>;

impl<K, T> Default for Weekly<K, T> {
    fn default() -> Self {
        Self(Mutex::default())
    }
}

impl<K: Ord, T> Weekly<K, T> {
    /// The results of all weeks up to that of `last`, oldest first. `read` may look at the week and the ones beside it, and
    /// must tell the same of a `settled` week as long as these tell the same; those that are not settled are read each time.
    pub(crate) fn all(
        &self,
        key: K,
        story: &Story,
        last: Moment,
        settled: impl Fn(Week) -> bool,
        read: impl Fn(Week) -> T,
    ) -> Vec<Arc<T>> {
        let Some((mut week, end)) = story.weeks() else { return Vec::new() };
        // Whoever panicked with it in hand left whole weeks behind. Two at once: the second finds the work done.
        let mut all = self.0.lock().unwrap_or_else(PoisonError::into_inner);
        let kept = all.entry(key).or_default();
        let mut found = Vec::new();
        while week <= end.min(Week::of(last)) {
            let mark = story.mark_of_weeks(week.plus(-1)..=week.plus(1));
            found.push(match kept.get(&week).filter(|(of, _)| *of == mark && settled(week)) {
                Some((_, same)) => Arc::clone(same),
                None => {
                    let fresh = Arc::new(read(week));
                    if settled(week) {
                        kept.insert(week, (mark, Arc::clone(&fresh)));
                    }
                    fresh
                }
            });
            week = week.plus(1);
        }
        found
    }
}
