//! The causes behind a word that is stuck, each weighed by the records. Thresholds are our own (common practice, no source);
//! what they find and miss on simulated households stands in `docs/lab`.

use crate::advice::Because;
use crate::case::Case;
use crate::cause::{Bearing, Cause, Weighed};
use crate::ease::{late_fall, worst_hours};
use crate::estimate::{Estimate, Unit, median};
use crate::lately::{More, more};
use crate::observe::{Answered, own_presses, showings};
use crate::rate::per_day;
use sayso_listen::{ADVISED_S, LOUDNESS_APART};
use sayso_methods::learning::rank_sum::rank_sum;
use sayso_methods::stats::{Tail, TwoByTwo};
use sayso_methods::words::{AlikeRule, alike as sounds};
use sayso_model::{Brush, ClipCard, Invitation, Look, PersonId, PressedBy, Story, Then, WordCard, WordId};
use std::collections::BTreeMap;

/// Days looked back on.
pub(crate) const RECENT_DAYS: i32 = 21;
/// Taken less often than this, a reward is not wanted now.
const TAKEN: f64 = 0.6;
/// Showings a day below which there is too little of it.
const SHOWINGS_A_DAY: f64 = 2.0;
/// Days since the first showing from which a number of them a day says something.
const FEWEST_DAYS: f64 = 3.0;
/// A delivery later than this, in seconds, comes too late to belong to the press.
const DELAY_S: f64 = 5.0;
/// Where it joins at least this share of the sessions, the time of day is no trouble.
const JOINS_HERE: f64 = 0.6;
/// Days looked back on for the time of day, where a habit takes longer to show.
const TIME_DAYS: i32 = 42;
/// Points of unease (see [`crate::ease`]) by which some hours must be worse.
const UNEASE: f64 = 0.6;
/// p below which a fall lately is worth a look at the animal.
const LATELY_P: f64 = 0.05;
/// People whose middle delays, in seconds, or shares given lie further apart than these answer differently.
const APART: (f64, f64) = (1.5, 0.3);

const fn weigh(cause: Cause, bearing: Bearing, evidence: Vec<Because>) -> Weighed {
    Weighed { cause, bearing, evidence }
}

/// Compares an estimate with a bar: surely on the bad side, on it, or surely on the good side.
fn against_bar(figure: &Estimate, bad_below: Option<f64>, bad_above: Option<f64>) -> Bearing {
    let Some(value) = figure.value else { return Bearing::Unknown };
    let (surely_bad, bad, surely_good) = match (bad_below, bad_above) {
        (Some(bar), _) => (figure.surely_below(bar), value < bar, figure.surely_above(bar)),
        (None, Some(bar)) => (figure.surely_above(bar), value > bar, figure.surely_below(bar)),
        (None, None) => (false, false, false),
    };
    match (surely_bad, bad, surely_good) {
        (true, ..) => Bearing::For,
        (_, true, _) => Bearing::Perhaps,
        (.., true) => Bearing::Against,
        _ => Bearing::Unknown,
    }
}

/// Whether the word has a recording that was checked, and whether it stands out for the worse. Nothing measured here tells
/// what an animal makes out: only a recording that is plainly too short or too quiet points to it.
pub(crate) fn hard_to_make_out(story: &Story, word: WordId) -> Weighed {
    let (of_word, others): (Vec<&ClipCard>, Vec<&ClipCard>) =
        story.clips().into_values().filter(|c| c.active).partition(|c| c.word == word);
    let mut loudness: Vec<f64> = others.iter().filter_map(|c| c.lufs).collect();
    loudness.sort_by(f64::total_cmp);
    let middle = loudness.get(loudness.len() / 2).copied();
    let Some(clip) = of_word.last() else {
        return weigh(Cause::HardToMakeOut, Bearing::Unknown, vec![Because::NoRecordingChecked]);
    };
    let quiet = clip.lufs.zip(middle).is_some_and(|(own, middle)| own < middle - LOUDNESS_APART);
    let short = clip.seconds.get() < *ADVISED_S.start();
    let bearing = if short || quiet { Bearing::Perhaps } else { Bearing::Unknown };
    weigh(Cause::HardToMakeOut, bearing, vec![Because::Recording { seconds: clip.seconds.get(), short, quiet }])
}

