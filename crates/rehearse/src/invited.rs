//! Invitations: whether the animal was there, whether the wait was kept, and what came after it; and whether it was there for showings.

use crate::counted::{GIVES_MS, REACTS_MS, each, share, told_of};
use crate::there::{had_left, is_there_after};
use sayso_advisor::Estimate;
use sayso_model::SignLevel;
use sayso_sim::rehearsal::{BED, Does, Run, Told, WAIT_S, What};

/// Milliseconds after the wait in which the button is to be pressed for it, and again in which the thing is to be given: then it
/// belongs to that wait.
const AFTER_MS: u32 = 8_000;

/// Whether it was at the board at each place of what was told, or, if `comes`, on its way there.
fn places(run: &Run, comes: bool) -> Vec<bool> {
    let mut there = run.begins_at != BED;
    let mut all = Vec::with_capacity(run.told.len());
    for told in &run.told {
        there = is_there_after(told.what).unwrap_or(there || (comes && told.what == What::Comes));
        all.push(there);
    }
    all
}

/// Of invitations, those made while it was there or on its way.
pub(crate) fn invited_there(run: &Run) -> Estimate {
    done_there(run, &places(run, true), |what| matches!(what, What::Person(Does::Offer(_))))
}

/// Of buttons that the person pressed, those pressed while it was at the board.
pub(crate) fn shown_there(run: &Run) -> Estimate {
    done_there(run, &places(run, false), |what| matches!(what, What::Person(Does::Show(_))))
}

/// Of what the person did, what was done while it was near. What was done before it could be seen that it had gone tells nothing.
fn done_there(run: &Run, near: &[bool], is: impl Fn(What) -> bool) -> Estimate {
    let done = run.told.iter().enumerate().filter(|(_, t)| is(t.what));
    share(done.filter_map(|(at, told)| {
        let before = |i: usize| i.checked_sub(1).map_or(run.begins_at != BED, |before| near[before]);
        let just_gone = |i: usize| before(i) && !near[i] && told.at_ms < run.told[i].at_ms + REACTS_MS;
        if near[at] { Some(true) } else { (!(0..at).any(just_gone)).then_some(false) }
    }))
}

/// Of invitations, those whose wait was kept: nothing said, shown or given until it was over, the animal pressed, or left. One made to
/// one that had left has no wait. One that was under way when the animal left tells nothing, nor, not kept, one when it pressed: that
/// press is answered.
pub(crate) fn waits(run: &Run) -> Estimate {
    let wait_ms = (WAIT_S * 1000.0) as u32;
    let offers = each(run, |what| matches!(what, What::Person(Does::Offer(_))));
    let left = had_left(run);
    share(offers.filter_map(|(told, after)| {
        let at = run.told.len() - after.len() - 1;
        if left[at] {
            return None;
        }
        let over_ms = told.at_ms + wait_ms;
        let ended = after.iter().find(|t| {
            t.at_ms >= over_ms
                || matches!(t.what, What::Pressed(_) | What::WaitOver(_) | What::Leaves | What::Person(_))
        })?;
        let kept = match ended.what {
            // Ending in the midst of a wait is no wait; stepping away is.
            What::Person(Does::End) if ended.at_ms < over_ms => None,
            What::Person(Does::Back) => Some(true),
            What::Person(_) => Some(ended.at_ms >= over_ms),
            _ => Some(true),
        };
        told_of(run, at, kept?)
    }))
}

/// Of waits that were over while it was there, those after which the button was pressed and its thing given. What its own press, its
/// going, a strong sign or the end cut short tells nothing, nor does one whose invitation was under way when it pressed, left or showed a
/// sign. A sign in the wait, or one that stands when that is over, asks for a pause, and so does a mild one that comes later but in
/// time: what was done all the same counts if it was done well.
pub(crate) fn after_wait(run: &Run) -> Estimate {
    let near = places(run, true);
    let over = run.told.iter().enumerate().filter(|(i, t)| near[*i] && matches!(t.what, What::WaitOver(_)));
    share(over.filter_map(|(i, told)| {
        let offered = run.told[..i].iter().rposition(|t| matches!(t.what, What::Person(Does::Offer(_))));
        let mut paused = stands_at(run, i) || offered.is_some_and(|at| run.told[at..i].iter().any(is_sign));
        let given = given_after(run, *told, &run.told[i + 1..], &mut paused)?;
        offered.map_or(Some(given), |at| told_of(run, at, given)).filter(|well| *well || !paused)
    }))
}

const fn is_sign(told: &Told) -> bool {
    matches!(told.what, What::Sign(_))
}

/// Whether a sign stood just before that place of what was told.
fn stands_at(run: &Run, at: usize) -> bool {
    run.told[..at].iter().rfind(|t| matches!(t.what, What::Sign(_) | What::Eases | What::Gone)).is_some_and(is_sign)
}

/// Whether the thing of a wait that was over was shown and given; `paused` becomes true where a mild sign came in time.
fn given_after(run: &Run, wait: Told, after: &[Told], paused: &mut bool) -> Option<bool> {
    let thing = wait.what.thing()?;
    let mut since_ms = wait.at_ms;
    let mut shown = false;
    let cut_short = |at_ms: u32, since_ms: u32| if at_ms < since_ms + GIVES_MS { None } else { Some(false) };
    for told in after {
        if told.at_ms > since_ms + AFTER_MS {
            return Some(false);
        }
        match told.what {
            What::Person(Does::Show(of)) if of == thing => (shown, since_ms) = (true, told.at_ms),
            What::Person(Does::Give(of)) if of == thing => return Some(shown),
            What::Person(Does::Offer(_) | Does::Two | Does::Show(_)) => return Some(false),
            What::Person(Does::End | Does::Back) | What::Pressed(_) | What::Leaves => {
                return cut_short(told.at_ms, since_ms);
            }
            What::Sign(sign) if sign.level == SignLevel::Strong => return cut_short(told.at_ms, since_ms),
            What::Sign(_) => *paused |= told.at_ms < since_ms + GIVES_MS,
            _ => {}
        }
    }
    cut_short(run.over.0, since_ms)
}
