//! Orders of two conditions in quick turn, with short runs: counted, so that one can be drawn fairly or all be listed.
//!
//! Source of the rule (at most two of a kind in a row): Onghena & Edgington 1994, Behav Res Ther 32:783 (from memory). The
//! counting is a plain recursion over points left. Page: `docs/methods/single-case.md`.

/// Points of one condition in a row at most.
pub(super) const LONGEST_RUN: usize = 2;

/// How many of the points may be changed: half of them, or either half where the number is odd.
pub(super) fn quotas(points: usize) -> Vec<usize> {
    if points.is_multiple_of(2) { vec![points / 2] } else { vec![points / 2, points / 2 + 1] }
}

/// Counts of two-condition orders with short runs, by points left, changed ones left and the run so far.
pub(super) struct Runs {
    points: usize,
    /// `[left][changed left][state]`; state 0 at the start, then 1 + condition * LONGEST_RUN + run - 1.
    ways: Vec<Vec<[u128; 1 + 2 * LONGEST_RUN]>>,
}

impl Runs {
    pub(super) fn new(points: usize) -> Self {
        let mut ways = vec![vec![[0; 1 + 2 * LONGEST_RUN]; points + 1]; points + 1];
        ways[0][0] = [1; 1 + 2 * LONGEST_RUN];
        for left in 1..=points {
            for changed in 0..=left {
                for state in 0..=2 * LONGEST_RUN {
                    ways[left][changed][state] = [0, 1]
                        .into_iter()
                        .filter_map(|condition| {
                            let rest = changed.checked_sub(condition)?;
                            Some(ways[left - 1][rest][step(state, condition)?])
                        })
                        .sum();
                }
            }
        }
        Self { points, ways }
    }

    /// Orders of the whole length (`done` 0) or the rest of it, with `changed` still to come.
    pub(super) fn ways(&self, changed: usize, done: usize, state: usize) -> u128 {
        self.ways[self.points - done][changed][state]
    }

    /// The `pick`-th order with `changed` points changed.
    pub(super) fn nth(&self, mut changed: usize, mut pick: u128) -> Vec<u8> {
        let (mut state, mut order) = (0, Vec::with_capacity(self.points));
        for done in 1..=self.points {
            let usual = step(state, 0).map_or(0, |next| self.ways(changed, done, next));
            let condition = usize::from(pick >= usual);
            if condition == 1 {
                pick -= usual;
                changed = changed.saturating_sub(1);
            }
            state = step(state, condition).unwrap_or(0);
            order.push(condition as u8);
        }
        order
    }
}

/// The state after one more point of a condition; none where the run would be too long.
fn step(state: usize, condition: usize) -> Option<usize> {
    let first = 1 + condition * LONGEST_RUN;
    if !(first..first + LONGEST_RUN).contains(&state) {
        return Some(first);
    }
    (state + 1 < first + LONGEST_RUN).then_some(state + 1)
}
