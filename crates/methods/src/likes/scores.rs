//! Scores of preference assessments as published, with exact intervals.
//!
//! Sources: single item: G. M. Pace et al. (1985), J Appl Behav Anal 18:249. Paired: W. Fisher et al. (1992), 25:491. Multiple
//! without replacement: I. G. DeLeon & B. A. Iwata (1996), 29:519. Free access: H. S. Roane et al. (1998), 31:605.
//!
//! The intervals (Clopper-Pearson) take each offer as a trial of its own; offers within a session hang together somewhat, so
//! read them as the least uncertainty there is.

use super::{LikesError, PairOutcome, PairTrial, Ranking, check_item};
use crate::stats::{Interval, Level, Proportion, StatsError, student_t_quantile};

/// Counts of one item offered alone.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct SingleItem {
    /// Times presented.
    pub presented: u64,
    /// Times approached.
    pub approached: u64,
}

/// Times chosen over times offered, for one item.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ChoiceScore {
    /// The item.
    pub item: usize,
    /// Times chosen, and times offered.
    pub count: Proportion,
    /// Exact interval of the share; 0 to 1 if it was never offered.
    pub interval: Interval,
}

impl ChoiceScore {
    fn new(item: usize, chosen: u64, offered: u64, level: Level) -> Result<Self, LikesError> {
        let count = Proportion::new(chosen, offered)?;
        Ok(Self { item, count, interval: count.clopper_pearson(level) })
    }

    /// Score in percent; `None` if it was never offered.
    pub fn percent(&self) -> Option<f64> {
        self.count.share().map(|s| 100.0 * s)
    }
}

fn scores(chosen: &[u64], offered: &[u64], level: Level) -> Result<Vec<ChoiceScore>, LikesError> {
    chosen.iter().zip(offered).enumerate().map(|(item, (c, o))| ChoiceScore::new(item, *c, *o, level)).collect()
}

/// Approaches over presentations, per item in the order given.
///
/// # Errors
/// [`LikesError::Stats`] if an item was approached more often than presented.
///
/// ```
/// use sayso_methods::likes::{SingleItem, single_item_scores};
/// use sayso_methods::stats::Level;
/// let scores = single_item_scores(&[SingleItem { presented: 8, approached: 7 }], Level::P95)?;
/// assert_eq!(scores[0].percent(), Some(87.5));
/// # Ok::<(), sayso_methods::likes::LikesError>(())
/// ```
pub fn single_item_scores(items: &[SingleItem], level: Level) -> Result<Vec<ChoiceScore>, LikesError> {
    let (chosen, offered): (Vec<u64>, Vec<u64>) = items.iter().map(|i| (i.approached, i.presented)).unzip();
    scores(&chosen, &offered, level)
}

/// Times chosen over times offered in pairs. A trial with neither taken counts as offered; with both, as chosen for both.
///
/// # Errors
/// [`LikesError::UnknownItem`], or [`LikesError::Repeated`] for an item offered with itself.
///
/// ```
/// use sayso_methods::likes::{PairOutcome, PairTrial, paired_scores};
/// use sayso_methods::stats::Level;
/// let trials = [
///     PairTrial { left: 0, right: 1, outcome: PairOutcome::Left },
///     PairTrial { left: 1, right: 0, outcome: PairOutcome::Neither },
/// ];
/// let scores = paired_scores(2, &trials, Level::P95)?;
/// assert_eq!((scores[0].percent(), scores[1].percent()), (Some(50.0), Some(0.0)));
/// # Ok::<(), sayso_methods::likes::LikesError>(())
/// ```
pub fn paired_scores(items: usize, trials: &[PairTrial], level: Level) -> Result<Vec<ChoiceScore>, LikesError> {
    let (mut chosen, mut offered) = (vec![0; items], vec![0; items]);
    for trial in trials {
        trial.check(items)?;
        offered[trial.left] += 1;
        offered[trial.right] += 1;
        if let Some(item) = trial.chosen() {
            chosen[item] += 1;
        } else if trial.outcome == PairOutcome::Both {
            chosen[trial.left] += 1;
            chosen[trial.right] += 1;
        }
    }
    scores(&chosen, &offered, level)
}

