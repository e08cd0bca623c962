//! The causes behind a word that is stuck, each weighed by the records. Thresholds are our own (common practice, no source);
//! what they find and miss on simulated households stands in `docs/lab`.

use crate::advice::Reason;
use crate::case::Case;
use crate::cause::{Bearing, Cause, Weighed};
use crate::ease::{late_fall, worst_hours};
use crate::estimate::{Estimate, Unit, median};
use crate::observe::{Answered, own_presses, showings};
use crate::rate::per_day;
use sayso_listen::{ADVISED_S, LOUDNESS_APART};
use sayso_methods::learning::rank_sum::rank_sum;
use sayso_methods::stats::{Tail, TwoByTwo};
use sayso_methods::words::{AlikeRule, alike as sounds};
use sayso_model::{Brush, ClipCard, Invitation, Look, PersonId, PressedBy, Story, Then, WordId};
use std::collections::BTreeMap;

/// Days looked back on.
pub(crate) const RECENT_DAYS: i32 = 21;
/// The household's language; the only one with a dictionary so far.
const LANGUAGE: &str = "en";
/// Taken less often than this, a reward is not wanted now.
const TAKEN: f64 = 0.6;
/// Showings a day below which there is too little of it.
const SHOWINGS_A_DAY: f64 = 2.0;
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

fn weigh(cause: Cause, bearing: Bearing, text: impl Into<String>, figure: Option<Estimate>) -> Weighed {
    Weighed { cause, bearing, evidence: Reason { text: text.into(), figure, events: Vec::new() } }
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
        return weigh(
            Cause::HardToMakeOut,
            Bearing::Unknown,
            "no recording of it was checked here: play its button from another room and listen.",
            None,
        );
    };
    let quiet = clip.lufs.zip(middle).is_some_and(|(own, middle)| own < middle - LOUDNESS_APART);
    let short = clip.seconds.get() < *ADVISED_S.start();
    let found = match (short, quiet) {
        (true, true) => "is very short and quieter than the others",
        (true, false) => "is very short",
        (false, true) => "is quieter than the others",
        (false, false) => "was checked, which does not tell what an animal makes out",
    };
    weigh(
        Cause::HardToMakeOut,
        if short || quiet { Bearing::Perhaps } else { Bearing::Unknown },
        format!(
            "its recording ({:.1} s) {found}. Family dogs answered about 30 % of trained cues from buttons, near 100 % from a live voice (17 dogs; Higaki 2025, figures from a press text).",
            clip.seconds.get()
        ),
        None,
    )
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
    weigh(
        Cause::NotWanted,
        against_bar(&figure, Some(TAKEN), None),
        format!(
            "share of what was given for this word that it took, last {RECENT_DAYS} days (bar {:.0} %).",
            100.0 * TAKEN
        ),
        Some(figure),
    )
}

pub(crate) fn too_little(case: &Case<'_>, word: WordId) -> Weighed {
    let from = case.since(RECENT_DAYS);
    let shown = &case.totals().of(word).shown;
    let first = shown.first().map_or(from, |s| s.at).max(from);
    // Showings come in sessions, so their number is less sure than that of single events.
    let figure = per_day(shown.iter().map(|s| s.at), first, case.now(), case.zone());
    weigh(
        Cause::TooLittle,
        against_bar(&figure, Some(SHOWINGS_A_DAY), None),
        format!("showings, last {RECENT_DAYS} days (bar {SHOWINGS_A_DAY} a day)."),
        Some(figure),
    )
}

pub(crate) fn too_late(case: &Case<'_>, word: WordId) -> Weighed {
    let recent = case.recent(case.since(RECENT_DAYS));
    let delays: Vec<f64> = showings(recent, Some(word)).iter().filter_map(Answered::delay_s).collect();
    let figure = median(&delays, Unit::Seconds);
    weigh(
        Cause::TooLate,
        against_bar(&figure, None, Some(DELAY_S)),
        format!("from press to delivery, the middle value (bar {DELAY_S} s)."),
        Some(figure),
    )
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
    // Half of its share of the showings: below that it keeps away from this button more than from the rest.
    let bearing = if expected > 0.0 && near_all > 0 {
        against_bar(&figure, Some(expected / 2.0), None)
    } else {
        Bearing::Unknown
    };
    weigh(
        Cause::Avoided,
        bearing,
        format!(
            "share of all looks, brushes and own presses that went to this button; it had {:.0} % of the showings (bar {:.0} %).",
            100.0 * expected,
            50.0 * expected
        ),
        Some(figure),
    )
}

fn joined_share([yes, no]: [u64; 2]) -> Estimate {
    Estimate::share(usize::try_from(yes).unwrap_or(0), usize::try_from(yes + no).unwrap_or(0))
}

