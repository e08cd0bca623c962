//! How an experiment is run: seeds, sizes, both cores, progress.

use crate::error::LabError;
use std::sync::atomic::{AtomicUsize, Ordering};
use std::sync::{Mutex, PoisonError};
use std::time::{Duration, Instant};

/// Between two lines of progress.
const TELL_EVERY: Duration = Duration::from_secs(5);

/// The frame of a run: one seed, small or whole.
#[derive(Clone, Copy, Debug)]
pub struct Work {
    /// Seed every other seed follows from.
    pub seed: u64,
    /// Small numbers: does the machinery work?
    pub quick: bool,
}

/// The seed of one learner: the run's seed and the experiment's name, mixed (SplitMix64, Steele et al. 2014), plus the index.
fn seed_of(seed: u64, what: &str, index: usize) -> u64 {
    let mut z = seed;
    for byte in what.bytes().chain(index.to_le_bytes()) {
        z = (z ^ u64::from(byte)).wrapping_add(0x9E37_79B9_7F4A_7C15);
        z = (z ^ (z >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
        z ^= z >> 31;
    }
    z
}

impl Work {
    /// How many learners: `full`, or `quick` in a quick run.
    pub const fn size(&self, full: usize, quick: usize) -> usize {
        if self.quick { quick } else { full }
    }

    /// The first of an experiment's own seeds: `usual` itself in a run of seed 1.
    pub const fn first(&self, usual: u64) -> u64 {
        usual.wrapping_add(self.seed).wrapping_sub(1)
    }

    /// Runs `n` learners of the experiment `what`, each with its own seed; answers come in the order of the learners, whatever
    /// thread they ran on, so the same seed gives the same tables.
    ///
    /// # Errors
    /// The first error of a learner.
    pub fn each<T: Send>(
        &self,
        what: &str,
        n: usize,
        animal: impl Fn(u64) -> Result<T, LabError> + Sync,
    ) -> Result<Vec<T>, LabError> {
        let begun = Instant::now();
        let told = Mutex::new(Instant::now());
        let answers = side_by_side(n, |index, tells| {
            let answer = animal(seed_of(self.seed, what, index));
            // One thread tells how far all are.
            if tells {
                let mut told = told.lock().unwrap_or_else(PoisonError::into_inner);
                if told.elapsed() > TELL_EVERY {
                    *told = Instant::now();
                    eprintln!("  {what}: {index} of {n}, {:.0} s", begun.elapsed().as_secs_f64());
                }
            }
            answer
        });
        answers.into_iter().collect()
    }
}

/// Answers to the numbers below `n`, in their order, worked out on all processors. `one` is also told whether it runs on
/// the first of the threads.
pub(crate) fn side_by_side<T: Send>(n: usize, one: impl Fn(usize, bool) -> T + Sync) -> Vec<T> {
    let next = AtomicUsize::new(0);
    let run = |first: bool| {
        let mut done = Vec::new();
        loop {
            let index = next.fetch_add(1, Ordering::Relaxed);
            if index >= n {
                return done;
            }
            done.push((index, one(index, first)));
        }
    };
    let threads = std::thread::available_parallelism().map_or(1, std::num::NonZero::get).min(n.max(1));
    let mut all: Vec<(usize, T)> = std::thread::scope(|scope| {
        let others: Vec<_> = (1..threads).map(|_| scope.spawn(|| run(false))).collect();
        let mut all = run(true);
        for other in others {
            match other.join() {
                Ok(done) => all.extend(done),
                Err(panic) => std::panic::resume_unwind(panic),
            }
        }
        all
    });
    all.sort_by_key(|(index, _)| *index);
    all.into_iter().map(|(_, answer)| answer).collect()
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used)]
    use super::*;

    #[test]
    fn animals_come_in_order_with_seeds_of_their_own() {
        let work = Work { seed: 3, quick: true };
        let seeds = work.each("a", 100, Ok).unwrap();
        assert_eq!(seeds, work.each("a", 100, Ok).unwrap());
        let mut all: Vec<u64> = seeds.iter().chain(&work.each("b", 100, Ok).unwrap()).copied().collect();
        all.sort_unstable();
        all.dedup();
        assert_eq!(all.len(), 200);
    }
}
