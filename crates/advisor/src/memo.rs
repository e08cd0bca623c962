//! Results kept beside all they were worked out from: the same figures in, the same result out, without working it out again.

use std::collections::BTreeMap;
use std::sync::{Mutex, PoisonError};

/// The last result for each key, with what went into it.
#[derive(Debug)]
pub(crate) struct Memo<K, I, O>(Mutex<BTreeMap<K, (I, O)>>);

impl<K, I, O> Default for Memo<K, I, O> {
    fn default() -> Self {
        Self(Mutex::default())
    }
}

impl<K: Ord, I: PartialEq, O: Clone> Memo<K, I, O> {
    /// The result of `work`, which must follow from `input` alone.
    pub(crate) fn get(&self, key: K, input: I, work: impl FnOnce(&I) -> O) -> O {
        // Whoever panicked with it in hand left whole entries behind.
        let lock = || self.0.lock().unwrap_or_else(PoisonError::into_inner);
        if let Some((of, kept)) = lock().get(&key)
            && *of == input
        {
            return kept.clone();
        }
        // Worked out without the lock: two at once do the same work, but nobody waits.
        let fresh = work(&input);
        lock().insert(key, (input, fresh.clone()));
        fresh
    }
}
