//! Stuck? A word that does not get on, and what may be behind it: each cause with its evidence for or against.
//! Thresholds are our own (common practice, no source) and stand beside every figure. It never says the animal cannot learn.

use crate::advice::{Advice, Reason, Sure, Topic};
use crate::estimate::{Estimate, LEVEL, Unit, median};
use crate::observe::{Answered, answered, invitations, own_presses, showings, since};
use crate::stages::Standing;
use sayso_methods::learning::rank_sum::rank_sum;
use sayso_methods::stats::{Count, Tail, TwoByTwo};
use sayso_methods::words::{AlikeRule, alike as sounds};
use sayso_model::{Brush, LearnerId, Look, Moment, Stage, Story, TeacherId, Then, WordId};
use std::collections::BTreeMap;

/// The household's language; the only one with a dictionary so far.
const LANGUAGE: &str = "en";
/// Days looked back on.
const RECENT_DAYS: i32 = 21;
/// A word is not called stuck before this many showings...
const ENOUGH_SHOWINGS: usize = 60;
/// ... and this many days since it was first shown.
const ENOUGH_DAYS: f64 = 21.0;
/// Taken less often than this, a reward is not wanted now.
const TAKEN: f64 = 0.6;
/// Showings a day below which there is too little of it.
const SHOWINGS_A_DAY: f64 = 4.0;
/// A delivery later than this, in seconds, comes too late to belong to the press.
const DELAY_S: f64 = 5.0;

/// What may be behind it.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
pub enum Cause {
    /// The reward is not wanted just now.
    NotWanted,
    /// There was too little showing.
    TooLittle,
    /// The delivery comes too late.
    TooLate,
    /// The button itself is avoided.
    Avoided,
    /// The time, place or noise is wrong.
    TimeOrPlace,
    /// It may not be well.
    Health,
    /// The word sounds like another.
    SoundsAlike,
    /// People answer it differently.
    PeopleDiffer,
}

impl Cause {
    /// In words.
    #[must_use]
    pub const fn words(self) -> &'static str {
        match self {
            Self::NotWanted => "the reward is not wanted just now",
            Self::TooLittle => "too little showing",
            Self::TooLate => "the delivery comes too late",
            Self::Avoided => "the button itself is avoided",
            Self::TimeOrPlace => "the time, place or noise",
            Self::Health => "it may not be well",
            Self::SoundsAlike => "the word sounds like another",
            Self::PeopleDiffer => "people answer it differently",
        }
    }

    /// What to try.
    #[must_use]
    pub const fn act(self) -> &'static str {
        match self {
            Self::NotWanted => {
                "test likes again and change what the word delivers, or show it when the thing is wanted"
            }
            Self::TooLittle => "show it more often, a little every day",
            Self::TooLate => "keep the thing at the board so that it comes within two seconds",
            Self::Avoided => {
                "go back a stage; move the button or try a quieter, softer one; let the learner come to it"
            }
            Self::TimeOrPlace => "hold sessions at the times it joins, in a quieter place",
            Self::Health => "see a veterinarian before training on",
            Self::SoundsAlike => "record a word that sounds different",
            Self::PeopleDiffer => "agree on one answer and one delay, and put the house rules where all see them",
        }
    }
}

/// How the records bear on a cause.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
pub enum Bearing {
    /// They speak for it.
    For,
    /// They point to it, with room for chance.
    Perhaps,
    /// Too few to say.
    Unknown,
    /// They speak against it.
    Against,
}

impl Bearing {
    /// In words.
    #[must_use]
    pub const fn words(self) -> &'static str {
        match self {
            Self::For => "the records speak for it",
            Self::Perhaps => "possible",
            Self::Unknown => "too few records to say",
            Self::Against => "the records speak against it",
        }
    }
}

