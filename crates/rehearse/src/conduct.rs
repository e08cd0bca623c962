//! How a person taught in a rehearsal: delay, pace, balance, waits, answers, leaving honoured, signs heeded.

use crate::counted::{GIVES_MS, REACTS_MS, asks_after, each, k_of, share, told_of};
use crate::invited::{after_wait, invited_there, shown_there, waits};
use sayso_advisor::estimate::{LEVEL, median};
use sayso_advisor::observe::{Answered, answered_between, own_presses, showings};
use sayso_advisor::{Estimate, Unit};
use sayso_methods::stats::Count;
use sayso_model::{Answer, SignLevel, Story, Then};
use sayso_sim::rehearsal::{Does, Over, Run, Thing, Told, What, Written, answers, written_down};
use std::collections::BTreeSet;

/// Milliseconds after a mild sign in which nothing is to be asked.
const MILD_MS: u32 = 5_000;
/// Milliseconds after a strong one in which the person is to step away or to end.
const STRONG_MS: u32 = 8_000;

/// Milliseconds in which a press can be answered, at the least.
const ANSWERS_MS: u32 = 3_000;

/// How it was taught: each figure with its interval and its count.
#[derive(Clone, PartialEq, Debug)]
pub struct Conduct {
    /// Middle seconds from the person's press to giving.
    pub delay: Estimate,
    /// Middle seconds from the animal's press to giving.
    pub answer_delay: Estimate,
    /// Showings a minute, while the animal was not gone.
    pub pace: Estimate,
    /// Showings by word.
    pub balance: [usize; 4],
    /// Of what was shown and given: taken. What it left lying as it went is not in it.
    pub taken: Estimate,
    /// Of buttons that the person pressed: while it was at the board.
    pub shown_there: Estimate,
    /// Of buttons that the person pressed: what it says was given.
    pub paid: Estimate,
    /// Of invitations: their wait was kept.
    pub waits: Estimate,
    /// Of invitations: made while it was at the board, or on its way there.
    pub invited_there: Estimate,
    /// Invitations, wherever it was.
    pub invited: usize,
    /// Of waits that were over while it was there: shown and given then.
    pub after_wait: Estimate,
    /// Of its presses: answered in any way.
    pub answered: Estimate,
    /// "Not now" with and without something else, by word, of its presses.
    pub declined: [(usize, usize); 4],
    /// Of times "not now" was said: something else was given.
    pub alternatives: Estimate,
    /// Of leavings: honoured.
    pub leaving: Estimate,
    /// Of mild signs: heeded.
    pub mild: Estimate,
    /// Of strong signs: heeded.
    pub strong: Estimate,
    /// Signs that it showed, whether or not there was time to heed them.
    pub signs: usize,
    /// Of things taken: had in peace.
    pub eaten: Estimate,
    /// Of pairs held out: nothing else was done until it had chosen.
    pub held: Estimate,
    /// Times each thing was chosen, of times it was held out and one of the two was chosen or neither.
    pub chosen: [(usize, usize); 4],
    /// Times it was called or its way was barred.
    pub pushes: usize,
    /// Times the word was said again.
    pub again: usize,
    /// Buttons that the person pressed.
    pub pressed: usize,
    /// Things given, whatever for.
    pub given: usize,
    /// Times a button was pressed again after the animal had started back from it and before it was softer, by word.
    pub frightened: [usize; 4],
    /// Kinds of things tried with a word that does not get on: shown, held in view, two held out, at hand, softer, quieter.
    pub tries: usize,
}

impl Conduct {
    /// Whether there is nothing in it that anything could be said of. That nobody held it back is nothing, where nobody did anything.
    #[must_use]
    pub fn is_empty(&self) -> bool {
        let did = self.pressed + self.given + self.tries + self.pushes + self.again > 0;
        let whole = [&self.leaving, &self.mild].iter().all(|share| share.value.is_none_or(|value| value >= 1.0));
        !did && whole && self.answered.n == 0 && self.strong.n == 0
    }

    /// Showings of all words.
    #[must_use]
    pub fn showings(&self) -> usize {
        self.balance.iter().sum()
    }
}

