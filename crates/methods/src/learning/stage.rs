//! Which stage a word is at: prepare, show, invite or converse. A fixed rule over figures, with its reasons.
//!
//! Sources of the mastery criterion: sessions in a row, by two people, as most published procedures have it (McDougale et al.
//! 2020, a review of published procedures, doi 10.1007/s40617-019-00365-2); at 90 %, since skills mastered at 80 % faded and
//! those at 90 to 100 % lasted (Longino et al. 2021, Behav Anal Pract 15:397, abstract read; people). Every other threshold: common practice,
//! no source. Page: `docs/methods/learning.md`.
//!
//! Two figures, always apart. *Pressed, of wanted*: only invitations where the learner wanted the thing (it joined, and took
//! the item), so not pressing is never scored as not knowing. *Right, of presses*: every press at an invitation, wanted or
//! not, against chance; a learner that presses at random reaches the first figure and never the second. A stage beyond
//! inviting needs both.

use super::LearningError;
use super::ground::{Counted, Ground};
use crate::stats::{Interval, Level, Proportion};

pub use sayso_model::Stage;

/// The invitations of one session that count: those in which the learner wanted the thing.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct InvitationSession {
    /// Invitations in which it joined and took the item when shown.
    pub wanted: u32,
    /// Of those, how often it pressed within the wait, whichever word.
    pub pressed: u32,
    /// Presses at all of the word's invitations in it, wanted or not.
    pub presses: u32,
    /// Of those, of the invited word.
    pub right: u32,
    /// Who invited (any number that tells people apart).
    pub person: u32,
}

/// What is known about one word.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct WordFigures {
    /// The word's reward is known to be liked, its card written, its clip recorded and its place chosen.
    pub prepared: bool,
    /// Showings so far.
    pub showings: u32,
    /// Days with at least one showing.
    pub showing_days: u32,
    /// Recent showings offered.
    pub offered: u32,
    /// Of those, joined.
    pub joined: u32,
    /// Sessions with invitations, oldest first.
    pub invitations: Vec<InvitationSession>,
    /// Natural logarithm of the e-value that this word is pressed more when it is invited than when others are
    /// ([`crate::understanding::rounds::word_evidence`]), at its largest.
    pub ln_e: f64,
    /// Share of presses at other words' invitations that were of this word: what chance is here. None where there were none.
    pub elsewhere: Option<f64>,
    /// Sessions with invitations two weeks and more after mastery was first reached; none where that was not yet.
    pub later: Option<InvitationSession>,
    /// Presses of its own accord after which it took what was delivered.
    pub own_presses_taken: u32,
    /// Days with such a press.
    pub own_press_days: u32,
    /// Strong stress signs, or leaving again and again, in the latest sessions.
    pub under_strain: bool,
}

/// Thresholds of the rule.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct StageRule {
    /// Showings before inviting.
    pub min_showings: u32,
    /// Days with showings before inviting.
    pub min_showing_days: u32,
    /// The lower end of the joining rate's 90 % interval must reach this before inviting.
    pub joining_floor: f64,
    /// Share of wanted invitations pressed, and of presses right, that a session needs to count towards mastery.
    pub mastery_share: f64,
    /// Sessions in a row that must reach it (2 or 3).
    pub mastery_sessions: u32,
    /// Wanted invitations such a session must have at least.
    pub mastery_min_wanted: u32,
    /// People over those sessions.
    pub mastery_people: u32,
    /// The e-value that right presses must have reached: 20 leaves a word that means nothing one chance in twenty, however
    /// often it is looked at.
    pub e_bar: f64,
    /// Wanted invitations weeks after mastery from which it is said whether it lasted.
    pub later_wanted: u32,
    /// Own presses, taken, that show the same without mastery.
    pub own_presses: u32,
    /// Days over which they must fall.
    pub own_press_days: u32,
    /// Wanted invitations, the latest, that own presses are held against: they do not count if even the upper end of the 90 %
    /// interval lies below mastery. A learner that is half-way presses often enough of its own accord: in the laboratory a
    /// few presses alone moved words on too early.
    pub latest_wanted: u32,
    /// Own presses needed with fewer invitations than that...
    pub own_presses_alone: u32,
    /// ... and the days over which they must fall.
    pub own_press_days_alone: u32,
    /// Back to showing if even the upper end of the press share's 90 % interval is below this...
    pub back_share: f64,
    /// ... after at least this many wanted invitations.
    pub back_min_wanted: u32,
}

impl Default for StageRule {
    fn default() -> Self {
        Self {
            min_showings: 20,
            min_showing_days: 3,
            joining_floor: 0.5,
            mastery_share: 0.9,
            mastery_sessions: 2,
            mastery_min_wanted: 5,
            mastery_people: 2,
            e_bar: 20.0,
            later_wanted: 5,
            own_presses: 8,
            own_press_days: 4,
            latest_wanted: 10,
            own_presses_alone: 12,
            own_press_days_alone: 6,
            back_share: 0.2,
            back_min_wanted: 15,
        }
    }
}

