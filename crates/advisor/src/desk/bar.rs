//! How small a p-value must be to count, given everything that was looked at on this desk.
//!
//! Source: Benjamini & Hochberg 1995, over every look of every animal, whatever it found; joining, presses and waits each by
//! themselves, for each is a question of its own, and looks that seldom find anything would hide what another finds. Read at
//! any one moment, at most one in twenty of what stands on the desk as a change of one of them is chance; where nothing
//! changed anywhere, each tells of something in one reading in twenty.

use super::line::{Held, Line, Look, Measure, WordLine};
use sayso_methods::stats::benjamini_hochberg;
use std::collections::BTreeMap;

/// Share of what is told that may be chance.
const FALSE_SHARE: f64 = 0.05;

/// The largest p-values that count: 0 where none does.
#[derive(Clone, PartialEq, Debug)]
pub struct Bar {
    changes: BTreeMap<Measure, f64>,
    cause: f64,
}

impl Bar {
    /// The bar over all lines of a desk.
    #[must_use]
    pub fn over<'a>(lines: impl IntoIterator<Item = &'a Line>) -> Self {
        let (mut looks, mut causes, mut looked): (BTreeMap<Measure, Vec<f64>>, Vec<f64>, usize) = Default::default();
        for line in lines {
            line.looks.iter().for_each(|look| looks.entry(look.measure).or_default().push(look.p));
            causes.extend(line.words.iter().filter_map(|w| w.held.and_then(|h| h.p)));
            looked += line.words.iter().map(|w| w.looked).sum::<usize>();
        }
        // Of causes only the best supported are kept; the others count with what was looked at.
        causes.resize(causes.len().max(looked), 1.0);
        let changes = looks.into_iter().map(|(measure, all)| (measure, largest(&all))).collect();
        Self { changes, cause: largest(&causes) }
    }

    /// Whether a change counts.
    #[must_use]
    pub fn change(&self, look: &Look) -> bool {
        look.p <= self.changes.get(&look.measure).copied().unwrap_or(0.0)
    }

    /// The cause of a word that may be told: a word that gets on is held up only by what counts among everything looked at.
    #[must_use]
    pub fn cause_of(&self, word: &WordLine) -> Option<Held> {
        word.held.filter(|held| word.stuck.is_some() || held.p.is_some_and(|p| p <= self.cause))
    }
}

/// The largest that is rejected; 0 where none is.
fn largest(p: &[f64]) -> f64 {
    let Ok(found) = benjamini_hochberg(p, FALSE_SHARE) else { return 0.0 };
    let kept = p.iter().zip(&found.is_rejected).filter(|(_, rejected)| **rejected).map(|(p, _)| *p);
    kept.fold(0.0, f64::max)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_counts_alone_does_not_count_among_many() {
        assert!(largest(&[0.01]) > 0.0);
        let many: Vec<f64> = std::iter::once(0.01).chain(std::iter::repeat_n(0.5, 99)).collect();
        assert!(largest(&many) == 0.0, "one in a hundred is what chance brings");
        assert!(largest(&[]) == 0.0);
    }
}
