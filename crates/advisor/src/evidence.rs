//! The evidence for one word: showings, invitations, latency, answers and what followed, each figure with its band and count.

use crate::case::Case;
use crate::claims::{AnimalClaim, Claim, claims};
use crate::estimate::{Estimate, LEVEL};
use crate::generalise::{Setting, settings};
use crate::latency::{Waiting, waiting};
use crate::stages::{Standing, standings};
pub use crate::sums::{After, Answers};
use crate::sums::{Shown, Totals};
use sayso_methods::learning::LearningError;
use sayso_methods::learning::curve::LearningCurve;
use sayso_methods::learning::shown::curve_by_day;
use sayso_methods::stats::{Tail, TwoByTwo};
use sayso_methods::understanding::UnderstandingError;
use sayso_model::{Day, WordId};
use std::collections::BTreeMap;

/// What came of the invitations of one word, in two figures that are always apart.
#[derive(Clone, Copy, PartialEq, Eq, Default, Debug)]
pub struct InvitationCounts {
    /// It had joined and took the thing when given.
    pub wanted: usize,
    /// Of those, pressed within the wait, whichever word.
    pub pressed: usize,
    /// Of those wanted, answered in its own way.
    pub without_button: usize,
    /// Pressed within the wait, wanted or not.
    pub presses: usize,
    /// Of those presses, of the invited word.
    pub right: usize,
    /// It left, had not joined, or did not take the thing.
    pub not_wanted: usize,
    /// Not recorded whether it took the thing.
    pub unrecorded: usize,
}

/// Whether what is given after this word is taken more often than after the others.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Uptake {
    /// Share taken of what was given for this word.
    pub this: Estimate,
    /// Share taken of what was given for the other words.
    pub others: Estimate,
    /// Fisher's exact test, two-sided; none where a row is empty.
    pub p: Option<f64>,
}

/// Everything the Evidence page shows of one word.
#[derive(Clone, Debug)]
pub struct Evidence {
    /// Where the word stands.
    pub standing: Standing,
    /// Showings by day.
    pub showings_by_day: BTreeMap<Day, usize>,
    /// Own presses that count for understanding by day.
    pub presses_by_day: BTreeMap<Day, usize>,
    /// Invitations sorted by what they can say.
    pub invitations: InvitationCounts,
    /// Probability of pressing the invited word when it presses, with its band; or why there is none.
    pub curve: Result<LearningCurve, LearningError>,
    /// Time to press under the fixed wait.
    pub waiting: Waiting,
    /// Answers given to own presses.
    pub answers: Answers,
    /// What it did after the thing was given.
    pub after_given: After,
    /// What it did after "not now" or an alternative.
    pub after_declined: After,
    /// Taken more often than after other words?
    pub uptake: Uptake,
    /// Own presses that are left out of it, ever: they looked like a stumble.
    pub left_out: usize,
    /// Share of own presses that looked like a stumble, of those somebody judged.
    pub stumbles: Estimate,
    /// Fidelity of the teaching: share of showings in which the thing was given within [`GIVEN_WITHIN_S`] of the press.
    pub fidelity: Estimate,
    /// The two figures by person, room, later weeks, moved buttons and new recordings.
    pub settings: Vec<Setting>,
    /// What may be claimed of the word and of the animal, judged together; or why nothing could be judged.
    pub claim: Result<(Claim, AnimalClaim), NoClaim>,
}

/// Why nothing can be judged of a word.
#[derive(Clone, PartialEq, Debug, thiserror::Error)]
pub enum NoClaim {
    /// It has no card.
    #[error("the word has no card")]
    NoCard,
    /// The records contradict themselves.
    #[error(transparent)]
    Why(#[from] UnderstandingError),
}

/// The evidence for one active word of this animal; none where it has no such word.
#[must_use]
pub fn evidence(case: &Case<'_>, word: WordId) -> Option<Evidence> {
    let standing = standings(case).iter().find(|s| s.word == word)?.clone();
    let (sums, asked) = (case.totals().of(word), case.invitations(word));
    let ((pressed, wanted), (right, presses)) = (asked.pressed(), asked.right());
    let counts = InvitationCounts {
        wanted,
        pressed,
        without_button: asked.without_button,
        presses,
        right,
        not_wanted: asked.not_wanted,
        unrecorded: asked.unrecorded,
    };
    let trials: Vec<Option<bool>> = asked.presses.iter().map(|p| Some(p.right())).collect();
    let curve_days: Vec<Day> = asked.presses.iter().map(|p| p.invitation.at().day(case.zone())).collect();
    Some(Evidence {
        showings_by_day: sums.shown_by_day.iter().copied().collect(),
        presses_by_day: sums.own_by_day.iter().copied().collect(),
        curve: curve(case, word, trials, &curve_days, standing.chance.level().min(MOST_CHANCE)),
        waiting: waiting(&asked.usable),
        answers: sums.answers,
        uptake: uptake(case.totals(), word),
        left_out: sums.stumbled,
        stumbles: Estimate::share(sums.stumbled, sums.judged),
        fidelity: fidelity(&sums.shown),
        settings: settings(case, word),
        claim: claims(case).map_err(NoClaim::from).and_then(|all| {
            let claim = all.words.into_iter().find(|c| c.word == word);
            claim.map(|c| (c, all.animal)).ok_or(NoClaim::NoCard)
        }),
        after_given: sums.after_given,
        after_declined: sums.after_declined,
        invitations: counts,
        standing,
    })
}

/// The curve whose band held the truth in the laboratory.
fn curve(
    case: &Case<'_>,
    word: WordId,
    trials: Vec<Option<bool>>,
    days: &[Day],
    chance: f64,
) -> Result<LearningCurve, LearningError> {
    let first = days.first().copied();
    let days: Vec<i32> = days.iter().map(|d| first.map_or(0, |first| d.days_since(first))).collect();
    case.sums().curve((case.animal(), word), (trials, days, chance), |(trials, days, chance)| {
        curve_by_day(trials, days, *chance, LEVEL)
    })
}

/// A showing teaches the press if the thing comes at once; later than this, in seconds, it was not as agreed (common
/// practice, no source).
pub const GIVEN_WITHIN_S: f64 = 5.0;

fn fidelity(shown: &[Shown]) -> Estimate {
    let delays: Vec<f64> = shown.iter().filter_map(|s| s.delay_s).collect();
    Estimate::share(delays.iter().filter(|d| **d <= GIVEN_WITHIN_S).count(), delays.len())
}

/// The curve's model needs a chance below one: a button pressed nearly always leaves nothing to learn.
const MOST_CHANCE: f64 = 0.95;

fn uptake(totals: &Totals, word: WordId) -> Uptake {
    let row = |this: bool| {
        let rows = totals.words().filter(|(w, _)| (*w == word) == this).map(|(_, sums)| sums.after_given);
        rows.fold((0, 0), |(took, n), after| (took + after.took, n + after.seen()))
    };
    let ((took, n), (others_took, others_n)) = (row(true), row(false));
    let table = TwoByTwo([[took as u64, (n - took) as u64], [others_took as u64, (others_n - others_took) as u64]]);
    let p = (n > 0 && others_n > 0).then(|| table.fisher(Tail::TwoSided).ok().map(|t| t.p)).flatten();
    Uptake { this: Estimate::share(took, n), others: Estimate::share(others_took, others_n), p }
}