/// The stage, why, and what would change it.
#[derive(Debug, Clone, PartialEq)]
pub struct StageAdvice {
    /// The stage the figures point to.
    pub stage: Stage,
    /// Why, what decides first: where the word goes back, or is not led on, the bar that is missed.
    pub because: Vec<Ground>,
    /// Figures that, once met (or, for strain, once past), would lead on; or that would lead back. None that is met already.
    pub would_change: Vec<Ground>,
}

/// Applies the rule. `current` decides only under strain, where the word goes back one stage from there; else it matters to what
/// is said first.
///
/// # Errors
/// [`LearningError::BadNumber`] if more was joined than offered, or pressed than wanted;
/// [`LearningError::BadSetting`] for a threshold outside its range.
///
/// ```
/// use sayso_methods::learning::stage::{Stage, StageRule, WordFigures, stage};
/// let figures = WordFigures { prepared: true, showings: 12, showing_days: 2, ..WordFigures::default() };
/// let advice = stage(Stage::Show, &figures, &StageRule::default())?;
/// assert_eq!(advice.stage, Stage::Show);
/// # Ok::<(), sayso_methods::learning::LearningError>(())
/// ```
pub fn stage(current: Stage, figures: &WordFigures, rule: &StageRule) -> Result<StageAdvice, LearningError> {
    for (what, share) in
        [("joining_floor", rule.joining_floor), ("mastery_share", rule.mastery_share), ("back_share", rule.back_share)]
    {
        if !(0.0..=1.0).contains(&share) {
            return Err(LearningError::BadSetting(what));
        }
    }
    let joining = Ground::Joining {
        joined: (figures.joined, figures.offered),
        interval: share_interval("joined", figures.joined, figures.offered)?,
        floor: rule.joining_floor,
    };
    let sum = |pick: fn(&InvitationSession) -> u32| figures.invitations.iter().map(pick).fold(0, u32::saturating_add);
    let (wanted, pressed) = (sum(|s| s.wanted), sum(|s| s.pressed));
    let counted = |s: &&InvitationSession| s.pressed > s.wanted || s.right > s.presses;
    if let Some(session) = figures.invitations.iter().chain(&figures.later).find(counted) {
        return Err(LearningError::BadNumber {
            what: "pressed of wanted, or right of presses",
            value: session.pressed.max(session.right).into(),
        });
    }
    let (presses, right) = (sum(|s| s.presses), sum(|s| s.right));
    let e = figures.ln_e.min(700.0).exp();
    let above_chance = e >= rule.e_bar;
    let right = Ground::Right {
        right: (right, presses),
        interval: share_interval("right of presses", right, presses)?,
        elsewhere: figures.elsewhere,
        e: (e, rule.e_bar),
    };
    let interval = share_interval("pressed", pressed, wanted)?;
    let response = Ground::Response { pressed: (pressed, wanted), interval };
    let showings = Ground::Showings {
        showings: (figures.showings, rule.min_showings),
        days: (figures.showing_days, rule.min_showing_days),
    };
    let (in_a_row, people) = mastery(&figures.invitations, rule);
    let mastered = in_a_row >= rule.mastery_sessions && people >= rule.mastery_people && in_a_row > 0 && above_chance;
    let mastery = Ground::Mastery {
        sessions: (in_a_row, rule.mastery_sessions),
        people: (people, rule.mastery_people),
        share: rule.mastery_share,
    };
    let (lately_wanted, lately_pressed) = latest(&figures.invitations, rule.latest_wanted);
    let (presses_needed, days_needed) = if lately_wanted < rule.latest_wanted {
        (rule.own_presses_alone, rule.own_press_days_alone)
    } else {
        (rule.own_presses, rule.own_press_days)
    };
    let own = Ground::OwnPresses {
        presses: (figures.own_presses_taken, presses_needed),
        days: (figures.own_press_days, days_needed),
    };
    let speaks_against = below(Counted::Latest, (lately_pressed, lately_wanted), rule.mastery_share)?;
    let presses_freely = figures.own_presses_taken >= presses_needed
        && figures.own_press_days >= days_needed
        && speaks_against.is_none()
        && above_chance;
    let shown_enough = figures.showings >= rule.min_showings && figures.showing_days >= rule.min_showing_days;
    let joins = joining.is_met();
    let too_soon = missed(Counted::Wanted, (pressed, wanted), interval, rule.back_share)
        .filter(|_| wanted >= rule.back_min_wanted);

    let later = later(figures.later, rule)?;
    let advice = |stage, because: &[Ground], would_change: &[Ground]| StageAdvice {
        stage,
        because: because.to_vec(),
        would_change: would_change.iter().filter(|g| !g.is_met()).copied().collect(),
    };
    Ok(if figures.under_strain {
        let back = match current {
            Stage::Prepare | Stage::Show => Stage::Prepare,
            Stage::Invite => Stage::Show,
            Stage::Converse => Stage::Invite,
        };
        advice(back, &[Ground::Strain], &[Ground::Strain])
    } else if !figures.prepared {
        advice(Stage::Prepare, &[Ground::NotPrepared], &[Ground::NotPrepared])
    } else if later.faded {
        let because: Vec<Ground> = later.below.into_iter().chain([later.ground, right]).collect();
        advice(Stage::Invite, &because, &[later.ground, own])
    } else if presses_freely {
        advice(Stage::Converse, &[own, right], &[Ground::Strain, later.ground])
    } else if mastered {
        advice(Stage::Converse, &[mastery, response, right], &[Ground::Strain, later.ground])
    } else if !shown_enough {
        advice(Stage::Show, &[showings], &[showings, own])
    } else if !joins {
        advice(Stage::Show, &[joining, showings], &[joining, own])
    } else if let Some(below) = too_soon {
        // It wanted the thing and did not press: more showing, not a verdict on what it knows.
        advice(Stage::Show, &[below, response], &[response, own])
    } else if current == Stage::Converse {
        // Back from there: what is missed of what leads beyond inviting, before what is reached.
        let fell = speaks_against.filter(|_| lately_wanted >= rule.mastery_min_wanted);
        let (missed, reached): (Vec<Ground>, Vec<Ground>) = [mastery, right].into_iter().partition(|g| !g.is_met());
        let because: Vec<Ground> = fell.into_iter().chain(missed).chain([response]).chain(reached).collect();
        advice(Stage::Invite, &because, &[mastery, right, own])
    } else {
        advice(Stage::Invite, &[showings, joining, response, right], &[mastery, right, own])
    })
}

