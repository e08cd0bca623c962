//! What a line says that may need a coach, on the day it is read.

use super::aside::Seen;
use super::bar::Bar;
use super::line::{Held, Line, Logging, Look, Measure, SignDay, SignKind, WordLine};
use super::need::{About, Lack, Need, Since, Until, What};
use super::outside::outside;
use super::sureness::{Claim, sure};
use crate::advice::Sure;
use crate::estimate::Estimate;
use crate::weeks::WEEK;
use crate::welfare::LASTS_DAYS;
use sayso_model::{Day, Moment};
use sayso_norms::Release;
use std::collections::BTreeSet;

/// Weeks looked at for what comes back, and those with one from which it does: as on the home's own page.
const RECURS: (usize, usize) = (6, 3);
/// Days of the week with strong signs from which sessions rest.
const STRAIN_DAYS: usize = 2;
/// Share of the last sessions left beyond which, surely, it is named: leaving now and then is an answer like any other.
const LEFT: f64 = 0.3;
/// A fall in joining of less than this share is no need, however sure.
const FALL: f64 = 0.2;
/// Own presses a day below this part of before, or waits above this many times before, are a need.
const FEWER: f64 = 0.5;
const SLOWER: f64 = 1.5;
/// Days of the last week clearly over the day's rewards from which it is named.
const OVER_DAYS: usize = 3;
/// Whole days that a word may be ready without being invited.
const READY_DAYS: u32 = 7;

/// Everything that may need a coach at `now`, in the order of precedence. `bar` is that of all lines read together; `norms`, where
/// there are any, what other homes did.
#[must_use]
pub fn needs(line: &Line, now: Moment, bar: &Bar, seen: &Seen, norms: Option<&Release>) -> Vec<Need> {
    let today = now.day(&line.zone);
    let mut found: Vec<Need> = safety(line, today);
    let unsafe_now = !found.is_empty();
    found.extend(taken_back(line, today));
    let fallen: Vec<Need> = line.looks.iter().filter(|l| bar.change(l) && worse(l)).map(change).collect();
    found.extend(fallen);
    found.extend(leaves(line));
    let silent = silent(line, now, today);
    let is_silent = silent.is_some();
    found.extend(silent);
    let held: Vec<Need> = line.words.iter().filter_map(|w| held(w, bar, &line.logging)).collect();
    let holds = |word| held.iter().any(|n| matches!(&n.what, What::Held { word: w, .. } if *w == word));
    // Nothing is asked of an animal whose safety comes first, nor of a home that does not write.
    let ready: Vec<Need> = line
        .words
        .iter()
        .filter(|w| !unsafe_now && !is_silent && !holds(w.word))
        .filter_map(|w| ready(w, today))
        .collect();
    found.extend(held);
    found.extend(ration(line, today));
    found.extend(ready);
    if !unsafe_now && !is_silent {
        found.extend(check(line));
        found.extend(little(line));
        found.extend(norms.into_iter().flat_map(|release| outside(line, today, release, bar)));
    }
    for need in &mut found {
        need.put = seen.of(line.animal, need, (now, &line.zone));
    }
    super::order::order(&mut found);
    found
}

fn ago(today: Day, day: Day) -> i32 {
    today.days_since(day)
}

/// Signs that stand, of the last so many days.
fn of_days(line: &Line, today: Day, days: i32) -> impl Iterator<Item = &SignDay> {
    line.signs.iter().filter(move |s| !s.taken_back && (0..days).contains(&ago(today, s.day)))
}

/// What lasts four weeks, and strong signs that rest sessions today.
fn safety(line: &Line, today: Day) -> Vec<Need> {
    let mut found = Vec::new();
    for kind in [SignKind::Swallowing, SignKind::Threat, SignKind::Guarding] {
        let seen: Vec<&SignDay> = of_days(line, today, LASTS_DAYS).filter(|s| s.kind == kind).collect();
        found.extend(signs(line, today, kind, &seen, LASTS_DAYS));
    }
    let strong: Vec<&SignDay> = of_days(line, today, WEEK).filter(|s| s.strong).collect();
    let days: BTreeSet<Day> = strong.iter().map(|s| s.day).collect();
    if days.contains(&today) || days.len() >= STRAIN_DAYS {
        found.extend(signs(line, today, SignKind::Other, &strong, WEEK));
    }
    found
}