pub(crate) fn not_wanted(case: &Case<'_>, word: WordId) -> Weighed {
    let from = case.since(RECENT_DAYS);
    let given = case
        .recent(from)
        .iter()
        .filter(|a| a.press.part.word == word && a.given())
        .filter_map(|a| a.delivery.and_then(|d| d.part.then))
        .map(|then| then == Then::Took);
    let offered = case
        .story()
        .between::<Invitation>(case.animal(), from, case.now())
        .filter(|i| i.part.word == word)
        .filter_map(|i| i.part.took);
    let outcomes: Vec<bool> = given.chain(offered).collect();
    let figure = Estimate::share(outcomes.iter().filter(|t| **t).count(), outcomes.len());
    let bearing = against_bar(&figure, Some(TAKEN), None);
    weigh(Cause::NotWanted, bearing, vec![Because::Taken { share: figure, days: RECENT_DAYS, bar: TAKEN }])
}

pub(crate) fn too_little(case: &Case<'_>, word: WordId) -> Weighed {
    let from = case.since(RECENT_DAYS);
    let shown = &case.totals().of(word).shown;
    let first = shown.first().map_or(from, |s| s.at).max(from);
    // Minutes of a new notebook would make it hundreds a day.
    if case.now().seconds_since(first) < FEWEST_DAYS * 86_400.0 {
        return weigh(Cause::TooLittle, Bearing::Unknown, vec![Because::TooFewDays]);
    }
    // Showings come in sessions, so their number is less sure than that of single events.
    let figure = per_day(shown.iter().map(|s| s.at), first, case.now(), case.zone());
    let bearing = against_bar(&figure, Some(SHOWINGS_A_DAY), None);
    weigh(
        Cause::TooLittle,
        bearing,
        vec![Because::ShowingsADay { rate: figure, days: RECENT_DAYS, bar: SHOWINGS_A_DAY }],
    )
}

/// Middle seconds from press to delivery lately: one figure, whoever asks.
pub(crate) fn delay(case: &Case<'_>, word: WordId) -> Estimate {
    let recent = case.recent(case.since(RECENT_DAYS));
    let delays: Vec<f64> = showings(recent, Some(word)).iter().filter_map(Answered::delay_s).collect();
    median(&delays, Unit::Seconds)
}

pub(crate) fn too_late(case: &Case<'_>, word: WordId) -> Weighed {
    let figure = delay(case, word);
    let bearing = against_bar(&figure, None, Some(DELAY_S));
    weigh(Cause::TooLate, bearing, vec![Because::Delay { seconds: figure, bar: DELAY_S }])
}

/// Sessions in which the animal went near this button at all, against the other buttons shown in the same sessions.
pub(crate) fn avoided(case: &Case<'_>, word: WordId) -> Weighed {
    let (story, animal, from, now) = (case.story(), case.animal(), case.since(RECENT_DAYS), case.now());
    let recent = case.recent(from);
    let mut near: BTreeMap<bool, usize> = BTreeMap::new();
    let mut touch = |w: WordId| *near.entry(w == word).or_insert(0) += 1;
    story.between::<Look>(animal, from, now).filter_map(|l| l.part.word).for_each(&mut touch);
    story.between::<Brush>(animal, from, now).for_each(|b| touch(b.part.word));
    own_presses(recent, None).iter().for_each(|a| touch(a.press.part.word));
    let shown = showings(recent, None);
    let of_word = shown.iter().filter(|a| a.press.part.word == word).count();
    let (near_word, near_all) = (near.get(&true).copied().unwrap_or(0), near.values().sum::<usize>());
    let figure = Estimate::share(near_word, near_all);
    #[allow(clippy::cast_precision_loss)]
    let expected = of_word as f64 / shown.len().max(1) as f64;
    // Whoever comes to it more and more does not keep away from it.
    if let Some(More { now, before, .. }) = more(case, word) {
        let evidence = vec![Because::Near { share: figure, expected }, Because::ComesMore { now, before }];
        return weigh(Cause::Avoided, Bearing::Against, evidence);
    }
    // Half of its share of the showings: below that it keeps away from this button more than from the rest.
    let bearing = if expected > 0.0 && near_all > 0 {
        against_bar(&figure, Some(expected / 2.0), None)
    } else {
        Bearing::Unknown
    };
    weigh(Cause::Avoided, bearing, vec![Because::Near { share: figure, expected }])
}