/// One cause and its evidence.
#[derive(Clone, PartialEq, Debug)]
pub struct Weighed {
    /// The cause.
    pub cause: Cause,
    /// How the records bear on it.
    pub bearing: Bearing,
    /// The evidence.
    pub evidence: Reason,
}

/// Advice for every word that is stuck.
#[must_use]
pub fn stuck(story: &Story, learner: LearnerId, now: Moment, standings: &[Standing]) -> Vec<Advice> {
    standings
        .iter()
        .filter(|s| is_stuck(story, learner, now, s))
        .filter_map(|s| advice(story, learner, now, s))
        .collect()
}

/// Whether a word does not get on: shown long and often enough, still not conversed with, and the invitations (or,
/// without any, its own presses) say so beyond chance.
#[must_use]
pub fn is_stuck(story: &Story, learner: LearnerId, now: Moment, standing: &Standing) -> bool {
    let conversing = standing.stage == Stage::Converse || standing.figures_say == Stage::Converse;
    if conversing || standing.showings < ENOUGH_SHOWINGS {
        return false;
    }
    let first = showings(&answered(story, learner), Some(standing.word)).first().map(|a| a.press.at());
    if first.is_none_or(|at| now.seconds_since(at) < ENOUGH_DAYS * 86_400.0) {
        return false;
    }
    if standing.response.n >= 12 { standing.response.surely_below(0.5) } else { standing.own_presses == 0 }
}

fn advice(story: &Story, learner: LearnerId, now: Moment, standing: &Standing) -> Option<Advice> {
    let weighed = differential(story, learner, now, standing.word);
    let likely: Vec<&Weighed> =
        weighed.iter().filter(|w| matches!(w.bearing, Bearing::For | Bearing::Perhaps)).collect();
    let mut because = vec![Reason::figure(
        format!("Pressed when invited and wanted, after {} showings.", standing.showings),
        standing.response,
    )];
    because.extend(
        likely.iter().map(|w| Reason {
            text: format!("{}: {}", capital(w.cause.words()), w.evidence.text),
            ..w.evidence.clone()
        }),
    );
    let (act, sure) = match likely.first() {
        Some(first) => (
            format!("\u{201c}{}\u{201d} is not getting on. First {}.", standing.says, first.cause.act()),
            if first.bearing == Bearing::For { Sure::Fairly } else { Sure::Little },
        ),
        None => (
            format!(
                "\u{201c}{}\u{201d} is not getting on and the records do not show why. Rest it for a week and show another word.",
                standing.says
            ),
            Sure::Little,
        ),
    };
    Some(
        Advice::new(Topic::Stuck, act, because, sure, "Two weeks after the change with clearly more presses when invited.")
            .caution("Not pressing says nothing about what it understands. If anything about the animal changed suddenly, see a veterinarian first.")
            .about(standing.word),
    )
}

fn capital(text: &str) -> String {
    let mut chars = text.chars();
    chars.next().map_or_else(String::new, |c| c.to_uppercase().chain(chars).collect())
}

/// Every cause with its evidence, those the records speak for first.
#[must_use]
pub fn differential(story: &Story, learner: LearnerId, now: Moment, word: WordId) -> Vec<Weighed> {
    let from = since(now, RECENT_DAYS, &story.zone());
    let all: Vec<Answered<'_>> = answered(story, learner).into_iter().filter(|a| a.press.at() <= now).collect();
    let recent: Vec<Answered<'_>> = all.iter().filter(|a| a.press.at() >= from).copied().collect();
    let mut weighed = vec![
        not_wanted(story, learner, word, from, now, &recent),
        too_little(word, now, from, &all),
        too_late(word, &recent),
        avoided(story, learner, word, from, &recent),
        time_or_place(story, learner, from, now),
        health(story, learner, now),
        alike(story, learner, word),
        people_differ(word, &recent),
    ];
    weighed.sort_by_key(|w| w.bearing);
    weighed
}

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