/// The first day on which signs of a kind, seen on these days, would not stand any more, if none came to them.
fn over(kind: SignKind, on: &BTreeSet<Day>, last: Day) -> Day {
    if kind != SignKind::Other {
        return last.plus(LASTS_DAYS);
    }
    // As [`crate::rest`] has it: the day after the last, or a week after the last but one.
    let next = last.plus(1);
    on.iter().rev().nth(1).map_or(next, |day| day.plus(WEEK).max(next))
}

fn signs(line: &Line, today: Day, kind: SignKind, seen: &[&SignDay], days: i32) -> Option<Need> {
    let on: BTreeSet<Day> = seen.iter().map(|s| s.day).collect();
    let last = *on.last()?;
    let (of, from) = RECURS;
    let back = of_days(line, today, 7 * i32::try_from(of).unwrap_or(0)).filter(|s| s.kind == kind);
    let weeks: BTreeSet<i32> = back.map(|s| ago(today, s.day) / 7).collect();
    let count = seen.iter().map(|s| s.count).sum();
    let what = What::Signs {
        kind,
        count,
        on_days: on.len(),
        days,
        last,
        ago: ago(today, last),
        recurring: (kind != SignKind::Other && weeks.len() >= from).then_some((weeks.len(), of)),
    };
    let since = on.first().copied().map(Since::Began);
    let until = Until::Without { before: over(kind, &on, last) };
    Some(Need { about: About::Safety, what, since, n: count, sure: Sure::Very, until, put: None })
}

fn taken_back(line: &Line, today: Day) -> Vec<Need> {
    let kinds: BTreeSet<SignKind> = line.signs.iter().filter(|s| s.taken_back).map(|s| s.kind).collect();
    let one = |kind: SignKind| {
        let gone = || {
            let lately = |s: &&SignDay| s.taken_back && s.kind == kind && (0..LASTS_DAYS).contains(&ago(today, s.day));
            line.signs.iter().filter(lately)
        };
        let last = gone().map(|s| s.day).max()?;
        let count = gone().map(|s| s.count).sum();
        let what = What::TakenBack { kind, count, last };
        let until = Until::Asked;
        Some(Need {
            about: About::TakenBack,
            what,
            since: Some(Since::Began(last)),
            n: count,
            sure: Sure::Little,
            until,
            put: None,
        })
    };
    kinds.into_iter().filter_map(one).collect()
}

/// Whether a change is for the worse, and large enough to matter.
fn worse(look: &Look) -> bool {
    let (lately, before) = (look.lately.value, look.before.value);
    match look.measure {
        Measure::Joining => lately.zip(before).is_some_and(|(l, b)| l <= b - FALL),
        Measure::Presses => lately.zip(before).is_some_and(|(l, b)| l <= FEWER * b),
        // Where it no longer presses in half of the waits there is no middle.
        Measure::Latency => before.is_some_and(|b| lately.is_none_or(|l| l >= SLOWER * b)),
    }
}

/// How sure a kind of need is called by what was measured; a guess where it was not.
fn measured(about: About) -> Sure {
    sure(Claim::Of(about)).unwrap_or(Sure::Little)
}

fn change(look: &Look) -> Need {
    let n = look.lately.n + look.before.n;
    let sure = measured(About::Change);
    let (what, since) = (What::Change(*look), Some(Since::AtLeast(look.since)));
    Need { about: About::Change, what, since, n, sure, until: Until::AsBefore, put: None }
}

fn leaves(line: &Line) -> Option<Need> {
    let share = Estimate::share(line.left.0, line.left.1);
    if !share.surely_above(LEFT) {
        return None;
    }
    let what = What::Leaves { share };
    Some(Need {
        about: About::Leaves,
        what,
        since: line.left_since.map(Since::AtLeast),
        n: share.n,
        sure: Sure::Fairly,
        until: Until::FewerLeft,
        put: None,
    })
}

