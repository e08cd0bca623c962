//! What is counted in the readings of one household.

use sayso_advisor::steps::Step;
use std::collections::BTreeMap;

/// What was counted in the readings of one household.
#[derive(Clone, Debug, Default)]
pub(crate) struct Seen {
    pub(crate) kind: &'static str,
    pub(crate) readings: usize,
    pub(crate) words: usize,
    /// Words with no step, or with two.
    pub(crate) not_one: usize,
    /// Words to be stepped back to showing that are invited, anywhere on the page.
    pub(crate) invited_back: usize,
    /// Lines of a plan, and those of them that say otherwise than the word's row.
    pub(crate) planned: usize,
    pub(crate) plan_differs: usize,
    /// Words that end sessions, and those of them taught, invited or set aside as if each were a wish.
    pub(crate) closing: usize,
    pub(crate) closing_taught: usize,
    /// Readings on a day with a strong sign, and those of them with a session or a step but rest.
    pub(crate) strong_today: usize,
    pub(crate) no_rest: usize,
    /// Readings within four weeks of a lasting sign, and those of them in which it is not at the top.
    pub(crate) lasting: usize,
    pub(crate) not_on_top: usize,
    /// Readings with such a sign in three of six weeks, and those that do not say so.
    pub(crate) weekly: usize,
    pub(crate) not_named: usize,
    /// Steps whose first reason has a bar, and those of them whose reason lies on its other side.
    pub(crate) barred: usize,
    pub(crate) contrary: usize,
    /// Plans for a word, each in one way, and those of them that Today would bring in place of what comes first.
    pub(crate) agreed: usize,
    pub(crate) agreed_first: usize,
    pub(crate) steps: BTreeMap<Step, usize>,
    pub(crate) next: BTreeMap<&'static str, usize>,
}