/// Times chosen over times offered in arrays that shrink with each choice. An array turned away from counts as offered.
///
/// # Errors
/// [`LikesError::UnknownItem`], or [`LikesError::Repeated`] for an item twice in an array.
///
/// ```
/// use sayso_methods::likes::{Ranking, multiple_scores};
/// use sayso_methods::stats::Level;
/// let scores = multiple_scores(2, &[Ranking::turned_away(&[0], &[1])], Level::P95)?;
/// assert_eq!((scores[1].count.k(), scores[1].count.n()), (0, 2));
/// # Ok::<(), sayso_methods::likes::LikesError>(())
/// ```
pub fn multiple_scores(items: usize, sessions: &[Ranking], level: Level) -> Result<Vec<ChoiceScore>, LikesError> {
    let (mut chosen, mut offered) = (vec![0; items], vec![0; items]);
    for session in sessions {
        session.check(items)?;
        for (at, item) in session.chosen.iter().enumerate() {
            chosen[*item] += 1;
            session.chosen[at..].iter().chain(&session.left_over).for_each(|i| offered[*i] += 1);
        }
        if session.turned_away {
            session.left_over.iter().for_each(|i| offered[*i] += 1);
        }
    }
    scores(&chosen, &offered, level)
}

/// One session with several items within reach at once.
#[derive(Debug, Clone, PartialEq)]
pub struct FreeAccessSession {
    /// Length of the session, seconds.
    pub session_s: f64,
    /// Items within reach and the seconds the learner was busy with each.
    pub engaged_s: Vec<(usize, f64)>,
}

/// Share of the time an item held the learner.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct FreeAccessScore {
    /// The item.
    pub item: usize,
    /// Seconds engaged, all sessions.
    pub engaged_s: f64,
    /// Seconds it was within reach.
    pub available_s: f64,
    /// Interval of the share from the spread between sessions (Student's t on the ratio, kept within 0 and 1); `None` below
    /// three sessions, because one session's seconds say nothing about the next.
    pub interval: Option<Interval>,
    /// Sessions with the item within reach.
    pub sessions: usize,
}

impl FreeAccessScore {
    /// Score in percent; `None` if it was never within reach.
    pub fn percent(&self) -> Option<f64> {
        (self.available_s > 0.0).then(|| 100.0 * self.engaged_s / self.available_s)
    }
}

/// Seconds engaged over session seconds.
///
/// # Errors
/// [`LikesError::UnknownItem`], [`LikesError::Repeated`]; [`LikesError::Stats`] for a length that is not positive or an
/// engagement that is negative or longer than its session.
///
/// ```
/// use sayso_methods::likes::{FreeAccessSession, free_access_scores};
/// use sayso_methods::stats::Level;
/// let session = FreeAccessSession { session_s: 300.0, engaged_s: vec![(0, 141.0), (1, 36.0)] };
/// assert_eq!(free_access_scores(2, &[session], Level::P95)?[0].percent(), Some(47.0));
/// # Ok::<(), sayso_methods::likes::LikesError>(())
/// ```
pub fn free_access_scores(
    items: usize,
    sessions: &[FreeAccessSession],
    level: Level,
) -> Result<Vec<FreeAccessScore>, LikesError> {
    let mut by_item: Vec<Vec<(f64, f64)>> = vec![Vec::new(); items];
    for session in sessions {
        let length = session.session_s;
        if !(length > 0.0 && length.is_finite()) {
            return Err(StatsError::OutOfRange { what: "session length", value: length }.into());
        }
        let mut seen = vec![false; items];
        for (item, engaged) in &session.engaged_s {
            check_item(*item, items)?;
            if std::mem::replace(&mut seen[*item], true) {
                return Err(LikesError::Repeated { item: *item });
            }
            if !(*engaged >= 0.0 && *engaged <= length) {
                return Err(StatsError::OutOfRange { what: "seconds engaged", value: *engaged }.into());
            }
            by_item[*item].push((*engaged, length));
        }
    }
    by_item.iter().enumerate().map(|(item, seen)| free_access_score(item, seen, level)).collect()
}

fn free_access_score(item: usize, seen: &[(f64, f64)], level: Level) -> Result<FreeAccessScore, LikesError> {
    let n = seen.len();
    let engaged_s: f64 = seen.iter().map(|s| s.0).sum();
    let available_s: f64 = seen.iter().map(|s| s.1).sum();
    let mut interval = None;
    if n >= 3 {
        let ratio = engaged_s / available_s;
        let spread: f64 = seen.iter().map(|(e, t)| (e - ratio * t).powi(2)).sum();
        let error = (n as f64 / (n - 1) as f64 * spread).sqrt() / available_s;
        // No spread at all is no proof of certainty: a point is not given out as an interval.
        if error > 0.0 {
            let half = student_t_quantile(1.0 - level.tail(), (n - 1) as f64)? * error;
            interval = Some(Interval { low: (ratio - half).max(0.0), high: (ratio + half).min(1.0), level });
        }
    }
    Ok(FreeAccessScore { item, engaged_s, available_s, interval, sessions: n })
}