/// The hours at which it is least at ease against the rest of the day.
pub(crate) fn time_or_place(case: &Case<'_>) -> Weighed {
    let Some(found) = worst_hours(case, case.since(TIME_DAYS)) else {
        return weigh(Cause::TimeOrPlace, Bearing::Unknown, "too few sessions at different times of day.", None);
    };
    // A little less at ease at some hours is no trouble.
    let matters = found.higher_by >= UNEASE && joined_share(found.here).value.is_some_and(|s| s < JOINS_HERE);
    weigh(
        Cause::TimeOrPlace,
        match found.p {
            p if matters && p < 0.02 => Bearing::For,
            p if matters && p < 0.08 => Bearing::Perhaps,
            _ => Bearing::Against,
        },
        format!(
            "from {} to {} o'clock it joined {}, at other times {}; with coming late, leaving and signs counted in, p = {:.3} (corrected for picking the hours), last {TIME_DAYS} days.",
            found.hours.0,
            found.hours.1,
            joined_share(found.here),
            joined_share(found.elsewhere),
            found.p
        ),
        None,
    )
}

/// A sudden change in pressing, or a fall lately in joining, ease, presses and taking together. Never a diagnosis.
pub(crate) fn health(case: &Case<'_>) -> Weighed {
    let welfare = crate::welfare::welfare(case);
    if let Some(advice) = welfare.iter().find(|a| a.caution.as_deref().is_some_and(|c| c.contains("illness"))) {
        return Weighed {
            cause: Cause::Health,
            bearing: Bearing::Perhaps,
            evidence: advice.because.first().cloned().unwrap_or_else(|| Reason::said("a sudden change in pressing.")),
        };
    }
    let Some(found) = late_fall(case, case.since(TIME_DAYS)) else {
        return weigh(Cause::Health, Bearing::Unknown, "too few days to see a change.", None);
    };
    weigh(
        Cause::Health,
        if found.p < LATELY_P { Bearing::Perhaps } else { Bearing::Unknown },
        format!(
            "joined {} in the last {} days, {} before; with coming late, leaving, signs, own presses and taking counted in, p = {:.3} (corrected for picking the day). The records cannot show health: if anything seems off, ask a veterinarian.",
            joined_share(found.lately),
            found.days,
            joined_share(found.before),
            found.p
        ),
        None,
    )
}

pub(crate) fn alike(case: &Case<'_>, word: WordId) -> Weighed {
    let words = case.words();
    let Some(this) = words.iter().find(|w| w.word == word) else {
        return weigh(Cause::SoundsAlike, Bearing::Unknown, "the word has no card.", None);
    };
    let nearest = words
        .iter()
        .filter(|w| w.word != word)
        .map(|w| sounds(this.says.as_str(), w.says.as_str(), LANGUAGE, AlikeRule::default()))
        // Any that is too alike comes before one that only has near features.
        .min_by(|a, b| b.too_alike.cmp(&a.too_alike).then(a.apart.total_cmp(&b.apart)));
    let (right, presses) = case.invitations(word).right();
    let other = Estimate::share(presses - right, presses);
    match nearest {
        None => weigh(Cause::SoundsAlike, Bearing::Against, "it is the only word.", None),
        Some(verdict) => weigh(
            Cause::SoundsAlike,
            if verdict.too_alike { Bearing::Perhaps } else { Bearing::Against },
            format!("{}; pressed another word, of its presses when invited:", verdict.reason),
            Some(other),
        ),
    }
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
    let mut by_delay: Vec<&Vec<f64>> = delays.values().filter(|d| d.len() >= 5).collect();
    by_delay.sort_by_key(|g| std::cmp::Reverse(g.len()));
    let mut by_share: Vec<[u64; 2]> = gave.into_values().filter(|g| g[0] + g[1] >= 5).collect();
    by_share.sort_by_key(|g| std::cmp::Reverse(g[0] + g[1]));
    let mut found: Vec<(f64, bool, String)> = Vec::new();
    if let [first, second, ..] = by_delay[..] {
        let (a, b) = (median(first, Unit::Seconds), median(second, Unit::Seconds));
        let p = rank_sum(first, second).map_or(1.0, |t| t.p_two_sided);
        let apart = (a.value.unwrap_or(0.0) - b.value.unwrap_or(0.0)).abs() > APART.0;
        found.push((p, apart, format!("deliver after {a} and {b} (rank-sum test p = {p:.3})")));
    }
    if let [first, second, ..] = by_share[..] {
        let (a, b) = (joined_share(first), joined_share(second));
        let p = TwoByTwo([first, second]).fisher(Tail::TwoSided).map_or(1.0, |t| t.p);
        let apart = (a.value.unwrap_or(0.0) - b.value.unwrap_or(0.0)).abs() > APART.1;
        found.push((p, apart, format!("give in answer to its presses {a} and {b} (p = {p:.3})")));
    }
    if found.is_empty() {
        return weigh(Cause::PeopleDiffer, Bearing::Unknown, "fewer than two people with five answers each.", None);
    }
    // Two things were looked at.
    let level = 0.05 / found.len() as f64;
    let bearing = if found.iter().any(|(p, apart, _)| *apart && *p < level) {
        Bearing::For
    } else if found.iter().any(|(p, apart, _)| *apart && *p < 0.1) {
        Bearing::Perhaps
    } else {
        Bearing::Against
    };
    let texts: Vec<String> = found.into_iter().map(|f| f.2).collect();
    weigh(Cause::PeopleDiffer, bearing, format!("the two who do it most {}.", texts.join("; ")), None)
}