/// Looks at a rehearsal as the notebook looks at a session, and at what only a rehearsal can see.
#[must_use]
pub fn conduct(run: &Run) -> Conduct {
    let Written { events, animal, begins, ends } = written_down(run);
    let story = Story::from_events(events);
    let all = answered_between(&story, animal, (begins, ends), ends);
    let shown = showings(&all, None);
    let own = own_presses(&all, None);
    let of = |word: Thing| own.iter().filter(move |a| a.press.part.word == Written::word(word));
    let declines = |answer: Answer| matches!(answer, Answer::Declined | Answer::Alternative);
    let delays =
        |of: &[Answered<'_>]| -> Vec<f64> { of.iter().filter(|a| a.given()).filter_map(Answered::delay_s).collect() };
    let then = |a: &Answered<'_>| a.delivery.and_then(|d| d.part.then);
    let began = |a: &Answered<'_>| a.press.at().seconds_since(begins);
    let left = own.iter().filter(|a| a.delivery.is_none());
    let unanswered = left.filter(|a| was_left(run, began(a))).count();
    let answered = own.iter().filter(|a| a.delivery.is_some()).count();
    let refused = own.iter().filter_map(|a| a.delivery).filter(|d| declines(d.part.answer));
    Conduct {
        delay: median(&delays(&shown), Unit::Seconds),
        answer_delay: median(&delays(&own), Unit::Seconds),
        pace: pace(run, shown.len()),
        balance: Thing::ALL.map(|word| showings(&all, Some(Written::word(word))).len()),
        taken: share(shown.iter().filter_map(|a| taken(run, (began(a), a.delay_s()?), then(a)?))),
        shown_there: shown_there(run),
        paid: paid(run),
        waits: waits(run),
        invited_there: invited_there(run),
        invited: each(run, |what| matches!(what, What::Person(Does::Offer(_)))).count(),
        after_wait: after_wait(run),
        answered: k_of(answered, answered + unanswered),
        declined: Thing::ALL.map(|word| {
            let no = of(word).filter_map(|a| a.delivery).filter(|d| declines(d.part.answer)).count();
            (no, of(word).count())
        }),
        alternatives: share(refused.map(|d| d.part.answer == Answer::Alternative)),
        leaving: leavings(run),
        mild: signs(run, SignLevel::Mild),
        strong: signs(run, SignLevel::Strong),
        signs: each(run, |what| matches!(what, What::Sign(_))).count(),
        eaten: eaten(run),
        held: held(run),
        chosen: chosen(run),
        pushes: each(run, |what| matches!(what, What::Person(Does::Call | Does::Block))).count(),
        again: each(run, |what| what == What::Person(Does::Again)).count(),
        pressed: each(run, |what| matches!(what, What::Person(Does::Show(_)))).count(),
        given: each(run, |what| matches!(what, What::Person(Does::Give(_) | Does::Instead(_)))).count(),
        frightened: frightened(run),
        tries: tries(run),
    }
}

/// Of buttons that the person pressed, those whose thing was given. One that the animal's own press, its going, a strong sign or the
/// end cut short tells nothing, nor does one that was under way when it left, or, not given, when it pressed or showed a sign, nor, not
/// given, one with which or soon after which a mild sign came: a pause is right then. What answers a press of its own from before goes
/// past it.
fn paid(run: &Run) -> Estimate {
    let shown = each(run, |what| matches!(what, What::Person(Does::Show(_))));
    let answers = answers(&run.told);
    share(shown.filter_map(|(told, after)| {
        let from = run.told.len() - after.len();
        let for_its_own =
            |i: usize| answers.get(&(from + i)).is_some_and(|answer| answer.own && answer.press + 1 < from);
        let mut later = after.iter().enumerate().filter(|(i, _)| !for_its_own(*i)).map(|(_, t)| t);
        let mut paused = false;
        let ended = later.find(|t| match t.what {
            What::Pressed(_) | What::Leaves => true,
            What::Sign(sign) => {
                paused |= t.at_ms < told.at_ms + GIVES_MS;
                sign.level == SignLevel::Strong
            }
            What::Person(does) => !matches!(does, Does::NotNow | Does::Ready | Does::Softer | Does::Quiet),
            _ => false,
        });
        let at_ms = ended.map_or(run.over.0, |t| t.at_ms);
        let paid = match ended.map(|t| t.what) {
            Some(What::Person(Does::Give(thing))) => Some(Some(thing) == told.what.thing()),
            _ if paused => None,
            Some(What::Person(does)) if !matches!(does, Does::End | Does::Back) => Some(false),
            _ => (at_ms >= told.at_ms + GIVES_MS).then_some(false),
        };
        told_of(run, from - 1, paid?)
    }))
}

/// Whether what was given so many seconds after a showing of that moment was taken. What lay there as it left, or was shown before it
/// could be seen to have left and came after, tells nothing.
fn taken(run: &Run, (shown_s, delay_s): (f64, f64), then: Then) -> Option<bool> {
    let ms = |s: f64| (s * 1000.0).round() as u32;
    let (shown_ms, given_ms) = (ms(shown_s), ms(shown_s + delay_s));
    let meanwhile = |t: &Told| t.at_ms + REACTS_MS > shown_ms && t.at_ms <= given_ms;
    match then {
        Then::Took => Some(true),
        Then::Left => None,
        _ => (!run.told.iter().any(|t| t.what == What::Leaves && meanwhile(t))).then_some(false),
    }
}

/// Whether an own press of that moment, which nothing was given or said to, could have been answered before it left or all was over.
/// A thing that was being fetched is an answer under way.
fn was_left(run: &Run, at_s: f64) -> bool {
    let at_ms = (at_s * 1000.0).round() as u32;
    let after = || run.told.iter().filter(|t| t.at_ms >= at_ms);
    let ends = after().find(|t| matches!(t.what, What::Leaves | What::Unanswered(_)));
    // That it waited in vain is told only where nothing was under way for it.
    if ends.is_some_and(|t| matches!(t.what, What::Unanswered(_))) {
        return true;
    }
    let until_ms = ends.map_or(run.over.0, |t| t.at_ms);
    let fetches = after().take_while(|t| t.at_ms <= until_ms).any(|t| matches!(t.what, What::Fetches(_)));
    !fetches && until_ms >= at_ms + ANSWERS_MS
}

/// Presses by the person of buttons from which the animal had started back, and which were not softer yet.
fn frightened(run: &Run) -> [usize; 4] {
    let (mut again, mut feared) = ([0; 4], [None; 4]);
    for told in &run.told {
        match told.what {
            What::Startled(thing) => feared[thing.place()] = feared[thing.place()].or(Some(told.at_ms + REACTS_MS)),
            What::Person(Does::Softer) => feared = [None; 4],
            What::Person(Does::Show(thing)) => {
                let seen = feared[thing.place()].is_some_and(|from_ms| told.at_ms >= from_ms);
                again[thing.place()] += usize::from(seen);
            }
            _ => {}
        }
    }
    again
}

/// Kinds of things that were tried.
fn tries(run: &Run) -> usize {
    let kinds = run.told.iter().filter_map(|told| match told.what {
        What::Person(
            does @ (Does::Show(_) | Does::Offer(_) | Does::Two | Does::Ready | Does::Softer | Does::Quiet),
        ) => Some(does.name()),
        _ => None,
    });
    kinds.collect::<BTreeSet<_>>().len()
}

/// Showings a minute until the animal was gone for good, with the exact Poisson interval (Garwood 1936).
fn pace(run: &Run, showings: usize) -> Estimate {
    let gone = run.told.iter().rev().find(|t| t.what == What::Gone).filter(|_| !run.stays);
    let minutes = f64::from(gone.map_or(run.over.0, |t| t.at_ms)) / 60_000.0;
    match Count::new(showings as u64, minutes) {
        Ok(count) if minutes > 0.0 => Estimate::with(count.rate(), count.interval(LEVEL), showings, Unit::PerMinute),
        _ => Estimate::unknown(Unit::PerMinute),
    }
}

/// Of leavings, those that were honoured: until it set out to come back by itself nothing was asked of it.
fn leavings(run: &Run) -> Estimate {
    share(each(run, |what| what == What::Leaves).map(|(told, after)| {
        // One that was barred goes on as a leaving of its own.
        let mut gone = after.iter().take_while(|t| !matches!(t.what, What::Comes | What::Joined | What::Leaves));
        !gone.any(asks_after(told))
    }))
}

/// Of signs of a level, those that were heeded.
fn signs(run: &Run, level: SignLevel) -> Estimate {
    let strong = level == SignLevel::Strong;
    let signs = each(run, |what| matches!(what, What::Sign(sign) if sign.level == level));
    share(signs.filter_map(|(told, after)| {
        let upto = told.at_ms + if strong { STRONG_MS } else { MILD_MS };
        let mut after = after.iter().take_while(|t| t.at_ms <= upto);
        let kept_off = !after.clone().any(asks_after(told));
        let withdrew = after.any(|t| matches!(t.what, What::Person(Does::Back | Does::End)));
        // The exercise was over before there was time for it.
        if strong && kept_off && !withdrew && run.over.0 < upto && run.over.1 != Over::Ended {
            return None;
        }
        Some(kept_off && (withdrew || !strong))
    }))
}

/// Of things taken, those that it had in peace.
fn eaten(run: &Run) -> Estimate {
    share(each(run, |what| matches!(what, What::Took(_))).map(|(told, after)| {
        let lasts_s = told.what.thing().map_or(0.0, Thing::lasts_s);
        let has = |t: &&Told| {
            f64::from(t.at_ms - told.at_ms) < 1000.0 * lasts_s
                && !matches!(t.what, What::Finished(_) | What::Leaves | What::Ignored(_))
        };
        !after.iter().take_while(has).any(asks_after(told))
    }))
}

/// Of pairs held out, those after which the person held still until it had chosen. What was held out as it left tells nothing.
fn held(run: &Run) -> Estimate {
    let ends = |what| matches!(what, What::Chose(_) | What::ChoseNone | What::Leaves | What::Person(_));
    share(each(run, |what| matches!(what, What::Held(..))).filter_map(|(_, after)| {
        let next = after.iter().find(|t| ends(t.what))?;
        match next.what {
            What::Leaves | What::Person(Does::End | Does::Back) => None,
            What::Person(_) => Some(false),
            _ => Some(true),
        }
    }))
}

/// How often each thing was chosen, of pairs that were decided.
fn chosen(run: &Run) -> [(usize, usize); 4] {
    let mut counts = [(0, 0); 4];
    let mut pair = None;
    for told in &run.told {
        match told.what {
            What::Held(left, right) => pair = Some((left, right)),
            What::Leaves => pair = None,
            What::Chose(_) | What::ChoseNone => {
                let Some((left, right)) = pair.take() else { continue };
                for thing in [left, right] {
                    counts[thing.place()].1 += 1;
                    counts[thing.place()].0 += usize::from(told.what == What::Chose(thing));
                }
            }
            _ => {}
        }
    }
    counts
}
