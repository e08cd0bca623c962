//! Is a stuck word found, is a free one left alone, and is the true cause named?

use super::{Section, end};
use crate::error::{LabError, told};
use crate::report::figure::{Finding, In, Wanted, table};
use crate::work::Work;
use sayso_advisor::Case;
use sayso_advisor::stages::standings;
use sayso_advisor::stuck::{Bearing, Cause as Named, differential, is_stuck};
use sayso_model::Story;
use sayso_sim::{Cause, Home, plain_home, simulate, stuck_home};

/// The word with the trouble, in `stuck_home`.
const WORD: usize = 2;

/// What one home gave.
struct Seen {
    /// Called stuck, by word.
    called: Vec<bool>,
    /// For the word with the trouble: causes in order, with their bearing.
    ranked: Vec<(Named, Bearing)>,
    /// True understanding at the end, by word.
    understood: Vec<f64>,
}

pub(super) const fn named(cause: Cause) -> Named {
    match cause {
        Cause::RewardNotWanted => Named::NotWanted,
        Cause::TooLittleShowing => Named::TooLittle,
        Cause::DelayTooLong => Named::TooLate,
        Cause::DeviceAvoided => Named::Avoided,
        Cause::PlaceOrNoise => Named::TimeOrPlace,
        Cause::SoundsAlike => Named::SoundsAlike,
        Cause::AnsweredDifferently => Named::PeopleDiffer,
        Cause::Unwell => Named::Health,
    }
}

const NAMED: [Named; 8] = [
    Named::NotWanted,
    Named::TooLittle,
    Named::TooLate,
    Named::Avoided,
    Named::TimeOrPlace,
    Named::SoundsAlike,
    Named::PeopleDiffer,
    Named::Health,
];

fn suspected(seen: &Seen, cause: Named) -> bool {
    seen.ranked.iter().any(|(c, b)| *c == cause && matches!(b, Bearing::For | Bearing::Perhaps))
}