/// What was seen two weeks and more after mastery.
struct Later {
    ground: Ground,
    /// Surely below mastery, in either figure.
    faded: bool,
    /// The figures that are, from as many records as it takes to say anything.
    below: Vec<Ground>,
}

fn later(seen: Option<InvitationSession>, rule: &StageRule) -> Result<Later, LearningError> {
    let none = InvitationSession { wanted: 0, pressed: 0, presses: 0, right: 0, person: 0 };
    let s = seen.unwrap_or(none);
    let pressed = below(Counted::LaterWanted, (s.pressed, s.wanted), rule.mastery_share)?;
    let right = below(Counted::LaterPresses, (s.right, s.presses), rule.mastery_share)?;
    let faded = s.wanted >= rule.later_wanted && (pressed.is_some() || right.is_some());
    let right = right.filter(|_| s.presses >= rule.later_wanted);
    let ground =
        Ground::Later { pressed: (s.pressed, s.wanted), right: (s.right, s.presses), needed: rule.later_wanted };
    Ok(Later { ground, faded, below: pressed.into_iter().chain(right).collect() })
}

/// A share, if even the upper end of its 90 % interval is below `bar`.
fn below(counted: Counted, share: (u32, u32), bar: f64) -> Result<Option<Ground>, LearningError> {
    Ok(missed(counted, share, share_interval("pressed or right", share.0, share.1)?, bar))
}

/// The same by an interval that is known.
fn missed(counted: Counted, share: (u32, u32), interval: Interval, bar: f64) -> Option<Ground> {
    (share.1 > 0 && interval.high < bar).then_some(Ground::Below { counted, share, interval, bar })
}

/// Sessions in a row, up to the latest, that reach mastery, and the people in them.
/// Sessions with too few wanted invitations count together with those before them until there are enough; what is left at
/// the beginning says too little and neither counts nor breaks the run.
#[must_use]
pub fn mastery(sessions: &[InvitationSession], rule: &StageRule) -> (u32, u32) {
    let mut in_a_row = 0u32;
    let mut people = std::collections::BTreeSet::new();
    let (mut wanted, mut pressed, mut together) = (0u32, 0u32, Vec::new());
    let (mut presses, mut right) = (0u32, 0u32);
    for session in sessions.iter().rev().filter(|s| s.wanted > 0 || s.presses > 0) {
        wanted = wanted.saturating_add(session.wanted);
        pressed = pressed.saturating_add(session.pressed);
        presses = presses.saturating_add(session.presses);
        right = right.saturating_add(session.right);
        together.push(session.person);
        if wanted < rule.mastery_min_wanted {
            continue;
        }
        let below = |k: u32, n: u32| f64::from(k) < rule.mastery_share * f64::from(n) - 1e-9;
        if below(pressed, wanted) || below(right, presses) {
            break;
        }
        in_a_row += 1;
        people.extend(together.drain(..));
        (wanted, pressed, presses, right) = (0, 0, 0, 0);
    }
    (in_a_row, people.len().try_into().unwrap_or(u32::MAX))
}

/// Wanted and pressed over the latest sessions that together hold at least `least` wanted invitations, or all there are.
fn latest(sessions: &[InvitationSession], least: u32) -> (u32, u32) {
    let (mut wanted, mut pressed) = (0u32, 0u32);
    for session in sessions.iter().rev() {
        if wanted >= least {
            break;
        }
        wanted = wanted.saturating_add(session.wanted);
        pressed = pressed.saturating_add(session.pressed);
    }
    (wanted, pressed)
}

fn share_interval(what: &'static str, k: u32, n: u32) -> Result<Interval, LearningError> {
    Proportion::new(k.into(), n.into())
        .map(|share| share.clopper_pearson(Level::P90))
        .map_err(|_| LearningError::BadNumber { what, value: k.into() })
}
