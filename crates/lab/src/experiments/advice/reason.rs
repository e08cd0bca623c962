//! Does what is told first of a step speak for it? A reason with a bar lies on the side of it that calls for the step.

use sayso_advisor::advice::Below;
use sayso_advisor::estimate::Estimate;
use sayso_advisor::steps::WordStep;
use sayso_advisor::{Act, Because};

/// Shares of presses and right ones that make up mastery.
const MASTERY: f64 = 0.9;

/// Whether the first reason of a step lies on the side of its bar that calls for the step; none where it has no bar.
pub(crate) fn speaks(step: &WordStep) -> Option<bool> {
    let fact = &step.advice.because.first()?.fact;
    match step.advice.act {
        Act::StepBack { .. } | Act::Show { .. } => missed(fact),
        Act::Invite { .. } | Act::BeginInviting { .. } | Act::Answer { .. } | Act::LeaveToAnimal { .. } => {
            missed(fact).map(|missed| !missed)
        }
        Act::Mend { .. } => holds_up(fact),
        Act::SignalTimes { .. } => match fact {
            Because::ManyPresses { rate, bar, .. } => Some(above(rate, *bar)),
            _ => None,
        },
        _ => None,
    }
}

fn above(figure: &Estimate, bar: f64) -> bool {
    figure.value.is_some_and(|v| v > bar)
}

fn below(figure: &Estimate, bar: f64) -> bool {
    figure.value.is_some_and(|v| v < bar)
}

/// Whether a figure of the stage misses what is asked of it. A count without what is asked of it, told first, calls for nothing.
fn missed(fact: &Because) -> Option<bool> {
    Some(match fact {
        Because::Showings { showings, wanted, days, days_wanted } => showings < wanted || days < days_wanted,
        Because::Joining { share, floor, .. } => !share.surely_above(*floor),
        Because::Right { above_chance, .. } => !above_chance,
        Because::Mastery { sessions, sessions_wanted, people, people_wanted, .. } => {
            sessions < sessions_wanted || people < people_wanted
        }
        Because::OwnPresses { presses, wanted, days, days_wanted } => presses < wanted || days < days_wanted,
        Because::Below(Below { share, bar, .. }) => below(share, *bar) && share.n >= 5,
        Because::Later { pressed, wanted, right, presses, needed } => {
            let under = |k: u32, n: u32| f64::from(k) < MASTERY * f64::from(n);
            wanted >= needed && (under(*pressed, *wanted) || under(*right, *presses))
        }
        Because::WhenWanted { .. } => false,
        _ => return None,
    })
}

/// Whether a figure points to the cause that is to be mended.
fn holds_up(fact: &Because) -> Option<bool> {
    Some(match fact {
        Because::Taken { share, bar, .. } => below(share, *bar),
        Because::ShowingsADay { rate, bar, .. } => below(rate, *bar),
        Because::Delay { seconds, bar } => above(seconds, *bar),
        Because::Near { share, expected } => below(share, *expected),
        Because::UneasyHours { here, elsewhere, .. } => below(here, elsewhere.value?),
        Because::LateFall { p, .. } => *p < 0.05,
        Because::PeopleDelay { p, .. } | Because::PeopleGive { p, .. } => *p < 0.1,
        Because::Sounds { too_alike, .. } => *too_alike,
        _ => return None,
    })
}