fn joined_share([yes, no]: [u64; 2]) -> Estimate {
    Estimate::share(usize::try_from(yes).unwrap_or(0), usize::try_from(yes + no).unwrap_or(0))
}

/// The hours at which it is least at ease against the rest of the day.
pub(crate) fn time_or_place(case: &Case<'_>) -> Weighed {
    let Some(found) = worst_hours(case, case.since(TIME_DAYS)) else {
        return weigh(Cause::TimeOrPlace, Bearing::Unknown, vec![Because::TooFewHours]);
    };
    let (here, elsewhere) = (joined_share(found.here), joined_share(found.elsewhere));
    // A little less at ease at some hours is no trouble.
    let matters = found.higher_by >= UNEASE && here.value.is_some_and(|s| s < JOINS_HERE);
    let bearing = match found.p {
        p if matters && p < 0.02 => Bearing::For,
        p if matters && p < 0.08 => Bearing::Perhaps,
        _ => Bearing::Against,
    };
    let (from, to) = found.hours;
    let hours = Because::UneasyHours { from, to, here, elsewhere, p: found.p, days: TIME_DAYS };
    weigh(Cause::TimeOrPlace, bearing, vec![hours])
}

/// A sudden change in pressing, or a fall lately in joining, ease, presses and taking together. Never a diagnosis.
pub(crate) fn health(case: &Case<'_>) -> Weighed {
    if let Some(change) = crate::welfare::changed_suddenly(case) {
        return weigh(Cause::Health, Bearing::Perhaps, vec![change]);
    }
    let Some(found) = late_fall(case, case.since(TIME_DAYS)) else {
        return weigh(Cause::Health, Bearing::Unknown, vec![Because::TooFewDays]);
    };
    let bearing = if found.p < LATELY_P { Bearing::Perhaps } else { Bearing::Unknown };
    let fall = Because::LateFall {
        days: found.days,
        lately: joined_share(found.lately),
        before: joined_share(found.before),
        p: found.p,
    };
    weigh(Cause::Health, bearing, vec![fall])
}

pub(crate) fn alike(case: &Case<'_>, word: WordId) -> Weighed {
    let (words, language) = (case.words(), case.story().language_of_words());
    let Some(this) = words.iter().find(|w| w.word == word) else {
        return weigh(Cause::SoundsAlike, Bearing::Unknown, Vec::new());
    };
    let nearest = words
        .iter()
        .filter(|w| w.word != word)
        .map(|w| (w, sounds(this.says.as_str(), w.says.as_str(), language, AlikeRule::default())))
        // Any that is too alike comes before one that only has near features.
        .min_by(|(_, a), (_, b)| b.too_alike.cmp(&a.too_alike).then(a.apart.total_cmp(&b.apart)));
    let (right, presses) = case.invitations(word).right();
    let Some((nearest, verdict)) = nearest else {
        return weigh(Cause::SoundsAlike, Bearing::Against, vec![Because::OnlyWord]);
    };
    let found = Because::Sounds {
        nearest: nearest.says.to_string(),
        too_alike: verdict.too_alike,
        // The other side of the standing's right presses: the same kind of interval.
        others: Estimate::share_any_time(presses - right, presses),
    };
    weigh(Cause::SoundsAlike, if verdict.too_alike { Bearing::Perhaps } else { Bearing::Against }, vec![found])
}

