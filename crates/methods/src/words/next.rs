//! Which words to add later: what the learner asks for without a button, and a word that closes a session.
//!
//! Source: own rules. Counts carry an interval that admits bursts and are ranked by its lower end, so
//! that two askings do not outrank fourteen; shares carry the exact binomial interval (Clopper & Pearson 1934).

use super::alike::{AlikeRule, Likeness, alike};
use crate::stats::{Clumping, Count, Interval, Level, Proportion, StatsError};
use sayso_model::Language;

/// Something asked for without a button (shown when it was caught).
#[derive(Debug, Clone, PartialEq)]
pub struct Gap {
    /// The word one would use for it.
    pub says: String,
    /// Times it was asked for.
    pub asked: u64,
    /// Days over which it was counted.
    pub days: f64,
    /// How much the askings come in bursts.
    pub clumping: Clumping,
}

/// How things stand on the board.
#[derive(Debug, Clone, PartialEq)]
pub struct OnBoard {
    /// What the words on the board say.
    pub says: Vec<String>,
    /// How many of them the learner uses by itself.
    pub in_use: usize,
    /// Whether one of them closes a session.
    pub has_closing: bool,
    /// Own presses over waking hours, if counted, and how much they come in bursts.
    pub presses: Option<(Count, Clumping)>,
    /// Sessions that ended in high arousal, of all sessions, if noted.
    pub high_arousal: Option<Proportion>,
}

/// When to suggest what. Ours, without a source.
#[derive(Debug, Clone, PartialEq)]
pub struct NextWordRules {
    /// Askings below which a gap is not spoken of yet.
    pub fewest_asked: u64,
    /// Share of the board's words in use below which new words wait.
    pub in_use: f64,
    /// Presses an hour from which demand is high.
    pub many_per_hour: f64,
    /// Share of sessions ending in high arousal from which arousal is high.
    pub much_arousal: f64,
    /// Words that could close a session, best liked first.
    pub closing: Vec<String>,
    /// When two labels sound too much alike.
    pub alike: AlikeRule,
    /// Language of the labels.
    pub language: Language,
}

impl Default for NextWordRules {
    fn default() -> Self {
        Self {
            fewest_asked: 3,
            in_use: 0.5,
            many_per_hour: 10.0,
            much_arousal: 0.25,
            closing: ["all done", "later", "finished", "rest"].map(str::to_owned).to_vec(),
            alike: AlikeRule::default(),
            language: Language::En,
        }
    }
}

/// Why a word is suggested.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum NextReason {
    /// It was asked for without a button.
    Gap {
        /// Times asked.
        asked: u64,
        /// Askings a week.
        per_week: f64,
        /// Its interval.
        interval: Interval,
    },
    /// Demand is high and no word closes a session.
    HighDemand {
        /// Presses counted.
        presses: u64,
        /// Presses an hour.
        per_hour: f64,
        /// Its interval; the suggestion is sure where its low end is above the threshold.
        interval: Interval,
    },
    /// Sessions end in high arousal and no word closes them.
    HighArousal {
        /// Sessions that did.
        ended_high: u64,
        /// Sessions.
        of: u64,
        /// Interval of the share.
        interval: Interval,
    },
}

/// A word to add.
#[derive(Debug, Clone, PartialEq)]
pub struct NextWord {
    /// What it would say.
    pub says: String,
    /// Whether it closes a session.
    pub closing: bool,
    /// Why.
    pub why: NextReason,
    /// Whether the whole interval is on the side of the suggestion (for gaps: at least the fewest askings a week).
    pub sure: bool,
    /// Words on the board it sounds too much like: choose another label then.
    pub sounds_like: Vec<Likeness>,
}

/// What to add next, and whether to wait.
#[derive(Debug, Clone, PartialEq)]
pub struct NextWords {
    /// Suggestions: closing words first (they serve the animal's rest), then gaps, the surest and most frequent first.
    pub suggestions: Vec<NextWord>,
    /// Words in use and words on the board, where so few are in use that gaps should wait; closing words should not.
    pub hold: Option<(usize, usize)>,
}