fn not_wanted(
    story: &Story,
    learner: LearnerId,
    word: WordId,
    from: Moment,
    now: Moment,
    recent: &[Answered<'_>],
) -> Weighed {
    let given = recent
        .iter()
        .filter(|a| a.press.part.word == word && a.given())
        .filter_map(|a| a.delivery.and_then(|d| d.part.then))
        .map(|then| then == Then::Took);
    let offered = story
        .of::<sayso_model::Invitation>(learner)
        .filter(|i| i.part.word == word && i.at() >= from && i.at() <= now)
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

fn too_little(word: WordId, now: Moment, from: Moment, all: &[Answered<'_>]) -> Weighed {
    let shown = showings(all, Some(word));
    let first = shown.first().map_or(from, |a| a.press.at()).max(from);
    let n = shown.iter().filter(|a| a.press.at() >= from).count();
    let days = now.seconds_since(first) / 86_400.0;
    let figure = Count::new(n as u64, days)
        .map_or(Estimate::unknown(Unit::PerDay), |c| Estimate::with(c.rate(), c.interval(LEVEL), n, Unit::PerDay));
    weigh(
        Cause::TooLittle,
        against_bar(&figure, Some(SHOWINGS_A_DAY), None),
        format!("showings, last {RECENT_DAYS} days (bar {SHOWINGS_A_DAY} a day)."),
        Some(figure),
    )
}

fn too_late(word: WordId, recent: &[Answered<'_>]) -> Weighed {
    let delays: Vec<f64> = showings(recent, Some(word)).iter().filter_map(Answered::delay_s).collect();
    let figure = median(&delays, Unit::Seconds);
    weigh(
        Cause::TooLate,
        against_bar(&figure, None, Some(DELAY_S)),
        format!("from press to delivery, the middle value (bar {DELAY_S} s)."),
        Some(figure),
    )
}

/// Sessions in which the learner went near this button at all, against the other buttons shown in the same sessions.
fn avoided(story: &Story, learner: LearnerId, word: WordId, from: Moment, recent: &[Answered<'_>]) -> Weighed {
    let mut near: BTreeMap<bool, usize> = BTreeMap::new();
    let mut touch = |w: WordId| *near.entry(w == word).or_insert(0) += 1;
    story.of::<Look>(learner).filter(|l| l.at() >= from).filter_map(|l| l.part.word).for_each(&mut touch);
    story.of::<Brush>(learner).filter(|b| b.at() >= from).for_each(|b| touch(b.part.word));
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

fn time_or_place(story: &Story, learner: LearnerId, from: Moment, now: Moment) -> Weighed {
    let zone = story.zone();
    let mut by_time: BTreeMap<u8, (u64, u64)> = BTreeMap::new();
    for s in story.sessions(learner).iter().filter(|s| s.start.at() >= from && s.start.at() <= now) {
        let cell = by_time.entry(s.start.at().hour(&zone) / 6).or_insert((0, 0));
        if s.joined() { cell.0 += 1 } else { cell.1 += 1 }
    }
    let share = |(yes, no): (u64, u64)| {
        Estimate::share(usize::try_from(yes).unwrap_or(0), usize::try_from(yes + no).unwrap_or(0))
    };
    let ranked = |a: &(&u8, &(u64, u64)), b: &(&u8, &(u64, u64))| {
        share(*a.1).value.unwrap_or(0.0).total_cmp(&share(*b.1).value.unwrap_or(0.0))
    };
    let enough = || by_time.iter().filter(|(_, (y, n))| y + n >= 4);
    let (Some((worst_at, worst)), Some((best_at, best))) = (enough().min_by(ranked), enough().max_by(ranked)) else {
        return weigh(Cause::TimeOrPlace, Bearing::Unknown, "too few sessions at different times of day.", None);
    };
    if worst_at == best_at {
        return weigh(
            Cause::TimeOrPlace,
            Bearing::Unknown,
            "all sessions fall in one part of the day.",
            Some(share(*best)),
        );
    }
    let p = TwoByTwo([[worst.0, worst.1], [best.0, best.1]]).fisher(Tail::TwoSided).map_or(1.0, |t| t.p);
    // Best and worst were picked out of up to four parts of the day: six pairs could have been compared.
    let p = (p * 6.0).min(1.0);
    weigh(
        Cause::TimeOrPlace,
        if p < 0.05 {
            Bearing::For
        } else if p < 0.2 {
            Bearing::Perhaps
        } else {
            Bearing::Against
        },
        format!(
            "joined {} from {} o'clock, {} from {} o'clock (p = {p:.3}, corrected for picking the two).",
            share(*worst),
            worst_at * 6,
            share(*best),
            best_at * 6
        ),
        None,
    )
}

fn health(story: &Story, learner: LearnerId, now: Moment) -> Weighed {
    let welfare = crate::welfare::welfare(story, learner, now);
    let sudden = welfare.iter().find(|a| a.caution.as_deref().is_some_and(|c| c.contains("illness")));
    match sudden {
        Some(advice) => Weighed {
            cause: Cause::Health,
            bearing: Bearing::Perhaps,
            evidence: advice.because.first().cloned().unwrap_or_else(|| Reason::said("a sudden change in pressing.")),
        },
        None => weigh(
            Cause::Health,
            Bearing::Unknown,
            "no sudden change in pressing; the records cannot show health. If anything seems off, ask a veterinarian.",
            None,
        ),
    }
}

fn alike(story: &Story, learner: LearnerId, word: WordId) -> Weighed {
    let words = story.words_of(learner);
    let Some(this) = words.iter().find(|w| w.word == word) else {
        return weigh(Cause::SoundsAlike, Bearing::Unknown, "the word has no card.", None);
    };
    let nearest = words
        .iter()
        .filter(|w| w.word != word)
        .map(|w| sounds(this.says.as_str(), w.says.as_str(), LANGUAGE, AlikeRule::default()))
        .min_by(|a, b| a.apart.total_cmp(&b.apart));
    let asked = invitations(story, learner, word);
    let other = Estimate::share(asked.asked_other, asked.total());
    match nearest {
        None => weigh(Cause::SoundsAlike, Bearing::Against, "it is the only word.", None),
        Some(verdict) => weigh(
            Cause::SoundsAlike,
            if verdict.too_alike { Bearing::Perhaps } else { Bearing::Against },
            format!("{}; pressed another word when invited:", verdict.reason),
            Some(other),
        ),
    }
}

fn people_differ(word: WordId, recent: &[Answered<'_>]) -> Weighed {
    let mut delays: BTreeMap<TeacherId, Vec<f64>> = BTreeMap::new();
    for a in showings(recent, Some(word)) {
        if let (Some(who), Some(delay)) = (a.press.teacher(), a.delay_s()) {
            delays.entry(who).or_default().push(delay);
        }
    }
    let mut groups: Vec<&Vec<f64>> = delays.values().filter(|d| d.len() >= 5).collect();
    groups.sort_by_key(|g| std::cmp::Reverse(g.len()));
    let [first, second, ..] = groups[..] else {
        return weigh(Cause::PeopleDiffer, Bearing::Unknown, "fewer than two people with five showings each.", None);
    };
    let (a, b) = (median(first, Unit::Seconds), median(second, Unit::Seconds));
    let p = rank_sum(first, second).map_or(1.0, |t| t.p_two_sided);
    let apart = (a.value.unwrap_or(0.0) - b.value.unwrap_or(0.0)).abs();
    weigh(
        Cause::PeopleDiffer,
        if p < 0.05 && apart > 1.5 {
            Bearing::For
        } else if p < 0.05 {
            Bearing::Perhaps
        } else {
            Bearing::Against
        },
        format!("the two who show it most deliver after {a} and {b} (rank-sum test p = {p:.3})."),
        None,
    )
}