/// A word that this one sounds too much like and that goes before it: one that was shown, or was made before it. Of two that were
/// never shown only the later is told to be another.
pub(crate) fn too_like(case: &Case<'_>, this: &WordCard) -> Option<Because> {
    let (language, totals) = (case.story().language_of_words(), case.totals());
    let before = |w: &&&WordCard| w.word < this.word || !totals.of(w.word).shown.is_empty();
    let mut others = case.words().iter().filter(|w| w.word != this.word).filter(before);
    let like =
        others.find(|w| sounds(this.says.as_str(), w.says.as_str(), language, AlikeRule::default()).too_alike)?;
    let others = Estimate::unknown(Unit::Share);
    Some(Because::Sounds { nearest: like.says.to_string(), too_alike: true, others })
}

/// Whether the two people who answer most give after different times, or give to different shares of its presses.
pub(crate) fn people_differ(case: &Case<'_>, word: WordId) -> Weighed {
    let recent = case.recent(case.since(RECENT_DAYS));
    let mut delays: BTreeMap<PersonId, Vec<f64>> = BTreeMap::new();
    let mut gave: BTreeMap<PersonId, [u64; 2]> = BTreeMap::new();
    for a in recent.iter().filter(|a| a.press.part.word == word) {
        let who = a.delivery.and_then(|d| d.person()).or_else(|| a.press.person());
        let (Some(who), Some(_)) = (who, a.delivery) else { continue };
        if a.press.part.by == PressedBy::Animal {
            gave.entry(who).or_default()[usize::from(!a.given())] += 1;
        }
        if let Some(delay) = a.delay_s().filter(|_| a.given()) {
            delays.entry(who).or_default().push(delay);
        }
    }
    let people = case.story().people();
    let named = |who: &PersonId| people.get(who).map_or_else(String::new, |p| p.name.to_string());
    let mut by_delay: Vec<(PersonId, Vec<f64>)> = delays.into_iter().filter(|(_, d)| d.len() >= 5).collect();
    by_delay.sort_by_key(|(_, d)| std::cmp::Reverse(d.len()));
    let mut by_share: Vec<(PersonId, [u64; 2])> = gave.into_iter().filter(|(_, g)| g[0] + g[1] >= 5).collect();
    by_share.sort_by_key(|(_, g)| std::cmp::Reverse(g[0] + g[1]));
    let apart_by = |a: Estimate, b: Estimate| (a.value.unwrap_or(0.0) - b.value.unwrap_or(0.0)).abs();
    let mut found: Vec<(f64, bool, Because)> = Vec::new();
    if let [(one, first), (other, second), ..] = &by_delay[..] {
        let seconds = [median(first, Unit::Seconds), median(second, Unit::Seconds)];
        let p = rank_sum(first, second).map_or(1.0, |t| t.p_two_sided);
        let apart = apart_by(seconds[0], seconds[1]) > APART.0;
        found.push((p, apart, Because::PeopleDelay { people: [named(one), named(other)], seconds, p }));
    }
    if let [(one, first), (other, second), ..] = by_share[..] {
        let share = [joined_share(first), joined_share(second)];
        let p = TwoByTwo([first, second]).fisher(Tail::TwoSided).map_or(1.0, |t| t.p);
        let apart = apart_by(share[0], share[1]) > APART.1;
        found.push((p, apart, Because::PeopleGive { people: [named(&one), named(&other)], share, p }));
    }
    if found.is_empty() {
        return weigh(Cause::PeopleDiffer, Bearing::Unknown, vec![Because::TooFewPeople]);
    }
    // Two things were looked at.
    let level = 0.05 / found.len() as f64;
    // What lies apart, the surest first, before what does not.
    found.sort_by(|(p, apart, _), (q, other, _)| other.cmp(apart).then(p.total_cmp(q)));
    let bearing = if found.iter().any(|(p, apart, _)| *apart && *p < level) {
        Bearing::For
    } else if found.iter().any(|(p, apart, _)| *apart && *p < 0.1) {
        Bearing::Perhaps
    } else {
        Bearing::Against
    };
    weigh(Cause::PeopleDiffer, bearing, found.into_iter().map(|f| f.2).collect())
}