/// Suggests the next words.
///
/// # Errors
/// [`StatsError`] where a gap was counted over less than an hour or a threshold is not a number.
///
/// ```
/// use sayso_methods::words::{Gap, NextWordRules, OnBoard, next_words};
/// let board = OnBoard { says: vec!["ball".into()], in_use: 1, has_closing: false, presses: None, high_arousal: None };
/// let clumping = sayso_methods::stats::Clumping::NONE;
/// let found = next_words(&[Gap { says: "outside".into(), asked: 14, days: 7.0, clumping }], &board, &NextWordRules::default())?;
/// assert_eq!((found.suggestions[0].says.as_str(), found.suggestions[0].sure), ("outside", true));
/// # Ok::<(), sayso_methods::stats::StatsError>(())
/// ```
pub fn next_words(gaps: &[Gap], board: &OnBoard, rules: &NextWordRules) -> Result<NextWords, StatsError> {
    for (what, value) in
        [("in_use", rules.in_use), ("many_per_hour", rules.many_per_hour), ("much_arousal", rules.much_arousal)]
    {
        if !value.is_finite() {
            return Err(StatsError::OutOfRange { what, value });
        }
    }
    let sounds_like = |says: &str| -> Vec<Likeness> {
        let compared = board.says.iter().map(|known| alike(says, known, rules.language, rules.alike));
        compared.filter(|l| l.too_alike).collect()
    };
    let mut suggestions = Vec::new();
    if let Some((why, sure)) = closing_reasons(board, rules) {
        // The first that sounds like nothing on the board, else the first.
        let free = rules.closing.iter().find(|says| sounds_like(says).is_empty());
        if let Some(says) = free.or(rules.closing.first()) {
            let sounds_like = sounds_like(says);
            suggestions.push(NextWord { says: says.clone(), closing: true, why, sure, sounds_like });
        }
    }
    let mut asked = Vec::new();
    for gap in gaps {
        // Less than an hour says nothing about a week.
        if !(gap.days >= 1.0 / 24.0 && gap.days.is_finite()) {
            return Err(StatsError::OutOfRange { what: "days", value: gap.days });
        }
        let weeks = Count::new(gap.asked, gap.days / 7.0)?;
        if gap.asked < rules.fewest_asked || gap.says.trim().is_empty() || board.says.contains(&gap.says) {
            continue;
        }
        let interval = weeks.clumped_interval(gap.clumping, Level::P95);
        asked.push(NextWord {
            says: gap.says.clone(),
            closing: false,
            why: NextReason::Gap { asked: gap.asked, per_week: weeks.rate(), interval },
            sure: interval.low >= rules.fewest_asked as f64,
            sounds_like: sounds_like(&gap.says),
        });
    }
    let low = |w: &NextWord| if let NextReason::Gap { interval, .. } = w.why { interval.low } else { 0.0 };
    asked.sort_by(|a, b| low(b).total_cmp(&low(a)));
    suggestions.extend(asked);
    let on_board = board.says.len();
    let few = on_board > 0 && (board.in_use as f64) < rules.in_use * on_board as f64;
    Ok(NextWords { suggestions, hold: few.then_some((board.in_use, on_board)) })
}

fn closing_reasons(board: &OnBoard, rules: &NextWordRules) -> Option<(NextReason, bool)> {
    if board.has_closing {
        return None;
    }
    let demand = board.presses.filter(|(c, _)| c.rate() >= rules.many_per_hour).map(|(c, clumping)| {
        let interval = c.clumped_interval(clumping, Level::P95);
        let why = NextReason::HighDemand { presses: c.events(), per_hour: c.rate(), interval };
        (why, interval.low >= rules.many_per_hour)
    });
    let arousal = board.high_arousal.filter(|p| p.share().is_some_and(|e| e >= rules.much_arousal)).map(|p| {
        let interval = p.clopper_pearson(Level::P95);
        let why = NextReason::HighArousal { ended_high: p.k(), of: p.n(), interval };
        (why, interval.low >= rules.much_arousal)
    });
    // One closing word is enough; arousal is the stronger reason.
    match (arousal, demand) {
        (Some(a), Some(d)) => Some(if d.1 && !a.1 { d } else { a }),
        (a, d) => a.or(d),
    }
}