/// Runs the experiment.
pub fn run(work: &Work) -> Result<Section, LabError> {
    let mut section = Section::new("Stuck words: found, and for the right cause");
    let reps = work.size(60, 2);
    let plain = work.each("stuck: plain", work.size(240, 4), |seed| see(&plain_home(seed), seed))?;
    let (mut hits, mut false_calls, mut all_first, mut all_among, mut all) = (0, 0, 0, 0, 0);
    let (mut held_up, mut held_up_hits, mut held_up_others) = (0, 0, 0);
    let mut rows = Vec::new();
    for cause in Cause::ALL {
        let what = format!("stuck: {}", cause.name());
        let seen = work.each(&what, reps, |seed| see(&stuck_home(cause, seed), seed))?;
        let called = seen.iter().filter(|s| s.called[WORD]).count();
        hits += called;
        let held: Vec<&Seen> =
            seen.iter().filter(|s| s.understood[WORD] < 0.5 || cause == Cause::DeviceAvoided).collect();
        held_up += held.len();
        held_up_hits += held.iter().filter(|s| s.called[WORD]).count();
        held_up_others += seen
            .iter()
            .flat_map(|s| s.called.iter().zip(&s.understood).enumerate())
            .filter(|(word, (called, understood))| *word != WORD && **called && **understood < 0.5)
            .count();
        false_calls += seen.iter().flat_map(|s| s.called.iter().enumerate()).filter(|(w, c)| *w != WORD && **c).count();
        let first = seen
            .iter()
            .filter(|s| s.ranked.first().is_some_and(|r| r.0 == named(cause) && r.1 < Bearing::Unknown))
            .count();
        let among = seen.iter().filter(|s| suspected(s, named(cause))).count();
        let others = |s: &Seen| NAMED.iter().filter(|n| **n != named(cause) && suspected(s, **n)).count() as f64;
        let others = Finding::mean("", Wanted::Known, &seen.iter().map(others).collect::<Vec<_>>(), In::Number(""));
        let alarms = plain.iter().filter(|s| suspected(s, named(cause))).count();
        let understood: Vec<f64> = seen.iter().map(|s| s.understood[WORD]).collect();
        let understood = Finding::middle("", Wanted::Known, &understood, In::Percent);
        all_first += first;
        all_among += among;
        all += seen.len();
        let percent = |k: usize, n: usize| format!("{:.0} %", 100.0 * k as f64 / n as f64);
        rows.push(vec![
            cause.name().replace('_', " "),
            percent(called, seen.len()),
            percent(first, seen.len()),
            percent(among, seen.len()),
            format!("{:.1}", others.value),
            percent(alarms, plain.len()),
            format!("{:.2}", understood.value),
        ]);
        let what = format!("{}: true cause among the suspected", cause.name().replace('_', " "));
        section.add(Finding::share(what, Wanted::AtLeast(0.8), among, seen.len()));
    }
    let plain_calls: usize = plain.iter().map(|s| s.called.iter().filter(|c| **c).count()).sum();
    let homes = plain.iter().filter(|s| s.called.contains(&true)).count();
    section.add(Finding::share(
        "plain homes in which any word is called stuck",
        Wanted::AtMost(0.05),
        homes,
        plain.len(),
    ));
    section.add(Finding::share("words of all troubled homes called stuck (recall)", Wanted::AtLeast(0.7), hits, all));
    let what = "those truly not understood (below 0.5) or avoided, called stuck (recall)";
    section.add(Finding::share(what, Wanted::AtLeast(0.7), held_up_hits, held_up));
    let calls = hits + false_calls + plain_calls;
    section.add(Finding::share(
        "of the words called stuck, the labelled one (precision)",
        Wanted::AtLeast(0.9),
        hits,
        calls,
    ));
    let what = "of the words called stuck, labelled or truly not understood (below 0.5)";
    section.add(Finding::share(what, Wanted::AtLeast(0.9), hits + held_up_others, calls));
    section.add(Finding::share("true cause first", Wanted::AtLeast(0.6), all_first, all));
    section.add(Finding::share("true cause among the suspected", Wanted::AtLeast(0.8), all_among, all));
    // In six weeks a word shown from the third on is too young to be called stuck: the same home after eight.
    let longer = work.each("stuck: too little showing, eight weeks", reps, |seed| {
        see(&Home { days: 56, ..stuck_home(Cause::TooLittleShowing, seed) }, seed)
    })?;
    let called = longer.iter().filter(|s| s.called[WORD]).count();
    let what = "too little showing, after eight weeks: called stuck";
    section.add(Finding::share(what, Wanted::AtLeast(0.7), called, longer.len()));
    let head = [
        "true cause",
        "called stuck",
        "true cause first",
        "among the suspected",
        "other causes suspected",
        "suspected in plain homes",
        "true understanding (middle)",
    ];
    section.tables.push(table(&head, &rows));
    section.text(format!("Six weeks of a small home in which the third word is held up for one cause, {reps} homes a cause; the same home without trouble as control. The causes are weighed whether or not the word is called stuck. Suspected: the records speak for it, or it is possible. With some causes the word is understood well by the end (last column) and rightly not called stuck; what is asked there is whether the cause would be named."));
    Ok(section)
}

fn see(home: &Home, seed: u64) -> Result<Seen, LabError> {
    let run = simulate(home, seed, end()?).map_err(told)?;
    let animal = run.truth.ids.animals.first().copied().ok_or_else(|| told("no animal"))?;
    let understood =
        run.truth.last_day(0).map(|d| d.understanding.clone()).ok_or_else(|| told("no day was simulated"))?;
    let story = Story::from_events(run.events);
    let now = end()?;
    let case = Case::new(&story, animal, now);
    let standings = standings(&case);
    let called =
        run.truth.ids.words.iter().map(|w| standings.iter().any(|s| s.word == *w && is_stuck(&case, s))).collect();
    let ranked = differential(&case, run.truth.ids.words[WORD]).into_iter().map(|w| (w.cause, w.bearing)).collect();
    Ok(Seen { called, ranked, understood })
}