/// Whole household days without a record, those of the last record and of today left out.
fn silent(line: &Line, now: Moment, today: Day) -> Option<Need> {
    let log = &line.logging;
    let last = log.last.filter(|last| *last <= now)?.day(&line.zone);
    let days = u32::try_from(ago(today, last) - 1).ok()?;
    if days < log.silent_after {
        return None;
    }
    let what = What::Silent { days, usual: log.usual_gap, longest: log.longest_gap, after: log.silent_after };
    // Without a habit there is nothing to hold it against.
    let sure = if log.usual_gap.n >= 10 { measured(About::Silent) } else { Sure::Fairly };
    let (since, n) = (Some(Since::Began(last.plus(1))), log.usual_gap.n);
    Some(Need { about: About::Silent, what, since, n, sure, until: Until::Record, put: None })
}

fn held(word: &WordLine, bar: &Bar, log: &Logging) -> Option<Need> {
    let held = bar.cause_of(word);
    if word.stuck.is_none() && held.is_none() {
        return None;
    }
    // What was not measured is no more than its own figures say, and never sure.
    let of = |h: Held| sure(Claim::HeldBy(h.cause)).unwrap_or(h.sure.min(Sure::Fairly));
    let sure = held.map_or(Sure::Fairly, of);
    let n = held.map_or(word.right.n, |h| h.figure.n);
    let until = match (held, Lack::of(log)) {
        (Some(_), _) => Until::Mended,
        (None, Some(lack)) => Until::MoreRecords { lack },
        (None, None) => Until::MoreRight,
    };
    let what = What::Held { word: word.word, stuck: word.stuck, right: word.right, held };
    Some(Need { about: About::Held, what, since: word.held_seen.map(Since::Seen), n, sure, until, put: None })
}

fn ration(line: &Line, today: Day) -> Option<Need> {
    let budget_kcal = line.budget_kcal?;
    let over: Vec<_> = line.over.iter().filter(|o| (0..WEEK).contains(&ago(today, o.day))).collect();
    if over.len() < OVER_DAYS {
        return None;
    }
    let most_kcal = over.iter().map(|o| o.given_kcal).fold(0.0, f64::max);
    let what = What::Ration { days: over.len(), of: WEEK, most_kcal, budget_kcal };
    let (since, n) = (over.iter().map(|o| o.day).min().map(Since::AtLeast), over.len());
    let sure = measured(About::Ration);
    Some(Need { about: About::Ration, what, since, n, sure, until: Until::FewerOver, put: None })
}

fn ready(word: &WordLine, today: Day) -> Option<Need> {
    let since = word.ready_since?;
    let days = u32::try_from(ago(today, since)).ok().filter(|days| *days >= READY_DAYS)?;
    let what = What::Ready { word: word.word, showings: word.showings, days };
    let n = word.showings;
    Some(Need {
        about: About::Ready,
        what,
        since: Some(Since::Began(since)),
        n,
        sure: measured(About::Ready),
        until: Until::Invited,
        put: None,
    })
}

fn check(line: &Line) -> Option<Need> {
    let need = |what, n| {
        Some(Need { about: About::Check, what, since: None, n, sure: Sure::Fairly, until: Until::Checked, put: None })
    };
    match (line.check.open, line.check.never) {
        (Some((done, of)), _) => need(What::CheckOpen { done, of }, done),
        (None, words) if words > 0 => need(What::CheckNever { words }, words),
        _ => None,
    }
}

fn little(line: &Line) -> Option<Need> {
    let log = &line.logging;
    let lack = Lack::of(log).filter(|_| log.known() && !line.words.is_empty())?;
    let what = What::Little { lack, days: log.days, of: log.of, closed: log.closed };
    let n = log.days;
    Some(Need {
        about: About::Little,
        what,
        // The days that are looked at say it: it began with none of them.
        since: None,
        n,
        sure: Sure::Very,
        until: Until::MoreRecords { lack },
        put: None,
    })
}
